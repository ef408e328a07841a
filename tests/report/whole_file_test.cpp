#include "report/whole_file.hpp"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <system_error>

#include "report/temporary_file.hpp"
#include "scratch_folder.hpp"

using namespace seambook;
namespace fs = std::filesystem;

namespace {

auto writes(const char* text) {
  return [text](const fs::path& path) { std::ofstream(path) << text; };
}

std::size_t entries(const fs::path& folder) {
  return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

std::error_code refusal(const fs::path& target, Overwrite overwrite) {
  try {
    write_whole(target, overwrite, writes("x"));
  } catch (const std::system_error& fault) {
    return fault.code();
  }
  return {};
}

mode_t mode_of(const fs::path& path) {
  struct stat found {};
  REQUIRE(::stat(path.c_str(), &found) == 0);
  return found.st_mode & 07777U;
}

}  // namespace

TEST_CASE("a new file appears under its name alone") {
  const ScratchFolder folder;
  const fs::path target = folder.path / "made" / "for it" / "a.txt";
  write_whole(target, Overwrite::no, [&](const fs::path& path) {
    CHECK(!fs::exists(target));
    REQUIRE(entries(target.parent_path()) == 1);
    const fs::path temporary = fs::directory_iterator(target.parent_path())->path();
    CHECK(temporary.filename().native().starts_with(".seambook-"));
    CHECK(fs::equivalent(path, temporary));
    std::ofstream(path) << "whole";
  });
  CHECK(content_of(target) == "whole");
  CHECK(entries(target.parent_path()) == 1);
}

TEST_CASE("permissions follow the umask and then the old file") {
  const ScratchFolder folder;
  const fs::path target = folder.path / "a.txt";
  const mode_t before = ::umask(027);
  write_whole(target, Overwrite::no, writes("x"));
  ::umask(before);
  CHECK(mode_of(target) == 0640);
  REQUIRE(::chmod(target.c_str(), 0604) == 0);
  write_whole(target, Overwrite::yes, writes("y"));
  CHECK(mode_of(target) == 0604);
  CHECK(content_of(target) == "y");
}

TEST_CASE("the old file stays when writing fails") {
  const ScratchFolder folder;
  const fs::path target = folder.path / "a.txt";
  write_whole(target, Overwrite::no, writes("old"));
  const auto breaks = [](const fs::path& path) {
    std::ofstream(path) << "half";
    throw std::runtime_error("broken");
  };
  CHECK_THROWS_WITH_AS(write_whole(target, Overwrite::yes, breaks), "broken", std::runtime_error);
  CHECK(content_of(target) == "old");
  CHECK(entries(folder.path) == 1);
  write_whole(target, Overwrite::yes, writes("new"));
  CHECK(content_of(target) == "new");
}

TEST_CASE("a refusal names the target and not the temporary") {
  const ScratchFolder folder;
  const fs::path target = folder.path / "a.txt";
  const auto full = [](const fs::path& path) {
    throw std::system_error(std::make_error_code(std::errc::no_space_on_device), path.string());
  };
  std::string message;
  try {
    write_whole(target, Overwrite::no, full);
  } catch (const std::system_error& fault) {
    message = fault.what();
    CHECK(fault.code() == std::errc::no_space_on_device);
  }
  CHECK(message.find(target.string()) == 0);
  CHECK(message.find(".seambook-") == std::string::npos);
  CHECK(entries(folder.path) == 0);
}

TEST_CASE("nothing is overwritten unasked") {
  const ScratchFolder folder;
  const fs::path target = folder.path / "a.txt";
  write_whole(target, Overwrite::no, writes("old"));
  bool called = false;
  CHECK_THROWS_AS(write_whole(target, Overwrite::no, [&](const fs::path&) { called = true; }), std::system_error);
  CHECK(!called);
  CHECK(refusal(target, Overwrite::no) == std::errc::file_exists);
  // Another run finishes first: its file stays.
  const fs::path late = folder.path / "b.txt";
  const auto overtaken = [&](const fs::path& path) {
    std::ofstream(path) << "mine";
    std::ofstream(late) << "theirs";
  };
  CHECK_THROWS_AS(write_whole(late, Overwrite::no, overtaken), std::system_error);
  CHECK(content_of(late) == "theirs");
  CHECK(entries(folder.path) == 2);
}

TEST_CASE("a symbolic link is replaced and what it names is left alone") {
  const ScratchFolder folder;
  const fs::path other = folder.path / "other.txt", link = folder.path / "link.txt";
  std::ofstream(other) << "precious";
  fs::create_symlink(other, link);
  CHECK(refusal(link, Overwrite::no) == std::errc::file_exists);
  write_whole(link, Overwrite::yes, writes("new"));
  CHECK(!fs::is_symlink(link));
  CHECK(content_of(link) == "new");
  CHECK(content_of(other) == "precious");
}

TEST_CASE("targets that cannot be written are refused with the reason") {
  const ScratchFolder folder;
  fs::create_directory(folder.path / "folder");
  CHECK(refusal(folder.path / "folder", Overwrite::yes) == std::errc::is_a_directory);
  std::ofstream(folder.path / "file") << "x";
  CHECK(refusal(folder.path / "file" / "a.txt", Overwrite::yes) == std::errc::not_a_directory);
  CHECK(refusal("/proc/seambook.txt", Overwrite::no) == std::errc::no_such_file_or_directory);
  REQUIRE(::mkfifo((folder.path / "pipe").c_str(), 0600) == 0);
  CHECK(refusal(folder.path / "pipe", Overwrite::yes) == std::errc::operation_not_permitted);
  CHECK(entries(folder.path) == 3);
}

TEST_CASE("a folder without the right to write is refused") {
  const ScratchFolder folder;
  const fs::path closed = folder.path / "closed";
  fs::create_directory(closed);
  REQUIRE(::chmod(closed.c_str(), 0555) == 0);
  const pid_t child = ::fork();
  if (child == 0) {
    // The superuser may write anywhere, so the attempt is made as somebody else.
    const bool other = ::geteuid() != 0 || (::chmod(folder.path.c_str(), 0755) == 0 && ::seteuid(65534) == 0);
    const bool denied = refusal(closed / "a.txt", Overwrite::no) == std::errc::permission_denied;
    ::_exit(other && denied ? 0 : 1);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  CHECK(status == 0);
  CHECK(entries(closed) == 0);
}

TEST_CASE("a signal in the middle of writing leaves the old file and nothing else") {
  for (const int number : {SIGTERM, SIGINT, SIGHUP}) {
    CAPTURE(number);
    const ScratchFolder folder;
    const fs::path target = folder.path / "a.txt";
    write_whole(target, Overwrite::no, writes("old"));
    int ready[2];
    REQUIRE(::pipe(ready) == 0);
    const pid_t child = ::fork();
    if (child == 0) {
      std::signal(number, SIG_DFL);  // the test may run under nohup
      write_whole(target, Overwrite::yes, [&](const fs::path& path) {
        std::ofstream(path) << "half";
        if (::write(ready[1], "x", 1) != 1) ::_exit(2);
        ::sleep(30);
      });
      ::_exit(3);
    }
    char mark = 0;
    REQUIRE(::read(ready[0], &mark, 1) == 1);
    CHECK(entries(folder.path) == 2);
    REQUIRE(::kill(child, number) == 0);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status));
    CHECK(WTERMSIG(status) == number);
    CHECK(content_of(target) == "old");
    CHECK(entries(folder.path) == 1);
    ::close(ready[0]);
    ::close(ready[1]);
  }
}

TEST_CASE("signals are as before when the file is written") {
  const ScratchFolder folder;
  struct sigaction before {
  }, now{}, standard{};
  standard.sa_handler = SIG_DFL;
  REQUIRE(::sigaction(SIGTERM, &standard, &before) == 0);
  write_whole(folder.path / "a.txt", Overwrite::no, [&](const fs::path& path) {
    std::ofstream(path) << "x";
    REQUIRE(::sigaction(SIGTERM, nullptr, &now) == 0);
    CHECK((now.sa_handler != SIG_DFL));
  });
  REQUIRE(::sigaction(SIGTERM, &before, &now) == 0);
  CHECK((now.sa_handler == SIG_DFL));
}

TEST_CASE("temporaries of dead runs are swept and those of living runs are not") {
  const ScratchFolder folder;
  const fs::path dead = folder.path / ".seambook-1-1", living = folder.path / ".seambook-1-2",
                 foreign = folder.path / ".seambook-notes", link = folder.path / ".seambook-1-3";
  for (const fs::path& path : {dead, living, foreign}) std::ofstream(path) << "x";
  fs::create_symlink(foreign, link);
  const int lock = ::open(living.c_str(), O_RDONLY | O_CLOEXEC);
  REQUIRE(::flock(lock, LOCK_EX | LOCK_NB) == 0);
  sweep_temporaries(folder.path);
  CHECK(!fs::exists(dead));
  CHECK(fs::exists(living));
  CHECK(fs::exists(foreign));
  CHECK(fs::is_symlink(link));
  ::close(lock);
}

TEST_CASE("names that differ in upper and lower case only are one when folded") {
  CHECK(folded_file_name("Träger-A") == folded_file_name("TRÄGER-a"));
  CHECK(folded_file_name("\u03C3\u03C2") == folded_file_name("\u03A3\u03A3"));  // two small sigmas, one capital
  CHECK(folded_file_name("a-b") != folded_file_name("a_b"));
}

TEST_CASE("job names become file names") {
  const std::string longest(100, 'a');
  const std::pair<std::string, std::string> rows[] = {{"bracket", "bracket"},
                                                      {"Bracket 4711 rev B", "Bracket-4711-rev-B"},
                                                      {"a/b\\c:d", "a-b-c-d"},
                                                      {"../../etc/passwd", "etc-passwd"},
                                                      {"..", "job"},
                                                      {"", "job"},
                                                      {" / ", "job"},
                                                      {"-rf", "rf"},
                                                      {"a\nb\x1B[2J", "a-b-2J"},
                                                      {"Träger 高さ", "Träger-高さ"},
                                                      {"a \u2013 b\u00A0c", "a-b-c"},
                                                      {"x\xFFy", "x-y"},
                                                      {"v1.2_final", "v1.2_final"},
                                                      {"trailing. ", "trailing"},
                                                      {std::string(120, 'a'), longest},
                                                      {std::string(99, 'a') + "ä", std::string(99, 'a')},
                                                      {"~$quote*", "quote"}};
  for (const auto& row : rows) {
    CAPTURE(row.first);
    CHECK(safe_file_name(row.first) == row.second);
  }
}
