#include "text/tree_build.hpp"

#include <algorithm>
#include <utility>

#include "basics/utf8.hpp"
#include "text/tree_keys.hpp"
#include "text/tree_quotes.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_tree_faults = 100;

void collect_fault(TreeBuild& build, Place place, std::string message, std::string hint) {
  if (++build.faults > most_tree_faults) throw TextRefused{place, "too many faults", "mend those above first"};
  build.diagnostics.error(place, std::move(message), std::move(hint));
}

char byte_at(const TreeBuild& build, std::size_t byte) { return byte < build.text.size() ? build.text[byte] : '\0'; }

/// YAML allows no tab in the indentation, but the parser lets some pass.
void refuse_tab_before(TreeBuild& build, Spot spot) {
  if (spot.column == 0 || byte_at(build, spot.byte - 1) > ' ') return;
  const std::string_view before = build.text.substr(spot.byte - spot.column, spot.column);
  const std::size_t tab = before.find('\t');
  if (tab == before.npos || before.find_first_not_of(" \t") != before.npos) return;
  build.tab_line = spot.line + 1;
  const Spot at{spot.byte - spot.column + tab, spot.line, static_cast<std::uint32_t>(tab)};
  collect_fault(build, place_of(build, at), "a tab in the indentation", "indent with spaces");
}

bool key_comes_next(const TreeBuild& build) {
  return !build.open.empty() && build.open.back().map && build.open.back().key_next;
}

void refuse_key(TreeBuild& build, Place place) {
  build.readable = false;
  collect_fault(build, place, "a key that is no word", "write 'key: value'; an empty, list or map key is not read");
}

/// Makes a node and hangs it behind its elder sibling, or under its parent as the first.
std::uint32_t add_node(TreeBuild& build, Place place, Kind kind) {
  Tree& tree = build.tree;
  if (tree.nodes.size() >= limit::values) throw TextRefused{place, "more than 5 million values", "split the file"};
  const auto index = static_cast<std::uint32_t>(tree.nodes.size());
  tree.nodes.push_back({.line = place.line, .column = place.column, .kind = kind});
  if (build.open.empty()) return index;
  OpenNode& parent = build.open.back();
  (parent.last == TreeNode::none ? tree.nodes[parent.node].child : tree.nodes[parent.last].next) = index;
  parent.last = index;
  parent.key_next = !parent.key_next;
  return index;
}

/// Escapes can smuggle in what check_text refuses.
bool holds_control(std::string_view value) {
  for (std::size_t at = 0; at < value.size();) {
    const Character c = character_at(value, at);
    if (!c.valid || (is_control(c.code) && c.code != '\n' && c.code != '\t')) return true;
    at += c.bytes;
  }
  return false;
}

void check_quotes(TreeBuild& build, Spot spot, Place place, std::string_view value) {
  const char quote = byte_at(build, spot.byte);
  if (quote != '\'' && quote != '"') return;
  const QuoteWalk walk = walk_quote(build.text, spot.byte);
  if (!walk.closed) throw quote_not_closed(build, spot);
  if (walk.line_ends > 0) build.long_quote = LongQuote{place, place.line + walk.line_ends};
  if (walk.escapes && holds_control(value))
    collect_fault(build, place, "an escape that makes a control character", "write '\\\\' for a backslash");
}

/// The parser marks a missing value by what follows it; the author looks for it at its key or dash.
Place place_of_nothing(TreeBuild& build, Spot spot) {
  const std::string_view rest = build.text.substr(std::min(spot.byte, build.text.size()));
  for (const std::string_view word : {"~", "null", "Null", "NULL"})
    if (rest.starts_with(word)) return place_of(build, spot);
  if (build.open.empty()) return place_of(build, spot);
  const OpenNode& parent = build.open.back();
  const bool missing_value = parent.map && !parent.key_next;
  const std::uint32_t near = missing_value || parent.last != TreeNode::none ? parent.last : parent.node;
  if (missing_value) return Value(build.tree, near).place();
  std::size_t at = std::min(spot.byte, build.text.size());
  while (at > 0 && std::string_view(" \t\r\n").find(build.text[at - 1]) != std::string_view::npos) --at;
  if (at == 0 || build.text[at - 1] != '-') return place_of(build, spot);
  const std::size_t dash = at - 1, line_start = build.text.rfind('\n', dash) + 1;
  const auto lines_between =
      std::count(build.text.begin() + dash, build.text.begin() + std::min(spot.byte, build.text.size()), '\n');
  return place_of(build, {dash, spot.line - static_cast<std::uint32_t>(lines_between),
                          static_cast<std::uint32_t>(dash - line_start)});
}

}  // namespace

TreeBuild start_tree(std::uint32_t file, std::string_view text, bool ascii, Diagnostics& diagnostics) {
  TreeBuild build{.text = text, .ascii = ascii, .diagnostics = diagnostics};
  build.tree.file = file;
  // Room for what an ordinary file needs, so that growing never holds two copies; pages not used cost nothing.
  build.tree.nodes.reserve(text.size() / 8 + 16);
  build.tree.arena.reserve(text.size() * 3 / 4);
  return build;
}

Place place_of(TreeBuild& build, Spot spot) {
  const std::uint32_t file = build.tree.file;
  if (build.ascii) return {file, spot.line + 1, spot.column + 1};
  // Count on from the last counted spot of the line, so that one long line is not counted again for each value.
  Spot from{spot.byte - spot.column, spot.line, 0};
  std::uint32_t column = 1;
  if (build.counted.line == spot.line && build.counted.byte <= spot.byte && build.counted.byte >= from.byte) {
    from = build.counted;
    column = build.counted_column;
  }
  column += static_cast<std::uint32_t>(count_characters(build.text.substr(from.byte, spot.byte - from.byte)));
  build.counted = spot;
  build.counted_column = column;
  return {file, spot.line + 1, column};
}

void add_scalar(TreeBuild& build, Spot spot, std::string_view value, bool plain) {
  const Place place = place_of(build, spot);
  if (value.size() > limit::scalar_bytes) throw TextRefused{place, "a text longer than 64 kB", "shorten it"};
  refuse_tab_before(build, spot);
  const std::uint32_t index = add_node(build, place, Kind::scalar);
  TreeNode& node = build.tree.nodes[index];
  node.offset = static_cast<std::uint32_t>(build.tree.arena.size());
  node.length = static_cast<std::uint32_t>(value.size());
  node.quoted = !plain;
  build.tree.arena += value;
  if (!plain) check_quotes(build, spot, place, value);
}

void add_nothing(TreeBuild& build, Spot spot) {
  const Place place = place_of_nothing(build, spot);
  if (key_comes_next(build)) refuse_key(build, place);
  add_node(build, place, Kind::nothing);
}

void open_node(TreeBuild& build, Spot spot, Kind kind, bool brackets) {
  const Place place = place_of(build, spot);
  if (build.open.size() >= limit::depth)
    throw TextRefused{place, "too many lists and maps inside each other", "at most 32 levels are read"};
  refuse_tab_before(build, spot);
  const bool key = key_comes_next(build);
  const std::uint32_t index = add_node(build, place, kind);
  build.open.push_back({index, TreeNode::none, kind == Kind::map, true, brackets, key});
}

void close_node(TreeBuild& build) {
  const OpenNode closed = build.open.back();
  build.open.pop_back();
  // Only now: the parser takes a list or map whose bracket is never closed for a key.
  if (closed.key) refuse_key(build, Value(build.tree, closed.node).place());
  if (!closed.map) return;
  build.faults += drop_repeated_keys(build.tree, closed.node, build.diagnostics);
  if (build.faults > most_tree_faults)
    throw TextRefused{Value(build.tree, closed.node).place(), "too many faults", "mend the others first"};
}

void refuse_mark(TreeBuild& build, Spot spot, const char* what) {
  collect_fault(build, place_of(build, spot), std::string(what) + " are not read",
                "write the value itself, or put a text that begins so in quotes");
}

}  // namespace seambook
