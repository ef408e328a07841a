#include "compare/ways.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "estimate/estimate.hpp"
#include "resolve/names.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

std::string family_words(const RateBook& book, const Joint& joint) {
  const Unit in = shown_in(book.terms, unit::mm).unit;
  std::string words = fmt::format("{} {}", weld_word(joint.weld), shown(size_to_compare(joint), in));
  if (joint.weld == WeldKind::fillet) words += fmt::format(" on {}", shown(thinner_member(joint), in));
  return words + fmt::format(", group {}, {}, finish {}", book.base_metals[joint.base_metal].group,
                             position_word(joint.position, joint.weld, book.terms), book.finishes[joint.finish].name);
}

/// Seams are alike when they look alike to the buyer and are welded alike as the job stands.
std::string family_key(const RateBook& book, const Joint& joint) {
  std::string key = family_words(book, joint);
  for (const PassGroup& group : joint.passes) key += "|" + book.procedures[group.procedure].name;
  for (const std::size_t other : joint.alternatives) key += "/" + book.procedures[other].name;
  return key;
}

std::size_t process_of(const RateBook& book, std::size_t procedure) { return book.procedures[procedure].process; }

/// What a process offers: passes, and how they came about.
struct Offer {
  std::vector<PassGroup> passes;  // empty: it does not suit
  bool chosen = false;
  std::string words;
};

Offer named_offer(const RateBook& book, const Joint& joint, std::size_t procedure) {
  PassGroup group{procedure, std::nullopt};
  if (joint.passes.size() == 1) group.count = joint.passes.front().count;
  return {{group}, false, fmt::format("{}, named by the job", book.procedures[procedure].name)};
}

/// The reasons against the procedure of this process that comes nearest; nothing when there is none for the base metal.
std::optional<std::string> nearest_reasons(const RateBook& book, const Joint& joint, std::size_t process) {
  ChoiceRequest request = request_for(book, joint);
  std::optional<std::vector<std::string>> fewest;
  for (const Procedure& procedure : book.procedures) {
    const bool for_metal = std::any_of(procedure.groups.begin(), procedure.groups.end(),
                                       [&](const std::string& group) { return group_admits(group, request.group); });
    if (procedure.process != process || !for_metal) continue;
    std::vector<std::string> reasons = reasons_against(book, procedure, request);
    if (reasons.empty())  // all fits but the size
      reasons.push_back(fmt::format("{} is too small for {}", procedure.name,
                                    shown(request.size, shown_in(book.terms, unit::mm).unit)));
    if (!fewest || reasons.size() < fewest->size()) fewest = std::move(reasons);
  }
  if (!fewest) return std::nullopt;
  return joined_with_and(*fewest);
}

/// Nothing when the book has no procedure of this process for the base metal.
std::optional<Offer> offer_of(const RateBook& book, const Joint& joint, std::size_t process) {
  for (const std::size_t other : joint.alternatives)
    if (process_of(book, other) == process) return named_offer(book, joint, other);
  ChoiceRequest request = request_for(book, joint);
  request.process = book.processes[process].number;
  const ChoiceResult choice = choose_procedure(book, request);
  if (choice.procedure) return Offer{{{*choice.procedure, std::nullopt}}, true, choice.words};
  if (auto reasons = nearest_reasons(book, joint, process)) return Offer{{}, false, std::move(*reasons)};
  return std::nullopt;
}

std::string own_words(const RateBook& book, const Joint& joint) {
  std::string words;
  for (const PassGroup& group : joint.passes)
    words += (words.empty() ? "" : ", then ") + book.procedures[group.procedure].name;
  return words + ", as the job stands";
}

/// A joint as it would be welded by these passes.
Joint welded_by(const Joint& joint, const Offer& offer) {
  Joint row = joint;
  row.passes = offer.passes;
  row.choice = {offer.chosen, {}};
  return row;
}

/// A way that does not suit every joint of its family has no rows.
void take_back(FamilyWay& way, Job& rows) {
  rows.joints.resize(rows.joints.size() - way.rows.size());
  way.rows.clear();
  way.look_again.clear();
}

/// What the rate book's checks say of a joint welded so: an error is a reason against it.
struct Checked {
  std::string error;
  std::vector<std::string> warnings;
};
Checked check_row(const RateBook& book, const Job& job, const Joint& row) {
  Checked checked;
  for (const Diagnostic& d :
       joint_findings(book, job, row, row_figures(lift_row<double>(gather_row(book, job, row))))) {
    if (d.level == Level::error && checked.error.empty()) checked.error = d.message;
    if (d.level == Level::warning) checked.warnings.push_back(d.message);
  }
  return checked;
}

void add_way(const RateBook& book, const Job& job, std::size_t process, Family& family, Ways& ways) {
  const Joint& first = job.joints[family.joints.front()];
  FamilyWay way{process, {}, process_of(book, first.passes.front().procedure) == process, {}, {}};
  for (const std::size_t j : family.joints) {
    const Joint& joint = job.joints[j];
    if (way.as_the_job_says) {
      way.words = own_words(book, joint);
      way.rows.push_back(ways.job.joints.size());
      ways.job.joints.push_back(joint);
      continue;
    }
    const std::optional<Offer> offer = offer_of(book, joint, process);
    if (!offer) return;
    way.words = offer->words;
    if (offer->passes.empty()) break;  // joints of a family are alike: none of them suits
    Joint row = welded_by(joint, *offer);
    Checked checked = check_row(book, job, row);
    if (!checked.error.empty()) {  // so do the others of the family: they are alike
      way.words = std::move(checked.error);
      break;
    }
    way.look_again.insert(way.look_again.end(), checked.warnings.begin(), checked.warnings.end());
    way.rows.push_back(ways.job.joints.size());
    ways.job.joints.push_back(std::move(row));
  }
  if (way.rows.size() < family.joints.size()) take_back(way, ways.job);
  family.ways.push_back(std::move(way));
}

}  // namespace

Ways ways_to_weld(const RateBook& book, const Job& job) {
  Ways ways;
  ways.job = job;
  ways.job.joints.clear();
  ways.job.after.clear();
  std::map<std::string, std::size_t> family_of;
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    const auto [at, fresh] = family_of.emplace(family_key(book, job.joints[j]), ways.families.size());
    if (fresh) ways.families.push_back({family_words(book, job.joints[j]), {}, {}});
    ways.families[at->second].joints.push_back(j);
  }
  for (Family& family : ways.families)
    for (std::size_t process = 0; process < book.processes.size(); ++process) add_way(book, job, process, family, ways);
  for (Weldment& weldment : ways.job.weldments) weldment.first_joint = weldment.joint_count = 0;
  return ways;
}

}  // namespace seambook
