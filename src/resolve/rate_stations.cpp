// Where and by whom is welded, and what a change of set-up takes.
#include <algorithm>
#include <iterator>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

// What can differ from one operation to the next; `feed`, `program`, `job` and `weldment` follow from the work itself.
constexpr std::string_view setup_attributes[] = {"process",     "filler",  "feed", "gas",
                                                 "cleanliness", "program", "job",  "weldment"};

std::string find_attribute(RateDraft& draft, const Word& word) {
  const auto begin = std::begin(setup_attributes), end = std::end(setup_attributes);
  if (std::find(begin, end, word.text) == end)
    refuse_unknown(draft.diagnostics, word, "set-up attribute", {begin, end});
  return word.text;
}

bool is_cleanliness(const RateBook& book, std::string_view value) {
  return std::any_of(book.base_metals.begin(), book.base_metals.end(),
                     [&](const BaseMetal& metal) { return metal.cleanliness == value; });
}

/// A value of an attribute as the rest of the book writes it; refused when it names nothing there.
std::string find_attribute_value(RateDraft& draft, std::string_view attribute, const Word& value) {
  const RateBook& book = draft.book;
  if (attribute == "process") {
    const auto process = find_process(draft.diagnostics, draft.book.processes, value);
    return process ? book.processes[*process].number : value.text;
  }
  if (value.text == "none") return value.text;
  if (attribute == "filler") find_name(draft.diagnostics, book.fillers, &Filler::name, value, "filler");
  if (attribute == "gas") find_name(draft.diagnostics, book.gases, &Gas::name, value, "gas");
  if (attribute == "cleanliness" && !is_cleanliness(book, value.text)) {
    std::vector<std::string_view> known_classes;
    for (const BaseMetal& metal : book.base_metals)
      if (std::find(known_classes.begin(), known_classes.end(), metal.cleanliness) == known_classes.end())
        known_classes.push_back(metal.cleanliness);
    refuse_unknown(draft.diagnostics, value, "cleanliness", known_classes);
  }
  return value.text;
}

Qualification resolve_qualification(RateDraft& draft, const QualificationText& text) {
  Qualification qualification;
  if (text.process)
    qualification.process = find_process(draft.diagnostics, draft.book.processes, *text.process).value_or(0);
  qualification.groups = texts_of(text.groups);
  for (const Word& word : text.positions) {
    std::string code = position_code(word.text, WeldKind::fillet);
    if (code.empty()) code = position_code(word.text, WeldKind::square);
    if (code.empty()) refuse_unknown_position(draft.diagnostics, word);
    qualification.positions.push_back(std::move(code));
  }
  if (text.thickness) qualification.thickness = {text.thickness->low.value, text.thickness->high.value};
  if (text.until) qualification.until = text.until->value;
  return qualification;
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
    NamesSeen attributes;
    for (const StationText::Mounted& mounted : written.mounted) {
      std::string attribute = find_attribute(draft, mounted.attribute);
      first_of_its_name(draft.diagnostics, attributes, mounted.attribute, "mounted");
      std::string value = find_attribute_value(draft, attribute, mounted.value);
      station.mounted.emplace_back(std::move(attribute), std::move(value));
    }
    if (written.controlled_area) station.controlled_area = written.controlled_area->value;
    draft.book.stations.push_back(std::move(station));
  }
}

void resolve_change_tasks(RateDraft& draft, const RateText& text) {
  // One name may stand for several attributes: it is one task then, done once.
  for (const ChangeTaskText& written : text.change_tasks) {
    ChangeRule task;
    task.name = text_of(written.name);
    RateEntry entry{draft, "change task " + task.name, written.place, written.evidence};
    if (written.when) task.attribute = find_attribute(draft, *written.when);
    for (const Word& word : written.from) task.from.push_back(find_attribute_value(draft, task.attribute, word));
    for (const Word& word : written.to) task.to.push_back(find_attribute_value(draft, task.attribute, word));
    task.time = needed(entry, written.time, "time", unit::min, Effect::frozen);
    task.cold = !written.cold || written.cold->value;
    draft.book.change_tasks.push_back(std::move(task));
  }
}

void resolve_welders(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const WelderText& written : text.welders) {
    Welder welder;
    welder.stamp = take_name(draft, seen, written.stamp, "welder");
    welder.grade = find_grade(draft, written.grade);
    for (const QualificationText& qualification : written.qualifications)
      welder.qualifications.push_back(resolve_qualification(draft, qualification));
    draft.book.welders.push_back(std::move(welder));
  }
}

}  // namespace seambook
