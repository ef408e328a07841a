// What a set-up sheet says of a procedure and of the joints welded with it: parameters, position, temperatures, what to
// wear beyond the usual.
#pragma once

#include <string>
#include <vector>

#include "report/plan_setups.hpp"

namespace seambook {

/// One line of a set-up: a procedure as it is used there.
struct SetUpLine {
  std::size_t procedure = 0;
  std::string position;      // `PB`
  std::string temperatures;  // `preheat 80 °C, between passes at most 150 °C`; `preheat not stated`
};
/// Each once, in the order of work.
std::vector<SetUpLine> set_up_lines(const PlannedShop&, const PlannedSetUp&);

/// `16 L/min M12`, `none`.
std::string gas_and_flow(const RateBook&, const Procedure&);
/// A number of a procedure in the shop's unit; `-` where it has none.
std::string parameter_text(const Sourced&, const Unit& metric, Terms);
/// `400 to 990 mm/min, planned 660`.
std::string travel_window(const Procedure&, Terms);
/// `pulsed`, or `beam 1200 W, 2 mm wide`.
std::string transfer_words(const Procedure&, Terms);
/// Purge gas with its flow where a joint of the set-up is purged; else empty.
std::string purge_words(const PlannedShop&, const PlannedSetUp&);
/// Sentences; empty where the usual will do.
std::vector<std::string> protection_words(const PlannedShop&, const PlannedSetUp&);

}  // namespace seambook
