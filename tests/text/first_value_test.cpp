#include "text/first_value.hpp"

#include <doctest/doctest.h>

using namespace seambook;

TEST_CASE("the value of a key of the outermost map is found") {
  CHECK(first_value("format: 1\njob: bracket\n", "job") == "bracket");
  CHECK(first_value("a: {job: inner}\nb: [job, x]\n'job': \"Träger 1\"\n", "job") == "Träger 1");
  CHECK(first_value("{a: job, job: 4711}", "job") == "4711");
}

TEST_CASE("what stands behind the value is not looked at") {
  CHECK(first_value("job: a\nx: [1,\ny: }\n", "job") == "a");
  CHECK(first_value("job: a\njob: b\n", "job") == "a");
}

TEST_CASE("where there is none nothing is found") {
  for (const char* text : {"", "job\n", "- job: a\n", "job: [a]\n", "job: {a: b}\n", "job:\n", "format: 1\n",
                           "x: [1\njob: a\n", "a: &b 1\nc: *b\n", ",", "? {a: b}\n: job\n"}) {
    CAPTURE(text);
    CHECK(!first_value(text, "job"));
  }
  // A bracket that never closes ends the search like a file that is read.
  CHECK(!first_value("x: [" + std::string(1 << 20, '[') + "\njob: a\n", "job"));
}
