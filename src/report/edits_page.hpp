// The values that were changed on the sheets: which file and line each comes from, what stands there, and the line to
// paste back. One row for each input that may be changed; those that were are listed on top, by formula.
#pragma once

#include "report/cells.hpp"

namespace seambook {

inline constexpr const char* edits_sheet = "Edits";
/// The cell that says whether anything differs from the files.
inline constexpr const char* edits_state_cell = "Edits!$B$3";
inline constexpr const char* edits_none = "as in the job file and the rate book";

/// `sheets` as they stand in the workbook; their live inputs are taken off them. The rows are made later: rate book,
/// job and `places` must outlive them.
Sheet edits_page(const RateBook&, const Job&, std::vector<Sheet>& sheets, const Diagnostics& places);

}  // namespace seambook
