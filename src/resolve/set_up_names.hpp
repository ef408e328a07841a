// What can differ from one set-up to the next, by the words of the files.
#pragma once

#include <array>
#include <string_view>

#include "resolve/rate_book.hpp"

namespace seambook {

/// `feed`, `program`, `job` and `weldment` follow from the work itself.
inline constexpr std::array<std::string_view, 8> set_up_attributes = {"process",     "filler",  "feed", "gas",
                                                                      "cleanliness", "program", "job",  "weldment"};

/// Refuses words that name no attribute of a set-up.
std::string find_attribute(Diagnostics&, const Word&);
/// A value of an attribute as the rest of the book writes it; refused when it names nothing there.
std::string find_attribute_value(Diagnostics&, const RateBook&, std::string_view attribute, const Word& value);

}  // namespace seambook
