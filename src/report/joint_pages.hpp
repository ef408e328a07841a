// Pages with one row a pass group, in step: what the job says, the welds and their passes, the minutes they take, what
// they use and cost, and for steels that harden their heat.
#pragma once

#include "report/cells.hpp"

namespace seambook {

inline constexpr const char* joints_sheet = "Joints";
inline constexpr const char* passes_sheet = "Passes";
inline constexpr const char* labour_sheet = "Labour";
inline constexpr const char* materials_sheet = "Materials";

/// Columns of words on the materials page; what no row needs has none.
struct MaterialWords {
  std::uint16_t filler = 5, gas = 6;
  std::optional<std::uint16_t> flux, purge_gas;
};

struct JointPages {
  Table table;
  MaterialWords words;
  std::uint32_t last_row = 0;  // of the data; totals stand in the next
  std::vector<Sheet> sheets;   // joints, passes, labour, materials; heat when there is any
};

/// Numbered as in joint_columns.
const char* joint_page_name(std::size_t page);
/// Whether the rows add up: not where a joint stands once for every way to weld it.
enum class Rows : std::uint8_t { add_up, stand_beside };
/// The sheets make the joints' rows later: rate book and job must outlive them.
JointPages joint_pages(const RateBook&, const Job&, const SharedCells&, Rows = Rows::add_up);

}  // namespace seambook
