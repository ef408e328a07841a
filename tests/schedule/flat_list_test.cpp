// Moves in a flat list against the list timed anew, and what makes work flat.
#include "schedule/flat_list.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

#include "random_plans.hpp"

namespace {

using namespace shop;

constexpr std::int64_t more_than_any = 2'000'000'000'000'000'000;

struct FlatShop {
  ShopProblem problem;
  std::vector<std::vector<Seconds>> prices;
  ShopNet net() const { return shop_net(problem, {set_up_table(prices)}); }
};

FlatShop flat_shop(std::mt19937& random, std::size_t tasks) {
  FlatShop out;
  out.problem.start = monday;
  out.problem.tolerance = Seconds(random() % 50);
  out.problem.stations.push_back({"station", {{monday, monday + Seconds(1'000'000)}}, {}, {}, {}});
  for (std::size_t t = 0; t < tasks; ++t) {
    out.problem.tasks.push_back({"task", {}, {Way{0, {}, Seconds(1 + random() % 100)}}, t});
    const Instant due = random() % 8 == 0 ? Instant::max() : monday + Seconds(random() % (80 * tasks)) - Seconds(200);
    out.problem.orders.push_back({"order", due, static_cast<std::int64_t>(random() % 5)});
  }
  out.prices.assign(tasks + 1, std::vector<Seconds>(tasks));
  for (auto& row : out.prices)
    for (Seconds& price : row) price = Seconds(random() % 60);
  return out;
}

std::vector<std::uint32_t> random_order(std::mt19937& random, std::size_t tasks) {
  std::vector<std::uint32_t> order(tasks);
  std::iota(order.begin(), order.end(), 1);
  std::shuffle(order.begin(), order.end(), random);
  return order;
}

std::int64_t late(ShopNet& net, const FlatList& list) {
  TaskList tasks;
  for (const std::uint32_t task : list.order()) tasks.push_back({task - 1, 0});
  const Levels levels = levels_of(net, tasks);
  CHECK(levels.unplaced == 0);
  return levels.late;
}

/// What was foretold of a move holds, and under a limit that it does not come below nothing is foretold.
template <class Foretold, class Move>
void check_move(ShopNet& net, FlatList& list, Foretold foretold, Move move) {
  const std::int64_t before = list.cost(), cost = foretold(more_than_any);
  CHECK(foretold(cost) == no_gain);
  CHECK(foretold(cost + 1) == cost);
  CHECK(list.cost() == before);
  move();
  CHECK(list.cost() == cost);
  CHECK(list.levels() == LaneLevels{0, late(net, list)});
}

}  // namespace

TEST_CASE("a move in a flat list costs what the list costs when it is timed anew") {
  std::mt19937 random(81);
  for (int shops = 0; shops < 200; ++shops) {
    const std::size_t tasks = 3 + random() % 12;
    ShopNet net = flat_shop(random, tasks).net();
    const auto work = flat_work(net);
    REQUIRE(work);
    FlatList list(*work, random_order(random, tasks));
    CHECK(list.levels() == LaneLevels{0, late(net, list)});
    for (int moves = 0; moves < 20; ++moves) {
      INFO("shop ", shops, ", move ", moves);
      std::size_t at[3] = {1 + random() % (tasks + 1), 1 + random() % (tasks + 1), 1 + random() % (tasks + 1)};
      std::ranges::sort(at);
      const auto [low, middle, high] = at;
      if (low < middle && middle < high)
        check_move(
            net, list, [&, l = low, m = middle, h = high](auto limit) { return list.exchanged(l, m, h, limit); },
            [&, l = low, m = middle, h = high] { list.exchange(l, m, h); });
      if (low + 1 < high && high <= tasks)
        check_move(
            net, list, [&, l = low, h = high](auto limit) { return list.swapped(l, h, limit); },
            [&, l = low, h = high] { list.swap(l, h); });
    }
    const auto order = random_order(random, tasks);
    list.become(order);
    CHECK(list.order() == order);
    CHECK(list.cost() == FlatList(*work, order).cost());
  }
}

TEST_CASE("work that may wait, is interrupted or does not fit is not flat") {
  std::mt19937 random(82);
  const FlatShop shop = flat_shop(random, 5);
  const auto is_flat = [](const FlatShop& of) {
    ShopNet net = of.net();
    return flat_work(net).has_value();
  };
  CHECK(is_flat(shop));
  FlatShop changed = shop;
  changed.problem.tasks[2].ready = monday + Seconds(1);
  CHECK_FALSE(is_flat(changed));
  changed = shop;
  changed.problem.stations[0].open = {{monday, monday + Seconds(500)}, {monday + Seconds(600), monday + Seconds(9000)}};
  CHECK_FALSE(is_flat(changed));
  changed = shop;
  changed.problem.stations[0].open = {{monday, monday + Seconds(100)}};
  CHECK_FALSE(is_flat(changed));
  changed = shop;
  changed.problem.tasks[3].ways[0].last_finish = monday + Seconds(100);
  CHECK_FALSE(is_flat(changed));
  changed = shop;
  changed.problem.tasks[3].order = 1;
  CHECK_FALSE(is_flat(changed));
  changed = shop;
  changed.problem.orders[0].due = monday + Seconds(10), changed.problem.orders[0].weight = 100'000'000'000'000;
  CHECK_FALSE(is_flat(changed));
}
