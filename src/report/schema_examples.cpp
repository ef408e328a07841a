// Examples stand in the descriptions of fields, behind the first colon outside brackets: `8 mm, or [3 mm, 10 mm]`.
#include <charconv>
#include <nlohmann/json.hpp>

#include "basics/diagnostics.hpp"
#include "report/schema_values.hpp"
#include "text/number_words.hpp"
#include "text/tree.hpp"

namespace seambook {
namespace {

using ExampleJson = nlohmann::ordered_json;

/// Where `mark` stands outside brackets and quotes, from `at` on.
std::size_t find_outside(std::string_view text, std::string_view mark, std::size_t at) {
  int depth = 0;
  bool quoted = false;
  for (; at < text.size(); ++at) {
    if (text[at] == '"') quoted = !quoted;
    if (quoted) continue;
    if (depth == 0 && text.substr(at).starts_with(mark)) return at;
    if (text[at] == '[' || text[at] == '{') ++depth;
    if (text[at] == ']' || text[at] == '}') --depth;
  }
  return text.npos;
}

/// As YAML's core schema takes a plain scalar.
ExampleJson scalar_json(Value value) {
  const std::string_view text = value.text();
  if (value.quoted()) return text;
  if (text == "true" || text == "false") return text == "true";
  const char* const end = text.data() + text.size();
  if (std::int64_t whole = 0; std::from_chars(text.data(), end, whole).ptr == end) return whole;
  if (double number = 0; std::from_chars(text.data(), end, number).ptr == end) return number;
  return text;
}

ExampleJson json_of(Value value) {
  if (value.kind() == Kind::scalar) return scalar_json(value);
  ExampleJson json = value.kind() == Kind::map ? ExampleJson::object() : ExampleJson::array();
  for (Value entry = value.first(); entry; entry = entry.next()) {
    if (value.kind() == Kind::list) {
      json.push_back(json_of(entry));
      continue;
    }
    const std::string key(entry.text());
    entry = entry.next();
    json[key] = json_of(entry);
  }
  return json;
}

/// The examples' part of a description; empty when it has none.
std::string_view examples_of(const FieldInfo& info) {
  const std::size_t colon = find_outside(info.about, ": ", 0);
  const bool spoken = !info.choices.empty() || info.shape == Shape::flag;  // the words say what there is
  return colon == std::string_view::npos || spoken ? std::string_view() : info.about.substr(colon + 2);
}

bool takes_list_only(Shape shape) { return shape == Shape::sections || shape == Shape::count_or_list; }

void add_example(std::vector<std::string>& examples, const FieldInfo& info, std::string_view piece) {
  piece = without_blanks_around(piece);
  if (piece.starts_with("or ")) piece.remove_prefix(3);
  if (piece == "a list" || piece.find("...") != piece.npos) return;
  Diagnostics scratch;
  const std::optional<Tree> tree = parse_yaml(scratch.add_file("example", std::string(piece)), scratch);
  if (!tree || tree->nodes.empty()) return;
  ExampleJson json = json_of(Value(*tree, 0));
  if (takes_list_only(info.shape) && json.is_object()) json = ExampleJson::array({std::move(json)});
  examples.push_back(json.dump());
}

}  // namespace

std::vector<std::string> schema_examples(const FieldInfo& info) {
  std::vector<std::string> examples;
  const std::string_view text = examples_of(info);
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t comma = std::min(find_outside(text, ", ", begin), text.size());
    const std::size_t word = std::min(find_outside(text, " or ", begin + 1), text.size());
    const std::size_t end = std::min(comma, word);
    add_example(examples, info, text.substr(begin, end - begin));
    begin = end + (end == comma ? 2 : 1);
  }
  return examples;
}

std::string_view about_without_examples(const FieldInfo& info) {
  const std::string_view text = examples_of(info);
  return text.empty() ? info.about : info.about.substr(0, info.about.size() - text.size() - 2);
}

}  // namespace seambook
