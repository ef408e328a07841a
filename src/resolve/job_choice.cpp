// The procedure of a joint that names none, chosen from the rate book's table; and why a procedure does not suit a
// joint.
#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <tuple>

#include "resolve/job_draft.hpp"
#include "resolve/names.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::size_t runners_up_named = 3, misses_named = 3;

/// Sizes from different units meet with rounding: 1e-9 of the larger one does not count.
bool at_most(Length<> a, Length<> b) { return a.si <= b.si + 1e-9 * std::max(a.si, b.si); }

std::string_view size_word(WeldKind weld) { return weld == WeldKind::fillet ? "leg" : "thickness"; }

bool holds_word(const std::vector<std::string>& words, const std::string& word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

std::string welds_listed(const Procedure& procedure) {
  std::vector<std::string> words;
  for (const WeldKind weld : procedure.welds) words.emplace_back(weld_word(weld));
  return joined_with_and(words);
}

/// The unit in which the shop's terms print sizes.
Unit length_unit(const RateBook& book) { return shown_in(book.terms, unit::mm).unit; }

/// A reason why a procedure does not suit, as the end of a sentence that begins with its name. Heavier reasons are
/// farther misses.
struct Miss {
  int weight = 0;
  std::string words;
};

std::string plural(const char* word, std::size_t count) { return fmt::format("{}{}", word, count == 1 ? "" : "s"); }

std::vector<Miss> use_misses(const RateBook& book, const Procedure& procedure, const ChoiceRequest& request) {
  std::vector<Miss> misses;
  const std::string& process = book.processes[procedure.process].number;
  if (std::find(procedure.welds.begin(), procedure.welds.end(), request.weld) == procedure.welds.end())
    misses.push_back({16, fmt::format("is for {}, not {}", welds_listed(procedure), weld_word(request.weld))});
  const auto admits = [&](const std::string& group) { return group_admits(group, request.group); };
  if (std::none_of(procedure.groups.begin(), procedure.groups.end(), admits))
    misses.push_back({8, fmt::format("is for base-metal {} {}, not {}", plural("group", procedure.groups.size()),
                                     joined_with_and(procedure.groups), request.group)});
  if (!request.process.empty() && process != request.process)
    misses.push_back({4, fmt::format("is process {}, not {}", process, request.process)});
  const auto position_words = [&](std::vector<std::string> codes) {
    for (std::string& code : codes) code = position_word(code, request.weld, book.terms);
    return codes;
  };
  if (!holds_word(procedure.positions, request.position))
    misses.push_back({2, fmt::format("is for {} {}, not {}", plural("position", procedure.positions.size()),
                                     joined_with_and(position_words(procedure.positions)),
                                     position_words({request.position}).front())});
  if (!at_most(procedure.thickness_from, request.thinner) || !at_most(request.thinner, procedure.thickness_to))
    misses.push_back(
        {1, fmt::format("is for thickness {} to {}, not {}", shown(procedure.thickness_from, length_unit(book)),
                        shown(procedure.thickness_to, length_unit(book)), shown(request.thinner, length_unit(book)))});
  return misses;
}

Length<> size_of(const Procedure& procedure) { return {procedure.size.si.value}; }

std::string nearest_misses(const RateBook& book, const ChoiceRequest& request) {
  struct Candidate {
    int weight = 0;
    double distance = 0;
    std::size_t index = 0;
    std::string words;
  };
  std::vector<Candidate> candidates;
  for (std::size_t i = 0; i < book.procedures.size(); ++i) {
    const Procedure& procedure = book.procedures[i];
    std::vector<Miss> misses = use_misses(book, procedure, request);
    if (request.weld == WeldKind::fillet && !at_most(request.size, size_of(procedure)))
      misses.push_back({1, fmt::format("is for leg up to {}", shown(size_of(procedure), length_unit(book)))});
    Candidate candidate{0, std::abs(size_of(procedure).si - request.size.si), i, procedure.name};
    for (const Miss& miss : misses) {
      candidate.words += (candidate.weight > 0 ? ", and " : " ") + miss.words;
      candidate.weight += miss.weight;
    }
    candidates.push_back(std::move(candidate));
  }
  std::sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
    return std::tie(a.weight, a.distance, a.index) < std::tie(b.weight, b.distance, b.index);
  });
  std::string text;
  for (std::size_t i = 0; i < std::min(misses_named, candidates.size()); ++i)
    text += (i > 0 ? "; " : "") + candidates[i].words;
  return text;
}

/// Those that suit, smaller sizes first, earlier entries first among equals.
std::vector<std::size_t> suitable(const RateBook& book, const ChoiceRequest& request) {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < book.procedures.size(); ++i)
    if (use_misses(book, book.procedures[i], request).empty()) found.push_back(i);
  std::stable_sort(found.begin(), found.end(), [&](std::size_t a, std::size_t b) {
    return size_of(book.procedures[a]) < size_of(book.procedures[b]);
  });
  return found;
}

/// Those to choose among: a joint that names no process leaves out what wants to be asked for, as long as the others
/// do.
std::vector<std::size_t> candidates_for(const RateBook& book, const ChoiceRequest& request) {
  std::vector<std::size_t> all = suitable(book, request), usual;
  if (!request.process.empty()) return all;
  std::copy_if(all.begin(), all.end(), std::back_inserter(usual),
               [&](std::size_t i) { return !book.processes[book.procedures[i].process].only_when_asked; });
  const bool do_it = !usual.empty() && (request.weld != WeldKind::fillet ||
                                        at_most(request.size, size_of(book.procedures[usual.back()])));
  return do_it ? usual : all;
}

/// The next larger ones; without any, the smaller ones from the nearest down.
std::string runners_up(const RateBook& book, const std::vector<std::size_t>& found, std::size_t chosen) {
  const auto at = found.begin() + static_cast<std::ptrdiff_t>(chosen);
  std::vector<std::size_t> order(at + 1, found.end());
  const bool larger = !order.empty();
  if (!larger) order.assign(std::make_reverse_iterator(at), found.rend());
  if (order.empty()) return "; no other fits";
  std::string text = larger ? "; next: " : "; smaller: ";
  for (std::size_t i = 0; i < std::min(runners_up_named, order.size()); ++i)
    text += (i > 0 ? ", " : "") + book.procedures[order[i]].name;
  return text;
}

}  // namespace

std::vector<std::string> reasons_against(const RateBook& book, const Procedure& procedure,
                                         const ChoiceRequest& request) {
  std::vector<std::string> reasons;
  for (const Miss& miss : use_misses(book, procedure, request)) reasons.push_back(procedure.name + " " + miss.words);
  return reasons;
}

ChoiceResult choose_procedure(const RateBook& book, const ChoiceRequest& request) {
  const std::vector<std::size_t> found = candidates_for(book, request);
  const auto large_enough = std::find_if(
      found.begin(), found.end(), [&](std::size_t i) { return at_most(request.size, size_of(book.procedures[i])); });
  const std::string asked = fmt::format("{} {}", size_word(request.weld), shown(request.size, length_unit(book)));
  if (large_enough != found.end()) {
    const auto at = static_cast<std::size_t>(large_enough - found.begin());
    return {*large_enough, fmt::format("{} is the smallest for {} and more{}", book.procedures[*large_enough].name,
                                       asked, runners_up(book, found, at))};
  }
  if (found.empty() || request.weld == WeldKind::fillet) return {std::nullopt, nearest_misses(book, request)};
  const auto largest = std::find_if(found.begin(), found.end(), [&](std::size_t i) {
    return at_most(size_of(book.procedures[found.back()]), size_of(book.procedures[i]));
  });
  const auto at = static_cast<std::size_t>(largest - found.begin());
  return {*largest, fmt::format("{} is the largest that fits; {} takes more passes{}", book.procedures[*largest].name,
                                asked, runners_up(book, found, at))};
}

}  // namespace seambook
