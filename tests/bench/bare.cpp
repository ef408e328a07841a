// What the libraries take for a run's input and output alone; ratios.py measures runs against it.
//   bare events FILE         the parser's events of a YAML file
//   bare cells LIST RESULT   a workbook with the cells of LIST, and the processor seconds of writing it. Its lines: a
//   tab
//                            before a sheet's name; else kind (n, s, f), row, column and what the cell holds with tabs
//                            between, of a formula its value and its text
#include <xlsxwriter.h>

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "bare_events.hpp"

namespace {

int events(const char* path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return 1;
  read_bare_events({std::istreambuf_iterator<char>(file), {}});
  return 0;
}

std::vector<const char*> fields_of(char* line) {
  std::vector<const char*> fields = {line};
  for (char* at = line; (at = std::strchr(at, '\t')) != nullptr;) *at++ = '\0', fields.push_back(at);
  return fields;
}

void write_cell(lxw_worksheet* page, const std::vector<const char*>& cell, lxw_format* format) {
  const auto row = static_cast<lxw_row_t>(std::strtoul(cell[1], nullptr, 10));
  const auto column = static_cast<lxw_col_t>(std::strtoul(cell[2], nullptr, 10));
  if (*cell[0] == 'n') {
    worksheet_write_number(page, row, column, std::strtod(cell[3], nullptr), format);
  } else if (*cell[0] == 's') {
    worksheet_write_string(page, row, column, cell[3], format);
  } else {
    char* end = nullptr;
    const double value = std::strtod(cell[3], &end);
    if (*end == '\0' && *cell[3] != '\0')
      worksheet_write_formula_num(page, row, column, cell[4], format, value);
    else
      worksheet_write_formula_str(page, row, column, cell[4], format, cell[3]);
  }
}

/// The list is read before the clock starts.
int cells(const char* list, const char* result) {
  std::ifstream file(list, std::ios::binary);
  std::string text{std::istreambuf_iterator<char>(file), {}};
  std::vector<std::vector<const char*>> lines;
  for (char* line = std::strtok(text.data(), "\n"); line != nullptr; line = std::strtok(nullptr, "\n"))
    lines.push_back(fields_of(line));
  const std::clock_t began = std::clock();
  lxw_workbook_options options{};
  options.constant_memory = LXW_TRUE;  // its faster way
  lxw_workbook* book = workbook_new_opt(result, &options);
  if (book == nullptr) return 1;
  lxw_format* format = workbook_add_format(book);
  format_set_num_format(format, "0.00");
  lxw_worksheet* page = nullptr;
  for (const auto& line : lines) {
    if (*line[0] == '\0')
      page = workbook_add_worksheet(book, line[1]);
    else if (page != nullptr)
      write_cell(page, line, format);
  }
  if (workbook_close(book) != LXW_NO_ERROR) return 1;
  std::printf("%.3f\n", static_cast<double>(std::clock() - began) / CLOCKS_PER_SEC);
  return 0;
}

}  // namespace

int main(int count, char** words) {
  const std::string_view what = count > 1 ? words[1] : "";
  if (what == "events" && count == 3) return events(words[2]);
  if (what == "cells" && count == 4) return cells(words[2], words[3]);
  std::fputs("bare events FILE | bare cells LIST RESULT\n", stderr);
  return 2;
}
