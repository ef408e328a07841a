// The weldments page: fit-up of parts, turning and base metal of each weldment, then every bought line.
#pragma once

#include "report/cells.hpp"

namespace seambook {

inline constexpr const char* weldments_sheet = "Weldments";

struct WeldmentPage {
  Table table;
  std::uint32_t last_row = 0;                       // of the weldments
  std::uint32_t bought_first = 0, bought_last = 0;  // rows of bought lines; last < first when there are none
  Sheet sheet;
};

/// Columns of the bought lines.
namespace bought_column {
inline constexpr std::uint16_t kind = 2, scaling = 3, price = 4, count = 5, each = 6, lot = 7, once = 8;
}

/// Where a weldment's count stands, before the page is made: joints refer to it.
std::uint32_t weldment_row(std::size_t weldment);
inline constexpr std::uint16_t weldment_count_column = 1;

/// Counts stand on this page; joints see them as shared.
void add_weldment_counts(SharedCells&, const Job&);
WeldmentPage weldment_page(const RateBook&, const Job&, const SharedCells&);

}  // namespace seambook
