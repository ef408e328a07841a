// Reads back what estimate_json wrote for a quote.
#pragma once

#include <optional>

#include "basics/diagnostics.hpp"
#include "quote/past_quote.hpp"

namespace seambook {

/// Reads the job of that name from a registered file, a document of `quote --json`. Nothing, and the reason at the
/// file, when it is no such document, holds no such job or not what the job was made from, or was altered since.
std::optional<PastQuote> read_past_quote(std::uint32_t file, const std::string& job, Diagnostics& diagnostics);

}  // namespace seambook
