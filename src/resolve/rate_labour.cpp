// Labour elements, work of a job as a whole, and the labour method.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

std::string spaced(std::string_view word) {
  std::string text(word);
  std::replace(text.begin(), text.end(), '_', ' ');
  return text;
}

bool counts_length(Driver per) { return per >= Driver::metre && per <= Driver::pass_metre; }

/// The one number that an element of this driver needs; the others must not stand.
void resolve_amount(RateEntry& entry, const LabourElementText& text, LabourElement& element) {
  const auto refuse = [&](const auto& written, const char* needed) {
    if (written)
      entry.draft.diagnostics.error(written->place, fmt::format("{} takes {}", entry.name, needed),
                                    "what it is counted by decides");
  };
  const bool share = element.per == Driver::share, kg = element.per == Driver::kg, length = counts_length(element.per);
  const char* needs = share ? "a share" : kg ? "minutes per mass" : length ? "minutes per metre" : "minutes";
  if (!share) refuse(text.share, needs);
  if (!kg) refuse(text.mass_pace, needs);
  if (!length) refuse(text.pace, needs);
  if (share || kg || length) refuse(text.time, needs);
  const bool stands = share ? text.share.has_value() : text.time || text.pace || text.mass_pace;
  if (!stands) refuse_missing(entry, share ? "share" : "time", fmt::format("it takes {}", needs));
  if (share) element.share = known(entry, text.share, "share", unit::percent);
  if (kg) element.mass_pace = known(entry, text.mass_pace, "time", unit::min_per_kg);
  if (length) element.pace = known(entry, text.pace, "time", unit::min_per_m);
  if (!share && !kg && !length) element.time = known(entry, text.time, "time", unit::min);
  element.multiple = known(entry, text.multiple, "multiple", unit::none);
  const bool repair = element.kind == LabourKind::repair;
  if (repair && !text.multiple) refuse_missing(entry, "multiple", "a repair costs several first-time welds: 4");
  if (!repair && text.multiple) refuse(text.multiple, needs);
}

void resolve_filters(RateEntry& entry, const LabourElementText& text, LabourElement& element) {
  Diagnostics& diagnostics = entry.draft.diagnostics;
  for (const Word& word : text.processes)
    if (const auto found = find_process(diagnostics, entry.draft.book.processes, word))
      element.processes.push_back(*found);
  for (const Word& word : text.finishes)
    if (const auto found = find_name(diagnostics, entry.draft.book.finishes, &Finish::name, word, "finish"))
      element.finishes.push_back(*found);
  for (const Word& word : text.welds)
    if (const auto found = find_weld_kind(diagnostics, word)) element.welds.push_back(*found);
  element.groups = texts_of(text.groups);
  if (text.thickness) element.thickness = {text.thickness->low.value, text.thickness->high.value};
  if (!of_weldment(element.per)) return;
  const std::string hint = "they choose joints, but this is counted by weldment";
  if (!text.welds.empty()) diagnostics.error(text.welds.front().place, entry.name + " has welds", hint);
  if (!text.finishes.empty()) diagnostics.error(text.finishes.front().place, entry.name + " has finishes", hint);
  if (text.thickness) diagnostics.error(text.thickness->low.place, entry.name + " has a thickness", hint);
}

bool is_test(LabourKind kind) { return kind >= LabourKind::penetrant && kind <= LabourKind::radiographic; }

void check_sense(RateEntry& entry, const LabourElementText& text, const LabourElement& element) {
  Diagnostics& diagnostics = entry.draft.diagnostics;
  if (element.kind == LabourKind::repair && element.per != Driver::share)
    diagnostics.error(text.per->place, entry.name + " is a share of the minutes of welding", "write 'per: share'");
  if (is_test(element.kind) && of_weldment(element.per))
    diagnostics.error(text.per->place, entry.name + " belongs to the joints that ask for it",
                      "count it by joint, metre or weld_metre");
  const bool covered = entry.draft.book.method.covered(element.kind);
  const double stated =
      element.time.si.value + element.pace.si.value + element.mass_pace.si.value + element.share.si.value;
  if (covered && element.attended && stated > 0)
    refuse_twice_charged(entry, spaced(element_words[static_cast<std::size_t>(element.kind)]), text.place);
}

}  // namespace

void refuse_twice_charged(RateEntry& entry, std::string_view what, Place place) {
  entry.draft.diagnostics.error(place,
                                fmt::format("minutes are stated for {}, but the operating factor covers it", what),
                                "it would be charged twice: leave the minutes out, or take it out of 'factor_covers'");
}

void resolve_labour_elements(RateDraft& draft, const RateText& text) {
  for (const LabourElementText& written : text.labour_elements) {
    if (!written.element || !written.per) continue;  // reading has refused it
    LabourElement element;
    element.kind = static_cast<LabourKind>(written.element->at);
    element.per = static_cast<Driver>(written.per->at);
    element.attended = written.attended ? written.attended->value : element.kind != LabourKind::waiting;
    RateEntry entry{
        draft,
        fmt::format("{} per {}", spaced(element_words[written.element->at]), spaced(driver_words[written.per->at])),
        written.place, written.evidence};
    if (written.grade) element.grade = find_grade(draft, written.grade);
    if (written.grade && !element.attended)
      draft.diagnostics.error(written.grade->place, entry.name + " has a grade, but nobody attends it",
                              "leave out 'grade'");
    resolve_amount(entry, written, element);
    resolve_filters(entry, written, element);
    check_sense(entry, written, element);
    draft.book.labour_elements.push_back(std::move(element));
  }
}

void resolve_job_elements(RateDraft& draft, const RateText& text) {
  for (const JobElementText& written : text.job_elements) {
    if (!written.element || !written.per) continue;  // reading has refused it
    JobElement element;
    element.what = spaced(job_element_words[written.element->at]);
    element.per = static_cast<JobDriver>(written.per->at);
    element.once = !written.paid || written.paid->at == 0;
    element.attended = !written.attended || written.attended->value;
    element.grade = find_grade(draft, written.grade);
    RateEntry entry{draft, fmt::format("{} per {}", element.what, spaced(job_driver_words[written.per->at])),
                    written.place, written.evidence};
    element.time = known(entry, written.time, "time", unit::min);
    draft.book.job_elements.push_back(std::move(element));
  }
}

}  // namespace seambook
