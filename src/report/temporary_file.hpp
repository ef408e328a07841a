// A temporary file beside the file it will become. Removed when it goes out of scope, and by any signal that would
// end the program; while it lives it is locked, so that other runs can tell it from one left by a killed run.
#pragma once

#include <filesystem>

namespace seambook {

class TemporaryFile {
 public:
  /// Makes `.seambook-<process>-<number>` in `folder`, readable as the user's umask says. Throws std::system_error.
  /// One at a time in a program: the signal's clean-up knows one name.
  explicit TemporaryFile(const std::filesystem::path& folder);
  ~TemporaryFile();
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;

  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
  int lock_ = -1;
};

/// Removes from `folder` the temporaries that this user's dead runs left. Never fails: what cannot be removed stays.
void sweep_temporaries(const std::filesystem::path& folder);

}  // namespace seambook
