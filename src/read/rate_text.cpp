#include "read/rate_text.hpp"

#include "read/labour_fields.hpp"
#include "read/opening.hpp"
#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr std::string_view term_words[] = {"iso", "aws"};
constexpr std::string_view paper_words[] = {"a4", "letter"};
constexpr std::string_view labour_methods[] = {"elements", "operating_factor"};

/// `format` and `units` are taken before anything else, by read_opening.
void opening_already_read(Reading&, Value, const FieldInfo&, RateText&) {}

constexpr auto rate_table = std::to_array<Field<RateText>>({
    {{.key = "format", .about = "the first key of every file: 1", .shape = Shape::count}, opening_already_read},
    {{.key = "units", .about = "of bare numbers: {length: mm}", .shape = Shape::section, .inside = unit_fields},
     opening_already_read},
    field<&RateText::shop>("shop", "name of the shop"),
    field<&RateText::currency>("currency", "ISO 4217 code: EUR"),
    chosen_from(term_words, field<&RateText::terms>("terms", "iso or aws: the words in what is printed")),
    field<&RateText::ranges>("ranges", "how far figures may lie off, by what they rest on: {assumption: 40 %, ...}"),
    chosen_from(paper_words, field<&RateText::paper>("paper", "a4 or letter; by the terms when left out")),
    field<&RateText::prices>("prices", "margin, contingency, minimum charge and terms"),
    field<&RateText::contingencies>("contingencies", "a list of contingencies by class of risk"),
    field<&RateText::learning>("learning", "how the labour of a piece falls as pieces follow each other"),
    field<&RateText::freight>("freight", "whether margin is taken on freight, and its price by mass"),
    field<&RateText::overhead>("overhead", "{in_rate: true} or {added: 35 %}"),
    field<&RateText::allowances>("allowances", "minutes that every weldment and joint pays"),
    field<&RateText::checks>("checks", "thresholds of the warnings"),
    field<&RateText::range_checks>("range_checks", "a list of ranges in which figures of a pass are usual"),
    field<&RateText::combination_checks>("combination_checks", "a list of what should not be put together"),
    field<&RateText::laser_checks>("laser_checks", "a list of what a laser can do on a kind of base metal"),
    field<&RateText::labour>("labour", "a list of labour grades"),
    field<&RateText::labour_elements>("labour_elements", "a list of what joints and weldments take beyond welding"),
    field<&RateText::job_elements>("job_elements", "a list of what a job takes as a whole"),
    chosen_from(labour_methods, field<&RateText::labour_method>("labour_method", "elements or operating_factor")),
    field<&RateText::factor_covers>("factor_covers", "what the operating factor covers: [arc, starts, tacking]"),
    field<&RateText::factor_definition>("factor_definition", "what the operating factor means, in words"),
    field<&RateText::handling>("handling", "a list of ways to turn a weldment"),
    field<&RateText::processes>("processes", "a list of processes"),
    field<&RateText::base_metals>("base_metals", "a list of base metals"),
    field<&RateText::fillers>("fillers", "a list of fillers"),
    field<&RateText::gases>("gases", "a list of gases"),
    field<&RateText::fluxes>("fluxes", "a list of fluxes"),
    field<&RateText::wear_parts>("wear_parts", "a list of parts that wear"),
    field<&RateText::pass_limits>("pass_limits", "a list of the largest single passes"),
    field<&RateText::gouging>("gouging", "what gouging the root from the back takes"),
    field<&RateText::preheating>("preheating", "what preheating with a burner takes"),
    field<&RateText::finishes>("finishes", "a list of finishes"),
    field<&RateText::preparations>("preparations", "a list of joint preparations"),
    field<&RateText::procedures>("procedures", "a list of procedures"),
    field<&RateText::stations>("stations", "a list of stations"),
    field<&RateText::change_tasks>("change_tasks", "a list of what a change of set-up takes"),
    field<&RateText::welders>("welders", "a list of welders"),
    at_most(120,
            counted_in("months", field<&RateText::qualification_lapses>(
                                     "qualification_lapses", "when a process was not used for so long: 6 months"))),
    field<&RateText::shifts>("shifts", "a list of shifts; without any the book does not say when the shop works"),
    field<&RateText::closed>("closed", "days on which the shop is closed: [2026-05-14]"),
    field<&RateText::overtime>("overtime", "after which shifts, how long, at what premium"),
    field<&RateText::investment>("investment",
                                 "an investment to compare, such as a laser cell, with its price and its costs a year"),
});

}  // namespace

template <>
std::span<const Field<RateText>> fields<RateText>() {
  return rate_table;
}

std::vector<FieldInfo> rate_fields() { return infos_of<RateText>(); }

RateText read_rates(std::span<const std::uint32_t> files, Diagnostics& diagnostics) {
  RateText rates;
  rates.files.assign(files.begin(), files.end());
  for (const std::uint32_t file : files) {
    const std::optional<Tree> tree = parse_yaml(file, diagnostics);
    if (!tree) continue;
    Reading reading{diagnostics, {}};
    const Value root(*tree, 0);
    if (read_opening(reading, root)) read_fields(reading, root, rates);
  }
  if (!files.empty()) rates.place = {files.front(), 0, 0};
  return rates;
}

}  // namespace seambook
