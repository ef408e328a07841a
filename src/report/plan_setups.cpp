#include "report/plan_setups.hpp"

#include <algorithm>

#include "report/task_words.hpp"

namespace seambook {

std::vector<PlannedSetUp> set_ups_of(const PlannedShop& shop) {
  std::vector<std::vector<std::size_t>> at_station(shop.work.problem.stations.size());
  for (std::size_t at = 0; at < shop.plan.tasks.size(); ++at)
    if (const auto station = way_of(shop, shop.plan.tasks[at]).station) at_station[*station].push_back(at);
  std::vector<PlannedSetUp> out;
  for (std::size_t s = 0; s < at_station.size(); ++s) {
    std::stable_sort(at_station[s].begin(), at_station[s].end(), [&](std::size_t a, std::size_t b) {
      return shop.plan.tasks[a].set_up < shop.plan.tasks[b].set_up;
    });
    for (const std::size_t at : at_station[s]) {
      const bool begins = out.empty() || out.back().station != s || !shop.plan.tasks[at].change.tasks.empty();
      if (begins) out.push_back({s, {}});
      out.back().tasks.push_back(at);
    }
  }
  return out;
}

}  // namespace seambook
