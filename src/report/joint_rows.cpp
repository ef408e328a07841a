#include "report/joint_rows.hpp"

#include <fmt/format.h>

#include "report/formula_memory.hpp"
#include "report/heat_page.hpp"
#include "report/joint_columns.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

void put_names(const JointRows& rows, const Joint& joint, std::size_t page, std::uint32_t row, Sheet& sheet) {
  const RateBook& book = rows.book;
  const std::array<std::string, 3> names = joint_names(rows.job, joint);
  for (const PassGroup& group : joint.passes) {
    const Procedure& procedure = book.procedures[group.procedure];
    for (std::size_t k = 0; k < names.size(); ++k)
      put(sheet, row, static_cast<std::uint16_t>(k), names[k],
          width_of_name(names[k]) > widest_name ? Look::wrapped : Look::text);
    put(sheet, row, 3, procedure.name);
    put(sheet, row, 4, process_word(book.processes[procedure.process].number, book.terms));
    if (page == passes_page_number) put(sheet, row, role_column, std::string(role_word(group.role)));
    ++row;
  }
}

void put_materials(const JointRows& rows, const Joint& joint, std::uint32_t row, Sheet& sheet) {
  const RateBook& book = rows.book;
  const MaterialWords& words = rows.words;
  for (const PassGroup& group : joint.passes) {
    const Procedure& procedure = book.procedures[group.procedure];
    if (procedure.filler) put(sheet, row, words.filler, book.fillers[*procedure.filler].name);
    if (procedure.gas) put(sheet, row, words.gas, book.gases[*procedure.gas].name);
    if (words.flux && procedure.flux) put(sheet, row, *words.flux, book.fluxes[*procedure.flux].name);
    if (words.purge_gas && joint.purge) put(sheet, row, *words.purge_gas, book.gases[*book.allowances.purge_gas].name);
    ++row;
  }
}

/// Results that happen to be plain constants (one element on a line, one pass) leave no record; they are shown all the
/// same.
void put_constants(const RowFigures<Traced>& figures, const Table& table, std::uint32_t row, Sheet& sheet) {
  const auto show = [&](const Figure& figure, const Traced& value, std::uint32_t g) {
    const auto column = table.columns.find(&figure);
    if (value.tape == nullptr && column != table.columns.end())
      put_number(sheet, row + g, column->second.column, value.value / figure.unit.si, figure.decimals);
  };
  show(fig::elements_on_line, figures.joint.elements_on_line.si, 0);
  for (std::uint32_t g = 0; g < figures.passes.size(); ++g) show(fig::passes, figures.passes[g].passes.si, g);
}

/// Appends the cells that joint `j` has on the page.
void put_joint(const JointRows& rows, std::size_t page, std::size_t j, FormulaMemory& formulas,
               std::vector<Cell>& cells) {
  const Joint& joint = rows.job.joints[j];
  const std::uint32_t row = rows.first[j];
  Sheet sheet;
  sheet.name = joint_page_name(page);
  sheet.cells.swap(cells);
  Tape tape;
  const Row<Sourced> inputs = gather_row(rows.book, rows.job, joint);
  const RowFigures<Traced> figures = row_figures(lift_row<Traced>(inputs, &tape));
  put_names(rows, joint, page, row, sheet);
  if (page == materials_page_number) put_materials(rows, joint, row, sheet);
  put_record(sheet, rows.table, rows.shared, rows.job, tape, row, formulas);
  if (page == passes_page_number) put_constants(figures, rows.table, row, sheet);
  if (page == heat_page_number)
    put_heat(rows.book, joint, row_figures(lift_row<double>(inputs)), tape, rows.table, rows.shared, rows.heat_columns,
             sheet, row);
  sheet.cells.swap(cells);
}

}  // namespace

std::array<std::string, 3> joint_names(const Job& job, const Joint& joint) {
  return {job.weldments[joint.weldment].name, joint.id,
          joint.mark.empty() ? weld_in_words(joint) : fmt::format("{}: {}", weld_in_words(joint), joint.mark)};
}

double width_of_name(const std::string& name) {
  constexpr double letter = 0.92;  // of a digit
  return static_cast<double>(display_width(name)) * letter + 1;
}

LaterRows rows_of_joints(std::shared_ptr<const JointRows> rows, std::size_t page) {
  const std::size_t joints = rows->job.joints.size();
  const auto formulas = std::make_shared<FormulaMemory>();
  return {joints, [rows = std::move(rows), formulas, page](std::size_t j, std::vector<Cell>& cells) {
            put_joint(*rows, page, j, *formulas, cells);
          }};
}

}  // namespace seambook
