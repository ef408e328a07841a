#include "report/task_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/number_text.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

std::size_t lot_pieces(const Job& job, const Weldment& weldment) {
  return static_cast<std::size_t>(job.quantities.front()) * static_cast<std::size_t>(weldment.count.si.value);
}

const PassGroup* group_of(const PlannedShop& shop, const TaskRef& ref, const TaskStep& step) {
  const Joint* joint = joint_of(shop, ref);
  if (joint == nullptr || step.kind != StepKind::passes) return nullptr;
  return &joint->passes[step.group];
}

}  // namespace

const TaskRef& ref_of(const PlannedShop& shop, const PlannedTask& at) { return shop.work.refs[at.task]; }
const Way& way_of(const PlannedShop& shop, const PlannedTask& at) {
  return shop.work.problem.tasks[at.task].ways[at.way];
}
const Weldment& weldment_of(const PlannedShop& shop, const TaskRef& ref) {
  return shop.jobs[ref.job].weldments[ref.weldment];
}
const Joint* joint_of(const PlannedShop& shop, const TaskRef& ref) {
  return ref.joint ? &shop.jobs[ref.job].joints[*ref.joint] : nullptr;
}

Time<> labour_of(const TaskRef& ref) {
  Time<> sum{};
  for (const TaskStep& step : ref.steps) sum = sum + step.labour;
  return sum;
}
Time<> arc_of(const TaskRef& ref) {
  Time<> sum{};
  for (const TaskStep& step : ref.steps) sum = sum + step.arc;
  return sum;
}

std::vector<std::size_t> procedures_of(const PlannedShop& shop, const TaskRef& ref) {
  std::vector<std::size_t> found;
  for (const TaskStep& step : ref.steps) {
    const PassGroup* group = group_of(shop, ref, step);
    if (group != nullptr && std::find(found.begin(), found.end(), group->procedure) == found.end())
      found.push_back(group->procedure);
  }
  return found;
}

std::string order_words(const Job& job) { return job.customer.empty() ? job.name : job.name + ", " + job.customer; }

std::string lot_words(const PlannedShop& shop, const TaskRef& ref) {
  const Weldment& weldment = weldment_of(shop, ref);
  if (static_cast<std::size_t>(ref.pieces) >= lot_pieces(shop.jobs[ref.job], weldment)) return weldment.name;
  if (ref.pieces == 1) return fmt::format("{}, piece {}", weldment.name, ref.first_piece);
  return fmt::format("{}, pieces {} to {}", weldment.name, ref.first_piece, ref.first_piece + ref.pieces - 1);
}

std::string joint_words(const Joint& joint) {
  return joint.mark.empty() ? joint.id : fmt::format("{} ({})", joint.id, joint.mark);
}

std::string step_words(const PlannedShop& shop, const TaskRef& ref, const TaskStep& step) {
  const PassGroup* group = group_of(shop, ref, step);
  if (step.kind == StepKind::outside && !step.hold.empty()) return step.hold;
  if (group == nullptr) return std::string(step_word(step.kind));
  return joint_of(shop, ref)->passes.size() == 1 ? "weld" : std::string(role_word(group->role));
}

std::string steps_words(const PlannedShop& shop, const TaskRef& ref) {
  std::vector<std::string> steps;
  for (const TaskStep& step : ref.steps) add_new(steps, step_words(shop, ref, step));
  return joined(steps, ", ");
}

std::string joint_work_words(const PlannedShop& shop, const TaskRef& ref) {
  const Joint* joint = joint_of(shop, ref);
  return (joint == nullptr ? "" : joint_words(*joint) + ": ") + steps_words(shop, ref);
}

std::string people_words(const PlannedShop& shop, const Way& way) {
  std::string words;
  for (std::size_t p = 0; p < way.people.size(); ++p)
    words += (p == 0 ? "" : p == 1 ? " with " : ", ") + shop.work.problem.people[way.people[p]].stamp;
  return words;
}

std::string procedure_words(const RateBook& book, std::size_t procedure) {
  const Procedure& by = book.procedures[procedure];
  return process_word(book.processes[by.process].number, book.terms) + " " + by.name;
}

std::string filler_words(const RateBook& book, const Procedure& by) {
  if (!by.filler) return "none";
  const Filler& filler = book.fillers[*by.filler];
  return fmt::format("{}, {}", filler.name, shown(filler.diameter.si.value, unit::mm, book.terms));
}

std::string gas_words(const RateBook& book, const Procedure& by) {
  return by.gas ? book.gases[*by.gas].name : std::string("none");
}

bool stops_after(const TaskRef& ref) {
  return std::any_of(ref.steps.begin(), ref.steps.end(), [](const TaskStep& step) { return step.stops; });
}

std::string hold_words(const TaskRef& ref) {
  std::vector<std::string> words;
  for (const TaskStep& step : ref.steps)
    if (step.kind != StepKind::outside) add_new(words, step.hold);
  return joined(words, "; ");
}

std::string lifting_words(const PlannedShop& shop, const TaskRef& ref) {
  const Weldment& weldment = weldment_of(shop, ref);
  std::vector<std::string> words;
  if (weldment.mass.si.source != no_source)
    words.push_back(shown_fixed(weldment.mass.si.value, unit::kg, 0, shop.book.terms));
  if (const double turns = weldment.turns.si.value; weldment.turns.si.source != no_source && turns > 0)
    words.push_back(figure(turns, 0) + (turns == 1 ? " turn" : " turns"));
  if (!weldment.plan.lifted_on.empty()) {
    std::vector<std::string> lugs;
    for (const std::size_t joint : weldment.plan.lifted_on) add_new(lugs, shop.jobs[ref.job].joints[joint].id);
    words.push_back("lift on released lugs only: " + joined(lugs, ", "));
  }
  if (weldment.plan.confined)
    words.push_back("confined space, outside: " + weldment.plan.attendant.value_or("nobody named"));
  return joined(words, ", ");
}

std::string change_words(const PlannedShop& shop, const Change& change) {
  std::vector<std::string> words;
  words.reserve(change.tasks.size());
  const SetupModel& model = shop.work.problem.model;
  for (const std::size_t task : change.tasks)
    words.push_back(fmt::format("{} {} min", model.tasks[task].name, figure(model.tasks[task].duration.si / 60, 0)));
  return joined(words, ", ");
}

void add_new(std::vector<std::string>& list, const std::string& word) {
  if (!word.empty() && std::find(list.begin(), list.end(), word) == list.end()) list.push_back(word);
}

std::string joined(const std::vector<std::string>& list, std::string_view separator) {
  std::string out;
  for (const std::string& word : list) out.append(out.empty() ? std::string_view() : separator).append(word);
  return out;
}

}  // namespace seambook
