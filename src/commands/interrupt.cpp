#include "commands/interrupt.hpp"

namespace seambook {
namespace {

std::atomic<bool> stop_asked = false;  // a signal handler gets no arguments
static_assert(std::atomic<bool>::is_always_lock_free);

void ask_to_stop(int) { stop_asked = true; }

}  // namespace

InterruptStops::InterruptStops() {
  stop_asked = false;
  ::sigaction(SIGINT, nullptr, &before_);
  if (before_.sa_handler != SIG_DFL) return;
  struct sigaction ours {};
  ours.sa_handler = ask_to_stop;
  ours.sa_flags = static_cast<int>(SA_RESETHAND) | SA_RESTART;
  ::sigemptyset(&ours.sa_mask);
  ::sigaction(SIGINT, &ours, nullptr);
}

InterruptStops::~InterruptStops() {
  if (before_.sa_handler == SIG_DFL) ::sigaction(SIGINT, &before_, nullptr);
}

const std::atomic<bool>& InterruptStops::asked() { return stop_asked; }

}  // namespace seambook
