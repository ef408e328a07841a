// A shop's problem in the form the searches read: working time of each way found once, precedence as neighbour lists,
// set-ups by number.
#pragma once

#include "schedule/clock.hpp"
#include "schedule/set_up_table.hpp"

namespace seambook {

inline constexpr std::uint32_t away = ~std::uint32_t{0};  // station of a way that needs none

struct NetWay {
  std::uint32_t station = away, need = 0;
  std::uint32_t calendar = 0;                  // of the station and its people together
  std::uint32_t first_person = 0, people = 0;  // a run of ShopNet::people
  Seconds time{};
  Instant not_before{}, last_finish{};  // not before: start of the plan, ready date, pinned
};

struct NetTask {
  std::vector<NetWay> ways;
  std::vector<std::uint32_t> before, after;  // each neighbour once
  std::uint32_t order = 0;
  Seconds rest{}, held{};
};

struct ShopNet {
  std::size_t stations = 0, persons = 0;
  std::vector<NetTask> tasks;
  std::vector<std::uint32_t> people;                   // of all ways
  std::vector<WorkingTime> calendars;                  // distinct ones
  std::vector<SetUpTable> set_ups;                     // by station
  std::vector<std::optional<std::uint32_t>> end_need;  // by station: what must stand mounted at the end
  std::vector<ShopOrder> orders;
  std::vector<std::optional<Earlier>> earlier;  // parallel to tasks, or empty
  std::vector<std::uint32_t> input_order;       // of tasks, put right where it breaks precedence
  Instant start{};
  Seconds tolerance{}, longest_pause{};
};

ShopNet shop_net(const ShopProblem&);
/// The same with set-ups priced elsewhere, by station.
ShopNet shop_net(const ShopProblem&, std::vector<SetUpTable> set_ups);

}  // namespace seambook
