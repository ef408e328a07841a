#include <doctest/doctest.h>

#include "gated.hpp"

using namespace seambook;

namespace {

/// The thresholds of the heavy example shop: combined thickness over 50 mm or CE over 0.45 %.
std::vector<Gate> gates(const std::string& thickness, const std::string& metal, const std::string& more) {
  const std::string job =
      "format: 1\njob: gated\nweldments:\n  - name: body\n    parts: 2\n"
      "    free_issue: true\n    free_issue_value: 1 EUR\n    joints:\n      - {id: B1, weld: fillet, "
      "leg: 8 mm, length: 500 mm, position: PB, procedure: HM-Z8, passes: 1, thickness: " +
      thickness + ", base_metal: " + metal + more + "}\n";
  return test::gates_of(GateKind::preheat, job, test::rate_texts("jobs/marlgannet/rates"));
}

}  // namespace

TEST_CASE("a thick joint of a steel that hardens must say something of preheat") {
  const auto found = gates("[30 mm, 40 mm]", "S355J2", "");
  REQUIRE(found.size() == 1);
  CHECK(found[0].joint == 0u);
  CHECK(found[0].words.find("no preheat is stated") != std::string::npos);
}

TEST_CASE("with a word on preheat, thinner, or of a steel that does not harden so, it goes to the floor") {
  CHECK(gates("[30 mm, 40 mm]", "S355J2", ", preheat: 120 degC").empty());
  CHECK(gates("[30 mm, 40 mm]", "S355J2", ", preheat: none").empty());
  CHECK(gates("[8 mm, 10 mm]", "S355J2", "").empty());
}
