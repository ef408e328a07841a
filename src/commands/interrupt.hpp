// Ctrl-C while a search runs: what has been found so far is kept. Part of no result.
#pragma once

#include <atomic>
#include <csignal>

namespace seambook {

/// While one lives, the first interrupt only asks the search to stop; a second one ends the program as ever. Where
/// interrupts are ignored (nohup) they stay so. One at a time.
class InterruptStops {
 public:
  InterruptStops();
  ~InterruptStops();
  InterruptStops(const InterruptStops&) = delete;
  InterruptStops& operator=(const InterruptStops&) = delete;

  static const std::atomic<bool>& asked();

 private:
  struct sigaction before_ {};
};

}  // namespace seambook
