#include "report/explain_job.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "basics/utf8.hpp"
#include "estimate/preheat.hpp"
#include "quote/job_work.hpp"
#include "quote/lift.hpp"
#include "report/explain.hpp"
#include "report/number_text.hpp"
#include "report/terminal.hpp"
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

std::string printable_line(std::string_view text) {
  std::string out;
  append_printable(out, text);
  return out + "\n";
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

std::string change_in_words(const ExplainedJob& e, const StationWork& work, const Step& step) {
  std::string out = printable_line(fmt::format("set-up at {} before {}: {}", e.book.stations[work.station].name,
                                               work.problem.operations[step.operation].name, step.reason));
  for (const std::size_t task : step.change.tasks) {
    const ChangeTask& called = work.problem.model.tasks[task];
    out += "  " + printable_line(fmt::format("{}, because {} changes: {} min", called.name,
                                             work.problem.model.attributes[called.attribute],
                                             figure(called.duration.si / unit::min.si, 1)));
  }
  return out;
}

/// What method B asks for, or why it is not computed; and what is stated.
std::string preheat_line(const ExplainedJob& e, const Joint& joint, const RowFigures<double>& row) {
  if (!hardens(e.book.base_metals[joint.base_metal].group)) return {};
  const std::string asked = asked_in_words(e.book, asked_preheat(e.book, joint, row));
  const Unit unit = shown_in(e.book.terms, unit::celsius).unit;
  const Sourced& preheat = joint.heat.preheat.si;
  std::string stated = joint.heat.preheat_stated ? "none" : "nothing";
  if (preheat.source != no_source) stated = shown(preheat.value, unit);
  return "  " + printable_line(fmt::format("preheat: {} stated; by method B of EN 1011-2 {}", stated, asked));
}

}  // namespace

std::string explain_joint(const ExplainedJob& e, std::size_t index) {
  const Joint& joint = e.job.joints[index];
  std::string procedures;
  for (const PassGroup& group : joint.passes) {
    procedures += (procedures.empty() ? "procedure " : ", then ") + e.book.procedures[group.procedure].name;
    if (joint.passes.size() > 1) procedures += fmt::format(" ({})", role_word(group.role));
  }
  std::string out = printable_line(fmt::format("joint {}/{}: {}, position {}, {}", e.job.weldments[joint.weldment].name,
                                               joint.id, weld_in_words(joint),
                                               position_word(joint.position, joint.weld, e.book.terms), procedures));
  if (!joint.choice.words.empty()) out += "  " + printable_line("procedure: " + joint.choice.words);
  if (joint.path.branch_on.si.source != no_source) out += "  " + printable_line(saddle_in_words(e, joint));
  if (e.book.method.by_factor)
    out += "  " + printable_line(fmt::format("labour by operating factor, which is {}; it covers {}",
                                             e.book.method.definition, e.book.method.covers));
  const RowFigures<double>& row = e.estimate.joints[index];
  out += preheat_line(e, joint, row);
  Tape tape;
  row_figures(lift_row<Traced>(gather_row(e.book, e.job, joint), &tape));
  WorkingWords words = words_for(e);
  words.left_out = [&](const Label& label) {
    return label.figure == &fig::preheat_asked && !method_b_lacks(e.book, joint, row, label.row).empty();
  };
  return out + render(working(tape, words));
}

std::string explain_weldment(const ExplainedJob& e, std::size_t index) {
  const Weldment& weldment = e.job.weldments[index];
  Tape tape;
  const WeldmentRow row = gather_weldment(e.book, e.job, weldment);
  weldment_figures(row.shape, lift_weldment<Traced>(row.inputs, 0, &tape), 0);
  std::string out = printable_line(fmt::format("weldment {}", weldment.name)) + render(working(tape, words_for(e)));
  for (const Bought& line : weldment.bought) {
    out += "  " + printable_line(fmt::format("bought: {}, {} {}, {}", line.what.empty() ? "-" : line.what,
                                             figure(line.price.si.value, e.book.minor_digits), e.book.currency,
                                             origin_of(e, line.price.si.source)));
  }
  return out;
}

std::string explain_job_work(const ExplainedJob& e) {
  std::string out;
  for (const JobWork& work : e.job.work) {
    Tape tape;
    job_work_figures(lift_job_work<Traced>(gather_job_work(e.book, work), 0, &tape), 0);
    out += printable_line(fmt::format("{}, {}{}", work.what, work.once ? "once" : "per lot",
                                      work.attended ? "" : ", nobody attends")) +
           render(working(tape, words_for(e))) + "\n";
  }
  return out;
}

std::string explain_setups(const ExplainedJob& e) {
  std::string out;
  for (const SetupRow& row : e.quote.setups) {
    const StationWork& work = e.work[row.station];
    out += change_in_words(e, work, work.sequence.steps[row.step]);
    Tape tape;
    setup_figures(lift_setup<Traced>(row.inputs, 0, &tape), 0);
    out += render(working(tape, words_for(e))) + "\n";
  }
  return out;
}

std::string explain_price(const ExplainedJob& e) {
  WorkingWords words = words_for(e);
  words.row = kind_in_name;
  Tape tape;
  const auto inputs = lift_quote<Traced>(e.quote.sourced, &tape);
  const CostFigures<Traced> cost = cost_figures(inputs);
  std::string out = "cost\n" + render(working(tape, words));
  for (const std::int64_t quantity : e.job.quantities) {
    const std::size_t first = tape.nodes.size();
    price_figures(inputs, cost, number<Traced>(static_cast<double>(quantity)), 0);
    out += fmt::format("\nprice of {}\n", quantity) + render(working(tape, words, first));
  }
  return out;
}

std::string explain_sensitivities(const ExplainedJob& e, std::size_t count) {
  std::vector<Sensitivity> all = sensitivities(e.book, e.job, e.estimate, e.quote);
  all.resize(std::min(all.size(), count));
  TextTable table;
  table.headings = {"what moves the price most", fmt::format("{} for +1 %", e.book.currency), "from"};
  table.right_aligned = {false, true};
  for (const Sensitivity& s : all) table.rows.push_back({s.words, figure(s.per_percent.si, 4), origin_of(e, s.source)});
  return render(table);
}

}  // namespace seambook
