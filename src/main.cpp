// seambook: reads the command line, runs one command, and turns what happened into an exit code.
#include <array>
#include <cstdio>
#include <exception>

#include "commands/arguments.hpp"
#include "commands/check.hpp"
#include "commands/compare.hpp"
#include "commands/completion.hpp"
#include "commands/estimate.hpp"
#include "commands/explain.hpp"
#include "commands/manual.hpp"
#include "commands/new.hpp"
#include "commands/output.hpp"
#include "commands/plan.hpp"
#include "commands/quote.hpp"
#include "commands/rates_check.hpp"
#include "commands/schema.hpp"

namespace {

using namespace seambook;

int run(const Arguments& arguments) {
  start_log(arguments);
  constexpr std::array<int (*)(const Arguments&), 11> commands = {
      run_check,       run_estimate, run_explain,    run_quote,  run_plan, run_compare,
      run_rates_check, run_schema,   run_completion, run_manual, run_new};
  const int code = commands[static_cast<std::size_t>(arguments.verb)](arguments);
  finish_results();
  return code;
}

int read_and_run(const std::vector<std::string>& words) {
  const CommandLine line = read_command_line(words);
  if (line.arguments) return run(*line.arguments);
  if (line.code != exit_code::done) {
    std::fputs(line.text.c_str(), stderr);
    return line.code;
  }
  write_result(line.text);
  finish_results();
  return line.code;
}

}  // namespace

int main(int count, char** words) {
  try {
    return read_and_run({words + 1, words + count});
  } catch (const std::exception& refused) {
    std::fprintf(stderr, "seambook: %s\n", refused.what());
    return seambook::exit_code::refused;
  }
}
