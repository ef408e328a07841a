#include "text/tree_keys.hpp"

#include <algorithm>

#include "text/number_words.hpp"

namespace seambook {
namespace {

constexpr std::size_t few_keys = 16;  // below it comparing all with all is cheaper than sorting

std::string_view key_text(const Tree& tree, std::uint32_t key) { return Value(tree, key).text(); }

/// Keys of `map` that an earlier key equals, each with the first of its name, in file order.
struct RepeatedKey {
  std::uint32_t key, first;
};

std::vector<RepeatedKey> repeated_among_few(const Tree& tree, const std::vector<std::uint32_t>& keys) {
  std::vector<RepeatedKey> repeated;
  for (std::size_t i = 1; i < keys.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (key_text(tree, keys[i]) == key_text(tree, keys[j])) {
        repeated.push_back({keys[i], keys[j]});
        break;
      }
  return repeated;
}

std::vector<RepeatedKey> repeated_among_many(const Tree& tree, std::vector<std::uint32_t> keys) {
  std::sort(keys.begin(), keys.end(), [&](std::uint32_t a, std::uint32_t b) {
    const int order = key_text(tree, a).compare(key_text(tree, b));
    return order != 0 ? order < 0 : a < b;
  });
  std::vector<RepeatedKey> repeated;
  std::size_t first = 0;
  for (std::size_t i = 1; i < keys.size(); ++i) {
    if (key_text(tree, keys[i]) != key_text(tree, keys[first]))
      first = i;
    else
      repeated.push_back({keys[i], keys[first]});
  }
  std::sort(repeated.begin(), repeated.end(), [](const RepeatedKey& a, const RepeatedKey& b) { return a.key < b.key; });
  return repeated;
}

}  // namespace

std::size_t drop_repeated_keys(Tree& tree, std::uint32_t map, Diagnostics& diagnostics) {
  const auto next = [&](std::uint32_t node) { return node == TreeNode::none ? node : tree.nodes[node].next; };
  std::vector<std::uint32_t> keys;
  for (std::uint32_t key = tree.nodes[map].child; key != TreeNode::none; key = next(next(key)))
    if (tree.nodes[key].kind == Kind::scalar) keys.push_back(key);
  const std::vector<RepeatedKey> repeated =
      keys.size() <= few_keys ? repeated_among_few(tree, keys) : repeated_among_many(tree, std::move(keys));
  if (repeated.empty()) return 0;
  auto drop = repeated.begin();
  std::uint32_t* link = &tree.nodes[map].child;
  bool told_enough = false;
  while (drop != repeated.end() && *link != TreeNode::none) {
    const std::uint32_t key = *link, value = next(key);
    if (key == drop->key) {
      if (!told_enough)
        diagnostics.error(Value(tree, key).place(), quoted(key_text(tree, key)) + " is given twice",
                          "first on line " + std::to_string(tree.nodes[drop->first].line));
      told_enough = told_enough || diagnostics.full();
      *link = next(value);
      ++drop;
    } else {
      if (value == TreeNode::none) break;
      link = &tree.nodes[value].next;
    }
  }
  return repeated.size();
}

}  // namespace seambook
