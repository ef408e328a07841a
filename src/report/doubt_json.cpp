#include "report/doubt_json.hpp"

#include <nlohmann/json.hpp>

#include "basics/base64.hpp"
#include "basics/utf8.hpp"
#include "report/cells.hpp"

namespace seambook {
namespace {

using Json = nlohmann::ordered_json;

std::string laid_out(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace); }

Json percentiles_json(const Percentiles& p) { return {{"p10", p.p10}, {"p50", p.p50}, {"p80", p.p80}, {"p90", p.p90}}; }

}  // namespace

std::string doubt_json(const Doubt& doubt) {
  Json json;
  json["quantity"] = doubt.quantity;
  json["ranges_stated"] = doubt.ranges_stated;
  json["inputs"] = doubt.inputs;
  json["samples"] = doubt.samples;
  json["total"] = doubt.total.si;
  json["cost"] = doubt.cost.si;
  if (doubt.samples == 0) return laid_out(json);
  json["totals"] = percentiles_json(doubt.totals);
  json["costs"] = percentiles_json(doubt.costs);
  json["contingency_p80_percent"] = doubt.contingency_p80.si / unit::percent.si;
  json["contingency_p90_percent"] = doubt.contingency_p90.si / unit::percent.si;
  json["histogram"] = {{"from", doubt.bars_from.si}, {"width", doubt.bar_width.si}, {"samples", doubt.bars}};
  return laid_out(json);
}

namespace {

Json driver_json(const RateBook& book, const DoubtDriver& driver) {
  Json json;
  json["input"] = driver.words;
  json["unit"] = unit_word(driver.unit, book.currency);
  json["low"] = driver.low / driver.unit.si;
  json["quoted"] = driver.quoted / driver.unit.si;
  json["high"] = driver.high / driver.unit.si;
  json["total_low"] = driver.total_low.si;
  json["total_high"] = driver.total_high.si;
  json["basis"] = driver.basis;
  return json;
}

}  // namespace

std::string drivers_json(const RateBook& book, const Doubt& doubt) {
  Json json = Json::array();
  for (const DoubtDriver& driver : doubt.drivers) json.push_back(driver_json(book, driver));
  return laid_out(json);
}

namespace {

/// A workbook is no text: its bytes are written as letters.
Json file_json(const NamedText& file) {
  if (is_utf8(file.text)) return {{"name", file.name}, {"text", file.text}};
  return {{"name", file.name}, {"base64", base64_of(file.text)}};
}

Json texts_json(const std::vector<NamedText>& files) {
  Json json = Json::array();
  for (const NamedText& file : files) json.push_back(file_json(file));
  return json;
}

}  // namespace

std::string inputs_json(const WrittenInputs& inputs) {
  Json json;
  json["job"] = {{"name", inputs.job.name}, {"text", inputs.job.text}};
  json["takeoffs"] = texts_json(inputs.takeoffs);
  json["rates"] = texts_json(inputs.rates);
  return laid_out(json);
}

std::string changes_json(const Changes& changes) {
  Json json;
  json["past"] = {{"date", iso(changes.past_date)},
                  {"version", changes.past_version},
                  {"quantity", changes.past_quantity},
                  {"total", changes.past_total.si}};
  json["quantity"] = changes.quantity;
  json["total"] = changes.total.si;
  json["causes"] = Json::array();
  for (const CauseAmount& amount : changes.amounts) {
    Json causes = Json::array();
    for (const Cause cause : amount.causes) causes.push_back(cause_words[static_cast<std::size_t>(cause)]);
    json["causes"].push_back({{"causes", causes}, {"amount", amount.amount.si}});
  }
  json["items"] = Json::array();
  for (const ChangedItem& item : changes.items)
    json["items"].push_back({{"cause", cause_words[static_cast<std::size_t>(item.cause)]},
                             {"of", item.of},
                             {"figure", item.what},
                             {"before", item.before.empty() ? Json(nullptr) : Json(item.before)},
                             {"now", item.after.empty() ? Json(nullptr) : Json(item.after)}});
  json["items_left_out"] = changes.items_left_out;
  json["notes"] = changes.notes;
  return laid_out(json);
}

}  // namespace seambook
