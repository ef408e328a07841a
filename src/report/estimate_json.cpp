#include "report/estimate_json.hpp"

#include <map>

#include "estimate/element_sums.hpp"
#include "estimate/gather_labour.hpp"
#include "quote/piece_totals.hpp"
#include "report/doubt_json.hpp"
#include "report/heat_facts.hpp"
#include "report/json_document.hpp"
#include "report/json_text.hpp"
#include "report/material_totals.hpp"

namespace seambook {
namespace {

using KindMoney = std::array<double, cost_kinds>;

double money_of(const KindMoney& cost, CostKind k) { return cost[static_cast<std::size_t>(k)]; }

/// Set-up labour counts as labour, bought cutting as outside work.
void write_cost(JsonText& json, const KindMoney& cost) {
  json.object([&] {
    json.key("labour").number(money_of(cost, CostKind::labour) + money_of(cost, CostKind::set_up));
    json.key("filler").number(money_of(cost, CostKind::filler));
    json.key("gas").number(money_of(cost, CostKind::gas));
    json.key("power").number(money_of(cost, CostKind::power));
    json.key("equipment").number(money_of(cost, CostKind::equipment));
    json.key("wear").number(money_of(cost, CostKind::wear));
    json.key("base_metal").number(money_of(cost, CostKind::base_metal));
    json.key("outside").number(money_of(cost, CostKind::outside) + money_of(cost, CostKind::cutting));
    json.key("other").number(money_of(cost, CostKind::free_issue) + money_of(cost, CostKind::other));
    json.key("total").number(sum_of_kinds(cost));
  });
}

/// Times and materials.
void write_figures(JsonText& json, const Totals& t, Time<> floor, Time<> waiting) {
  json.key("deposit_kg").number(t.deposit.si / unit::kg.si);
  json.key("filler_kg").number(t.filler.si / unit::kg.si);
  json.key("electrodes").count(t.pieces);
  json.key("flux_kg").number(t.flux.si / unit::kg.si);
  json.key("arc_min").number(t.arc.si / unit::min.si);
  json.key("floor_min").number(floor.si / unit::min.si);
  json.key("wait_min").number(waiting.si / unit::min.si);
  json.key("gas_l").number(t.gas.si / unit::l.si);
  json.key("energy_kwh").number(t.energy.si / unit::kWh.si);
}

void write_lengths(JsonText& json, const Totals& t) {
  json.key("weld_length_m").number(t.weld_length.si / unit::m.si);
  json.key("weld_elements").count(t.weld_elements);
  if (t.unwelded.si > 0) json.key("unwelded_m").number(t.unwelded.si / unit::m.si);
}

void write_minutes(JsonText& json, std::string_view key, Time<> minutes) {
  if (minutes.si != 0) json.key(key).number(minutes.si / unit::min.si);
}

/// Minutes by labour element, before access and the personal allowance; those that do not arise are left out.
void write_elements(JsonText& json, const RateBook& book, const Joint& joint, const RowFigures<double>& row) {
  json.key("elements_min").object([&] {
    each_labour_element(labour_shape(book, joint), row,
                        [&](std::string_view key, Time<> minutes) { write_minutes(json, key, minutes); });
  });
}

/// A weldment's own, without its joints'.
void write_elements(JsonText& json, const WeldmentFigures<double>& own) {
  json.key("elements_min").object([&] {
    write_minutes(json, "fit_up", own.parts);
    write_minutes(json, "turning", own.turns);
    for (std::size_t k = 0; k < labour_kinds; ++k) write_minutes(json, element_words[k], own.elements.of[k]);
  });
}

void write_fact(JsonText& json, const HeatFact& fact) {
  json.key(fact.key);
  if (const auto* flag = std::get_if<bool>(&fact.value)) return json.flag(*flag);
  if (const auto* number = std::get_if<double>(&fact.value)) return json.number(*number);
  if (const auto* words = std::get_if<std::string>(&fact.value)) return json.text(*words);
  json.list([&] {
    for (const double number : std::get<std::vector<double>>(fact.value)) json.number(number);
  });
}

void write_heat(JsonText& json, const std::vector<HeatFact>& facts) {
  if (facts.empty()) return;
  json.key("heat").object([&] {
    for (const HeatFact& fact : facts) write_fact(json, fact);
  });
}

void write_joint(JsonText& json, const RateBook& book, const Job& job, const Estimate& estimate, std::size_t j) {
  const Joint& joint = job.joints[j];
  const Totals totals = joint_totals(estimate.joints[j]);
  json.key("id").text(job.weldments[joint.weldment].name + "/" + joint.id);
  write_lengths(json, totals);
  json.key("section_mm2").number(estimate.joints[j].joint.section.si / unit::mm2.si);
  json.key("passes").count(totals.passes);
  json.key("procedures").list([&] {
    for (const PassGroup& group : joint.passes) json.text(book.procedures[group.procedure].name);
  });
  json.key("roles").list([&] {
    for (const PassGroup& group : joint.passes) json.text(role_word(group.role));
  });
  write_figures(json, totals, totals.floor, totals.waiting);
  write_elements(json, book, joint, estimate.joints[j]);
  write_heat(json, heat_facts(book, joint, estimate.joints[j]));
  json.key("cost");
  write_cost(json, welding_kinds(totals));
}

void write_weldment(JsonText& json, const Job& job, const Estimate& estimate, std::size_t w) {
  const PieceTotals totals = weldment_totals(job, estimate, w);
  json.key("name").text(job.weldments[w].name);
  json.key("count").count(job.weldments[w].count.si.value);
  write_lengths(json, totals.welding);
  json.key("passes").count(totals.welding.passes);
  write_figures(json, totals.welding, totals.floor, totals.waiting);
  write_elements(json, estimate.weldments[w]);
  json.key("cost");
  write_cost(json, totals.cost);
}

/// Amounts by names that an author may have chosen.
void write_by_name(JsonText& json, std::string_view key, const std::map<std::string, double>& amounts) {
  json.key(key).object([&] {
    for (const auto& [name, amount] : amounts) json.named(name).number(amount);
  });
}

template <Dim D>
std::map<std::string, double> in_unit(const std::map<std::string, Quantity<D>>& amounts, const Unit& unit) {
  std::map<std::string, double> out;
  for (const auto& [name, amount] : amounts) out[name] = amount.si / unit.si;
  return out;
}

std::map<std::string, double> arc_by_process(const RateBook& book, const Job& job, const Estimate& estimate) {
  std::map<std::string, double> minutes;
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    for (std::size_t g = 0; g < job.joints[j].passes.size(); ++g) {
      const Procedure& procedure = book.procedures[job.joints[j].passes[g].procedure];
      minutes[book.processes[procedure.process].number] += estimate.joints[j].passes[g].arc.si / unit::min.si;
    }
  }
  return minutes;
}

void write_materials(JsonText& json, const MaterialTotals& totals) {
  json.key("materials").object([&] {
    write_by_name(json, "fillers_kg", in_unit(totals.fillers, unit::kg));
    write_by_name(json, "fluxes_kg", in_unit(totals.fluxes, unit::kg));
    write_by_name(json, "gases_l", in_unit(totals.gases, unit::l));
    write_by_name(json, "purge_gases_l", in_unit(totals.purge_gases, unit::l));
  });
}

void write_totals(JsonText& json, const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote) {
  const PieceTotals totals = piece_totals(job, estimate, quote);
  write_lengths(json, totals.welding);
  json.key("passes").count(totals.welding.passes);
  write_figures(json, totals.welding, totals.floor, totals.waiting);
  write_by_name(json, "arc_min_by_process", arc_by_process(book, job, estimate));
  write_materials(json, material_totals(book, job, estimate));
  json.key("setup_min").number(quote.setup_time.si / unit::min.si);
  json.key("cost");
  write_cost(json, totals.cost);
  json.key("cost_lot");
  write_cost(json, plain_money(quote.inputs.lot));
  json.key("cost_once");
  write_cost(json, plain_money(quote.inputs.once));
}

/// Without a rate of tax nothing is said of it.
void write_price(JsonText& json, const QuotePrice& price, bool taxed) {
  const PriceFigures<double>& figures = price.figures;
  json.key("quantity").whole(price.quantity);
  json.key("unit_cost").number(figures.unit_cost.si);
  json.key("unit_price").number(figures.unit_price.si);
  json.key("pieces").number(figures.pieces.si);
  json.key("one_offs").number(figures.one_offs.si);
  json.key("expedite").number(figures.expedite.si);
  json.key("freight").number(figures.freight.si);
  json.key("supplement").number(figures.supplement.si);
  json.key("list_rounding").number(figures.list_rounding.si);
  json.key("total").number(figures.total.si);
  if (taxed) {
    json.key("tax").number(figures.tax.si);
    json.key("total_with_tax").number(figures.total_with_tax.si);
  }
  json.key("cost").number(figures.cost.si);
  json.key("left").number(figures.left.si);
}

void write_prices(JsonText& json, const std::vector<QuotePrice>& prices, bool taxed) {
  json.key("price").list([&] {
    for (const QuotePrice& price : prices) json.object([&] { write_price(json, price, taxed); });
  });
}

/// An option: what it adds to the job's price, or takes off it, for each quantity.
void write_option(JsonText& json, const Job& job, const JobOption& option, const Quote& quote) {
  json.key("name").text(option.name);
  if (!option.text.empty()) json.key("text").text(option.text);
  json.key("weldments").list([&] {
    for (const Weldment& weldment : option.part.weldments) json.text(weldment.name);
  });
  json.key("leaves_out").list([&] {
    for (const std::size_t w : option.leaves_out) json.text(job.weldments[w].name);
  });
  write_prices(json, quote.prices, false);
}

void write_heading(JsonText& json, const Job& job, const ReportedJob& reported) {
  json.key("job").text(job.name);
  json.key("file").text(reported.file);
  json.key("rates").text(reported.rates);
  json.key("rates_hash").text(reported.rates_hash);
  json.key("input_hash").text(reported.input_hash);
}

void write_lists(JsonText& json, const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote) {
  json.key("joints").list([&] {
    for (std::size_t j = 0; j < job.joints.size(); ++j) json.object([&] { write_joint(json, book, job, estimate, j); });
  });
  json.key("weldments").list([&] {
    for (std::size_t w = 0; w < job.weldments.size(); ++w) json.object([&] { write_weldment(json, job, estimate, w); });
  });
  json.key("totals").object([&] { write_totals(json, book, job, estimate, quote); });
  write_prices(json, quote.prices, quote.inputs.order.taxed);
  json.key("options").list([&] {
    for (std::size_t i = 0; i < job.options.size(); ++i)
      json.object([&] { write_option(json, job, job.options[i], quote.options[i].quote); });
  });
}

}  // namespace

std::string job_json(const Job& job, const ReportedJob& reported) {
  std::string out;
  JsonText json(out, json_item_columns);
  json.object([&] { write_heading(json, job, reported); });
  return out;
}

std::string estimate_json(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote,
                          const ReportedJob& reported, const Changes* changes) {
  constexpr std::size_t bytes_a_joint = 1500;  // about: growing would copy the text
  std::string out;
  out.reserve(job.joints.size() * bytes_a_joint);
  JsonText json(out, json_item_columns);
  json.object([&] {
    write_heading(json, job, reported);
    if (!reported.workbook.empty()) json.key("workbook").text(reported.workbook);
    json.key("date").text(iso(quote.date));
    json.key("currency").text(book.currency);
    write_lists(json, book, job, estimate, quote);
    if (quote.doubt) {
      json.key("doubt").ready(doubt_json(*quote.doubt));
      json.key("drivers").ready(drivers_json(book, *quote.doubt));
    }
    if (changes != nullptr) json.key("changes").ready(changes_json(*changes));
    if (reported.inputs) json.key("inputs").ready(inputs_json(*reported.inputs));
  });
  return out;
}

}  // namespace seambook
