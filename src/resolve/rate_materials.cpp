// What is melted and blown: base metals, fillers, gases; and how joints are prepared when they do not say.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"
#include "resolve/shown.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

FillerForm find_form(RateDraft& draft, const std::optional<Word>& word) {
  if (!word) return FillerForm::solid_wire;
  return find_filler_form(draft.diagnostics, *word).value_or(FillerForm::solid_wire);
}

/// What makes electrodes, rods and tubular wires more than a diameter.
void resolve_pieces(RateEntry& entry, const FillerText& text, Filler& filler) {
  Diagnostics& diagnostics = entry.draft.diagnostics;
  const auto only_for = [&](const auto& written, bool applies, std::string_view key, std::string_view what) {
    if (written && !applies)
      diagnostics.error(written->place, fmt::format("'{}' does not apply to {}", key, entry.name),
                        fmt::format("it is for {}", what));
  };
  const bool covered = filler.form == FillerForm::covered_electrode;
  only_for(text.length, covered, "length", "covered electrodes");
  only_for(text.stub, covered, "stub", "covered electrodes");
  only_for(text.piece_mass, covered || filler.form == FillerForm::rod, "piece_mass", "covered electrodes and rods");
  only_for(text.linear_mass, filler.form == FillerForm::cored_wire, "linear_mass", "cored wires");
  if (text.length.has_value() != text.stub.has_value() && covered)
    refuse_missing(entry, text.length ? "stub" : "length", "length and stub are stated together");
  if (text.length && text.stub && text.stub->value >= text.length->value)
    diagnostics.error(text.stub->place,
                      fmt::format("the stub {} leaves nothing of {}", shown(text.stub->value, unit::mm),
                                  shown(text.length->value, unit::mm)));
  filler.length = known(entry, text.length, "length", unit::mm, Effect::frozen);
  filler.stub = known(entry, text.stub, "stub", unit::mm);
  set_limits(entry, filler.stub.si.source, {0, text.length ? text.length->value.si : 1, true, true});
  filler.piece_mass = known(entry, text.piece_mass, "mass of one", unit::g);
  filler.linear_mass = known(entry, text.linear_mass, "mass of a metre", unit::g_per_m);
}

}  // namespace

void resolve_base_metals(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const BaseMetalText& written : text.base_metals) {
    BaseMetal metal;
    metal.name = take_name(draft, seen, written.name, "base metal");
    for (const Word& other : written.also)
      if (first_of_its_name(draft.diagnostics, seen, other, "base metal")) metal.also.push_back(other.text);
    RateEntry entry{draft, "base metal " + metal.name, written.place, written.evidence};
    metal.group = text_of(written.group);
    metal.cleanliness = text_of(written.cleanliness);
    metal.density = needed(entry, written.density, "density", unit::g_per_cm3);
    metal.price = known(entry, written.price, "price", unit::money_per_kg);
    metal.yield = known_within(entry, written.yield, "yield", efficiency_limits);
    metal.specific_heat = known(entry, written.specific_heat, "specific heat", unit::J_per_kgK);
    metal.hardening = hardening_of(entry, written, metal.group);
    draft.book.base_metals.push_back(std::move(metal));
  }
}

void resolve_fillers(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const FillerText& written : text.fillers) {
    Filler filler;
    filler.name = take_name(draft, seen, written.name, "filler");
    RateEntry entry{draft, "filler " + filler.name, written.place, written.evidence};
    filler.classification = text_of(written.classification);
    filler.form = find_form(draft, written.form);
    filler.diameter =
        needed(entry, written.diameter, "diameter", unit::mm, Effect::frozen);  // the feed set-up hangs on it
    filler.density = needed(entry, written.density, "density", unit::g_per_cm3);
    decided(draft, {filler.diameter.si.source, filler.density.si.source});  // chosen, and as bought
    filler.price = needed(entry, written.price, "price", unit::money_per_kg);
    if (written.pack) filler.pack = written.pack->value;
    filler.hydrogen = known(entry, written.hydrogen, "hydrogen", unit::ml_per_100g);
    resolve_pieces(entry, written, filler);
    draft.book.fillers.push_back(std::move(filler));
  }
}

void resolve_gases(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const GasText& written : text.gases) {
    Gas gas{take_name(draft, seen, written.name, "gas"), text_of(written.designation), {}};
    RateEntry entry{draft, "gas " + gas.name, written.place, written.evidence};
    gas.price = needed(entry, written.price, "price", unit::money_per_m3);
    draft.book.gases.push_back(std::move(gas));
  }
}

void resolve_preparations(RateDraft& draft, const RateText& text) {
  for (const PreparationText& written : text.preparations) {
    RateEntry entry{draft, "preparation", written.place, written.evidence};
    const auto weld = written.weld ? find_weld_kind(draft.diagnostics, *written.weld) : std::nullopt;
    if (!weld || !written.thickness) continue;
    Preparation preparation{*weld, written.thickness->low.value, written.thickness->high.value, {}, {}, {}, {}, false};
    entry.name = fmt::format("preparation {}{} {} to {}", weld_word(*weld),
                             written.sides && written.sides->value == 2 ? " from both sides" : "",
                             shown(preparation.from, unit::mm), shown(preparation.to, unit::mm));
    preparation.groove_angle = known(entry, written.groove_angle, "groove angle", unit::degree, Effect::frozen);
    preparation.gap = known(entry, written.gap, "gap", unit::mm);
    preparation.root_face = known(entry, written.root_face, "root face", unit::mm, Effect::frozen);
    preparation.radius = known(entry, written.radius, "radius", unit::mm, Effect::frozen);
    preparation.both_sides = written.sides && written.sides->value == 2;
    if (preparation.both_sides && *weld != WeldKind::square)
      draft.diagnostics.error(written.sides->place, fmt::format("'sides' does not apply to a {}", weld_word(*weld)),
                              "it tells square edges welded from both sides from others");
    draft.book.preparations.push_back(preparation);
  }
}

}  // namespace seambook
