// The cost page: costs by kind, the price of each quantity step by step, what the price hangs on.
#pragma once

#include <map>

#include "report/shop_pages.hpp"

namespace seambook {

inline constexpr const char* cost_sheet = "Cost";

/// Rows and columns of the costs by kind.
namespace cost_at {
inline constexpr std::uint16_t words = 0, each = 1, lot = 2, once = 3;
inline constexpr std::uint32_t kinds_heading = 4, first_kind = kinds_heading + 1;
}  // namespace cost_at

/// Cells that other pages show.
struct CostPage {
  Sheet sheet;
  std::uint16_t first_quantity_column = 1;
  std::uint32_t quantity_row = 0, unit_price_row = 0, pieces_row = 0, one_off_row = 0, total_row = 0,
                order_cost_row = 0, left_row = 0;
  std::map<const Figure*, std::uint32_t> price_rows;  // of every figure of the price that this job has
};

CostPage cost_page(const RateBook&, const Job&, const Quote&, const ShopPages&, const SharedCells&);

}  // namespace seambook
