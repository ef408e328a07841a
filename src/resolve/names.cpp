#include "resolve/names.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace seambook {
namespace {

/// `01.4310` as `1.431`; nothing for what is no plain number.
std::string_view without_outer_zeros(std::string_view text) {
  if (text.find_first_not_of("0123456789.") != text.npos || std::count(text.begin(), text.end(), '.') > 1) return {};
  text.remove_prefix(std::min(text.find_first_not_of('0'), text.size()));
  if (text.find('.') == text.npos) return text;
  while (text.ends_with('0')) text.remove_suffix(1);
  if (text.ends_with('.')) text.remove_suffix(1);
  return text;
}

/// The known name that differs in zeros at its ends alone; empty when there is none.
std::string_view same_but_for_zeros(std::string_view word, const std::vector<std::string_view>& known) {
  const std::string_view bare = without_outer_zeros(word);
  const auto found = std::find_if(known.begin(), known.end(),
                                  [&](std::string_view name) { return without_outer_zeros(name) == bare; });
  return bare.empty() || found == known.end() ? std::string_view() : *found;
}

bool is_of_a_table(const Diagnostics& diagnostics, Place place) {
  const SourceFile& file = diagnostics.files[place.file];
  return !file.sheet.empty() || file.name.ends_with(".csv");
}

}  // namespace

void refuse_unknown(Diagnostics& diagnostics, const Word& word, std::string_view kind,
                    const std::vector<std::string_view>& known) {
  constexpr std::size_t few = 12;
  std::string hint;
  if (const std::string_view same = same_but_for_zeros(word.text, known); !same.empty()) {
    hint = fmt::format("did you mean '{}'?", same);
    if (is_of_a_table(diagnostics, word.place))
      hint += " A spreadsheet program drops zeros at the ends of a number: format the column as text";
  } else if (const std::string_view near = nearest(word.text, known); !near.empty()) {
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
