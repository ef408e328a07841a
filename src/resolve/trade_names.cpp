#include "resolve/trade_names.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "read/known_words.hpp"
#include "resolve/names.hpp"

namespace seambook {
namespace {

// Welds of ISO 2553 and AWS A2.4 that authors may rightly ask for.
constexpr std::string_view welds_to_come[] = {"spot", "seam", "stud", "corner", "projection"};

}  // namespace

std::optional<FillerForm> find_filler_form(Diagnostics& diagnostics, const Word& word) {
  const auto found = std::find(std::begin(filler_forms), std::end(filler_forms), word.text);
  if (found != std::end(filler_forms)) return static_cast<FillerForm>(found - std::begin(filler_forms));
  refuse_unknown(diagnostics, word, "filler form", {std::begin(filler_forms), std::end(filler_forms)});
  return std::nullopt;
}

std::optional<WeldKind> find_weld_kind(Diagnostics& diagnostics, const Word& word) {
  std::vector<std::string_view> known;
  for (std::size_t i = 0; i < weld_kinds; ++i) {
    known.push_back(weld_key(static_cast<WeldKind>(i)));
    if (known.back() == word.text) return static_cast<WeldKind>(i);
  }
  const std::string these = fmt::format("these are: {}", joined_with_and({known.begin(), known.end()}));
  if (std::find(std::begin(welds_to_come), std::end(welds_to_come), word.text) != std::end(welds_to_come))
    diagnostics.error(word.place, fmt::format("weld '{}' is not built yet", word.text), these);
  else if (nearest(word.text, known).empty())
    diagnostics.error(word.place, fmt::format("unknown weld '{}'", word.text), these);
  else
    refuse_unknown(diagnostics, word, "weld", known);
  return std::nullopt;
}

void refuse_unknown_process(Diagnostics& diagnostics, const Word& word) {
  diagnostics.error(word.place, fmt::format("unknown process '{}'", word.text),
                    "write its ISO 4063 number or AWS letters: 111 SMAW, 114 FCAW-S, 121 SAW, 131 MIG, 135 GMAW, "
                    "136 FCAW, 138 GMAW-C, 141 GTAW, 15 PAW, 521 LBW");
}

std::optional<std::size_t> find_process(Diagnostics& diagnostics, const std::vector<Process>& processes,
                                        const Word& word) {
  const std::string number = process_number(word.text);
  if (number.empty()) {
    refuse_unknown_process(diagnostics, word);
    return std::nullopt;
  }
  for (std::size_t i = 0; i < processes.size(); ++i)
    if (processes[i].number == number) return i;
  diagnostics.error(word.place, fmt::format("process {} is not in the rate book", number), "add it to 'processes'");
  return std::nullopt;
}

void refuse_unknown_position(Diagnostics& diagnostics, const Word& word) {
  diagnostics.error(word.place, fmt::format("unknown position '{}'", word.text),
                    "write it as in ISO 6947 (PA, PB ...) or AWS (2F for fillets, 3G for other welds ...)");
}

}  // namespace seambook
