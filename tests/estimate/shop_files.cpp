#include "shop_files.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace seambook::test {

std::string file_text(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

LoadedJob load_text(const std::string& text) {
  LoadedJob loaded;
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(SEAMBOOK_ROOT "/rates")) {
    if (entry.path().extension() == ".yaml") paths.push_back(entry.path());
  }
  std::sort(paths.begin(), paths.end());
  std::vector<std::uint32_t> files;
  for (const auto& path : paths) {
    files.push_back(loaded.diagnostics.add_file(path.filename().string(), file_text(path.string())));
  }
  loaded.book = resolve_rates(read_rates(files, loaded.diagnostics), loaded.diagnostics);
  const std::uint32_t file = loaded.diagnostics.add_file("job.yaml", text);
  const FileFinder nothing = [](const std::string&) { return std::optional<std::string>(); };
  const JobText job = read_job(file, nothing, loaded.diagnostics);
  if (loaded.book) loaded.job = resolve_job(job, *loaded.book, loaded.diagnostics);
  return loaded;
}

LoadedJob load_job(const std::string& name) { return load_text(file_text(SEAMBOOK_ROOT "/jobs/" + name)); }

}  // namespace seambook::test
