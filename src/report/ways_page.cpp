#include "report/ways_page.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

struct WayAt {
  enum WayColumn : std::uint16_t { family, process, how, first_sum };
};

/// A sum and its value, in SI.
struct WaySum {
  const Figure* figure;
  double value;
};

std::vector<WaySum> sums_in_order(const WaySums& s) {
  const Totals& t = s.totals;
  return {{&fig::weld_length, t.weld_length.si},
          {&fig::passes, t.passes},
          {&fig::arc, t.arc.si},
          {&fig::fit_up_extra_min, s.fit_up_extra.si},
          {&fig::finish_min, s.finish.si},
          {&fig::attended, s.attended.si},
          {&fig::floor, t.floor.si},
          {&fig::labour_cost, t.labour.si},
          {&fig::equipment_cost, t.equipment.si},
          {&fig::joint_cost, welding_cost(t).si}};
}

void put_headings(const RateBook& book, WaysPage& page) {
  Sheet& sheet = page.sheet;
  put(sheet, heading_row, WayAt::family, "family of seams", Look::heading);
  put(sheet, heading_row, WayAt::process, "process", Look::heading);
  put(sheet, heading_row, WayAt::how, "by, or why not", Look::heading);
  sheet.column_widths = {34, 9, 44};
  std::uint16_t column = WayAt::first_sum;
  for (const WaySum& sum : sums_in_order({})) {
    page.columns[sum.figure] = column;
    put(sheet, heading_row, column++, heading_of(*sum.figure, book.currency, book.terms), Look::heading);
    sheet.column_widths.push_back(11);
  }
  const Shown metre = shown_in(book.terms, unit::m);
  put(sheet, heading_row, column, fmt::format("cost per {} ({})", metre.unit.word, book.currency), Look::heading);
  sheet.column_widths.push_back(11);
  sheet.frozen_rows = heading_row + 1;
  sheet.frozen_columns = 1;
  sheet.repeat_rows = {heading_row, heading_row};
  sheet.landscape = true;
}

/// First and last row of a way's joints on the joint pages.
std::pair<std::uint32_t, std::uint32_t> rows_of(const Comparison& comparison, const JointPages& joints,
                                                const FamilyWay& way) {
  std::uint32_t first = joints.table.first_row;
  for (std::size_t j = 0; j < way.rows.front(); ++j)
    first += static_cast<std::uint32_t>(comparison.ways.job.joints[j].passes.size());
  std::uint32_t last = first;
  for (const std::size_t j : way.rows) last += static_cast<std::uint32_t>(comparison.ways.job.joints[j].passes.size());
  return {first, last - 1};
}

void put_sums(const RateBook& book, const WaySums& sums, const JointPages& joints,
              std::pair<std::uint32_t, std::uint32_t> range, WaysPage& page, std::uint32_t row) {
  for (const WaySum& sum : sums_in_order(sums)) {
    const std::uint16_t column = page.columns.at(sum.figure);
    const Shown as = shown_in(book.terms, *sum.figure);
    const auto at = joints.table.columns.find(sum.figure);
    if (at == joints.table.columns.end()) {
      put_number(page.sheet, row, column, 0, as.decimals);
      continue;
    }
    put_formula(page.sheet, row, column,
                {sum_of(at->second.sheet, at->second.column, range.first, range.second), sum.value / as.unit.si},
                as.decimals);
  }
  const std::string cost = cell_name(row, page.columns.at(&fig::joint_cost));
  const std::string length = cell_name(row, page.columns.at(&fig::weld_length));
  const Totals& t = sums.totals;
  const Unit metre = shown_in(book.terms, unit::m).unit;
  put_formula(page.sheet, row, static_cast<std::uint16_t>(WayAt::first_sum + page.columns.size()),
              {cost + "/" + length, welding_cost(t).si / (t.weld_length.si / metre.si)}, 2, Look::subtotal);
}

}  // namespace

WaysPage ways_page(const RateBook& book, const Comparison& comparison, const JointPages& joints) {
  WaysPage page;
  page.sheet.name = families_sheet;
  put_title(page.sheet, "Families: like seams, by every process that suits",
            "For one piece, equipment by the hour. Sums over the pages of the joints.");
  put_headings(book, page);
  std::uint32_t row = heading_row;
  for (std::size_t f = 0; f < comparison.ways.families.size(); ++f) {
    const Family& family = comparison.ways.families[f];
    page.rows.emplace_back();
    for (std::size_t w = 0; w < family.ways.size(); ++w) {
      const FamilyWay& way = family.ways[w];
      page.rows.back().push_back(++row);
      put(page.sheet, row, WayAt::family, w == 0 ? family.words : "", Look::wrapped);
      put(page.sheet, row, WayAt::process, process_word(book.processes[way.process].number, book.terms));
      const bool suits = !way.rows.empty();
      put(page.sheet, row, WayAt::how, suits ? way.words : "does not suit: " + way.words, Look::wrapped);
      if (suits) put_sums(book, comparison.sums[f][w], joints, rows_of(comparison, joints, way), page, row);
    }
  }
  return page;
}

}  // namespace seambook
