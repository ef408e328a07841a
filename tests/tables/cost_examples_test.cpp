// Published cost examples, step by step: each printed number is reached through the formulas of the trade.
#include "rows.hpp"
#include "trade/economics.hpp"

using namespace tables;

namespace {

/// Half a cent, with a hair for the binary fraction of the printed number.
constexpr double half_cent = 0.006;
MoneyPerTime<> per_hour(double x) { return {x / hour}; }
MoneyPerMass<> per_pound(double x) { return {x / pound}; }
double pounds(Mass<> m) { return m.si / pound; }
double hours(Time<> t) { return t.si / hour; }
double cents(Money<> m) { return round_money(m, 2).si; }
/// Time to lay this mass at a deposition in pounds an hour of arc.
Time<> arc_time_of(Mass<> deposit, double lb_per_h) { return deposit / MassRate<>{lb_per_h * pound / hour}; }

}  // namespace

TEST_CASE("flux-cored welding costs 11.93 a pound of weld metal") {
  Rows rows("flux-cored, cost of a pound");
  // "Welding Filler Metals Data Handbook", section 8, cost worksheet pp. 8-6 to 8-8, ESAB North America. E71T-1 of 1/16
  // in at 300 A lays 10.2 lb/h, operating factor 45 %, labour and overhead 45 $/h, wire 1.78 $/lb at 87 %, gas 40 ft³/h
  // at 0.02 $/ft³, charged on arc time. No power line.
  const Mass<> one_pound{pound};
  const Time<> arc = arc_time_of(one_pound, 10.2);
  const Time<> floor = floor_time_by_factor(arc, Ratio<>{0.45});
  rows.check("step 1", 1 / hours(floor), 4.59, 0.005);  // lb an hour of floor time: 10.2 × 0.45

  const Money<> labour = floor * per_hour(45);  // 45 / 4.59
  rows.check("step 2", labour.si, 9.80, half_cent);
  const Money<> wire = filler_mass(one_pound, Ratio<>{0.87}) * per_pound(1.78);  // 1.78 / 0.87
  rows.check("step 3", wire.si, 2.05, half_cent);
  const Volume<> gas_used = gas_volume(Flow<>{40 * cubic_foot / hour}, arc, Ratio<>{1}, Time<>{0}, Ratio<>{1});
  const Money<> gas = gas_used * MoneyPerVolume<>{0.02 / cubic_foot};  // 40 × 0.02 / 10.2
  rows.check("step 4", gas.si, 0.08, half_cent);
  rows.check("step 5", cents(labour) + cents(wire) + cents(gas), 11.93, half_cent);  // the source adds rounded terms
}

TEST_CASE("flux-cored equipment is earned back after 168.8 pounds and 37 hours") {
  Rows rows("flux-cored, payback");
  // "Welding Filler Metals Data Handbook", section 8, amortisation against covered electrodes, ESAB North America: 2900
  // $, saving 17.18 $/lb, 4.59 lb an hour of floor time.
  const Mass<> laid = payback_mass(Money<>{2900}, per_pound(17.18));  // 2900 / 17.18
  rows.check("step 1", pounds(laid), 168.8, 0.06);
  const Time<> worked = floor_time_by_factor(arc_time_of(laid, 10.2), Ratio<>{0.45});
  rows.check("step 2", hours(worked), 37, 0.5);  // 36.8, printed in whole hours
}

TEST_CASE("gas-shielded equipment is earned back after 400 pounds and 13.5 days") {
  Rows rows("gas-shielded, payback");
  // "Basic Welding Filler Metal Technology", lesson IX, 9.8 Amortization, p. 23, ESAB Group (2000): 2800 $, saving
  // 7 $/lb, 7.4 lb an hour of arc, operating factor 50 %.
  const Mass<> laid = payback_mass(Money<>{2800}, per_pound(7));
  rows.check("step 1", pounds(laid), 400, 0.5);
  const Time<> worked = floor_time_by_factor(arc_time_of(laid, 7.4), Ratio<>{0.5});
  rows.check("step 2", hours(worked), 108, 0.5);  // 400 / 3.7
  rows.check("step 3", hours(worked) / 8, 13.5, 0.05);
}

TEST_CASE("a metre by covered electrode costs 5.96") {
  Rows rows("covered electrode, cost of a metre");
  // Welding cost course exercise, covered electrode against submerged arc (Portuguese), Brazilian welding course,
  // solved exercise (teaching material). 1 m in one pass of 0.2048 cm², 25 cm/min, 280 A, 25 V, operating factor 30 %,
  // wage 10 R$/h with social charges of 100 %, electrodes 5 R$/kg at 60 %, source efficiency 75 %, 0.30 R$/kWh, 7.8
  // g/cm³.
  const Length<> seam{1};
  const Time<> arc = arc_time(seam, Ratio<>{1}, Speed<>{0.25 / minute});  // 100 / 25 min
  rows.check("step 1", hours(arc), 0.067, 0.0006);
  const Time<> floor = floor_time_by_factor(arc, Ratio<>{0.3});
  rows.check("step 2", hours(floor), 0.222, 0.0006);
  const Money<> labour = floor * loaded_rate(per_hour(10), Ratio<>{1});  // 0.2222 × 20
  rows.check("step 3", labour.si, 4.44, half_cent);

  const Mass<> deposit = deposit_mass(Area<>{0.2048e-4}, seam, g_per_cm3(7.8));  // 0.2048 × 100 × 7.8
  rows.check("step 4", deposit.si * 1e3, 159.74, 0.006);
  const Money<> electrodes = filler_mass(deposit, Ratio<>{0.6}) * MoneyPerMass<>{5};  // 0.1597 × 5 / 0.6
  rows.check("step 5", electrodes.si, 1.33, half_cent);

  const Power<> arc_power = Voltage<>{25} * Current<>{280};
  rows.check("step 6", arc_power.si, 7000, 1e-9);
  const Energy<> drawn = arc_electricity(Voltage<>{25}, Current<>{280}, Ratio<>{0.75}, Power<>{0}, arc);
  const Money<> power = drawn * MoneyPerEnergy<>{0.3 / 3.6e6};  // 7 × 0.0667 / 0.75 × 0.3
  rows.check("step 7", power.si, 0.19, half_cent);
  rows.check("step 8", cents(labour) + cents(electrodes) + cents(power), 5.96, half_cent);
}

TEST_CASE("share of electricity in two examples") {
  // Derived: shares of the Portuguese example and of its submerged-arc half, 0.19 / 5.96 and 0.16 / 2.03; a course says
  // less than 1 %.
  Rows rows("share of electricity, derived");
  rows.check("covered electrode", (Money<>{0.19} / Money<>{5.96}).si * 100, 3.187919463, 5e-9);
  rows.check("submerged arc", (Money<>{0.16} / Money<>{2.03}).si * 100, 7.881773399, 5e-9);
}

TEST_CASE("electricity for a pound of weld metal, derived") {
  // Derived: inputs of a filler-metal course, example 1 (Spanish copy), the answer ours: 25 V × 250 A at 0.045 $/kWh
  // and 5.4 lb/h, no source efficiency: 6.25 × 0.045 / 5.4 = 0.0521 $.
  Rows rows("electricity of a pound, derived");
  const Energy<> energy =
      arc_electricity(Voltage<>{25}, Current<>{250}, Ratio<>{1}, Power<>{0}, arc_time_of(Mass<>{pound}, 5.4));
  rows.check("a pound", (energy * MoneyPerEnergy<>{0.045 / 3.6e6}).si, 0.052083, 5e-7);
}

TEST_CASE("filler of a job of four joints") {
  // Welding cost slides after Cary (university slides in Spanish): masses a metre as printed there, covered electrodes
  // of 60 % at 18000 a kilogram. The 0.091 kg/m of the 3/16 in fillet is its own figure; exact geometry gives 0.0888.
  Rows rows("job of four joints");
  const Density<> steel = g_per_cm3(7.85);
  const auto mass = [&](double metres, double kg_per_metre) {
    return deposit_mass(LinearMass<>{kg_per_metre} / steel, Length<>{metres}, steel);
  };
  const Mass<> quarter_fillet = mass(37, 0.158), small_fillet = mass(90, 0.091), groove = mass(12, 1.050),
               small_groove = mass(18, 0.573);
  rows.check("1/4 in fillet, 37 m", quarter_fillet.si, 5.846, 6e-4);
  rows.check("3/16 in fillet, 90 m", small_fillet.si, 8.19, 6e-3);
  rows.check("V groove, 12 m", groove.si, 12.6, 6e-3);
  rows.check("3/8 in V groove, 18 m", small_groove.si, 10.314, 6e-4);
  const Mass<> all = quarter_fillet + small_fillet + groove + small_groove;
  rows.check("weld metal", all.si, 36.95, 6e-3);
  // 36.95 / 0.6 × 18000 = 1108500.
  rows.check("electrodes", (filler_mass(all, Ratio<>{0.6}) * MoneyPerMass<>{18000}).si, 1108500, 1);
}

TEST_CASE("margin and mark-up by hand") {
  // Own numbers, arithmetic of the definitions: a cost of 80 at 20 % margin sells for 80 / 0.8 = 100, of which 20 is a
  // fifth; at 20 % mark-up for 96. A margin m is the mark-up m / (1 - m).
  CHECK(within(price_by_margin(Money<>{80}, Ratio<>{0.2}).si, 100, 1e-9));
  CHECK(within(price_by_markup(Money<>{80}, Ratio<>{0.2}).si, 96, 1e-9));
  for (const double margin : {0.05, 0.1, 0.15, 0.25, 0.4}) {
    CAPTURE(margin);
    const Money<> by_margin = price_by_margin(Money<>{123.45}, Ratio<>{margin});
    const Money<> by_markup = price_by_markup(Money<>{123.45}, Ratio<>{margin / (1 - margin)});
    CHECK(within(by_margin.si, by_markup.si, 1e-9));
    CHECK(within(by_margin.si - 123.45, by_margin.si * margin, 1e-9));
  }
}
