// A job file as its author wrote it: what was said, where; nothing filled in, no name looked up.
#pragma once

#include <functional>

#include "read/heat_text.hpp"
#include "read/labour_text.hpp"
#include "read/planning_text.hpp"
#include "read/weld_text.hpp"

namespace seambook {

/// How a cost scales with the quantity ordered: for every piece, for every lot, once whatever the quantity.
enum class Scaling : std::uint8_t { each, per_lot, once };
enum class BoughtKind : std::uint8_t { base_metal, cutting, outside, other };
/// What a group of passes is for.
enum class PassRole : std::uint8_t { root, fill, cap, back };

/// `{what: laser-cut plates, kind: base_metal, price: 38 EUR each}`; a bare `38 EUR each` is base metal.
struct BoughtText {
  Place place;
  std::optional<Word> what;
  BoughtKind kind = BoughtKind::base_metal;
  Written<dim::money> price;
  Scaling scaling = Scaling::each;
};

/// One group of passes by one procedure: `{procedure: NAME, role: root, count: 2}`.
struct PassText {
  Place place;
  Word procedure;
  std::optional<PassRole> role;
  std::optional<Whole> count;
};

/// `true`, or the groove that is gouged: `{depth: 4 mm, width: 8 mm}`.
struct BackgougeText {
  Place place;
  bool wanted = true;
  Maybe<dim::length> depth, width;
};

/// What may be said for a joint, a weldment (for all its joints) or a job (for all its weldments); the nearest wins.
struct JointDefaults {
  std::optional<Word> base_metal, process, procedure, position, finish, grade;
  Maybe<dim::ratio> range;  // how far the sizes and prices stated may lie off, either way
  HeatDefaults heat;
  std::optional<Flag> qualified;  // whether only welders qualified in date may weld it
};

struct JointText {
  Place place;
  std::optional<Word> id, mark, note;
  std::optional<Word> weld;  // a word for each WeldKind
  std::optional<Chosen> joint_type;
  Maybe<dim::length> leg, throat, length, outside_diameter, gap, root_face, element, pitch, gap_e, gap_max;
  MaybeSpan<dim::length> thickness;  // `8 mm`, or `[3 mm, 10 mm]` for first and second member
  Maybe<dim::angle> groove_angle;
  Maybe<dim::ratio> convexity, access;
  std::optional<ExcessText> excess;
  WeldText sizes;  // of some welds only
  std::optional<Whole> count, sides;
  std::optional<Whole> pass_count;  // `passes: 2`
  std::vector<PassText> passes;     // `passes: [{procedure: A}, {procedure: B, count: 3}]`
  std::vector<Word> after;
  std::vector<InspectionText> inspection;
  std::vector<Word> alternatives;  // procedures it could be welded by instead
  std::optional<Flag> purge, lap;
  std::optional<BackgougeText> backgouge;
  JointPlanText plan;
  JointDefaults defaults;
};

struct WeldmentText {
  Place place;
  std::optional<Word> name;
  std::optional<Whole> count, parts, turns;
  Maybe<dim::mass> mass;
  std::optional<Flag> free_issue;
  Maybe<dim::money> free_issue_value;  // of one weldment's material, as the customer states it
  std::optional<Word> option;          // it belongs to this option, not to the job itself
  std::optional<Word> base_metal_by;   // `mass`: net mass over yield times the rate book's price
  std::vector<BoughtText> bought;
  WeldmentPlanText plan;
  JointDefaults defaults;
  std::optional<Word> joints_from;   // a table beside the job
  std::optional<Word> joints_sheet;  // of a workbook
  std::vector<JointText> joints;
};

/// What the customer may have beside or instead of the job itself: `{name: painted, bought: ..., one_offs: ...}`.
struct OptionText {
  Place place;
  std::optional<Word> name, text;
  std::vector<BoughtText> bought;
  std::vector<OneOffText> one_offs;
  std::vector<Word> leaves_out;  // weldments of the job itself
};

/// `by_mass`, by the rate book's classes, or a price: `120 EUR per lot`.
struct JobFreightText {
  Place place;
  bool by_mass = false;
  BoughtText own;
};

struct JobText {
  Place place;
  std::vector<std::uint32_t> takeoffs;  // files: whoever takes the job looks for their faults too
  std::optional<Word> job, revision, customer, title, delivery, lead_time;
  std::vector<Word> drawings;  // `drawing: 4711 rev B` or a list
  std::optional<WrittenDate> date;
  std::optional<WrittenDay> due;
  JobPlanText plan;
  std::vector<Whole> quantities;
  std::optional<Whole> per_year;  // how often the order comes
  JointDefaults defaults;
  std::vector<BoughtText> bought;  // for the job as a whole
  std::vector<OneOffText> one_offs;
  std::vector<Word> inclusions, exclusions, qualifications, assumptions;
  std::optional<Word> risk, untaxed;
  std::optional<Flag> expedite, learning;
  std::optional<JobFreightText> freight;
  std::vector<OptionText> options;
  std::vector<WeldmentText> weldments;
};

/// Gives the bytes of a file that a job draws on (a take-off), by the name the job uses; nothing when there is none.
using FileFinder = std::function<std::optional<std::string>(const std::string& name)>;

/// Reads a registered job file. Faults go to `diagnostics`; what could be read is given even so.
JobText read_job(std::uint32_t file, const FileFinder&, Diagnostics& diagnostics);

}  // namespace seambook
