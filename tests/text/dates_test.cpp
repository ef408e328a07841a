#include <doctest/doctest.h>

#include "text/unit_words.hpp"

using namespace seambook;

TEST_CASE("dates are read as year month day and checked against the calendar") {
  const DateRead read = read_date("2026-05-18");
  REQUIRE(read.date.has_value());
  CHECK(*read.date == Date{2026, 5, 18});
  CHECK(iso(*read.date) == "2026-05-18");
  CHECK(read_date("2028-02-29").date.has_value());
  struct Row {
    const char *text, *problem;
  };
  const Row rows[] = {{"2026-02-29", "the calendar has no 2026-02-29"},
                      {"2026-13-01", "the calendar has no 2026-13-01"},
                      {"2026-00-10", "the calendar has no 2026-00-10"},
                      {"2026-06-31", "the calendar has no 2026-06-31"},
                      {"0026-05-18", "the year 26 is out of range"},
                      {"18.05.2026", "'18.05.2026' is no date"},
                      {"5/18/2026", "'5/18/2026' is no date"},
                      {"2026-5-18", "'2026-5-18' is no date"},
                      {"2026-05-18T14:00", "'2026-05-18T14:00' is no date"},
                      {"", "'' is no date"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const DateRead refused = read_date(row.text);
    CHECK(!refused.date);
    CHECK(refused.problem == row.problem);
    CHECK(refused.hint != "");
  }
}

TEST_CASE("days are added over months and leap years") {
  CHECK(plus_days({2026, 5, 18}, 30) == Date{2026, 6, 17});
  CHECK(plus_days({2028, 2, 28}, 1) == Date{2028, 2, 29});
  CHECK(plus_days({2026, 1, 1}, -1) == Date{2025, 12, 31});
  CHECK(plus_days({2026, 12, 31}, 1) == Date{2027, 1, 1});
  CHECK(plus_days({2026, 5, 18}, 365) == Date{2027, 5, 18});
}
