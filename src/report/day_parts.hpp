// The parts of the first page, each a short table under its heading.
#pragma once

#include "report/day_page.hpp"

namespace seambook {

struct DayPage {
  const PlannedShop& shop;
  const ShiftWork& work;
  Sheet& sheet;
  std::uint32_t row;
};
inline constexpr std::uint16_t last_day_column = 6;
/// Whether a shift of the plan begins on the plan's first day.
bool on_first_day(const DayPage&, std::size_t shift);

void put_day_heading(DayPage&, std::initializer_list<const char*> words);
/// A row that says that a part is empty.
void put_nothing(DayPage&, const char* words);

void put_kept_back(DayPage&);
void put_late_orders(DayPage&);
void put_remedies(DayPage&);
void put_moved(DayPage&);
void put_begun(DayPage&);
void put_welders(DayPage&);
void put_stops(DayPage&);
void put_away(DayPage&);
void put_to_fetch(DayPage&);
void put_set_up_saving(DayPage&);
void put_levels(DayPage&);

}  // namespace seambook
