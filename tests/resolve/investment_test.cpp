// What an investment in the rate book is refused for, each at its place.
#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

const char* const sound = R"(format: 1
investment:
  name: laser cell
  process: 521
  capital: [{what: set, price: 24000 EUR}]
  life_years: 6
  interest: 6 %
  basis: assumption
  source: a test
)";

/// The example rate book with this investment in place of its own.
Diagnostics complaints_about(std::string old, std::string instead) {
  std::string text = sound;
  if (!old.empty()) text.replace(text.find(old), old.size(), instead);
  std::vector<test::RateFile> files = test::rate_texts();
  for (test::RateFile& file : files)
    if (file.name == "investment.yaml") file.text = text;
  Diagnostics diagnostics;
  std::vector<std::uint32_t> indices;
  for (const test::RateFile& file : files) indices.push_back(diagnostics.add_file(file.name, file.text));
  resolve_rates(read_rates(indices, diagnostics), diagnostics);
  return diagnostics;
}

struct Refusal {
  const char *old, *instead;
  std::uint32_t line;
  const char* message;
};
const Refusal refusals[] = {
    {"process: 521", "process: 999", 4, "unknown process '999'"},
    {"price: 24000 EUR", "price: 24000 USD", 5, "currency is EUR, not USD"},
    {"life_years: 6", "life_years: 0.5", 6, "life in years is 0.5"},
    {"interest: 6 %", "interest: 0 %", 7, "'interest' must be more than 0"},
    {"interest: 6 %", "interest: 0.01 %", 7, "interest is 0.01 %"},
    {"interest: 6 %", "interest: 6 %\n  labour_value: avoidable", 3, "laser cell has no avoidable rate"},
    {"interest: 6 %", "interest: 6 %\n  labour_value: mine", 8, "unknown word 'mine'"},
    {"interest: 6 %", "interest: 6 %\n  residual: 100 %", 8, "residual is 100 %"},
    {"interest: 6 %", "interest: 6 %\n  scenarios: [{name: a}, {name: a}]", 8, "scenario 'a' is given twice"},
    {"capital: [{what: set, price: 24000 EUR}]", "capital: []", 5, "'capital' holds nothing"},
};

}  // namespace

TEST_CASE("an investment is refused for what it lacks and for what cannot be") {
  CHECK(complaints_about({}, {}).list.empty());
  for (const Refusal& row : refusals) {
    CAPTURE(row.instead);
    CAPTURE(render(complaints_about(row.old, row.instead)));
    const Diagnostics diagnostics = complaints_about(row.old, row.instead);
    REQUIRE_FALSE(diagnostics.list.empty());
    const Diagnostic& d = diagnostics.list.front();
    CHECK(d.place.line == row.line);
    CHECK((d.message + "; " + d.hint).find(row.message) != std::string::npos);
  }
}
