#include "schedule/clock.hpp"

#include <algorithm>

namespace seambook {
namespace {

/// The first window that ends after t.
WorkingTime::const_iterator window_at(const WorkingTime& time, Instant t) {
  if (!time.empty() && t < time.front().to) return time.begin();
  return std::upper_bound(time.begin(), time.end(), t, [](Instant at, const Window& w) { return at < w.to; });
}

}  // namespace

WorkingTime tidy(WorkingTime time) {
  std::erase_if(time, [](const Window& w) { return w.to <= w.from; });
  std::sort(time.begin(), time.end(), [](const Window& a, const Window& b) { return a.from < b.from; });
  WorkingTime out;
  out.reserve(time.size());
  for (const Window& w : time) {
    if (!out.empty() && w.from <= out.back().to)
      out.back().to = std::max(out.back().to, w.to);
    else
      out.push_back(w);
  }
  return out;
}

WorkingTime both(const WorkingTime& a, const WorkingTime& b) {
  WorkingTime out;
  out.reserve(a.size() + b.size());
  for (std::size_t i = 0, k = 0; i < a.size() && k < b.size();) {
    const Window common{std::max(a[i].from, b[k].from), std::min(a[i].to, b[k].to)};
    if (common.from < common.to) out.push_back(common);
    if (a[i].to < b[k].to)
      ++i;
    else
      ++k;
  }
  return out;
}

WorkingTime without(const WorkingTime& a, const WorkingTime& b) {
  WorkingTime closed;
  closed.reserve(b.size() + 1);
  Instant from = Instant::min();
  for (const Window& w : b) {
    closed.push_back({from, w.from});
    from = w.to;
  }
  closed.push_back({from, Instant::max()});
  return both(a, tidy(std::move(closed)));
}

Instant first_open(const WorkingTime& time, Instant t) {
  const auto at = window_at(time, t);
  return at == time.end() ? Instant::max() : std::max(t, at->from);
}

Instant done_by(const WorkingTime& time, Instant t, Seconds length) {
  if (length <= Seconds{}) return t;
  for (auto at = window_at(time, t); at != time.end(); ++at) {
    const Instant from = std::max(t, at->from);
    if (length <= at->to - from) return from + length;
    length -= at->to - from;
  }
  return Instant::max();
}

Instant open_for(const WorkingTime& time, Instant t, Seconds length, Seconds longest_pause) {
  auto at = window_at(time, t);
  while (at != time.end()) {
    const Instant start = std::max(t, at->from);
    Seconds left = length;
    auto last = at;
    for (Instant from = start;; from = last->from) {
      left -= last->to - from;
      if (left <= Seconds{}) return start;
      const auto next = std::next(last);
      if (next == time.end() || next->from - last->to > longest_pause) break;
      last = next;
    }
    at = std::next(last);  // begins after a long pause; what begins earlier is cut by the same one
  }
  return Instant::max();
}

Seconds working_between(const WorkingTime& time, Instant from, Instant to) {
  Seconds sum{};
  for (auto at = window_at(time, from); at != time.end() && at->from < to; ++at)
    sum += std::min(to, at->to) - std::max(from, at->from);
  return sum;
}

}  // namespace seambook
