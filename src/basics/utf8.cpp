#include "basics/utf8.hpp"

#include <array>

namespace seambook {
namespace {

struct CodeRange {
  char32_t from, to;
};

constexpr std::array zero_width_ranges{CodeRange{0x0300, 0x036F}, CodeRange{0x0483, 0x0489}, CodeRange{0x0591, 0x05BD},
                                       CodeRange{0x064B, 0x065F}, CodeRange{0x1AB0, 0x1AFF}, CodeRange{0x1DC0, 0x1DFF},
                                       CodeRange{0x200B, 0x200D}, CodeRange{0x20D0, 0x20FF}, CodeRange{0xFE00, 0xFE0F},
                                       CodeRange{0xFE20, 0xFE2F}};

constexpr std::array double_width_ranges{
    CodeRange{0x1100, 0x115F},   CodeRange{0x2E80, 0x303E},   CodeRange{0x3041, 0xA4CF},  CodeRange{0xAC00, 0xD7A3},
    CodeRange{0xF900, 0xFAFF},   CodeRange{0xFE30, 0xFE6F},   CodeRange{0xFF00, 0xFF60},  CodeRange{0xFFE0, 0xFFE6},
    CodeRange{0x1F300, 0x1F64F}, CodeRange{0x1F900, 0x1F9FF}, CodeRange{0x20000, 0x3FFFD}};

template <std::size_t N>
bool in_ranges(char32_t code, const std::array<CodeRange, N>& ranges) {
  for (const CodeRange& range : ranges)
    if (code >= range.from && code <= range.to) return true;
  return false;
}

}  // namespace

Character character_at(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[at + i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return {lead, 1, true};
  const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  const Character bad{lead, 1, false};
  if (lead < 0xC2 || lead > 0xF4 || text.size() - at < bytes) return bad;
  char32_t code = lead & (0x7Fu >> bytes);
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byte(i) & 0xC0u) != 0x80u) return bad;
    code = code << 6 | (byte(i) & 0x3Fu);
  }
  // Overlong forms, surrogates and numbers past the last code point are no UTF-8.
  const char32_t least = bytes == 4 ? 0x10000 : bytes == 3 ? 0x800 : 0x80;
  if (code < least || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF)) return bad;
  return {code, bytes, true};
}

std::size_t count_characters(std::string_view text) {
  std::size_t count = 0;
  for (std::size_t at = 0; at < text.size(); at += character_at(text, at).bytes) ++count;
  return count;
}

bool is_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const Character c = character_at(text, at);
    if (!c.valid) return false;
    at += c.bytes;
  }
  return true;
}

std::size_t display_width(char32_t code) {
  if (code < 0x300) return 1;
  if (in_ranges(code, zero_width_ranges)) return 0;
  return in_ranges(code, double_width_ranges) ? 2 : 1;
}

bool is_control(char32_t code) {
  if (code < 0x20 || (code >= 0x7F && code <= 0x9F)) return true;
  if (code < 0x2000) return code == 0x061C;
  return code == 0x200E || code == 0x200F || (code >= 0x2028 && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069) ||
         code == 0xFEFF || (code >= 0xFDD0 && code <= 0xFDEF) || (code & 0xFFFE) == 0xFFFE;
}

void append_printable(std::string& out, std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const Character c = character_at(text, at);
    if (!c.valid)
      out += '?';
    else if (is_control(c.code))
      out += ' ';
    else
      out += text.substr(at, c.bytes);
    at += c.bytes;
  }
}

}  // namespace seambook
