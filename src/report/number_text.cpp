#include "report/number_text.hpp"

#include <fmt/format.h>

namespace seambook {

std::string figure(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  const bool zero = text.find_first_not_of("-0.") == std::string::npos;
  if (zero && text.front() == '-') text.erase(0, 1);
  return text;
}

std::string money_text(double value, std::string_view currency) {
  std::string text = figure(value, 2);
  const std::size_t first_digit = text.front() == '-' ? 1 : 0;
  const std::size_t point = text.find('.');
  if (point != std::string::npos) {
    for (std::size_t at = point; at > first_digit + 3;) text.insert(at -= 3, 1, ' ');
  }
  if (!currency.empty()) text.append(" ").append(currency);
  return text;
}

}  // namespace seambook
