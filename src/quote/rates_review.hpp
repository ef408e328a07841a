// What an owner should look at again in a rate book: what nothing uses, prices that are old, figures in doubt.
#pragma once

#include <set>

#include "resolve/rate_book.hpp"

namespace seambook {

struct ReviewFinding {
  enum class Kind : std::uint8_t { unused, old, undated, doubtful } kind = Kind::unused;
  std::string list, entry;  // `procedure`, `CG-F3`; `entry` is empty where a whole list is meant
  Place place;
  std::string message;
};
inline constexpr const char* review_kinds[] = {"unused", "old", "undated", "doubtful"};  // as Kind

struct ReviewAsked {
  std::optional<std::set<SourceId>> used;  // numbers that jobs read; absent: nothing is said of use
  std::set<std::string> named;             // entries that they name, whose numbers may stand unread: `base metal S235`
  Date today;
  int older_than = 12;  // months
};
/// By kind, then as the book has them.
std::vector<ReviewFinding> review_rates(const RateBook&, const ReviewAsked&);

}  // namespace seambook
