// Lists of whole orders: complete, allowed, and together where nothing speaks against it.
#include "schedule/order_starts.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "random_plans.hpp"

namespace {

using namespace shop;

/// So many orders of three tasks, those with a fixture of their own, that can be done at either of two stations.
ShopProblem with_fixtures(std::size_t orders) {
  ShopProblem problem;
  problem.start = monday;
  problem.model.attributes = {"fixture"};
  problem.model.values.resize(1);
  problem.model.tasks.push_back({"load", minutes(30), 0, {}, {}, true});
  for (const char* name : {"left", "right"})
    problem.stations.push_back({name, {{monday, monday + slots(1000)}}, {{std::nullopt}}, {}, {}});
  for (std::uint32_t o = 0; o < orders; ++o) problem.model.values[0].push_back("fixture" + std::to_string(o));
  for (std::uint32_t k = 0; k < 3 * orders; ++k) {  // the orders' tasks by turns
    const std::uint32_t o = k % static_cast<std::uint32_t>(orders);
    problem.tasks.push_back({"task" + std::to_string(k), {{o}}, {{0, {}, slot}, {1, {}, slot}}, o});
  }
  for (std::size_t o = 0; o < orders; ++o) problem.orders.push_back({"order", monday + slots(200 - o), 1});
  return problem;
}

}  // namespace

TEST_CASE("a list of whole orders holds each task once and breaks no rule") {
  std::mt19937 random(91);
  std::size_t with = 0;
  for (int shops = 0; shops < 300; ++shops) {
    INFO("shop ", shops);
    const ShopProblem problem =
        random_plan_problem(random, {1 + random() % 8, 1 + random() % 3, 1 + random() % 3, random() % 6});
    ShopNet net = shop_net(problem);
    if (!has_whole_orders(net)) continue;
    ++with;
    const TaskList list = list_by_whole_orders(net, {}, {1000});
    std::vector<std::size_t> tasks;
    for (const Listed& at : list) tasks.push_back(at.task);
    for (const auto& [before, after] : problem.precedence)
      CHECK(std::ranges::find(tasks, before) < std::ranges::find(tasks, after));
    std::ranges::sort(tasks);
    REQUIRE(tasks.size() == problem.tasks.size());
    for (std::size_t t = 0; t < tasks.size(); ++t) CHECK(tasks[t] == t);
    CHECK(plan_violations(problem, timed_plan(problem, list)).empty());
  }
  CHECK(with > 200);
}

TEST_CASE("whole orders load each fixture once") {
  const ShopProblem problem = with_fixtures(5);
  ShopNet net = shop_net(problem);
  REQUIRE(has_whole_orders(net));
  const TaskList list = list_by_whole_orders(net, {}, {1000});
  CHECK(list == list_by_whole_orders(net, {}, {1000}));
  CHECK(levels_of(net, list).change == 5 * 30 * 60);
}

TEST_CASE("whole orders change places until the one that must not be late is not") {
  ShopProblem problem = with_fixtures(4);
  for (ShopTask& task : problem.tasks) task.ways.pop_back();
  for (std::size_t o = 0; o < 4; ++o) problem.orders[o] = {"order", monday + slots(o), o == 3 ? 100 : 1};
  problem.orders[3].due = monday + slots(6);
  ShopNet net = shop_net(problem);
  const TaskList list = list_by_whole_orders(net, {}, {100'000});
  CHECK(problem.tasks[list.front().task].order == 3);
  CHECK(levels_of(net, list).late == (12 - 0 + 18 - 1 + 24 - 2) * slot.count());
}
