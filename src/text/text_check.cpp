#include "text/text_check.hpp"

#include <cstdio>

#include "basics/utf8.hpp"
#include "text/tree.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_text_faults = 20;

std::string code_point_name(char32_t code) {
  char name[16];
  std::snprintf(name, sizeof name, "U+%04X", static_cast<unsigned>(code));
  return name;
}

/// Printable ASCII and tab: nearly every byte of nearly every file.
bool is_plain_byte(char c) { return (c >= 0x20 && c < 0x7F) || c == '\t'; }

/// Looks at one line (without its line feed) for its first character that no file may hold.
bool check_line(Diagnostics& diagnostics, Place line, std::string_view text, bool& ascii) {
  for (std::size_t at = 0; at < text.size();) {
    if (is_plain_byte(text[at])) {
      ++at;
      continue;
    }
    const Character c = character_at(text, at);
    const bool line_end = c.code == '\r' && at + 1 == text.size();
    if (c.valid && (!is_control(c.code) || line_end)) {
      ascii = ascii && c.bytes == 1;
      at += c.bytes;
      continue;
    }
    line.column = static_cast<std::uint32_t>(count_characters(text.substr(0, at)) + 1);
    if (!c.valid)
      diagnostics.error(line, "a byte that is no UTF-8", "save the file as UTF-8");
    else if (c.code == '\r')
      diagnostics.error(line, "a carriage return inside a line", "save the file with Unix or Windows line ends");
    else
      diagnostics.error(line, "a control character (" + code_point_name(c.code) + ")", "delete it");
    return false;
  }
  return true;
}

bool check_lines(std::uint32_t file, std::string_view text, Diagnostics& diagnostics, bool& ascii) {
  Place place{file, 1, 1};
  std::size_t faults = 0;
  for (std::size_t start = 0; start < text.size() && faults < most_text_faults; ++place.line) {
    const std::size_t end = std::min(text.find('\n', start), text.size());
    if (end - start > limit::line_bytes) {
      diagnostics.error(place, "a line longer than 64 kB", "break it into several lines");
      ++faults;
    } else if (!check_line(diagnostics, place, text.substr(start, end - start), ascii)) {
      ++faults;
    }
    start = end + 1;
  }
  return faults == 0;
}

}  // namespace

TextCheck check_text(std::uint32_t file, Diagnostics& diagnostics) {
  std::string_view text = diagnostics.files[file].text;
  if (text.size() > limit::file_bytes) {
    diagnostics.error({file, 0, 0}, "the file is larger than 16 MB", "split it into several files");
    return {};
  }
  if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
    diagnostics.error({file, 0, 0}, "the file is UTF-16", "save it as UTF-8");
    return {};
  }
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  TextCheck check{true, true};
  check.good = check_lines(file, text, diagnostics, check.ascii);
  return check;
}

}  // namespace seambook
