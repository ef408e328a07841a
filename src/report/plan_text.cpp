#include "report/plan_text.hpp"

#include <fmt/format.h>

#include "basics/utf8.hpp"
#include "report/number_text.hpp"
#include "report/plan_book.hpp"
#include "report/set_up_words.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

double in_minutes(Time<> time) { return time.si / unit::min.si; }

TextTable station_table(const PlannedWork& plan, const StationWork& at) {
  TextTable table;
  table.headings = {"no.", "operation", "set-up min", "floor min", "set-up before it", "why here"};
  table.right_aligned = {true, false, true, true, false, false};
  double floor = 0;
  for (std::size_t k = 0; k < at.sequence.steps.size(); ++k) {
    const Step& step = at.sequence.steps[k];
    const double minutes = in_minutes(operation_time(plan.jobs, plan.estimates, at.refs[step.operation]));
    floor += minutes;
    table.rows.push_back({std::to_string(k + 1), at.problem.operations[step.operation].name,
                          step.change.tasks.empty() ? "" : figure(in_minutes(step.change.duration), 1),
                          figure(minutes, 1), task_words(at.problem.model, step.change), step.reason});
  }
  table.rule_before_row = table.rows.size();
  table.rows.push_back({"", "together", figure(in_minutes(at.sequence.change_total), 1), figure(floor, 1)});
  return table;
}

}  // namespace

std::string plan_text(const PlannedWork& plan) {
  std::string out;
  SetUpTotals all;
  for (const StationWork& at : plan.work) {
    const Station& station = plan.book.stations[at.station];
    append_printable(out, station.title.empty() ? station.name : station.name + ": " + station.title);
    const SetUpTotals totals = set_up_totals(at.sequence);
    out += "\n\n" + render(station_table(plan, at)) + set_up_verdict(totals) + "\n\n";
    all = all + totals;
  }
  return out + "all stations: " + set_up_verdict(all) + "\n";
}

}  // namespace seambook
