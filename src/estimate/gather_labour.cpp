// The labour of joints and weldments from the rate book: minutes, elements, grade, labour method.
#include "estimate/gather_labour.hpp"

namespace seambook {
namespace {

/// Thinner members get their tacks closer together.
Known<dim::length> tack_pitch_for(const Process& process, const Joint& joint) {
  const double thinner = least(joint.thickness.si.value, joint.thickness_second.si.value);
  return thinner < process.thin_below.si ? process.tack_pitch_thin : process.tack_pitch;
}

/// A finish may have less to do after one process than after another.
Known<dim::pace> finish_pace_for(const RateBook& book, const Joint& joint) {
  const Finish& finish = book.finishes[joint.finish];
  const std::size_t process = book.procedures[joint.passes.front().procedure].process;
  for (const FinishAfter& after : finish.after)
    if (after.process == process) return after.time;
  return finish.time;
}

const Process& process_of_group(const RateBook& book, const PassGroup& group) {
  return book.processes[book.procedures[group.procedure].process];
}

ElementTerm<Sourced> term_of(const RateBook& book, const LabourElement& element) {
  ElementTerm<Sourced> term;
  if (element.grade) {
    const Labour& labour = book.labour[*element.grade];
    term.graded = true;
    term.loaded_rate = labour.loaded;
    term.labour_rate = labour.rate;
    term.wage = labour.wage;
    term.burden = labour.burden;
  }
  term.kind = element.kind;
  term.per = element.per;
  term.attended = element.attended;
  term.time = element.time;
  term.pace = element.pace;
  term.mass_pace = element.mass_pace;
  term.share = element.share;
  term.multiple = element.multiple;
  term.has_multiple = element.multiple.si.source != no_source;
  return term;
}

/// Unattended terms wait whatever the method; attended ones are not charged where the factor covers them.
bool is_charged(const RateBook& book, const LabourElement& element) {
  return !element.attended || !book.method.covered(element.kind);
}

std::vector<ElementTerm<Sourced>> joint_terms(const RateBook& book, const Joint& joint) {
  std::vector<ElementTerm<Sourced>> terms;
  for (const std::size_t i : joint.elements) {
    if (!is_charged(book, book.labour_elements[i])) continue;
    ElementTerm<Sourced> term = term_of(book, book.labour_elements[i]);
    term.edges = bevelled_edges(joint.weld);
    for (const Inspection& inspection : joint.inspections) {
      if (inspection.kind != term.kind || inspection.extent.si.source == no_source) continue;
      term.extent = inspection.extent;
      term.has_extent = true;
    }
    terms.push_back(term);
  }
  return terms;
}

}  // namespace

const Labour& labour_of(const RateBook& book, const Joint& joint, const PassGroup& group) {
  return book.labour[joint.grade.value_or(process_of_group(book, group).grade)];
}

LabourShape labour_shape(const RateBook& book, const Joint& joint) {
  const LabourMethod& method = book.method;
  LabourShape shape;
  shape.purge = joint.purge;
  shape.access = joint.access.si.source != no_source;
  shape.fit_up_extra = process_of_group(book, joint.passes.front()).fit_up_extra.si.source != no_source;
  shape.fitted = is_fitted(joint.weld);
  shape.by_factor = method.by_factor;
  shape.fit_up = !method.covered(WorkKind::fit_up);
  shape.tacking = !method.covered(WorkKind::tacking);
  shape.starts = !method.covered(WorkKind::starts);
  shape.interpass = !method.covered(WorkKind::interpass_cleaning);
  shape.finish = !method.covered(WorkKind::finish);
  shape.purging = !method.covered(WorkKind::purging);
  return shape;
}

LabourInputs<Sourced> labour_inputs(const RateBook& book, const Joint& joint) {
  const Process& process = process_of_group(book, joint.passes.front());
  LabourInputs<Sourced> in;
  in.fit_up_per_joint = book.allowances.fit_up_per_joint;
  in.fit_up_per_metre = book.allowances.fit_up_per_metre;
  in.tack_time = process.tack;
  in.tack_pitch = tack_pitch_for(process, joint);
  in.fit_up_extra = process.fit_up_extra;
  in.finish_pace = finish_pace_for(book, joint);
  if (joint.purge) in.purge_per_joint = book.allowances.purge_per_joint;
  in.access = joint.access;
  in.personal = book.allowances.personal;
  in.terms = joint_terms(book, joint);
  return in;
}

PassLabourInputs<Sourced> pass_labour_inputs(const RateBook& book, const Joint& joint, const PassGroup& group) {
  const Process& process = process_of_group(book, group);
  const Labour& labour = labour_of(book, joint, group);
  return {process.start, process.interpass_cleaning, labour.rate, labour.wage, labour.burden, process.operating_factor};
}

WeldmentRow gather_weldment(const RateBook& book, const Job& job, const Weldment& weldment) {
  // Fitting and turning occupy the station of the weldment's first joint.
  const Joint& joint = job.joints[weldment.first_joint];
  const Labour& labour = labour_of(book, joint, joint.passes.front());
  const BaseMetal& metal = book.base_metals[weldment.base_metal];
  WeldmentRow row;
  row.shape.loaded_rate = labour.loaded;
  row.shape.metal_by_mass = weldment.metal_by_mass;
  row.shape.by_factor = book.method.by_factor;
  row.shape.fit_up = !book.method.covered(WorkKind::fit_up);
  row.shape.turning = !book.method.covered(WorkKind::turning);
  row.inputs.weldments = weldment.count;
  row.inputs.parts = weldment.parts;
  row.inputs.turns = weldment.turns;
  row.inputs.personal = book.allowances.personal;
  row.inputs.fit_up_per_part = book.allowances.fit_up_per_part;
  row.inputs.time_per_turn = book.handling[weldment.handling].turn;
  row.inputs.mass = weldment.mass;
  row.inputs.labour_rate = labour.rate;
  row.inputs.wage = labour.wage;
  row.inputs.burden = labour.burden;
  row.inputs.equipment_rate = process_of_group(book, joint.passes.front()).equipment;
  for (const std::size_t i : weldment.elements)
    if (is_charged(book, book.labour_elements[i])) row.inputs.terms.push_back(term_of(book, book.labour_elements[i]));
  row.shape.valued_free_issue = weldment.free_issue_value.si.source != no_source;
  if (row.shape.valued_free_issue) {
    row.inputs.free_issue_value = weldment.free_issue_value;
    row.inputs.handling_share = book.prices.free_issue_handling;
  }
  if (weldment.metal_by_mass) {
    row.inputs.metal_price = metal.price;
    row.inputs.yield = metal.yield;
  }
  return row;
}

}  // namespace seambook
