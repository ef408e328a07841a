#include "report/compare_text.hpp"

#include <fmt/format.h>

#include "basics/utf8.hpp"
#include "compare/verdict.hpp"
#include "report/crossover_page.hpp"
#include "report/number_text.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

std::string printable_words(const std::string& text) {
  std::string out;
  append_printable(out, text);
  return out;
}

TextTable family_table(const RateBook& book, const Comparison& comparison) {
  const Unit metre = shown_in(book.terms, unit::m).unit;
  TextTable table;
  table.headings = {"family",        "process",   metre.word,
                    "arc min",       "floor min", fmt::format("{} per {}", book.currency, metre.word),
                    "by, or why not"};
  table.right_aligned = {false, false, true, true, true, true, false};
  for (std::size_t f = 0; f < comparison.ways.families.size(); ++f) {
    const Family& family = comparison.ways.families[f];
    for (std::size_t w = 0; w < family.ways.size(); ++w) {
      const FamilyWay& way = family.ways[w];
      std::vector<std::string> row = {w == 0 ? family.words : "",
                                      process_word(book.processes[way.process].number, book.terms)};
      if (way.rows.empty()) {
        row.insert(row.end(), {"", "", "", "", "does not suit: " + way.words});
      } else {
        const Totals& t = comparison.sums[f][w].totals;
        const double metres = t.weld_length.si / metre.si;
        row.insert(row.end(),
                   {figure(metres, 2), figure(t.arc.si / unit::min.si, 1), figure(t.floor.si / unit::min.si, 1),
                    figure(welding_cost(t).si / metres, 2), way.words});
      }
      table.rows.push_back(std::move(row));
    }
  }
  return table;
}

TextTable scenario_table(const RateBook& book, const Comparison& comparison) {
  const Unit metre = shown_in(book.terms, unit::m).unit;
  TextTable table;
  table.headings = {"scenario",
                    "fixed " + book.currency + "/year",
                    "saved " + book.currency + "/year",
                    fmt::format("suited {}/year", metre.word),
                    fmt::format("break-even {}/year", metre.word),
                    "paid back years",
                    "present value " + book.currency};
  table.right_aligned.assign(table.headings.size(), true);
  table.right_aligned.front() = false;
  for (const ScenarioWorth& scenario : comparison.scenarios) {
    const BreakEven even = break_even(*book.investment, scenario);
    table.rows.push_back({scenario.name, figure(scenario.cost.fixed.si, 0), figure(scenario.worth.worth.si, 0),
                          figure(scenario.worth.suited.si / metre.si, 0),
                          even.metres_year ? figure(even.metres_year->si / metre.si, 0) : "never",
                          even.payback_years ? figure(*even.payback_years, 1) : "never",
                          figure(scenario.worth.present_value.si, 0)});
  }
  return table;
}

}  // namespace

std::string together_text(const RateBook& book, const Comparison& together, std::size_t columns) {
  return "all jobs together\n\n" + render(scenario_table(book, together), columns) + "\n" +
         printable_words(verdict(book, together)) + "\n";
}

std::string compare_text(const RateBook& book, const Comparison& comparison, std::size_t columns) {
  std::string out = render(family_table(book, comparison), columns) + "\n";
  for (const std::string& line : crossing_words(book, comparison.crossover))
    out += printable_words(comparison.crossover.words + ": " + line) + "\n";
  if (book.investment) out += "\n" + render(scenario_table(book, comparison), columns);
  return out + "\n" + printable_words(verdict(book, comparison)) + "\n";
}

}  // namespace seambook
