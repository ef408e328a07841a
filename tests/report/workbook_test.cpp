#include "report/workbook.hpp"

#include <doctest/doctest.h>

using namespace seambook;

TEST_CASE("columns have letters") {
  const std::pair<int, const char*> rows[] = {{0, "A"},    {25, "Z"},    {26, "AA"},    {51, "AZ"},
                                              {701, "ZZ"}, {702, "AAA"}, {16383, "XFD"}};
  for (const auto& row : rows) {
    CAPTURE(row.first);
    CHECK(column_name(static_cast<std::uint16_t>(row.first)) == row.second);
  }
}

TEST_CASE("cells have names") {
  CHECK(cell_name(6, 2) == "C7");
  CHECK(cell_name(6, 2, true) == "$C$7");
  CHECK(cell_name(1048575, 16383) == "XFD1048576");
}

TEST_CASE("sheet names are quoted when formulas need it") {
  const std::pair<const char*, const char*> rows[] = {{"Costs", "Costs"},
                                                      {"Cost_2", "Cost_2"},
                                                      {"Weld sequence", "'Weld sequence'"},
                                                      {"Bob's", "'Bob''s'"},
                                                      {"2nd", "'2nd'"},
                                                      {"A1", "'A1'"},
                                                      {"xfd12", "'xfd12'"},
                                                      {"R1C1", "'R1C1'"},
                                                      {"RC", "'RC'"},
                                                      {"Maße", "'Maße'"},
                                                      {"Cost-page", "'Cost-page'"},
                                                      {"ABCD1", "ABCD1"},
                                                      {"Rates", "Rates"},
                                                      {"", "''"}};
  for (const auto& row : rows) {
    CAPTURE(row.first);
    CHECK(sheet_reference(row.first) == row.second);
  }
}

TEST_CASE("a dump has one line a cell in reading order") {
  Workbook book;
  book.sheets.resize(2);
  book.sheets[0].name = "Costs";
  book.sheets[0].cells = {{2, 1, Formula{"SUM(B2:B2)", 12.34}, Look::total, "0.00"},
                          {1, 1, 12.34, Look::input, "0.00"},
                          {1, 0, "wire \"A\"\nsecond line", Look::text, ""},
                          {2, 0, {}, Look::total, ""},
                          {3, 1, Formula{"IF(B3>0,\"yes\",\"\")", "yes"}, Look::label, ""}};
  book.sheets[1].name = "Weld sequence";
  book.sheets[1].cells = {{0, 0, "=1+1", Look::title, ""}};
  CHECK(dump(book) ==
        "Costs!A2 text \"wire \\\"A\\\"\\nsecond line\"\n"
        "Costs!B2 input 12.34\n"
        "Costs!A3 total (blank)\n"
        "Costs!B3 total =SUM(B2:B2) -> 12.34\n"
        "Costs!B4 label =IF(B3>0,\"yes\",\"\") -> \"yes\"\n"
        "'Weld sequence'!A1 title \"=1+1\"\n");
}
