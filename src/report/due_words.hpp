// Orders against their due dates, in words.
#pragma once

#include <string>
#include <vector>

#include "report/planned_shop.hpp"

namespace seambook {

/// When the last planned work of each order ends; `Instant::min()` where none is planned. Parallel to the problem's
/// orders.
std::vector<Instant> order_finishes(const PlannedShop&);
/// `Fri 15 May 14:30`, `no date`.
std::string due_text(const ShopOrder&);
/// `2 d 4 h in hand`, `late by 3 h 20 min`; empty without a date.
std::string slack_text(const ShopOrder&, Instant finish);
bool is_late(const ShopOrder&, Instant finish);

/// Work that the lists do not hold, with why and what helps.
struct KeptBack {
  enum class Kind : std::uint8_t { gate, blocked, cannot } kind = Kind::blocked;
  std::size_t job = 0, weldment = 0;
  std::optional<std::size_t> joint;
  std::string what;  // `gantry/frame/3`
  std::string why, hint;
};
/// What is not for the floor first, then what is blocked, then what cannot be done; each in the order of the input.
std::vector<KeptBack> kept_back(const PlannedShop&);
/// `not for the floor`.
std::string_view kept_back_word(KeptBack::Kind);

/// Where more is asked than there is: `H1: 47 h of work that nobody else can do by Tue 15 Sep 08:00 (machine-base); 44
/// h are open`. One for each station or welder.
std::vector<std::string> overload_lines(const PlannedShop&);

}  // namespace seambook
