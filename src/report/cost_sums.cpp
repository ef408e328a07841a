#include "report/cost_sums.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

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

CostSums cost_sums(const ShopPages& pages) {
  const auto joint = [&](const Figure& f) { return joint_sum(pages, f); };
  const auto weldment = [&](const Figure& f) { return weldment_sum(pages, f); };
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
  set(sums.each, CostKind::free_issue, {weldment(fig::free_issue_cost)});
  set(sums.lot, CostKind::labour, {job_work_labour(pages.work, false)});
  set(sums.once, CostKind::labour, {job_work_labour(pages.work, true)});
  set(sums.lot, CostKind::set_up, {setup_sum(pages, fig::change_labour)});
  set(sums.lot, CostKind::equipment, {setup_sum(pages, fig::change_equipment)});
  for (const CostKind kind : {CostKind::base_metal, CostKind::cutting, CostKind::outside, CostKind::other}) {
    const std::string metal = kind == CostKind::base_metal ? weldment(fig::metal_cost) : std::string();
    set(sums.each, kind, {metal, bought_sum(pages.weldments, bought_column::each, kind)});
    set(sums.lot, kind, {bought_sum(pages.weldments, bought_column::lot, kind)});
    set(sums.once, kind, {bought_sum(pages.weldments, bought_column::once, kind)});
  }
  return sums;
}

}  // namespace seambook
