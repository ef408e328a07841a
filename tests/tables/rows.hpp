// Counts the rows of published tables as they are checked, so that none is lost: each table prints how many ran, and
// the last test of the folder holds the counts against what the publications show.
#pragma once

#include <doctest/doctest.h>

#include <map>
#include <string>

#include "inch_units.hpp"

namespace tables {

/// Rows run so far in this program, by table. Shared by the files of this folder: the test framework keeps no count.
inline std::map<std::string, int>& rows_run() {
  static std::map<std::string, int> counts;
  return counts;
}

class Rows {
 public:
  explicit Rows(std::string table) : table_(std::move(table)) {}
  Rows(const Rows&) = delete;
  Rows& operator=(const Rows&) = delete;
  ~Rows() {
    rows_run()[table_] += count_;
    MESSAGE(table_ << ": " << count_ << " rows");
  }
  /// One row: `found` by the formulas of the trade, `printed` by the source, to its rounding.
  void check(const std::string& row, double found, double printed, double tolerance) {
    ++count_;
    CHECK_MESSAGE(within(found, printed, tolerance), table_ << ", " << row << ": " << found << ", printed " << printed);
  }

 private:
  std::string table_;
  int count_ = 0;
};

}  // namespace tables
