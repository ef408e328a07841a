#include "report/element_minutes.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

constexpr std::uint16_t words_column = 0, min_column = 1, share_column = 2, chart_column = 4;

/// An element's columns on the pages of joints and weldments, and its minutes.
struct ElementLine {
  std::string words, minutes;
  Time<> time;
};

struct JointTimes {
  Time<> welding, start, interpass, change, gouge, fit_up, fit_up_extra, tack, finish, purge, preheat;
  std::array<Time<>, labour_kinds> elements{};
};

JointTimes times_of(const Estimate& estimate) {
  JointTimes t;
  const auto add = [](Time<>& to, Time<> x) { to = to + x; };
  for (const RowFigures<double>& row : estimate.joints) {
    for (const PassFigures<double>& group : row.passes) {
      add(t.welding, group.labour.welding), add(t.start, group.labour.start), add(t.gouge, group.labour.gouge);
      add(t.interpass, group.labour.interpass), add(t.change, group.labour.electrode_change);
    }
    const JointLabour<double>& whole = row.joint.labour;
    add(t.fit_up, whole.fit_up), add(t.fit_up_extra, whole.fit_up_extra), add(t.tack, whole.tack);
    add(t.finish, whole.finish), add(t.purge, whole.purge), add(t.preheat, whole.preheat);
    for (std::size_t k = 0; k < labour_kinds; ++k) add(t.elements[k], whole.elements.of[k]);
  }
  for (const WeldmentFigures<double>& w : estimate.weldments)
    for (std::size_t k = 0; k < labour_kinds; ++k) add(t.elements[k], w.elements.of[k]);
  return t;
}

/// Elements that this job has, in the order of the work.
std::vector<ElementLine> element_lines(const RateBook& book, const Estimate& estimate, const ShopPages& pages) {
  const JointTimes t = times_of(estimate);
  Time<> parts, turns;
  for (const WeldmentFigures<double>& w : estimate.weldments) parts = parts + w.parts, turns = turns + w.turns;
  std::vector<ElementLine> lines;
  const auto line = [&](const Figure& figure, Time<> time, std::initializer_list<std::string> sums) {
    if (time.si > 0) lines.push_back({figure.words, together(sums), time});
  };
  const auto of_joints = [&](const Figure& figure, Time<> time) { line(figure, time, {joint_sum(pages, figure)}); };
  line(fig::parts_min, parts, {weldment_sum(pages, fig::parts_min)});
  of_joints(fig::fit_up_min, t.fit_up);
  of_joints(fig::fit_up_extra_min, t.fit_up_extra);
  of_joints(fig::tack_min, t.tack);
  of_joints(fig::preheat_min, t.preheat);
  of_joints(book.method.by_factor ? fig::factor_min : fig::arc, t.welding);
  of_joints(fig::start_min, t.start);
  of_joints(fig::interpass_min, t.interpass);
  of_joints(fig::change_min, t.change);
  of_joints(fig::gouge_min, t.gouge);
  of_joints(fig::purge_min, t.purge);
  line(fig::turns_min, turns, {weldment_sum(pages, fig::turns_min)});
  of_joints(fig::finish_min, t.finish);
  for (std::size_t k = 0; k < labour_kinds; ++k) {
    const Figure& figure = fig::element_min[k];
    line(figure, t.elements[k], {joint_sum(pages, figure), weldment_sum(pages, figure)});
  }
  return lines;
}

/// Pixels of a picture with so many bars, each with its name.
double chart_height(std::uint32_t bars) { return std::max(300.0, 27.0 * bars); }

/// That it covers, and two free ones.
std::uint32_t rows_beside(std::uint32_t bars) {
  constexpr double row_pixels = 21;
  return static_cast<std::uint32_t>(std::ceil(chart_height(bars) / row_pixels)) + 2;
}

void put_chart(Sheet& sheet, std::uint32_t heading, std::uint32_t first, std::uint32_t last) {
  const auto range = [&](std::uint16_t column) {
    return fmt::format("{}!{}:{}", sheet.name, cell_name(first, column, true), cell_name(last, column, true));
  };
  sheet.charts.push_back({ChartKind::bar,
                          heading,
                          chart_column,
                          "Where the minutes of a piece go",
                          "",
                          {{"minutes", range(words_column), range(min_column)}},
                          560,
                          chart_height(last - first + 1)});
}

}  // namespace

std::uint32_t put_element_minutes(Sheet& sheet, std::uint32_t row, const RateBook& book, const Estimate& estimate,
                                  Time<> floor, const ShopPages& pages) {
  const std::vector<ElementLine> lines = element_lines(book, estimate, pages);
  const std::uint32_t heading = row, first = row + 1, rest = first + static_cast<std::uint32_t>(lines.size()),
                      total = rest + 1;
  put(sheet, heading, words_column, "by labour element", Look::heading);
  put(sheet, heading, min_column, "min", Look::heading);
  put(sheet, heading, share_column, "of all", Look::heading);
  const auto minutes = [](Time<> t) { return t.si / unit::min.si; };
  const auto share = [&](std::uint32_t at, Time<> time) {
    put_share(sheet, at, share_column,
              {fmt::format("IF({0}>0,{1}/{0}*100,0)", cell_name(total, min_column, true), cell_name(at, min_column)),
               floor.si > 0 ? time.si / floor.si * 100 : 0});
  };
  Time<> sum;
  for (const ElementLine& line : lines) {
    put(sheet, ++row, words_column, line.words);
    put_formula(sheet, row, min_column, {line.minutes, minutes(line.time)}, 1);
    share(row, line.time);
    sum = sum + line.time;
  }
  put(sheet, rest, words_column, "what access and rest add");
  put_formula(sheet, rest, min_column,
              {fmt::format("{}-{}", cell_name(total, min_column),
                           lines.empty() ? std::string("0")
                                         : fmt::format("SUM({}:{})", cell_name(first, min_column),
                                                       cell_name(rest - 1, min_column))),
               minutes(floor - sum)},
              1);
  share(rest, floor - sum);
  put(sheet, total, words_column, "floor time", Look::total);
  put_formula(sheet, total, min_column,
              {together({joint_sum(pages, fig::floor), weldment_sum(pages, fig::weldment_floor)}), minutes(floor)}, 1,
              Look::total);
  put_chart(sheet, heading, first, rest);
  return std::max(total + 3, heading + rows_beside(rest - first + 1));
}

}  // namespace seambook
