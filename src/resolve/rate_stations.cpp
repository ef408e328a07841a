// Where is welded: what stations have, stand ready with and never do; and what a change of set-up takes.
#include "resolve/rate_entry.hpp"
#include "resolve/set_up_names.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

using Mounted = std::vector<std::pair<std::string, std::string>>;  // attribute, value

Mounted resolve_state(RateDraft& draft, const std::vector<StationText::Mounted>& written) {
  Mounted state;
  NamesSeen attributes;
  for (const StationText::Mounted& mounted : written) {
    std::string attribute = find_attribute(draft.diagnostics, mounted.attribute);
    first_of_its_name(draft.diagnostics, attributes, mounted.attribute, "mounted");
    std::string value = find_attribute_value(draft.diagnostics, draft.book, attribute, mounted.value);
    state.emplace_back(std::move(attribute), std::move(value));
  }
  return state;
}

Eyewear resolve_eyewear(const EyewearText& written) {
  Eyewear eyewear;
  if (written.wavelength) eyewear.wavelength_nm = written.wavelength->value;
  if (written.optical_density) eyewear.optical_density = written.optical_density->value.si;
  return eyewear;
}

NeverChange resolve_never(RateDraft& draft, const NeverText& written) {
  NeverChange never;
  if (written.when) never.attribute = find_attribute(draft.diagnostics, *written.when);
  for (const Word& word : written.from)
    never.from.push_back(find_attribute_value(draft.diagnostics, draft.book, never.attribute, word));
  for (const Word& word : written.to)
    never.to.push_back(find_attribute_value(draft.diagnostics, draft.book, never.attribute, word));
  if (never.from.empty() && never.to.empty() && !misread(draft.faults, written.place))
    draft.diagnostics.error(written.place, "a change that is never made names neither 'from' nor 'to'",
                            "for example {when: cleanliness, from: [carbon], to: [stainless]}");
  return never;
}

}  // namespace

void resolve_stations(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const StationText& written : text.stations) {
    Station station;
    station.name = take_name(draft, seen, written.name, "station");
    station.title = text_of(written.title);
    for (const Word& word : written.processes)
      if (const auto process = find_process(draft.diagnostics, draft.book.processes, word))
        station.processes.push_back(*process);
    station.groups = texts_of(written.groups);
    station.mounted = resolve_state(draft, written.mounted);
    station.end_state = resolve_state(draft, written.end_state);
    if (written.controlled_area) station.controlled_area = written.controlled_area->value;
    if (written.safety_officer) station.safety_officer = written.safety_officer->value;
    if (written.eyewear) station.eyewear = resolve_eyewear(*written.eyewear);
    if (written.crane) station.crane = written.crane->value;
    if (written.largest) station.largest = written.largest->value;
    for (const NeverText& never : written.never) station.never.push_back(resolve_never(draft, never));
    station.shifts = find_shifts(draft, written.shifts);
    station.place = written.place;
    draft.book.stations.push_back(std::move(station));
  }
}

void resolve_change_tasks(RateDraft& draft, const RateText& text) {
  // One name may stand for several attributes: it is one task then, done once.
  for (const ChangeTaskText& written : text.change_tasks) {
    ChangeRule task;
    task.name = text_of(written.name);
    RateEntry entry{draft, "change task " + task.name, written.place, written.evidence};
    if (written.when) task.attribute = find_attribute(draft.diagnostics, *written.when);
    for (const Word& word : written.from)
      task.from.push_back(find_attribute_value(draft.diagnostics, draft.book, task.attribute, word));
    for (const Word& word : written.to)
      task.to.push_back(find_attribute_value(draft.diagnostics, draft.book, task.attribute, word));
    task.time = needed(entry, written.time, "time", unit::min, Effect::frozen);
    task.cold = !written.cold || written.cold->value;
    draft.book.change_tasks.push_back(std::move(task));
  }
}

}  // namespace seambook
