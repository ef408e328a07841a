// The shop's rate book found, read and resolved, with a print of its bytes.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "read/written_inputs.hpp"
#include "resolve/rate_book.hpp"

namespace seambook {

struct ShopRates {
  std::filesystem::path folder;
  std::string shown;             // the folder as messages name it
  std::string hash;              // over the names and contents of its files
  std::vector<NamedText> files;  // by name
  std::optional<RateBook> book;  // nothing when it has faults
};

/// Where a rate book is looked for, in this order: `given` alone when there is one; a folder `rates` in `folder` and in
/// each folder above it; the user's configuration folder; the installed share.
std::vector<std::filesystem::path> rate_folders(const std::optional<std::string>& given,
                                                const std::filesystem::path& folder);
/// The first of them that holds a file `*.yaml`.
std::optional<std::filesystem::path> find_rates(const std::vector<std::filesystem::path>& folders);
/// The folder's `*.yaml` in the order of their names.
std::vector<std::filesystem::path> rate_files(const std::filesystem::path& folder);
/// Reads and resolves all of them; faults go to `diagnostics`. Throws std::system_error.
ShopRates load_rates(const std::filesystem::path& folder, Diagnostics& diagnostics);

}  // namespace seambook
