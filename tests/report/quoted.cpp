#include "quoted.hpp"

#include <doctest/doctest.h>

namespace seambook::test {

Quoted quoted(LoadedJob loaded) {
  Quoted out{std::move(loaded), {}, {}, {}};
  REQUIRE_MESSAGE(out.loaded.job.has_value(), render(out.loaded.diagnostics));
  const RateBook& book = *out.loaded.book;
  const Job& job = *out.loaded.job;
  out.estimated = estimate(book, job);
  out.work = *sequence_jobs(book, std::span(&job, 1), out.loaded.diagnostics);
  out.quote = make_quote(book, job, out.estimated, out.work, {2026, 5, 4});
  std::vector<std::vector<StationWork>> work;
  for (const JobOption& option : job.options)
    work.push_back(*sequence_jobs(book, std::span(&option.part, 1), out.loaded.diagnostics));
  price_options(book, job, out.estimated, std::move(work), out.quote);
  return out;
}

}  // namespace seambook::test
