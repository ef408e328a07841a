#include "read/job_fields.hpp"

#include "read/heat_fields.hpp"
#include "read/labour_fields.hpp"
#include "read/opening.hpp"
#include "read/planning_fields.hpp"
#include "read/priced.hpp"
#include "read/weld_fields.hpp"

namespace seambook {
namespace {

void read_pass_count_or_list(Reading& reading, Value value, const FieldInfo& info, JointText& joint) {
  if (value.kind() == Kind::scalar)
    joint.pass_count = whole_at(reading, value, info);
  else
    read_into(reading, value, info, joint.passes);
}

/// `format` and `units` are taken before anything else, by read_opening.
void already_read(Reading&, Value, const FieldInfo&, JobText&) {}

/// What may be said for a joint, and above it for all joints.
template <auto Member>
constexpr auto default_fields() {
  constexpr auto words = std::to_array({
      field<Member, &JointDefaults::base_metal>("base_metal", "name of a base metal in the rate book: S235"),
      field<Member, &JointDefaults::process>("process", "ISO 4063 number or AWS letters: 135"),
      field<Member, &JointDefaults::procedure>("procedure", "name of a procedure in the rate book"),
      field<Member, &JointDefaults::position>("position", "ISO 6947 or AWS welding position: PB"),
      field<Member, &JointDefaults::finish>("finish", "name of a finish in the rate book: F1"),
      field<Member, &JointDefaults::grade>("grade", "name of a labour grade in the rate book: welder"),
      field<Member, &JointDefaults::qualified>(
          "qualified", "whether only a welder who is qualified in date may weld it: true or false"),
      below_whole(field<Member, &JointDefaults::range>(
          "range", "how far sizes and prices stated here may lie off either way: 5 %")),
  });
  return joined(words, heat_default_fields<Member>());
}

constexpr std::string_view base_metal_ways[] = {"mass"};

constexpr auto bought_table = std::to_array<Field<BoughtText>>({
    field<&BoughtText::what>("what", "what is bought, in words: laser-cut plates"),
    required(field<&BoughtText::kind>("kind", "base_metal, cutting, outside or other")),
    {{.key = "price",
      .about = "price and how it grows with the quantity: 38 EUR each, 84 EUR per lot, 480 EUR once",
      .shape = Shape::priced,
      .dim = dim::money,
      .required = true,
      .may_be_zero = true},
     [](Reading& reading, Value value, const FieldInfo& info, BoughtText& into) {
       read_priced(reading, value, info, into);
     }},
});

void read_backgouge(Reading& reading, Value value, const FieldInfo& info, JointText& joint) {
  if (value.kind() == Kind::list) return refuse_kind(reading, value, info);
  if (value.kind() == Kind::map) {
    if (expect_kind(reading, value, info, Kind::map)) read_fields(reading, value, joint.backgouge.emplace());
    return;
  }
  if (const std::optional<Flag> flag = flag_at(reading, value, info))
    joint.backgouge = BackgougeText{flag->place, flag->value, {}, {}};
}

constexpr auto backgouge_table = std::to_array<Field<BackgougeText>>({
    field<&BackgougeText::depth>("depth", "of the groove, from the rate book when left out: 4 mm"),
    field<&BackgougeText::width>("width", "of the groove, from the rate book when left out: 8 mm"),
});

constexpr auto pass_table = std::to_array<Field<PassText>>({
    required(field<&PassText::procedure>("procedure", "name of a procedure in the rate book")),
    field<&PassText::role>("role", "root, fill, cap or back; fill when left out"),
    field<&PassText::count>("count", "how many passes; of a fill, computed from what is left when left out: 2"),
});

constexpr auto excess_table = std::to_array<Field<ExcessText>>({
    or_zero(field<&ExcessText::width>("width", "width of the cap: 5 mm")),
    or_zero(field<&ExcessText::height>("height", "height of the cap above the plate: 1 mm")),
});

constexpr auto joint_sizes = std::to_array<Field<JointText>>({
    field<&JointText::leg>("leg", "leg of a fillet: 5 mm"),
    field<&JointText::throat>("throat", "throat of a fillet, in place of its leg: 3.5 mm"),
    field<&JointText::thickness>("thickness", "of both members, or of first and second: 8 mm, or [3 mm, 10 mm]"),
    field<&JointText::length>("length", "along the joint, one side: 240 mm"),
    field<&JointText::outside_diameter>("outside_diameter", "of a tube welded round, in place of the length: 42.4 mm"),
    field<&JointText::element>("element", "length of one weld element of an intermittent weld: 40 mm"),
    field<&JointText::pitch>("pitch", "centre to centre of weld elements: 150 mm"),
    field<&JointText::gap_e>("gap_e", "end to start of weld elements, in place of the pitch: 110 mm"),
    or_zero(field<&JointText::gap>("gap", "root gap: 2 mm")),
    or_zero(field<&JointText::gap_max>("gap_max", "largest gap that the fit-up may leave: 0.15 mm")),
    or_zero(field<&JointText::root_face>("root_face", "root face: 1 mm")),
    field<&JointText::groove_angle>("groove_angle", "included angle of a groove: 60 deg"),
    or_zero(field<&JointText::convexity>("convexity", "weld metal above the flat fillet, share of its section: 10 %")),
});

constexpr auto joint_work = std::to_array<Field<JointText>>({
    field<&JointText::id>("id", "name of the joint; follows the list when left out: P01"),
    field<&JointText::mark>("mark", "where it is, in words: leg to base plate"),
    field<&JointText::note>("note", "a note, in words"),
    required(known_as(weld_keys, field<&JointText::weld>("weld", weld_kinds_in_words))),
    chosen_from(joint_types,
                field<&JointText::joint_type>(
                    "joint_type", "how the members meet, for the heat they lead away: butt, tee or corner")),
    field<&JointText::count>("count", "how many such joints a weldment has: 4"),
    at_most(2, field<&JointText::sides>("sides", "sides welded, 1 or 2")),
    {{.key = "passes",
      .about = "how many, or a list of {procedure: ST-PR, count: 1}",
      .shape = Shape::count_or_list,
      .inside = infos_of<PassText>},
     read_pass_count_or_list},
    field<&JointText::after>("after", "joints that must be welded before: P02, or [P02, P03]"),
    field<&JointText::alternatives>("alternatives", "procedures to compare with: ST-SH, or [ST-SH, SG-F3]"),
    field<&JointText::inspection>("inspection", "tests of the weld, a list: {method: UT, extent: 20 %}"),
    field<&JointText::lap>("lap", "whether a fillet runs along the edge of the first member: true or false"),
    field<&JointText::purge>("purge", "whether the back is purged: true or false"),
    {{.key = "backgouge",
      .about = "whether the root is gouged from the back: true, or {depth: 4 mm, width: 8 mm}",
      .shape = Shape::flag_or_section,
      .inside = infos_of<BackgougeText>},
     read_backgouge},
    field<&JointText::access>("access", "attended minutes multiplied by this where the welder has little room: 120 %"),
});

constexpr auto joint_table = joined(joined(joined(joined(joint_work, joint_sizes), weld_sizes), joint_plan),
                                    default_fields<&JointText::defaults>());

constexpr auto weldment_own = std::to_array<Field<WeldmentText>>({
    field<&WeldmentText::name>("name", "of the weldment: bracket"),
    field<&WeldmentText::count>("count", "how many of it make one of the job: 2"),
    field<&WeldmentText::parts>("parts", "pieces fitted together: 7"),
    or_zero(field<&WeldmentText::turns>("turns", "times it is turned over while it is welded: 1")),
    field<&WeldmentText::mass>("mass", "net mass of one: 18 kg"),
    field<&WeldmentText::free_issue>("free_issue", "whether the customer supplies the base metal: true or false"),
    field<&WeldmentText::free_issue_value>("free_issue_value", "of what the customer supplies for one: 85 EUR"),
    field<&WeldmentText::option>("option", "name of an option of the job, when it is part of that alone"),
    chosen_from(base_metal_ways, field<&WeldmentText::base_metal_by>(
                                     "base_metal_by", "mass: net mass over yield, times the rate book's price")),
    field<&WeldmentText::bought>("bought",
                                 "38 EUR each, or a list of {what: plates, kind: cutting, price: 38 EUR each}"),
    field<&WeldmentText::joints_from>("joints_from",
                                      "a table beside the job, CSV or a workbook: takeoff.csv, takeoff.xlsx"),
    field<&WeldmentText::joints_sheet>("joints_sheet", "the workbook's sheet; the first when left out: Joints"),
    field<&WeldmentText::joints>("joints",
                                 "a list of joints: {weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}"),
});
constexpr auto weldment_table = joined(joined(weldment_own, weldment_plan), default_fields<&WeldmentText::defaults>());

constexpr std::string_view freight_by_mass = "by_mass";

void read_freight(Reading& reading, Value value, const FieldInfo& info, JobText& job) {
  JobFreightText freight{value.place(), value.kind() == Kind::scalar && value.text() == freight_by_mass, {}};
  freight.own.place = value.place();
  if (freight.by_mass || read_priced(reading, value, info, freight.own)) job.freight = std::move(freight);
}

constexpr auto option_table = std::to_array<Field<OptionText>>({
    required(field<&OptionText::name>("name", "by which weldments name it: painted")),
    field<&OptionText::text>("text", "what the customer gets, in words"),
    field<&OptionText::bought>("bought", "as of the job: 60 EUR each, or a list"),
    field<&OptionText::one_offs>("one_offs", "as of the job, a list: {what: jig, time: 2 h, paid: once}"),
    field<&OptionText::leaves_out>("leaves_out", "weldments of the job that are not made then: hinge, or a list"),
});

constexpr auto job_own = std::to_array<Field<JobText>>({
    {{.key = "format", .about = "the first key of every file: 1", .shape = Shape::count}, already_read},
    {{.key = "units", .about = "of bare numbers: {length: mm}", .shape = Shape::section, .inside = unit_fields},
     already_read},
    required(field<&JobText::job>("job", "number or name of the job: bracket")),
    field<&JobText::title>("title", "in words: platform with stair"),
    field<&JobText::revision>("revision", "of this job file: 0"),
    field<&JobText::customer>("customer", "who asks for the quote"),
    field<&JobText::drawings>("drawing", "number and revision, or a list of them: 4711 rev B"),
    field<&JobText::drawings>("drawings", "as drawing"),
    field<&JobText::date>("date", "of the quote: 2026-05-18"),
    field<&JobText::due>("due", "when the work must be done: 2026-05-18, or 2026-05-18 12:00"),
    field<&JobText::quantities>("quantities", "to quote for: [1, 10, 50]"),
    field<&JobText::per_year>("per_year", "how often a year the order comes, for comparisons: 12"),
    field<&JobText::delivery>("delivery", "in words: ex works"),
    field<&JobText::lead_time>("lead_time", "in words, with what it counts from: 15 working days from order"),
    field<&JobText::risk>("risk", "class of the rate book's contingencies: repeat"),
    field<&JobText::expedite>("expedite", "whether haste is charged: true or false"),
    field<&JobText::learning>("learning", "whether labour falls with the pieces, as the rate book says: true or false"),
    {{.key = "freight",
      .about = "by_mass, as the rate book says, or a price: 120 EUR per lot, 4 EUR each",
      .shape = Shape::priced,
      .dim = dim::money,
      .may_be_zero = true,
      .instead = freight_by_mass},
     read_freight},
    field<&JobText::untaxed>("untaxed", "why no tax is added, in words: reverse charge"),
    field<&JobText::inclusions>("inclusions", "what the price includes, in words"),
    field<&JobText::exclusions>("exclusions", "what the price leaves out, in words"),
    field<&JobText::qualifications>("qualifications", "on what the price rests, in words"),
    field<&JobText::assumptions>("assumptions", "what is taken for granted, for the customer to read, in words"),
    field<&JobText::options>("options", "a list of what is priced apart: {name: painted, bought: 60 EUR each}"),
    field<&JobText::one_offs>("one_offs", "work once or for each lot, a list: {what: fixture, time: 6 h, paid: once}"),
    field<&JobText::bought>("bought", "for the job as a whole: 160 EUR once, or a list"),
    required(field<&JobText::weldments>("weldments", "a list of weldments, each with its joints")),
});
constexpr auto job_table = joined(joined(job_own, job_plan), default_fields<&JobText::defaults>());

}  // namespace

template <>
std::span<const Field<BoughtText>> fields<BoughtText>() {
  return bought_table;
}
template <>
std::span<const Field<PassText>> fields<PassText>() {
  return pass_table;
}
template <>
std::span<const Field<BackgougeText>> fields<BackgougeText>() {
  return backgouge_table;
}
template <>
std::span<const Field<ExcessText>> fields<ExcessText>() {
  return excess_table;
}
template <>
std::span<const Field<JointText>> fields<JointText>() {
  return joint_table;
}
template <>
std::span<const Field<WeldmentText>> fields<WeldmentText>() {
  return weldment_table;
}
template <>
std::span<const Field<OptionText>> fields<OptionText>() {
  return option_table;
}
template <>
std::span<const Field<JobText>> fields<JobText>() {
  return job_table;
}

std::vector<FieldInfo> job_fields() { return infos_of<JobText>(); }

}  // namespace seambook
