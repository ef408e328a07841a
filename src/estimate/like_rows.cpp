#include "estimate/like_rows.hpp"

#include <algorithm>
#include <boost/functional/hash.hpp>
#include <unordered_map>

namespace seambook {
namespace {

void forget_unless_moving(Sourced& x, const std::vector<SourceId>& moving) {
  if (!std::binary_search(moving.begin(), moving.end(), x.source)) x.source = no_source;
}

void forget_sources(Row<Sourced>& row, const std::vector<SourceId>& moving) {
  const auto forget = [&](const Figure&, std::uint32_t, const auto&, auto& x) { forget_unless_moving(x.si, moving); };
  each_input_of_joint(row, row, forget);
  each_input_of_passes(row, row, forget);
  for (ElementTerm<Sourced>& term : row.joint.labour.terms)
    each_term_input(term, [&](auto& x) { forget_unless_moving(x.si, moving); });
}

/// Of the numbers and their sources alone; equal rows have equal ones.
std::size_t hash_of(const Row<Sourced>& row) {
  std::size_t hash = row.passes.size();
  const auto add = [&](const Figure&, std::uint32_t, const auto& x, const auto&) {
    boost::hash_combine(hash, x.si.value);
    boost::hash_combine(hash, x.si.source);
  };
  each_input_of_joint(row, row, add);
  each_input_of_passes(row, row, add);
  return hash;
}

}  // namespace

std::vector<LikeRows> like_rows(const RateBook& book, const Job& job, const std::vector<SourceId>& moving) {
  std::vector<LikeRows> kinds;
  std::unordered_multimap<std::size_t, std::size_t> by_hash;
  for (const Joint& joint : job.joints) {
    Row<Sourced> row = gather_row(book, job, joint);
    forget_sources(row, moving);
    const std::size_t hash = hash_of(row);
    const auto [first, last] = by_hash.equal_range(hash);
    const auto known = std::find_if(first, last, [&](const auto& entry) { return kinds[entry.second].row == row; });
    if (known != last) {
      kinds[known->second].count += 1;
    } else {
      by_hash.emplace(hash, kinds.size());
      kinds.push_back({std::move(row), 1});
    }
  }
  return kinds;
}

}  // namespace seambook
