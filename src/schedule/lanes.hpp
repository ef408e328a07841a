// Stations that never wait for each other: without precedence, without people who change stations and without an
// earlier plan, each one's work is a list of its own, timed by itself. What a change costs is found from the first
// place where the list differs, at one or two stations.
#pragma once

#include <span>

#include "schedule/timeline.hpp"

namespace seambook {

/// Whether every list of such a shop falls into lists of its stations.
bool stations_apart(const ShopNet&);

/// One way of one task, in a station's list.
struct Piece {
  std::uint32_t task = 0, way = 0;
};

/// The station before a piece, and what all pieces before it cost.
struct LaneState {
  Instant free{};
  std::uint32_t mounted = 0;
  double cost = 0;
};

struct Lane {
  std::uint32_t station = 0;
  std::vector<Piece> pieces;
  std::vector<LaneState> before;  // by piece, and at the end
  double cost() const { return before.back().cost; }
};

/// A part of a lane, [low, high), gives way to other pieces.
struct LaneChange {
  std::size_t lane = 0, low = 0, high = 0;
  std::vector<Piece> pieces;
};

/// A way as the lanes read it again and again: all of it together, and whether it is the usual kind, whose time falls
/// into the only window there is.
struct LaneWay {
  std::uint32_t need = 0, order = 0;
  bool plain = false, single = false;  // single: the order's only task
  Seconds time{};
  Instant not_before{}, open{}, closed{};  // open, closed: of a plain way
  Instant due{};                           // with the tolerance
  double weight = 0;
};

/// The first two levels of all lanes together.
struct LaneLevels {
  std::int64_t unplaced = 0, late = 0;
  friend auto operator<=>(const LaneLevels&, const LaneLevels&) = default;
};

/// The lists of all stations under change. A lane costs the weighted lateness of its work; of an order that several
/// pieces make up only the last one in the lane counts, and steeply, as a power: orders spread over the lanes, and the
/// sum falls as the latest lane does.
class Lanes {
 public:
  Lanes(ShopNet&, const TaskList&);

  const std::vector<Lane>& all() const { return lanes_; }
  /// Whether some order is made up of several pieces.
  bool shared_orders() const { return shared_; }
  double cost() const;
  /// What the lane would cost; infinity when that is more than `limit`.
  double tried(std::size_t lane, std::size_t low, std::span<const Piece> pieces, std::size_t high, double limit);
  void apply(const LaneChange&);
  /// Lateness of this much of a shared order counts as itself; costs are found anew.
  void scale_to(std::int64_t late);
  /// Pieces timed so far: what the search is counted by.
  std::size_t timed() const { return timed_; }

  TaskList list() const;
  LaneLevels levels();

 private:
  Instant step(const Lane&, LaneState&, const Piece&);
  Instant finish_of(const LaneWay&, const Piece&, Instant from, const SetUp&) const;
  double lateness_cost(const Lane&, std::uint32_t order, Instant finish, std::size_t low);
  double weighed_late(std::uint32_t order, Instant finish) const;
  Instant last_of(const Lane&, std::uint32_t order, std::size_t low) const;
  void time_lane(Lane&, std::size_t from);

  ShopNet* net_;
  std::vector<Lane> lanes_;
  std::vector<LaneWay> ways_;             // of all tasks
  std::vector<std::uint32_t> first_way_;  // by task
  std::vector<bool> single_;              // orders of one task
  bool shared_ = false;
  double scale_ = 1;
  std::size_t low_ = 0, timed_ = 0;
  std::uint64_t walk_ = 0;
  std::vector<std::uint64_t> seen_;  // the walk in which an order's end in the lane was found
  std::vector<Instant> last_;        // that end
  std::vector<Instant> finish_;      // by task
  std::vector<Instant> ends_;        // by order, reused
};

}  // namespace seambook
