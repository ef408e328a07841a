// A workbook on disk: whole or not at all, never over an existing one unless told so.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "commands/pipeline.hpp"
#include "report/whole_file.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// False, and an error in the batch, when the file exists and --force was not given or the workbook cannot be written.
/// Throws std::system_error when the system refuses.
bool write_workbook(const Arguments&, Batch&, const Workbook&, const std::filesystem::path&);

/// What the workbooks of a list will be called, known before the jobs are done: so it does not depend on which is done
/// first, and each shard of a list knows of the other jobs.
struct WorkbookNames {
  std::vector<std::string> names;     // without ending, one for each of Arguments::jobs; empty when unknown
  std::vector<std::size_t> taken_by;  // the first job with that name but for upper and lower case
};

/// Looks for the names in all jobs of the list, also those of other shards. A job alone is not looked at.
WorkbookNames workbook_names(const Arguments&, SharedInputs&);
/// Where a job's workbook goes: `out/bracket-quote.xlsx`. Nothing, and an error, when an earlier job of the list has
/// the name. `at` is the job's place in the list.
std::optional<std::filesystem::path> workbook_path(const Arguments&, Batch&, const Job&, std::size_t at,
                                                   std::string_view ending, const WorkbookNames&);

}  // namespace seambook
