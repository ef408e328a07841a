#include "sequence/edges.hpp"

namespace seambook {

std::vector<Edge> edges_among(const std::vector<std::vector<std::size_t>>& followers,
                              const std::vector<std::optional<std::size_t>>& number) {
  std::vector<Edge> edges;
  std::vector<std::size_t> seen(number.size(), number.size());
  for (std::size_t t = 0; t < number.size(); ++t) {
    if (!number[t]) continue;
    std::vector<std::size_t> open = followers[t];
    while (!open.empty()) {
      const std::size_t next = open.back();
      open.pop_back();
      if (seen[next] == t) continue;
      seen[next] = t;
      if (number[next])
        edges.emplace_back(*number[t], *number[next]);
      else
        open.insert(open.end(), followers[next].begin(), followers[next].end());
    }
  }
  return edges;
}

}  // namespace seambook
