// When the shop works, and how long a qualification lives without use.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "resolve/rate_entry.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

using std::chrono::minutes;
constexpr minutes day_length = std::chrono::hours(24);

/// Whole minutes; others are refused.
minutes whole_minutes(RateDraft& draft, const Written<dim::time>& time) {
  const double count = time.value.si / unit::min.si;
  const double whole = std::round(count);
  if (std::fabs(count - whole) > 1e-6 || whole > static_cast<double>(day_length.count()))
    draft.diagnostics.error(time.place,
                            fmt::format("{} is no whole number of minutes of a day", shown(time.value.si, unit::min)),
                            "the calendar counts in minutes");
  return minutes(static_cast<std::int64_t>(std::min(whole, static_cast<double>(day_length.count()))));
}

std::string span_text(minutes from, minutes to) { return fmt::format("{} to {}", clock_text(from), clock_text(to)); }

/// Breaks by time, each inside the shift and after the one before.
void take_breaks(RateDraft& draft, const ShiftText& written, Shift& shift) {
  for (const BreakText& text : written.breaks) {
    if (!text.at || !text.time) continue;  // reading has refused it
    Break rest{text.at->value, whole_minutes(draft, *text.time)};
    if (rest.at < shift.start) rest.at += day_length;
    if (rest.at + rest.length > shift.end)
      draft.diagnostics.error(text.at->place,
                              fmt::format("the break lies outside its shift, {}", span_text(shift.start, shift.end)));
    else if (!shift.breaks.empty() && rest.at < shift.breaks.back().at + shift.breaks.back().length)
      draft.diagnostics.error(text.at->place, "the break begins before the one before it ends",
                              "list them in their order");
    shift.breaks.push_back(rest);
  }
}

Shift resolve_shift(RateDraft& draft, const ShiftText& written) {
  Shift shift;
  for (const Word& word : written.days) {
    const auto day = std::find(std::begin(weekday_words), std::end(weekday_words), word.text);
    const auto at = static_cast<std::size_t>(day - std::begin(weekday_words));
    if (shift.days.test(at)) draft.diagnostics.error(word.place, fmt::format("{} is given twice", word.text));
    shift.days.set(at);
  }
  if (!written.start || !written.end) return shift;  // reading has refused it
  shift.start = written.start->value;
  shift.end = written.end->value;
  if (shift.end <= shift.start) shift.end += day_length;
  take_breaks(draft, written, shift);
  if (!written.clear_up) return shift;
  shift.clear_up = whole_minutes(draft, *written.clear_up);
  minutes free = shift.end - shift.start;
  for (const Break& rest : shift.breaks) free -= rest.length;
  if (shift.clear_up >= free) draft.diagnostics.error(written.clear_up->place, "clearing up leaves no time to work in");
  return shift;
}

void take_closed(RateDraft& draft, const RateText& text) {
  std::vector<Date>& closed = draft.book.calendar.closed;
  for (const WrittenDate& date : text.closed) {
    if (std::find(closed.begin(), closed.end(), date.value) != closed.end())
      draft.diagnostics.error(date.place, fmt::format("{} is given twice", iso(date.value)));
    closed.push_back(date.value);
  }
  std::sort(closed.begin(), closed.end());
}

void take_overtime(RateDraft& draft, const OvertimeText& written) {
  RateEntry entry{draft, "overtime", written.place, written.evidence};
  Overtime overtime;
  overtime.shifts = find_shifts(draft, written.shifts);
  if (written.most) overtime.most = whole_minutes(draft, *written.most);
  overtime.premium = known(entry, written.premium, "premium", unit::percent);
  decided(draft, {overtime.premium.si.source});
  draft.book.calendar.overtime = std::move(overtime);
}

}  // namespace

std::vector<std::size_t> find_shifts(RateDraft& draft, const std::vector<Word>& words) {
  std::vector<std::size_t> found;
  for (const Word& word : words) {
    const auto shift = find_name(draft.diagnostics, draft.book.calendar.shifts, &Shift::name, word, "shift");
    if (!shift) continue;
    if (std::find(found.begin(), found.end(), *shift) != found.end())
      draft.diagnostics.error(word.place, fmt::format("shift '{}' is given twice", word.text));
    found.push_back(*shift);
  }
  return found;
}

void resolve_calendar(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const ShiftText& written : text.shifts) {
    std::string name = take_name(draft, seen, written.name, "shift");
    Shift shift = resolve_shift(draft, written);
    shift.name = std::move(name);
    draft.book.calendar.shifts.push_back(std::move(shift));
  }
  take_closed(draft, text);
  if (text.qualification_lapses) draft.book.qualification_lapses = static_cast<int>(text.qualification_lapses->value);
}

void resolve_overtime(RateDraft& draft, const RateText& text) {
  if (text.overtime) take_overtime(draft, *text.overtime);
}

}  // namespace seambook
