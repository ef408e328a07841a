#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

Length<> millimetres(double value) { return {value * unit::mm.si}; }

std::string name_of(const RateBook& book, const ChoiceResult& result) {
  return result.procedure ? book.procedures[*result.procedure].name : "none";
}

struct ChoiceRow {
  ChoiceRequest asked;
  std::string procedure, words;
};

}  // namespace

TEST_CASE("the smallest procedure that is large enough is chosen and the words say why") {
  const test::LoadedJob loaded = test::load_job("bracket.yaml");
  REQUIRE(loaded.book);
  // Expected from rates/procedures-*.yaml by reading their sizes, positions, groups and thickness ranges.
  const ChoiceRow rows[] = {
      {{WeldKind::fillet, "135", "1.1", "PB", millimetres(5), millimetres(8)},
       "CG-F5",
       "CG-F5 is the smallest for leg 5 mm and more; next: CG-F6, CG-F8, CG-F10"},
      {{WeldKind::fillet, "135", "1.1", "PB", millimetres(4.2), millimetres(8)},
       "CG-F5",
       "CG-F5 is the smallest for leg 4.2 mm and more; next: CG-F6, CG-F8, CG-F10"},
      {{WeldKind::fillet, "135", "1.1", "PB", millimetres(8), millimetres(30)},
       "CG-F8",
       "CG-F8 is the smallest for leg 8 mm and more; next: CG-F10, CG-F12"},
      {{WeldKind::fillet, "135", "1.2", "PF", millimetres(4), millimetres(6)},
       "CG-F5V",
       "CG-F5V is the smallest for leg 4 mm and more; smaller: CG-F3V"},
      {{WeldKind::single_v, "135", "1.1", "PA", millimetres(12), millimetres(12)},
       "CG-V15",
       "CG-V15 is the smallest for thickness 12 mm and more; no other fits"},
      {{WeldKind::single_v, "135", "1.1", "PA", millimetres(18), millimetres(18)},
       "CG-V15",
       "CG-V15 is the largest that fits; thickness 18 mm takes more passes; no other fits"},
      {{WeldKind::single_v, "", "8.1", "PA", millimetres(3.5), millimetres(3.5)},
       "ST-PR",  // as large as ST-PC, and earlier
       "ST-PR is the largest that fits; thickness 3.5 mm takes more passes; next: ST-PC"},
      {{WeldKind::edge, "521", "8.1", "PA", millimetres(1.5), millimetres(1.5)},
       "SL-15A",
       "SL-15A is the smallest for thickness 1.5 mm and more; no other fits"},
  };
  for (const ChoiceRow& row : rows) {
    const ChoiceResult result = choose_procedure(*loaded.book, row.asked);
    CAPTURE(row.words);
    CHECK(name_of(*loaded.book, result) == row.procedure);
    CHECK(result.words == row.words);
  }
}

TEST_CASE("a size written in another unit meets its row") {
  const test::LoadedJob loaded = test::load_job("bracket.yaml");
  REQUIRE(loaded.book);
  // 3 mm as 0.3 cm of binary fractions: one unit in the last place larger than 3 mm.
  const Length<> just_above{3 * unit::mm.si * (1 + 1e-12)};
  const ChoiceResult result =
      choose_procedure(*loaded.book, {WeldKind::fillet, "", "1.1", "PB", just_above, millimetres(4)});
  CHECK(name_of(*loaded.book, result) == "CG-F3");
}

TEST_CASE("when nothing fits the nearest misses are named with their reasons") {
  const test::LoadedJob loaded = test::load_job("bracket.yaml");
  REQUIRE(loaded.book);
  const ChoiceResult larger =
      choose_procedure(*loaded.book, {WeldKind::fillet, "135", "1.1", "PB", millimetres(13), millimetres(20)});
  CHECK(name_of(*loaded.book, larger) == "none");
  CHECK(larger.words == "CG-F12 is for leg up to 12 mm; CG-F10 is for leg up to 10 mm; CG-F8 is for leg up to 8 mm");
  const ChoiceResult overhead =
      choose_procedure(*loaded.book, {WeldKind::fillet, "135", "8.1", "PE", millimetres(3), millimetres(3)});
  CHECK(name_of(*loaded.book, overhead) == "none");
  CHECK(overhead.words ==
        "SG-F3 is for position PB, not PE; SG-F3G is for position PG, not PE; SG-F4 is for position PB, not PE");
}

TEST_CASE("processes positions and groups are known by both vocabularies") {
  const std::pair<const char*, const char*> processes[] = {
      {"135", "135"}, {"GMAW", "135"}, {"GTAW", "141"}, {"SMAW", "111"}, {"FCAW", "136"}, {"SAW", "121"},
      {"LBW", "521"}, {"15", "15"},    {"gmaw", ""},    {"13", ""},      {"", ""},
  };
  for (const auto& [word, number] : processes) {
    CAPTURE(word);
    CHECK(process_number(word) == number);
  }
  CHECK(position_code("2F", WeldKind::fillet) == "PB");
  CHECK(position_code("3F", WeldKind::fillet) == "PF");
  CHECK(position_code("3G", WeldKind::single_v) == "PF");
  CHECK(position_code("2G", WeldKind::square) == "PC");
  CHECK(position_code("2G", WeldKind::fillet) == "");
  CHECK(position_code("PD", WeldKind::edge) == "PD");
  CHECK(position_code("PK", WeldKind::fillet) == "");
  CHECK(group_admits("8", "8.1"));
  CHECK(group_admits("8.1", "8.1"));
  CHECK_FALSE(group_admits("8.1", "8"));
  CHECK_FALSE(group_admits("1", "11.1"));
  CHECK_FALSE(group_admits("1", "10"));
}
