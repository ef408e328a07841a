#include "report/temporary_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
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
#include <mutex>
#include <stdexcept>
#include <string>
#include <string_view>
#include <system_error>

namespace seambook {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view temporary_prefix = ".seambook-";
constexpr std::array ending_signals = {SIGINT, SIGTERM, SIGHUP, SIGPIPE};

struct DoomedFile {
  std::atomic<bool> taken = false, armed = false;
  std::array<char, PATH_MAX> path{};
};

// The one global state of the program: a signal handler gets no arguments, so the names it has to remove must stand
// where it can find them.
struct {
  std::array<DoomedFile, most_temporaries> files;
  std::atomic<unsigned> number = 0;  // of the last: no name twice, or a thread would remove what another has made since
  // A handler may run in one thread while another is about to make a file. Either the handler sees that and waits for
  // the file's name, or the other sees that the program ends and makes no file.
  std::atomic<int> being_made = 0;
  std::atomic<bool> ending = false;
  std::mutex signals;  // guards what follows; never taken by the handler
  std::size_t living = 0;
  std::array<struct sigaction, ending_signals.size()> before{};
} doomed;
static_assert(std::atomic<bool>::is_always_lock_free && std::atomic<int>::is_always_lock_free);

// Only calls that are safe inside a handler. The default action is back in place when the signal is raised again,
// so the program ends as if the signal had not been caught.
void remove_and_raise(int signal_number) {
  const int error = errno;
  doomed.ending = true;
  while (doomed.being_made > 0) ::poll(nullptr, 0, 1);
  for (const DoomedFile& file : doomed.files)
    if (file.armed) ::unlink(file.path.data());
  struct sigaction standard {};
  standard.sa_handler = SIG_DFL;
  ::sigaction(signal_number, &standard, nullptr);
  errno = error;
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

// A handler has removed the files: what this thread would say of that misleads.
void wait_for_the_end() {
  for (;;) ::pause();
}

// While it lives, no handler looks for names. Waits for the end when one has begun to.
class FileBeingMade {
 public:
  FileBeingMade() {
    ++doomed.being_made;
    if (!doomed.ending) return;
    --doomed.being_made;
    wait_for_the_end();
  }
  ~FileBeingMade() { --doomed.being_made; }
  FileBeingMade(const FileBeingMade&) = delete;
  FileBeingMade& operator=(const FileBeingMade&) = delete;
};

// Signals that are ignored (nohup) or handled elsewhere do not end the program and are left alone.
void catch_signals() {
  const std::lock_guard lock(doomed.signals);
  if (doomed.living++ > 0) return;
  for (std::size_t at = 0; at < ending_signals.size(); ++at) {
    struct sigaction& before = doomed.before[at];
    ::sigaction(ending_signals[at], nullptr, &before);
    if (before.sa_handler != SIG_DFL) continue;
    struct sigaction ours {};
    ours.sa_handler = remove_and_raise;
    ::sigemptyset(&ours.sa_mask);
    ::sigaction(ending_signals[at], &ours, nullptr);
  }
}

void release_signals() {
  const std::lock_guard lock(doomed.signals);
  if (--doomed.living > 0) return;
  for (std::size_t at = 0; at < ending_signals.size(); ++at) {
    if (doomed.before[at].sa_handler == SIG_DFL) ::sigaction(ending_signals[at], &doomed.before[at], nullptr);
  }
}

// A place in the table, with the signals caught as long as any place is taken.
std::size_t take_place() {
  for (std::size_t at = 0; at < doomed.files.size(); ++at) {
    if (doomed.files[at].taken.exchange(true)) continue;
    catch_signals();
    return at;
  }
  throw std::logic_error("more temporary files at once than the signal's clean-up knows");
}

void leave_place(std::size_t at) {
  doomed.files[at].armed = false;
  doomed.files[at].taken = false;
  release_signals();
}

// What came of making a file: its descriptor, or why there is none.
struct Made {
  int file = -1, code = 0;
};

// A new file, open and locked. EEXIST when another run took the name or swept the file before it was locked.
// A file system without locks gives an unlocked file; a sweep cannot lock it either and leaves it alone.
Made create_locked(const char* path) {
  const int file = ::open(path, O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
  if (file < 0) return {-1, errno};
  struct stat made {};
  const bool taken = ::flock(file, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK;
  if (!taken && ::fstat(file, &made) == 0 && made.st_nlink > 0) return {file, 0};
  ::close(file);
  return {-1, EEXIST};
}

// No moment in which the file exists and a handler does not know it. Allocates nothing: the handler that waits may have
// interrupted a thread that was allocating.
Made create_doomed(DoomedFile& place, const std::string& path) {
  const FileBeingMade making;
  const Made made = create_locked(path.c_str());
  if (made.file < 0) return made;
  std::memcpy(place.path.data(), path.c_str(), path.size() + 1);
  place.armed = true;
  return made;
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
  const fs::path whole = fs::absolute(folder);
  const SignalsBlocked blocked;  // the handler must not wait for the thread that it runs in
  place_ = take_place();
  int code = EEXIST;
  for (int tries = 0; code == EEXIST && tries < 10000; ++tries) {
    path_ = whole / fmt::format("{}{}-{}", temporary_prefix, ::getpid(), ++doomed.number);
    const Made made =
        path_.native().size() < PATH_MAX ? create_doomed(doomed.files[place_], path_.native()) : Made{-1, ENAMETOOLONG};
    lock_ = made.file;
    code = made.code;
  }
  if (code == 0) return;
  leave_place(place_);
  throw std::system_error(code, std::generic_category(), path_.string());
}

TemporaryFile::~TemporaryFile() {
  const SignalsBlocked blocked;
  if (doomed.ending) wait_for_the_end();
  ::unlink(path_.c_str());  // gone already when the file has been moved to its target
  leave_place(place_);
  ::close(lock_);
}

fs::path TemporaryFile::open_path() const {
  fs::path open = fmt::format("/proc/self/fd/{}", lock_);
  return ::access(open.c_str(), W_OK) == 0 ? open : path_;
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
