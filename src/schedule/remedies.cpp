#include "schedule/remedies.hpp"

#include <tuple>

#include "schedule/clock.hpp"

namespace seambook {
namespace {

/// Time that people work outside their plain shifts, paid with the premium on their grade's rate.
Money<> premium_for(const WorkToPlan& asked, const ShopWork& with, const ShopWork& plain, const Plan& plan) {
  Money<> sum{};
  if (!asked.book.calendar.overtime) return sum;
  for (const PlannedTask& task : plan.tasks) {
    for (const std::size_t p : with.problem.tasks[task.task].ways[task.way].people) {
      const WorkingTime& all = with.problem.people[p].present;
      const Seconds extra = working_between(all, task.set_up, task.finish) -
                            working_between(plain.problem.people[p].present, task.set_up, task.finish);
      const Labour& grade = asked.book.labour[asked.book.welders[with.welders[p]].grade];
      const double rate = grade.loaded ? grade.rate.si.value : grade.wage.si.value * (1 + grade.burden.si.value);
      sum = sum + Money<>{static_cast<double>(extra.count()) * rate * asked.book.calendar.overtime->premium.si.value};
    }
  }
  return sum;
}

}  // namespace

std::vector<Remedy> remedies(const WorkToPlan& asked, const Plan& plan_now, const PlanBudget& budget) {
  std::vector<Remedy> out;
  const Levels& before = plan_now.levels;
  if (before.late == 0 && before.unplaced == 0) return out;
  Diagnostics unheard;
  const auto plain = shop_work(asked, unheard);
  const std::tuple<const char*, bool, bool, bool> tries[] = {
      {"overtime after every shift that allows it", true, false, false},
      {"fit-up and tacks by other welders", false, true, false},
      {"overtime, and fit-up and tacks by other welders", true, true, false},
      {"other welders qualified for this work", false, false, true}};
  for (const auto& [what, overtime, anybody_fits, anybody_welds] : tries) {
    if (is_stopped(budget)) break;
    if (overtime && !asked.book.calendar.overtime) continue;
    WorkToPlan changed = asked;
    changed.overtime = overtime, changed.anybody_fits = anybody_fits, changed.anybody_welds = anybody_welds;
    const auto work = shop_work(changed, unheard);
    if (!work || !plain) continue;
    const Plan then = plan(work->problem, budget);
    if (std::tuple(then.levels.unplaced, then.levels.late) >= std::tuple(before.unplaced, before.late)) continue;
    Remedy remedy{what, before.late, then.levels.late, before.unplaced, then.levels.unplaced, std::nullopt};
    if (overtime) remedy.price = premium_for(changed, *work, *plain, then);
    out.push_back(std::move(remedy));
  }
  return out;
}

}  // namespace seambook
