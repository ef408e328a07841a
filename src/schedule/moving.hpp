// A list under change: a move is tried from the place where the list begins to differ, and taken or put back.
#pragma once

#include <span>

#include "schedule/timeline.hpp"

namespace seambook {

/// What a second of each counts for in one number, by which a search may go through worse lists. What cannot be done
/// counts more than any lateness of a year.
struct Weights {
  double late = 10, change = 1;
  double ends = 0.1;        // of the stations, so that a move that only makes room still goes somewhere
  bool level_ends = false;  // the late ones count more, as their squares: work spreads over the stations
};
double weighed(const Levels&, const Weights&);

/// Keeps the state of the shop before every so many tasks of the list.
class MovingList {
 public:
  MovingList(ShopNet&, TaskList, const Weights&);

  const TaskList& list() const { return list_; }
  const Levels& levels() const { return levels_; }
  std::size_t position(std::uint32_t task) const { return position_[task]; }

  /// Tasks at these positions (rising) are taken out and put in again, in turn, before the one at position `to` (the
  /// list's size: at the end), each in its new way. False when precedence forbids it or the levels weigh more than
  /// `limit`.
  bool try_move(std::span<const std::size_t> from, std::size_t to, std::span<const std::size_t> ways, double limit);
  /// The tasks at two positions, a before b, change places.
  bool try_swap(std::size_t a, std::size_t b, std::size_t way_of_a, std::size_t way_of_b, double limit);
  /// Goes on from what was tried last and did not fail, or leaves it.
  void take();
  void put_back();
  double next_weight() const { return next_weight_; }
  double weight() const { return weight_; }

 private:
  bool changed(std::size_t low, std::size_t high, double limit);
  bool time_tail(double limit);
  bool ends_no_earlier(std::size_t to) const;
  bool hopeless(std::size_t from, double limit);
  double weighed_ends(const Timeline&) const;

  ShopNet* net_;
  Weights weights_;
  double last_end_ = 1;                // of the stations when the list was new, in seconds
  TaskList list_, next_;               // next: as it was tried last
  std::vector<std::size_t> position_;  // of tasks in `next_`; in `list_` between tries
  std::vector<Timeline> kept_;         // the shop before position 0, stride, 2 * stride ... of `list_`
  Finishes finishes_, next_finishes_;
  Levels levels_, next_levels_;
  double weight_ = 0, next_weight_ = 0;
  Timeline line_;
  std::vector<Instant> order_finish_;  // reused
  std::size_t timed_ = 0;              // finishes in `next_finishes_` before this position may differ from `finishes_`
  std::size_t low_ = 0, high_ = 0;     // where the lists differ: from low_, before high_
};

}  // namespace seambook
