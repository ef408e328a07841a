#include <doctest/doctest.h>

#include <numeric>

#include "random_shop.hpp"
#include "sequence/sequence.hpp"

using namespace seambook;

namespace {

shop::Kind random_kind(std::mt19937& random) {
  shop::Kind kind;
  kind.operations = 1 + random() % 7;
  kind.attributes = 1 + random() % 4;
  kind.values = 2 + random() % 3;
  kind.tasks = 1 + random() % 12;
  kind.edges = random() % 8;
  kind.unset_in_ten = random() % 6;
  kind.shared_in_ten = random() % 5;
  return kind;
}

}  // namespace

TEST_CASE("the exact search gives the least of all permitted orders") {
  std::mt19937 random(1);
  int better_than_file = 0, broken_files = 0;
  for (int trial = 0; trial < 1500; ++trial) {
    CAPTURE(trial);
    const SequenceProblem problem = shop::random_problem(random, random_kind(random));
    const Sequence found = sequence(problem);
    CHECK(found.proved);
    CHECK(shop::is_the_least(problem, found.change_total));
    CHECK(found.bound == found.change_total);
    CHECK(found.file_order_total >= found.change_total);
    CHECK(violations(problem, shop::order_of(found)).empty());
    better_than_file += found.file_order_total > found.change_total ? 1 : 0;
    broken_files += found.file_order_allowed ? 0 : 1;
  }
  CHECK(better_than_file > 500);
  CHECK(broken_files > 250);
}

TEST_CASE("without improvement moves the exact search alone still finds the least") {
  std::mt19937 random(2);
  for (int trial = 0; trial < 700; ++trial) {
    CAPTURE(trial);
    const SequenceProblem problem = shop::random_problem(random, random_kind(random));
    const Sequence found = sequence(problem, {.states = 400'000, .moves = 0});
    CHECK(found.proved);
    CHECK(shop::is_the_least(problem, found.change_total));
  }
}

TEST_CASE("few values over many operations: returns and stepping stones are found") {
  std::mt19937 random(3);
  for (int trial = 0; trial < 1000; ++trial) {
    CAPTURE(trial);
    shop::Kind kind{
        .operations = 7, .attributes = 1 + random() % 2, .values = 3, .tasks = 9, .edges = 3 + random() % 6};
    kind.unset_in_ten = random() % 3;
    kind.shared_in_ten = 0;
    const SequenceProblem problem = shop::random_problem(random, kind);
    const Sequence found = sequence(problem, {.states = 400'000, .moves = 0});
    CHECK(shop::is_the_least(problem, found.change_total));
  }
}

TEST_CASE("tasks that several attributes call are paid once in the search too") {
  std::mt19937 random(6);
  for (int trial = 0; trial < 1000; ++trial) {
    CAPTURE(trial);
    shop::Kind kind{
        .operations = 7, .attributes = 2 + random() % 2, .values = 2, .tasks = 6, .edges = 3 + random() % 6};
    kind.unset_in_ten = 2 + random() % 4;
    kind.shared_in_ten = 7;
    const SequenceProblem problem = shop::random_problem(random, kind);
    const Sequence found = sequence(problem, {.states = 400'000, .moves = 0});
    CHECK(shop::is_the_least(problem, found.change_total));
  }
}

TEST_CASE("a late operation may be the cheaper way round") {
  // Straight from b to c takes 100, by way of a 1 + 1. `a2` needs no change at the start, yet doing it there costs 99
  // more.
  SequenceProblem problem;
  problem.model.attributes = {"metal"};
  problem.model.values = {{"a", "b", "c"}};
  problem.model.tasks = {{"long", shop::minutes(100), 0, {1}, {2}, true},
                         {"short", shop::minutes(1), 0, {0}, {}, false},
                         {"back", shop::minutes(1), 0, {1}, {0}, false}};
  problem.start.slots = {0};
  problem.operations = {{"a1", {{0}}}, {"b", {{1}}}, {"c", {{2}}}};
  problem.precedence = {{1, 2}};
  const Sequence found = sequence(problem);
  CHECK(found.change_total.si == 3 * 60);
  CHECK(shop::order_of(found) == std::vector<std::size_t>{1, 0, 2});
}

TEST_CASE("work of one need is kept apart when each piece is a stepping stone of its own") {
  // Between b and c straight is 100 either way, by way of a 1 + 1: b1 a1 c1 a2 b2 takes 4, both a together 102.
  SequenceProblem problem;
  problem.model.attributes = {"metal"};
  problem.model.values = {{"a", "b", "c"}};
  problem.model.tasks = {{"there", shop::minutes(100), 0, {1}, {2}, false},
                         {"back", shop::minutes(100), 0, {2}, {1}, false},
                         {"to a", shop::minutes(1), 0, {}, {0}, false},
                         {"from a", shop::minutes(1), 0, {0}, {}, false}};
  problem.operations = {{"a1", {{0}}}, {"a2", {{0}}}, {"b1", {{1}}}, {"c1", {{2}}}, {"b2", {{1}}}};
  problem.precedence = {{2, 3}, {3, 4}};
  const Sequence found = sequence(problem);
  CHECK(found.change_total.si == 4 * 60);
  CHECK(shop::order_of(found) == std::vector<std::size_t>{2, 0, 3, 1, 4});
}

TEST_CASE("naming the operations in another order keeps the minimum") {
  std::mt19937 random(4);
  for (int trial = 0; trial < 150; ++trial) {
    CAPTURE(trial);
    const SequenceProblem problem = shop::random_problem(random, {.operations = 9, .edges = 5});
    std::vector<std::size_t> place(problem.operations.size());
    std::iota(place.begin(), place.end(), std::size_t{0});
    for (std::size_t i = place.size(); i > 1; --i) std::swap(place[i - 1], place[random() % i]);
    SequenceProblem other = problem;
    for (std::size_t o = 0; o < place.size(); ++o) other.operations[place[o]] = problem.operations[o];
    for (auto& [before, after] : other.precedence) before = place[before], after = place[after];
    CHECK(sequence(problem).change_total.si == doctest::Approx(sequence(other).change_total.si));
  }
}

TEST_CASE("more precedence never lowers the minimum") {
  std::mt19937 random(5);
  int raised = 0;
  for (int trial = 0; trial < 150; ++trial) {
    CAPTURE(trial);
    SequenceProblem problem = shop::random_problem(random, {.operations = 10, .edges = 12});
    const SequenceProblem full = problem;
    problem.precedence.resize(problem.precedence.size() / 3);
    const Time<> loose = sequence(problem).change_total, tight = sequence(full).change_total;
    CHECK(loose <= tight);
    raised += loose < tight ? 1 : 0;
  }
  CHECK(raised > 20);
}
