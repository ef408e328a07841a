#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr auto investment_line_table = std::to_array({
    required(field<&InvestmentLineText::what>("what", "what is paid for: enclosure with interlock")),
    required(or_zero(field<&InvestmentLineText::price>("price", "what it costs: 9000 EUR"))),
});

constexpr auto scenario_table = std::to_array({
    required(field<&ScenarioText::name>("name", "of the scenario: bad")),
    field<&ScenarioText::capital>("capital", "the cell's price, of what is stated: 120 %"),
    or_zero(field<&ScenarioText::fit_up>("fit_up", "the extra fit-up, of what is stated: 150 %")),
    or_zero(field<&ScenarioText::finish>("finish", "the finishing saved, of what is stated: 50 %")),
    or_zero(field<&ScenarioText::metres>("metres", "the metres a year, of what is stated: 70 %")),
});

constexpr std::string_view labour_value_words[] = {"lower", "loaded", "avoidable"};

constexpr auto investment_own = std::to_array({
    required(field<&InvestmentText::name>("name", "of the cell: hand-held laser cell")),
    required(field<&InvestmentText::process>("process", "that it brings, ISO 4063 number or AWS letters: 521")),
    required(
        field<&InvestmentText::capital>("capital", "what is paid at once: a list of {what: set, price: 26000 EUR}")),
    field<&InvestmentText::yearly>("yearly", "what is paid each year: a list of {what: eyewear, price: 400 EUR}"),
    required(field<&InvestmentText::life_years>("life_years", "years in use: 6")),
    or_zero(field<&InvestmentText::residual>("residual", "worth at the end, share of the capital: 10 %")),
    required(field<&InvestmentText::interest>("interest", "a year: 6 %")),
    or_zero(field<&InvestmentText::upkeep>("upkeep", "a year, share of the capital: 5 %")),
    or_zero(
        field<&InvestmentText::first_year>("first_year", "what it saves in the first year while skill grows: 60 %")),
    field<&InvestmentText::avoidable_rate>("avoidable_rate",
                                           "wage and burden that an hour less does not cost: 33 EUR/h"),
    chosen_from(labour_value_words, field<&InvestmentText::labour_value>(
                                        "labour_value", "what an hour saved is worth: lower, loaded or avoidable")),
    field<&InvestmentText::scenarios>("scenarios", "a list of {name: bad, capital: 120 %, metres: 70 %}"),
});
constexpr auto investment_table = joined(investment_own, evidence_fields<&InvestmentText::evidence>());

}  // namespace

template <>
std::span<const Field<InvestmentLineText>> fields<InvestmentLineText>() {
  return investment_line_table;
}
template <>
std::span<const Field<ScenarioText>> fields<ScenarioText>() {
  return scenario_table;
}
template <>
std::span<const Field<InvestmentText>> fields<InvestmentText>() {
  return investment_table;
}

}  // namespace seambook
