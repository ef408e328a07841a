// By whom is welded: welders, what they are qualified for, when they work.
#include <algorithm>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

bool lists(const std::vector<Word>& words, std::string_view text) {
  return words.empty() || std::any_of(words.begin(), words.end(), [&](const Word& word) { return word.text == text; });
}

void take_ranges(const QualificationText& text, Qualification& qualification) {
  qualification.fillets = lists(text.welds, tested_welds[0]);
  qualification.grooves = lists(text.welds, tested_welds[1]);
  qualification.plates = lists(text.forms, tested_forms[0]);
  qualification.tubes = lists(text.forms, tested_forms[1]);
  if (text.thickness) qualification.thickness = {text.thickness->low.value, text.thickness->high.value};
  if (!text.diameter) return;
  qualification.diameter_from = text.diameter->low.value;
  if (text.diameter->high.place != text.diameter->low.place) qualification.diameter_to = text.diameter->high.value;
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
  take_ranges(text, qualification);
  if (text.diameter && !qualification.tubes)
    draft.diagnostics.error(text.diameter->low.place, "a diameter is stated, and tube is not among the forms",
                            "add tube to 'forms', or leave the diameter out");
  if (text.until) qualification.until = text.until->value;
  if (text.last_used) qualification.last_used = text.last_used->value;
  qualification.basis_note = text_of(text.basis_note);
  return qualification;
}

}  // namespace

void resolve_welders(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const WelderText& written : text.welders) {
    Welder welder;
    welder.stamp = take_name(draft, seen, written.stamp, "welder");
    welder.grade = find_grade(draft, written.grade);
    welder.shifts = find_shifts(draft, written.shifts);
    for (const QualificationText& qualification : written.qualifications)
      welder.qualifications.push_back(resolve_qualification(draft, qualification));
    draft.book.welders.push_back(std::move(welder));
  }
}

}  // namespace seambook
