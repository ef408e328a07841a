// Keys of the documents themselves, and of the objects inside plans and comparisons.
#include "report/document_keys.hpp"

namespace seambook {
namespace {

constexpr DocumentKey estimated_keys[] = {
    {"job", "string", "name of the job"},
    {"file", "string", "as it was named"},
    {"rates", "string", "folder of the rate book"},
    {"rates_hash", "string", "of the rate book's bytes"},
    {"input_hash", "string", "of the job's files and the rate book"},
    {"workbook", "string", "that was written, by quote", false},
    {"date", "string", "of the result"},
    {"currency", "string", "ISO 4217"},
    {"joints", "[]joint", ""},
    {"weldments", "[]weldment", ""},
    {"totals", "totals", ""},
    {"price", "[]price", "one for each quantity"},
    {"options", "[]option", ""},
    {"doubt", "doubt", "by quote", false},
    {"drivers", "[]driver", "by quote: the inputs that move the total most", false},
    {"changes", "changes", "by quote --against", false},
    {"inputs", "inputs", "by quote, for a later --against", false},
};

constexpr DocumentKey way_keys[] = {
    {"process", "string", "ISO 4063 number"},
    {"suits", "boolean", ""},
    {"words", "string", "procedures chosen, or why it does not suit"},
    {"look_again", "[]string", "what its findings say", false},
    {"weld_length_m", "number", "", false},
    {"passes", "number", "", false},
    {"arc_min", "number", "", false},
    {"floor_min", "number", "", false},
    {"fit_up_extra_min", "number", "close fit-up", false},
    {"finish_min", "number", "", false},
    {"labour", "number", "money", false},
    {"filler", "number", "", false},
    {"gas", "number", "", false},
    {"power", "number", "", false},
    {"wear", "number", "", false},
    {"equipment", "number", "", false},
    {"total", "number", "", false},
    {"per_m", "number", "total by metre of weld", false},
};
constexpr DocumentKey family_keys[] = {
    {"family", "string", "in words"},
    {"joints", "[]string", "weldment/joint"},
    {"procedures", "[]way", "one for each process of the rate book"},
    {"why_not", "string", "why the investment does not weld it", false},
    {"saved_min_per_m", "number", "", false},
    {"saved_per_m", "number", "money", false},
    {"break_even_m_per_year", "number?", "null: never", false},
};
constexpr DocumentKey scenario_keys[] = {
    {"name", "string", ""},
    {"capital", "number", ""},
    {"fixed_per_year", "number", ""},
    {"saved_per_year", "number", ""},
    {"suited_m_per_year", "number", ""},
    {"break_even_m_per_year", "number?", "null: never"},
    {"payback_years", "number?", "null: never"},
    {"discounted_payback_years", "number?", "null: not within its life"},
    {"present_value", "number", ""},
};
constexpr DocumentKey compared_keys[] = {
    {"job", "string", "name of the job"},
    {"file", "string", "as it was named"},
    {"rates", "string", "folder of the rate book"},
    {"rates_hash", "string", "of the rate book's bytes"},
    {"input_hash", "string", "of the job's files and the rate book"},
    {"workbook", "string", "that was written"},
    {"currency", "string", "ISO 4217"},
    {"families", "[]family", "like seams"},
    {"investment", "string", "its name, where the rate book has one", false},
    {"pieces_per_year", "number", "", false},
    {"scenarios", "[]scenario", "the first is as stated", false},
    {"verdict", "string", "in words"},
};
constexpr DocumentKey together_keys[] = {
    {"investment", "string", "its name"}, {"scenarios", "[]scenario", ""}, {"verdict", "string", ""}};

constexpr DocumentKey step_keys[] = {
    {"operation", "string", "job/weldment[/lot]/joint/step"},
    {"welder", "string?", "stamp"},
    {"with", "[]string", "stamps of who helps"},
    {"set_up", "string", "when setting up begins"},
    {"start", "string", "ISO 8601, local to the shop"},
    {"finish", "string", ""},
    {"pieces", "integer", ""},
    {"labour_min", "number", ""},
    {"arc_min", "number", ""},
    {"change_min", "number", "of set-up"},
    {"change", "[]string", "tasks of the set-up"},
    {"holds", "[]string", "where somebody must look"},
    {"reason", "string", "why here"},
};
constexpr DocumentKey station_keys[] = {
    {"station", "string", ""}, {"title", "string", ""}, {"steps", "[]step", "in order"}, {"change_min", "number", ""}};
constexpr DocumentKey away_keys[] = {{"operation", "string", ""}, {"start", "string", ""}, {"finish", "string", ""}};
constexpr DocumentKey begun_keys[] = {{"operation", "string", ""},
                                      {"station", "string?", ""},
                                      {"welder", "string?", ""},
                                      {"start", "string", ""},
                                      {"finish", "string", ""}};
constexpr DocumentKey kept_keys[] = {{"what", "string", ""},
                                     {"kind", "string", "not_for_the_floor, blocked or cannot_be_done"},
                                     {"reason", "string", ""},
                                     {"hint", "string", ""}};
constexpr DocumentKey late_keys[] = {{"order", "string", ""},
                                     {"customer", "string", ""},
                                     {"due", "string", ""},
                                     {"finish", "string", ""},
                                     {"late_min", "number", ""}};
constexpr DocumentKey overload_keys[] = {{"welder", "string", "stamp, or else a station", false},
                                         {"station", "string", "", false},
                                         {"due", "string", ""},
                                         {"order", "string", ""},
                                         {"needed_min", "number", ""},
                                         {"open_min", "number", ""}};
constexpr DocumentKey remedy_keys[] = {{"what", "string", ""},
                                       {"late_before_min", "number", ""},
                                       {"late_after_min", "number", ""},
                                       {"price", "number?", "null: free, or unknown"}};
constexpr DocumentKey level_keys[] = {{"name", "string", ""},
                                      {"value", "number", ""},
                                      {"bound", "number", "no plan comes below"},
                                      {"proved", "boolean", ""}};
constexpr DocumentKey other_plan_keys[] = {
    {"name", "string", ""},   {"cannot_be_done", "integer", ""}, {"late_min", "number", "weighted"},
    {"moved", "integer", ""}, {"change_min", "number", ""},      {"fixture_loads", "integer", ""},
    {"finish", "string", ""}};
constexpr DocumentKey moved_keys[] = {
    {"operation", "string", ""}, {"was", "string", ""}, {"now", "string", ""}, {"reason", "string", ""}};
constexpr DocumentKey checked_levels_keys[] = {{"cannot_be_done", "integer", ""},
                                               {"late_min", "number", "weighted"},
                                               {"change_min", "number", ""},
                                               {"fixture_loads", "integer", ""},
                                               {"finish_min", "number", "after the start"}};

constexpr DocumentKey worked_input_keys[] = {{"name", "string", "by which formulas call it"},
                                             {"words", "string", ""},
                                             {"value", "string", "in its unit, with the digits of the working"},
                                             {"unit", "string", "may be empty"},
                                             {"origin", "string", "where it was written, and what it rests on"}};
constexpr DocumentKey worked_step_keys[] = {{"name", "string", ""},
                                            {"words", "string", ""},
                                            {"formula", "string", "over names"},
                                            {"numbers", "string", "the same over numbers"},
                                            {"result", "string", "with the digits of the working"},
                                            {"unit", "string", "may be empty"},
                                            {"source", "string", "of the formula; may be empty"}};
constexpr DocumentKey worked_part_keys[] = {
    {"kind", "string", "joint, weldment, job_work, set_up, cost or price"},
    {"name", "string", "weldment/joint; of a price its quantity"},
    {"heading", "string", "in words"},
    {"notes", "[]string", "how what is no formula came about"},
    {"inputs", "[]worked_input", "that the steps read"},
    {"steps", "[]worked_step", "each from inputs and steps before it"},
};
constexpr DocumentKey mover_keys[] = {{"input", "string", "in words"},
                                      {"per_percent", "number", "what one percent more of it moves the price by"},
                                      {"origin", "string", ""}};
constexpr DocumentKey worked_option_keys[] = {{"name", "string", ""}, {"parts", "[]worked_part", ""}};
constexpr DocumentKey explained_keys[] = {
    {"job", "string", "name of the job"},
    {"file", "string", "as it was named"},
    {"rates", "string", "folder of the rate book"},
    {"rates_hash", "string", "of the rate book's bytes"},
    {"input_hash", "string", "of the job's files and the rate book"},
    {"date", "string", ""},
    {"currency", "string", ""},
    {"parts", "[]worked_part", "the joint that was asked for, or the whole job"},
    {"movers", "[]mover", "what moves the price most, the strongest first; none of one joint"},
    {"options", "[]worked_option", "none of one joint"},
};

constexpr DocumentObject shop_object_table[] = {
    {"estimated", "a job with its figures", estimated_keys},
    {"way", "a family by one process", way_keys},
    {"family", "like seams", family_keys},
    {"scenario", "what the investment is worth", scenario_keys},
    {"compared", "a job with its families", compared_keys},
    {"all_jobs", "the jobs of one rate book together", together_keys},
    {"step", "a task of a station", step_keys},
    {"station", "what it does", station_keys},
    {"away", "work outside", away_keys},
    {"begun", "done, or under way", begun_keys},
    {"kept_back", "what is on no list", kept_keys},
    {"late_order", "an order that comes too late", late_keys},
    {"overload", "more work than time before a due moment", overload_keys},
    {"remedy", "what would help", remedy_keys},
    {"level", "how good the plan is", level_keys},
    {"other_plan", "to compare with", other_plan_keys},
    {"moved_task", "against the plan before", moved_keys},
    {"worked_input", "a number that was written somewhere", worked_input_keys},
    {"worked_step", "a figure", worked_step_keys},
    {"worked_part", "the working of one thing", worked_part_keys},
    {"mover", "an input that moves the price", mover_keys},
    {"worked_option", "priced apart", worked_option_keys},
    {"explained", "a job's working", explained_keys},
    {"checked_levels", "what a checked plan comes to", checked_levels_keys},
};

constexpr DocumentKey check_keys[] = {{"jobs", "[]heading", "without those that have faults"}};
constexpr DocumentKey estimate_keys[] = {{"jobs", "[]estimated", "without those that have faults"}};
constexpr DocumentKey explain_keys[] = {{"jobs", "[]explained", "the job, or nothing when it has faults"}};
constexpr DocumentKey compare_keys[] = {{"jobs", "[]compared", ""},
                                        {"together", "[]all_jobs", "one for each rate book with several jobs"}};
constexpr DocumentKey plan_keys[] = {
    {"date", "string", "first day"},
    {"rates", "string", ""},
    {"rates_hash", "string", ""},
    {"workbook", "string", "that was written"},
    {"jobs", "[]heading", ""},
    {"stations", "[]station", ""},
    {"away", "[]away", ""},
    {"done", "[]begun", "before this plan"},
    {"under_way", "[]begun", ""},
    {"undone", "[]string", "operations that cannot be done"},
    {"blocked", "[]kept_back", ""},
    {"late", "[]late_order", ""},
    {"over_capacity", "[]overload", ""},
    {"remedies", "[]remedy", ""},
    {"levels", "[]level", "the first first"},
    {"plans", "[]other_plan", "this one, then others"},
    {"moved", "[]moved_task", "with --from"},
    {"input_hash", "string", ""},
};
constexpr DocumentKey verified_keys[] = {{"verified", "boolean", "no rule is broken"},
                                         {"levels", "checked_levels", ""}};
constexpr DocumentKey no_plan_keys[] = {{"jobs", "[]heading", ""}, {"stations", "[]station", "none"}};
constexpr DocumentKey rates_check_keys[] = {{"rates", "string", "folder of the rate book"},
                                            {"rates_hash", "string", ""},
                                            {"date", "string", "by which prices are old"},
                                            {"findings", "[]finding", ""}};

constexpr DocumentObject document_table[] = {
    {"check", "seambook check --json", check_keys},
    {"estimate", "seambook estimate --json", estimate_keys},
    {"explain", "seambook explain --json", explain_keys},
    {"quote", "seambook quote --json", estimate_keys},
    {"compare", "seambook compare --json", compare_keys},
    {"plan", "seambook plan --json", plan_keys},
    {"plan", "seambook plan --verify --json", verified_keys},
    {"plan", "seambook plan --json, when there is no plan", no_plan_keys},
    {"rates_check", "seambook rates check --json", rates_check_keys},
};

}  // namespace

std::span<const DocumentObject> shop_document_objects() { return shop_object_table; }
std::span<const DocumentObject> documents() { return document_table; }

}  // namespace seambook
