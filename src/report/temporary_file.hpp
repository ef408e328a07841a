// A temporary file beside the file it will become. Removed when it goes out of scope, and by any signal that would
// end the program; while it lives it is locked, so that other runs can tell it from one left by a killed run.
#pragma once

#include <cstddef>
#include <filesystem>

namespace seambook {

/// So many may live at once, each in a thread of its own: the signal's clean-up knows so many names.
inline constexpr std::size_t most_temporaries = 256;

class TemporaryFile {
 public:
  /// Makes `.seambook-<process>-<number>` in `folder`, readable as the user's umask says. Throws std::system_error.
  explicit TemporaryFile(const std::filesystem::path& folder);
  ~TemporaryFile();
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;

  const std::filesystem::path& path() const { return path_; }
  /// The same file by its descriptor where the system can: opening that writes to this file and never makes a new one,
  /// as opening its name would when a signal has removed it.
  std::filesystem::path open_path() const;

 private:
  std::filesystem::path path_;
  std::size_t place_ = 0;  // among the names that a signal removes
  int lock_ = -1;
};

/// Removes from `folder` the temporaries that this user's dead runs left. Never fails: what cannot be removed stays.
void sweep_temporaries(const std::filesystem::path& folder);

}  // namespace seambook
