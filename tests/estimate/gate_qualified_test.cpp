#include <doctest/doctest.h>

#include "gated.hpp"

using namespace seambook;

namespace {

std::string tube(const std::string& more) {
  return test::gated_job(
      "",
      "      - {id: P1, weld: single_v, thickness: 2.6 mm, length: 152 mm, tube: 48.3 mm, base_metal: "
      "\"1.4301\", procedure: ST-PR" +
          more + "}\n");
}

}  // namespace

TEST_CASE("where a qualified welder is demanded, there must be one in date") {
  const auto gates = test::gates_of(GateKind::qualified, tube(", qualified: true"), test::rate_texts(), {2026, 5, 15});
  REQUIRE(gates.size() == 1);
  CHECK(gates[0].joint == 0u);
  CHECK(gates[0].words == "a qualified welder is demanded, and on 2026-05-15 there is none");
  CHECK(gates[0].hint.find("Q1 (tube not covered)") != std::string::npos);
  CHECK(gates[0].hint.find("Q2 (expired 2026-05-13)") != std::string::npos);
}

TEST_CASE("on the last day of the qualification, or where none is demanded, it goes to the floor") {
  CHECK(test::gates_of(GateKind::qualified, tube(", qualified: true"), test::rate_texts(), {2026, 5, 13}).empty());
  CHECK(test::gates_of(GateKind::qualified, tube(""), test::rate_texts(), {2026, 5, 15}).empty());
}
