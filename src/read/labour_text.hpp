// Labour as its author wrote it: elements of the rate book and what each is counted by, work that a job takes as a
// whole, tests of a joint.
#pragma once

#include "read/written.hpp"

namespace seambook {

/// What a labour element is called. The order is that of the columns.
inline constexpr std::string_view element_words[] = {"edge_preparation",   // of bevelled edges
                                                     "cleaning",           // of both members before welding
                                                     "dressing",           // slag and spatter off
                                                     "straightening",      //
                                                     "pickling",           //
                                                     "visual_inspection",  // of every joint
                                                     "penetrant",          // tests that a joint asks for
                                                     "magnetic",           //
                                                     "ultrasonic",         //
                                                     "radiographic",       //
                                                     "repair",             // of welds that failed
                                                     "handling",           // cranes, clamps, moving
                                                     "waiting",            // for the joint to cool
                                                     "papers",             //
                                                     "dimensional_inspection",
                                                     "packing"};

/// What a labour element is counted by; the last four belong to a weldment as a whole.
inline constexpr std::string_view driver_words[] = {"joint",        "metre", "weld_metre", "edge_metre", "pass_metre",
                                                    "weld_element", "start", "tack",       "interpass",  "share",
                                                    "weldment",     "part",  "kg",         "turn"};

/// `{element: cleaning, per: metre, time: 3 min/m, basis: assumption, source: own}`.
struct LabourElementText {
  Place place;
  std::optional<Chosen> element, per;  // in element_words, driver_words
  Maybe<dim::time> time;               // one of these three, by what it is counted in
  Maybe<dim::pace> pace;
  Maybe<dim::time_per_mass> mass_pace;
  Maybe<dim::ratio> share, multiple;  // of the minutes of welding; a repair costs a multiple of them
  std::vector<Word> processes, groups, welds, finishes;
  MaybeSpan<dim::length> thickness;  // of the thinner member
  std::optional<Flag> attended;
  std::optional<Word> grade;  // of labour; that of the joint when left out
  Evidence evidence;
};

/// What work of a job as a whole is called.
inline constexpr std::string_view job_element_words[] = {
    "drawing_review",       "take_off", "technical_review", "procedure_test",
    "welder_qualification", "fixture",  "papers",           "consumable_preparation"};
inline constexpr std::string_view job_driver_words[] = {"job", "drawing", "joint_line"};
inline constexpr std::string_view paid_words[] = {"once", "per lot"};

/// `{element: take_off, per: joint_line, time: 2 min, paid: once, grade: welder, ...}`.
struct JobElementText {
  Place place;
  std::optional<Chosen> element, per, paid;  // in the words above
  Maybe<dim::time> time;
  std::optional<Word> grade;
  std::optional<Flag> attended;
  Evidence evidence;
};

/// `{what: welding fixture, time: 6 h, price: 180 EUR, paid: once, grade: welder}`.
struct OneOffText {
  Place place;
  std::optional<Word> what, grade;
  Maybe<dim::time> time;
  Maybe<dim::money> price;
  std::optional<Chosen> paid;  // in paid_words
};

inline constexpr std::string_view method_words[] = {"VT", "PT", "MT", "UT", "RT"};  // ISO 9712

/// `{method: UT, extent: 20 %}`.
struct InspectionText {
  Place place;
  std::optional<Chosen> method;  // in method_words
  Maybe<dim::ratio> extent;
};

}  // namespace seambook
