// What a quote prints as JSON is read back whole; anything else is refused with its reason.
#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"
#include "quote/mixtures.hpp"
#include "report/estimate_json.hpp"
#include "report/json_document.hpp"
#include "report/past_quote_json.hpp"

using namespace seambook;

namespace {

struct Printed {
  WrittenInputs inputs;
  std::string text;
  double total = 0;
};

Printed printed() {
  Printed out;
  out.inputs.job = {"jobs/bracket.yaml", test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml")};
  out.inputs.takeoffs = {{"takeoff.csv", "weld,leg\nfillet,\"5 mm\"\n"}};
  for (const test::RateFile& file : test::rate_texts()) out.inputs.rates.push_back({file.name, file.text});
  Diagnostics diagnostics;
  const ReadInputs read = read_inputs(out.inputs, diagnostics);
  std::string reason;
  const auto quote = resolve_quote(read.job, read.rates, {2026, 5, 18}, diagnostics, reason);
  REQUIRE(quote.has_value());
  out.total = quote->quote.prices.front().figures.total.si;
  const ReportedJob about{"jobs/bracket.yaml", "rates",   hash_of_rates(out.inputs.rates), hash_of_inputs(out.inputs),
                          "out/bracket.xlsx",  out.inputs};
  const std::string job =
      estimate_json(quote->book, quote->job, estimate(quote->book, quote->job), quote->quote, about);
  out.text = json_document({{"jobs", json_list({job})}}, diagnostics, {});
  return out;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  return text.replace(at, from.size(), to);
}

/// The complaint about a document; empty when it was read.
std::string complaint(const std::string& text, const std::string& job = "bracket") {
  Diagnostics diagnostics;
  const std::uint32_t file = diagnostics.add_file("past.json", text);
  if (read_past_quote(file, job, diagnostics)) return {};
  REQUIRE(diagnostics.list.size() == 1);
  CHECK(diagnostics.list[0].place == Place{file, 0, 0});
  CHECK(!diagnostics.list[0].hint.empty());
  return diagnostics.list[0].message;
}

}  // namespace

TEST_CASE("a printed quote is read back whole") {
  const Printed made = printed();
  Diagnostics diagnostics;
  const auto past = read_past_quote(diagnostics.add_file("past.json", made.text), "bracket", diagnostics);
  REQUIRE(past.has_value());
  CHECK(past->date == Date{2026, 5, 18});
  CHECK(past->currency == "EUR");
  CHECK(past->quantity == 1);
  CHECK(past->total == made.total);
  CHECK(!past->version.empty());
  CHECK(past->inputs.job.text == made.inputs.job.text);
  REQUIRE(past->inputs.takeoffs.size() == 1);
  CHECK(past->inputs.takeoffs[0].text == made.inputs.takeoffs[0].text);
  REQUIRE(past->inputs.rates.size() == made.inputs.rates.size());
  for (std::size_t i = 0; i < past->inputs.rates.size(); ++i) {
    CHECK(past->inputs.rates[i].name == made.inputs.rates[i].name);
    CHECK(past->inputs.rates[i].text == made.inputs.rates[i].text);
  }
}

TEST_CASE("what is no quote of this program is refused") {
  const std::string good = printed().text;
  CHECK(complaint(good).empty());
  CHECK(complaint("") == "is no JSON");
  CHECK(complaint("format: 1\njob: bracket\n") == "is no JSON");
  CHECK(complaint(std::string(30, '[')) == "is no JSON");
  CHECK(complaint(std::string(100'000, '[')) == "holds too many values, or too many lists inside each other");
  CHECK(complaint(std::string(30, '[') + std::string(30, ']')) == "is no quote of this program in format 1");
  CHECK(complaint("[1, 2]") == "is no quote of this program in format 1");
  CHECK(complaint(replaced(good, "\"seambook\"", "\"other\"")) == "is no quote of this program in format 1");
  CHECK(complaint(replaced(good, "\"format\": 1", "\"format\": 2")) == "is no quote of this program in format 1");
  CHECK(complaint(replaced(good, "\"jobs\": [", "\"jobs\": 7, \"x\": [")) == "is no quote of this program in format 1");
  CHECK(complaint(good, "gantry") == "holds no job gantry");
}

TEST_CASE("a quote without its files, its price or its hash is refused") {
  const std::string good = printed().text;
  const std::string no_files = "does not hold the files that job bracket was quoted from";
  CHECK(complaint(replaced(good, "\"inputs\": {", "\"outputs\": {")) == no_files);
  CHECK(complaint(replaced(good, "\"takeoffs\": [", "\"takeoffs\": 3, \"x\": [")) == no_files);
  CHECK(complaint(replaced(good, "\"takeoffs\": [", "\"takeoffs\": [{\"name\": 1}, ")) == no_files);
  const std::string no_price = "does not hold date, currency and price of job bracket";
  CHECK(complaint(replaced(good, "\"price\": [", "\"prize\": [")) == no_price);
  CHECK(complaint(replaced(good, "\"date\": \"2026-05-18\"", "\"date\": \"2026-02-30\"")) == no_price);
  CHECK(complaint(replaced(good, "\"quantity\": 1,", "\"quantity\": -1,")) == no_price);
  const std::string altered = "was altered: the files of job bracket do not match their hashes";
  CHECK(complaint(replaced(good, "parts: 7", "parts: 8")) == altered);
  CHECK(complaint(replaced(good, "rate: 54 EUR/h", "rate: 55 EUR/h")) == altered);
}
