#include <doctest/doctest.h>

#include "gated.hpp"

using namespace seambook;

namespace {

std::vector<Gate> gates(const std::string& weldment) {
  return test::gates_of(
      GateKind::vessel,
      test::gated_job(weldment, "      - {id: A, weld: fillet, leg: 3 mm, thickness: 4 mm, length: 100 mm}\n"));
}

}  // namespace

TEST_CASE("a vessel that was in use or is closed needs a note that it is free of gas") {
  for (const char* vessel : {"used", "closed"}) {
    const auto found = gates(std::string("    vessel: ") + vessel + "\n");
    REQUIRE(found.size() == 1);
    CHECK_FALSE(found[0].joint);
    CHECK(found[0].weldment == 0);
    CHECK(found[0].words.find("no note says that it is free of gas") != std::string::npos);
  }
}

TEST_CASE("with the note, or new, or no vessel at all, it goes to the floor") {
  CHECK(gates("    vessel: used\n    gas_free: note 12/26\n").empty());
  CHECK(gates("    vessel: new\n").empty());
  CHECK(gates("").empty());
}
