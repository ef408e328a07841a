#include "report/set_up_words.hpp"

#include <fmt/format.h>

#include "report/number_text.hpp"

namespace seambook {

SetUpTotals set_up_totals(const Sequence& s) {
  return {s.change_total, s.bound, s.file_order_total, s.proved, s.file_order_allowed};
}

SetUpTotals operator+(const SetUpTotals& a, const SetUpTotals& b) {
  return {a.change + b.change, a.bound + b.bound, a.file_order + b.file_order, a.proved && b.proved,
          a.file_order_allowed && b.file_order_allowed};
}

std::string set_up_verdict(const SetUpTotals& totals) {
  const auto minutes = [](Time<> time) { return figure(time.si / unit::min.si, 1); };
  const std::string best =
      totals.proved ? std::string("no order takes less (proved)")
                    : fmt::format("no order takes less than {} min (not proved best)", minutes(totals.bound));
  return fmt::format("set-ups {} min; {}; the order in the files{} takes {} min", minutes(totals.change), best,
                     totals.file_order_allowed ? "" : ", put right where it breaks 'after',",
                     minutes(totals.file_order));
}

std::string task_words(const SetupModel& model, const Change& change) {
  std::string words;
  for (const std::size_t task : change.tasks) words += (words.empty() ? "" : ", ") + model.tasks[task].name;
  return words;
}

}  // namespace seambook
