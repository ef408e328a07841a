#include "quote/changed_items.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "resolve/job_weld.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_items = 400;

void add_item(Changes& changes, ChangedItem item) {
  if (item.before == item.after) return;
  if (changes.items.size() < most_items)
    changes.items.push_back(std::move(item));
  else
    ++changes.items_left_out;
}

std::string amount_text(double si, const Unit& metric, const RateBook& book) {
  const Unit unit = shown_in(book.terms, metric).unit;
  std::string text = shown(si, unit);
  if (const std::size_t at = text.find("¤"); at != std::string::npos)
    text.replace(at, std::string_view("¤").size(), book.currency);
  return text;
}

/// A number of the rate book: the n-th of that name in an entry of that name.
using RateName = std::tuple<std::string, std::string, std::size_t>;

std::map<RateName, SourceId> numbers_of(const RateBook& book) {
  std::map<RateName, SourceId> numbers;
  std::map<std::pair<std::string, std::string>, std::size_t> seen;
  for (SourceId id = 1; id < book.sources.size(); ++id) {
    const RateSource& source = book.sources[id];
    numbers[{source.entry, source.field, seen[{source.entry, source.field}]++}] = id;
  }
  return numbers;
}

bool is_way_to_weld(const std::string& entry) {
  return entry.starts_with("procedure ") || entry == "preparation" || entry == "pass limit" || entry == "gouging";
}

/// Numbers that one of the quotes reads, in the order of the present book, then those that are gone.
void compare_rates(const QuoteSide& then, const QuoteSide& now, Cause cause, Changes& changes) {
  const auto old_numbers = numbers_of(then.book), new_numbers = numbers_of(now.book);
  const std::vector<SourceId> old_used = used_sources(then.book, then.job, then.quote.setups);
  const std::vector<SourceId> new_used = used_sources(now.book, now.job, now.quote.setups);
  const auto reads = [](const std::vector<SourceId>& used, SourceId id) {
    return std::binary_search(used.begin(), used.end(), id);
  };
  const auto text = [](const RateBook& book, SourceId id) {
    return amount_text(book.sources[id].value, book.sources[id].unit, book);
  };
  std::vector<std::pair<SourceId, ChangedItem>> found;  // by place in the present book
  for (const auto& [name, id] : new_numbers) {
    const auto& [entry, field, n] = name;
    const auto old = old_numbers.find(name);
    const bool read = reads(new_used, id) || (old != old_numbers.end() && reads(old_used, old->second));
    if (!read || is_way_to_weld(entry) != (cause == Cause::procedure)) continue;
    found.push_back(
        {id, {cause, entry, field, old != old_numbers.end() ? text(then.book, old->second) : "", text(now.book, id)}});
  }
  for (const auto& [name, id] : old_numbers) {
    const auto& [entry, field, n] = name;
    if (new_numbers.contains(name) || !reads(old_used, id) || is_way_to_weld(entry) != (cause == Cause::procedure))
      continue;
    found.push_back({first_job_source, {cause, entry, field, text(then.book, id), ""}});
  }
  std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  for (auto& [id, item] : found) add_item(changes, std::move(item));
}

std::string joint_of(const Job& job, const Joint& joint) { return job.weldments[joint.weldment].name + "/" + joint.id; }

std::map<std::string, const Joint*> joints_of(const Job& job) {
  std::map<std::string, const Joint*> joints;
  for (const Joint& joint : job.joints) joints[joint_of(job, joint)] = &joint;
  return joints;
}

std::string procedures_of(const RateBook& book, const Joint& joint) {
  std::vector<std::string> names;
  for (const PassGroup& group : joint.passes) {
    names.push_back(fmt::format("{} {}", role_word(group.role), book.procedures[group.procedure].name));
    if (group.count) names.back() += " × " + shown(group.count->si.value, unit::none);
  }
  return fmt::format("{}", fmt::join(names, ", "));
}

bool of_job(const Sourced& number) { return number.source >= first_job_source && number.source < summed; }

/// Numbers that either job states for the same input; absent ones are empty.
template <class A, class B>
void compare_number(const QuoteSide& now, const std::string& of, const Figure& figure, const A& a, const B& b,
                    Changes& changes) {
  if (!of_job(a.si) && !of_job(b.si)) return;
  const auto text = [&](const Sourced& x) {
    return x.source == no_source ? std::string() : amount_text(x.value, figure.unit, now.book);
  };
  add_item(changes, {Cause::scope, of, figure.words, text(a.si), text(b.si)});
}

void compare_joint(const QuoteSide& then, const QuoteSide& now, const std::string& name, const Joint& a, const Joint& b,
                   Changes& changes) {
  add_item(changes, {Cause::scope, name, "weld", weld_in_words(a), weld_in_words(b)});
  add_item(changes, {Cause::scope, name, "base metal", then.book.base_metals[a.base_metal].name,
                     now.book.base_metals[b.base_metal].name});
  add_item(changes,
           {Cause::scope, name, "finish", then.book.finishes[a.finish].name, now.book.finishes[b.finish].name});
  Row<Sourced> old_row = gather_row(then.book, then.job, a), new_row = gather_row(now.book, now.job, b);
  each_joint_input(old_row.joint, new_row.joint, [&](const Figure& figure, const auto& x, const auto& y) {
    if (&figure != &fig::weldments) compare_number(now, name, figure, x, y, changes);
  });
}

void compare_joints(const QuoteSide& then, const QuoteSide& now, Changes& changes) {
  const auto old_joints = joints_of(then.job), new_joints = joints_of(now.job);
  for (const Joint& joint : now.job.joints) {
    const std::string name = joint_of(now.job, joint);
    const auto old = old_joints.find(name);
    if (old == old_joints.end())
      add_item(changes, {Cause::scope, name, "joint", "", weld_in_words(joint)});
    else
      compare_joint(then, now, name, *old->second, joint, changes);
  }
  for (const Joint& joint : then.job.joints) {
    const std::string name = joint_of(then.job, joint);
    if (!new_joints.contains(name)) add_item(changes, {Cause::scope, name, "joint", weld_in_words(joint), ""});
  }
}

void compare_procedures(const QuoteSide& then, const QuoteSide& now, Changes& changes) {
  const auto old_joints = joints_of(then.job);
  for (const Joint& joint : now.job.joints) {
    const std::string name = joint_of(now.job, joint);
    const auto old = old_joints.find(name);
    if (old == old_joints.end()) continue;
    add_item(changes, {Cause::procedure, name, "procedures", procedures_of(then.book, *old->second),
                       procedures_of(now.book, joint)});
    add_item(changes, {Cause::procedure, name, "position", old->second->position, joint.position});
  }
}

/// Bought lines and work for the job as a whole: what they cost or take, by name.
using Lines = std::vector<std::pair<std::string, std::string>>;

Lines bought_lines(const RateBook& book, const std::string& of, const std::vector<Bought>& bought) {
  constexpr std::array scaling = {"each", "per lot", "once"};
  Lines lines;
  for (const Bought& line : bought)
    lines.push_back({fmt::format("{}: bought {}", of, line.what),
                     fmt::format("{} {}", amount_text(line.price.si.value, unit::money, book),
                                 scaling[static_cast<std::size_t>(line.scaling)])});
  return lines;
}

Lines lines_of(const QuoteSide& side) {
  Lines lines;
  const auto add = [&](const Lines& more) { lines.insert(lines.end(), more.begin(), more.end()); };
  for (const Weldment& weldment : side.job.weldments) {
    const auto number = [&](const char* what, const Sourced& x, const Unit& unit) {
      if (of_job(x)) lines.push_back({weldment.name + ": " + what, amount_text(x.value, unit, side.book)});
    };
    number("how many", weldment.count.si, unit::none);
    number("parts", weldment.parts.si, unit::none);
    number("turns", weldment.turns.si, unit::none);
    number("mass", weldment.mass.si, unit::kg);
    add(bought_lines(side.book, weldment.name, weldment.bought));
  }
  add(bought_lines(side.book, "the job", side.job.bought));
  for (const JobWork& work : side.job.work)
    if (of_job(work.time.si))
      lines.push_back({"the job: " + work.what, amount_text(work.time.si.value * work.count, unit::min, side.book)});
  return lines;
}

void compare_lines(const QuoteSide& then, const QuoteSide& now, Changes& changes) {
  Lines old_lines = lines_of(then);
  const auto split = [&](const std::string& name, std::string before, std::string after) {
    const std::size_t colon = name.find(": ");
    add_item(changes,
             {Cause::scope, name.substr(0, colon), name.substr(colon + 2), std::move(before), std::move(after)});
  };
  for (auto& [name, after] : lines_of(now)) {
    const auto old = std::ranges::find(old_lines, name, &Lines::value_type::first);
    split(name, old != old_lines.end() ? old->second : "", after);
    if (old != old_lines.end()) old_lines.erase(old);
  }
  for (auto& [name, before] : old_lines) split(name, before, "");
}

}  // namespace

void add_changed_items(const QuoteSide& then, const QuoteSide& now, Changes& changes) {
  compare_rates(then, now, Cause::rates, changes);
  compare_rates(then, now, Cause::procedure, changes);
  compare_procedures(then, now, changes);
  compare_lines(then, now, changes);
  compare_joints(then, now, changes);
  add_item(changes, {Cause::quantity, "the job", "quantities", fmt::format("{}", fmt::join(then.job.quantities, ", ")),
                     fmt::format("{}", fmt::join(now.job.quantities, ", "))});
}

}  // namespace seambook
