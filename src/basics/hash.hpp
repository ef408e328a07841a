// A short print of some bytes, to tell two inputs apart: FNV-1a, 64 bits, as 16 hexadecimal digits.
// Not made to withstand somebody who wants two inputs to look alike.
// Source of the constants: Fowler, Noll, Vo and Eastlake, "The FNV Non-Cryptographic Hash Algorithm", IETF draft.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace seambook {

struct Hash {
  std::uint64_t value = 14695981039346656037u;

  /// Adds `text` and an end mark, so that (`ab`, `c`) and (`a`, `bc`) differ.
  void add(std::string_view text) {
    constexpr std::uint64_t prime = 1099511628211u;
    for (const char c : text) value = (value ^ static_cast<unsigned char>(c)) * prime;
    value *= prime;
  }
};

inline std::string hex(const Hash& hash) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  for (int shift = 60; shift >= 0; shift -= 4) text += digits[(hash.value >> shift) & 0xfu];
  return text;
}

}  // namespace seambook
