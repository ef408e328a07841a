#include "resolve/shown.hpp"

#include <fmt/format.h>

namespace seambook {

std::string shown(double si, const Unit& unit) {
  const std::string_view word = unit.word;
  const bool close = word.empty() || word == unit::degree.word;
  std::string number = fmt::format("{:.3f}", shown_number(si, unit));
  while (number.ends_with('0')) number.pop_back();
  if (number.ends_with('.')) number.pop_back();
  return fmt::format("{}{}{}", number, close ? "" : " ", word);
}

std::string shown(double si, const Unit& metric, Terms terms) { return shown(si, shown_in(terms, metric).unit); }

std::string shown_fixed(double si, const Unit& metric, int decimals, Terms terms) {
  const Shown as = shown_in(terms, metric, decimals);
  return fmt::format("{:.{}f} {}", si / as.unit.si, as.decimals, as.unit.word);
}

std::string_view basis_in_words(Basis basis) {
  switch (basis) {
    case Basis::published:
      return "published";
    case Basis::common_practice:
      return "common practice";
    case Basis::assumption:
      break;
  }
  return "assumption";
}

}  // namespace seambook
