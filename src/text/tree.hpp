// YAML text as a tree of strings, lists and maps, each with its place; nothing is interpreted.
// Holds afterwards: one document, no aliases, anchors or tags, keys unique scalars, depth, count and size bounded,
// valid UTF-8.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

namespace limit {
inline constexpr std::size_t file_bytes = 16u << 20;
inline constexpr std::size_t scalar_bytes = 64u << 10;
inline constexpr std::size_t line_bytes = 64u << 10;
inline constexpr std::size_t bytes_between_events = 256u << 10;
inline constexpr std::size_t values = 5'000'000;
inline constexpr std::size_t depth = 32;
inline constexpr std::size_t json_values = 2'000'000;
}  // namespace limit

/// `nothing` is an empty value or a null.
enum class Kind : std::uint8_t { nothing, scalar, list, map };

struct TreeNode {
  static constexpr std::uint32_t none = 0xffffffff;
  std::uint32_t line = 0, column = 0, offset = 0, length = 0, child = none, next = none;
  Kind kind = Kind::nothing;
  bool quoted = false;
};

/// Nodes in the order the file gives them; the root is node 0. In a map, children alternate key, value.
struct Tree {
  std::uint32_t file = 0;
  std::vector<TreeNode> nodes;
  std::string arena;  // text of all scalars
};

/// One value of a tree; cheap to copy, valid while the tree stands still.
class Value {
 public:
  Value() = default;
  Value(const Tree& tree, std::uint32_t node) : tree_(&tree), node_(node) {}
  explicit operator bool() const { return tree_ != nullptr && node_ != TreeNode::none; }
  Kind kind() const { return at().kind; }
  bool quoted() const { return at().quoted; }
  std::string_view text() const { return std::string_view(tree_->arena).substr(at().offset, at().length); }
  Place place() const { return {tree_->file, at().line, at().column}; }
  Value first() const { return {*tree_, at().child}; }  // false when empty
  Value next() const { return {*tree_, at().next}; }

 private:
  const TreeNode& at() const { return tree_->nodes[node_]; }
  const Tree* tree_ = nullptr;
  std::uint32_t node_ = TreeNode::none;
};

/// Reads a file's text, already registered in `diagnostics` as number `file`. Gives nothing when the text is no
/// acceptable YAML; the reasons are in `diagnostics` then, at their places. Faults that leave the rest readable (a key
/// given twice, which is left out; a tag or anchor) are told of and the tree is given, so that one run shows all
/// faults.
std::optional<Tree> parse_yaml(std::uint32_t file, Diagnostics& diagnostics);

}  // namespace seambook
