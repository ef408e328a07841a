#include "report/job_work_page.hpp"

#include <fmt/format.h>

#include "quote/job_work.hpp"

namespace seambook {
namespace {

struct WorkAt {
  enum Column : std::uint16_t { what, paid, grade, times, time, minutes, labour };
};

const char* paid_word(bool once) { return once ? "once" : "per lot"; }
constexpr const char* waits_word = "waits";

std::string column_range(const JobWorkPage& page, std::uint16_t column) {
  return fmt::format("{}!{}:{}", sheet_reference(job_work_sheet), cell_name(page.first_row, column),
                     cell_name(page.last_row, column));
}

void put_work_headings(Sheet& sheet, const std::string& currency, Table& table) {
  const std::pair<WorkAt::Column, const char*> words[] = {
      {WorkAt::what, "what"}, {WorkAt::paid, "paid"}, {WorkAt::grade, "labour grade"}, {WorkAt::times, "times"}};
  for (const auto& [column, text] : words) put(sheet, heading_row, column, text, Look::heading);
  const std::pair<WorkAt::Column, const Figure*> figures[] = {{WorkAt::time, &fig::job_work_time},
                                                              {WorkAt::minutes, &fig::job_work_min},
                                                              {WorkAt::labour, &fig::job_work_labour}};
  for (const auto& [column, figure] : figures) {
    put(sheet, heading_row, column, heading_of(*figure, currency), Look::heading);
    table.columns[figure] = {sheet.name, column};
  }
  sheet.column_widths = {38, 10, 14, 8, 12, 12, 12};
  sheet.frozen_rows = heading_row + 1;
  sheet.landscape = true;
}

}  // namespace

JobWorkPage job_work_page(const RateBook& book, const Job& job, const SharedCells& shared) {
  JobWorkPage page;
  Table table;
  Sheet& sheet = page.sheet;
  sheet.name = job_work_sheet;
  put_title(sheet, "Work for the job as a whole",
            "Once, or for each lot; these times hold their own rest. What nobody attends waits and is not charged.");
  put_work_headings(sheet, book.currency, table);
  std::uint32_t row = table.first_row = page.first_row = heading_row + 1;
  Tape tape;
  for (const JobWork& work : job.work) {
    tape.clear();
    job_work_figures(lift_job_work<Traced>(gather_job_work(book, work), 0, &tape), 0);
    put(sheet, row, WorkAt::what, work.what, Look::wrapped);
    put(sheet, row, WorkAt::paid, paid_word(work.once));
    put(sheet, row, WorkAt::grade, work.attended ? book.labour[work.grade].name : waits_word);
    put_number(sheet, row, WorkAt::times, work.count, 0);
    put_record(sheet, table, shared, job, tape, row++);
  }
  page.last_row = row - 1;
  return page;
}

std::string job_work_labour(const JobWorkPage& page, bool once) {
  if (page.last_row < page.first_row) return {};
  return fmt::format("SUMIF({},\"{}\",{})", column_range(page, WorkAt::paid), paid_word(once),
                     column_range(page, WorkAt::labour));
}

std::string job_work_minutes(const JobWorkPage& page) {
  if (page.last_row < page.first_row) return {};
  return fmt::format("SUMIF({},\"<>{}\",{})", column_range(page, WorkAt::grade), waits_word,
                     column_range(page, WorkAt::minutes));
}

}  // namespace seambook
