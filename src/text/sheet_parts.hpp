// What a workbook's parts say beside the cells: which sheets there are, where each stands, the strings that cells
// share.
#pragma once

#include <vector>

#include "text/sheet_xml.hpp"

namespace seambook {

struct SheetEntry {
  std::string name, part;
  bool hidden = false;
};

struct WorkbookParts {
  std::vector<SheetEntry> sheets;  // of cells, in the order of their tabs
  std::string strings, styles;     // names of parts; empty when there is none
  bool from_1904 = false;
};

/// Empty `sheets` when the parts are no workbook of this form.
WorkbookParts workbook_parts(const PartFinder&);
/// The strings by their number; nothing when the part cannot be read.
std::optional<std::vector<std::string>> shared_strings(const std::string& part);

}  // namespace seambook
