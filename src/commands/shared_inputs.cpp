#include "commands/shared_inputs.hpp"

#include <algorithm>

namespace seambook {

const ShelvedRates& rates_of(SharedInputs& shared, const std::filesystem::path& folder) {
  const std::lock_guard lock(shared.mutex);
  const auto known = [&](const ShelvedRates& shelved) { return shelved.rates.folder == folder; };
  const auto found = std::find_if(shared.shelf.begin(), shared.shelf.end(), known);
  if (found != shared.shelf.end()) return *found;
  ShelvedRates read;
  read.diagnostics.add_file({}, {});
  read.rates = load_rates(folder, read.diagnostics);
  return shared.shelf.emplace_back(std::move(read));
}

FileText read_shared(SharedInputs& shared, const std::string& path) {
  if (path != "-") return read_file(path);
  const std::lock_guard lock(shared.mutex);
  if (!shared.standard_input) shared.standard_input = read_file(path);
  return *shared.standard_input;
}

}  // namespace seambook
