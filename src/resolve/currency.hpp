// Currencies by their ISO 4217 codes.
#pragma once

#include <optional>
#include <string_view>

namespace seambook {

/// Digits of the minor unit (2 for EUR, 0 for JPY, 3 for KWD); nothing for a code that is none.
std::optional<int> minor_digits_of(std::string_view currency);

}  // namespace seambook
