// Each family of seams by every process: sums over the rows of the joint pages, for one piece; what does not suit with
// its reason.
#pragma once

#include "compare/comparison.hpp"
#include "report/joint_pages.hpp"

namespace seambook {

inline constexpr const char* families_sheet = "Families";

struct WaysPage {
  Sheet sheet;
  std::vector<std::vector<std::uint32_t>> rows;    // by family and way
  std::map<const Figure*, std::uint16_t> columns;  // of the sums
};

WaysPage ways_page(const RateBook&, const Comparison&, const JointPages&);

}  // namespace seambook
