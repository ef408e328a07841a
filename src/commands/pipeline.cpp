#include "commands/pipeline.hpp"

#include <fmt/format.h>
#include <spdlog/spdlog.h>

#include <algorithm>
#include <ctime>
#include <iterator>
#include <new>
#include <system_error>

#include "commands/files.hpp"
#include "commands/output.hpp"

namespace seambook {
namespace {

void raise_code(Batch& batch, int code) { batch.code = std::max(batch.code, code); }

void refuse_without_rates(const Arguments& arguments, Batch& batch, std::uint32_t file) {
  if (arguments.rates) {
    batch.diagnostics.error({}, fmt::format("no rate book: '{}' holds no file *.yaml", *arguments.rates));
    raise_code(batch, exit_code::usage);
  } else {
    batch.diagnostics.error({file, 0, 0}, "no rate book found",
                            "name its folder with --rates, or put a folder 'rates' beside the job or above it");
  }
}

/// The rate book for a job, whose places the batch knows afterwards. Nothing when there is none without faults; that
/// has been said or is said when the rate book is announced.
const ShelvedRates* rates_for(const Arguments& arguments, Batch& batch, const std::string& job, std::uint32_t file) {
  const auto folder = find_rates(rate_folders(arguments.rates, folder_of(job)));
  if (!folder) {
    refuse_without_rates(arguments, batch, file);
    return nullptr;
  }
  const ShelvedRates& shelved = rates_of(batch.shared, *folder);
  if (batch.rates == nullptr) {
    batch.rates = &shelved;
    const auto& read = shelved.diagnostics.files;
    batch.diagnostics.files.insert(batch.diagnostics.files.end(), read.begin() + 2, read.end());
  }
  if (batch.rates != &shelved) {
    batch.diagnostics.error(
        {file, 0, 0},
        fmt::format("its rate book {} is not the other jobs' ({})", shelved.rates.shown, batch.rates->rates.shown),
        "name one for all with --rates");
    return nullptr;
  }
  if (!shelved.rates.book) {
    batch.diagnostics.error({file, 0, 0}, fmt::format("not done: the rate book {} has faults", shelved.rates.shown));
    return nullptr;
  }
  return &shelved;
}

/// Finds take-offs, and keeps what was found.
FileFinder keeping_finder(const std::string& job, std::vector<NamedText>& kept) {
  return [find = files_beside(job), &kept](const std::string& name) {
    std::optional<std::string> text = find(name);
    if (text) kept.push_back({name, *text});
    return text;
  };
}

/// False when an error is among them: the job is not done.
bool tell_findings(std::vector<Diagnostic> found, Diagnostics& diagnostics) {
  const bool sound =
      std::none_of(found.begin(), found.end(), [](const Diagnostic& d) { return d.level == Level::error; });
  std::move(found.begin(), found.end(), std::back_inserter(diagnostics.list));
  return sound;
}

/// Each option's order of work by itself. Nothing when one cannot be made at the stations.
std::optional<std::vector<std::vector<StationWork>>> sequence_options(const RateBook& book, const Job& job,
                                                                      Diagnostics& diagnostics) {
  std::vector<std::vector<StationWork>> all;
  for (const JobOption& option : job.options) {
    auto work = sequence_jobs(book, std::span(&option.part, 1), diagnostics);
    if (!work) return std::nullopt;
    all.push_back(std::move(*work));
  }
  return all;
}

/// What is not yet shown, as text and, whole, in `told`.
std::string take_messages(const Arguments& arguments, Diagnostics& diagnostics, std::vector<Diagnostic>& told) {
  std::stable_sort(diagnostics.list.begin(), diagnostics.list.end(),
                   [](const Diagnostic& a, const Diagnostic& b) { return a.place < b.place; });
  told.insert(told.end(), diagnostics.list.begin(), diagnostics.list.end());
  if (arguments.quiet) {
    std::erase_if(diagnostics.list,
                  [](const Diagnostic& d) { return d.level == Level::note || d.level == Level::warning; });
  }
  std::string text = render(diagnostics);
  diagnostics.list.clear();
  return text;
}

}  // namespace

std::optional<EstimatedJob> read_and_estimate(const Arguments& arguments, Batch& batch, const std::string& path) {
  EstimatedJob out{shown_name(path), {}, {}, {}, {}, {}};
  FileText read = read_shared(batch.shared, path);
  Diagnostics& diagnostics = batch.diagnostics;
  const std::uint32_t file = diagnostics.add_file(out.file, std::move(read.text));
  if (!read.refusal.empty()) {
    diagnostics.error({file, 0, 0}, read.refusal);
    return std::nullopt;
  }
  const ShelvedRates* shelved = rates_for(arguments, batch, path, file);
  if (shelved == nullptr) return std::nullopt;
  out.rates = &shelved->rates;
  const RateBook& book = *out.rates->book;
  const FileFinder finder = keeping_finder(path, out.inputs.takeoffs);
  std::optional<Job> job = resolve_job(read_job(file, finder, diagnostics), book, diagnostics);
  if (!job) return std::nullopt;
  out.inputs.job = {out.file, diagnostics.files[file].text};
  out.inputs.rates = out.rates->files;
  out.input_hash = hash_of_inputs(out.inputs);
  out.job = std::move(*job);
  out.estimate = estimate(book, out.job);
  if (!tell_findings(findings(book, out.job, out.estimate), diagnostics)) return std::nullopt;
  return out;
}

void guarded(Batch& batch, const std::function<void()>& work) {
  try {
    work();
  } catch (const std::filesystem::filesystem_error& refused) {
    batch.diagnostics.error({}, refused.path1().string() + ": " + refused.code().message());
    raise_code(batch, exit_code::refused);
  } catch (const std::system_error& refused) {  // files, streams
    batch.diagnostics.error({}, refused.what());
    raise_code(batch, exit_code::refused);
  } catch (const std::bad_alloc&) {
    batch.diagnostics.error({}, "not enough memory");
    raise_code(batch, exit_code::refused);
  }
}

void for_each_job(const Arguments& arguments, Batch& batch, const std::function<void(const EstimatedJob&)>& use) {
  const ShelvedRates* announced = batch.rates;
  const auto announce = [&] {
    if (announced == batch.rates) return;
    announced = batch.rates;
    const Announced rates = announce_rates(arguments, *announced);
    batch.told.insert(batch.told.end(), rates.told.begin(), rates.told.end());
    raise_code(batch, rates.code);
  };
  for (const std::string& path : arguments.jobs) {
    spdlog::debug("job {}", printable_text(shown_name(path)));
    guarded(batch, [&] {
      const auto job = read_and_estimate(arguments, batch, path);
      announce();
      if (job && strict_enough(arguments, batch, job->file)) use(*job);
    });
    announce();
    tell(arguments, batch);
  }
}

std::optional<std::uint32_t> register_file(Batch& batch, const std::string& path) {
  FileText read = read_shared(batch.shared, path);
  const std::uint32_t file = batch.diagnostics.add_file(shown_name(path), std::move(read.text));
  if (read.refusal.empty()) return file;
  batch.diagnostics.error({file, 0, 0}, read.refusal);
  return std::nullopt;
}

bool strict_enough(const Arguments& arguments, Batch& batch, const std::string& what) {
  if (!arguments.strict) return true;
  const auto warnings = std::count_if(batch.diagnostics.list.begin(), batch.diagnostics.list.end(), [](const auto& d) {
    return d.level == Level::warning || d.level == Level::not_for_the_floor;
  });
  if (warnings == 0) return true;
  batch.diagnostics.error({}, fmt::format("{}: not done: {} {}, and --strict was given", what, warnings,
                                          warnings == 1 ? "warning" : "warnings"));
  return false;
}

std::optional<PricedJob> price(const Arguments& arguments, Batch& batch, const EstimatedJob& estimated, Date date) {
  const RateBook& book = *estimated.rates->book;
  auto work = sequence_jobs(book, std::span(&estimated.job, 1), batch.diagnostics);
  if (!work) return std::nullopt;
  PricedJob priced{std::move(*work), {}};
  priced.quote = make_quote(book, estimated.job, estimated.estimate, priced.work, date);
  auto options = sequence_options(book, estimated.job, batch.diagnostics);
  if (!options) return std::nullopt;
  price_options(book, estimated.job, estimated.estimate, std::move(*options), priced.quote);
  for (std::size_t i = 0; i < estimated.job.options.size(); ++i) {
    const Estimate& option = priced.quote.options[i].estimate;
    if (!tell_findings(findings(book, estimated.job.options[i].part, option), batch.diagnostics)) return std::nullopt;
  }
  const bool sound = tell_findings(price_findings(book, estimated.job, priced.quote), batch.diagnostics);
  if (!sound || !strict_enough(arguments, batch, estimated.file)) return std::nullopt;
  return priced;
}

Announced announce_rates(const Arguments& arguments, const ShelvedRates& shelved) {
  spdlog::info("rate book {} (hash {})", printable_text(shelved.rates.shown), shelved.rates.hash);
  Diagnostics found = shelved.diagnostics;
  Announced announced;
  write_messages(take_messages(arguments, found, announced.told));
  if (shelved.diagnostics.has_errors()) announced.code = exit_code::faults;
  return announced;
}

std::string take_messages(const Arguments& arguments, Batch& batch) {
  if (batch.diagnostics.has_errors()) raise_code(batch, exit_code::faults);
  return take_messages(arguments, batch.diagnostics, batch.told);
}

void tell(const Arguments& arguments, Batch& batch) { write_messages(take_messages(arguments, batch)); }

Date date_of(const Arguments& arguments) {
  if (arguments.date) return *arguments.date;
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  return {local.tm_year + 1900, local.tm_mon + 1, local.tm_mday};
}

}  // namespace seambook
