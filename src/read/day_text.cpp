#include "read/day_text.hpp"

#include <algorithm>

#include "read/day_fields.hpp"
#include "read/opening.hpp"
#include "read/row_tree.hpp"
#include "text/csv.hpp"
#include "text/number_words.hpp"

namespace seambook {
namespace {

constexpr std::string_view row_columns[] = {"what", "name", "from", "until", "station", "welder", "note"};
constexpr std::size_t day_columns = std::size(row_columns), what_column = 0, note_column = day_columns - 1;

template <auto List>
void read_row(Reading& reading, Value row, DayText& day) {
  read_fields(reading, row, (day.*List).emplace_back());
}

/// What a row tells of, the key that each of its columns stands for (none: it must be empty; notes are remarks then),
/// and how it is read.
struct RowKind {
  std::string_view keys[day_columns];
  void (*read)(Reading&, Value, DayText&);
};
constexpr RowKind row_kinds[] = {
    {{"absent", "welder", "from", "until", "", "", "why"}, read_row<&DayText::absent>},
    {{"down", "station", "from", "until", "", "", "why"}, read_row<&DayText::down>},
    {{"arrived", "job", "at", "", "", "", ""}, read_row<&DayText::arrived>},
    {{"started", "operation", "at", "", "station", "welder", ""}, read_row<&DayText::started>},
    {{"done", "operation", "start", "finish", "station", "welder", ""}, read_row<&DayText::done>},
    {{"released", "joint", "at", "", "", "by", "what"}, read_row<&DayText::released>},
    {{"blocked", "operation", "", "", "", "", "why"}, read_row<&DayText::blocked>},
    {{"rush", "job", "", "due", "", "", ""}, read_row<&DayText::rush>},
    {{"overtime", "shift", "date", "", "", "", ""}, read_row<&DayText::overtime>},
};

/// For each field of a row its column; nothing, and a complaint, for headings that are none.
std::vector<std::size_t> match_columns(Reading& reading, const InputRow& headings) {
  std::vector<std::size_t> found;
  found.reserve(headings.size());
  for (const InputField& heading : headings) {
    const auto column = std::find(std::begin(row_columns), std::end(row_columns), heading.text);
    found.push_back(static_cast<std::size_t>(column - std::begin(row_columns)));
    if (column == std::end(row_columns) && !heading.text.empty())
      refuse_unknown_heading(reading, heading.place, heading.text, row_columns);
  }
  return found;
}

const RowKind* kind_of(Reading& reading, const InputRow& row, const std::vector<std::size_t>& matched) {
  const auto what = std::find(matched.begin(), matched.end(), what_column);
  if (what == matched.end()) return nullptr;
  const InputField& field = row[static_cast<std::size_t>(what - matched.begin())];
  std::vector<std::string_view> known;
  for (const RowKind& kind : row_kinds) {
    if (kind.keys[what_column] == without_blanks_around(field.text)) return &kind;
    known.push_back(kind.keys[what_column]);
  }
  std::string list;
  for (const std::string_view word : known) list += (list.empty() ? "" : ", ") + std::string(word);
  const std::string_view near = nearest(field.text, known);
  reading.diagnostics.error(field.place, "a row cannot tell of " + quoted(field.text),
                            near.empty() ? "it may be: " + list : "did you mean '" + std::string(near) + "'?");
  return nullptr;
}

void take_row(Reading& reading, const InputRow& row, const std::vector<std::size_t>& matched, DayText& day) {
  const RowKind* kind = kind_of(reading, row, matched);
  if (kind == nullptr) return;
  RowTree rows;
  rows.tree.file = row.front().place.file;
  const std::uint32_t map = rows.add(Kind::map, row.front().place);
  std::uint32_t last = TreeNode::none;
  for (std::size_t c = 0; c < row.size(); ++c) {
    const std::string_view text = without_blanks_around(row[c].text);
    const std::size_t column = matched[c];
    if (column == what_column || column >= day_columns || text.empty()) continue;
    const std::string_view key = kind->keys[column];
    if (!key.empty()) {
      rows.hang(map, last, rows.add(Kind::scalar, row[c].place, key));
      rows.hang(map, last, rows.add(Kind::scalar, row[c].place, text));
    } else if (column != note_column) {
      reading.diagnostics.error(row[c].place,
                                "a row that tells of '" + std::string(kind->keys[what_column]) + "' has nothing in '" +
                                    std::string(row_columns[column]) + "'",
                                "leave the field empty, or write it as a note");
    }
  }
  kind->read(reading, Value(rows.tree, map), day);
}

void read_rows(Reading& reading, std::uint32_t file, DayText& day) {
  const std::optional<InputTable> table = parse_csv(file, reading.diagnostics);
  if (!table) return;
  const std::vector<std::size_t> matched = match_columns(reading, table->headings);
  if (std::find(matched.begin(), matched.end(), what_column) == matched.end())
    reading.diagnostics.error({file, 1, 1}, "the heading 'what' is missing",
                              "begin with: what,name,from,until,station,welder,note");
  for (const InputRow& row : table->rows) {
    if (reading.diagnostics.full()) break;
    take_row(reading, row, matched, day);
  }
}

}  // namespace

DayText read_day_file(std::uint32_t file, Diagnostics& diagnostics) {
  DayText day;
  day.place = {file, 0, 0};
  Reading reading{diagnostics, {}};
  if (diagnostics.files[file].name.ends_with(".csv")) {
    read_rows(reading, file, day);
    return day;
  }
  const std::optional<Tree> tree = parse_yaml(file, diagnostics);
  if (!tree) return day;
  const Value root(*tree, 0);
  if (read_opening(reading, root)) read_fields(reading, root, day);
  return day;
}

}  // namespace seambook
