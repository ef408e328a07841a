// One lane of `Lanes` as a list under change, for work of any kind in one way each.
#pragma once

#include <cstdint>
#include <vector>

#include "schedule/lanes.hpp"

namespace seambook {

/// Positions count from 1, and tasks in an order too.
class LaneList {
 public:
  LaneList(Lanes& lanes, std::size_t lane) : lanes_(&lanes), lane_(lane) {}

  std::vector<std::uint32_t> order() const;
  std::size_t size() const { return list().pieces.size(); }
  double cost() const { return list().cost(); }
  LaneLevels levels() { return lanes_->levels(); }
  /// The cost once the runs [low, middle) and [middle, high) have changed places; infinity unless it is below `limit`.
  double exchanged(std::size_t low, std::size_t middle, std::size_t high, double limit);
  /// The same once the tasks at two positions have changed places.
  double swapped(std::size_t low, std::size_t high, double limit);
  void exchange(std::size_t low, std::size_t middle, std::size_t high);
  void swap(std::size_t low, std::size_t high);
  void become(const std::vector<std::uint32_t>& order);
  std::size_t looked_at() const { return lanes_->timed(); }

 private:
  const Lane& list() const { return lanes_->all()[lane_]; }
  void set(std::size_t low, std::size_t high);

  Lanes* lanes_;
  std::size_t lane_ = 0;
  std::vector<Piece> run_;  // reused
};

}  // namespace seambook
