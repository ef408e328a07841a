#include "read/order_file.hpp"

#include <doctest/doctest.h>

using namespace seambook;

namespace {

struct Read {
  Diagnostics diagnostics;
  std::optional<std::vector<Word>> words;
};

Read read(const std::string& text) {
  Read out;
  out.words = read_order_file(out.diagnostics.add_file("order.csv", text), out.diagnostics);
  return out;
}

}  // namespace

TEST_CASE("an order is the column operation, whatever else stands beside it") {
  const Read order = read("who,operation\nQ1,a/w/J1/fit\n,a/w/J1/1\n");
  REQUIRE(order.words);
  REQUIRE(order.words->size() == 2);
  CHECK((*order.words)[0].text == "a/w/J1/fit");
  CHECK((*order.words)[1].text == "a/w/J1/1");
  CHECK((*order.words)[1].place.line == 3);
}

TEST_CASE("a table without that column, or no table, is refused at its place") {
  const Read other = read("job,step\na,b\n");
  CHECK_FALSE(other.words);
  REQUIRE(other.diagnostics.list.size() == 1);
  CHECK(other.diagnostics.list[0].message == "no column is called 'operation'");
  CHECK(other.diagnostics.list[0].place.line == 1);
  for (const char* text : {"", "operation\n\"a", "operation,b\na\n"}) {
    CAPTURE(text);
    const Read bad = read(text);
    CHECK_FALSE(bad.words);
    CHECK(bad.diagnostics.has_errors());
  }
}
