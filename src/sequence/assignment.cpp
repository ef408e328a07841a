#include "sequence/assignment.hpp"

#include <cassert>
#include <cmath>
#include <limits>

namespace seambook {
namespace {

constexpr std::size_t unplaced = static_cast<std::size_t>(-1);
constexpr Time<> unreachable{std::numeric_limits<double>::infinity()};

struct Matching {
  std::span<const Time<>> cost;
  std::size_t size;
  std::vector<Time<>> row_price, column_price;
  std::vector<std::size_t> row_of;  // per column; one more column stands for the row that is being placed
};

/// Dijkstra's search over columns for the cheapest path to a free one; prices move along, so reduced costs stay >= 0.
void place(Matching& m, std::size_t row) {
  const std::size_t root = m.size;
  std::vector<Time<>> slack(m.size, unreachable);
  std::vector<std::size_t> reached_from(m.size, root);
  std::vector<bool> settled(m.size + 1);
  m.row_of[root] = row;
  std::size_t at = root;
  do {
    settled[at] = true;
    const std::size_t u = m.row_of[at];
    Time<> least = unreachable;
    std::size_t next = unplaced;
    for (std::size_t v = 0; v < m.size; ++v) {
      if (settled[v]) continue;
      const Time<> reduced = m.cost[u * m.size + v] - m.row_price[u] - m.column_price[v];
      if (reduced < slack[v]) slack[v] = reduced, reached_from[v] = at;
      if (slack[v] < least) least = slack[v], next = v;
    }
    assert(next != unplaced && std::isfinite(least.si));
    for (std::size_t v = 0; v <= m.size; ++v) {
      if (settled[v]) {
        m.row_price[m.row_of[v]] = m.row_price[m.row_of[v]] + least;
        m.column_price[v] = m.column_price[v] - least;
      } else if (v < m.size) {
        slack[v] = slack[v] - least;
      }
    }
    at = next;
  } while (m.row_of[at] != unplaced);
  while (at != root) {
    m.row_of[at] = m.row_of[reached_from[at]];
    at = reached_from[at];
  }
}

}  // namespace

Assignment cheapest_assignment(std::span<const Time<>> cost, std::size_t size) {
  Matching m{cost, size, std::vector<Time<>>(size), std::vector<Time<>>(size + 1),
             std::vector<std::size_t>(size + 1, unplaced)};
  for (std::size_t row = 0; row < size; ++row) place(m, row);
  Assignment result;
  result.column_of.resize(size);
  for (std::size_t v = 0; v < size; ++v) {
    result.column_of[m.row_of[v]] = v;
    result.cost = result.cost + cost[m.row_of[v] * size + v];
  }
  m.column_price.pop_back();
  result.row_price = std::move(m.row_price);
  result.column_price = std::move(m.column_price);
  return result;
}

}  // namespace seambook
