#include "report/heat_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "estimate/preheat.hpp"

namespace seambook {
namespace {

constexpr int columns_beside = 2;  // heat input, preheat by method B

std::optional<std::uint32_t> node_of(const Tape& tape, const Figure& figure, std::uint32_t row) {
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    const Label& label = tape.labels[tape.nodes[i].label];
    if (tape.nodes[i].label != 0 && label.figure == &figure && label.row == row) return i;
  }
  return std::nullopt;
}

std::string quoted_text(const std::string& words) { return "\"" + words + "\""; }

/// The room's temperature as text of the asked number's unit, its zero left out.
std::string room_text(const RateBook& book, const SharedCells& shared, const Unit& unit) {
  if (book.preheating)
    if (const auto cell = shared.cells.find(book.preheating->room.si.source); cell != shared.cells.end())
      return cell->second.text;
  return formula_number(room_of(book).si / unit.si);
}

/// `IF(OR(F5<0.2,F5>0.5),"not computed: ...", ... IF(number<=20,"none needed",number))`.
Formula asked_formula(const RateBook& book, const Joint& joint, const RowFigures<double>& row, const Tape& tape,
                      std::uint32_t node, std::uint32_t g, const SharedCells& shared, const LeafFinder& leaves) {
  const Unit unit = shown_in(book.terms, fig::preheat_asked.unit).unit;
  std::string text = fmt::format("IF({}<={},\"none needed\",{})", formula(tape, node, unit.si, leaves),
                                 room_text(book, shared, unit), formula(tape, node, unit, leaves));
  for (std::size_t k = method_b_limits.size(); k-- > 0;) {
    const MethodBLimit& limit = method_b_limits[k];
    const auto at =
        node_of(tape, *limit.figure, limit.figure == &fig::heat_input || limit.figure == &fig::hydrogen ? g : 0);
    const std::optional<LeafText> leaf = at ? leaves(tape, *at) : std::nullopt;
    if (!leaf) continue;
    text = fmt::format("IF(OR({0}<{1},{0}>{2}),{3},{4})", leaf->text,
                       formula_number(limit.low / leaf->scale * (1 - whole_tolerance)),
                       formula_number(limit.high / leaf->scale * (1 + whole_tolerance)),
                       quoted_text("not computed: " + outside_in_words(limit, book.terms)), text);
  }
  const std::string lacks = method_b_lacks(book, joint, row, g);
  if (!lacks.empty()) return {text, "not computed: " + lacks};
  const Temperature<> asked = row.passes[g].preheat_asked;
  if (asked <= room_of(book)) return {text, std::string("none needed")};
  return {text, shown_number(asked.si, unit)};
}

}  // namespace

std::vector<const Figure*> heat_columns() {
  return {&fig::carbon_equivalent, &fig::cet,      &fig::crack_parameter, &fig::combined_thickness,
          &fig::plate_thickness,   &fig::hydrogen, &fig::preheat,         &fig::interpass_max,
          &fig::heat_input_max,    &fig::heated,   &fig::preheat_energy,  &fig::burner_min,
          &fig::fuel_money};
}

void add_stated_heat(const Joint& joint, std::set<const Figure*>& found) {
  if (joint.heat.preheat_stated) found.insert(&fig::preheat);
  if (joint.heat.interpass_max.si.source != no_source) found.insert(&fig::interpass_max);
  if (joint.heat.heat_input_max.si.source != no_source) found.insert(&fig::heat_input_max);
}

bool lay_out_heat(const RateBook& book, const std::set<const Figure*>& found, Sheet& sheet, std::uint16_t column) {
  put(sheet, heading_row, column, heading_of(fig::heat_input, book.currency, book.terms), Look::heading);
  put(sheet, heading_row, static_cast<std::uint16_t>(column + 1),
      heading_of(fig::preheat_asked, book.currency, book.terms), Look::heading);
  sheet.column_widths.push_back(9.5);
  sheet.column_widths.push_back(34);
  const std::vector<const Figure*> columns = heat_columns();
  return std::any_of(columns.begin(), columns.end(), [&](const Figure* figure) { return found.contains(figure); });
}

void put_heat(const RateBook& book, const Joint& joint, const RowFigures<double>& figures, const Tape& tape,
              const Table& table, const SharedCells& shared, std::uint16_t columns, Sheet& sheet, std::uint32_t row) {
  const std::uint16_t heat = columns - columns_beside, asked = columns - 1;
  if (const auto preheat = table.columns.find(&fig::preheat);
      preheat != table.columns.end() && joint.heat.preheat_stated && joint.heat.preheat.si.source == no_source)
    put(sheet, row, preheat->second.column, "none");
  if (!hardens(book.base_metals[joint.base_metal].group)) return;
  const LeafFinder leaves = cells_of(table, shared, sheet.name, row);
  for (std::uint32_t g = 0; g < joint.passes.size(); ++g) {
    const Shown as = shown_in(book.terms, fig::heat_input);
    if (const auto node = node_of(tape, fig::heat_input, g))
      put_formula(sheet, row + g, heat,
                  {leaves(tape, *node)->text, shown_number(figures.passes[g].heat_input.si, as.unit)}, as.decimals);
    const std::string unknown = method_b_unknown(book, joint, g);
    const auto node = node_of(tape, fig::preheat_asked, g);
    if (!unknown.empty())
      put(sheet, row + g, asked, "not computed: " + unknown, Look::wrapped);
    else if (node)
      put_formula(sheet, row + g, asked, asked_formula(book, joint, figures, tape, *node, g, shared, leaves), 0);
  }
}

}  // namespace seambook
