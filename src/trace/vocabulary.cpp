#include "trace/vocabulary.hpp"

#include <fmt/format.h>

#include <charconv>
#include <string>

namespace seambook {

double round_decimal(double x, int digits) {
  // Fifteen significant digits first, so that 1.005 (stored a hair below) rounds as a person would round it.
  const std::string decimal = fmt::format("{:.14e}", std::fabs(x));  // d.dddddddddddddde±xx
  const std::size_t e = decimal.find('e');
  int exponent = 0;
  const char* first = decimal.data() + e + 1;
  std::from_chars(*first == '+' ? first + 1 : first, decimal.data() + decimal.size(), exponent);
  std::string mantissa = decimal.substr(0, 1) + decimal.substr(2, e - 2);
  const int kept = exponent + 1 + digits;  // digits of the mantissa that stay
  if (kept >= static_cast<int>(mantissa.size())) return x;
  if (kept < 0) return 0;
  const bool up = mantissa[static_cast<std::size_t>(kept)] >= '5';
  mantissa.resize(static_cast<std::size_t>(kept));
  double whole = 0;
  std::from_chars(mantissa.data(), mantissa.data() + mantissa.size(), whole);
  if (up) whole += 1;
  if (whole == 0) return 0;  // never -0
  double scale = 1;
  for (int i = 0; i < digits; ++i) scale *= 10;
  return std::copysign(whole / scale, x);
}

}  // namespace seambook
