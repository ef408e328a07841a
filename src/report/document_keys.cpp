#include "report/document_keys.hpp"

namespace seambook {
namespace {

constexpr DocumentKey program_keys[] = {{"name", "string", "seambook"}, {"version", "string", "of the program"}};

constexpr DocumentKey diagnostic_keys[] = {
    {"level", "string", "note, warning, error or not_for_the_floor"},
    {"file", "string?", "as it was named"},
    {"line", "integer?", "counted from 1"},
    {"column", "integer?", "counted from 1, in characters"},
    {"message", "string", "what is wrong"},
    {"hint", "string?", "what to do about it"},
};

constexpr DocumentKey heading_keys[] = {
    {"job", "string", "name of the job"},
    {"file", "string", "as it was named"},
    {"rates", "string", "folder of the rate book"},
    {"rates_hash", "string", "of the rate book's bytes"},
    {"input_hash", "string", "of the job's files and the rate book"},
};

constexpr DocumentKey cost_keys[] = {
    {"labour", "number", "set-ups included"},
    {"filler", "number", ""},
    {"gas", "number", ""},
    {"power", "number", "fuel for preheat included"},
    {"equipment", "number", ""},
    {"wear", "number", "wear parts, flux not included"},
    {"base_metal", "number", ""},
    {"outside", "number", "bought cutting included"},
    {"other", "number", "free issue included"},
    {"total", "number", ""},
};

constexpr DocumentKey joint_keys[] = {
    {"id", "string", "weldment/joint"},
    {"weld_length_m", "number", ""},
    {"weld_elements", "number", "of an intermittent weld, else 1 for each line"},
    {"unwelded_m", "number", "what an intermittent weld leaves", false},
    {"section_mm2", "number", "weld metal across, all passes"},
    {"passes", "number", ""},
    {"procedures", "[]string", "one for each group of passes"},
    {"roles", "[]string", "root, fill, cap or back, as procedures"},
    {"deposit_kg", "number", "weld metal"},
    {"filler_kg", "number", "bought"},
    {"electrodes", "number", "covered electrodes"},
    {"flux_kg", "number", ""},
    {"arc_min", "number", "arc or beam"},
    {"floor_min", "number", "attended"},
    {"wait_min", "number", "what nobody attends"},
    {"gas_l", "number", ""},
    {"energy_kwh", "number", ""},
    {"elements_min", "{}number", "by labour element, before access and allowance"},
    {"heat", "heat", "only of steels that harden", false},
    {"cost", "cost", ""},
};

constexpr DocumentKey heat_keys[] = {
    {"carbon_equivalent_percent", "number", "CE (IIW)", false},
    {"cet_percent", "number", "CET", false},
    {"pcm_percent", "number", "Pcm", false},
    {"combined_thickness_mm", "number", ""},
    {"heat_input_kJ_per_mm", "[]number", "one for each group of passes"},
    {"preheat_needed", "boolean", "by method B of EN 1011-2", false},
    {"preheat_asked_C", "number", "by method B of EN 1011-2", false},
    {"preheat_not_computed", "string", "why method B says nothing", false},
    {"preheat_C", "number", "stated", false},
    {"preheat", "string", "none, when stated", false},
    {"interpass_max_C", "number", "stated", false},
};

constexpr DocumentKey weldment_keys[] = {
    {"name", "string", ""},
    {"count", "number", "in one of the job"},
    {"weld_length_m", "number", "of one"},
    {"weld_elements", "number", ""},
    {"unwelded_m", "number", "", false},
    {"passes", "number", ""},
    {"deposit_kg", "number", ""},
    {"filler_kg", "number", ""},
    {"electrodes", "number", ""},
    {"flux_kg", "number", ""},
    {"arc_min", "number", ""},
    {"floor_min", "number", ""},
    {"wait_min", "number", ""},
    {"gas_l", "number", ""},
    {"energy_kwh", "number", ""},
    {"elements_min", "{}number", "the weldment's own, without its joints'"},
    {"cost", "cost", ""},
};

constexpr DocumentKey materials_keys[] = {
    {"fillers_kg", "{}number", "by name"},
    {"fluxes_kg", "{}number", "by name"},
    {"gases_l", "{}number", "by name"},
    {"purge_gases_l", "{}number", "by name"},
};

constexpr DocumentKey totals_keys[] = {
    {"weld_length_m", "number", "of one piece"},
    {"weld_elements", "number", ""},
    {"unwelded_m", "number", "", false},
    {"passes", "number", ""},
    {"deposit_kg", "number", ""},
    {"filler_kg", "number", ""},
    {"electrodes", "number", ""},
    {"flux_kg", "number", ""},
    {"arc_min", "number", ""},
    {"floor_min", "number", ""},
    {"wait_min", "number", ""},
    {"gas_l", "number", ""},
    {"energy_kwh", "number", ""},
    {"arc_min_by_process", "{}number", "keys are ISO 4063 numbers"},
    {"materials", "materials", "fillers, fluxes and gases by name"},
    {"setup_min", "number", "of a lot"},
    {"cost", "cost", "of one piece"},
    {"cost_lot", "cost", "what is paid for each lot"},
    {"cost_once", "cost", "what is paid once"},
};

constexpr DocumentKey price_keys[] = {
    {"quantity", "integer", ""},
    {"unit_cost", "number", ""},
    {"unit_price", "number", "rounded"},
    {"pieces", "number", "unit price times quantity"},
    {"one_offs", "number", ""},
    {"expedite", "number", ""},
    {"freight", "number", ""},
    {"supplement", "number", "up to the minimum charge"},
    {"list_rounding", "number", ""},
    {"total", "number", ""},
    {"tax", "number", "only where the rate book has a rate of it", false},
    {"total_with_tax", "number", "likewise", false},
    {"cost", "number", "of the whole order"},
    {"left", "number", "total less cost"},
};

constexpr DocumentKey option_keys[] = {
    {"name", "string", ""},
    {"text", "string", "for the customer", false},
    {"weldments", "[]string", "that it adds"},
    {"leaves_out", "[]string", "weldments of the job that are not made then"},
    {"price", "[]price", "what it adds for each quantity"},
};

constexpr DocumentKey percentiles_keys[] = {
    {"p10", "number", ""}, {"p50", "number", ""}, {"p80", "number", ""}, {"p90", "number", ""}};
constexpr DocumentKey histogram_keys[] = {
    {"from", "number", "low end of the first bar"}, {"width", "number", ""}, {"samples", "[]integer", "in each bar"}};

constexpr DocumentKey doubt_keys[] = {
    {"quantity", "integer", "the first"},
    {"ranges_stated", "boolean", "whether the rate book or the job says how far figures may lie off"},
    {"inputs", "integer", "in doubt"},
    {"samples", "integer", "drawn; without any, none of what follows stands"},
    {"total", "number", "as quoted"},
    {"cost", "number", "as quoted"},
    {"totals", "percentiles", "", false},
    {"costs", "percentiles", "", false},
    {"contingency_p80_percent", "number", "share of the cost that covers P80", false},
    {"contingency_p90_percent", "number", "share of the cost that covers P90", false},
    {"histogram", "histogram", "of totals", false},
};

constexpr DocumentKey driver_keys[] = {
    {"input", "string", "in words"},
    {"unit", "string", "of the next three"},
    {"low", "number", ""},
    {"quoted", "number", ""},
    {"high", "number", ""},
    {"total_low", "number", "with the input at its low end"},
    {"total_high", "number", "likewise"},
    {"basis", "string", "what the input rests on"},
};

constexpr DocumentKey past_keys[] = {{"date", "string", ""},
                                     {"version", "string", "of the program"},
                                     {"quantity", "integer", ""},
                                     {"total", "number", ""}};
constexpr DocumentKey cause_keys[] = {
    {"causes", "[]string", "program version, rates, procedure, scope, quantity; several that fall together"},
    {"amount", "number", "that the total moved"}};
constexpr DocumentKey changed_item_keys[] = {{"cause", "string", ""},
                                             {"of", "string", "what the figure belongs to"},
                                             {"figure", "string", ""},
                                             {"before", "string?", ""},
                                             {"now", "string?", ""}};
constexpr DocumentKey changes_keys[] = {
    {"past", "past", "the quote before"},
    {"quantity", "integer", ""},
    {"total", "number", "now"},
    {"causes", "[]cause", "amounts that add up"},
    {"items", "[]changed_item", ""},
    {"items_left_out", "integer", "beyond those"},
    {"notes", "[]string", ""},
};

constexpr DocumentKey named_text_keys[] = {{"name", "string", "of the file"}, {"text", "string", "all of it"}};
constexpr DocumentKey inputs_keys[] = {
    {"job", "named_text", ""}, {"takeoffs", "[]named_text", ""}, {"rates", "[]named_text", ""}};

constexpr DocumentKey finding_keys[] = {
    {"kind", "string", "unused, old, undated or doubtful"},
    {"list", "string", "of the rate book: fillers"},
    {"entry", "string", "its name; empty where a whole list is meant"},
    {"file", "string?", ""},
    {"line", "integer?", ""},
    {"message", "string", "in words"},
};

constexpr DocumentObject object_table[] = {
    {"program", "who printed it", program_keys},
    {"diagnostic", "a fault, a warning or a note", diagnostic_keys},
    {"heading", "which job", heading_keys},
    {"cost", "money of the rate book by kind", cost_keys},
    {"joint", "figures of one piece", joint_keys},
    {"heat", "hardening and preheat", heat_keys},
    {"weldment", "figures of one, its joints included", weldment_keys},
    {"materials", "what one piece takes", materials_keys},
    {"totals", "figures of one piece", totals_keys},
    {"price", "for one quantity", price_keys},
    {"option", "priced apart", option_keys},
    {"percentiles", "values that so many of 100 samples do not exceed", percentiles_keys},
    {"histogram", "bars of equal width", histogram_keys},
    {"doubt", "where the total lies", doubt_keys},
    {"driver", "an input at both ends", driver_keys},
    {"past", "the quote before", past_keys},
    {"cause", "what moved the total", cause_keys},
    {"changed_item", "a number that changed", changed_item_keys},
    {"changes", "against the quote before", changes_keys},
    {"named_text", "a file", named_text_keys},
    {"inputs", "the files that a quote was made from", inputs_keys},
    {"finding", "what was found in a rate book", finding_keys},
};

}  // namespace

std::span<const DocumentObject> document_objects() { return object_table; }

}  // namespace seambook
