#include "report/checked_plan.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "report/terminal.hpp"

namespace seambook {
namespace {

using CheckedJson = nlohmann::ordered_json;

double level_minutes(std::int64_t seconds) { return static_cast<double>(seconds) / 60; }

std::string checked_text_of(const CheckedJson& json) {
  return json.dump(2, ' ', false, CheckedJson::error_handler_t::replace);
}

}  // namespace

std::string checked_text(const Levels& levels, std::size_t broken) {
  const std::string verdict =
      broken == 0 ? "no rule is broken" : fmt::format("{} rule{} broken", broken, broken == 1 ? " is" : "s are");
  return fmt::format(
      "{}; not done {}, late {:.0f} min (weighted), set-ups {:.0f} min, fixture loads {}, finish after "
      "{:.1f} h\n",
      verdict, levels.unplaced, level_minutes(levels.late), level_minutes(levels.change), levels.loads,
      level_minutes(levels.finish) / 60);
}

std::string checked_json(const Levels& levels) {
  return checked_text_of({{"cannot_be_done", levels.unplaced},
                          {"late_min", level_minutes(levels.late)},
                          {"change_min", level_minutes(levels.change)},
                          {"fixture_loads", levels.loads},
                          {"finish_min", level_minutes(levels.finish)}});
}

std::string moved_text(const PlannedShop& shop, std::size_t columns) {
  if (shop.moved.empty()) return {};
  TextTable table;
  table.headings = {"moved", "was", "now", "why here"};
  table.right_aligned = {false, false, false, false};
  for (const Moved& moved : shop.moved)
    table.rows.push_back({shop.work.problem.tasks[moved.task].name, moved.from, moved.to, moved.why});
  return "\nmoved against the plan before\n\n" + render(table, columns);
}

std::string moved_json(const PlannedShop& shop) {
  CheckedJson list = CheckedJson::array();
  for (const Moved& moved : shop.moved)
    list.push_back({{"operation", shop.work.problem.tasks[moved.task].name},
                    {"was", moved.from},
                    {"now", moved.to},
                    {"reason", moved.why}});
  return checked_text_of(list);
}

}  // namespace seambook
