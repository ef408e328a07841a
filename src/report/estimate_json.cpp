#include "report/estimate_json.hpp"

#include <cassert>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>

#include "estimate/element_sums.hpp"
#include "estimate/gather_labour.hpp"
#include "quote/piece_totals.hpp"
#include "report/cells.hpp"
#include "report/doubt_json.hpp"
#include "report/heat_facts.hpp"
#include "report/material_totals.hpp"

namespace seambook {
namespace {

using Json = nlohmann::ordered_json;
using KindMoney = std::array<double, cost_kinds>;

/// A figure in units of `unit`. The format knows no infinity; estimates hold none.
Json in_unit(double si, const Unit& unit) {
  assert(std::isfinite(si));
  return si / unit.si;
}
/// Counts as whole numbers.
Json count(double x) {
  assert(std::isfinite(x));
  return x == std::floor(x) && std::fabs(x) < 9e15 ? Json(static_cast<std::int64_t>(x)) : Json(x);
}

double money_of(const KindMoney& cost, CostKind k) { return cost[static_cast<std::size_t>(k)]; }

/// Set-up labour counts as labour, bought cutting as outside work.
Json cost_json(const KindMoney& cost) {
  Json json;
  json["labour"] = money_of(cost, CostKind::labour) + money_of(cost, CostKind::set_up);
  json["filler"] = money_of(cost, CostKind::filler);
  json["gas"] = money_of(cost, CostKind::gas);
  json["power"] = money_of(cost, CostKind::power);
  json["equipment"] = money_of(cost, CostKind::equipment);
  json["wear"] = money_of(cost, CostKind::wear);
  json["base_metal"] = money_of(cost, CostKind::base_metal);
  json["outside"] = money_of(cost, CostKind::outside) + money_of(cost, CostKind::cutting);
  json["other"] = money_of(cost, CostKind::free_issue) + money_of(cost, CostKind::other);
  json["total"] = sum_of_kinds(cost);
  return json;
}

KindMoney joint_cost(const Totals& t) {
  KindMoney cost{};
  const auto set = [&](CostKind k, Money<> money) { cost[static_cast<std::size_t>(k)] = money.si; };
  set(CostKind::labour, t.labour);
  set(CostKind::equipment, t.equipment);
  set(CostKind::filler, t.filler_cost);
  set(CostKind::gas, t.gas_cost);
  set(CostKind::power, t.power);
  set(CostKind::wear, t.wear);
  return cost;
}

/// Times and materials.
void add_figures(Json& json, const Totals& t, Time<> floor, Time<> waiting) {
  json["deposit_kg"] = in_unit(t.deposit.si, unit::kg);
  json["filler_kg"] = in_unit(t.filler.si, unit::kg);
  json["electrodes"] = count(t.pieces);
  json["flux_kg"] = in_unit(t.flux.si, unit::kg);
  json["arc_min"] = in_unit(t.arc.si, unit::min);
  json["floor_min"] = in_unit(floor.si, unit::min);
  json["wait_min"] = in_unit(waiting.si, unit::min);
  json["gas_l"] = in_unit(t.gas.si, unit::l);
  json["energy_kwh"] = in_unit(t.energy.si, unit::kWh);
}

void add_lengths(Json& json, const Totals& t) {
  json["weld_length_m"] = in_unit(t.weld_length.si, unit::m);
  json["weld_elements"] = count(t.weld_elements);
  if (t.unwelded.si > 0) json["unwelded_m"] = in_unit(t.unwelded.si, unit::m);
}

/// Minutes by labour element, before access and the personal allowance; those that do not arise are left out.
Json elements_json(const RateBook& book, const Joint& joint, const RowFigures<double>& row) {
  Json json = Json::object();
  each_labour_element(labour_shape(book, joint), row, [&](std::string_view key, Time<> minutes) {
    if (minutes.si != 0) json[std::string(key)] = in_unit(minutes.si, unit::min);
  });
  return json;
}

/// A weldment's own, without its joints'.
Json weldment_elements_json(const WeldmentFigures<double>& own) {
  Json json = Json::object();
  const auto add = [&](std::string_view key, Time<> minutes) {
    if (minutes.si != 0) json[std::string(key)] = in_unit(minutes.si, unit::min);
  };
  add("fit_up", own.parts), add("turning", own.turns);
  for (std::size_t k = 0; k < labour_kinds; ++k) add(element_words[k], own.elements.of[k]);
  return json;
}

Json joint_json(const RateBook& book, const Job& job, const Estimate& estimate, std::size_t j) {
  const Joint& joint = job.joints[j];
  const Totals totals = joint_totals(estimate.joints[j]);
  Json json;
  json["id"] = job.weldments[joint.weldment].name + "/" + joint.id;
  add_lengths(json, totals);
  json["section_mm2"] = in_unit(estimate.joints[j].joint.section.si, unit::mm2);
  json["passes"] = count(totals.passes);
  json["procedures"] = Json::array();
  for (const PassGroup& group : joint.passes) json["procedures"].push_back(book.procedures[group.procedure].name);
  json["roles"] = Json::array();
  for (const PassGroup& group : joint.passes) json["roles"].push_back(role_word(group.role));
  add_figures(json, totals, totals.floor, totals.waiting);
  json["elements_min"] = elements_json(book, joint, estimate.joints[j]);
  for (const HeatFact& fact : heat_facts(book, joint, estimate.joints[j]))
    std::visit([&](const auto& value) { json["heat"][fact.key] = value; }, fact.value);
  json["cost"] = cost_json(joint_cost(totals));
  return json;
}

Json weldment_json(const Job& job, const Estimate& estimate, std::size_t w) {
  const PieceTotals totals = weldment_totals(job, estimate, w);
  Json json;
  json["name"] = job.weldments[w].name;
  json["count"] = count(job.weldments[w].count.si.value);
  add_lengths(json, totals.welding);
  json["passes"] = count(totals.welding.passes);
  add_figures(json, totals.welding, totals.floor, totals.waiting);
  json["elements_min"] = weldment_elements_json(estimate.weldments[w]);
  json["cost"] = cost_json(totals.cost);
  return json;
}

Json arc_by_process(const RateBook& book, const Job& job, const Estimate& estimate) {
  std::map<std::string, double> minutes;
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    for (std::size_t g = 0; g < job.joints[j].passes.size(); ++g) {
      const Procedure& procedure = book.procedures[job.joints[j].passes[g].procedure];
      minutes[book.processes[procedure.process].number] += estimate.joints[j].passes[g].arc.si / unit::min.si;
    }
  }
  Json json = Json::object();
  for (const auto& [number, min] : minutes) json[number] = min;
  return json;
}

template <Dim D>
Json by_name(const std::map<std::string, Quantity<D>>& amounts, const Unit& unit) {
  Json json = Json::object();
  for (const auto& [name, amount] : amounts) json[name] = in_unit(amount.si, unit);
  return json;
}

Json materials_json(const RateBook& book, const Job& job, const Estimate& estimate) {
  const MaterialTotals totals = material_totals(book, job, estimate);
  Json json;
  json["fillers_kg"] = by_name(totals.fillers, unit::kg);
  json["fluxes_kg"] = by_name(totals.fluxes, unit::kg);
  json["gases_l"] = by_name(totals.gases, unit::l);
  json["purge_gases_l"] = by_name(totals.purge_gases, unit::l);
  return json;
}

Json totals_json(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote) {
  const PieceTotals totals = piece_totals(job, estimate, quote);
  Json json;
  add_lengths(json, totals.welding);
  json["passes"] = count(totals.welding.passes);
  add_figures(json, totals.welding, totals.floor, totals.waiting);
  json["arc_min_by_process"] = arc_by_process(book, job, estimate);
  json["materials"] = materials_json(book, job, estimate);
  json["setup_min"] = in_unit(quote.setup_time.si, unit::min);
  json["cost"] = cost_json(totals.cost);
  json["cost_lot"] = cost_json(plain_money(quote.inputs.lot));
  json["cost_once"] = cost_json(plain_money(quote.inputs.once));
  return json;
}

/// Without a rate of tax nothing is said of it.
Json price_json(const QuotePrice& price, bool taxed) {
  const PriceFigures<double>& figures = price.figures;
  Json json;
  json["quantity"] = price.quantity;
  json["unit_cost"] = figures.unit_cost.si;
  json["unit_price"] = figures.unit_price.si;
  json["pieces"] = figures.pieces.si;
  json["one_offs"] = figures.one_offs.si;
  json["expedite"] = figures.expedite.si;
  json["freight"] = figures.freight.si;
  json["supplement"] = figures.supplement.si;
  json["list_rounding"] = figures.list_rounding.si;
  json["total"] = figures.total.si;
  if (taxed) {
    json["tax"] = figures.tax.si;
    json["total_with_tax"] = figures.total_with_tax.si;
  }
  json["cost"] = figures.cost.si;
  json["left"] = figures.left.si;
  return json;
}

/// An option: what it adds to the job's price, or takes off it, for each quantity.
Json option_json(const Job& job, const JobOption& option, const Quote& quote) {
  Json json;
  json["name"] = option.name;
  if (!option.text.empty()) json["text"] = option.text;
  json["weldments"] = Json::array();
  for (const Weldment& weldment : option.part.weldments) json["weldments"].push_back(weldment.name);
  json["leaves_out"] = Json::array();
  for (const std::size_t w : option.leaves_out) json["leaves_out"].push_back(job.weldments[w].name);
  json["price"] = Json::array();
  for (const QuotePrice& price : quote.prices) json["price"].push_back(price_json(price, false));
  return json;
}

Json heading_json(const Job& job, const ReportedJob& reported) {
  Json json;
  json["job"] = job.name;
  json["file"] = reported.file;
  json["rates"] = reported.rates;
  json["rates_hash"] = reported.rates_hash;
  json["input_hash"] = reported.input_hash;
  return json;
}

std::string text_of(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace); }

/// The joints in place of their empty list, each made text by itself, so that no tree of them all is held.
/// What stands before the list are strings, in which quotation marks are escaped.
std::string with_joints(std::string text, const RateBook& book, const Job& job, const Estimate& estimate) {
  if (job.joints.empty()) return text;
  std::string joints = "\"joints\": [";
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    joints += j == 0 ? "\n    " : ",\n    ";
    for (const char c : text_of(joint_json(book, job, estimate, j))) {
      joints += c;
      if (c == '\n') joints += "    ";
    }
  }
  joints += "\n  ]";
  constexpr std::string_view empty = "\"joints\": []";
  return text.replace(text.find(empty), empty.size(), joints);
}

}  // namespace

std::string job_json(const Job& job, const ReportedJob& reported) { return text_of(heading_json(job, reported)); }

std::string estimate_json(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote,
                          const ReportedJob& reported, const Changes* changes) {
  Json json = heading_json(job, reported);
  if (!reported.workbook.empty()) json["workbook"] = reported.workbook;
  json["date"] = iso(quote.date);
  json["currency"] = book.currency;
  json["joints"] = Json::array();  // filled in as text
  json["weldments"] = Json::array();
  for (std::size_t w = 0; w < job.weldments.size(); ++w) json["weldments"].push_back(weldment_json(job, estimate, w));
  json["totals"] = totals_json(book, job, estimate, quote);
  json["price"] = Json::array();
  for (const QuotePrice& price : quote.prices) json["price"].push_back(price_json(price, quote.inputs.order.taxed));
  json["options"] = Json::array();
  for (std::size_t i = 0; i < job.options.size(); ++i)
    json["options"].push_back(option_json(job, job.options[i], quote.options[i].quote));
  if (quote.doubt) {
    json["doubt"] = Json::parse(doubt_json(*quote.doubt));
    json["drivers"] = Json::parse(drivers_json(book, *quote.doubt));
  }
  if (changes != nullptr) json["changes"] = Json::parse(changes_json(*changes));
  if (reported.inputs) json["inputs"] = Json::parse(inputs_json(*reported.inputs));
  return with_joints(text_of(json), book, job, estimate);
}

}  // namespace seambook
