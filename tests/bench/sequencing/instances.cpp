#include "instances.hpp"

#include <fstream>
#include <limits>
#include <set>
#include <sstream>
#include <stdexcept>

namespace seambook::bench {
namespace {

std::string text_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::stringstream text;
  text << in.rdbuf();
  if (!in) throw std::runtime_error(file.string() + ": cannot be read");
  return text.str();
}

/// The count after DIMENSION, or the first number where there is no header.
std::size_t dimension(const std::string& text, std::istringstream& numbers, bool sop) {
  std::size_t nodes = 0;
  const std::size_t section = text.find("EDGE_WEIGHT_SECTION");
  numbers.str(section == text.npos ? text : text.substr(section + std::string("EDGE_WEIGHT_SECTION").size()));
  if (sop) {
    numbers >> nodes;  // stands before the matrix, in either kind of file
  } else {
    std::istringstream(text.substr(text.find(':', text.find("DIMENSION")) + 1)) >> nodes;
  }
  return nodes;
}

PairProblem problem_of(const Instance& instance) {
  PairProblem problem;
  problem.nodes = instance.nodes;
  problem.cost.resize(instance.matrix.size());
  for (std::size_t u = 0; u < instance.nodes; ++u) {
    for (std::size_t v = 0; v < instance.nodes; ++v) {
      const double cost = instance.matrix[u * instance.nodes + v];
      if (cost < 0 && u != v) problem.precedence.emplace_back(v, u);
      problem.cost[u * instance.nodes + v] = Time<>{cost < 0 ? 0 : cost};
    }
    if (instance.round_trip) problem.ending.push_back(Time<>{instance.matrix[u * instance.nodes]});
  }
  return problem;
}

}  // namespace

bool reads_pairs(const std::filesystem::path& file) {
  return file.extension() == ".sop" || file.extension() == ".atsp";
}

Instance read_instance(const std::filesystem::path& file) {
  Instance instance;
  instance.name = file.stem().string();
  instance.round_trip = file.extension() == ".atsp";
  std::istringstream numbers;
  instance.nodes = dimension(text_of(file), numbers, !instance.round_trip);
  if (instance.nodes < 2 || instance.nodes > 5000) throw std::runtime_error(file.string() + ": no count of nodes");
  instance.matrix.resize(instance.nodes * instance.nodes);
  for (double& cost : instance.matrix)
    if (!(numbers >> cost)) throw std::runtime_error(file.string() + ": the matrix ends early");
  instance.problem = problem_of(instance);
  return instance;
}

double checked_cost(const Instance& instance, const PairOrder& order) {
  constexpr double broken = std::numeric_limits<double>::infinity();
  const std::size_t n = instance.nodes;
  if (order.size() != n + 1 || order.front() != 0 || order.back() != n) return broken;
  std::vector<std::size_t> place(n, n);
  for (std::size_t p = 0; p < n; ++p) {
    if (order[p] >= n || place[order[p]] != n) return broken;
    place[order[p]] = p;
  }
  for (std::size_t u = 0; u < n; ++u)
    for (std::size_t v = 0; v < n; ++v)
      if (u != v && instance.matrix[u * n + v] < 0 && place[v] > place[u]) return broken;
  double cost = instance.round_trip ? instance.matrix[order[n - 1] * n] : 0;
  for (std::size_t p = 0; p + 1 < n; ++p) cost += instance.matrix[order[p] * n + order[p + 1]];
  return cost;
}

std::map<std::string, double> best_known(const std::filesystem::path& folder) {
  std::map<std::string, double> known;
  std::ifstream in(folder / "best-known.tsv");
  std::string line, word;
  std::size_t column = 0;
  static const std::set<std::string> headings = {"best_known", "optimum_proved_here", "best_known_ub",
                                                 "upper_bound_here"};
  if (!std::getline(in, line)) return known;
  std::istringstream heading(line);
  for (std::size_t c = 0; std::getline(heading, word, '\t'); ++c)
    if (column == 0 && headings.contains(word)) column = c;
  while (std::getline(in, line)) {
    std::istringstream fields(line);
    std::string name, value;
    for (std::size_t c = 0; std::getline(fields, word, '\t'); ++c) {
      if (c == 0) name = word;
      if (c == column) value = word;
    }
    if (!value.empty()) known[name] = std::stod(value);
  }
  return known;
}

}  // namespace seambook::bench
