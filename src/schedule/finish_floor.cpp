#include <algorithm>

#include "schedule/clock.hpp"
#include "schedule/floors.hpp"

namespace seambook {
namespace {

/// The end of all work that only this station or person can do, done without a gap in the time it is there; the start
/// where there is none. Where that is all the work there is, so are its set-ups.
Instant end_of_all(const ShopProblem& problem, const ShopNet& net, const std::vector<bool>& possible, Seconds change,
                   std::optional<std::size_t> station, std::optional<std::size_t> person, const WorkingTime& time) {
  Seconds work{};
  Instant from = Instant::max();
  bool all = true;
  for (std::uint32_t t = 0; t < net.tasks.size(); ++t) {
    if (!possible[t]) continue;
    if (!only_there(problem.tasks[t], station, person)) {
      all = false;
      continue;
    }
    Seconds shortest = Seconds::max();
    for (const NetWay& way : net.tasks[t].ways) {
      shortest = std::min(shortest, way.time);
      from = std::min(from, way.not_before);
    }
    work += shortest;
  }
  if (from == Instant::max()) return net.start;
  const Instant end = done_by(time, std::max(from, net.start), all ? work + change : work);
  return end == Instant::max() ? net.start : end;  // beyond the working time that is known
}

}  // namespace

std::int64_t finish_floor(const ShopProblem& problem, const ShopNet& net, const std::vector<bool>& possible,
                          std::int64_t change) {
  Instant last = net.start;
  for (std::size_t s = 0; s < problem.stations.size(); ++s)
    last =
        std::max(last, end_of_all(problem, net, possible, Seconds(change), s, std::nullopt, problem.stations[s].open));
  for (std::size_t p = 0; p < problem.people.size(); ++p)
    last =
        std::max(last, end_of_all(problem, net, possible, Seconds(change), std::nullopt, p, problem.people[p].present));
  return (last - net.start).count();
}

}  // namespace seambook
