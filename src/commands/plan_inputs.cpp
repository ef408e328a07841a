#include "commands/plan_inputs.hpp"

#include "read/order_file.hpp"
#include "report/past_plan_json.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

/// Reads a file where one is named; false when it has faults.
template <class T, class Read>
bool take_file(Batch& batch, const std::optional<std::string>& path, std::optional<T>& into, Read read) {
  if (!path) return true;
  const auto file = register_file(batch, *path);
  if (file) into = read(*file);
  return into.has_value();
}

}  // namespace

std::optional<PlanInputs> plan_inputs(const Arguments& arguments, Batch& batch, const RateBook& book,
                                      std::span<const Job> jobs) {
  PlanInputs inputs;
  Diagnostics& diagnostics = batch.diagnostics;
  bool sound = take_file(batch, arguments.day, inputs.day, [&](std::uint32_t file) {
    return resolve_day(read_day_file(file, diagnostics), book, jobs, diagnostics);
  });
  const auto past = [&](std::uint32_t file) { return read_past_plan(file, diagnostics); };
  sound = take_file(batch, arguments.from, inputs.from, past) && sound;
  sound = take_file(batch, arguments.verify, inputs.verify, past) && sound;
  sound = take_file(batch, arguments.order, inputs.order,
                    [&](std::uint32_t file) { return read_order_file(file, diagnostics); }) &&
          sound;
  if (!sound) return std::nullopt;
  return inputs;
}

Instant plan_start(const Arguments& arguments) {
  return arguments.now ? instant_of(*arguments.now) : midnight(date_of(arguments));
}

}  // namespace seambook
