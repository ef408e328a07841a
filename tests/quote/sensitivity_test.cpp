// How the price moves by each input: the backward sweep against the order estimated again with that input moved.
#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "../report/quoted.hpp"
#include "quote/moved_order.hpp"

using namespace seambook;

namespace {

/// Money per percent, by central differences.
double moved_per_percent(const test::Quoted& quoted, SourceId source, double share) {
  const OrderInputs order = order_inputs(*quoted.loaded.book, *quoted.loaded.job, quoted.quote, {source});
  const auto total = [&](double factor) {
    Factors by;
    move_to(by, source, factor);
    return moved_order(order, by).total;
  };
  return (total(1 + share) - total(1 - share)) / (200 * share);
}

}  // namespace

TEST_CASE("the order's total moves by each input as the sweep says") {
  int compared = 0, jumps = 0;
  for (const std::string file :
       {"bracket.yaml", "pipe-set.yaml", "wash-down-cabinet.yaml", "brewhouse-platform.yaml"}) {
    CAPTURE(file);
    const test::Quoted quoted = test::quoted(test::load_job(file));
    for (const Sensitivity& input :
         sensitivities(*quoted.loaded.book, *quoted.loaded.job, quoted.estimated, quoted.quote, SweptPrice::order)) {
      CAPTURE(input.words);
      const double wide = moved_per_percent(quoted, input.source, 2e-5);
      const double narrow = moved_per_percent(quoted, input.source, 1e-5);
      // A length that stands right where one more start is counted: the sweep passes counts as if they were not whole.
      if (std::fabs(narrow) > 1.5 * std::fabs(wide)) {
        ++jumps;
        continue;
      }
      ++compared;
      CHECK(std::fabs(narrow - input.per_percent.si) <= 1e-6 * std::fabs(narrow) + 1e-5);
    }
  }
  CHECK(compared > 300);
  CHECK(jumps < 12);
}

TEST_CASE("the price of a piece moves as the order's, but for what is paid once") {
  const test::Quoted quoted = test::quoted(test::load_job("bracket.yaml"));
  const auto swept = [&](SweptPrice price) {
    return sensitivities(*quoted.loaded.book, *quoted.loaded.job, quoted.estimated, quoted.quote, price);
  };
  const std::vector<Sensitivity> order = swept(SweptPrice::order), unit = swept(SweptPrice::unit);
  REQUIRE(!unit.empty());
  const double pieces = static_cast<double>(quoted.loaded.job->quantities.front());
  int compared = 0;
  for (const Sensitivity& of_unit : unit)
    for (const Sensitivity& of_order : order) {
      if (of_unit.source != of_order.source) continue;
      ++compared;
      CAPTURE(of_unit.words);
      CHECK(of_unit.per_percent.si * pieces <= of_order.per_percent.si + 1e-6 * std::fabs(of_order.per_percent.si));
    }
  CHECK(compared == static_cast<int>(unit.size()));
}
