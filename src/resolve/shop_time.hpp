// When the shop works: shifts with breaks, closed days, overtime. Holds: breaks lie inside their shift, in order,
// apart from each other; the end of a shift comes after its start, past 24 h for one that runs into the night.
#pragma once

#include <bitset>
#include <optional>
#include <string>
#include <vector>

#include "resolve/source.hpp"
#include "text/clock_words.hpp"

namespace seambook {

struct Break {
  std::chrono::minutes at{0}, length{0};  // `at`: since midnight of the day on which the shift starts
};

struct Shift {
  std::string name;
  std::bitset<7> days;                    // on which it starts; bit 0 is Monday
  std::chrono::minutes start{0}, end{0};  // since midnight of that day; the end past 24 h for a night shift
  std::vector<Break> breaks;
  std::chrono::minutes clear_up{0};  // at the end; no work
};

/// After a shift, paid with a premium on the labour rate.
struct Overtime {
  std::vector<std::size_t> shifts;  // of Calendar::shifts
  std::chrono::minutes most{0};     // a day
  Known<dim::ratio> premium;
};

/// Without shifts the book states none, and nothing can be planned by the clock.
struct Calendar {
  std::vector<Shift> shifts;
  std::vector<Date> closed;  // sorted
  std::optional<Overtime> overtime;
};

}  // namespace seambook
