// Any bytes as a YAML file: no crash or hang, and what is read keeps what text/tree.hpp promises.
#include <cstdint>
#include <cstdlib>
#include <set>

#include "basics/utf8.hpp"
#include "text/tree.hpp"

namespace {

void require(bool holds) {
  if (!holds) std::abort();
}

void check_place(const seambook::SourceFile& source, seambook::Place place) {
  require(place.line >= 1 && place.column >= 1);
  std::size_t lines = 1;
  for (const char c : source.text) lines += c == '\n' ? 1 : 0;
  require(place.line <= lines);
}

void check_value(seambook::Value value, const seambook::SourceFile& source, std::size_t depth) {
  require(depth <= seambook::limit::depth);
  check_place(source, value.place());
  require(value.text().size() <= seambook::limit::scalar_bytes);
  for (std::size_t at = 0; at < value.text().size();) {
    const seambook::Character c = seambook::character_at(value.text(), at);
    require(c.valid);
    at += c.bytes;
  }
  std::set<std::string_view> keys;
  bool key = true;
  for (seambook::Value child = value.first(); child; child = child.next(), key = !key) {
    check_value(child, source, depth + 1);
    if (value.kind() != seambook::Kind::map || !key) continue;
    require(child.kind() == seambook::Kind::scalar && keys.insert(child.text()).second);
  }
  require(value.kind() != seambook::Kind::map || key);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  seambook::Diagnostics diagnostics;
  const auto file = diagnostics.add_file("fuzz.yaml", std::string(reinterpret_cast<const char*>(data), size));
  const auto tree = seambook::parse_yaml(file, diagnostics);
  require(tree.has_value() || diagnostics.has_errors());
  if (tree) check_value(seambook::Value(*tree, 0), diagnostics.files[file], 0);
  for (const char c : seambook::render(diagnostics)) require(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
  return 0;
}
