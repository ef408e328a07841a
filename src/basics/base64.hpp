// Bytes as letters (RFC 4648, with padding), for files that are no text inside JSON.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace seambook {

std::string base64_of(std::string_view bytes);
/// The bytes; nothing when the letters are not what base64_of makes.
std::optional<std::string> bytes_of_base64(std::string_view letters);

}  // namespace seambook
