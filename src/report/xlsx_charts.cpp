#include "report/xlsx_charts.hpp"

#include <xlsxwriter.h>

#include <array>
#include <new>
#include <string>

#include "report/xlsx_errors.hpp"
#include "report/xlsx_looks.hpp"

namespace seambook {
namespace {

constexpr std::array<std::uint32_t, 8> series_colours = {palette::accent, 0x6E675E, 0xC99F74, 0x93A09C,
                                                         0x4D5F62,        0xD9C7A3, 0xB8795A, 0xB5AEA4};

std::uint8_t library_type(ChartKind kind) {
  switch (kind) {
    case ChartKind::bar:
      return LXW_CHART_BAR;
    case ChartKind::stacked_bar:
      return LXW_CHART_BAR_STACKED;
    case ChartKind::column:
      return LXW_CHART_COLUMN;
    case ChartKind::line:
      return LXW_CHART_LINE;
  }
  return LXW_CHART_COLUMN;
}

// The library takes text that begins with '=' for a reference; a space before it keeps it text.
std::string as_text(const std::string& text) { return text.starts_with('=') ? " " + text : text; }

void style_axis(lxw_chart_axis* axis, lxw_chart_font& font, bool gridlines) {
  lxw_chart_line line{};
  line.color = palette::hairline;
  line.width = 0.75;
  chart_axis_set_num_font(axis, &font);
  chart_axis_set_name_font(axis, &font);
  chart_axis_set_line(axis, &line);
  chart_axis_major_gridlines_set_visible(axis, gridlines ? LXW_TRUE : LXW_FALSE);
  if (gridlines) chart_axis_major_gridlines_set_line(axis, &line);
  chart_axis_set_major_tick_mark(axis, LXW_CHART_AXIS_TICK_MARK_NONE);
}

void add_series(lxw_chart* chart, ChartKind kind, const ChartSeries& given, std::uint32_t colour) {
  lxw_chart_series* series =
      chart_add_series(chart, given.categories.empty() ? nullptr : given.categories.c_str(), given.values.c_str());
  if (series == nullptr) throw std::bad_alloc();
  if (!given.name.empty()) chart_series_set_name(series, as_text(given.name).c_str());
  if (kind == ChartKind::line) {
    lxw_chart_line line{};
    line.color = colour;
    line.width = 2.0;
    chart_series_set_line(series, &line);
    return;
  }
  lxw_chart_fill fill{};
  fill.color = colour;
  chart_series_set_fill(series, &fill);
}

// The library's "x axis" is the one with the categories also where it stands upright.
void style_axes(lxw_chart* chart, const Chart& given, lxw_chart_font& font) {
  const bool upright = given.kind == ChartKind::bar || given.kind == ChartKind::stacked_bar;
  lxw_chart_axis* categories = upright ? chart->y_axis : chart->x_axis;
  lxw_chart_axis* values = upright ? chart->x_axis : chart->y_axis;
  style_axis(categories, font, false);
  style_axis(values, font, true);
  if (!given.value_axis.empty()) chart_axis_set_name(values, as_text(given.value_axis).c_str());
  if (upright) {
    chart_axis_set_interval_unit(categories, 1);  // every bar has its name
    chart_axis_set_reverse(categories);
    chart_axis_set_crossing_max(categories);  // keeps the values' axis at the bottom
    if (given.overlapped) chart_axis_set_label_position(categories, LXW_CHART_AXIS_LABEL_POSITION_LOW);
  }
}

void style_chart(lxw_chart* chart, const Chart& given) {
  std::string font_name = "Arial";
  lxw_chart_font small{}, large{};
  small.name = large.name = font_name.data();
  small.size = 9;
  small.bold = LXW_EXPLICIT_FALSE;
  small.color = palette::muted;
  large.size = 11;
  large.bold = LXW_TRUE;
  large.color = palette::ink;
  style_axes(chart, given, small);
  if (given.title.empty()) {
    chart_title_off(chart);
  } else {
    chart_title_set_name(chart, as_text(given.title).c_str());
    chart_title_set_name_font(chart, &large);
  }
  chart_legend_set_position(chart, given.series.size() > 1 ? LXW_CHART_LEGEND_BOTTOM : LXW_CHART_LEGEND_NONE);
  chart_legend_set_font(chart, &small);
  if (given.kind != ChartKind::line) chart_set_series_gap(chart, 60);
  if (given.overlapped) chart_set_series_overlap(chart, 100);
  lxw_chart_line border{};
  border.color = palette::hairline;
  border.width = 0.75;
  chart_chartarea_set_line(chart, &border);
}

}  // namespace

void insert_chart(lxw_workbook* book, lxw_worksheet* sheet, const Chart& given) {
  lxw_chart* chart = workbook_add_chart(book, library_type(given.kind));
  if (chart == nullptr) throw std::bad_alloc();
  for (std::size_t at = 0; at < given.series.size(); ++at) {
    add_series(chart, given.kind, given.series[at], series_colours[at % series_colours.size()]);
  }
  style_chart(chart, given);
  constexpr double library_width = 480, library_height = 288;  // pixels of an unscaled chart
  std::string description = given.title;
  lxw_chart_options options{};
  options.x_scale = given.width / library_width;
  options.y_scale = given.height / library_height;
  options.description = description.data();
  must(worksheet_insert_chart_opt(sheet, given.row, given.column, chart, &options));
}

}  // namespace seambook
