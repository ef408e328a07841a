// Which labour elements of the rate book a joint and a weldment take, by which grade, what is tested; and work of a job
// as a whole.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

template <class List, class Test>
bool admits_any(const List& list, Test test) {
  return list.empty() || std::any_of(list.begin(), list.end(), test);
}

bool suits_metal(const LabourElement& element, const RateBook& book, std::size_t base_metal) {
  const std::string& group = book.base_metals[base_metal].group;
  return admits_any(element.groups, [&](const std::string& admitted) { return group_admits(admitted, group); });
}

bool welds_by(const LabourElement& element, const RateBook& book, const Joint& joint) {
  return admits_any(element.processes, [&](std::size_t process) {
    return std::any_of(joint.passes.begin(), joint.passes.end(),
                       [&](const PassGroup& pass) { return book.procedures[pass.procedure].process == process; });
  });
}

bool suits_joint(const LabourElement& element, const RateBook& book, const Joint& joint) {
  if (of_weldment(element.per) || !suits_metal(element, book, joint.base_metal)) return false;
  if (!welds_by(element, book, joint)) return false;
  if (!admits_any(element.welds, [&](WeldKind weld) { return weld == joint.weld; })) return false;
  if (!admits_any(element.finishes, [&](std::size_t finish) { return finish == joint.finish; })) return false;
  if (element.per == Driver::edge_metre && bevelled_edges(joint.weld) == 0) return false;
  if (!element.thickness) return true;
  const double thickness = thinner_member(joint).si;
  return element.thickness->first.si * (1 - 1e-9) <= thickness &&
         thickness <= element.thickness->second.si * (1 + 1e-9);
}

/// The first entry that suits, for each element, driver and way of attendance.
template <class Suits>
std::vector<std::size_t> first_that_suit(const RateBook& book, Suits suits) {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < book.labour_elements.size(); ++i) {
    const LabourElement& element = book.labour_elements[i];
    const bool earlier = std::any_of(found.begin(), found.end(), [&](std::size_t f) {
      const LabourElement& other = book.labour_elements[f];
      return other.kind == element.kind && other.per == element.per && other.attended == element.attended;
    });
    if (!earlier && suits(element)) found.push_back(i);
  }
  return found;
}

LabourKind test_of(std::size_t method) {
  constexpr LabourKind kinds[] = {LabourKind::visual_inspection, LabourKind::penetrant, LabourKind::magnetic,
                                  LabourKind::ultrasonic, LabourKind::radiographic};
  return kinds[method];
}

/// Visual inspection is of every joint; the other tests are where a joint asks for them.
bool asked_for(const Joint& joint, LabourKind kind) {
  if (kind < LabourKind::penetrant || kind > LabourKind::radiographic) return true;
  return std::any_of(joint.inspections.begin(), joint.inspections.end(),
                     [&](const Inspection& inspection) { return inspection.kind == kind; });
}

void take_inspections(JobDraft& draft, const JointText& text, Joint& joint) {
  for (const InspectionText& written : text.inspection) {
    if (!written.method) continue;  // reading has refused it
    const LabourKind kind = test_of(written.method->at);
    const std::string_view word = method_words[written.method->at];
    if (std::any_of(joint.inspections.begin(), joint.inspections.end(), [&](auto& i) { return i.kind == kind; })) {
      draft.diagnostics.error(written.place, fmt::format("{} is asked for twice", word));
      continue;
    }
    Known<dim::ratio> extent = stated(draft, written.extent);
    constexpr Limits share{0, 1, true, false};
    if (written.extent && written.extent->value.si > 1)
      draft.diagnostics.error(written.extent->place, "a test cannot reach more than the whole weld",
                              "write at most 100 %");
    set_limits(draft, extent.si, share);
    joint.inspections.push_back({kind, extent});
  }
}

void refuse_untimed_tests(JobDraft& draft, const JointText& text, const Joint& joint) {
  for (const InspectionText& written : text.inspection) {
    if (!written.method || draft.book.method.covered(test_of(written.method->at))) continue;
    const auto is_it = [&](std::size_t i) { return draft.book.labour_elements[i].kind == test_of(written.method->at); };
    if (std::any_of(joint.elements.begin(), joint.elements.end(), is_it)) continue;
    draft.diagnostics.error(
        written.method->place,
        fmt::format("the rate book does not say what {} of this joint takes", method_words[written.method->at]),
        "add it to 'labour_elements', or to what is bought outside, and leave it out here");
  }
}

}  // namespace

void resolve_joint_labour(JobDraft& draft, const JointText& text, const DefaultLevels& levels, bool complete,
                          Joint& joint) {
  if (const InheritedWord grade = inherited(levels, &JointDefaults::grade); grade.word != nullptr)
    joint.grade = find_in_book(draft, draft.book.labour, &Labour::name, *grade.word, "labour grade");
  take_inspections(draft, text, joint);
  if (!complete || joint.passes.empty()) return;
  joint.elements = first_that_suit(draft.book, [&](const LabourElement& element) {
    return asked_for(joint, element.kind) && suits_joint(element, draft.book, joint);
  });
  refuse_untimed_tests(draft, text, joint);
  const auto bounded = [](const LabourElement& element) { return element.thickness.has_value(); };
  if (!std::any_of(draft.book.labour_elements.begin(), draft.book.labour_elements.end(), bounded)) return;
  freeze(draft, joint.thickness.si);
  freeze(draft, joint.thickness_second.si);
}

void resolve_weldment_labour(JobDraft& draft, Weldment& weldment) {
  if (weldment.joint_count == 0 || weldment.base_metal >= draft.book.base_metals.size()) return;
  const Joint& first = draft.job.joints[weldment.first_joint];
  weldment.elements = first_that_suit(draft.book, [&](const LabourElement& element) {
    return of_weldment(element.per) && suits_metal(element, draft.book, weldment.base_metal) &&
           welds_by(element, draft.book, first) && (element.per != Driver::kg || given(weldment.mass)) &&
           (element.per != Driver::part || given(weldment.parts)) &&
           (element.per != Driver::turn || given(weldment.turns));
  });
}

void resolve_job_work(JobDraft& draft, const std::vector<OneOffText>& one_offs) {
  const bool whole_job = draft.job.of_option.empty();  // an option takes what its joints take
  const double counts[] = {whole_job ? 1.0 : 0.0, static_cast<double>(draft.job.drawings.size()),
                           static_cast<double>(draft.job.joints.size())};
  for (const JobElement& element : draft.book.job_elements) {
    const double count = counts[static_cast<std::size_t>(element.per)];
    if (count > 0)
      draft.job.work.push_back({element.what, element.once, element.attended, count, element.time, element.grade});
    else if (whole_job)
      assume(draft, fmt::format("{} is counted by drawing, but the job names none: it is not charged", element.what));
  }
  for (const OneOffText& written : one_offs) {
    const bool once = !written.paid || written.paid->at == 0;
    std::size_t grade = 0;
    if (written.grade)
      grade = find_in_book(draft, draft.book.labour, &Labour::name, *written.grade, "labour grade").value_or(0);
    if (written.time)
      draft.job.work.push_back({text_of(written.what), once, true, 1, stated(draft, written.time), grade});
    if (written.price) {
      if (written.price->currency != draft.book.currency)
        draft.diagnostics.error(written.price->place,
                                fmt::format("prices are in {}, not {}", draft.book.currency, written.price->currency),
                                "the rate book states the currency");
      draft.job.bought.push_back({text_of(written.what), BoughtKind::other, once ? Scaling::once : Scaling::per_lot,
                                  stated(draft, written.price)});
    }
    if (!written.time && !written.price)
      refuse_lack(draft, written.place, "it is neither said what time this takes nor what it costs",
                  "add 'time', 'price' or both");
  }
}

}  // namespace seambook
