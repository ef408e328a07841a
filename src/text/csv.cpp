#include "text/csv.hpp"

#include <algorithm>

#include "basics/utf8.hpp"
#include "text/number_words.hpp"
#include "text/text_check.hpp"
#include "text/tree.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_csv_faults = 100;

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
InputField quoted_field(CsvReading& reading) {
  InputField field{{}, reading.place, FieldKind::text};
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

InputField plain_field(CsvReading& reading) {
  const Place place = reading.place;
  InputField field{std::string(without_blanks_around(rest_of_field(reading))), place, FieldKind::text};
  if (field.text.starts_with('"'))
    csv_fault(reading, place, "a blank before an opening quote", "begin the field with the quote");
  return field;
}

InputRow read_row(CsvReading& reading) {
  InputRow row;
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

std::string separator_word(char separator) { return separator == '\t' ? "a tab" : std::string("'") + separator + "'"; }

/// Whether a row has a field under each heading.
bool fits(CsvReading& reading, const InputRow& row, std::size_t headings) {
  if (reading.stopped || row.size() == headings) return !reading.stopped;
  const std::string fields = std::to_string(row.size()) + (row.size() == 1 ? " field" : " fields");
  csv_fault(reading, row.front().place, fields + " under " + std::to_string(headings) + " headings",
            "put a text with " + separator_word(reading.separator) + " in double quotes; decimals take a point");
  return false;
}

void take_headings(CsvReading& reading, InputRow row, std::optional<InputTable>& table) {
  if (row.size() > most_headings) {
    csv_fault(reading, row[most_headings].place, "more than 200 headings", "leave out columns");
    reading.stopped = true;
  } else {
    table = InputTable{std::move(row), {}};
  }
}

}  // namespace

std::optional<InputTable> parse_csv(std::uint32_t file, Diagnostics& diagnostics) {
  if (!check_text(file, diagnostics).good) return std::nullopt;
  std::string_view text = diagnostics.files[file].text;
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  CsvReading reading{.text = text, .diagnostics = diagnostics, .place = {file, 1, 1}};
  const std::size_t heading = std::min(text.find_first_not_of(" \t\r\n"), text.size());
  const std::size_t row_start = heading == 0 ? 0 : text.rfind('\n', heading) + 1;
  reading.separator = separator_of(text.substr(row_start, text.find('\n', heading) - row_start));
  std::optional<InputTable> table;
  while (!reading.ended() && !reading.stopped) {
    const std::size_t faults = reading.faults;
    InputRow row = read_row(reading);
    if (is_blank_row(row)) continue;
    if (!table)
      take_headings(reading, std::move(row), table);
    else if (reading.faults == faults && fits(reading, row, table->headings.size()))
      table->rows.push_back(std::move(row));
  }
  if (table)
    check_headings(*table, diagnostics);
  else if (reading.faults == 0)
    diagnostics.error({file, 0, 0}, "the file is empty", "its first row holds the column headings");
  return table;
}

}  // namespace seambook
