// Carbon equivalents and preheat.
#include "rows.hpp"
#include "trade/heat.hpp"
#include "trade/preheating.hpp"

using namespace tables;

namespace {

Ratio<> percent(double x) { return {x / 100}; }

/// C 0.16, Mn 1.40, Cr 0.05, Mo 0.02, V 0.01, Ni 0.10, Cu 0.15, Si 0.30 %; own numbers.
Composition<> own_steel() {
  return {.carbon = percent(0.16),
          .silicon = percent(0.30),
          .manganese = percent(1.40),
          .chromium = percent(0.05),
          .molybdenum = percent(0.02),
          .vanadium = percent(0.01),
          .nickel = percent(0.10),
          .copper = percent(0.15)};
}

}  // namespace

TEST_CASE("carbon equivalents of a steel") {
  Rows rows("carbon equivalents");
  // Derived, no published result: formulas as listed by Collie Welding (reference page) and an engineering forum that
  // quotes EN 1011-2. The (Cr + Cu)/10 of one forum post is a misprint of CET.
  // By hand: 0.16 + 1.4/6 + 0.08/5 + 0.25/15 = 0.16 + 0.2333 + 0.016 + 0.0167.
  rows.check("CE (IIW)", carbon_equivalent(own_steel()).si * 100, 0.426, 5e-7);
  // 0.16 + 1.42/10 + 0.2/20 + 0.1/40 = 0.16 + 0.142 + 0.01 + 0.0025.
  rows.check("CET", carbon_equivalent_cet(own_steel()).si * 100, 0.3145, 5e-7);
  // 0.16 + 0.3/30 + 1.6/20 + 0.1/60 + 0.02/15 + 0.01/10 = 0.16 + 0.01 + 0.08 + 0.00167 + 0.00133 + 0.001.
  rows.check("Pcm", crack_parameter(own_steel()).si * 100, 0.254, 5e-7);
  // Worked example after CSA Z662, pipeline welding document (teaching material), six decimals printed, F = 1:
  // 0.25 + 1.28/6 + 0.29/24 + 0.109/15 + 0.06/20 + 0.088/5 + 5 × 0.0009.
  const Composition<> pipe{.carbon = percent(0.25),
                           .silicon = percent(0.29),
                           .manganese = percent(1.28),
                           .chromium = percent(0.05),
                           .molybdenum = percent(0.034),
                           .vanadium = percent(0.004),
                           .nickel = percent(0.06),
                           .copper = percent(0.109),
                           .boron = percent(0.0009)};
  rows.check("CE after CSA Z662", carbon_equivalent_csa(pipe, Ratio<>{1}).si * 100, 0.507783, 1.5e-6);
  // By hand, the same steel: 0.25 + 0.29/30 + (1.28 + 0.109 + 0.05)/20 + 0.06/60 + 0.034/15 + 0.004/10 + 5 × 0.0009.
  rows.check("Pcm, boron", crack_parameter(pipe).si * 100, 0.339783, 1e-6);
  // By hand: 0.03 % of niobium add 0.03/5 to the same.
  Composition<> alloyed = pipe;
  alloyed.niobium = percent(0.03);
  rows.check("CE after CSA Z662, niobium", carbon_equivalent_csa(alloyed, Ratio<>{1}).si * 100, 0.513783, 1.5e-6);
}

TEST_CASE("preheat by method B") {
  // Derived, no published solved case: the formula of EN 1011-2, method B, as quoted by an engineering forum and a
  // distributor's page; d is the thickness of the plate. By hand, first row: 697 × 0.3 + 160 × tanh(30/35) +
  // 62 × 5^0.35 + (53 × 0.3 - 32) × 1 - 328 = 209.10 + 111.16 + 108.91 - 16.10 - 328 = 85.07 °C.
  struct Row {
    double cet_percent, thickness_mm, hydrogen, kj_per_mm, celsius;
  };
  const Row table[] = {{0.30, 30, 5, 1.0, 85.066},
                       {0.30, 50, 5, 1.5, 108.471},
                       {0.35, 40, 5, 1.5, 135.136},
                       {0.40, 20, 10, 1.0, 161.426},
                       {0.28, 20, 5, 1.0, 41.526}};
  Rows rows("preheat by method B");
  for (const Row& row : table) {
    const Temperature<> found =
        preheat_method_b(percent(row.cet_percent), mm(row.thickness_mm),
                         VolumePerMass<>{row.hydrogen * unit::ml_per_100g.si}, LineEnergy<>{row.kj_per_mm * 1e6});
    rows.check("CET " + std::to_string(row.cet_percent), found.si, row.celsius, 5e-4);
  }
}

TEST_CASE("thickness that draws heat away") {
  Rows rows("combined thickness");
  // Own numbers: a butt of 12 and 20 mm, a tee with a through plate of 20 mm and a web of 12 mm: 32 and 52 mm. Then a
  // clip of 5 mm on a plate of 30 mm, 65 mm, as a planning case of a heavy shop states it.
  rows.check("butt", combined_thickness(mm(12), mm(20)).si * 1000, 32, 1e-9);
  rows.check("tee", combined_thickness_tee(mm(20), mm(12)).si * 1000, 52, 1e-9);
  rows.check("clip on plate", combined_thickness_tee(mm(30), mm(5)).si * 1000, 65, 1e-9);
}

TEST_CASE("what preheating takes") {
  // Common practice, by hand: plates of 25 mm heated over 200 mm (100 mm on either side) by 100 K take about 1.9 MJ a
  // metre: 7850 × 0.025 × 0.2 = 39.25 kg, × 490 J/kgK × 100 K = 1.92 MJ; a torch of 15 kW of which the part takes 35 %
  // needs about 6 min: 1.92 MJ / 5.25 kW = 366 s. Fuel at 0.14 a kWh: 1.92 / 3.6 / 0.35 × 0.14 = 0.214.
  Rows rows("preheating");
  const Mass<> mass = heated_mass(Density<>{7850}, combined_thickness(mm(25), mm(25)), mm(100), Length<>{1});
  const Mass<> longer = heated_mass(Density<>{7850}, combined_thickness(mm(25), mm(25)), mm(100), Length<>{2.5});
  rows.check("kg of 2.5 m", longer.si, 98.125, 1e-9);
  const Energy<> heat = heat_needed(mass, SpecificHeat<>{490}, Temperature<>{120}, Temperature<>{20});
  rows.check("kg/m", mass.si, 39.25, 1e-9);
  rows.check("MJ/m", heat.si / 1e6, 1.9, 0.05);
  rows.check("min/m", burner_time(heat, Power<>{15e3}, Ratio<>{0.35}).si / 60, 6.1, 0.05);
  rows.check("fuel", fuel_cost(heat, Ratio<>{0.35}, MoneyPerEnergy<>{0.14 / 3.6e6}).si, 0.214, 5e-4);
}
