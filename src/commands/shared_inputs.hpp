// What all jobs of a run share: the rate books met so far, each read once, and standard input. Threads may ask at once.
#pragma once

#include <deque>
#include <mutex>

#include "commands/files.hpp"
#include "commands/rates.hpp"

namespace seambook {

/// A rate book and what was found in it.
struct ShelvedRates {
  ShopRates rates;
  Diagnostics diagnostics;  // file 1 is kept free for the job, those of the rate book follow
};

struct SharedInputs {
  std::mutex mutex;
  std::deque<ShelvedRates> shelf;  // what stands here never moves
  std::optional<FileText> standard_input;
};

/// The rate book of that folder, read when it is asked for first. Throws std::system_error.
const ShelvedRates& rates_of(SharedInputs&, const std::filesystem::path& folder);
/// As read_file; standard input is kept, so that it can be asked for again.
FileText read_shared(SharedInputs&, const std::string& path);

}  // namespace seambook
