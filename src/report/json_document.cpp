#include "report/json_document.hpp"

#include <nlohmann/json.hpp>

#include "report/json_text.hpp"

namespace seambook {
namespace {

using Json = nlohmann::ordered_json;

std::string json_text(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace); }

std::string indented(const std::string& text, std::size_t columns = 2) {
  std::string out;
  append_indented(out, text, columns);
  return out;
}

Json diagnostic_json(const Diagnostics& places, const Diagnostic& d) {
  const bool placed = d.place.file > 0 && d.place.file < places.files.size();
  Json json;
  json["level"] = level_word(d.level);
  json["file"] = placed ? Json(places.files[d.place.file].name) : Json(nullptr);
  json["line"] = d.place.line > 0 ? Json(d.place.line) : Json(nullptr);
  json["column"] = d.place.column > 0 ? Json(d.place.column) : Json(nullptr);
  if (placed && !places.files[d.place.file].sheet.empty()) json["sheet"] = places.files[d.place.file].sheet;
  json["message"] = d.message;
  json["hint"] = d.hint.empty() ? Json(nullptr) : Json(d.hint);
  return json;
}

/// The document's beginning: format and program.
std::string opening() {
  return "{\n  \"format\": 1,\n  \"program\": " +
         indented(json_text(Json{{"name", "seambook"}, {"version", SEAMBOOK_VERSION}}));
}

/// Members that follow others.
std::string members_text(const std::vector<JsonMember>& members) {
  std::string out;
  for (const JsonMember& member : members) {
    out += ",\n  ";
    out += json_text(Json(member.key));
    out += ": ";
    out += indented(member.value);
  }
  return out;
}

}  // namespace

std::string json_string(const std::string& text) { return json_text(Json(text)); }

std::string json_list(const std::vector<std::string>& values) {
  std::string out = "[";
  for (std::size_t i = 0; i < values.size(); ++i) out += (i > 0 ? ",\n  " : "\n  ") + indented(values[i]);
  return out + (values.empty() ? "]" : "\n]");
}

std::vector<std::string> json_diagnostics(const Diagnostics& places, std::span<const Diagnostic> list) {
  std::vector<std::string> values;
  values.reserve(list.size());
  for (const Diagnostic& d : list) values.push_back(json_text(diagnostic_json(places, d)));
  return values;
}

std::string json_document(const std::vector<JsonMember>& members, const Diagnostics& places,
                          std::span<const Diagnostic> list) {
  const std::string diagnostics = json_list(json_diagnostics(places, list));
  return opening() + members_text(members) + members_text({{"diagnostics", diagnostics}}) + "\n}\n";
}

std::string json_list_begin(const std::string& key) { return opening() + ",\n  " + json_string(key) + ": ["; }

std::string json_list_item(const std::string& value) { return indented(value, json_item_columns); }

std::string json_list_next(bool first) { return (first ? "\n" : ",\n") + std::string(json_item_columns, ' '); }

std::string json_list_end(bool empty, const std::vector<JsonMember>& members) {
  return (empty ? "]" : "\n  ]") + members_text(members) + "\n}\n";
}

}  // namespace seambook
