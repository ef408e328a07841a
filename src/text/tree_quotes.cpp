#include "text/tree_quotes.hpp"

namespace seambook {
namespace {

constexpr std::string_view before_a_value = ":,[{-?";

/// Whether a quote at `at` opens a text: it stands first in its line or after a mark that a value may follow.
bool opens_text(std::string_view text, std::size_t at) {
  while (at > 0 && (text[at - 1] == ' ' || text[at - 1] == '\t')) --at;
  return at == 0 || text[at - 1] == '\n' || before_a_value.find(text[at - 1]) != before_a_value.npos;
}

}  // namespace

QuoteWalk walk_quote(std::string_view text, std::size_t opening) {
  const char quote = text[opening];
  QuoteWalk walk;
  for (std::size_t at = opening + 1; at < text.size(); ++at) {
    if (text[at] == '\n') {
      ++walk.line_ends;
    } else if (quote == '"' && text[at] == '\\') {
      walk.escapes = true;
      if (++at < text.size() && text[at] == '\n') ++walk.line_ends;
    } else if (text[at] == quote) {
      if (quote == '"' || at + 1 >= text.size() || text[at + 1] != '\'') {
        walk.closed = true;
        walk.end = at + 1;
        return walk;
      }
      ++at;
    }
  }
  return walk;
}

std::optional<Spot> unclosed_quote_after(std::string_view text, Spot event) {
  Spot spot = event;
  std::size_t inside_until = 0;  // closed quotes hold no openings
  for (; spot.byte < text.size(); ++spot.byte, ++spot.column) {
    const char c = text[spot.byte];
    if ((c == '"' || c == '\'') && spot.byte >= inside_until && opens_text(text, spot.byte)) {
      const QuoteWalk walk = walk_quote(text, spot.byte);
      if (!walk.closed) return spot;
      inside_until = walk.end;
    }
    if (c == '\n') spot = {spot.byte, spot.line + 1, static_cast<std::uint32_t>(-1)};
  }
  return std::nullopt;
}

TextRefused quote_not_closed(TreeBuild& build, Spot opening) {
  return {place_of(build, opening), "this quote is not closed", "everything to the end of the file would belong to it"};
}

TextRefused quote_closed_late(const TreeBuild& build) {
  const std::string line = std::to_string(build.long_quote->last_line);
  return {build.long_quote->opening, "this quote is not closed on its line",
          "the next one stands on line " + line + ", and more follows it there"};
}

}  // namespace seambook
