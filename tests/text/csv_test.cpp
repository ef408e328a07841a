#include "text/csv.hpp"

#include <doctest/doctest.h>

using namespace seambook;

namespace {

/// The complaints, and `place text` of each field, rows on lines.
std::string read_csv(std::string text) {
  Diagnostics diagnostics;
  const std::optional<InputTable> table = parse_csv(diagnostics.add_file("t.csv", std::move(text)), diagnostics);
  std::string out;
  for (const Diagnostic& d : diagnostics.list) out += where(diagnostics, d.place) + " " + d.message + "\n";
  if (!table) return out;
  const auto add_row = [&](const InputRow& row) {
    for (const InputField& field : row)
      out += std::to_string(field.place.line) + ":" + std::to_string(field.place.column) + " " + field.text + "|";
    out += "\n";
  };
  add_row(table->headings);
  for (const auto& row : table->rows) add_row(row);
  return out;
}

}  // namespace

TEST_CASE("csv rows are read with their places") {
  CHECK(read_csv("id,length\nA1,3 m\nA2, 4 m \n") == "1:1 id|1:4 length|\n2:1 A1|2:4 3 m|\n3:1 A2|3:4 4 m|\n");
  CHECK(read_csv("id,length\nA1,3 m") == "1:1 id|1:4 length|\n2:1 A1|2:4 3 m|\n");
  CHECK(read_csv("id,note\nA1,\n,x\n") == "1:1 id|1:4 note|\n2:1 A1|2:4 |\n3:1 |3:2 x|\n");
}

TEST_CASE("csv quotes hold separators line ends and quotes") {
  CHECK(read_csv("id,size\nA,\"1/8 \"\"\"\nB,\"x, y\"\nC,\"p\nq\"\nD,z\n") ==
        "1:1 id|1:4 size|\n2:1 A|2:3 1/8 \"|\n3:1 B|3:3 x, y|\n4:1 C|4:3 p\nq|\n6:1 D|6:3 z|\n");
  CHECK(read_csv("id,size\nA,1/8\"\n") == "1:1 id|1:4 size|\n2:1 A|2:3 1/8\"|\n");
  CHECK(read_csv("\"id\",\"a,b\"\n\"\",\"\"\nx,\n") == "1:1 id|1:6 a,b|\n3:1 x|3:3 |\n");
}

TEST_CASE("csv separators marks and line ends are found out") {
  CHECK(read_csv("\xEF\xBB\xBFid;length\r\n\u00E9\u00E9;\"a\r\nb\";\r\n") ==
        "t.csv:2:1 3 fields under 2 headings\n1:1 id|1:4 length|\n");
  CHECK(read_csv("\xEF\xBB\xBFid;length, m\r\n\u00E9\u00E9;\"a\r\nb\"\r\n") ==
        "1:1 id|1:4 length, m|\n2:1 \u00E9\u00E9|2:4 a\nb|\n");
  CHECK(read_csv("id\tlength\nA\t3,5\n") == "1:1 id|1:4 length|\n2:1 A|2:3 3,5|\n");
  CHECK(read_csv("id\nA\n") == "1:1 id|\n2:1 A|\n");
  CHECK(read_csv("\"a;b;c\",d\n1,2\n") == "1:1 a;b;c|1:9 d|\n2:1 1|2:3 2|\n");
  CHECK(read_csv("\n\n,,\nid,length\n\n , \nA,1\n\n") == "4:1 id|4:4 length|\n7:1 A|7:3 1|\n");
}

TEST_CASE("csv faults are told of at their places") {
  CHECK(read_csv("id,length\nA,\"3 m\nB,4 m\n") == "t.csv:2:3 this quote is not closed\n1:1 id|1:4 length|\n");
  CHECK(read_csv("id,length\nA\nB,1,5\n\u00E9,\"x\"y\n") ==
        "t.csv:2:1 1 field under 2 headings\nt.csv:3:1 3 fields under 2 headings\nt.csv:4:6 text after the closing "
        "quote\n1:1 id|1:4 length|\n");
  CHECK(read_csv("id,length,id,\nA,1,2,3\n") ==
        "t.csv:1:11 heading 'id' is given twice\nt.csv:2:7 a column without a heading\n"
        "1:1 id|1:4 length|1:11 |1:14 |\n2:1 A|2:3 1|2:5 2|2:7 3|\n");
  CHECK(read_csv("id,length,,\nA,1,,\n") == "1:1 id|1:4 length|1:11 |1:12 |\n2:1 A|2:3 1|2:5 |2:6 |\n");
  CHECK(read_csv("id,a\nA, \"x\"\n") == "t.csv:2:3 a blank before an opening quote\n1:1 id|1:4 a|\n");
  CHECK(read_csv("") == "t.csv the file is empty\n");
  CHECK(read_csv("\n \n") == "t.csv the file is empty\n");
  CHECK(read_csv("id\nA\x1B\n") == "t.csv:2:2 a control character (U+001B)\n");
  CHECK(read_csv("id\nA\xE9\n") == "t.csv:2:2 a byte that is no UTF-8\n");
  CHECK(read_csv("id\rA\r") == "t.csv:1:3 a carriage return inside a line\n");
}

TEST_CASE("csv sizes are bounded") {
  std::string long_field = "id,note\nA,\"", wide, many = "a,b\n";
  for (int i = 0; i < 70; ++i) long_field += std::string(1000, 'x') + "\n";
  CHECK(read_csv(long_field + "\"\n") == "t.csv:2:3 a field longer than 64 kB\n1:1 id|1:4 note|\n");
  for (int i = 0; i < 201; ++i) wide += "h" + std::to_string(i) + ",";
  CHECK(read_csv(wide + "z\n").find("more than 200 headings") != std::string::npos);
  for (int i = 0; i < 600'000; ++i) many += "1,\n";
  CHECK(read_csv(many).starts_with("t.csv:500001:1 more than a million fields\n"));
  CHECK(read_csv("a\n" + std::string((64 << 10) + 1, 'x') + "\n") == "t.csv:2:1 a line longer than 64 kB\n");
}
