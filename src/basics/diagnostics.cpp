#include "basics/diagnostics.hpp"

#include <algorithm>
#include <utility>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

constexpr std::size_t shown_width = 110;  // of a source line, in terminal columns

/// Finds lines by walking forward: complaints come sorted, so a large file is walked once, not once a complaint.
struct LineWalk {
  std::uint32_t file = 0, line = 0;
  std::size_t start = 0;  // byte where `line` begins
};

/// The text of a line without its end and without a byte-order mark; nothing when the file has no such line.
std::string_view walk_to_line(LineWalk& walk, std::string_view text, Place place) {
  if (walk.file != place.file || walk.line == 0) {
    walk = {place.file, 1, text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0};
  }
  for (; walk.line < place.line; ++walk.line) {
    const std::size_t end = text.find('\n', walk.start);
    if (end == text.npos) return {};
    walk.start = end + 1;
  }
  std::string_view line = text.substr(walk.start, text.find('\n', walk.start) - walk.start);
  if (line.ends_with('\r')) line.remove_suffix(1);
  return line;
}

/// Byte where the part to show begins: a third of the shown width before the caret.
std::size_t cut_start(std::string_view line, std::size_t caret_byte) {
  if (count_characters(line) <= shown_width) return 0;
  std::size_t start = caret_byte;
  for (std::size_t n = 0; n < shown_width / 3 && start > 0; ++n) {
    do --start;
    while (start > 0 && (static_cast<unsigned char>(line[start]) & 0xC0u) == 0x80u);
  }
  return start;
}

/// The source line and, under it, the caret. A column past the end of the line points behind its last character.
void append_source(std::string& out, std::string_view line, std::uint32_t column) {
  std::size_t caret_byte = 0;
  for (std::uint32_t n = 1; n < column && caret_byte < line.size(); ++n)
    caret_byte += character_at(line, caret_byte).bytes;
  const std::size_t start = cut_start(line, caret_byte);
  std::string shown = start > 0 ? "..." : "", under(shown.size(), ' ');
  std::size_t at = start, width = 0;
  for (; at < line.size() && width < shown_width;) {
    const Character c = character_at(line, at);
    append_printable(shown, line.substr(at, c.bytes));
    const std::size_t columns = c.valid && !is_control(c.code) ? display_width(c.code) : 1;
    if (at < caret_byte) under.append(columns, ' ');
    width += columns;
    at += c.bytes;
  }
  if (at < line.size()) shown += "...";
  while (shown.ends_with(' ')) shown.pop_back();
  out += shown + '\n';
  if (column > 0) out += under + "^\n";
}

bool is_error(const Diagnostic& d) { return d.level == Level::error; }

/// A row of a sheet as it is shown, `fillet | 5 mn | 8 mm`, and the column at which the text of a cell begins there.
std::pair<std::string, std::uint32_t> shown_row(std::string_view row, std::uint32_t cell) {
  std::pair<std::string, std::uint32_t> shown;
  for (std::uint32_t number = 1;; ++number) {
    if (number == cell) shown.second = static_cast<std::uint32_t>(count_characters(shown.first) + 1);
    const std::size_t end = std::min(row.find('\t'), row.size());
    shown.first += row.substr(0, end);
    if (end == row.size()) return shown;
    shown.first += shown.first.ends_with(' ') || shown.first.empty() ? "| " : " | ";
    row.remove_prefix(end + 1);
  }
}

std::u32string letters_of(std::string_view word) {
  std::u32string letters;
  for (std::size_t at = 0; at < word.size();) {
    const Character c = character_at(word, at);
    letters += c.code;
    at += c.bytes;
  }
  return letters;
}

/// Optimal string alignment: insertions, deletions, replacements and swaps of neighbours.
std::size_t edit_distance(const std::u32string& a, const std::u32string& b) {
  std::vector<std::size_t> before_last(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    std::swap(before_last, last);
    std::swap(last, row);
  }
  return last[b.size()];
}

}  // namespace

std::uint32_t Diagnostics::add_file(std::string name, std::string text) {
  files.push_back({std::move(name), std::move(text), {}});
  return static_cast<std::uint32_t>(files.size() - 1);
}

void Diagnostics::error(Place place, std::string message, std::string hint) {
  if (full()) return;
  list.push_back({Level::error, place, std::move(message), std::move(hint)});
  if (full()) list.push_back({Level::error, place, "too many faults", "mend the others first"});
}

void Diagnostics::warning(Place place, std::string message, std::string hint) {
  list.push_back({Level::warning, place, std::move(message), std::move(hint)});
}

void Diagnostics::note(Place place, std::string message, std::string hint) {
  list.push_back({Level::note, place, std::move(message), std::move(hint)});
}

bool Diagnostics::has_errors() const { return std::any_of(list.begin(), list.end(), is_error); }

bool Diagnostics::full() const {
  if (list.size() < most_errors) return false;
  return static_cast<std::size_t>(std::count_if(list.begin(), list.end(), is_error)) >= most_errors;
}

std::string where(const Diagnostics& diagnostics, Place place) {
  std::string text;
  if (place.file == 0 || place.file >= diagnostics.files.size()) return text;
  append_printable(text, diagnostics.files[place.file].name);
  const std::string& sheet = diagnostics.files[place.file].sheet;
  if (!sheet.empty()) {
    text += ':';
    append_printable(text, sheet);
    if (place.line > 0) text += '!' + column_letters(place.column) + std::to_string(place.line);
    return text;
  }
  if (place.line == 0) return text;
  text += ':' + std::to_string(place.line);
  if (place.column > 0) text += ':' + std::to_string(place.column);
  return text;
}

std::string column_letters(std::uint32_t column) {
  std::string letters;
  for (; column > 0; column = (column - 1) / 26)
    letters.insert(letters.begin(), static_cast<char>('A' + (column - 1) % 26));
  return letters;
}

std::string render(const Diagnostics& diagnostics) {
  std::vector<const Diagnostic*> sorted;
  for (const Diagnostic& d : diagnostics.list) sorted.push_back(&d);
  std::stable_sort(sorted.begin(), sorted.end(), [](auto* a, auto* b) { return a->place < b->place; });
  std::string out;
  LineWalk walk;
  for (const Diagnostic* d : sorted) {
    const std::string at = where(diagnostics, d->place);
    if (!at.empty()) out += at + ": ";
    out += d->level == Level::not_for_the_floor ? "not for the floor" : level_word(d->level);
    out += ": ";
    append_printable(out, d->hint.empty() ? d->message : d->message + "; " + d->hint);
    out += '\n';
    if (at.empty() || d->place.line == 0) continue;
    const SourceFile& file = diagnostics.files[d->place.file];
    const std::string_view line = walk_to_line(walk, file.text, d->place);
    if (line.find_first_not_of(" \t") == line.npos) continue;
    if (file.sheet.empty()) {
      append_source(out, line, d->place.column);
    } else {
      const auto [row, column] = shown_row(line, d->place.column);
      append_source(out, row, column);
    }
  }
  return out;
}

std::string_view nearest(std::string_view word, std::span<const std::string_view> known) {
  constexpr std::size_t longest = 64;  // nobody types names this long; keeps hostile input cheap
  if (word.empty() || word.size() > longest) return {};
  const std::u32string letters = letters_of(word);
  std::string_view best;
  std::size_t limit = std::max<std::size_t>(1, letters.size() / 3) + 1;
  for (const std::string_view name : known) {
    if (name.empty() || name.size() > longest) continue;
    const std::size_t distance = edit_distance(letters, letters_of(name));
    if (distance >= limit) continue;
    best = name;
    limit = distance;
  }
  return best;
}

const char* level_word(Level level) {
  switch (level) {
    case Level::note:
      return "note";
    case Level::warning:
      return "warning";
    case Level::error:
      return "error";
    case Level::not_for_the_floor:
      return "not_for_the_floor";
  }
  return "error";
}

}  // namespace seambook
