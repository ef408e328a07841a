// The pages that hold the estimate behind a quote, together: what gathers from them is given them as one.
#pragma once

#include "report/job_work_page.hpp"
#include "report/joint_pages.hpp"
#include "report/sequence_page.hpp"
#include "report/weldment_page.hpp"

namespace seambook {

struct ShopPages {
  const JointPages& joints;
  const WeldmentPage& weldments;
  const SequencePage& sequence;
  const JobWorkPage& work;
};

/// The sum of a figure's column over the rows of the joints, of the weldments, of the set-ups; empty when no row has
/// the figure.
std::string joint_sum(const ShopPages&, const Figure&);
std::string weldment_sum(const ShopPages&, const Figure&);
std::string setup_sum(const ShopPages&, const Figure&);
/// `a+b` of those that are not empty; `0` when all are.
std::string together(std::initializer_list<std::string> parts);

}  // namespace seambook
