// What a change of set-up takes at one station, looked up by number: priced once for each mounted state and need, and
// remembered.
#pragma once

#include <cstdint>
#include <map>
#include <vector>

#include "schedule/shop.hpp"

namespace seambook {

struct SetUp {
  std::int32_t seconds = -1;  // -1: not priced yet; small, for many of these are read
  std::uint32_t state = 0;    // mounted afterwards
  std::uint32_t loads = 0;
  bool never = false;  // the station does not make this change
};

/// State 0 is what stands mounted before the first work.
struct SetUpTable {
  SetupModel model;  // the changes never made stand behind the tasks
  std::size_t tasks = 0;
  std::optional<std::size_t> load_attribute;
  std::vector<Attributes> needs;   // by need
  std::vector<Attributes> states;  // by state
  std::map<Attributes, std::uint32_t> numbers;
  std::vector<std::vector<SetUp>> rows;  // [state][need]; a state without rows is met first
};

SetUpTable set_up_table(const ShopProblem&, const ShopStation&, std::vector<Attributes> needs);
/// A table of its own prices: after work of need n the state is n + 1, before the first work 0.
SetUpTable set_up_table(const std::vector<std::vector<Seconds>>& prices);
/// A change that has not been asked for before. Use set_up.
const SetUp& first_set_up(SetUpTable&, std::uint32_t state, std::uint32_t need);
inline const SetUp& set_up(SetUpTable& table, std::uint32_t state, std::uint32_t need) {
  const std::vector<SetUp>& row = table.rows[state];
  return row.empty() || row[need].seconds < 0 ? first_set_up(table, state, need) : row[need];
}

/// A change in whole seconds.
Seconds whole_seconds(Time<>);

}  // namespace seambook
