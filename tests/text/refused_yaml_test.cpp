#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "text/tree.hpp"

using namespace seambook;

namespace {

std::string whole_text(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

/// `line message` for each `# error: message` comment.
std::string complaints_wanted(const std::string& text) {
  std::string wanted;
  std::istringstream lines(text);
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    ++number;
    const std::string_view comment = "# error: ";
    if (const std::size_t at = line.find(comment); at != line.npos)
      wanted += std::to_string(number) + " " + line.substr(at + comment.size()) + "\n";
  }
  return wanted;
}

std::string complaints_given(Diagnostics& diagnostics) {
  std::stable_sort(diagnostics.list.begin(), diagnostics.list.end(),
                   [](const Diagnostic& a, const Diagnostic& b) { return a.place < b.place; });
  std::string given;
  for (const Diagnostic& d : diagnostics.list) given += std::to_string(d.place.line) + " " + d.message + "\n";
  return given;
}

}  // namespace

TEST_CASE("each refused text complains on the lines that say so") {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(SEAMBOOK_ROOT "/tests/refused/text"))
    paths.push_back(entry.path());
  std::sort(paths.begin(), paths.end());
  CHECK(paths.size() >= 35);
  for (const auto& path : paths) {
    CAPTURE(path.filename().string());
    const std::string text = whole_text(path);
    Diagnostics diagnostics;
    parse_yaml(diagnostics.add_file(path.filename().string(), text), diagnostics);
    const std::string wanted = complaints_wanted(text);
    CHECK(wanted != "");
    CHECK(complaints_given(diagnostics) == wanted);
    for (const Diagnostic& d : diagnostics.list) CHECK(d.hint != "");
  }
}
