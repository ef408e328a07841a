// Lists by station against the timeline of all, on random shops whose stations are apart.
#include "schedule/lanes.hpp"

#include <doctest/doctest.h>

#include <limits>

#include "random_plans.hpp"
#include "schedule/improve_lanes.hpp"

namespace {

using namespace shop;

constexpr double no_limit = std::numeric_limits<double>::infinity();

/// A random shop without what lets stations wait for each other; each task an order of its own, or all in two orders.
ShopProblem apart(std::mt19937& random) {
  ShopProblem problem = random_plan_problem(random, {2 + random() % 8, 1 + random() % 3, 0, 0});
  keep_at_stations(random, problem);
  if (random() % 2 == 0) return problem;
  problem.orders.clear();
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    problem.tasks[t].order = t;
    problem.orders.push_back({"order", monday + slots(40 + random() % 100), static_cast<std::int64_t>(random() % 4)});
  }
  return problem;
}

/// A part of a lane the other way round.
LaneChange turned(std::mt19937& random, const Lanes& lanes, std::size_t number) {
  const Lane& lane = lanes.all()[number];
  LaneChange out{number, random() % (lane.pieces.size() + 1), 0, {}};
  out.high = out.low + random() % (lane.pieces.size() - out.low + 1);
  for (std::size_t p = out.high; p-- > out.low;) out.pieces.push_back(lane.pieces[p]);
  return out;
}

/// The end of a lane goes to the end of the station of a way of its last task.
void move_last(std::mt19937& random, const ShopNet& net, Lanes& lanes, std::size_t number) {
  const Lane& lane = lanes.all()[number];
  if (lane.pieces.empty()) return;
  const std::uint32_t task = lane.pieces.back().task;
  const auto way = static_cast<std::uint32_t>(random() % net.tasks[task].ways.size());
  lanes.apply({number, lane.pieces.size() - 1, lane.pieces.size(), {}});
  const std::size_t to = net.tasks[task].ways[way].station, size = lanes.all()[to].pieces.size();
  lanes.apply({to, size, size, {{task, way}}});
}

bool same_levels(ShopNet& net, Lanes& lanes) {
  const Levels all = levels_of(net, lanes.list());
  return lanes.levels() == LaneLevels{all.unplaced, all.late};
}

}  // namespace

TEST_CASE("lists by station end when the timeline says, and a change costs what was said before it was made") {
  std::mt19937 random(41);
  for (int shops = 0; shops < 2000; ++shops) {
    const ShopProblem problem = apart(random);
    ShopNet net = shop_net(problem);
    REQUIRE(stations_apart(net));
    Lanes lanes(net, random_list(random, problem));
    lanes.scale_to(3600);
    INFO("shop ", shops);
    REQUIRE(same_levels(net, lanes));
    for (int moves = 0; moves < 20; ++moves) {
      const std::size_t number = random() % problem.stations.size();
      const LaneChange change = turned(random, lanes, number);
      const double said = lanes.tried(number, change.low, change.pieces, change.high, no_limit);
      lanes.apply(change);
      REQUIRE(said == doctest::Approx(lanes.all()[number].cost()));
      move_last(random, net, lanes, number);
      REQUIRE(same_levels(net, lanes));
      Lanes anew(net, lanes.list());
      anew.scale_to(3600);
      REQUIRE(anew.cost() == doctest::Approx(lanes.cost()));
    }
  }
}

TEST_CASE("a limit on a change lets through what costs less, and nothing that costs more") {
  std::mt19937 random(42);
  std::size_t stopped = 0;
  for (int shops = 0; shops < 2000; ++shops) {
    const ShopProblem problem = apart(random);
    ShopNet net = shop_net(problem);
    Lanes lanes(net, random_list(random, problem));
    const std::size_t number = random() % problem.stations.size();
    const LaneChange change = turned(random, lanes, number);
    const double cost = lanes.tried(number, change.low, change.pieces, change.high, no_limit);
    const double limit = lanes.all()[number].cost();
    const double limited = lanes.tried(number, change.low, change.pieces, change.high, limit);
    INFO("shop ", shops);
    if (cost < limit - 1e-3) CHECK(limited == doctest::Approx(cost));
    if (cost > limit + 1e-3) {
      CHECK(limited == no_limit);
      ++stopped;
    }
  }
  CHECK(stopped > 100);
}

TEST_CASE("what waits for another station makes stations one shop") {
  std::mt19937 random(5);
  ShopProblem problem = random_plan_problem(random, {3, 2, 1, 0});
  for (ShopTask& task : problem.tasks) task.ways = {{0, {0}, slot}};
  CHECK(stations_apart(shop_net(problem)));
  problem.tasks[1].ways[0].station = 1;
  CHECK_FALSE(stations_apart(shop_net(problem)));  // the person goes from one to the other
  problem.tasks[1].ways[0].people.clear();
  CHECK(stations_apart(shop_net(problem)));
  problem.precedence = {{0, 1}};
  CHECK_FALSE(stations_apart(shop_net(problem)));
}

TEST_CASE("the search by station never ends worse than it began, and twice the same") {
  std::mt19937 random(43);
  std::size_t better = 0;
  for (int shops = 0; shops < 300; ++shops) {
    const ShopProblem problem = apart(random);
    ShopNet net = shop_net(problem);
    const TaskList list = random_list(random, problem);
    const Improved from{list, levels_of(net, list)};
    const Improved found = improved_lanes(net, from, 0, {200, 0, 1}), again = improved_lanes(net, from, 0, {200, 0, 1});
    INFO("shop ", shops);
    CHECK(found.levels <= from.levels);
    CHECK(found.levels == levels_of(net, found.list));
    CHECK(found.list == again.list);
    better += found.levels.late < from.levels.late ? 1 : 0;
  }
  CHECK(better > 100);
}
