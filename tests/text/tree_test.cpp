#include "text/tree.hpp"

#include <doctest/doctest.h>

using namespace seambook;

namespace {

void dump_value(Value value, std::string& out) {
  const auto place = [&] {
    return std::to_string(value.place().line) + ":" + std::to_string(value.place().column) + " ";
  };
  switch (value.kind()) {
    case Kind::nothing:
      out += place() + "nothing";
      return;
    case Kind::scalar:
      out += place() + (value.quoted() ? "\"" : "") + std::string(value.text());
      return;
    case Kind::list:
    case Kind::map:
      break;
  }
  out += place() + (value.kind() == Kind::list ? "[" : "{");
  for (Value child = value.first(); child; child = child.next()) {
    out += out.ends_with('[') || out.ends_with('{') ? "" : ", ";
    dump_value(child, out);
  }
  out += value.kind() == Kind::list ? "]" : "}";
}

/// The tree as one line, or the first complaint.
std::string read_back(std::string text) {
  Diagnostics diagnostics;
  const std::optional<Tree> tree = parse_yaml(diagnostics.add_file("t.yaml", std::move(text)), diagnostics);
  if (!diagnostics.list.empty()) {
    const Diagnostic& first = diagnostics.list.front();
    return where(diagnostics, first.place) + " " + first.message;
  }
  std::string out;
  dump_value(Value(*tree, 0), out);
  return out;
}

std::string repeated_text(std::string_view part, std::size_t times) {
  std::string text;
  for (std::size_t i = 0; i < times; ++i) text += part;
  return text;
}

}  // namespace

TEST_CASE("yaml becomes strings lists and maps with their places") {
  CHECK(read_back("a: 1\nb: [x, 'y z']\n") == "1:1 {1:1 a, 1:4 1, 2:1 b, 2:4 [2:5 x, 2:8 \"y z]}");
  CHECK(read_back("- k: {l: \"m\"}\n  n: |\n    o\n    p\n") ==
        "1:1 [1:3 {1:3 k, 1:6 {1:7 l, 1:10 \"m}, 2:3 n, 2:6 \"o\np\n}]");
  CHECK(read_back("a: 1/8 \"\nb: the 'old one\nc: 4'-6 1/2\"\nd: [\n") == "t.yaml:4:4 this '[' is not closed");
  CHECK(read_back("a: 1/8 \"\nb: the 'old one # [ note\nc: 4'-6 1/2\"\n") ==
        "1:1 {1:1 a, 1:4 1/8 \", 2:1 b, 2:4 the 'old one, 3:1 c, 3:4 4'-6 1/2\"}");
  CHECK(read_back("--- \na: []\nb: {}\n...\n") == "2:1 {2:1 a, 2:4 [], 3:1 b, 3:4 {}}");
}

TEST_CASE("scalars stay as written") {
  CHECK(read_back("[010, 0x1F, .inf, yes, NO, 1e3, 12:30, 1_000, '5', '']") ==
        "1:1 [1:2 010, 1:7 0x1F, 1:13 .inf, 1:19 yes, 1:24 NO, 1:28 1e3, 1:33 12:30, 1:40 1_000, 1:47 \"5, 1:52 \"]");
}

TEST_CASE("nulls are nothing and stand at their key or dash") {
  CHECK(read_back("a: ~\nb: null\nc:\n\nd: '~'\ne: nullable\n") ==
        "1:1 {1:1 a, 1:4 nothing, 2:1 b, 2:4 nothing, 3:1 c, 3:1 nothing, 5:1 d, 5:4 \"~, 6:1 e, 6:4 nullable}");
  CHECK(read_back("a:\n  -\n  - x\n  -\n") == "1:1 {1:1 a, 2:3 [2:3 nothing, 3:5 x, 4:3 nothing]}");
  CHECK(read_back("a: 1\nb") == "1:1 {1:1 a, 1:4 1, 2:1 b, 2:1 nothing}");
}

TEST_CASE("columns count characters after wide letters byte-order marks and carriage returns") {
  CHECK(read_back("\xEF\xBB\xBF\u00E9\u00E9: x\r\n\u65E5\u672C: {\u00F6: y, \U0001F600: z}\r\n") ==
        "1:1 {1:1 \u00E9\u00E9, 1:5 x, 2:1 \u65E5\u672C, 2:5 {2:6 \u00F6, 2:9 y, 2:12 \U0001F600, 2:15 z}}");
  CHECK(read_back("\xEF\xBB\xBF\u00E9: 'x\r\nb: 1\r\n") == "t.yaml:1:4 this quote is not closed");
  CHECK(read_back("\u00E9: x\r\n\u00E9\u00E9: 1\r\n\u00E9: 2\r\n") == "t.yaml:3:1 '\u00E9' is given twice");
  CHECK(read_back("a: \u00E9\u00E9\xFF") == "t.yaml:1:6 a byte that is no UTF-8");
  CHECK(read_back("{\u00E9: \u00E9 \u00E9: 1}") == "t.yaml:1:8 a ',' or '}' is missing before this");
}

TEST_CASE("empty files are refused as such") {
  for (const char* text : {"", "\n\n", "# only a note\n", "---\n", "~", "\xEF\xBB\xBF"})
    CHECK(read_back(text) == "t.yaml the file is empty");
}

TEST_CASE("a NUL is refused wherever it stands") {
  CHECK(read_back(std::string("a: \"x\0y\"", 8)) == "t.yaml:1:6 a control character (U+0000)");
  CHECK(read_back(std::string("\0a: 1", 5)) == "t.yaml:1:1 a control character (U+0000)");
  CHECK(read_back(std::string("a\0:\0 \0", 6)) == "t.yaml:1:2 a control character (U+0000)");
  CHECK(read_back("\xFF\xFE"
                  "a") == "t.yaml the file is UTF-16");
}

TEST_CASE("depth size and count are bounded") {
  const std::string deep_31 = repeated_text("[", 32) + repeated_text("]", 32);
  CHECK(read_back(deep_31).substr(0, 8) == "1:1 [1:2");
  CHECK(read_back("[" + deep_31 + "]") == "t.yaml:1:33 too many lists and maps inside each other");
  CHECK(read_back(repeated_text("- ", 33) + "x") == "t.yaml:1:65 too many lists and maps inside each other");
  CHECK(read_back(repeated_text("- ", 10'000) + "x") == "t.yaml:1:65 too many lists and maps inside each other");
  CHECK(read_back("a: " + std::string(limit::line_bytes, 'x')) == "t.yaml:1:1 a line longer than 64 kB");
  CHECK(read_back("a: |\n" + repeated_text("  " + std::string(1000, 'x') + "\n", 70)) ==
        "t.yaml:1:4 a text longer than 64 kB");
  CHECK(read_back(std::string(limit::file_bytes + 1, ' ')) == "t.yaml the file is larger than 16 MB");
}

TEST_CASE("a flow collection that the parser would hoard is refused early") {
  const std::string complaint = "more than 256 kB follow before this comes to an end";
  CHECK(read_back(repeated_text("[\n", limit::file_bytes / 2)) == "t.yaml:1:1 " + complaint);
  CHECK(read_back(repeated_text("# a note\n", 40'000)) == "t.yaml:1:1 " + complaint);
  CHECK(read_back(repeated_text("{a:\n", limit::file_bytes / 4)) == "t.yaml:1:1 " + complaint);
}

TEST_CASE("many keys and many values in one line keep their places") {
  std::string text, line = "\u00E9: [";
  for (int i = 0; i < 5000; ++i) text += "k" + std::to_string(i) + ": 1\n";
  for (int i = 0; i < 9000; ++i) line += "\u00E9,";
  Diagnostics diagnostics;
  const std::string all = text + "k17: 2\n" + line + "x]\n";
  const std::optional<Tree> tree = parse_yaml(diagnostics.add_file("t.yaml", all), diagnostics);
  REQUIRE(tree.has_value());
  REQUIRE(diagnostics.list.size() == 1);
  CHECK(diagnostics.list[0].message == "'k17' is given twice");
  CHECK(diagnostics.list[0].hint == "first on line 18");
  CHECK(tree->nodes.back().column == 4 + 2 * 9000 + 1);
  std::size_t keys = 0;
  for (Value key = Value(*tree, 0).first(); key; key = key.next().next()) ++keys;
  CHECK(keys == 5001);
}

TEST_CASE("a tree that comes in spite of a repeated key holds the first value only") {
  Diagnostics diagnostics;
  const std::optional<Tree> tree =
      parse_yaml(diagnostics.add_file("t.yaml", "a: 1\nb: 2\na: {c: 3}\nd: 4\n"), diagnostics);
  REQUIRE(tree.has_value());
  std::string out;
  dump_value(Value(*tree, 0), out);
  CHECK(out == "1:1 {1:1 a, 1:4 1, 2:1 b, 2:4 2, 4:1 d, 4:4 4}");
}

TEST_CASE("a flood of directives or of one key ends early") {
  for (const std::string& text : {repeated_text("%YAML 1.2\n", 50'000), repeated_text("a: 1\n", 50'000)}) {
    Diagnostics diagnostics;
    parse_yaml(diagnostics.add_file("t.yaml", text), diagnostics);
    CHECK(diagnostics.full());
    CHECK(diagnostics.list.size() == Diagnostics::most_errors + 1);
  }
}

TEST_CASE("repeated faults stop at a hundred") {
  Diagnostics diagnostics;
  parse_yaml(diagnostics.add_file("t.yaml", repeated_text("- !x 1\n", 5000)), diagnostics);
  CHECK(diagnostics.list.size() == 101);
  CHECK(diagnostics.list.back().message == "too many faults");
}
