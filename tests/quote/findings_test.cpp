// What an owner should look at again in cost and price; each with a shop that fires and the example shop, which does
// not.
#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"
#include "quote/quote.hpp"

using namespace seambook;

namespace {

/// Findings of the bracket's price, dated 2026-05-18, with one piece of the rate book or the job replaced.
std::vector<Diagnostic> found_with(const std::string& from, const std::string& to) {
  std::vector<test::RateFile> files = test::rate_texts();
  std::string job = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  bool replaced = from.empty();
  const auto replace_in = [&](std::string& text) {
    const std::size_t at = text.find(from);
    if (replaced || at == text.npos) return;
    text.replace(at, from.size(), to);
    replaced = true;
  };
  for (test::RateFile& file : files) replace_in(file.text);
  replace_in(job);
  REQUIRE(replaced);
  test::LoadedJob loaded = test::load_text(job, files);
  REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
  const Estimate estimated = estimate(*loaded.book, *loaded.job);
  const auto work = sequence_jobs(*loaded.book, std::span(&*loaded.job, 1), loaded.diagnostics);
  REQUIRE(work.has_value());
  return price_findings(*loaded.book, *loaded.job,
                        make_quote(*loaded.book, *loaded.job, estimated, *work, {2026, 5, 18}));
}

struct PriceRow {
  const char *from, *to, *words;
};
const PriceRow price_rows[] = {
    {"rate: 54 EUR/h", "rate: 1 EUR/h", "% of the cost of welding; usual is 35 % to 97 %"},
    {"electricity: 0.19 EUR/kWh", "electricity: 19 EUR/kWh", "electricity is"},
    {"margin: 18 %", "margin: 55 %", "margin is 55 %; usual is 3 % to 45 %"},
    {"margin: 18 %", "markup: 2 %", "mark-up is 2 %; usual is 3 % to 45 %"},
    {"18 %\n  contingency: 6 %", "18 %\n  contingency: 25 %", "contingency is 25 %; usual is at most 20 %"},
    {"drawing: 4711 rev B", "due: 2026-05-17", "is due on 2026-05-17, before the quote's date 2026-05-18"},
};

}  // namespace

TEST_CASE("an implausible price is queried") {
  for (const PriceRow& row : price_rows) {
    CAPTURE(row.words);
    std::size_t count = 0;
    for (const Diagnostic& d : found_with(row.from, row.to)) count += d.message.find(row.words) != std::string::npos;
    CHECK(count == 1);
  }
}

TEST_CASE("a sound price is not") {
  CHECK(found_with("", "").empty());
  CHECK(found_with("drawing: 4711 rev B", "due: 2026-05-18").empty());
  CHECK(found_with("18 %\n  contingency: 6 %", "18 %\n  contingency: 20 %").empty());
}

TEST_CASE("a share of electricity at its limit is not queried, a hair above it is") {
  test::LoadedJob loaded = test::load_job("bracket.yaml");
  REQUIRE(loaded.job.has_value());
  REQUIRE(loaded.book->checks.power_share.has_value());
  loaded.book->checks.power_share->si = 0.25;
  Quote quote;
  quote.date = {2026, 5, 18};
  const auto queried = [&](double power) {
    quote.inputs.each[static_cast<std::size_t>(CostKind::power)].si = power;
    quote.inputs.each[static_cast<std::size_t>(CostKind::filler)].si = 4 - power;
    for (const Diagnostic& d : price_findings(*loaded.book, *loaded.job, quote))
      if (d.message.find("electricity is") != std::string::npos) return true;
    return false;
  };
  CHECK(!queried(1));  // a quarter of 4
  CHECK(queried(1.0000001));
  CHECK(!queried(0));
}
