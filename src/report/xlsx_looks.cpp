#include "report/xlsx_looks.hpp"

#include <xlsxwriter.h>

#include <new>

namespace seambook {
namespace {

// Arial is drawn with its metric twin Liberation Sans where it is missing, so pages break alike everywhere.
lxw_format* base_format(lxw_workbook* book) {
  lxw_format* format = workbook_add_format(book);
  if (format == nullptr) throw std::bad_alloc();
  format_set_font_name(format, "Arial");
  format_set_font_family(format, 2);
  format_set_font_size(format, 10);
  format_set_font_color(format, palette::ink);
  format_set_align(format, LXW_ALIGN_VERTICAL_CENTER);
  return format;
}

void tint_cell(lxw_format* format, std::uint32_t colour) {
  format_set_pattern(format, LXW_PATTERN_SOLID);
  format_set_fg_color(format, colour);
}

void frame_cell(lxw_format* format, std::uint32_t colour) {
  format_set_border(format, LXW_BORDER_THIN);
  format_set_border_color(format, colour);
}

void style_title(lxw_format* format) {
  format_set_bold(format);
  format_set_font_size(format, 15);
  format_set_font_color(format, palette::accent);
}

void style_heading(lxw_format* format) {
  format_set_bold(format);
  format_set_font_size(format, 9);
  format_set_text_wrap(format);
  format_set_align(format, LXW_ALIGN_VERTICAL_BOTTOM);
  tint_cell(format, palette::heading_fill);
  format_set_bottom(format, LXW_BORDER_MEDIUM);
  format_set_bottom_color(format, palette::line);
}

void style_sum(lxw_format* format, bool last) {
  format_set_bold(format);
  format_set_top(format, last ? LXW_BORDER_MEDIUM : LXW_BORDER_THIN);
  format_set_top_color(format, last ? palette::ink : palette::line);
  if (last) tint_cell(format, palette::total_fill);
}

void style_note(lxw_format* format) {
  format_set_italic(format);
  format_set_font_size(format, 8.5);
  format_set_font_color(format, palette::muted);
  format_set_text_wrap(format);
}

void style_warning(lxw_format* format) {
  format_set_text_wrap(format);
  format_set_font_color(format, palette::warning_ink);
  tint_cell(format, palette::warning_fill);
}

void style_input(lxw_format* format) {
  format_set_unlocked(format);
  tint_cell(format, palette::input_fill);
  frame_cell(format, palette::input_line);
}

void style_frozen(lxw_format* format) {
  tint_cell(format, palette::frozen_fill);
  frame_cell(format, palette::hairline);
}

void style_box(lxw_format* format) {
  format_set_unlocked(format);
  format_set_text_wrap(format);
  frame_cell(format, palette::line);
}

void style_band(lxw_format* format) {
  format_set_bold(format);
  tint_cell(format, palette::band_fill);
}

/// A bar's cells stand close; what is written at its beginning runs over those behind it.
void style_bar(lxw_format* format, std::uint32_t fill, std::uint32_t ink) {
  tint_cell(format, fill);
  format_set_font_color(format, ink);
  format_set_align(format, LXW_ALIGN_LEFT);
  format_set_top(format, LXW_BORDER_THIN);
  format_set_bottom(format, LXW_BORDER_THIN);
  format_set_top_color(format, palette::line);
  format_set_bottom_color(format, palette::line);
}

void style_bars(lxw_format* format, Look look) {
  if (look == Look::bar_set_up) return style_bar(format, palette::set_up_fill, palette::paper);
  if (look == Look::bar_work) return style_bar(format, palette::work_fill, palette::ink);
  if (look == Look::bar_other_work) return style_bar(format, palette::other_work_fill, palette::ink);
  tint_cell(format, palette::closed_fill);
}

void apply_look(lxw_format* format, Look look, Side side) {
  if (side == Side::right) format_set_align(format, LXW_ALIGN_RIGHT);
  if (side == Side::left_with_room) {
    format_set_align(format, LXW_ALIGN_LEFT);
    format_set_indent(format, 1);
  }
  switch (look) {
    case Look::text:
    case Look::figure:
      break;
    case Look::wrapped:
      format_set_text_wrap(format);
      break;
    case Look::title:
      style_title(format);
      break;
    case Look::heading:
      style_heading(format);
      break;
    case Look::label:
      format_set_font_color(format, palette::muted);
      break;
    case Look::input:
      style_input(format);
      break;
    case Look::frozen:
      style_frozen(format);
      break;
    case Look::subtotal:
      style_sum(format, false);
      break;
    case Look::total:
      style_sum(format, true);
      break;
    case Look::note:
      style_note(format);
      break;
    case Look::warning:
      style_warning(format);
      break;
    case Look::box:
      style_box(format);
      break;
    case Look::band:
      style_band(format);
      break;
    case Look::bar_set_up:
    case Look::bar_work:
    case Look::bar_other_work:
    case Look::bar_closed:
      style_bars(format, look);
      break;
  }
}

}  // namespace

lxw_format* format_of(Looks& looks, Look look, const std::string& number_format, Side side) {
  // Two formats that are equal would cost the library a search at every cell.
  if (look == Look::figure) look = Look::text, side = Side::right;
  if (look == Look::title && side == Side::left_with_room) side = Side::left;
  lxw_format*& format = looks.made[number_format][{look, side}];
  if (format == nullptr) {
    format = base_format(looks.book);
    apply_look(format, look, side);
    if (!number_format.empty()) format_set_num_format(format, number_format.c_str());
  }
  return format;
}

lxw_format* highlight_format(Looks& looks) {
  if (looks.highlight == nullptr) {
    looks.highlight = workbook_add_format(looks.book);
    if (looks.highlight == nullptr) throw std::bad_alloc();
    // The fill of a conditional format is its background.
    format_set_bg_color(looks.highlight, palette::highlight_fill);
  }
  return looks.highlight;
}

}  // namespace seambook
