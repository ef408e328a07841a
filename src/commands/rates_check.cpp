#include "commands/rates_check.hpp"

#include <fmt/format.h>

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "report/json_document.hpp"
#include "report/rates_review_text.hpp"

namespace seambook {
namespace {

/// What the jobs read of the book and name in it, their options included.
void add_use(const Arguments& arguments, Batch& batch, ReviewAsked& asked) {
  asked.used.emplace();
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    const auto priced = price(arguments, batch, done, asked.today);
    if (!priced) return;
    const RateBook& book = *done.rates->book;
    const auto add = [&](const Job& job, const Quote& quote) {
      const std::vector<SourceId> read = used_sources(book, job, quote.setups);
      asked.used->insert(read.begin(), read.end());
      for (const Joint& joint : job.joints) asked.named.insert("base metal " + book.base_metals[joint.base_metal].name);
    };
    add(done.job, priced->quote);
    for (std::size_t i = 0; i < done.job.options.size(); ++i)
      add(done.job.options[i].part, priced->quote.options[i].quote);
  });
}

void review(const Arguments& arguments, Batch& batch, const ShopRates& rates) {
  ReviewAsked asked{{}, {}, date_of(arguments), arguments.older_than};
  if (!arguments.jobs.empty()) add_use(arguments, batch, asked);
  const std::vector<ReviewFinding> findings = review_rates(*rates.book, asked);
  if (!arguments.json) {
    write_result(printable_text(fmt::format("rate book {} (hash {}), {}", rates.shown, rates.hash, iso(asked.today))) +
                 "\n\n" + review_text(findings, terminal_columns()));
    return;
  }
  tell(arguments, batch);
  write_result(json_document({{"rates", json_string(rates.shown)},
                              {"rates_hash", json_string(rates.hash)},
                              {"date", json_string(iso(asked.today))},
                              {"findings", review_json(findings, batch.diagnostics)}},
                             batch.diagnostics, batch.told));
}

}  // namespace

int run_rates_check(const Arguments& arguments) {
  SharedInputs shared;
  Batch batch{shared};
  guarded(batch, [&] {
    const auto folder = find_rates(rate_folders(arguments.rates, "."));
    if (!folder) {
      batch.diagnostics.error({}, "no rate book", "name its folder");
      return;
    }
    const ShelvedRates& shelved = rates_of(shared, *folder);
    batch.rates = &shelved;
    batch.diagnostics = shelved.diagnostics;
    if (!shelved.rates.book) return;
    Arguments same_book = arguments;
    same_book.rates = folder->string();
    review(same_book, batch, shelved.rates);
  });
  tell(arguments, batch);
  return batch.code;
}

}  // namespace seambook
