// UTF-8 taken apart one character at a time, with everything the standard forbids (overlong forms, surrogates,
// values above U+10FFFF, cut sequences) reported as not valid. For writers that must not pass on a broken byte.
#pragma once

#include <cstddef>
#include <string_view>

namespace seambook {

struct Character {
  char32_t code = 0;
  std::size_t bytes = 1;  // when not valid: 1, so that a reader steps over the offending byte
  bool valid = false;
};

/// The character `text` begins with. Requires: not empty.
Character first_character(std::string_view text);
/// A control character (C0, delete, C1) or an invisible one that reorders what follows it.
bool is_control(char32_t code);

}  // namespace seambook
