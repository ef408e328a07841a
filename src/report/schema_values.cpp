#include "report/schema_values.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "read/opening.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

using SchemaJson = nlohmann::ordered_json;

// As text/number_words reads numbers: decimals, fractions, whole numbers with a fraction behind them.
constexpr std::string_view fraction_pattern = "[1-9][0-9]{0,5}/[1-9][0-9]{0,5}", vulgar_pattern = "[½¼¾⅛⅜⅝⅞⅓⅔]";

std::string number_pattern() {
  const std::string whole = "(?:0|[1-9][0-9]*)";
  return fmt::format("(?:{0}(?:(?:-|\\s+){1}|(?:-|\\s*){2})|{1}|{2}|{0}(?:\\.[0-9]+)?|\\.[0-9]+)", whole,
                     fraction_pattern, vulgar_pattern);
}

std::string escaped(std::string_view word) {
  std::string out;
  for (const char c : word) {
    if (std::string_view("\\^$.|?*+()[]{}/").find(c) != std::string_view::npos && c != '/') out += '\\';
    out += c == ' ' ? std::string("\\s*") : std::string(1, c);
  }
  return out;
}

/// The units of a dimension, one of which must stand: longer ones first, for readers of patterns.
std::string unit_pattern(Dim dimension) {
  std::string words;
  for (const UnitWord& unit : unit_words(dimension)) words += (words.empty() ? "" : "|") + escaped(unit.word);
  if (dimension == dim::money) return "[A-Z]{3}";
  return holds_money(dimension) ? "[A-Z]{3}\\s*/\\s*(?:" + words + ")" : "(?:" + words + ")";
}

/// Bare numbers stand for shares, and for what `units` of the file can say.
bool may_be_bare(Dim dimension) {
  if (dimension == dim::ratio) return true;
  const std::vector<FieldInfo> units = unit_fields();
  return std::any_of(units.begin(), units.end(), [&](const FieldInfo& unit) { return unit.dim == dimension; });
}

std::string amount_pattern(const FieldInfo& info) {
  const std::string positive = info.may_be_zero ? "" : "(?=[0-9./ -]*[1-9½¼¾⅛⅜⅝⅞⅓⅔])";
  std::string pattern;
  const auto add = [&](Dim dimension) {
    const char* optional = may_be_bare(dimension) ? "?" : "";
    pattern += fmt::format("{}(?:\\s*{}){}", pattern.empty() ? "" : "|", unit_pattern(dimension), optional);
  };
  add(info.dim);
  for (const Dim other : info.or_dims) add(other);
  // `4'-6 1/2"`, `4 ft 6 in`
  const std::string feet = "[1-9][0-9]*\\s*(?:'|′|feet|ft)\\s*-?\\s*";
  const std::string inches =
      info.dim == dim::length ? fmt::format("|{}{}\\s*(?:\"|″|inches|inch|in)", feet, number_pattern()) : std::string();
  return fmt::format("^\\s*(?:{}{}(?:{}){})\\s*$", positive, number_pattern(), pattern, inches);
}

constexpr const char* date_pattern = "[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])";
constexpr const char* clock_pattern =
    "(?:(?:[01]?[0-9]|2[0-3]):[0-5][0-9]|(?:0?[1-9]|1[0-2]):[0-5][0-9]\\s*(?:AM|am|PM|pm))";

SchemaJson text_schema(const std::string& pattern) { return {{"type", "string"}, {"pattern", pattern}}; }

SchemaJson enumerated(std::span<const std::string_view> words) {
  SchemaJson list = SchemaJson::array();
  for (const std::string_view word : words) list.push_back(word);
  return {{"enum", std::move(list)}};
}

}  // namespace

std::string word_schema(const FieldInfo& info) {
  if (!info.choices.empty()) return enumerated(info.choices).dump();
  if (!info.known.empty()) return enumerated(info.known).dump();
  if (!(info.dim == dim::ratio)) {  // a key of `units`
    SchemaJson list = SchemaJson::array();
    for (const UnitWord& unit : unit_words(info.dim)) list.push_back(unit.word);
    return SchemaJson{{"enum", std::move(list)}}.dump();
  }
  return SchemaJson{{"type", {"string", "number", "boolean"}}, {"pattern", "\\S"}}.dump();
}

std::string count_schema(const FieldInfo& info) {
  if (!info.counted.empty())
    return text_schema(fmt::format("^\\s*[1-9][0-9]*\\s*{}?\\s*$", escaped(info.counted))).dump();
  return SchemaJson{{"type", "integer"}, {"minimum", info.may_be_zero ? 0 : 1}, {"maximum", info.most}}.dump();
}

std::string day_schema(Shape shape) {
  switch (shape) {
    case Shape::clock:
      return text_schema(fmt::format("^\\s*{}\\s*$", clock_pattern)).dump();
    case Shape::moment:
      return text_schema(fmt::format("^\\s*{}[ T]\\s*{}\\s*$", date_pattern, clock_pattern)).dump();
    case Shape::day:
      return text_schema(fmt::format("^\\s*{}(?:[ T]\\s*{})?\\s*$", date_pattern, clock_pattern)).dump();
    default:
      return text_schema(fmt::format("^\\s*{}\\s*$", date_pattern)).dump();
  }
}

std::string amount_schema(const FieldInfo& info) {
  SchemaJson text = text_schema(info.below_whole ? "^\\s*(?:[0-9]{1,2}(?:\\.[0-9]+)?\\s*%|0?\\.[0-9]+|0)\\s*$"
                                                 : amount_pattern(info));
  if (!may_be_bare(info.dim)) return text.dump();
  SchemaJson number = {{"type", "number"}};
  number[info.may_be_zero ? "minimum" : "exclusiveMinimum"] = 0;
  if (info.below_whole) number["exclusiveMaximum"] = 1;
  return SchemaJson{{"anyOf", {std::move(text), std::move(number)}}}.dump();
}

std::string priced_schema(const FieldInfo& info) {
  const std::string price = fmt::format("{}\\s*[A-Z]{{3}}\\s*(?:each|per lot|once)", number_pattern());
  const std::string instead = info.instead.empty() ? "" : "|" + escaped(info.instead);
  return text_schema(fmt::format("^\\s*(?:{}{})\\s*$", price, instead)).dump();
}

std::string amount_name(const FieldInfo& info) {
  std::string name(dimension_name(info.dim));
  for (const Dim other : info.or_dims) name += "_or_" + std::string(dimension_name(other));
  std::replace(name.begin(), name.end(), ' ', '_');
  if (info.below_whole) return name + "_below_whole";
  return info.may_be_zero ? name + "_or_zero" : name;
}

}  // namespace seambook
