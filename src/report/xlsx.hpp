// A Workbook value as an .xlsx file. Only the xlsx*.cpp files know the spreadsheet library.
#pragma once

#include <filesystem>

#include "report/workbook.hpp"

namespace seambook {

/// Writes the workbook to `path` (plainly, over what is there; callers go through report/whole_file.hpp). Its parts are
/// assembled in `folder`. The same workbook gives the same bytes. A header or footer beyond what the format grants is
/// cut and ends in `…`. Threads may write different workbooks. Throws std::invalid_argument when the value is not
/// writable (NaN, bad UTF-8, illegal names, over-long formula or text, cell given twice) and std::system_error when the
/// system refuses.
void write_xlsx(const Workbook&, const std::filesystem::path& path, const std::filesystem::path& folder);
/// Its parts beside the result.
inline void write_xlsx(const Workbook& workbook, const std::filesystem::path& path) {
  write_xlsx(workbook, path, path.parent_path());
}

}  // namespace seambook
