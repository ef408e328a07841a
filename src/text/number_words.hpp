// The number at the head of a scalar: a plain decimal, a fraction `3/16`, or a mixed fraction `1-1/2`, `1 1/2`, `1½`.
// What authors write by habit from elsewhere (decimal comma, thousands marks, exponents, hex) is refused with a hint.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace seambook {

struct NumberRead {
  std::optional<double> value;  // finite, not negative
  std::size_t length = 0;       // bytes of the text that the number takes
  bool whole = false;           // digits only
  std::string problem, hint;    // set when there is no value
};

NumberRead read_number(std::string_view text);
/// How many bytes of blank (space, tab, no-break and thin spaces) stand at the head of `text`.
std::size_t blank_length(std::string_view text);
std::string_view without_blanks_around(std::string_view text);
/// The author's words for a message: in quotes, cut when long.
std::string quoted(std::string_view text);

}  // namespace seambook
