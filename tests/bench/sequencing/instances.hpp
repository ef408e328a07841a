// Public instances of sequential ordering and of asymmetric round trips, as files of matrices.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "sequence/pair_net.hpp"

namespace seambook::bench {

struct Instance {
  std::string name;
  std::size_t nodes = 0;
  std::vector<double> matrix;  // as in the file
  bool round_trip = false;     // the way back to node 0 counts
  PairProblem problem;
};

/// Whether a file holds such a matrix, by its extension; files of other kinds are left to other readers.
bool reads_pairs(const std::filesystem::path&);
/// `.sop`: path from the first node to the last, -1 where the column's node comes before the row's; with a header
/// (TSPLIB) or without (SOPLIB). `.atsp`: round trip. Throws std::runtime_error with the file's name.
Instance read_instance(const std::filesystem::path&);
/// What an order costs by the file's own matrix, infinity where it breaks a rule: written apart from the search.
double checked_cost(const Instance&, const PairOrder&);
/// The best known values of `best-known.tsv` in a folder, by name: its first column of such a heading. Empty without
/// that file.
std::map<std::string, double> best_known(const std::filesystem::path& folder);

}  // namespace seambook::bench
