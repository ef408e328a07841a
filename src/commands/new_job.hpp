// A job file around a take-off: what it says, where it goes, and what has to go with it.
#pragma once

#include <filesystem>
#include <optional>

#include "commands/pipeline.hpp"

namespace seambook {

struct NewJob {
  std::filesystem::path path;
  std::string text;
  std::optional<std::filesystem::path> copy;  // of the take-off, where it lies outside the job's folder
  std::string takeoff;                        // its bytes
  bool wants_rates = false;                   // neither beside the job nor above it is a rate book
};

/// A job beside the take-off, or in the folder that the arguments name. Faults of the take-off are told, and no
/// hindrance. Nothing, and an error, when it cannot be read.
std::optional<NewJob> job_around_takeoff(const Arguments&, Batch&, const std::string& takeoff);

}  // namespace seambook
