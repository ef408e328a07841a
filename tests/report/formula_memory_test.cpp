// Formulas made once for records that are alike are those made for each of them.
#include "report/formula_memory.hpp"

#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"
#include "estimate/row.hpp"

using namespace seambook;

namespace {

/// Every figure that a record names, in columns of one sheet.
Table table_of(const Tape& tape) {
  Table table;
  std::uint16_t column = 0;
  for (const Label& label : tape.labels)
    if (label.figure != nullptr && !table.columns.contains(label.figure))
      table.columns[label.figure] = {"Joints", column++};
  return table;
}

void check_record(const Tape& tape, const SharedCells& shared, std::uint32_t row,
                  std::map<std::string, FormulaMemory>& memories) {
  static const Table table = table_of(tape);  // of the first joint: later ones have figures without a column
  for (const char* sheet : {"Joints", "Passes"}) {
    FormulaMemory& memory = memories[sheet];
    memory.begin(tape, table, shared, sheet, row);
    for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
      if (tape.nodes[i].op != Op::named) continue;
      const Unit unit = tape.labels[tape.nodes[i].label].figure->unit;
      const std::string apart = formula(tape, i, unit, cells_of(table, shared, sheet, row));
      CHECK(memory.formula(i, unit) == apart);
      CHECK(memory.formula(i, unit) == apart);  // now from memory
    }
  }
}

}  // namespace

TEST_CASE("formulas from memory are those made apart, in every row and from every sheet") {
  for (const char* name : {"brewhouse-platform.yaml", "pipe-set.yaml", "wash-down-cabinet.yaml"}) {
    CAPTURE(name);
    const test::LoadedJob shop = test::load_job(name);
    SharedCells shared;
    for (SourceId id = 1; id < shop.book->sources.size(); id += 2)
      shared.cells[id] = {"Rates!$C$" + std::to_string(id), 1};
    // One number of the job stands first in row 40, so rows below link to it and those above do not.
    shared.first_inputs[shop.job->joints[0].line.si.source] = {40, {"Joints!$G$41", 1e-3}};
    std::uint32_t row = 4;
    Tape tape;
    std::map<std::string, FormulaMemory> memories;
    for (int round = 0; round < 3; ++round) {
      for (const Joint& joint : shop.job->joints) {
        tape.clear();
        row_figures(lift_row<Traced>(gather_row(*shop.book, *shop.job, joint), &tape));
        check_record(tape, shared, row++, memories);
      }
    }
  }
}
