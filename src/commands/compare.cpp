#include "commands/compare.hpp"

#include <fmt/format.h>

#include <map>
#include <set>

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/compare_book.hpp"
#include "report/compare_text.hpp"

namespace seambook {

int run_compare(const Arguments& arguments) {
  Batch batch;
  const Date date = date_of(arguments);
  std::set<std::filesystem::path> taken;
  std::vector<std::string> jobs;
  std::map<std::size_t, std::vector<Comparison>> by_rates;  // for the sum over jobs of one rate book
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    const auto path = workbook_path(arguments, batch, done.job, "-compare.xlsx", taken);
    if (!path) return;
    const RateBook& book = *batch.rates[done.rates].book;
    Comparison comparison = compare(book, done.job);
    if (!write_workbook(arguments, batch, compare_workbook(book, done.job, comparison, date), *path)) return;
    ReportedJob about = reported(batch, done);
    about.workbook = path->string();
    if (arguments.json) {
      jobs.push_back(compare_json(book, done.job, comparison, about));
    } else {
      write_result(fmt::format("{}  ({})\n{}\n", printable_text(about.workbook), iso(date),
                               compare_text(book, comparison, terminal_columns())));
    }
    if (book.investment) by_rates[done.rates].push_back(std::move(comparison));
  });
  std::vector<std::string> sums;
  for (const auto& [rates, comparisons] : by_rates) {
    if (comparisons.size() < 2) continue;
    const RateBook& book = *batch.rates[rates].book;
    const Comparison all = together(book, comparisons);
    if (arguments.json)
      sums.push_back(together_json(book, all));
    else
      write_result(together_text(book, all, terminal_columns()));
  }
  if (arguments.json)
    write_result(
        json_document({{"jobs", json_list(jobs)}, {"together", json_list(sums)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
