#include "report/decision_page.hpp"

#include <fmt/format.h>

#include <array>

namespace seambook {
namespace {

constexpr std::array yearly_figures = {&fig::capital,    &fig::depreciation,  &fig::interest_year, &fig::running_year,
                                       &fig::fixed_year, &fig::all_suited,    &fig::all_worth,     &fig::left_year,
                                       &fig::cash_year,  &fig::learning_cost, &fig::present_value};
constexpr std::uint32_t verdict_row = 2, words_row = 3, orders_row = 5, pieces_row = 6, pieces_year_row = 7,
                        table_row = 9;

std::uint32_t row_of(const Figure& figure) {
  for (std::uint32_t i = 0; i < yearly_figures.size(); ++i)
    if (yearly_figures[i] == &figure) return table_row + 1 + i;
  return table_row;
}
constexpr std::uint32_t metres_row = table_row + 1 + yearly_figures.size(), payback_row = metres_row + 1,
                        discounted_row = metres_row + 2, after_table = metres_row + 4;

std::uint16_t column_of(std::size_t scenario) { return static_cast<std::uint16_t>(1 + scenario); }

using NumberOrWord = std::variant<double, std::string>;
template <class T>
NumberOrWord or_never(const std::optional<T>& x) {
  if (x) return static_cast<double>(*x);
  return std::string("never");
}

void put_value(Sheet& sheet, std::uint32_t row, std::uint16_t column, std::string text, const NumberOrWord& value,
               int decimals) {
  Formula formula{std::move(text), 0.0};
  std::visit([&](const auto& v) { formula.value = v; }, value);
  put_formula(sheet, row, column, std::move(formula), decimals, Look::subtotal);
}

/// Sums of the families' page and what follows from them by division: where the divisor is nothing, it never pays.
void put_scenario(DecisionPage& page, const RateBook& book, const Comparison& comparison, const SavingPage& saving,
                  const NamedCells& cells, std::size_t s) {
  Sheet& sheet = page.sheet;
  const std::uint16_t column = column_of(s);
  const ScenarioWorth& scenario = comparison.scenarios[s];
  const std::size_t count = comparison.both.size();
  const auto cell = [&](const Figure& figure) { return cell_name(row_of(figure), column); };
  const Unit metre = shown_in(book.terms, unit::m).unit;
  const auto sum = [&](const Figure& figure) {
    return count == 0 ? std::string("0") : saving_sum(saving, cells, figure, s, count);
  };
  put_formula(sheet, row_of(fig::all_worth), column, {sum(fig::worth_year), scenario.worth.worth.si}, 0);
  put_formula(sheet, row_of(fig::all_suited), column, {sum(fig::suited_year), scenario.worth.suited.si / metre.si}, 0);
  const BreakEven even = break_even(*book.investment, scenario);
  std::optional<double> metres;
  if (even.metres_year) metres = even.metres_year->si / metre.si;
  const std::string worth = cell(fig::all_worth), cash = cell(fig::cash_year), capital = cell(fig::capital);
  put_value(sheet, metres_row, column,
            fmt::format("IF({0}>0,{1}*{2}/{0},\"never\")", worth, cell(fig::fixed_year), cell(fig::all_suited)),
            or_never(metres), 0);
  put_value(sheet, payback_row, column,
            fmt::format("IF({0}>0,({1}+{2})/{0},\"never\")", cash, capital, cell(fig::learning_cost)),
            or_never(even.payback_years), 1);
}

/// Discounted payback: whole years, then the part of the last one.
void put_discounted(DecisionPage& page, const RateBook& book, const Comparison& comparison, const SharedCells& shared,
                    std::size_t s) {
  const std::uint16_t column = column_of(s);
  const LeafText rate = shared.cells.at(book.investment->interest.si.source);
  const std::string i = fmt::format("({}/100)", rate.text);
  const auto cell = [&](const Figure& figure) { return cell_name(row_of(figure), column); };
  const std::string cash = cell(fig::cash_year);
  const std::string capital = fmt::format("({}+{})", cell(fig::capital), cell(fig::learning_cost));
  const std::string years = fmt::format("-LN(1-{0}*{1}/{2})/LN(1+{0})", i, capital, cash);
  const std::string full = fmt::format("INT({}*1.000000001)", years);
  const std::string left = fmt::format("({0}-{1}*(1-(1+{2})^-{3})/{2})", capital, cash, i, full);
  put_value(page.sheet, discounted_row, column,
            fmt::format("IF({0}>{1}*{2},{3}+{4}/({0}*(1+{2})^-({3}+1)),\"never\")", cash, capital, i, full, left),
            or_never(break_even(*book.investment, comparison.scenarios[s]).discounted_years), 1);
}

/// The inputs that move what is left a year most.
std::uint32_t put_drivers_of_decision(Sheet& sheet, std::uint32_t row, const RateBook& book,
                                      const std::vector<Sensitivity>& drivers) {
  constexpr std::size_t shown_drivers = 6;
  put(sheet, row, 0, "What is left a year hangs on", Look::heading);
  put(sheet, row, 1, fmt::format("for +1 % ({})", book.currency), Look::heading);
  for (std::size_t i = 0; i < drivers.size() && i < shown_drivers; ++i) {
    put(sheet, ++row, 0, drivers[i].words, Look::wrapped);
    put_number(sheet, row, 1, drivers[i].per_percent.si, 2, Look::frozen);
  }
  put(sheet, ++row, 0, "as calculated; run again after a change", Look::note);
  return row + 2;
}

std::uint32_t put_unsuited(Sheet& sheet, std::uint32_t row, const RateBook& book, const Comparison& comparison,
                           const WaysPage& ways) {
  put(sheet, row, 0, "Seams that do not suit", Look::heading);
  put(sheet, row, 1, fmt::format("{} a year", shown_in(book.terms, unit::m).unit.word), Look::heading);
  put(sheet, row, 2, "why", Look::heading);
  const std::uint32_t heading = row;
  for (std::size_t f = 0; f < comparison.judged.size(); ++f) {
    if (comparison.judged[f].why_not.empty()) continue;
    put(sheet, ++row, 0, comparison.ways.families[f].words, Look::wrapped);
    for (std::size_t w = 0; w < ways.rows[f].size(); ++w) {
      const double metres = comparison.sums[f][w].totals.weld_length.si;
      if (metres == 0) continue;
      const std::string length =
          fmt::format("{}!{}", families_sheet, cell_name(ways.rows[f][w], ways.columns.at(&fig::weld_length)));
      put_formula(sheet, row, 1,
                  {length + "*" + cell_name(pieces_year_row, 1),
                   metres / shown_in(book.terms, unit::m).unit.si * comparison.pieces_year.si},
                  0);
      break;
    }
    put(sheet, row, 2, comparison.judged[f].why_not, Look::wrapped);
    sheet.merges.push_back({row, 2, 6});
  }
  if (row == heading) put(sheet, ++row, 0, "all seams suit", Look::note);
  return row + 2;
}

/// Warnings about the ways that the saving is counted with.
std::uint32_t put_look_again(Sheet& sheet, std::uint32_t row, const Comparison& comparison) {
  std::vector<std::string> lines;
  for (const std::size_t f : comparison.both)
    for (const std::string& line : comparison.ways.families[f].ways[*comparison.judged[f].next].look_again)
      lines.push_back(line);
  if (lines.empty()) return row;
  put(sheet, row, 0, "Look again", Look::heading);
  for (const std::string& line : lines) put_wide(sheet, ++row, line, Look::warning);
  return row + 2;
}

void put_chart(Sheet& sheet, std::uint32_t row, std::size_t scenarios) {
  const auto line = [&](std::uint32_t of) {
    return fmt::format("{}!{}:{}", decision_sheet, cell_name(of, 1, true),
                       cell_name(of, column_of(scenarios - 1), true));
  };
  sheet.charts.push_back({ChartKind::column,
                          row,
                          0,
                          "Saved a year against what it costs a year",
                          "",
                          {{"saved a year", line(table_row), line(row_of(fig::all_worth))},
                           {"fixed cost a year", line(table_row), line(row_of(fig::fixed_year))}},
                          480,
                          300});
}

}  // namespace

DecisionPage decision_page(const RateBook& book, const Job& job, const Comparison& comparison, NamedCells& cells) {
  DecisionPage page;
  Sheet& sheet = page.sheet;
  sheet.name = decision_sheet;
  put_title(sheet, fmt::format("{}: does it pay?", book.investment->name),
            fmt::format("For the seams of {}, as often a year as stated. Tinted cells may be changed.",
                        job.title.empty() ? job.name : job.title));
  const auto input = [&](std::uint32_t row, const Figure& figure, double value, const char* message) {
    put(sheet, row, 0, figure.words);
    put_number(sheet, row, 1, value, 0, Look::input);
    sheet.validations.push_back({row, 1, 1, 1e6, true, message});
    cells[{&figure, 0}] = {sheet.name, row, 1};
  };
  input(orders_row, fig::orders_year, job.per_year.si.source == no_source ? 1 : job.per_year.si.value,
        "orders, 1 or more");
  input(pieces_row, fig::order_pieces, static_cast<double>(job.quantities.front()), "pieces, 1 or more");
  put(sheet, pieces_year_row, 0, fig::pieces_year.words);
  cells[{&fig::pieces_year, 0}] = {sheet.name, pieces_year_row, 1};
  put(sheet, table_row, 0, "Whether it pays", Look::heading);
  for (std::uint32_t s = 0; s < comparison.scenarios.size(); ++s) {
    put(sheet, table_row, column_of(s), comparison.scenarios[s].name, Look::heading);
    for (const Figure* figure : yearly_figures) cells[{figure, s}] = {sheet.name, row_of(*figure), column_of(s)};
  }
  for (const Figure* figure : yearly_figures)
    put(sheet, row_of(*figure), 0, heading_of(*figure, book.currency, book.terms));
  put(sheet, metres_row, 0, fmt::format("break-even ({} a year, same mix)", shown_in(book.terms, unit::m).unit.word));
  put(sheet, payback_row, 0, "paid back after (years)");
  put(sheet, discounted_row, 0, "the same with interest (years)");
  sheet.column_widths = {44, 12, 12, 12, 12, 12, 12};
  return page;
}

void put_decision(DecisionPage& page, const RateBook& book, const Comparison& comparison, const DecisionSources& from,
                  const Tape& tape, const NamedCells& cells, const SharedCells& shared) {
  Sheet& sheet = page.sheet;
  put_named(sheet, cells, shared, tape, {&fig::all_worth, &fig::all_suited});
  for (std::size_t s = 0; s < comparison.scenarios.size(); ++s) {
    put_scenario(page, book, comparison, from.saving, cells, s);
    put_discounted(page, book, comparison, shared, s);
  }
  const bool pays = comparison.scenarios.front().worth.present_value.si > 0;
  put_formula(sheet, verdict_row, 0,
              {fmt::format("IF({}>0,\"It pays at this year's seams.\",\"It does not pay at this year's seams.\")",
                           cell_name(row_of(fig::present_value), 1)),
               std::string(pays ? "It pays at this year's seams." : "It does not pay at this year's seams.")},
              0, Look::total);
  put_wide(sheet, words_row, verdict(book, comparison) + " (as calculated; run again after a change)", Look::note);
  std::uint32_t row = put_drivers_of_decision(sheet, after_table, book, from.drivers);
  row = put_unsuited(sheet, row, book, comparison, from.ways);
  row = put_look_again(sheet, row, comparison);
  put_chart(sheet, row, comparison.scenarios.size());
}

}  // namespace seambook
