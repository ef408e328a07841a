#include "complaints.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>

namespace seambook {

std::string whole_file_text(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<std::filesystem::path> files_under_tests(const std::string& folder) {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(SEAMBOOK_ROOT "/tests/" + folder))
    paths.push_back(entry.path());
  std::sort(paths.begin(), paths.end());
  return paths;
}

std::string complaints_wanted(const std::string& text) {
  constexpr std::string_view comment = "# error: ";
  std::string wanted;
  std::istringstream lines(text);
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    ++number;
    for (std::size_t at = line.find(comment); at != line.npos;) {
      const std::size_t end = line.find(comment, at + 1);
      std::string message = line.substr(at + comment.size(), end == line.npos ? end : end - at - comment.size());
      while (message.ends_with(' ')) message.pop_back();
      wanted += std::to_string(number) + " " + message + "\n";
      at = end;
    }
  }
  return wanted;
}

std::string complaints_given(Diagnostics diagnostics) {
  std::stable_sort(diagnostics.list.begin(), diagnostics.list.end(),
                   [](const Diagnostic& a, const Diagnostic& b) { return a.place < b.place; });
  std::string given;
  for (const Diagnostic& d : diagnostics.list)
    given += std::to_string(d.place.line) + " " + d.message + (d.hint.empty() ? "" : "; " + d.hint) + "\n";
  return given;
}

}  // namespace seambook
