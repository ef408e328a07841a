// The labour of a joint and its pass groups, element by element, written once for plain and for traced numbers.
// Holds afterwards: attended minutes are the sum of the elements (times access), floor minutes are those with the
// personal allowance; the first pass group carries the elements of the joint as a whole. By an operating factor, arc
// time over the factor stands for all that it covers, and the allowance is in it.
#pragma once

#include "estimate/labour_inputs.hpp"
#include "trade/labour.hpp"
#include "trade/length.hpp"

namespace seambook {

/// What the labour of a joint hangs on.
template <class N>
struct LabourDrivers {
  Length<N> line, weld_length;
  Ratio<N> joints_made, weld_elements, sides;
};

/// Elements of a joint as a whole. Those that an operating factor covers stay 0, but for the purge: gas flows
/// meanwhile.
template <class N>
struct JointLabour {
  Ratio<N> tacks;
  Time<N> fit_up, fit_up_extra, tack, finish, purge, preheat;
  ElementTimes<N> elements;
};

/// Elements of one pass group, and the sums.
template <class N>
struct PassLabour {
  Ratio<N> starts, followed;  // passes that another pass follows
  Time<N> welding;            // arc time, with all that an operating factor covers
  Time<N> start, interpass, electrode_change, gouge, attended, floor;
};

template <class N>
MoneyPerTime<N> labour_rate_of(const PassLabourInputs<N>& in, bool loaded) {
  return loaded ? in.labour_rate : loaded_rate(in.wage, in.burden);
}

template <class N>
JointLabour<N> joint_labour(const LabourShape& shape, const LabourInputs<N>& in, const LabourDrivers<N>& drivers) {
  JointLabour<N> out;
  if (shape.finish) out.finish = name(drivers.weld_length * in.finish_pace, fig::finish_min);
  if (shape.purge) out.purge = name(drivers.joints_made * in.purge_per_joint, fig::purge_min);
  if (!shape.fitted) return out;
  if (shape.fit_up)
    out.fit_up =
        name((in.fit_up_per_joint + in.fit_up_per_metre * drivers.line) * drivers.joints_made, fig::fit_up_min);
  if (shape.fit_up_extra)
    out.fit_up_extra = name(in.fit_up_extra * drivers.line * drivers.joints_made, fig::fit_up_extra_min);
  out.tacks = name(tacks_on_line(drivers.line, in.tack_pitch) * drivers.joints_made, fig::tacks);
  if (shape.tacking) out.tack = name(out.tacks * in.tack_time, fig::tack_min);
  return out;
}

/// Elements of group g beside its arc time. Passes that another pass follows are cleaned.
template <class N>
PassLabour<N> pass_labour(const LabourShape& shape, const PassLabourInputs<N>& in, const LabourDrivers<N>& drivers,
                          Ratio<N> passes, Time<N> arc, bool last_group, std::uint32_t g) {
  PassLabour<N> out;
  out.welding = shape.by_factor ? name(floor_time_by_factor(arc, in.operating_factor), fig::factor_min, g) : arc;
  out.starts = name(drivers.weld_elements * passes, fig::starts, g);
  if (shape.starts) out.start = name(out.starts * in.start_time, fig::start_min, g);
  out.followed = last_group ? passes - number<N>(1) : passes;
  if (shape.interpass)
    out.interpass = name(drivers.weld_length * out.followed * in.interpass_pace, fig::interpass_min, g);
  return out;
}

/// What the elements of the rate book are counted by, over all groups of passes.
template <class N, class Groups>
JointCounts<N> joint_counts(const LabourDrivers<N>& drivers, const JointLabour<N>& whole, const Groups& groups) {
  JointCounts<N> out;
  Ratio<N> passes{}, followed{};
  for (const auto& group : groups) {
    passes = passes + group.passes;
    followed = followed + group.labour.followed;
    out.starts = out.starts + group.labour.starts;
    out.welding = out.welding +
                  (group.labour.welding + group.labour.start + group.labour.interpass + group.labour.electrode_change);
  }
  out.joints = drivers.joints_made;
  out.weld_elements = drivers.weld_elements;
  out.tacks = whole.tacks;
  out.line = drivers.line * drivers.joints_made;
  out.weld = drivers.weld_length;
  out.passes = drivers.weld_length * passes;
  out.interpass = drivers.joints_made * drivers.sides * followed;
  return out;
}

/// Attended and floor time of group g; the joint's own elements fall to group 0.
template <class N>
void floor_times(const LabourShape& shape, const LabourInputs<N>& in, const JointLabour<N>& whole, std::uint32_t g,
                 PassLabour<N>& out) {
  Time<N> attended = out.welding + out.start + out.interpass + out.electrode_change + out.gouge;
  if (g == 0) attended = whole.fit_up + whole.tack + attended + whole.finish;
  if (g == 0 && shape.fit_up_extra) attended = attended + whole.fit_up_extra;
  if (g == 0 && shape.purge && shape.purging) attended = attended + whole.purge;
  if (g == 0) attended = attended + whole.preheat + all_of(whole.elements);
  if (shape.access) attended = attended * in.access;
  out.attended = name(attended, fig::attended, g);
  out.floor = name(shape.by_factor ? out.attended : floor_time(out.attended, in.personal), fig::floor, g);
}

/// What the floor time of group g costs. Elements of another grade are paid at that grade's rate, with their share of
/// access and allowance.
template <class N>
Money<N> labour_money(const LabourShape& shape, const LabourInputs<N>& in, const ElementTimes<N>& elements,
                      std::uint32_t g, Time<N> floor, MoneyPerTime<N> rate) {
  if (g > 0 || !elements.graded) return floor * rate;
  Ratio<N> on_floor = shape.by_factor ? number<N>(1) : number<N>(1) + in.personal;
  if (shape.access) on_floor = on_floor * in.access;
  return (floor - elements.other_grades * on_floor) * rate + elements.paid_to_them * on_floor;
}

/// Floor time that a difference of arc time makes.
template <class N>
Time<N> floor_of_arc(const LabourShape& shape, const LabourInputs<N>& in, const PassLabourInputs<N>& of_pass,
                     Time<N> arc) {
  return shape.by_factor ? floor_time_by_factor(arc, of_pass.operating_factor) : floor_time(arc, in.personal);
}

}  // namespace seambook
