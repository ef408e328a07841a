#include "report/terminal.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace seambook;

TEST_CASE("a table is aligned and its total set apart") {
  TextTable table;
  table.headings = {"joint", "min", "note"};
  table.right_aligned = {false, true};
  table.rows = {{"J1", "9.5", "fillet"}, {"J2", "110.0", ""}, {"total", "119.5"}};
  table.rule_before_row = 2;
  CHECK(render(table) ==
        "joint    min  note\n"
        "-----  -----  ------\n"
        "J1       9.5  fillet\n"
        "J2     110.0\n"
        "-----  -----  ------\n"
        "total  119.5\n");
}

TEST_CASE("a table without headings has no heading line") {
  TextTable table;
  table.rows = {{"a", "b"}, {"ccc", "d"}};
  CHECK(render(table) == "a    b\nccc  d\n");
  CHECK(render({}).empty());
}

TEST_CASE("columns keep in line with wide and combining characters") {
  TextTable table;
  table.right_aligned = {false, true};
  // U+9AD8 U+3055 takes four columns; e with a combining acute accent takes one.
  table.rows = {{"高さ", "1"}, {"e\u0301", "2"}, {"Øå", "3"}, {"plain", "4"}};
  CHECK(render(table) == "高さ   1\ne\u0301      2\nØå     3\nplain  4\n");
  CHECK(display_width("高さ") == 4);
  CHECK(display_width("e\u0301") == 1);
  CHECK(display_width("") == 0);
}

TEST_CASE("nothing in a cell commands the terminal") {
  TextTable table;
  table.headings = {"a\nb"};
  table.rows = {{"\x1B[2Jx"}, {"\xC2\x9B"}, {"\xFFz"}, {"tab\there"}, {std::string("n\0l", 3)}, {"\u202Egnp"}};
  CHECK(render(table) == "a?b\n--------\n?[2Jx\n?\n?z\ntab?here\nn?l\n?gnp\n");
}

TEST_CASE("a text is broken at its blanks and goes on further in") {
  CHECK(wrapped("one two three", any_width, 4) == "one two three\n");
  CHECK(wrapped("  one two three four", 17, 4) == "  one two three\n    four\n");
  CHECK(wrapped("", 20, 4) == "");
  CHECK(wrapped("高さ高さ 高さ高さ 高さ", 20, 2) == "高さ高さ 高さ高さ\n  高さ\n");
  // Twelve columns are left to the words, however narrow the terminal.
  CHECK(wrapped("    unbreakable words", 5, 4) == "    unbreakable\n    words\n");
}

TEST_CASE("a line that is too long goes on below in its widest column, and figures stay whole") {
  TextTable table;
  table.headings = {"work", "set-up min", "why here"};
  table.right_aligned = {false, true, false};
  table.rows = {{"hinge/1", "1234.5", "same wire and gas as the work before, so nothing is changed"},
                {"高さ高さ高さ高さ", "7", "first"}};
  const std::string text = render(table, 50);
  CHECK(text ==
        "work              set-up min  why here\n"
        "----------------  ----------  --------------------\n"
        "hinge/1               1234.5  same wire and gas as\n"
        "                              the work before, so\n"
        "                              nothing is changed\n"
        "高さ高さ高さ高さ           7  first\n");
  for (std::size_t columns = 34; columns < 100; ++columns) {
    CAPTURE(columns);
    std::istringstream lines(render(table, columns));
    for (std::string line; std::getline(lines, line);) CHECK(display_width(line) <= columns);
  }
  CHECK(render(table, 10) == render(table, 11));  // none can give way any more
}
