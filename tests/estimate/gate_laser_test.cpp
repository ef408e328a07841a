#include <doctest/doctest.h>

#include "gated.hpp"

using namespace seambook;

namespace {

const std::string beam = test::gated_job(
    "",
    "      - {id: C1, weld: square, thickness: 1.5 mm, length: 800 mm, base_metal: \"1.4301\", procedure: SL-15A}\n");
const std::string arc = test::gated_job(
    "",
    "      - {id: C1, weld: square, thickness: 1.5 mm, length: 800 mm, base_metal: \"1.4301\", procedure: ST-SH}\n");

}  // namespace

TEST_CASE("a laser stays off where the area, the safety officer or the eyewear is not stated ready") {
  const struct {
    const char *line, *instead, *lacks;
  } rows[] = {{"    controlled_area: true\n", "", "ST-2: no controlled area"},
              {"    controlled_area: true\n", "    controlled_area: false\n", "ST-2: no controlled area"},
              {"    safety_officer: true\n", "", "ST-2: no safety officer"},
              {"    safety_officer: true\n", "    safety_officer: false\n", "ST-2: no safety officer"},
              {"    eyewear: {wavelength: 1070 nm, optical_density: 7}\n", "", "ST-2: no rated eyewear"}};
  for (const auto& row : rows) {
    CAPTURE(row.line);
    const auto gates = test::gates_of(GateKind::laser, beam, test::rates_with("stations.yaml", row.line, row.instead));
    REQUIRE(gates.size() == 1);
    CHECK(gates[0].joint == 0u);
    CHECK(gates[0].words.find(row.lacks) != std::string::npos);
  }
}

TEST_CASE("a laser at a station that is ready, and an arc at one that is not, go to the floor") {
  CHECK(test::gates_of(GateKind::laser, beam).empty());
  CHECK(test::gates_of(GateKind::laser, arc, test::rates_with("stations.yaml", "    safety_officer: true\n", ""))
            .empty());
}
