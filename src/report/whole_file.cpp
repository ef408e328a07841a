#include "report/whole_file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <clocale>
#include <cstdio>
#include <cwctype>
#include <optional>
#include <system_error>

#include "basics/utf8.hpp"
#include "report/temporary_file.hpp"

namespace seambook {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse_with(int code, const std::string& what) {
  throw std::system_error(code, std::generic_category(), what);
}

std::optional<mode_t> old_permissions(const fs::path& target, Overwrite overwrite) {
  struct stat found {};
  if (::lstat(target.c_str(), &found) != 0) {
    if (errno == ENOENT) return std::nullopt;
    refuse_with(errno, target.string());
  }
  if (overwrite == Overwrite::no) refuse_with(EEXIST, target.string());
  if (S_ISDIR(found.st_mode)) refuse_with(EISDIR, target.string());
  if (S_ISLNK(found.st_mode)) return std::nullopt;
  if (!S_ISREG(found.st_mode)) refuse_with(EPERM, target.string() + " is no ordinary file");
  return found.st_mode & 0777U;
}

void flush_file(const fs::path& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
  if (file < 0) refuse_with(errno, path.string());
  const int code = ::fsync(file) == 0 ? 0 : errno;
  ::close(file);
  if (code != 0) refuse_with(code, path.string());
}

// The new name in the folder must survive a power cut too. Some file systems cannot flush a folder and say EINVAL.
void flush_folder(const fs::path& folder) {
  const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0) return;  // a folder that may be written but not listed
  const int code = ::fsync(file) == 0 ? 0 : errno;
  ::close(file);
  if (code != 0 && code != EINVAL) refuse_with(code, folder.string());
}

// Fails when the target has appeared meanwhile, so that two runs do not overwrite each other unasked.
void move_to_free_name(const fs::path& from, const fs::path& target) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE) == 0) return;
  if (errno != EINVAL && errno != ENOSYS) refuse_with(errno, target.string());
  // A file system without that flag: a second name never replaces an existing one.
  if (::link(from.c_str(), target.c_str()) != 0) refuse_with(errno, target.string());
  ::unlink(from.c_str());
}

bool kept_in_file_name(char32_t code) {
  if (code < 0x80) {
    return (code >= '0' && code <= '9') || (code >= 'A' && code <= 'Z') || (code >= 'a' && code <= 'z') ||
           code == '-' || code == '_' || code == '.';
  }
  // Letters of other scripts stay; signs, spaces and invisible characters do not.
  const bool sign = code < 0xC0 || code == 0xD7 || code == 0xF7 || (code >= 0x2000 && code <= 0x2BFF) ||
                    (code >= 0x3000 && code <= 0x3004) || (code >= 0xE000 && code <= 0xF8FF) || code == 0xFEFF ||
                    (code >= 0xFFF0 && code <= 0xFFFF) || code >= 0xE0000;
  return !sign;
}

}  // namespace

void write_whole(const fs::path& target, Overwrite overwrite, const std::function<void(const fs::path&)>& write) {
  const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
  if (!target.has_filename()) refuse_with(EISDIR, target.string());
  const auto permissions = old_permissions(target, overwrite);
  fs::create_directories(folder);
  const TemporaryFile temporary(folder);
  try {
    write(temporary.open_path());
  } catch (const std::system_error& fault) {
    throw std::system_error(fault.code(), target.string());  // people know the target, not the temporary
  }
  if (permissions && ::chmod(temporary.path().c_str(), *permissions) != 0) refuse_with(errno, target.string());
  flush_file(temporary.path());
  if (overwrite == Overwrite::no) {
    move_to_free_name(temporary.path(), target);
  } else if (::rename(temporary.path().c_str(), target.c_str()) != 0) {
    refuse_with(errno, target.string());
  }
  flush_folder(folder);
}

std::string safe_file_name(std::string_view job) {
  constexpr std::size_t longest = 100;
  std::string name;
  while (!job.empty()) {
    const Character next = character_at(job, 0);
    const bool keep = next.valid && kept_in_file_name(next.code);
    const std::string_view piece = keep ? job.substr(0, next.bytes) : "-";
    if (name.size() + piece.size() > longest) break;
    // One dash for a run of unusable characters; a leading dot would hide the file, a leading dash make it an option.
    const bool drop = (!keep && name.ends_with('-')) || (name.empty() && (piece == "." || piece == "-"));
    if (!drop) name += piece;
    job.remove_prefix(next.bytes);
  }
  name.erase(name.find_last_not_of("-.") + 1);
  return name.empty() ? "job" : name;
}

std::u32string folded_file_name(std::string_view name) {
  // Letters of all scripts, whatever the locale that the program runs in.
  const locale_t unicode = ::newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr);
  std::u32string folded;
  while (!name.empty()) {
    const Character next = character_at(name, 0);
    name.remove_prefix(next.bytes);
    auto letter = static_cast<wint_t>(next.code);
    // By way of the capital: two small letters may share one.
    if (unicode != nullptr) letter = ::towlower_l(::towupper_l(letter, unicode), unicode);
    folded += static_cast<char32_t>(letter);
  }
  if (unicode != nullptr) ::freelocale(unicode);
  return folded;
}

}  // namespace seambook
