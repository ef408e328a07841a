// A table as plain text for a terminal: columns as wide as their widest cell, two spaces between them, the headings
// underlined. Width counts what a terminal shows, so that East Asian and accented text stays in line.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seambook {

struct TextTable {
  std::vector<std::string> headings;           // may be empty: no heading line
  std::vector<bool> right_aligned;             // a column beyond its end is left aligned
  std::vector<std::vector<std::string>> rows;  // may be shorter than the headings
  std::optional<std::size_t> rule_before_row;  // a line above this row, usually the total
};

/// How wide a line may be where nothing limits it.
inline constexpr std::size_t any_width = static_cast<std::size_t>(-1);
/// One line a row, each ended by a line break, no spaces at line ends. Control characters and bytes that are not
/// UTF-8 are shown as `?`: nothing from an author's file reaches the terminal as a command. Where a line would be
/// longer than `columns`, words of a cell or heading go on in the next line, those of the widest column first; figures
/// stay whole.
std::string render(const TextTable&, std::size_t columns = any_width);
/// `text` in lines of at most `columns`, broken at its blanks, those after the first further in by `indent`; each ended
/// by a line break. It is taken as it is: control characters are for the caller to make harmless.
std::string wrapped(std::string_view text, std::size_t columns, std::size_t indent);
/// Terminal columns that `text` takes.
std::size_t display_width(std::string_view text);

}  // namespace seambook
