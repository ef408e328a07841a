// The investment that a comparison judges.
#include <fmt/format.h>

#include "resolve/rate_entry.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

constexpr Limits share_limits{0, 1, false, false}, factor_limits{0, 10, false, false};

std::vector<InvestmentLine> lines_of(RateDraft& draft, const InvestmentText& text,
                                     const std::vector<InvestmentLineText>& lines) {
  std::vector<InvestmentLine> out;
  for (const InvestmentLineText& line : lines) {
    const std::string what = text_of(line.what);
    RateEntry entry{draft, text_of(text.name), line.place, text.evidence};
    out.push_back({what, known(entry, line.price, what, unit::money)});
  }
  return out;
}

void resolve_scenarios(RateDraft& draft, const InvestmentText& text, Investment& investment) {
  NamesSeen seen;
  for (const ScenarioText& written : text.scenarios) {
    Scenario scenario;
    scenario.name = take_name(draft, seen, written.name, "scenario");
    RateEntry entry{draft, "scenario " + scenario.name, written.place, text.evidence};
    scenario.capital = known_within(entry, written.capital, "capital", {0, 10, true, false});
    scenario.fit_up = known_within(entry, written.fit_up, "extra fit-up", factor_limits);
    scenario.finish = known_within(entry, written.finish, "finishing saved", factor_limits);
    scenario.metres = known_within(entry, written.metres, "metres", factor_limits);
    investment.scenarios.push_back(std::move(scenario));
  }
}

LabourValue labour_value_of(const std::optional<Word>& word) {
  if (text_of(word) == "loaded") return LabourValue::loaded;
  return text_of(word) == "avoidable" ? LabourValue::avoidable : LabourValue::lower;
}

}  // namespace

void resolve_investment(RateDraft& draft, const RateText& text) {
  if (!text.investment) return;
  const InvestmentText& written = *text.investment;
  Investment investment;
  investment.name = text_of(written.name);
  RateEntry entry{draft, investment.name, written.place, written.evidence};
  if (written.process)
    investment.process = find_process(draft.diagnostics, draft.book.processes, *written.process).value_or(0);
  investment.capital = lines_of(draft, written, written.capital);
  investment.yearly = lines_of(draft, written, written.yearly);
  if (written.capital.empty())
    refuse_missing(entry, "capital", "list what is paid at once: {what: set, price: 26000 EUR}");
  investment.life_years = needed(entry, written.life_years, "life in years", unit::none);
  if (written.life_years)
    check_limits(entry, "life in years", written.life_years->value.si, unit::none, written.life_years->place,
                 {1, 50, false, false});
  set_limits(entry, investment.life_years.si.source, {1, 50, false, false});
  investment.residual = known_within(entry, written.residual, "residual", {0, 1, false, true});
  // Annuity factors divide by it.
  investment.interest = needed_within(entry, written.interest, "interest", {0.001, 1, false, false});
  investment.upkeep = known_within(entry, written.upkeep, "upkeep", share_limits);
  investment.first_year = known_within(entry, written.first_year, "first year", share_limits);
  investment.avoidable_rate = known(entry, written.avoidable_rate, "avoidable rate", unit::money_per_h);
  investment.labour_value = labour_value_of(written.labour_value);
  if (investment.labour_value == LabourValue::avoidable && !written.avoidable_rate)
    refuse_missing(entry, "avoidable rate", "labour_value asks for it: wage and burden, for example 33 EUR/h");
  resolve_scenarios(draft, written, investment);
  draft.book.investment = std::move(investment);
}

}  // namespace seambook
