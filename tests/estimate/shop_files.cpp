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

std::vector<RateFile> rate_texts(const std::string& folder) {
  std::vector<RateFile> files;
  for (const auto& entry : std::filesystem::directory_iterator(SEAMBOOK_ROOT "/" + folder)) {
    if (entry.path().extension() == ".yaml")
      files.push_back({entry.path().filename().string(), file_text(entry.path().string())});
  }
  std::sort(files.begin(), files.end(), [](const RateFile& a, const RateFile& b) { return a.name < b.name; });
  return files;
}

std::vector<RateFile> plain_rate_texts() {
  std::vector<RateFile> files = rate_texts();
  std::erase_if(files, [](const RateFile& file) { return file.name.starts_with("with-"); });
  return files;
}

std::vector<RateFile> rates_without_policy() {
  std::vector<RateFile> files = rate_texts();
  std::erase_if(files, [](const RateFile& file) { return file.name == "prices.yaml"; });
  for (RateFile& file : files) {
    for (const std::string line : {"  expedite: 30 %\n", "  free_issue_handling: 5 %\n"})
      if (const std::size_t at = file.text.find(line); at != std::string::npos) file.text.erase(at, line.size());
  }
  return files;
}

LoadedJob load_text(const std::string& text, const std::vector<RateFile>& rates) {
  LoadedJob loaded;
  std::vector<std::uint32_t> files;
  for (const RateFile& file : rates) files.push_back(loaded.diagnostics.add_file(file.name, file.text));
  loaded.book = resolve_rates(read_rates(files, loaded.diagnostics), loaded.diagnostics);
  const std::uint32_t file = loaded.diagnostics.add_file("job.yaml", text);
  const FileFinder nothing = [](const std::string&) { return std::optional<std::string>(); };
  const JobText job = read_job(file, nothing, loaded.diagnostics);
  if (loaded.book) loaded.job = resolve_job(job, *loaded.book, loaded.diagnostics);
  return loaded;
}

LoadedJob load_job(const std::string& name) {
  const std::size_t slash = name.find('/');
  const std::string folder = slash == std::string::npos ? "rates" : "jobs/" + name.substr(0, slash) + "/rates";
  return load_text(file_text(SEAMBOOK_ROOT "/jobs/" + name), rate_texts(folder));
}

}  // namespace seambook::test
