// UTF-8 text taken apart into characters: checked, counted, measured for the terminal, made safe to print.
// Nothing here throws; bytes that are no UTF-8 count as one character each.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace seambook {

/// A character of a text and how many bytes it takes there. `valid` is false for a byte that is no UTF-8.
struct Character {
  char32_t code = 0;
  std::size_t bytes = 1;
  bool valid = true;
};

/// The character at byte `at`. Requires: at < text.size().
Character character_at(std::string_view text, std::size_t at);
std::size_t count_characters(std::string_view text);
bool is_utf8(std::string_view text);
/// Columns a terminal gives the character: 0 for combining marks, 2 for wide East Asian ones and pictures, else 1.
std::size_t display_width(char32_t code);
/// Control characters of all kinds: C0, DEL, C1, line and paragraph separator, direction marks, byte-order mark,
/// and code points that are no characters.
bool is_control(char32_t code);
/// Appends `text` with each control character as a space and each bad byte as `?`, so that no terminal acts on it.
void append_printable(std::string& out, std::string_view text);
inline constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

}  // namespace seambook
