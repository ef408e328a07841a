#include "text/tree_quotes.hpp"

#include <algorithm>
#include <vector>

namespace seambook {
namespace {

constexpr std::string_view before_a_value = ":,[{-?";

/// Whether a quote at `at` opens a text: it stands first in its line or after a mark that a value may follow.
bool opens_text(std::string_view text, std::size_t at) {
  while (at > 0 && (text[at - 1] == ' ' || text[at - 1] == '\t')) --at;
  return at == 0 || text[at - 1] == '\n' || before_a_value.find(text[at - 1]) != before_a_value.npos;
}

bool opens_quote(std::string_view text, std::size_t at) {
  return (text[at] == '"' || text[at] == '\'') && opens_text(text, at);
}

void step_over(Spot& spot, std::string_view text) {
  const bool line_feed = text[spot.byte++] == '\n';
  spot.line += line_feed ? 1 : 0;
  spot.column = line_feed ? 0 : spot.column + 1;
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
  for (Spot spot = event; spot.byte < text.size(); step_over(spot, text)) {
    if (!opens_quote(text, spot.byte)) continue;
    const QuoteWalk walk = walk_quote(text, spot.byte);
    if (!walk.closed) return spot;
    while (spot.byte + 1 < walk.end) step_over(spot, text);
  }
  return std::nullopt;
}

std::optional<Spot> open_bracket_between(std::string_view text, Spot event, std::size_t end) {
  std::vector<Spot> open;
  for (Spot spot = event; spot.byte < std::min(end, text.size()); step_over(spot, text)) {
    const char c = text[spot.byte];
    if (opens_quote(text, spot.byte)) {
      const std::size_t quote_end = std::min(walk_quote(text, spot.byte).end, end);
      while (spot.byte + 1 < quote_end) step_over(spot, text);
    } else if (c == '#' && (spot.byte == 0 || text[spot.byte - 1] <= ' ')) {
      while (spot.byte + 1 < std::min(end, text.size()) && text[spot.byte + 1] != '\n') step_over(spot, text);
    } else if ((c == '[' || c == '{') && (!open.empty() || opens_text(text, spot.byte))) {
      open.push_back(spot);
    } else if ((c == ']' || c == '}') && !open.empty()) {
      open.pop_back();
    }
  }
  return open.empty() ? std::nullopt : std::optional(open.back());
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
