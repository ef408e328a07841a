#include "report/shop_json.hpp"

#include <nlohmann/json.hpp>

#include "report/due_words.hpp"
#include "report/plan_levels.hpp"
#include "report/plan_setups.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

using ShopJson = nlohmann::ordered_json;

double minutes_of(Time<> time) { return time.si / unit::min.si; }
double minutes_of(std::int64_t seconds) { return static_cast<double>(seconds) / 60; }

std::string member_text(const ShopJson& json) { return json.dump(2, ' ', false, ShopJson::error_handler_t::replace); }

ShopJson planned_step(const PlannedShop& shop, const PlannedTask& task) {
  const ShopProblem& problem = shop.work.problem;
  const TaskRef& ref = ref_of(shop, task);
  const Way& way = way_of(shop, task);
  ShopJson json;
  json["operation"] = problem.tasks[task.task].name;
  json["welder"] = way.people.empty() ? ShopJson(nullptr) : ShopJson(problem.people[way.people.front()].stamp);
  json["with"] = ShopJson::array();
  for (std::size_t p = 1; p < way.people.size(); ++p) json["with"].push_back(problem.people[way.people[p]].stamp);
  json["set_up"] = iso_word(task.set_up);
  json["start"] = iso_word(task.start);
  json["finish"] = iso_word(task.finish);
  json["pieces"] = ref.pieces;
  json["labour_min"] = minutes_of(labour_of(ref));
  json["arc_min"] = minutes_of(arc_of(ref));
  json["change_min"] = minutes_of(task.change.duration);
  json["change"] = ShopJson::array();
  for (const std::size_t change : task.change.tasks) json["change"].push_back(problem.model.tasks[change].name);
  json["holds"] = ShopJson::array();
  for (const TaskStep& step : ref.steps)
    if (!step.hold.empty() && step.kind != StepKind::outside) json["holds"].push_back(step.hold);
  json["reason"] = task.reason;
  return json;
}

ShopJson planned_stations(const PlannedShop& shop) {
  ShopJson stations = ShopJson::array();
  const std::vector<PlannedSetUp> set_ups = set_ups_of(shop);
  for (std::size_t s = 0; s < shop.work.problem.stations.size(); ++s) {
    const Station& at = shop.book.stations[shop.work.stations[s]];
    ShopJson json;
    json["station"] = at.name;
    json["title"] = at.title;
    json["steps"] = ShopJson::array();
    double change = 0;
    for (const PlannedSetUp& set_up : set_ups) {
      if (set_up.station != s) continue;
      for (const std::size_t task : set_up.tasks) {
        json["steps"].push_back(planned_step(shop, shop.plan.tasks[task]));
        change += minutes_of(shop.plan.tasks[task].change.duration);
      }
    }
    json["change_min"] = change;
    stations.push_back(std::move(json));
  }
  return stations;
}

ShopJson away_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const PlannedTask& task : shop.plan.tasks)
    if (!way_of(shop, task).station)
      list.push_back({{"operation", shop.work.problem.tasks[task.task].name},
                      {"start", iso_word(task.start)},
                      {"finish", iso_word(task.finish)}});
  return list;
}

ShopJson blocked_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const KeptBack& kept : kept_back(shop)) {
    const char* kind = kept.kind == KeptBack::Kind::gate      ? "not_for_the_floor"
                       : kept.kind == KeptBack::Kind::blocked ? "blocked"
                                                              : "cannot_be_done";
    list.push_back({{"what", kept.what}, {"kind", kind}, {"reason", kept.why}, {"hint", kept.hint}});
  }
  return list;
}

ShopJson begun_list(const PlannedShop& shop, const std::vector<Begun>& all) {
  const ShopProblem& problem = shop.work.problem;
  ShopJson list = ShopJson::array();
  for (const Begun& begun : all)
    list.push_back({{"operation", begun.name},
                    {"station", begun.station ? ShopJson(problem.stations[*begun.station].name) : ShopJson(nullptr)},
                    {"welder", begun.person ? ShopJson(problem.people[*begun.person].stamp) : ShopJson(nullptr)},
                    {"start", iso_word(begun.start)},
                    {"finish", iso_word(begun.finish)}});
  return list;
}

ShopJson undone_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const UnplacedTask& task : shop.plan.unplaced) list.push_back(shop.work.problem.tasks[task.task].name);
  return list;
}

ShopJson late_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const LateOrder& late : shop.plan.late) {
    const ShopOrder& order = shop.work.problem.orders[late.order];
    list.push_back({{"order", order.name},
                    {"customer", shop.jobs[shop.work.job_of_order[late.order]].customer},
                    {"due", iso_word(order.due)},
                    {"finish", iso_word(late.finish)},
                    {"late_min", minutes_of(late.late.count())}});
  }
  return list;
}

ShopJson overload_list(const PlannedShop& shop) {
  const ShopProblem& problem = shop.work.problem;
  ShopJson list = ShopJson::array();
  for (const Overload& over : overloads(problem))
    list.push_back({{over.person ? "welder" : "station",
                     over.person ? problem.people[over.number].stamp : problem.stations[over.number].name},
                    {"due", iso_word(over.due)},
                    {"order", problem.orders[over.order].name},
                    {"needed_min", minutes_of(over.needed.count())},
                    {"open_min", minutes_of(over.open.count())}});
  return list;
}

ShopJson remedy_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const Remedy& remedy : shop.remedies)
    list.push_back({{"what", remedy.what},
                    {"late_before_min", minutes_of(remedy.late_before)},
                    {"late_after_min", minutes_of(remedy.late_after)},
                    {"price", remedy.price ? ShopJson(remedy.price->si) : ShopJson(nullptr)}});
  return list;
}

ShopJson level_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const ShownLevel& level : shown_levels(shop.plan))
    list.push_back({{"name", level.name}, {"value", level.value}, {"bound", level.bound}, {"proved", level.proved}});
  return list;
}

ShopJson plan_list(const PlannedShop& shop) {
  ShopJson list = ShopJson::array();
  for (const OtherPlan& plan : compared_plans(shop))
    list.push_back({{"name", plan.name},
                    {"cannot_be_done", plan.levels.unplaced},
                    {"late_min", minutes_of(plan.levels.late)},
                    {"moved", plan.levels.moved},
                    {"change_min", minutes_of(plan.levels.change)},
                    {"fixture_loads", plan.levels.loads},
                    {"finish", iso_word(shop.work.problem.start + Seconds(plan.levels.finish))}});
  return list;
}

}  // namespace

std::vector<JsonMember> plan_members(const PlannedShop& shop) {
  return {{"stations", member_text(planned_stations(shop))},
          {"away", member_text(away_list(shop))},
          {"done", member_text(begun_list(shop, shop.work.done))},
          {"under_way", member_text(begun_list(shop, shop.work.begun))},
          {"undone", member_text(undone_list(shop))},
          {"blocked", member_text(blocked_list(shop))},
          {"late", member_text(late_list(shop))},
          {"over_capacity", member_text(overload_list(shop))},
          {"remedies", member_text(remedy_list(shop))},
          {"levels", member_text(level_list(shop))},
          {"plans", member_text(plan_list(shop))}};
}

}  // namespace seambook
