// A shop over days: work to be done, the ways in which each piece of it can be done, the working time of stations and
// people, and the days on which orders are due. Instants are local time of the shop, whole seconds.
#pragma once

#include <chrono>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "sequence/sequence.hpp"

namespace seambook {

using Instant = std::chrono::local_seconds;
using Seconds = std::chrono::seconds;

/// Time in which work goes on, `from` inclusive, `to` exclusive.
struct Window {
  Instant from{}, to{};
  friend bool operator==(const Window&, const Window&) = default;
};
/// Sorted, not empty, apart from each other: windows that meet are one.
using WorkingTime = std::vector<Window>;

/// Where, by whom and how long. All of `people` are there from the set-up to the end; the first one welds.
struct Way {
  std::optional<std::size_t> station;  // absent: away from the shop, no people, time runs by the clock
  std::vector<std::size_t> people;
  Seconds time{};                        // beside the set-up
  Instant first_start = Instant::min();  // not before: pinned
  Instant last_finish = Instant::max();  // the work must be done by then: a qualification runs out
  friend bool operator==(const Way&, const Way&) = default;
};

/// One piece of work that no other work interrupts. Breaks, nights and closed days may.
struct ShopTask {
  std::string name;       // unique
  Attributes needs;       // of the station; slots of ShopProblem::model
  std::vector<Way> ways;  // none: it cannot be done
  std::size_t order = 0;  // in ShopProblem::orders, for whose due date it counts
  Instant ready = Instant::min();
  Seconds rest{};  // after it the part rests by the clock before work that follows: cooling, the delay of a test
  Seconds held{};  // so much of its beginning must go without a pause longer than ShopProblem::longest_pause
};

struct ShopOrder {
  std::string name;
  Instant due = Instant::max();
  std::int64_t weight = 1;  // of each second late
};

struct ShopStation {
  std::string name;
  WorkingTime open;
  Attributes start;               // mounted before the first work
  std::optional<Attributes> end;  // what must stand mounted after the last work
  std::vector<ChangeTask> never;  // changes that are not made here: work that calls one is not possible
};

struct ShopPerson {
  std::string stamp;
  WorkingTime present;
};

/// Where a task stood in an earlier plan: what is moved against it is counted.
struct Earlier {
  std::size_t station = 0, person = 0;
  std::optional<std::size_t> after;  // the task before it at its station
  Instant start{};
};

struct ShopProblem {
  SetupModel model;
  std::vector<ShopStation> stations;
  std::vector<ShopPerson> people;
  std::vector<ShopOrder> orders;
  std::vector<ShopTask> tasks;
  std::vector<Edge> precedence;  // no cycle
  Instant start{};               // nothing begins before
  Seconds tolerance{};           // less than this counts as on time
  Seconds longest_pause = std::chrono::hours(1);
  std::optional<std::size_t> load_attribute;    // of the model: its changes count as fixture loads
  std::vector<std::optional<Earlier>> earlier;  // parallel to tasks, or empty
};

/// What a plan is judged by, the first level first; less is better.
struct Levels {
  std::int64_t unplaced = 0;  // tasks that cannot be done
  std::int64_t late = 0;      // seconds above the tolerance, times the order's weight
  std::int64_t moved = 0;     // tasks with another station, person or task before them than in the earlier plan
  std::int64_t change = 0;    // seconds of set-up
  std::int64_t loads = 0;     // of fixtures
  std::int64_t finish = 0;    // seconds from the start to the end of the last work
  friend auto operator<=>(const Levels&, const Levels&) = default;
};
inline constexpr std::size_t level_count = 6;

/// Tasks in an order that respects precedence, each with the number of its way. Done one after the other, each as early
/// as its station, its people and what it follows allow, the list says when everything happens.
struct Listed {
  std::size_t task = 0, way = 0;
  friend bool operator==(const Listed&, const Listed&) = default;
};
using TaskList = std::vector<Listed>;

}  // namespace seambook
