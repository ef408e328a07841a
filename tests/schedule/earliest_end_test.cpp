// The earliest end of one order at stations apart against all orders and ways, and against lists by the dice.
#include "schedule/earliest_end.hpp"

#include <doctest/doctest.h>

#include "every_plan.hpp"
#include "schedule/floors.hpp"

namespace {

using namespace shop;

/// A random shop whose stations never wait for each other, with an order that is late whatever is done.
ShopProblem one_order_apart(std::mt19937& random, std::size_t tasks) {
  ShopProblem problem = random_plan_problem(random, {tasks, 1 + random() % 3, 0, 0});
  problem.orders = {{"order", problem.start - std::chrono::hours(100), 1 + static_cast<std::int64_t>(random() % 3)}};
  for (ShopTask& task : problem.tasks) task.order = 0;
  keep_at_stations(random, problem);
  return problem;
}

Levels nothing_known() { return {.unplaced = 1}; }

}  // namespace

TEST_CASE("the earliest end of one order is that of the best of all plans") {
  std::mt19937 random(81);
  std::size_t whole = 0, none = 0;
  for (int shops = 0; shops < 600; ++shops) {
    const ShopProblem problem = one_order_apart(random, 2 + random() % 3);
    ShopNet net = shop_net(problem);
    REQUIRE(has_one_order_apart(net));
    const Levels best = *EveryPlan(problem).best;
    const EarliestEnd found = earliest_end(net, nothing_known());
    INFO("shop ", shops);
    REQUIRE(found.list.has_value() == (best.unplaced == 0));
    REQUIRE(found.end.has_value() == (best.unplaced == 0));
    ++(found.list ? whole : none);
    if (!found.list) continue;
    const Levels levels = levels_of(net, *found.list);
    CHECK(levels.unplaced == 0);
    CHECK(levels.late == best.late);
    CHECK(lateness(net, 0, *found.end) == best.late);
    CHECK_FALSE(earliest_end(net, levels).list);
    CHECK(*earliest_end(net, levels).end == *found.end);
  }
  CHECK(whole > 100);
  CHECK(none > 10);
}

TEST_CASE("no list ends before the earliest end, and a list is taken and the floor raised where one is late") {
  std::mt19937 random(82);
  std::size_t better = 0;
  for (int shops = 0; shops < 300; ++shops) {
    const ShopProblem problem = one_order_apart(random, 5 + random() % 6);
    ShopNet net = shop_net(problem);
    TaskList list = random_list(random, problem);
    const Levels from = levels_of(net, list);
    Levels levels = from, floor;
    seek_earliest_end(net, list, levels, floor);
    INFO("shop ", shops);
    CHECK(levels == levels_of(net, list));
    CHECK(levels <= from);
    if (levels.unplaced == 0) CHECK(levels.late == floor.late);
    better += levels < from ? 1 : 0;
    for (int other = 0; other < 20; ++other) {
      const Levels of_other = levels_of(net, random_list(random, problem));
      if (of_other.unplaced == 0) CHECK(of_other.late >= floor.late);
    }
  }
  CHECK(better > 100);
}

TEST_CASE("the earliest end is not asked for of several orders, many tasks or work that waits for other work") {
  std::mt19937 random(83);
  ShopProblem problem = one_order_apart(random, 3);
  CHECK(has_one_order_apart(shop_net(problem)));
  CHECK_FALSE(has_one_order_apart(shop_net(one_order_apart(random, 17))));
  problem.precedence = {{0, 1}};
  CHECK_FALSE(has_one_order_apart(shop_net(problem)));
  problem.precedence.clear();
  problem.orders.push_back({"another", Instant::max(), 1});
  problem.tasks[1].order = 1;
  CHECK_FALSE(has_one_order_apart(shop_net(problem)));
}
