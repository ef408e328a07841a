#include <doctest/doctest.h>

#include <cstring>

#include "random_row.hpp"

using namespace seambook;

namespace {

bool same_bits(double a, double b) { return std::memcmp(&a, &b, sizeof a) == 0; }

}  // namespace

TEST_CASE("a row traced gives the same bits as a row of plain numbers") {
  random_row::Dice dice(1);
  Tape tape;
  std::size_t figures = 0, recorded = 0;
  for (int trial = 0; trial < 5000; ++trial) {
    CAPTURE(trial);
    const Row<Sourced> row = random_row::any(dice);
    tape.clear();
    const auto plain = random_row::readings(row_figures(lift_row<double>(row)));
    const auto traced = random_row::readings(row_figures(lift_row<Traced>(row, &tape)));
    REQUIRE(plain.size() == traced.size());
    for (std::size_t i = 0; i < plain.size(); ++i) {
      CAPTURE(plain[i].words);
      CHECK(std::isfinite(plain[i].number));
      CHECK(same_bits(plain[i].number, traced[i].number.value));
      if (traced[i].number.tape == nullptr) continue;
      CHECK(same_bits(plain[i].number, tape.nodes[traced[i].number.node].value));
      ++recorded;
    }
    figures += plain.size();
  }
  CHECK(recorded > figures / 2);  // the rest are absent numbers, such as most labour elements: they leave no mark
  MESSAGE(figures << " figures compared");
}
