// Minutes of work and what goes with a process: allowances, handling, processes, finishes.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

constexpr double no_high_end = 1e12;

void resolve_purge(RateEntry& entry, const AllowancesText& text, Allowances& allowances) {
  allowances.purge_per_joint = known(entry, text.purge_per_joint, "purge per joint", unit::min);
  allowances.purge_flow = known(entry, text.purge_flow, "purge flow", unit::l_per_min);
  if (!says_none(text.purge_gas))
    allowances.purge_gas =
        find_name(entry.draft.diagnostics, entry.draft.book.gases, &Gas::name, *text.purge_gas, "gas");
}

void resolve_tacks(RateEntry& entry, const ProcessText& text, Process& process) {
  process.tack = needed_unless_covered(entry, text.tack, "tack", unit::min, WorkKind::tacking);
  process.tack_pitch = needed(entry, text.tack_pitch, "tack pitch", unit::mm);
  process.tack_pitch_thin = process.tack_pitch;
  if (!text.tack_pitch_thin && !text.thin_below) return;
  if (!text.tack_pitch_thin) return refuse_missing(entry, "tack pitch thin", "'thin_below' needs it");
  if (!text.thin_below) return refuse_missing(entry, "thin below", "'tack_pitch_thin' needs it");
  process.tack_pitch_thin = known(entry, text.tack_pitch_thin, "tack pitch thin", unit::mm);
  process.thin_below = text.thin_below->value;
}

Process resolve_one_process(RateEntry& entry, const ProcessText& text) {
  Process process;
  process.grade = find_grade(entry.draft, text.grade);
  process.only_when_asked = text.only_when_asked && text.only_when_asked->value;
  process.start = needed_unless_covered(entry, text.start, "start", unit::min, WorkKind::starts);
  process.operating_factor = operating_factor_of(entry, text.operating_factor);
  resolve_tacks(entry, text, process);
  process.gas_before_and_after = needed(entry, text.gas_before_and_after, "gas before and after", unit::s);
  process.interpass_cleaning = needed_unless_covered(entry, text.interpass_cleaning, "interpass cleaning",
                                                     unit::min_per_m, WorkKind::interpass_cleaning);
  if (text.fit_up_extra)
    process.fit_up_extra =
        needed_unless_covered(entry, text.fit_up_extra, "close fit-up", unit::min_per_m, WorkKind::fit_up);
  process.deposition_efficiency =
      needed_within(entry, text.deposition_efficiency, "deposition efficiency", efficiency_limits);
  process.source_efficiency = needed_within(entry, text.source_efficiency, "source efficiency", efficiency_limits);
  process.gas_loss = needed_within(entry, text.gas_loss, "gas loss", {1, no_high_end, false});
  process.thermal_efficiency = needed_within(entry, text.thermal_efficiency, "thermal efficiency", efficiency_limits);
  process.auxiliary_power = needed(entry, text.auxiliary_power, "auxiliary power", unit::kW);
  process.electrode_change = known(entry, text.electrode_change, "electrode change", unit::min);
  process.wear = needed(entry, text.wear, "wear", unit::money_per_h);
  process.equipment = needed(entry, text.equipment, "equipment", unit::money_per_h);
  return process;
}

}  // namespace

void resolve_allowances(RateDraft& draft, const RateText& text) {
  if (!text.allowances) {
    refuse_book_without(draft, text, "has no allowances",
                        "add 'allowances' with the minutes for fit-up and the personal share");
    return;
  }
  const AllowancesText& written = *text.allowances;
  RateEntry entry{draft, "allowances", written.place, written.evidence};
  Allowances& allowances = draft.book.allowances;
  allowances.fit_up_per_part =
      needed_unless_covered(entry, written.fit_up_per_part, "fit-up per part", unit::min, WorkKind::fit_up);
  allowances.fit_up_per_joint =
      needed_unless_covered(entry, written.fit_up_per_joint, "fit-up per joint", unit::min, WorkKind::fit_up);
  allowances.fit_up_per_metre =
      needed_unless_covered(entry, written.fit_up_per_metre, "fit-up per metre", unit::min_per_m, WorkKind::fit_up);
  resolve_purge(entry, written, allowances);
  allowances.personal = personal_allowance_of(entry, written.personal);
  allowances.personal_covers = text_of(written.personal_covers);
  if (!written.personal_covers && !draft.book.method.by_factor)
    refuse_missing(entry, "personal covers", "say in words what the share covers, and whether breaks are in it");
  allowances.turns_two_sided = needed(entry, written.turns_two_sided, "turns two-sided", unit::none);
  allowances.convexity = needed(entry, written.convexity, "convexity", unit::percent);
  allowances.excess_height = needed(entry, written.excess_height, "excess height", unit::mm);
  allowances.excess_overlap = needed(entry, written.excess_overlap, "excess overlap", unit::mm);
}

void resolve_handling(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  std::vector<Handling>& classes = draft.book.handling;
  for (const HandlingText& written : text.handling) {
    Handling handling{.name = take_name(draft, seen, written.name, "handling"), .up_to = {}, .turn = {}};
    RateEntry entry{draft, "handling " + handling.name, written.place, written.evidence};
    if (written.up_to) handling.up_to = written.up_to->value;
    handling.turn = needed_unless_covered(entry, written.turn, "turn", unit::min, WorkKind::turning);
    const bool reached =
        classes.empty() || (classes.back().up_to && (!handling.up_to || *classes.back().up_to < *handling.up_to));
    if (!reached)
      draft.diagnostics.error(
          written.place, fmt::format("{} is never reached", entry.name),
          fmt::format("{} before it takes as much; the lightest class comes first", classes.back().name));
    classes.push_back(std::move(handling));
  }
  if (classes.empty())
    refuse_book_without(draft, text, "has no handling", "add 'handling' with the time that a turn takes");
}

void resolve_processes(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const ProcessText& written : text.processes) {
    std::string number = written.process ? process_number(written.process->text) : "";
    RateEntry entry{draft, "process " + number, written.place, written.evidence};
    Process process = resolve_one_process(entry, written);
    if (written.process) {
      if (number.empty()) {
        refuse_unknown_process(draft.diagnostics, *written.process);
      } else {
        first_of_its_name(draft.diagnostics, seen, {number, written.process->place}, "process");
      }
    }
    process.number = std::move(number);
    draft.book.processes.push_back(std::move(process));
  }
}

void resolve_finishes(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const FinishText& written : text.finishes) {
    Finish finish{take_name(draft, seen, written.name, "finish"), text_of(written.text), {}, {}};
    RateEntry entry{draft, "finish " + finish.name, written.place, written.evidence};
    finish.time = needed_unless_covered(entry, written.time, "time", unit::min_per_m, WorkKind::finish);
    for (const FinishAfterText& after : written.after) {
      const auto process = after.process ? find_process(draft.diagnostics, draft.book.processes, *after.process)
                                         : std::optional<std::size_t>{};
      if (!process) continue;
      const std::string field = "time after " + draft.book.processes[*process].number;
      finish.after.push_back(
          {*process, needed_unless_covered(entry, after.time, field, unit::min_per_m, WorkKind::finish)});
    }
    draft.book.finishes.push_back(std::move(finish));
  }
}

}  // namespace seambook
