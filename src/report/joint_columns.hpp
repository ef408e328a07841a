// Which figures of joints and pass groups stand on which page of a workbook, in which order, and which of them add up.
#pragma once

#include <vector>

#include "estimate/figures.hpp"

namespace seambook {

/// Joints, passes, labour, materials, heat.
inline constexpr std::size_t joint_page_count = 5, heat_page_number = 4;
/// The figures of a page; those that no joint of the job has get no column.
std::vector<const Figure*> joint_columns(std::size_t page);
/// Whether the column has a sum below it.
bool adds_up(const Figure*);

}  // namespace seambook
