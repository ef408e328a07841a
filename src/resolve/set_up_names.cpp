#include "resolve/set_up_names.hpp"

#include <algorithm>
#include <iterator>

#include "read/known_words.hpp"
#include "resolve/names.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

static_assert(std::equal(std::begin(set_up_words), std::end(set_up_words), set_up_attributes.begin(),
                         set_up_attributes.end()));

bool is_cleanliness(const RateBook& book, std::string_view value) {
  return std::any_of(book.base_metals.begin(), book.base_metals.end(),
                     [&](const BaseMetal& metal) { return metal.cleanliness == value; });
}

}  // namespace

std::string find_attribute(Diagnostics& diagnostics, const Word& word) {
  const auto begin = std::begin(set_up_attributes), end = std::end(set_up_attributes);
  if (std::find(begin, end, word.text) == end) refuse_unknown(diagnostics, word, "set-up attribute", {begin, end});
  return word.text;
}

std::string find_attribute_value(Diagnostics& diagnostics, const RateBook& book, std::string_view attribute,
                                 const Word& value) {
  if (attribute == "process") {
    const auto process = find_process(diagnostics, book.processes, value);
    return process ? book.processes[*process].number : value.text;
  }
  if (value.text == "none") return value.text;
  if (attribute == "filler") find_name(diagnostics, book.fillers, &Filler::name, value, "filler");
  if (attribute == "gas") find_name(diagnostics, book.gases, &Gas::name, value, "gas");
  if (attribute == "cleanliness" && !is_cleanliness(book, value.text)) {
    std::vector<std::string_view> known_classes;
    for (const BaseMetal& metal : book.base_metals)
      if (std::find(known_classes.begin(), known_classes.end(), metal.cleanliness) == known_classes.end())
        known_classes.push_back(metal.cleanliness);
    refuse_unknown(diagnostics, value, "cleanliness", known_classes);
  }
  return value.text;
}

}  // namespace seambook
