// The shop's rate book as its author wrote it, gathered from the files of one directory.
#pragma once

#include <span>

#include "read/check_text.hpp"
#include "read/consumables_text.hpp"
#include "read/heat_text.hpp"
#include "read/labour_text.hpp"
#include "read/price_text.hpp"
#include "read/shop_text.hpp"

namespace seambook {

struct LabourText {
  Place place;
  std::optional<Word> name;
  Maybe<dim::money_per_time> rate;  // loaded; or wage and burden
  Maybe<dim::money_per_time> wage;
  Maybe<dim::ratio> burden;
  Evidence evidence;
};

/// Minutes that every weldment and joint pays, whatever the process.
struct AllowancesText {
  Place place;
  Maybe<dim::time> fit_up_per_part, fit_up_per_joint, purge_per_joint;
  Maybe<dim::pace> fit_up_per_metre;
  Maybe<dim::flow> purge_flow;
  std::optional<Word> purge_gas;
  Maybe<dim::ratio> personal;           // share added to attended minutes
  std::optional<Word> personal_covers;  // in words; says whether breaks are covered
  Maybe<dim::ratio> turns_two_sided;    // turns of a weldment that has a joint welded from two sides
  Maybe<dim::ratio> convexity;          // of fillets, share of the section
  Maybe<dim::length> excess_height,
      excess_overlap;  // of butt welds: cap height; cap wider than the groove by twice this
  Evidence evidence;
};

/// How long one turn takes up to a mass.
struct HandlingText {
  Place place;
  std::optional<Word> name;  // `by hand`, `hoist`, `crane`
  Maybe<dim::mass> up_to;    // none: any mass
  Maybe<dim::time> turn;
  Evidence evidence;
};

/// What goes with a process whatever the procedure.
struct ProcessText {
  Place place;
  std::optional<Word> process;                         // ISO 4063 number or AWS letters
  std::optional<Word> grade;                           // of labour
  std::optional<Flag> only_when_asked;                 // not chosen for a joint that names no process
  Maybe<dim::time> start, tack, gas_before_and_after;  // per start; per tack; pre-flow and post-flow per start
  Maybe<dim::length> tack_pitch, tack_pitch_thin, thin_below;
  Maybe<dim::pace> interpass_cleaning;
  Maybe<dim::pace> fit_up_extra;       // beyond the usual fit-up: close gaps, clamps
  Maybe<dim::ratio> operating_factor;  // arc time as a share of floor time
  Maybe<dim::ratio> deposition_efficiency, source_efficiency, gas_loss, thermal_efficiency;
  Maybe<dim::power> auxiliary_power;     // extraction, chiller, while the arc or beam is on
  Maybe<dim::time> electrode_change;     // stub out, next electrode in
  Maybe<dim::money_per_time> wear;       // per arc or beam hour
  Maybe<dim::money_per_time> equipment;  // per hour the station is occupied
  Evidence evidence;
};

struct BaseMetalText {
  Place place;
  std::optional<Word> name, group, cleanliness;
  std::vector<Word> also;  // other names
  Maybe<dim::density> density;
  Maybe<dim::money_per_mass> price;
  Maybe<dim::ratio> yield;
  std::optional<CompositionText> composition;
  Maybe<dim::ratio> carbon_equivalent, cet;  // stated ones go before computed ones
  Maybe<dim::specific_heat> specific_heat;   // in place of preheating's
  Evidence evidence;
};

struct FillerText {
  Place place;
  std::optional<Word> name, form, classification;  // form: solid_wire, cored_wire, rod, covered_electrode
  Maybe<dim::length> diameter;
  Maybe<dim::density> density;
  Maybe<dim::money_per_mass> price;
  Maybe<dim::mass> pack;
  Maybe<dim::length> length, stub;       // covered electrodes: of one, and what is thrown away of it
  Maybe<dim::mass> piece_mass;           // of one electrode or rod
  Maybe<dim::linear_mass> linear_mass;   // tubular wires: of a metre
  Maybe<dim::volume_per_mass> hydrogen;  // diffusible, in weld metal
  Evidence evidence;
};

struct GasText {
  Place place;
  std::optional<Word> name, designation;  // ISO 14175 designation, for example M21
  Maybe<dim::money_per_volume> price;
  Evidence evidence;
};

/// What a finish takes after one process, where that leaves less to do.
struct FinishAfterText {
  Place place;
  std::optional<Word> process;
  Maybe<dim::pace> time;
};
struct FinishText {
  Place place;
  std::optional<Word> name, text;
  Maybe<dim::pace> time;
  std::vector<FinishAfterText> after;
  Evidence evidence;
};

/// Joint preparation taken when a joint does not state it.
struct PreparationText {
  Place place;
  std::optional<Word> weld;
  MaybeSpan<dim::length> thickness;
  Maybe<dim::angle> groove_angle;
  Maybe<dim::length> gap, root_face, radius;
  std::optional<Whole> sides;
  Evidence evidence;
};

struct ProcedureText {
  Place place;
  std::optional<Word> name, process, filler, gas, flux, polarity, transfer, oscillation;
  std::vector<Word> welds, positions, groups;
  Maybe<dim::length> size;           // fillets: the leg it is set for; grooves and seams: the thickness
  MaybeSpan<dim::length> thickness;  // of the thinner member it may be used on
  Maybe<dim::flow> gas_flow;
  Maybe<dim::current> current;
  Maybe<dim::voltage> voltage;
  Maybe<dim::speed> wire_feed, travel_speed;
  MaybeSpan<dim::speed> travel_range;
  Maybe<dim::mass_rate> deposition_rate;  // weld metal laid in an hour of arc time, in place of the wire feed
  Maybe<dim::area> area_per_pass;         // what one pass lays; from wire feed and travel speed when not stated
  Maybe<dim::power> beam_power;
  Maybe<dim::length> scan_width, focus;
  Maybe<dim::volume_per_mass> hydrogen;  // in place of the filler's
  Evidence evidence;
};

struct ChangeTaskText {
  Place place;
  std::optional<Word> name, when;  // `when` names the attribute: process, filler, gas, cleanliness, torch, joint_family
  std::vector<Word> from, to;
  Maybe<dim::time> time;
  std::optional<Flag> cold;  // also when nothing was mounted; default true
  Evidence evidence;
};

struct OverheadText {
  Place place;
  std::optional<Flag> in_rate;
  Maybe<dim::ratio> added;  // share of labour cost, as its own line
  Evidence evidence;
};

/// An investment that the comparison judges: what it costs at once and each year, and how sure that is.
struct InvestmentLineText {
  Place place;
  std::optional<Word> what;
  Maybe<dim::money> price;
};
struct ScenarioText {
  Place place;
  std::optional<Word> name;
  Maybe<dim::ratio> capital, fit_up, finish, metres;  // of what is stated; 100 % when left out
};
struct InvestmentText {
  Place place;
  std::optional<Word> name, process, labour_value;
  std::vector<InvestmentLineText> capital, yearly;
  Maybe<dim::ratio> life_years, residual, interest, upkeep, first_year;
  Maybe<dim::money_per_time> avoidable_rate;
  std::vector<ScenarioText> scenarios;
  Evidence evidence;
};

/// How far figures may lie off, either way, by what they rest on.
struct RangesText {
  Place place;
  Maybe<dim::ratio> published, common_practice, assumption;
  Evidence evidence;
};

struct RateText {
  Place place;
  std::vector<std::uint32_t> files;  // all that were read, also those that gave nothing
  std::optional<Word> shop, currency, terms;
  std::optional<Chosen> paper;          // a4, letter
  std::optional<Chosen> labour_method;  // elements, operating_factor
  std::vector<Word> factor_covers;
  std::optional<Word> factor_definition;
  std::optional<RangesText> ranges;
  std::optional<OverheadText> overhead;
  std::optional<PriceText> prices;
  std::vector<RiskClassText> contingencies;
  std::optional<LearningText> learning;
  std::optional<FreightText> freight;
  std::optional<AllowancesText> allowances;
  std::optional<ChecksText> checks;
  std::vector<RangeCheckText> range_checks;
  std::vector<CombinationCheckText> combination_checks;
  std::vector<LaserCheckText> laser_checks;
  std::optional<GougingText> gouging;
  std::optional<PreheatingText> preheating;
  std::vector<LabourText> labour;
  std::vector<LabourElementText> labour_elements;
  std::vector<JobElementText> job_elements;
  std::vector<HandlingText> handling;
  std::vector<ProcessText> processes;
  std::vector<BaseMetalText> base_metals;
  std::vector<FillerText> fillers;
  std::vector<GasText> gases;
  std::vector<FluxText> fluxes;
  std::vector<WearPartText> wear_parts;
  std::vector<PassLimitText> pass_limits;
  std::vector<FinishText> finishes;
  std::vector<PreparationText> preparations;
  std::vector<ProcedureText> procedures;
  std::vector<StationText> stations;
  std::vector<ChangeTaskText> change_tasks;
  std::vector<WelderText> welders;
  std::optional<Whole> qualification_lapses;  // months
  std::vector<ShiftText> shifts;
  std::vector<WrittenDate> closed;
  std::optional<OvertimeText> overtime;
  std::optional<InvestmentText> investment;
};

/// Reads the registered files of one rate book, in the order given; a section that may stand once is refused a second
/// time.
RateText read_rates(std::span<const std::uint32_t> files, Diagnostics& diagnostics);

}  // namespace seambook
