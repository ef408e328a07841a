#include "report/setups_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "report/number_text.hpp"
#include "report/page_blocks.hpp"
#include "report/page_parts.hpp"
#include "report/setup_facts.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

constexpr std::uint16_t last_setup_column = 11;
/// Words and the box behind them, four beside each other.
constexpr std::array<std::uint16_t, 4> ticked_at = {0, 3, 6, 9};

struct SetUpPage {
  const PlannedShop& shop;
  Sheet& sheet;
  std::uint32_t row;
};

void put_ticked(SetUpPage& page, const std::vector<std::string>& words) {
  for (std::size_t w = 0; w < words.size(); ++w) {
    const std::uint16_t column = ticked_at[w % ticked_at.size()];
    if (w > 0 && w % ticked_at.size() == 0) ++page.row;
    put_across(page.sheet, page.row, column, column + 1, words[w], Look::wrapped);
    put_boxes(page.sheet, page.row, column + 2, column + 2);
  }
  ++page.row;
}

void put_line(SetUpPage& page, const SetUpLine& line) {
  const RateBook& book = page.shop.book;
  const Procedure& by = book.procedures[line.procedure];
  const auto parameter = [&](const Sourced& number, const Unit& unit) {
    return parameter_text(number, unit, book.terms);
  };
  const std::array<std::string, last_setup_column> words = {procedure_words(book, line.procedure),
                                                            line.position,
                                                            by.polarity.empty() ? "-" : by.polarity,
                                                            filler_words(book, by),
                                                            gas_and_flow(book, by),
                                                            parameter(by.current.si, unit::A),
                                                            parameter(by.voltage.si, unit::V),
                                                            parameter(by.wire_feed.si, unit::m_per_min),
                                                            travel_window(by, book.terms),
                                                            transfer_words(by, book.terms),
                                                            line.temperatures};
  for (std::uint16_t column = 0; column < last_setup_column; ++column)
    put(page.sheet, page.row, column, words[column], Look::wrapped);
  if (by.filler) put_boxes(page.sheet, page.row, last_setup_column, last_setup_column);
  ++page.row;
}

/// `gantry/frame: 3, 4; gantry/cover: 1`, each once.
std::string set_up_for(const PlannedShop& shop, const PlannedSetUp& set_up) {
  std::vector<std::pair<std::string, std::vector<std::string>>> lots;
  for (const std::size_t at : set_up.tasks) {
    const TaskRef& ref = ref_of(shop, shop.plan.tasks[at]);
    const std::string lot = shop.jobs[ref.job].name + "/" + lot_words(shop, ref);
    auto found = std::find_if(lots.begin(), lots.end(), [&](const auto& known) { return known.first == lot; });
    if (found == lots.end()) found = lots.insert(found, {lot, {}});
    const Joint* joint = joint_of(shop, ref);
    add_new(found->second, joint != nullptr ? joint_words(*joint) : steps_words(shop, ref));
  }
  std::string words;
  for (const auto& [lot, joints] : lots)
    words += fmt::format("{}{}: {}", words.empty() ? "" : "; ", lot, joined(joints, ", "));
  return words;
}

void put_set_up(SetUpPage& page, const PlannedSetUp& set_up, std::size_t number) {
  const PlannedShop& shop = page.shop;
  const PlannedTask& first = shop.plan.tasks[set_up.tasks.front()];
  const bool changes = !first.change.tasks.empty();
  const std::string when =
      changes ? fmt::format("{}, {} min", clock_word(first.set_up), figure(first.change.duration.si / 60, 0))
              : clock_word(first.set_up) + ", stands mounted";
  put_across(page.sheet, page.row++, 0, last_setup_column,
             fmt::format("Set-up {}: {}, {}", number, when, people_words(shop, way_of(shop, first))), Look::band);
  put_across(page.sheet, page.row++, 0, last_setup_column, "For " + set_up_for(shop, set_up), Look::wrapped);
  for (const SetUpLine& line : set_up_lines(shop, set_up)) put_line(page, line);
  std::vector<std::string> changed;
  changed.reserve(first.change.tasks.size());
  const SetupModel& model = shop.work.problem.model;
  for (const std::size_t task : first.change.tasks)
    changed.push_back(fmt::format("{}, {} min", model.tasks[task].name, figure(model.tasks[task].duration.si / 60, 0)));
  if (!changed.empty()) put_ticked(page, changed);
  put_ticked(page, {"first piece looked at by", "at", "size and look good", "clamped as drawn"});
  if (const std::string purge = purge_words(shop, set_up); !purge.empty())
    put_across(page.sheet, page.row++, 0, last_setup_column, purge, Look::wrapped);
  for (const std::string& words : protection_words(shop, set_up))
    put_across(page.sheet, page.row++, 0, last_setup_column, words, Look::warning);
  ++page.row;
}

}  // namespace

Sheet setups_page(const PlannedShop& shop, std::span<const PlannedSetUp> set_ups) {
  const Station& station = shop.book.stations[shop.work.stations[set_ups.front().station]];
  Sheet sheet;
  sheet.name = "Set-ups " + station.name;
  sheet.landscape = true;
  put_title(sheet, fmt::format("{} {}: set-ups in turn", station.name, station.title),
            "Parameters are those of the rate book's procedures. Tick what is done; write the lot of the filler.");
  const bool heated = std::any_of(set_ups.begin(), set_ups.end(), [&](const PlannedSetUp& set_up) {
    const std::vector<SetUpLine> lines = set_up_lines(shop, set_up);
    return std::any_of(lines.begin(), lines.end(), [](const SetUpLine& line) { return !line.temperatures.empty(); });
  });
  put_heading_row(sheet, heading_row,
                  {"procedure", "position", "polarity", "filler", "gas and flow", "current", "voltage", "wire feed",
                   "travel speed", "transfer, beam", heated ? "temperatures" : "", "lot of the filler"});
  sheet.column_widths = {14, 9, 9, 18, 16, 9, 9, 11, 20, 16, heated ? 20.0 : 4.0, 14};
  sheet.frozen_rows = heading_row + 1;
  sheet.repeat_rows = {heading_row, heading_row};
  SetUpPage page{shop, sheet, heading_row + 1};
  std::vector<PageBlock> blocks;
  blocks.reserve(set_ups.size());
  for (std::size_t s = 0; s < set_ups.size(); ++s) {
    blocks.push_back({page.row, false});
    put_set_up(page, set_ups[s], s + 1);
  }
  break_pages(sheet, blocks, shop.book.letter_paper);
  return sheet;
}

}  // namespace seambook
