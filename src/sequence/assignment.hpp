// The cheapest way to give each row a column of its own (assignment; Kuhn 1955, Munkres 1957, by shortest augmenting
// paths), with the prices that prove it.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "basics/units.hpp"

namespace seambook {

struct Assignment {
  Time<> cost{};
  std::vector<std::size_t> column_of;           // per row
  std::vector<Time<>> row_price, column_price;  // row + column <= cost of each pair, equal on the pairs chosen
};

/// `cost[row * size + column]`, infinite where a pair may not be. Requires: some assignment is finite.
Assignment cheapest_assignment(std::span<const Time<>> cost, std::size_t size);

}  // namespace seambook
