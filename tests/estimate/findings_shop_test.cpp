// Findings that hang on the rate book as a whole: the operating factor, stations and their clean-down.
#include <doctest/doctest.h>

#include "shop_files.hpp"

using namespace seambook;

TEST_CASE("an operating factor outside the usual is queried, and one that nobody reaches refused") {
  const auto factor_found = [](const std::string& factor, Level level, const std::string& words) {
    std::vector<test::RateFile> rates = test::plain_rate_texts();
    for (test::RateFile& file : rates) {
      if (file.name != "shop.yaml") continue;
      const auto replace = [&](const std::string& from, const std::string& to) {
        std::size_t at = file.text.find(from);
        REQUIRE_MESSAGE(at != file.text.npos, from);
        for (; at != file.text.npos; at = file.text.find(from, at + to.size())) file.text.replace(at, from.size(), to);
      };
      replace(
          "currency: EUR\n",
          "currency: EUR\nlabour_method: operating_factor\nfactor_covers: [arc]\nfactor_definition: arc over hours\n");
      replace("  personal: 12 %\n", "");
      replace("  personal_covers: rest,", "  personal_covers: nothing,");
      replace("    gas_loss: 110 %\n", "    gas_loss: 110 %\n    operating_factor: " + factor + "\n");
    }
    const test::LoadedJob loaded = test::load_text(
        "format: 1\njob: factor\nweldments:\n  - {name: piece, parts: 2, base_metal: S235, bought: 0 EUR each, joints: "
        "[{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 300 mm, process: 135}]}\n",
        rates);
    REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
    std::size_t count = 0;
    for (const Diagnostic& d : findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job)))
      count += d.level == level && d.message.find(words) != std::string::npos;
    return count;
  };
  CHECK(factor_found("50 %", Level::warning, "an operating factor of 50 % by process 135; usual is 5 % to 45 %") == 1);
  CHECK(factor_found("45 %", Level::warning, "an operating factor") == 0);
  CHECK(factor_found("65 %", Level::error,
                     "an operating factor of 65 % by process 135; nobody reaches more than 60 %") == 1);
  CHECK(factor_found("60 %", Level::error, "an operating factor") == 0);
}

TEST_CASE("a station for carbon steel and stainless without clean-down is queried") {
  const auto stations_found = [](bool cleaned, const std::string& metal) {
    std::vector<test::RateFile> rates = test::rate_texts();
    for (test::RateFile& file : rates) {
      const std::string task = "clean down for stainless, when: cleanliness, from: [carbon], to: [stainless]";
      const std::size_t at = file.text.find(task);
      if (at != file.text.npos && !cleaned)
        file.text.replace(at, task.size(), "clean down, when: cleanliness, from: [stainless], to: [carbon]");
    }
    const test::LoadedJob loaded = test::load_text(
        "format: 1\njob: station\nweldments:\n  - {name: piece, parts: 2, base_metal: " + metal +
            ", bought: 0 EUR each, finish: F0, joints: [{weld: fillet, leg: 3 mm, thickness: 3 mm, length: 100 mm}]}\n",
        rates);
    REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
    std::size_t count = 0;
    for (const Diagnostic& d : findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job)))
      count += d.message.find("takes carbon steel and stainless, and no clean-down") != std::string::npos;
    return count;
  };
  CHECK(stations_found(false, "\"1.4301\"") > 0);
  CHECK(stations_found(true, "\"1.4301\"") == 0);
  CHECK(stations_found(false, "S235") == 0);
}
