#include "loaded_shop.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace seambook::test {

LoadedShop read_shop(const std::vector<std::string>& jobs, const std::vector<RateFile>& rates, Instant start,
                     const std::string& day) {
  LoadedShop shop;
  std::vector<std::uint32_t> files;
  for (const RateFile& file : rates) files.push_back(shop.diagnostics.add_file(file.name, file.text));
  auto book = resolve_rates(read_rates(files, shop.diagnostics), shop.diagnostics);
  REQUIRE_MESSAGE(book, render(shop.diagnostics));
  shop.book = std::move(*book), shop.start = start;
  const FileFinder nothing = [](const std::string&) { return std::optional<std::string>(); };
  for (const std::string& text : jobs) {
    const JobText job = read_job(shop.diagnostics.add_file("job.yaml", text), nothing, shop.diagnostics);
    auto resolved = resolve_job(job, shop.book, shop.diagnostics);
    REQUIRE_MESSAGE(resolved, render(shop.diagnostics));
    shop.estimates.push_back(estimate(shop.book, *resolved));
    shop.jobs.push_back(std::move(*resolved));
  }
  if (!day.empty()) {
    const DayText text = read_day_file(shop.diagnostics.add_file("day.yaml", "format: 1\n" + day), shop.diagnostics);
    shop.day = resolve_day(text, shop.book, shop.jobs, shop.diagnostics);
    REQUIRE_MESSAGE(shop.day, render(shop.diagnostics));
  }
  return shop;
}

LoadedShop load_shop(const std::vector<std::string>& jobs, const std::vector<RateFile>& rates, Instant start,
                     const std::string& day) {
  LoadedShop shop = read_shop(jobs, rates, start, day);
  auto work = shop_work(shop.asked(), shop.diagnostics);
  REQUIRE_MESSAGE(work, render(shop.diagnostics));
  shop.work = std::move(*work);
  return shop;
}

LoadedShop example_shop(const std::vector<std::string>& files, Instant start, const std::string& day,
                        const std::function<void(std::string&)>& edit) {
  std::vector<std::string> texts;
  for (const std::string& file : files) {
    texts.push_back(file_text(SEAMBOOK_ROOT "/jobs/" + file));
    if (edit) edit(texts.back());
  }
  const std::size_t slash = files.front().find('/');
  return load_shop(
      texts, rate_texts(slash == std::string::npos ? "rates" : "jobs/" + files.front().substr(0, slash) + "/rates"),
      start, day);
}

std::vector<RateFile> small_rates() {
  const std::string why = ", basis: assumption, source: test}\n";
  const std::string mounted =
      ", processes: [135], groups: [\"1\"], mounted: {process: 135, filler: G3Si1-1.0, feed: solid 1.0, gas: M21, "
      "cleanliness: carbon}" +
      why;
  std::vector<RateFile> files = plain_rate_texts();
  for (RateFile& file : files) {
    if (file.name == "stations.yaml")
      file.text =
          "format: 1\nstations:\n  - {name: S1" + mounted + "  - {name: S2" + mounted +
          "change_tasks:\n  - {name: papers, when: job, time: 10 min" + why +
          "  - {name: fixture, when: weldment, time: 20 min" + why +
          "welders:\n  - {stamp: A, grade: welder, qualifications: [{process: 135, groups: [\"1\"], positions: [PA, "
          "PB]}]}\n"
          "  - {stamp: B, grade: welder, qualifications: [{process: 135, groups: [\"1\"], positions: [PA, PB]}]}\n";
    if (file.name == "calendar.yaml")
      file.text = "format: 1\nshifts:\n  - {name: day, days: [Mon, Tue, Wed, Thu, Fri], start: 06:00, end: 14:00" +
                  why + "overtime: {shifts: [day], most: 2 h, premium: 50 %" + why;
  }
  return files;
}

std::string small_job(const std::string& name, const std::string& more, const std::string& joints) {
  return "format: 1\njob: " + name + "\nfinish: F1\nbase_metal: S235\n" + more +
         "weldments:\n  - name: w\n    parts: 2\n    free_issue: true\n    joints:\n" + joints;
}

std::string small_joint(const std::string& id, const std::string& more) {
  return "      - {id: " + id + ", weld: fillet, leg: 4 mm, thickness: 6 mm, length: 900 mm, count: 9" + more + "}\n";
}

Instant at(const char* date, int hour, int minute) {
  return read_instant(std::string(date) + "T00:00:00").value() + std::chrono::hours(hour) +
         std::chrono::minutes(minute);
}

PlanBudget short_search() {
  PlanBudget budget;
  budget.placements = 200'000, budget.states = 2'000, budget.stations = {5'000, 5'000};
  return budget;
}

bool is_planned(const ShopWork& work, const Plan& plan, const std::string& name) {
  return std::any_of(plan.tasks.begin(), plan.tasks.end(),
                     [&](const PlannedTask& task) { return work.problem.tasks[task.task].name == name; });
}

const PlannedTask& step_of(const ShopWork& work, const Plan& plan, const std::string& name) {
  const auto found = std::find_if(plan.tasks.begin(), plan.tasks.end(),
                                  [&](const PlannedTask& task) { return work.problem.tasks[task.task].name == name; });
  REQUIRE_MESSAGE(found != plan.tasks.end(), name);
  return *found;
}

const Way& way_of_step(const ShopWork& work, const PlannedTask& task) {
  return work.problem.tasks[task.task].ways[task.way];
}

std::string lead_of(const ShopWork& work, const PlannedTask& task) {
  const Way& way = way_of_step(work, task);
  return way.people.empty() ? "" : work.problem.people[way.people.front()].stamp;
}

std::string station_of(const ShopWork& work, const PlannedTask& task) {
  const Way& way = way_of_step(work, task);
  return way.station ? work.problem.stations[*way.station].name : "";
}

PastPlan past_of(const ShopWork& work, const Plan& plan) {
  PastPlan past;
  for (const PlannedTask& task : plan.tasks) {
    PastStep step{work.problem.tasks[task.task].name, station_of(work, task), {}, task.set_up, task.start, task.finish};
    for (const std::size_t person : way_of_step(work, task).people)
      step.people.push_back(work.problem.people[person].stamp);
    past.steps.push_back(std::move(step));
  }
  return past;
}

std::set<std::string> withheld_joints(const LoadedShop& shop, const std::string& job, bool by_gate) {
  std::set<std::string> ids;
  for (const Withheld& held : shop.work.withheld)
    if (held.joint && held.gate == by_gate && shop.jobs[held.job].name == job)
      ids.insert(shop.jobs[held.job].joints[*held.joint].id);
  return ids;
}

std::string why_withheld(const LoadedShop& shop, const std::string& joint) {
  std::string why;
  for (const Withheld& held : shop.work.withheld)
    if (held.joint && shop.jobs[held.job].joints[*held.joint].id == joint) why += held.why + "; " + held.hint + "\n";
  return why;
}

}  // namespace seambook::test
