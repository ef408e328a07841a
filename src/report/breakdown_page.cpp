#include "report/breakdown_page.hpp"

#include <fmt/format.h>

#include <functional>
#include <memory>

#include "quote/piece_totals.hpp"
#include "report/element_minutes.hpp"
#include "report/page_blocks.hpp"
#include "report/price_split.hpp"

namespace seambook {
namespace {

struct BreakdownAt {
  enum Column : std::uint16_t {
    words,
    floor,
    labour,
    equipment,
    filler,
    gas,
    power,
    wear,
    bought,
    cost,
    share,
    per_length,
    columns
  };
};

/// Rows of the joint pages that one line adds up; last < first when it has none.
struct JointSpan {
  std::uint32_t first = 1, last = 0;
};
struct Line {
  std::string words;
  JointSpan joints;
  std::optional<std::size_t> weldment;  // its own labour and metal count too
  JointSpan bought;                     // rows of the weldments page
  PieceTotals totals;
};

/// Of each joint its first row on the joint pages; one more at the end.
std::vector<std::uint32_t> first_rows(const Job& job, const JointPages& pages) {
  std::vector<std::uint32_t> rows = {pages.table.first_row};
  for (const Joint& joint : job.joints) rows.push_back(rows.back() + static_cast<std::uint32_t>(joint.passes.size()));
  return rows;
}

std::vector<Line> weldment_lines(const Job& job, const Estimate& estimate, const ShopPages& pages) {
  const std::vector<std::uint32_t> rows = first_rows(job, pages.joints);
  std::vector<Line> lines;
  std::uint32_t bought = pages.weldments.bought_first;
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const Weldment& weldment = job.weldments[w];
    const auto lines_bought = static_cast<std::uint32_t>(weldment.bought.size());
    JointSpan joints;
    if (weldment.joint_count > 0)
      joints = {rows[weldment.first_joint], rows[weldment.first_joint + weldment.joint_count] - 1};
    lines.push_back({weldment.name, joints, w, {bought, bought + lines_bought - 1}, weldment_totals(job, estimate, w)});
    bought += lines_bought;
  }
  if (job.bought.empty()) return lines;
  Line whole{"bought for the job as a whole", {}, {}, {bought, pages.weldments.bought_last}, {}};
  for (const Bought& line : job.bought)
    if (line.scaling == Scaling::each)
      whole.totals.cost[static_cast<std::size_t>(cost_kind(line.kind))] += line.price.si.value;
  lines.push_back(std::move(whole));
  return lines;
}

/// `rows` as of first_rows.
Line joint_line(const Job& job, const Estimate& estimate, const std::vector<std::uint32_t>& rows, std::size_t j) {
  const Joint& joint = job.joints[j];
  Line line{joint.id + " " + (joint.mark.empty() ? weld_in_words(joint) : joint.mark),
            {rows[j], rows[j + 1] - 1},
            {},
            {},
            {}};
  PieceTotals& t = line.totals;
  t.welding = joint_totals(estimate.joints[j]);
  t.floor = t.welding.floor;
  t.cost = welding_kinds(t.welding);
  return line;
}

/// Where the figures of joints and weldments stand.
struct Tables {
  Table joints, weldments;
};

std::string joint_part(const Tables& tables, const Figure& figure, const JointSpan& rows) {
  const auto at = tables.joints.columns.find(&figure);
  if (at == tables.joints.columns.end() || rows.last < rows.first) return {};
  return sum_of(at->second.sheet, at->second.column, rows.first, rows.last);
}

std::string weldment_part(const Tables& tables, const Figure& figure, const std::optional<std::size_t>& weldment) {
  const auto at = tables.weldments.columns.find(&figure);
  if (!weldment || at == tables.weldments.columns.end()) return {};
  return fmt::format("{}!{}", weldments_sheet, cell_name(weldment_row(*weldment), at->second.column));
}

std::string bought_part(const JointSpan& rows) {
  if (rows.last < rows.first) return {};
  return sum_of(weldments_sheet, bought_column::each, rows.first, rows.last);
}

void put_headings(Sheet& sheet, std::uint32_t row, const char* title, const RateBook& book, bool by_joint) {
  put(sheet, row, BreakdownAt::words, title, Look::heading);
  put(sheet, row, BreakdownAt::floor, "floor time (h)", Look::heading);
  const std::pair<BreakdownAt::Column, const char*> moneys[] = {{BreakdownAt::labour, "labour"},
                                                                {BreakdownAt::equipment, "equipment"},
                                                                {BreakdownAt::filler, "filler"},
                                                                {BreakdownAt::gas, "gas"},
                                                                {BreakdownAt::power, "power"},
                                                                {BreakdownAt::wear, "wear parts"},
                                                                {BreakdownAt::bought, "metal and bought"},
                                                                {BreakdownAt::cost, "cost"}};
  for (const auto& [column, words] : moneys)
    if (!by_joint || column != BreakdownAt::bought)
      put(sheet, row, column, fmt::format("{} ({})", words, book.currency), Look::heading);
  put(sheet, row, BreakdownAt::share, "of all", Look::heading);
  if (by_joint)
    put(sheet, row, BreakdownAt::per_length,
        fmt::format("by weld length ({}/{})", book.currency, shown_in(book.terms, unit::m).unit.word), Look::heading);
}

/// Set-ups arise by lot only.
std::uint16_t column_of(CostKind kind) {
  constexpr std::array<std::uint16_t, cost_kinds> columns = {
      BreakdownAt::labour, BreakdownAt::labour, BreakdownAt::equipment, BreakdownAt::filler,
      BreakdownAt::gas,    BreakdownAt::power,  BreakdownAt::wear,      BreakdownAt::bought,
      BreakdownAt::bought, BreakdownAt::bought, BreakdownAt::bought,    BreakdownAt::bought};
  return columns[static_cast<std::size_t>(kind)];
}

double bought_of(const PieceTotals& totals) {
  double sum = 0;
  for (const CostKind kind :
       {CostKind::base_metal, CostKind::cutting, CostKind::outside, CostKind::free_issue, CostKind::other})
    sum += totals.cost[static_cast<std::size_t>(kind)];
  return sum;
}

/// One line's costs; the share is of the total that stands in `total_row`.
void put_line(Sheet& sheet, std::uint32_t row, const Line& line, const Tables& tables, std::uint32_t total_row,
              double all) {
  const auto both = [&](const Figure& of_joints, const Figure& of_weldment) {
    return together({joint_part(tables, of_joints, line.joints), weldment_part(tables, of_weldment, line.weldment)});
  };
  const auto of = [&](CostKind kind) { return line.totals.cost[static_cast<std::size_t>(kind)]; };
  const auto joints = [&](const Figure& figure) { return together({joint_part(tables, figure, line.joints)}); };
  put(sheet, row, BreakdownAt::words, line.words);
  put_formula(sheet, row, BreakdownAt::floor,
              {fmt::format("({})/60", both(fig::floor, fig::weldment_floor)), line.totals.floor.si / unit::h.si}, 2);
  put_formula(sheet, row, BreakdownAt::labour, {both(fig::labour_cost, fig::weldment_labour), of(CostKind::labour)}, 2);
  put_formula(sheet, row, BreakdownAt::equipment,
              {both(fig::equipment_cost, fig::weldment_equipment), of(CostKind::equipment)}, 2);
  put_formula(
      sheet, row, BreakdownAt::filler,
      {together({joint_part(tables, fig::filler_cost, line.joints), joint_part(tables, fig::flux_cost, line.joints)}),
       of(CostKind::filler)},
      2);
  put_formula(sheet, row, BreakdownAt::gas, {joints(fig::gas_cost), of(CostKind::gas)}, 2);
  put_formula(sheet, row, BreakdownAt::power, {joints(fig::power_cost), of(CostKind::power)}, 2);
  put_formula(sheet, row, BreakdownAt::wear, {joints(fig::wear_cost), of(CostKind::wear)}, 2);
  if (line.weldment || line.bought.last >= line.bought.first)
    put_formula(sheet, row, BreakdownAt::bought,
                {together({weldment_part(tables, fig::metal_cost, line.weldment),
                           weldment_part(tables, fig::free_issue_cost, line.weldment), bought_part(line.bought)}),
                 bought_of(line.totals)},
                2);
  const double cost = sum_of_kinds(line.totals.cost);
  put_formula(
      sheet, row, BreakdownAt::cost,
      {fmt::format("SUM({}:{})", cell_name(row, BreakdownAt::labour), cell_name(row, BreakdownAt::bought)), cost}, 2);
  const std::string total = cell_name(total_row, BreakdownAt::cost, true);
  put_share(sheet, row, BreakdownAt::share,
            {fmt::format("IF({0}>0,{1}/{0}*100,0)", total, cell_name(row, BreakdownAt::cost)),
             all > 0 ? cost / all * 100 : 0});
}

/// Each joint's cost by the length of its welds.
void put_per_length(Sheet& sheet, std::uint32_t row, const Line& line, const Tables& tables, Terms terms) {
  const std::string length = joint_part(tables, fig::weld_length, line.joints);
  const double shown = line.totals.welding.weld_length.si / shown_in(terms, fig::weld_length).unit.si;
  put_formula(sheet, row, BreakdownAt::per_length,
              {fmt::format("IF({0}>0,{1}/{0},0)", length, cell_name(row, BreakdownAt::cost)),
               shown > 0 ? sum_of_kinds(line.totals.cost) / shown : 0},
              2);
}

/// A list of lines that are made when they are needed, and its total.
struct LineList {
  const char* title = "";
  std::size_t count = 0;
  std::function<Line(std::size_t)> line;
  bool by_joint = false;
};

struct LineSums {
  std::array<double, BreakdownAt::columns> of{};  // by column
  double all = 0;
};

LineSums sums_of(const LineList& lines) {
  LineSums sums;
  for (std::size_t i = 0; i < lines.count; ++i) {
    const PieceTotals totals = lines.line(i).totals;
    sums.of[BreakdownAt::floor] += totals.floor.si / unit::h.si;
    for (std::size_t k = 0; k < cost_kinds; ++k) sums.of[column_of(static_cast<CostKind>(k))] += totals.cost[k];
    sums.all += sum_of_kinds(totals.cost);
  }
  sums.of[BreakdownAt::cost] = sums.all;
  return sums;
}

/// The lines, which the sheet makes later, and their total; gives the next free row.
std::uint32_t put_lines(Sheet& sheet, std::uint32_t row, const LineList& lines, const RateBook& book,
                        const std::shared_ptr<const Tables>& tables) {
  put_headings(sheet, row, lines.title, book, lines.by_joint);
  const std::uint32_t first = row + 1, total = first + static_cast<std::uint32_t>(lines.count);
  const LineSums sums = sums_of(lines);
  const auto make = [lines, tables, first, total, all = sums.all, terms = book.terms](std::size_t i,
                                                                                      std::vector<Cell>& cells) {
    const Line line = lines.line(i);
    const std::uint32_t in_row = first + static_cast<std::uint32_t>(i);
    Sheet own;
    own.cells.swap(cells);
    put_line(own, in_row, line, *tables, total, all);
    if (lines.by_joint) put_per_length(own, in_row, line, *tables, terms);
    own.cells.swap(cells);
  };
  if (lines.by_joint)
    sheet.later = {lines.count, make};
  else
    for (std::size_t i = 0; i < lines.count; ++i) make(i, sheet.cells);
  put(sheet, total, BreakdownAt::words, "together", Look::total);
  for (std::uint16_t c = BreakdownAt::floor; c <= BreakdownAt::cost; ++c)
    if (!lines.by_joint || c != BreakdownAt::bought)
      put_formula(sheet, total, c,
                  {fmt::format("SUM({}:{})", cell_name(first, c), cell_name(total - 1, c)), sums.of[c]}, 2,
                  Look::total);
  return total + 3;
}

}  // namespace

Sheet breakdown_page(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote,
                     const ShopPages& pages, const CostPage& cost) {
  Sheet sheet;
  sheet.name = breakdown_sheet;
  put_title(sheet, "Where cost and time of a piece come from",
            "For one piece: without what is paid by lot or once, and before overhead that is added to labour.");
  const std::vector<Line> weldments = weldment_lines(job, estimate, pages);
  const auto tables = std::make_shared<const Tables>(Tables{pages.joints.table, pages.weldments.table});
  const auto weldment = [&](std::size_t w) { return weldments[w]; };
  std::uint32_t row = put_lines(sheet, heading_row, {"by weldment", weldments.size(), weldment}, book, tables);
  SplitLines split{heading_row + 1, BreakdownAt::cost, {}, {}};
  for (const Line& line : weldments) {
    split.costs.push_back(sum_of_kinds(line.totals.cost));
    split.words.push_back(line.words);
  }
  row = put_price_split(sheet, row, book, quote, cost, split);
  row = put_element_minutes(sheet, row, book, estimate, piece_totals(job, estimate, quote).floor, pages);
  const auto joint = [&job, &estimate, rows = first_rows(job, pages.joints)](std::size_t j) {
    return joint_line(job, estimate, rows, j);
  };
  put_lines(sheet, row, {"by joint", job.joints.size(), joint, true}, book, tables);
  sheet.repeat_rows = {row, row};
  sheet.column_widths = {40, 11, 11, 12, 11, 11, 11, 11, 13, 12, 10, 13};
  sheet.frozen_rows = 2;
  sheet.landscape = true;
  break_pages(sheet, {{heading_row, false}, {row, false}}, book.letter_paper);
  return sheet;
}

}  // namespace seambook
