#include "sequence/free_work.hpp"

#include <doctest/doctest.h>

#include "random_shop.hpp"

using namespace seambook;

TEST_CASE("among very many values it is still known where going by a third one spares time") {
  constexpr std::uint32_t fixtures = 200, grades = 3;
  SequenceProblem problem;
  problem.model.attributes = {"fixture", "cleanliness"};
  problem.model.values = {{}, {"black", "brushed", "bright"}};
  for (std::uint32_t f = 0; f < fixtures; ++f) problem.model.values.front().push_back(std::to_string(f));
  problem.model.tasks = {{"fixture", shop::minutes(10), 0, {}, {}, true},
                         {"strip", shop::minutes(60), 1, {0}, {2}, true},
                         {"brush", shop::minutes(5), 1, {0}, {1}, true},
                         {"polish", shop::minutes(5), 1, {1}, {2}, true}};
  for (std::uint32_t f = 0; f < fixtures; ++f)
    for (std::uint32_t grade = 0; grade < grades; ++grade) problem.operations.push_back({"weld", {{f, grade}}});
  const WorkNet net = work_net(problem);
  const std::vector<bool> free = needs_always_free(attribute_groups(problem.model, net), net);
  REQUIRE(free.size() == fixtures * grades);
  for (std::size_t need = 0; need < free.size(); ++need) {
    CAPTURE(need);
    CHECK(free[need] == (net.needs[need].slots[1] != 1U));  // brushed: 5 + 5 min instead of 60
  }
}
