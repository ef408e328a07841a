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
namespace {

/// Where the quote goes. Nothing, and an error, when another job of the batch has taken the name.
std::optional<std::filesystem::path> quote_path(const Arguments& arguments, Batch& batch, const Job& job,
                                                std::set<std::filesystem::path>& taken) {
  std::filesystem::path path = std::filesystem::path(arguments.out) / (safe_file_name(job.name) + "-quote.xlsx");
  if (taken.insert(path).second) return path;
  batch.diagnostics.error({}, fmt::format("job {}: another job of this run was written to {}", job.name, path.string()),
                          "give the jobs different names, or quote them one by one with different --out");
  return std::nullopt;
}

}  // namespace

int run_quote(const Arguments& arguments) {
  Batch batch;
  const Date date = date_of(arguments);
  std::set<std::filesystem::path> taken;
  std::vector<std::string> jobs;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    const auto priced = price(arguments, batch, done, date);
    if (!priced) return;
    const auto path = quote_path(arguments, batch, done.job, taken);
    if (!path) return;
    const RateBook& book = *batch.rates[done.rates].book;
    const Workbook workbook = quote_workbook(book, done.job, done.estimate, priced->work, priced->quote);
    if (!write_workbook(arguments, batch, workbook, *path)) return;
    ReportedJob about = reported(batch, done);
    about.workbook = path->string();
    if (arguments.json) {
      jobs.push_back(estimate_json(book, done.job, done.estimate, priced->quote, about));
    } else {
      write_result(fmt::format("{}  ({}, valid until {})\n{}\n", printable_text(about.workbook),
                               iso(priced->quote.date), iso(priced->quote.valid_until),
                               price_text(book, priced->quote)));
    }
  });
  if (arguments.json) write_result(json_document({{"jobs", json_list(jobs)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
