#include "resolve/names.hpp"

#include <fmt/format.h>

namespace seambook {

void refuse_unknown(Diagnostics& diagnostics, const Word& word, std::string_view kind,
                    const std::vector<std::string_view>& known) {
  constexpr std::size_t few = 12;
  std::string hint;
  if (const std::string_view near = nearest(word.text, known); !near.empty()) {
    hint = fmt::format("did you mean '{}'?", near);
  } else if (!known.empty() && known.size() <= few) {
    hint = fmt::format("known are {}", joined_with_and({known.begin(), known.end()}));
  }
  diagnostics.error(word.place, fmt::format("unknown {} '{}'", kind, word.text), hint);
}

bool first_of_its_name(Diagnostics& diagnostics, NamesSeen& seen, const Word& word, std::string_view kind) {
  const auto [entry, added] = seen.emplace(word.text, word.place);
  if (!added)
    diagnostics.error(word.place, fmt::format("{} '{}' is given twice", kind, word.text),
                      fmt::format("first at {}", where(diagnostics, entry->second)));
  return added;
}

std::string text_of(const std::optional<Word>& word) { return word ? word->text : std::string(); }

std::vector<std::string> texts_of(const std::vector<Word>& words) {
  std::vector<std::string> texts;
  texts.reserve(words.size());
  for (const Word& word : words) texts.push_back(word.text);
  return texts;
}

std::string joined_with_and(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? " and " : ", ";
    text += words[i];
  }
  return text;
}

}  // namespace seambook
