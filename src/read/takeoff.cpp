#include "read/takeoff.hpp"

#include <utility>

#include "read/job_fields.hpp"
#include "read/row_tree.hpp"
#include "read/takeoff_columns.hpp"
#include "read/takeoff_damage.hpp"
#include "text/csv.hpp"
#include "text/number_words.hpp"
#include "text/sheet_table.hpp"

namespace seambook {
namespace {

constexpr std::string_view separator_of(Shape shape) {
  if (shape == Shape::span) return " / ";
  if (shape == Shape::words) return " ";
  return {};
}

/// `5` under the heading `leg (mm)` is `5 mm`; what says its own unit, or is no number, stays.
std::string with_unit_of(std::string_view text, std::string_view unit) {
  const NumberRead number = read_number(text);
  const bool bare = number.value && number.length == text.size();
  return std::string(text) + (bare && !unit.empty() ? " " + std::string(unit) : "");
}

/// Spreadsheet programs write `TRUE` for what was typed as `true`.
std::string_view flag_word(std::string_view text, Shape shape) {
  if (shape != Shape::flag && shape != Shape::flag_or_section) return text;
  return text == "TRUE" ? "true" : text == "FALSE" ? "false" : text;
}

std::uint32_t add_field(RowTree& rows, const InputField& field, const TakeoffColumn& column) {
  std::string_view text = flag_word(without_blanks_around(field.text), column.info->shape);
  const std::string_view separator = separator_of(column.info->shape);
  if (separator.empty() || text.find(separator) == text.npos)
    return rows.add(Kind::scalar, field.place, with_unit_of(text, column.unit));
  const std::uint32_t list = rows.add(Kind::list, field.place);
  std::uint32_t last = TreeNode::none;
  for (bool more = true; more;) {
    const std::size_t end = text.find(separator);
    more = end != text.npos;
    const std::string_view piece = without_blanks_around(text.substr(0, end));
    text.remove_prefix(more ? end + separator.size() : text.size());
    if (!piece.empty() || column.info->shape == Shape::span)
      rows.hang(list, last, rows.add(Kind::scalar, field.place, with_unit_of(piece, column.unit)));
  }
  return list;
}

JointText read_row(Reading& reading, RowTree& rows, const InputRow& row, const std::vector<TakeoffColumn>& columns) {
  const std::string_view told_missing = reading.told_missing;
  const std::uint32_t map = rows.add(Kind::map, row.front().place);
  std::uint32_t last = TreeNode::none;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    const FieldInfo* info = columns[c].info;
    if (!info || without_blanks_around(row[c].text).empty()) continue;
    if (is_damaged(reading, row[c], *info)) {
      if (info->required) reading.told_missing = info->key;
      continue;
    }
    rows.hang(map, last, rows.add(Kind::scalar, row[c].place, info->key));
    rows.hang(map, last, add_field(rows, row[c], columns[c]));
  }
  JointText joint;
  read_fields(reading, Value(rows.tree, map), joint);
  reading.told_missing = told_missing;
  rows.tree.nodes.clear();
  rows.tree.arena.clear();
  return joint;
}

std::vector<JointText> read_table(Reading& reading, std::uint32_t file, const InputTable& table) {
  const std::vector<FieldInfo> keys = infos_of<JointText>();
  const std::vector<TakeoffColumn> columns = match_columns(reading, table.headings, keys);
  if (table.rows.empty()) reading.diagnostics.error({file, 0, 0}, "the take-off lists no joint");
  std::vector<JointText> joints;
  RowTree rows;
  rows.tree.file = file;
  for (const InputRow& row : table.rows) {
    if (reading.diagnostics.full()) break;
    joints.push_back(read_row(reading, rows, row, columns));
  }
  reading.told_missing = {};
  return joints;
}

}  // namespace

Takeoff read_takeoff(Reading& reading, std::string name, std::string text, const Word* sheet) {
  Diagnostics& diagnostics = reading.diagnostics;
  const bool workbook = is_workbook(name, text);
  std::string bytes = workbook ? std::exchange(text, {}) : std::string();  // no lines to show
  const std::uint32_t file = diagnostics.add_file(std::move(name), std::move(text));
  const std::size_t told = diagnostics.list.size();
  if (!workbook && sheet)
    diagnostics.error(sheet->place, "'joints_sheet': the take-off is no workbook", "leave the key out");
  const WantedSheet wanted = sheet ? WantedSheet{sheet->text, sheet->place} : WantedSheet{};
  const std::optional<InputTable> table =
      workbook ? parse_workbook(file, bytes, wanted, diagnostics) : parse_csv(file, diagnostics);
  if (!table) return {file, {}};
  // Rows that could not be read were told of: that none is left is no fault of its own.
  if (table->rows.empty() && diagnostics.list.size() > told) return {file, {}};
  return {file, read_table(reading, file, *table)};
}

}  // namespace seambook
