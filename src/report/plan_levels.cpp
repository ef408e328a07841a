#include "report/plan_levels.hpp"

#include "report/task_words.hpp"
#include "trade/labour.hpp"

namespace seambook {
namespace {

/// A level as it is judged, how it is shown, and how many of its own units one shown unit is: times are seconds.
struct LevelUnit {
  std::string_view name;
  const char* shown;
  double scale;
};
constexpr LevelUnit level_units[] = {{"cannot be done", "tasks that cannot be done", 1},
                                     {"late", "late minutes", 60},
                                     {"moved", "tasks moved against the earlier plan", 1},
                                     {"set-up", "set-up minutes", 60},
                                     {"fixture loads", "fixture loads", 1},
                                     {"finish", "hours from the start to the end", 3600}};

ShownLevel shown_level(const PlanLevel& level) {
  LevelUnit as{level.name, level.name.c_str(), 1};
  for (const LevelUnit& unit : level_units)
    if (unit.name == level.name) as = unit;
  return {as.shown, static_cast<double>(level.value) / as.scale, static_cast<double>(level.bound) / as.scale,
          level.proved};
}

MoneyPerTime<> hour_of(const Labour& labour) {
  if (labour.loaded) return {labour.rate.si.value};
  return loaded_rate(MoneyPerTime<>{labour.wage.si.value}, Ratio<>{labour.burden.si.value});
}

}  // namespace

std::vector<ShownLevel> shown_levels(const Plan& plan) {
  std::vector<ShownLevel> out;
  out.reserve(plan.judged.size());
  for (const PlanLevel& level : plan.judged) out.push_back(shown_level(level));
  return out;
}

std::vector<OtherPlan> compared_plans(const PlannedShop& shop) {
  std::vector<OtherPlan> plans = {{"this plan", shop.plan.levels}};
  plans.insert(plans.end(), shop.plan.others.begin(), shop.plan.others.end());
  return plans;
}

MoneyPerTime<> set_up_rate(const PlannedShop& shop) {
  Money<> money{};
  Time<> time{};
  for (const PlannedTask& task : shop.plan.tasks)
    for (const std::size_t person : way_of(shop, task).people) {
      const Welder& welder = shop.book.welders[shop.work.welders[person]];
      money = money + task.change.duration * hour_of(shop.book.labour[welder.grade]);
      time = time + task.change.duration;
    }
  if (time.si > 0) return money / time;
  return shop.book.labour.empty() ? MoneyPerTime<>{} : hour_of(shop.book.labour.front());
}

std::size_t set_up_count(const Plan& plan) {
  std::size_t count = 0;
  for (const PlannedTask& task : plan.tasks) count += task.change.tasks.empty() ? 0 : 1;
  return count;
}

}  // namespace seambook
