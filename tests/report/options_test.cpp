// Options: priced apart by hand, never in the job's own price, on pages of their own.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "quoted.hpp"
#include "report/option_pages.hpp"
#include "report/quote_book.hpp"

using namespace seambook;
using test::Quoted;
using test::quoted;

namespace {

/// The bracket with a second weldment, a foot, and these options.
std::string bracket_and_foot(const std::string& foot, const std::string& options) {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  text.replace(text.find("drawing:"), 0, options);
  return text + "  - name: foot\n    count: 2\n" + foot +
         "    parts: 1\n    mass: 2 kg\n    base_metal: S235\n    process: 135\n    bought: 3 EUR each\n"
         "    joints: [{id: F1, weld: fillet, leg: 4 mm, thickness: 6 mm, length: 90 mm}]\n";
}

const PriceFigures<double>& first(const Quote& quote) { return quote.prices.front().figures; }

}  // namespace

TEST_CASE("options do not touch the job's own price") {
  const Quoted plain = quoted(test::load_job("bracket.yaml"));
  const Quoted with = quoted(test::load_text(
      bracket_and_foot("    option: footed\n", "options: [{name: footed}, {name: painted, bought: 10 EUR each}]\n")));
  REQUIRE(with.quote.options.size() == 2);
  for (std::size_t q = 0; q < plain.quote.prices.size(); ++q) {
    CHECK(with.quote.prices[q].figures.total.si == plain.quote.prices[q].figures.total.si);
    CHECK(with.quote.prices[q].figures.cost.si == plain.quote.prices[q].figures.cost.si);
  }
  // 10 of paint with 6 % of contingency and 18 % of margin: 10.6 / 0.82 = 12.927.
  const PriceFigures<double>& painted = first(with.quote.options[1].quote);
  CHECK(painted.unit_price.si == 12.93);
  CHECK(painted.total.si == 12.93);  // 120 of minimum charge are the order's
  // The feet cost something, and their set-up of the lot is shared by more in a larger one.
  const auto& footed = with.quote.options[0].quote.prices;
  CHECK(footed[0].figures.unit_price.si > 6);
  CHECK(footed[2].figures.unit_price.si < footed[0].figures.unit_price.si);
}

TEST_CASE("what an option leaves out is credited at its cost of a piece") {
  const Quoted both = quoted(test::load_text(bracket_and_foot("", "options: [{name: bare, leaves_out: foot}]\n")));
  const Quoted alone = quoted(test::load_job("bracket.yaml"));
  const PriceFigures<double>& bare = first(both.quote.options[0].quote);
  const double feet = both.quote.cost.each.si - alone.quote.cost.each.si;
  CHECK(feet > 6);
  CHECK(bare.unit_cost.si == doctest::Approx(-feet));
  CHECK(bare.exact_price.si == doctest::Approx(-feet * 1.06 / 0.82));
  CHECK(bare.unit_price.si < 0);
}

TEST_CASE("an option's pages stand beside the job's, with references of their own") {
  const Quoted q = quoted(
      test::load_text(bracket_and_foot("    option: footed\n", "options: [{name: footed, leaves_out: bracket}]\n")));
  const Workbook book =
      quote_workbook(*q.loaded.book, *q.loaded.job, q.estimated, q.work, q.quote, q.loaded.diagnostics);
  std::vector<std::string> names;
  for (const Sheet& sheet : book.sheets) names.push_back(sheet.name);
  for (const char* wanted : {"Cost", "Joints", "Option 1 Cost", "Option 1 Joints", "Option 1 Weldments"})
    CHECK_MESSAGE(std::count(names.begin(), names.end(), wanted) == 1, wanted);
  const std::string text = dump(book);
  // Its labour adds up its own pages and takes off the job's bracket; its quantities are the job's.
  CHECK(text.find("SUM('Option 1 Materials'!") != std::string::npos);
  CHECK(text.find("-(SUM(Materials!") != std::string::npos);
  CHECK(text.find("'Option 1 Cost'!B") != std::string::npos);
}

TEST_CASE("references are renamed by whole sheet names and not inside of texts") {
  const std::map<std::string, std::string> names = {{"Cost", "Option 1 Cost"}, {"Job work", "Option 1 Job work"}};
  CHECK(with_sheets_renamed("Cost!B3*2", names) == "'Option 1 Cost'!B3*2");
  CHECK(with_sheets_renamed("MyCost!B3+Rates!$C$4", names) == "MyCost!B3+Rates!$C$4");
  CHECK(with_sheets_renamed("SUMIF('Job work'!B5:B9,\"Cost!once\",'Job work'!G5:G9)", names) ==
        "SUMIF('Option 1 Job work'!B5:B9,\"Cost!once\",'Option 1 Job work'!G5:G9)");
}
