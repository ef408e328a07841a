// What base metals say of their hardening, and what preheating takes.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"

namespace seambook {
namespace {

constexpr Limits composition_limits{0, 0.5, false, false}, equivalent_limits{0, 0.02, true, false};

bool in_groups(std::string_view group, int last) {
  for (int number = 1; number <= last; ++number)
    if (group_admits(std::to_string(number), group)) return true;
  return false;
}

}  // namespace

bool hardens(std::string_view group) { return in_groups(group, 6); }
bool is_steel(std::string_view group) { return in_groups(group, 11); }
bool suits_method_b(std::string_view group) { return in_groups(group, 4); }

Hardening hardening_of(RateEntry& entry, const BaseMetalText& text, std::string_view group) {
  Hardening out;
  if (text.composition) {
    out.composition = true;
    each_element(*text.composition, out.shares, [&](const char* element, const auto& written, auto& share) {
      share = known_within(entry, written, element, composition_limits);
    });
    if (!text.composition->carbon)
      entry.draft.diagnostics.error(text.composition->place,
                                    fmt::format("the composition of {} has no carbon", entry.name),
                                    "its carbon equivalents begin with it");
  }
  out.carbon_equivalent = known_within(entry, text.carbon_equivalent, "carbon equivalent", equivalent_limits);
  out.cet = known_within(entry, text.cet, "CET", equivalent_limits);
  const auto refuse = [&](const auto& written, std::string_view what) {
    if (written && !hardens(group))
      entry.draft.diagnostics.error(written->place, fmt::format("{} does not harden: it has no {}", entry.name, what),
                                    "preheat against cracking is for carbon and low-alloy steels, groups 1 to 6");
  };
  refuse(text.carbon_equivalent, "carbon equivalent");
  refuse(text.cet, "CET");
  return out;
}

void resolve_preheating(RateDraft& draft, const RateText& text) {
  if (!text.preheating) return;
  const PreheatingText& written = *text.preheating;
  RateEntry entry{draft, "preheating", written.place, written.evidence};
  Preheating& out = draft.book.preheating.emplace();
  out.burner = known(entry, written.burner, "burner", unit::kW);
  out.burner_efficiency = known_within(entry, written.burner_efficiency, "burner efficiency", efficiency_limits);
  out.attended = known_within(entry, written.attended, "attended share", {0, 1, false, false});
  out.fuel = known(entry, written.fuel, "fuel", unit::money_per_kWh);
  out.soak_width = known(entry, written.soak_width, "soak width", unit::mm);
  out.specific_heat = known(entry, written.specific_heat, "specific heat", unit::J_per_kgK);
  out.room = known(entry, written.room, "room temperature", unit::celsius);
  set_limits(entry, out.room.si.source, {0, 50, false, false});
  const auto check = [&](const Maybe<dim::time>& time, std::string_view field) {
    if (time && time->value.si > 0 && draft.book.method.covered(WorkKind::preheat))
      refuse_twice_charged(entry, field, time->place);
    return known(entry, time, field, unit::min);
  };
  out.check_per_joint = check(written.check_per_joint, "check per joint");
  out.check_per_pass = check(written.check_per_pass, "check per pass");
}

}  // namespace seambook
