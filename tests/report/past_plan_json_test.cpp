#include "report/past_plan_json.hpp"

#include <doctest/doctest.h>

#include "schedule/instants.hpp"

using namespace seambook;

namespace {

struct Read {
  Diagnostics diagnostics;
  std::optional<PastPlan> plan;
};

Read read(const std::string& text) {
  Read out;
  out.plan = read_past_plan(out.diagnostics.add_file("plan.json", text), out.diagnostics);
  return out;
}

const std::string times = R"("start": "2026-05-11T06:30:00", "finish": "2026-05-11T07:00:30")";

}  // namespace

TEST_CASE("a plan is read with what began before it, what is away and what cannot be done") {
  const Read all =
      read(R"({"stations": [{"station": "S1", "steps": [{"operation": "a", "welder": "A", "with": ["B"],
    "set_up": "2026-05-11T06:00", )" +
           times + R"(}]}], "away": [{"operation": "b", )" + times +
           R"(}], "done": [{"operation": "c", "station": "S2", "welder": null, )" + times +
           R"(}], "under_way": [{"operation": "d", "station": null, )" + times + R"(}], "undone": ["e"]})");
  REQUIRE_MESSAGE(all.plan, render(all.diagnostics));
  REQUIRE(all.plan->steps.size() == 2);
  const PastStep& step = all.plan->steps[0];
  CHECK(step.operation == "a");
  CHECK(step.station == "S1");
  CHECK(step.people == std::vector<std::string>{"A", "B"});
  REQUIRE(step.set_up);
  CHECK(iso_word(*step.set_up) == "2026-05-11T06:00:00");
  CHECK(iso_word(step.finish) == "2026-05-11T07:00:30");
  CHECK(all.plan->steps[1].station == "");
  CHECK_FALSE(all.plan->steps[1].set_up);
  REQUIRE(all.plan->before.size() == 2);
  CHECK(all.plan->before[0].station == "S2");
  CHECK(all.plan->before[0].people.empty());
  CHECK(all.plan->before[1].operation == "d");
  CHECK(all.plan->undone == std::vector<std::string>{"e"});
}

TEST_CASE("what is no plan is refused, each fault for itself") {
  const struct {
    const char *text, *message;
  } rows[] = {{"", "this is no plan: it holds no list 'stations'"},
              {"[1, 2]", "this is no plan: it holds no list 'stations'"},
              {R"({"stations": {}})", "this is no plan: it holds no list 'stations'"},
              {R"({"stations": [7]})", "a station of the plan holds no list 'steps'"},
              {R"({"stations": [{"station": "S1", "steps": [{}]}]})",
               "a step of station 'S1' lacks its operation, start or finish (no operation)"},
              {R"({"stations": [{"station": "S1", "steps": [{"operation": "a", "start": "noon", "finish": 3}]}]})",
               "a step of station 'S1' lacks its operation, start or finish (a)"},
              {R"({"stations": [], "away": [{"operation": "a"}]})",
               "a step of station '' lacks its operation, start or finish (a)"}};
  for (const auto& row : rows) {
    CAPTURE(row.text);
    const Read bad = read(row.text);
    CHECK_FALSE(bad.plan);
    REQUIRE(bad.diagnostics.list.size() == 1);
    CHECK(bad.diagnostics.list[0].message == row.message);
    CHECK(bad.diagnostics.list[0].hint == "give the document that 'seambook plan --json' printed");
  }
}
