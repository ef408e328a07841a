// How much the strict tree costs above the parser's bare events, on a generated job of 50,000 joints (block style).
// Counters: ratio of times (aim: at most 1.5) and peak memory of the tree above the text (aim: at most 100 MB).
#include <benchmark/benchmark.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>

#include "bare_events.hpp"
#include "text/tree.hpp"

namespace {

constexpr int joints = 50'000;

std::string job_text() {
  std::string text = "format: 1\njob: platform\nweldments:\n  - name: frame\n    joints:\n";
  char line[512];
  for (int i = 0; i < joints; ++i) {
    std::snprintf(line, sizeof line,
                  "      - id: J%05d\n        weld: fillet\n        leg: %d mm\n        thickness: %d mm\n"
                  "        length: %d mm\n        count: %d\n        sides: 2\n        base_metal: S235\n"
                  "        position: PB\n        process: 135\n        finish: as welded\n"
                  "        note: drawing 4711 sheet %d, detail %c\n",
                  i, 3 + i % 5, 4 + i % 9, 100 + i % 900, 1 + i % 4, 1 + i % 7, 'A' + i % 20);
    text += line;
  }
  return text;
}

std::size_t read_tree(seambook::Diagnostics& diagnostics, std::uint32_t file) {
  const auto tree = seambook::parse_yaml(file, diagnostics);
  if (!tree) std::abort();
  return tree->nodes.size();
}

/// Of processor time: other work on the machine does not count.
double seconds_of(const auto& work) {
  const std::clock_t start = std::clock();
  work();
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

/// Peak resident memory in MB of a child process that does `work`.
double peak_mb(const auto& work) {
  const pid_t child = fork();
  if (child == 0) {
    work();
    _exit(0);
  }
  int status = 0;
  rusage usage{};
  wait4(child, &status, 0, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

/// Memory first, while the heap holds the text alone; then both by turns, the best of each counting.
void tree_against_events(benchmark::State& state) {
  seambook::Diagnostics diagnostics;
  const auto file = diagnostics.add_file("job.yaml", job_text());
  const std::string& text = diagnostics.files[file].text;
  const double idle = peak_mb([&] { benchmark::DoNotOptimize(text.data()); });
  state.counters["above_text_MB"] = peak_mb([&] { read_tree(diagnostics, file); }) - idle;
  double events = 1e9, tree = 1e9;
  for (auto _ : state)
    for (int turn = 0; turn < 3; ++turn) {
      events = std::min(events, seconds_of([&] { read_bare_events(text); }));
      tree = std::min(tree, seconds_of([&] { read_tree(diagnostics, file); }));
    }
  state.counters["ratio"] = tree / events;
  state.counters["text_MB"] = static_cast<double>(text.size()) / 1e6;
}
BENCHMARK(tree_against_events)->Unit(benchmark::kMillisecond)->Iterations(1);

void bare_events(benchmark::State& state) {
  const std::string text = job_text();
  for (auto _ : state) read_bare_events(text);
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * text.size()));
}
BENCHMARK(bare_events)->Unit(benchmark::kMillisecond);

void strict_tree(benchmark::State& state) {
  seambook::Diagnostics diagnostics;
  const auto file = diagnostics.add_file("job.yaml", job_text());
  for (auto _ : state) benchmark::DoNotOptimize(read_tree(diagnostics, file));
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * diagnostics.files[file].text.size()));
}
BENCHMARK(strict_tree)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
