#include "schedule/moving.hpp"

#include <algorithm>
#include <limits>

namespace seambook {
namespace {

constexpr std::size_t stride = 8;  // tasks between two kept states
constexpr double rounding = 1e-6;  // of sums in another order
constexpr std::size_t looks = 4;   // tasks between two looks at the limit

/// Whatever is left would begin no earlier from here than from there, and with the same set-ups.
bool no_earlier(const ShopNet& net, const Timeline& here, const Timeline& there) {
  return here.mounted == there.mounted && (net.earlier.empty() || here.last == there.last) &&
         std::ranges::equal(here.station_free, there.station_free, std::ranges::greater_equal{}) &&
         std::ranges::equal(here.person_free, there.person_free, std::ranges::greater_equal{});
}

}  // namespace

double weighed(const Levels& levels, const Weights& weights) {
  return 1e9 * static_cast<double>(levels.unplaced) + weights.late * static_cast<double>(levels.late) +
         3600.0 * static_cast<double>(levels.moved) +
         weights.change * (static_cast<double>(levels.change) + 60.0 * static_cast<double>(levels.loads));
}

double MovingList::weighed_ends(const Timeline& line) const {
  double sum = 0;
  for (const Instant end : line.station_free) {
    const auto length = static_cast<double>((end - net_->start).count());
    sum += weights_.level_ends ? length * length / last_end_ : length;
  }
  return weights_.ends * sum;
}

MovingList::MovingList(ShopNet& net, TaskList list, const Weights& weights)
    : net_(&net),
      weights_(weights),
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
  for (const Instant end : line_.station_free)
    last_end_ = std::max(last_end_, static_cast<double>((end - net.start).count()));
  next_weight_ = weighed(next_levels_, weights_) + weighed_ends(line_);
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

/// Behind `from` nothing has changed, and nothing there ends earlier than it did: were it all to end as it did, the
/// list would still weigh more than `limit`.
bool MovingList::hopeless(std::size_t from, double limit) {
  const Levels& before = kept_[from / stride].levels;
  Levels least = line_.levels;
  order_finish_ = line_.order_finish;
  for (std::size_t p = from; p < list_.size(); ++p) {
    const Instant end = finishes_[list_[p].task];
    const std::uint32_t order = net_->tasks[list_[p].task].order;
    Instant& finish = order_finish_[order];
    if (end <= finish || end == never_done) continue;
    least.late += lateness(*net_, order, end) - lateness(*net_, order, finish);
    finish = end;
  }
  least.unplaced += levels_.unplaced - before.unplaced;
  least.moved += levels_.moved - before.moved;
  least.change += levels_.change - before.change;
  least.loads += levels_.loads - before.loads;
  return weighed(least, weights_) + weight_ - weighed(levels_, weights_) > limit + rounding;
}

/// What has been timed before `to` ends no earlier than it did: what follows it waits at least as long.
bool MovingList::ends_no_earlier(std::size_t to) const {
  for (std::size_t p = low_; p < to; ++p)
    if (next_finishes_[next_[p].task] < finishes_[next_[p].task]) return false;
  return true;
}

bool MovingList::time_tail(double limit) {
  line_ = kept_[low_ / stride];
  std::size_t p = low_ / stride * stride;
  bool good = true, compared = low_ == 0 && high_ == next_.size();
  while (p < next_.size() && good) {
    place(*net_, line_, next_finishes_, static_cast<std::uint32_t>(next_[p].task),
          static_cast<std::uint32_t>(next_[p].way));
    ++p;
    if (p % looks == 0) good = weighed(line_.levels, weights_) <= limit;
    if (compared || p % stride != 0 || p < high_ || p == next_.size()) continue;
    compared = no_earlier(*net_, line_, kept_[p / stride]) && ends_no_earlier(p);
    good = good && !(compared && hopeless(p, limit));
  }
  timed_ = std::max(p, high_);
  if (good) next_levels_ = final_levels(*net_, line_);
  if (good) next_weight_ = weighed(next_levels_, weights_) + weighed_ends(line_);
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
