// A take-off: joints as rows of a comma-separated file whose headings are the keys of a joint.
// What it reads to is what the same joints written in the job file read to; empty fields say nothing.
#pragma once

#include "read/job_text.hpp"
#include "read/values.hpp"

namespace seambook {

/// The joints of a registered file. `thickness` may hold `3 mm / 10 mm`; `after` holds names parted by blanks.
std::vector<JointText> read_takeoff(Reading& reading, std::uint32_t file);

}  // namespace seambook
