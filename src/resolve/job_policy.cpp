// What a job asks of the rate book's price policy: its risk class, haste, learning, freight, tax.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

void take_risk(JobDraft& draft, const JobText& text) {
  const std::vector<RiskClass>& classes = draft.book.risk_classes;
  if (text.risk && classes.empty()) {
    draft.diagnostics.error(text.risk->place, "the rate book has no risk classes",
                            "add 'contingencies' to it, or leave 'risk' out");
  } else if (text.risk) {
    draft.job.order.risk = find_name(draft.diagnostics, classes, &RiskClass::name, *text.risk, "risk class");
  } else if (!classes.empty() && !given(draft.book.prices.contingency)) {
    std::vector<std::string> names;
    names.reserve(classes.size());
    for (const RiskClass& risk : classes) names.push_back(risk.name);
    refuse_lack(draft, text.place, "the job does not say its risk class",
                fmt::format("'risk: {}'; the rate book has {}", names.front(), joined_with_and(names)));
  }
}

/// A flag of the job for which the rate book must have an entry.
bool asked(JobDraft& draft, const std::optional<Flag>& flag, bool in_book, std::string_view lack,
           std::string_view hint) {
  if (!flag || !flag->value) return false;
  if (!in_book) draft.diagnostics.error(flag->place, std::string(lack), std::string(hint));
  return in_book;
}

void check_masses(JobDraft& draft, const PartText& part) {
  for (const WeldmentText* weldment : part.weldments) {
    if (!weldment->mass)
      refuse_lack(draft, weldment->place, "freight by mass needs the mass", "add for example 'mass: 18 kg'");
  }
}

void take_freight(JobDraft& draft, const PartText& part) {
  if (!part.job.freight) return;
  const JobFreightText& written = *part.job.freight;
  const std::optional<Freight>& in_book = draft.book.freight;
  if (!in_book) {
    draft.diagnostics.error(written.place, "the rate book does not say whether margin is taken on freight",
                            "add 'freight' with 'with_margin: false' to it");
    return;
  }
  if (written.by_mass) {
    if (in_book->by_mass.empty())
      draft.diagnostics.error(written.place, "the rate book has no freight by mass",
                              "add 'by_mass' to its 'freight', or state a price here");
    check_masses(draft, part);
    draft.job.order.freight = JobFreight{true, Scaling::per_lot, {}};
    return;
  }
  const Written<dim::money>& price = written.own.price;
  if (price.currency != draft.book.currency)
    draft.diagnostics.error(price.place, fmt::format("prices are in {}, not {}", draft.book.currency, price.currency),
                            "the rate book states the currency");
  if (written.own.scaling == Scaling::once)
    draft.diagnostics.error(written.place, "freight is paid for each piece or each lot", "write 'each' or 'per lot'");
  JobFreight freight{false, written.own.scaling, stated(draft, Maybe<dim::money>(price))};
  set_limits(draft, freight.price.si, {0, 1e9, false, false});
  draft.job.order.freight = freight;
}

}  // namespace

void resolve_order_policy(JobDraft& draft, const PartText& part) {
  const JobText& text = part.job;
  OrderPolicy& order = draft.job.order;
  take_risk(draft, text);
  order.expedite = asked(draft, text.expedite, given(draft.book.prices.expedite),
                         "the rate book does not say what haste costs", "add 'expedite' to its prices");
  order.learning = asked(draft, text.learning, draft.book.learning.has_value(),
                         "the rate book does not say how labour falls", "add 'learning' to it");
  take_freight(draft, part);
  order.untaxed = text_of(text.untaxed);
}

}  // namespace seambook
