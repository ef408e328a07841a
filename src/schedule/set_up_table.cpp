#include "schedule/set_up_table.hpp"

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

SetUp priced(SetUpTable& table, std::uint32_t state, std::uint32_t need) {
  const Change c = change(table.model, table.states[state], table.needs[need]);
  SetUp out;
  out.seconds = static_cast<std::int32_t>(whole_seconds(c.duration).count());
  out.never = std::any_of(c.tasks.begin(), c.tasks.end(), [&](std::size_t task) { return task >= table.tasks; });
  if (table.load_attribute &&
      std::find(c.attributes.begin(), c.attributes.end(), *table.load_attribute) != c.attributes.end())
    out.loads = 1;
  Attributes after = mounted_after(table.states[state], table.needs[need]);
  const auto [at, added] = table.numbers.try_emplace(after, static_cast<std::uint32_t>(table.states.size()));
  if (added) {
    table.states.push_back(std::move(after));
    table.rows.emplace_back();
  }
  out.state = at->second;
  return out;
}

}  // namespace

Seconds whole_seconds(Time<> time) { return Seconds(std::llround(time.si)); }

SetUpTable set_up_table(const ShopProblem& problem, const ShopStation& station, std::vector<Attributes> needs) {
  SetUpTable table{problem.model, problem.model.tasks.size(), problem.load_attribute, std::move(needs), {}, {}, {}};
  table.model.tasks.insert(table.model.tasks.end(), station.never.begin(), station.never.end());
  Attributes start = station.start;
  start.slots.resize(problem.model.attributes.size());
  table.states.push_back(start);
  table.numbers[std::move(start)] = 0;
  table.rows.emplace_back();
  return table;
}

SetUpTable set_up_table(const std::vector<std::vector<Seconds>>& prices) {
  SetUpTable table;
  table.rows.reserve(prices.size());
  for (const std::vector<Seconds>& row : prices) {
    table.rows.emplace_back();
    table.rows.back().reserve(row.size());
    for (std::uint32_t need = 0; need < row.size(); ++need)
      table.rows.back().push_back({static_cast<std::int32_t>(row[need].count()), need + 1, 0, false});
  }
  return table;
}

const SetUp& first_set_up(SetUpTable& table, std::uint32_t state, std::uint32_t need) {
  if (table.rows[state].empty()) table.rows[state].resize(table.needs.size());
  const SetUp found = priced(table, state, need);  // may add rows
  return table.rows[state][need] = found;
}

}  // namespace seambook
