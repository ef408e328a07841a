#include "report/sequence_page.hpp"

#include <fmt/format.h>

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

}  // namespace

SequencePage sequence_page(const RateBook& book, const Job& job, const std::vector<StationWork>& work,
                           const Quote& quote, const SharedCells& shared) {
  SequencePage page;
  page.sheet.name = sequence_sheet;
  put_title(page.sheet, "Sequence: order of work and set-ups for one lot",
            "From each station's stated state. The order and the change tasks are locked: run again after a change.");
  put_headings(page, book.currency);
  page.table.first_row = heading_row + 1;
  std::vector<Sheet> sheets(1);
  std::swap(sheets[0], page.sheet);
  std::uint32_t row = page.table.first_row;
  std::size_t setup = 0;
  Tape tape;
  for (std::size_t s = 0; s < work.size(); ++s) {
    for (std::size_t k = 0; k < work[s].sequence.steps.size(); ++k, ++row) {
      const Step& step = work[s].sequence.steps[k];
      const OperationRef& ref = work[s].refs[step.operation];
      put_number(sheets[0], row, SequenceAt::position, static_cast<double>(k + 1), 0);
      put(sheets[0], row, SequenceAt::station, book.stations[work[s].station].name);
      put(sheets[0], row, SequenceAt::operation, work[s].problem.operations[step.operation].name, Look::wrapped);
      put(sheets[0], row, SequenceAt::process,
          process_word(
              book.processes[book.procedures[job.joints[ref.joint].passes[ref.group].procedure].process].number,
              book.terms));
      put(sheets[0], row, SequenceAt::tasks, task_words(work[s].problem.model, step.change), Look::wrapped);
      put(sheets[0], row, SequenceAt::reason, step.reason, Look::wrapped);
      if (setup >= quote.setups.size() || quote.setups[setup].station != s || quote.setups[setup].step != k) continue;
      tape.clear();
      setup_figures(lift_setup<Traced>(quote.setups[setup++].inputs, 0, &tape), 0);
      put_record(sheets, page.table, shared, job, tape, row);
    }
  }
  std::swap(sheets[0], page.sheet);
  page.last_row = row - 1;
  for (const StationWork& at : work) {
    put_wide(page.sheet, ++row,
             fmt::format("{}: {}, a lot", book.stations[at.station].name, set_up_verdict(set_up_totals(at.sequence))),
             Look::note);
  }
  return page;
}

}  // namespace seambook
