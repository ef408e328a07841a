// Gap, root face, groove angle and excess of welds other than fillets: as stated, else from the rate book by weld and
// thickness of the thinner member; each figure taken so is an assumption in words.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr double tolerance = 1e-9;  // relative: the same size written in two units

const Preparation* find_preparation(const RateBook& book, const Joint& joint) {
  const Length<> thickness = thinner_member(joint);
  for (const Preparation& preparation : book.preparations)
    if (preparation.weld == joint.weld && preparation.from.si * (1 - tolerance) <= thickness.si &&
        thickness.si <= preparation.to.si * (1 + tolerance))
      return &preparation;
  return nullptr;
}

double distance_to_range(const Preparation& preparation, Length<> thickness) {
  return std::max(preparation.from.si - thickness.si, thickness.si - preparation.to.si);
}

/// `the rate book has 2 mm to 20 mm`: the nearest ranges of this weld.
std::string nearest_ranges(const RateBook& book, const Joint& joint) {
  constexpr std::size_t named = 3;
  std::vector<const Preparation*> of_weld;
  for (const Preparation& preparation : book.preparations)
    if (preparation.weld == joint.weld) of_weld.push_back(&preparation);
  if (of_weld.empty()) return "the rate book has none for this weld";
  const Length<> thickness = thinner_member(joint);
  std::stable_sort(of_weld.begin(), of_weld.end(), [&](const Preparation* a, const Preparation* b) {
    return distance_to_range(*a, thickness) < distance_to_range(*b, thickness);
  });
  std::vector<std::string> ranges;
  for (std::size_t i = 0; i < std::min(named, of_weld.size()); ++i)
    ranges.push_back(fmt::format("{} to {}", shown(of_weld[i]->from, unit::mm), shown(of_weld[i]->to, unit::mm)));
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
  result.taken.push_back(fmt::format("{} {}", figure.words, shown(figure.target.si.value, figure.unit)));
  result.source = figure.target.si.source;
}

void note_taken(JobDraft& draft, const Joint& joint, const TakenPreparation& result) {
  if (result.taken.empty()) return;
  // Another thickness may ask for another preparation.
  freeze(draft, joint.thickness.si);
  freeze(draft, joint.thickness_second.si);
  const RateSource& source = draft.book.sources[result.source];
  assume(draft, fmt::format("{} for {} welds of {} from the rate book ({}{}{})", joined_with_and(result.taken),
                            weld_word(joint.weld), shown(thinner_member(joint), unit::mm), basis_in_words(source.basis),
                            source.words.empty() ? "" : ": ", source.words));
}

void resolve_groove(JobDraft& draft, const JointText& text, Joint& joint) {
  const bool grooved = joint.weld == WeldKind::single_v || joint.weld == WeldKind::single_bevel;
  const Preparation* preparation = find_preparation(draft.book, joint);
  TakenPreparation result;
  take_prepared<dim::length>(draft, preparation, {"gap", "gap", text.gap, &Preparation::gap, joint.gap, unit::mm},
                             result);
  if (grooved) {
    take_prepared<dim::length>(
        draft, preparation,
        {"root_face", "root face", text.root_face, &Preparation::root_face, joint.root_face, unit::mm}, result);
    take_prepared<dim::angle>(draft, preparation,
                              {"groove_angle", "groove angle", text.groove_angle, &Preparation::groove_angle,
                               joint.groove_angle, unit::degree},
                              result);
  }
  if (!result.missing.empty()) {
    refuse_lack(
        draft, text.place,
        fmt::format("no preparation for {} of {}", weld_word(joint.weld), shown(thinner_member(joint), unit::mm)),
        fmt::format("{}; state {}", nearest_ranges(draft.book, joint), joined_with_and(result.missing)));
    return;
  }
  note_taken(draft, joint, result);
}

void check_groove(JobDraft& draft, const Joint& joint) {
  set_limits(draft, joint.gap.si, {0, 1, false, false});
  freeze(draft, joint.root_face.si);  // bound to the thickness
  if (given(joint.root_face) && joint.root_face.si.value >= thinner_member(joint).si) {
    const bool by_job = joint.root_face.si.source >= first_job_source;
    draft.diagnostics.error(
        by_job ? place_of(draft, joint.root_face.si) : joint.place,
        fmt::format("root face {} leaves no groove in {}", shown(joint.root_face.si.value, unit::mm),
                    shown(thinner_member(joint), unit::mm)));
  }
  // A single-bevel's groove angle is its one bevel's; at 90 degrees and more it never opens.
  const double widest = (joint.weld == WeldKind::single_bevel ? 90 : 180) * unit::degree.si;
  const double angle = joint.groove_angle.si.value;
  set_limits(draft, joint.groove_angle.si, {0, widest, true, true});
  if (given(joint.groove_angle) && (angle <= 0 || angle >= widest)) {
    const bool by_job = joint.groove_angle.si.source >= first_job_source;
    draft.diagnostics.error(
        by_job ? place_of(draft, joint.groove_angle.si) : joint.place,
        fmt::format("groove angle {} is impossible", shown(angle, unit::degree)),
        fmt::format("a {} needs more than 0° and less than {}", weld_word(joint.weld), shown(widest, unit::degree)));
  }
}

void resolve_excess(JobDraft& draft, const JointText& text, Joint& joint) {
  if (text.excess) {
    joint.excess_width = stated(draft, text.excess->width);
    joint.excess_height = stated(draft, text.excess->height);
    set_limits(draft, joint.excess_width.si, {0, 1, true, false});
    set_limits(draft, joint.excess_height.si, {0, 1, true, false});
  }
  if (given(joint.excess_height)) return;
  joint.excess_height = draft.book.allowances.excess_height;
  assume(draft, fmt::format("excess height of butt and edge welds {} from the rate book",
                            shown(joint.excess_height.si.value, unit::mm)));
}

}  // namespace

void resolve_preparation(JobDraft& draft, const JointText& text, Joint& joint) {
  if (joint.weld == WeldKind::fillet) return;
  resolve_excess(draft, text, joint);
  if (joint.weld == WeldKind::edge || !given(joint.thickness)) return;
  resolve_groove(draft, text, joint);
  check_groove(draft, joint);
}

}  // namespace seambook
