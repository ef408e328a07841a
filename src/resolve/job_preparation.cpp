// Gap, root face, groove angle and root radius of butt welds: as stated, else from the rate book by weld and thickness
// of the thinner member; each figure taken so is an assumption in words.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr double tolerance = 1e-9;  // relative: the same size written in two units

bool welded_from_both_sides(const Joint& joint) { return joint.weld == WeldKind::square && joint.sides.si.value == 2; }

/// One that is for both sides is meant for those alone, and is better for them than one that is not.
const Preparation* find_preparation(const RateBook& book, const Joint& joint) {
  const Length<> thickness = thinner_member(joint);
  const Preparation* found = nullptr;
  for (const Preparation& preparation : book.preparations) {
    if (preparation.weld != joint.weld || preparation.from.si * (1 - tolerance) > thickness.si ||
        thickness.si > preparation.to.si * (1 + tolerance))
      continue;
    if (preparation.both_sides == welded_from_both_sides(joint)) return &preparation;
    if (!preparation.both_sides && found == nullptr) found = &preparation;
  }
  return found;
}

double distance_to_range(const Preparation& preparation, Length<> thickness) {
  return std::max(preparation.from.si - thickness.si, thickness.si - preparation.to.si);
}

/// `the rate book has 2 mm to 20 mm`: the nearest ranges of this weld.
std::string nearest_ranges(const RateBook& book, const Joint& joint) {
  constexpr std::size_t named = 3;
  std::vector<const Preparation*> of_weld;
  for (const Preparation& preparation : book.preparations)
    if (preparation.weld == joint.weld && (!preparation.both_sides || welded_from_both_sides(joint)))
      of_weld.push_back(&preparation);
  if (of_weld.empty()) return "the rate book has none for this weld";
  const Length<> thickness = thinner_member(joint);
  std::stable_sort(of_weld.begin(), of_weld.end(), [&](const Preparation* a, const Preparation* b) {
    return distance_to_range(*a, thickness) < distance_to_range(*b, thickness);
  });
  std::vector<std::string> ranges;
  for (std::size_t i = 0; i < std::min(named, of_weld.size()); ++i)
    ranges.push_back(fmt::format("{} to {}", shown(of_weld[i]->from, unit::mm, book.terms),
                                 shown(of_weld[i]->to, unit::mm, book.terms)));
  return "the rate book has " + joined_with_and(ranges);
}

/// A figure that the joint does not state: which key, where from, where to.
template <Dim D>
struct Preparable {
  std::string_view key, words;
  const Maybe<D>& written;
  Known<D> Preparation::*in_book;
  Known<D>& target;
  const Unit& unit;
};

struct TakenPreparation {
  std::vector<std::string> missing, taken;  // keys; `gap 2 mm`
  SourceId source = no_source;              // of one of the figures taken
};

template <Dim D>
void take_prepared(JobDraft& draft, const Preparation* preparation, const Preparable<D>& figure,
                   TakenPreparation& result) {
  figure.target = stated(draft, figure.written);
  if (given(figure.target)) return;
  if (preparation == nullptr || !given(preparation->*figure.in_book)) {
    result.missing.emplace_back(figure.key);
    return;
  }
  figure.target = preparation->*figure.in_book;
  result.taken.push_back(
      fmt::format("{} {}", figure.words, shown(figure.target.si.value, figure.unit, draft.book.terms)));
  result.source = figure.target.si.source;
}

void note_taken(JobDraft& draft, const Joint& joint, const TakenPreparation& result) {
  if (result.taken.empty()) return;
  // Another thickness may ask for another preparation.
  freeze(draft, joint.thickness.si);
  freeze(draft, joint.thickness_second.si);
  const RateSource& source = draft.book.sources[result.source];
  assume(draft, fmt::format("{} for {} welds of {} from the rate book ({}{}{})", joined_with_and(result.taken),
                            weld_word(joint.weld), length_shown(draft, thinner_member(joint)),
                            basis_in_words(source.basis), source.words.empty() ? "" : ": ", source.words));
}

void take_backing(const JointText& text, Joint& joint) {
  if (!text.sizes.backing) return;
  if (text.sizes.backing->text == "temporary") joint.groove.backing = Backing::temporary;
  if (text.sizes.backing->text == "permanent") joint.groove.backing = Backing::permanent;
}

void resolve_groove(JobDraft& draft, const JointText& text, Joint& joint) {
  const Preparation* preparation = find_preparation(draft.book, joint);
  TakenPreparation result;
  take_prepared<dim::length>(draft, preparation, {"gap", "gap", text.gap, &Preparation::gap, joint.gap, unit::mm},
                             result);
  if (is_groove(joint.weld)) {
    // Welded partly through, what is left of the thickness is not the root face that is fused: that one is 0 then.
    if (given(joint.groove.depth))
      joint.root_face = stated(draft, text.root_face);
    else
      take_prepared<dim::length>(
          draft, preparation,
          {"root_face", "root face", text.root_face, &Preparation::root_face, joint.root_face, unit::mm}, result);
    take_prepared<dim::angle>(draft, preparation,
                              {"groove_angle", "groove angle", text.groove_angle, &Preparation::groove_angle,
                               joint.groove_angle, unit::degree},
                              result);
  }
  if (is_curved(joint.weld))
    take_prepared<dim::length>(
        draft, preparation,
        {"radius", "radius", text.sizes.radius, &Preparation::radius, joint.groove.radius, unit::mm}, result);
  if (!result.missing.empty()) {
    refuse_lack(
        draft, text.place,
        fmt::format("no preparation for {} of {}", weld_word(joint.weld), length_shown(draft, thinner_member(joint))),
        fmt::format("{}; state {}", nearest_ranges(draft.book, joint), joined_with_and(result.missing)));
    return;
  }
  note_taken(draft, joint, result);
}

}  // namespace

void resolve_preparation(JobDraft& draft, const JointText& text, Joint& joint) {
  if (joint.weld == WeldKind::fillet) return;
  take_backing(text, joint);
  resolve_excess(draft, text, joint);
  const bool prepared = is_groove(joint.weld) || joint.weld == WeldKind::square;
  if (!prepared || !given(joint.thickness)) return;
  resolve_groove(draft, text, joint);
  check_groove(draft, joint);
}

}  // namespace seambook
