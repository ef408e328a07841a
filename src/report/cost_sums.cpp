#include "report/cost_sums.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

/// The sum of a figure's column; empty when no row has the figure.
std::string column_sum(const Table& table, const Figure& figure, std::uint32_t last_row) {
  const auto at = table.columns.find(&figure);
  if (at == table.columns.end() || last_row < table.first_row) return {};
  return sum_of(at->second.sheet, at->second.column, table.first_row, last_row);
}

std::string together(std::initializer_list<std::string> parts) {
  std::string text;
  for (const std::string& part : parts) {
    if (part.empty()) continue;
    text += (text.empty() ? "" : "+") + part;
  }
  return text.empty() ? "0" : text;
}

/// Bought lines of one kind in the column of their scaling.
std::string bought_sum(const WeldmentPage& page, std::uint16_t column, CostKind kind) {
  if (page.bought_last < page.bought_first) return {};
  const auto range = [&](std::uint16_t c) {
    return fmt::format("{}!{}:{}", weldments_sheet, cell_name(page.bought_first, c), cell_name(page.bought_last, c));
  };
  return fmt::format("SUMIF({},\"{}\",{})", range(bought_column::kind), cost_kind_words[static_cast<std::size_t>(kind)],
                     range(column));
}

}  // namespace

CostSums cost_sums(const JointPages& joints, const WeldmentPage& weldments, const SequencePage& sequence,
                   const JobWorkPage& work) {
  const auto joint = [&](const Figure& f) { return column_sum(joints.table, f, joints.last_row); };
  const auto weldment = [&](const Figure& f) { return column_sum(weldments.table, f, weldments.last_row); };
  const auto step = [&](const Figure& f) { return column_sum(sequence.table, f, sequence.last_row); };
  CostSums sums;
  const auto set = [](auto& of, CostKind kind, std::initializer_list<std::string> parts) {
    of[static_cast<std::size_t>(kind)] = together(parts);
  };
  for (auto* of : {&sums.each, &sums.lot, &sums.once}) of->fill("0");
  set(sums.each, CostKind::labour, {joint(fig::labour_cost), weldment(fig::weldment_labour)});
  set(sums.each, CostKind::equipment, {joint(fig::equipment_cost), weldment(fig::weldment_equipment)});
  set(sums.each, CostKind::filler, {joint(fig::filler_cost), joint(fig::flux_cost)});
  set(sums.each, CostKind::gas, {joint(fig::gas_cost)});
  set(sums.each, CostKind::power, {joint(fig::power_cost)});
  set(sums.each, CostKind::wear, {joint(fig::wear_cost)});
  set(sums.lot, CostKind::labour, {job_work_labour(work, false)});
  set(sums.once, CostKind::labour, {job_work_labour(work, true)});
  set(sums.lot, CostKind::set_up, {step(fig::change_labour)});
  set(sums.lot, CostKind::equipment, {step(fig::change_equipment)});
  for (const CostKind kind : {CostKind::base_metal, CostKind::cutting, CostKind::outside, CostKind::other}) {
    const std::string metal = kind == CostKind::base_metal ? weldment(fig::metal_cost) : std::string();
    set(sums.each, kind, {metal, bought_sum(weldments, bought_column::each, kind)});
    set(sums.lot, kind, {bought_sum(weldments, bought_column::lot, kind)});
    set(sums.once, kind, {bought_sum(weldments, bought_column::once, kind)});
  }
  return sums;
}

std::uint32_t put_hours(Sheet& sheet, std::uint32_t row, Terms terms, const Estimate& estimate, const Quote& quote,
                        const JointPages& joints, const WeldmentPage& weldments, const SequencePage& sequence) {
  double arc = 0, floor = 0, mass = 0, waiting = 0;
  for (const RowFigures<double>& r : estimate.joints) {
    const Totals t = joint_totals(r);
    arc += t.arc.si, floor += t.floor.si, waiting += t.waiting.si;
  }
  for (const WeldmentFigures<double>& w : estimate.weldments) {
    floor += w.floor.si, mass += w.mass.si, waiting += w.elements.waiting.si;
  }
  const std::string joint_floor = column_sum(joints.table, fig::floor, joints.last_row);
  const std::string weldment_floor = column_sum(weldments.table, fig::weldment_floor, weldments.last_row);
  const std::uint32_t floor_row = row + 1;
  put(sheet, row, 0, "Hours behind it", Look::heading);
  put(sheet, row, 1, "h", Look::heading);
  put(sheet, row + 1, 0, "floor time of a piece");
  put_formula(sheet, row + 1, 1, {"(" + together({joint_floor, weldment_floor}) + ")/60", floor / 3600}, 2);
  put(sheet, row + 2, 0, "of it arc or beam time");
  put_formula(sheet, row + 2, 1, {column_sum(joints.table, fig::arc, joints.last_row) + "/60", arc / 3600}, 2);
  put(sheet, row + 3, 0, "set-ups of a lot");
  put_formula(
      sheet, row + 3, 1,
      {together({column_sum(sequence.table, fig::change, sequence.last_row)}) + "/60", quote.setup_time.si / 3600}, 2);
  if (waiting > 0) {
    put(sheet, row + 4, 0, "waiting of a piece, nobody is charged");
    const std::string of_weldments = column_sum(weldments.table, fig::waiting_min, weldments.last_row);
    const std::string of_joints = column_sum(joints.table, fig::waiting_min, joints.last_row);
    put_formula(sheet, row + 4, 1, {"(" + together({of_joints, of_weldments}) + ")/60", waiting / 3600}, 2);
    ++row;
  }
  if (mass > 0) {
    const Unit shown = shown_in(terms, unit::kg).unit;
    mass /= shown.si;
    put(sheet, row + 4, 0, fmt::format("net mass of a piece ({})", shown.word));
    put_formula(sheet, row + 4, 1, {column_sum(weldments.table, fig::weldment_mass, weldments.last_row), mass}, 1);
    put(sheet, row + 5, 0, terms == Terms::aws ? "floor hours per 1000 lb" : "floor hours a tonne");
    put_formula(sheet, row + 5, 1,
                {fmt::format("IF({0}>0,{1}/{0}*1000,0)", cell_name(row + 4, 1), cell_name(floor_row, 1)),
                 floor / 3600 / mass * 1000},
                1);
    return row + 7;
  }
  return row + 5;
}

}  // namespace seambook
