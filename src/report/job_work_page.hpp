// The page of work for the job as a whole: once, or for each lot; what waits is shown and not charged.
#pragma once

#include "report/cells.hpp"

namespace seambook {

inline constexpr const char* job_work_sheet = "Job work";

struct JobWorkPage {
  Sheet sheet;
  std::uint32_t first_row = 0, last_row = 0;  // last < first when the job has none: then the sheet is left out
};

JobWorkPage job_work_page(const RateBook&, const Job&, const SharedCells&);
/// Labour of the lines paid so: `SUMIF('Job work'!B5:B9,"once",'Job work'!G5:G9)`; empty when there are none.
std::string job_work_labour(const JobWorkPage&, bool once);
/// Attended minutes of an order, once and for its lot; empty when there are none.
std::string job_work_minutes(const JobWorkPage&);

}  // namespace seambook
