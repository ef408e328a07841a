#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "read/field_info.hpp"

using namespace seambook;

namespace {

/// Checks a table and those inside it; gives how many keys there are.
std::size_t check_table(const std::vector<FieldInfo>& table) {
  std::size_t keys = table.size();
  for (const FieldInfo& info : table) {
    CAPTURE(std::string(info.key));
    CHECK(!info.key.empty());
    CHECK(!info.about.empty());
    const auto same = [&](const FieldInfo& other) { return other.key == info.key; };
    CHECK(std::count_if(table.begin(), table.end(), same) == 1);
    const bool is_section = info.shape == Shape::section || info.shape == Shape::sections ||
                            info.shape == Shape::count_or_list || info.shape == Shape::amount_or_section ||
                            info.shape == Shape::flag_or_section || info.shape == Shape::priced_sections ||
                            info.shape == Shape::word_or_sections;
    CHECK((info.inside != nullptr) == is_section);
    if (info.inside) keys += check_table(info.inside());
  }
  return keys;
}

bool has_key(const std::vector<FieldInfo>& table, std::string_view key) {
  return std::any_of(table.begin(), table.end(), [&](const FieldInfo& info) { return info.key == key; });
}

}  // namespace

TEST_CASE("the tables of fields name each key once and describe it") {
  CHECK(check_table(job_fields()) > 80);
  CHECK(check_table(rate_fields()) > 150);
}

TEST_CASE("every entry of the rate book must say what it rests on except welders") {
  for (const FieldInfo& section : rate_fields()) {
    if (!section.inside || section.key == "units") continue;
    CAPTURE(std::string(section.key));
    const std::vector<FieldInfo> keys = section.inside();
    const bool states = has_key(keys, "basis") && has_key(keys, "source");
    CHECK(states == (section.key != "welders"));
    for (const FieldInfo& info : keys)
      if (info.key == "basis" || info.key == "source") CHECK(info.required);
  }
}
