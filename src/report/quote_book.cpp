#include "report/quote_book.hpp"

#include <fmt/format.h>

#include "report/breakdown_page.hpp"
#include "report/changes_page.hpp"
#include "report/customer_page.hpp"
#include "report/doubt_page.hpp"
#include "report/notes_page.hpp"
#include "report/order_page.hpp"
#include "report/overview_page.hpp"
#include "report/rates_page.hpp"

namespace seambook {
namespace {

/// Rate-book numbers on the rates page, and each weldment's count on the weldments page.
SharedCells shared_cells(const RateBook& book, const Job& job, const std::vector<SourceId>& used) {
  SharedCells cells = rate_cells(book, used);
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    cells.cells[job.weldments[w].count.si.source] = {
        fmt::format("{}!{}", weldments_sheet, cell_name(weldment_row(w), weldment_count_column, true)), 1};
  }
  return cells;
}

}  // namespace

Workbook quote_workbook(const RateBook& book, const Job& job, const Estimate& estimate,
                        const std::vector<StationWork>& work, const Quote& quote, const Changes* changes) {
  const std::vector<SourceId> used = used_sources(book, job, quote.setups);
  const SharedCells shared = shared_cells(book, job, used);
  JointPages joints = joint_pages(book, job, shared);
  WeldmentPage weldments = weldment_page(book, job, shared);
  SequencePage sequence = sequence_page(book, job, work, quote, shared);
  JobWorkPage work_page = job_work_page(book, job, shared);
  const ShopPages pages{joints, weldments, sequence, work_page};
  CostPage cost = cost_page(book, job, estimate, quote, pages, shared);
  Workbook workbook;
  workbook.title = fmt::format("Quote {}", job.name);
  workbook.author = book.shop;
  workbook.subject = job.title;
  workbook.year = quote.date.year, workbook.month = quote.date.month, workbook.day = quote.date.day;
  workbook.sheets.push_back(customer_page(book, job, quote, cost));
  workbook.sheets.push_back(overview_page(book, job, estimate, quote, cost, pages));
  workbook.sheets.push_back(std::move(cost.sheet));
  workbook.sheets.push_back(breakdown_page(book, job, estimate, quote, pages));
  if (changes != nullptr) workbook.sheets.push_back(changes_page(book, *changes));
  if (quote.doubt) workbook.sheets.push_back(doubt_page(book, *quote.doubt));
  for (Sheet& sheet : joints.sheets) workbook.sheets.push_back(std::move(sheet));
  workbook.sheets.push_back(order_page(book, job, estimate, cost, pages, shared));
  workbook.sheets.push_back(std::move(weldments.sheet));
  if (!job.work.empty()) workbook.sheets.push_back(std::move(work_page.sheet));
  workbook.sheets.push_back(std::move(sequence.sheet));
  workbook.sheets.push_back(rates_page(book, used));
  workbook.sheets.push_back(notes_page(job, quote));
  for (Sheet& sheet : workbook.sheets) {
    if (sheet.header.empty()) sheet.header = fmt::format("{} {}", workbook.title, iso(quote.date));
    if (sheet.footer.empty()) sheet.footer = sheet.name;
  }
  return workbook;
}

}  // namespace seambook
