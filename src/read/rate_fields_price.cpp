// What a quote adds to cost: margin, contingency, learning, freight, tax, terms.
#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr auto price_own = std::to_array({
    or_zero(field<&PriceText::contingency>("contingency", "share of the cost: 6 %")),
    or_zero(field<&PriceText::margin>("margin", "share of the price: 18 %")),
    or_zero(field<&PriceText::markup>("markup", "share of the cost, in place of the margin: 22 %")),
    or_zero(field<&PriceText::minimum_charge>("minimum_charge", "least price of a quote: 120 EUR")),
    or_zero(field<&PriceText::electricity>("electricity", "what the shop pays: 0.19 EUR/kWh")),
    at_most(3650, field<&PriceText::valid_days>("valid_days", "for which a quote stands: 14")),
    field<&PriceText::payment>("payment", "in words: 30 days net"),
    field<&PriceText::delivery>("delivery", "in words: ex works"),
    field<&PriceText::tax>("tax", "in words: prices are without value-added tax"),
    or_zero(field<&PriceText::tax_rate>("tax_rate", "of the tax that stands below the total: 20 %")),
    or_zero(field<&PriceText::expedite>("expedite", "what haste costs, share of labour: 30 %")),
    or_zero(field<&PriceText::free_issue_handling>("free_issue_handling",
                                                   "of the value of what the customer supplies: 5 %")),
    field<&PriceText::list_rounding>("list_rounding", "totals are raised to a multiple of this: 5 EUR"),
    field<&PriceText::finish>("finish", "of joints that name none: F0"),
});
constexpr auto price_table = joined(price_own, figure_evidence_fields<&PriceText::evidence>());

constexpr auto risk_own = std::to_array({
    required(field<&RiskClassText::risk>("risk", "class by which jobs name it: repeat")),
    required(or_zero(field<&RiskClassText::contingency>("contingency", "share of the cost: 3 %"))),
});
constexpr auto risk_table = joined(risk_own, figure_evidence_fields<&RiskClassText::evidence>());

constexpr auto learning_own = std::to_array({
    required(chosen_from(learning_words, field<&LearningText::model>("model", "cumulative_average or unit"))),
    required(field<&LearningText::rate>("rate", "what remains of the time with each doubling of the pieces: 90 %")),
    field<&LearningText::holds_at>("holds_at", "pieces at which the times of this book hold; 1 when left out: 10"),
});
constexpr auto learning_table = joined(learning_own, figure_evidence_fields<&LearningText::evidence>());

constexpr auto freight_class_table = std::to_array({
    field<&FreightClassText::up_to>("up_to", "largest mass of an order; any when left out: 30 kg"),
    required(or_zero(field<&FreightClassText::price>("price", "of one shipment: 24 EUR"))),
});

constexpr auto freight_own = std::to_array({
    required(field<&FreightText::with_margin>("with_margin", "whether margin is taken on it: true or false")),
    field<&FreightText::by_mass>("by_mass", "a list of {up_to: 30 kg, price: 24 EUR}, the last without up_to"),
});
constexpr auto freight_table = joined(freight_own, figure_evidence_fields<&FreightText::evidence>());

}  // namespace

template <>
std::span<const Field<PriceText>> fields<PriceText>() {
  return price_table;
}
template <>
std::span<const Field<RiskClassText>> fields<RiskClassText>() {
  return risk_table;
}
template <>
std::span<const Field<LearningText>> fields<LearningText>() {
  return learning_table;
}
template <>
std::span<const Field<FreightClassText>> fields<FreightClassText>() {
  return freight_class_table;
}
template <>
std::span<const Field<FreightText>> fields<FreightText>() {
  return freight_table;
}

}  // namespace seambook
