#include "report/number_text.hpp"

#include <doctest/doctest.h>

#include <limits>

using namespace seambook;

TEST_CASE("figures are plain decimals") {
  struct Row {
    double value;
    int decimals;
    const char* text;
  };
  const Row rows[] = {{12.5, 2, "12.50"},
                      {-0.0, 2, "0.00"},
                      {-0.004, 2, "0.00"},
                      {-0.006, 2, "-0.01"},
                      {0, 0, "0"},
                      {-0.4, 0, "0"},
                      {1234567.891, 1, "1234567.9"},
                      {-10, 0, "-10"},
                      {1e15, 0, "1000000000000000"},
                      {100, 0, "100"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(figure(row.value, row.decimals) == row.text);
  }
  CHECK(figure(std::numeric_limits<double>::infinity(), 2) == "inf");
}

TEST_CASE("money is grouped from four digits on") {
  struct Row {
    double value;
    const char* text;
  };
  const Row rows[] = {{0, "0.00 EUR"},
                      {999.99, "999.99 EUR"},
                      {1000, "1 000.00 EUR"},
                      {12345.6, "12 345.60 EUR"},
                      {1234567, "1 234 567.00 EUR"},
                      {-1234.5, "-1 234.50 EUR"},
                      {-999, "-999.00 EUR"},
                      {-0.001, "0.00 EUR"},
                      {123456, "123 456.00 EUR"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(money_text(row.value, "EUR") == row.text);
  }
  CHECK(money_text(1234.5, "") == "1 234.50");
}
