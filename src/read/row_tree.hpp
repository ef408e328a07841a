// A row of a comma-separated file as the tree that the reader of YAML would make of the same keys and values, so that
// one set of readers serves both.
#pragma once

#include "text/tree.hpp"

namespace seambook {

struct RowTree {
  Tree tree;

  std::uint32_t add(Kind kind, Place place, std::string_view text = {}) {
    TreeNode node;
    node.kind = kind;
    node.line = place.line;
    node.column = place.column;
    node.offset = static_cast<std::uint32_t>(tree.arena.size());
    node.length = static_cast<std::uint32_t>(text.size());
    tree.arena += text;
    tree.nodes.push_back(node);
    return static_cast<std::uint32_t>(tree.nodes.size() - 1);
  }

  /// Hangs `node` behind `last`, or under `parent` when it is the first child.
  void hang(std::uint32_t parent, std::uint32_t& last, std::uint32_t node) {
    (last == TreeNode::none ? tree.nodes[parent].child : tree.nodes[last].next) = node;
    last = node;
  }
};

}  // namespace seambook
