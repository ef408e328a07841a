#include "report/takeoff_book.hpp"

#include <algorithm>
#include <span>

#include "read/field_info.hpp"
#include "report/cells.hpp"
#include "resolve/weld_kinds.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t rows_to_fill = 200;

/// What a column is filled with. Sizes are numbers in mm, or text in inches; `choice` is from the lists below.
enum class Filled : std::uint8_t { words, size, whole, weld, position, either };

struct TemplateColumn {
  std::string_view key;
  Filled filled = Filled::words;
  double width = 10;
};
constexpr TemplateColumn template_columns[] = {
    {"id", Filled::words, 8},           {"mark", Filled::words, 28},       {"weld", Filled::weld, 13},
    {"leg", Filled::size, 8},           {"thickness", Filled::words, 14},  {"length", Filled::size, 10},
    {"count", Filled::whole, 8},        {"sides", Filled::either, 8},      {"outside_diameter", Filled::size, 16},
    {"element", Filled::size, 10},      {"pitch", Filled::size, 9},        {"gap", Filled::size, 8},
    {"position", Filled::position, 10}, {"base_metal", Filled::words, 13}, {"process", Filled::words, 10},
    {"finish", Filled::words, 9},       {"after", Filled::words, 14},      {"note", Filled::words, 30}};

constexpr std::string_view positions_iso[] = {"PA", "PB", "PC", "PD", "PE", "PF", "PG"};
constexpr std::string_view positions_aws[] = {"1F", "2F", "3F", "4F", "1G", "2G", "3G", "4G"};

constexpr auto column_count = static_cast<std::uint16_t>(std::size(template_columns));

/// A joint of the sheet Example, in the order of `template_columns`; both terms.
struct ExampleRow {
  std::string_view iso[column_count], aws[column_count];
};
constexpr ExampleRow example_rows[] = {
    {{"J1", "upright to base", "fillet", "5", "10 / 12", "160", "1", "2"},
     {"J1", "upright to base", "fillet", "1/4", "3/8 / 1/2", "6", "1", "2"}},
    {{"J2", "gussets", "fillet", "4", "8", "90", "4", "", "", "", "", "", "", "", "", "", "J1"},
     {"J2", "gussets", "fillet", "3/16", "5/16", "3-1/2", "4", "", "", "", "", "", "", "", "", "", "J1"}},
    {{"J3", "long edge", "fillet", "4", "8", "450", "1", "1", "", "40", "120"},
     {"J3", "long edge", "fillet", "3/16", "5/16", "18", "1", "1", "", "2", "5"}},
    {{"J4", "tube on plate", "fillet", "3", "4 / 8", "", "2", "", "48.3"},
     {"J4", "tube on plate", "fillet", "1/8", "3/16 / 1/4", "", "2", "", "1.9"}},
    {{"J5", "butt in the base", "single_v", "", "10", "200", "1", "", "", "", "", "", "", "", "", "", "J1 J2",
      "full penetration"},
     {"J5", "butt in the base", "single_v", "", "3/8", "8", "1", "", "", "", "", "", "", "", "", "", "J1 J2",
      "full penetration"}}};

/// What a column of a key is filled with where that is not what the table of fields says of it: because two members
/// stand in one cell, what only the job file can hold does not, or the workbook is in inches.
struct ColumnWords {
  std::string_view key, about, iso, aws;  // empty: as the table of fields has it
};
constexpr ColumnWords column_words[] = {
    {"thickness", "of both members, or of first and second with a slash between blanks", "8, or 3 / 10",
     "5/16, or 1/8 / 3/8"},
    {"after", "joints that must be welded before, with a blank between them", "J1 J2", "J1 J2"},
    {"alternatives", "procedures to compare with, with a blank between them", "ST-SH SG-F3", "F-1/8 F-3/16"},
    {"passes", "how many", "2", "2"},
    {"backgouge", "", "true", "true"},
    {"excess", "cap of a butt weld, as a share of the groove", "10 %", "10 %"},
    {"hold", "", "root visual", "root visual"},
    {"leg", "", "", "1/4"},
    {"throat", "", "", "3/16"},
    {"length", "", "", "12"},
    {"outside_diameter", "", "", "1.9"},
    {"element", "", "", "2"},
    {"pitch", "", "", "6"},
    {"gap_e", "", "", "4"},
    {"gap", "", "", "1/16"},
    {"gap_max", "", "", "0.006"},
    {"root_face", "", "", "1/16"},
    {"legs", "", "6 / 8", "1/4 / 5/16"},
    {"deep_throat", "", "", "1/4"},
    {"depth", "", "12 / 10", "1/2 / 3/8"},
    {"radius", "", "", "1/4"},
    {"reinforce", "", "", "1/4"},
    {"diameter", "", "", "3/4"},
    {"width", "", "", "1/2"},
    {"layer_height", "", "", "1/8"},
    {"branch_on", "", "", "8-5/8"},
    {"around", "", "60 / 40", "2-1/2 / 1-1/2"},
    {"corner_radius", "", "", "1/4"},
    {"tube", "", "", "1.9"},
    {"preheat", "", "", "250 degF"},
    {"interpass_max", "", "", "480 degF"},
    {"heat_input_max", "", "", "60 kJ/in"},
    {"process", "", "", "GMAW"},
    {"position", "", "", "2F"},
    {"base_metal", "", "", "A36"}};

std::vector<FieldInfo> keys_of_joints() {
  const auto inside = [](const std::vector<FieldInfo>& fields, std::string_view key) {
    return std::find_if(fields.begin(), fields.end(), [&](const FieldInfo& f) { return f.key == key; })->inside();
  };
  return inside(inside(job_fields(), "weldments"), "joints");
}

bool is_length(const FieldInfo& info) {
  return (info.shape == Shape::amount || info.shape == Shape::span) && info.dim == dim::length;
}

const FieldInfo& info_of(const std::vector<FieldInfo>& keys, std::string_view key) {
  return *std::find_if(keys.begin(), keys.end(), [&](const FieldInfo& info) { return info.key == key; });
}

std::string heading_text(const FieldInfo& info, Terms terms) {
  const std::string unit = terms == Terms::aws ? " (in)" : " (mm)";
  return std::string(info.key) + (is_length(info) ? unit : "");
}

/// Words for the heading's column and an example, in the unit of its heading.
std::string words_of(const FieldInfo& info, Terms terms) {
  constexpr std::string_view before_example = ": ";
  const std::size_t colon = info.about.find(before_example);
  std::string_view about = info.about.substr(0, colon);
  std::string_view example =
      colon == info.about.npos ? std::string_view() : info.about.substr(colon + before_example.size());
  if (is_length(info) && example.ends_with(" mm")) example.remove_suffix(3);
  const auto* own = std::find_if(std::begin(column_words), std::end(column_words),
                                 [&](const ColumnWords& words) { return words.key == info.key; });
  if (own != std::end(column_words)) {
    if (!own->about.empty()) about = own->about;
    const std::string_view stated = terms == Terms::aws ? own->aws : own->iso;
    if (!stated.empty()) example = stated;
  }
  return std::string(about) + (example.empty() ? "" : std::string(before_example) + std::string(example));
}

Validation rule_of(const FieldInfo& info, Filled filled, Terms terms) {
  Validation rule{.message = words_of(info, terms), .choices = {}, .anything = true, .or_empty = true};
  for (std::size_t w = 0; filled == Filled::weld && w < weld_kinds; ++w)
    rule.choices.emplace_back(weld_key(static_cast<WeldKind>(w)));
  if (filled == Filled::position)
    for (const std::string_view word : terms == Terms::aws ? std::span<const std::string_view>(positions_aws)
                                                           : std::span<const std::string_view>(positions_iso))
      rule.choices.emplace_back(word);
  if (filled == Filled::whole || filled == Filled::either) {
    rule.whole = true;
    rule.minimum = 1;
    rule.maximum = filled == Filled::whole ? 1e6 : 2;
  }
  if (filled == Filled::size) rule.maximum = 1e6;
  const bool text = filled == Filled::words || (filled == Filled::size && terms == Terms::aws);
  rule.anything = text;
  return rule;
}

/// Names and inches are text: a spreadsheet program must not make numbers or dates of them.
std::string format_of_column(Filled filled, Terms terms) {
  const bool number =
      filled == Filled::whole || filled == Filled::either || (filled == Filled::size && terms == Terms::iso);
  return number ? "" : "@";
}

Sheet sheet_of_joints(const std::string& name, Terms terms, const std::vector<FieldInfo>& keys) {
  Sheet sheet;
  sheet.name = name;
  sheet.landscape = true;
  sheet.locked = false;
  sheet.frozen_rows = 1;
  sheet.frozen_columns = 1;
  sheet.repeat_columns = 2;  // on paper: name and mark on both of two pages
  sheet.repeat_rows = {0, 0};
  sheet.footer = "One row a joint; headings stay as they are";
  for (std::uint16_t c = 0; c < column_count; ++c) {
    put(sheet, 0, c, heading_text(info_of(keys, template_columns[c].key), terms), Look::heading);
    sheet.column_widths.push_back(template_columns[c].width);
  }
  return sheet;
}

Sheet sheet_to_fill(Terms terms, const std::vector<FieldInfo>& keys) {
  Sheet sheet = sheet_of_joints("Joints", terms, keys);
  for (std::uint16_t c = 0; c < column_count; ++c) {
    const TemplateColumn& column = template_columns[c];
    Validation rule = rule_of(info_of(keys, column.key), column.filled, terms);
    rule.column = c;
    for (rule.row = 1; rule.row <= rows_to_fill; ++rule.row) {
      sheet.cells.push_back({rule.row, c, {}, Look::input, format_of_column(column.filled, terms)});
      sheet.validations.push_back(rule);
    }
  }
  return sheet;
}

Sheet sheet_filled_in(Terms terms, const std::vector<FieldInfo>& keys) {
  Sheet sheet = sheet_of_joints("Example", terms, keys);
  std::uint32_t row = 0;
  for (const ExampleRow& example : example_rows) {
    ++row;
    for (std::uint16_t c = 0; c < column_count; ++c) {
      const std::string_view text = terms == Terms::aws ? example.aws[c] : example.iso[c];
      const std::string format = format_of_column(template_columns[c].filled, terms);
      Cell cell{row, c, {}, Look::input, format};
      if (!text.empty() && format.empty())
        cell.content = std::stod(std::string(text));
      else if (!text.empty())
        cell.content = std::string(text);
      sheet.cells.push_back(std::move(cell));
    }
  }
  return sheet;
}

/// Keys that no column can hold.
bool needs_the_job_file(const FieldInfo& info) { return info.shape == Shape::section || info.shape == Shape::sections; }

Sheet sheet_of_columns(Terms terms, const std::vector<FieldInfo>& keys) {
  Sheet sheet;
  sheet.name = "Columns";
  sheet.column_widths = {22, 90};
  put(sheet, 0, 0, "Columns", Look::title);
  put(sheet, 1, 0,
      "Each row of the sheet Joints is a joint. Columns may be left out, moved, or added from this list; their "
      "headings stay as they are.",
      Look::note);
  sheet.merges.push_back({1, 0, 1});
  put(sheet, 3, 0, "heading", Look::heading);
  put(sheet, 3, 1, "what stands below it", Look::heading);
  std::uint32_t row = 4;
  for (const FieldInfo& info : keys) {
    if (needs_the_job_file(info)) continue;
    put(sheet, row, 0, heading_text(info, terms), Look::label);
    put(sheet, row++, 1, words_of(info, terms), Look::wrapped);
  }
  sheet.frozen_rows = 4;
  sheet.repeat_rows = {3, 3};
  return sheet;
}

}  // namespace

Workbook takeoff_book(Terms terms, Date date) {
  const std::vector<FieldInfo> keys = keys_of_joints();
  Workbook workbook;
  workbook.title = "Take-off";
  workbook.year = date.year;
  workbook.month = date.month;
  workbook.day = date.day;
  workbook.letter_paper = terms == Terms::aws;
  workbook.sheets = {sheet_to_fill(terms, keys), sheet_filled_in(terms, keys), sheet_of_columns(terms, keys)};
  return workbook;
}

}  // namespace seambook
