#include "commands/arguments.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace seambook;

namespace {

CommandLine read(const std::string& line) {
  std::istringstream words(line);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  return read_command_line(all);
}

std::string first_line(const std::string& text) { return text.substr(0, text.find('\n')); }

}  // namespace

TEST_CASE("wrong usage is told with the nearest word and exit code 2") {
  struct Row {
    const char *line, *complaint;
  };
  const Row rows[] = {
      {"",
       "seambook: which command? One of check, estimate, explain, quote, plan, compare, rates, schema, completion, "
       "manual, new"},
      {"qoute a", "seambook: unknown command 'qoute'; did you mean 'quote'?"},
      {"zzz", "seambook: unknown command 'zzz'"},
      {"--verison", "seambook: unknown option '--verison'; did you mean '--version'?"},
      {"--rates r quote a", "seambook: the command comes first, then '--rates'"},
      {"quote a --fource", "seambook: 'quote' has no option '--fource'; did you mean '--force'?"},
      {"check a --force", "seambook: 'check' has no option '--force'"},
      {"explain a --force", "seambook: 'explain' has no option '--force'"},
      {"estimate a --jsn=x", "seambook: 'estimate' has no option '--jsn'; did you mean '--json'?"},
      {"explain a b c", "seambook: 'c' is one word too many"},
      {"quote", "seambook: JOB is required"},
      {"check - -", "seambook: standard input can be read once only"},
      {"quote a --date 2026-02-30",
       "seambook: --date: the calendar has no 2026-02-30; write year, month and day as 2026-05-18"},
      {"check a --shard 0/3", "seambook: --shard: '0/3' is none; write K/N, the K-th of N, such as 2/8"},
      {"check a --shard 4/3", "seambook: --shard: '4/3' is none; write K/N, the K-th of N, such as 2/8"},
      {"check a --shard 1/3x", "seambook: --shard: '1/3x' is none; write K/N, the K-th of N, such as 2/8"},
      {"check a --shard -1/3", "seambook: --shard: '-1/3' is none; write K/N, the K-th of N, such as 2/8"},
      {"check a --shard 3", "seambook: --shard: '3' is none; write K/N, the K-th of N, such as 2/8"},
      {"check a --jobs 0", "seambook: --jobs: Value 0 not in range 1 to 256"},
      {"plan a --shard 1/2", "seambook: 'plan' has no option '--shard'"},
      {"check a --quiet --verbose", "seambook: --quiet and --verbose exclude each other"},
      {"schema", "seambook: WHAT is required"},
      {"schema jop", "seambook: schema 'jop' is not known; did you mean 'job'?"},
      {"schema quote --reference", "seambook: --reference is for the files job, rates and day"},
      {"completion fish", "seambook: completion 'fish' is not known; it may be bash, zsh"},
      {"manual qoute", "seambook: manual 'qoute' is not known; did you mean 'quote'?"},
      {"rates chek", "seambook: rates 'chek' is not known; did you mean 'check'?"},
      {"rates check --older-than 0", "seambook: --older-than: Value 0 not in range 1 to 600"},
      {"check a --color allways", "seambook: --color 'allways' is not known; did you mean 'always'?"},
      {"schema job --rates r", "seambook: 'schema' has no option '--rates'"},
      {"new", "seambook: new what? Name a folder: seambook new shop"},
      {"new a b", "seambook: 'b' is one word too many"},
      {"new a --units mertic", "seambook: --units 'mertic' is not known; did you mean 'metric'?"},
      {"new a --takeoff t.xlsx", "seambook: --takeoff writes that workbook alone: leave out the rest"},
      {"new --from-takeoff -", "seambook: --from-takeoff is no name of a file or folder"},
      {"check a --rates r --rates s", "seambook: --rates: At Most 1 required but received 2"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const CommandLine refused = read(row.line);
    CHECK(!refused.arguments);
    CHECK(refused.code == 2);
    CHECK(first_line(refused.text) == row.complaint);
  }
}

TEST_CASE("an empty file or folder name is wrong usage") {
  CHECK(read_command_line({"check", ""}).code == 2);
  CHECK(read_command_line({"explain", ""}).code == 2);
  CHECK(read_command_line({"quote", "a", "--out", ""}).code == 2);
  CHECK(read_command_line({"quote", "a", "--rates", ""}).code == 2);
}

TEST_CASE("jobs at once and shards") {
  const CommandLine all = read("quote a b");
  REQUIRE(all.arguments);
  CHECK(all.arguments->threads == 0);
  CHECK(all.arguments->shards == 1);
  const CommandLine some = read("quote a b --jobs 3 --shard 2/8");
  REQUIRE(some.arguments);
  CHECK(some.arguments->threads == 3);
  CHECK(some.arguments->shard == 2);
  CHECK(some.arguments->shards == 8);
}

TEST_CASE("help and version end with exit code 0 and help shows examples") {
  CHECK(read("--version").code == 0);
  CHECK(read("--version").text.starts_with("seambook "));
  for (const char* line : {"--help", "-h", "quote --help", "explain -h"}) {
    CAPTURE(line);
    const CommandLine help = read(line);
    CHECK(!help.arguments);
    CHECK(help.code == 0);
    CHECK(help.text.find("Examples:\n  seambook ") != std::string::npos);
  }
  const std::string quote = read("quote --help").text;
  CHECK(quote.find("  seambook quote jobs/bracket.yaml --against last-week.json\n") != quote.npos);
  CHECK(quote.find("seambook check") == quote.npos);
  for (const std::string_view word : {"check", "plan", "rates", "schema", "completion", "manual"}) {
    CAPTURE(std::string(word));
    CHECK(read("--help").text.find("  seambook " + std::string(word)) != std::string::npos);
  }
}

TEST_CASE("words become arguments") {
  const CommandLine line = read("quote a.yaml - --out o --force --date 2026-05-18 --json --rates r --verbose");
  REQUIRE(line.arguments);
  CHECK(line.arguments->verb == Verb::quote);
  CHECK(line.arguments->jobs == std::vector<std::string>{"a.yaml", "-"});
  CHECK(line.arguments->out == "o");
  CHECK(line.arguments->rates == "r");
  CHECK(line.arguments->date == Date{2026, 5, 18});
  CHECK(line.arguments->force);
  CHECK(line.arguments->json);
  CHECK(line.arguments->verbose);
  CHECK(!line.arguments->quiet);
}

TEST_CASE("what is not said keeps its default") {
  const CommandLine line = read("plan a");
  REQUIRE(line.arguments);
  CHECK(line.arguments->verb == Verb::plan);
  CHECK(line.arguments->out == "out");
  CHECK(!line.arguments->rates);
  CHECK(!line.arguments->date);
  CHECK(!line.arguments->joint);
}

TEST_CASE("explain takes a job and maybe a joint") {
  const CommandLine whole = read("explain a");
  REQUIRE(whole.arguments);
  CHECK(whole.arguments->jobs == std::vector<std::string>{"a"});
  CHECK(!whole.arguments->joint);
  const CommandLine one = read("explain - frame/3");
  REQUIRE(one.arguments);
  CHECK(one.arguments->jobs == std::vector<std::string>{"-"});
  CHECK(one.arguments->joint == "frame/3");
}

TEST_CASE("commands that only print take a word, and rates a book with jobs") {
  const CommandLine schema = read("schema day --reference");
  REQUIRE(schema.arguments);
  CHECK(schema.arguments->verb == Verb::schema);
  CHECK(schema.arguments->topic == "day");
  CHECK(schema.arguments->reference);
  CHECK(read("manual").arguments->topic.empty());
  const CommandLine rates = read("rates check book a.yaml b.yaml --older-than 6 --color never");
  REQUIRE(rates.arguments);
  CHECK(rates.arguments->verb == Verb::rates);
  CHECK(rates.arguments->rates == "book");
  CHECK(rates.arguments->jobs == std::vector<std::string>{"a.yaml", "b.yaml"});
  CHECK(rates.arguments->older_than == 6);
  CHECK(rates.arguments->colour == Colour::never);
  CHECK(!read("rates check").arguments->rates);
}

TEST_CASE("words after two dashes are files even when they begin with a dash") {
  const CommandLine line = read("check -- -x.yaml");
  REQUIRE(line.arguments);
  CHECK(line.arguments->jobs == std::vector<std::string>{"-x.yaml"});
}
