// Twins of metric units. Sizes by NIST Special Publication 811, appendix B.9 (factors in bold there are exact).
#include "basics/shown_units.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace seambook;

namespace {

struct TwinRow {
  Unit metric;
  const char* word;
  double of_metric;  // how many of the twin one metric unit is
};
const TwinRow twin_rows[] = {
    {unit::mm, "in", 1 / 25.4},
    {unit::m, "ft", 1 / 0.3048},
    {unit::mm2, "in²", 1 / 645.16},                    // 6.4516 E-04 m² to the square inch
    {unit::kg, "lb", 1 / 0.45359237},                  // 4.5359237 E-01 kg to the pound
    {unit::g_per_cm3, "lb/in³", 1 / 27.679904710191},  // 2.767990 E+04 kg/m³
    {unit::l, "ft³", 1 / 28.316846592},                // 2.831685 E-02 m³ to the cubic foot
    {unit::l_per_min, "ft³/h", 60 / 28.316846592},     // from the row above
    {unit::mm_per_min, "in/min", 1 / 25.4},
    {unit::m_per_min, "in/min", 1000 / 25.4},
    {unit::kg_per_h, "lb/h", 1 / 0.45359237},
    {unit::min_per_m, "min/ft", 0.3048},
    {unit::kJ_per_mm, "kJ/in", 25.4},
    {unit::celsius, "°F", 1.8},
    {unit::money_per_kg, "¤/lb", 0.45359237},
    {unit::money_per_m3, "¤/ft³", 0.028316846592},
    {unit::money_per_m, "¤/ft", 0.3048},
};

}  // namespace

TEST_CASE("a shop that prints AWS terms gets the customary twin of each metric unit") {
  for (const TwinRow& row : twin_rows) {
    CAPTURE(row.word);
    const Unit twin = shown_in(Terms::aws, row.metric).unit;
    CHECK(std::string(twin.word) == row.word);
    CHECK(row.metric.si / twin.si == doctest::Approx(row.of_metric).epsilon(1e-12));
    CHECK(shown_in(Terms::iso, row.metric).unit.si == row.metric.si);
  }
}

TEST_CASE("degrees Fahrenheit begin at 32") {
  const Unit fahrenheit = shown_in(Terms::aws, unit::celsius).unit;
  CHECK(shown_number(0, fahrenheit) == 32);
  CHECK(shown_number(100, fahrenheit) == doctest::Approx(212).epsilon(1e-12));
  CHECK(shown_number(120, unit::celsius) == 120);
}

TEST_CASE("units without a twin stay as they are and decimals never fall below none") {
  for (const Unit& same : {unit::A, unit::V, unit::kWh, unit::min, unit::percent, unit::money, unit::none})
    CHECK(std::string(shown_in(Terms::aws, same).unit.word) == same.word);
  CHECK(shown_in(Terms::aws, unit::m_per_min, 0).decimals == 0);
  CHECK(shown_in(Terms::aws, unit::mm, 2).decimals == 4);
}
