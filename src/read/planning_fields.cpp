#include "read/planning_fields.hpp"

#include "read/job_fields.hpp"

namespace seambook {
namespace {

constexpr auto hold_table = std::to_array<Field<HoldText>>({
    required(field<&HoldText::what>("what", "what is looked at, in words: root visual")),
    chosen_from(hold_places, field<&HoldText::at>("at", "fit_up, root or complete: after which work")),
    chosen_from(hold_kinds,
                field<&HoldText::kind>("kind", "hold, which stops the work, or witness; hold when left out")),
});

constexpr auto pin_table = std::to_array<Field<PinText>>({
    field<&PinText::station>("station", "name of a station in the rate book: ST-1"),
    field<&PinText::start>("start", "not before and not after: 2026-05-12 06:30"),
    field<&PinText::welder>("welder", "stamp of a welder in the rate book: Q1"),
});

constexpr auto outside_table = std::to_array<Field<OutsideText>>({
    required(field<&OutsideText::what>("what", "what is done, in words: stress relief")),
    field<&OutsideText::after>("after", "joints that must be welded before; all when left out: B01, or [B01, B02]"),
    field<&OutsideText::before>("before", "joints that are welded when it is back; none when left out: [B20]"),
    field<&OutsideText::out>("out", "when it is fetched: 2026-09-15 08:00"),
    field<&OutsideText::back>("back", "when it is back: 2026-09-16 16:00"),
    field<&OutsideText::time>("time", "how long it is away, in place of out and back: 32 h"),
});

}  // namespace

template <>
std::span<const Field<HoldText>> fields<HoldText>() {
  return hold_table;
}
template <>
std::span<const Field<PinText>> fields<PinText>() {
  return pin_table;
}
template <>
std::span<const Field<OutsideText>> fields<OutsideText>() {
  return outside_table;
}

}  // namespace seambook
