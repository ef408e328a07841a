#include "compare/comparison.hpp"

namespace seambook {
namespace {

WaySums sums_of(const FamilyWay& way, const std::vector<RowFigures<double>>& rows) {
  WaySums sums;
  for (const std::size_t r : way.rows) {
    const RowFigures<double>& row = rows[r];
    sums.totals += joint_totals(row);
    for (const PassFigures<double>& group : row.passes) sums.attended = sums.attended + group.labour.attended;
    sums.finish = sums.finish + row.joint.labour.finish;
    sums.fit_up_extra = sums.fit_up_extra + row.joint.labour.fit_up_extra;
  }
  return sums;
}

bool cheaper(const WaySums& a, const WaySums& b) { return welding_cost(a.totals) < welding_cost(b.totals); }

/// As the job stands, unless that is the investment itself; then the cheapest of the others.
std::optional<std::size_t> way_now(const Family& family, const std::vector<WaySums>& sums, std::size_t investment) {
  std::optional<std::size_t> best;
  for (std::size_t w = 0; w < family.ways.size(); ++w) {
    const FamilyWay& way = family.ways[w];
    if (way.rows.empty() || way.process == investment) continue;
    if (way.as_the_job_says) return w;
    if (!best || cheaper(sums[w], sums[*best])) best = w;
  }
  return best;
}

Judged judge(const RateBook& book, const Family& family, const std::vector<WaySums>& sums) {
  const std::size_t process = book.investment->process;
  Judged judged;
  judged.now = way_now(family, sums, process);
  if (!judged.now) judged.why_not = "no other process of the rate book suits";
  const std::string number = process_word(book.processes[process].number, book.terms);
  std::string reason = "the rate book has no procedure of process " + number + " for this base metal";
  for (std::size_t w = 0; w < family.ways.size(); ++w) {
    if (family.ways[w].process != process) continue;
    if (!family.ways[w].rows.empty()) judged.next = w;
    reason = family.ways[w].words;
  }
  if (!judged.next) judged.why_not = reason;
  return judged;
}

Length<> metres_of(const std::vector<WaySums>& sums) {
  Length<> metres{};
  for (const WaySums& way : sums) metres = max(metres, way.totals.weld_length);
  return metres;
}

const Family& longest_family(const Comparison& comparison) {
  std::size_t longest = 0;
  for (std::size_t f = 1; f < comparison.sums.size(); ++f)
    if (metres_of(comparison.sums[f]) > metres_of(comparison.sums[longest])) longest = f;
  return comparison.ways.families[longest];
}

Known<dim::ratio> or_all(const Known<dim::ratio>& factor) {
  return factor.si.source == no_source ? Known<dim::ratio>{{1, no_source}} : factor;
}

template <Dim D>
Known<D> sum_known(Quantity<D> x) {
  return {{x.si, summed}};
}

/// Minutes at the labour cost of an attended minute.
Money<> at_labour(Time<> minutes, const WaySums& sums) {
  return sums.attended.si > 0 ? minutes * (sums.totals.labour / sums.attended) : Money<>{};
}

/// What the investment costs and how its hours are valued, without the orders.
InvestmentInputs<Sourced> investment_terms(const RateBook& book) {
  const Investment& investment = *book.investment;
  InvestmentInputs<Sourced> in;
  for (const InvestmentLine& line : investment.capital) in.capital.push_back(line.price);
  for (const InvestmentLine& line : investment.yearly) in.yearly.push_back(line.price);
  in.life_years = investment.life_years;
  in.residual = investment.residual;
  in.interest = investment.interest;
  in.upkeep = investment.upkeep;
  in.first_year = or_all(investment.first_year);
  in.avoidable_rate = investment.avoidable_rate;
  in.avoidable_known = investment.avoidable_rate.si.source != no_source;
  in.labour_value = investment.labour_value;
  return in;
}

void add_scenarios(const RateBook& book, const Job& job, Comparison& out) {
  const auto in = lift_investment<double>(investment_inputs(book, job));
  std::vector<std::string> names = {"as stated"};
  for (const Scenario& scenario : book.investment->scenarios) names.push_back(scenario.name);
  std::size_t at = 0;
  for (const ScenarioInputs<Sourced>& written : scenario_inputs(*book.investment)) {
    const auto scenario = lift_scenario<double>(written, 0);
    ScenarioWorth worth{names[at++], yearly_cost(in, scenario, 0), {}, {}};
    for (const std::size_t f : out.both) {
      const Judged& judged = out.judged[f];
      const auto family = lift_family<double>(family_inputs(out.sums[f][*judged.now], out.sums[f][*judged.next]), 0);
      worth.families.push_back(family_worth(in, family, out.pieces_year, scenario, 0));
    }
    worth.worth = investment_worth(in, worth.cost, worth.families, 0);
    out.scenarios.push_back(std::move(worth));
  }
}

}  // namespace

Comparison together(const RateBook& book, std::span<const Comparison> jobs) {
  Comparison out;
  for (const Comparison& job : jobs) {
    out.metres_year = out.metres_year + job.metres_year;
    out.unsuited_year = out.unsuited_year + job.unsuited_year;
    out.both.insert(out.both.end(), job.both.begin(), job.both.end());
  }
  const auto in = lift_investment<double>(investment_terms(book));
  for (std::size_t s = 0; s < jobs.front().scenarios.size(); ++s) {
    ScenarioWorth all = jobs.front().scenarios[s];
    for (const Comparison& job : jobs.subspan(1))
      all.families.insert(all.families.end(), job.scenarios[s].families.begin(), job.scenarios[s].families.end());
    all.worth = investment_worth(in, all.cost, all.families, 0);
    out.scenarios.push_back(std::move(all));
  }
  return out;
}

FamilyInputs<Sourced> family_inputs(const WaySums& now, const WaySums& next) {
  const auto other = [](const Totals& t) { return welding_cost(t) - t.labour - t.equipment; };
  return {sum_known(now.totals.weld_length),
          sum_known(now.totals.floor),
          sum_known(next.totals.floor),
          sum_known(next.totals.arc),
          sum_known(now.totals.labour),
          sum_known(other(now.totals)),
          sum_known(now.totals.equipment),
          sum_known(next.totals.labour),
          sum_known(other(next.totals)),
          sum_known(at_labour(next.fit_up_extra, next)),
          sum_known(at_labour(now.finish, now) - at_labour(next.finish, next))};
}

InvestmentInputs<Sourced> investment_inputs(const RateBook& book, const Job& job) {
  InvestmentInputs<Sourced> in = investment_terms(book);
  in.orders_year = job.per_year.si.source == no_source ? Known<dim::ratio>{{1, summed}} : job.per_year;
  in.order_pieces = {{static_cast<double>(job.quantities.front()), summed}};
  return in;
}

std::vector<ScenarioInputs<Sourced>> scenario_inputs(const Investment& investment) {
  const Known<dim::ratio> all{{1, no_source}};
  std::vector<ScenarioInputs<Sourced>> out = {{all, all, all, all}};
  for (const Scenario& scenario : investment.scenarios)
    out.push_back(
        {or_all(scenario.capital), or_all(scenario.fit_up), or_all(scenario.finish), or_all(scenario.metres)});
  return out;
}

Comparison compare(const RateBook& book, const Job& job) {
  Comparison out;
  out.ways = ways_to_weld(book, job);
  for (const Joint& joint : out.ways.job.joints)
    out.rows.push_back(row_figures(lift_row<double>(gather_row(book, out.ways.job, joint))));
  for (const Family& family : out.ways.families) {
    out.sums.emplace_back();
    for (const FamilyWay& way : family.ways) out.sums.back().push_back(sums_of(way, out.rows));
  }
  out.crossover = crossover(book, job, job.joints[longest_family(out).joints.front()]);
  if (!book.investment) return out;
  out.pieces_year = pieces_a_year(lift_investment<double>(investment_inputs(book, job)));
  for (std::size_t f = 0; f < out.ways.families.size(); ++f) {
    out.judged.push_back(judge(book, out.ways.families[f], out.sums[f]));
    const Judged& judged = out.judged.back();
    const Length<> metres = metres_of(out.sums[f]);
    out.metres_year = out.metres_year + metres * out.pieces_year;
    if (judged.now && judged.next)
      out.both.push_back(f);
    else if (!judged.next)
      out.unsuited_year = out.unsuited_year + metres * out.pieces_year;
  }
  add_scenarios(book, job, out);
  return out;
}

}  // namespace seambook
