// Rows that a sheet makes later stand where held ones would, in what is read and in what is written.
#include "report/sheet_rows.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

#include "quoted.hpp"
#include "report/quote_book.hpp"
#include "report/xlsx.hpp"
#include "scratch_folder.hpp"

using namespace seambook;

namespace {

/// A heading, `count` numbers below it that are made later, and a total.
Sheet list_of(std::uint32_t count) {
  Sheet sheet;
  sheet.name = "List";
  sheet.cells = {{count + 1, 0, "total", Look::total, ""}, {0, 1, "number", Look::heading, ""}};
  sheet.later = {count, [](std::size_t block, std::vector<Cell>& cells) {
                   const auto row = static_cast<std::uint32_t>(block + 1);
                   cells.push_back({row, 1, static_cast<double>(block), Look::figure, "0"});
                   cells.push_back({row, 0, "row", Look::text, ""});
                 }};
  return sheet;
}

std::vector<std::pair<std::uint32_t, std::size_t>> rows_of(const Sheet& sheet) {
  std::vector<std::pair<std::uint32_t, std::size_t>> rows;
  each_row(sheet, [&](RowCells cells) { rows.emplace_back(cells.front()->row, cells.size()); });
  return rows;
}

}  // namespace

TEST_CASE("rows come from the top, held ones and later ones, their cells by column") {
  const Sheet sheet = list_of(3);
  using Rows = std::vector<std::pair<std::uint32_t, std::size_t>>;
  CHECK(rows_of(sheet) == Rows{{0, 1}, {1, 2}, {2, 2}, {3, 2}, {4, 1}});
  each_row(sheet, [](RowCells cells) {
    if (cells.size() == 2) CHECK((cells[0]->column == 0 && cells[1]->column == 1));
  });
  Sheet held = list_of(3);
  hold_rows(held);
  CHECK(held.later.blocks == 0);
  CHECK(held.cells.size() == 8);
  CHECK(rows_of(held) == rows_of(sheet));
}

TEST_CASE("later rows that stand among held ones or go back are refused") {
  Sheet sheet = list_of(3);
  sheet.cells.push_back({2, 5, "in between", Look::text, ""});
  CHECK_THROWS_AS(rows_of(sheet), std::invalid_argument);
  Sheet back = list_of(0);
  back.later = {2, [](std::size_t block, std::vector<Cell>& cells) {
                  cells.push_back({static_cast<std::uint32_t>(9 - block), 0, 1.0, Look::figure, "0"});
                }};
  CHECK_THROWS_AS(rows_of(back), std::invalid_argument);
}

TEST_CASE("a workbook whose rows are made while it is written is the one whose rows were held") {
  for (const char* file : {"bracket.yaml", "brewhouse-platform.yaml", "marlgannet/machine-base.yaml"}) {
    CAPTURE(file);
    const test::Quoted q = test::quoted(test::load_job(file));
    Workbook book = quote_workbook(*q.loaded.book, *q.loaded.job, q.estimated, q.work, q.quote, q.loaded.diagnostics);
    const ScratchFolder folder;
    write_xlsx(book, folder.path / "later.xlsx");
    const std::string text = dump(book);
    hold_rows(book);
    write_xlsx(book, folder.path / "held.xlsx");
    CHECK(text == dump(book));
    CHECK(test::file_text(folder.path / "later.xlsx") == test::file_text(folder.path / "held.xlsx"));
  }
}
