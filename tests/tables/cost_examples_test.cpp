// Published cost examples, step by step: each printed number is reached through the formulas of the trade.
#include "inch_units.hpp"
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
  // "Welding Filler Metals Data Handbook", section 8, cost worksheet pp. 8-6 to 8-8, ESAB North America. E71T-1 of 1/16
  // in at 300 A lays 10.2 lb/h, operating factor 45 %, labour and overhead 45 $/h, wire 1.78 $/lb at 87 %, gas 40 ft³/h
  // at 0.02 $/ft³, charged on arc time. No power line.
  const Mass<> one_pound{pound};
  const Time<> arc = arc_time_of(one_pound, 10.2);
  const Time<> floor = floor_time_by_factor(arc, Ratio<>{0.45});
  CHECK(within(1 / hours(floor), 4.59, 0.005));  // lb an hour of floor time: 10.2 × 0.45

  const Money<> labour = floor * per_hour(45);  // 45 / 4.59
  CHECK(within(labour.si, 9.80, half_cent));
  const Money<> wire = filler_mass(one_pound, Ratio<>{0.87}) * per_pound(1.78);  // 1.78 / 0.87
  CHECK(within(wire.si, 2.05, half_cent));
  const Volume<> gas_used = gas_volume(Flow<>{40 * cubic_foot / hour}, arc, Ratio<>{1}, Time<>{0}, Ratio<>{1});
  const Money<> gas = gas_used * MoneyPerVolume<>{0.02 / cubic_foot};  // 40 × 0.02 / 10.2
  CHECK(within(gas.si, 0.08, half_cent));
  CHECK(within(cents(labour) + cents(wire) + cents(gas), 11.93, half_cent));  // the source adds rounded terms
}

TEST_CASE("flux-cored equipment is earned back after 168.8 pounds and 37 hours") {
  // "Welding Filler Metals Data Handbook", section 8, amortisation against covered electrodes, ESAB North America: 2900
  // $, saving 17.18 $/lb, 4.59 lb an hour of floor time.
  const Mass<> laid = payback_mass(Money<>{2900}, per_pound(17.18));  // 2900 / 17.18
  CHECK(within(pounds(laid), 168.8, 0.06));
  const Time<> worked = floor_time_by_factor(arc_time_of(laid, 10.2), Ratio<>{0.45});
  CHECK(within(hours(worked), 37, 0.5));  // 36.8, printed in whole hours
}

TEST_CASE("gas-shielded equipment is earned back after 400 pounds and 13.5 days") {
  // "Basic Welding Filler Metal Technology", lesson IX, 9.8 Amortization, p. 23, ESAB Group (2000): 2800 $, saving
  // 7 $/lb, 7.4 lb an hour of arc, operating factor 50 %.
  const Mass<> laid = payback_mass(Money<>{2800}, per_pound(7));
  CHECK(within(pounds(laid), 400, 0.5));
  const Time<> worked = floor_time_by_factor(arc_time_of(laid, 7.4), Ratio<>{0.5});
  CHECK(within(hours(worked), 108, 0.5));  // 400 / 3.7
  CHECK(within(hours(worked) / 8, 13.5, 0.05));
}

TEST_CASE("a metre by covered electrode costs 5.96") {
  // Welding cost course exercise, covered electrode against submerged arc (Portuguese), Brazilian welding course,
  // solved exercise (teaching material). 1 m in one pass of 0.2048 cm², 25 cm/min, 280 A, 25 V, operating factor 30 %,
  // wage 10 R$/h with social charges of 100 %, electrodes 5 R$/kg at 60 %, source efficiency 75 %, 0.30 R$/kWh, 7.8
  // g/cm³.
  const Length<> seam{1};
  const Time<> arc = arc_time(seam, Ratio<>{1}, Speed<>{0.25 / minute});  // 100 / 25 min
  CHECK(within(hours(arc), 0.067, 0.0006));
  const Time<> floor = floor_time_by_factor(arc, Ratio<>{0.3});
  CHECK(within(hours(floor), 0.222, 0.0006));
  const Money<> labour = floor * loaded_rate(per_hour(10), Ratio<>{1});  // 0.2222 × 20
  CHECK(within(labour.si, 4.44, half_cent));

  const Mass<> deposit = deposit_mass(Area<>{0.2048e-4}, seam, g_per_cm3(7.8));  // 0.2048 × 100 × 7.8
  CHECK(within(deposit.si * 1e3, 159.74, 0.006));
  const Money<> electrodes = filler_mass(deposit, Ratio<>{0.6}) * MoneyPerMass<>{5};  // 0.1597 × 5 / 0.6
  CHECK(within(electrodes.si, 1.33, half_cent));

  const Power<> arc_power = Voltage<>{25} * Current<>{280};
  CHECK(within(arc_power.si, 7000, 1e-9));
  const Energy<> drawn = arc_electricity(Voltage<>{25}, Current<>{280}, Ratio<>{0.75}, Power<>{0}, arc);
  const Money<> power = drawn * MoneyPerEnergy<>{0.3 / 3.6e6};  // 7 × 0.0667 / 0.75 × 0.3
  CHECK(within(power.si, 0.19, half_cent));
  CHECK(within(cents(labour) + cents(electrodes) + cents(power), 5.96, half_cent));
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
