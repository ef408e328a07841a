// An order of flat work under change: what a move costs is bounded from sums over the order before any task is looked
// at, and most moves are refused by that alone.
#pragma once

#include <limits>

#include "schedule/flat_work.hpp"
#include "schedule/lanes.hpp"

namespace seambook {

inline constexpr std::int64_t no_gain = std::numeric_limits<std::int64_t>::max();

/// It costs the weighted lateness of its tasks and, by far less, its set-ups.
class FlatList {
 public:
  /// `order`: each task from 1 on once.
  FlatList(const FlatWork&, const std::vector<std::uint32_t>& order);

  /// Position 1 holds the first task; 0 the start, the last the end.
  std::vector<std::uint32_t> order() const;
  std::size_t size() const { return work_->tasks; }
  std::int64_t cost() const { return late_.back() + places_.back().finish; }
  LaneLevels levels() const { return {0, late_.back() / set_ups_in_one_late}; }
  /// The cost once the runs [low, middle) and [middle, high) have changed places; `no_gain` unless it is below `limit`,
  /// which is at most twice what any order may cost (2e18).
  std::int64_t exchanged(std::size_t low, std::size_t middle, std::size_t high, std::int64_t limit) {
    const Shifts by = shifts(low, middle, high);
    ++looked_at_;
    const std::int64_t least = shifted(low, middle, by.back) + shifted(middle, high, by.forth) +
                               shifted(high, places_.size(), by.rest) + by.rest;
    return cost() + least >= limit ? no_gain : exchanged_exactly(low, middle, high, by, limit);
  }
  /// The same once the tasks at two positions, `low` first, not beside each other, have changed places.
  std::int64_t swapped(std::size_t low, std::size_t high, std::int64_t limit);
  void exchange(std::size_t low, std::size_t middle, std::size_t high);
  void swap(std::size_t low, std::size_t high);
  void become(const std::vector<std::uint32_t>& order);
  /// Moves and tasks looked at so far: what a search is counted by.
  std::size_t looked_at() const { return looked_at_; }

 private:
  /// What stands at a position: its task, the end of it, and the weight of all that is late up to it.
  struct Place {
    std::int64_t finish = 0, heavy = 0;
    std::uint32_t task = 0;
  };
  /// How much later each run of an exchange comes, and what stands behind them.
  struct Shifts {
    std::int64_t forth = 0, back = 0, rest = 0;
  };

  Shifts shifts(std::size_t low, std::size_t middle, std::size_t high) const {
    const Place *before = &places_[low - 1], *first = &places_[middle - 1], *second = &places_[high - 1];
    Shifts by;
    by.forth = before->finish + step(*before, first[1]) - first[1].finish;
    by.back = second->finish + by.forth + step(*second, before[1]) - before[1].finish;
    by.rest = first->finish + by.back + step(*first, second[1]) - second[1].finish;
    return by;
  }
  std::int64_t step(const Place& from, const Place& to) const { return work_->step(from.task, to.task); }
  /// What the tasks at [from, to) cost more at least, each that much later: what is late stays late, or costs nothing.
  std::int64_t shifted(std::size_t from, std::size_t to, std::int64_t by) const {
    return by * (places_[to - 1].heavy - places_[from - 1].heavy);
  }
  std::int64_t exchanged_exactly(std::size_t low, std::size_t middle, std::size_t high, const Shifts&,
                                 std::int64_t limit);
  std::int64_t late_more(std::size_t from, std::size_t to, std::int64_t by, std::int64_t limit);
  std::int64_t lateness_of(std::uint32_t task, std::int64_t finish) const;
  void time_from(std::size_t position);

  const FlatWork* work_;
  std::vector<Place> places_;
  // By position: how far the end is behind the due date, the task's weight, and the cost of lateness of all up to it.
  std::vector<std::int64_t> behind_, weight_, late_;
  std::size_t looked_at_ = 0;
};

}  // namespace seambook
