#include "read/takeoff.hpp"

#include "read/job_fields.hpp"
#include "read/row_tree.hpp"
#include "text/csv.hpp"
#include "text/number_words.hpp"

namespace seambook {
namespace {

constexpr std::string_view separator_of(Shape shape) {
  if (shape == Shape::span) return " / ";
  if (shape == Shape::words) return " ";
  return {};
}

std::uint32_t add_field(RowTree& rows, std::string_view text, Place place, const FieldInfo& info) {
  const std::string_view separator = separator_of(info.shape);
  if (separator.empty() || text.find(separator) == text.npos) return rows.add(Kind::scalar, place, text);
  const std::uint32_t list = rows.add(Kind::list, place);
  std::uint32_t last = TreeNode::none;
  for (bool more = true; more;) {
    const std::size_t end = text.find(separator);
    more = end != text.npos;
    const std::string_view piece = without_blanks_around(text.substr(0, end));
    text.remove_prefix(more ? end + separator.size() : text.size());
    if (!piece.empty() || info.shape == Shape::span) rows.hang(list, last, rows.add(Kind::scalar, place, piece));
  }
  return list;
}

std::uint32_t add_row(RowTree& rows, const std::vector<CsvField>& row, const std::vector<const FieldInfo*>& columns) {
  const std::uint32_t map = rows.add(Kind::map, row.front().place);
  std::uint32_t last = TreeNode::none;
  for (std::size_t c = 0; c < columns.size() && c < row.size(); ++c) {
    const std::string_view text = without_blanks_around(row[c].text);
    if (!columns[c] || text.empty()) continue;
    rows.hang(map, last, rows.add(Kind::scalar, row[c].place, columns[c]->key));
    rows.hang(map, last, add_field(rows, text, row[c].place, *columns[c]));
  }
  return map;
}

/// The field that a heading names; nothing, and a complaint, when there is none.
const FieldInfo* match_heading(Reading& reading, const CsvField& heading, const std::vector<FieldInfo>& keys) {
  std::vector<std::string_view> known;
  for (const FieldInfo& info : keys) {
    if (info.key == heading.text && info.shape == Shape::section) {
      refuse_value(reading, heading.place, info, "a column cannot hold it", "write such joints in the job file");
      return nullptr;
    }
    if (info.key == heading.text) return &info;
    if (info.shape != Shape::section) known.push_back(info.key);
  }
  refuse_unknown_heading(reading, heading.place, heading.text, known);
  return nullptr;
}

}  // namespace

std::vector<JointText> read_takeoff(Reading& reading, std::uint32_t file) {
  std::vector<JointText> joints;
  const std::optional<CsvTable> table = parse_csv(file, reading.diagnostics);
  if (!table) return joints;
  const std::vector<FieldInfo> keys = infos_of<JointText>();
  std::vector<const FieldInfo*> columns;  // they differ: parse_csv has seen to it
  for (const CsvField& heading : table->headings) columns.push_back(match_heading(reading, heading, keys));
  if (table->rows.empty()) reading.diagnostics.error({file, 0, 0}, "the take-off lists no joint");
  RowTree rows;
  rows.tree.file = file;
  for (const std::vector<CsvField>& row : table->rows) {
    if (reading.diagnostics.full()) break;
    const std::uint32_t map = add_row(rows, row, columns);
    read_fields(reading, Value(rows.tree, map), joints.emplace_back());
    rows.tree.nodes.clear();
    rows.tree.arena.clear();
  }
  return joints;
}

}  // namespace seambook
