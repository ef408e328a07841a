// The shop's rate book with every name resolved: entries refer to each other by index, every number is finite, positive
// where it must be, in one currency, and knows its source.
#pragma once

#include <array>
#include <optional>

#include "basics/shown_units.hpp"
#include "read/job_text.hpp"
#include "read/rate_text.hpp"
#include "resolve/checks.hpp"
#include "resolve/consumables.hpp"
#include "resolve/heat_book.hpp"
#include "resolve/labour_book.hpp"
#include "resolve/price_policy.hpp"
#include "resolve/shop_time.hpp"
#include "resolve/source.hpp"
#include "resolve/weld_kinds.hpp"

namespace seambook {

enum class FillerForm : std::uint8_t { solid_wire, cored_wire, rod, covered_electrode };

struct Labour {
  std::string name;
  Known<dim::money_per_time> rate;  // loaded; when absent: wage and burden are given
  Known<dim::money_per_time> wage;
  Known<dim::ratio> burden;
  bool loaded = true;
};

struct Allowances {
  Known<dim::time> fit_up_per_part, fit_up_per_joint, purge_per_joint;
  Known<dim::pace> fit_up_per_metre;
  Known<dim::flow> purge_flow;
  std::optional<std::size_t> purge_gas;
  Known<dim::ratio> personal, turns_two_sided, convexity;
  std::string personal_covers;
  Known<dim::length> excess_height, excess_overlap;
};

struct Handling {
  std::string name;
  std::optional<Mass<>> up_to;
  Known<dim::time> turn;
};

struct Process {
  std::string number;  // ISO 4063
  std::size_t grade = 0;
  bool only_when_asked = false;  // where a joint names no process, others that fit go before
  Known<dim::time> start, tack, gas_before_and_after;
  Known<dim::length> tack_pitch, tack_pitch_thin;
  Length<> thin_below;
  Known<dim::pace> interpass_cleaning, fit_up_extra;  // fit_up_extra absent: none
  Known<dim::ratio> operating_factor;                 // absent where labour is by elements
  Known<dim::ratio> deposition_efficiency, source_efficiency, gas_loss, thermal_efficiency;
  Known<dim::power> auxiliary_power;
  Known<dim::time> electrode_change;  // absent when none is charged
  Known<dim::money_per_time> wear, equipment;
};

struct BaseMetal {
  std::string name, group, cleanliness;
  std::vector<std::string> also;
  Known<dim::density> density;
  Known<dim::money_per_mass> price;  // absent (no_source) when the book gives none
  Known<dim::ratio> yield;
  Hardening hardening;
  Known<dim::specific_heat> specific_heat;  // absent: that of preheating, which is of steel
};

struct Filler {
  std::string name, classification;
  FillerForm form = FillerForm::solid_wire;
  Known<dim::length> diameter;
  Known<dim::density> density;
  Known<dim::money_per_mass> price;
  std::optional<Mass<>> pack;
  Known<dim::length> length, stub;       // covered electrodes; absent: the process' efficiency holds the stubs
  Known<dim::mass> piece_mass;           // of one electrode or rod; absent: none are counted
  Known<dim::linear_mass> linear_mass;   // of tubular wires; absent: taken as solid
  Known<dim::volume_per_mass> hydrogen;  // absent: not known
};

struct Gas {
  std::string name, designation;
  Known<dim::money_per_volume> price;
};

struct FinishAfter {
  std::size_t process = 0;
  Known<dim::pace> time;
};
struct Finish {
  std::string name, text;
  Known<dim::pace> time;
  std::vector<FinishAfter> after;  // processes after which it takes another time
};

struct Preparation {
  WeldKind weld = WeldKind::square;
  Length<> from, to;
  Known<dim::angle> groove_angle;  // absent where the weld has none
  Known<dim::length> gap, root_face, radius;
  bool both_sides = false;  // only for square edges welded from both sides
};

struct Procedure {
  std::string name;
  std::size_t process = 0;
  std::vector<WeldKind> welds;
  std::vector<std::string> groups, positions;
  Known<dim::length> size;
  Length<> thickness_from, thickness_to;
  std::optional<std::size_t> filler, gas, flux;
  Known<dim::flow> gas_flow;
  Known<dim::current> current;
  Known<dim::voltage> voltage;
  Known<dim::speed> wire_feed, travel_speed;  // wire feed absent for rods and without filler
  Known<dim::speed> travel_low, travel_high;
  Known<dim::mass_rate> deposition_rate;  // weld metal in arc time, in place of the wire feed
  Known<dim::area> area_per_pass;         // absent: follows from wire feed or deposition rate, or there is no filler
  Known<dim::power> beam_power;           // absent for arcs
  Known<dim::length> scan_width;
  Known<dim::volume_per_mass> hydrogen;  // absent: the filler's
  std::string polarity, transfer;
  Place place;
};

/// Rated eyewear beside a laser.
struct Eyewear {
  std::int64_t wavelength_nm = 0;
  double optical_density = 0;
};
/// A change that a station never makes; an empty list admits any value.
struct NeverChange {
  std::string attribute;
  std::vector<std::string> from, to;
};
struct Station {
  std::string name, title;
  std::vector<std::size_t> processes;
  std::vector<std::string> groups;                             // a group admits its subgroups: 8 admits 8.1
  std::vector<std::pair<std::string, std::string>> mounted;    // attribute, value
  std::vector<std::pair<std::string, std::string>> end_state;  // what must stand mounted when a plan ends
  std::optional<bool> controlled_area, safety_officer;         // absent: not stated
  std::optional<Eyewear> eyewear;
  std::optional<Mass<>> crane;      // largest mass that it turns or carries; absent: any
  std::optional<Length<>> largest;  // largest dimension that it takes; absent: any
  std::vector<NeverChange> never;
  std::vector<std::size_t> shifts;  // of the calendar, in which it is open; empty: all
  Place place;
};

struct ChangeRule {
  std::string name, attribute;
  std::vector<std::string> from, to;
  Known<dim::time> time;
  bool cold = true;
};

struct Qualification {
  std::size_t process = 0;
  std::vector<std::string> groups, positions;
  std::optional<std::pair<Length<>, Length<>>> thickness;
  bool fillets = true, grooves = true;  // grooves: every weld but a fillet
  bool plates = true, tubes = true;
  std::optional<Length<>> diameter_from, diameter_to;  // of tubes
  std::optional<Date> until, last_used;
  std::string basis_note;  // `in-house test`; empty when not said
};
struct Welder {
  std::string stamp;
  std::size_t grade = 0;
  std::vector<std::size_t> shifts;  // of the calendar; empty: all
  std::vector<Qualification> qualifications;
};

/// An investment that brings a process: what it costs at once and each year.
struct InvestmentLine {
  std::string what;
  Known<dim::money> price;
};
struct Scenario {
  std::string name;
  Known<dim::ratio> capital, fit_up, finish, metres;  // of what is stated; absent: all of it
};
enum class LabourValue : std::uint8_t { lower, loaded, avoidable };
struct Investment {
  std::string name;
  std::size_t process = 0;
  std::vector<InvestmentLine> capital, yearly;
  Known<dim::ratio> life_years, residual, interest, upkeep;
  Known<dim::ratio> first_year;               // share of the saving in the first year; absent: all of it
  Known<dim::money_per_time> avoidable_rate;  // absent: not known
  LabourValue labour_value = LabourValue::lower;
  std::vector<Scenario> scenarios;
};

/// How far figures may lie off, either way, as a share of themselves; by Basis.
using RangesByBasis = std::array<double, 3>;

struct RateBook {
  std::string shop, currency;
  int minor_digits = 2;  // of the currency (ISO 4217)
  Terms terms = Terms::iso;
  std::optional<RangesByBasis> ranges;              // absent: figures are in doubt only where an entry says how far
  bool letter_paper = false;                        // else A4
  std::optional<Known<dim::ratio>> overhead_added;  // absent: overhead is in the labour rate
  Prices prices;
  std::vector<RiskClass> risk_classes;
  std::optional<Learning> learning;  // absent: no job can ask for it
  std::optional<Freight> freight;    // absent: no job can ask for it
  Allowances allowances;
  Checks checks;
  std::vector<RangeCheck> range_checks;
  std::vector<CombinationCheck> combination_checks;
  std::vector<LaserCheck> laser_checks;
  LabourMethod method;
  std::vector<Labour> labour;
  std::vector<LabourElement> labour_elements;
  std::vector<JobElement> job_elements;
  std::vector<Handling> handling;
  std::vector<Process> processes;
  std::vector<BaseMetal> base_metals;
  std::vector<Filler> fillers;
  std::vector<Gas> gases;
  std::vector<Flux> fluxes;
  std::vector<WearPart> wear_parts;
  std::vector<PassLimit> pass_limits;
  std::optional<Gouging> gouging;        // absent: no joint can be gouged
  std::optional<Preheating> preheating;  // absent: no joint can be preheated
  std::vector<Finish> finishes;
  std::vector<Preparation> preparations;
  std::vector<Procedure> procedures;
  std::vector<Station> stations;
  std::vector<ChangeRule> change_tasks;
  std::vector<Welder> welders;
  std::optional<int> qualification_lapses;  // months without use; absent: never
  Calendar calendar;
  std::optional<Investment> investment;
  std::vector<RateSource> sources{1};  // index is SourceId; 0 is "no source"
};

/// Resolves what was read. Nothing when `diagnostics` holds errors of the rate book afterwards.
std::optional<RateBook> resolve_rates(const RateText&, Diagnostics& diagnostics);
/// ISO 4063 number of a process given as number or AWS letters (`GMAW` is 135, `GTAW` 141 ...); empty when unknown.
std::string process_number(std::string_view word);
/// ISO 6947 position of a position given so or by AWS (`2F` is PB, `3G` PF ...); empty when unknown.
std::string position_code(std::string_view word, WeldKind);
/// As the shop's terms print them: `GMAW` for 135, `2F` for PB of a fillet; the code itself where AWS has no word.
std::string process_word(std::string_view number, Terms);
std::string position_word(std::string_view code, WeldKind, Terms);
std::string_view role_word(PassRole);  // `root`
/// The group by ISO 14175 in a gas's designation: `M21` of `ISO 14175 - M21 (argon with ...)`; empty when there is
/// none.
std::string gas_group(std::string_view designation);
/// How many edges of a joint of this weld are bevelled along its line.
int bevelled_edges(WeldKind);
/// True when `group` is `admitted` or a subgroup of it: 8.1 under 8.
bool group_admits(std::string_view admitted, std::string_view group);

}  // namespace seambook
