#include "report/compare_book.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "compare/drivers.hpp"
#include "report/crossover_page.hpp"
#include "report/decision_page.hpp"
#include "report/notes_page.hpp"
#include "report/rates_page.hpp"

namespace seambook {
namespace {

template <Dim D>
void add_source(std::vector<SourceId>& ids, const Known<D>& x) {
  if (x.si.source != no_source && x.si.source < first_job_source) ids.push_back(x.si.source);
}

/// Numbers of the rate book that the comparison reads, ascending.
std::vector<SourceId> compared_sources(const RateBook& book, const Job& rows) {
  std::vector<SourceId> ids = joint_sources(book, rows);
  if (book.investment) {
    const Investment& investment = *book.investment;
    for (const InvestmentLine& line : investment.capital) add_source(ids, line.price);
    for (const InvestmentLine& line : investment.yearly) add_source(ids, line.price);
    for (const Known<dim::ratio>& x :
         {investment.life_years, investment.residual, investment.interest, investment.upkeep, investment.first_year})
      add_source(ids, x);
    add_source(ids, investment.avoidable_rate);
    for (const Scenario& scenario : investment.scenarios)
      for (const Known<dim::ratio>& x : {scenario.capital, scenario.fit_up, scenario.finish, scenario.metres})
        add_source(ids, x);
  }
  std::sort(ids.begin(), ids.end());
  ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
  return ids;
}

/// The decision and the saving: laid out first, written when all their cells are known.
void add_decision(const RateBook& book, const Job& job, const Comparison& comparison, const WaysPage& ways,
                  const SharedCells& shared, Workbook& workbook) {
  NamedCells cells;
  DecisionPage decision = decision_page(book, job, comparison, cells);
  SavingPage saving = saving_page(book, comparison, ways, cells);
  const Tape tape = investment_record(book, job, comparison);
  put_decision(decision, book, comparison, {ways, saving, drivers(book, job, comparison)}, tape, cells, shared);
  put_saving(saving, tape, cells, shared);
  workbook.sheets.push_back(std::move(decision.sheet));
  workbook.sheets.push_back(std::move(saving.sheet));
}

}  // namespace

Workbook compare_workbook(const RateBook& book, const Job& job, const Comparison& comparison, Date date) {
  const Job& rows = comparison.ways.job;
  const std::vector<SourceId> used = compared_sources(book, rows);
  const SharedCells shared = rate_cells(book, used);
  JointPages joints = joint_pages(book, rows, shared, Rows::stand_beside);
  WaysPage ways = ways_page(book, comparison, joints);
  Workbook workbook;
  workbook.title = fmt::format("Comparison {}", job.name);
  workbook.author = book.shop;
  workbook.letter_paper = book.letter_paper;
  workbook.subject = job.title;
  workbook.year = date.year, workbook.month = date.month, workbook.day = date.day;
  if (book.investment) add_decision(book, job, comparison, ways, shared, workbook);
  workbook.sheets.push_back(std::move(ways.sheet));
  workbook.sheets.push_back(crossover_page(book, comparison.crossover));
  for (Sheet& sheet : joints.sheets) workbook.sheets.push_back(std::move(sheet));
  workbook.sheets.push_back(rates_page(book, used));
  workbook.sheets.push_back(notes_page("What this comparison takes for granted; read before you decide.",
                                       {{"Cautions", cautions(book, rows)},
                                        {"What a comparison counts", comparison_notes(book, job)},
                                        {"Assumptions and what they rest on", basis_lines(book, used)}}));
  for (Sheet& sheet : workbook.sheets) {
    if (sheet.header.empty()) sheet.header = fmt::format("{} {}", workbook.title, iso(date));
    if (sheet.footer.empty()) sheet.footer = sheet.name;
  }
  return workbook;
}

}  // namespace seambook
