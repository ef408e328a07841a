// Public instances of work for machines: unlike machines with set-ups between jobs (least time to the end of the last
// job), and one machine with set-ups, weights and due dates (least weighted lateness).
#pragma once

#include <filesystem>

#include "schedule/shop_net.hpp"

namespace seambook::bench {

/// A minute of the file is a second here.
struct ShopInstance {
  std::string name;
  ShopProblem problem;
  std::vector<std::vector<std::vector<Seconds>>> prices;  // [station][0 before the first, else task + 1][task]
};

/// Whether a file holds such an instance, by its extension.
bool reads_shop(const std::filesystem::path&);
/// `.txt`: jobs and machines, times, then SSD and a matrix for each machine; all jobs are one order due at once, so its
/// lateness is the end of the last job. `.instance`: one machine, each job an order. Throws std::runtime_error with the
/// file's name.
ShopInstance read_shop_instance(const std::filesystem::path&);
/// Weighted lateness of a list by the file's own numbers, -1 where it is no list of all jobs: written apart from the
/// search.
std::int64_t checked_lateness(const ShopInstance&, const TaskList&);

}  // namespace seambook::bench
