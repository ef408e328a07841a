#include "text/unit_tables.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "basics/utf8.hpp"

// Exact by definition: inch 0.0254 m, pound 0.45359237 kg (international yard and pound agreement of 1959).
namespace seambook {
namespace {

constexpr double inch_si = 0.0254, foot_si = 0.3048, pound_si = 0.45359237, ounce_si = pound_si / 16;
constexpr double minute_si = 60, hour_si = 3600, litre_si = 1e-3, cubic_foot_si = foot_si * foot_si * foot_si;

constexpr UnitWord ratio_words[] = {{"%", 0.01}};
constexpr UnitWord length_words[] = {{"mm", 1e-3},       {"cm", 1e-2},    {"m", 1},       {"in", inch_si},
                                     {"inch", inch_si},  {"\"", inch_si}, {"″", inch_si}, {"ft", foot_si},
                                     {"'", foot_si},     {"′", foot_si},  {"dm", 0.1},    {"feet", foot_si},
                                     {"inches", inch_si}};
constexpr UnitWord area_words[] = {{"mm2", 1e-6},
                                   {"mm²", 1e-6},
                                   {"cm2", 1e-4},
                                   {"cm²", 1e-4},
                                   {"m2", 1},
                                   {"m²", 1},
                                   {"in2", inch_si* inch_si},
                                   {"in²", inch_si* inch_si}};
constexpr UnitWord volume_words[] = {
    {"L", litre_si},        {"l", litre_si},      {"m3", 1}, {"m³", 1}, {"dm3", 1e-3}, {"ft3", cubic_foot_si},
    {"ft³", cubic_foot_si}, {"cf", cubic_foot_si}};
constexpr UnitWord mass_words[] = {{"kg", 1},        {"g", 1e-3},       {"t", 1000},
                                   {"lb", pound_si}, {"lbs", pound_si}, {"oz", ounce_si}};
constexpr UnitWord time_words[] = {{"s", 1}, {"sec", 1}, {"min", minute_si}, {"h", hour_si}, {"hr", hour_si}};
constexpr UnitWord current_words[] = {{"A", 1}};
constexpr UnitWord voltage_words[] = {{"V", 1}, {"mV", 1e-3}};
// Temperatures are the one scale with an offset: read_amount adds it.
constexpr UnitWord temperature_words[] = {{"°C", 1}, {"degC", 1}, {"K", 1}, {"°F", 5.0 / 9}, {"degF", 5.0 / 9}};
constexpr UnitWord angle_words[] = {{"°", unit::degree.si}, {"deg", unit::degree.si}};
constexpr UnitWord speed_words[] = {{"mm/min", 1e-3 / minute_si},
                                    {"cm/min", 1e-2 / minute_si},
                                    {"m/min", 1 / minute_si},
                                    {"mm/s", 1e-3},
                                    {"m/s", 1},
                                    {"in/min", inch_si / minute_si},
                                    {"ipm", inch_si / minute_si},
                                    {"IPM", inch_si / minute_si},
                                    {"ft/min", foot_si / minute_si}};
constexpr UnitWord density_words[] = {{"g/cm3", 1e3},
                                      {"g/cm³", 1e3},
                                      {"kg/m3", 1},
                                      {"kg/m³", 1},
                                      {"kg/dm3", 1e3},
                                      {"kg/dm³", 1e3},
                                      {"lb/in3", pound_si / (inch_si * inch_si * inch_si)},
                                      {"lb/in³", pound_si / (inch_si * inch_si * inch_si)}};
constexpr UnitWord linear_mass_words[] = {{"kg/m", 1}, {"g/m", 1e-3}, {"lb/ft", pound_si / foot_si}};
constexpr UnitWord mass_rate_words[] = {{"kg/h", 1 / hour_si},
                                        {"g/min", 1e-3 / minute_si},
                                        {"kg/min", 1 / minute_si},
                                        {"lb/h", pound_si / hour_si},
                                        {"lb/hr", pound_si / hour_si}};
constexpr UnitWord flow_words[] = {{"L/min", litre_si / minute_si},
                                   {"l/min", litre_si / minute_si},
                                   {"m3/h", 1 / hour_si},
                                   {"m³/h", 1 / hour_si},
                                   {"cfh", cubic_foot_si / hour_si},
                                   {"CFH", cubic_foot_si / hour_si},
                                   {"ft3/h", cubic_foot_si / hour_si},
                                   {"ft³/h", cubic_foot_si / hour_si}};
constexpr UnitWord energy_words[] = {{"kWh", 3.6e6}, {"Wh", 3.6e3}, {"MJ", 1e6}, {"kJ", 1e3}, {"J", 1}};
constexpr UnitWord power_words[] = {{"W", 1}, {"kW", 1e3}};
constexpr UnitWord line_energy_words[] = {{"kJ/mm", 1e6}, {"J/mm", 1e3}, {"kJ/cm", 1e5}, {"kJ/in", 1e3 / inch_si}};
constexpr UnitWord energy_per_volume_words[] = {{"J/mm3", 1e9}, {"J/mm³", 1e9}, {"kJ/cm3", 1e9}, {"MJ/m3", 1e6}};
constexpr UnitWord volume_per_mass_words[] = {
    {"ml/100g", 1e-5}, {"mL/100g", 1e-5}, {"ml/100 g", 1e-5}, {"mL/100 g", 1e-5}};
constexpr UnitWord specific_heat_words[] = {{"J/kgK", 1}, {"kJ/kgK", 1e3}, {"J/kg/K", 1}};
constexpr UnitWord pace_words[] = {{"min/m", minute_si}, {"s/m", 1}, {"h/m", hour_si}, {"min/ft", minute_si / foot_si}};
constexpr UnitWord time_per_mass_words[] = {{"min/kg", minute_si},
                                            {"s/kg", 1},
                                            {"min/t", minute_si / 1000},
                                            {"h/t", hour_si / 1000},
                                            {"min/lb", minute_si / pound_si}};
constexpr UnitWord per_time_words[] = {{"h", 1 / hour_si}, {"hr", 1 / hour_si}, {"min", 1 / minute_si}};
constexpr UnitWord per_mass_words[] = {{"kg", 1}, {"t", 1e-3}, {"g", 1e3}, {"lb", 1 / pound_si}};
constexpr UnitWord per_volume_words[] = {{"m3", 1},
                                         {"m³", 1},
                                         {"L", 1 / litre_si},
                                         {"l", 1 / litre_si},
                                         {"ft3", 1 / cubic_foot_si},
                                         {"ft³", 1 / cubic_foot_si},
                                         {"cf", 1 / cubic_foot_si}};
constexpr UnitWord per_energy_words[] = {{"kWh", 1 / 3.6e6}, {"MJ", 1e-6}};
constexpr UnitWord per_length_words[] = {{"m", 1}, {"mm", 1e3}, {"ft", 1 / foot_si}, {"in", 1 / inch_si}};

struct UnitTable {
  Dim dimension;
  std::string_view name;
  std::span<const UnitWord> words;
};

constexpr UnitTable unit_tables[] = {
    {dim::length, "length", length_words},
    {dim::area, "area", area_words},
    {dim::volume, "volume", volume_words},
    {dim::mass, "mass", mass_words},
    {dim::time, "time", time_words},
    {dim::current, "current", current_words},
    {dim::voltage, "voltage", voltage_words},
    {dim::temperature, "temperature", temperature_words},
    {dim::angle, "angle", angle_words},
    {dim::speed, "speed", speed_words},
    {dim::density, "density", density_words},
    {dim::linear_mass, "mass per length", linear_mass_words},
    {dim::mass_rate, "mass per time", mass_rate_words},
    {dim::flow, "flow", flow_words},
    {dim::energy, "energy", energy_words},
    {dim::power, "power", power_words},
    {dim::line_energy, "energy per length", line_energy_words},
    {dim::energy_per_volume, "energy per volume", energy_per_volume_words},
    {dim::volume_per_mass, "volume per mass", volume_per_mass_words},
    {dim::specific_heat, "heat per mass and kelvin", specific_heat_words},
    {dim::pace, "time per length", pace_words},
    {dim::time_per_mass, "time per mass", time_per_mass_words},
    {dim::ratio, "ratio", ratio_words},
    {dim::money, "amount of money", {}},
    {dim::money_per_time, "price per time", per_time_words},
    {dim::money_per_mass, "price per mass", per_mass_words},
    {dim::money_per_volume, "price per volume", per_volume_words},
    {dim::money_per_energy, "price per energy", per_energy_words},
    {dim::money_per_length, "price per length", per_length_words},
};

const UnitTable* table_of(Dim dimension) {
  for (const UnitTable& table : unit_tables)
    if (table.dimension == dimension) return &table;
  return nullptr;
}

bool has_word(const UnitTable& table, std::string_view word) {
  return std::any_of(table.words.begin(), table.words.end(), [&](const UnitWord& unit) { return unit.word == word; });
}

}  // namespace

bool holds_money(Dim dimension) { return dimension.money == 1; }

bool is_currency_code(std::string_view word) {
  return word.size() == 3 && std::all_of(word.begin(), word.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

std::optional<UnitWord> find_unit(Dim dimension, std::string_view word) {
  if (const UnitTable* table = table_of(dimension))
    for (const UnitWord& unit : table->words)
      if (unit.word == word) return unit;
  return std::nullopt;
}

std::optional<Dim> dimension_knowing(std::string_view word) {
  const std::size_t slash = word.find('/');
  const bool money = is_currency_code(word.substr(0, slash));
  if (money && slash == word.npos && word != "IPM" && word != "CFH") return dim::money;
  for (const UnitTable& table : unit_tables) {
    if (holds_money(table.dimension) ? money && slash != word.npos && has_word(table, word.substr(slash + 1))
                                     : has_word(table, word))
      return table.dimension;
  }
  return std::nullopt;
}

std::span<const UnitWord> unit_words(Dim dimension) {
  const UnitTable* table = table_of(dimension);
  return table ? table->words : std::span<const UnitWord>{};
}

std::string_view dimension_name(Dim dimension) {
  const UnitTable* table = table_of(dimension);
  return table ? table->name : "quantity";
}

std::string a_dimension(Dim dimension) {
  const std::string name(dimension_name(dimension));
  return (std::string_view("aeiou").find(name[0]) != std::string_view::npos ? "an " : "a ") + name;
}

std::string list_of_units(Dim dimension) {
  if (dimension == dim::money) return "EUR, USD or another ISO currency code";
  std::string list;
  for (const UnitWord& unit : unit_words(dimension)) {
    // Second spellings with marks beyond ASCII would only lengthen the list.
    const bool plain =
        dimension == dim::temperature || dimension == dim::angle || count_characters(unit.word) == unit.word.size();
    if (!plain) continue;
    if (!list.empty()) list += ", ";
    if (holds_money(dimension)) list += "EUR/";
    list += unit.word;
  }
  return list;
}

}  // namespace seambook
