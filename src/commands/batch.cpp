#include "commands/batch.hpp"

#include <sched.h>
#include <spdlog/spdlog.h>

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <exception>
#include <mutex>
#include <set>
#include <system_error>
#include <thread>

#include "commands/output.hpp"
#include "commands/progress.hpp"
#include "report/temporary_file.hpp"

namespace seambook {
namespace {

/// What a job leaves to be printed when its turn has come.
struct JobOutput {
  std::string result, messages;
  std::vector<std::string> told;  // messages as JSON
  int code = exit_code::done;
  const ShelvedRates* rates = nullptr;
  std::exception_ptr mistake;  // ours: ends the run
};

/// Gives numbers out to the threads that work and takes their outputs for the one that prints.
class Outputs {
 public:
  Outputs(std::size_t count, std::size_t ahead) : done_(count), ahead_(ahead) {}

  /// The next to do; nothing when none is left. Waits while a slow one holds up too many that are done.
  std::optional<std::size_t> take() {
    std::unique_lock lock(mutex_);
    change_.wait(lock, [&] { return stopped_ || taken_ < printed_ + ahead_; });
    if (stopped_ || taken_ == done_.size()) return std::nullopt;
    return taken_++;
  }
  void put(std::size_t number, JobOutput output) {
    const std::lock_guard lock(mutex_);
    done_[number] = std::move(output);
    ++count_;
    change_.notify_all();
  }
  /// Waits for the next to be printed.
  JobOutput next(ProgressLine& progress) {
    std::unique_lock lock(mutex_);
    const auto ready = [&] { return done_[printed_].has_value(); };
    while (!change_.wait_for(lock, std::chrono::milliseconds(100), ready)) progress.show(count_);
    JobOutput output = std::move(*done_[printed_]);
    done_[printed_++].reset();
    change_.notify_all();
    return output;
  }
  void stop() {
    const std::lock_guard lock(mutex_);
    stopped_ = true;
    change_.notify_all();
  }

 private:
  std::mutex mutex_;
  std::condition_variable change_;
  std::vector<std::optional<JobOutput>> done_;
  std::size_t ahead_, taken_ = 0, count_ = 0, printed_ = 0;
  bool stopped_ = false;
};

/// Threads that end, at the latest, when it goes out of scope.
class Workers {
 public:
  Workers(Outputs& outputs, std::size_t count, const std::function<JobOutput(std::size_t)>& work) : outputs_(outputs) {
    const auto take_all = [&outputs, work] {
      while (const auto number = outputs.take()) outputs.put(*number, work(*number));
    };
    while (threads_.size() < count) {
      try {
        threads_.emplace_back(take_all);
      } catch (const std::system_error&) {  // the system has no more: those that run do all
        if (threads_.empty()) throw;
        return;
      }
    }
  }
  ~Workers() { outputs_.stop(); }
  Workers(const Workers&) = delete;
  Workers& operator=(const Workers&) = delete;

 private:
  Outputs& outputs_;
  std::vector<std::jthread> threads_;
};

/// Cores that this process may use: a batch engine may have given it fewer than there are.
std::size_t cores() {
  cpu_set_t set;
  const bool known = ::sched_getaffinity(0, sizeof set, &set) == 0;
  const std::size_t count = known ? CPU_COUNT(&set) : std::thread::hardware_concurrency();
  return std::clamp<std::size_t>(count, 1, most_temporaries);
}

JobOutput output_of(const Arguments& arguments, SharedInputs& shared, std::size_t at, const WorkOnJob& work) {
  JobOutput output;
  Batch batch{shared};
  try {
    guarded(batch, [&] {
      const auto job = read_and_estimate(arguments, batch, arguments.jobs[at]);
      if (!job || !strict_enough(arguments, batch, job->file)) return;
      if (auto result = work(batch, *job, at)) output.result = std::move(*result);
    });
    output.messages = take_messages(arguments, batch);
    if (arguments.json) output.told = json_diagnostics(batch.diagnostics, batch.told);
  } catch (...) {
    output.mistake = std::current_exception();
  }
  output.code = batch.code;
  output.rates = batch.rates;
  return output;
}

/// Prints what jobs leave, in the order in which it is given them.
class Printer {
 public:
  Printer(const Arguments& arguments, std::size_t jobs) : arguments_(arguments), progress_(arguments, jobs) {
    if (arguments.json) write_result(json_list_begin("jobs"));
  }
  ProgressLine& progress() { return progress_; }

  void print(const std::string& job, const JobOutput& output) {
    progress_.clear();
    if (output.mistake) std::rethrow_exception(output.mistake);
    spdlog::debug("job {}", printable_text(shown_name(job)));
    if (output.rates != nullptr && announced_.insert(output.rates).second) announce(*output.rates);
    if (!output.result.empty()) {
      if (arguments_.json) write_result(json_list_next(results_ == 0));
      write_result(output.result);
      ++results_;
    }
    write_messages(output.messages);
    told_.insert(told_.end(), output.told.begin(), output.told.end());
    code_ = std::max(code_, output.code);
  }
  int finish(const std::function<std::vector<JsonMember>()>& rest) {
    progress_.clear();
    std::vector<JsonMember> members = rest();
    if (!arguments_.json) return code_;
    members.push_back({"diagnostics", json_list(told_)});
    write_result(json_list_end(results_ == 0, members));
    return code_;
  }

 private:
  void announce(const ShelvedRates& shelved) {
    Announced announced = announce_rates(arguments_, shelved);
    code_ = std::max(code_, announced.code);
    if (!arguments_.json) return;
    const std::vector<std::string> told = json_diagnostics(shelved.diagnostics, announced.told);
    told_.insert(told_.end(), told.begin(), told.end());
  }

  const Arguments& arguments_;
  ProgressLine progress_;
  std::set<const ShelvedRates*> announced_;
  std::vector<std::string> told_;
  std::size_t results_ = 0;
  int code_ = exit_code::done;
};

}  // namespace

std::vector<std::size_t> jobs_of_shard(const Arguments& arguments) {
  std::vector<std::size_t> jobs;
  for (std::size_t at = arguments.shard - 1; at < arguments.jobs.size(); at += arguments.shards) jobs.push_back(at);
  return jobs;
}

int run_batch(const Arguments& arguments, SharedInputs& shared, const WorkOnJob& work,
              const std::function<std::vector<JsonMember>()>& rest) {
  const std::vector<std::size_t> jobs = jobs_of_shard(arguments);
  const auto output = [&](std::size_t number) { return output_of(arguments, shared, jobs[number], work); };
  const std::size_t threads = std::min(arguments.threads > 0 ? arguments.threads : cores(), jobs.size());
  Printer printer(arguments, jobs.size());
  if (threads <= 1) {
    for (std::size_t number = 0; number < jobs.size(); ++number) {
      printer.progress().show(number);
      printer.print(arguments.jobs[jobs[number]], output(number));
    }
    return printer.finish(rest);
  }
  Outputs outputs(jobs.size(), 16 * threads);
  const Workers workers(outputs, threads, output);
  for (const std::size_t at : jobs) printer.print(arguments.jobs[at], outputs.next(printer.progress()));
  return printer.finish(rest);
}

}  // namespace seambook
