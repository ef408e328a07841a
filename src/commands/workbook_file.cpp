#include "commands/workbook_file.hpp"

#include <fmt/format.h>

#include <map>
#include <stdexcept>
#include <system_error>

#include "report/xlsx.hpp"
#include "text/first_value.hpp"

namespace seambook {
namespace {

std::optional<std::string> name_in(SharedInputs& shared, const std::string& path) {
  try {
    return first_value(read_shared(shared, path).text, "job");
  } catch (const std::system_error&) {
    return std::nullopt;  // said when the job is read
  }
}

}  // namespace

bool write_workbook(const Arguments& arguments, Batch& batch, const Workbook& workbook,
                    const std::filesystem::path& path) {
  try {
    // Not beside the result: the library makes each part under a name and takes the name away at once, and a signal in
    // between would leave it there.
    const std::filesystem::path parts_in = std::filesystem::temp_directory_path();
    write_whole(path, arguments.force ? Overwrite::yes : Overwrite::no,
                [&](const std::filesystem::path& temporary) { write_xlsx(workbook, temporary, parts_in); });
    return true;
  } catch (const std::system_error& refused) {
    if (refused.code() != std::errc::file_exists) throw;
    batch.diagnostics.error({}, path.string() + " exists and was left as it is", "--force overwrites it");
  } catch (const std::invalid_argument& unwritable) {  // a text of the author's that no cell can hold
    batch.diagnostics.error({}, fmt::format("{} was not written: {}", path.string(), unwritable.what()));
  }
  return false;
}

WorkbookNames workbook_names(const Arguments& arguments, SharedInputs& shared) {
  WorkbookNames found{std::vector<std::string>(arguments.jobs.size()), {}};
  std::map<std::u32string, std::size_t> first;
  for (std::size_t at = 0; at < arguments.jobs.size(); ++at) {
    found.taken_by.push_back(at);
    const auto job = arguments.jobs.size() > 1 ? name_in(shared, arguments.jobs[at]) : std::nullopt;
    if (!job) continue;
    found.names[at] = safe_file_name(*job);
    found.taken_by[at] = first.emplace(folded_file_name(found.names[at]), at).first->second;
  }
  return found;
}

std::optional<std::filesystem::path> workbook_path(const Arguments& arguments, Batch& batch, const Job& job,
                                                   std::size_t at, std::string_view ending,
                                                   const WorkbookNames& names) {
  const std::string name = safe_file_name(job.name);
  if (arguments.jobs.size() > 1 && names.names[at] != name) {
    batch.diagnostics.error({}, fmt::format("{}: was changed while it was read", shown_name(arguments.jobs[at])),
                            "run again");
    return std::nullopt;
  }
  std::filesystem::path path = std::filesystem::path(arguments.out) / (name + std::string(ending));
  const std::size_t first = names.taken_by[at];
  if (first == at) return path;
  const std::string other = shown_name(arguments.jobs[first]);
  batch.diagnostics.error({},
                          names.names[first] == name
                              ? fmt::format("job {}: {} goes by the same name to {}", job.name, other, path.string())
                              : fmt::format("job {}: {} goes by the same name, but for upper and lower case, to {}",
                                            job.name, other, path.string()),
                          "give the jobs different names, or take them one by one with different --out");
  return std::nullopt;
}

}  // namespace seambook
