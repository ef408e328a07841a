// The price policy of a job in words, as it stands among its assumptions.
#include <fmt/format.h>

#include "quote/quote.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

std::string percent(const Known<dim::ratio>& share) { return shown(share.si.value, unit::percent); }

std::string money(const RateBook& book, const Known<dim::money>& amount) {
  return fmt::format("{:.{}f} {}", amount.si.value, book.minor_digits, book.currency);
}

std::string contingency_words(const RateBook& book, const Job& job) {
  const std::string share = percent(policy_inputs(book, job).contingency);
  if (!job.order.risk) return fmt::format("Contingency: {} of the cost of pieces and one-offs.", share);
  return fmt::format("Contingency: {} of the cost of pieces and one-offs, as for risk class {}.", share,
                     book.risk_classes[*job.order.risk].name);
}

std::string margin_words(const Prices& prices) {
  return prices.by_margin
             ? fmt::format("Margin: {} of the price, so price = cost / (1 - margin).", percent(prices.margin))
             : fmt::format("Mark-up: {} of the cost, so price = cost × (1 + mark-up).", percent(prices.markup));
}

std::string learning_words_of(const Learning& learning) {
  const bool average = learning.model == LearningModel::cumulative_average;
  const double holds_at = learning.holds_at.si.source == no_source ? 1 : learning.holds_at.si.value;
  return fmt::format(
      "Learning: {} model, {} with each doubling; the rate book's times are those of {} {:.0f}. It acts on the labour, "
      "its overhead and the equipment of each piece, not on lots, one-offs or material.",
      average ? "cumulative-average" : "unit", percent(learning.rate), average ? "the average up to piece" : "piece",
      holds_at);
}

std::string freight_words(const RateBook& book, const JobFreight& freight) {
  const std::string margin = book.freight->with_margin ? "with margin" : "passed on without margin";
  if (freight.by_mass) return fmt::format("Freight: by the net mass of the order, {}.", margin);
  return fmt::format("Freight: {} {}, {}.", money(book, freight.price),
                     freight.scaling == Scaling::each ? "each piece" : "a lot", margin);
}

std::string tax_words(const RateBook& book, const Job& job) {
  if (!job.order.untaxed.empty()) return fmt::format("Tax: none is added: {}.", job.order.untaxed);
  if (book.prices.tax_rate.si.source == no_source) return {};
  return fmt::format("Tax: {} of the total, below it: {}.", percent(book.prices.tax_rate), book.prices.tax);
}

}  // namespace

std::vector<std::string> policy_in_words(const RateBook& book, const Job& job) {
  const Prices& prices = book.prices;
  std::vector<std::string> out = {contingency_words(book, job), margin_words(prices)};
  if (job.order.learning) out.push_back(learning_words_of(*book.learning));
  if (job.order.expedite)
    out.push_back(
        fmt::format("Expedite: {} of the labour of the order (set-ups and one-offs included, without "
                    "overhead), with margin; nothing on material.",
                    percent(prices.expedite)));
  if (prices.minimum_charge.si.source != no_source)
    out.push_back(fmt::format("Minimum charge: {} for an order, on pieces, one-offs and expedite together.",
                              money(book, prices.minimum_charge)));
  if (job.order.freight) out.push_back(freight_words(book, *job.order.freight));
  if (prices.list_rounding.si.source != no_source)
    out.push_back(fmt::format("Price list: totals are raised to a multiple of {}, by a line of their own.",
                              money(book, prices.list_rounding)));
  if (std::string tax = tax_words(book, job); !tax.empty()) out.push_back(std::move(tax));
  out.emplace_back(
      "Rounding: the unit price is rounded once to the currency's minor unit, half away from zero, then multiplied; "
      "every other printed line is rounded once.");
  return out;
}

}  // namespace seambook
