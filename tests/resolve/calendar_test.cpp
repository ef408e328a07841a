#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"
#include "../read/complaints.hpp"

using namespace seambook;
using std::chrono::minutes;

namespace {

struct BookWith {
  Diagnostics diagnostics;
  std::optional<RateBook> book;
};

/// The example rate book with one more file.
BookWith book_with(const std::string& name, const std::string& text, const std::string& folder = "rates") {
  BookWith out;
  std::vector<std::uint32_t> files;
  for (const test::RateFile& file : test::rate_texts(folder))
    files.push_back(out.diagnostics.add_file(file.name, file.text));
  if (!text.empty()) files.push_back(out.diagnostics.add_file(name, text));
  out.book = resolve_rates(read_rates(files, out.diagnostics), out.diagnostics);
  return out;
}

}  // namespace

TEST_CASE("each rate book whose calendar or floor cannot be complains on the lines that say so") {
  const auto paths = files_under_tests("refused/shop");
  CHECK(paths.size() >= 1);
  for (const auto& path : paths) {
    CAPTURE(path.filename().string());
    const std::string text = whole_file_text(path);
    const BookWith out = book_with("more.yaml", text);
    CHECK_FALSE(out.book);
    CHECK(complaints_wanted(text) != "");
    CHECK(complaints_given(out.diagnostics) == complaints_wanted(text));
  }
}

TEST_CASE("the example shop works one shift with two breaks, and one day is closed") {
  const BookWith out = book_with("", "");
  REQUIRE(out.book);
  const Calendar& calendar = out.book->calendar;
  REQUIRE(calendar.shifts.size() == 1);
  const Shift& day = calendar.shifts[0];
  CHECK(day.days.to_string() == "0011111");
  CHECK(day.start == minutes(390));
  CHECK(day.end == minutes(900));
  REQUIRE(day.breaks.size() == 2);
  CHECK(day.breaks[1].at == minutes(720));
  CHECK(day.breaks[1].length == minutes(30));
  CHECK(day.clear_up == minutes(10));
  CHECK(calendar.closed == std::vector{Date{2026, 5, 14}});
  REQUIRE(calendar.overtime);
  CHECK(calendar.overtime->shifts == std::vector<std::size_t>{0});
  CHECK(calendar.overtime->most == minutes(120));
  CHECK(calendar.overtime->premium.si.value == doctest::Approx(0.5));
  CHECK(out.book->sources[calendar.overtime->premium.si.source].decided);
  CHECK_FALSE(out.book->qualification_lapses);
}

TEST_CASE("a shift that ends before it starts runs into the next day, its breaks with it") {
  const BookWith out = book_with("night.yaml",
                                 "format: 1\nshifts:\n  - {name: night, days: [Sun, Mon], start: 22:00, end: 06:00, "
                                 "breaks: [{at: 23:50, time: 20 min}, {at: 02:00, time: 30 min}], basis: assumption, "
                                 "source: invented}\n");
  CHECK(render(out.diagnostics) == "");
  REQUIRE(out.book);
  const Shift& night = out.book->calendar.shifts.at(1);
  CHECK(night.days.to_string() == "1000001");
  CHECK(night.start == minutes(22 * 60));
  CHECK(night.end == minutes(30 * 60));
  CHECK(night.breaks.at(0).at == minutes(23 * 60 + 50));
  CHECK(night.breaks.at(1).at == minutes(26 * 60));
}

TEST_CASE("stations and welders know their shifts, and what stands ready") {
  const BookWith heavy = book_with("", "", "jobs/marlgannet/rates");
  REQUIRE(heavy.book);
  REQUIRE(heavy.book->calendar.shifts.size() == 2);
  CHECK(heavy.book->welders.at(1).shifts == std::vector<std::size_t>{1});
  CHECK(heavy.book->stations.at(1).crane->si == doctest::Approx(500));
  const BookWith light = book_with("", "");
  REQUIRE(light.book);
  const Station& laser = light.book->stations.at(1);
  CHECK(laser.safety_officer == true);
  REQUIRE(laser.eyewear);
  CHECK(laser.eyewear->wavelength_nm == 1070);
  CHECK(laser.eyewear->optical_density == doctest::Approx(7));
  CHECK(laser.largest->si == doctest::Approx(4));
  CHECK(laser.shifts.empty());
  const Qualification& tube = light.book->welders.at(1).qualifications.at(0);
  CHECK_FALSE(tube.plates);
  CHECK(tube.tubes);
  CHECK(tube.diameter_from->si == doctest::Approx(0.0213));
  CHECK_FALSE(tube.diameter_to);
  CHECK(light.book->welders.at(1).qualifications.at(1).basis_note == "in-house test");
}

TEST_CASE("what a station never does, how it is left and when it is open") {
  const BookWith out =
      book_with("more.yaml",
                "format: 1\nstations:\n  - name: ST-8\n    processes: 135\n    groups: 1\n    shifts: day\n"
                "    end_state: {process: GMAW, cleanliness: carbon}\n"
                "    never: [{when: cleanliness, from: carbon, to: [stainless, aluminium]}, {when: gas, to: M12}]\n"
                "    basis: assumption\n    source: invented\n");
  CHECK(render(out.diagnostics) == "");
  REQUIRE(out.book);
  const Station& station = out.book->stations.back();
  CHECK(station.shifts == std::vector<std::size_t>{0});
  REQUIRE(station.end_state.size() == 2);
  CHECK(station.end_state[0] == std::pair<std::string, std::string>{"process", "135"});
  REQUIRE(station.never.size() == 2);
  CHECK(station.never[0].to == std::vector<std::string>{"stainless", "aluminium"});
  CHECK(station.never[1].from.empty());
}
