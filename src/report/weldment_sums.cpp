#include "report/weldment_sums.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

struct RowRange {
  std::uint32_t first = 1, last = 0;
};

RowRange joint_rows(const ShopPages& pages, const Job& job, const Weldment& weldment) {
  std::uint32_t row = pages.joints.table.first_row;
  for (std::size_t j = 0; j < weldment.first_joint; ++j) row += static_cast<std::uint32_t>(job.joints[j].passes.size());
  RowRange rows{row, row};
  for (std::size_t j = 0; j < weldment.joint_count; ++j)
    rows.last += static_cast<std::uint32_t>(job.joints[weldment.first_joint + j].passes.size());
  --rows.last;
  return rows;
}

RowRange bought_rows(const ShopPages& pages, const Job& job, std::size_t weldment) {
  std::uint32_t row = pages.weldments.bought_first;
  for (std::size_t w = 0; w < weldment; ++w) row += static_cast<std::uint32_t>(job.weldments[w].bought.size());
  return {row, row + static_cast<std::uint32_t>(job.weldments[weldment].bought.size()) - 1};
}

}  // namespace

std::array<std::string, cost_kinds> weldment_sums(const ShopPages& pages, const Job& job, std::size_t weldment) {
  const RowRange joints = joint_rows(pages, job, job.weldments[weldment]);
  const RowRange bought = bought_rows(pages, job, weldment);
  const auto of_joints = [&](const Figure& figure) -> std::string {
    const auto at = pages.joints.table.columns.find(&figure);
    if (at == pages.joints.table.columns.end() || joints.last < joints.first) return {};
    return sum_of(at->second.sheet, at->second.column, joints.first, joints.last);
  };
  const auto own = [&](const Figure& figure) -> std::string {
    const auto at = pages.weldments.table.columns.find(&figure);
    if (at == pages.weldments.table.columns.end()) return {};
    return fmt::format("{}!{}", weldments_sheet, cell_name(weldment_row(weldment), at->second.column));
  };
  const auto of_kind = [&](CostKind kind) -> std::string {
    if (bought.last + 1 <= bought.first) return {};
    const auto range = [&](std::uint16_t column) {
      return fmt::format("{}!{}:{}", weldments_sheet, cell_name(bought.first, column), cell_name(bought.last, column));
    };
    return fmt::format("SUMIF({},\"{}\",{})", range(bought_column::kind),
                       cost_kind_words[static_cast<std::size_t>(kind)], range(bought_column::each));
  };
  std::array<std::string, cost_kinds> sums;
  sums.fill("0");
  const auto set = [&](CostKind kind, std::initializer_list<std::string> parts) {
    sums[static_cast<std::size_t>(kind)] = together(parts);
  };
  set(CostKind::labour, {of_joints(fig::labour_cost), own(fig::weldment_labour)});
  set(CostKind::equipment, {of_joints(fig::equipment_cost), own(fig::weldment_equipment)});
  set(CostKind::filler, {of_joints(fig::filler_cost), of_joints(fig::flux_cost)});
  set(CostKind::gas, {of_joints(fig::gas_cost)});
  set(CostKind::power, {of_joints(fig::power_cost)});
  set(CostKind::wear, {of_joints(fig::wear_cost)});
  set(CostKind::free_issue, {own(fig::free_issue_cost)});
  set(CostKind::base_metal, {own(fig::metal_cost), of_kind(CostKind::base_metal)});
  for (const CostKind kind : {CostKind::cutting, CostKind::outside, CostKind::other}) set(kind, {of_kind(kind)});
  return sums;
}

}  // namespace seambook
