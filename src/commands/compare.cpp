#include "commands/compare.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/batch.hpp"
#include "commands/output.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/compare_book.hpp"
#include "report/compare_text.hpp"
#include "report/temporary_file.hpp"

namespace seambook {
namespace {

/// A job's comparison, kept for the sum over the jobs of one rate book.
struct Compared {
  const RateBook* book;
  Comparison comparison;
};

/// The sums of rate books with two jobs and more, in the order of their first jobs: as JSON, or printed.
std::vector<JsonMember> sums(const Arguments& arguments, std::vector<std::optional<Compared>>& jobs) {
  std::vector<std::string> values;
  for (auto first = jobs.begin(); first != jobs.end(); ++first) {
    if (!*first) continue;
    const RateBook& book = *(*first)->book;
    std::vector<Comparison> comparisons;
    for (auto job = first; job != jobs.end(); ++job) {
      if (!*job || (*job)->book != &book) continue;
      comparisons.push_back(std::move((*job)->comparison));
      job->reset();
    }
    if (comparisons.size() < 2) continue;
    const Comparison all = together(book, comparisons);
    if (arguments.json)
      values.push_back(together_json(book, all));
    else
      write_result(together_text(book, all, terminal_columns()));
  }
  return {{"together", json_list(values)}};
}

}  // namespace

int run_compare(const Arguments& arguments) {
  SharedInputs shared;
  const Date date = date_of(arguments);
  const WorkbookNames names = workbook_names(arguments, shared);
  sweep_temporaries(arguments.out);
  std::vector<std::optional<Compared>> compared(arguments.jobs.size());  // each written by one thread
  const auto work = [&](Batch& batch, const EstimatedJob& done, std::size_t at) -> std::optional<std::string> {
    const auto path = workbook_path(arguments, batch, done.job, at, "-compare.xlsx", names);
    if (!path) return std::nullopt;
    const RateBook& book = *done.rates->book;
    Comparison comparison = compare(book, done.job);
    if (!write_workbook(arguments, batch, compare_workbook(book, done.job, comparison, date), *path))
      return std::nullopt;
    ReportedJob about = reported(done);
    about.workbook = path->string();
    std::string result = arguments.json ? compare_json(book, done.job, comparison, about)
                                        : fmt::format("{}  ({})\n{}\n", printable_text(about.workbook), iso(date),
                                                      compare_text(book, comparison, terminal_columns()));
    if (book.investment) compared[at] = Compared{&book, std::move(comparison)};
    return result;
  };
  // A shard knows only some of the jobs: a sum over them would look like one over all.
  return run_batch(arguments, shared, work, [&] {
    if (arguments.shards > 1) compared.clear();
    return sums(arguments, compared);
  });
}

}  // namespace seambook
