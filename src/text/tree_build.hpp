// The compact tree under construction, from the parser's events: what may not stand in a file is refused here.
// Faults that leave the rest readable are collected; TextRefused is thrown where reading on would be pointless.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "text/tree.hpp"

namespace seambook {

/// A position as the parser counts it: bytes from 0, after a byte-order mark.
struct Spot {
  std::size_t byte = 0;
  std::uint32_t line = 0, column = 0;
};

struct TextRefused {
  Place place;
  std::string message, hint;
};

/// A list or map whose end has not come yet.
struct OpenNode {
  std::uint32_t node = 0, last = TreeNode::none;
  bool map = false, key_next = true, brackets = false, key = false;
};

/// A quoted text over several lines; when a syntax fault follows on its last line, its quote was meant to close
/// earlier.
struct LongQuote {
  Place opening;
  std::uint32_t last_line = 0;
};

struct TreeBuild {
  std::string_view text;  // without the byte-order mark
  bool ascii = false;
  Diagnostics& diagnostics;
  Tree tree{};
  std::vector<OpenNode> open{};
  std::optional<LongQuote> long_quote{};
  Spot counted{};                    // a spot whose character column is known ...
  std::uint32_t counted_column = 1;  // ... and that column
  std::size_t faults = 0;
  std::uint32_t tab_line = 0;  // the last line with a tab in its indentation
  bool readable = true;        // false: a value is missing from the tree, so it must not be used
};

TreeBuild start_tree(std::uint32_t file, std::string_view text, bool ascii, Diagnostics&);
Place place_of(TreeBuild&, Spot);
void add_scalar(TreeBuild&, Spot, std::string_view value, bool plain);
void add_nothing(TreeBuild&, Spot);
/// `brackets`: written as [...] or {...}.
void open_node(TreeBuild&, Spot, Kind, bool brackets);
void close_node(TreeBuild&);
/// Aliases, anchors, tags: `what` is the word for them. The value itself is kept where there is one.
void refuse_mark(TreeBuild&, Spot, const char* what);

}  // namespace seambook
