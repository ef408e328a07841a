// How far a long list has got, in the last line of a terminal. Nothing where nobody looks: in a pipe, with --quiet, for
// one job.
#pragma once

#include <cstddef>

#include "commands/arguments.hpp"

namespace seambook {

class ProgressLine {
 public:
  ProgressLine(const Arguments&, std::size_t jobs);
  ~ProgressLine() { clear(); }
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;

  /// Shows how many jobs are done.
  void show(std::size_t done);
  /// Makes room for other words.
  void clear();

 private:
  std::size_t jobs_;
  bool wanted_, shown_ = false;
};

}  // namespace seambook
