// The labour elements of a joint in one list, whichever pass group carries them: for sums, JSON and checks.
#pragma once

#include "estimate/row.hpp"

namespace seambook {

/// Calls f(key, minutes) for each element, attended, before access and the personal allowance; those of a whole joint
/// once, those of welding summed over the groups.
template <class N, class F>
void each_labour_element(const LabourShape& shape, const RowFigures<N>& row, F f) {
  const JointLabour<N>& whole = row.joint.labour;
  Time<N> welding{}, starts{}, interpass{}, changes{}, gouging{};
  for (const PassFigures<N>& group : row.passes) {
    welding = welding + group.labour.welding;
    starts = starts + group.labour.start;
    interpass = interpass + group.labour.interpass;
    changes = changes + group.labour.electrode_change;
    gouging = gouging + group.labour.gouge;
  }
  f(shape.by_factor ? "by_factor" : "arc", welding);
  f("starts", starts), f("interpass_cleaning", interpass), f("electrode_changes", changes), f("gouging", gouging);
  f("tacking", whole.tack), f("fit_up", whole.fit_up);
  f("close_fit_up", whole.fit_up_extra), f("finish", whole.finish),
      f("purging", shape.purging ? whole.purge : Time<N>{});
  f("preheat", whole.preheat);
  for (std::size_t k = 0; k < labour_kinds; ++k) f(element_words[k], whole.elements.of[k]);
}

}  // namespace seambook
