#include "commands/output.hpp"

#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/spdlog.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <system_error>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

bool wants_colour(Colour asked) {
  if (asked != Colour::automatic) return asked == Colour::always;
  const char* no_colour = std::getenv("NO_COLOR");
  return live_terminal() && (no_colour == nullptr || *no_colour == '\0');
}

[[noreturn]] void output_refused() {
  throw std::system_error(errno != 0 ? errno : EIO, std::generic_category(), "standard output");
}

}  // namespace

void start_log(const Arguments& arguments) {
  const auto colour = wants_colour(arguments.colour) ? spdlog::color_mode::always : spdlog::color_mode::never;
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

std::size_t terminal_columns() {
  constexpr std::size_t narrowest = 20, no_limit = static_cast<std::size_t>(-1);
  if (const char* stated = std::getenv("COLUMNS")) {
    const std::string_view text(stated);
    std::size_t columns = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), columns);
    if (read.ec == std::errc() && read.ptr == text.data() + text.size()) return std::max(columns, narrowest);
  }
  winsize size{};
  if (::isatty(STDOUT_FILENO) != 1 || ::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0)
    return no_limit;
  return std::max<std::size_t>(size.ws_col, narrowest);
}

void write_messages(std::string_view text) { std::fwrite(text.data(), 1, text.size(), stderr); }

bool live_terminal() {
  const char* terminal = std::getenv("TERM");
  const bool dumb = terminal == nullptr || std::string_view(terminal) == "dumb";
  return ::isatty(STDERR_FILENO) == 1 && !dumb;
}

}  // namespace seambook
