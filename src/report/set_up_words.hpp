// Set-ups in words: the tasks a change calls, and how an order's set-ups stand against the bound and the order in the
// files.
#pragma once

#include <string>

#include "sequence/sequence.hpp"

namespace seambook {

struct SetUpTotals {
  Time<> change{}, bound{}, file_order{};
  bool proved = true, file_order_allowed = true;
};
SetUpTotals set_up_totals(const Sequence&);
/// Of several stations together.
SetUpTotals operator+(const SetUpTotals&, const SetUpTotals&);
/// `set-ups 41.0 min; no order takes less (proved); the order in the files takes 77.0 min`.
std::string set_up_verdict(const SetUpTotals&);
/// `swap the gas, purge the gas line`.
std::string task_words(const SetupModel&, const Change&);

}  // namespace seambook
