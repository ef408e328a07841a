#include "commands/quote.hpp"

#include <fmt/format.h>

#include "commands/batch.hpp"
#include "commands/output.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/changes_page.hpp"
#include "report/customer_page.hpp"
#include "report/estimate_text.hpp"
#include "report/past_quote_json.hpp"
#include "report/quote_book.hpp"
#include "report/temporary_file.hpp"

namespace seambook {
namespace {

/// The job's previous quote; nothing, and an error, when the file holds none or one in another currency.
std::optional<PastQuote> past_quote(Batch& batch, const std::string& path, const EstimatedJob& done) {
  const auto file = register_file(batch, path);
  if (!file) return std::nullopt;
  auto past = read_past_quote(*file, done.job.name, batch.diagnostics);
  const std::string& currency = done.rates->book->currency;
  if (past && past->currency != currency) {
    batch.diagnostics.error({*file, 0, 0}, fmt::format("is in {}, the rate book now in {}", past->currency, currency),
                            "quotes in two currencies cannot be compared");
    return std::nullopt;
  }
  return past;
}

Workbook workbook_of(const Arguments& arguments, const Batch& batch, const EstimatedJob& done, const PricedJob& priced,
                     const Changes* changes) {
  const RateBook& book = *done.rates->book;
  if (arguments.customer_only) return customer_workbook(book, done.job, priced.quote);
  return quote_workbook(book, done.job, done.estimate, priced.work, priced.quote, batch.diagnostics, changes);
}

std::string result_text(const RateBook& book, const Quote& quote, const std::string& workbook, const Changes* changes) {
  return fmt::format("{}  ({}, valid until {})\n{}{}\n", printable_text(workbook), iso(quote.date),
                     iso(quote.valid_until), price_text(book, quote, terminal_columns()),
                     quote.doubt ? doubt_text(book, *quote.doubt) : std::string()) +
         (changes != nullptr ? changes_text(book, *changes, terminal_columns()) + "\n" : std::string());
}

/// Writes the workbook and gives what is printed; nothing when there is none.
std::optional<std::string> quoted(const Arguments& arguments, Batch& batch, const EstimatedJob& done, Date date,
                                  const std::filesystem::path& path) {
  auto priced = price(arguments, batch, done, date);
  if (!priced) return std::nullopt;
  const RateBook& book = *done.rates->book;
  std::optional<Changes> found;
  if (arguments.against) {
    const auto past = past_quote(batch, *arguments.against, done);
    if (!past) return std::nullopt;
    found = find_changes(*past, {done.inputs, book, done.job, priced->quote}, SEAMBOOK_VERSION);
  }
  const Changes* changes = found ? &*found : nullptr;
  if (!arguments.customer_only) priced->quote.doubt = find_doubt(book, done.job, done.estimate, priced->quote);
  if (!write_workbook(arguments, batch, workbook_of(arguments, batch, done, *priced, changes), path))
    return std::nullopt;
  if (!arguments.json) return result_text(book, priced->quote, path.string(), changes);
  ReportedJob about = reported(done);
  about.workbook = path.string();
  about.inputs = done.inputs;
  return estimate_json(book, done.job, done.estimate, priced->quote, about, changes);
}

}  // namespace

int run_quote(const Arguments& arguments) {
  SharedInputs shared;
  const Date date = date_of(arguments);
  const char* ending = arguments.customer_only ? "-quote-customer.xlsx" : "-quote.xlsx";
  const WorkbookNames names = workbook_names(arguments, shared);
  sweep_temporaries(arguments.out);
  return run_batch(arguments, shared,
                   [&](Batch& batch, const EstimatedJob& done, std::size_t at) -> std::optional<std::string> {
                     const auto path = workbook_path(arguments, batch, done.job, at, ending, names);
                     return path ? quoted(arguments, batch, done, date, *path) : std::nullopt;
                   });
}

}  // namespace seambook
