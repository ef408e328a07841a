// What is said of a rate book: entries that no job reads, prices that are old or undated, figures in doubt.
#include "quote/rates_review.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "../estimate/shop_files.hpp"
#include "quote/quote.hpp"

using namespace seambook;
using Kind = ReviewFinding::Kind;

namespace {

constexpr const char* a_fillet =
    "format: 1\njob: t\nweldments: [{name: w, parts: 2, mass: 5 kg, base_metal: S235, base_metal_by: mass, process: "
    "135, joints: "
    "[{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 200 mm}]}]\n";

/// The fillet against the book in which each pair's first text stands as its second.
test::LoadedJob loaded_with(const std::vector<std::pair<std::string, std::string>>& changes = {}) {
  std::vector<test::RateFile> rates = test::rate_texts();
  for (const auto& [was, now] : changes) {
    std::size_t found = 0;
    for (test::RateFile& file : rates)
      for (std::size_t at = file.text.find(was); at != std::string::npos; at = file.text.find(was, at + now.size()))
        file.text.replace(at, was.size(), now), ++found;
    REQUIRE_MESSAGE(found == 1, was);
  }
  test::LoadedJob loaded = test::load_text(a_fillet, rates);
  REQUIRE(loaded.job.has_value());
  return loaded;
}

ReviewAsked asked_on(Date today, int months = 12) {
  ReviewAsked asked;
  asked.today = today, asked.older_than = months;
  return asked;
}

/// With what the fillet's quote reads.
ReviewAsked asked_with_use(const test::LoadedJob& loaded) {
  const Quote quote = make_quote(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job), {}, {2026, 5, 4});
  const std::vector<SourceId> read = used_sources(*loaded.book, *loaded.job, quote.setups);
  ReviewAsked asked = asked_on({2026, 5, 4});
  asked.used.emplace(read.begin(), read.end());
  return asked;
}

std::vector<std::string> messages_of(const std::vector<ReviewFinding>& findings, Kind kind, const std::string& list,
                                     const std::string& entry) {
  std::vector<std::string> messages;
  for (const ReviewFinding& f : findings)
    if (f.kind == kind && f.list == list && f.entry == entry) messages.push_back(f.message);
  return messages;
}

using Messages = std::vector<std::string>;

}  // namespace

TEST_CASE("what a job reads is used, what it does not is told of, and thresholds are not looked at") {
  const test::LoadedJob loaded = loaded_with();
  const auto found = review_rates(*loaded.book, asked_with_use(loaded));
  const Messages unused = {"no job named here reads it"};
  // The fillet takes CG-F5 and its wire of 1.2 mm; nothing of it is stainless, covered or alloyed.
  CHECK(messages_of(found, Kind::unused, "procedure", "CG-F5").empty());
  CHECK(messages_of(found, Kind::unused, "filler", "G3Si1-1.2").empty());
  CHECK(messages_of(found, Kind::unused, "process", "135").empty());
  CHECK(messages_of(found, Kind::unused, "procedure", "CG-F8") == unused);
  CHECK(messages_of(found, Kind::unused, "filler", "308LSi-1.0") == unused);
  CHECK(messages_of(found, Kind::unused, "base metal", "1.4404") == unused);
  CHECK(std::none_of(found.begin(), found.end(), [](const ReviewFinding& f) { return f.list == "checks"; }));
  // A name is enough: the metal's numbers stand unread where the customer supplies it.
  ReviewAsked named = asked_with_use(loaded);
  named.named = {"base metal 1.4404"};
  CHECK(messages_of(review_rates(*loaded.book, named), Kind::unused, "base metal", "1.4404").empty());
}

TEST_CASE("nothing is said of use without jobs") {
  const test::LoadedJob loaded = loaded_with();
  for (const ReviewFinding& finding : review_rates(*loaded.book, asked_on({2026, 5, 4})))
    CHECK(finding.kind != Kind::unused);
}

TEST_CASE("a price is old from the day on which so many months are full, by the latest date of its words") {
  const test::LoadedJob loaded =
      loaded_with({{"price: 13.80 EUR/kg, pack: 15 kg, basis: assumption, source: invented price}",
                    "price: 13.80 EUR/kg, pack: 15 kg, basis: published, source: offer of 2025-05-18 after one of "
                    "2024-01-31}"}});
  const auto of_wire = [&](const ReviewAsked& asked, Kind kind) {
    return messages_of(review_rates(*loaded.book, asked), kind, "filler", "308LSi-1.0");
  };
  const Messages old = {"price is of 2025-05-18, 12 months ago"};
  CHECK(of_wire(asked_on({2026, 5, 18}), Kind::old) == old);
  CHECK(of_wire(asked_on({2026, 5, 17}), Kind::old).empty());  // eleven months are full
  CHECK(of_wire(asked_on({2026, 5, 17}, 11), Kind::old) == Messages{"price is of 2025-05-18, 11 months ago"});
  CHECK(of_wire(asked_on({2026, 5, 18}), Kind::doubtful).empty());  // published
}

TEST_CASE("prices without a date are counted by list, and a date is no longer run of digits") {
  const auto undated_fillers = [](const test::LoadedJob& loaded) {
    const Messages found = messages_of(review_rates(*loaded.book, asked_on({2026, 5, 4})), Kind::undated, "filler", "");
    REQUIRE(found.size() == 1);
    return std::stoi(found.front());
  };
  const std::string was = "price: 13.80 EUR/kg, pack: 15 kg, basis: assumption, source: invented price}",
                    now = "price: 13.80 EUR/kg, pack: 15 kg, basis: assumption, source: ";
  const int all = undated_fillers(loaded_with());
  CHECK(all == static_cast<int>(loaded_with().book->fillers.size()));  // the example book dates none
  CHECK(undated_fillers(loaded_with({{was, now + "offer of 2026-04-30}"}})) == all - 1);
  CHECK(undated_fillers(loaded_with({{was, now + "order 12026-04-30}"}})) == all);
  CHECK(undated_fillers(loaded_with({{was, now + "offer of 2026-02-30}"}})) == all);  // no day
}

TEST_CASE("a price per mass beyond the usual is doubtful, one within is not") {
  // The shop's checks hold 0.5 to 80 EUR/kg for usual.
  const auto of_metal = [](const std::string& price) {
    const test::LoadedJob loaded = loaded_with(
        {{"cleanliness: carbon, density: 7.85 g/cm3, price: 1.30 EUR/kg, yield: 85 %, basis: assumption",
          "cleanliness: carbon, density: 7.85 g/cm3, price: " + price + ", yield: 85 %, basis: published"}});
    return messages_of(review_rates(*loaded.book, asked_on({2026, 5, 4})), Kind::doubtful, "base metal", "S355");
  };
  CHECK(of_metal("1.30 EUR/kg").empty());
  CHECK(of_metal("80 EUR/kg").empty());
  CHECK(of_metal("130 EUR/kg") == Messages{"price is 130 EUR/kg; usual is 0.5 to 80"});
  CHECK(of_metal("0.13 EUR/kg") == Messages{"price is 0.13 EUR/kg; usual is 0.5 to 80"});
}

TEST_CASE("assumptions are doubtful, of used entries alone where use is known; decisions never are") {
  const test::LoadedJob loaded = loaded_with({{"{risk: repeat, contingency: 3 %, basis: common practice",
                                               "{risk: repeat, contingency: 3 %, basis: assumption"}});
  const auto all = review_rates(*loaded.book, asked_on({2026, 5, 4}));
  const auto used = review_rates(*loaded.book, asked_with_use(loaded));
  // A wire's diameter, its first number, is no assumption; its price is.
  const Messages invented = {"rests on an assumption: invented price"};
  CHECK(messages_of(all, Kind::doubtful, "filler", "308LSi-1.0") == invented);
  CHECK(messages_of(used, Kind::doubtful, "filler", "308LSi-1.0").empty());
  CHECK(messages_of(used, Kind::doubtful, "filler", "G3Si1-1.2").size() == 1);
  // The price of power is assumed; margin and contingencies are the shop's to decide.
  CHECK(messages_of(all, Kind::doubtful, "prices", "").size() == 1);
  CHECK(messages_of(used, Kind::unused, "risk class", "repeat").size() == 1);
  CHECK(messages_of(all, Kind::doubtful, "risk class", "repeat").empty());
}

TEST_CASE("findings stand by kind, then as the book has them, each at its line") {
  const test::LoadedJob loaded = loaded_with();
  const auto found = review_rates(*loaded.book, asked_with_use(loaded));
  REQUIRE(!found.empty());
  CHECK(std::is_sorted(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.kind < b.kind; }));
  for (const ReviewFinding& finding : found) CHECK(finding.place.line > 0);
}
