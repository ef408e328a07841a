#include "report/dispatch_page.hpp"

#include <fmt/format.h>

#include "report/due_words.hpp"
#include "report/page_blocks.hpp"
#include "report/page_parts.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

struct ListAt {
  enum Column : std::uint16_t {
    number,
    clock,
    order,
    work,
    stops,
    with,
    tasks,
    change_min,
    floor_min,
    arc_min,
    really_when,
    really_pieces,
    remarks
  };
};

constexpr const char* list_headings[] = {"no.",
                                         "clock",
                                         "order, due, in hand",
                                         "pieces, weldment, joints",
                                         "stops, lifting",
                                         "welder, with",
                                         "set-up before it; why here",
                                         "set-up (min)",
                                         "floor (min)",
                                         "of it arc (min)",
                                         "began, ended",
                                         "pieces done",
                                         "remarks"};
/// Columns of words, which may be wider where a shift's list would not stand on a page.
constexpr std::uint16_t word_columns[] = {ListAt::order, ListAt::work, ListAt::stops, ListAt::with, ListAt::tasks};

struct ListPage {
  const PlannedShop& shop;
  const std::vector<Instant>& finishes;  // by order
  Sheet& sheet;
  std::uint32_t row;
};

const PlannedTask& first_task(const PlannedShop& shop, const DispatchRow& row) {
  return shop.plan.tasks[row.parts.front().at];
}

/// Procedures with filler and gas that a row is welded with, each once.
std::string welded_with(const PlannedShop& shop, const DispatchRow& row) {
  std::vector<std::string> words;
  for (const TaskPart& part : row.parts)
    for (const std::size_t p : procedures_of(shop, ref_of(shop, shop.plan.tasks[part.at]))) {
      const Procedure& by = shop.book.procedures[p];
      add_new(words,
              procedure_words(shop.book, p) + "\n" + filler_words(shop.book, by) + "; " + gas_words(shop.book, by));
    }
  return joined(words, "\n");
}

std::string stops_and_lifting(const PlannedShop& shop, const DispatchRow& row) {
  std::vector<std::string> words;
  for (const TaskPart& part : row.parts)
    if (!part.goes_on) add_new(words, hold_words(ref_of(shop, shop.plan.tasks[part.at])));
  add_new(words, lifting_words(shop, ref_of(shop, first_task(shop, row))));
  return joined(words, "; ");
}

/// Why a row stands here. What is mounted or changes stands in other columns, so what follows is told where there is
/// more.
std::string why_here(const PlannedTask& task) {
  const std::size_t rest = task.reason.find("; ");
  return rest == std::string::npos ? task.reason : task.reason.substr(rest + 2);
}

/// The customer stands on the order's traveller.
void put_order(const ListPage& page, const PlannedTask& task, const Job& job) {
  const std::size_t order = page.shop.work.problem.tasks[task.task].order;
  const ShopOrder& of = page.shop.work.problem.orders[order];
  const std::string slack = slack_text(of, page.finishes[order]);
  put(page.sheet, page.row, ListAt::order, job.name + "\n" + due_text(of) + (slack.empty() ? "" : "\n" + slack),
      is_late(of, page.finishes[order]) ? Look::warning : Look::wrapped);
}

/// `set-up: swap the gas 4 min`, and the reason below it.
std::string set_up_and_why(const PlannedShop& shop, const DispatchRow& row, const PlannedTask& task) {
  const std::string why = row.parts.front().continued ? "begun in the shift before" : why_here(task);
  return change_of(row).si > 0 ? fmt::format("set-up: {}\n{}", change_words(shop, task.change), why) : why;
}

void put_list_row(const ListPage& page, const DispatchRow& row, std::size_t number) {
  const PlannedShop& shop = page.shop;
  Sheet& sheet = page.sheet;
  const PlannedTask& task = first_task(shop, row);
  const TaskRef& ref = ref_of(shop, task);
  const auto text = [&](std::uint16_t column, const std::string& words) {
    put(sheet, page.row, column, words, Look::wrapped);
  };
  put_number(sheet, page.row, ListAt::number, static_cast<double>(number), 0);
  text(ListAt::clock, hour_word(row.parts.front().from) + "\n" + hour_word(row.parts.back().to));
  put_order(page, task, shop.jobs[ref.job]);
  text(ListAt::work, fmt::format("{} × {}\n{}", ref.pieces, lot_words(shop, ref), row_work_words(shop, row)));
  text(ListAt::stops, stops_and_lifting(shop, row));
  const std::string with = welded_with(shop, row);
  text(ListAt::with, people_words(shop, way_of(shop, task)) + (with.empty() ? "" : "\n" + with));
  text(ListAt::tasks, set_up_and_why(shop, row, task));
  put_minutes(sheet, page.row, ListAt::change_min, change_of(row), 0);
  put_minutes(sheet, page.row, ListAt::floor_min, labour_of(shop, row), 1);
  put_minutes(sheet, page.row, ListAt::arc_min, arc_of(shop, row), 1);
  put_boxes(sheet, page.row, ListAt::really_when, ListAt::remarks);
}

void put_list(ListPage& page, const DispatchList& list, const PlanShift& shift) {
  put_across(
      page.sheet, page.row++, ListAt::number, ListAt::remarks,
      fmt::format("{}, {} to {}", day_word(shift.span.from), hour_word(shift.span.from), hour_word(shift.span.to)),
      Look::band);
  const std::uint32_t first = page.row;
  Time<> change{}, labour{}, arc{};
  for (std::size_t r = 0; r < list.rows.size(); ++r, ++page.row) {
    put_list_row(page, list.rows[r], r + 1);
    change = change + change_of(list.rows[r]);
    labour = labour + labour_of(page.shop, list.rows[r]);
    arc = arc + arc_of(page.shop, list.rows[r]);
  }
  put(page.sheet, page.row, ListAt::tasks, "together", Look::total);
  put_sum(page.sheet, page.row, ListAt::change_min, first, change.si / unit::min.si, 0);
  put_sum(page.sheet, page.row, ListAt::floor_min, first, labour.si / unit::min.si, 1);
  put_sum(page.sheet, page.row++, ListAt::arc_min, first, arc.si / unit::min.si, 1);
}

}  // namespace

std::string row_work_words(const PlannedShop& shop, const DispatchRow& row) {
  std::string words, joints, steps;
  const auto flush = [&] {
    if (!steps.empty()) words += (words.empty() ? "" : "; ") + (joints.empty() ? steps : joints + ": " + steps);
    joints.clear();
  };
  for (const TaskPart& part : row.parts) {
    const TaskRef& ref = ref_of(shop, shop.plan.tasks[part.at]);
    const std::string done = steps_words(shop, ref);
    if (done != steps) flush();
    steps = done;
    if (const Joint* joint = joint_of(shop, ref)) joints += (joints.empty() ? "" : ", ") + joint_words(*joint);
  }
  flush();
  return words + (row.parts.back().goes_on ? "; goes on in the next shift" : "");
}

Sheet dispatch_page(const PlannedShop& shop, const std::vector<PlanShift>& shifts,
                    std::span<const DispatchList> lists) {
  const Station& station = shop.book.stations[shop.work.stations[lists.front().station]];
  Sheet sheet;
  sheet.name = "List " + station.name;
  sheet.landscape = true;
  put_title(sheet, fmt::format("{} {}: work in turn", station.name, station.title),
            "Set-up first, then work, from and to by the clock. Floor minutes are those of all people together. What "
            "really happened goes into the framed cells.");
  put_heading_row(sheet, heading_row, list_headings);
  sheet.column_widths = {4, 6, 17, 27, 14, 18, 29, 6.5, 6.5, 6.5, 7, 7, 11};
  sheet.frozen_rows = heading_row + 1;
  sheet.repeat_rows = {heading_row, heading_row};
  const std::vector<Instant> finishes = order_finishes(shop);
  ListPage page{shop, finishes, sheet, heading_row + 1};
  std::vector<PageBlock> blocks;
  blocks.reserve(lists.size());
  for (const DispatchList& list : lists) {
    blocks.push_back({page.row, true});
    put_list(page, list, shifts[list.shift]);
  }
  widen_until_whole(sheet, blocks, word_columns, 2, shop.book.letter_paper);
  break_pages(sheet, blocks, shop.book.letter_paper);
  return sheet;
}

}  // namespace seambook
