// Cells of named figures that do not stand in one table: where each is, by figure and by the row of its label.
#pragma once

#include "report/cells.hpp"

namespace seambook {

struct NamedCell {
  std::string sheet;
  std::uint32_t row = 0;
  std::uint16_t column = 0;
};
using NamedCells = std::map<std::pair<const Figure*, std::uint32_t>, NamedCell>;

/// What stands for a record's leaves on `sheet`: a figure's own cell first, then the shared inputs; figures without a
/// cell expand.
LeafFinder leaves_of(const NamedCells&, const SharedCells&, std::string sheet);
/// Writes every named figure of the record that has its cell on this sheet; those in `left_out` are written otherwise.
void put_named(Sheet&, const NamedCells&, const SharedCells&, const Tape&,
               const std::vector<const Figure*>& left_out = {});

}  // namespace seambook
