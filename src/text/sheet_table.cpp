#include "text/sheet_table.hpp"

#include <algorithm>
#include <set>

#include "text/number_words.hpp"
#include "text/sheet_cells.hpp"
#include "text/sheet_parts.hpp"
#include "text/zip_part.hpp"

namespace seambook {
namespace {

constexpr std::string_view zip_mark = "PK\x03\x04", old_office_mark = "\xD0\xCF\x11\xE0";

/// A sheet as it was read, or why it was not.
struct SheetRead {
  std::string name;
  SheetCells content;  // with the problem, if there is one
  bool unknown_name = false;
};

SheetRead unread(std::string problem, std::string hint) {
  SheetRead read;
  read.content.problem = std::move(problem);
  read.content.hint = std::move(hint);
  return read;
}

SheetRead without_sheets(const PartFinder& find) {
  if (find("mimetype"))
    return unread("an OpenDocument file, not a workbook of the form .xlsx", "save it as .xlsx, or as CSV");
  if (find("xl/workbook.bin")) return unread("a binary workbook (.xlsb)", "save it as .xlsx, or as CSV");
  return unread("the workbook has no sheet of cells that can be read", "save it as .xlsx, or as CSV");
}

SheetRead without_sheet_of_name(const WorkbookParts& parts, const std::string& name) {
  constexpr std::size_t few = 12;
  std::vector<std::string_view> known;
  for (const SheetEntry& sheet : parts.sheets) known.push_back(sheet.name);
  const std::string_view near = nearest(name, known);
  std::string list;
  for (std::size_t i = 0; i < std::min(few, known.size()); ++i) list.append(i > 0 ? ", " : "").append(quoted(known[i]));
  SheetRead read = unread("the workbook has no sheet " + quoted(name),
                          near.empty() ? "its sheets: " + list : "did you mean " + quoted(near) + "?");
  read.unknown_name = true;
  return read;
}

SheetRead read_sheet(const PartFinder& find, const std::string& name) {
  const WorkbookParts parts = workbook_parts(find);
  if (parts.sheets.empty()) return without_sheets(find);
  const auto wanted = std::find_if(parts.sheets.begin(), parts.sheets.end(), [&](const SheetEntry& sheet) {
    return name.empty() ? !sheet.hidden : sheet.name == name;
  });
  if (wanted == parts.sheets.end() && !name.empty()) return without_sheet_of_name(parts, name);
  if (wanted == parts.sheets.end())
    return unread("all sheets of the workbook are hidden", "show the one that is meant");
  CellContext context{{}, {}, parts.from_1904};
  if (const auto text = parts.strings.empty() ? std::nullopt : find(parts.strings)) {
    auto strings = shared_strings(*text);
    if (!strings)
      return unread("the workbook's texts cannot be read", "open it in a spreadsheet program and save it again");
    context.strings = std::move(*strings);
  }
  if (const auto text = parts.styles.empty() ? std::nullopt : find(parts.styles)) context.looks = number_looks(*text);
  const std::optional<std::string> part = find(wanted->part);
  if (!part)
    return unread("the sheet is missing from the workbook", "open it in a spreadsheet program and save it again");
  return {wanted->name, sheet_cells(*part, context), false};
}

/// The rows as lines, cells parted by tabs: what messages show.
std::string text_of_cells(const std::vector<SheetCell>& cells) {
  std::string text;
  Place at{0, 1, 1};
  for (const SheetCell& cell : cells) {
    const Place place = cell.field.place;
    if (place.line > at.line) text.append(place.line - at.line, '\n'), at = {0, place.line, 1};
    text.append(place.column - at.column, '\t');
    at.column = place.column;
    text += cell.field.text;
  }
  return text;
}

using CellRange = std::span<const SheetCell>;

/// The cells of the row that begins with `cells.front()`.
CellRange first_row_of(CellRange cells) {
  const auto end = std::find_if(cells.begin(), cells.end(), [&](const SheetCell& cell) {
    return cell.field.place.line != cells.front().field.place.line;
  });
  return cells.first(static_cast<std::size_t>(end - cells.begin()));
}

/// Complains of cells that cannot be read; true when there is one.
bool has_bad_cells(CellRange row, std::uint32_t file, Diagnostics& diagnostics) {
  bool bad = false;
  for (const SheetCell& cell : row) {
    if (cell.problem.empty()) continue;
    diagnostics.error({file, cell.field.place.line, cell.field.place.column}, cell.problem, cell.hint);
    bad = true;
  }
  return bad;
}

/// Fields for the columns `first` to `last`; the cells beside them, each column once, to `beside`.
InputRow row_of(CellRange cells, Place first, std::uint32_t last, std::set<std::uint32_t>& beside,
                Diagnostics& diagnostics) {
  InputRow row(last - first.column + 1);
  for (std::size_t i = 0; i < row.size(); ++i)
    row[i].place = {first.file, cells.front().field.place.line, first.column + static_cast<std::uint32_t>(i)};
  for (const SheetCell& cell : cells) {
    const Place place{first.file, cell.field.place.line, cell.field.place.column};
    if (place.column >= first.column && place.column <= last) {
      InputField& field = row[place.column - first.column];
      field.text = cell.field.text;
      field.kind = cell.field.kind;
    } else if (beside.insert(place.column).second) {
      diagnostics.error(place, "a column without a heading", "name the column, or clear it");
    }
  }
  return row;
}

std::optional<InputTable> table_of(std::uint32_t file, CellRange cells, Diagnostics& diagnostics) {
  const CellRange headings = first_row_of(cells);
  const Place first{file, headings.front().field.place.line, headings.front().field.place.column};
  const std::uint32_t last = headings.back().field.place.column;
  if (has_bad_cells(headings, file, diagnostics)) return std::nullopt;
  if (last - first.column >= most_headings) {
    diagnostics.error({file, first.line, last}, "more than 200 headings", "leave out columns");
    return std::nullopt;
  }
  std::set<std::uint32_t> beside;
  InputTable table{row_of(headings, first, last, beside, diagnostics), {}};
  for (CellRange rest = cells.subspan(headings.size()); !rest.empty();) {
    const CellRange row = first_row_of(rest);
    rest = rest.subspan(row.size());
    if (!has_bad_cells(row, file, diagnostics)) table.rows.push_back(row_of(row, first, last, beside, diagnostics));
  }
  std::erase_if(table.rows, [](const InputRow& row) { return is_blank_row(row); });
  check_headings(table, diagnostics);
  return table;
}

std::optional<InputTable> table_of_sheet(std::uint32_t file, SheetRead read, const WantedSheet& wanted,
                                         Diagnostics& diagnostics) {
  SheetCells& content = read.content;
  if (!content.problem.empty()) {
    diagnostics.error(read.unknown_name ? wanted.place : Place{file, 0, 0}, content.problem, content.hint);
    return std::nullopt;
  }
  SourceFile& source = diagnostics.files[file];
  source.sheet = std::move(read.name);
  source.text = text_of_cells(content.cells);
  if (content.cells.empty()) {
    diagnostics.error({file, 0, 0}, "the sheet is empty", "its first row holds the column headings");
    return std::nullopt;
  }
  for (const Place& merged : content.merged)
    diagnostics.error({file, merged.line, merged.column}, "merged cells: the value stands in the first of them alone",
                      "unmerge them and fill in each row");
  if (content.hidden_rows > 0)
    diagnostics.warning({file, 0, 0},
                        "hidden rows of the sheet are read as well: " + std::to_string(content.hidden_rows),
                        "delete them if they do not belong to the take-off");
  return table_of(file, content.cells, diagnostics);
}

}  // namespace

bool is_workbook(std::string_view name, std::string_view bytes) {
  return bytes.starts_with(zip_mark) || bytes.starts_with(old_office_mark) || name.ends_with(".xlsx") ||
         name.ends_with(".xlsm");
}

std::optional<InputTable> parse_workbook_parts(std::uint32_t file, const PartFinder& find, const WantedSheet& wanted,
                                               Diagnostics& diagnostics) {
  return table_of_sheet(file, read_sheet(find, wanted.name), wanted, diagnostics);
}

std::optional<InputTable> parse_workbook(std::uint32_t file, std::string_view bytes, const WantedSheet& wanted,
                                         Diagnostics& diagnostics) {
  if (bytes.starts_with(old_office_mark)) {
    diagnostics.error({file, 0, 0}, "a workbook that is locked by a password, or of the old form .xls",
                      "save it as .xlsx without a password, or as CSV");
    return std::nullopt;
  }
  if (!bytes.starts_with(zip_mark)) {
    diagnostics.error({file, 0, 0}, "the file is called a workbook and is none",
                      "a table in plain text is called .csv");
    return std::nullopt;
  }
  ZipPart refused;
  const PartFinder find = [&](const std::string& name) -> std::optional<std::string> {
    if (!refused.problem.empty()) return std::nullopt;
    ZipPart part = zip_part(bytes, name);
    if (part.found) return std::move(part.text);
    refused = std::move(part);
    return std::nullopt;
  };
  SheetRead read = read_sheet(find, wanted.name);
  if (!refused.problem.empty()) read = unread(refused.problem, refused.hint);
  return table_of_sheet(file, std::move(read), wanted, diagnostics);
}

}  // namespace seambook
