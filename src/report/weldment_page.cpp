#include "report/weldment_page.hpp"

#include <fmt/format.h>

#include <array>

namespace seambook {
namespace {

/// Elements that are counted by weldment have a column where one of the job's weldments takes them.
std::vector<const Figure*> weldment_columns(const RateBook& book, const Job& job) {
  std::vector<const Figure*> columns = {&fig::weldments, &fig::parts,     &fig::turns,
                                        &fig::mass,      &fig::parts_min, &fig::turns_min};
  std::array<bool, labour_kinds> taken{};
  bool waits = false, valued = false;
  for (const Weldment& weldment : job.weldments) {
    valued = valued || weldment.free_issue_value.si.source != no_source;
    for (const std::size_t i : weldment.elements) {
      const LabourElement& element = book.labour_elements[i];
      waits = waits || !element.attended;
      if (element.attended) taken[static_cast<std::size_t>(element.kind)] = true;
    }
  }
  for (std::size_t k = 0; k < labour_kinds; ++k)
    if (taken[k]) columns.push_back(&fig::element_min[k]);
  for (const Figure* figure :
       {&fig::weldment_floor, &fig::weldment_labour, &fig::weldment_equipment, &fig::weldment_mass, &fig::metal_cost})
    columns.push_back(figure);
  if (valued) columns.insert(columns.end(), {&fig::free_issue_value, &fig::free_issue_cost});
  if (waits) columns.push_back(&fig::waiting_min);
  return columns;
}

const char* scaling_word(Scaling scaling) {
  constexpr std::array words = {"each", "per lot", "once"};
  return words[static_cast<std::size_t>(scaling)];
}

void put_weldments(const RateBook& book, const Job& job, const SharedCells& shared, WeldmentPage& page) {
  Sheet& sheet = page.sheet;
  Tape tape;
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    tape.clear();
    const WeldmentRow row = gather_weldment(book, job, job.weldments[w]);
    weldment_figures(row.shape, lift_weldment<Traced>(row.inputs, 0, &tape), 0);
    put(sheet, weldment_row(w), 0, job.weldments[w].name);
    // The count is an input here, though joints see it as shared.
    SharedCells others = shared;
    others.cells.erase(job.weldments[w].count.si.source);
    put_record(sheet, page.table, others, job, tape, weldment_row(w));
  }
}

/// `=E12*F12` in the column of its scaling; the price is an input, the count follows the weldment.
void put_bought_line(const Bought& line, const Weldment* weldment, const std::string& currency,
                     const SharedCells& shared, Sheet& sheet, std::uint32_t row) {
  put(sheet, row, 0, weldment != nullptr ? weldment->name : "the job");
  put(sheet, row, 1, line.what, Look::wrapped);
  put(sheet, row, bought_column::kind, cost_kind_words[static_cast<std::size_t>(cost_kind(line.kind))]);
  put(sheet, row, bought_column::scaling, scaling_word(line.scaling));
  const double price = line.price.si.value;
  put_number(sheet, row, bought_column::price, price, 2, Look::input);
  sheet.validations.push_back({row, bought_column::price, 0, 1e9, false, "price, 0 or more"});
  sheet.live.push_back({row, bought_column::price, line.price.si.source, price, "price",
                        fmt::format("{} {}", currency, scaling_word(line.scaling))});
  double count = 1;
  if (weldment != nullptr && line.scaling == Scaling::each) {
    count = weldment->count.si.value;
    put_formula(sheet, row, bought_column::count, {shared.cells.at(weldment->count.si.source).text, count}, 0);
  } else {
    put_number(sheet, row, bought_column::count, 1, 0);
  }
  const std::uint16_t column = line.scaling == Scaling::each      ? bought_column::each
                               : line.scaling == Scaling::per_lot ? bought_column::lot
                                                                  : bought_column::once;
  put_formula(sheet, row, column,
              {cell_name(row, bought_column::price) + "*" + cell_name(row, bought_column::count), price * count}, 2);
}

void put_bought(const Job& job, const std::string& currency, const SharedCells& shared, WeldmentPage& page) {
  const std::uint32_t heading = page.last_row + 4;
  put(page.sheet, heading - 1, 0, "Bought in", Look::label);
  std::uint16_t column = 0;
  for (const char* words : {"for", "what", "kind", "paid"}) put(page.sheet, heading, column++, words, Look::heading);
  for (const char* words : {"price", "times", "each piece", "each lot", "once"}) {
    put(page.sheet, heading, column++,
        std::string_view(words) == "times" ? words : fmt::format("{} ({})", words, currency), Look::heading);
  }
  std::uint32_t row = page.bought_first = heading + 1;
  for (const Weldment& weldment : job.weldments) {
    for (const Bought& line : weldment.bought) put_bought_line(line, &weldment, currency, shared, page.sheet, row++);
  }
  for (const Bought& line : job.bought) put_bought_line(line, nullptr, currency, shared, page.sheet, row++);
  page.bought_last = row - 1;
  if (row == page.bought_first) put(page.sheet, row, 0, "nothing is bought in", Look::note);
}

}  // namespace

std::uint32_t weldment_row(std::size_t weldment) { return heading_row + 1 + static_cast<std::uint32_t>(weldment); }

void add_weldment_counts(SharedCells& cells, const Job& job) {
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    cells.cells[job.weldments[w].count.si.source] = {
        fmt::format("{}!{}", weldments_sheet, cell_name(weldment_row(w), weldment_count_column, true)), 1};
  }
}

WeldmentPage weldment_page(const RateBook& book, const Job& job, const SharedCells& shared) {
  WeldmentPage page;
  Sheet& sheet = page.sheet;
  sheet.name = weldments_sheet;
  put_title(sheet, "Weldments: fitting, turning, base metal, bought in",
            "For one piece. Tinted cells may be changed, grey ones need a new run.");
  put(sheet, heading_row, 0, "weldment", Look::heading);
  page.table.first_row = heading_row + 1;
  std::uint16_t column = 1;
  for (const Figure* figure : weldment_columns(book, job)) {
    page.table.columns[figure] = {sheet.name, column};
    put(sheet, heading_row, column++, heading_of(*figure, book.currency, book.terms), Look::heading);
  }
  sheet.column_widths = {20, 26, 14, 11, 12, 11, 12, 12, 12, 12, 12, 12};
  sheet.frozen_rows = heading_row + 1;
  sheet.landscape = true;
  put_weldments(book, job, shared, page);
  page.last_row = weldment_row(job.weldments.size()) - 1;
  put_bought(job, book.currency, shared, page);
  return page;
}

}  // namespace seambook
