#include "quote/rates_review.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "basics/shown_units.hpp"

namespace seambook {
namespace {

/// An entry of the book: its numbers among the sources.
struct ReviewEntry {
  std::string list, entry;
  Place place;
  std::vector<SourceId> numbers;
};

// How entries are named by resolving; what begins with none of them is a section of its own.
constexpr std::string_view entry_lists[] = {"base metal",  "filler",     "gas",        "flux",        "wear part",
                                            "process",     "procedure",  "finish",     "labour",      "handling",
                                            "preparation", "pass limit", "risk class", "change task", "scenario"};

/// Splits `procedure CG-F5`. Entries without a name of their own go by their line.
void name_entry(ReviewEntry& entry, const RateSource& source) {
  for (const std::string_view list : entry_lists) {
    if (!source.entry.starts_with(list)) continue;
    const std::string rest = source.entry.substr(std::min(source.entry.size(), list.size() + 1));
    if (!rest.empty() && source.entry[list.size()] != ' ') continue;
    entry.list = list;
    entry.entry = rest.empty() ? fmt::format("line {}", source.place.line) : rest;
    return;
  }
  entry.list = source.entry;
}

std::vector<ReviewEntry> entries_of_book(const RateBook& book) {
  std::vector<ReviewEntry> entries;
  std::map<std::pair<std::string, std::string>, std::size_t> known;
  for (SourceId id = 1; id < book.sources.size(); ++id) {
    ReviewEntry entry;
    name_entry(entry, book.sources[id]);
    entry.place = book.sources[id].place;
    const auto [at, is_new] = known.try_emplace({entry.list, entry.entry}, entries.size());
    if (is_new) entries.push_back(std::move(entry));
    entries[at->second].numbers.push_back(id);
  }
  return entries;
}

/// Thresholds and overtime are not read by estimates, and say nothing of a price.
bool is_used_or_exempt(const ReviewEntry& entry, const ReviewAsked& asked) {
  if (entry.list == "checks" || entry.list == "overtime" || entry.list == "scenario") return true;
  return asked.named.contains(entry.list + " " + entry.entry) ||
         std::any_of(entry.numbers.begin(), entry.numbers.end(), [&](SourceId id) { return asked.used->contains(id); });
}

bool is_digit_at(std::string_view text, std::size_t at) {
  return at < text.size() && text[at] >= '0' && text[at] <= '9';
}

/// The latest date `2026-05-18` in the words; nothing when there is none.
std::optional<Date> latest_date(std::string_view words) {
  constexpr std::size_t length = 10;
  std::optional<Date> latest;
  for (std::size_t at = 0; at + length <= words.size(); ++at) {
    if ((at > 0 && is_digit_at(words, at - 1)) || is_digit_at(words, at + length)) continue;
    const DateRead read = read_date(words.substr(at, length));
    if (read.date && (!latest || *latest < *read.date)) latest = read.date;
  }
  return latest;
}

int whole_months(const Date& from, const Date& to) {
  const int months = (to.year - from.year) * 12 + to.month - from.month;
  return to.day < from.day ? months - 1 : months;
}

bool is_price(const RateSource& source) {
  return std::string_view(source.unit.word).find("¤") != std::string_view::npos;
}

using Reviewed = std::vector<ReviewFinding>;

void add_found(Reviewed& out, ReviewFinding::Kind kind, const ReviewEntry& entry, std::string message) {
  out.push_back({kind, entry.list, entry.entry, entry.place, std::move(message)});
}

void find_old_prices(const RateBook& book, const ReviewAsked& asked, const std::vector<ReviewEntry>& entries,
                     Reviewed& out) {
  std::vector<std::pair<std::string, std::size_t>> undated;  // lists, and how many prices of them
  std::map<std::string, Place> first;
  for (const ReviewEntry& entry : entries) {
    const auto priced = std::find_if(entry.numbers.begin(), entry.numbers.end(),
                                     [&](SourceId id) { return is_price(book.sources[id]); });
    if (priced == entry.numbers.end()) continue;
    const RateSource& price = book.sources[*priced];
    if (const std::optional<Date> date = latest_date(price.words)) {
      const int months = whole_months(*date, asked.today);
      if (months >= asked.older_than)
        add_found(out, ReviewFinding::Kind::old, entry,
                  fmt::format("{} is of {}, {} months ago", price.field, iso(*date), months));
      continue;
    }
    first.try_emplace(entry.list, price.place);
    const auto same =
        std::find_if(undated.begin(), undated.end(), [&](const auto& u) { return u.first == entry.list; });
    if (same == undated.end())
      undated.emplace_back(entry.list, 1);
    else
      ++same->second;
  }
  for (const auto& [list, count] : undated)
    out.push_back({ReviewFinding::Kind::undated,
                   list,
                   {},
                   first.at(list),
                   fmt::format("{} without a date in 'source', such as: offer of {}",
                               count == 1 ? "one price" : fmt::format("{} prices", count), iso(asked.today))});
}

void find_unusual(const RateBook& book, const std::vector<ReviewEntry>& entries, Reviewed& out) {
  const auto& usual = book.checks.price_per_mass;
  for (const ReviewEntry& entry : entries) {
    if (!usual || (entry.list != "base metal" && entry.list != "filler")) continue;
    for (const SourceId id : entry.numbers) {
      const RateSource& price = book.sources[id];
      if (!is_price(price) || price.value == 0 || (price.value >= usual->low.si && price.value <= usual->high.si))
        continue;
      add_found(out, ReviewFinding::Kind::doubtful, entry,
                fmt::format("{} is {:.4g} {}/kg; usual is {:.4g} to {:.4g}", price.field, price.value, book.currency,
                            usual->low.si, usual->high.si));
    }
  }
}

/// Of what jobs use when that is known; all of them else. What the shop decides is no assumption: a wire's diameter, a
/// margin.
void find_assumed(const RateBook& book, const ReviewAsked& asked, const std::vector<ReviewEntry>& entries,
                  Reviewed& out) {
  for (const ReviewEntry& entry : entries) {
    if (asked.used && !is_used_or_exempt(entry, asked)) continue;
    const auto assumed = std::find_if(entry.numbers.begin(), entry.numbers.end(), [&](SourceId id) {
      return book.sources[id].basis == Basis::assumption && !book.sources[id].decided;
    });
    if (assumed == entry.numbers.end()) continue;
    add_found(out, ReviewFinding::Kind::doubtful, entry,
              fmt::format("rests on an assumption: {}", book.sources[*assumed].words));
  }
}

}  // namespace

std::vector<ReviewFinding> review_rates(const RateBook& book, const ReviewAsked& asked) {
  const std::vector<ReviewEntry> entries = entries_of_book(book);
  Reviewed out;
  for (const ReviewEntry& entry : entries)
    if (asked.used && !is_used_or_exempt(entry, asked))
      add_found(out, ReviewFinding::Kind::unused, entry, "no job named here reads it");
  find_old_prices(book, asked, entries, out);
  find_unusual(book, entries, out);
  find_assumed(book, asked, entries, out);
  std::stable_sort(out.begin(), out.end(),
                   [](const ReviewFinding& a, const ReviewFinding& b) { return a.kind < b.kind; });
  return out;
}

}  // namespace seambook
