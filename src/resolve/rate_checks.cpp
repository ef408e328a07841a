// The checks for plausibility: words become numbers of processes, kinds of weld, levels; a pair of figures that go
// together must stand together.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

template <Dim D>
Quantity<D> needed_threshold(RateEntry& entry, const Maybe<D>& written, std::string_view field) {
  if (!written) refuse_missing(entry, field);
  return written ? written->value : Quantity<D>{};
}

template <Dim D>
std::optional<Quantity<D>> threshold(RateEntry& entry, const Maybe<D>& written) {
  if (!written) return std::nullopt;
  if constexpr (D.money != 0) check_currency(entry, written->currency, written->place);
  return written->value;
}

template <Dim D>
Usual<D> usual(RateEntry& entry, const MaybeSpan<D>& written) {
  if (!written) return std::nullopt;
  if constexpr (D.money != 0) check_currency(entry, written->low.currency, written->low.place);
  return Between<D>{written->low.value, written->high.value};
}

/// Figures that say something only together.
void needs_both(RateEntry& entry, bool one, std::string_view one_key, bool other, std::string_view other_key) {
  if (one && !other) refuse_missing(entry, other_key, fmt::format("'{}' needs it", one_key));
  if (other && !one) refuse_missing(entry, one_key, fmt::format("'{}' needs it", other_key));
}

CheckScope resolve_scope(RateEntry& entry, const CheckScopeText& text) {
  Diagnostics& diagnostics = entry.draft.diagnostics;
  CheckScope scope;
  for (const Word& word : text.processes) {
    std::string number = process_number(word.text);
    if (number.empty()) refuse_unknown_process(diagnostics, word);
    scope.processes.push_back(std::move(number));
  }
  for (const Word& word : text.welds)
    if (const auto weld = find_weld_kind(diagnostics, word)) scope.welds.push_back(*weld);
  for (const Word& word : text.forms)
    if (const auto form = find_filler_form(diagnostics, word)) scope.forms.push_back(*form);
  for (const Word& word : text.positions) {
    std::string code = position_code(word.text, WeldKind::fillet);
    if (code.empty()) code = position_code(word.text, WeldKind::square);
    if (code.empty()) refuse_unknown_position(diagnostics, word);
    scope.positions.push_back(std::move(code));
  }
  for (const Word& word : text.base_metals)
    if (find_name(diagnostics, entry.draft.book.base_metals, &BaseMetal::name, word, "base metal"))
      scope.base_metals.push_back(word.text);
  scope.groups = texts_of(text.groups);
  scope.except_groups = texts_of(text.except_groups);
  scope.transfers = texts_of(text.transfers);
  scope.fillers = texts_of(text.fillers);
  scope.gases = texts_of(text.gases);
  scope.polarities = texts_of(text.polarities);
  scope.thickness = usual(entry, text.thickness);
  scope.diameter = usual(entry, text.diameter);
  return scope;
}

void resolve_range_checks(RateDraft& draft, const RateText& text) {
  for (const RangeCheckText& written : text.range_checks) {
    RateEntry entry{draft, "range check", written.place, written.evidence};
    RangeCheck check;
    check.scope = resolve_scope(entry, written.scope);
    check.travel_speed = usual(entry, written.travel_speed);
    check.deposition_rate = usual(entry, written.deposition_rate);
    check.heat_input = usual(entry, written.heat_input);
    check.gas_flow = usual(entry, written.gas_flow);
    check.area_per_pass = usual(entry, written.area_per_pass);
    check.operating_factor = usual(entry, written.operating_factor);
    check.operating_factor_most = threshold(entry, written.operating_factor_most);
    check.voltage_at_zero = threshold(entry, written.voltage_at_zero);
    check.voltage_at_100_a = threshold(entry, written.voltage_at_100_a);
    check.leg_least = threshold(entry, written.leg_least);
    check.leg_of_one_pass = threshold(entry, written.leg_of_one_pass);
    check.rated_current = threshold(entry, written.rated_current);
    check.duty_cycle = threshold(entry, written.duty_cycle);
    if (written.passes_without_wait)
      check.passes_without_wait = Ratio<>{static_cast<double>(written.passes_without_wait->value)};
    needs_both(entry, check.voltage_at_zero.has_value(), "voltage at zero", check.voltage_at_100_a.has_value(),
               "voltage at 100 A");
    needs_both(entry, check.rated_current.has_value(), "rated current", check.duty_cycle.has_value(), "duty cycle");
    draft.book.range_checks.push_back(std::move(check));
  }
}

void resolve_combination_checks(RateDraft& draft, const RateText& text) {
  for (const CombinationCheckText& written : text.combination_checks) {
    RateEntry entry{draft, "combination check", written.place, written.evidence};
    CombinationCheck check;
    check.scope = resolve_scope(entry, written.scope);
    const std::string level = text_of(written.level);
    check.level = level == "error" ? Level::error : level == "note" ? Level::note : Level::warning;
    check.why = text_of(written.why);
    check.look = text_of(written.look);
    draft.book.combination_checks.push_back(std::move(check));
  }
}

void resolve_laser_checks(RateDraft& draft, const RateText& text) {
  for (const LaserCheckText& written : text.laser_checks) {
    RateEntry entry{draft, "laser check", written.place, written.evidence};
    LaserCheck check;
    check.scope = resolve_scope(entry, written.scope);
    check.thickness_per_kilowatt = threshold(entry, written.thickness_per_kilowatt);
    check.thickness_most_per_kilowatt = threshold(entry, written.thickness_most_per_kilowatt);
    check.melted_width = threshold(entry, written.melted_width);
    check.absorbed = threshold(entry, written.absorbed);
    check.melting_share = threshold(entry, written.melting_share);
    check.melting_energy = threshold(entry, written.melting_energy);
    check.gap_alone = threshold(entry, written.gap_alone);
    check.gap_with_wire = threshold(entry, written.gap_with_wire);
    needs_both(entry, check.absorbed.has_value(), "absorbed", check.melting_share.has_value(), "melting share");
    needs_both(entry, check.absorbed.has_value(), "absorbed", check.melting_energy.has_value(), "melting energy");
    draft.book.laser_checks.push_back(std::move(check));
  }
}

void resolve_thresholds(RateEntry& entry, const ChecksText& written, Checks& checks) {
  checks.mass_balance = needed_threshold(entry, written.mass_balance, "mass balance");
  checks.leg_over_thickness = needed_threshold(entry, written.leg_over_thickness, "leg over thickness");
  checks.leg_over_thin = needed_threshold(entry, written.leg_over_thin, "leg over thin");
  checks.thin_below = needed_threshold(entry, written.thin_below, "thin below");
  checks.oversized_procedure = threshold(entry, written.oversized_procedure);
  checks.element_over_leg = threshold(entry, written.element_over_leg);
  checks.element_least = threshold(entry, written.element_least);
  checks.element_least_above = threshold(entry, written.element_least_above);
  checks.lap_edge_from = threshold(entry, written.lap_edge_from);
  checks.lap_edge_less = threshold(entry, written.lap_edge_less);
  needs_both(entry, checks.lap_edge_from.has_value(), "lap edge from", checks.lap_edge_less.has_value(),
             "lap edge less");
  checks.bevel_from = threshold(entry, written.bevel_from);
  checks.gouge_from = threshold(entry, written.gouge_from);
  checks.counted_over_section = threshold(entry, written.counted_over_section);
  checks.deposition_rate_off = threshold(entry, written.deposition_rate_off);
  checks.voltage_off = threshold(entry, written.voltage_off);
  checks.speed_slip = threshold(entry, written.speed_slip);
  checks.purge_flow = usual(entry, written.purge_flow);
  checks.fit_up_share = threshold(entry, written.fit_up_share);
  if (written.fit_up_lot) checks.fit_up_lot = written.fit_up_lot->value;
  if (written.start_elements) checks.start_elements = written.start_elements->value;
  checks.combined_thickness = threshold(entry, written.combined_thickness);
  checks.carbon_equivalent = threshold(entry, written.carbon_equivalent);
  checks.thickness = usual(entry, written.thickness);
  checks.leg_most = threshold(entry, written.leg_most);
  checks.price_per_mass = usual(entry, written.price_per_mass);
  checks.labour_share = usual(entry, written.labour_share);
  checks.profit = usual(entry, written.profit);
  checks.power_share = threshold(entry, written.power_share);
  checks.contingency_most = threshold(entry, written.contingency_most);
}

}  // namespace

void resolve_checks(RateDraft& draft, const RateText& text) {
  if (text.checks) {
    RateEntry entry{draft, "checks", text.checks->place, text.checks->evidence};
    resolve_thresholds(entry, *text.checks, draft.book.checks);
  } else {
    refuse_book_without(draft, text, "has no checks",
                        "add 'checks' with mass_balance, leg_over_thickness, leg_over_thin and thin_below");
  }
  resolve_range_checks(draft, text);
  resolve_combination_checks(draft, text);
  resolve_laser_checks(draft, text);
}

}  // namespace seambook
