#include "commands/files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "text/tree.hpp"

namespace seambook {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void system_refused(const std::string& name) {
  throw std::system_error(errno, std::generic_category(), name);
}

/// A file descriptor that closes itself; standard input stays open.
class OpenFile {
 public:
  explicit OpenFile(int descriptor) : descriptor_(descriptor) {}
  ~OpenFile() {
    if (descriptor_ > STDERR_FILENO) ::close(descriptor_);
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;
  int descriptor() const { return descriptor_; }

 private:
  int descriptor_;
};

constexpr const char* too_large = "is larger than 16 MiB";

/// Reads up to the cap and one byte, so that a file that grows meanwhile, or a pipe, is bounded too.
FileText read_open(const OpenFile& file, const std::string& name) {
  FileText read;
  char block[64 * 1024];
  while (read.text.size() <= limit::file_bytes) {
    const ssize_t got = ::read(file.descriptor(), block, sizeof block);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) system_refused(name);
    if (got == 0) return read;
    read.text.append(block, static_cast<std::size_t>(got));
  }
  return {{}, too_large};
}

bool stays_below(const fs::path& name) {
  return !name.empty() && name.is_relative() &&
         std::none_of(name.begin(), name.end(), [](const fs::path& part) { return part == ".."; });
}

}  // namespace

FileText read_file(const std::string& path) {
  if (path == "-") return read_open(OpenFile(STDIN_FILENO), shown_name(path));
  // Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
  const OpenFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
  if (file.descriptor() < 0) system_refused(path);
  struct stat found {};
  if (::fstat(file.descriptor(), &found) != 0) system_refused(path);
  if (S_ISDIR(found.st_mode)) return {{}, "is a folder, not a file"};
  if (!S_ISREG(found.st_mode)) return {{}, "is no ordinary file"};
  if (static_cast<std::uint64_t>(found.st_size) > limit::file_bytes) return {{}, too_large};
  return read_open(file, path);
}

std::string shown_name(const std::string& path) { return path == "-" ? "<stdin>" : path; }

fs::path folder_of(const std::string& job) {
  if (job == "-") return ".";
  const fs::path folder = fs::path(job).parent_path();
  return folder.empty() ? "." : folder;
}

FileFinder files_beside(const std::string& job) {
  return [folder = folder_of(job)](const std::string& name) -> std::optional<std::string> {
    const fs::path path = folder / name;
    std::error_code unknown;
    if (!stays_below(name) || !fs::exists(path, unknown)) return std::nullopt;
    FileText read = read_file(path.string());
    if (!read.refusal.empty()) return std::nullopt;
    return std::move(read.text);
  };
}

}  // namespace seambook
