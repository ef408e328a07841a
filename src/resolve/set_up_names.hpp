// What can differ from one set-up to the next, by the words of the files.
#pragma once

#include "resolve/rate_book.hpp"

namespace seambook {

/// Refuses words that name no attribute of a set-up.
std::string find_attribute(Diagnostics&, const Word&);
/// A value of an attribute as the rest of the book writes it; refused when it names nothing there.
std::string find_attribute_value(Diagnostics&, const RateBook&, std::string_view attribute, const Word& value);

}  // namespace seambook
