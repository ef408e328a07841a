#include "report/plan_text.hpp"

#include <fmt/format.h>

#include "basics/utf8.hpp"
#include "report/number_text.hpp"
#include "report/plan_book.hpp"
#include "report/sequence_page.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

double in_minutes(Time<> time) { return time.si / unit::min.si; }

/// `set-ups 41.0 min; no order takes less; the order in the files takes 77.0 min`.
std::string verdict(Time<> total, Time<> bound, bool proved, Time<> file_order, bool file_order_allowed) {
  return fmt::format(
      "set-ups {} min; {}; the order in the files{} takes {} min\n", figure(in_minutes(total), 1),
      proved ? std::string("no order takes less (proved)")
             : fmt::format("no order takes less than {} min (not proved best)", figure(in_minutes(bound), 1)),
      file_order_allowed ? "" : ", put right where it breaks 'after',", figure(in_minutes(file_order), 1));
}

/// The reason without the tasks and minutes, which have columns of their own: what stands after a colon, up to a
/// semicolon.
std::string short_reason(const std::string& reason) {
  const std::size_t colon = reason.find(": ");
  if (colon == reason.npos) return reason;
  const std::size_t rest = reason.find("; ", colon);
  return reason.substr(0, colon) + (rest == reason.npos ? "" : reason.substr(rest));
}

TextTable station_table(const PlannedWork& plan, const StationWork& at) {
  TextTable table;
  table.headings = {"no.", "operation", "set-up before it", "set-up min", "floor min", "why here"};
  table.right_aligned = {true, false, false, true, true, false};
  double floor = 0;
  for (std::size_t k = 0; k < at.sequence.steps.size(); ++k) {
    const Step& step = at.sequence.steps[k];
    const double minutes = in_minutes(operation_time(plan.jobs, plan.estimates, at.refs[step.operation]));
    floor += minutes;
    table.rows.push_back({std::to_string(k + 1), at.problem.operations[step.operation].name,
                          task_words(at.problem.model, step.change),
                          step.change.tasks.empty() ? "" : figure(in_minutes(step.change.duration), 1),
                          figure(minutes, 1), short_reason(step.reason)});
  }
  table.rule_before_row = table.rows.size();
  table.rows.push_back({"", "together", "", figure(in_minutes(at.sequence.change_total), 1), figure(floor, 1)});
  return table;
}

}  // namespace

std::string plan_text(const PlannedWork& plan) {
  std::string out;
  Time<> total{}, bound{}, file_order{};
  bool proved = true, allowed = true;
  for (const StationWork& at : plan.work) {
    const Station& station = plan.book.stations[at.station];
    append_printable(out, station.title.empty() ? station.name : station.name + ": " + station.title);
    const Sequence& s = at.sequence;
    out += "\n\n" + render(station_table(plan, at)) +
           verdict(s.change_total, s.bound, s.proved, s.file_order_total, s.file_order_allowed) + "\n";
    total = total + s.change_total;
    bound = bound + s.bound;
    file_order = file_order + s.file_order_total;
    proved = proved && s.proved;
    allowed = allowed && s.file_order_allowed;
  }
  return out + "all stations: " + verdict(total, bound, proved, file_order, allowed);
}

}  // namespace seambook
