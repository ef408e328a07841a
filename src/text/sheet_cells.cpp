#include "text/sheet_cells.hpp"

#include <charconv>
#include <cmath>
#include <pugixml.hpp>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t most_rows = 1'048'576, most_columns = 16'384;
constexpr std::size_t most_letters = 32'767;                                // of a cell, by the format
constexpr std::uint32_t most_read_rows = 100'000, most_read_columns = 400;  // that hold something

/// `C7` as row 7, column 3. Nothing when it is no cell of a sheet.
std::optional<Place> cell_place(std::string_view reference) {
  Place place;
  std::size_t at = 0;
  for (; at < reference.size() && at < 3 && reference[at] >= 'A' && reference[at] <= 'Z'; ++at)
    place.column = place.column * 26 + static_cast<std::uint32_t>(reference[at] - 'A' + 1);
  const std::optional<std::uint32_t> row = whole_of(reference.substr(at));
  if (at == 0 || !row || *row == 0 || *row > most_rows || place.column > most_columns) return std::nullopt;
  place.line = *row;
  return place;
}

void refuse_cell(SheetCell& cell, std::string problem, std::string hint) {
  cell.problem = std::move(problem);
  cell.hint = std::move(hint);
}

void take_number(SheetCell& cell, std::string_view stored, const pugi::xml_node& node, const CellContext& context) {
  double number = 0;
  const auto [end, fault] = std::from_chars(stored.data(), stored.data() + stored.size(), number);
  if (fault != std::errc{} || end != stored.data() + stored.size() || !std::isfinite(number)) {
    cell.field.text = stored.substr(0, 100);
    return refuse_cell(cell, "a cell whose number cannot be read", "type its value again");
  }
  const std::uint32_t style = whole_of(attribute_of(node, "s")).value_or(0);
  const NumberLook look = style < context.looks.size() ? context.looks[style] : NumberLook{};
  InputField shown = shown_field(number, look, context.from_1904);
  cell.field.text = std::move(shown.text);
  cell.field.kind = shown.kind;
}

/// The text of a cell; false when it is empty.
bool take_content(SheetCell& cell, const pugi::xml_node& node, const CellContext& context) {
  const std::string_view type = attribute_of(node, "t");
  const pugi::xml_node value = child_named(node, "v");
  const std::string_view stored = value.text().get();
  if (type == "inlineStr") {
    cell.field.text = string_item(child_named(node, "is"));
  } else if (stored.empty()) {
    if (type == "str" || !child_named(node, "f")) return false;
    refuse_cell(cell, "a formula without its value", "open the file in a spreadsheet program and save it again");
    return true;
  } else if (type == "s") {
    const std::optional<std::uint32_t> index = whole_of(stored);
    if (index && *index < context.strings.size())
      cell.field.text = context.strings[*index];
    else
      refuse_cell(cell, "a cell whose text is missing from the workbook", "type it again");
  } else if (type == "b") {
    cell.field.text = stored == "0" ? "false" : "true";
  } else if (type == "d") {
    cell.field.text = stored.substr(0, stored.find('T'));
    cell.field.kind = FieldKind::date;
  } else if (type == "str" || type == "e") {
    cell.field.text = stored;
  } else {
    take_number(cell, stored, node, context);
  }
  return !cell.field.text.empty() || !cell.problem.empty();
}

/// What no text of ours may hold; line ends and tabs inside a cell become blanks.
void check_cell_text(SheetCell& cell) {
  std::string& text = cell.field.text;
  if (text.size() > most_letters * 4 || count_characters(text) > most_letters) {
    text.resize(100);
    return refuse_cell(cell, "a cell of more than 32767 letters", "shorten it");
  }
  std::string clean;
  for (std::size_t at = 0; at < text.size();) {
    const Character c = character_at(text, at);
    const bool break_or_tab = c.code == '\n' || c.code == '\r' || c.code == '\t';
    if (!c.valid || (is_control(c.code) && !break_or_tab)) {
      text.clear();
      return refuse_cell(cell, "a control character in a cell", "type its text again");
    }
    clean += break_or_tab ? std::string_view(" ") : std::string_view(text).substr(at, c.bytes);
    at += c.bytes;
  }
  text = std::move(clean);
}

/// Walks the rows; a row or cell without its number follows the one before.
struct CellWalk {
  SheetCells& out;
  const CellContext& context;
  Place at;  // of the last cell
};

bool out_of_order(CellWalk& walk) {
  walk.out.problem = "the sheet's cells do not follow each other";
  walk.out.hint = "open it in a spreadsheet program and save it again";
  return false;
}

bool take_cell(CellWalk& walk, const pugi::xml_node& node) {
  const std::string_view reference = attribute_of(node, "r");
  if (reference.empty()) {
    ++walk.at.column;
  } else {
    const std::optional<Place> place = cell_place(reference);
    if (!place || place->line != walk.at.line || place->column <= walk.at.column) return out_of_order(walk);
    walk.at.column = place->column;
  }
  if (walk.at.column > most_columns) return out_of_order(walk);
  SheetCell cell;
  cell.field.place = walk.at;
  if (!take_content(cell, node, walk.context)) return true;
  check_cell_text(cell);
  if (cell.problem.empty() && cell.field.text.find_first_not_of(' ') == std::string::npos) return true;
  walk.out.cells.push_back(std::move(cell));
  if (walk.out.cells.size() > most_fields) {
    walk.out.problem = "the sheet has more than a million cells";
    walk.out.hint = "split it";
  } else if (walk.at.column > most_read_columns) {
    walk.out.problem = "the sheet goes beyond column " + column_letters(most_read_columns);
    walk.out.hint = "delete what stands far to the right";
  }
  return walk.out.problem.empty();
}

bool take_row(CellWalk& walk, const pugi::xml_node& node) {
  const std::string_view number = attribute_of(node, "r");
  const std::optional<std::uint32_t> row = number.empty() ? walk.at.line + 1 : whole_of(number);
  if (!row || *row <= walk.at.line || *row > most_rows) return out_of_order(walk);
  walk.at = {0, *row, 0};
  const std::size_t had = walk.out.cells.size();
  each_child(node, "c", [&](const pugi::xml_node& cell) { return take_cell(walk, cell); });
  const std::string_view hidden = attribute_of(node, "hidden");
  if (walk.out.cells.size() > had && (hidden == "1" || hidden == "true")) ++walk.out.hidden_rows;
  if (walk.out.cells.size() > had && *row > most_read_rows) {
    walk.out.problem = "the sheet goes below row 100000";
    walk.out.hint = "split it, or delete what stands far below";
  }
  return walk.out.problem.empty();
}

void take_merged(SheetCells& out, const pugi::xml_node& sheet) {
  each_child(child_named(sheet, "mergeCells"), "mergeCell", [&](const pugi::xml_node& node) {
    const std::string_view range = attribute_of(node, "ref");
    if (const auto first = cell_place(range.substr(0, range.find(':')))) out.merged.push_back(*first);
    return out.merged.size() < most_read_rows;
  });
}

}  // namespace

SheetCells sheet_cells(const std::string& part, const CellContext& context) {
  SheetCells out;
  pugi::xml_document document;
  const bool parsed = parse_part(document, part);
  const pugi::xml_node sheet = child_named(document, "worksheet");
  if (!parsed || !sheet) {
    out.problem = "the sheet cannot be read";
    out.hint = "open it in a spreadsheet program and save it again";
    return out;
  }
  CellWalk walk{out, context, {}};
  each_child(child_named(sheet, "sheetData"), "row", [&](const pugi::xml_node& row) { return take_row(walk, row); });
  take_merged(out, sheet);
  if (!out.problem.empty()) out.cells.clear();
  return out;
}

}  // namespace seambook
