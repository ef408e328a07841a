// How cells look: one set of fonts, tints and borders for all workbooks, quiet enough to print in grey.
// A format is made once for each look and number format used.
#pragma once

#include <map>
#include <string>
#include <utility>

#include "report/workbook.hpp"

struct lxw_format;
struct lxw_workbook;

namespace seambook {

/// Colours as 0xRRGGBB: warm greys and one accent.
namespace palette {
inline constexpr std::uint32_t ink = 0x2F2B27, muted = 0x756D63, line = 0x8F877B, hairline = 0xD8D2C8;
inline constexpr std::uint32_t heading_fill = 0xEFEBE4, total_fill = 0xF6F3EE;
inline constexpr std::uint32_t accent = 0x9C4A1F;
inline constexpr std::uint32_t input_fill = 0xFFF5D6, input_line = 0xE3CF9C, frozen_fill = 0xE6EAEA;
inline constexpr std::uint32_t warning_fill = 0xFBE6DA, warning_ink = 0x86300C, highlight_fill = 0xF9DFC6;
inline constexpr std::uint32_t band_fill = 0xE3DACB, paper = 0xFFFFFF;
// Far enough apart in brightness to tell them in grey.
inline constexpr std::uint32_t set_up_fill = 0x6B3416, work_fill = 0xD2BA93, other_work_fill = 0xEADFC9,
                               closed_fill = 0xF4F2EF;
}  // namespace palette

/// Where a cell's content stands: numbers, and the headings over them, to the right; text beside other columns keeps a
/// little room to the number before it. (Room on the right of numbers would do too, but one office suite forgets it.)
enum class Side : std::uint8_t { left, left_with_room, right };

/// The looks of one workbook under construction; the library owns the formats.
struct Looks {
  lxw_workbook* book = nullptr;
  std::map<std::string, std::map<std::pair<Look, Side>, lxw_format*>> made;  // by number format
  lxw_format* highlight = nullptr;
};

lxw_format* format_of(Looks&, Look, const std::string& number_format, Side);
/// The tint of highlighted rows.
lxw_format* highlight_format(Looks&);

}  // namespace seambook
