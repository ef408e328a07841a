#include "basics/diagnostics.hpp"

#include <doctest/doctest.h>

#include "basics/utf8.hpp"

using namespace seambook;

namespace {

std::string rendered_at(const std::string& text, std::uint32_t line, std::uint32_t column) {
  Diagnostics diagnostics;
  const std::uint32_t file = diagnostics.add_file("a.yaml", text);
  diagnostics.error({file, line, column}, "wrong");
  return render(diagnostics);
}

}  // namespace

TEST_CASE("a complaint shows place message hint line and caret") {
  Diagnostics diagnostics;
  const auto file = diagnostics.add_file("jobs/gantry.yaml", "format: 1\njoints:\n  - id: A\n    thicknes: 8 mm\n");
  diagnostics.error({file, 4, 5}, "unknown key 'thicknes'", "did you mean 'thickness'?");
  CHECK(render(diagnostics) ==
        "jobs/gantry.yaml:4:5: error: unknown key 'thicknes'; did you mean 'thickness'?\n"
        "    thicknes: 8 mm\n"
        "    ^\n");
}

TEST_CASE("complaints come sorted by place and keep their order at one place") {
  Diagnostics diagnostics;
  const auto a = diagnostics.add_file("a", "1\n2\n3\n"), b = diagnostics.add_file("b", "x\n");
  diagnostics.warning({b, 1, 1}, "fourth");
  diagnostics.note({a, 3, 1}, "third");
  diagnostics.error({a, 1, 1}, "first");
  diagnostics.error({a, 1, 1}, "second");
  diagnostics.list.push_back({Level::not_for_the_floor, {b, 0, 0}, "whole file", ""});
  diagnostics.error({}, "no file");
  CHECK(render(diagnostics) ==
        "error: no file\na:1:1: error: first\n1\n^\na:1:1: error: second\n1\n^\na:3:1: note: third\n3\n^\n"
        "b: not for the floor: whole file\nb:1:1: warning: fourth\nx\n^\n");
  CHECK(std::string(level_word(Level::not_for_the_floor)) == "not_for_the_floor");
}

TEST_CASE("only errors count as errors") {
  Diagnostics diagnostics;
  diagnostics.warning({}, "w");
  diagnostics.note({}, "n");
  CHECK(!diagnostics.has_errors());
  diagnostics.error({}, "e");
  CHECK(diagnostics.has_errors());
}

TEST_CASE("the caret stands under the character however wide the line is shown") {
  CHECK(rendered_at("\u00E9\u00E9: x", 1, 5) == "a.yaml:1:5: error: wrong\n\u00E9\u00E9: x\n    ^\n");
  CHECK(rendered_at("\u65E5\u672C: x", 1, 5) == "a.yaml:1:5: error: wrong\n\u65E5\u672C: x\n      ^\n");
  CHECK(rendered_at("e\u0301: x", 1, 5) == "a.yaml:1:5: error: wrong\ne\u0301: x\n   ^\n");
  CHECK(rendered_at("\ta: x", 1, 2) == "a.yaml:1:2: error: wrong\n a: x\n ^\n");
  CHECK(rendered_at("\xEF\xBB\xBF"
                    "ab\r\ncd\r\n",
                    1, 2) == "a.yaml:1:2: error: wrong\nab\n ^\n");
  CHECK(rendered_at("\xEF\xBB\xBF"
                    "ab\r\ncd\r\n",
                    2, 2) == "a.yaml:2:2: error: wrong\ncd\n ^\n");
  CHECK(rendered_at("ab", 1, 9) == "a.yaml:1:9: error: wrong\nab\n  ^\n");
  CHECK(rendered_at("ab", 7, 1) == "a.yaml:7:1: error: wrong\n");
}

TEST_CASE("nothing in the author's text reaches the terminal's controls") {
  Diagnostics diagnostics;
  const auto file = diagnostics.add_file("a\x1B[31m\n.yaml", "x\x1B]0;t\x07\xC2\x9B\u202E\xFF: 1");
  diagnostics.error({file, 1, 1}, "bad '\x1B[2J\r\n\x7F'", "see \xC2\x85\u2028 \xE2\x82");
  const std::string text = render(diagnostics);
  CHECK(text == "a [31m .yaml:1:1: error: bad ' [2J   '; see    ??\nx ]0;t   ?: 1\n^\n");
}

TEST_CASE("long lines are cut round the caret") {
  const std::string line = std::string(5000, 'a') + "X" + std::string(5000, 'b');
  const std::string text = rendered_at(line, 1, 5001);
  const std::size_t source = text.find('\n') + 1, under = text.find('\n', source) + 1;
  CHECK(text.size() < 400);
  CHECK(text.substr(source, 4) == "...a");
  CHECK(text.substr(under - 5, 5) == "b...\n");
  CHECK(text[source + (text.find('^') - under)] == 'X');
  CHECK(rendered_at(line, 1, 1).find("\n^\n") != std::string::npos);
}

TEST_CASE("the nearest name is found by slips of the fingers") {
  const std::string_view known[] = {"thickness", "length", "leg", "throat", "weld", "welds", "position"};
  struct Row {
    const char *word, *nearest;
  };
  const Row rows[] = {{"thicknes", "thickness"},
                      {"lenght", "length"},
                      {"lge", "leg"},
                      {"wedl", "weld"},
                      {"weldd", "weld"},
                      {"Leg", "leg"},
                      {"postion", "position"},
                      {"thikcnes", "thickness"},
                      {"colour", ""},
                      {"", ""},
                      {"weld", "weld"},
                      {"xx", ""}};
  for (const Row& row : rows) {
    CAPTURE(row.word);
    CHECK(nearest(row.word, known) == row.nearest);
  }
  const std::string_view ties[] = {"abcx", "abcy"};
  CHECK(nearest("abcz", ties) == "abcx");
  CHECK(nearest(std::string(100'000, 'a'), known) == "");
  const std::string_view umlauts[] = {"l\u00E4nge"};
  CHECK(nearest("l\u00E4gne", umlauts) == "l\u00E4nge");
}

TEST_CASE("utf-8 is told from bytes that are none") {
  struct Row {
    std::string_view text;
    std::size_t characters;
    bool valid;
  };
  const Row rows[] = {{"a", 1, true},
                      {"\u00E9", 1, true},
                      {"\uD7FF\uE000\uFFFD", 3, true},
                      {"\U0010FFFF", 1, true},
                      {"\xC3", 1, false},
                      {"\xC0\xAF", 2, false},
                      {"\xE0\x80\x80", 3, false},
                      {"\xED\xA0\x80", 3, false},
                      {"\xF4\x90\x80\x80", 4, false},
                      {"\xF8\x88\x80\x80\x80", 5, false},
                      {"\x80", 1, false},
                      {"\xE2\x82", 2, false}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(count_characters(row.text) == row.characters);
    CHECK(character_at(row.text, 0).valid == row.valid);
  }
}

TEST_CASE("errors beyond the most are not taken, and that is said") {
  Diagnostics diagnostics;
  for (int at = 0; at < 2000; ++at) diagnostics.warning({}, "w");  // warnings are not bounded
  for (std::size_t at = 1; at < Diagnostics::most_errors; ++at) diagnostics.error({}, "e");
  CHECK(!diagnostics.full());
  CHECK(diagnostics.list.size() == 2000 + Diagnostics::most_errors - 1);
  for (int at = 0; at < 5; ++at) diagnostics.error({}, "e");
  CHECK(diagnostics.full());
  CHECK(diagnostics.list.size() == 2000 + Diagnostics::most_errors + 1);
  CHECK(diagnostics.list.back().message == "too many faults");
  diagnostics.list.clear();  // told of
  CHECK(!diagnostics.full());
  diagnostics.error({}, "e");
  CHECK(diagnostics.list.size() == 1);
}
