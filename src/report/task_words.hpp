// What a planned task is, in the words of the floor: order, weldment, joints, procedures, filler, gas, people, holds.
#pragma once

#include <string>
#include <vector>

#include "report/planned_shop.hpp"

namespace seambook {

const TaskRef& ref_of(const PlannedShop&, const PlannedTask&);
const Way& way_of(const PlannedShop&, const PlannedTask&);
const Weldment& weldment_of(const PlannedShop&, const TaskRef&);
/// Nothing where the work is the weldment's as a whole.
const Joint* joint_of(const PlannedShop&, const TaskRef&);
/// Of all people together, and the arc time in it, for all pieces of the lot.
Time<> labour_of(const TaskRef&);
Time<> arc_of(const TaskRef&);
/// Procedures of its passes, each once, in turn: indices of the rate book.
std::vector<std::size_t> procedures_of(const PlannedShop&, const TaskRef&);

/// `gantry, Marl & Gannet`.
std::string order_words(const Job&);
/// `frame`, or `frame, pieces 5 to 8` where the lot is split.
std::string lot_words(const PlannedShop&, const TaskRef&);
/// `root, fill`: all steps of a task.
std::string steps_words(const PlannedShop&, const TaskRef&);
/// `3 (W-17): root, fill`.
std::string joint_work_words(const PlannedShop&, const TaskRef&);
/// `3 (W-17)`.
std::string joint_words(const Joint&);
/// What is done in a step: `fit and tack`, `root`, `stress relief` away from the shop; passes of a joint that has but
/// one procedure are `weld`.
std::string step_words(const PlannedShop&, const TaskRef&, const TaskStep&);
/// `Q1`, `Q1 with Q3`.
std::string people_words(const PlannedShop&, const Way&);
/// `135 SG-F5`.
std::string procedure_words(const RateBook&, std::size_t procedure);
/// `308LSi-1.0, 1 mm`; `none`.
std::string filler_words(const RateBook&, const Procedure&);
std::string gas_words(const RateBook&, const Procedure&);
/// Whether work stops at one of its steps until somebody lets it go on.
bool stops_after(const TaskRef&);
/// `hold: root visual`, `witness: final size`; several joined by semicolons, empty without one.
std::string hold_words(const TaskRef&);
/// What lifting, turning and the place ask for: `84 kg, 2 turns`; empty where the job says nothing of it.
std::string lifting_words(const PlannedShop&, const TaskRef&);
/// `clean down for stainless 35 min, swap the gas 4 min`.
std::string change_words(const PlannedShop&, const Change&);

/// Adds `word` behind a separator where it is new to the list.
void add_new(std::vector<std::string>& list, const std::string& word);
std::string joined(const std::vector<std::string>& list, std::string_view separator);

}  // namespace seambook
