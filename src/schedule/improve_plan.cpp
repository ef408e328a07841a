#include "schedule/improve_plan.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

#include "schedule/improve_lanes.hpp"
#include "schedule/lane_descents.hpp"
#include "schedule/moving.hpp"

namespace seambook {
namespace {

constexpr std::size_t longest_run = 12, longest_late_run = 30;
constexpr double descent_share = 0.05;  // of the budget
constexpr int cycles = 3;
constexpr std::size_t sampled_moves = 500;
constexpr double no_limit = std::numeric_limits<double>::infinity();
// While lateness may still come down, set-ups and ends only break ties: ten seconds of set-up are not worth one late.
constexpr Weights while_late{10, 0.02, 1, true};

/// Heat at the start of an annealing and what of it is left at its end.
struct Heat {
  double hot = 0, cold_share = 1;
};

/// A search with its dice.
struct Search {
  ShopNet& net;
  MovingList at;
  std::mt19937 dice;
  bool late = false;                   // lateness is sought: more is tried at other stations and nearby
  std::vector<std::size_t> run, ways;  // reused

  std::size_t below(std::size_t n) { return dice() % n; }
  /// From 1 to n, each order of size as often as any other.
  std::size_t span(double n) { return static_cast<std::size_t>(std::pow(n, unit())); }
  double unit() { return (static_cast<double>(dice()) + 0.5) / 4294967296.0; }
};

const NetWay& way_at(const Search& search, std::size_t position) {
  const Listed& listed = search.at.list()[position];
  return search.net.tasks[listed.task].ways[listed.way];
}

bool same_place(const ShopNet& net, const NetWay& a, const NetWay& b) {
  if (a.station != b.station || a.people != b.people) return false;
  for (std::uint32_t p = 0; p < a.people; ++p)
    if (net.people[a.first_person + p] != net.people[b.first_person + p]) return false;
  return true;
}

std::optional<std::size_t> way_like(const ShopNet& net, std::size_t task, const NetWay& like) {
  const auto& ways = net.tasks[task].ways;
  for (std::size_t w = 0; w < ways.size(); ++w)
    if (same_place(net, ways[w], like)) return w;
  return std::nullopt;
}

/// The position of the next task at a station from `from` on, going forth or back; the list's size when there is none.
std::size_t next_at(const Search& search, std::uint32_t station, std::size_t from, bool forth) {
  const std::size_t size = search.at.list().size();
  for (std::size_t p = from; p < size; forth ? ++p : --p)  // back from 0 wraps beyond size
    if (!search.net.tasks[search.at.list()[p].task].ways.empty() && way_at(search, p).station == station) return p;
  return size;
}

/// A place for a task now at `from`, beside a task of the station where it is to go: near it more often than far, or
/// anywhere at another station.
std::size_t target(Search& search, std::size_t from, std::uint32_t station) {
  const std::size_t size = search.at.list().size();
  if (search.late && way_at(search, from).station != station) from = search.below(size);
  const std::size_t distance = search.span(static_cast<double>(size));
  const bool forth = search.below(2) == 0;
  const std::size_t near = forth ? std::min(size - 1, from + distance) : from - std::min(from, distance);
  const std::size_t beside = next_at(search, station, near, forth);
  if (beside == size) return forth ? size : 0;
  return forth ? beside + 1 : beside;
}

/// One task, or the run of tasks with its set-up that follow it at its station, to another place or in another way.
bool move_run(Search& search, double limit) {
  const TaskList& list = search.at.list();
  const std::size_t from = search.below(list.size());
  const auto& ways = search.net.tasks[list[from].task].ways;
  if (ways.empty()) return false;
  const bool other = search.late ? search.below(5) < 3 : search.below(4) == 0;
  const std::size_t way = other ? search.below(ways.size()) : list[from].way;
  search.run.assign(1, from), search.ways.assign(1, way);
  const std::uint32_t station = way_at(search, from).station;
  const std::size_t kind = search.below(3);
  if (station != away && kind > 0) {
    const std::size_t most = 1 + (search.late ? search.span(longest_late_run) : search.below(longest_run));
    for (std::size_t p = next_at(search, station, from + 1, true); p < list.size() && search.run.size() < most;
         p = next_at(search, station, p + 1, true)) {
      const auto like = way_like(search.net, list[p].task, ways[way]);
      if (!like || (kind == 1 && way_at(search, p).need != way_at(search, from).need)) break;
      search.run.push_back(p), search.ways.push_back(*like);
    }
  }
  const std::size_t to = target(search, from, ways[way].station);
  return search.at.try_move(search.run, to, search.ways, limit);
}

/// Two tasks, near each other more often than far.
bool swap_two(Search& search, double limit) {
  const TaskList& list = search.at.list();
  std::size_t a = search.below(list.size());
  std::size_t b = search.late && search.below(4) > 0 ? a + search.span(static_cast<double>(list.size()))
                                                     : search.below(list.size());
  if (a == b || b >= list.size()) return false;
  if (b < a) std::swap(a, b);
  std::size_t way_of_a = list[a].way, way_of_b = list[b].way;
  if (search.net.tasks[list[a].task].ways.empty() || search.net.tasks[list[b].task].ways.empty()) return false;
  const NetWay& at_a = way_at(search, a);
  const NetWay& at_b = way_at(search, b);
  if (!same_place(search.net, at_a, at_b)) {
    const auto a_there = way_like(search.net, list[a].task, at_b), b_there = way_like(search.net, list[b].task, at_a);
    if (!a_there || !b_there) return false;
    way_of_a = *a_there, way_of_b = *b_there;
  }
  return search.at.try_swap(a, b, way_of_a, way_of_b, limit);
}

bool any_move(Search& search, double limit) {
  const bool swap = search.late ? search.below(5) < 2 : search.below(4) == 0;
  return swap ? swap_two(search, limit) : move_run(search, limit);
}

/// How much worse a move easily makes the list: a tenth of those that do make it worse by less.
double easy_loss(Search& search) {
  std::vector<double> losses;
  losses.reserve(sampled_moves);
  // What is tried here is put back by the next try; nothing is taken.
  const double now = search.at.weight();
  for (std::size_t k = 0; k < sampled_moves; ++k) {
    if (!any_move(search, no_limit)) continue;
    const double loss = search.at.next_weight() - now;
    search.at.put_back();
    if (loss > 0) losses.push_back(loss);
  }
  if (losses.empty()) return 1;
  const auto low = losses.begin() + static_cast<std::ptrdiff_t>(losses.size() / 10);
  std::nth_element(losses.begin(), low, losses.end());
  return *low;
}

/// Lateness is spread over all tasks, so what one of them weighs sets the heat; set-ups are few beside the tasks, so
/// what moves easily lose does.
Heat heat_of(Search& search, bool late) {
  if (late) return {search.at.weight() / static_cast<double>(search.at.list().size()), 0.1};
  return {0.3 * easy_loss(search), 0.01};
}

}  // namespace

bool UsedBudget::left(std::size_t done) {
  if (of.seconds <= 0) {
    share = static_cast<double>(done) / static_cast<double>(std::max<std::size_t>(1, of.moves));
  } else if (looks++ % looks_per_clock == 0) {
    share = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC / of.seconds;
  }
  return share < 1 && !(of.stop != nullptr && *of.stop);
}

/// A descent, then cycles of annealing, each from the best list so far.
Improved improved_list(ShopNet& net, const TaskList& from, const Levels& floor, const MoveBudget& allowed) {
  Improved best{from, levels_of(net, from)};
  const auto is_late = [&] { return best.levels.late > floor.late; };
  const auto weights = [&] { return is_late() ? while_late : Weights{}; };
  if (from.size() < 2 || best.levels <= floor) return best;
  UsedBudget budget{allowed};  // its clock runs from here
  if (is_late() && stations_apart(net)) {
    best = in_one_lane(net) ? lane_descents(net, best, floor.late, allowed)
                            : improved_lanes(net, best, floor.late, allowed);
    if (is_late() || best.levels <= floor) return best;
  }
  Search search{net, MovingList(net, best.list, Weights{}), std::mt19937(allowed.seed), false, {}, {}};
  Heat heats;
  int cycle = -1;  // the descent
  for (std::size_t k = 0; budget.left(k); ++k) {
    const double progress = (budget.share - descent_share) / (1 - descent_share) * cycles;
    if (progress > static_cast<double>(cycle) + 1) {
      ++cycle;
      search.late = is_late();
      search.at = MovingList(net, best.list, weights());
      heats = heat_of(search, is_late());
    }
    const double heat = cycle < 0 ? 0 : heats.hot * std::pow(heats.cold_share, progress - cycle);
    const double limit = search.at.weight() - heat * std::log(search.unit());
    if (!any_move(search, limit)) continue;
    search.at.take();
    if (search.at.levels() < best.levels) {
      best = {search.at.list(), search.at.levels()};
      if (best.levels <= floor) break;
    }
  }
  return best;
}

}  // namespace seambook
