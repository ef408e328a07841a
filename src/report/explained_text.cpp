#include "report/explained_text.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "basics/utf8.hpp"
#include "report/number_text.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

using ExplainJson = nlohmann::ordered_json;

std::string printable(const std::string& text) {
  std::string out;
  append_printable(out, text);
  return out;
}

/// Figures stand with the digits that the working uses, so they are texts.
ExplainJson input_json(const WorkedInput& input) {
  return {{"name", input.name},
          {"words", input.words},
          {"value", input.value},
          {"unit", input.unit},
          {"origin", input.origin}};
}

ExplainJson step_json(const WorkedStep& step) {
  return {{"name", step.name},     {"words", step.words}, {"formula", step.formula}, {"numbers", step.numbers},
          {"result", step.result}, {"unit", step.unit},   {"source", step.source}};
}

ExplainJson parts_json(const std::vector<ExplainedPart>& parts) {
  ExplainJson list = ExplainJson::array();
  for (const ExplainedPart& part : parts) {
    ExplainJson json = {{"kind", part.kind}, {"name", part.name}, {"heading", part.heading}, {"notes", part.notes}};
    ExplainJson inputs = ExplainJson::array(), steps = ExplainJson::array();
    for (const WorkedInput& input : part.working.inputs) inputs.push_back(input_json(input));
    for (const WorkedStep& step : part.working.steps) steps.push_back(step_json(step));
    json["inputs"] = std::move(inputs);
    json["steps"] = std::move(steps);
    list.push_back(std::move(json));
  }
  return list;
}

std::string parts_text(const std::vector<ExplainedPart>& parts, std::size_t columns) {
  std::string out;
  for (const ExplainedPart& part : parts) out += explained_text(part, columns) + "\n";
  return out;
}

std::string movers_text(const Explained& job, std::size_t columns) {
  TextTable table;
  table.headings = {"what moves the price most", job.currency + " for +1 %", "from"};
  table.right_aligned = {false, true};
  for (const PriceMover& mover : job.movers)
    table.rows.push_back({mover.words, figure(mover.per_percent, 4), mover.origin});
  return render(table, columns);
}

}  // namespace

std::string explained_text(const ExplainedPart& part, std::size_t columns) {
  std::string out = wrapped(printable(part.heading), columns, 4);
  for (const std::string& note : part.notes) out += wrapped("  " + printable(note), columns, 4);
  return out + render(part.working, columns);
}

std::string explained_text(const Explained& job, std::size_t columns) {
  std::string out = parts_text(job.parts, columns) + movers_text(job, columns);
  for (const ExplainedOption& option : job.options)
    out += "\n" + wrapped("option " + printable(option.name), columns, 4) + "\n" + parts_text(option.parts, columns);
  return out;
}

std::string explained_json(const Explained& job, const std::string& heading) {
  ExplainJson json = ExplainJson::parse(heading);
  json["date"] = job.date;
  json["currency"] = job.currency;
  json["parts"] = parts_json(job.parts);
  ExplainJson movers = ExplainJson::array(), options = ExplainJson::array();
  for (const PriceMover& mover : job.movers)
    movers.push_back({{"input", mover.words}, {"per_percent", mover.per_percent}, {"origin", mover.origin}});
  for (const ExplainedOption& option : job.options)
    options.push_back({{"name", option.name}, {"parts", parts_json(option.parts)}});
  json["movers"] = std::move(movers);
  json["options"] = std::move(options);
  return json.dump(2, ' ', false, ExplainJson::error_handler_t::replace);
}

}  // namespace seambook
