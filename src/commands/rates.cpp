#include "commands/rates.hpp"

#include <algorithm>
#include <cstdlib>

#include "commands/files.hpp"

namespace seambook {
namespace {

namespace fs = std::filesystem;

/// ~/.config/seambook/rates, or the same below $XDG_CONFIG_HOME, which counts only when absolute (XDG Base Directory
/// Specification).
std::optional<fs::path> user_rates() {
  const char* configuration = std::getenv("XDG_CONFIG_HOME");
  if (configuration != nullptr && fs::path(configuration).is_absolute())
    return fs::path(configuration) / "seambook" / "rates";
  const char* home = std::getenv("HOME");
  if (home == nullptr || *home == '\0') return std::nullopt;
  return fs::path(home) / ".config" / "seambook" / "rates";
}

/// What was installed with the program, found from where the program itself stands.
std::optional<fs::path> installed_share() {
  std::error_code unknown;
  const fs::path program = fs::read_symlink("/proc/self/exe", unknown);
  if (unknown) return std::nullopt;
  return (program.parent_path() / SEAMBOOK_SHARE).lexically_normal();
}

/// Short where it can be: a path below the working folder is shown from there.
std::string shown_path(const fs::path& path) {
  if (path.is_relative()) return path.lexically_normal().string();
  const fs::path below = path.lexically_relative(fs::current_path());
  const bool short_way = !below.empty() && *below.begin() != "..";
  return (short_way ? below : path.lexically_normal()).string();
}

}  // namespace

std::vector<fs::path> rate_folders(const std::optional<std::string>& given, const fs::path& folder) {
  if (given) return {*given};
  std::vector<fs::path> folders;
  fs::path at = fs::absolute(folder).lexically_normal();
  if (!at.has_filename()) at = at.parent_path();
  for (;; at = at.parent_path()) {
    folders.push_back(at / "rates");
    if (at == at.parent_path()) break;
  }
  if (const auto user = user_rates()) folders.push_back(*user);
  if (const auto share = installed_share()) folders.push_back(*share / "rates");
  return folders;
}

std::vector<fs::path> rate_files(const fs::path& folder) {
  std::vector<fs::path> files;
  std::error_code unreadable;
  for (const fs::directory_entry& entry : fs::directory_iterator(folder, unreadable)) {
    const std::string name = entry.path().filename().string();
    if (entry.path().extension() == ".yaml" && !name.starts_with('.')) files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::optional<fs::path> find_rates(const std::vector<fs::path>& folders) {
  for (const fs::path& folder : folders) {
    if (!rate_files(folder).empty()) return folder;
  }
  return std::nullopt;
}

ShopRates load_rates(const fs::path& folder, Diagnostics& diagnostics) {
  ShopRates rates{folder, shown_path(folder), {}, {}, {}};
  std::vector<std::uint32_t> files;
  for (const fs::path& path : rate_files(folder)) {
    FileText read = read_file(path.string());
    rates.files.push_back({path.filename().string(), read.text});
    files.push_back(diagnostics.add_file(shown_path(path), std::move(read.text)));
    if (!read.refusal.empty()) diagnostics.error({files.back(), 0, 0}, read.refusal);
  }
  rates.hash = hash_of_rates(rates.files);
  if (diagnostics.has_errors()) return rates;
  rates.book = resolve_rates(read_rates(files, diagnostics), diagnostics);
  return rates;
}

}  // namespace seambook
