#include "report/past_plan_json.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "schedule/instants.hpp"
#include "text/json_bounds.hpp"

namespace seambook {
namespace {

using PlanRead = nlohmann::json;

constexpr const char* made_by_plan = "give the document that 'seambook plan --json' printed";

struct ReadingPlan {
  Diagnostics& diagnostics;
  Place place;
  bool sound = true;

  void refuse(const std::string& what) {
    sound = false;
    diagnostics.error(place, what, made_by_plan);
  }
};

const PlanRead* list_in(const PlanRead& of, const char* key) {
  if (!of.is_object()) return nullptr;
  const auto found = of.find(key);
  return found != of.end() && found->is_array() ? &*found : nullptr;
}

std::string words_in(const PlanRead& of, const char* key) {
  if (!of.is_object()) return {};
  const auto found = of.find(key);
  return found != of.end() && found->is_string() ? found->get<std::string>() : std::string();
}

void read_step(ReadingPlan& reading, const PlanRead& json, const std::string& station, std::vector<PastStep>& steps) {
  PastStep step;
  step.operation = words_in(json, "operation"), step.station = station;
  const std::string welder = words_in(json, "welder");
  if (!welder.empty()) step.people.push_back(welder);
  if (const PlanRead* with = list_in(json, "with"))
    for (const PlanRead& name : *with)
      if (name.is_string()) step.people.push_back(name.get<std::string>());
  const auto start = read_instant(words_in(json, "start")), finish = read_instant(words_in(json, "finish"));
  if (step.operation.empty() || !start || !finish) {
    reading.refuse(fmt::format("a step of station '{}' lacks its operation, start or finish ({})", station,
                               step.operation.empty() ? "no operation" : step.operation));
    return;
  }
  step.set_up = read_instant(words_in(json, "set_up"));
  step.start = *start, step.finish = *finish;
  steps.push_back(std::move(step));
}

}  // namespace

std::optional<PastPlan> read_past_plan(std::uint32_t file, Diagnostics& diagnostics) {
  ReadingPlan reading{diagnostics, Place{file, 1, 1}};
  const std::string& text = diagnostics.files[file].text;
  if (!json_within_bounds(text)) {
    reading.refuse("this is no plan: it holds too many values, or too many lists inside each other");
    return std::nullopt;
  }
  const PlanRead document = PlanRead::parse(text, nullptr, false);
  const PlanRead* stations = document.is_discarded() ? nullptr : list_in(document, "stations");
  if (stations == nullptr) {
    reading.refuse("this is no plan: it holds no list 'stations'");
    return std::nullopt;
  }
  PastPlan plan;
  for (const PlanRead& station : *stations) {
    const PlanRead* steps = list_in(station, "steps");
    if (steps == nullptr) reading.refuse("a station of the plan holds no list 'steps'");
    if (steps == nullptr) continue;
    for (const PlanRead& step : *steps) read_step(reading, step, words_in(station, "station"), plan.steps);
  }
  const std::pair<const char*, std::vector<PastStep>*> lists[] = {
      {"away", &plan.steps}, {"done", &plan.before}, {"under_way", &plan.before}};
  for (const auto& [key, into] : lists)
    if (const PlanRead* steps = list_in(document, key))
      for (const PlanRead& step : *steps) read_step(reading, step, words_in(step, "station"), *into);
  if (const PlanRead* names = list_in(document, "undone"))
    for (const PlanRead& name : *names)
      if (name.is_string()) plan.undone.push_back(name.get<std::string>());
  if (!reading.sound) return std::nullopt;
  return plan;
}

}  // namespace seambook
