#include "commands/quote.hpp"

#include <fmt/format.h>

#include <set>

#include "commands/files.hpp"
#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/changes_page.hpp"
#include "report/customer_page.hpp"
#include "report/estimate_text.hpp"
#include "report/past_quote_json.hpp"
#include "report/quote_book.hpp"

namespace seambook {
namespace {

/// The job's previous quote; nothing, and an error, when the file holds none or one in another currency.
std::optional<PastQuote> past_quote(Batch& batch, std::uint32_t file, const EstimatedJob& done) {
  auto past = read_past_quote(file, done.job.name, batch.diagnostics);
  const std::string& currency = batch.rates[done.rates].book->currency;
  if (past && past->currency != currency) {
    batch.diagnostics.error({file, 0, 0}, fmt::format("is in {}, the rate book now in {}", past->currency, currency),
                            "quotes in two currencies cannot be compared");
    return std::nullopt;
  }
  return past;
}

}  // namespace

int run_quote(const Arguments& arguments) {
  Batch batch;
  const Date date = date_of(arguments);
  std::set<std::filesystem::path> taken;
  std::vector<std::string> jobs;
  std::optional<std::uint32_t> file;  // of previous quotes, once read
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    auto priced = price(arguments, batch, done, date);
    if (!priced) return;
    const auto path = workbook_path(arguments, batch, done.job,
                                    arguments.customer_only ? "-quote-customer.xlsx" : "-quote.xlsx", taken);
    if (!path) return;
    const RateBook& book = *batch.rates[done.rates].book;
    std::optional<Changes> changes;
    if (arguments.against) {
      if (!file) file = register_file(batch, *arguments.against);
      const auto past = file ? past_quote(batch, *file, done) : std::nullopt;
      if (!past) return;
      changes = find_changes(*past, {done.inputs, book, done.job, priced->quote}, SEAMBOOK_VERSION);
    }
    if (!arguments.customer_only) priced->quote.doubt = find_doubt(book, done.job, done.estimate, priced->quote);
    const Workbook workbook = arguments.customer_only
                                  ? customer_workbook(book, done.job, priced->quote)
                                  : quote_workbook(book, done.job, done.estimate, priced->work, priced->quote,
                                                   batch.diagnostics, changes ? &*changes : nullptr);
    if (!write_workbook(arguments, batch, workbook, *path)) return;
    ReportedJob about = reported(batch, done);
    about.workbook = path->string();
    about.inputs = done.inputs;
    if (arguments.json) {
      jobs.push_back(estimate_json(book, done.job, done.estimate, priced->quote, about, changes ? &*changes : nullptr));
    } else {
      const std::optional<Doubt>& doubt = priced->quote.doubt;
      write_result(fmt::format("{}  ({}, valid until {})\n{}{}\n", printable_text(about.workbook),
                               iso(priced->quote.date), iso(priced->quote.valid_until),
                               price_text(book, priced->quote, terminal_columns()),
                               doubt ? doubt_text(book, *doubt) : std::string()));
      if (changes) write_result(changes_text(book, *changes, terminal_columns()) + "\n");
    }
  });
  if (arguments.json) write_result(json_document({{"jobs", json_list(jobs)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
