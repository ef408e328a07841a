// A job as the shop will do it: every name an index, every default filled in from the rate book, every procedure
// chosen. Holds afterwards: all references exist, precedence has no cycle, nothing that the arithmetic needs is
// missing.
#pragma once

#include "basics/digraph.hpp"
#include "resolve/job_weld.hpp"
#include "resolve/planning.hpp"
#include "resolve/rate_book.hpp"

namespace seambook {

/// Passes by one procedure. Without a count they are computed: those of a fill from what the others leave of the
/// section, those of a back from what was gouged. A joint has at most one of each kind.
struct PassGroup {
  std::size_t procedure = 0;
  std::optional<Known<dim::ratio>> count;
  PassRole role = PassRole::fill;
};

/// How the procedure of a joint came about.
struct Choice {
  bool made_by_program = false;
  std::string words;  // `next larger of CG-F3 CG-F4 CG-F5; runners-up: ...`; empty when the job named it
};

/// A test that a joint asks for, and of how much of its weld; absent: all of it.
struct Inspection {
  LabourKind kind = LabourKind::ultrasonic;
  Known<dim::ratio> extent;
};

struct Joint {
  std::string id, mark, position;
  Place place;
  WeldKind weld = WeldKind::fillet;
  std::size_t weldment = 0, base_metal = 0, finish = 0;
  Known<dim::ratio> count, sides;
  // Absent numbers have no_source. A tube states its outside diameter instead of a length; a branch has both.
  Known<dim::length> line, outside_diameter, element, pitch;  // pitch centre to centre
  Known<dim::length> leg, throat;                             // fillets: one of them
  Known<dim::length> thickness, thickness_second;             // first and second member
  Known<dim::length> gap, root_face, excess_width, excess_height, gap_max;
  Known<dim::angle> groove_angle;
  Known<dim::ratio> convexity, access;
  FilletSizes fillet;
  GrooveSizes groove;
  FillSizes fill;
  LineSizes path;
  JointHeat heat;
  bool purge = false;
  bool lap = false;                   // a fillet along the edge of the first member
  std::optional<std::size_t> grade;   // of labour; absent: that of the process
  std::vector<std::size_t> elements;  // of RateBook::labour_elements, in its order
  std::vector<Inspection> inspections;
  Known<dim::length> gouge_depth, gouge_width;  // absent: the root is not gouged
  bool own_groove_gouged = false;               // a gouged weld whose gouging is charged; it adds no section
  std::vector<PassGroup> passes;                // at least one
  std::vector<std::size_t> alternatives;        // procedures that the job names to compare with
  Choice choice;
  JointPlanning plan;
};

struct Bought {
  std::string what;
  BoughtKind kind = BoughtKind::base_metal;
  Scaling scaling = Scaling::each;
  Known<dim::money> price;
};

struct Weldment {
  std::string name;
  Place place;
  Known<dim::ratio> count;
  Known<dim::ratio> parts, turns;  // parts absent: fit-up per part is not charged, and said so
  Known<dim::mass> mass;           // absent when not stated
  std::size_t handling = 0;
  std::size_t base_metal = 0;
  bool metal_by_mass = false, free_issue = false;
  Known<dim::money> free_issue_value;  // of one; absent: its handling is not charged
  std::vector<std::size_t> elements;   // of RateBook::labour_elements
  std::vector<Bought> bought;
  std::size_t first_joint = 0, joint_count = 0;  // a run of Job::joints
  WeldmentPlanning plan;
};

/// Work of a job as a whole: once, or for each lot.
struct JobWork {
  std::string what;
  bool once = true, attended = true;
  double count = 1;  // of drawings or joint lines
  Known<dim::time> time;
  std::size_t grade = 0;
};

struct JobOption;

struct Job {
  std::string name, title, revision, customer, delivery, lead_time;
  std::vector<std::string> drawings, inclusions, exclusions, qualifications;
  std::optional<Date> date, due;
  JobPlanning plan;
  std::vector<std::int64_t> quantities;  // at least one, ascending as given
  Known<dim::ratio> per_year;            // how often the order comes; absent: once
  OrderPolicy order;
  std::vector<JobOption> options;
  std::string of_option;  // name of the option whose part of a job this is; empty: a job
  std::vector<Weldment> weldments;
  std::vector<Joint> joints;
  std::vector<Edge> after;  // joint indices: first before second
  std::vector<Bought> bought;
  std::vector<JobWork> work;
  std::vector<JobSource> sources;  // index is SourceId - first_job_source
  std::vector<std::string>
      assumptions;  // defaults taken, in words: `groove angle 60° from the rate book (common practice)`
  std::vector<std::string> stated_assumptions;  // the author's own, for the customer
};

/// What is priced apart: a part with weldments, bought lines and work of its own, estimated as a job; its numbers are
/// rows of the job's sources.
struct JobOption {
  std::string name, text;
  Job part;
  std::vector<std::size_t> leaves_out;  // weldments of the job
};

/// Resolves a job against the rate book. Nothing when the job has errors; they are in `diagnostics`.
std::optional<Job> resolve_job(const JobText&, const RateBook&, Diagnostics& diagnostics);

/// What is known of a joint when its procedure is chosen.
struct ChoiceRequest {
  WeldKind weld = WeldKind::fillet;
  std::string process;  // empty: any
  std::string group, position;
  Length<> size, thinner;  // leg for fillets, thickness for grooves and seams; thinner member
};
struct ChoiceResult {
  std::optional<std::size_t> procedure;
  std::string words;  // choice and runners-up, or the nearest misses
};
/// The procedure with the smallest size not below the one asked for, among those that fit process, group, weld,
/// position and thickness; ties go to the earlier entry, processes that want to be asked for stay behind. Grooves and
/// seams larger than any row take the largest (more passes).
ChoiceResult choose_procedure(const RateBook&, const ChoiceRequest&);
/// What a resolved joint asks of a procedure, of any process.
ChoiceRequest request_for(const RateBook&, const Joint&);
/// Why the procedure should not be used for what is asked; empty when it suits. Its size does not count.
std::vector<std::string> reasons_against(const RateBook&, const Procedure&, const ChoiceRequest&);
/// The thinner of the two members.
Length<> thinner_member(const Joint&);
/// Leg for fillets, thickness for other welds: what procedures are chosen by.
Length<> size_to_compare(const Joint&);

}  // namespace seambook
