#include <doctest/doctest.h>

#include "random_shop.hpp"
#include "sequence/sequence.hpp"

using namespace seambook;

namespace {

SequenceProblem three() {
  SequenceProblem problem;
  problem.model = {{"process"}, {{"135", "141"}}, {{"swap", shop::minutes(6), 0, {}, {}, true}}};
  problem.operations = {{"J1", {{0}}}, {"J2", {{1}}}, {"J3", {{0}}}};
  problem.precedence = {{1, 0}};
  return problem;
}

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}

std::string faults(std::vector<std::size_t> order) { return joined(violations(three(), order)); }

}  // namespace

TEST_CASE("every way an order breaks the problem is named") {
  CHECK(faults({1, 0, 2}).empty());
  CHECK(faults({2, 1, 0}).empty());
  CHECK(faults({0, 1, 2}) == "position 1: J1 stands before J2, which must come first\n");
  CHECK(faults({1, 0}) == "J3 is missing\n");
  CHECK(faults({1, 2, 1, 0}) == "position 3: J2 stands at position 1 already\n");
  CHECK(faults({1, 0, 2, 3}) == "position 4: there is no operation 3\n");
  CHECK(faults({0, 0, 9}) ==
        "position 2: J1 stands at position 1 already\nposition 3: there is no operation 9\nJ2 is missing\nJ3 is "
        "missing\n");
  CHECK(faults({}) == "J1 is missing\nJ2 is missing\nJ3 is missing\n");
}

TEST_CASE("a given order is timed as it stands") {
  const std::size_t order[] = {1, 0, 2};
  const Sequence timed = time_order(three(), order);
  CHECK(timed.change_total.si == 12 * 60);  // cold start for J2, then back for J1, which J3 shares
  CHECK(timed.steps[2].change.tasks.empty());
  CHECK(timed.steps[0].reason.empty());
  CHECK_FALSE(timed.proved);
}

TEST_CASE("the order in the file is timed too and repaired when it breaks precedence") {
  SequenceProblem problem = three();
  CHECK_FALSE(sequence(problem).file_order_allowed);
  CHECK(sequence(problem).file_order_total.si == 12 * 60);  // J2 J1 J3
  problem.precedence = {{0, 2}};
  CHECK(sequence(problem).file_order_allowed);
  CHECK(sequence(problem).file_order_total.si == 18 * 60);  // J1 J2 J3
  CHECK(sequence(problem).change_total.si == 12 * 60);
}

TEST_CASE("nothing to do takes no time") {
  const Sequence none = sequence({});
  CHECK(none.steps.empty());
  CHECK(none.change_total.si == 0);
  CHECK(none.proved);
}
