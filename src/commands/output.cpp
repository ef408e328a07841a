#include "commands/output.hpp"

#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/spdlog.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <system_error>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

bool wants_colour() {
  const char* no_colour = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  const bool dumb = terminal == nullptr || std::string_view(terminal) == "dumb";
  return ::isatty(STDERR_FILENO) == 1 && (no_colour == nullptr || *no_colour == '\0') && !dumb;
}

[[noreturn]] void output_refused() {
  throw std::system_error(errno != 0 ? errno : EIO, std::generic_category(), "standard output");
}

}  // namespace

void start_log(const Arguments& arguments) {
  const auto colour = wants_colour() ? spdlog::color_mode::always : spdlog::color_mode::never;
  auto sink = std::make_shared<spdlog::sinks::stderr_color_sink_mt>(colour);
  auto logger = std::make_shared<spdlog::logger>("seambook", std::move(sink));
  logger->set_pattern("%^%l%$: %v");
  logger->set_level(arguments.quiet     ? spdlog::level::err
                    : arguments.verbose ? spdlog::level::debug
                                        : spdlog::level::info);
  spdlog::set_default_logger(std::move(logger));
}

void write_result(std::string_view text) {
  errno = 0;
  if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size()) output_refused();
}

void finish_results() {
  errno = 0;
  if (std::fflush(stdout) != 0 || std::ferror(stdout) != 0) output_refused();
}

std::string printable_text(std::string_view text) {
  std::string out;
  append_printable(out, text);
  return out;
}

void show(const Diagnostics& diagnostics) {
  const std::string text = render(diagnostics);
  std::fwrite(text.data(), 1, text.size(), stderr);
}

}  // namespace seambook
