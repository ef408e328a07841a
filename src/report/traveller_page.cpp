#include "report/traveller_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

#include "report/due_words.hpp"
#include "report/number_text.hpp"
#include "report/page_blocks.hpp"
#include "report/page_parts.hpp"
#include "report/setup_facts.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

struct TravelAt {
  enum Column : std::uint16_t { number, operation, joint, procedure, planned, stamp, date, temperature, visual, test };
};

struct TravelPage {
  const PlannedShop& shop;
  Sheet& sheet;
  std::uint32_t row;
};

/// Words and what stands beside them, two of each in a row.
void put_fact_pair(TravelPage& page, const char* left, const std::string& is, const char* right,
                   const std::string& other) {
  put_across(page.sheet, page.row, TravelAt::number, TravelAt::operation, left, Look::label);
  put_across(page.sheet, page.row, TravelAt::joint, TravelAt::procedure, is, Look::wrapped);
  put(page.sheet, page.row, TravelAt::planned, right, Look::label);
  if (other.empty())
    put_wide_box(page.sheet, page.row++, TravelAt::stamp, TravelAt::test);
  else
    put_across(page.sheet, page.row++, TravelAt::stamp, TravelAt::test, other, Look::wrapped);
}

bool part_is_withheld(const PlannedShop& shop, const TaskRef& ref) {
  return std::any_of(shop.work.withheld.begin(), shop.work.withheld.end(), [&](const Withheld& held) {
    return held.gate && held.job == ref.job && held.weldment == ref.weldment;
  });
}

void put_traveller_head(TravelPage& page, const Traveller& traveller) {
  const PlannedShop& shop = page.shop;
  const PlannedTask& first = shop.plan.tasks[traveller.tasks.front()];
  const TaskRef& ref = ref_of(shop, first);
  const Job& job = shop.jobs[ref.job];
  const Weldment& weldment = weldment_of(shop, ref);
  put_across(page.sheet, page.row++, TravelAt::number, TravelAt::test,
             fmt::format("{} / {}", job.name, lot_words(shop, ref)), Look::band);
  const std::string drawings = joined(job.drawings, ", ");
  put_fact_pair(page, "customer", job.customer, "drawing, revision",
                drawings + (job.revision.empty() ? "" : (drawings.empty() ? "" : ", ") + job.revision));
  put_fact_pair(page, "base metal", shop.book.base_metals[weldment.base_metal].name, "heat or cast no.", "");
  const ShopOrder& order = shop.work.problem.orders[shop.work.problem.tasks[first.task].order];
  put_fact_pair(page, "pieces", std::to_string(ref.pieces), "due", due_text(order));
  if (part_is_withheld(shop, ref))
    put_across(page.sheet, page.row++, TravelAt::number, TravelAt::test,
               "This weldment has work that is not for the floor. What stands below is all that may be done.",
               Look::warning);
}

/// What the temperature must be kept between; empty where nothing is stated, or nothing is heated.
std::string temperature_words_of(const PlannedShop& shop, const TaskRef& ref) {
  const Joint* joint = joint_of(shop, ref);
  const bool heated = std::any_of(ref.steps.begin(), ref.steps.end(), [](const TaskStep& step) {
    return step.kind == StepKind::passes || step.kind == StepKind::preheat;
  });
  if (joint == nullptr || !heated) return {};
  const auto degrees = [&](const Sourced& at) { return parameter_text(at, unit::celsius, shop.book.terms); };
  std::vector<std::string> words;
  if (joint->heat.preheat.si.source != no_source) words.push_back("from " + degrees(joint->heat.preheat.si));
  if (joint->heat.interpass_max.si.source != no_source) words.push_back("to " + degrees(joint->heat.interpass_max.si));
  return joined(words, " ");
}

std::string procedures_words(const PlannedShop& shop, const TaskRef& ref) {
  std::vector<std::string> words;
  for (const std::size_t procedure : procedures_of(shop, ref)) add_new(words, procedure_words(shop.book, procedure));
  return joined(words, "\n");
}

/// Hold and witness points behind an operation, with room for who looked.
void put_points(TravelPage& page, const TaskRef& ref) {
  for (const TaskStep& step : ref.steps) {
    if (step.hold.empty() || step.kind == StepKind::outside) continue;
    put_across(page.sheet, page.row, TravelAt::number, TravelAt::planned,
               step.stops ? step.hold + "; work stops here until it is released" : step.hold,
               step.stops ? Look::warning : Look::wrapped);
    put_boxes(page.sheet, page.row++, TravelAt::stamp, TravelAt::date);
  }
}

void put_operation(TravelPage& page, const PlannedTask& task, std::size_t number) {
  const PlannedShop& shop = page.shop;
  const TaskRef& ref = ref_of(shop, task);
  const Joint* joint = joint_of(shop, ref);
  const Way& way = way_of(shop, task);
  put_number(page.sheet, page.row, TravelAt::number, static_cast<double>(number), 0);
  put(page.sheet, page.row, TravelAt::operation, steps_words(shop, ref), Look::wrapped);
  put(page.sheet, page.row, TravelAt::joint, joint != nullptr ? joint_words(*joint) : "whole", Look::wrapped);
  put(page.sheet, page.row, TravelAt::procedure, procedures_words(shop, ref), Look::wrapped);
  const std::string station = way.station ? shop.work.problem.stations[*way.station].name : std::string("away");
  put(page.sheet, page.row, TravelAt::planned, station + "\n" + clock_word(task.start),
      Look::wrapped);  // two lines leave room for a stamp
  put_boxes(page.sheet, page.row, TravelAt::stamp, TravelAt::date);
  put(page.sheet, page.row, TravelAt::temperature, temperature_words_of(shop, ref), Look::box);
  put_boxes(page.sheet, page.row, TravelAt::visual, TravelAt::visual);
  const bool tested = joint != nullptr && !joint->inspections.empty() && !procedures_of(shop, ref).empty();
  put(page.sheet, page.row++, TravelAt::test, tested ? "" : "none", tested ? Look::box : Look::label);
  put_points(page, ref);
}

/// Empty rows to write repairs into, and who lets the weldment go.
void put_record(TravelPage& page) {
  constexpr int repair_rows = 3;
  put_heading_row(
      page.sheet, ++page.row,
      {"", "repair: what was found", "joint", "procedure", "cut out to", "stamp", "date", "°C", "VT", "test"});
  ++page.row;
  for (int r = 0; r < repair_rows; ++r) {
    page.sheet.row_heights.emplace_back(page.row, 24);
    put_boxes(page.sheet, page.row++, TravelAt::number, TravelAt::test);
  }
  ++page.row;
  put_across(page.sheet, page.row, TravelAt::number, TravelAt::procedure,
             "Release: all operations stamped, tests in order, repairs closed", Look::wrapped);
  put(page.sheet, page.row, TravelAt::planned, "name, date", Look::label);
  put_wide_box(page.sheet, page.row++, TravelAt::stamp, TravelAt::test);
  ++page.row;
}

/// The rows with which the traveller and its record begin.
std::array<PageBlock, 2> put_traveller(TravelPage& page, const Traveller& traveller) {
  const std::uint32_t first = page.row;
  put_traveller_head(page, traveller);
  put_heading_row(
      page.sheet, page.row++,
      {"no.", "operation", "joint", "procedure", "station, planned", "stamp", "date", "°C measured", "VT", "test"});
  std::size_t number = 0;
  for (const std::size_t at : traveller.tasks) put_operation(page, page.shop.plan.tasks[at], ++number);
  const std::uint32_t record = page.row;
  put_record(page);
  return {{{first, true}, {record, false}}};
}

}  // namespace

std::vector<Traveller> travellers_of(const PlannedShop& shop) {
  std::map<std::tuple<std::size_t, std::size_t, std::int64_t>, Traveller> by_lot;
  for (std::size_t at = 0; at < shop.plan.tasks.size(); ++at) {
    const TaskRef& ref = ref_of(shop, shop.plan.tasks[at]);
    Traveller& traveller = by_lot[{ref.job, ref.weldment, ref.first_piece}];
    traveller.tasks.push_back(at);
    traveller.labour = traveller.labour + labour_of(ref);
  }
  std::vector<Traveller> out;
  out.reserve(by_lot.size());
  for (auto& [lot, traveller] : by_lot)
    if (traveller.labour >= shop.traveller_from) out.push_back(std::move(traveller));
  return out;
}

std::optional<Sheet> traveller_page(const PlannedShop& shop) {
  const std::vector<Traveller> travellers = travellers_of(shop);
  if (travellers.empty()) return std::nullopt;
  Sheet sheet;
  sheet.name = "Travellers";
  put(sheet, 0, 0, "Travellers", Look::title);
  put_across(sheet, 1, 0, TravelAt::test,
             fmt::format("For weldments of {} planned minutes and more. A hold stops the work until it is released.",
                         figure(shop.traveller_from.si / unit::min.si, 0)),
             Look::note);
  sheet.column_widths = {4, 20, 23, 12, 17, 8, 8, 10, 6, 7};
  TravelPage page{shop, sheet, heading_row};
  std::vector<PageBlock> blocks;
  std::vector<PageBlock> whole;
  blocks.reserve(2 * travellers.size());
  whole.reserve(travellers.size());
  for (const Traveller& traveller : travellers) {
    const auto of_traveller = put_traveller(page, traveller);
    whole.push_back(of_traveller.front());
    blocks.insert(blocks.end(), of_traveller.begin(), of_traveller.end());
  }
  constexpr std::uint16_t words[] = {TravelAt::operation, TravelAt::joint, TravelAt::planned};
  widen_until_whole(sheet, whole, words, 1.5, shop.book.letter_paper);
  break_pages(sheet, blocks, shop.book.letter_paper);
  return sheet;
}

}  // namespace seambook
