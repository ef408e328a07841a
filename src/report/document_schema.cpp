#include <cassert>
#include <nlohmann/json.hpp>

#include "report/document_keys.hpp"
#include "report/schema.hpp"

namespace seambook {
namespace {

using DocumentJson = nlohmann::ordered_json;

const DocumentObject* object_named(std::string_view name) {
  for (const auto& table : {document_objects(), shop_document_objects()})
    for (const DocumentObject& object : table)
      if (object.name == name) return &object;
  return nullptr;
}

/// Objects that are met are made definitions.
class DocumentMaker {
 public:
  DocumentJson object(const DocumentObject& of, std::span<const DocumentKey> more = {});
  DocumentJson take_definitions() { return std::move(definitions_); }

 private:
  DocumentJson type(std::string_view word);

  DocumentJson definitions_ = DocumentJson::object();
};

DocumentJson DocumentMaker::type(std::string_view word) {
  if (word.starts_with("[]")) return {{"type", "array"}, {"items", type(word.substr(2))}};
  if (word.starts_with("{}")) return {{"type", "object"}, {"additionalProperties", type(word.substr(2))}};
  if (word.ends_with("?")) return {{"type", {word.substr(0, word.size() - 1), "null"}}};
  const DocumentObject* found = object_named(word);
  if (!found) return {{"type", word}};
  const std::string name(word);
  if (!definitions_.contains(name)) {
    definitions_[name] = nullptr;
    definitions_[name] = object(*found);
  }
  return {{"$ref", "#/definitions/" + name}};
}

DocumentJson DocumentMaker::object(const DocumentObject& of, std::span<const DocumentKey> more) {
  DocumentJson json = {{"type", "object"}, {"description", of.about}};
  DocumentJson required = DocumentJson::array(), properties = DocumentJson::object();
  for (const std::span<const DocumentKey> keys : {of.keys, more}) {
    for (const DocumentKey& key : keys) {
      DocumentJson property = type(key.type);
      if (property.contains("$ref")) property = {{"allOf", DocumentJson::array({property})}};
      if (!key.about.empty()) property["description"] = key.about;
      properties[std::string(key.key)] = std::move(property);
      if (key.always) required.push_back(key.key);
    }
  }
  json["required"] = std::move(required);
  json["additionalProperties"] = false;
  json["properties"] = std::move(properties);
  return json;
}

}  // namespace

std::string document_schema(std::string_view command) {
  constexpr DocumentKey common[] = {{"format", "integer", "of this document: 1"},
                                    {"program", "program", ""},
                                    {"diagnostics", "[]diagnostic", "all that was told, in order"}};
  DocumentMaker maker;
  DocumentJson all = DocumentJson::array();
  for (const DocumentObject& document : documents())
    if (document.name == command) all.push_back(maker.object(document, common));
  assert(!all.empty());
  DocumentJson json = {{"$schema", "http://json-schema.org/draft-07/schema#"},
                       {"title", "what seambook " + std::string(command) + " prints with --json"}};
  if (all.size() == 1) {
    for (auto& [key, part] : all.front().items()) json[key] = std::move(part);
  } else {
    json["anyOf"] = std::move(all);
  }
  json["definitions"] = maker.take_definitions();
  return json.dump(1) + "\n";
}

}  // namespace seambook
