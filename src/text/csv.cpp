#include "text/csv.hpp"

#include <algorithm>

#include "basics/utf8.hpp"
#include "text/number_words.hpp"
#include "text/text_check.hpp"
#include "text/tree.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_csv_faults = 100, most_headings = 200, most_fields = 1'000'000;

using CsvRow = std::vector<CsvField>;

struct CsvReading {
  std::string_view text;
  char separator = ',';
  Diagnostics& diagnostics;
  Place place;  // of the byte `at`
  std::size_t at = 0;
  std::size_t faults = 0, fields = 0;
  bool stopped = false;

  bool ended() const { return at >= text.size(); }
  /// After a carriage return comes its line feed: check_text has seen to it.
  bool at_line_end() const { return ended() || text[at] == '\n' || text[at] == '\r'; }
};

void csv_fault(CsvReading& reading, Place place, std::string message, std::string hint) {
  if (reading.stopped) return;
  if (++reading.faults > most_csv_faults) {
    reading.diagnostics.error(place, "too many faults", "mend those above first");
    reading.stopped = true;
  } else {
    reading.diagnostics.error(place, std::move(message), std::move(hint));
  }
}

void step(CsvReading& reading) {
  const bool line_feed = reading.text[reading.at] == '\n';
  const bool inside_character = (static_cast<unsigned char>(reading.text[reading.at]) & 0xC0u) == 0x80u;
  ++reading.at;
  if (line_feed) {
    ++reading.place.line;
    reading.place.column = 1;
  } else if (!inside_character) {
    ++reading.place.column;
  }
}

void step_over_line_end(CsvReading& reading) {
  while (!reading.ended() && reading.text[reading.at] == '\r') step(reading);
  if (!reading.ended()) step(reading);
}

/// The rest of a field up to its separator or line end, as it stands.
std::string_view rest_of_field(CsvReading& reading) {
  const std::size_t start = reading.at;
  while (!reading.at_line_end() && reading.text[reading.at] != reading.separator) step(reading);
  return reading.text.substr(start, reading.at - start);
}

/// A field in double quotes, with `""` for a quote inside; it may run over lines.
CsvField quoted_field(CsvReading& reading) {
  CsvField field{{}, reading.place};
  step(reading);
  for (;; step(reading)) {
    if (reading.ended()) {
      csv_fault(reading, field.place, "this quote is not closed",
                "everything to the end of the file would belong to it");
      reading.stopped = true;
      return field;
    }
    const char c = reading.text[reading.at];
    if (c == '"') {
      if (reading.text.substr(reading.at + 1).starts_with('"'))
        step(reading);
      else
        break;
    }
    if (c != '\r') field.text += c;
  }
  step(reading);
  const Place after = reading.place;
  if (!without_blanks_around(rest_of_field(reading)).empty())
    csv_fault(reading, after, "text after the closing quote", "write a quote inside a quoted field twice");
  if (field.text.size() > limit::scalar_bytes)
    csv_fault(reading, field.place, "a field longer than 64 kB", "shorten it");
  return field;
}

CsvField plain_field(CsvReading& reading) {
  const Place place = reading.place;
  CsvField field{std::string(without_blanks_around(rest_of_field(reading))), place};
  if (field.text.starts_with('"'))
    csv_fault(reading, place, "a blank before an opening quote", "begin the field with the quote");
  return field;
}

CsvRow read_row(CsvReading& reading) {
  CsvRow row;
  for (;;) {
    const bool quote = !reading.ended() && reading.text[reading.at] == '"';
    row.push_back(quote ? quoted_field(reading) : plain_field(reading));
    if (++reading.fields > most_fields) {
      csv_fault(reading, row.back().place, "more than a million fields", "split the file");
      reading.stopped = true;
    }
    if (reading.stopped || reading.at_line_end()) break;
    step(reading);
  }
  step_over_line_end(reading);
  return row;
}

bool is_blank_row(const CsvRow& row) {
  return std::all_of(row.begin(), row.end(), [](const CsvField& field) { return field.text.empty(); });
}

/// The separator that the heading row uses most outside quotes, of two the one that prose uses less; a comma when it
/// uses none.
char separator_of(std::string_view heading_row) {
  std::size_t best = 0;
  char separator = ',';
  for (const char candidate : {'\t', ';', ','}) {
    std::size_t count = 0;
    bool inside = false;
    for (const char c : heading_row) {
      if (c == '"') inside = !inside;
      count += !inside && c == candidate ? 1 : 0;
    }
    if (count > best) best = count, separator = candidate;
  }
  return separator;
}

void check_headings(CsvReading& reading, CsvRow& headings) {
  if (headings.size() > most_headings) {
    csv_fault(reading, headings[most_headings].place, "more than 200 headings", "leave out columns");
    reading.stopped = true;
    return;
  }
  for (std::size_t i = 0; i < headings.size(); ++i) {
    headings[i].text = std::string(without_blanks_around(headings[i].text));
    const CsvField& heading = headings[i];
    if (heading.text.empty()) {
      csv_fault(reading, heading.place, "an empty heading", "name the column, or take it out");
      continue;
    }
    const auto first =
        std::find_if(headings.begin(), headings.end(), [&](const CsvField& h) { return h.text == heading.text; });
    if (first != headings.begin() + static_cast<std::ptrdiff_t>(i))
      csv_fault(reading, heading.place, "heading " + quoted(heading.text) + " is given twice",
                "first in column " + std::to_string(first - headings.begin() + 1));
  }
}

std::string separator_word(char separator) { return separator == '\t' ? "a tab" : std::string("'") + separator + "'"; }

void check_field_count(CsvReading& reading, const CsvRow& row, std::size_t headings) {
  if (reading.stopped || row.size() == headings) return;
  const std::string fields = std::to_string(row.size()) + (row.size() == 1 ? " field" : " fields");
  csv_fault(reading, row.front().place, fields + " under " + std::to_string(headings) + " headings",
            "put a text with " + separator_word(reading.separator) + " in double quotes; decimals take a point");
}

}  // namespace

std::optional<CsvTable> parse_csv(std::uint32_t file, Diagnostics& diagnostics) {
  if (!check_text(file, diagnostics).good) return std::nullopt;
  std::string_view text = diagnostics.files[file].text;
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  CsvReading reading{.text = text, .diagnostics = diagnostics, .place = {file, 1, 1}};
  const std::size_t heading = std::min(text.find_first_not_of(" \t\r\n"), text.size());
  const std::size_t row_start = heading == 0 ? 0 : text.rfind('\n', heading) + 1;
  reading.separator = separator_of(text.substr(row_start, text.find('\n', heading) - row_start));
  std::optional<CsvTable> table;
  while (!reading.ended() && !reading.stopped) {
    CsvRow row = read_row(reading);
    if (is_blank_row(row)) continue;
    if (!table) {
      table = CsvTable{std::move(row), {}};
      check_headings(reading, table->headings);
    } else {
      check_field_count(reading, row, table->headings.size());
      table->rows.push_back(std::move(row));
    }
  }
  if (!table && reading.faults == 0)
    diagnostics.error({file, 0, 0}, "the file is empty", "its first row holds the column headings");
  if (reading.faults > 0) return std::nullopt;
  return table;
}

}  // namespace seambook
