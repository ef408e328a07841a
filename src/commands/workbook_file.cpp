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

}  // namespace seambook
