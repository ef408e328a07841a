#include "read/opening.hpp"

#include "text/number_words.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

constexpr std::string_view format_number = "1";

constexpr FieldInfo unit_field(std::string_view key, std::string_view about, Dim dimension) {
  return {.key = key, .about = about, .dim = dimension};
}

constexpr FieldInfo unit_infos[] = {
    unit_field("length", "of bare lengths: mm", dim::length),
    unit_field("area", "of bare areas: mm2", dim::area),
    unit_field("volume", "of bare volumes: L", dim::volume),
    unit_field("mass", "of bare masses: kg", dim::mass),
    unit_field("time", "of bare times: min", dim::time),
    unit_field("speed", "of bare speeds: mm/min", dim::speed),
    unit_field("flow", "of bare gas flows: L/min", dim::flow),
    unit_field("angle", "of bare angles: deg", dim::angle),
    unit_field("current", "of bare currents: A", dim::current),
    unit_field("voltage", "of bare voltages: V", dim::voltage),
    unit_field("power", "of bare powers: kW", dim::power),
    unit_field("density", "of bare densities: g/cm3", dim::density),
    unit_field("pace", "of bare times per length: min/m", dim::pace),
};

void read_unit(Reading& reading, Value key, const FieldInfo& info) {
  const Value value = key.next();
  if (value.kind() == Kind::nothing) return refuse_nothing(reading, key.place(), key.text());
  const std::optional<Word> word = word_at(reading, value, info);
  if (!word) return;
  if (const std::optional<UnitWord> unit = find_unit(info.dim, word->text))
    reading.units.entries.push_back({info.dim, unit->si, word->text});
  else
    refuse_value(reading, value.place(), info, "unknown unit " + quoted(word->text),
                 "it may be: " + list_of_units(info.dim));
}

void read_units(Reading& reading, Value units) {
  if (!expect_kind(reading, units, {.key = "units", .about = "{length: mm}", .shape = Shape::section}, Kind::map))
    return;
  for (Value key = units.first(); key && !reading.diagnostics.full(); key = key.next().next()) {
    const FieldInfo* found = nullptr;
    std::vector<std::string_view> known;
    for (const FieldInfo& info : unit_infos) {
      known.push_back(info.key);
      if (info.key == key.text()) found = &info;
    }
    if (found)
      read_unit(reading, key, *found);
    else
      refuse_unknown_key(reading, key, known);
  }
}

bool read_format(Reading& reading, Value root, Value key, bool is_first) {
  const std::string hint = "begin the file with 'format: " + std::string(format_number) + "'";
  if (!key) {
    reading.diagnostics.error(root.place(), "the file does not say its format", hint);
    return true;
  }
  const Value value = key.next();
  if (value.kind() == Kind::nothing) return true;  // said when the keys are read
  const std::string_view number = value.kind() == Kind::scalar ? value.text() : "?";
  if (number != format_number) {
    reading.diagnostics.error(value.place(), "format " + quoted(number) + " is not known here",
                              "this program reads format " + std::string(format_number));
    return false;
  }
  if (!is_first) reading.diagnostics.error(key.place(), "'format' is not the first key", hint);
  return true;
}

}  // namespace

bool read_opening(Reading& reading, Value root) {
  if (root.kind() != Kind::map) {
    reading.diagnostics.error(root.place(), "the file holds no map of keys",
                              "begin it with 'format: " + std::string(format_number) + "'");
    return false;
  }
  Value format, units;
  for (Value key = root.first(); key; key = key.next().next()) {
    if (key.text() == "format") format = key;
    if (key.text() == "units") units = key.next();
  }
  if (units && units.kind() != Kind::nothing) read_units(reading, units);
  const bool is_first = format && root.first().place() == format.place();
  return read_format(reading, root, format, is_first);
}

std::vector<FieldInfo> unit_fields() { return {std::begin(unit_infos), std::end(unit_infos)}; }

}  // namespace seambook
