#include "report/json_document.hpp"

#include <nlohmann/json.hpp>

namespace seambook {
namespace {

using Json = nlohmann::ordered_json;

std::string json_text(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace); }

/// `text` two columns further in. JSON strings hold no bare line breaks, so every line is one of the layout.
std::string indented(const std::string& text) {
  std::string out;
  for (const char c : text) {
    out += c;
    if (c == '\n') out += "  ";
  }
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

}  // namespace

std::string json_string(const std::string& text) { return json_text(Json(text)); }

std::string json_list(const std::vector<std::string>& values) {
  std::string out = "[";
  for (std::size_t i = 0; i < values.size(); ++i) out += (i > 0 ? ",\n  " : "\n  ") + indented(values[i]);
  return out + (values.empty() ? "]" : "\n]");
}

std::string json_document(const std::vector<JsonMember>& members, const Diagnostics& places,
                          std::span<const Diagnostic> list) {
  Json diagnostics = Json::array();
  for (const Diagnostic& d : list) diagnostics.push_back(diagnostic_json(places, d));
  std::vector<JsonMember> all{{"format", "1"},
                              {"program", json_text(Json{{"name", "seambook"}, {"version", SEAMBOOK_VERSION}})}};
  all.insert(all.end(), members.begin(), members.end());
  all.push_back({"diagnostics", json_text(diagnostics)});
  std::string out = "{";
  for (std::size_t i = 0; i < all.size(); ++i) {
    out += (i > 0 ? ",\n  " : "\n  ") + json_string(all[i].key) + ": " + indented(all[i].value);
  }
  return out + "\n}\n";
}

}  // namespace seambook
