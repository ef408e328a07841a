// A job file changed as a fuzzer's bytes say: values put in each other's places, left out, doubled, swapped, or made
// extreme. What comes out is YAML again, and often a job.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "text/tree.hpp"

namespace seambook::fuzz {

/// A tree that owns its parts, so that they can be moved about. In a map, children alternate key, value.
struct Part {
  Kind kind = Kind::nothing;
  std::string text;
  std::vector<Part> children;
};

inline Part owned(Value value) {
  Part part{value.kind(), std::string(value.text()), {}};
  for (Value child = value.first(); child; child = child.next()) part.children.push_back(owned(child));
  return part;
}

inline void append_yaml(std::string& out, const Part& part) {
  if (part.kind == Kind::scalar) {
    out += '"';
    for (const char c : part.text) {
      if (c == '"' || c == '\\') out += '\\';
      out += c;
    }
    out += '"';
  } else if (part.kind == Kind::list || part.kind == Kind::map) {
    const bool map = part.kind == Kind::map;
    out += map ? "{" : "[";
    for (std::size_t at = 0; at < part.children.size(); ++at) {
      append_yaml(out, part.children[at]);
      out += map && at % 2 == 0 ? ": " : ",\n ";
    }
    out += map ? "}" : "]";
  }
}

/// Bytes in turn; zeros once they are used up.
struct Bytes {
  std::span<const std::uint8_t> rest;
  std::uint8_t next() {
    if (rest.empty()) return 0;
    const std::uint8_t byte = rest.front();
    rest = rest.subspan(1);
    return byte;
  }
  std::size_t below(std::size_t count) {
    const std::size_t high = next();
    return count == 0 ? 0 : (high * 256 + next()) % count;
  }
};

inline void collect(Part& part, std::vector<Part*>& scalars, std::vector<Part*>& groups) {
  if (part.kind == Kind::list || part.kind == Kind::map) groups.push_back(&part);
  const bool map = part.kind == Kind::map;
  for (std::size_t at = 0; at < part.children.size(); ++at) {
    if (map && at % 2 == 0) continue;
    Part& child = part.children[at];
    if (child.kind == Kind::scalar) scalars.push_back(&child);
    collect(child, scalars, groups);
  }
}

inline std::string extreme_word(Bytes& bytes) {
  static const std::array<std::string, 24> words = {
      "0",      "1",         "1000000000", "999999999", "0 mm",  "1 mm",    "0.0001 mm", "1000000 mm",
      "100 %",  "99.9999 %", "0 %",        "true",      "false", "none",    "PF",        "2030-02-28",
      "90 deg", "179.9 deg", "1 EUR each", "0.01 EUR",  "[]",    "backing", "staggered", "1000000000 EUR once"};
  const std::size_t at = bytes.below(words.size() + 2);
  if (at < words.size()) return words[at];
  const std::size_t digits = 1 + bytes.next();
  return at == words.size() ? "1" + std::string(digits, '0') + " mm" : "0." + std::string(digits, '0') + "1 mm";
}

/// The same unit behind another number.
inline void change_number(std::string& text, Bytes& bytes) {
  const std::size_t digit = text.find_first_of("0123456789");
  if (digit == std::string::npos) return;
  switch (bytes.next() % 6) {
    case 0:
      text.insert(digit, 1, static_cast<char>('1' + bytes.next() % 9));
      break;
    case 1:
      text[digit] = static_cast<char>('0' + bytes.next() % 10);
      break;
    case 2:
      text.insert(digit, "0.");
      break;
    case 3:
      text.insert(digit + 1, bytes.next() % 64, '0');
      break;
    case 4:
      text.insert(digit, "0." + std::string(bytes.next(), '0'));
      break;
    default:
      text.erase(digit, 1);
  }
}

inline void change_group(Part& group, Bytes& bytes) {
  const std::size_t step = group.kind == Kind::map ? 2 : 1, entries = group.children.size() / step;
  if (entries == 0) return;
  const auto first = [&](std::size_t entry) {
    return group.children.begin() + static_cast<std::ptrdiff_t>(entry * step);
  };
  const std::size_t at = bytes.below(entries), other = bytes.below(entries);
  switch (bytes.next() % 3) {
    case 0:
      group.children.erase(first(at), first(at + 1));
      break;
    case 1:
      std::swap(*(first(at) + static_cast<std::ptrdiff_t>(step - 1)),
                *(first(other) + static_cast<std::ptrdiff_t>(step - 1)));
      break;
    default:
      if (step == 1 && group.children.size() < 40) group.children.push_back(Part(*first(at)));
  }
}

/// A few changes to `job`, as YAML.
inline std::string mutated(const Part& job, Bytes& bytes) {
  Part changed = job;
  for (std::size_t changes = 1 + bytes.next() % 8; changes > 0; --changes) {
    std::vector<Part*> scalars, groups;
    collect(changed, scalars, groups);
    const std::uint8_t what = bytes.next() % 8;
    if (what < 3 && !groups.empty()) {
      change_group(*groups[bytes.below(groups.size())], bytes);
    } else if (!scalars.empty()) {
      Part& scalar = *scalars[bytes.below(scalars.size())];
      if (what < 5) change_number(scalar.text, bytes);
      if (what == 5) scalar.text = extreme_word(bytes);
      if (what > 5) scalar.text = std::string(scalars[bytes.below(scalars.size())]->text);
    }
  }
  std::string text;
  append_yaml(text, changed);
  return text;
}

}  // namespace seambook::fuzz
