// Names become indices: the entry of that name, or a complaint at the name's place with the nearest one known.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "read/written.hpp"

namespace seambook {

/// `unknown filler 'G3Si1-1.3'; did you mean 'G3Si1-1.2'?`; without a near one the hint lists the known, when few.
void refuse_unknown(Diagnostics&, const Word&, std::string_view kind, const std::vector<std::string_view>& known);

template <class Entry>
std::optional<std::size_t> find_name(Diagnostics& diagnostics, const std::vector<Entry>& entries,
                                     std::string Entry::*name, const Word& word, std::string_view kind) {
  for (std::size_t i = 0; i < entries.size(); ++i)
    if (entries[i].*name == word.text) return i;
  std::vector<std::string_view> known;
  known.reserve(entries.size());
  for (const Entry& entry : entries) known.push_back(entry.*name);
  refuse_unknown(diagnostics, word, kind, known);
  return std::nullopt;
}

/// Names that stood already, each with its place.
using NamesSeen = std::unordered_map<std::string, Place>;
/// Refuses a name that stood before: `filler 'X' is given twice; first at rates/materials.yaml:12:5`. True when new.
bool first_of_its_name(Diagnostics&, NamesSeen&, const Word&, std::string_view kind);
/// The word's text, or empty.
std::string text_of(const std::optional<Word>&);
std::vector<std::string> texts_of(const std::vector<Word>&);
/// `A, B and C`.
std::string joined_with_and(const std::vector<std::string>& words);

}  // namespace seambook
