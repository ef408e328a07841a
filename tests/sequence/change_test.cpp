#include <doctest/doctest.h>

#include "random_shop.hpp"
#include "sequence/sequence.hpp"

using namespace seambook;

namespace {

// Invented minutes for one bench that works in carbon steel, stainless and aluminium.
enum : std::uint32_t { carbon, stainless, aluminium };
enum : std::uint32_t { mag, tig };

SetupModel bench() {
  SetupModel model;
  model.attributes = {"cleanliness", "process", "gas"};
  model.values = {{"carbon", "stainless", "aluminium"}, {"135", "141"}, {"M21", "I1"}};
  model.tasks = {{"clean down for stainless", shop::minutes(35), 0, {carbon}, {stainless}, false},
                 {"swap the torch", shop::minutes(3), 1, {}, {}, true},
                 {"regrind the tungsten", shop::minutes(2), 1, {}, {tig}, true},
                 {"purge the line", shop::minutes(1), 1, {}, {}, false},
                 {"swap the gas", shop::minutes(4), 2, {}, {}, true},
                 {"purge the line", shop::minutes(2), 2, {}, {}, true}};
  return model;
}

Attributes setup(std::optional<std::uint32_t> clean, std::optional<std::uint32_t> process,
                 std::optional<std::uint32_t> gas) {
  return {{clean, process, gas}};
}

std::string words(const Change& change) {
  std::string text = std::to_string(static_cast<int>(change.duration.si / 60)) + " min:";
  for (const std::size_t task : change.tasks) text += " " + std::to_string(task);
  text += " |";
  for (const std::size_t attribute : change.attributes) text += " " + std::to_string(attribute);
  return text;
}

}  // namespace

TEST_CASE("changes call their tasks") {
  struct Row {
    const char* what;
    Attributes mounted, needs;
    const char* expected;  // minutes: tasks | attributes
  };
  const Row rows[] = {
      {"nothing differs", setup(carbon, mag, 0), setup(carbon, mag, 0), "0 min: |"},
      {"the clean-down has a direction: 35", setup(carbon, mag, 0), setup(stainless, mag, 0), "35 min: 0 | 0"},
      {"the way back is free", setup(stainless, mag, 0), setup(carbon, mag, 0), "0 min: | 0"},
      {"3 + 2 + 1", setup(carbon, mag, 0), setup(carbon, tig, 0), "6 min: 1 2 3 | 1"},
      {"3 + 1 without the tungsten", setup(carbon, tig, 0), setup(carbon, mag, 0), "4 min: 1 3 | 1"},
      {"two callers of one purge pay the longer once: 3 + 2 + 4 + 2", setup(carbon, mag, 0), setup(carbon, tig, 1),
       "11 min: 1 2 4 5 | 1 2"},
      {"what is not stated calls nothing", setup(carbon, mag, 0), setup({}, {}, {}), "0 min: |"},
      {"cold start: no clean-down, no purge by the process, 3 + 2 + 4 + 2",
       {},
       setup(stainless, tig, 1),
       "11 min: 1 2 4 5 | 0 1 2"},
      {"cold start of one attribute", setup(carbon, {}, 0), setup({}, mag, {}), "3 min: 1 | 1"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.what);
    CHECK(words(change(bench(), row.mounted, row.needs)) == row.expected);
  }
}

TEST_CASE("what an operation leaves unset stays mounted and is paid for when it changes at last") {
  const Attributes after = mounted_after(setup(carbon, mag, 0), setup({}, tig, {}));
  CHECK(after == setup(carbon, tig, 0));
  CHECK(words(change(bench(), after, setup(stainless, tig, 0))) == "35 min: 0 | 0");
  CHECK(words(change(bench(), after, setup(carbon, tig, 0))) == "0 min: |");
  CHECK(mounted_after({}, setup(carbon, {}, {})) == setup(carbon, {}, {}));
}

TEST_CASE("the total of an order carries unset attributes through") {
  SequenceProblem problem{bench(), setup(carbon, mag, 0), {}, {}};
  problem.operations = {
      {"first", setup(carbon, mag, 0)}, {"open", setup({}, mag, {})}, {"last", setup(stainless, mag, 0)}};
  const std::size_t order[] = {0, 1, 2};
  CHECK(time_order(problem, order).change_total.si == 35 * 60);
}

TEST_CASE("random changes agree with the rule written a second time") {
  std::mt19937 random(11);
  int paid = 0;
  for (int trial = 0; trial < 2000; ++trial) {
    CAPTURE(trial);
    const shop::Kind kind{.attributes = 1 + random() % 4, .values = 3, .tasks = 1 + random() % 10};
    const SetupModel model = shop::random_model(random, kind);
    const Attributes mounted = shop::some_attributes(random, kind), needs = shop::some_attributes(random, kind);
    const Change found = change(model, mounted, needs);
    CHECK(found.duration.si == shop::change_seconds(model, mounted, needs));
    CHECK(std::is_sorted(found.tasks.begin(), found.tasks.end()));
    CHECK(change(model, mounted_after(mounted, needs), needs).duration.si == 0);
    paid += found.duration.si > 0 ? 1 : 0;
  }
  CHECK(paid > 800);
}
