// Words as the shop's terms print them: ISO 4063 and ISO 6947, or AWS A3.0 (from memory).
#include <doctest/doctest.h>

#include "resolve/rate_book.hpp"

using namespace seambook;

TEST_CASE("processes and positions are printed in the shop's terms and read back as the same") {
  CHECK(process_word("135", Terms::aws) == "GMAW");
  CHECK(process_word("141", Terms::aws) == "GTAW");
  CHECK(process_word("131", Terms::aws) == "GMAW");
  CHECK(process_word("135", Terms::iso) == "135");
  CHECK(position_word("PB", WeldKind::fillet, Terms::aws) == "2F");
  CHECK(position_word("PF", WeldKind::single_v, Terms::aws) == "3G");
  CHECK(position_word("PG", WeldKind::fillet, Terms::aws) == "PG");  // no AWS word of its own
  for (const char* number : {"111", "114", "121", "135", "136", "138", "141", "15", "521"})
    CHECK(process_number(process_word(number, Terms::aws)) == number);
  for (const char* code : {"PA", "PB", "PF", "PD"})
    CHECK(position_code(position_word(code, WeldKind::fillet, Terms::aws), WeldKind::fillet) == code);
}
