#include "shop_orders.hpp"

#include <doctest/doctest.h>

#include <set>

#include "estimate/element_sums.hpp"
#include "estimate/gather_labour.hpp"

namespace seambook::test {
namespace {

void add_order(const Order& order, ShopSums& sums) {
  const LoadedJob loaded = load_job(order.file);
  REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
  const RateBook& book = *loaded.book;
  const Estimate estimated = estimate(book, *loaded.job);
  double& floor_h = sums.floor_h[order.file];
  for (std::size_t j = 0; j < loaded.job->joints.size(); ++j) {
    const RowFigures<double>& row = estimated.joints[j];
    sums.rows += 1;
    sums.joints_made += order.pieces * row.joint.joints_made.si;
    sums.weld_elements += order.pieces * row.joint.weld_elements.si;
    sums.weld_length_m += order.pieces * row.joint.weld_length.si;
    floor_h += order.pieces * joint_totals(row).floor.si / 3600;
    each_labour_element(labour_shape(book, loaded.job->joints[j]), row, [&](std::string_view key, Time<> minutes) {
      sums.element_h[std::string(key)] += order.pieces * minutes.si / 3600;
    });
    for (std::size_t g = 0; g < row.passes.size(); ++g) {
      const PassFigures<double>& group = row.passes[g];
      const Procedure& procedure = book.procedures[loaded.job->joints[j].passes[g].procedure];
      sums.arc_min[book.processes[procedure.process].number] += order.pieces * group.arc.si / 60;
      if (procedure.filler) sums.filler_kg[book.fillers[*procedure.filler].name] += order.pieces * group.filler.si;
      if (procedure.gas)
        sums.gas_l[book.gases[*procedure.gas].name] += order.pieces * procedure.gas_flow.si.value * group.arc.si * 1e3;
    }
  }
  for (const WeldmentFigures<double>& weldment : estimated.weldments)
    floor_h += order.pieces * weldment.floor.si / 3600;
}

/// `joint P08: ...`, `joint E02 and 7 more: ...`: the first of them names the finding.
bool tells(const Expected& expected, const Diagnostic& finding) {
  const std::string joint = *expected.joint ? std::string("joint ") + expected.joint : "";
  if (!finding.message.starts_with(joint)) return false;
  if (!joint.empty() && finding.message.size() > joint.size() && finding.message[joint.size()] != ':' &&
      finding.message[joint.size()] != ' ')
    return false;
  return finding.message.find(expected.words) != std::string::npos;
}

}  // namespace

ShopSums sums_of(std::span<const Order> orders) {
  ShopSums sums;
  for (const Order& order : orders) add_order(order, sums);
  return sums;
}

double all_floor_h(const ShopSums& sums) {
  double hours = 0;
  for (const auto& [file, of_file] : sums.floor_h) hours += of_file;
  return hours;
}

void check_findings(std::span<const Order> orders, std::span<const Expected> listed) {
  std::set<const Expected*> seen;
  for (const Order& order : orders) {
    const LoadedJob loaded = load_job(order.file);
    REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
    CHECK_MESSAGE(loaded.diagnostics.list.empty(), render(loaded.diagnostics));
    for (const Diagnostic& finding : findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job))) {
      const Expected* match = nullptr;
      for (const Expected& expected : listed) {
        if (std::string(expected.file) == order.file && tells(expected, finding)) match = &expected;
      }
      CHECK_MESSAGE(match != nullptr, std::string(order.file) << ": " << finding.message);
      if (match) CHECK_MESSAGE(seen.insert(match).second, finding.message);
    }
  }
  for (const Expected& expected : listed)
    CHECK_MESSAGE(seen.contains(&expected), std::string(expected.file)
                                                << " " << expected.joint << ": not found: " << expected.words);
}

}  // namespace seambook::test
