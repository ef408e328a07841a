#include <doctest/doctest.h>

#include "gated.hpp"

using namespace seambook;

namespace {

std::vector<Gate> gates(const std::string& weldment) {
  return test::gates_of(
      GateKind::confined,
      test::gated_job(weldment, "      - {id: A, weld: fillet, leg: 3 mm, thickness: 4 mm, length: 100 mm}\n"));
}

}  // namespace

TEST_CASE("nobody goes into a confined space without somebody outside") {
  const auto found = gates("    confined: true\n");
  REQUIRE(found.size() == 1);
  CHECK(found[0].words == "the space is confined, and nobody is named who stays outside");
}

TEST_CASE("with an attendant, or where it is not confined, it goes to the floor") {
  CHECK(gates("    confined: true\n    attendant: Q1\n").empty());
  CHECK(gates("    confined: false\n").empty());
}
