#include "report/temporary_file.hpp"

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <csignal>
#include <fstream>
#include <iterator>
#include <string>
#include <system_error>
#include <thread>
#include <vector>

#include "report/whole_file.hpp"
#include "scratch_folder.hpp"

using namespace seambook;
namespace fs = std::filesystem;

namespace {}  // namespace

TEST_CASE("threads write different files at once") {
  const ScratchFolder folder;
  std::atomic<int> refused = 0;
  {
    std::vector<std::jthread> threads;
    for (int t = 0; t < 8; ++t)
      threads.emplace_back([&, t] {
        for (int i = 0; i < 50; ++i) {
          const std::string name = std::to_string(t) + "-" + std::to_string(i);
          try {
            write_whole(folder.path / name, Overwrite::no, [&](const fs::path& path) { std::ofstream(path) << name; });
          } catch (const std::system_error&) {
            ++refused;
          }
        }
      });
  }
  CHECK(refused == 0);
  CHECK(std::distance(fs::directory_iterator(folder.path), fs::directory_iterator()) == 400);
  for (const auto& entry : fs::directory_iterator(folder.path))
    CHECK(content_of(entry.path()) == entry.path().filename().string());
}

TEST_CASE("a signal while threads write leaves whole files only") {
  for (int round = 0; round < 20; ++round) {
    CAPTURE(round);
    const ScratchFolder folder;
    int ready[2];
    REQUIRE(::pipe(ready) == 0);
    const pid_t child = ::fork();
    if (child == 0) {
      std::signal(SIGTERM, SIG_DFL);
      const auto write_some = [&](int t, int i) {
        write_whole(folder.path / (std::to_string(t) + "-" + std::to_string(i)), Overwrite::no,
                    [&](const fs::path& path) {
                      std::ofstream(path) << "wh" << std::flush << "ole";
                      if (i == 3 && ::write(ready[1], "x", 1) != 1) ::_exit(2);
                    });
      };
      const auto write_on = [&](int t) {
        try {
          for (int i = 0;; ++i) write_some(t, i);
        } catch (const std::system_error&) {
          ::_exit(3);
        }
      };
      const std::jthread others[] = {std::jthread(write_on, 1), std::jthread(write_on, 2), std::jthread(write_on, 3)};
      write_on(0);
    }
    char mark = 0;
    REQUIRE(::read(ready[0], &mark, 1) == 1);
    REQUIRE(::kill(child, SIGTERM) == 0);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status));
    CHECK(WTERMSIG(status) == SIGTERM);
    for (const auto& entry : fs::directory_iterator(folder.path)) {
      CHECK(!entry.path().filename().string().starts_with('.'));
      CHECK(content_of(entry.path()) == "whole");
    }
    ::close(ready[0]);
    ::close(ready[1]);
  }
}
