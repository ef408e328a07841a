#include "shop_instances.hpp"

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>
#include <stdexcept>

namespace seambook::bench {
namespace {

const WorkingTime always = {{Instant{}, Instant(Seconds(1'000'000'000))}};

struct FileText {
  std::istringstream in;
  std::string name;

  std::int64_t number() {
    std::int64_t n = 0;
    if (!(in >> n)) throw std::runtime_error(name + ": a number is missing");
    return n;
  }
  /// Reads on to behind a line that holds the word.
  void skip_to(const std::string& word) {
    for (std::string line; std::getline(in, line);)
      if (line.find(word) != std::string::npos) return;
    throw std::runtime_error(name + ": '" + word + "' is missing");
  }
};

FileText text_of(const std::filesystem::path& path) {
  std::ifstream in(path);
  std::ostringstream text;
  text << in.rdbuf();
  return {std::istringstream(text.str()), path.string()};
}

void add_station(ShopInstance& instance, std::size_t jobs) {
  ShopProblem& problem = instance.problem;
  problem.stations.push_back({"machine " + std::to_string(problem.stations.size()), always, {}, {}, {}});
  instance.prices.emplace_back(jobs + 1, std::vector<Seconds>(jobs));
}

void read_machines(FileText& file, ShopInstance& instance) {
  const auto jobs = static_cast<std::size_t>(file.number()), machines = static_cast<std::size_t>(file.number());
  file.number(), file.number();
  ShopProblem& problem = instance.problem;
  problem.orders.push_back({"all", Instant{}, 1});
  for (std::size_t j = 0; j < jobs; ++j) {
    ShopTask task{"job " + std::to_string(j), {}, {}, 0};
    for (std::size_t m = 0; m < machines; ++m) {
      const auto station = static_cast<std::size_t>(file.number());
      task.ways.push_back({station, {}, Seconds(file.number())});
    }
    problem.tasks.push_back(std::move(task));
  }
  for (std::size_t m = 0; m < machines; ++m) {
    add_station(instance, jobs);
    file.skip_to("M" + std::to_string(m));
    for (std::size_t i = 0; i < jobs; ++i)
      for (std::size_t j = 0; j < jobs; ++j) instance.prices[m][i + 1][j] = Seconds(file.number());
  }
}

void read_one_machine(FileText& file, ShopInstance& instance) {
  file.skip_to("Problem Instance");
  file.in.ignore(1000, ':');
  const auto jobs = static_cast<std::size_t>(file.number());
  ShopProblem& problem = instance.problem;
  add_station(instance, jobs);
  file.skip_to("Process Times");
  for (std::size_t j = 0; j < jobs; ++j)
    problem.tasks.push_back({"job " + std::to_string(j), {}, {Way{0, {}, Seconds(file.number())}}, j});
  file.skip_to("Weights");
  for (std::size_t j = 0; j < jobs; ++j) problem.orders.push_back({"job", {}, file.number()});
  file.skip_to("Duedates");
  for (std::size_t j = 0; j < jobs; ++j) problem.orders[j].due = Instant(Seconds(file.number()));
  file.skip_to("Setup Times");
  for (std::size_t k = 0; k < jobs * jobs; ++k) {
    const auto i = file.number(), j = file.number();
    instance.prices[0][static_cast<std::size_t>(i + 1)][static_cast<std::size_t>(j)] = Seconds(file.number());
  }
}

}  // namespace

bool reads_shop(const std::filesystem::path& path) {
  return path.extension() == ".txt" || path.extension() == ".instance";
}

ShopInstance read_shop_instance(const std::filesystem::path& path) {
  ShopInstance instance;
  instance.name = path.stem().string();
  FileText file = text_of(path);
  if (path.extension() == ".instance")
    read_one_machine(file, instance);
  else
    read_machines(file, instance);
  return instance;
}

std::int64_t checked_lateness(const ShopInstance& instance, const TaskList& list) {
  const ShopProblem& problem = instance.problem;
  std::vector<std::int64_t> free(problem.stations.size()), finish(problem.orders.size());
  std::vector<std::size_t> last(problem.stations.size());
  std::set<std::size_t> seen;
  for (const Listed& at : list) {
    if (at.task >= problem.tasks.size() || !seen.insert(at.task).second) return -1;
    const Way& way = problem.tasks[at.task].ways.at(at.way);
    const std::size_t station = *way.station;
    free[station] += instance.prices[station][last[station]][at.task].count() + way.time.count();
    last[station] = at.task + 1;
    std::int64_t& end = finish[problem.tasks[at.task].order];
    end = std::max(end, free[station]);
  }
  if (seen.size() != problem.tasks.size()) return -1;
  std::int64_t sum = 0;
  for (std::size_t o = 0; o < finish.size(); ++o)
    sum += problem.orders[o].weight *
           std::max<std::int64_t>(0, finish[o] - problem.orders[o].due.time_since_epoch().count());
  return sum;
}

}  // namespace seambook::bench
