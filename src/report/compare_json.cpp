#include <nlohmann/json.hpp>

#include "compare/verdict.hpp"
#include "report/compare_text.hpp"
#include "report/json_document.hpp"

namespace seambook {
namespace {

using CompareJson = nlohmann::ordered_json;

CompareJson number_or_null(const std::optional<double>& x) { return x ? CompareJson(*x) : CompareJson(nullptr); }

CompareJson way_json(const RateBook& book, const FamilyWay& way, const WaySums& sums) {
  CompareJson json;
  json["process"] = book.processes[way.process].number;
  json["suits"] = !way.rows.empty();
  json["words"] = way.words;
  if (way.rows.empty()) return json;
  json["look_again"] = way.look_again;
  const Totals& t = sums.totals;
  json["weld_length_m"] = t.weld_length.si;
  json["passes"] = t.passes;
  json["arc_min"] = t.arc.si / unit::min.si;
  json["floor_min"] = t.floor.si / unit::min.si;
  json["fit_up_extra_min"] = sums.fit_up_extra.si / unit::min.si;
  json["finish_min"] = sums.finish.si / unit::min.si;
  json["labour"] = t.labour.si;
  json["filler"] = t.filler_cost.si;
  json["gas"] = t.gas_cost.si;
  json["power"] = t.power.si;
  json["wear"] = t.wear.si;
  json["equipment"] = t.equipment.si;
  json["total"] = welding_cost(t).si;
  json["per_m"] = welding_cost(t).si / t.weld_length.si;
  return json;
}

/// The saving of family f as stated, when it can be welded both ways.
void add_saving(CompareJson& json, const Comparison& comparison, std::size_t f) {
  const auto& both = comparison.both;
  for (std::size_t k = 0; k < both.size(); ++k) {
    if (both[k] != f) continue;
    const FamilyWorth<double>& worth = comparison.scenarios.front().families[k];
    json["saved_min_per_m"] = worth.minutes_saved.si / unit::min.si;
    json["saved_per_m"] = worth.saved.si;
    const auto metres = break_even_metres(comparison.scenarios.front().cost, worth);
    json["break_even_m_per_year"] = number_or_null(metres ? std::optional<double>(metres->si) : std::nullopt);
  }
}

CompareJson scenario_json(const Investment& investment, const ScenarioWorth& scenario) {
  const BreakEven even = break_even(investment, scenario);
  CompareJson json;
  json["name"] = scenario.name;
  json["capital"] = scenario.cost.capital.si;
  json["fixed_per_year"] = scenario.cost.fixed.si;
  json["saved_per_year"] = scenario.worth.worth.si;
  json["suited_m_per_year"] = scenario.worth.suited.si;
  json["break_even_m_per_year"] =
      number_or_null(even.metres_year ? std::optional<double>(even.metres_year->si) : std::nullopt);
  json["payback_years"] = number_or_null(even.payback_years);
  json["discounted_payback_years"] = number_or_null(even.discounted_years);
  json["present_value"] = scenario.worth.present_value.si;
  return json;
}

}  // namespace

std::string together_json(const RateBook& book, const Comparison& together) {
  CompareJson json;
  json["investment"] = book.investment->name;
  json["scenarios"] = CompareJson::array();
  for (const ScenarioWorth& scenario : together.scenarios)
    json["scenarios"].push_back(scenario_json(*book.investment, scenario));
  json["verdict"] = verdict(book, together);
  return json.dump(2, ' ', false, CompareJson::error_handler_t::replace);
}

std::string compare_json(const RateBook& book, const Job& job, const Comparison& comparison,
                         const ReportedJob& reported) {
  CompareJson json = CompareJson::parse(job_json(job, reported));
  if (!reported.workbook.empty()) json["workbook"] = reported.workbook;
  json["currency"] = book.currency;
  json["families"] = CompareJson::array();
  for (std::size_t f = 0; f < comparison.ways.families.size(); ++f) {
    const Family& family = comparison.ways.families[f];
    CompareJson entry;
    entry["family"] = family.words;
    entry["joints"] = CompareJson::array();
    for (const std::size_t j : family.joints)
      entry["joints"].push_back(job.weldments[job.joints[j].weldment].name + "/" + job.joints[j].id);
    entry["procedures"] = CompareJson::array();
    for (std::size_t w = 0; w < family.ways.size(); ++w)
      entry["procedures"].push_back(way_json(book, family.ways[w], comparison.sums[f][w]));
    if (book.investment) {
      if (!comparison.judged[f].why_not.empty()) entry["why_not"] = comparison.judged[f].why_not;
      add_saving(entry, comparison, f);
    }
    json["families"].push_back(std::move(entry));
  }
  if (book.investment) {
    json["investment"] = book.investment->name;
    json["pieces_per_year"] = comparison.pieces_year.si;
    json["scenarios"] = CompareJson::array();
    for (const ScenarioWorth& scenario : comparison.scenarios)
      json["scenarios"].push_back(scenario_json(*book.investment, scenario));
  }
  json["verdict"] = verdict(book, comparison);
  return json_list_item(json.dump(2, ' ', false, CompareJson::error_handler_t::replace));
}

}  // namespace seambook
