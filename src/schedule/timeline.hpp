// A list of tasks turned into times: each begins as early as its station, its people and what it follows allow.
//
// Set-up is done when the part is there, by the people of the way, at once before the work. Whatever becomes free later
// never lets anything end earlier, so the best list, with the best ways, is the best of all plans.
#pragma once

#include "schedule/shop_net.hpp"

namespace seambook {

/// How far the shop has come.
struct Timeline {
  std::vector<Instant> station_free, person_free;
  std::vector<std::uint32_t> mounted;  // state by station
  std::vector<std::uint32_t> last;     // task by station; `away` before the first
  std::vector<Instant> order_finish;   // of what has been placed
  Levels levels;                       // without the changes to the end state
  friend bool operator==(const Timeline&, const Timeline&) = default;
};

/// Finish by task; `never_done` of tasks that cannot be placed or have not been yet.
using Finishes = std::vector<Instant>;
inline constexpr Instant never_done = Instant::max();

struct Placed {
  bool done = false;
  Instant set_up{}, start{}, finish{};
  std::int64_t change = 0;
};

Timeline nothing_placed(const ShopNet&);
/// When a way happens that may begin then, with this change before it.
Placed timed_way(const ShopNet&, const NetTask&, const NetWay&, Instant, const SetUp&);
/// When a task would happen next. Requires: what it follows has been placed.
Placed tried(ShopNet&, const Timeline&, const Finishes&, std::uint32_t task, std::uint32_t way);
/// The same, done. A task that cannot be done counts as unplaced and changes nothing else.
Placed place(ShopNet&, Timeline&, Finishes&, std::uint32_t task, std::uint32_t way);
/// The levels with the changes to the stations' end states.
Levels final_levels(ShopNet&, const Timeline&);
Levels levels_of(ShopNet&, const TaskList&);
/// Lateness that counts for an order that ends then.
std::int64_t lateness(const ShopNet&, std::uint32_t order, Instant finish);

}  // namespace seambook
