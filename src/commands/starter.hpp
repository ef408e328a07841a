// The small job and rate book that `new` writes: files of `src/starter`, taken into the program when it is
// built.
#pragma once

#include <span>
#include <string_view>

namespace seambook {

/// `metric/rates/shop.yaml` and what stands in it.
struct StarterFile {
  std::string_view name, text;
};

/// All of them, in the order of their names.
std::span<const StarterFile> starter_files();

}  // namespace seambook
