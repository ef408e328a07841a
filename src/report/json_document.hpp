// The document that every --json prints: format and program first, the command's own members, the diagnostics last.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

/// A member of the document; `value` is JSON text.
struct JsonMember {
  std::string key, value;
};

/// Bytes of the author's text that are no UTF-8 come out as U+FFFD. `list` points into the files of `places`. Ends with
/// a line break.
std::string json_document(const std::vector<JsonMember>& members, const Diagnostics& places,
                          std::span<const Diagnostic> list);
/// The same document printed bit by bit, its first own member a list that may be long: begin, each item after what
/// leads to it, end with the members that follow, `diagnostics` the last of them.
std::string json_list_begin(const std::string& key);
std::string json_list_next(bool first);
/// JSON text as an item of that list: its further lines are `json_item_columns` in.
inline constexpr std::size_t json_item_columns = 4;
std::string json_list_item(const std::string& value);
std::string json_list_end(bool empty, const std::vector<JsonMember>& members);
/// The items of `diagnostics`, each as JSON text.
std::vector<std::string> json_diagnostics(const Diagnostics& places, std::span<const Diagnostic> list);
/// A JSON list of values that are JSON text.
std::string json_list(const std::vector<std::string>& values);
/// A JSON string.
std::string json_string(const std::string& text);

}  // namespace seambook
