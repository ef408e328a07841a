#include "report/schema.hpp"

#include <map>
#include <nlohmann/json.hpp>

#include "report/schema_values.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

using SchemaJson = nlohmann::ordered_json;
using Section = std::vector<FieldInfo> (*)();

/// Definitions are named by the key under which they are met first; amounts by their dimension.
class SchemaMaker {
 public:
  SchemaJson section(const std::vector<FieldInfo>& table);
  SchemaJson take_definitions() { return std::move(definitions_); }

 private:
  SchemaJson value(const FieldInfo& info);
  SchemaJson amount(const FieldInfo& info);
  SchemaJson inside(const FieldInfo& info);
  SchemaJson property(const FieldInfo& info);
  static SchemaJson ref(const std::string& name) { return {{"$ref", "#/definitions/" + name}}; }

  SchemaJson definitions_ = SchemaJson::object();
  std::map<Section, std::string> names_;
};

SchemaJson list_of(SchemaJson entry, std::size_t least = 1) {
  SchemaJson list = {{"type", "array"}, {"items", std::move(entry)}};
  list["minItems"] = least;
  return list;
}

SchemaJson parsed(const std::string& text) { return SchemaJson::parse(text); }

SchemaJson any_of(std::vector<SchemaJson> all) { return {{"anyOf", std::move(all)}}; }

SchemaJson SchemaMaker::amount(const FieldInfo& info) {
  const std::string name = amount_name(info);
  if (!definitions_.contains(name)) definitions_[name] = parsed(amount_schema(info));
  if (info.instead.empty()) return ref(name);
  return any_of({ref(name), {{"const", info.instead}}});
}

SchemaJson SchemaMaker::inside(const FieldInfo& info) {
  if (const auto known = names_.find(info.inside); known != names_.end()) return ref(known->second);
  std::string name(info.key);
  while (definitions_.contains(name)) name += "_";
  names_[info.inside] = name;
  definitions_[name] = nullptr;  // takes the place, so that definitions stand in the order in which they are met
  definitions_[name] = section(info.inside());
  return ref(name);
}

SchemaJson SchemaMaker::value(const FieldInfo& info) {
  switch (info.shape) {
    case Shape::word:
      return parsed(word_schema(info));
    case Shape::words:
      return any_of({parsed(word_schema(info)), list_of(parsed(word_schema(info)))});
    case Shape::amount:
      return amount(info);
    case Shape::span: {
      SchemaJson two = list_of(amount(info), 2);
      two["maxItems"] = 2;
      return any_of({amount(info), std::move(two)});
    }
    case Shape::count:
      return parsed(count_schema(info));
    case Shape::counts:
      return any_of({parsed(count_schema(info)), list_of(parsed(count_schema(info)))});
    case Shape::count_or_list:
      return any_of({parsed(count_schema(info)), list_of(inside(info))});
    case Shape::flag:
      return {{"type", "boolean"}};
    case Shape::flag_or_section:
      return any_of({{{"type", "boolean"}}, inside(info)});
    case Shape::dates:
      return any_of({parsed(day_schema(Shape::date)), list_of(parsed(day_schema(Shape::date)))});
    case Shape::date:
    case Shape::clock:
    case Shape::moment:
    case Shape::day:
      return parsed(day_schema(info.shape));
    case Shape::amount_or_section:
      return any_of({amount(info), inside(info)});
    case Shape::section:
      return inside(info);
    case Shape::sections:
      return list_of(inside(info));
    case Shape::word_or_sections:
      return any_of(
          {parsed(word_schema(info)), inside(info), list_of(any_of({parsed(word_schema(info)), inside(info)}))});
    case Shape::priced:
      return parsed(priced_schema(info));
    case Shape::priced_sections:
      return any_of(
          {parsed(priced_schema(info)), inside(info), list_of(any_of({parsed(priced_schema(info)), inside(info)}))});
    case Shape::named_words:
      return {{"type", "object"}, {"minProperties", 1}, {"additionalProperties", parsed(word_schema(info))}};
  }
  return true;
}

bool has_unit(const FieldInfo& info) {
  return info.shape == Shape::amount || info.shape == Shape::span || info.shape == Shape::amount_or_section;
}

/// What a reader of the description has to know of units.
std::string units_of(const FieldInfo& info) {
  std::string units = list_of_units(info.dim);
  for (const Dim other : info.or_dims) units += ", " + list_of_units(other);
  if (!info.instead.empty()) units += " (or " + std::string(info.instead) + ")";
  return units;
}

SchemaJson SchemaMaker::property(const FieldInfo& info) {
  SchemaJson of_value = value(info);
  SchemaJson json;
  json["description"] = std::string(about_without_examples(info));
  if (has_unit(info)) json["description"] = json["description"].get<std::string>() + ". Unit: " + units_of(info);
  for (const std::string& example : schema_examples(info)) json["examples"].push_back(parsed(example));
  // What stands beside a reference is not read in draft-07.
  if (of_value.contains("$ref")) of_value = SchemaJson{{"allOf", SchemaJson::array({std::move(of_value)})}};
  for (auto& [key, part] : of_value.items()) json[key] = std::move(part);
  return json;
}

SchemaJson SchemaMaker::section(const std::vector<FieldInfo>& table) {
  SchemaJson json = {{"type", "object"}};
  SchemaJson properties = SchemaJson::object(), required = SchemaJson::array();
  for (const FieldInfo& info : table) {
    properties[std::string(info.key)] = property(info);
    if (info.required) required.push_back(info.key);
  }
  if (!required.empty()) json["required"] = std::move(required);
  json["minProperties"] = 1;
  json["additionalProperties"] = false;
  json["properties"] = std::move(properties);
  return json;
}

}  // namespace

std::string file_schema(const std::string& title, const std::string& about, const std::vector<FieldInfo>& table) {
  SchemaMaker maker;
  SchemaJson root = maker.section(table);
  root["properties"]["format"] = {{"description", "the first key of every file"}, {"const", 1}};
  SchemaJson required = SchemaJson::array({"format"});
  if (root.contains("required")) required.insert(required.end(), root["required"].begin(), root["required"].end());
  root["required"] = std::move(required);
  SchemaJson json = {{"$schema", "http://json-schema.org/draft-07/schema#"}, {"title", title}, {"description", about}};
  for (auto& [key, part] : root.items()) json[key] = std::move(part);
  json["definitions"] = maker.take_definitions();
  return json.dump(1) + "\n";
}

}  // namespace seambook
