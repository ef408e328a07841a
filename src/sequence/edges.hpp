// Precedence among some of the work, also where it runs over work that is not among it.
#pragma once

#include <optional>
#include <vector>

#include "basics/digraph.hpp"

namespace seambook {

/// `followers` and `number` are parallel to all work; `number`: of a piece among those that count, absent for others.
std::vector<Edge> edges_among(const std::vector<std::vector<std::size_t>>& followers,
                              const std::vector<std::optional<std::size_t>>& number);

}  // namespace seambook
