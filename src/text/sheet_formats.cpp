#include "text/sheet_formats.hpp"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <cmath>
#include <map>
#include <pugixml.hpp>

namespace seambook {
namespace {

bool is_built_in_date(std::uint32_t id) {
  return (id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 47) || (id >= 50 && id <= 58);
}

/// The format codes that files name by number only, as far as they matter here.
NumberLook built_in_look(std::uint32_t id) {
  NumberLook look;
  look.date = is_built_in_date(id);
  look.percent = id == 9 || id == 10;
  return look;
}

/// Plain digits, no exponent. 15 significant ones: what spreadsheet programs keep, and what hides the last bits of
/// sums.
std::string plain_number(double number) {
  constexpr int digits = 15;
  constexpr double largest = 1e21;
  if (number == 0 || !std::isfinite(number)) return "0";
  if (std::abs(number) >= largest) return fmt::format("{:.15g}", number);
  const int above = static_cast<int>(std::floor(std::log10(std::abs(number)))) + 1;
  std::string text = fmt::format("{:.{}f}", number, std::clamp(digits - above, 0, 30));
  if (text.find('.') == text.npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.')) text.pop_back();
  return text;
}

/// Days and the minutes of the last as a date and a time of day. Nothing for what no sheet can show as a date.
std::string date_text(double number, bool from_1904) {
  using namespace std::chrono;
  constexpr double minutes_a_day = 1440, last_day = 2'958'466;
  if (!(number >= 0) || number >= last_day) return {};
  const auto all = static_cast<std::int64_t>(std::llround(number * minutes_a_day));
  const std::int64_t day = all / 1440, minute = all % 1440;
  const std::string clock = fmt::format("{:02}:{:02}", minute / 60, minute % 60);
  if (day == 0 && !from_1904) return clock;
  // 1900 counts a 29th of February that never was: days before it stand one later.
  const sys_days start = from_1904 ? sys_days(year(1904) / 1 / 1) : sys_days(year(1899) / 12 / (day < 60 ? 31 : 30));
  const year_month_day date(start + days(day));
  const std::string text = fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  return minute == 0 ? text : text + " " + clock;
}

/// Where a quoted text, an escaped character or a bracket that begins at `at` ends; its words go to `words`.
std::size_t step_over_literal(std::string_view code, std::size_t at, std::string& words) {
  const char closing = code[at] == '"' ? '"' : ']';
  if (code[at] == '\\' || code[at] == '!') {
    words += code.substr(at + 1, 1);
    return std::min(at + 2, code.size());
  }
  if (code[at] == '_' || code[at] == '*') return std::min(at + 2, code.size());
  const std::size_t end = std::min(code.find(closing, at + 1), code.size());
  if (closing == '"') words += code.substr(at + 1, end - at - 1);
  return std::min(end + 1, code.size());
}

bool is_elapsed_time(std::string_view bracket) {
  return !bracket.empty() && bracket.find_first_not_of("hHmMsS") == bracket.npos;
}

}  // namespace

NumberLook number_look(std::string_view code) {
  NumberLook look;
  if (code.starts_with("General")) code.remove_prefix(7);
  for (std::size_t at = 0; at < code.size() && code[at] != ';';) {
    const char c = code[at];
    if (std::string_view("\"\\!_*[").find(c) != std::string_view::npos) {
      const std::size_t end = step_over_literal(code, at, look.behind);
      if (c == '[') look.date = look.date || is_elapsed_time(code.substr(at + 1, end - std::min(end, at + 2)));
      at = end;
      continue;
    }
    if (std::string_view("0#?").find(c) != std::string_view::npos) look.behind.clear();
    if (c == '%') look.percent = true;
    if (std::string_view("yYmMdDhHsS").find(c) != std::string_view::npos) look.date = true;
    ++at;
  }
  if (look.date) look.behind.clear(), look.percent = false;
  const std::size_t first = look.behind.find_first_not_of(' ');
  look.behind =
      first == look.behind.npos ? "" : look.behind.substr(first, look.behind.find_last_not_of(' ') + 1 - first);
  return look;
}

std::vector<NumberLook> number_looks(const std::string& styles_part) {
  constexpr std::size_t most_styles = 70'000;
  std::vector<NumberLook> looks;
  pugi::xml_document document;
  if (!parse_part(document, styles_part)) return looks;
  const pugi::xml_node root = child_named(document, "styleSheet");
  std::map<std::uint32_t, NumberLook> own;
  each_child(child_named(root, "numFmts"), "numFmt", [&](const pugi::xml_node& format) {
    if (const auto id = whole_of(attribute_of(format, "numFmtId")))
      own[*id] = number_look(attribute_of(format, "formatCode"));
    return own.size() < most_styles;
  });
  each_child(child_named(root, "cellXfs"), "xf", [&](const pugi::xml_node& style) {
    const std::uint32_t id = whole_of(attribute_of(style, "numFmtId")).value_or(0);
    const auto found = own.find(id);
    looks.push_back(found == own.end() ? built_in_look(id) : found->second);
    return looks.size() < most_styles;
  });
  return looks;
}

InputField shown_field(double number, const NumberLook& look, bool from_1904) {
  if (look.date) {
    std::string text = date_text(number, from_1904);
    if (!text.empty()) return {std::move(text), {}, FieldKind::date};
  }
  std::string text = plain_number(look.percent ? number * 100 : number);
  if (look.percent) text += " %";
  if (!look.behind.empty()) text += " " + look.behind;
  return {std::move(text), {}, FieldKind::number};
}

}  // namespace seambook
