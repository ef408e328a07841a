// The repository's rate book and example jobs, read and resolved for a test.
#pragma once

#include <optional>
#include <string>

#include "estimate/estimate.hpp"

namespace seambook::test {

struct LoadedJob {
  Diagnostics diagnostics;
  std::optional<RateBook> book;
  std::optional<Job> job;
};

std::string file_text(const std::string& path);
/// A job of jobs/ by its file's name, against rates/.
LoadedJob load_job(const std::string& name);
/// A job given as text, against rates/.
LoadedJob load_text(const std::string& text);

}  // namespace seambook::test
