#include "compare/verdict.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/qualified.hpp"

namespace seambook {
namespace {

std::string in_lengths(const RateBook& book, Length<> length) {
  const Unit unit = shown_in(book.terms, unit::m).unit;
  return fmt::format("{:.0f} {}", length.si / unit.si, unit.word);
}

}  // namespace

std::optional<Length<>> break_even_metres(const YearlyCost<double>& cost, const FamilyWorth<double>& family) {
  if (family.saved.si <= 0) return std::nullopt;
  return cost.fixed / family.saved;
}

BreakEven break_even(const Investment& investment, const ScenarioWorth& scenario) {
  BreakEven out;
  const InvestmentWorth<double>& worth = scenario.worth;
  if (worth.worth.si > 0) out.metres_year = scenario.cost.fixed * (worth.suited / worth.worth);
  // What the first year does not save has to be earned like the price.
  const Money<> to_earn = scenario.cost.capital + worth.learning;
  if (worth.cash.si > 0) out.payback_years = payback_periods(to_earn, worth.cash).si;
  const Ratio<> rate{investment.interest.si.value};
  if (worth.cash.si > to_earn.si * rate.si) out.discounted_years = discounted_payback(to_earn, worth.cash, rate).si;
  return out;
}

std::string verdict(const RateBook& book, const Comparison& comparison) {
  if (!book.investment) return "the rate book names no investment; the families stand side by side";
  const ScenarioWorth& stated = comparison.scenarios.front();
  const std::string& name = book.investment->name;
  if (comparison.both.empty()) return name + ": does not pay here. No seam of this job can be welded both ways.";
  const BreakEven even = break_even(*book.investment, stated);
  if (!even.metres_year)
    return fmt::format("{}: never pays for these seams. It saves on none of the {} a year that suit it.", name,
                       in_lengths(book, comparison.metres_year - comparison.unsuited_year));
  const bool pays = stated.worth.present_value.si > 0;
  std::string words = fmt::format(
      "{}: {} at this year's seams. It saves on {} a year; {} a year of the same mix carry its cost", name,
      pays ? "pays" : "does not pay", in_lengths(book, stated.worth.suited), in_lengths(book, *even.metres_year));
  if (even.payback_years)
    words += fmt::format("; paid back after {:.1f} years, of the {:g} it lasts", *even.payback_years,
                         book.investment->life_years.si.value);
  return words + ".";
}

std::vector<std::string> comparison_notes(const RateBook& book, const Job& job) {
  std::vector<std::string> out = {
      "Times and materials are the estimate's, joint by joint; set-ups are not compared.",
      "A procedure that the job names stands as named; others are the rate book's choice for that process.",
      "Whether a code or a buyer accepts another process is agreed in writing before it is used."};
  if (!book.investment) return out;
  if (job.per_year.si.source == no_source) out.emplace_back("The job does not say how often a year it comes: once.");
  out.emplace_back(
      "The investment's cost stands once, by the year: its hour rate is left out of the saving. Depreciation and "
      "interest are in the yearly cost, not in the cash that pays it back.");
  const std::string process = process_word(book.processes[book.investment->process].number, book.terms);
  const auto ready = [&](const Station& station) {
    return station.controlled_area.value_or(false) && std::find(station.processes.begin(), station.processes.end(),
                                                                book.investment->process) != station.processes.end();
  };
  if (std::none_of(book.stations.begin(), book.stations.end(), ready))
    out.push_back(fmt::format(
        "Before any work by {}: no station of the rate book is stated to have its controlled area ready.", process));
  const auto qualified = [&](const Joint& joint) { return somebody_qualified(book, joint, book.investment->process); };
  if (!std::all_of(job.joints.begin(), job.joints.end(), qualified))
    out.push_back(
        fmt::format("Before any work by {}: the rate book has no welder qualified for all of these joints.", process));
  out.emplace_back("Families on which it saves nothing stay as they are.");
  if (book.investment->avoidable_rate.si.source == no_source)
    out.emplace_back(
        "The rate book does not say what an hour less does not cost (avoidable_rate): hours saved are worth the full "
        "labour rate, which is so only when they are sold again.");
  return out;
}

}  // namespace seambook
