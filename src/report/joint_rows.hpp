// The rows of a joint on the joint pages.
#pragma once

#include <array>
#include <memory>

#include "report/joint_pages.hpp"

namespace seambook {

inline constexpr std::size_t passes_page_number = 1, materials_page_number = 3;
inline constexpr std::uint16_t role_column = 5;  // of the passes page

/// What the rows of all joints are made from. Refers to job and rate book, which must outlive it.
struct JointRows {
  const RateBook& book;
  const Job& job;
  Table table;
  MaterialWords words;
  SharedCells shared;
  std::vector<std::uint32_t> first;  // each joint's first row
  std::uint16_t heat_columns = 0;    // of the heat page, all
};

/// What a joint is called on every page: weldment, joint, weld.
std::array<std::string, 3> joint_names(const Job&, const Joint&);
/// How wide a column is that holds such a name, in digits; what is very long wraps.
inline constexpr double widest_name = 40;
double width_of_name(const std::string&);
/// Makes all rows of a page when they are needed.
LaterRows rows_of_joints(std::shared_ptr<const JointRows>, std::size_t page);

}  // namespace seambook
