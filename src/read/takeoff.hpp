// A take-off: joints as rows of a table whose headings are the keys of a joint, comma-separated or in a workbook.
// What it reads to is what the same joints written in the job file read to; empty fields say nothing.
#pragma once

#include "read/job_text.hpp"
#include "read/values.hpp"

namespace seambook {

struct Takeoff {
  std::uint32_t file = 0;  // by which its faults are told
  std::vector<JointText> joints;
};

/// The joints in the bytes of a file, which is registered under `name`; of a workbook, those of the named sheet or else
/// of the first that is not hidden. A heading may give a unit to the bare numbers below it: `leg (mm)`. `thickness` may
/// hold `3 mm / 10 mm`; `after` holds names parted by blanks.
Takeoff read_takeoff(Reading& reading, std::string name, std::string text, const Word* sheet);

}  // namespace seambook
