#include "resolve/day.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/day_paths.hpp"
#include "resolve/faults.hpp"
#include "resolve/set_up_names.hpp"

namespace seambook {
namespace {

using std::chrono::minutes;

Moment from_day(const std::optional<WrittenDay>& day) {
  if (!day) return {};  // reading has refused it
  return {day->date, day->at.value_or(minutes(0))};
}
/// A day without a time counts to its end.
Moment until_day(const std::optional<WrittenDay>& day) {
  if (!day) return {};
  return {day->date, day->at.value_or(std::chrono::hours(24))};
}
Moment moment_of(const std::optional<WrittenMoment>& written) { return written ? written->value : Moment{}; }

NamedOperation operation_of(const std::optional<Word>& word) {
  return word ? NamedOperation{word->text, word->place} : NamedOperation{};
}

template <class Text>
void refuse_backwards(const DayNames& names, const Text& text, Moment from, Moment until) {
  if (text.from && text.until && until <= from) names.diagnostics.error(text.until->place, "it ends before it begins");
}

void take_absences(const DayNames& names, const DayText& text, Day& day) {
  day.absent.reserve(text.absent.size());
  for (const AbsentText& written : text.absent) {
    Absence absence{find_welder(names, written.welder).value_or(0), from_day(written.from), until_day(written.until),
                    text_of(written.why)};
    refuse_backwards(names, written, absence.from, absence.until);
    day.absent.push_back(std::move(absence));
  }
  day.down.reserve(text.down.size());
  for (const DownText& written : text.down) {
    StationDown down{find_station(names, written.station), from_day(written.from), until_day(written.until),
                     text_of(written.why)};
    refuse_backwards(names, written, down.from, down.until);
    day.down.push_back(std::move(down));
  }
}

/// `job: pipe-set/pipe set` names a weldment too, as a row of a table does.
void take_arrivals(const DayNames& names, const DayText& text, Day& day) {
  for (const ArrivedText& written : text.arrived) {
    if (!written.job) continue;  // reading has refused it
    Arrival arrival;
    arrival.at = from_day(written.at);
    const std::optional<JobPath> path = written.weldment ? std::nullopt : match_path(names.jobs, written.job->text);
    if (path && path->weldment && !path->joint) {
      arrival.job = path->job;
      arrival.weldment = path->weldment;
    } else if (const std::optional<std::size_t> job = find_job(names, *written.job)) {
      arrival.job = *job;
      if (written.weldment)
        arrival.weldment =
            find_name(names.diagnostics, names.jobs[*job].weldments, &Weldment::name, *written.weldment, "weldment");
    }
    day.arrived.push_back(arrival);
  }
}

void take_work(const DayNames& names, const DayText& text, Day& day) {
  NamesSeen started, done;
  for (const StartedText& written : text.started) {
    if (written.operation) first_of_its_name(names.diagnostics, started, *written.operation, "operation");
    day.started.push_back({operation_of(written.operation), moment_of(written.at), find_station(names, written.station),
                           find_welder(names, written.welder)});
  }
  for (const DoneText& written : text.done) {
    if (written.operation) first_of_its_name(names.diagnostics, done, *written.operation, "operation");
    if (written.start && written.finish && written.finish->value < written.start->value)
      names.diagnostics.error(written.finish->place, "it ends before it begins");
    day.done.push_back({operation_of(written.operation), moment_of(written.start), moment_of(written.finish),
                        find_station(names, written.station), find_welder(names, written.welder)});
  }
}

void take_releases(const DayNames& names, const DayText& text, Day& day) {
  for (const ReleasedText& written : text.released) {
    if (!written.joint) continue;  // reading has refused it
    const std::optional<JobPath> path = find_joint_path(names, *written.joint);
    if (!path) continue;
    const Joint& joint = names.jobs[path->job].joints[*path->joint];
    Release release{path->job, *path->joint, {}, text_of(written.by), {}};
    if (written.at) release.at = written.at->value;
    if (joint.plan.holds.empty())
      names.diagnostics.error(written.joint->place, fmt::format("joint {} has no hold point", joint.id),
                              "its job states 'hold'");
    else if (written.what)
      release.hold = find_name(names.diagnostics, joint.plan.holds, &Hold::what, *written.what, "hold point");
    day.released.push_back(std::move(release));
  }
}

void take_rush(const DayNames& names, const DayText& text, Day& day) {
  for (const RushText& written : text.rush) {
    Rush rush;
    if (written.job) rush.job = find_job(names, *written.job).value_or(0);
    if (written.due) rush.due = written.due->date;
    if (written.due) rush.due_at = written.due->at;
    if (written.late_weight) rush.late_weight = written.late_weight->value.si;
    if (!written.due && !written.late_weight)
      names.diagnostics.error(written.place, "it does not say how much of a hurry it is in",
                              "state 'due', 'late_weight' or both");
    day.rush.push_back(rush);
  }
}

/// What is not a job, a weldment or a joint is taken for an operation.
void block_operation(const DayNames& names, const Word& word, DayBlock& block) {
  if (const std::optional<JobPath> path = match_path(names.jobs, word.text)) {
    block.job = path->job;
    block.weldment = path->weldment;
    block.joint = path->joint;
  } else {
    block.operation = NamedOperation{word.text, word.place};
  }
}

void take_blocks(const DayNames& names, const DayText& text, Day& day) {
  for (const BlockedText& written : text.blocked) {
    DayBlock block;
    block.why = text_of(written.why);
    const int named =
        (written.operation ? 1 : 0) + (written.joint ? 1 : 0) + (written.weldment ? 1 : 0) + (written.job ? 1 : 0);
    if (named != 1)
      names.diagnostics.error(written.place, "it is not clear what is blocked",
                              "name one of operation, joint, weldment or job");
    std::optional<JobPath> path;
    if (written.operation) block_operation(names, *written.operation, block);
    if (written.joint) path = find_joint_path(names, *written.joint);
    if (written.weldment) path = find_weldment_path(names, *written.weldment);
    if (written.job) block.job = find_job(names, *written.job).value_or(0);
    if (path) {
      block.job = path->job;
      block.weldment = path->weldment;
      block.joint = path->joint;
    }
    day.blocked.push_back(std::move(block));
  }
}

void take_pins(const DayNames& names, const DayText& text, Day& day) {
  for (const DayPinText& written : text.pinned) {
    DayPin pin{operation_of(written.operation), {}};
    if (written.station) pin.pin.station = find_station(names, written.station);
    pin.pin.welder = find_welder(names, written.welder);
    if (written.start) pin.pin.start = written.start->value;
    if (!written.station && !written.welder && !written.start)
      names.diagnostics.error(written.place, "it is pinned to nothing", "state station, start or welder");
    day.pinned.push_back(std::move(pin));
  }
}

/// Overtime follows a shift that is worked that day, by a rate book that knows of overtime after it.
void take_overtime_days(const DayNames& names, const DayText& text, Day& day) {
  const Calendar& calendar = names.book.calendar;
  for (const DayOvertimeText& written : text.overtime) {
    if (!written.date || !written.shift) continue;  // reading has refused it
    const auto shift = find_name(names.diagnostics, calendar.shifts, &Shift::name, *written.shift, "shift");
    if (!shift) continue;
    const Date date = written.date->value;
    const bool closed = std::binary_search(calendar.closed.begin(), calendar.closed.end(), date);
    const auto may = [&](const Overtime& overtime) {
      return std::find(overtime.shifts.begin(), overtime.shifts.end(), *shift) != overtime.shifts.end();
    };
    if (closed || !calendar.shifts[*shift].days.test(static_cast<std::size_t>(weekday(date))))
      names.diagnostics.error(written.date->place,
                              fmt::format("shift {} is not worked on {}", written.shift->text, iso(date)));
    if (!calendar.overtime || !may(*calendar.overtime))
      names.diagnostics.error(written.shift->place,
                              fmt::format("the rate book has no overtime after shift {}", written.shift->text),
                              "add it to the 'shifts' of its 'overtime'");
    day.overtime.push_back({date, *shift});
  }
}

void take_mounted(const DayNames& names, const DayText& text, Day& day) {
  NamesSeen seen;
  for (const MountedText& written : text.mounted) {
    if (!written.station) continue;  // reading has refused it
    first_of_its_name(names.diagnostics, seen, *written.station, "station");
    MountedNow mounted{find_station(names, written.station), {}};
    const auto take = [&](const char* attribute, const std::optional<Word>& value) {
      if (value)
        mounted.mounted.emplace_back(attribute, find_attribute_value(names.diagnostics, names.book, attribute, *value));
    };
    take("process", written.process);
    take("filler", written.filler);
    take("feed", written.feed);
    take("gas", written.gas);
    take("cleanliness", written.cleanliness);
    take("program", written.program);
    take("job", written.job);
    take("weldment", written.weldment);
    if (mounted.mounted.empty())
      names.diagnostics.error(written.place, "it does not say what is mounted", "for example 'process: 141'");
    day.mounted.push_back(std::move(mounted));
  }
}

}  // namespace

std::optional<Day> resolve_day(const DayText& text, const RateBook& book, std::span<const Job> jobs,
                               Diagnostics& diagnostics) {
  const ReadingFaults faults = reading_faults(diagnostics, {}, {text.place.file});
  const DayNames names{book, jobs, diagnostics};
  Day day;
  take_absences(names, text, day);
  take_arrivals(names, text, day);
  take_work(names, text, day);
  take_releases(names, text, day);
  take_rush(names, text, day);
  take_blocks(names, text, day);
  take_pins(names, text, day);
  take_overtime_days(names, text, day);
  take_mounted(names, text, day);
  if (errors_in_files(faults, diagnostics)) return std::nullopt;
  return day;
}

}  // namespace seambook
