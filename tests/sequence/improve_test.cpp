#include <doctest/doctest.h>

#include "random_shop.hpp"
#include "sequence/sequence.hpp"

using namespace seambook;

TEST_CASE("small budgets: valid orders and bounds never above the minimum") {
  std::mt19937 random(31);
  int open = 0, met = 0;
  for (int trial = 0; trial < 500; ++trial) {
    CAPTURE(trial);
    const SequenceProblem problem = shop::random_problem(random, {.operations = 8,
                                                                  .attributes = 1 + random() % 4,
                                                                  .tasks = 10,
                                                                  .edges = random() % 10,
                                                                  .unset_in_ten = random() % 5,
                                                                  .shared_in_ten = random() % 6});
    const double least = sequence(problem).change_total.si;
    const Sequence found = sequence(problem, {.states = random() % 12, .moves = random() % 30});
    CHECK(violations(problem, shop::order_of(found)).empty());
    CHECK(found.bound.si <= doctest::Approx(least));
    CHECK(found.change_total.si >= doctest::Approx(least));
    CHECK(found.change_total <= found.file_order_total);
    CHECK(found.proved == (found.bound == found.change_total));
    if (found.proved) CHECK(found.change_total.si == doctest::Approx(least));
    open += found.proved ? 0 : 1;
    met += !found.proved && found.change_total.si <= least ? 1 : 0;
  }
  CHECK(open > 100);
  CHECK(met > 10);
}

TEST_CASE("the improvement search alone comes close to the minimum") {
  std::mt19937 random(32);
  double least = 0, found = 0, file = 0;
  for (int trial = 0; trial < 20; ++trial) {
    const SequenceProblem problem = shop::random_problem(random, {.operations = 12, .edges = 6});
    const Sequence best = sequence(problem);
    REQUIRE(best.proved);
    least += best.change_total.si;
    found += sequence(problem, {.states = 0, .moves = 20'000}).change_total.si;
    file += best.file_order_total.si;
  }
  CHECK(found >= least);
  CHECK(found <= 1.01 * least);
  CHECK(file > 1.2 * least);  // there was something to find
}

TEST_CASE("the same input gives the same bytes") {
  std::mt19937 random(33);
  for (int trial = 0; trial < 10; ++trial) {
    CAPTURE(trial);
    const SequenceProblem problem = shop::random_problem(random, {.operations = 30, .tasks = 12, .edges = 20});
    const SearchBudget budget{.states = 500, .moves = 3000};
    CHECK(shop::text_of(sequence(problem, budget)) == shop::text_of(sequence(problem, budget)));
  }
}

TEST_CASE("when nothing is gained the order in the file stands") {
  SequenceProblem problem;
  problem.model = {{"process"}, {{"135", "141"}}, {{"swap", shop::minutes(6), 0, {}, {0}, true}}};  // only to 135
  problem.start.slots = {0};
  problem.operations = {{"J1", {{1}}}, {"J2", {{1}}}, {"J3", {{1}}}};
  CHECK(shop::order_of(sequence(problem)) == std::vector<std::size_t>{0, 1, 2});
}
