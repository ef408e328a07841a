#include "commands/files.hpp"

#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>
#include <system_error>

#include "commands/rates.hpp"
#include "text/tree.hpp"

using namespace seambook;
namespace fs = std::filesystem;

namespace {

/// A folder of its own that goes away with the test.
class Scratch {
 public:
  Scratch() : path_(fs::temp_directory_path() / ("seambook-files-test-" + std::to_string(::getpid()))) {
    fs::remove_all(path_);
    fs::create_directories(path_);
  }
  ~Scratch() { fs::remove_all(path_); }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;

  std::string write(const std::string& name, const std::string& text) const {
    fs::create_directories((path_ / name).parent_path());
    std::ofstream(path_ / name) << text;
    return (path_ / name).string();
  }
  const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

}  // namespace

TEST_CASE("a file is read whole") {
  const Scratch scratch;
  const FileText read = read_file(scratch.write("a.yaml", std::string("x\0y\n", 4)));
  CHECK(read.refusal == "");
  CHECK(read.text == std::string("x\0y\n", 4));
  CHECK(read_file(scratch.write("empty", "")).text == "");
}

TEST_CASE("folders and special files and large files are refused") {
  const Scratch scratch;
  CHECK(read_file(scratch.path().string()).refusal == "is a folder, not a file");
  CHECK(read_file("/dev/zero").refusal == "is no ordinary file");
  const std::string pipe = (scratch.path() / "pipe").string();
  REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
  CHECK(read_file(pipe).refusal == "is no ordinary file");
  const std::string large = scratch.write("large", "");
  fs::resize_file(large, limit::file_bytes);
  CHECK(read_file(large).text.size() == limit::file_bytes);
  fs::resize_file(large, limit::file_bytes + 1);
  CHECK(read_file(large).refusal == "is larger than 16 MiB");
}

TEST_CASE("a file that is not there is the system's refusal") {
  const Scratch scratch;
  CHECK_THROWS_AS(read_file((scratch.path() / "none").string()), std::system_error);
}

TEST_CASE("take-offs are found below the job's folder only") {
  const Scratch scratch;
  const std::string job = scratch.write("jobs/a.yaml", "");
  scratch.write("jobs/joints.csv", "id\n");
  scratch.write("jobs/lists/b.csv", "weld\n");
  const std::string outside = scratch.write("secret.csv", "x\n");
  const FileFinder find = files_beside(job);
  CHECK(find("joints.csv") == "id\n");
  CHECK(find("lists/b.csv") == "weld\n");
  CHECK(!find("../secret.csv"));
  CHECK(!find("lists/../../secret.csv"));
  CHECK(!find(outside));
  CHECK(!find("none.csv"));
  CHECK(!find("lists"));
  CHECK(!find(""));
}

TEST_CASE("the nearest folder of rates above the job is taken") {
  const Scratch scratch;
  const fs::path folder = scratch.path() / "shop" / "jobs" / "may";
  fs::create_directories(folder);
  const auto found = [&] { return find_rates(rate_folders(std::nullopt, folder)); };
  scratch.write("rates/a.yaml", "");
  CHECK(found() == scratch.path() / "rates");
  scratch.write("shop/rates/a.yaml", "");
  CHECK(found() == scratch.path() / "shop" / "rates");
  scratch.write("shop/jobs/may/rates/notes.txt", "");  // no rate book in it
  CHECK(found() == scratch.path() / "shop" / "rates");
  scratch.write("shop/jobs/may/rates/a.yaml", "");
  CHECK(found() == folder / "rates");
}

TEST_CASE("a folder that is named is the only one looked at") {
  const Scratch scratch;
  scratch.write("rates/a.yaml", "");
  const auto folders = rate_folders((scratch.path() / "mine").string(), scratch.path());
  CHECK(folders == std::vector<fs::path>{scratch.path() / "mine"});
  CHECK(!find_rates(folders));
}

TEST_CASE("rate files come in the order of their names and their bytes and names make the hash") {
  const Scratch scratch;
  scratch.write("rates/b.yaml", "format: 1\n");
  scratch.write("rates/a.yaml", "format: 1\n");
  scratch.write("rates/.hidden.yaml", "");
  scratch.write("rates/notes.md", "");
  const fs::path folder = scratch.path() / "rates";
  CHECK(rate_files(folder) == std::vector<fs::path>{folder / "a.yaml", folder / "b.yaml"});
  const auto hash = [&] {
    Diagnostics diagnostics;
    return load_rates(folder, diagnostics).hash;
  };
  const std::string first = hash();
  CHECK(first.size() == 16);
  CHECK(hash() == first);
  scratch.write("rates/notes.md", "a note changes no rate\n");
  CHECK(hash() == first);
  scratch.write("rates/b.yaml", "format: 1\n\n");
  const std::string second = hash();
  CHECK(second != first);
  fs::rename(folder / "b.yaml", folder / "c.yaml");
  CHECK(hash() != second);
}
