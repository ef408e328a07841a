#include "report/xlsx.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iterator>
#include <limits>
#include <stdexcept>
#include <string>
#include <system_error>

#include "report/xlsx_checks.hpp"
#include "report/xlsx_heights.hpp"
#include "report/xlsx_page.hpp"
#include "sample_book.hpp"
#include "scratch_folder.hpp"

using namespace seambook;

namespace {

std::string bytes_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

Workbook small_book() {
  Workbook book;
  book.sheets.push_back({});
  book.sheets[0].name = "Costs";
  book.sheets[0].cells = {{0, 0, "text", Look::text, ""}, {1, 0, 2.0, Look::figure, "0.00"}};
  return book;
}

struct Refusal {
  const char* what;  // part of the message
  std::function<void(Workbook&)> spoil;
};

Cell& first_cell(Workbook& book) { return book.sheets[0].cells[0]; }

void each_is_refused(const std::vector<Refusal>& refusals) {
  const ScratchFolder folder;
  const auto path = folder.path / "book.xlsx";
  for (const Refusal& refusal : refusals) {
    CAPTURE(refusal.what);
    Workbook book = small_book();
    refusal.spoil(book);
    std::string message = "nothing thrown";
    try {
      write_xlsx(book, path);
    } catch (const std::invalid_argument& fault) {
      message = fault.what();
    }
    CHECK_MESSAGE(message.find(refusal.what) != std::string::npos, message);
    CHECK(!std::filesystem::exists(path));
  }
}

}  // namespace

TEST_CASE("the same workbook gives the same bytes whatever the time zone") {
  const ScratchFolder folder;
  std::string first;
  for (const char* zone : {"UTC", "Asia/Tokyo", "America/St_Johns"}) {
    ::setenv("TZ", zone, 1);
    const auto path = folder.path / "book.xlsx";
    write_xlsx(sample_book(), path);
    const std::string bytes = bytes_of(path);
    CHECK(bytes.size() > 5000);
    CHECK(bytes.substr(0, 2) == "PK");
    if (first.empty()) first = bytes;
    CHECK(first == bytes);
  }
  ::unsetenv("TZ");
  Workbook later = sample_book();
  later.day = 2;
  write_xlsx(later, folder.path / "later.xlsx");
  CHECK(bytes_of(folder.path / "later.xlsx") != first);
}

TEST_CASE("cells in any order give the same bytes") {
  const ScratchFolder folder;
  Workbook turned = sample_book();
  for (Sheet& sheet : turned.sheets) std::reverse(sheet.cells.begin(), sheet.cells.end());
  write_xlsx(sample_book(), folder.path / "a.xlsx");
  write_xlsx(turned, folder.path / "b.xlsx");
  CHECK(bytes_of(folder.path / "a.xlsx") == bytes_of(folder.path / "b.xlsx"));
}

TEST_CASE("numbers that are none are refused") {
  const double nan = std::numeric_limits<double>::quiet_NaN(), infinite = std::numeric_limits<double>::infinity();
  each_is_refused({{"Costs!A1: the number is not finite", [=](Workbook& b) { first_cell(b).content = nan; }},
                   {"not finite", [=](Workbook& b) { first_cell(b).content = infinite; }},
                   {"not finite",
                    [=](Workbook& b) {
                      first_cell(b).content = Formula{"1/0", -infinite};
                    }},
                   {"validation: the number",
                    [=](Workbook& b) {
                      b.sheets[0].validations = {{0, 0, 0, nan, false, ""}};
                    }},
                   {"column width", [=](Workbook& b) { b.sheets[0].column_widths = {nan}; }},
                   {"row height", [=](Workbook& b) {
                      b.sheets[0].row_heights = {{0, 500}};
                    }}});
}

TEST_CASE("text that would damage the file is refused") {
  each_is_refused({{"UTF-8", [](Workbook& b) { first_cell(b).content = std::string("\xE9"); }},
                   {"UTF-8", [](Workbook& b) { first_cell(b).content = std::string("\xED\xA0\x80"); }},
                   {"control", [](Workbook& b) { first_cell(b).content = std::string("a\0b", 3); }},
                   {"control", [](Workbook& b) { first_cell(b).content = std::string("\x1B[2J"); }},
                   {"XML forbids", [](Workbook& b) { first_cell(b).content = std::string("\xEF\xBF\xBF"); }},
                   {"characters, at most 32767", [](Workbook& b) { first_cell(b).content = std::string(32768, 'a'); }},
                   {"UTF-8",
                    [](Workbook& b) {
                      first_cell(b).content = Formula{"A2", "\xFF"};
                    }},
                   {"header: the text is not", [](Workbook& b) { b.sheets[0].header = "\xFF"; }},
                   {"document properties", [](Workbook& b) { b.title = "\xFF"; }},
                   {"at most 255", [](Workbook& b) {
                      b.sheets[0].validations = {{0, 0, 0, 1, false, std::string(256, 'a')}};
                    }}});
}

TEST_CASE("formulas are checked for form and length") {
  each_is_refused({{"formula is empty",
                    [](Workbook& b) {
                      first_cell(b).content = Formula{"", 0.0};
                    }},
                   {"without its '='",
                    [](Workbook& b) {
                      first_cell(b).content = Formula{"=A2", 0.0};
                    }},
                   {"line break",
                    [](Workbook& b) {
                      first_cell(b).content = Formula{"A2+\nA3", 0.0};
                    }},
                   {"at most 8191", [](Workbook& b) {
                      first_cell(b).content = Formula{std::string(8192, '1'), 0.0};
                    }}});
  const ScratchFolder folder;
  Workbook longest = small_book();
  first_cell(longest).content = Formula{"1" + std::string(8190, '0'), 0.0};
  CHECK_NOTHROW(write_xlsx(longest, folder.path / "book.xlsx"));
}

TEST_CASE("places are checked") {
  each_is_refused({{"Costs!A2: the cell is given twice", [](Workbook& b) { first_cell(b).row = 1; }},
                   {"outside the sheet", [](Workbook& b) { first_cell(b).row = 1048576; }},
                   {"outside the sheet", [](Workbook& b) { first_cell(b).column = 16384; }},
                   {"at least two columns",
                    [](Workbook& b) {
                      b.sheets[0].merges = {{0, 1, 1}};
                    }},
                   {"merges overlap",
                    [](Workbook& b) {
                      b.sheets[0].merges = {{0, 0, 2}, {0, 2, 3}};
                    }},
                   {"content of its own",
                    [](Workbook& b) {
                      b.sheets[0].cells.push_back({0, 1, 1.0, Look::text, ""});
                      b.sheets[0].merges = {{0, 0, 1}};
                    }},
                   {"reversed",
                    [](Workbook& b) {
                      b.sheets[0].highlights = {{2, 1, 0, 0, "A1"}};
                    }},
                   {"minimum is above",
                    [](Workbook& b) {
                      b.sheets[0].validations = {{0, 0, 2, 1, false, ""}};
                    }},
                   {"no range of rows",
                    [](Workbook& b) {
                      b.sheets[0].repeat_rows = {{3, 1}};
                    }},
                   {"no sheet", [](Workbook& b) { b.sheets.clear(); }},
                   {"calendar", [](Workbook& b) { b.month = 13; }},
                   {"calendar", [](Workbook& b) { b.month = 2, b.day = 30; }}});
}

TEST_CASE("names of sheets are checked") {
  for (const char* name : {"", "History", "hIsToRy", "a[b", "a/b", "a\\b", "a*b", "a?b", "a:b", "'a", "a'",
                           "32 characters are one too many..", "a\nb", "\xFF"}) {
    each_is_refused({{"sheet name", [=](Workbook& b) { b.sheets[0].name = name; }}});
  }
  each_is_refused({{"used twice", [](Workbook& b) {
                      b.sheets.push_back(b.sheets[0]);
                      b.sheets[1].name = "COSTS";
                    }}});
}

TEST_CASE("defined names are checked") {
  for (const char* name :
       {"", "A1", "xfd20", "R1C1", "r", "C", "R5", "a b", "1a", ".a", "a-b", "_xlnm.Print_Area", "ä"}) {
    each_is_refused({{"defined name", [=](Workbook& b) { b.names = {{name, "Costs!$A$1"}}; }}});
  }
  for (const char* target : {"", "A1", "Nowhere!$A$1", "Costs!", "Costs!$A$1:", "Costs!$A$1+1", "=Costs!$A$1"}) {
    each_is_refused({{"no cell of this workbook", [=](Workbook& b) { b.names = {{"rate", target}}; }}});
  }
  each_is_refused({{"used twice", [](Workbook& b) { b.names = {{"rate", "Costs!$A$1"}, {"RATE", "Costs!$A$2"}}; }}});
}

TEST_CASE("charts need ranges of the workbook") {
  const auto with_series = [](std::vector<ChartSeries> series) {
    return [series](Workbook& b) {
      b.sheets[0].charts = {{}};
      b.sheets[0].charts[0].series = series;
    };
  };
  each_is_refused({{"needs a series", with_series({})},
                   {"no range", with_series({{"x", "", "Nowhere!$A$1:$A$2"}})},
                   {"no range", with_series({{"x", "Costs!$A$1:$A", "Costs!$A$1:$A$2"}})},
                   {"no range", with_series({{"x", "", ""}})}});
}

TEST_CASE("what the system refuses keeps its reason") {
  const ScratchFolder folder;
  const auto reason = [](const std::filesystem::path& path) {
    try {
      write_xlsx(small_book(), path);
    } catch (const std::system_error& fault) {
      return fault.code();
    }
    return std::error_code();
  };
  CHECK(reason(folder.path / "missing" / "book.xlsx") == std::errc::no_such_file_or_directory);
  CHECK(reason(folder.path) == std::errc::is_a_directory);
  CHECK(reason("/dev/full") == std::errc::no_space_on_device);
}

TEST_CASE("text that looks like an escape is escaped") {
  CHECK(escaped_text("_x0041_") == "_x005F_x0041_");
  CHECK(escaped_text("a_x00e9_b_xFFFF_") == "a_x005F_x00e9_b_x005F_xFFFF_");
  CHECK(escaped_text("_x0041") == "_x0041");
  CHECK(escaped_text("_x00g1_") == "_x00g1_");
  CHECK(escaped_text("_X0041_") == "_X0041_");
  CHECK(escaped_text("_x0041_x0042_") == "_x005F_x0041_x005F_x0042_");
}

TEST_CASE("properties of the document are cut to 255 characters as the format counts them") {
  CHECK(property_text(std::string(256, 'x')) == std::string(254, 'x') + "…");
  std::string faces;
  for (int at = 0; at < 200; ++at) faces += "\U0001F600";
  CHECK(property_text(faces) == faces.substr(0, 4 * 127) + "…");
  Workbook book = small_book();
  book.title = book.author = faces;
  CHECK_NOTHROW(write_xlsx(book, ScratchFolder().path / "book.xlsx"));
}

TEST_CASE("header text cannot become a code and fits") {
  CHECK(page_line("A & B", false) == "&L&8&\"Arial,Regular\"A && B");
  CHECK(page_line("", true).ends_with("&R&8&\"Arial,Regular\"&P / &N"));
  const std::string cut = page_line(std::string(300, 'x'), true);
  CHECK(cut.size() <= 255 + 2);  // the ellipsis is one character of three bytes
  CHECK(cut.find("x…&R") != std::string::npos);
  const ScratchFolder folder;
  Workbook book = small_book();
  for (int at = 0; at < 300; ++at) book.sheets[0].header += "ü&";
  book.sheets[0].footer = book.sheets[0].header;
  CHECK_NOTHROW(write_xlsx(book, folder.path / "book.xlsx"));
}

TEST_CASE("equal input rules of a column are joined and too many are refused") {
  const ScratchFolder folder;
  Workbook book = small_book();
  for (std::uint32_t row = 0; row < 300; ++row) book.sheets[0].validations.push_back({row, 0, 0, 10, false, "0 to 10"});
  CHECK_NOTHROW(write_xlsx(book, folder.path / "book.xlsx"));
  for (Validation& rule : book.sheets[0].validations) rule.message = "row " + std::to_string(rule.row);
  CHECK_NOTHROW(write_xlsx(book, folder.path / "book.xlsx"));  // too many once told apart by their words: these go
  for (Validation& rule : book.sheets[0].validations) rule.maximum = rule.row + 1.0;
  CHECK_THROWS_AS(write_xlsx(book, folder.path / "book.xlsx"), std::invalid_argument);
}

TEST_CASE("rows are as tall as their text") {
  Sheet sheet;
  sheet.column_widths = {20, 20};
  const std::string words(95, 'n');  // at 1.05 letters a width less one: 20 letters a line, 41 over both columns
  sheet.cells = {{0, 0, "title", Look::title, ""},
                 {1, 0, words, Look::wrapped, ""},
                 {2, 0, words, Look::warning, ""},
                 {3, 0, 1.0, Look::figure, ""},
                 {4, 0, words, Look::wrapped, ""}};
  sheet.merges = {{2, 0, 1}};
  sheet.row_heights = {{4, 60.0}};
  const std::map<std::uint32_t, double> wanted = {
      {0, 24.0}, {1, 15.75 + 4 * 12.75}, {2, 15.75 + 2 * 12.75}, {3, 15.75}, {4, 60.0}};
  CHECK((row_heights(sheet) == wanted));
}

// Not a test of its own: tests/recalc/xlsx_test.py calls it to get a file.
TEST_CASE("the sample workbook for the office suite" * doctest::skip()) {
  const char* path = std::getenv("SEAMBOOK_SAMPLE");
  REQUIRE(path != nullptr);
  write_xlsx(sample_book(), path);
}
