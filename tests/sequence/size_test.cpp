#include <doctest/doctest.h>

#include "random_shop.hpp"
#include "sequence/sequence.hpp"

using namespace seambook;

namespace {

/// Invented minutes in the pattern of a mixed shop. Every block of work states every attribute.
SequenceProblem mixed_shop(std::mt19937& random, std::size_t blocks, std::size_t operations_each) {
  SequenceProblem problem;
  const std::size_t values[] = {3, 6, 3, 2, blocks / 2};
  problem.model.attributes = {"process", "filler", "gas", "cleanliness", "fixture"};
  for (const std::size_t count : values) {
    problem.model.values.emplace_back();
    for (std::size_t v = 0; v < count; ++v) problem.model.values.back().push_back(std::to_string(v));
  }
  problem.model.tasks = {
      {"torch", shop::minutes(3), 0, {}, {}, true},     {"tungsten", shop::minutes(2), 0, {}, {1}, true},
      {"coupon", shop::minutes(6), 0, {}, {2}, true},   {"spool", shop::minutes(5), 1, {}, {}, true},
      {"rolls", shop::minutes(8), 1, {0, 1}, {}, true}, {"gas", shop::minutes(4), 2, {}, {}, true},
      {"clean", shop::minutes(35), 3, {0}, {1}, false}, {"fixture", shop::minutes(12), 4, {}, {}, true}};
  for (std::size_t b = 0; b < blocks; ++b) {
    Attributes needs;
    for (const std::size_t count : values) needs.slots.emplace_back(static_cast<std::uint32_t>(random() % count));
    for (std::size_t i = 0; i < operations_each; ++i)
      problem.operations.push_back({std::to_string(b) + "/" + std::to_string(i), needs});
  }
  return problem;
}

/// All work of some blocks before all work of others, and in a block one operation after the other.
void add_block_order(SequenceProblem& problem, std::mt19937& random, std::size_t blocks, std::size_t each,
                     std::size_t pairs) {
  for (std::size_t o = 0; o + 1 < blocks * each; ++o)
    if (o % each + 1 < each) problem.precedence.emplace_back(o, o + 1);
  for (std::size_t p = 0; p < pairs; ++p) {
    const std::size_t a = random() % (blocks - 1), b = a + 1 + random() % (blocks - 1 - a);
    problem.precedence.emplace_back(a * each + each - 1, b * each);
  }
}

}  // namespace

TEST_CASE("sixteen blocks of several operations are solved exactly within the budget") {
  std::mt19937 random(41);
  for (int trial = 0; trial < 6; ++trial) {
    CAPTURE(trial);
    SequenceProblem problem = mixed_shop(random, 16, 6);
    if (trial % 2 == 1) add_block_order(problem, random, 16, 6, 10);
    const Sequence found = sequence(problem);
    CHECK(found.proved);
    CHECK(violations(problem, shop::order_of(found)).empty());
  }
}

TEST_CASE("two thousand operations run through and beat the order in the file") {
  std::mt19937 random(42);
  SequenceProblem problem = mixed_shop(random, 50, 40);
  for (std::size_t e = 0; e < 1500; ++e) {
    const std::size_t a = random() % 1999;
    problem.precedence.emplace_back(a, a + 1 + random() % (1999 - a));
  }
  std::shuffle(problem.precedence.begin(), problem.precedence.end(), random);
  const Sequence found = sequence(problem, {.states = 5'000, .moves = 5'000});
  CHECK(violations(problem, shop::order_of(found)).empty());
  CHECK(found.bound <= found.change_total);
  CHECK(found.change_total <= found.file_order_total);
}
