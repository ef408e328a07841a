// From job and rate book to the inputs of what passes lay and use up.
#include <algorithm>

#include "estimate/pass_inputs.hpp"

namespace seambook {
namespace {

template <Dim D>
bool has_source(const Known<D>& known) {
  return known.si.source != no_source;
}

const Procedure& procedure_of(const RateBook& book, const PassGroup& group) { return book.procedures[group.procedure]; }

bool with_filler(const RateBook& book, const PassGroup& group) { return procedure_of(book, group).filler.has_value(); }

/// The only filler of a joint lays all of its section, whatever it is called.
bool only_filler(const RateBook& book, const Joint& joint) {
  return std::count_if(joint.passes.begin(), joint.passes.end(),
                       [&](const PassGroup& group) { return with_filler(book, group); }) <= 1;
}

PassCount count_of(const RateBook& book, const Joint& joint, const PassGroup& group) {
  if (group.count) return PassCount::given;
  return group.role == PassRole::back && !only_filler(book, joint) ? PassCount::from_gouge : PassCount::from_section;
}

/// The first limit in the book that is for this process, position and weld: of legs, or of areas.
const PassLimit* limit_of(const RateBook& book, const Joint& joint, const PassGroup& group, bool by_leg) {
  for (const PassLimit& limit : book.pass_limits) {
    if (has_source(limit.leg) != by_leg || (by_leg && joint.weld != WeldKind::fillet)) continue;
    if (limit.process && *limit.process != procedure_of(book, group).process) continue;
    const auto& positions = limit.positions;
    if (positions.empty() || std::find(positions.begin(), positions.end(), joint.position) != positions.end())
      return &limit;
  }
  return nullptr;
}

const Filler* filler_of(const RateBook& book, const PassGroup& group) {
  const auto& filler = procedure_of(book, group).filler;
  return filler ? &book.fillers[*filler] : nullptr;
}

bool wears(const WearPart& part, std::size_t process) {
  return std::find(part.processes.begin(), part.processes.end(), process) != part.processes.end();
}

}  // namespace

GougeShape gouge_shape(const RateBook& book, const Joint& joint) {
  GougeShape shape{has_source(joint.gouge_depth) || joint.own_groove_gouged,
                   book.gouging && has_source(book.gouging->carbons), joint.own_groove_gouged,
                   static_cast<std::uint32_t>(joint.passes.size() - 1)};
  for (std::size_t g = joint.passes.size(); g-- > 0;) {
    if (joint.passes[g].role == PassRole::back) shape.group = static_cast<std::uint32_t>(g);
  }
  return shape;
}

GougeInputs<Sourced> gouge_inputs(const RateBook& book, const Joint& joint) {
  if (!(has_source(joint.gouge_depth) || joint.own_groove_gouged) || !book.gouging) return {};
  return {joint.gouge_depth, joint.gouge_width, book.gouging->time, book.gouging->carbons};
}

MetalShape metal_shape(const RateBook& book, const Joint& joint, const PassGroup& group) {
  const Procedure& procedure = procedure_of(book, group);
  MetalShape shape;
  shape.role = group.role;
  shape.count = count_of(book, joint, group);
  shape.by_rate = has_source(procedure.deposition_rate);
  shape.leg_limited = limit_of(book, joint, group, true) != nullptr;
  shape.area_limited = limit_of(book, joint, group, false) != nullptr;
  shape.flux = procedure.flux.has_value();
  shape.flux_per_wire = shape.flux && book.fluxes[*procedure.flux].per_wire;
  if (const Filler* filler = filler_of(book, group)) {
    shape.tubular = has_source(filler->linear_mass);
    shape.stub = has_source(filler->stub);
    shape.pieces = has_source(filler->piece_mass);
    shape.changes = shape.pieces && has_source(book.processes[procedure.process].electrode_change);
  }
  return shape;
}

MetalInputs<Sourced> metal_inputs(const RateBook& book, const Joint& joint, const PassGroup& group) {
  const Procedure& procedure = procedure_of(book, group);
  MetalInputs<Sourced> in;
  in.deposition_rate = procedure.deposition_rate;
  if (const PassLimit* limit = limit_of(book, joint, group, true)) in.largest_leg = limit->leg;
  if (const PassLimit* limit = limit_of(book, joint, group, false)) in.largest_area = limit->area;
  if (const Filler* filler = filler_of(book, group)) {
    in.linear_mass = filler->linear_mass;
    in.electrode_length = filler->length;
    in.stub = filler->stub;
    in.piece_mass = filler->piece_mass;
    if (has_source(filler->piece_mass)) in.electrode_change = book.processes[procedure.process].electrode_change;
  }
  if (procedure.flux) {
    in.flux_ratio = book.fluxes[*procedure.flux].ratio;
    in.flux_price = book.fluxes[*procedure.flux].price;
  }
  return in;
}

std::vector<WearLife> wear_lives(const RateBook& book, const PassGroup& group) {
  std::vector<WearLife> lives;
  for (const WearPart& part : book.wear_parts) {
    if (!wears(part, procedure_of(book, group).process)) continue;
    lives.push_back(has_source(part.life)          ? WearLife::arc
                    : has_source(part.life_length) ? WearLife::length
                                                   : WearLife::starts);
  }
  return lives;
}

std::vector<WearPartInputs<Sourced>> wear_parts(const RateBook& book, const PassGroup& group) {
  std::vector<WearPartInputs<Sourced>> parts;
  for (const WearPart& part : book.wear_parts) {
    if (wears(part, procedure_of(book, group).process))
      parts.push_back({part.price, part.life, part.life_length, part.life_starts});
  }
  return parts;
}

}  // namespace seambook
