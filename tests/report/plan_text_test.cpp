// The plan as text and as JSON: what cannot go ahead first, and the plan's own figures.
#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "hand_plan.hpp"
#include "report/plan_levels.hpp"
#include "report/shop_json.hpp"
#include "report/shop_text.hpp"
#include "report/span_text.hpp"
#include "report/task_words.hpp"

namespace seambook {
namespace {

using nlohmann::json;
using test::hand_plan;
using test::HandPlan;

json member(const std::vector<JsonMember>& members, const std::string& key) {
  for (const JsonMember& one : members)
    if (one.key == key) return json::parse(one.value);
  FAIL(key);
  return {};
}

TEST_CASE("spans are written as a shop reads them") {
  CHECK(span_text(std::chrono::minutes(45)) == "45 min");
  CHECK(span_text(Seconds(29)) == "0 min");
  CHECK(span_text(std::chrono::minutes(200)) == "3 h 20 min");
  CHECK(span_text(-std::chrono::hours(2)) == "2 h");
  CHECK(span_text(std::chrono::hours(52)) == "2 d 4 h");
}

TEST_CASE("the text tells first what must not be started and what is late") {
  const HandPlan hand = hand_plan();
  const std::string text = plan_text(hand.shop());
  const std::size_t gate = text.find("not for the floor"), late = text.find("late order"), station = text.find("ST-1");
  REQUIRE(gate != std::string::npos);
  REQUIRE(late != std::string::npos);
  CHECK(gate < late);
  CHECK(late < station);
  CHECK(text.find("together") != std::string::npos);
  CHECK(text.ends_with("\n"));
}

TEST_CASE("the JSON holds every planned task once, with the plan's minutes and times") {
  const HandPlan hand = hand_plan();
  const std::vector<JsonMember> members = plan_members(hand.shop());
  std::size_t steps = 0;
  double labour = 0, change = 0;
  for (const json& station : member(members, "stations")) {
    std::string last;
    for (const json& step : station["steps"]) {
      CHECK(step["set_up"].get<std::string>() >= last);
      last = step["finish"];
      labour += step["labour_min"].get<double>();
      change += step["change_min"].get<double>();
      ++steps;
    }
  }
  double planned = 0;
  for (const TaskRef& ref : hand.work.refs) planned += labour_of(ref).si / 60;
  CHECK(steps == hand.plan.tasks.size());
  CHECK(labour == doctest::Approx(planned));
  CHECK(change == doctest::Approx(static_cast<double>(hand.plan.levels.change) / 60));
  const json blocked = member(members, "blocked");
  REQUIRE(blocked.size() == 2);
  CHECK(blocked[0]["what"] == test::gated_joint);
  CHECK(blocked[0]["kind"] == "not_for_the_floor");
  CHECK(member(members, "late")[0]["late_min"].get<double>() * 60 == hand.plan.late.front().late.count());
  CHECK(member(members, "plans").size() == 1 + hand.plan.others.size());
}

TEST_CASE("levels that are times are shown in minutes") {
  const HandPlan hand = hand_plan();
  const std::vector<ShownLevel> levels = shown_levels(hand.plan);
  REQUIRE(levels.size() == hand.plan.judged.size());
  CHECK(levels[0].value == 1);
  CHECK(levels[2].name == "set-up minutes");
  CHECK(levels[2].value == static_cast<double>(hand.plan.levels.change) / 60);
  CHECK(levels[2].bound == 10);
}

TEST_CASE("who sets up is paid by his own grade") {
  HandPlan hand = hand_plan();
  const double rate = set_up_rate(hand.shop()).si;
  CHECK(rate > 0);
  hand.book.labour[hand.book.welders[hand.work.welders[0]].grade].rate.si.value *= 2;
  CHECK(set_up_rate(hand.shop()).si > rate);
}

}  // namespace
}  // namespace seambook
