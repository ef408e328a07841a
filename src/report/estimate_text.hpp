// A job's estimate as tables for a terminal: weldments, kinds of cost, the price of each quantity.
#pragma once

#include <string>

#include "quote/quote.hpp"
#include "report/terminal.hpp"

namespace seambook {

/// Several tables under a heading with date and rate book; ends with a line break. `rates` names the rate book.
std::string estimate_text(const RateBook&, const Job&, const Estimate&, const Quote&, const std::string& rates,
                          std::size_t width = any_width);
/// `price_text` alone: the table of quantities and prices.
std::string price_text(const RateBook&, const Quote&, std::size_t width = any_width);
/// Where the total lies and what moves it most, in two lines at most; empty when nothing does.
std::string doubt_text(const RateBook&, const Doubt&);

}  // namespace seambook
