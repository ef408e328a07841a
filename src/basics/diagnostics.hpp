// Complaints about the author's files. Stages add to a Diagnostics and carry on; it is shown once, at the end,
// sorted by place, each with the source line and a caret. Nothing here prints.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace seambook {

/// A character in a file the author wrote. Lines and columns count from 1; columns count characters, not bytes. In a
/// workbook's sheet they count rows and columns of cells.
/// Line 0: the file as a whole; file 0 is reserved for "no file".
struct Place {
  std::uint32_t file = 0, line = 0, column = 0;
  friend auto operator<=>(const Place&, const Place&) = default;
};

/// not_for_the_floor: may be priced, must not be sent to the shop floor.
enum class Level : std::uint8_t { note, warning, error, not_for_the_floor };

struct Diagnostic {
  Level level = Level::error;
  Place place;
  std::string message, hint;  // hint may be empty
};

/// `sheet` is empty unless the text is that of a workbook's sheet: a line for each row, its cells parted by tabs.
struct SourceFile {
  std::string name, text, sheet;
};

struct Diagnostics {
  static constexpr std::size_t most_errors = 1000;
  std::vector<SourceFile> files{1};  // index is Place::file
  std::vector<Diagnostic> list;

  /// Registers a file so that places can point into it; gives its number.
  std::uint32_t add_file(std::string name, std::string text);
  /// Once there are most_errors in the list it says so and takes no more: nobody mends more at a time, and hostile
  /// files would fill memory.
  void error(Place, std::string message, std::string hint = {});
  void warning(Place, std::string message, std::string hint = {});
  void note(Place, std::string message, std::string hint = {});
  bool has_errors() const;
  /// True once no more errors are taken: reading on is of no use.
  bool full() const;
};

/// `jobs/a.yaml:14:7`, or the file's name alone when there is no line; in a workbook `jobs/a.xlsx:Joints!C7`.
std::string where(const Diagnostics&, Place);
/// `A`, `B` ... `AA` for the columns of a sheet, which count from 1.
std::string column_letters(std::uint32_t column);
/// The faults sorted by place (stable), each as
///   jobs/a.yaml:14:7: error: unknown key 'thicknes'; did you mean 'thickness'?
///         thicknes: 8 mm
///         ^
/// Control characters of the author's text are shown as spaces; long lines are cut round the caret. Of a workbook's
/// sheet the row is shown, its cells parted by bars.
std::string render(const Diagnostics&);
/// The nearest of `known` to `word` by edit distance with neighbour swaps, at most max(1, a third of the letters) away;
/// empty when nothing is near. Ties go to the earlier name.
std::string_view nearest(std::string_view word, std::span<const std::string_view> known);
const char* level_word(Level);

}  // namespace seambook
