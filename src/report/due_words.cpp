#include "report/due_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/span_text.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

std::string place_words(const PlannedShop& shop, const KeptBack& kept) {
  const Job& job = shop.jobs[kept.job];
  const std::string words = job.name + "/" + job.weldments[kept.weldment].name;
  return kept.joint ? words + "/" + job.joints[*kept.joint].id : words;
}

}  // namespace

std::vector<Instant> order_finishes(const PlannedShop& shop) {
  std::vector<Instant> finishes(shop.work.problem.orders.size(), Instant::min());
  for (const PlannedTask& task : shop.plan.tasks) {
    Instant& finish = finishes[shop.work.problem.tasks[task.task].order];
    finish = std::max(finish, task.finish);
  }
  return finishes;
}

std::string due_text(const ShopOrder& order) { return order.due == Instant::max() ? "no date" : clock_word(order.due); }

bool is_late(const ShopOrder& order, Instant finish) { return finish > order.due; }

std::string slack_text(const ShopOrder& order, Instant finish) {
  if (order.due == Instant::max() || finish == Instant::min()) return {};
  return is_late(order, finish) ? "late by " + span_text(finish - order.due)
                                : span_text(order.due - finish) + " in hand";
}

std::vector<KeptBack> kept_back(const PlannedShop& shop) {
  std::vector<KeptBack> out;
  out.reserve(shop.work.withheld.size() + shop.plan.unplaced.size());
  for (const Withheld& held : shop.work.withheld) {
    const KeptBack::Kind kind = held.gate ? KeptBack::Kind::gate : KeptBack::Kind::blocked;
    out.push_back({kind, held.job, held.weldment, held.joint, {}, held.why, held.hint});
  }
  for (const UnplacedTask& task : shop.plan.unplaced) {
    const TaskRef& ref = shop.work.refs[task.task];
    out.push_back({KeptBack::Kind::cannot, ref.job, ref.weldment, ref.joint, {}, task.why, {}});
  }
  for (KeptBack& kept : out) kept.what = place_words(shop, kept);
  std::stable_sort(out.begin(), out.end(), [](const KeptBack& a, const KeptBack& b) { return a.kind < b.kind; });
  return out;
}

std::string_view kept_back_word(KeptBack::Kind kind) {
  switch (kind) {
    case KeptBack::Kind::gate:
      return "not for the floor";
    case KeptBack::Kind::blocked:
      return "blocked";
    case KeptBack::Kind::cannot:
      return "cannot be done";
  }
  return "blocked";
}

std::vector<std::string> overload_lines(const PlannedShop& shop) {
  const ShopProblem& problem = shop.work.problem;
  std::vector<std::string> lines;
  for (const Overload& over : overloads(problem))
    lines.push_back(fmt::format("{}: {} of work that {} else can do by {} ({}); {} are open",
                                over.person ? problem.people[over.number].stamp : problem.stations[over.number].name,
                                span_text(over.needed), over.person ? "nobody" : "no station", clock_word(over.due),
                                problem.orders[over.order].name, span_text(over.open)));
  return lines;
}

}  // namespace seambook
