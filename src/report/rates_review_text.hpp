// What was found in a rate book, for the terminal and as JSON.
#pragma once

#include <span>
#include <string>

#include "basics/diagnostics.hpp"
#include "quote/rates_review.hpp"

namespace seambook {

/// A line for each kind, list and message, with the entries that share it; lines end at `width` columns.
std::string review_text(std::span<const ReviewFinding>, std::size_t width);
/// A list of objects.
std::string review_json(std::span<const ReviewFinding>, const Diagnostics& places);

}  // namespace seambook
