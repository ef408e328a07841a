#include "sequence/exact.hpp"

#include <algorithm>
#include <queue>
#include <set>
#include <tuple>
#include <unordered_set>

namespace seambook {

namespace {

constexpr std::size_t most_words_kept = 8'000'000;  // of all done sets together: 64 MB
constexpr std::uint32_t no_node = UINT32_MAX;

struct SearchNode {
  Time<> spent{}, to_come{};
  std::uint32_t parent = no_node, operation = 0;  // the operation that the parent went on with, before the free work
  std::uint32_t mounted = 0;
  std::uint32_t remaining = 0;
};

struct SearchTree;
struct NodeHash {
  const SearchTree* tree;
  std::size_t operator()(std::uint32_t node) const;
};
struct NodeSame {
  const SearchTree* tree;
  bool operator()(std::uint32_t a, std::uint32_t b) const;
};

/// Nodes with the sets of work they have done, as bits, in one pool.
struct SearchTree {
  std::size_t words = 0;  // of one done set
  std::vector<SearchNode> nodes;
  std::vector<std::uint64_t> done;
  std::unordered_set<std::uint32_t, NodeHash, NodeSame> found;  // one node per state; looked up, never walked

  explicit SearchTree(std::size_t operations)
      : words((operations + 63) / 64), found(1024, NodeHash{this}, NodeSame{this}) {}
  SearchTree(const SearchTree&) = delete;
  SearchTree& operator=(const SearchTree&) = delete;
};

std::size_t NodeHash::operator()(std::uint32_t node) const {
  std::uint64_t hash = tree->nodes[node].mounted;
  for (std::size_t w = 0; w < tree->words; ++w) {
    hash = (hash ^ tree->done[node * tree->words + w]) * 0x9E3779B97F4A7C15U;
    hash ^= hash >> 29U;
  }
  return hash;
}

bool NodeSame::operator()(std::uint32_t a, std::uint32_t b) const {
  const auto at = [&](std::uint32_t node) {
    return tree->done.begin() + static_cast<std::ptrdiff_t>(node * tree->words);
  };
  return tree->nodes[a].mounted == tree->nodes[b].mounted &&
         std::equal(at(a), at(a) + static_cast<std::ptrdiff_t>(tree->words), at(b));
}

/// Adds the node, or gives the one that stands for the same state already.
std::uint32_t find_or_add(SearchTree& tree, const SearchNode& node, const Progress& progress) {
  const auto index = static_cast<std::uint32_t>(tree.nodes.size());
  tree.nodes.push_back(node);
  tree.done.resize(tree.done.size() + tree.words);
  for (std::size_t o = 0; o < progress.done.size(); ++o)
    if (progress.done[o] != 0) tree.done[index * tree.words + o / 64] |= std::uint64_t{1} << (o % 64);
  const auto [at, fresh] = tree.found.insert(index);
  if (!fresh) {
    tree.nodes.pop_back();
    tree.done.resize(tree.done.size() - tree.words);
  }
  return *at;
}

Progress progress_of(const SearchTree& tree, const WorkNet& net, std::uint32_t node) {
  Progress progress = nothing_done(net);
  for (std::size_t o = 0; o < progress.done.size(); ++o) {
    if ((tree.done[node * tree.words + o / 64] >> (o % 64) & 1U) == 0) continue;
    progress.done[o] = 1;
    --progress.remaining;
    --progress.left[net.need_of[o]];
    for (const std::uint32_t next : net.after[o]) --progress.waiting_for[next];
  }
  return progress;
}

struct OpenNode {
  Time<> total{}, spent{};
  std::uint32_t remaining = 0, node = 0;
};

/// Least total first, then the furthest advanced, then the first found.
struct Later {
  bool operator()(const OpenNode& a, const OpenNode& b) const {
    return std::tuple(a.total, a.remaining, a.node) > std::tuple(b.total, b.remaining, b.node);
  }
};

struct Search {
  const std::vector<AttributeGroup>& groups;
  const Floors& floors;
  MountedStates& mounted;
  const WorkNet& net;
  Time<> known;
  SearchTree tree;
  std::priority_queue<OpenNode, std::vector<OpenNode>, Later> open;
};

void reach(Search& search, SearchNode node, const Progress& progress, Time<> parent_total) {
  node.remaining = static_cast<std::uint32_t>(progress.remaining);
  const std::size_t before = search.tree.nodes.size();
  const std::uint32_t index = find_or_add(search.tree, node, progress);
  SearchNode& kept = search.tree.nodes[index];
  const bool fresh = search.tree.nodes.size() > before;
  if (fresh)
    kept.to_come = least_to_come(search.floors, search.mounted, search.net, progress, node.mounted);
  else if (!(node.spent < kept.spent))
    return;
  kept.spent = node.spent;
  kept.parent = node.parent;
  kept.operation = node.operation;
  // A floor of the parent is a floor of every way through it.
  const Time<> total = std::max(kept.spent + kept.to_come, parent_total);
  if (total < search.known) search.open.push({total, kept.spent, kept.remaining, index});
}

/// Goes on with each ready operation that leads to a state of its own: of a need whose ready work is all done at once
/// anyhow, and of twins, the first will do.
void go_on_from(Search& search, std::uint32_t index, Time<> total) {
  const SearchNode node = search.tree.nodes[index];
  const Progress progress = progress_of(search.tree, search.net, index);
  std::set<std::uint32_t> swept, twins;
  for (std::uint32_t o = 0; o < search.net.need_of.size(); ++o) {
    const std::uint32_t need = search.net.need_of[o];
    if (!ready(progress, o) || swept.contains(need) || !twins.insert(search.net.twin[o]).second) continue;
    const Mounting next = mount(search.mounted, search.net, node.mounted, need);
    Progress after = progress;
    perform(search.net, after, o);
    do_free_work(search.groups, search.mounted, search.net, after, next.state, nullptr);
    bool all_done = true;
    for (std::uint32_t other = o + 1; other < search.net.need_of.size() && all_done; ++other)
      all_done = search.net.need_of[other] != need || !ready(progress, other) || after.done[other] != 0;
    if (all_done) swept.insert(need);
    reach(search, {node.spent + next.cost, {}, index, o, next.state, 0}, after, total);
  }
}

Order order_to(Search& search, std::uint32_t goal) {
  Order steps;
  for (std::uint32_t node = goal; search.tree.nodes[node].parent != no_node; node = search.tree.nodes[node].parent)
    steps.push_back(search.tree.nodes[node].operation);
  std::reverse(steps.begin(), steps.end());
  Order order;
  Progress progress = nothing_done(search.net);
  std::uint32_t state = 0;
  do_free_work(search.groups, search.mounted, search.net, progress, state, &order);
  for (const std::uint32_t operation : steps) {
    state = mount(search.mounted, search.net, state, search.net.need_of[operation]).state;
    perform(search.net, progress, operation);
    order.push_back(operation);
    do_free_work(search.groups, search.mounted, search.net, progress, state, &order);
  }
  return order;
}

void begin(Search& search) {
  Progress progress = nothing_done(search.net);
  do_free_work(search.groups, search.mounted, search.net, progress, 0, nullptr);
  const Time<> floor = least_to_come(search.floors, search.mounted, search.net, progress, 0, true);
  reach(search, {}, progress, floor);
}

}  // namespace

ExactResult cheapest_order(const std::vector<AttributeGroup>& groups, const Floors& floors, MountedStates& mounted,
                           const WorkNet& net, Time<> known, std::size_t states) {
  Search search{groups, floors, mounted, net, known, SearchTree(net.need_of.size()), {}};
  const std::size_t most = std::min(states, most_words_kept / std::max<std::size_t>(1, search.tree.words));
  ExactResult result;
  begin(search);
  while (!search.open.empty()) {
    const OpenNode best = search.open.top();
    // Some node on a cheapest way is always open, so the least total among the open ones is a floor.
    result.bound = std::max(result.bound, best.total);
    if (search.tree.nodes.size() >= most) return result;
    search.open.pop();
    if (search.tree.nodes[best.node].spent < best.spent) continue;  // reached more cheaply since
    if (best.remaining == 0) {
      result.order = order_to(search, best.node);
      result.bound = best.spent;
      result.proved = true;
      return result;
    }
    go_on_from(search, best.node, best.total);
  }
  result.bound = known;
  result.proved = true;
  return result;
}

}  // namespace seambook
