// Amounts as an author writes them, read by the program's own reader.
#pragma once

#include <doctest/doctest.h>

#include "text/unit_words.hpp"

namespace tables {

template <seambook::Dim D>
seambook::Quantity<D> read(const char* text) {
  const seambook::AmountRead amount = seambook::read_amount(text, D, {});
  REQUIRE_MESSAGE(amount.amount.has_value(), text << ": " << amount.problem);
  return {amount.amount->si};
}

}  // namespace tables
