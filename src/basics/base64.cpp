#include "basics/base64.hpp"

#include <algorithm>
#include <cstdint>

namespace seambook {
namespace {

constexpr std::string_view base64_letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

}  // namespace

std::string base64_of(std::string_view bytes) {
  std::string letters;
  letters.reserve((bytes.size() + 2) / 3 * 4);
  for (; !bytes.empty(); bytes.remove_prefix(std::min<std::size_t>(3, bytes.size()))) {
    std::uint32_t group = 0;
    for (std::size_t i = 0; i < 3; ++i)
      group = group << 8 | (i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U);
    for (std::size_t i = 0; i < 4; ++i)
      letters += i <= bytes.size() ? base64_letters[(group >> (18 - 6 * i)) & 63U] : '=';
  }
  return letters;
}

std::optional<std::string> bytes_of_base64(std::string_view letters) {
  std::string bytes;
  std::size_t whole = letters.size();
  while (whole > 0 && letters.size() - whole < 2 && letters[whole - 1] == '=') --whole;
  std::uint32_t group = 0;
  unsigned bits = 0;
  for (const char letter : letters.substr(0, whole)) {
    const std::size_t value = base64_letters.find(letter);
    if (value == base64_letters.npos) return std::nullopt;
    group = group << 6 | static_cast<std::uint32_t>(value);
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes += static_cast<char>(group >> bits & 0xFFU);
  }
  if (base64_of(bytes) != letters) return std::nullopt;
  return bytes;
}

}  // namespace seambook
