#include "resolve/rate_book.hpp"

#include "resolve/rate_entry.hpp"

namespace seambook {
namespace {

template <class Text>
void add_entry_places(std::vector<Place>& places, const std::vector<Text>& entries) {
  for (const Text& entry : entries) places.push_back(entry.place);
}

template <class Text>
void add_entry_place(std::vector<Place>& places, const std::optional<Text>& entry) {
  if (entry) places.push_back(entry->place);
}

std::vector<Place> rate_entry_places(const RateText& text) {
  std::vector<Place> places;
  add_entry_place(places, text.ranges);
  add_entry_place(places, text.overhead);
  add_entry_place(places, text.prices);
  add_entry_places(places, text.contingencies);
  add_entry_place(places, text.learning);
  add_entry_place(places, text.freight);
  if (text.freight) add_entry_places(places, text.freight->by_mass);
  add_entry_place(places, text.allowances);
  add_entry_place(places, text.checks);
  add_entry_places(places, text.range_checks);
  add_entry_places(places, text.combination_checks);
  add_entry_places(places, text.laser_checks);
  add_entry_places(places, text.labour);
  add_entry_places(places, text.labour_elements);
  add_entry_places(places, text.job_elements);
  add_entry_places(places, text.handling);
  add_entry_places(places, text.processes);
  add_entry_places(places, text.base_metals);
  add_entry_places(places, text.fillers);
  add_entry_places(places, text.gases);
  add_entry_places(places, text.fluxes);
  add_entry_places(places, text.wear_parts);
  add_entry_places(places, text.pass_limits);
  add_entry_place(places, text.gouging);
  add_entry_place(places, text.preheating);
  add_entry_places(places, text.finishes);
  add_entry_places(places, text.preparations);
  add_entry_places(places, text.procedures);
  add_entry_places(places, text.shifts);
  for (const ShiftText& shift : text.shifts) add_entry_places(places, shift.breaks);
  add_entry_place(places, text.overtime);
  add_entry_places(places, text.stations);
  add_entry_places(places, text.change_tasks);
  add_entry_places(places, text.welders);
  for (const WelderText& welder : text.welders) add_entry_places(places, welder.qualifications);
  add_entry_place(places, text.investment);
  return places;
}

}  // namespace

std::optional<RateBook> resolve_rates(const RateText& text, Diagnostics& diagnostics) {
  RateDraft draft{{}, diagnostics, reading_faults(diagnostics, rate_entry_places(text), text.files)};
  resolve_currency(draft, text);
  resolve_ranges(draft, text);
  resolve_labour(draft, text);
  resolve_labour_method(draft, text);
  resolve_overhead(draft, text);
  resolve_gases(draft, text);
  resolve_fluxes(draft, text);
  resolve_allowances(draft, text);
  resolve_handling(draft, text);
  resolve_processes(draft, text);
  resolve_base_metals(draft, text);
  resolve_fillers(draft, text);
  resolve_wear_parts(draft, text);
  resolve_pass_limits(draft, text);
  resolve_gouging(draft, text);
  resolve_preheating(draft, text);
  resolve_finishes(draft, text);
  resolve_labour_elements(draft, text);
  resolve_job_elements(draft, text);
  resolve_prices(draft, text);
  resolve_price_policy(draft, text);
  resolve_checks(draft, text);
  resolve_preparations(draft, text);
  resolve_procedures(draft, text);
  resolve_calendar(draft, text);
  resolve_stations(draft, text);
  resolve_change_tasks(draft, text);
  resolve_welders(draft, text);
  resolve_investment(draft, text);
  resolve_overtime(draft, text);
  if (errors_in_files(draft.faults, diagnostics)) return std::nullopt;
  return std::move(draft.book);
}

}  // namespace seambook
