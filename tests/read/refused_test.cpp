#include <doctest/doctest.h>

#include <algorithm>
#include <array>

#include "complaints.hpp"
#include "read/job_text.hpp"
#include "read/rate_text.hpp"

using namespace seambook;

namespace {

std::optional<std::string> no_takeoffs(const std::string&) { return std::nullopt; }

/// The author's text at a place, as far as `length` characters (the files here are plain ASCII).
std::string text_at(const Diagnostics& diagnostics, Place place, std::size_t length) {
  const std::string& text = diagnostics.files[place.file].text;
  std::size_t at = 0;
  for (std::uint32_t line = 1; line < place.line; ++line) at = text.find('\n', at) + 1;
  return text.substr(at + place.column - 1, length);
}

}  // namespace

TEST_CASE("each refused job complains on the lines that say so") {
  const auto paths = files_under_tests("refused/read");
  CHECK(paths.size() >= 16);
  for (const auto& path : paths) {
    CAPTURE(path.filename().string());
    const std::string text = whole_file_text(path);
    Diagnostics diagnostics;
    read_job(diagnostics.add_file(path.filename().string(), text), no_takeoffs, diagnostics);
    CHECK(complaints_wanted(text) != "");
    CHECK(complaints_given(diagnostics) == complaints_wanted(text));
  }
}

TEST_CASE("each refused rate book complains on the lines that say so") {
  const auto paths = files_under_tests("refused/rates");
  CHECK(paths.size() >= 3);
  for (const auto& path : paths) {
    CAPTURE(path.filename().string());
    const std::string text = whole_file_text(path);
    Diagnostics diagnostics;
    read_rates(std::array{diagnostics.add_file(path.filename().string(), text)}, diagnostics);
    CHECK(complaints_wanted(text) != "");
    CHECK(complaints_given(diagnostics) == complaints_wanted(text));
  }
}

TEST_CASE("twenty faults of one file are all told in one run with line and column") {
  Diagnostics diagnostics;
  const std::string text = whole_file_text(SEAMBOOK_ROOT "/tests/refused/read/twenty_faults.yaml");
  read_job(diagnostics.add_file("twenty_faults.yaml", text), no_takeoffs, diagnostics);
  std::stable_sort(diagnostics.list.begin(), diagnostics.list.end(),
                   [](const Diagnostic& a, const Diagnostic& b) { return a.place < b.place; });
  const std::array<std::string, 20> at_fault{
      "18.05.2026", "0, 50]",    "delivry:", "proces:", "38 EUR",   "[]",    "7.5", "18 mm",        "yes",    "weight",
      "5  #",       "thicknes:", "0 mm",     "5 mn",    "[3 mm, 4", "2,5 m", "-4",  "leg: 5 mm  #", "purge:", "{P01"};
  REQUIRE(diagnostics.list.size() == at_fault.size());
  for (std::size_t i = 0; i < at_fault.size(); ++i) {
    CAPTURE(diagnostics.list[i].message);
    CHECK(text_at(diagnostics, diagnostics.list[i].place, at_fault[i].size()) == at_fault[i]);
  }
  const std::string shown = render(diagnostics);
  CHECK(shown.find("twenty_faults.yaml:19:9: error: unknown key 'thicknes'; did you mean 'thickness'?") != shown.npos);
}

TEST_CASE("a section that stands once is refused in a second file and lists are appended") {
  Diagnostics diagnostics;
  const std::string evidence = "basis: assumption, source: invented}";
  const std::uint32_t first =
      diagnostics.add_file("a.yaml", "format: 1\nshop: A\nchecks: {thin_below: 3 mm, " + evidence +
                                         "\nhandling:\n  - {name: by hand, turn: 1 min, " + evidence + "\n");
  const std::uint32_t second =
      diagnostics.add_file("b.yaml", "format: 1\nshop: B\nchecks: {thin_below: 2 mm, " + evidence +
                                         "\nhandling:\n  - {name: crane, turn: 9 min, " + evidence + "\n");
  const RateText rates = read_rates(std::array{first, second}, diagnostics);
  CHECK(complaints_given(diagnostics) ==
        "2 'shop' is given twice; first at a.yaml:2:7\n"
        "3 'checks' is given twice; first at a.yaml:3:9\n");
  for (const Diagnostic& d : diagnostics.list) CHECK(d.place.file == second);
  REQUIRE(rates.handling.size() == 2);
  CHECK(rates.handling[0].name->text == "by hand");
  CHECK(rates.handling[1].name->text == "crane");
  CHECK(rates.shop->text == "A");
}

TEST_CASE("a file of rates that cannot be read leaves the others readable") {
  Diagnostics diagnostics;
  const std::uint32_t bad = diagnostics.add_file("a.yaml", "format: 1\n- x\n");
  const std::uint32_t good = diagnostics.add_file("b.yaml", "format: 1\nshop: B\n");
  const RateText rates = read_rates(std::array{bad, good}, diagnostics);
  CHECK(diagnostics.has_errors());
  REQUIRE(rates.shop);
  CHECK(rates.shop->text == "B");
}
