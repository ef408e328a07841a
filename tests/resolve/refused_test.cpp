#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

#include "../estimate/shop_files.hpp"
#include "../read/complaints.hpp"

using namespace seambook;

namespace {

/// `line level message` for each comment `# error: ...` or `# warning: ...`, in the order of lines.
std::string wanted_of(const std::string& text) {
  std::string wanted;
  std::istringstream lines(text);
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    ++number;
    std::size_t at = line.find("  # ");
    while (at != line.npos) {
      const std::size_t end = line.find("  # ", at + 1);
      wanted += std::to_string(number) + " " + line.substr(at + 4, end == line.npos ? end : end - at - 4) + "\n";
      at = end;
    }
  }
  return wanted;
}

std::string given_of(Diagnostics diagnostics) {
  std::stable_sort(diagnostics.list.begin(), diagnostics.list.end(),
                   [](const Diagnostic& a, const Diagnostic& b) { return a.place < b.place; });
  std::string given;
  for (const Diagnostic& d : diagnostics.list)
    given += std::to_string(d.place.line) + " " + level_word(d.level) + ": " + d.message +
             (d.hint.empty() ? "" : "; " + d.hint) + "\n";
  return given;
}

}  // namespace

TEST_CASE("each job that cannot be resolved complains on the lines that say so") {
  const auto paths = files_under_tests("refused/resolve");
  CHECK(paths.size() >= 11);
  for (const auto& path : paths) {
    CAPTURE(path.filename().string());
    const std::string text = whole_file_text(path);
    const test::LoadedJob loaded = test::load_text(text, test::plain_rate_texts());
    const std::string wanted = wanted_of(text);
    CHECK(wanted != "");
    CHECK(given_of(loaded.diagnostics) == wanted);
    CHECK(loaded.job.has_value() == (wanted.find(" error: ") == wanted.npos));
  }
}
