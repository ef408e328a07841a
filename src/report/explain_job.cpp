#include "report/explain_job.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "estimate/preheat.hpp"
#include "quote/job_work.hpp"
#include "quote/lift.hpp"
#include "report/number_text.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// `rates/shop.yaml:40:13: allowances, personal (assumption: starting values)`, or the job's line alone.
std::string origin_of(const ExplainedJob& e, SourceId id) {
  if (id == worked_out) return "worked out over the pieces, one by one";
  if (id == summed) return "sum over joints, weldments, set-ups and bought lines";
  if (id >= first_job_source) return where(e.diagnostics, e.job.sources[id - first_job_source].place);
  const RateSource& source = e.book.sources[id];
  return fmt::format("{}: {}, {} ({}{}{})", where(e.diagnostics, source.place), source.entry, source.field,
                     basis_in_words(source.basis), source.words.empty() ? "" : ": ", source.words);
}

WorkingWords words_for(const ExplainedJob& e) {
  return {[&e](SourceId id) { return origin_of(e, id); }, {}, e.book.currency, e.book.terms};
}

/// How the line of a branch came about: no closed formula gives it, so it stands among the inputs.
std::string saddle_in_words(const ExplainedJob& e, const Joint& joint) {
  const auto radius = [&](const Known<dim::length>& diameter) {
    return shown(diameter.si.value / 2, unit::mm, e.book.terms);
  };
  const bool given = joint.path.branch_angle.si.source != no_source;
  return fmt::format(
      "line: the curve in which both tubes meet, once round the branch (t from 0 to 2π), its length summed "
      "numerically; y: r sin t, z: √(R² - y²), x: s cos θ - r cos t sin θ with s: (z - r cos t cos θ)/sin θ; "
      "r {}, R {}, θ {}",
      radius(joint.outside_diameter), radius(joint.path.branch_on),
      given ? shown(joint.path.branch_angle.si.value, unit::degree) : "90°");
}

/// Rows of the quote's costs are their kinds.
std::string kind_in_name(const Label& label) {
  const Figure* figure = label.figure;
  if (figure != &fig::kind_each && figure != &fig::kind_lot && figure != &fig::kind_once)
    return std::to_string(label.row + 1);
  std::string word = cost_kind_words[label.row];
  std::replace(word.begin(), word.end(), ' ', '_');
  std::replace(word.begin(), word.end(), '-', '_');
  return word;
}

/// What method B asks for, or why it is not computed; and what is stated.
std::string preheat_line(const ExplainedJob& e, const Joint& joint, const RowFigures<double>& row) {
  if (!hardens(e.book.base_metals[joint.base_metal].group)) return {};
  const std::string asked = asked_in_words(e.book, asked_preheat(e.book, joint, row));
  const Unit unit = shown_in(e.book.terms, unit::celsius).unit;
  const Sourced& preheat = joint.heat.preheat.si;
  std::string stated = joint.heat.preheat_stated ? "none" : "nothing";
  if (preheat.source != no_source) stated = shown(preheat.value, unit);
  return fmt::format("preheat: {} stated; by method B of EN 1011-2 {}", stated, asked);
}

ExplainedPart explain_weldment(const ExplainedJob& e, const Weldment& weldment) {
  ExplainedPart part{"weldment", weldment.name, "weldment " + weldment.name, {}, {}};
  Tape tape;
  const WeldmentRow row = gather_weldment(e.book, e.job, weldment);
  weldment_figures(row.shape, lift_weldment<Traced>(row.inputs, 0, &tape), 0);
  part.working = working(tape, words_for(e));
  for (const Bought& line : weldment.bought) {
    part.notes.push_back(fmt::format("bought: {}, {} {}, {}", line.what.empty() ? "-" : line.what,
                                     figure(line.price.si.value, e.book.minor_digits), e.book.currency,
                                     origin_of(e, line.price.si.source)));
  }
  return part;
}

ExplainedPart explain_job_work(const ExplainedJob& e, const JobWork& work) {
  Tape tape;
  job_work_figures(lift_job_work<Traced>(gather_job_work(e.book, work), 0, &tape), 0);
  const std::string heading =
      fmt::format("{}, {}{}", work.what, work.once ? "once" : "per lot", work.attended ? "" : ", nobody attends");
  return {"job_work", work.what, heading, {}, working(tape, words_for(e))};
}

ExplainedPart explain_setup(const ExplainedJob& e, const SetupRow& row) {
  const StationWork& work = e.work[row.station];
  const Step& step = work.sequence.steps[row.step];
  const std::string& before = work.problem.operations[step.operation].name;
  ExplainedPart part{"set_up",
                     before,
                     fmt::format("set-up at {} before {}: {}", e.book.stations[work.station].name, before, step.reason),
                     {},
                     {}};
  for (const std::size_t task : step.change.tasks) {
    const ChangeTask& called = work.problem.model.tasks[task];
    part.notes.push_back(fmt::format("{}, because {} changes: {} min", called.name,
                                     work.problem.model.attributes[called.attribute],
                                     figure(called.duration.si / unit::min.si, 1)));
  }
  Tape tape;
  setup_figures(lift_setup<Traced>(row.inputs, 0, &tape), 0);
  part.working = working(tape, words_for(e));
  return part;
}

void explain_price(const ExplainedJob& e, std::vector<ExplainedPart>& out) {
  WorkingWords words = words_for(e);
  words.row = kind_in_name;
  Tape tape;
  const auto inputs = lift_quote<Traced>(e.quote.sourced, &tape);
  const CostFigures<Traced> cost = cost_figures(inputs);
  out.push_back({"cost", "", "cost", {}, working(tape, words)});
  for (const std::int64_t quantity : e.job.quantities) {
    const std::size_t first = tape.nodes.size();
    price_figures(inputs, cost, number<Traced>(static_cast<double>(quantity)), 0);
    out.push_back(
        {"price", std::to_string(quantity), fmt::format("price of {}", quantity), {}, working(tape, words, first)});
  }
}

}  // namespace

ExplainedPart explain_joint(const ExplainedJob& e, std::size_t index) {
  const Joint& joint = e.job.joints[index];
  std::string procedures;
  for (const PassGroup& group : joint.passes) {
    procedures += (procedures.empty() ? "procedure " : ", then ") + e.book.procedures[group.procedure].name;
    if (joint.passes.size() > 1) procedures += fmt::format(" ({})", role_word(group.role));
  }
  ExplainedPart part{"joint", e.job.weldments[joint.weldment].name + "/" + joint.id, {}, {}, {}};
  part.heading = fmt::format("joint {}: {}, position {}, {}", part.name, weld_in_words(joint),
                             position_word(joint.position, joint.weld, e.book.terms), procedures);
  if (!joint.choice.words.empty()) part.notes.push_back("procedure: " + joint.choice.words);
  if (joint.path.branch_on.si.source != no_source) part.notes.push_back(saddle_in_words(e, joint));
  if (e.book.method.by_factor)
    part.notes.push_back(fmt::format("labour by operating factor, which is {}; it covers {}", e.book.method.definition,
                                     e.book.method.covers));
  const RowFigures<double>& row = e.estimate.joints[index];
  if (std::string line = preheat_line(e, joint, row); !line.empty()) part.notes.push_back(std::move(line));
  Tape tape;
  row_figures(lift_row<Traced>(gather_row(e.book, e.job, joint), &tape));
  WorkingWords words = words_for(e);
  words.left_out = [&](const Label& label) {
    return label.figure == &fig::preheat_asked && !method_b_lacks(e.book, joint, row, label.row).empty();
  };
  part.working = working(tape, words);
  return part;
}

std::vector<ExplainedPart> explain_all(const ExplainedJob& e) {
  std::vector<ExplainedPart> out;
  for (const Weldment& weldment : e.job.weldments) {
    for (std::size_t j = 0; j < weldment.joint_count; ++j) out.push_back(explain_joint(e, weldment.first_joint + j));
    out.push_back(explain_weldment(e, weldment));
  }
  for (const JobWork& work : e.job.work) out.push_back(explain_job_work(e, work));
  for (const SetupRow& row : e.quote.setups) out.push_back(explain_setup(e, row));
  explain_price(e, out);
  return out;
}

std::vector<PriceMover> price_movers(const ExplainedJob& e, std::size_t count) {
  std::vector<PriceMover> out;
  for (const Sensitivity& s : sensitivities(e.book, e.job, e.estimate, e.quote)) {
    if (out.size() == count) break;
    out.push_back({s.words, s.per_percent.si, origin_of(e, s.source)});
  }
  return out;
}

}  // namespace seambook
