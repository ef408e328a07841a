#include "report/xlsx_names.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>
#include <stdexcept>
#include <string>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

char lower_letter(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool latin_letter(char c) { return lower_letter(c) >= 'a' && lower_letter(c) <= 'z'; }
bool plain_figure(char c) { return c >= '0' && c <= '9'; }

std::string lower_case(std::string_view text) {
  std::string result(text);
  std::ranges::transform(result, result.begin(), lower_letter);
  return result;
}

// Characters of valid UTF-8 text, as the limits of the format count them; nothing when the text is broken.
std::optional<std::size_t> format_length(std::string_view text) {
  std::size_t length = 0;
  while (!text.empty()) {
    const Character next = character_at(text, 0);
    if (!next.valid || is_control(next.code) || next.code == 0xFFFE || next.code == 0xFFFF) return std::nullopt;
    length += next.code > 0xFFFF ? 2 : 1;
    text.remove_prefix(next.bytes);
  }
  return length;
}

std::string_view fault_of_sheet_name(const std::string& name) {
  const auto length = format_length(name);
  if (!length) return "is not valid text";
  if (*length == 0) return "is empty";
  if (*length > 31) return "is longer than 31 characters";
  if (name.find_first_of("[]:*?/\\") != std::string::npos) return "holds one of [ ] : * ? / \\";
  if (name.front() == '\'' || name.back() == '\'') return "begins or ends with an apostrophe";
  if (lower_case(name) == "history") return "is reserved";
  return {};
}

// Length of `$A$3` or `A3` at the beginning of `text`; 0 when there is no cell.
std::size_t cell_length(std::string_view text) {
  std::size_t at = 0;
  const auto take = [&](auto kind, std::size_t most) {
    const std::size_t begin = at;
    while (at < text.size() && at - begin < most && kind(text[at])) ++at;
    return at > begin;
  };
  const auto dollar = [](char c) { return c == '$'; };
  take(dollar, 1);
  if (!take(latin_letter, 3)) return 0;
  take(dollar, 1);
  return take(plain_figure, 7) ? at : 0;
}

bool is_cell_reference(std::string_view text) { return !text.empty() && cell_length(text) == text.size(); }

// `R1C1`, `r`, `C3`: a cell in the other way of counting.
bool is_row_column(std::string_view name) {
  std::size_t at = 0;
  const auto digits = [&] {
    while (at < name.size() && plain_figure(name[at])) ++at;
  };
  if (at < name.size() && lower_letter(name[at]) == 'r') {
    ++at;
    digits();
  }
  if (at < name.size() && lower_letter(name[at]) == 'c') {
    ++at;
    digits();
  }
  return at == name.size();
}

std::string_view fault_of_defined_name(const std::string& name) {
  const auto length = format_length(name);
  if (!length) return "is not valid text";
  if (*length == 0 || *length > 255) return "is empty or longer than 255 characters";
  const auto allowed = [](char c) { return latin_letter(c) || plain_figure(c) || c == '_' || c == '.'; };
  if (!std::ranges::all_of(name, allowed)) return "holds something else than letters, digits, '_' and '.'";
  if (!latin_letter(name.front()) && name.front() != '_') return "must begin with a letter or '_'";
  if (is_cell_reference(name) || is_row_column(name)) return "reads as a cell";
  if (lower_case(name).starts_with("_xl")) return "is reserved";
  return {};
}

// The sheet that a reference such as `'Weld sequence'!$B$2` names, and what follows the '!'.
bool names_a_sheet(const Workbook& workbook, std::string_view reference, std::string_view& rest) {
  for (const Sheet& sheet : workbook.sheets) {
    const std::string formal = sheet_reference(sheet.name);
    for (const std::string& prefix : {formal + "!", "'" + sheet.name + "'!"}) {
      if (!reference.starts_with(prefix)) continue;
      rest = reference.substr(prefix.size());
      return true;
    }
  }
  return false;
}

bool is_cell_range(std::string_view text) {
  const std::size_t first = cell_length(text);
  if (first == 0) return false;
  text.remove_prefix(first);
  return text.empty() || (text.front() == ':' && is_cell_reference(text.substr(1)));
}

[[noreturn]] void refuse_name(std::string_view kind, std::string_view name, std::string_view why) {
  throw std::invalid_argument(fmt::format("the {} '{}' {}", kind, name, why));
}

}  // namespace

void check_sheet_names(const Workbook& workbook) {
  std::set<std::string> taken;
  for (const Sheet& sheet : workbook.sheets) {
    const auto fault = fault_of_sheet_name(sheet.name);
    if (!fault.empty()) refuse_name("sheet name", sheet.name, fault);
    if (!taken.insert(lower_case(sheet.name)).second) refuse_name("sheet name", sheet.name, "is used twice");
  }
}

void check_defined_names(const Workbook& workbook) {
  std::set<std::string> taken;
  for (const DefinedName& defined : workbook.names) {
    const auto fault = fault_of_defined_name(defined.name);
    if (!fault.empty()) refuse_name("defined name", defined.name, fault);
    if (!taken.insert(lower_case(defined.name)).second) refuse_name("defined name", defined.name, "is used twice");
    std::string_view rest;
    if (!names_a_sheet(workbook, defined.target, rest) || !is_cell_range(rest)) {
      refuse_name("defined name", defined.name,
                  fmt::format("points to '{}', no cell of this workbook", defined.target));
    }
  }
}

bool is_chart_range(const Workbook& workbook, std::string_view range) {
  std::string_view rest;
  return names_a_sheet(workbook, range, rest) && is_cell_range(rest);
}

}  // namespace seambook
