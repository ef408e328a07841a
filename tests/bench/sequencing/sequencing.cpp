// How near the searches, by pairs and of a shop's plan, come to the best known values of public instances:
//   sequencing [FOLDER ...] [SECONDS [SEED [SEEDS]]]
// Seconds are of processor time for one instance and seed (default 10, 1 for few jobs on few machines; from seed 1,
// one seed); of several seeds the median is shown. Without a folder those beside the source tree are taken. Prints
// value, best known, gap, bound and time of each and a line for each folder; a broken rule or a bound above a known
// value ends it with exit code 1.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <exception>
#include <functional>
#include <limits>
#include <set>

#include "instances.hpp"
#include "schedule/earliest_end.hpp"
#include "schedule/floors.hpp"
#include "schedule/improve_plan.hpp"
#include "schedule/starts.hpp"
#include "sequence/pair_descent.hpp"
#include "sequence/pair_search.hpp"
#include "shop_instances.hpp"

namespace seambook::bench {
namespace {

struct Settings {
  std::vector<std::filesystem::path> folders;
  std::optional<double> seconds;
  std::uint32_t seed = 1, seeds = 1;
};

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

struct Outcome {
  double cost = 0, bound = 0, seconds = 0;
  bool proved = false;
};

SearchBudget scaled(const SearchBudget& budget, double by) {
  const auto times = [&](std::size_t count) { return static_cast<std::size_t>(static_cast<double>(count) * by) + 1; };
  return {times(budget.states), times(budget.moves)};
}

/// Again with another seed and more budget, going on from the best order, until proved or out of time. The last round
/// is given what is about left.
Outcome solve(const Instance& instance, double seconds, std::uint32_t seed) {
  constexpr double most_growth = 8, least_worth = 0.2, cautious = 0.9;
  const double began = processor_seconds();
  const PairNet net = pair_net(instance.problem);
  PairResult best{cheapest_next(net), {}, false};
  SearchBudget budget{800'000, 2'000'000};
  for (double growth = 1; !best.proved && growth > least_worth;) {
    const double round_began = processor_seconds();
    const PairResult found = pair_search(net, best.order, budget, seed);
    best = {found.order, std::max(best.bound, found.bound), found.proved};
    const double now = processor_seconds(), left = seconds - (now - began);
    growth = std::min(most_growth, cautious * left / std::max(now - round_began, 1e-6));
    budget = scaled(budget, std::max(growth, 0.0));
    seed += 2;
  }
  return {checked_cost(instance, best.order), best.bound.si, processor_seconds() - began, best.proved};
}

/// As a plan is made: the best list by a rule, the earliest end where there are few, improvement. Only lateness counts.
Outcome solve(const ShopInstance& instance, double seconds, std::uint32_t seed) {
  const double began = processor_seconds();
  std::vector<SetUpTable> tables;
  for (const auto& prices : instance.prices) tables.push_back(set_up_table(prices));
  ShopNet net = shop_net(instance.problem, std::move(tables));
  Levels floor = floor_from(net, nothing_placed(net), Finishes(net.tasks.size(), never_done), 0);
  floor.late = std::max(floor.late, lateness_floor(instance.problem, net, possible_tasks(net)));
  floor.change = std::numeric_limits<std::int64_t>::max();
  TaskList list = list_by(net, Rule::input_order);
  for (const Rule rule : {Rule::due_date, Rule::start, Rule::set_up})
    if (TaskList other = list_by(net, rule); levels_of(net, other) < levels_of(net, list)) list = std::move(other);
  Levels levels = levels_of(net, list);
  seek_earliest_end(net, list, levels, floor);
  const double left = std::max(seconds - (processor_seconds() - began), 0.001);
  const Improved found = improved_list(net, list, floor, {0, left, seed});
  const std::int64_t late = checked_lateness(instance, found.list);
  const bool sound = late >= 0 && late == found.levels.late;
  return {sound ? static_cast<double>(late) : std::numeric_limits<double>::infinity(), static_cast<double>(floor.late),
          processor_seconds() - began, late == floor.late};
}

struct Summary {
  std::size_t instances = 0, compared = 0, best = 0, proved = 0, faults = 0;
  std::size_t above_zero = 0;  // where the best known value is zero: no part of the gaps
  double gaps = 0, worst = 0;
};

bool faulty(const Outcome& outcome, double best) {
  return !std::isfinite(outcome.cost) || outcome.bound > best + 1e-6 * (1 + best) ||
         (outcome.proved && outcome.cost > best + 1e-6);
}

struct Measured {
  std::string name;
  std::size_t size = 0;
  std::function<Outcome(std::uint32_t seed)> solve;
};

/// Every seed is checked, the median shown.
void measure(const Measured& instance, const double* known, const Settings& settings, Summary& summary) {
  std::vector<Outcome> outcomes;
  bool fault = false;
  for (std::uint32_t s = 0; s < settings.seeds; ++s) {
    outcomes.push_back(instance.solve(settings.seed + 1000 * s));
    fault = fault || faulty(outcomes.back(), known != nullptr ? *known : outcomes.back().cost);
  }
  std::ranges::stable_sort(outcomes, {}, &Outcome::cost);
  const Outcome& outcome = outcomes[(outcomes.size() - 1) / 2];
  const double best = known != nullptr ? *known : outcome.cost;
  const auto gap_of = [&](double cost) { return best > 0 ? (cost - best) / best * 100 : 0; };
  ++summary.instances;
  summary.proved += outcome.proved ? 1 : 0;
  summary.faults += fault ? 1 : 0;
  if (known != nullptr) {
    ++summary.compared;
    summary.best += outcome.cost <= best ? 1 : 0;
    summary.above_zero += best <= 0 && outcome.cost > 0 ? 1 : 0;
    summary.gaps += gap_of(outcome.cost);
    summary.worst = std::max(summary.worst, gap_of(outcome.cost));
  }
  std::printf("%-20s %5zu %12.0f %12.0f %8.2f %12.1f %-7s %8.2f", instance.name.c_str(), instance.size, outcome.cost,
              best, gap_of(outcome.cost), outcome.bound, outcome.proved ? "yes" : "open", outcome.seconds);
  if (outcomes.size() > 1)
    std::printf("  of seeds %.2f to %.2f %%", gap_of(outcomes.front().cost), gap_of(outcomes.back().cost));
  std::printf("%s%s\n", best <= 0 && outcome.cost > 0 ? "  above zero" : "", fault ? "  FAULT" : "");
  std::fflush(stdout);
}

Measured read(const std::filesystem::path& file, std::optional<double> given) {
  constexpr std::size_t few = 16;
  if (reads_pairs(file)) {
    Instance instance = read_instance(file);
    const double seconds = given.value_or(10);
    return {instance.name, instance.nodes, [=](std::uint32_t seed) { return solve(instance, seconds, seed); }};
  }
  ShopInstance instance = read_shop_instance(file);
  const std::size_t jobs = instance.problem.tasks.size();
  const double seconds = given.value_or(jobs <= few ? 1 : 10);
  return {instance.name, jobs, [=](std::uint32_t seed) { return solve(instance, seconds, seed); }};
}

Summary run(const std::filesystem::path& folder, const Settings& settings) {
  std::set<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    if (reads_pairs(entry.path()) || reads_shop(entry.path())) files.insert(entry.path());
  Summary summary;
  if (files.empty()) return summary;
  const auto known = best_known(folder);
  std::printf("%-20s %5s %12s %12s %8s %12s %-7s %8s\n", folder.filename().string().c_str(), "size", "value",
              "best known", "gap %", "bound", "proved", "s");
  for (const auto& file : files) {
    const Measured instance = read(file, settings.seconds);
    const auto at = known.find(instance.name);
    measure(instance, at == known.end() ? nullptr : &at->second, settings, summary);
  }
  std::printf(
      "%s: %zu instances, mean gap %.3f %%, worst %.2f %%, %zu at best known, %zu above a best known 0, "
      "%zu proved, %zu faults\n\n",
      folder.filename().string().c_str(), summary.instances,
      summary.compared > 0 ? summary.gaps / static_cast<double>(summary.compared) : 0, summary.worst, summary.best,
      summary.above_zero, summary.proved, summary.faults);
  return summary;
}

Settings settings_of(int argc, char** argv) {
  Settings settings;
  int at = 1;
  for (; at < argc && std::filesystem::is_directory(argv[at]); ++at) settings.folders.emplace_back(argv[at]);
  if (at < argc) settings.seconds = std::atof(argv[at++]);
  if (at < argc) settings.seed = static_cast<std::uint32_t>(std::atoi(argv[at++]));
  if (at < argc) settings.seeds = static_cast<std::uint32_t>(std::max(1, std::atoi(argv[at])));
  if (!settings.folders.empty()) return settings;
  const std::filesystem::path beside = std::filesystem::path(SEAMBOOK_ROOT) / ".." / "shared" / "benchmarks";
  if (!std::filesystem::is_directory(beside)) return settings;
  for (const auto& entry : std::filesystem::directory_iterator(beside))
    if (entry.is_directory()) settings.folders.push_back(entry.path());
  std::ranges::sort(settings.folders);
  return settings;
}

}  // namespace
}  // namespace seambook::bench

int main(int argc, char** argv) {
  using namespace seambook::bench;
  try {
    const Settings settings = settings_of(argc, argv);
    if (settings.folders.empty())
      std::printf("no folder of instances is given or stands beside the source tree: skipped\n");
    std::size_t faults = 0;
    for (const auto& folder : settings.folders) faults += run(folder, settings).faults;
    return faults == 0 ? 0 : 1;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
}
