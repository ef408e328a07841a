#include "report/explain.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "../trace/evaluate.hpp"
#include "quote/lift.hpp"
#include "quote/quote.hpp"
#include "report/explained_text.hpp"
#include "report/terminal.hpp"

using namespace seambook;
namespace fs = std::filesystem;

namespace {

std::string text_of_file(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

struct Shop {
  Diagnostics diagnostics;
  RateBook book;
  Job job;
  Estimate estimated;
  std::vector<StationWork> work;
  Quote quote;

  explicit Shop(const std::string& job_name) {
    const fs::path root = SEAMBOOK_ROOT;
    std::vector<fs::path> paths;
    for (const auto& entry : fs::directory_iterator(root / "rates"))
      if (entry.path().extension() == ".yaml") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<std::uint32_t> files;
    for (const fs::path& path : paths)
      files.push_back(diagnostics.add_file("rates/" + path.filename().string(), text_of_file(path)));
    book = resolve_rates(read_rates(files, diagnostics), diagnostics).value();
    const auto file = diagnostics.add_file("jobs/" + job_name, text_of_file(root / "jobs" / job_name));
    job = resolve_job(read_job(file, {}, diagnostics), book, diagnostics).value();
    estimated = estimate(book, job);
    work = sequence_jobs(book, std::span(&job, 1), diagnostics).value();
    quote = make_quote(book, job, estimated, work, {2026, 5, 4});
  }
  ExplainedJob explained() const { return {book, job, estimated, work, quote, diagnostics}; }
};

const WorkingWords plain{[](SourceId id) { return std::to_string(id); }, {}, "EUR"};

/// Evaluates the numbers of every step; gives how many there were.
std::size_t check_steps(const Working& working) {
  for (const WorkedStep& step : working.steps) {
    CAPTURE(step.name);
    CAPTURE(step.formula);
    CAPTURE(step.numbers);
    const double result = std::strtod(step.result.c_str(), nullptr);
    CHECK(evaluate::formula(step.numbers, {}) == doctest::Approx(result).epsilon(1e-7).scale(1e-3));
  }
  return working.steps.size();
}

const char* const example_jobs[] = {"bracket.yaml", "brewhouse-platform.yaml", "pipe-set.yaml",
                                    "wash-down-cabinet.yaml"};

}  // namespace

TEST_CASE("the arithmetic of the check itself") {
  CHECK(evaluate::formula("5*5/2*(1+0.1)", {}) == doctest::Approx(13.75));
  CHECK(evaluate::formula("2-3-4", {}) == -5);
  CHECK(evaluate::formula("2^3*2", {}) == 16);
  CHECK(evaluate::formula("IF(1<2,MIN(7,8),9)", {}) == 7);
  CHECK(evaluate::formula("ROUNDUP(6*0.999999999,0)+INT(2.9)+ROUND(1.005,2)", {}) == doctest::Approx(9.01));
  CHECK(evaluate::formula("TAN(RADIANS(90/2))", {}) == doctest::Approx(1));
  CHECK_THROWS_AS(evaluate::formula("1+leg", {}), std::runtime_error);
}

TEST_CASE("a leg of 5 mm with a tenth of convexity is worked to 13.75 mm2") {
  // By hand: 5 × 5 / 2 = 12.5; a tenth more is 13.75.
  const Shop shop("bracket.yaml");
  Tape tape;
  row_figures(lift_row<Traced>(gather_row(shop.book, shop.job, shop.job.joints.front()), &tape));
  const Working worked = working(tape, plain);
  const auto is_section = [](const WorkedStep& step) { return step.name == "section"; };
  const auto section = std::find_if(worked.steps.begin(), worked.steps.end(), is_section);
  REQUIRE(section != worked.steps.end());
  CHECK(section->formula == "leg*leg*(1+convexity)/2");
  CHECK(section->numbers == "5*5*(1+0.1)/2");
  CHECK(section->result == "13.75");
  CHECK(section->unit == "mm²");
  CHECK(section->source != "");
}

TEST_CASE("evaluating the numbers of every step gives its printed result") {
  for (const char* name : example_jobs) {
    CAPTURE(name);
    const Shop shop(name);
    std::size_t steps = 0;
    for (const Joint& joint : shop.job.joints) {
      CAPTURE(joint.id);
      Tape tape;
      row_figures(lift_row<Traced>(gather_row(shop.book, shop.job, joint), &tape));
      steps += check_steps(working(tape, plain));
    }
    CHECK(steps >= 30 * shop.job.joints.size());
    for (const SetupRow& row : shop.quote.setups) {
      Tape tape;
      setup_figures(lift_setup<Traced>(row.inputs, 0, &tape), 0);
      CHECK(check_steps(working(tape, plain)) == 3);
    }
    Tape tape;
    const auto inputs = lift_quote<Traced>(quote_inputs(shop.book, shop.job, shop.estimated, shop.quote.setups), &tape);
    const auto cost = cost_figures(inputs);
    price_figures(inputs, cost, number<Traced>(static_cast<double>(shop.job.quantities.front())), 0);
    CHECK(check_steps(working(tape, plain)) >= 10);
  }
}

TEST_CASE("names in a working are unique among its inputs and say the pass group where there are several") {
  const Shop shop("pipe-set.yaml");
  Tape tape;
  row_figures(lift_row<Traced>(gather_row(shop.book, shop.job, shop.job.joints.front()), &tape));
  const Working worked = working(tape, plain);
  std::vector<std::string> names;
  for (const WorkedInput& input : worked.inputs) names.push_back(input.name);
  CHECK(std::find(names.begin(), names.end(), "book_travel_1") != names.end());
  CHECK(std::find(names.begin(), names.end(), "book_travel_2") != names.end());
  CHECK(std::find(names.begin(), names.end(), "thickness") != names.end());
  std::sort(names.begin(), names.end());
  CHECK(std::adjacent_find(names.begin(), names.end()) == names.end());
}

TEST_CASE("every input says where it was written") {
  const Shop shop("bracket.yaml");
  const std::string text = explained_text(explain_joint(shop.explained(), 0), any_width);
  CHECK(text.find("leg z, jobs/bracket.yaml:") != std::string::npos);
  CHECK(text.find(" rates/shop.yaml:") != std::string::npos);
  CHECK(text.find("(assumption: ") != std::string::npos);
  CHECK(text.find(", \n") == std::string::npos);
}

TEST_CASE("a working keeps to the width it is given and loses nothing but blanks") {
  const Shop shop("pipe-set.yaml");
  const auto without_blanks = [](std::string text) {
    text.erase(std::remove_if(text.begin(), text.end(), [](char c) { return c == ' ' || c == '\n'; }), text.end());
    return text;
  };
  for (const ExplainedPart& part : explain_all(shop.explained())) {
    CAPTURE(part.heading);
    ExplainedPart steps_only = part;
    steps_only.working.inputs.clear();  // their table shares lines among columns
    const std::string whole = explained_text(steps_only, any_width), narrow = explained_text(steps_only, 60);
    CHECK(without_blanks(narrow) == without_blanks(whole));
    const std::string all = explained_text(part, 60);
    for (std::size_t begin = 0, end = 0; (end = all.find('\n', begin)) != all.npos; begin = end + 1) {
      const std::string line = all.substr(begin, end - begin);
      // A name alone may be longer than a line: of steps, and behind their operators.
      if (line.find_first_of("+-*/^,()=") != line.npos || line.starts_with("    "))
        CHECK_MESSAGE(display_width(line) <= 66, line);
    }
  }
}

TEST_CASE("the price is worked for each quantity and ends in what moves it most") {
  const Shop shop("bracket.yaml");
  std::vector<std::string> quantities;
  const auto parts = explain_all(shop.explained());
  for (const ExplainedPart& part : parts)
    if (part.kind == "price") quantities.push_back(part.name);
  CHECK(quantities == std::vector<std::string>{"1", "10", "50"});
  const auto cost = std::find_if(parts.begin(), parts.end(), [](const auto& part) { return part.kind == "cost"; });
  REQUIRE(cost != parts.end());
  CHECK(explained_text(*cost, any_width).find("cost_each_labour") != std::string::npos);
  const std::vector<PriceMover> movers = price_movers(shop.explained(), 3);
  REQUIRE(movers.size() == 3);
  CHECK(movers.front().per_percent >= movers.back().per_percent);
  CHECK(movers.front().origin.find(".yaml:") != std::string::npos);
}
