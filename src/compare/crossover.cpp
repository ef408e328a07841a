#include "compare/crossover.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace seambook {
namespace {

// Sheet and plate as merchants stock it (common practice, no source), in mm.
constexpr double stock_mm[] = {0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12};

Known<dim::length> plain(Length<> x) { return {{x.si, no_source}}; }

/// The joint in another thickness, one metre of it on one side.
Joint in_thickness(const Joint& joint, Length<> thickness) {
  Joint out = joint;
  out.thickness = out.thickness_second = plain(thickness);
  if (out.weld == WeldKind::fillet) out.leg = plain(thickness), out.throat = {};
  out.line = plain({1});
  out.outside_diameter = out.element = out.pitch = {};
  out.count = out.sides = {{1, no_source}};
  return out;
}

std::optional<MoneyPerLength<>> cost_by(const RateBook& book, const Job& job, const Joint& joint, std::size_t process) {
  ChoiceRequest request = request_for(book, joint);
  request.process = book.processes[process].number;
  const ChoiceResult choice = choose_procedure(book, request);
  if (!choice.procedure || joint.root_face.si.value >= thinner_member(joint).si) return std::nullopt;
  Joint welded = joint;
  welded.passes = {{*choice.procedure, std::nullopt}};
  welded.choice.made_by_program = true;
  const Totals totals = joint_totals(row_figures(lift_row<double>(gather_row(book, job, welded))));
  return welding_cost(totals) / totals.weld_length;
}

/// Where two curves change places between neighbouring thicknesses that both have.
void find_crossings(Crossover& out, std::size_t a, std::size_t b) {
  const auto &first = out.curves[a].cost, &second = out.curves[b].cost;
  for (std::size_t i = 1; i < out.thicknesses.size(); ++i) {
    if (!first[i - 1] || !first[i] || !second[i - 1] || !second[i]) continue;
    const double before = first[i - 1]->si - second[i - 1]->si, after = first[i]->si - second[i]->si;
    if (before == 0 || before * after >= 0) continue;
    const double share = before / (before - after);
    const Length<> at = out.thicknesses[i - 1] + share * (out.thicknesses[i] - out.thicknesses[i - 1]);
    out.crossings.push_back(before < 0 ? Crossing{a, b, at} : Crossing{b, a, at});
  }
}

}  // namespace

Crossover crossover(const RateBook& book, const Job& job, const Joint& joint) {
  Crossover out;
  out.words = fmt::format("seams like {} in other thicknesses{}", joint.id,
                          joint.weld == WeldKind::fillet ? ", the leg as large as the thickness" : "");
  for (const double mm : stock_mm) out.thicknesses.push_back({mm * unit::mm.si});
  for (std::size_t process = 0; process < book.processes.size(); ++process) {
    CostCurve curve{process, {}};
    for (const Length<> thickness : out.thicknesses)
      curve.cost.push_back(cost_by(book, job, in_thickness(joint, thickness), process));
    const auto known = [](const auto& cost) { return cost.has_value(); };
    if (std::any_of(curve.cost.begin(), curve.cost.end(), known)) out.curves.push_back(std::move(curve));
  }
  for (std::size_t a = 0; a < out.curves.size(); ++a)
    for (std::size_t b = a + 1; b < out.curves.size(); ++b) find_crossings(out, a, b);
  return out;
}

}  // namespace seambook
