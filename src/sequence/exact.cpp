#include "sequence/exact.hpp"

#include <algorithm>
#include <queue>
#include <set>
#include <tuple>
#include <unordered_set>

namespace seambook {

namespace {

constexpr std::size_t most_words_kept = 8'000'000;  // of all done sets together: 64 MB
constexpr std::size_t most_units_spanned = 64;      // beyond, the closer floor costs too much to build for every state
constexpr std::uint32_t no_node = UINT32_MAX;

struct SearchNode {
  Time<> spent{}, to_come{};
  std::uint32_t parent = no_node, operation = 0;  // the operation that the parent went on with, before the free work
  std::uint32_t mounted = 0;
  std::uint32_t remaining = 0;
  bool weighed = false;  // `to_come` is the closer floor
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
  std::size_t work_left;
  SearchTree tree;
  std::priority_queue<OpenNode, std::vector<OpenNode>, Later> open;
};

void spend_work(Search& search, std::size_t work) { search.work_left -= std::min(work, search.work_left); }

/// Puts the node on the open list unless no order through it can be cheaper than the known one.
void keep_open(Search& search, std::uint32_t index, Time<> parent_total) {
  const SearchNode& node = search.tree.nodes[index];
  // A floor of the parent is a floor of every way through it.
  const Time<> total = std::max(node.spent + node.to_come, parent_total);
  if (total < search.known) search.open.push({total, node.spent, node.remaining, index});
}

void reach(Search& search, SearchNode node, const Progress& progress, Time<> parent_total) {
  node.remaining = static_cast<std::uint32_t>(progress.remaining);
  const std::size_t before = search.tree.nodes.size();
  const std::uint32_t index = find_or_add(search.tree, node, progress);
  SearchNode& kept = search.tree.nodes[index];
  if (search.tree.nodes.size() > before) {
    kept.to_come = walks_to_come(search.floors.walks, search.mounted.states[node.mounted], progress);
    spend_work(search, std::max<std::size_t>(1, search.tree.words));
  } else if (!(node.spent < kept.spent)) {
    return;
  }
  kept.spent = node.spent;
  kept.parent = node.parent;
  kept.operation = node.operation;
  keep_open(search, index, parent_total);
}

/// Builds the closer floor, once a node is the next to go on from: most nodes never are.
void weigh(Search& search, std::uint32_t index, const Progress& progress) {
  SearchNode& node = search.tree.nodes[index];
  node.weighed = true;
  if (node.remaining > most_units_spanned) return;
  const auto closer = chain_to_come(search.floors.chain, search.mounted, search.net, progress, node.mounted);
  if (closer) node.to_come = std::max(node.to_come, *closer);
  spend_work(search, std::size_t{node.remaining} * node.remaining / 128);
}

/// Goes on with each ready operation that leads to a state of its own: of a need whose ready work is all done at once
/// anyhow, and of twins, the first will do.
void go_on_from(Search& search, std::uint32_t index, const Progress& progress, Time<> total) {
  const SearchNode node = search.tree.nodes[index];
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
    reach(search, {node.spent + next.cost, {}, index, o, next.state, 0, false}, after, total);
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
  const auto floor = chain_to_come(search.floors.chain, search.mounted, search.net, progress, 0);
  do_free_work(search.groups, search.mounted, search.net, progress, 0, nullptr);
  reach(search, {}, progress, floor.value_or(Time<>{}));
}

/// Takes the most promising node and goes on from it. Gives the node when all its work is done.
std::optional<std::uint32_t> advance(Search& search) {
  const OpenNode best = search.open.top();
  search.open.pop();
  const SearchNode& node = search.tree.nodes[best.node];
  if (node.spent < best.spent) return std::nullopt;  // reached more cheaply since
  if (best.remaining == 0) return best.node;
  const Progress progress = progress_of(search.tree, search.net, best.node);
  if (!node.weighed) {
    weigh(search, best.node, progress);
    if (best.total < node.spent + node.to_come) {
      keep_open(search, best.node, best.total);
      return std::nullopt;
    }
  }
  go_on_from(search, best.node, progress, best.total);
  return std::nullopt;
}

}  // namespace

ExactResult cheapest_order(const std::vector<AttributeGroup>& groups, const Floors& floors, MountedStates& mounted,
                           const WorkNet& net, Time<> known, std::size_t states) {
  Search search{groups, floors, mounted, net, known, states, SearchTree(net.need_of.size()), {}};
  const std::size_t most_nodes = most_words_kept / std::max<std::size_t>(1, search.tree.words);
  ExactResult result;
  begin(search);
  while (!search.open.empty()) {
    // Some node on a cheapest way is always open, so the least total among the open ones is a floor.
    result.bound = std::max(result.bound, search.open.top().total);
    if (search.work_left == 0 || search.tree.nodes.size() >= most_nodes) return result;
    if (const auto goal = advance(search)) {
      result.order = order_to(search, *goal);
      result.bound = search.tree.nodes[*goal].spent;
      result.proved = true;
      return result;
    }
  }
  result.bound = known;
  result.proved = true;
  return result;
}

}  // namespace seambook
