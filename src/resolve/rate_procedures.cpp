// The procedures: what each may weld, with what settings.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"
#include "resolve/shown.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

/// The position by any of the welds the procedure is for: AWS words depend on the kind of weld.
std::string position_of(const Word& word, const std::vector<WeldKind>& welds) {
  for (const WeldKind weld : welds)
    if (std::string code = position_code(word.text, weld); !code.empty()) return code;
  return {};
}

void resolve_range_of_use(RateEntry& entry, const ProcedureText& text, Procedure& procedure) {
  for (const Word& word : text.welds)
    if (const auto weld = find_weld_kind(entry.draft.diagnostics, word)) procedure.welds.push_back(*weld);
  procedure.groups = texts_of(text.groups);
  for (const Word& word : text.positions) {
    std::string code = position_of(word, procedure.welds);
    if (code.empty() && !procedure.welds.empty()) refuse_unknown_position(entry.draft.diagnostics, word);
    procedure.positions.push_back(std::move(code));
  }
  procedure.size = needed(entry, text.size, "size", unit::mm, Effect::frozen);
  if (!text.thickness) return;
  procedure.thickness_from = text.thickness->low.value;
  procedure.thickness_to = text.thickness->high.value;
}

void resolve_travel(RateEntry& entry, const ProcedureText& text, Procedure& procedure) {
  procedure.travel_speed = needed(entry, text.travel_speed, "travel speed", unit::mm_per_min);
  procedure.travel_low = procedure.travel_high = procedure.travel_speed;
  if (!text.travel_range) return;
  const Maybe<dim::speed> low = text.travel_range->low, high = text.travel_range->high;
  procedure.travel_low = known(entry, low, "lowest travel speed", unit::mm_per_min, Effect::frozen);
  procedure.travel_high = known(entry, high, "highest travel speed", unit::mm_per_min, Effect::frozen);
  set_limits(entry, procedure.travel_speed.si.source, {low->value.si, high->value.si, false, false});
  if (text.travel_speed && (text.travel_speed->value < low->value || text.travel_speed->value > high->value)) {
    entry.draft.diagnostics.error(
        text.travel_speed->place,
        fmt::format("travel speed {} is outside its range", shown(text.travel_speed->value, unit::mm_per_min)),
        fmt::format("the range is {} to {}", shown(low->value, unit::mm_per_min),
                    shown(high->value, unit::mm_per_min)));
  }
}

/// What tells how much is laid: one of wire feed and deposition rate, or the area of a pass.
void check_deposition(RateEntry& entry, const ProcedureText& text, FillerForm form) {
  Diagnostics& diagnostics = entry.draft.diagnostics;
  const bool wire = form == FillerForm::solid_wire || form == FillerForm::cored_wire;
  if (!wire && text.wire_feed)
    diagnostics.error(text.wire_feed->place, fmt::format("{} has a wire feed, but its filler is no wire", entry.name));
  if (text.deposition_rate && (text.wire_feed || text.area_per_pass))
    diagnostics.error(text.deposition_rate->place,
                      fmt::format("{} has a deposition rate and {}: choose one", entry.name,
                                  text.wire_feed ? "a wire feed" : "an area per pass"));
  if (text.wire_feed || text.area_per_pass || text.deposition_rate) return;
  if (wire)
    refuse_missing(entry, "wire feed, deposition rate or area per pass");
  else
    refuse_missing(entry, "area per pass or deposition rate", "rods and electrodes have no wire feed to tell it");
}

void resolve_filler_and_gas(RateEntry& entry, const ProcedureText& text, Procedure& procedure) {
  const RateBook& book = entry.draft.book;
  Diagnostics& diagnostics = entry.draft.diagnostics;
  if (!says_none(text.filler))
    procedure.filler = find_name(diagnostics, book.fillers, &Filler::name, *text.filler, "filler");
  if (!says_none(text.gas)) procedure.gas = find_name(diagnostics, book.gases, &Gas::name, *text.gas, "gas");
  procedure.wire_feed = known(entry, text.wire_feed, "wire feed", unit::m_per_min);
  procedure.deposition_rate = known(entry, text.deposition_rate, "deposition rate", unit::kg_per_h);
  procedure.area_per_pass = known(entry, text.area_per_pass, "area per pass", unit::mm2);
  procedure.gas_flow = known(entry, text.gas_flow, "gas flow", unit::l_per_min);
  if (procedure.gas && !text.gas_flow) refuse_missing(entry, "gas flow");
  if (procedure.filler) check_deposition(entry, text, book.fillers[*procedure.filler].form);
}

/// Submerged arcs burn under flux; its use is told by the flux itself.
void resolve_flux(RateEntry& entry, const ProcedureText& text, Procedure& procedure) {
  const RateBook& book = entry.draft.book;
  const bool known_process = procedure.process < book.processes.size();
  const std::string number = known_process ? book.processes[procedure.process].number : "";
  const bool submerged = number.starts_with("12");
  if (known_process && !submerged && text.flux)
    return entry.draft.diagnostics.error(text.flux->place,
                                         fmt::format("{} has a flux, but process {} welds without", entry.name, number),
                                         "the flux of cored wires and coverings is part of the filler");
  if (!says_none(text.flux))
    procedure.flux = find_name(entry.draft.diagnostics, book.fluxes, &Flux::name, *text.flux, "flux");
}

void resolve_energy(RateEntry& entry, const ProcedureText& text, Procedure& procedure) {
  procedure.current = known(entry, text.current, "current", unit::A);
  procedure.voltage = known(entry, text.voltage, "voltage", unit::V);
  procedure.beam_power = known(entry, text.beam_power, "beam power", unit::W);
  procedure.scan_width = known(entry, text.scan_width, "scan width", unit::mm);
  procedure.hydrogen = known(entry, text.hydrogen, "hydrogen", unit::ml_per_100g);
  if (procedure.process >= entry.draft.book.processes.size()) return;
  const std::string& number = entry.draft.book.processes[procedure.process].number;
  const bool beam = number.starts_with("52");
  if (beam && !text.beam_power) refuse_missing(entry, "beam power", fmt::format("process {} needs it", number));
  if (!beam && !text.current) refuse_missing(entry, "current", fmt::format("process {} needs it", number));
  if (!beam && !text.voltage) refuse_missing(entry, "voltage", fmt::format("process {} needs it", number));
  if (beam && (text.current || text.voltage))
    entry.draft.diagnostics.error((text.current ? text.current->place : text.voltage->place),
                                  fmt::format("{} is a beam process and has no arc", entry.name),
                                  "state 'beam_power' alone");
  if (!beam && text.beam_power)
    entry.draft.diagnostics.error(text.beam_power->place,
                                  fmt::format("{} is an arc process and has no beam", entry.name),
                                  "state 'current' and 'voltage' alone");
}

}  // namespace

void resolve_procedures(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  const std::size_t unknown_process = draft.book.processes.size();
  for (const ProcedureText& written : text.procedures) {
    Procedure procedure;
    procedure.name = take_name(draft, seen, written.name, "procedure");
    procedure.place = written.place;
    RateEntry entry{draft, "procedure " + procedure.name, written.place, written.evidence};
    procedure.process =
        written.process
            ? find_process(draft.diagnostics, draft.book.processes, *written.process).value_or(unknown_process)
            : unknown_process;
    resolve_range_of_use(entry, written, procedure);
    resolve_travel(entry, written, procedure);
    resolve_filler_and_gas(entry, written, procedure);
    resolve_flux(entry, written, procedure);
    resolve_energy(entry, written, procedure);
    procedure.polarity = text_of(written.polarity);
    procedure.transfer = text_of(written.transfer);
    draft.book.procedures.push_back(std::move(procedure));
  }
  if (text.procedures.empty()) refuse_book_without(draft, text, "has no procedures", "add 'procedures'");
}

}  // namespace seambook
