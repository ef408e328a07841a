#include "report/sequence_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "quote/lift.hpp"
#include "report/set_up_words.hpp"

namespace seambook {
namespace {

struct SequenceAt {
  enum Column : std::uint16_t { position, station, operation, process, tasks, minutes, labour, equipment, reason };
};

void put_headings(SequencePage& page, const std::string& currency) {
  Sheet& sheet = page.sheet;
  const std::pair<SequenceAt::Column, std::string> words[] = {
      {SequenceAt::position, "position"}, {SequenceAt::station, "station"},        {SequenceAt::operation, "operation"},
      {SequenceAt::process, "process"},   {SequenceAt::tasks, "set-up before it"}, {SequenceAt::reason, "why here"}};
  for (const auto& [column, text] : words) put(sheet, heading_row, column, text, Look::heading);
  const std::pair<SequenceAt::Column, const Figure*> figures[] = {{SequenceAt::minutes, &fig::change},
                                                                  {SequenceAt::labour, &fig::change_labour},
                                                                  {SequenceAt::equipment, &fig::change_equipment}};
  for (const auto& [column, figure] : figures) {
    put(sheet, heading_row, column, heading_of(*figure, currency), Look::heading);
    page.table.columns[figure] = {sheet.name, column};
  }
  sheet.column_widths = {9, 11, 30, 9, 36, 10, 11, 11, 52};
  sheet.frozen_rows = heading_row + 1;
  sheet.repeat_rows = {heading_row, heading_row};
  sheet.landscape = true;
}

/// What the rows of all stations are made from.
struct SequenceRows {
  const RateBook& book;
  const Job& job;
  const std::vector<StationWork>& work;
  const std::vector<SetupRow>& setups;
  Table table;
  SharedCells shared;
  std::vector<std::size_t> first;  // of each station its first row, counted from the table's; one more at the end
};

void put_step(const SequenceRows& rows, std::size_t s, std::size_t k, Sheet& sheet, std::uint32_t row) {
  const StationWork& at = rows.work[s];
  const Step& step = at.sequence.steps[k];
  const OperationRef& ref = at.refs[step.operation];
  const Procedure& procedure = rows.book.procedures[rows.job.joints[ref.joint].passes[ref.group].procedure];
  put_number(sheet, row, SequenceAt::position, static_cast<double>(k + 1), 0);
  put(sheet, row, SequenceAt::station, rows.book.stations[at.station].name);
  put(sheet, row, SequenceAt::operation, at.problem.operations[step.operation].name, Look::wrapped);
  put(sheet, row, SequenceAt::process, process_word(rows.book.processes[procedure.process].number, rows.book.terms));
  put(sheet, row, SequenceAt::tasks, task_words(at.problem.model, step.change), Look::wrapped);
  put(sheet, row, SequenceAt::reason, step.reason, Look::wrapped);
  const auto setup = std::ranges::lower_bound(rows.setups, std::pair(s, k), {},
                                              [](const SetupRow& r) { return std::pair(r.station, r.step); });
  if (setup == rows.setups.end() || setup->station != s || setup->step != k) return;
  Tape tape;
  setup_figures(lift_setup<Traced>(setup->inputs, 0, &tape), 0);
  put_record(sheet, rows.table, rows.shared, rows.job, tape, row);
}

LaterRows rows_of_steps(const std::shared_ptr<const SequenceRows>& rows) {
  return {rows->first.back(), [rows](std::size_t number, std::vector<Cell>& cells) {
            const auto next = std::ranges::upper_bound(rows->first, number);
            const auto s = static_cast<std::size_t>(next - rows->first.begin()) - 1;
            Sheet own;
            own.name = sequence_sheet;
            own.cells.swap(cells);
            put_step(*rows, s, number - rows->first[s], own,
                     rows->table.first_row + static_cast<std::uint32_t>(number));
            own.cells.swap(cells);
          }};
}

}  // namespace

SequencePage sequence_page(const RateBook& book, const Job& job, const std::vector<StationWork>& work,
                           const Quote& quote, const SharedCells& shared) {
  SequencePage page;
  page.sheet.name = sequence_sheet;
  put_title(page.sheet, "Sequence: order of work and set-ups for one lot",
            "From each station's stated state. The order and the change tasks are locked: run again after a change.");
  put_headings(page, book.currency);
  page.table.first_row = heading_row + 1;
  SequenceRows rows{book, job, work, quote.setups, page.table, shared, {0}};
  for (const StationWork& at : work) rows.first.push_back(rows.first.back() + at.sequence.steps.size());
  std::uint32_t row = page.table.first_row + static_cast<std::uint32_t>(rows.first.back());
  page.last_row = row - 1;
  page.sheet.later = rows_of_steps(std::make_shared<const SequenceRows>(std::move(rows)));
  for (const StationWork& at : work) {
    put_wide(page.sheet, ++row,
             fmt::format("{}: {}, a lot", book.stations[at.station].name, set_up_verdict(set_up_totals(at.sequence))),
             Look::note);
  }
  return page;
}

}  // namespace seambook
