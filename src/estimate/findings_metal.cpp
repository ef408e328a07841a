// Base metal, filler, gas, polarity and thickness that should not, or cannot, be put together; purging.
#include <fmt/format.h>

#include <algorithm>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"

namespace seambook {

void combinations(const PassSeen& seen, Findings& out) {
  for (const CombinationCheck& check : seen.of.book.combination_checks) {
    if (!in_scope(check.scope, seen)) continue;
    found_of_procedure(out, seen, check.level, fmt::format("{}: {}", facts_in_words(check.scope, seen), check.why),
                       check.look);
  }
}

void prices_like_unit_slips(const PassSeen& seen, Findings& out) {
  const RateBook& book = seen.of.book;
  if (!book.checks.price_per_mass) return;
  const auto look = [&](std::string_view what, const Known<dim::money_per_mass>& price) {
    if (price.si.source == no_source || price.si.value <= 0) return;
    if (within(*book.checks.price_per_mass, MoneyPerMass<>{price.si.value})) return;
    found_of_procedure(
        out, seen, Level::warning,
        fmt::format("{} costs {} {}/kg; usual is {:.4g} to {:.4g}", what, shown(price.si.value, unit::none),
                    book.currency, book.checks.price_per_mass->low.si, book.checks.price_per_mass->high.si),
        "it may be meant for another unit");
  };
  if (seen.procedure.filler) {
    const Filler& filler = book.fillers[*seen.procedure.filler];
    look("filler " + filler.name, filler.price);
  }
  const BaseMetal& metal = book.base_metals[seen.of.joint.base_metal];
  look("base metal " + metal.name, metal.price);
}

namespace {

/// Welded through from one side, so that the root stands bare inside.
bool root_lies_open(const Joint& joint) {
  using enum WeldKind;
  return one_of_kinds(joint.weld, {square, single_v, single_bevel, single_u, single_j}) &&
         joint.groove.depth.si.source == no_source && joint.groove.backing == Backing::none &&
         joint.sides.si.value == 1;
}

}  // namespace

/// The root of a stainless tube burns to scale in air.
void root_without_purge(const JointSeen& seen, Findings& out) {
  const Joint& joint = seen.joint;
  const bool tube_butt = joint.outside_diameter.si.source != no_source && root_lies_open(joint);
  if (!tube_butt || joint.purge || seen.book.base_metals[joint.base_metal].cleanliness != "stainless") return;
  found(out, seen, Level::warning, "the butt of a stainless tube is welded without a purge",
        "the root oxidises; state 'purge: true', or say why it may");
}

void purge_flow(const JointSeen& seen, Findings& out) {
  const Usual<dim::flow>& usual_flow = seen.book.checks.purge_flow;
  const Flow<> flow{seen.book.allowances.purge_flow.si.value};
  if (!seen.joint.purge || !usual_flow || within(*usual_flow, flow)) return;
  found(out, seen, Level::warning,
        fmt::format("purged with {}; usual is {} to {}", shown(flow, unit::l_per_min, terms_of(seen)),
                    shown(usual_flow->low, unit::l_per_min, terms_of(seen)),
                    shown(usual_flow->high, unit::l_per_min, terms_of(seen))),
        "look at purge_flow in the rate book's allowances");
}

}  // namespace seambook
