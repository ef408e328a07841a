#include "commands/quote.hpp"

#include <fmt/format.h>

#include <set>

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/estimate_text.hpp"
#include "report/quote_book.hpp"

namespace seambook {
int run_quote(const Arguments& arguments) {
  Batch batch;
  const Date date = date_of(arguments);
  std::set<std::filesystem::path> taken;
  std::vector<std::string> jobs;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    auto priced = price(arguments, batch, done, date);
    if (!priced) return;
    const auto path = workbook_path(arguments, batch, done.job, "-quote.xlsx", taken);
    if (!path) return;
    const RateBook& book = *batch.rates[done.rates].book;
    priced->quote.doubt = find_doubt(book, done.job, done.estimate, priced->quote);
    const Workbook workbook = quote_workbook(book, done.job, done.estimate, priced->work, priced->quote);
    if (!write_workbook(arguments, batch, workbook, *path)) return;
    ReportedJob about = reported(batch, done);
    about.workbook = path->string();
    if (arguments.json) {
      jobs.push_back(estimate_json(book, done.job, done.estimate, priced->quote, about));
    } else {
      write_result(fmt::format("{}  ({}, valid until {})\n{}{}\n", printable_text(about.workbook),
                               iso(priced->quote.date), iso(priced->quote.valid_until), price_text(book, priced->quote),
                               doubt_text(book, *priced->quote.doubt)));
    }
  });
  if (arguments.json) write_result(json_document({{"jobs", json_list(jobs)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
