// What a quote adds to cost: labour rates, overhead, margin or mark-up, terms.
#include <fmt/format.h>

#include "resolve/currency.hpp"
#include "resolve/rate_entry.hpp"

namespace seambook {
namespace {

void resolve_markup_or_margin(RateEntry& entry, const PriceText& text, Prices& prices) {
  if (text.margin && text.markup) {
    entry.draft.diagnostics.error(text.markup->place, "margin and markup are both given: choose one",
                                  "margin is a share of the price, markup a share of the cost");
  } else if (!text.margin && !text.markup) {
    refuse_missing(entry, "margin or markup", "margin is a share of the price, markup a share of the cost");
  }
  prices.by_margin = text.margin.has_value();
  prices.margin = known_within(entry, text.margin, "margin", {0, 0.95, false, true});
  prices.markup = known(entry, text.markup, "markup", unit::percent);
}

}  // namespace

void resolve_currency(RateDraft& draft, const RateText& text) {
  draft.book.shop = text_of(text.shop);
  draft.book.terms = text_of(text.terms) == "aws" ? Terms::aws : Terms::iso;
  draft.book.letter_paper = text.paper ? text.paper->at == 1 : draft.book.terms == Terms::aws;
  if (!text.currency) {
    refuse_book_without(draft, text, "has no currency", "add for example 'currency: EUR'");
    return;
  }
  if (const auto digits = minor_digits_of(text.currency->text)) {
    draft.book.currency = text.currency->text;
    draft.book.minor_digits = *digits;
  } else {
    draft.diagnostics.error(text.currency->place, fmt::format("unknown currency '{}'", text.currency->text),
                            "write its ISO 4217 code, for example EUR");
  }
}

void resolve_ranges(RateDraft& draft, const RateText& text) {
  if (!text.ranges) return;
  const auto share = [](const Maybe<dim::ratio>& written) { return written ? written->value.si : 0; };
  draft.book.ranges = {share(text.ranges->published), share(text.ranges->common_practice),
                       share(text.ranges->assumption)};
}

void resolve_labour(RateDraft& draft, const RateText& text) {
  NamesSeen seen;
  for (const LabourText& written : text.labour) {
    Labour labour{.name = take_name(draft, seen, written.name, "labour grade"), .rate = {}, .wage = {}, .burden = {}};
    RateEntry entry{draft, "labour " + labour.name, written.place, written.evidence};
    labour.loaded = written.rate.has_value();
    if (written.rate && (written.wage || written.burden)) {
      draft.diagnostics.error(written.rate->place,
                              fmt::format("{} has a loaded rate and a wage with burden: choose one", entry.name));
    } else if (!written.rate && !written.wage) {
      refuse_missing(entry, "rate", "add 'rate' (loaded), or 'wage' and 'burden'");
    } else if (!written.rate && !written.burden) {
      refuse_missing(entry, "burden", "a wage needs one; 'burden: 0 %' when there is none");
    }
    labour.rate = known(entry, written.rate, "rate", unit::money_per_h);
    labour.wage = known(entry, written.wage, "wage", unit::money_per_h);
    labour.burden = known(entry, written.burden, "burden", unit::percent);
    draft.book.labour.push_back(std::move(labour));
  }
  if (text.labour.empty())
    refuse_book_without(draft, text, "has no labour grade", "add 'labour' with a name and a rate");
}

void resolve_overhead(RateDraft& draft, const RateText& text) {
  if (!text.overhead) {
    refuse_book_without(draft, text, "does not say where overhead is",
                        "add 'overhead' with 'in_rate: true', or with 'added' as a share of labour cost");
    return;
  }
  const OverheadText& written = *text.overhead;
  RateEntry entry{draft, "overhead", written.place, written.evidence};
  const bool in_rate = written.in_rate && written.in_rate->value;
  if (in_rate && written.added) {
    draft.diagnostics.error(written.added->place, "overhead is in the rate and added: choose one");
  } else if (!in_rate && !written.added && !misread(draft.faults, written.place)) {
    draft.diagnostics.error(written.place, "overhead is neither in the rate nor added",
                            "say 'in_rate: true', or 'added' as a share of labour cost");
  }
  if (written.added) draft.book.overhead_added = known(entry, written.added, "added overhead", unit::percent);
}

void resolve_prices(RateDraft& draft, const RateText& text) {
  if (!text.prices) {
    refuse_book_without(draft, text, "has no prices", "add 'prices' with margin and electricity");
    return;
  }
  const PriceText& written = *text.prices;
  RateEntry entry{draft, "prices", written.place, written.evidence};
  Prices& prices = draft.book.prices;
  prices.contingency = known(entry, written.contingency, "contingency", unit::percent);
  resolve_markup_or_margin(entry, written, prices);
  prices.minimum_charge = known(entry, written.minimum_charge, "minimum charge", unit::money);
  prices.electricity = needed(entry, written.electricity, "electricity", unit::money_per_kWh);
  decided(draft, {prices.contingency.si.source, prices.margin.si.source, prices.markup.si.source,
                  prices.minimum_charge.si.source});
  if (written.valid_days) prices.valid_days = static_cast<int>(written.valid_days->value);
  prices.payment = text_of(written.payment);
  prices.delivery = text_of(written.delivery);
  prices.tax = text_of(written.tax);
  if (written.finish)
    prices.finish = find_name(draft.diagnostics, draft.book.finishes, &Finish::name, *written.finish, "finish");
}

}  // namespace seambook
