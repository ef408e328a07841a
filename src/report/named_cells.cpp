#include "report/named_cells.hpp"

#include <algorithm>

namespace seambook {

LeafFinder leaves_of(const NamedCells& cells, const SharedCells& shared, std::string sheet) {
  return [&cells, &shared, sheet = std::move(sheet)](const Tape& tape, std::uint32_t node) -> std::optional<LeafText> {
    const Label& label = tape.labels[tape.nodes[node].label];
    if (const auto at = cells.find({label.figure, label.row}); at != cells.end()) {
      const std::string cell = cell_name(at->second.row, at->second.column, true);
      return shown_leaf(at->second.sheet == sheet ? cell : sheet_reference(at->second.sheet) + "!" + cell,
                        shown_in(shared.terms, *label.figure).unit);
    }
    if (const auto home = shared.cells.find(label.source); home != shared.cells.end()) return home->second;
    return std::nullopt;
  };
}

void put_named(Sheet& sheet, const NamedCells& cells, const SharedCells& shared, const Tape& tape,
               const std::vector<const Figure*>& left_out) {
  const LeafFinder leaves = leaves_of(cells, shared, sheet.name);
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    if (tape.nodes[i].op != Op::named) continue;
    const Label& label = tape.labels[tape.nodes[i].label];
    const auto at = cells.find({label.figure, label.row});
    if (at == cells.end() || at->second.sheet != sheet.name) continue;
    if (std::find(left_out.begin(), left_out.end(), label.figure) != left_out.end()) continue;
    const Shown as = shown_in(shared.terms, *label.figure);
    put_formula(sheet, at->second.row, at->second.column,
                {formula(tape, i, as.unit.si, leaves), tape.nodes[i].value / as.unit.si}, as.decimals);
  }
}

}  // namespace seambook
