#include "schedule/lane_list.hpp"

#include <algorithm>

namespace seambook {
namespace {

constexpr double gain_that_counts = 1e-6;  // below, it is rounding

auto piece_from_one(const std::vector<Piece>& pieces, std::size_t p) {
  return pieces.begin() + static_cast<std::ptrdiff_t>(p) - 1;
}

void exchanged_run(const std::vector<Piece>& pieces, std::size_t low, std::size_t middle, std::size_t high,
                   std::vector<Piece>& run) {
  run.assign(piece_from_one(pieces, middle), piece_from_one(pieces, high));
  run.insert(run.end(), piece_from_one(pieces, low), piece_from_one(pieces, middle));
}

void swapped_run(const std::vector<Piece>& pieces, std::size_t low, std::size_t high, std::vector<Piece>& run) {
  run.assign(piece_from_one(pieces, low), piece_from_one(pieces, high + 1));
  std::swap(run.front(), run.back());
}

}  // namespace

std::vector<std::uint32_t> LaneList::order() const {
  std::vector<std::uint32_t> out;
  out.reserve(size());
  for (const Piece& piece : list().pieces) out.push_back(piece.task + 1);
  return out;
}

double LaneList::exchanged(std::size_t low, std::size_t middle, std::size_t high, double limit) {
  exchanged_run(list().pieces, low, middle, high, run_);
  return lanes_->tried(lane_, low - 1, run_, high - 1, limit - gain_that_counts);
}

double LaneList::swapped(std::size_t low, std::size_t high, double limit) {
  swapped_run(list().pieces, low, high, run_);
  return lanes_->tried(lane_, low - 1, run_, high, limit - gain_that_counts);
}

void LaneList::set(std::size_t low, std::size_t high) { lanes_->apply({lane_, low - 1, high - 1, run_}); }

void LaneList::exchange(std::size_t low, std::size_t middle, std::size_t high) {
  exchanged_run(list().pieces, low, middle, high, run_);
  set(low, high);
}

void LaneList::swap(std::size_t low, std::size_t high) {
  swapped_run(list().pieces, low, high, run_);
  set(low, high + 1);
}

void LaneList::become(const std::vector<std::uint32_t>& order) {
  run_.clear();
  for (const std::uint32_t task : order) run_.push_back({task - 1, 0});
  set(1, size() + 1);
}

}  // namespace seambook
