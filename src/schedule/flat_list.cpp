#include "schedule/flat_list.hpp"

#include <algorithm>

namespace seambook {
namespace {

constexpr std::size_t between_checks = 8;

}  // namespace

FlatList::FlatList(const FlatWork& work, const std::vector<std::uint32_t>& order) : work_(&work) {
  const std::size_t size = work.tasks + 2;
  places_.resize(size);
  for (auto* array : {&behind_, &weight_, &late_}) array->assign(size, 0);
  become(order);
}

std::vector<std::uint32_t> FlatList::order() const {
  std::vector<std::uint32_t> out;
  out.reserve(size());
  for (std::size_t p = 1; p <= size(); ++p) out.push_back(places_[p].task);
  return out;
}

void FlatList::become(const std::vector<std::uint32_t>& order) {
  for (std::size_t p = 0; p < order.size(); ++p) places_[p + 1].task = order[p];
  time_from(1);
}

void FlatList::time_from(std::size_t position) {
  looked_at_ += places_.size() - position;
  for (std::size_t p = position; p < places_.size(); ++p) {
    Place& place = places_[p];
    const Place& before = places_[p - 1];
    place.finish = before.finish + step(before, place);
    behind_[p] = place.finish - work_->due[place.task];
    weight_[p] = work_->weights[place.task];
    late_[p] = late_[p - 1] + weight_[p] * std::max<std::int64_t>(0, behind_[p]);
    place.heavy = before.heavy + (behind_[p] > 0 ? weight_[p] : 0);
  }
}

inline std::int64_t FlatList::lateness_of(std::uint32_t task, std::int64_t finish) const {
  return work_->weights[task] * std::max<std::int64_t>(0, finish - work_->due[task]);
}

/// What the tasks at [from, to) cost more, each that much later; or more than `limit`.
inline std::int64_t FlatList::late_more(std::size_t from, std::size_t to, std::int64_t by, std::int64_t limit) {
  std::int64_t sum = late_[from - 1] - late_[to - 1];
  for (std::size_t p = from; p < to;) {
    const std::size_t end = std::min(to, p + between_checks);
    looked_at_ += end - p;
    for (; p < end; ++p) sum += weight_[p] * std::max<std::int64_t>(0, behind_[p] + by);
    if (sum > limit) break;
  }
  return sum;
}

std::int64_t FlatList::exchanged_exactly(std::size_t low, std::size_t middle, std::size_t high, const Shifts& by,
                                         std::int64_t limit) {
  const std::int64_t room = limit - cost() - by.rest;
  const std::size_t all = places_.size();
  const std::int64_t of_second = shifted(middle, high, by.forth), of_rest = shifted(high, all, by.rest);
  std::int64_t more = of_second + of_rest;
  more += late_more(low, middle, by.back, room - more);
  if (more >= room) return no_gain;
  more -= of_second;
  more += late_more(middle, high, by.forth, room - more);
  if (more >= room) return no_gain;
  more -= of_rest;
  more += late_more(high, all, by.rest, room - more);
  return more >= room ? no_gain : cost() + by.rest + more;
}

std::int64_t FlatList::swapped(std::size_t low, std::size_t high, std::int64_t limit) {
  ++looked_at_;
  const std::uint32_t first = places_[low].task, second = places_[high].task;
  const std::int64_t second_ends = places_[low - 1].finish + step(places_[low - 1], places_[high]);
  const std::int64_t between = second_ends + step(places_[high], places_[low + 1]) - places_[low + 1].finish;
  const std::int64_t first_ends = places_[high - 1].finish + between + step(places_[high - 1], places_[low]);
  const std::int64_t rest = first_ends + step(places_[low], places_[high + 1]) - places_[high + 1].finish;
  const std::int64_t room = limit - cost() - rest;
  const std::size_t all = places_.size();
  const std::int64_t of_between = shifted(low + 1, high, between), of_rest = shifted(high + 1, all, rest);
  std::int64_t more = lateness_of(second, second_ends) + lateness_of(first, first_ends) -
                      (late_[low] - late_[low - 1]) - (late_[high] - late_[high - 1]);
  more += of_between + of_rest;
  if (more >= room) return no_gain;
  more -= of_between;
  more += late_more(low + 1, high, between, room - more);
  if (more >= room) return no_gain;
  more -= of_rest;
  more += late_more(high + 1, all, rest, room - more);
  return more >= room ? no_gain : cost() + rest + more;
}

void FlatList::exchange(std::size_t low, std::size_t middle, std::size_t high) {
  const auto at = [&](std::size_t p) { return places_.begin() + static_cast<std::ptrdiff_t>(p); };
  std::rotate(at(low), at(middle), at(high));
  time_from(low);
}

void FlatList::swap(std::size_t low, std::size_t high) {
  std::swap(places_[low].task, places_[high].task);
  time_from(low);
}

}  // namespace seambook
