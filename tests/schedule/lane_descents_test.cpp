// Descents at a single station against all orders.
#include "schedule/lane_descents.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <utility>

#include "random_plans.hpp"
#include "schedule/flat_work.hpp"
#include "schedule/lane_start.hpp"

namespace {

using namespace shop;

/// One station, one way each, each task an order of its own; half of them without breaks and ready dates.
ShopProblem one_station(std::mt19937& random) {
  ShopProblem problem = random_plan_problem(random, {2 + random() % 5, 1, 0, 0});
  problem.orders.clear();
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    ShopTask& task = problem.tasks[t];
    task.ways.resize(std::min<std::size_t>(task.ways.size(), 1));
    if (task.ways.empty() || !task.ways.front().station) task.ways = {{0, {}, slot}};
    task.order = t;
    problem.orders.push_back({"order", monday + slots(random() % 40), static_cast<std::int64_t>(1 + random() % 4)});
  }
  if (random() % 2 == 0) return problem;
  problem.stations.front().open = {{monday, monday + slots(1000)}};
  for (ShopTask& task : problem.tasks) {
    task.ready = Instant::min(), task.held = Seconds{};
    task.ways.front() = {0, {}, slot + task.ways.front().time};
  }
  return problem;
}

TaskList in_order(const ShopProblem& problem) {
  TaskList list;
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) list.push_back({t, 0});
  return list;
}

using Undone = std::pair<std::int64_t, std::int64_t>;  // tasks, then lateness

Undone undone(const Levels& levels) { return {levels.unplaced, levels.late}; }

}  // namespace

TEST_CASE("descents at one station come down to the least lateness of all orders") {
  std::mt19937 random(71);
  std::size_t late = 0, flat = 0;
  for (int shops = 0; shops < 200; ++shops) {
    const ShopProblem problem = one_station(random);
    ShopNet net = shop_net(problem);
    REQUIRE(in_one_lane(net));
    REQUIRE(stations_apart(net));
    TaskList list = in_order(problem);
    const Improved from{list, levels_of(net, list)};
    Undone least = undone(from.levels);
    while (std::next_permutation(list.begin(), list.end(),
                                 [](const Listed& a, const Listed& b) { return a.task < b.task; }))
      least = std::min(least, undone(levels_of(net, list)));
    INFO("shop ", shops);
    const Improved found = lane_descents(net, from, least.second, {3000, 0, 1});
    CHECK(undone(found.levels) == least);
    CHECK(found.levels == levels_of(net, found.list));
    CHECK(found.list == lane_descents(net, from, least.second, {3000, 0, 1}).list);
    late += least.second > 0 ? 1 : 0;
    flat += flat_work(net) ? 1 : 0;
  }
  CHECK(late > 50);
  CHECK(flat > 10);
  CHECK(flat < 100);
}

TEST_CASE("a start at a station holds each of its pieces once") {
  std::mt19937 random(72);
  for (int shops = 0; shops < 100; ++shops) {
    const ShopProblem problem = one_station(random);
    ShopNet net = shop_net(problem);
    const Lanes lanes(net, in_order(problem));
    std::vector<std::uint32_t> tasks;
    for (const Piece& piece : lane_start(net, lanes.all()[0], 1, 0.2)) tasks.push_back(piece.task);
    std::ranges::sort(tasks);
    REQUIRE(tasks.size() == problem.tasks.size());
    for (std::uint32_t t = 0; t < tasks.size(); ++t) CHECK(tasks[t] == t);
  }
}
