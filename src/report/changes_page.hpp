// What became of a total since a previous quote: as a page, for a terminal and as JSON.
#pragma once

#include "quote/changes.hpp"
#include "report/terminal.hpp"
#include "report/workbook.hpp"

namespace seambook {

inline constexpr const char* changes_sheet = "Changes";

Sheet changes_page(const RateBook&, const Changes&);
/// The causes in a few lines; ends with a line break.
std::string changes_text(const RateBook&, const Changes&, std::size_t columns = any_width);

}  // namespace seambook
