#include "text/sheet_formats.hpp"

#include <doctest/doctest.h>

using namespace seambook;

namespace {

std::string shown(double number, const char* code, bool from_1904 = false) {
  const InputField field = shown_field(number, number_look(code), from_1904);
  return (field.kind == FieldKind::date ? "date " : "") + field.text;
}

}  // namespace

TEST_CASE("numbers are read as plain digits, as many as a spreadsheet program keeps") {
  const std::pair<double, const char*> rows[] = {{0, "0"},
                                                 {-0.0, "0"},
                                                 {5, "5"},
                                                 {3.2000000000000002, "3.2"},
                                                 {0.1 + 0.2, "0.3"},
                                                 {1.4310, "1.431"},
                                                 {0.000125, "0.000125"},
                                                 {1e-7, "0.0000001"},
                                                 {-4.5, "-4.5"},
                                                 {123456789012345, "123456789012345"},
                                                 {4711081547110815, "4711081547110815"},
                                                 {1.0 / 3, "0.333333333333333"},
                                                 {1e30, "1e+30"}};
  for (const auto& [number, text] : rows) CHECK(shown(number, "General") == text);
}

TEST_CASE("a format's unit and share belong to what is shown") {
  CHECK(shown(5, "0.0\" mm\"") == "5 mm");
  CHECK(shown(5, "General\" mm\"") == "5 mm");
  CHECK(shown(5, "0.00\\ \\m\\m;[Red]-0.00\" in\"") == "5 mm");
  CHECK(shown(5, "\"L = \"0") == "5");
  CHECK(shown(0.2, "0%") == "20 %");
  CHECK(shown(0.125, "0.00 %") == "12.5 %");
  CHECK(shown(38, "#,##0.00\\ [$EUR]") == "38");
  CHECK(shown(1234.5, "_-* #,##0.00\\ _€_-") == "1234.5");
  CHECK(shown(5, "@") == "5");
  CHECK(shown(150000, "0.00E+00") == "150000");
}

TEST_CASE("numbers that are shown as dates are dates") {
  // 1 March 1900 is day 61; the day that 1900 never had is the one before.
  CHECK(shown(61, "yyyy-mm-dd") == "date 1900-03-01");
  CHECK(shown(59, "yyyy-mm-dd") == "date 1900-02-28");
  CHECK(shown(1, "d-mmm") == "date 1900-01-01");
  CHECK(shown(46144, "dd.mm.yyyy") == "date 2026-05-02");
  CHECK(shown(46144 - 1462, "dd.mm.yyyy", true) == "date 2026-05-02");
  CHECK(shown(46144.2708333333, "[$-407]d. mmm yyyy hh:mm") == "date 2026-05-02 06:30");
  CHECK(shown(0.2708333333, "[h]:mm") == "date 06:30");
  CHECK(shown(0.9999999, "h:mm") == "date 1900-01-01");
  CHECK(shown(-3, "d-mmm") == "-3");
  CHECK(shown(3e6, "d-mmm") == "3000000");
}
