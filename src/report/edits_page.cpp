#include "report/edits_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <set>
#include <unordered_map>
#include <utility>

#include "read/field_info.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t state_row = 2, list_heading = 4, list_first = list_heading + 1, list_length = 30;
constexpr std::uint32_t table_heading = list_first + list_length + 2, table_first = table_heading + 1;
struct EditsAt {
  enum Column : std::uint16_t { place, what, original, value, line, count, columns };
};

/// One input of the workbook, and the name of its sheet.
struct Edit {
  std::shared_ptr<const std::string> sheet;
  LiveInput input;
};

/// The keys of a table and of what stands inside it that hold two numbers.
void add_span_keys(const std::vector<FieldInfo>& table, std::set<std::string_view>& keys) {
  for (const FieldInfo& info : table) {
    if (info.shape == Shape::span) keys.insert(info.key);
    if (info.inside != nullptr) add_span_keys(info.inside(), keys);
  }
}

/// Names that stand before a figure in its row: weldment and joint, or what a line is for.
std::map<std::uint32_t, std::string> row_names(const Sheet& sheet) {
  std::map<std::uint32_t, std::string> names;
  for (std::uint16_t column = 0; column < 2; ++column) {
    for (const Cell& cell : sheet.cells) {
      const auto* text = std::get_if<std::string>(&cell.content);
      if (cell.column != column || text == nullptr) continue;
      std::string& name = names[cell.row];
      name += (name.empty() ? "" : " ") + *text;
    }
  }
  return names;
}

/// Takes the inputs of all sheets.
std::vector<Edit> edits_of(std::vector<Sheet>& sheets) {
  std::vector<Edit> edits;
  for (Sheet& sheet : sheets) {
    if (sheet.live.empty()) continue;
    const auto name = std::make_shared<const std::string>(sheet.name);
    const auto names = sheet.name == rates_sheet ? std::map<std::uint32_t, std::string>() : row_names(sheet);
    for (LiveInput& input : std::exchange(sheet.live, {})) {
      if (const auto of = names.find(input.row); of != names.end() && input.of.empty()) input.of = of->second;
      edits.push_back({name, std::move(input)});
    }
  }
  return edits;
}

/// Where a number stands in the author's files.
struct Origin {
  Place place;
  std::string_view key;
  double value = 0;  // SI
};

/// Nothing for what is no number of the files.
std::optional<Origin> origin_of(const RateBook& book, const Job& job, SourceId source) {
  if (source == no_source) return std::nullopt;
  if (source < first_job_source) {
    if (source >= book.sources.size()) return std::nullopt;
    return Origin{book.sources[source].place, book.sources[source].key, book.sources[source].value};
  }
  if (source - first_job_source >= job.sources.size()) return std::nullopt;
  const JobSource& number = job.sources[source - first_job_source];
  return Origin{number.place, number.key, number.value};
}

std::string place_text(const Diagnostics& places, Place place) {
  if (places.files[place.file].sheet.empty()) place.column = 0;  // a line is enough in a text
  return where(places, place);
}

/// A cell's number as a file holds it: with a point, whatever the sheet's language.
std::string as_text(std::uint32_t row) {
  return fmt::format("SUBSTITUTE({},\",\",\".\")", cell_name(row, EditsAt::value));
}

std::string with_unit(const std::string& unit) {
  if (unit.empty()) return {};
  return fmt::format("&\"{}{}\"", unit == "°" ? "" : " ", unit);
}

/// What the lines for the files are made of.
struct Lines {
  const RateBook& book;
  const Job& job;
  const Diagnostics& places;
  std::vector<Edit> edits;
  std::unordered_map<SourceId, std::uint32_t> rows;  // of the table, by the number's source
  std::set<std::string_view> span_keys;              // of jobs and rate books
};

Lines lines_of(const RateBook& book, const Job& job, const Diagnostics& places, std::vector<Edit> edits) {
  Lines lines{book, job, places, std::move(edits), {}, {}};
  add_span_keys(job_fields(), lines.span_keys);
  add_span_keys(rate_fields(), lines.span_keys);
  for (std::size_t i = 0; i < lines.edits.size(); ++i)
    lines.rows[lines.edits[i].input.source] = table_first + static_cast<std::uint32_t>(i);
  return lines;
}

/// The other number behind a key that holds two.
std::optional<SourceId> partner_of(const Lines& lines, SourceId source) {
  const std::optional<Origin> own = origin_of(lines.book, lines.job, source);
  if (!own || !lines.span_keys.contains(own->key)) return std::nullopt;
  for (const SourceId other : {source - 1, source + 1}) {
    const std::optional<Origin> found = origin_of(lines.book, lines.job, other);
    if (found && found->key == own->key && found->place.file == own->place.file && found->place.line == own->place.line)
      return other;
  }
  return std::nullopt;
}

/// `"length: "&SUBSTITUTE(D40,",",".")&" mm"`; a key that holds two numbers is written with both.
std::string line_formula(const Lines& lines, const Edit& edit) {
  const SourceId source = edit.input.source;
  const Origin origin = origin_of(lines.book, lines.job, source).value();
  const std::string unit = with_unit(edit.input.unit);
  const std::optional<SourceId> partner = partner_of(lines, source);
  if (!partner) return fmt::format("\"{}: \"&{}{}", origin.key, as_text(lines.rows.at(source)), unit);
  const auto text = [&](SourceId of) {
    if (const auto row = lines.rows.find(of); row != lines.rows.end()) return as_text(row->second);
    const double scale = edit.input.value != 0 ? origin.value / edit.input.value : 1;
    return fmt::format("\"{:.12g}\"", origin_of(lines.book, lines.job, of)->value / scale);
  };
  return fmt::format("\"{}: [\"&{}{}&\", \"&{}{}&\"]\"", origin.key, text(std::min(source, *partner)), unit,
                     text(std::max(source, *partner)), unit);
}

/// Quantities stand in one list, one cell a quantity.
std::string quantities_formula(const std::vector<Edit>& edits) {
  std::string text;
  for (std::size_t i = 0; i < edits.size(); ++i) {
    if (edits[i].input.source != no_source) continue;
    text += text.empty() ? "\"quantities: [\"&" : "&\", \"&";
    text += as_text(table_first + static_cast<std::uint32_t>(i));
  }
  return text + "&\"]\"";
}

void put_row(const Lines& lines, std::size_t i, Sheet& sheet) {
  const Edit& edit = lines.edits[i];
  const LiveInput& input = edit.input;
  const std::uint32_t row = table_first + static_cast<std::uint32_t>(i);
  const std::optional<Origin> origin = origin_of(lines.book, lines.job, input.source);
  const Place place = origin ? origin->place : Place{lines.job.weldments.front().place.file, 0, 0};
  const std::string cell = sheet_reference(*edit.sheet) + "!" + cell_name(input.row, input.column);
  put(sheet, row, EditsAt::place, place_text(lines.places, place));
  put(sheet, row, EditsAt::what, input.of.empty() ? input.words : fmt::format("{}: {}", input.of, input.words));
  sheet.cells.push_back({row, EditsAt::original, input.value, Look::figure, {}});
  sheet.cells.push_back({row, EditsAt::value, Formula{cell, input.value}, Look::figure, {}});
  const std::string differs = fmt::format("{}={}", cell_name(row, EditsAt::original), cell_name(row, EditsAt::value));
  put_formula(
      sheet, row, EditsAt::line,
      {fmt::format("IF({},\"\",{})", differs, origin ? line_formula(lines, edit) : quantities_formula(lines.edits)),
       std::string()},
      0, Look::note);
  const std::string before = i == 0 ? "0" : cell_name(row - 1, EditsAt::count);
  put_formula(sheet, row, EditsAt::count, {fmt::format("{}+IF({},0,1)", before, differs), 0.0}, 0);
}

LaterRows rows_of_edits(const std::shared_ptr<const Lines>& lines) {
  return {lines->edits.size(), [lines](std::size_t i, std::vector<Cell>& cells) {
            Sheet own;
            own.cells.swap(cells);
            put_row(*lines, i, own);
            own.cells.swap(cells);
          }};
}

/// The n-th change is where the count of changes first reaches n.
void put_list(std::uint32_t last, Sheet& sheet) {
  const std::string counts =
      fmt::format("{}:{}", cell_name(table_first, EditsAt::count, true), cell_name(last, EditsAt::count, true));
  for (std::uint32_t n = 1; n <= list_length; ++n) {
    const std::uint32_t row = list_first + n - 1;
    for (std::uint16_t column = EditsAt::place; column <= EditsAt::line; ++column) {
      const std::string from =
          fmt::format("{}:{}", cell_name(table_first, column, true), cell_name(last, column, true));
      put_formula(sheet, row, column,
                  {fmt::format("IF({}<{},\"\",INDEX({},MATCH({},{},0)))", cell_name(last, EditsAt::count, true), n,
                               from, n, counts),
                   std::string()},
                  0);
      sheet.cells.back().number_format = {};
    }
  }
}

void put_headings(Sheet& sheet, std::uint32_t row) {
  std::uint16_t column = 0;
  for (const char* words :
       {"file and line", "what", "in the file", "on the sheets", "line for the file", "changes so far"})
    put(sheet, row, column++, words, Look::heading);
}

}  // namespace

Sheet edits_page(const RateBook& book, const Job& job, std::vector<Sheet>& sheets, const Diagnostics& places) {
  Sheet sheet;
  sheet.name = edits_sheet;
  put_title(sheet, "Edits: what was changed on these sheets",
            "Paste the lines into the files to keep a change; then quote again.");
  std::vector<Edit> edits = edits_of(sheets);
  const std::uint32_t last = table_first + static_cast<std::uint32_t>(edits.size()) - 1;
  const std::string changed = cell_name(last, EditsAt::count, true);
  put(sheet, state_row, 0, "these sheets are", Look::label);
  put_formula(sheet, state_row, 1,
              {fmt::format("IF({0}=0,\"{1}\",\"changed: \"&{0}&\" values differ from the job file or the rate book\")",
                           changed, edits_none),
               std::string(edits_none)},
              0, Look::label);
  put_headings(sheet, list_heading);
  put_list(last, sheet);
  put(sheet, table_heading - 1, 0,
      fmt::format("All inputs that may be changed; the first {} changes stand above", list_length), Look::label);
  put_headings(sheet, table_heading);
  sheet.later = rows_of_edits(std::make_shared<const Lines>(lines_of(book, job, places, std::move(edits))));
  sheet.highlights.push_back(
      {table_first, last, EditsAt::place, EditsAt::line,
       fmt::format("${}<>${}", cell_name(table_first, EditsAt::original), cell_name(table_first, EditsAt::value))});
  sheet.column_widths = {34, 52, 14, 14, 44, 10};
  sheet.repeat_rows = {table_heading, table_heading};
  sheet.landscape = true;
  return sheet;
}

}  // namespace seambook
