#include "text/clock_words.hpp"

#include <doctest/doctest.h>

using namespace seambook;
using std::chrono::minutes;

TEST_CASE("times of day are read as shops write them") {
  const struct {
    const char* text;
    int at;
  } rows[] = {{"06:30", 390},   {"6:30", 390},      {"6:30 AM", 390}, {"12:00 AM", 0},        {"12:15 PM", 735},
              {"4:30 PM", 990}, {" 10:00am ", 600}, {"00:00", 0},     {"23:59", 23 * 60 + 59}};
  for (const auto& row : rows) {
    CAPTURE(row.text);
    const ClockRead read = read_clock(row.text);
    REQUIRE(read.at);
    CHECK(read.at->count() == row.at);
  }
}

TEST_CASE("what is no time of day is refused with a hint") {
  for (const char* text : {"24:00", "24:30", "25:00", "6", "6:3", "06:60", "13:00 PM", "0:30 AM", "noon", "06:30:00",
                           "-1:00", "06.30", "", "AM"}) {
    CAPTURE(text);
    const ClockRead read = read_clock(text);
    CHECK_FALSE(read.at);
    CHECK(read.problem != "");
    CHECK(read.hint != "");
  }
  CHECK(read_clock("24:00").hint == "write 00:00 for midnight");
}

TEST_CASE("a day may carry a time") {
  const DayRead bare = read_day("2026-05-12");
  REQUIRE(bare.date);
  CHECK_FALSE(bare.at);
  for (const char* text : {"2026-05-12 12:00", "2026-05-12T12:00", "2026-05-12 12:00 PM"}) {
    const DayRead read = read_day(text);
    REQUIRE(read.date);
    CHECK(*read.date == Date{2026, 5, 12});
    REQUIRE(read.at);
    CHECK(*read.at == minutes(720));
  }
  for (const char* text :
       {"2026-05-12 24:00", "2026-02-30 12:00", "2026-05-12x12:00", "12.05.2026 12:00", "tomorrow"}) {
    CAPTURE(text);
    CHECK_FALSE(read_day(text).date);
    CHECK(read_day(text).hint != "");
  }
}

TEST_CASE("weekdays and moments in words") {
  CHECK(weekday({2026, 5, 11}) == 0);  // Monday by the calendar of that year
  CHECK(weekday({2026, 5, 17}) == 6);
  CHECK(weekday({2024, 2, 29}) == 3);
  CHECK(clock_text(minutes(390)) == "06:30");
  CHECK(clock_text(minutes(24 * 60 + 5)) == "00:05 next day");
  CHECK(iso(Moment{{2026, 5, 12}, minutes(390)}) == "2026-05-12T06:30");
  CHECK(iso(Moment{{2026, 12, 31}, minutes(24 * 60 + 60)}) == "2027-01-01T01:00");
}
