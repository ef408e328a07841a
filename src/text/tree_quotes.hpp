// Quotes and brackets that are not closed, told of at their opening: the parser accepts one at the end of the file in
// silence and else complains where it gave up, which may be many lines below.
#pragma once

#include "text/tree_build.hpp"

namespace seambook {

struct QuoteWalk {
  bool closed = false, escapes = false;
  std::uint32_t line_ends = 0;
  std::size_t end = 0;  // byte after the closing quote
};

/// From the opening quote at byte `opening` to its closing one.
QuoteWalk walk_quote(std::string_view text, std::size_t opening);
/// The first quote after an event that opens a text and is never closed. Only for placing a fault that is known.
std::optional<Spot> unclosed_quote_after(std::string_view text, Spot event);
/// The innermost bracket between an event and byte `end` that is still open there. Only for placing a fault that is
/// known.
std::optional<Spot> open_bracket_between(std::string_view text, Spot event, std::size_t end);
TextRefused quote_not_closed(TreeBuild&, Spot opening);
/// The quoted text over several lines was closed by a quote meant to open another. Requires: build.long_quote.
TextRefused quote_closed_late(const TreeBuild&);

}  // namespace seambook
