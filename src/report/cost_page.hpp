// The cost page: costs by kind, the price of each quantity step by step, what the price hangs on, what to look at
// again.
#pragma once

#include "report/job_work_page.hpp"
#include "report/joint_pages.hpp"
#include "report/sequence_page.hpp"
#include "report/weldment_page.hpp"

namespace seambook {

inline constexpr const char* cost_sheet = "Cost";

/// Cells that the customer's page shows.
struct CostPage {
  Sheet sheet;
  std::uint16_t first_quantity_column = 1;
  std::uint32_t quantity_row = 0, unit_price_row = 0, pieces_row = 0, one_off_row = 0, total_row = 0;
  std::optional<std::uint32_t> supplement_row;
};

CostPage cost_page(const RateBook&, const Job&, const Estimate&, const Quote&, const JointPages&, const WeldmentPage&,
                   const SequencePage&, const JobWorkPage&, const SharedCells&);

}  // namespace seambook
