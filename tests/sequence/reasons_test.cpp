#include <doctest/doctest.h>

#include "random_shop.hpp"
#include "sequence/sequence.hpp"

using namespace seambook;

namespace {

/// 135 and 141 in carbon steel and stainless; changing to stainless from carbon steel is a clean-down.
SequenceProblem bench() {
  SequenceProblem problem;
  problem.model.attributes = {"process", "cleanliness"};
  problem.model.values = {{"135", "141"}, {"carbon", "stainless"}};
  problem.model.tasks = {{"swap torch", shop::minutes(3), 0, {}, {}, true},
                         {"swap gas", shop::minutes(4.5), 0, {}, {}, true},
                         {"clean down", shop::minutes(35), 1, {0}, {1}, false}};
  return problem;
}

std::string reasons(const Sequence& sequence) {
  std::string text;
  for (const Step& step : sequence.steps) text += step.reason + "\n";
  return text;
}

}  // namespace

TEST_CASE("stainless first: reasons say what is set up and which way round is cheaper") {
  SequenceProblem problem = bench();
  problem.operations = {{"J1", {{0, 0}}}, {"J2", {{0, 1}}}, {"J3", {{0, 1}}}};
  CHECK(reasons(sequence(problem)) ==
        "set up process 135, cleanliness stainless (7.5 min); cleanliness stainless before carbon: "
        "0 "
        "min that way round, not 35 min\n"
        "same set-up as before\n"
        "change cleanliness stainless -> carbon (calls no change task); the cleanliness stainless work is done\n");
}

TEST_CASE("work that waits is named with what it waits for") {
  SequenceProblem problem = bench();
  problem.start.slots = {0, 0};
  problem.operations = {{"J1", {{0, {}}}}, {"J2", {{1, {}}}}, {"J3", {{0, {}}}}};
  problem.precedence = {{1, 2}, {0, 1}};
  CHECK(reasons(sequence(problem)) ==
        "mounted at the start: process 135\n"
        "change process 135 -> 141 (7.5 min); J3 (process 135) waits for J2\n"
        "change process 141 -> 135 (7.5 min); the process 141 work is done; waited for J2\n");
}

TEST_CASE("work that needs less than what is mounted says so") {
  SequenceProblem problem = bench();
  problem.operations = {{"J1", {{0, 0}}}, {"J2", {{0, {}}}}, {"J3", {{{}, {}}}}};
  CHECK(reasons(sequence(problem)) ==
        "set up process 135, cleanliness carbon (7.5 min)\n"
        "mounted already: process 135\n"
        "needs no set-up\n");
}

TEST_CASE("every step of random problems has a reason that names what changes") {
  std::mt19937 random(21);
  for (int trial = 0; trial < 100; ++trial) {
    CAPTURE(trial);
    const SequenceProblem problem = shop::random_problem(random, {.operations = 8});
    for (const Step& step : sequence(problem).steps) {
      CHECK_FALSE(step.reason.empty());
      for (const std::size_t a : step.change.attributes) {
        const std::uint32_t to = *problem.operations[step.operation].needs.slots[a];
        CHECK(step.reason.find(problem.model.attributes[a]) != std::string::npos);
        CHECK(step.reason.find(problem.model.values[a][to]) != std::string::npos);
      }
    }
  }
}
