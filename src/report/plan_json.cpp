#include <nlohmann/json.hpp>

#include "report/plan_book.hpp"
#include "report/plan_text.hpp"
#include "report/sequence_page.hpp"

namespace seambook {
namespace {

using PlanJson = nlohmann::ordered_json;

double json_minutes(Time<> time) { return time.si / unit::min.si; }

PlanJson step_json(const PlannedWork& plan, const StationWork& at, const Step& step) {
  PlanJson json;
  json["operation"] = at.problem.operations[step.operation].name;
  json["change_min"] = json_minutes(step.change.duration);
  json["change"] = PlanJson::array();
  for (const std::size_t task : step.change.tasks) json["change"].push_back(at.problem.model.tasks[task].name);
  json["reason"] = step.reason;
  json["floor_min"] = json_minutes(operation_time(plan.jobs, plan.estimates, at.refs[step.operation]));
  return json;
}

std::string plan_json_text(const PlanJson& json) {
  return json.dump(2, ' ', false, PlanJson::error_handler_t::replace);
}

}  // namespace

std::string stations_json(const PlannedWork& plan) {
  PlanJson stations = PlanJson::array();
  for (const StationWork& at : plan.work) {
    PlanJson json;
    json["station"] = plan.book.stations[at.station].name;
    json["title"] = plan.book.stations[at.station].title;
    json["steps"] = PlanJson::array();
    for (const Step& step : at.sequence.steps) json["steps"].push_back(step_json(plan, at, step));
    json["change_min"] = json_minutes(at.sequence.change_total);
    json["bound_min"] = json_minutes(at.sequence.bound);
    json["proved"] = at.sequence.proved;
    json["file_order_change_min"] = json_minutes(at.sequence.file_order_total);
    json["file_order_allowed"] = at.sequence.file_order_allowed;
    stations.push_back(std::move(json));
  }
  return plan_json_text(stations);
}

std::string levels_json(const PlannedWork& plan) {
  Time<> total{}, bound{};
  bool proved = true;
  for (const StationWork& at : plan.work) {
    total = total + at.sequence.change_total;
    bound = bound + at.sequence.bound;
    proved = proved && at.sequence.proved;
  }
  PlanJson level;
  level["name"] = "change minutes";
  level["value"] = json_minutes(total);
  level["bound"] = json_minutes(bound);
  level["proved"] = proved;
  return plan_json_text(PlanJson::array({level}));
}

}  // namespace seambook
