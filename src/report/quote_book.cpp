#include "report/quote_book.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

#include "report/breakdown_page.hpp"
#include "report/changes_page.hpp"
#include "report/customer_page.hpp"
#include "report/doubt_page.hpp"
#include "report/edits_page.hpp"
#include "report/notes_page.hpp"
#include "report/option_pages.hpp"
#include "report/order_page.hpp"
#include "report/overview_page.hpp"
#include "report/rates_page.hpp"

namespace seambook {
namespace {

/// Numbers of the rate book that the job or one of its options reads.
std::vector<SourceId> all_sources(const RateBook& book, const Job& job, const Quote& quote) {
  std::vector<SourceId> all = used_sources(book, job, quote.setups);
  for (std::size_t i = 0; i < job.options.size(); ++i) {
    const std::vector<SourceId> more = used_sources(book, job.options[i].part, quote.options[i].quote.setups);
    all.insert(all.end(), more.begin(), more.end());
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

}  // namespace

Workbook quote_workbook(const RateBook& book, const Job& job, const Estimate& estimate,
                        const std::vector<StationWork>& work, const Quote& quote, const Diagnostics& places,
                        const Changes* changes) {
  assert(quote.options.size() == job.options.size());
  const std::vector<SourceId> used = all_sources(book, job, quote);
  const SharedCells rates = rate_cells(book, used);
  SharedCells shared = rates;
  add_weldment_counts(shared, job);
  JointPages joints = joint_pages(book, job, shared);
  WeldmentPage weldments = weldment_page(book, job, shared);
  SequencePage sequence = sequence_page(book, job, work, quote, shared);
  JobWorkPage work_page = job_work_page(book, job, shared);
  const ShopPages pages{joints, weldments, sequence, work_page};
  CostPage cost = cost_page(book, job, quote, pages, shared);
  const QuoteNotes notes = quote_notes(book, job, estimate, quote);
  Workbook workbook;
  workbook.title = fmt::format("Quote {}", job.name);
  workbook.author = book.shop;
  workbook.subject = job.title;
  workbook.letter_paper = book.letter_paper;
  workbook.year = quote.date.year, workbook.month = quote.date.month, workbook.day = quote.date.day;
  std::vector<OptionPages> options;
  for (std::size_t i = 0; i < job.options.size(); ++i)
    options.push_back(option_pages({book, job, cost, pages}, quote.options[i], i, rates));
  std::vector<const CostPage*> costs = {&cost};
  for (const OptionPages& option : options) costs.push_back(&option.cost);
  workbook.sheets.push_back(customer_page(book, job, quote, costs));
  workbook.sheets.push_back(overview_page(book, job, estimate, quote, notes.findings, cost, pages));
  workbook.sheets.push_back(std::move(cost.sheet));
  workbook.sheets.push_back(breakdown_page(book, job, estimate, quote, pages, cost));
  if (changes != nullptr) workbook.sheets.push_back(changes_page(book, *changes));
  if (quote.doubt) workbook.sheets.push_back(doubt_page(book, *quote.doubt));
  for (Sheet& sheet : joints.sheets) workbook.sheets.push_back(std::move(sheet));
  workbook.sheets.push_back(order_page(book, job, estimate, cost, pages, shared));
  workbook.sheets.push_back(std::move(weldments.sheet));
  if (!job.work.empty()) workbook.sheets.push_back(std::move(work_page.sheet));
  workbook.sheets.push_back(std::move(sequence.sheet));
  for (OptionPages& option : options)
    for (Sheet& sheet : option.sheets) workbook.sheets.push_back(std::move(sheet));
  workbook.sheets.push_back(rates_page(book, used));
  workbook.sheets.push_back(edits_page(book, job, workbook.sheets, places));
  workbook.sheets.push_back(notes_page(job, notes));
  for (Sheet& sheet : workbook.sheets) {
    if (sheet.header.empty()) sheet.header = fmt::format("{} {}", workbook.title, iso(quote.date));
    if (sheet.footer.empty()) sheet.footer = sheet.name;
  }
  return workbook;
}

}  // namespace seambook
