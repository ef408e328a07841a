// The pages behind an option's price: the same as a job's, under names of their own, so that no sum of the job can
// reach them. What the option leaves out of the job is taken off its costs by reference to the job's pages.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

/// The job's own side, to which an option refers.
struct JobPages {
  const RateBook& book;
  const Job& job;
  const CostPage& cost;
  const ShopPages& pages;
};

struct OptionPages {
  CostPage cost;              // its sheet is the first of `sheets`
  std::vector<Sheet> sheets;  // `Option 1 Cost`, `Option 1 Joints` ...
};
/// Pages of Job::options[`option`]; `rates` are the cells of the rate book.
OptionPages option_pages(const JobPages&, const PricedOption&, std::size_t option, const SharedCells& rates);

/// The formula with its references to the sheets named first pointing to those named second; texts in it are left.
std::string with_sheets_renamed(const std::string& formula, const std::map<std::string, std::string>& names);

}  // namespace seambook
