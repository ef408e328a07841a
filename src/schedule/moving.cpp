#include "schedule/moving.hpp"

#include <algorithm>
#include <limits>

namespace seambook {
namespace {

constexpr std::size_t stride = 8;  // tasks between two kept states

}  // namespace

// A second late counts as much as ten of set-up; what cannot be done, more than any lateness of a year. The ends of the
// stations are there so that a move that only makes room still goes somewhere.
double weighed(const Levels& levels) {
  return 1e9 * static_cast<double>(levels.unplaced) + 10.0 * static_cast<double>(levels.late) +
         3600.0 * static_cast<double>(levels.moved) + static_cast<double>(levels.change) +
         60.0 * static_cast<double>(levels.loads);
}

double weighed_ends(const Timeline& line, Instant start) {
  std::int64_t sum = 0;
  for (const Instant end : line.station_free) sum += (end - start).count();
  return 0.1 * static_cast<double>(sum);
}

MovingList::MovingList(ShopNet& net, TaskList list)
    : net_(&net),
      list_(std::move(list)),
      next_(list_),
      position_(net.tasks.size()),
      kept_(list_.size() / stride + 1, nothing_placed(net)),
      finishes_(net.tasks.size(), never_done),
      next_finishes_(finishes_),
      line_(kept_[0]),
      high_(list_.size()) {
  for (std::size_t p = 0; p < list_.size(); ++p) position_[list_[p].task] = p;
  time_tail(std::numeric_limits<double>::infinity());
  take();
}

bool MovingList::try_move(std::span<const std::size_t> from, std::size_t to, std::span<const std::size_t> ways,
                          double limit) {
  const std::size_t low = std::min(from.front(), to), high = std::max(from.back() + 1, to);
  std::size_t write = low, taken = 0;
  const auto put_in = [&] {
    for (std::size_t k = 0; k < from.size(); ++k) next_[write++] = {list_[from[k]].task, ways[k]};
  };
  for (std::size_t read = low; read < high; ++read) {
    if (read == to) put_in();
    if (taken < from.size() && from[taken] == read)
      ++taken;
    else
      next_[write++] = list_[read];
  }
  if (to == high) put_in();
  return changed(low, high, limit);
}

bool MovingList::try_swap(std::size_t a, std::size_t b, std::size_t way_of_a, std::size_t way_of_b, double limit) {
  std::copy(list_.begin() + static_cast<std::ptrdiff_t>(a), list_.begin() + static_cast<std::ptrdiff_t>(b) + 1,
            next_.begin() + static_cast<std::ptrdiff_t>(a));
  next_[b] = {list_[a].task, way_of_a};
  next_[a] = {list_[b].task, way_of_b};
  return changed(a, b + 1, limit);
}

/// Checks and times what stands in `next_` now; puts it back when it will not do.
bool MovingList::changed(std::size_t low, std::size_t high, double limit) {
  low_ = low, high_ = high;
  for (std::size_t p = low; p < high; ++p) position_[next_[p].task] = p;
  bool good = true;
  for (std::size_t p = low; p < high && good; ++p)
    for (const std::uint32_t before : net_->tasks[next_[p].task].before) good = good && position_[before] < p;
  if (good && time_tail(limit)) return true;
  put_back();
  return false;
}

void MovingList::put_back() {
  for (std::size_t p = low_; p < high_; ++p) {
    next_[p] = list_[p];
    position_[list_[p].task] = p;
  }
  for (std::size_t p = low_ / stride * stride; p < timed_; ++p)
    next_finishes_[list_[p].task] = finishes_[list_[p].task];
  timed_ = 0;
}

bool MovingList::time_tail(double limit) {
  line_ = kept_[low_ / stride];
  bool good = true;
  std::size_t p = low_ / stride * stride;
  for (; p < next_.size() && good; ++p) {
    place(*net_, line_, next_finishes_, static_cast<std::uint32_t>(next_[p].task),
          static_cast<std::uint32_t>(next_[p].way));
    good = weighed(line_.levels) <= limit;
  }
  timed_ = std::max(p, high_);
  if (good) next_levels_ = final_levels(*net_, line_);
  if (good) next_weight_ = weighed(next_levels_) + weighed_ends(line_, net_->start);
  return good && next_weight_ <= limit;
}

void MovingList::take() {
  std::copy(next_.begin() + static_cast<std::ptrdiff_t>(low_), next_.begin() + static_cast<std::ptrdiff_t>(high_),
            list_.begin() + static_cast<std::ptrdiff_t>(low_));
  levels_ = next_levels_;
  weight_ = next_weight_;
  timed_ = 0;
  line_ = kept_[low_ / stride];
  for (std::size_t p = low_ / stride * stride; p < list_.size(); ++p) {
    if (p % stride == 0) kept_[p / stride] = line_;
    place(*net_, line_, finishes_, static_cast<std::uint32_t>(list_[p].task), static_cast<std::uint32_t>(list_[p].way));
  }
}

}  // namespace seambook
