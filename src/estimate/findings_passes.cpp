// Figures of passes against what is usual for the process, and wire against joint.
#include <fmt/format.h>

#include <cmath>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

template <Dim D>
std::string range_in_words(const Between<D>& range, const Unit& metric, Terms terms) {
  return range.low.si > 0 ? fmt::format("{} to {}", shown(range.low, metric, terms), shown(range.high, metric, terms))
                          : fmt::format("at most {}", shown(range.high, metric, terms));
}

}  // namespace

/// What the wire brings against what the joint takes, in minutes and money.
void mass_balance(const PassSeen& seen, Findings& out) {
  const PassFigures<double>& pass = seen.figures;
  if (!seen.procedure.filler || std::fabs(pass.deposition_difference.si) <= seen.of.book.checks.mass_balance.si) return;
  const auto area = [&](double si) { return shown_fixed(si, unit::mm2, 2, terms_of(seen)); };
  found(out, seen.of, Level::warning,
        fmt::format("procedure {} lays {} a pass, the weld takes {}; arc time by deposition is {:+.0f} %, {:+.2f} {}",
                    seen.procedure.name, area(pass.volume_rate.si / pass.travel.si),
                    area(pass.section.si / pass.passes.si), pass.deposition_difference.si * 100,
                    pass.difference_cost.si, seen.of.book.currency),
        "look at weld size, passes, travel speed and wire feed");
}

/// Outside the usual speeds look again; many times off is a slip of the unit.
void travel_speed(const PassSeen& seen, Findings& out) {
  const RangeCheck* check = check_with(seen, &RangeCheck::travel_speed);
  if (check == nullptr || within(*check->travel_speed, seen.figures.travel)) return;
  const auto& slip = seen.of.book.checks.speed_slip;
  const double travel = seen.figures.travel.si;
  const bool many_times =
      slip && (travel > slip->si * check->travel_speed->high.si || travel * slip->si < check->travel_speed->low.si);
  found_of_procedure(
      out, seen, many_times ? Level::error : Level::warning,
      fmt::format("travel speed {} by process {}; usual is {}", shown(travel, unit::mm_per_min, terms_of(seen)),
                  seen.process.number, range_in_words(*check->travel_speed, unit::mm_per_min, terms_of(seen))),
      many_times ? "it may be meant in another unit" : "arc time follows from it; look at the speed");
}

void deposition_rate(const PassSeen& seen, Findings& out) {
  const RangeCheck* check = check_with(seen, &RangeCheck::deposition_rate);
  if (check == nullptr || !seen.procedure.filler) return;
  const Density<> metal{seen.of.book.fillers[*seen.procedure.filler].density.si.value};
  const MassRate<> rate = seen.figures.volume_rate * metal;
  const double slack = seen.of.book.checks.deposition_rate_off.value_or(Ratio<>{}).si;
  if (within(*check->deposition_rate, rate, slack)) return;
  found_of_procedure(out, seen, Level::warning,
                     fmt::format("{} laid in arc time; usual is {}", shown(rate, unit::kg_per_h, terms_of(seen)),
                                 range_in_words(*check->deposition_rate, unit::kg_per_h, terms_of(seen))),
                     "look at wire feed, diameter and area per pass");
}

void heat_input_range(const PassSeen& seen, Findings& out) {
  const RangeCheck* check = check_with(seen, &RangeCheck::heat_input);
  if (check == nullptr || within(*check->heat_input, seen.figures.heat_input)) return;
  found(out, seen.of, Level::warning,
        fmt::format("procedure {}: heat input {} on base-metal group {}; usual is {}", seen.procedure.name,
                    shown(seen.figures.heat_input, unit::kJ_per_mm, terms_of(seen)),
                    seen.of.book.base_metals[seen.of.joint.base_metal].group,
                    range_in_words(*check->heat_input, unit::kJ_per_mm, terms_of(seen))),
        "too little hardens or does not fuse, too much softens; look at the procedure's qualification");
}

/// Arc voltage keeps near a straight line over current, set by two points.
void voltage_at_current(const PassSeen& seen, Findings& out) {
  const RangeCheck* check = check_with(seen, &RangeCheck::voltage_at_zero);
  const auto& off = seen.of.book.checks.voltage_off;
  if (check == nullptr || !check->voltage_at_100_a || !off || seen.procedure.voltage.si.source == no_source) return;
  const double current = seen.procedure.current.si.value, voltage = seen.procedure.voltage.si.value;
  const double rise = check->voltage_at_100_a->si - check->voltage_at_zero->si;
  const double usual_voltage = check->voltage_at_zero->si + rise * current / 100;
  if (std::fabs(voltage - usual_voltage) <= off->si * usual_voltage * (1 + whole_tolerance)) return;
  found_of_procedure(
      out, seen, Level::warning,
      fmt::format("{} at {} by process {}; usual is {:.1f} V, give or take {}", shown(voltage, unit::V),
                  shown(current, unit::A), seen.process.number, usual_voltage, shown(*off, unit::percent)),
      "one of the two may be a slip");
}

void leg_of_one_pass(const PassSeen& seen, Findings& out) {
  const Joint& joint = seen.of.joint;
  if (joint.weld != WeldKind::fillet || joint.passes.size() > 1 || seen.figures.passes.si > 1) return;
  const RangeCheck* check = check_with(seen, &RangeCheck::leg_of_one_pass);
  const double leg = leg_of(joint);
  if (check == nullptr || leg <= check->leg_of_one_pass->si * (1 + whole_tolerance)) return;
  found(out, seen.of, Level::warning,
        fmt::format("leg {} in one pass in position {}; usual is at most {}", shown(leg, unit::mm, terms_of(seen)),
                    joint.position, shown(*check->leg_of_one_pass, unit::mm, terms_of(seen))),
        "the pool sags; look at the number of passes");
}

void pass_size(const PassSeen& seen, Findings& out) {
  if (!seen.procedure.filler) return;
  const RangeCheck* check = check_with(seen, &RangeCheck::area_per_pass);
  const Area<> pass = seen.figures.section / seen.figures.passes;
  if (check == nullptr || within(*check->area_per_pass, pass)) return;
  found(out, seen.of, Level::warning,
        fmt::format("procedure {}: {} a pass; usual is {}", seen.procedure.name, shown(pass, unit::mm2, terms_of(seen)),
                    range_in_words(*check->area_per_pass, unit::mm2, terms_of(seen))),
        "look at the number of passes and the size of the weld");
}

void gas_flow(const PassSeen& seen, Findings& out) {
  const RangeCheck* check = check_with(seen, &RangeCheck::gas_flow);
  const Flow<> flow{seen.procedure.gas_flow.si.value};
  if (check == nullptr || !seen.procedure.gas || within(*check->gas_flow, flow)) return;
  found_of_procedure(
      out, seen, Level::warning,
      fmt::format("{} of gas by process {}; usual is {}", shown(flow, unit::l_per_min, terms_of(seen)),
                  seen.process.number, range_in_words(*check->gas_flow, unit::l_per_min, terms_of(seen))),
      "too little does not shield, too much stirs air in; look at the flow and its unit");
}

/// Heat in the source grows with the square of the current: at the rated current it may burn its duty cycle of ten
/// minutes, at another current that share times (rated/current)² (IEC 60974-1, from memory). Here the share is the arc
/// time over arc, starts and cleaning between passes.
void duty_cycle(const PassSeen& seen, Findings& out) {
  const RangeCheck* check = check_with(seen, &RangeCheck::duty_cycle);
  if (check == nullptr || seen.procedure.current.si.source == no_source) return;
  const double over = check->rated_current->si / seen.procedure.current.si.value;
  const double allowed = check->duty_cycle->si * over * over;
  const PassFigures<double>& pass = seen.figures;
  const double planned = (pass.arc / (pass.arc + pass.labour.start + pass.labour.interpass)).si;
  if (planned <= allowed * (1 + whole_tolerance)) return;
  found_of_procedure(out, seen, Level::warning,
                     fmt::format("the arc burns {:.0f} % of the time at {}; the source stands {:.0f} %", planned * 100,
                                 shown(seen.procedure.current.si.value, unit::A), allowed * 100),
                     "look at the rating of the power source, or plan for pauses");
}

}  // namespace seambook
