// How near the search by pairs comes to the best known values of public instances:
//   sequencing [FOLDER ...] [SECONDS [SEED [SEEDS]]]
// Seconds are of processor time for one instance and seed (default 10, from seed 1, one seed); of several seeds the
// median is shown. Without a folder those beside the source tree are taken. Prints value, best known, gap, bound and
// time of each and a line for each folder; a broken rule or a bound above a known value ends it with exit code 1.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <exception>
#include <set>

#include "instances.hpp"
#include "sequence/pair_descent.hpp"
#include "sequence/pair_search.hpp"

namespace seambook::bench {
namespace {

struct Settings {
  std::vector<std::filesystem::path> folders;
  double seconds = 10;
  std::uint32_t seed = 1, seeds = 1;
};

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

struct Outcome {
  PairResult result;
  double cost = 0, seconds = 0;
};

SearchBudget scaled(const SearchBudget& budget, double by) {
  const auto times = [&](std::size_t count) { return static_cast<std::size_t>(static_cast<double>(count) * by) + 1; };
  return {times(budget.states), times(budget.moves)};
}

/// Again with another seed and more budget, going on from the best order, until proved or out of time. The last round
/// is given what is about left.
Outcome solve(const Instance& instance, double seconds, std::uint32_t seed) {
  constexpr double most_growth = 8, least_worth = 0.2;
  const double began = processor_seconds();
  const PairNet net = pair_net(instance.problem);
  Outcome best{{cheapest_next(net), {}, false}, 0, 0};
  SearchBudget budget{800'000, 2'000'000};
  for (double growth = 1; !best.result.proved && growth > least_worth;) {
    const double round_began = processor_seconds();
    const PairResult found = pair_search(net, best.result.order, budget, seed);
    best.result = {found.order, std::max(best.result.bound, found.bound), found.proved};
    const double now = processor_seconds(), left = seconds - (now - began);
    growth = std::min(most_growth, left / std::max(now - round_began, 1e-6));
    budget = scaled(budget, std::max(growth, 0.0));
    seed += 2;
  }
  best.cost = checked_cost(instance, best.result.order);
  best.seconds = processor_seconds() - began;
  return best;
}

struct Summary {
  std::size_t instances = 0, compared = 0, proved = 0, faults = 0;
  double gaps = 0, worst = 0;
};

bool faulty(const Outcome& outcome, double best) {
  return !std::isfinite(outcome.cost) || outcome.result.bound.si > best + 1e-6 * (1 + best) ||
         (outcome.result.proved && outcome.cost > best + 1e-6);
}

/// Every seed is checked, the median shown.
void measure(const Instance& instance, const double* known, const Settings& settings, Summary& summary) {
  std::vector<Outcome> outcomes;
  bool fault = false;
  for (std::uint32_t s = 0; s < settings.seeds; ++s) {
    outcomes.push_back(solve(instance, settings.seconds, settings.seed + 1000 * s));
    fault = fault || faulty(outcomes.back(), known != nullptr ? *known : outcomes.back().cost);
  }
  std::ranges::stable_sort(outcomes, {}, &Outcome::cost);
  const Outcome& outcome = outcomes[(outcomes.size() - 1) / 2];
  const double best = known != nullptr ? *known : outcome.cost;
  const auto gap_of = [&](double cost) { return best > 0 ? (cost - best) / best * 100 : 0; };
  ++summary.instances;
  summary.proved += outcome.result.proved ? 1 : 0;
  summary.faults += fault ? 1 : 0;
  if (known != nullptr) {
    ++summary.compared;
    summary.gaps += gap_of(outcome.cost);
    summary.worst = std::max(summary.worst, gap_of(outcome.cost));
  }
  std::printf("%-20s %5zu %12.0f %12.0f %8.2f %12.1f %-7s %8.2f", instance.name.c_str(), instance.nodes, outcome.cost,
              best, gap_of(outcome.cost), outcome.result.bound.si, outcome.result.proved ? "yes" : "open",
              outcome.seconds);
  if (outcomes.size() > 1)
    std::printf("  of seeds %.2f to %.2f %%", gap_of(outcomes.front().cost), gap_of(outcomes.back().cost));
  std::printf("%s\n", fault ? "  FAULT" : "");
  std::fflush(stdout);
}

Summary run(const std::filesystem::path& folder, const Settings& settings) {
  std::set<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    if (reads_pairs(entry.path())) files.insert(entry.path());
  Summary summary;
  if (files.empty()) return summary;
  const auto known = best_known(folder);
  std::printf("%-20s %5s %12s %12s %8s %12s %-7s %8s\n", folder.filename().string().c_str(), "nodes", "value",
              "best known", "gap %", "bound", "proved", "s");
  for (const auto& file : files) {
    const Instance instance = read_instance(file);
    const auto at = known.find(instance.name);
    measure(instance, at == known.end() ? nullptr : &at->second, settings, summary);
  }
  std::printf("%s: %zu instances, mean gap %.3f %%, worst %.2f %%, %zu proved, %zu faults\n\n",
              folder.filename().string().c_str(), summary.instances,
              summary.compared > 0 ? summary.gaps / static_cast<double>(summary.compared) : 0, summary.worst,
              summary.proved, summary.faults);
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
