// What holds of every file before anything reads it: size and lines bounded, valid UTF-8, no control characters.
#pragma once

#include <cstdint>

#include "basics/diagnostics.hpp"

namespace seambook {

struct TextCheck {
  bool good = false;   // else the reasons are in the diagnostics
  bool ascii = false;  // bytes are characters, so columns need no counting
};

/// Checks a registered file whole, comments included; at most one complaint a line and twenty a file.
TextCheck check_text(std::uint32_t file, Diagnostics&);

}  // namespace seambook
