#include <fmt/format.h>

#include <algorithm>

#include "estimate/like_rows.hpp"
#include "quote/job_work.hpp"
#include "quote/lift.hpp"
#include "quote/quote.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Sources of the inputs on a tape that some operation reads.
void collect(const Tape& tape, std::vector<SourceId>& out) {
  const std::vector<bool> read = read_nodes(tape);
  for (std::size_t i = 0; i < tape.nodes.size(); ++i) {
    const TapeNode& node = tape.nodes[i];
    if (node.op != Op::input || !read[i]) continue;
    const SourceId source = tape.labels[node.label].source;
    if (source < first_job_source) out.push_back(source);
  }
}

void sort_unique(std::vector<SourceId>& ids) {
  std::sort(ids.begin(), ids.end());
  ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
}

void collect_weldments(const RateBook& book, const Job& job, std::vector<SourceId>& out) {
  Tape tape;
  for (const Weldment& weldment : job.weldments) {
    tape.clear();
    const WeldmentRow row = gather_weldment(book, job, weldment);
    weldment_figures(row.shape, lift_weldment<Traced>(row.inputs, 0, &tape), 0);
    collect(tape, out);
  }
  for (const JobWork& work : job.work) {
    tape.clear();
    job_work_figures(lift_job_work<Traced>(gather_job_work(book, work), 0, &tape), 0);
    collect(tape, out);
  }
}

std::string method_in_words(const LabourMethod& method) {
  if (!method.by_factor)
    return "Labour is by elements: every attended minute is itemised, then the personal allowance added; no operating "
           "factor is used.";
  return fmt::format(
      "Labour is by operating factor: floor time is arc time over the factor, which is {}. The factor covers {}, rest "
      "and delays; what it does not cover is stated in minutes beside it.",
      method.definition, method.covers);
}

}  // namespace

std::vector<SourceId> joint_sources(const RateBook& book, const Job& job) {
  std::vector<SourceId> all, out;
  for (SourceId id = 0; id < book.sources.size(); ++id) all.push_back(id);
  Tape tape;
  for (const LikeRows& like : like_rows(book, job, all)) {  // joints of a kind read the same
    tape.clear();
    row_figures(lift_row<Traced>(like.row, &tape));
    collect(tape, out);
  }
  sort_unique(out);
  return out;
}

std::vector<std::string> basis_lines(const RateBook& book, const std::vector<SourceId>& used) {
  std::vector<std::string> out;
  for (const SourceId id : used) {
    const RateSource& source = book.sources[id];
    std::string line = fmt::format("{}: {} ({})", source.entry, basis_in_words(source.basis), source.words);
    if (std::find(out.begin(), out.end(), line) == out.end()) out.push_back(std::move(line));
  }
  return out;
}

std::vector<SourceId> used_sources(const RateBook& book, const Job& job, const std::vector<SetupRow>& setups) {
  std::vector<SourceId> out = joint_sources(book, job);
  collect_weldments(book, job, out);
  Tape tape;
  for (const SetupRow& row : setups) {
    setup_figures(lift_setup<Traced>(row.inputs, 0, &tape), 0);
  }
  collect(tape, out);
  tape.clear();
  const QuoteInputs<Traced> policy = lift_quote<Traced>(policy_inputs(book, job), &tape);
  price_figures(policy, cost_figures(policy), number<Traced>(1), 0);
  collect(tape, out);
  const OrderTerms<Sourced> order = policy_inputs(book, job).order;
  if (order.unit_model)  // its share is computed, so no record reads them
    for (const Ratio<Sourced>& of : {order.learning_rate, order.learning_holds_at}) out.push_back(of.si.source);
  sort_unique(out);
  if (!out.empty() && out.front() == no_source) out.erase(out.begin());
  return out;
}

std::vector<std::string> assumptions(const RateBook& book, const Job& job) {
  std::vector<std::string> out = job.assumptions;
  const std::vector<std::string> lines = basis_lines(book, used_sources(book, job, {}));
  out.insert(out.end(), lines.begin(), lines.end());
  if (!book.allowances.personal_covers.empty()) {
    out.push_back("The personal allowance covers: " + book.allowances.personal_covers + ".");
  }
  out.push_back(method_in_words(book.method));
  out.emplace_back(
      "Set-ups are those of this job alone, from the station's stated state, once a lot; their times hold their own "
      "rest.");
  for (std::string& line : policy_in_words(book, job)) out.push_back(std::move(line));
  return out;
}

}  // namespace seambook
