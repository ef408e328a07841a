// The job's order of work with its set-ups and the reason for each position.
#pragma once

#include "report/cells.hpp"

namespace seambook {

inline constexpr const char* sequence_sheet = "Sequence";

struct SequencePage {
  Table table;
  std::uint32_t last_row = 0;
  Sheet sheet;
};

/// The sheet makes its rows later, of what it is given but for SharedCells.
SequencePage sequence_page(const RateBook&, const Job&, const std::vector<StationWork>&, const Quote&,
                           const SharedCells&);

}  // namespace seambook
