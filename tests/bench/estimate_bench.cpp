// What one pass of an estimate costs in time: plain numbers (aim: at most 200 ns), and traced with the record reused.
#include <benchmark/benchmark.h>

#include <ctime>

#include "../trace/random_row.hpp"

namespace {

using namespace seambook;

struct Rows {
  std::vector<Row<Sourced>> rows;
  std::size_t passes = 0;
};

/// A thousand rows as jobs have them: all welds, one to three pass groups.
const Rows& sample() {
  static const Rows made = [] {
    Rows out;
    random_row::Dice dice(1);
    for (int i = 0; i < 1000; ++i) {
      out.rows.push_back(random_row::any(dice));
      out.passes += out.rows.back().passes.size();
    }
    return out;
  }();
  return made;
}

void per_pass(benchmark::State& state) {
  using benchmark::Counter;
  const auto inverted_rate = Counter::kIsIterationInvariantRate | Counter::kInvert;
  state.counters["per_pass"] = Counter(static_cast<double>(sample().passes), inverted_rate);
  state.counters["per_row"] = Counter(static_cast<double>(sample().rows.size()), inverted_rate);
}

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// Processor time of one estimate of all rows by plain numbers.
double plain_seconds() {
  const int repeats = 300;
  const double start = processor_seconds();
  for (int i = 0; i < repeats; ++i) {
    for (const Row<Sourced>& row : sample().rows) benchmark::DoNotOptimize(row_figures(lift_row<double>(row)));
  }
  return (processor_seconds() - start) / repeats;
}

/// The formulas alone, inputs at hand.
void plain_figures(benchmark::State& state) {
  std::vector<Row<double>> rows;
  for (const Row<Sourced>& row : sample().rows) rows.push_back(lift_row<double>(row));
  for (auto _ : state) {
    for (const Row<double>& row : rows) benchmark::DoNotOptimize(row_figures(row));
  }
  per_pass(state);
}

/// Inputs lifted from their sources too.
void plain_rows(benchmark::State& state) {
  for (auto _ : state) {
    for (const Row<Sourced>& row : sample().rows) benchmark::DoNotOptimize(row_figures(lift_row<double>(row)));
  }
  per_pass(state);
}

void traced_rows(benchmark::State& state) {
  const double plain = plain_seconds();
  Tape tape;
  const double start = processor_seconds();
  for (auto _ : state) {
    for (const Row<Sourced>& row : sample().rows) {
      tape.clear();
      benchmark::DoNotOptimize(row_figures(lift_row<Traced>(row, &tape)));
    }
  }
  const double traced = (processor_seconds() - start) / static_cast<double>(state.iterations());
  state.counters["times_plain"] = traced / plain;
  per_pass(state);
}

void traced_and_swept(benchmark::State& state) {
  Tape tape;
  for (auto _ : state) {
    for (const Row<Sourced>& row : sample().rows) {
      tape.clear();
      std::vector<Seed> seeds;
      for (const PassFigures<Traced>& p : row_figures(lift_row<Traced>(row, &tape)).passes) {
        seeds.push_back({p.cost.si.node, 1});
      }
      benchmark::DoNotOptimize(sweep(tape, seeds));
    }
  }
  per_pass(state);
}

BENCHMARK(plain_figures);
BENCHMARK(plain_rows);
BENCHMARK(traced_rows);
BENCHMARK(traced_and_swept);

}  // namespace

BENCHMARK_MAIN();
