// What to bring to the stations, shift by shift, and what the whole plan takes.
#pragma once

#include "report/fetch_list.hpp"
#include "report/workbook.hpp"

namespace seambook {

Sheet fetch_page(const PlannedShop&, const std::vector<PlanShift>&, const std::vector<Fetched>&);
/// In the shop's unit: `12.4` and `kg`. Parts are counted whole where one is begun.
Shown fetched_shown(const PlannedShop&, const Fetched&);
/// `2 packs of 15 kg`; empty where the rate book states none.
std::string pack_words(const PlannedShop&, const Fetched&);

/// `308LSi-1.0 0.59 kg`, `purge gas I1 218 L`.
std::string fetched_words(const PlannedShop&, const Fetched&);

}  // namespace seambook
