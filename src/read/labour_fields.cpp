#include "read/labour_fields.hpp"

#include "read/rate_fields.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

FieldInfo of_dimension(const FieldInfo& info, Dim dimension) {
  FieldInfo other = info;
  other.dim = dimension;
  return other;
}

/// `2 min`, `1.5 min/m`, `0.02 min/kg`: the unit tells what it is counted in.
void read_element_time(Reading& reading, Value value, const FieldInfo& info, LabourElementText& element) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return;
  const std::string_view text = value.text();
  const std::size_t slash = text.find('/');
  const std::string_view unit = slash == text.npos ? std::string_view() : text.substr(slash + 1);
  if (unit.empty()) {
    element.time = written_of<dim::time>(reading, text, value.place(), info);
  } else if (find_unit(dim::mass, unit)) {
    element.mass_pace =
        written_of<dim::time_per_mass>(reading, text, value.place(), of_dimension(info, dim::time_per_mass));
  } else {
    element.pace = written_of<dim::pace>(reading, text, value.place(), of_dimension(info, dim::pace));
  }
}

constexpr Dim paces[] = {dim::pace, dim::time_per_mass};

constexpr auto element_own = std::to_array<Field<LabourElementText>>({
    required(chosen_from(element_words, field<&LabourElementText::element>("element", "what is done: cleaning"))),
    required(chosen_from(driver_words, field<&LabourElementText::per>(
                                           "per", "what it is counted by: joint, metre, weld_metre, share ..."))),
    {{.key = "time",
      .about = "for one of what it is counted by: 2 min, 1.5 min/m or 0.02 min/kg",
      .shape = Shape::amount,
      .dim = dim::time,
      .may_be_zero = true,
      .or_dims = paces},
     read_element_time},
    or_zero(field<&LabourElementText::share>("share", "of the minutes of welding, in place of a time: 5 %")),
    field<&LabourElementText::multiple>("multiple", "what a repair costs, in first-time welds: 4"),
    field<&LabourElementText::processes>("processes", "only for these: [111, 136]"),
    field<&LabourElementText::groups>("groups", "only for these base-metal groups: [\"8\"]"),
    known_as(weld_keys, field<&LabourElementText::welds>("welds", "only for these: [single_v]")),
    field<&LabourElementText::finishes>("finishes", "only for these: [F5]"),
    rising(field<&LabourElementText::thickness>(
        "thickness", "only from the first to the second, of the thinner member: [8 mm, 40 mm]")),
    field<&LabourElementText::attended>("attended", "false where the part waits and nobody works at it"),
    field<&LabourElementText::grade>("grade", "name of a labour grade; the joint's when left out: fitter"),
});
constexpr auto element_table = joined(element_own, figure_evidence_fields<&LabourElementText::evidence>());

constexpr auto job_element_own = std::to_array<Field<JobElementText>>({
    required(chosen_from(job_element_words, field<&JobElementText::element>("element", "what is done: take_off"))),
    required(chosen_from(job_driver_words,
                         field<&JobElementText::per>("per", "what it is counted by: job, drawing or joint_line"))),
    required(or_zero(field<&JobElementText::time>("time", "for one of what it is counted by: 20 min"))),
    chosen_from(paid_words, field<&JobElementText::paid>("paid", "once, or per lot")),
    field<&JobElementText::grade>("grade", "name of a labour grade; the first when left out: welder"),
    field<&JobElementText::attended>("attended", "false where nobody works at it: electrodes in the oven"),
});
constexpr auto job_element_table = joined(job_element_own, figure_evidence_fields<&JobElementText::evidence>());

constexpr auto one_off_table = std::to_array<Field<OneOffText>>({
    required(field<&OneOffText::what>("what", "is done or bought, in words: procedure test of the root pass")),
    field<&OneOffText::time>("time", "that it takes: 6 h"),
    field<&OneOffText::price>("price", "of what is bought for it: 180 EUR"),
    chosen_from(paid_words, field<&OneOffText::paid>("paid", "once, or per lot")),
    field<&OneOffText::grade>("grade", "name of a labour grade; the first when left out: welder"),
});

constexpr auto inspection_table = std::to_array<Field<InspectionText>>({
    required(chosen_from(method_words,
                         field<&InspectionText::method>("method", "of testing by ISO 9712: VT, PT, MT, UT or RT"))),
    field<&InspectionText::extent>("extent", "share of the weld that is tested, all when left out: 20 %"),
});

}  // namespace

template <>
std::span<const Field<LabourElementText>> fields<LabourElementText>() {
  return element_table;
}
template <>
std::span<const Field<JobElementText>> fields<JobElementText>() {
  return job_element_table;
}
template <>
std::span<const Field<OneOffText>> fields<OneOffText>() {
  return one_off_table;
}
template <>
std::span<const Field<InspectionText>> fields<InspectionText>() {
  return inspection_table;
}

}  // namespace seambook
