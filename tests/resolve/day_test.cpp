#include "resolve/day.hpp"

#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"
#include "../read/complaints.hpp"

using namespace seambook;
using std::chrono::minutes;

namespace {

struct LoadedDay {
  Diagnostics diagnostics;
  std::optional<Day> day;
};

/// A day of the light example shop with one job, the pipe set.
LoadedDay day_of(const std::string& name, const std::string& text) {
  const test::LoadedJob loaded = test::load_job("pipe-set.yaml");
  REQUIRE(loaded.job);
  LoadedDay out;
  const std::uint32_t file = out.diagnostics.add_file(name, text);
  const DayText read = read_day_file(file, out.diagnostics);
  out.day = resolve_day(read, *loaded.book, std::span(&*loaded.job, 1), out.diagnostics);
  return out;
}

const std::string whole_day = R"(format: 1
absent: [{welder: Q1, from: 2026-05-12 06:30, until: 2026-05-12 15:00, why: ill}]
down: [{station: ST-2, from: 2026-05-12, until: 2026-05-13}]
arrived: [{job: pipe-set, at: 2026-05-12 07:00}, {job: pipe-set, weldment: pipe set, at: 2026-05-12}]
started: [{operation: pipe-set/pipe set/P17/1, at: 2026-05-12 06:30, station: ST-1, welder: Q2}]
done: [{operation: pipe-set/pipe set/P20/1, start: 2026-05-11 06:30, finish: 2026-05-11 09:10, station: ST-1}]
released: [{joint: pipe-set/pipe set/P17, what: root visual, by: Q9, at: 2026-05-12 09:40}]
rush: [{job: pipe-set, due: 2026-05-12 10:00, late_weight: 3}]
blocked: [{joint: pipe-set/pipe set/P18, why: no saddle}, {operation: pipe-set/pipe set/P20/2, why: no rods}]
pinned: [{operation: pipe-set/pipe set/P18/1, station: ST-1, start: 2026-05-12 09:00}]
overtime: [{date: 2026-05-12, shift: day}]
mounted: [{station: ST-1, process: TIG, gas: I1, filler: none}]
)";

const std::string same_as_rows =
    "what,name,from,until,station,welder,note\n"
    "absent,Q1,2026-05-12 06:30,2026-05-12 15:00,,,ill\n"
    "down,ST-2,2026-05-12,2026-05-13,,,\n"
    "arrived,pipe-set,2026-05-12 07:00,,,,first half\n"
    "arrived,pipe-set/pipe set,2026-05-12,,,,\n"
    "started,pipe-set/pipe set/P17/1,2026-05-12 06:30,,ST-1,Q2,\n"
    "done,pipe-set/pipe set/P20/1,2026-05-11 06:30,2026-05-11 09:10,ST-1,,\n"
    "released,pipe-set/pipe set/P17,2026-05-12 09:40,,,Q9,root visual\n"
    "rush,pipe-set,,2026-05-12 10:00,,,\n"
    "blocked,pipe-set/pipe set/P18,,,,,no saddle\n"
    "blocked,pipe-set/pipe set/P20/2,,,,,no rods\n"
    "overtime,day,2026-05-12,,,,\n";

void check_common(const Day& day) {
  REQUIRE(day.absent.size() == 1);
  CHECK(day.absent[0].welder == 0);
  CHECK(iso(day.absent[0].from) == "2026-05-12T06:30");
  CHECK(iso(day.absent[0].until) == "2026-05-12T15:00");
  CHECK(day.absent[0].why == "ill");
  REQUIRE(day.down.size() == 1);
  CHECK(day.down[0].station == 1);
  CHECK(iso(day.down[0].from) == "2026-05-12T00:00");
  CHECK(iso(day.down[0].until) == "2026-05-14T00:00");  // the last day counts
  REQUIRE(day.arrived.size() == 2);
  CHECK_FALSE(day.arrived[0].weldment);
  CHECK(day.arrived[0].at.at == minutes(420));
  CHECK(day.arrived[1].weldment == 0u);
  REQUIRE(day.started.size() == 1);
  CHECK(day.started[0].operation.name == "pipe-set/pipe set/P17/1");
  CHECK(day.started[0].welder == 1u);
  REQUIRE(day.done.size() == 1);
  CHECK(iso(day.done[0].finish) == "2026-05-11T09:10");
  CHECK_FALSE(day.done[0].welder);
  REQUIRE(day.released.size() == 1);
  CHECK(day.released[0].joint == 0);
  CHECK(day.released[0].hold == 0u);
  CHECK(day.released[0].by == "Q9");
  REQUIRE(day.rush.size() == 1);
  CHECK(day.rush[0].due_at == minutes(600));
  REQUIRE(day.blocked.size() == 2);
  CHECK(day.blocked[0].joint == 1u);
  CHECK_FALSE(day.blocked[0].operation);
  REQUIRE(day.blocked[1].operation);
  CHECK(day.blocked[1].operation->name == "pipe-set/pipe set/P20/2");
  REQUIRE(day.overtime.size() == 1);
  CHECK(iso(day.overtime[0].date) == "2026-05-12");
}

}  // namespace

TEST_CASE("a day file says what the day brought") {
  const LoadedDay out = day_of("day.yaml", whole_day);
  CHECK(render(out.diagnostics) == "");
  REQUIRE(out.day);
  check_common(*out.day);
  CHECK(*out.day->rush[0].late_weight == doctest::Approx(3));
  REQUIRE(out.day->pinned.size() == 1);
  CHECK(out.day->pinned[0].pin.station == 0u);
  CHECK_FALSE(out.day->pinned[0].pin.welder);
  REQUIRE(out.day->mounted.size() == 1);
  const std::vector<std::pair<std::string, std::string>> mounted{{"process", "141"}, {"filler", "none"}, {"gas", "I1"}};
  CHECK(out.day->mounted[0].mounted == mounted);
}

TEST_CASE("rows of a table say the same") {
  const LoadedDay out = day_of("day.csv", same_as_rows);
  CHECK(render(out.diagnostics) == "");
  REQUIRE(out.day);
  check_common(*out.day);
}

TEST_CASE("rows that cannot be understood are refused at their fields") {
  const auto complaints = [](const std::string& rows) { return complaints_given(day_of("day.csv", rows).diagnostics); };
  CHECK(complaints("name,from\nQ1,2026-05-12\n") ==
        "1 the heading 'what' is missing; begin with: what,name,from,until,station,welder,note\n");
  CHECK(complaints("what,nam\nabsent,Q1\n") ==
        "1 unknown heading 'nam'; did you mean 'name'?\n"
        "2 the key 'welder' is missing; stamp of the welder: Q1\n"
        "2 the key 'from' is missing; a day, or a day with a time: 2026-05-12 06:30\n"
        "2 the key 'until' is missing; a day, which counts, or a day with a time: 2026-05-12 15:00\n");
  CHECK(complaints("what,name,from,until\nabsnt,Q1,2026-05-12,2026-05-12\n") ==
        "2 a row cannot tell of 'absnt'; did you mean 'absent'?\n");
  CHECK(complaints("what,name,from,until\narrived,pipe-set,2026-05-12,2026-05-13\n") ==
        "2 a row that tells of 'arrived' has nothing in 'until'; leave the field empty, or write it as a note\n");
}

TEST_CASE("each refused day complains on the lines that say so") {
  const auto paths = files_under_tests("refused/day");
  CHECK(paths.size() >= 2);
  for (const auto& path : paths) {
    CAPTURE(path.filename().string());
    const std::string text = whole_file_text(path);
    const LoadedDay out = day_of(path.filename().string(), text);
    CHECK_FALSE(out.day);
    CHECK(complaints_wanted(text) != "");
    CHECK(complaints_given(out.diagnostics) == complaints_wanted(text));
  }
}

TEST_CASE("a day without anything is a day") {
  const LoadedDay out = day_of("day.yaml", "format: 1\n");
  REQUIRE(out.day);
  CHECK(out.day->absent.empty());
  CHECK_FALSE(day_of("day.yaml", "absent: []\n").day);
}
