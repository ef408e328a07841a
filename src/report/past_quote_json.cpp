#include "report/past_quote_json.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "basics/base64.hpp"
#include "text/json_bounds.hpp"

namespace seambook {
namespace {

using PastJson = nlohmann::json;

constexpr const char* made_by = "give the document that 'seambook quote --json' printed";

/// A member that is there and of the kind asked for; null otherwise.
const PastJson* member(const PastJson& of, const char* key, bool (PastJson::*is)() const noexcept) {
  if (!of.is_object()) return nullptr;
  const auto found = of.find(key);
  return found != of.end() && ((*found).*is)() ? &*found : nullptr;
}
const PastJson* text_member(const PastJson& of, const char* key) { return member(of, key, &PastJson::is_string); }
const PastJson* list_member(const PastJson& of, const char* key) { return member(of, key, &PastJson::is_array); }
std::string text_of_member(const PastJson& of, const char* key) {
  const PastJson* text = text_member(of, key);
  return text != nullptr ? text->get<std::string>() : std::string();
}

bool is_our_document(const PastJson& document) {
  const PastJson* program = member(document, "program", &PastJson::is_object);
  const PastJson* format = member(document, "format", &PastJson::is_number_integer);
  return program != nullptr && text_of_member(*program, "name") == "seambook" && format != nullptr && *format == 1 &&
         list_member(document, "jobs") != nullptr;
}

std::string names_of(const PastJson& jobs) {
  constexpr std::size_t enough = 10;
  std::string names;
  std::size_t told = 0;
  for (const PastJson& job : jobs) {
    const std::string name = text_of_member(job, "job").substr(0, 80);
    if (name.empty()) continue;
    if (++told > enough) return names + " ...";
    names += (names.empty() ? "" : ", ") + name;
  }
  return names.empty() ? "none" : names;
}

bool take_files(const PastJson& of, const char* key, std::vector<NamedText>& into) {
  const PastJson* files = list_member(of, key);
  if (files == nullptr) return false;
  for (const PastJson& file : *files) {
    if (text_member(file, "name") == nullptr) return false;
    if (text_member(file, "text") != nullptr) {
      into.push_back({text_of_member(file, "name"), text_of_member(file, "text")});
      continue;
    }
    std::optional<std::string> bytes = bytes_of_base64(text_of_member(file, "base64"));
    if (text_member(file, "base64") == nullptr || !bytes) return false;
    into.push_back({text_of_member(file, "name"), std::move(*bytes)});
  }
  return true;
}

/// False when the job's text or its rate book is missing.
bool take_inputs(const PastJson& job, WrittenInputs& inputs) {
  const PastJson* given = member(job, "inputs", &PastJson::is_object);
  const PastJson* own = given != nullptr ? member(*given, "job", &PastJson::is_object) : nullptr;
  if (own == nullptr || text_member(*own, "text") == nullptr) return false;
  inputs.job = {text_of_member(*own, "name"), text_of_member(*own, "text")};
  return take_files(*given, "takeoffs", inputs.takeoffs) && take_files(*given, "rates", inputs.rates) &&
         !inputs.rates.empty();
}

/// False when no price was printed.
bool take_price(const PastJson& job, PastQuote& past) {
  const PastJson* prices = list_member(job, "price");
  if (prices == nullptr || prices->empty()) return false;
  const PastJson* quantity = member(prices->front(), "quantity", &PastJson::is_number_integer);
  const PastJson* total = member(prices->front(), "total", &PastJson::is_number);
  if (quantity == nullptr || total == nullptr) return false;
  past.quantity = quantity->get<std::int64_t>();
  past.total = total->get<double>();
  constexpr double most = 1e15;
  return past.quantity >= 1 && std::fabs(past.total) < most;
}

bool is_named(const PastJson& job, const std::string& name) {
  const PastJson* text = text_member(job, "job");
  return text != nullptr && *text == name;
}

/// The reason why the job cannot be compared with, and what would help; empty when it can.
std::pair<std::string, std::string> take_job(const PastJson& job, PastQuote& past) {
  past.job = text_of_member(job, "job");
  past.currency = text_of_member(job, "currency");
  const DateRead date = read_date(text_of_member(job, "date"));
  if (date.date) past.date = *date.date;
  if (!take_inputs(job, past.inputs))
    return {"does not hold the files that job " + past.job + " was quoted from",
            "an older program or 'estimate' printed it: print it again with 'quote --json'"};
  if (!date.date || past.currency.empty() || !take_price(job, past))
    return {"does not hold date, currency and price of job " + past.job, made_by};
  if (hash_of_rates(past.inputs.rates) != text_of_member(job, "rates_hash") ||
      hash_of_inputs(past.inputs) != text_of_member(job, "input_hash"))
    return {"was altered: the files of job " + past.job + " do not match their hashes", made_by};
  return {};
}

}  // namespace

std::optional<PastQuote> read_past_quote(std::uint32_t file, const std::string& name, Diagnostics& diagnostics) {
  const auto refuse = [&](std::string problem, std::string hint) {
    diagnostics.error({file, 0, 0}, std::move(problem), std::move(hint));
    return std::nullopt;
  };
  const std::string& text = diagnostics.files[file].text;
  if (!json_within_bounds(text)) return refuse("holds too many values, or too many lists inside each other", made_by);
  const PastJson document = PastJson::parse(text, nullptr, false);
  if (document.is_discarded()) return refuse("is no JSON", made_by);
  if (!is_our_document(document)) return refuse("is no quote of this program in format 1", made_by);
  PastQuote past;
  past.version = text_of_member(document["program"], "version");
  for (const PastJson& job : document["jobs"]) {
    if (!is_named(job, name)) continue;
    auto [problem, hint] = take_job(job, past);
    if (!problem.empty()) return refuse(std::move(problem), std::move(hint));
    return past;
  }
  return refuse("holds no job " + name, "it holds: " + names_of(document["jobs"]));
}

}  // namespace seambook
