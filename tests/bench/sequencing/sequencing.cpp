// How near the search by pairs comes to the best known values of public instances:
//   sequencing FOLDER [SECONDS [SEED]]
// Seconds are of processor time for one instance (default 10). Prints value, best known, gap, bound and time of each; a
// broken rule or a bound above a known value ends it with exit code 1.
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

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

struct Outcome {
  PairResult result;
  double cost = 0, seconds = 0;
};

/// Again with another seed and more budget, from scratch and keeping the best, until proved or out of time.
Outcome solve(const Instance& instance, double seconds, std::uint32_t seed) {
  const double began = processor_seconds();
  const PairNet net = pair_net(instance.problem);
  const PairOrder first = cheapest_next(net);
  Outcome best{{first, {}, false}, cost_of(net, first).si, 0};
  SearchBudget budget;
  const auto spent = [&] { return processor_seconds() - began; };
  double last_round = 0;
  while (!best.result.proved && spent() + 2 * last_round < seconds) {
    const double round_began = spent();
    // Every other round goes on from the best order.
    const PairResult found = pair_search(net, seed % 2 == 0 ? best.result.order : first, budget, seed);
    ++seed;
    const double cost = cost_of(net, found.order).si;
    if (cost < best.cost || found.proved) best.result.order = found.order, best.cost = cost;
    best.result.proved = found.proved;
    best.result.bound = std::max(best.result.bound, found.bound);
    last_round = spent() - round_began;
    budget.states += budget.states / 2, budget.moves += budget.moves / 2;
  }
  best.cost = checked_cost(instance, best.result.order);
  best.seconds = spent();
  return best;
}

int run(const std::filesystem::path& folder, double seconds, std::uint32_t seed) {
  std::set<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    if (entry.path().extension() == ".sop" || entry.path().extension() == ".atsp") files.insert(entry.path());
  const auto known = best_known(folder);
  std::printf("%-20s %5s %12s %12s %8s %12s %-7s %8s\n", "instance", "nodes", "value", "best known", "gap %", "bound",
              "proved", "s");
  double gaps = 0, worst = 0;
  int compared = 0, proved = 0, faults = 0;
  for (const auto& file : files) {
    const Instance instance = read_instance(file);
    const Outcome outcome = solve(instance, seconds, seed);
    const auto at = known.find(instance.name);
    const double best = at == known.end() ? outcome.cost : at->second;
    const double gap = best > 0 ? (outcome.cost - best) / best * 100 : 0;
    if (at != known.end()) gaps += gap, ++compared, worst = std::max(worst, gap);
    proved += outcome.result.proved ? 1 : 0;
    const bool fault = !std::isfinite(outcome.cost) || outcome.result.bound.si > best + 1e-6 * (1 + best) ||
                       (outcome.result.proved && outcome.cost > best + 1e-6);
    faults += fault ? 1 : 0;
    std::printf("%-20s %5zu %12.0f %12.0f %8.2f %12.1f %-7s %8.2f%s\n", instance.name.c_str(), instance.nodes,
                outcome.cost, best, gap, outcome.result.bound.si, outcome.result.proved ? "yes" : "open",
                outcome.seconds, fault ? "  FAULT" : "");
    std::fflush(stdout);
  }
  std::printf("%zu instances, %d proved; mean gap %.3f %%, worst %.2f %%; %d faults\n", files.size(), proved,
              compared > 0 ? gaps / compared : 0, worst, faults);
  return faults == 0 ? 0 : 1;
}

}  // namespace
}  // namespace seambook::bench

int main(int argc, char** argv) {
  if (argc < 2 || !std::filesystem::is_directory(argv[1])) {
    std::printf("no folder of instances given: nothing is measured\n");
    return 0;
  }
  try {
    return seambook::bench::run(argv[1], argc > 2 ? std::atof(argv[2]) : 10,
                                argc > 3 ? static_cast<std::uint32_t>(std::atoi(argv[3])) : 1);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
}
