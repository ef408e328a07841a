// One value near the beginning of a YAML text, without reading the rest.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace seambook {

/// The text behind the first `key` of the outermost map. Nothing when there is none before the end or before a fault;
/// what stands behind it is not looked at, so the text need not be one that parse_yaml accepts.
std::optional<std::string> first_value(std::string_view text, std::string_view key);

}  // namespace seambook
