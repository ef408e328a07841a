// A workbook on disk: whole or not at all, never over an existing one unless told so.
#pragma once

#include <filesystem>
#include <optional>
#include <set>

#include "commands/pipeline.hpp"
#include "report/whole_file.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// False, and an error in the batch, when the file exists and --force was not given or the workbook cannot be written.
/// Throws std::system_error when the system refuses.
bool write_workbook(const Arguments&, Batch&, const Workbook&, const std::filesystem::path&);

/// Where a job's workbook goes: `out/bracket-quote.xlsx`. Nothing, and an error, when another job of the batch has
/// taken the name.
std::optional<std::filesystem::path> workbook_path(const Arguments&, Batch&, const Job&, std::string_view ending,
                                                   std::set<std::filesystem::path>& taken);

}  // namespace seambook
