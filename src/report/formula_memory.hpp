// Formulas of records that differ in nothing but their row and their numbers: made once, with a gap for the row. Most
// rows of a large page are such.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "report/cells.hpp"

namespace seambook {

/// For the records of one table as seen from one sheet.
class FormulaMemory {
 public:
  /// Looks up, or begins to remember, what records like this one read. `row`: where its labels' row 0 stands.
  void begin(const Tape&, const Table&, const SharedCells&, std::string sheet, std::uint32_t row);
  /// The formula of `node` of the record begun last, as report/cells.hpp refers to cells.
  std::string formula(std::uint32_t node, const Unit&);

 private:
  struct Kept {
    std::vector<std::optional<std::string>> texts;  // by node, with gaps
  };
  std::unordered_map<std::string, Kept> known_;
  std::string key_;
  Kept* at_ = nullptr;
  const Tape* tape_ = nullptr;
  const Table* table_ = nullptr;
  const SharedCells* shared_ = nullptr;
  std::string sheet_;
  std::uint32_t row_ = 0;
};

}  // namespace seambook
