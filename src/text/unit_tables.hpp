// The spellings of units, one table a dimension, and where a spelling belongs when it stands in the wrong place.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "text/unit_words.hpp"

namespace seambook {

/// The unit of `dimension` spelled `word`; for money the word after the currency's slash.
std::optional<UnitWord> find_unit(Dim dimension, std::string_view word);
/// The dimension that knows `word`, for naming a wrong kind; money words need their currency before the slash.
std::optional<Dim> dimension_knowing(std::string_view word);
bool holds_money(Dim);
/// Three capital letters, as ISO 4217 codes are.
bool is_currency_code(std::string_view word);
/// `a length`, `an area`.
std::string a_dimension(Dim);
/// `mm, cm, m, in`; for money `EUR/h, EUR/min`.
std::string list_of_units(Dim);

}  // namespace seambook
