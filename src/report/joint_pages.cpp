#include "report/joint_pages.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

#include "report/heat_page.hpp"
#include "report/joint_columns.hpp"
#include "report/joint_rows.hpp"

namespace seambook {
namespace {

/// Columns of words that a page has besides.
std::vector<const char*> words_of(std::size_t page, const MaterialWords& words) {
  if (page == passes_page_number) return {"role"};
  if (page != materials_page_number) return {};
  std::vector<const char*> columns = {"filler", "gas"};
  if (words.flux) columns.push_back("flux");
  if (words.purge_gas) columns.push_back("gas behind the weld");
  return columns;
}

MaterialWords material_words(const std::set<const Figure*>& found) {
  MaterialWords words;
  auto next = static_cast<std::uint16_t>(words.gas + 1);
  if (found.contains(&fig::flux)) words.flux = next++;
  if (found.contains(&fig::purge_gas)) words.purge_gas = next;
  return words;
}

constexpr std::array<const char*, joint_page_count> page_names = {joints_sheet, passes_sheet, labour_sheet,
                                                                  materials_sheet, heat_sheet};
constexpr std::array<const char*, joint_page_count> titles = {
    "Joints: what the job says", "Passes: welds and arc time", "Labour: floor time by element",
    "Materials and cost by joint", "Heat: hardening and preheat"};

/// What a first look at all rows tells.
struct Found {
  std::set<const Figure*> figures = {&fig::thickness};  // that some row has; a column nobody needs is left out
  std::map<const Figure*, double> sums;                 // of named figures, SI
};

Found look_at_all(const RateBook& book, const Job& job) {
  Found found;
  Tape tape;
  for (const Joint& joint : job.joints) {
    tape.clear();
    row_figures(lift_row<Traced>(gather_row(book, job, joint), &tape));
    add_stated_heat(joint, found.figures);
    const std::vector<bool> read = read_nodes(tape);
    for (std::size_t i = 0; i < tape.nodes.size(); ++i) {
      const TapeNode& node = tape.nodes[i];
      if (node.label == 0) continue;
      const Figure* figure = tape.labels[node.label].figure;
      if (node.op == Op::named || read[i]) found.figures.insert(figure);
      if (node.op == Op::named) found.sums[figure] += node.value / shown_in(book.terms, *figure).unit.si;
    }
  }
  return found;
}

/// True when the job has something for the heat page.
bool lay_out(const std::set<const Figure*>& found, const RateBook& book, JointPages& pages) {
  bool heat = false;
  pages.table.first_row = heading_row + 1;
  pages.words = material_words(found);
  for (std::size_t p = 0; p < joint_page_count; ++p) {
    Sheet& sheet = pages.sheets[p];
    std::uint16_t column = 0;
    for (const char* words : {"weldment", "joint", "weld", "procedure", "process"})
      put(sheet, heading_row, column++, words, Look::heading);
    sheet.column_widths = {16, 8, 24, 11, 8};
    for (const char* words : words_of(p, pages.words)) {
      put(sheet, heading_row, column++, words, Look::heading);
      sheet.column_widths.push_back(10);
    }
    for (const Figure* figure : joint_columns(p)) {
      if (!found.contains(figure)) continue;
      pages.table.columns[figure] = {sheet.name, column};
      put(sheet, heading_row, column++, heading_of(*figure, book.currency, book.terms), Look::heading);
      sheet.column_widths.push_back(9.5);
    }
    if (p == heat_page_number) heat = lay_out_heat(book, found, sheet, column);
    sheet.frozen_rows = heading_row + 1;
    sheet.frozen_columns = sheet.repeat_columns = 3;
    sheet.repeat_rows = {heading_row, heading_row};
    sheet.landscape = true;
  }
  return heat;
}

/// Where a number of the job stands first.
struct FirstPlace {
  std::uint32_t row = 0;  // 0: nowhere yet; the joint's first
  std::uint32_t in_row = 0;
  const Figure* figure = nullptr;
};

/// A number of the job is an input once; rows that take it again link to that cell.
void remember_inputs(const Tape& tape, std::uint32_t row, std::vector<FirstPlace>& places, JointRows& rows) {
  for (const TapeNode& node : tape.nodes) {
    if (node.op != Op::input) continue;
    const Label& label = tape.labels[node.label];
    const std::size_t number = label.source - first_job_source;
    if (label.source < first_job_source || number >= places.size() || !rows.table.columns.contains(label.figure))
      continue;
    FirstPlace& first = places[number];
    if (first.row == 0) first = {row, row + label.row, label.figure};
    if (first.row == row || rows.shared.cells.contains(label.source)) continue;
    const ColumnPlace& at = rows.table.columns.at(first.figure);
    const std::string cell = sheet_reference(at.sheet) + "!" + cell_name(first.in_row, at.column, true);
    rows.shared.first_inputs.try_emplace(
        label.source, FirstInput{first.row, shown_leaf(cell, shown_in(rows.shared.terms, *first.figure).unit)});
  }
}

/// Rules that follow one another in a column become one.
void add_rules(std::vector<Validation>& rules, std::map<std::uint16_t, std::size_t>& last_of_column,
               std::vector<Validation> added) {
  for (Validation& rule : added) {
    const auto [last, first] = last_of_column.try_emplace(rule.column, rules.size());
    if (!first && same_rule(rules[last->second], rule)) {
      rules[last->second].last_row = rule.row;
      continue;
    }
    last->second = rules.size();
    rules.push_back(std::move(rule));
  }
}

/// A second look at all rows, once it is known where their figures stand: what may be changed, and where numbers stand
/// that several rows take.
void take_inputs(JointRows& rows, std::vector<Sheet>& sheets) {
  std::vector<FirstPlace> places(rows.job.sources.size());
  std::vector<std::map<std::uint16_t, std::size_t>> last_rules(sheets.size());
  Tape tape;
  for (std::size_t j = 0; j < rows.job.joints.size(); ++j) {
    const Joint& joint = rows.job.joints[j];
    tape.clear();
    row_figures(lift_row<Traced>(gather_row(rows.book, rows.job, joint), &tape));
    remember_inputs(tape, rows.first[j], places, rows);
    for (std::size_t p = 0; p < sheets.size(); ++p) {
      Sheet own;
      own.name = sheets[p].name;
      put_record_inputs(own, rows.table, rows.shared, rows.job, tape, rows.first[j]);
      for (LiveInput& input : own.live) {
        input.of = fmt::format("{} {}", rows.job.weldments[joint.weldment].name, joint.id);
        sheets[p].live.push_back(std::move(input));
      }
      add_rules(sheets[p].validations, last_rules[p], std::move(own.validations));
    }
  }
}

/// Columns of names are as wide as the names.
void fit_names(const Job& job, std::vector<Sheet>& sheets) {
  std::array<double, 3> widths{};
  for (const Joint& joint : job.joints) {
    const std::array<std::string, 3> names = joint_names(job, joint);
    for (std::size_t k = 0; k < names.size(); ++k) widths[k] = std::max(widths[k], width_of_name(names[k]));
  }
  for (Sheet& sheet : sheets)
    for (std::size_t k = 0; k < widths.size(); ++k)
      sheet.column_widths[k] = std::max(sheet.column_widths[k], std::min(widths[k], widest_name));
}

/// Gives the row after the last joint's.
std::uint32_t number_rows(JointRows& rows) {
  std::uint32_t row = rows.table.first_row;
  for (const Joint& joint : rows.job.joints) {
    rows.first.push_back(row);
    row += static_cast<std::uint32_t>(joint.passes.size());
  }
  return row;
}

void put_totals(JointPages& pages, const std::map<const Figure*, double>& sums, Terms terms) {
  for (std::size_t p = 0; p < joint_page_count; ++p) {
    Sheet& sheet = pages.sheets[p];
    bool summed = false;
    for (const Figure* figure : joint_columns(p)) {
      const auto column = pages.table.columns.find(figure);
      if (column == pages.table.columns.end() || !adds_up(figure)) continue;
      const std::uint16_t c = column->second.column;
      const std::string text =
          fmt::format("SUM({}:{})", cell_name(pages.table.first_row, c), cell_name(pages.last_row, c));
      put_formula(sheet, pages.last_row + 1, c, {text, sums.at(figure)}, shown_in(terms, *figure).decimals,
                  Look::total);
      summed = true;
    }
    if (summed) put(sheet, pages.last_row + 1, 0, "all joints", Look::total);
  }
}

}  // namespace

const char* joint_page_name(std::size_t page) { return page_names[page]; }

JointPages joint_pages(const RateBook& book, const Job& job, const SharedCells& shared, Rows rows) {
  JointPages pages;
  for (std::size_t p = 0; p < joint_page_count; ++p) {
    pages.sheets.push_back({});
    pages.sheets.back().name = page_names[p];
    put_title(pages.sheets.back(), titles[p], "For one piece, by pass group. Change tinted cells; grey: run again");
    if (p == 2 && book.method.by_factor)
      put_wide(
          pages.sheets.back(), 2,
          fmt::format("By operating factor, which is {}. It covers {}.", book.method.definition, book.method.covers),
          Look::note);
  }
  const Found found = look_at_all(book, job);
  const bool heat = lay_out(found.figures, book, pages);
  const auto heat_columns = static_cast<std::uint16_t>(pages.sheets[heat_page_number].column_widths.size());
  JointRows all{book, job, pages.table, pages.words, shared, {}, heat_columns};
  pages.last_row = number_rows(all) - 1;
  take_inputs(all, pages.sheets);
  fit_names(job, pages.sheets);
  const auto made_from = std::make_shared<const JointRows>(std::move(all));
  for (std::size_t p = 0; p < joint_page_count; ++p) pages.sheets[p].later = rows_of_joints(made_from, p);
  if (rows == Rows::add_up) put_totals(pages, found.sums, book.terms);
  if (!heat) pages.sheets.pop_back();
  return pages;
}

}  // namespace seambook
