#include "commands/workbook_file.hpp"

#include <fmt/format.h>

#include <stdexcept>
#include <system_error>

#include "report/xlsx.hpp"

namespace seambook {

bool write_workbook(const Arguments& arguments, Batch& batch, const Workbook& workbook,
                    const std::filesystem::path& path) {
  try {
    write_whole(path, arguments.force ? Overwrite::yes : Overwrite::no,
                [&](const std::filesystem::path& temporary) { write_xlsx(workbook, temporary); });
    return true;
  } catch (const std::system_error& refused) {
    if (refused.code() != std::errc::file_exists) throw;
    batch.diagnostics.error({}, path.string() + " exists and was left as it is", "--force overwrites it");
  } catch (const std::invalid_argument& unwritable) {  // a text of the author's that no cell can hold
    batch.diagnostics.error({}, fmt::format("{} was not written: {}", path.string(), unwritable.what()));
  }
  return false;
}

std::optional<std::filesystem::path> workbook_path(const Arguments& arguments, Batch& batch, const Job& job,
                                                   std::string_view ending, std::set<std::filesystem::path>& taken) {
  std::filesystem::path path = std::filesystem::path(arguments.out) / (safe_file_name(job.name) + std::string(ending));
  if (taken.insert(path).second) return path;
  batch.diagnostics.error({}, fmt::format("job {}: another job of this run was written to {}", job.name, path.string()),
                          "give the jobs different names, or take them one by one with different --out");
  return std::nullopt;
}

}  // namespace seambook
