// What a job asks of the price policy: contradictions and lacks are refused where they stand, options stay apart.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

/// The bracket with these lines of its own, against the example book or one without the policy.
test::LoadedJob bracket_with(const std::string& lines, const std::vector<test::RateFile>& rates) {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  text.replace(text.find("drawing:"), 0, lines);
  return test::load_text(text, rates);
}

struct Refusal {
  std::string lines;  // of the job
  bool policy;        // whether the book has one
  std::string message, hint;
};
const Refusal refusals[] = {
    {"risk: repaet\n", true, "unknown risk class 'repaet'", "did you mean 'repeat'?"},
    {"risk: repeat\n", false, "the rate book has no risk classes", "add 'contingencies' to it, or leave 'risk' out"},
    {"expedite: true\n", false, "the rate book does not say what haste costs", "add 'expedite' to its prices"},
    {"learning: true\n", false, "the rate book does not say how labour falls", "add 'learning' to it"},
    {"freight: by_mass\n", false, "the rate book does not say whether margin is taken on freight",
     "add 'freight' with 'with_margin: false' to it"},
    {"freight: 30 USD per lot\n", true, "prices are in EUR, not USD", "the rate book states the currency"},
    {"freight: 30 EUR once\n", true, "freight is paid for each piece or each lot", "write 'each' or 'per lot'"},
    {"freight: 30 EUR\n", true, "'freight': '30 EUR' does not say how it grows with the quantity",
     "end it with 'each', 'per lot' or 'once'"},
    {"options: [{name: painted}]\n", true, "nothing belongs to this option",
     "add 'bought', 'one_offs' or 'leaves_out', or mark weldments with its name"},
    {"options: [{name: painted, bought: 9 EUR each}, {name: painted, bought: 9 EUR each}]\n", true,
     "option 'painted' is given twice", "first at 1:1"},
    {"options: [{name: bare, leaves_out: brackt}]\n", true, "unknown weldment of the job itself 'brackt'",
     "did you mean 'bracket'?"},
    {"options: [{name: bare, leaves_out: [bracket, bracket]}]\n", true, "bracket is left out twice", ""},
    {"options: [{name: painted, bought: 9 USD each}]\n", true, "prices are in EUR, not USD",
     "the rate book states the currency"},
};

std::string with_free_issue(const std::string& lines) {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const std::string bought = "    bought: 38 EUR each\n";
  text.replace(text.find(bought), bought.size(), lines);
  return text;
}

std::string only_error(const test::LoadedJob& loaded) {
  std::string all;
  for (const Diagnostic& d : loaded.diagnostics.list)
    if (d.level == Level::error) all += d.message + "\n";
  return all;
}

}  // namespace

TEST_CASE("a job that asks for what the book has not, or for what contradicts, is refused at its line") {
  for (const Refusal& refusal : refusals) {
    CAPTURE(refusal.lines);
    const test::LoadedJob loaded =
        bracket_with(refusal.lines, refusal.policy ? test::rate_texts() : test::rates_without_policy());
    CHECK(!loaded.job.has_value());
    const auto said = [&](const Diagnostic& d) {
      return d.message.find(refusal.message) == 0 &&
             (refusal.hint == "first at 1:1" || d.hint == refusal.hint ||
              d.message.find(refusal.hint) != std::string::npos) &&
             d.place.line > 0;
    };
    CHECK(std::count_if(loaded.diagnostics.list.begin(), loaded.diagnostics.list.end(), said) == 1);
    CHECK(loaded.diagnostics.list.size() == 1);
  }
}

TEST_CASE("the value of free-issue material needs that material, and a share for its handling") {
  const auto with_policy = test::rate_texts(), without = test::rates_without_policy();
  const std::string valued = "    free_issue: true\n    free_issue_value: 90 EUR\n";
  CHECK(test::load_text(with_free_issue(valued), with_policy).job.has_value());
  CHECK(only_error(test::load_text(with_free_issue(valued), without)) ==
        "the rate book does not say what handling of free-issue material costs\n");
  CHECK(only_error(test::load_text(with_free_issue("    bought: 38 EUR each\n    free_issue_value: 90 EUR\n"),
                                   with_policy)) == "a value of free-issue material, but the customer supplies none\n");
  CHECK(only_error(test::load_text(with_free_issue("    free_issue: true\n    free_issue_value: 90 USD\n"),
                                   with_policy)) == "prices are in EUR, not USD\n");
}

TEST_CASE("a book with risk classes and no plain contingency makes each job name its class") {
  std::vector<test::RateFile> rates = test::rate_texts();
  for (test::RateFile& file : rates)
    if (const std::size_t at = file.text.find("  contingency: 6 %\n"); at != std::string::npos)
      file.text.erase(at, std::string("  contingency: 6 %\n").size());
  CHECK(only_error(bracket_with("", rates)) == "the job does not say its risk class\n");
  CHECK(bracket_with("risk: normal\n", rates).job.has_value());
}

TEST_CASE("freight by mass needs the mass of every weldment") {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const std::string mass = "    mass: 18 kg\n";
  REQUIRE(text.find(mass) != std::string::npos);
  text.erase(text.find(mass), mass.size());
  text.replace(text.find("drawing:"), 0, "freight: by_mass\n");
  CHECK(only_error(test::load_text(text)) == "freight by mass needs the mass\n");
}

TEST_CASE("what belongs to an option stands in its part and not in the job") {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  text.replace(text.find("drawing:"), 0,
               "options:\n  - {name: with foot, text: a foot welded on, bought: 4 EUR each,\n"
               "     one_offs: [{what: jig, time: 2 h}], leaves_out: bracket}\n");
  text +=
      "  - name: foot\n    option: with foot\n    parts: 1\n    base_metal: S235\n    process: 135\n"
      "    bought: 3 EUR each\n    joints: [{weld: fillet, leg: 4 mm, thickness: 6 mm, length: 90 mm}]\n";
  const test::LoadedJob loaded = test::load_text(text), plain = test::load_job("bracket.yaml");
  REQUIRE(loaded.job.has_value());
  CHECK(loaded.job->weldments.size() == plain.job->weldments.size());
  CHECK(loaded.job->joints.size() == plain.job->joints.size());
  REQUIRE(loaded.job->options.size() == 1);
  const JobOption& option = loaded.job->options[0];
  CHECK(option.part.of_option == "with foot");
  CHECK(option.part.weldments.size() == 1);
  CHECK(option.part.joints.size() == 1);
  CHECK(option.part.bought.size() == 1);
  CHECK(option.part.work.size() == 1);
  CHECK(option.leaves_out == std::vector<std::size_t>{0});
  CHECK(option.part.quantities == loaded.job->quantities);
  // Its numbers are found among the job's, wherever they were written.
  CHECK(option.part.sources.size() == loaded.job->sources.size());
  std::string wrong = text;
  wrong.replace(wrong.find("option: with foot"), 17, "option: with feet");
  CHECK(only_error(test::load_text(wrong)).find("unknown option 'with feet'") == 0);
}
