// Fluxes, parts that wear, the largest single passes, and gouging.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

/// The position by either kind of weld: a leg is a fillet's.
std::string limit_position(RateDraft& draft, const Word& word, bool fillet) {
  std::string code = position_code(word.text, fillet ? WeldKind::fillet : WeldKind::square);
  if (code.empty() && !fillet) code = position_code(word.text, WeldKind::fillet);
  if (code.empty()) refuse_unknown_position(draft.diagnostics, word);
  return code;
}

void choose_life(RateEntry& entry, const WearPartText& text) {
  const int given = text.life.has_value() + text.life_length.has_value() + text.life_starts.has_value();
  if (given == 0) refuse_missing(entry, "life", "add 'life' (hours of arc time), 'life_length' or 'life_starts'");
  if (given > 1 && !misread(entry.draft.faults, entry.place))
    entry.draft.diagnostics.error(entry.place, fmt::format("{} has more than one life: choose one", entry.name),
                                  "'life' in hours of arc time, 'life_length' or 'life_starts'");
}

}  // namespace

void resolve_fluxes(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const FluxText& written : text.fluxes) {
    Flux flux;
    flux.name = take_name(draft, seen, written.name, "flux");
    flux.classification = text_of(written.classification);
    RateEntry entry{draft, "flux " + flux.name, written.place, written.evidence};
    flux.price = needed(entry, written.price, "price", unit::money_per_kg);
    flux.per_wire = text_of(written.ratio_basis) == "per_wire";
    flux.ratio =
        needed(entry, written.ratio, flux.per_wire ? "ratio to wire used" : "ratio to weld metal", unit::percent);
    draft.book.fluxes.push_back(std::move(flux));
  }
}

void resolve_wear_parts(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const WearPartText& written : text.wear_parts) {
    WearPart part;
    part.name = take_name(draft, seen, written.name, "wear part");
    RateEntry entry{draft, "wear part " + part.name, written.place, written.evidence};
    for (const Word& word : written.processes)
      if (const auto process = find_process(draft.diagnostics, draft.book.processes, word))
        part.processes.push_back(*process);
    choose_life(entry, written);
    part.price = needed(entry, written.price, "price", unit::money);
    part.life = known(entry, written.life, "life", unit::h);
    part.life_length = known(entry, written.life_length, "life", unit::m);
    part.life_starts = known(entry, written.life_starts, "life in starts", unit::none);
    draft.book.wear_parts.push_back(std::move(part));
  }
}

void resolve_pass_limits(RateDraft& draft, const RateText& text) {
  for (const PassLimitText& written : text.pass_limits) {
    PassLimit limit;
    RateEntry entry{draft, "pass limit", written.place, written.evidence};
    if (written.process) {
      limit.process = find_process(draft.diagnostics, draft.book.processes, *written.process);
      entry.name += " of process " + written.process->text;
    }
    for (const Word& word : written.positions) {
      limit.positions.push_back(limit_position(draft, word, written.leg.has_value()));
      entry.name += " " + word.text;
    }
    if (written.leg && written.area)
      draft.diagnostics.error(written.area->place, fmt::format("{} has a leg and an area: choose one", entry.name),
                              "a leg holds for fillets, an area for all welds");
    if (!written.leg && !written.area) refuse_missing(entry, "leg or area");
    limit.leg = known(entry, written.leg, "largest leg of one pass", unit::mm);
    limit.area = known(entry, written.area, "largest section of one pass", unit::mm2);
    draft.book.pass_limits.push_back(std::move(limit));
  }
}

void resolve_gouging(RateDraft& draft, const RateText& text) {
  if (!text.gouging) return;
  RateEntry entry{draft, "gouging", text.gouging->place, text.gouging->evidence};
  Gouging& gouging = draft.book.gouging.emplace();
  // The depth is bound to the thickness of the plate.
  gouging.depth = known(entry, text.gouging->depth, "depth", unit::mm, Effect::frozen);
  gouging.width = known(entry, text.gouging->width, "width", unit::mm);
  gouging.time = needed(entry, text.gouging->time, "time", unit::min_per_m);
  gouging.carbons = known(entry, text.gouging->carbons, "carbons", unit::money_per_m);
}

}  // namespace seambook
