#include "read/day_fields.hpp"

#include "read/opening.hpp"

namespace seambook {
namespace {

constexpr std::string_view operation_about = "as the plan names it: pipe-set/pipe set/P17/root";

constexpr auto absent_table = std::to_array<Field<AbsentText>>({
    required(field<&AbsentText::welder>("welder", "stamp of the welder: Q1")),
    required(field<&AbsentText::from>("from", "a day, or a day with a time: 2026-05-12 06:30")),
    required(field<&AbsentText::until>("until", "a day, which counts, or a day with a time: 2026-05-12 15:00")),
    field<&AbsentText::why>("why", "in words"),
});

constexpr auto down_table = std::to_array<Field<DownText>>({
    required(field<&DownText::station>("station", "name of the station: ST-2")),
    required(field<&DownText::from>("from", "a day, or a day with a time: 2026-05-12 06:30")),
    required(field<&DownText::until>("until", "a day, which counts, or a day with a time: 2026-05-12 15:00")),
    field<&DownText::why>("why", "in words"),
});

constexpr auto arrived_table = std::to_array<Field<ArrivedText>>({
    required(field<&ArrivedText::job>("job", "for which material is there: pipe-set")),
    field<&ArrivedText::weldment>("weldment", "of that job; all of them when left out"),
    required(field<&ArrivedText::at>("at", "a day, or a day with a time: 2026-05-12 06:30")),
});

constexpr auto started_table = std::to_array<Field<StartedText>>({
    required(field<&StartedText::operation>("operation", operation_about)),
    required(field<&StartedText::at>("at", "when it was begun: 2026-05-12 06:30")),
    required(field<&StartedText::station>("station", "name of the station: ST-1")),
    field<&StartedText::welder>("welder", "stamp of the welder: Q1"),
});

constexpr auto done_table = std::to_array<Field<DoneText>>({
    required(field<&DoneText::operation>("operation", operation_about)),
    required(field<&DoneText::start>("start", "when it was begun: 2026-05-12 06:30")),
    required(field<&DoneText::finish>("finish", "when it was done: 2026-05-12 07:10")),
    required(field<&DoneText::station>("station", "name of the station: ST-1")),
    field<&DoneText::welder>("welder", "stamp of the welder: Q1"),
});

constexpr auto released_table = std::to_array<Field<ReleasedText>>({
    required(field<&ReleasedText::joint>("joint", "job/weldment/joint: pipe-set/pipe set/P17")),
    field<&ReleasedText::what>("what", "which of its hold points; all when left out: root visual"),
    required(field<&ReleasedText::by>("by", "who released it: name or stamp")),
    field<&ReleasedText::at>("at", "when: 2026-05-12 09:40"),
});

constexpr auto rush_table = std::to_array<Field<RushText>>({
    required(field<&RushText::job>("job", "that is in a hurry: pipe-set")),
    field<&RushText::due>("due", "in place of the job's own: 2026-05-12 12:00"),
    field<&RushText::late_weight>("late_weight", "in place of the job's own: 2"),
});

constexpr auto blocked_table = std::to_array<Field<BlockedText>>({
    field<&BlockedText::operation>("operation",
                                   "or one of joint, weldment, job; a path of any of them is read here too"),
    field<&BlockedText::joint>("joint", "job/weldment/joint: pipe-set/pipe set/P17"),
    field<&BlockedText::weldment>("weldment", "job/weldment: pipe-set/pipe set"),
    field<&BlockedText::job>("job", "pipe-set"),
    required(field<&BlockedText::why>("why", "in words: waiting for drawing rev D")),
});

constexpr auto day_pin_table = std::to_array<Field<DayPinText>>({
    required(field<&DayPinText::operation>("operation", operation_about)),
    field<&DayPinText::station>("station", "name of the station: ST-1"),
    field<&DayPinText::start>("start", "not before and not after: 2026-05-12 06:30"),
    field<&DayPinText::welder>("welder", "stamp of the welder: Q1"),
});

constexpr auto day_overtime_table = std::to_array<Field<DayOvertimeText>>({
    required(field<&DayOvertimeText::date>("date", "2026-05-12")),
    required(field<&DayOvertimeText::shift>("shift", "after which: day")),
});

constexpr auto mounted_table = std::to_array<Field<MountedText>>({
    required(field<&MountedText::station>("station", "name of the station: ST-1")),
    field<&MountedText::process>("process", "ISO 4063 number or AWS letters: 141"),
    field<&MountedText::filler>("filler", "name of a filler, or none"),
    field<&MountedText::feed>("feed", "kind and diameter of the wire: solid 1.0"),
    field<&MountedText::gas>("gas", "name of a gas: I1"),
    field<&MountedText::cleanliness>("cleanliness", "what was worked last: carbon"),
    field<&MountedText::program>("program", "of a laser"),
    field<&MountedText::job>("job", "whose papers are at hand"),
    field<&MountedText::weldment>("weldment", "whose fixture stands"),
});

/// `format` and `units` are taken before anything else, by read_opening.
void opening_was_read(Reading&, Value, const FieldInfo&, DayText&) {}

constexpr auto day_table = std::to_array<Field<DayText>>({
    {{.key = "format", .about = "the first key of every file: 1", .shape = Shape::count}, opening_was_read},
    {{.key = "units", .about = "of bare numbers: {length: mm}", .shape = Shape::section, .inside = unit_fields},
     opening_was_read},
    field<&DayText::absent>("absent", "a list: {welder: Q1, from: 2026-05-12, until: 2026-05-13, why: ill}"),
    field<&DayText::down>("down", "a list: {station: ST-2, from: 2026-05-12 06:30, until: 2026-05-12 12:00}"),
    field<&DayText::arrived>("arrived", "a list: {job: pipe-set, at: 2026-05-12 07:00}"),
    field<&DayText::started>("started", "a list: {operation: ..., at: 2026-05-12 06:30, station: ST-1}"),
    field<&DayText::done>("done", "a list: {operation: ..., start: ..., finish: ..., station: ST-1}"),
    field<&DayText::released>("released", "a list of hold points: {joint: ..., what: root visual, by: Q9}"),
    field<&DayText::rush>("rush", "a list: {job: pipe-set, due: 2026-05-12 12:00}"),
    field<&DayText::blocked>("blocked", "a list: {joint: ..., why: waiting for drawing rev D}"),
    field<&DayText::pinned>("pinned", "a list: {operation: ..., station: ST-1, start: 2026-05-12 06:30}"),
    field<&DayText::overtime>("overtime", "a list: {date: 2026-05-12, shift: day}"),
    field<&DayText::mounted>("mounted", "a list: {station: ST-1, process: 141, gas: I1}"),
});

}  // namespace

template <>
std::span<const Field<AbsentText>> fields<AbsentText>() {
  return absent_table;
}
template <>
std::span<const Field<DownText>> fields<DownText>() {
  return down_table;
}
template <>
std::span<const Field<ArrivedText>> fields<ArrivedText>() {
  return arrived_table;
}
template <>
std::span<const Field<StartedText>> fields<StartedText>() {
  return started_table;
}
template <>
std::span<const Field<DoneText>> fields<DoneText>() {
  return done_table;
}
template <>
std::span<const Field<ReleasedText>> fields<ReleasedText>() {
  return released_table;
}
template <>
std::span<const Field<RushText>> fields<RushText>() {
  return rush_table;
}
template <>
std::span<const Field<BlockedText>> fields<BlockedText>() {
  return blocked_table;
}
template <>
std::span<const Field<DayPinText>> fields<DayPinText>() {
  return day_pin_table;
}
template <>
std::span<const Field<DayOvertimeText>> fields<DayOvertimeText>() {
  return day_overtime_table;
}
template <>
std::span<const Field<MountedText>> fields<MountedText>() {
  return mounted_table;
}
template <>
std::span<const Field<DayText>> fields<DayText>() {
  return day_table;
}

std::vector<FieldInfo> day_fields() { return infos_of<DayText>(); }

}  // namespace seambook
