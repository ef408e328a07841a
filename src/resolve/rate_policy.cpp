// Risk classes, learning and freight of the rate book, and what of its prices has rules of its own.
#include <fmt/format.h>

#include <cmath>

#include "resolve/rate_entry.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr Limits any_share{0, 1e9, false, false};

void resolve_risk_classes(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const RiskClassText& written : text.contingencies) {
    RiskClass risk{take_name(draft, seen, written.risk, "risk class"), {}};
    RateEntry entry{draft, "risk class " + risk.name, written.place, written.evidence};
    risk.contingency = known_within(entry, written.contingency, "contingency", any_share);
    decided(draft, {risk.contingency.si.source});
    draft.book.risk_classes.push_back(std::move(risk));
  }
}

/// The unit model's factor is a sum over pieces, which no cell holds: its numbers are locked.
void resolve_learning(RateDraft& draft, const RateText& text) {
  if (!text.learning) return;
  const LearningText& written = *text.learning;
  RateEntry entry{draft, "learning", written.place, written.evidence};
  Learning learning;
  if (written.model) learning.model = static_cast<LearningModel>(written.model->at);
  const bool frozen = learning.model == LearningModel::unit;
  learning.rate = known_within(entry, written.rate, "rate", {0.5, 1, false, false});
  if (written.holds_at) {
    const auto pieces = static_cast<double>(written.holds_at->value);
    const SourceId source = add_rate_source(
        entry, "pieces it holds at", {pieces, written.holds_at->place, written.holds_at->key, frozen}, unit::none);
    set_limits(entry, source, {1, 1e6, false, false});
    learning.holds_at = {Sourced{pieces, source}};
  }
  if (frozen && learning.rate.si.source != no_source) draft.book.sources[learning.rate.si.source].frozen = true;
  draft.book.learning = learning;
}

void check_classes(RateDraft& draft, const FreightText& written) {
  const std::vector<FreightClassText>& classes = written.by_mass;
  for (std::size_t i = 0; i < classes.size(); ++i) {
    const bool last = i + 1 == classes.size();
    if (!last && !classes[i].up_to && !misread(draft.faults, classes[i].place)) {
      draft.diagnostics.error(classes[i].place, "freight without 'up_to' takes any mass, but more follow",
                              "only the last takes any mass");
    } else if (last && classes[i].up_to) {
      draft.diagnostics.error(classes[i].up_to->place, "the last freight must take any mass",
                              "leave out 'up_to'; a job may state its own price of freight");
    } else if (i > 0 && classes[i].up_to && classes[i - 1].up_to &&
               classes[i].up_to->value.si <= classes[i - 1].up_to->value.si) {
      draft.diagnostics.error(classes[i].up_to->place, "freight does not rise: the one before reaches further",
                              "write the lighter one first");
    }
  }
}

/// Masses are locked: in another order they would be refused.
void resolve_freight(RateDraft& draft, const RateText& text) {
  if (!text.freight) return;
  const FreightText& written = *text.freight;
  RateEntry entry{draft, "freight", written.place, written.evidence};
  check_classes(draft, written);
  Freight freight{written.with_margin && written.with_margin->value, {}};
  for (const FreightClassText& one : written.by_mass) {
    const std::string words =
        one.up_to ? "up to " + shown(one.up_to->value, shown_in(draft.book.terms, unit::kg).unit) : "any mass";
    FreightClass priced;
    priced.up_to = known(entry, one.up_to, "mass " + words, unit::kg, Effect::frozen);
    priced.price = known(entry, one.price, "price " + words, unit::money);
    set_limits(entry, priced.price.si.source, any_share);
    decided(draft, {priced.up_to.si.source});
    freight.by_mass.push_back(priced);
  }
  draft.book.freight = std::move(freight);
}

void check_list_rounding(RateDraft& draft, const PriceText& written) {
  if (!written.list_rounding) return;
  const double units = written.list_rounding->value.si * std::pow(10, draft.book.minor_digits);
  if (units > 0.999 && std::fabs(units - std::round(units)) < 1e-6 * units) return;
  draft.diagnostics.error(
      written.list_rounding->place, "totals cannot be raised to a multiple of that",
      fmt::format("{} has {} decimals: write whole ones of the last", draft.book.currency, draft.book.minor_digits));
}

}  // namespace

void resolve_price_policy(RateDraft& draft, const RateText& text) {
  resolve_risk_classes(draft, text);
  resolve_learning(draft, text);
  resolve_freight(draft, text);
  if (!text.prices) return;
  const PriceText& written = *text.prices;
  RateEntry entry{draft, "prices", written.place, written.evidence};
  Prices& prices = draft.book.prices;
  prices.expedite = known_within(entry, written.expedite, "expedite", any_share);
  prices.free_issue_handling = known_within(entry, written.free_issue_handling, "free-issue handling", any_share);
  prices.tax_rate = known_within(entry, written.tax_rate, "tax rate", any_share);
  prices.list_rounding = known(entry, written.list_rounding, "list rounding", unit::money);
  set_limits(entry, prices.list_rounding.si.source, {std::pow(10, -draft.book.minor_digits), 1e9, false, false});
  check_list_rounding(draft, written);
  decided(draft, {prices.expedite.si.source, prices.free_issue_handling.si.source, prices.tax_rate.si.source,
                  prices.list_rounding.si.source});
  if (written.tax_rate && !written.tax)
    draft.diagnostics.error(written.tax_rate->place, "a tax rate without a word for the tax",
                            "say which one in 'tax', for example 'tax: value-added tax'");
}

}  // namespace seambook
