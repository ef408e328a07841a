// Formulas that gather the pages' costs by kind, and the hours behind them.
#pragma once

#include <array>

#include "report/job_work_page.hpp"
#include "report/joint_pages.hpp"
#include "report/sequence_page.hpp"
#include "report/weldment_page.hpp"

namespace seambook {

/// One formula for each kind of cost and scaling; `0` where nothing can arise.
struct CostSums {
  std::array<std::string, cost_kinds> each, lot, once;
};
CostSums cost_sums(const JointPages&, const WeldmentPage&, const SequencePage&, const JobWorkPage&);

/// Hours for a piece and a lot; gives the next free row.
std::uint32_t put_hours(Sheet&, std::uint32_t row, Terms, const Estimate&, const Quote&, const JointPages&,
                        const WeldmentPage&, const SequencePage&);

}  // namespace seambook
