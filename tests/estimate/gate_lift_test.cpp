#include <doctest/doctest.h>

#include "gated.hpp"

using namespace seambook;

namespace {

std::vector<Gate> gates(const std::string& weldment, const std::string& hold, const std::string& day = "") {
  const std::string fillet = "weld: fillet, leg: 4 mm, thickness: 6 mm, length: 150 mm";
  return test::gates_of(GateKind::lift,
                        test::gated_job(weldment, "      - {id: L1, " + fillet + hold + "}\n      - {id: P2, " +
                                                      fillet + ", hold: root visual}\n"),
                        test::rate_texts(), {2026, 5, 12}, day);
}

const std::string lifted = "    lifted_on: [L1]\n";
const std::string day = "format: 1\nreleased:\n  - {joint: gated/body/";

}  // namespace

TEST_CASE("nothing is lifted on a lug without a hold point, or before it is released") {
  const auto without = gates(lifted, "");
  REQUIRE(without.size() == 1);
  CHECK(without[0].joint == 0u);
  CHECK(without[0].words == "it is lifted on L1, which has no hold point");
  CHECK(gates(lifted, ", hold: {what: before lift, kind: witness}").size() == 1);
  const auto before = gates(lifted, ", hold: before lift");
  REQUIRE(before.size() == 1);
  CHECK(before[0].words == "it must not be lifted on L1: its hold point 'before lift' is not released");
  CHECK(gates(lifted, ", hold: before lift", day + "P2, by: Q9}\n").size() == 1);  // another joint's
  CHECK(gates(lifted, ", hold: [fit-up, before lift]", day + "L1, what: fit-up, by: Q9}\n").size() == 1);
}

TEST_CASE("once released, or not lifted on it, it goes to the floor") {
  CHECK(gates(lifted, ", hold: before lift", day + "L1, what: before lift, by: Q9}\n").empty());
  CHECK(gates(lifted, ", hold: [fit-up, before lift]", day + "L1, by: Q9}\n").empty());
  CHECK(gates("", "").empty());
  CHECK(gates("", ", hold: before lift").empty());
}

TEST_CASE("gates are told at their joint or weldment as not for the floor") {
  test::LoadedJob loaded = test::load_text(test::gated_job(
      "    vessel: used\n" + lifted, "      - {id: L1, weld: fillet, leg: 4 mm, thickness: 6 mm, length: 150 mm}\n"));
  REQUIRE(loaded.job);
  const auto found =
      find_gates({*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job), {2026, 5, 12}, nullptr, 0});
  Diagnostics told;
  tell_gates(found, *loaded.job, told);
  REQUIRE(told.list.size() == 2);
  CHECK(told.list[0].level == Level::not_for_the_floor);
  CHECK(told.list[0].message.starts_with("weldment body: the vessel was in use"));
  CHECK(told.list[1].message.starts_with("joint L1: "));
  CHECK(told.list[1].place == loaded.job->joints[0].place);
}
