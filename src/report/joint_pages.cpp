#include "report/joint_pages.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

#include "report/heat_page.hpp"
#include "report/joint_columns.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

constexpr std::uint16_t role_column = 5;  // of the passes page

/// Columns of words that a page has besides.
std::vector<const char*> words_of(std::size_t page, const MaterialWords& words) {
  if (page == 1) return {"role"};
  if (page != 3) return {};
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

constexpr std::array<const char*, joint_page_count> sheet_names = {joints_sheet, passes_sheet, labour_sheet,
                                                                   materials_sheet, heat_sheet};
constexpr std::array<const char*, joint_page_count> titles = {
    "Joints: what the job says", "Passes: welds and arc time", "Labour: floor time by element",
    "Materials and cost by joint", "Heat: hardening and preheat"};

/// Figures that some row has; a column nobody needs is left out.
std::set<const Figure*> figures_in(const RateBook& book, const Job& job) {
  std::set<const Figure*> found = {&fig::thickness};  // always worth seeing
  Tape tape;
  for (const Joint& joint : job.joints) {
    tape.clear();
    row_figures(lift_row<Traced>(gather_row(book, job, joint), &tape));
    add_stated_heat(joint, found);
    const std::vector<bool> read = read_nodes(tape);
    for (std::size_t i = 0; i < tape.nodes.size(); ++i) {
      const TapeNode& node = tape.nodes[i];
      if (node.label != 0 && (node.op == Op::named || read[i])) found.insert(tape.labels[node.label].figure);
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

/// Words of a joint's row, in a column that is as wide as they are; what is very long wraps.
void put_fitting(Sheet& sheet, std::uint32_t row, std::uint16_t column, const std::string& words) {
  constexpr double letter = 0.92, widest = 40;  // of a column's digits
  const double wanted = static_cast<double>(display_width(words)) * letter + 1;
  double& width = sheet.column_widths[column];
  width = std::max(width, std::min(wanted, widest));
  put(sheet, row, column, words, wanted > widest ? Look::wrapped : Look::text);
}

void put_names(const RateBook& book, const Job& job, const Joint& joint, JointPages& pages, std::uint32_t row) {
  for (Sheet& sheet : pages.sheets) {
    for (std::uint32_t g = 0; g < joint.passes.size(); ++g) {
      const Procedure& procedure = book.procedures[joint.passes[g].procedure];
      put_fitting(sheet, row + g, 0, job.weldments[joint.weldment].name);
      put_fitting(sheet, row + g, 1, joint.id);
      put_fitting(sheet, row + g, 2,
                  joint.mark.empty() ? weld_in_words(joint) : fmt::format("{}: {}", weld_in_words(joint), joint.mark));
      put(sheet, row + g, 3, procedure.name);
      put(sheet, row + g, 4, process_word(book.processes[procedure.process].number, book.terms));
    }
  }
  for (std::uint32_t g = 0; g < joint.passes.size(); ++g) {
    const Procedure& procedure = book.procedures[joint.passes[g].procedure];
    put(pages.sheets[1], row + g, role_column, std::string(role_word(joint.passes[g].role)));
    Sheet& materials = pages.sheets[3];
    const MaterialWords& words = pages.words;
    if (procedure.filler) put(materials, row + g, words.filler, book.fillers[*procedure.filler].name);
    if (procedure.gas) put(materials, row + g, words.gas, book.gases[*procedure.gas].name);
    if (words.flux && procedure.flux) put(materials, row + g, *words.flux, book.fluxes[*procedure.flux].name);
    if (words.purge_gas && joint.purge)
      put(materials, row + g, *words.purge_gas, book.gases[*book.allowances.purge_gas].name);
  }
}

/// Results that happen to be plain constants (one element on a line, one pass) leave no record; they are shown all the
/// same.
void put_constants(const RowFigures<Traced>& row, JointPages& pages, std::uint32_t at) {
  Sheet& passes = pages.sheets[1];
  const auto show = [&](const Figure& figure, const Traced& value, std::uint32_t g) {
    const auto column = pages.table.columns.find(&figure);
    if (value.tape == nullptr && column != pages.table.columns.end())
      put_number(passes, at + g, column->second.column, value.value / figure.unit.si, figure.decimals);
  };
  show(fig::elements_on_line, row.joint.elements_on_line.si, 0);
  for (std::uint32_t g = 0; g < row.passes.size(); ++g) show(fig::passes, row.passes[g].passes.si, g);
}

/// A number of the job is an input once; rows that take it again link to that cell.
void remember_inputs(const JointPages& pages, const Tape& tape, std::uint32_t row, SharedCells& seen) {
  for (const TapeNode& node : tape.nodes) {
    if (node.op != Op::input) continue;
    const Label& label = tape.labels[node.label];
    const auto at = pages.table.columns.find(label.figure);
    if (label.source < first_job_source || at == pages.table.columns.end()) continue;
    const std::string cell =
        sheet_reference(at->second.sheet) + "!" + cell_name(row + label.row, at->second.column, true);
    seen.cells.try_emplace(label.source, shown_leaf(cell, shown_in(seen.terms, *label.figure).unit));
  }
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

JointPages joint_pages(const RateBook& book, const Job& job, const SharedCells& shared, Rows rows) {
  JointPages pages;
  for (std::size_t p = 0; p < joint_page_count; ++p) {
    pages.sheets.push_back({});
    pages.sheets.back().name = sheet_names[p];
    put_title(pages.sheets.back(), titles[p], "For one piece, by pass group. Change tinted cells; grey: run again");
    if (p == 2 && book.method.by_factor)
      put_wide(
          pages.sheets.back(), 2,
          fmt::format("By operating factor, which is {}. It covers {}.", book.method.definition, book.method.covers),
          Look::note);
  }
  const bool heat = lay_out(figures_in(book, job), book, pages);
  std::map<const Figure*, double> sums;
  std::uint32_t row = pages.table.first_row;
  SharedCells seen = shared;
  Tape tape;
  for (const Joint& joint : job.joints) {
    tape.clear();
    const RowFigures<Traced> figures = row_figures(lift_row<Traced>(gather_row(book, job, joint), &tape));
    put_names(book, job, joint, pages, row);
    put_record(pages.sheets, pages.table, seen, job, tape, row);
    remember_inputs(pages, tape, row, seen);
    put_constants(figures, pages, row);
    put_heat(book, joint, row_figures(lift_row<double>(gather_row(book, job, joint))), tape, pages.table, seen,
             pages.sheets[heat_page_number], row);
    for (const TapeNode& node : tape.nodes) {
      if (node.op == Op::named)
        sums[tape.labels[node.label].figure] +=
            node.value / shown_in(book.terms, *tape.labels[node.label].figure).unit.si;
    }
    row += static_cast<std::uint32_t>(joint.passes.size());
  }
  pages.last_row = row - 1;
  if (rows == Rows::add_up) put_totals(pages, sums, book.terms);
  if (!heat) pages.sheets.pop_back();
  return pages;
}

}  // namespace seambook
