// A quote against an earlier one: each cause by itself lands where it belongs, and all of them add up.
#include "quote/changes.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "../estimate/shop_files.hpp"
#include "quote/mixtures.hpp"

using namespace seambook;

namespace {

constexpr Date day{2026, 5, 18};

WrittenInputs bracket_inputs() {
  WrittenInputs inputs;
  inputs.job = {"jobs/bracket.yaml", test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml")};
  for (const test::RateFile& file : test::rate_texts()) inputs.rates.push_back({file.name, file.text});
  return inputs;
}

void replace_in(std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  text.replace(at, from.size(), to);
}

/// In the job, or in the rate book's file of that name.
WrittenInputs with(WrittenInputs inputs, const std::string& file, const std::string& from, const std::string& to) {
  if (file == "job") {
    replace_in(inputs.job.text, from, to);
    return inputs;
  }
  for (NamedText& rates : inputs.rates)
    if (rates.name == file) replace_in(rates.text, from, to);
  return inputs;
}

ResolvedQuote made_from(const WrittenInputs& inputs) {
  Diagnostics diagnostics;
  const ReadInputs read = read_inputs(inputs, diagnostics);
  REQUIRE(read.sound);
  std::string reason;
  auto quote = resolve_quote(read.job, read.rates, day, diagnostics, reason);
  REQUIRE_MESSAGE(quote.has_value(), reason);
  return std::move(*quote);
}

double first_total(const ResolvedQuote& quote) { return quote.quote.prices.front().figures.total.si; }

PastQuote past_of(const WrittenInputs& inputs) {
  const ResolvedQuote made = made_from(inputs);
  return {"1", made.job.name, made.book.currency, day, made.quote.prices.front().quantity, first_total(made), inputs};
}

Changes changes_between(const PastQuote& then, const WrittenInputs& now) {
  const ResolvedQuote made = made_from(now);
  return find_changes(then, {now, made.book, made.job, made.quote}, "1");
}

std::int64_t cents(Money<> money) { return std::llround(money.si * 100); }

/// Cents by cause; fails when causes stand together or do not add up.
std::array<std::int64_t, cause_count> by_cause(const Changes& changes) {
  std::array<std::int64_t, cause_count> out{};
  std::int64_t sum = cents(changes.past_total);
  for (const CauseAmount& amount : changes.amounts) {
    CHECK(amount.causes.size() == 1);
    out[static_cast<std::size_t>(amount.causes.front())] = cents(amount.amount);
    sum += cents(amount.amount);
  }
  CHECK(sum == cents(changes.total));
  return out;
}

struct AloneRow {
  Cause cause;
  const char *file, *from, *to, *item;
};
const AloneRow alone_rows[] = {
    {Cause::rates, "shop.yaml", "rate: 54 EUR/h", "rate: 61.5 EUR/h", "labour welder"},
    {Cause::rates, "shop.yaml", "margin: 18 %", "margin: 21 %", "prices"},
    {Cause::procedure, "procedures-carbon.yaml", "wire_feed: 7.5 m/min", "wire_feed: 8.1 m/min", "procedure CG-F5"},
    {Cause::procedure, "job", "length: 240 mm, count", "length: 240 mm, position: PF, count", "bracket/1"},
    {Cause::scope, "job", "length: 240 mm", "length: 310 mm", "bracket/1"},
    {Cause::scope, "job", "parts: 7", "parts: 9", "bracket"},
    {Cause::scope, "job", "bought: 38 EUR each", "bought: 41.20 EUR each", "bracket"},
    {Cause::scope, "job", "outside_diameter: 42.4 mm}\n",
     "outside_diameter: 42.4 mm}\n      - {id: X, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 100 mm}\n",
     "bracket/X"},
    {Cause::quantity, "job", "quantities: [1, 10, 50]", "quantities: [4, 10, 50]", "the job"},
};

}  // namespace

TEST_CASE("one change lands in its cause and nowhere else") {
  const WrittenInputs then = bracket_inputs();
  const PastQuote past = past_of(then);
  for (const AloneRow& row : alone_rows) {
    CAPTURE(row.to);
    const Changes changes = changes_between(past, with(then, row.file, row.from, row.to));
    const auto amounts = by_cause(changes);
    for (std::size_t c = 0; c < cause_count; ++c) {
      CAPTURE(cause_words[c]);
      CHECK((amounts[c] != 0) == (c == static_cast<std::size_t>(row.cause)));
    }
    bool listed = false;
    for (const ChangedItem& item : changes.items) {
      CHECK(item.cause == row.cause);
      CHECK(item.before != item.after);
      listed = listed || item.of.find(row.item) != std::string::npos;
    }
    CHECK(listed);
    CHECK(changes.notes.empty());
  }
}

TEST_CASE("nothing changed gives no amount and no item") {
  const WrittenInputs then = bracket_inputs();
  const Changes changes = changes_between(past_of(then), then);
  for (const std::int64_t amount : by_cause(changes)) CHECK(amount == 0);
  CHECK(changes.items.empty());
}

TEST_CASE("all causes at once add up to the cent") {
  const WrittenInputs then = bracket_inputs();
  WrittenInputs now = then;
  for (const AloneRow& row : alone_rows)
    if (row.from != std::string("length: 240 mm")) now = with(std::move(now), row.file, row.from, row.to);
  const auto amounts = by_cause(changes_between(past_of(then), now));
  CHECK(amounts[static_cast<std::size_t>(Cause::version)] == 0);
  for (const Cause cause : {Cause::rates, Cause::procedure, Cause::scope, Cause::quantity})
    CHECK(amounts[static_cast<std::size_t>(cause)] != 0);
}

TEST_CASE("another total of the same files is the program's") {
  const WrittenInputs then = bracket_inputs();
  PastQuote past = past_of(then);
  past.total += 12.34;
  past.version = "0.0.1";
  const Changes changes = changes_between(past, then);
  const auto amounts = by_cause(changes);
  CHECK(amounts[static_cast<std::size_t>(Cause::version)] == -1234);
  REQUIRE(changes.items.size() == 1);
  CHECK(changes.items[0].before == "0.0.1");
  CHECK(changes.items[0].after == "1");
}

TEST_CASE("steps that do not resolve stand together, and the sum still holds") {
  const WrittenInputs plain = bracket_inputs();
  // A finish that the old job uses goes: the old job cannot be made with the new rates.
  WrittenInputs with_finish = with(plain, "shop.yaml", "finishes:\n",
                                   "finishes:\n  - {name: FX, time: 1 min/m, basis: assumption, source: a test}\n");
  replace_in(with_finish.job.text, "length: 240 mm", "length: 240 mm, finish: FX");
  const Changes changes = changes_between(past_of(with_finish), plain);
  std::int64_t sum = cents(changes.past_total);
  bool together = false;
  for (const CauseAmount& amount : changes.amounts) {
    sum += cents(amount.amount);
    together = together || amount.causes.size() > 1;
  }
  CHECK(sum == cents(changes.total));
  CHECK(together);
  REQUIRE(changes.notes.size() == 1);
  CHECK(changes.notes[0].find("rates, procedure and scope cannot be told apart: unknown finish 'FX'") == 0);
}
