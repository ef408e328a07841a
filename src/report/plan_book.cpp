#include "report/plan_book.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "quote/quote.hpp"
#include "report/cells.hpp"
#include "report/set_up_words.hpp"

namespace seambook {
namespace {

struct PlanAt {
  enum PlanColumn : std::uint16_t {
    number,
    operation,
    what,
    procedure,
    filler,
    gas,
    tasks,
    change_min,
    floor_min,
    reason,
    done
  };
};

void put_headings(Sheet& sheet) {
  const std::pair<PlanAt::PlanColumn, const char*> words[] = {{PlanAt::number, "no."},
                                                              {PlanAt::operation, "operation"},
                                                              {PlanAt::what, "weld"},
                                                              {PlanAt::procedure, "procedure"},
                                                              {PlanAt::filler, "filler"},
                                                              {PlanAt::gas, "gas"},
                                                              {PlanAt::tasks, "set-up before it"},
                                                              {PlanAt::change_min, "set-up (min)"},
                                                              {PlanAt::floor_min, "floor time (min)"},
                                                              {PlanAt::reason, "why here"},
                                                              {PlanAt::done, "done"}};
  for (const auto& [column, text] : words) put(sheet, heading_row, column, text, Look::heading);
  sheet.column_widths = {6, 32, 24, 12, 14, 7, 30, 9, 10, 44, 14};
  sheet.frozen_rows = heading_row + 1;
  sheet.repeat_rows = {heading_row, heading_row};
  sheet.landscape = true;
}

void put_step(Sheet& sheet, std::uint32_t row, const RateBook& book, std::span<const Job> jobs, const StationWork& at,
              std::size_t k, Time<> floor) {
  const Step& step = at.sequence.steps[k];
  const OperationRef& ref = at.refs[step.operation];
  const Joint& joint = jobs[ref.job].joints[ref.joint];
  const Procedure& by = book.procedures[joint.passes[ref.group].procedure];
  put_number(sheet, row, PlanAt::number, static_cast<double>(k + 1), 0);
  put(sheet, row, PlanAt::operation, at.problem.operations[step.operation].name, Look::wrapped);
  put(sheet, row, PlanAt::what, joint.mark.empty() ? std::string(weld_word(joint.weld)) : joint.mark, Look::wrapped);
  put(sheet, row, PlanAt::procedure, by.name);
  put(sheet, row, PlanAt::filler, by.filler ? book.fillers[*by.filler].name : "none");
  put(sheet, row, PlanAt::gas, by.gas ? book.gases[*by.gas].name : "none");
  put(sheet, row, PlanAt::tasks, task_words(at.problem.model, step.change), Look::wrapped);
  put_number(sheet, row, PlanAt::change_min, step.change.duration.si / 60, 0);
  put_number(sheet, row, PlanAt::floor_min, floor.si / 60, 1);
  put(sheet, row, PlanAt::reason, step.reason, Look::wrapped);
}

void put_totals(Sheet& sheet, std::uint32_t row, const StationWork& at, double floor_minutes) {
  const std::uint32_t first = heading_row + 1;
  put(sheet, row, PlanAt::operation, "together", Look::total);
  for (const auto& [column, value, decimals] :
       {std::tuple{PlanAt::change_min, at.sequence.change_total.si / 60, 0}, {PlanAt::floor_min, floor_minutes, 1}}) {
    const std::string text = fmt::format("SUM({}:{})", cell_name(first, column), cell_name(row - 1, column));
    put_formula(sheet, row, column, {text, value}, decimals, Look::total);
  }
  put_wide(sheet, row + 1, set_up_verdict(set_up_totals(at.sequence)), Look::note);
}

Sheet station_sheet(const RateBook& book, std::span<const Job> jobs, std::span<const Estimate> estimates,
                    const StationWork& at, Date date) {
  Sheet sheet;
  const Station& station = book.stations[at.station];
  sheet.name = station.name;
  put_title(sheet, fmt::format("{} {}: order of work", station.name, station.title),
            fmt::format("{}; the order that loses least time to set-ups. No clock times, welders or due dates yet.",
                        iso(date)));
  put_headings(sheet);
  std::uint32_t row = heading_row + 1;
  double floor_minutes = 0;
  for (std::size_t k = 0; k < at.sequence.steps.size(); ++k, ++row) {
    const Time<> floor = operation_time(jobs, estimates, at.refs[at.sequence.steps[k].operation]);
    put_step(sheet, row, book, jobs, at, k, floor);
    floor_minutes += floor.si / 60;
  }
  put_totals(sheet, row, at, floor_minutes);
  sheet.header = fmt::format("Order of work {}", iso(date));
  sheet.footer = station.name;
  return sheet;
}

Sheet caution_sheet(const RateBook& book, std::span<const Job> jobs) {
  Sheet sheet;
  sheet.name = "Cautions";
  put(sheet, 0, 0, "Cautions", Look::title);
  put(sheet, 1, 0, "For the processes of these jobs.", Look::note);
  std::vector<std::string> lines;
  for (const Job& job : jobs) {
    for (const std::string& line : cautions(book, job)) {
      if (std::find(lines.begin(), lines.end(), line) == lines.end()) lines.push_back(line);
    }
  }
  std::uint32_t row = heading_row;
  for (const std::string& line : lines) put(sheet, row++, 0, line, Look::wrapped);
  sheet.column_widths = {100};
  return sheet;
}

}  // namespace

Time<> operation_time(std::span<const Job> jobs, std::span<const Estimate> estimates, const OperationRef& ref) {
  return static_cast<double>(jobs[ref.job].quantities.front()) *
         estimates[ref.job].joints[ref.joint].passes[ref.group].labour.floor;
}

Workbook plan_workbook(const RateBook& book, std::span<const Job> jobs, std::span<const Estimate> estimates,
                       const std::vector<StationWork>& work, Date date) {
  Workbook workbook;
  workbook.title = fmt::format("Order of work {}", iso(date));
  workbook.author = book.shop;
  workbook.letter_paper = book.letter_paper;
  workbook.year = date.year, workbook.month = date.month, workbook.day = date.day;
  for (const StationWork& at : work) workbook.sheets.push_back(station_sheet(book, jobs, estimates, at, date));
  workbook.sheets.push_back(caution_sheet(book, jobs));
  return workbook;
}

}  // namespace seambook
