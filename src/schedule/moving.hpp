// A list under change: a move is tried from the place where the list begins to differ, and taken or put back.
#pragma once

#include <span>

#include "schedule/timeline.hpp"

namespace seambook {

/// Levels in one number, for a search that may go through worse lists.
double weighed(const Levels&);
/// What stations that end early are worth beside it.
double weighed_ends(const Timeline&, Instant start);

/// Keeps the state of the shop before every so many tasks of the list.
class MovingList {
 public:
  MovingList(ShopNet&, TaskList);

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

  ShopNet* net_;
  TaskList list_, next_;               // next: as it was tried last
  std::vector<std::size_t> position_;  // of tasks in `next_`; in `list_` between tries
  std::vector<Timeline> kept_;         // the shop before position 0, stride, 2 * stride ... of `list_`
  Finishes finishes_, next_finishes_;
  Levels levels_, next_levels_;
  double weight_ = 0, next_weight_ = 0;
  Timeline line_;
  std::size_t timed_ = 0;           // finishes in `next_finishes_` before this position may differ from `finishes_`
  std::size_t low_ = 0, high_ = 0;  // where the lists differ: from low_, before high_
};

}  // namespace seambook
