// Travellers: for each lot of a weldment its operations in turn, with boxes for stamps, temperatures, tests, repairs
// and release. A page each.
#pragma once

#include <optional>

#include "report/planned_shop.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// Planned tasks of one lot of a weldment, by time.
struct Traveller {
  std::vector<std::size_t> tasks;  // in Plan::tasks, at least one
  Time<> labour{};
};
/// Those above the threshold, by job, weldment and lot.
std::vector<Traveller> travellers_of(const PlannedShop&);
/// Nothing where no weldment takes long enough.
std::optional<Sheet> traveller_page(const PlannedShop&);

}  // namespace seambook
