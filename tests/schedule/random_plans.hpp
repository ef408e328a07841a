// Random small shops with everything a plan has to mind, on a grid of ten minutes: mounted state, changes never made,
// end states, precedence with rests, ready dates, people, shifts with breaks, qualifications that run out, due dates.
#pragma once

#include <algorithm>
#include <random>

#include "../sequence/random_shop.hpp"
#include "schedule/plan.hpp"

namespace shop {

inline constexpr Seconds slot{600};
inline const Instant monday{std::chrono::local_days(std::chrono::year(2026) / 5 / 11)};

inline Seconds slots(std::size_t n) { return slot * static_cast<std::int64_t>(n); }

/// Two days with a break each, begun early or late.
inline WorkingTime random_time(std::mt19937& random) {
  WorkingTime time;
  for (std::size_t day = 0; day < 2; ++day) {
    const Instant from = monday + slots(144 * day + 36 + random() % 6);
    const Instant noon = from + slots(4 + random() % 8);
    time.push_back({from, noon});
    time.push_back({noon + slots(1 + random() % 10), noon + slots(12 + random() % 12)});
  }
  return time;
}

inline void add_ways(std::mt19937& random, const ShopProblem& problem, ShopTask& task) {
  const std::size_t ways = random() % 12 == 0 ? 0 : 1 + random() % 2;
  for (std::size_t w = 0; w < ways; ++w) {
    Way way;
    way.time = slots(random() % 9);
    if (random() % 10 > 0) {
      way.station = random() % problem.stations.size();
      if (!problem.people.empty()) way.people.push_back(random() % problem.people.size());
      if (problem.people.size() > 1 && random() % 6 == 0) way.people = {0, 1};
    }
    if (random() % 8 == 0) way.first_start = monday + slots(36 + random() % 40);
    if (random() % 6 == 0) way.last_finish = monday + slots(50 + random() % 200);
    task.ways.push_back(std::move(way));
  }
}

struct Size {
  std::size_t tasks = 4, stations = 2, people = 2, edges = 2;
};

inline ShopProblem random_plan_problem(std::mt19937& random, const Size& size) {
  Kind kind;
  kind.attributes = 2, kind.tasks = 5;
  ShopProblem problem;
  problem.model = random_model(random, kind);
  for (ChangeTask& task : problem.model.tasks) task.duration = minutes(10.0 * static_cast<double>(random() % 4));
  problem.start = monday;
  problem.tolerance = random() % 3 == 0 ? slots(random() % 3) : Seconds{};
  problem.longest_pause = slots(2 + random() % 6);
  if (random() % 2 == 0) problem.load_attribute = random() % 2;
  for (std::size_t s = 0; s < size.stations; ++s) {
    ShopStation station{"station" + std::to_string(s), random_time(random), some_attributes(random, kind), {}, {}};
    if (random() % 5 == 0) station.end = some_attributes(random, kind);
    if (random() % 6 == 0) {
      station.never.push_back(
          {"never", {}, random() % 2, some_values(random, 3), {random() % 3 == 0 ? 1U : 2U}, false});
    }
    problem.stations.push_back(std::move(station));
  }
  for (std::size_t p = 0; p < size.people; ++p)
    problem.people.push_back({"person" + std::to_string(p), random_time(random)});
  for (std::size_t o = 0; o < 2; ++o)
    problem.orders.push_back({"order" + std::to_string(o),
                              random() % 4 == 0 ? Instant::max() : monday + slots(40 + random() % 140),
                              static_cast<std::int64_t>(1 + random() % 3)});
  for (std::size_t t = 0; t < size.tasks; ++t) {
    ShopTask task{"task" + std::to_string(t), some_attributes(random, kind), {}, random() % 2};
    add_ways(random, problem, task);
    if (random() % 5 == 0) task.ready = monday + slots(36 + random() % 60);
    if (random() % 4 == 0) task.rest = slots(random() % 12);
    if (random() % 4 == 0) task.held = slots(random() % 6);
    problem.tasks.push_back(std::move(task));
  }
  for (std::size_t e = 0; e < size.edges && size.tasks > 1; ++e) {
    const std::size_t i = random() % (size.tasks - 1);
    problem.precedence.emplace_back(i, i + 1 + random() % (size.tasks - 1 - i));
  }
  return problem;
}

/// Every task at some station, none elsewhere.
inline void keep_at_stations(std::mt19937& random, ShopProblem& problem) {
  for (ShopTask& task : problem.tasks) {
    for (Way& way : task.ways)
      if (!way.station) way.station = random() % problem.stations.size();
    if (task.ways.empty()) task.ways.push_back({0, {}, slot});
  }
}

/// All tasks in any order, each in any of its ways.
inline TaskList random_list(std::mt19937& random, const ShopProblem& problem) {
  TaskList list;
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) list.push_back({t, random() % problem.tasks[t].ways.size()});
  std::shuffle(list.begin(), list.end(), random);
  return list;
}

}  // namespace shop
