#include "text/unit_words.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace seambook;

namespace {

struct AcceptedRow {
  const char* text;
  Dim dimension;
  double si;
  const char* currency = "";
};

// Expected figures by hand from the definitions: 1 in = 25.4 mm, 1 ft = 12 in, 1 lb = 0.45359237 kg
// (international yard and pound agreement, 1959); 1 ft3 = 0.3048^3 m3 = 0.028316846592 m3; 1 kWh = 3.6 MJ.
const AcceptedRow accepted_rows[] = {
    {"8 mm", dim::length, 0.008},
    {"3.2mm", dim::length, 0.0032},
    {"2.4 cm", dim::length, 0.024},
    {"1.25 m", dim::length, 1.25},
    {"0.045 in", dim::length, 0.001143},
    {".045 in", dim::length, 0.001143},
    {"1/8 in", dim::length, 0.003175},
    {"3/16 in", dim::length, 0.0047625},
    {"1-1/2 in", dim::length, 0.0381},
    {"1 1/2 in", dim::length, 0.0381},
    {"1½ in", dim::length, 0.0381},
    {"1 ½ in", dim::length, 0.0381},
    {"¾ in", dim::length, 0.01905},
    {"1/8 \"", dim::length, 0.003175},
    {"1/8\"", dim::length, 0.003175},
    {"12″", dim::length, 0.3048},
    {"6 ft", dim::length, 1.8288},
    {"6'", dim::length, 1.8288},
    {"4'-6 1/2\"", dim::length, 1.3843},  // 48 + 6.5 = 54.5 in
    {"4' 6\"", dim::length, 1.3716},
    {"4'6\"", dim::length, 1.3716},
    {"4 ft 6 in", dim::length, 1.3716},
    {"10 ft", dim::length, 3.048},
    {"  8   mm ", dim::length, 0.008},
    {"8\u00A0mm", dim::length, 0.008},
    {"0 mm", dim::length, 0},
    {"12.5 mm2", dim::area, 12.5e-6},
    {"12.5 mm²", dim::area, 12.5e-6},
    {"2 cm2", dim::area, 2e-4},
    {"0.5 in2", dim::area, 3.2258e-4},
    {"400 mm/min", dim::speed, 0.4 / 60},
    {"80 cm/min", dim::speed, 0.8 / 60},
    {"80 cm / min", dim::speed, 0.8 / 60},
    {"7.5 m/min", dim::speed, 0.125},
    {"15 mm/s", dim::speed, 0.015},
    {"20 in/min", dim::speed, 0.508 / 60},
    {"8 ipm", dim::speed, 0.2032 / 60},
    {"18 kg", dim::mass, 18},
    {"250 g", dim::mass, 0.25},
    {"1.5 t", dim::mass, 1500},
    {"100 lb", dim::mass, 45.359237},
    {"8 oz", dim::mass, 0.226796185},
    {"3.6 kg/h", dim::mass_rate, 0.001},
    {"60 g/min", dim::mass_rate, 0.001},
    {"10 lb/h", dim::mass_rate, 4.5359237 / 3600},
    {"8.5 g/m", dim::linear_mass, 0.0085},
    {"1 lb/ft", dim::linear_mass, 0.45359237 / 0.3048},
    {"50 L", dim::volume, 0.05},
    {"50 l", dim::volume, 0.05},
    {"9.1 m3", dim::volume, 9.1},
    {"1 cf", dim::volume, 0.028316846592},
    {"12 L/min", dim::flow, 2e-4},
    {"0.72 m3/h", dim::flow, 2e-4},
    {"35 cfh", dim::flow, 35 * 0.028316846592 / 3600},
    {"35 ft3/h", dim::flow, 35 * 0.028316846592 / 3600},
    {"45 s", dim::time, 45},
    {"45 sec", dim::time, 45},
    {"1/2 h", dim::time, 1800},
    {"1.5 min", dim::time, 90},
    {"2 kW", dim::power, 2000},
    {"120 A", dim::current, 120},
    {"24.5 V", dim::voltage, 24.5},
    {"350 mV", dim::voltage, 0.35},
    {"60 deg", dim::angle, 1.0471975511965976},
    {"60°", dim::angle, 1.0471975511965976},
    {"2 kWh", dim::energy, 7.2e6},
    {"5 MJ", dim::energy, 5e6},
    {"0.9 kJ/mm", dim::line_energy, 9e5},
    {"25.4 kJ/in", dim::line_energy, 1e6},
    {"850 J/mm", dim::line_energy, 8.5e5},
    {"4 min/m", dim::pace, 240},
    {"1 min/ft", dim::pace, 60 / 0.3048},
    {"7.85 g/cm3", dim::density, 7850},
    {"7850 kg/m³", dim::density, 7850},
    {"0.284 lb/in3", dim::density, 0.284 * 0.45359237 / (0.0254 * 0.0254 * 0.0254)},
    {"25 %", dim::ratio, 0.25},
    {"0.95", dim::ratio, 0.95},
    {"120 °C", dim::temperature, 120},
    {"150 degF", dim::temperature, 65.555555555555},  // (150 - 32) * 5/9
    {"293.15 K", dim::temperature, 20},
    {"38 EUR", dim::money, 38, "EUR"},
    {"54 EUR/h", dim::money_per_time, 0.015, "EUR"},
    {"54 USD / h", dim::money_per_time, 0.015, "USD"},
    {"13.80 EUR/kg", dim::money_per_mass, 13.8, "EUR"},
    {"2.50 USD/lb", dim::money_per_mass, 2.5 / 0.45359237, "USD"},
    {"900 EUR/t", dim::money_per_mass, 0.9, "EUR"},
    {"6 CHF/m3", dim::money_per_volume, 6, "CHF"},
    {"0.12 USD/ft3", dim::money_per_volume, 0.12 / 0.028316846592, "USD"},
    {"0.36 EUR/kWh", dim::money_per_energy, 1e-7, "EUR"},
    {"4 EUR/m", dim::money_per_length, 4, "EUR"},
};

struct RefusedRow {
  const char* text;
  Dim dimension;
  const char* problem;
  const char* hint = "";  // a part of it
};

const RefusedRow refused_rows[] = {
    {"", dim::length, "nothing stands here where a number belongs"},
    {"thick", dim::length, "a number was expected, not 'thick'", "8 or 3.2"},
    {"nan mm", dim::length, "a number was expected, not 'nan mm'"},
    {".inf", dim::ratio, "a number was expected, not '.inf'"},
    {"inf", dim::ratio, "a number was expected, not 'inf'"},
    {"~8 mm", dim::length, "a number was expected, not '~8 mm'"},
    {"-3 mm", dim::length, "a negative value", "0 or more"},
    {"−3 mm", dim::length, "a negative value"},
    {"+3 mm", dim::length, "a sign before the number", "leave out the '+'"},
    {"1,5 mm", dim::length, "a comma in a number", "write a point before decimals (1.5)"},
    {",5 mm", dim::length, "a comma in a number", "0.5"},
    {"1,500 mm", dim::length, "a comma in a number", "nothing between thousands"},
    {"1.500,5 mm", dim::length, "a comma in a number"},
    {"1.500.000 mm", dim::length, "two points in a number"},
    {"1_000 mm", dim::length, "a mark between thousands", "1500"},
    {"1'000 mm", dim::length, "a mark between thousands", "1500"},
    {"1 000 mm", dim::length, "two numbers where one belongs"},
    {"1e3 mm", dim::length, "an exponent in a number", "write the number out"},
    {"1e999 mm", dim::length, "an exponent in a number"},
    {"1.5E-3 m", dim::length, "an exponent in a number"},
    {"0x1F mm", dim::length, "a number that is not decimal"},
    {"0o10 mm", dim::length, "a number that is not decimal"},
    {"010 mm", dim::length, "a number with a leading zero"},
    {"00.5 mm", dim::length, "a number with a leading zero"},
    {"1. mm", dim::length, "a point without decimals"},
    {"12:30", dim::time, "a colon in a number", "90 min"},
    {"1/0 in", dim::length, "'1/0' is no fraction to reckon with"},
    {"1 5/4 in", dim::length, "'1 5/4' is no fraction to reckon with", "1-1/2"},
    {"1/ in", dim::length, "an unfinished fraction", "3/16"},
    {"3 mm 4", dim::length, "two numbers where one belongs"},
    {"3 4 mm", dim::length, "two numbers where one belongs"},
    {"3-5 mm", dim::length, "two numbers where one belongs"},
    {"3 - 5 mm", dim::length, "two numbers where one belongs"},
    {"3x4 mm", dim::length, "two numbers where one belongs"},
    {"1 h 30 min", dim::time, "two numbers where one belongs"},
    {"4' 14\"", dim::length, "twelve inches or more after feet"},
    {"4.5' 6\"", dim::length, "feet are not whole where inches follow"},
    {"4'-6", dim::length, "no inch mark after feet and a number", "4'-6 1/2\""},
    {"8", dim::length, "a length needs a unit", "mm, cm, m, in"},
    {"8", dim::area, "an area needs a unit", "mm2"},
    {"54", dim::money_per_time, "a price per time needs a unit", "EUR/h"},
    {"38", dim::money, "an amount of money needs a unit", "ISO currency code"},
    {"8 furlongs", dim::length, "unknown unit 'furlongs'", "units of length: mm"},
    {"8 MM", dim::length, "unknown unit 'MM'", "did you mean 'mm'?"},
    {"8 mmm", dim::length, "unknown unit 'mmm'", "did you mean 'mm'?"},
    {"8 mm)", dim::length, "unknown unit 'mm)'", "did you mean 'mm'?"},
    {"20 C", dim::temperature, "unknown unit 'C'"},
    {"20 °F", dim::temperature, "a temperature below 0 °C", "32 °F"},
    {"273 K", dim::temperature, "a temperature below 0 °C"},
    {"8 kg", dim::length, "'kg' is a unit of mass, but a length is expected", "units of length"},
    {"12 kWh", dim::power, "'kWh' is a unit of energy, but a power is expected", "W, kW"},
    {"12 L/min", dim::speed, "'L/min' is a unit of flow, but a speed is expected"},
    {"5 m", dim::time, "'m' is a unit of length, but a time is expected"},
    {"54 EUR", dim::money_per_time, "'EUR' is an amount of money, but a price per time is expected", "EUR/h"},
    {"54 EUR/kg", dim::money_per_time, "'EUR/kg' is a price per mass, but a price per time is expected"},
    {"54 EUR/h", dim::length, "'EUR/h' is a price per time, but a length is expected"},
    {"54 $/h", dim::money_per_time, "'$' is no currency code", "ISO code"},
    {"$54/h", dim::money_per_time, "'$' is no currency code", "54 USD/h"},
    {"€54", dim::money, "'€' is no currency code", "54 EUR/h"},
    {"54 eur/h", dim::money_per_time, "unknown unit 'eur/h'"},
    {"25 % %", dim::ratio, "unknown unit '% %'"},
};

std::string row_name(const char* text, Dim dimension) {
  return std::string(text) + " as " + std::string(dimension_name(dimension));
}

std::string repeated(std::size_t times, char digit) { return std::string(times, digit); }

}  // namespace

TEST_CASE("amounts are read in the units of the trade") {
  for (const AcceptedRow& row : accepted_rows) {
    CAPTURE(row_name(row.text, row.dimension));
    const AmountRead read = read_amount(row.text, row.dimension, {});
    CHECK(read.problem == "");
    REQUIRE(read.amount.has_value());
    CHECK(std::abs(read.amount->si - row.si) <= 1e-13 * row.si);
    CHECK(read.amount->currency == row.currency);
  }
}

TEST_CASE("amounts that could be misread are refused with their reason") {
  for (const RefusedRow& row : refused_rows) {
    CAPTURE(row_name(row.text, row.dimension));
    const AmountRead read = read_amount(row.text, row.dimension, {});
    CHECK(!read.amount.has_value());
    CHECK(read.problem == row.problem);
    CAPTURE(read.hint);
    CHECK(read.hint != "");
    CHECK(read.hint.find(row.hint) != std::string::npos);
  }
}

TEST_CASE("values beyond what a double holds are refused") {
  const std::string tiny = "0." + repeated(320, '0') + "1", denormal = "0." + repeated(306, '0') + "1";
  CHECK(read_amount(repeated(400, '9') + " mm", dim::length, {}).problem ==
        "a number too large or too small to reckon with");
  CHECK(read_amount(repeated(308, '9') + " t", dim::mass, {}).problem == "a value too large to reckon with");
  CHECK(read_amount("1" + repeated(15, '0') + " kg", dim::mass, {}).amount->si == 1e15);
  CHECK(read_amount("1" + repeated(14, '0') + "1 kg", dim::mass, {}).amount.has_value() == false);
  CHECK(read_amount("0.001 mm2", dim::area, {}).amount->si == doctest::Approx(1e-9));
  CHECK(read_amount("0." + repeated(13, '0') + "1 m", dim::length, {}).amount->si == doctest::Approx(1e-14));
  CHECK(read_amount("0." + repeated(15, '0') + "1 m", dim::length, {}).problem == "a value too small to reckon with");
  CHECK(read_amount(repeated(400, '0') + " mm", dim::length, {}).problem == "a number with a leading zero");
  CHECK(!read_amount("0." + repeated(400, '0') + "1 mm", dim::length, {}).amount);
  CHECK(!read_amount(tiny + " mm", dim::length, {}).amount);
  CHECK(read_amount(denormal + " mm", dim::length, {}).problem == "a value too small to reckon with");
}

TEST_CASE("a bare number takes the unit that its file states") {
  const DefaultUnits defaults{{{dim::length, 0.001, "mm"}, {dim::money_per_time, 1.0 / 3600, "EUR/h"}}};
  const AmountRead bare = read_amount("8", dim::length, defaults);
  REQUIRE(bare.amount.has_value());
  CHECK(bare.amount->si == doctest::Approx(0.008));
  CHECK(bare.amount->unit == "");
  CHECK(read_amount("1/8 in", dim::length, defaults).amount->si == doctest::Approx(0.003175));
  CHECK(!read_amount("8", dim::mass, defaults).amount);
}

TEST_CASE("an amount keeps the unit as the author spelled it") {
  CHECK(read_amount("12 mm²", dim::area, {}).amount->unit == "mm²");
  CHECK(read_amount("54 EUR / h", dim::money_per_time, {}).amount->unit == "EUR/h");
  CHECK(read_amount("1/8 \"", dim::length, {}).amount->unit == "\"");
}

TEST_CASE("every unit word reads back as one of its unit") {
  const Dim plain[] = {dim::length,  dim::area,   dim::volume, dim::mass,        dim::time,        dim::current,
                       dim::voltage, dim::angle,  dim::speed,  dim::density,     dim::linear_mass, dim::mass_rate,
                       dim::flow,    dim::energy, dim::power,  dim::line_energy, dim::pace,        dim::ratio};
  const Dim money[] = {dim::money_per_time, dim::money_per_mass, dim::money_per_volume, dim::money_per_energy,
                       dim::money_per_length};
  for (const Dim dimension : plain) {
    CHECK(!unit_words(dimension).empty());
    for (const UnitWord& unit : unit_words(dimension)) {
      CAPTURE(unit.word);
      CHECK(read_amount("1 " + std::string(unit.word), dimension, {}).amount->si == unit.si);
    }
  }
  for (const Dim dimension : money) {
    CHECK(!unit_words(dimension).empty());
    for (const UnitWord& unit : unit_words(dimension)) {
      CAPTURE(unit.word);
      CHECK(read_amount("1 EUR/" + std::string(unit.word), dimension, {}).amount->si == unit.si);
    }
  }
}

TEST_CASE("counts are plain whole numbers") {
  CHECK(read_count("4").count == 4);
  CHECK(read_count(" 0 ").count == 0);
  CHECK(read_count("1000000000").count == 1'000'000'000);
  const RefusedRow rows[] = {{"1000000001", {}, "a count above 1000000000"},
                             {"010", {}, "a number with a leading zero"},
                             {"0x10", {}, "a number that is not decimal"},
                             {"3.0", {}, "'3.0' is no whole number"},
                             {"1/2", {}, "'1/2' is no whole number"},
                             {"4/2", {}, "'4/2' is no whole number"},
                             {"-1", {}, "a negative value"},
                             {"1e3", {}, "an exponent in a number"},
                             {"1,000", {}, "a comma in a number"},
                             {"4 mm", {}, "'mm' after a count", "no unit"},
                             {"yes", {}, "a number was expected, not 'yes'"}};
  for (const RefusedRow& row : rows) {
    CAPTURE(row.text);
    const CountRead read = read_count(row.text);
    CHECK(!read.count);
    CHECK(read.problem == row.problem);
    CHECK(read.hint.find(row.hint) != std::string::npos);
  }
}
