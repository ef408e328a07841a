#include "gated.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace seambook::test {

std::string gated_job(const std::string& weldment, const std::string& joints) {
  return "format: 1\njob: gated\nfinish: F1\nbase_metal: S235\nweldments:\n  - name: body\n    parts: 2\n"
         "    free_issue: true\n" +
         weldment + "    joints:\n" + joints;
}

std::vector<RateFile> rates_with(const std::string& file, const std::string& from, const std::string& to) {
  std::vector<RateFile> files = rate_texts();
  const auto found = std::find_if(files.begin(), files.end(), [&](const RateFile& one) { return one.name == file; });
  REQUIRE(found != files.end());
  const std::size_t at = found->text.find(from);
  REQUIRE(at != found->text.npos);
  found->text.replace(at, from.size(), to);
  return files;
}

std::vector<Gate> gates_of(GateKind kind, const std::string& job, const std::vector<RateFile>& rates, Date date,
                           const std::string& day) {
  LoadedJob loaded = load_text(job, rates);
  CAPTURE(render(loaded.diagnostics));
  REQUIRE(loaded.job);
  std::optional<Day> resolved;
  if (!day.empty()) {
    const DayText text = read_day_file(loaded.diagnostics.add_file("day.yaml", day), loaded.diagnostics);
    resolved = resolve_day(text, *loaded.book, std::span(&*loaded.job, 1), loaded.diagnostics);
    REQUIRE(resolved);
  }
  std::vector<Gate> gates = find_gates(
      {*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job), date, resolved ? &*resolved : nullptr, 0});
  std::erase_if(gates, [&](const Gate& gate) { return gate.kind != kind; });
  return gates;
}

}  // namespace seambook::test
