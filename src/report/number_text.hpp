// Numbers as text for people: plain decimals with a point, whatever the locale; zero has no sign.
#pragma once

#include <string>
#include <string_view>

namespace seambook {

/// `12.50` for (12.5, 2). Not grouped. A value that rounds to zero is never written as "-0.00".
std::string figure(double value, int decimals);
/// `12 345.60 EUR`: two decimals, thousands set apart by a space. An empty currency leaves the number alone.
std::string money_text(double value, std::string_view currency);

}  // namespace seambook
