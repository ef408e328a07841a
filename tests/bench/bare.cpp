// What the libraries take for a run's input and output alone; ratios.py measures runs against it.
//   bare events FILE         the parser's events of a YAML file
//   bare cells LIST RESULT   a workbook with the cells of LIST: a line `rows columns kind` for each sheet, the kind one
//   of
//                            number, string, formula
#include <xlsxwriter.h>

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

#include "bare_events.hpp"

namespace {

int events(const char* path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return 1;
  read_bare_events({std::istreambuf_iterator<char>(file), {}});
  return 0;
}

void write_cell(lxw_worksheet* page, std::string_view kind, lxw_row_t row, lxw_col_t column, lxw_format* format) {
  const double value = row * 1.0625 + column / 7.0;
  if (kind == "number") {
    worksheet_write_number(page, row, column, value, format);
  } else if (kind == "string") {
    worksheet_write_string(page, row, column, ("frame-" + std::to_string(row % 500)).c_str(), format);
  } else {
    const std::string at = std::to_string(row + 1);
    worksheet_write_formula_num(page, row, column, ("=A" + at + "*B" + at + "/60+C" + at).c_str(), format, value);
  }
}

/// A sheet for each line.
int cells(const char* list, const char* result) {
  std::ifstream file(list);
  lxw_workbook* book = workbook_new(result);
  if (!file || book == nullptr) return 1;
  lxw_format* format = workbook_add_format(book);
  format_set_num_format(format, "0.00");
  std::string kind;
  lxw_row_t rows = 0;
  lxw_col_t columns = 0;
  while (file >> rows >> columns >> kind) {
    lxw_worksheet* page = workbook_add_worksheet(book, nullptr);
    for (lxw_row_t row = 0; row < rows; ++row)
      for (lxw_col_t column = 0; column < columns; ++column) write_cell(page, kind, row, column, format);
  }
  return workbook_close(book) == LXW_NO_ERROR ? 0 : 1;
}

}  // namespace

int main(int count, char** words) {
  const std::string_view what = count > 1 ? words[1] : "";
  if (what == "events" && count == 3) return events(words[2]);
  if (what == "cells" && count == 4) return cells(words[2], words[3]);
  std::fputs("bare events FILE | bare cells LIST RESULT\n", stderr);
  return 2;
}
