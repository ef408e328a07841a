#include "commands/progress.hpp"

#include <fmt/format.h>

#include <cstdio>

#include "commands/output.hpp"

namespace seambook {

ProgressLine::ProgressLine(const Arguments& arguments, std::size_t jobs)
    : jobs_(jobs), wanted_(jobs > 1 && !arguments.quiet && live_terminal()) {}

void ProgressLine::show(std::size_t done) {
  if (!wanted_) return;
  std::fputs(fmt::format("\r{} of {} jobs done\x1B[K", done, jobs_).c_str(), stderr);
  shown_ = true;
}

void ProgressLine::clear() {
  if (!shown_) return;
  std::fputs("\r\x1B[K", stderr);
  shown_ = false;
}

}  // namespace seambook
