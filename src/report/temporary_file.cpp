#include "report/temporary_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <climits>
#include <csignal>
#include <cstring>
#include <stdexcept>
#include <string>
#include <string_view>
#include <system_error>

namespace seambook {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view temporary_prefix = ".seambook-";
constexpr std::array ending_signals = {SIGINT, SIGTERM, SIGHUP};

// The one global state of the program: a signal handler gets no arguments, so the name it has to remove must stand
// where it can find it. Written only while the signals are blocked.
struct {
  std::atomic<bool> armed = false;
  std::array<char, PATH_MAX> path{};
  std::array<struct sigaction, ending_signals.size()> before{};
} doomed_file;
static_assert(std::atomic<bool>::is_always_lock_free);

// Only calls that are safe inside a handler. The default action is back in place when the signal is raised again,
// so the program ends as if the signal had not been caught.
void remove_and_raise(int signal_number) {
  if (doomed_file.armed) ::unlink(doomed_file.path.data());
  struct sigaction standard {};
  standard.sa_handler = SIG_DFL;
  ::sigaction(signal_number, &standard, nullptr);
  ::raise(signal_number);
}

class SignalsBlocked {
 public:
  SignalsBlocked() {
    sigset_t set;
    ::sigemptyset(&set);
    for (const int number : ending_signals) ::sigaddset(&set, number);
    ::pthread_sigmask(SIG_BLOCK, &set, &before_);
  }
  ~SignalsBlocked() { ::pthread_sigmask(SIG_SETMASK, &before_, nullptr); }
  SignalsBlocked(const SignalsBlocked&) = delete;
  SignalsBlocked& operator=(const SignalsBlocked&) = delete;

 private:
  sigset_t before_{};
};

// Signals that are ignored (nohup) or handled elsewhere do not end the program and are left alone.
void arm(const std::string& path) {
  std::memcpy(doomed_file.path.data(), path.c_str(), path.size() + 1);
  doomed_file.armed = true;
  for (std::size_t at = 0; at < ending_signals.size(); ++at) {
    struct sigaction& before = doomed_file.before[at];
    ::sigaction(ending_signals[at], nullptr, &before);
    if (before.sa_handler != SIG_DFL) continue;
    struct sigaction ours {};
    ours.sa_handler = remove_and_raise;
    ::sigemptyset(&ours.sa_mask);
    ::sigaction(ending_signals[at], &ours, nullptr);
  }
}

void disarm() {
  doomed_file.armed = false;
  for (std::size_t at = 0; at < ending_signals.size(); ++at) {
    if (doomed_file.before[at].sa_handler == SIG_DFL) {
      ::sigaction(ending_signals[at], &doomed_file.before[at], nullptr);
    }
  }
}

// A new file, open and locked, or -1 when another run took the name or swept the file before it was locked.
// A file system without locks gives an unlocked file; a sweep cannot lock it either and leaves it alone.
int create_locked(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
  if (file < 0) {
    if (errno == EEXIST) return -1;
    throw std::system_error(errno, std::generic_category(), path);
  }
  struct stat made {};
  const bool taken = ::flock(file, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK;
  if (!taken && ::fstat(file, &made) == 0 && made.st_nlink > 0) return file;
  ::close(file);
  return -1;
}

bool named_like_ours(std::string_view name) {
  if (!name.starts_with(temporary_prefix)) return false;
  name.remove_prefix(temporary_prefix.size());
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  return std::ranges::count(name, '-') == 1 && digit(name.front()) && digit(name.back()) &&
         std::ranges::all_of(name, [&](char c) { return digit(c) || c == '-'; });
}

void remove_if_abandoned(const fs::path& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
  if (file < 0) return;
  struct stat found {};
  const bool ours = ::fstat(file, &found) == 0 && S_ISREG(found.st_mode) && found.st_uid == ::geteuid();
  // The lock dies with the process that held it: getting it means that nobody is writing.
  if (ours && ::flock(file, LOCK_EX | LOCK_NB) == 0) ::unlink(path.c_str());
  ::close(file);
}

}  // namespace

TemporaryFile::TemporaryFile(const fs::path& folder) {
  if (doomed_file.armed) throw std::logic_error("a temporary file inside another one's lifetime");
  const SignalsBlocked blocked;  // no moment in which the file exists and the handler does not know it
  for (int number = 1; lock_ < 0; ++number) {
    if (number > 10000) throw std::system_error(EEXIST, std::generic_category(), folder.string());
    path_ = fs::absolute(folder) / fmt::format("{}{}-{}", temporary_prefix, ::getpid(), number);
    if (path_.native().size() >= PATH_MAX) throw std::system_error(ENAMETOOLONG, std::generic_category(), path_);
    lock_ = create_locked(path_.native());
  }
  arm(path_.native());
}

TemporaryFile::~TemporaryFile() {
  const SignalsBlocked blocked;
  ::unlink(path_.c_str());  // gone already when the file has been moved to its target
  disarm();
  ::close(lock_);
}

void sweep_temporaries(const fs::path& folder) {
  std::error_code ignored;
  fs::directory_iterator entry(folder, ignored);
  while (!ignored && entry != fs::directory_iterator()) {
    const fs::path path = entry->path();
    entry.increment(ignored);
    if (named_like_ours(path.filename().native())) remove_if_abandoned(path);
  }
}

}  // namespace seambook
