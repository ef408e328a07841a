#include "text/json_bounds.hpp"

#include "text/tree.hpp"

namespace seambook {

bool json_within_bounds(std::string_view text) {
  std::size_t depth = 0, values = 0;
  bool inside_string = false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    if (inside_string && c == '\\') ++at;
    if (c == '"') inside_string = !inside_string;
    if (inside_string) continue;
    if (c == ',' || c == '[' || c == '{') ++values;
    if (c == '[' || c == '{') ++depth;
    if ((c == ']' || c == '}') && depth > 0) --depth;
    if (depth > limit::depth || values > limit::json_values) return false;
  }
  return true;
}

}  // namespace seambook
