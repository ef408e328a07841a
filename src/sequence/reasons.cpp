#include "sequence/reasons.hpp"

#include <fmt/format.h>

#include <map>
#include <optional>

namespace seambook {

namespace {

/// The finished order as it looks from one of its steps.
struct View {
  const SequenceProblem& problem;
  const Sequence& sequence;
  std::vector<std::size_t> step_of;                           // per operation
  std::vector<std::vector<std::size_t>> before;               // predecessors per operation
  std::vector<std::map<std::uint32_t, std::size_t>> to_come;  // per attribute: work after this step that states a value
  std::map<Attributes, std::size_t> last_seen;                // per set-up the last step before this one that needed it
  Attributes mounted;                                         // before this step
};

std::optional<std::uint32_t> stated(const Attributes& attributes, std::size_t a) {
  return a < attributes.slots.size() ? attributes.slots[a] : std::nullopt;
}

std::string minutes(Time<> duration) {
  std::string text = fmt::format("{:.1f}", duration.si / unit::min.si);
  if (text.ends_with(".0")) text.erase(text.size() - 2);
  return text + " min";
}

std::string value_words(const View& view, std::size_t a, std::uint32_t value) {
  return view.problem.model.attributes[a] + " " + view.problem.model.values[a][value];
}

void add_listed(std::string& list, const std::string& item) { list += (list.empty() ? "" : ", ") + item; }

std::string setup_words(const View& view, const Attributes& needs) {
  std::string words;
  for (std::size_t a = 0; a < needs.slots.size(); ++a)
    if (needs.slots[a]) add_listed(words, value_words(view, a, *needs.slots[a]));
  return words;
}

const Attributes& needs_at(const View& view, std::size_t step) {
  return view.problem.operations[view.sequence.steps[step].operation].needs;
}

std::string unchanged_words(const View& view, std::size_t step) {
  const std::string setup = setup_words(view, needs_at(view, step));
  if (setup.empty()) return "needs no set-up";
  if (step > 0 && needs_at(view, step) == needs_at(view, step - 1)) return "same set-up as before";
  return (step == 0 ? "mounted at the start: " : "mounted already: ") + setup;
}

std::string change_words(const View& view, std::size_t step) {
  const Change& change = view.sequence.steps[step].change;
  std::string changed;
  for (const std::size_t a : change.attributes) {
    const std::string& to = view.problem.model.values[a][*needs_at(view, step).slots[a]];
    const auto from = stated(view.mounted, a);
    add_listed(changed, (from ? value_words(view, a, *from) + " -> " : view.problem.model.attributes[a] + " ") + to);
  }
  const bool cold =
      step == 0 && view.mounted == Attributes{std::vector<std::optional<std::uint32_t>>(view.mounted.slots.size())};
  const std::string takes = change.tasks.empty() ? "calls no change task" : minutes(change.duration);
  return fmt::format("{} {} ({})", cold ? "set up" : "change", changed, takes);
}

/// What is left of the work that asked for the first attribute that gave way, and why it is not done now.
std::string left_behind_words(const View& view, std::size_t step) {
  for (const std::size_t a : view.sequence.steps[step].change.attributes) {
    const auto value = stated(view.mounted, a);
    if (step == 0 || !value) continue;
    const std::string work = value_words(view, a, *value);
    std::string waiting;
    for (std::size_t o = 0; o < view.problem.operations.size(); ++o) {
      if (view.step_of[o] <= step || stated(view.problem.operations[o].needs, a) != value) continue;
      std::optional<std::size_t> blocker;
      for (const std::size_t other : view.before[o])
        if (view.step_of[other] >= step && (!blocker || other < *blocker)) blocker = other;
      const std::string& name = view.problem.operations[o].name;
      if (!blocker) return fmt::format("; {} ({}) comes later", name, work);
      if (waiting.empty())
        waiting = fmt::format("; {} ({}) waits for {}", name, work, view.problem.operations[*blocker].name);
    }
    return waiting.empty() ? fmt::format("; the {} work is done", work) : waiting;
  }
  return {};
}

/// When the same set-up was left earlier because this operation was not ready: what it waited for.
std::string waited_words(const View& view, std::size_t step) {
  const std::size_t operation = view.sequence.steps[step].operation;
  const auto seen = view.last_seen.find(needs_at(view, step));
  if (seen == view.last_seen.end() || seen->second + 1 == step) return {};
  std::optional<std::size_t> last;
  for (const std::size_t other : view.before[operation])
    if (view.step_of[other] > seen->second && (!last || view.step_of[other] > *last)) last = view.step_of[other];
  if (!last) return {};
  return "; waited for " + view.problem.operations[view.sequence.steps[*last].operation].name;
}

Time<> one_attribute_change(const View& view, std::size_t a, std::uint32_t from, std::uint32_t to) {
  Attributes mounted, needs;
  mounted.slots.resize(view.problem.model.attributes.size());
  needs.slots.resize(view.problem.model.attributes.size());
  mounted.slots[a] = from;
  needs.slots[a] = to;
  return change(view.problem.model, mounted, needs).duration;
}

/// Names the value still to come that would have been dearest to do first, when it is dearer that way round.
std::string direction_words(const View& view, std::size_t step) {
  std::string words;
  Time<> most_saved{};
  const Attributes& needs = needs_at(view, step);
  for (std::size_t a = 0; a < needs.slots.size(); ++a) {
    if (!needs.slots[a] || (step > 0 && stated(view.mounted, a) == needs.slots[a])) continue;
    for (const auto& [other, count] : view.to_come[a]) {
      if (count == 0 || other == *needs.slots[a]) continue;
      const Time<> this_way = one_attribute_change(view, a, *needs.slots[a], other);
      const Time<> other_way = one_attribute_change(view, a, other, *needs.slots[a]);
      if (!(other_way - this_way > most_saved)) continue;
      most_saved = other_way - this_way;
      words = fmt::format("; {} before {}: {} that way round, not {}", value_words(view, a, *needs.slots[a]),
                          view.problem.model.values[a][other], minutes(this_way), minutes(other_way));
    }
  }
  return words;
}

View view_of(const SequenceProblem& problem, const Sequence& sequence) {
  View view{problem, sequence, {}, {}, {}, {}, problem.start};
  view.step_of.resize(problem.operations.size());
  for (std::size_t step = 0; step < sequence.steps.size(); ++step) view.step_of[sequence.steps[step].operation] = step;
  view.before.resize(problem.operations.size());
  for (const auto& [before, after] : problem.precedence) view.before[after].push_back(before);
  view.to_come.resize(problem.model.attributes.size());
  for (const Operation& operation : problem.operations)
    for (std::size_t a = 0; a < operation.needs.slots.size(); ++a)
      if (operation.needs.slots[a]) ++view.to_come[a][*operation.needs.slots[a]];
  return view;
}

}  // namespace

void give_reasons(const SequenceProblem& problem, Sequence& sequence) {
  View view = view_of(problem, sequence);
  for (std::size_t step = 0; step < sequence.steps.size(); ++step) {
    const Attributes& needs = needs_at(view, step);
    for (std::size_t a = 0; a < needs.slots.size(); ++a)
      if (needs.slots[a]) --view.to_come[a][*needs.slots[a]];
    const bool changes = !sequence.steps[step].change.attributes.empty();
    std::string reason = changes ? change_words(view, step) : unchanged_words(view, step);
    if (changes) reason += left_behind_words(view, step);
    sequence.steps[step].reason = reason + waited_words(view, step) + direction_words(view, step);
    view.last_seen[needs] = step;
    view.mounted = mounted_after(view.mounted, needs);
  }
}

}  // namespace seambook
