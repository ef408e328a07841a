// A job while it is resolved: the numbers taken so far with their places, and where its faults go.
#pragma once

#include <array>
#include <set>

#include "resolve/faults.hpp"
#include "resolve/job.hpp"
#include "resolve/names.hpp"

namespace seambook {

struct JobDraft {
  const RateBook& book;
  Diagnostics& diagnostics;
  ReadingFaults faults;
  Job job;
  std::set<Place> refused;  // words that many joints inherit are refused once
  double range = 0;         // of the numbers that are taken next; see RateSource
};

/// What stands of a job's text in the job itself, or in one of its options; all of it is looked at, not kept.
struct PartText {
  const JobText& job;  // heading and defaults
  const std::vector<BoughtText>& bought;
  const std::vector<OneOffText>& one_offs;
  std::vector<const WeldmentText*> weldments;
};

/// What a joint may inherit from, nearest first: the joint, its weldment, the job.
using DefaultLevels = std::array<const JointDefaults*, 3>;
inline constexpr std::size_t joint_level = 0, nowhere_stated = 3;

struct InheritedWord {
  const Word* word = nullptr;  // null: nowhere stated
  std::size_t level = nowhere_stated;
};
InheritedWord inherited(const DefaultLevels&, std::optional<Word> JointDefaults::*member);

/// The nearest range stated becomes that of the numbers taken next; 0 where none is.
void take_range(JobDraft&, const DefaultLevels&);
/// A number that stands behind `key`; not in doubt.
Sourced add_job_source(JobDraft&, double value, Place, std::string_view key);
/// What the sheet admits for a number of the job; numbers of the rate book have their own limits.
void set_limits(JobDraft&, const Sourced&, const Limits&);
/// Marks the number as one that must be resolved again when it changes; numbers of the rate book stay as they are.
void freeze(JobDraft&, const Sourced&);
Place place_of(const JobDraft&, const Sourced&);
/// The place of a number that the job states, else that of the joint: the rate book is not to blame.
Place place_to_blame(const JobDraft&, const Joint&, const Sourced&);
/// The length along which is welded; 0 when it is not known.
double line_length(const Joint&);
/// A length in the shop's unit: `8 mm`, `0.315 in`.
std::string length_shown(const JobDraft&, double si);
inline std::string length_shown(const JobDraft& draft, Length<> length) { return length_shown(draft, length.si); }
/// Adds a sentence to the assumptions, once.
void assume(JobDraft&, std::string words);
/// An error at an entry that lacks something; silent when the entry was misread.
void refuse_lack(JobDraft&, Place entry, std::string message, std::string hint = {});

/// Absent: zero without a source.
template <Dim D>
Known<D> stated(JobDraft& draft, const Maybe<D>& written) {
  if (!written) return {};
  const Known<D> known{add_job_source(draft, written->value.si, written->place, written->key)};
  draft.job.sources.back().range = draft.range;
  return known;
}
/// Counts are known, never in doubt.
Known<dim::ratio> stated_count(JobDraft&, const Whole&);
/// 1 at `place`, to stand behind `key`, when nothing was stated.
Known<dim::ratio> count_or_one(JobDraft&, const std::optional<Whole>&, Place place, std::string_view key);

template <Dim D>
bool given(const Known<D>& known) {
  return known.si.source != no_source;
}

/// Entries of the rate book by name; a word is refused once, however many joints inherit it.
template <class Entry>
std::optional<std::size_t> find_in_book(JobDraft& draft, const std::vector<Entry>& entries, std::string Entry::*name,
                                        const Word& word, std::string_view kind) {
  if (draft.refused.contains(word.place)) return std::nullopt;
  const auto found = find_name(draft.diagnostics, entries, name, word, kind);
  if (!found) draft.refused.insert(word.place);
  return found;
}
/// By its name or one of its other names.
std::optional<std::size_t> find_base_metal(JobDraft&, const Word&);

// The parts of a joint, each in a file by topic. They leave what they cannot resolve absent, with an error.
/// Sizes by kind of weld, and the line. Needs the weld's kind.
void resolve_sizes(JobDraft&, const JointText&, Joint&);
/// Refuses every key that does not belong to the kind of weld.
void refuse_inapplicable(JobDraft&, const JointText&, WeldKind);
void resolve_line(JobDraft&, const JointText&, Joint&);
/// Weld elements of an intermittent weld; needs the line.
void resolve_elements(JobDraft&, const JointText&, Joint&);
void resolve_fillet(JobDraft&, const JointText&, Joint&);
/// What fills rounds, holes, surfaces and gouges.
void resolve_fills(JobDraft&, const JointText&, Joint&);
void resolve_excess(JobDraft&, const JointText&, Joint&);
/// Refuses impossible grooves and sets what the sheet admits.
void check_groove(JobDraft&, const Joint&);
void resolve_preparation(JobDraft&, const JointText&, Joint&);
/// Preheat, interpass temperature, limit of heat input, and in how many runs of plate heat flows away.
void resolve_joint_heat(JobDraft&, const JointText&, const DefaultLevels&, Joint&);
/// The groove gouged into the root from the back, where the joint asks for it.
void resolve_backgouge(JobDraft&, const JointText&, Joint&);
/// `complete`: all is known of the joint by which a procedure is chosen or judged.
void resolve_passes(JobDraft&, const JointText&, const DefaultLevels&, Joint&, bool complete);
/// Appends the joints of a weldment. `weldment` is its index.
void resolve_joints(JobDraft&, const WeldmentText&, const JointDefaults& of_job, std::size_t weldment);
void resolve_precedence(JobDraft&, const WeldmentText&, const Weldment&);
void resolve_weldment(JobDraft&, const PartText&, const WeldmentText&, Weldment&);
std::vector<Bought> resolve_bought(JobDraft&, const std::vector<BoughtText>&);
/// Base metal must be priced in exactly one of the ways there are.
void resolve_metal_price(JobDraft&, const PartText&, const WeldmentText&, Weldment&);
/// What the job asks of the rate book's price policy; its weldments are known.
void resolve_order_policy(JobDraft&, const PartText&);
/// The job without what belongs to its options, then a part for each option.
struct JobParts {
  PartText own;
  std::vector<PartText> options;  // parallel to JobText::options
};
JobParts parts_of(JobDraft&, const JobText&);
/// What an option leaves out, as weldments of the job itself.
std::vector<std::size_t> resolve_left_out(JobDraft&, const OptionText&, const Job&);
/// `complete`: all is known of the joint by which the elements of its labour are chosen.
void resolve_joint_labour(JobDraft&, const JointText&, const DefaultLevels&, bool complete, Joint&);
void resolve_weldment_labour(JobDraft&, Weldment&);
/// What is said to the planner, of a joint, a weldment (its joints are known) and a job.
void resolve_joint_plan(JobDraft&, const JointText&, const DefaultLevels&, Joint&);
void resolve_weldment_plan(JobDraft&, const WeldmentText&, Weldment&);
/// Which weldments go before which; all are known.
void resolve_weldment_order(JobDraft&, const PartText&);
void resolve_job_plan(JobDraft&, const JobText&);
std::optional<Moment> ready_from(const ReadinessText&);
std::optional<std::string> words_of(const std::optional<Word>&);
/// What the rate book and the job say of work for the job as a whole; its joints are known.
void resolve_job_work(JobDraft&, const std::vector<OneOffText>&);
/// Warns of work for which the rate book lists no welder.
void check_welders(JobDraft&);

}  // namespace seambook
