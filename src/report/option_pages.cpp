#include "report/option_pages.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "report/weldment_sums.hpp"

namespace seambook {
namespace {

Cell& cell_at(Sheet& sheet, std::uint32_t row, std::uint16_t column) {
  return *std::find_if(sheet.cells.begin(), sheet.cells.end(),
                       [&](const Cell& cell) { return cell.row == row && cell.column == column; });
}

void rename_in(std::vector<Cell>& cells, const std::map<std::string, std::string>& names) {
  for (Cell& cell : cells)
    if (auto* formula = std::get_if<Formula>(&cell.content)) formula->text = with_sheets_renamed(formula->text, names);
}

void rename(std::vector<Sheet>& sheets, std::size_t option) {
  std::map<std::string, std::string> names;
  for (Sheet& sheet : sheets) {
    const std::string name = fmt::format("Option {} {}", option + 1, sheet.name);
    names[sheet.name] = name;
    sheet.name = name;
  }
  for (Sheet& sheet : sheets) {
    rename_in(sheet.cells, names);
    sheet.later.make = [make = std::move(sheet.later.make), names](std::size_t block, std::vector<Cell>& cells) {
      std::vector<Cell> made;
      make(block, made);
      rename_in(made, names);
      std::move(made.begin(), made.end(), std::back_inserter(cells));
    };
  }
}

/// An option is priced for the job's quantities, wherever they are changed.
void link_quantities(const JobPages& of, const CostPage& option, Sheet& sheet) {
  for (std::size_t q = 0; q < of.job.quantities.size(); ++q) {
    const auto column = static_cast<std::uint16_t>(option.first_quantity_column + q);
    const auto from = static_cast<std::uint16_t>(of.cost.first_quantity_column + q);
    Cell& cell = cell_at(sheet, option.quantity_row, column);
    cell.content = Formula{fmt::format("{}!{}", cost_sheet, cell_name(of.cost.quantity_row, from)),
                           static_cast<double>(of.job.quantities[q])};
    cell.look = Look::figure;
  }
  const auto of_quantity = [&](const auto& x) { return x.row == option.quantity_row; };
  std::erase_if(sheet.validations, of_quantity);
  std::erase_if(sheet.live, of_quantity);
}

/// Takes off each kind of cost what the weldments that are left out cost in a piece of the job.
void take_out(const JobPages& of, const std::vector<std::size_t>& weldments, Sheet& sheet) {
  for (const std::size_t w : weldments) {
    const auto sums = weldment_sums(of.pages, of.job, w);
    for (std::uint32_t k = 0; k < cost_kinds; ++k) {
      if (sums[k] == "0") continue;
      auto& formula = std::get<Formula>(cell_at(sheet, cost_at::first_kind + k, cost_at::each).content);
      formula.text += fmt::format("-({})", sums[k]);
    }
  }
}

bool token_begins(const std::string& formula, std::size_t at) {
  if (at == 0) return true;
  const char before = formula[at - 1];
  return !std::isalnum(static_cast<unsigned char>(before)) && before != '_' && before != '\'' && before != '!';
}

}  // namespace

std::string with_sheets_renamed(const std::string& formula, const std::map<std::string, std::string>& names) {
  std::string out;
  bool in_text = false;
  for (std::size_t at = 0; at < formula.size();) {
    if (formula[at] == '"') in_text = !in_text;
    const auto named = std::find_if(names.begin(), names.end(), [&](const auto& name) {
      return !in_text && token_begins(formula, at) &&
             formula.compare(at, sheet_reference(name.first).size() + 1, sheet_reference(name.first) + "!") == 0;
    });
    if (named == names.end()) {
      out += formula[at++];
      continue;
    }
    out += sheet_reference(named->second) + "!";
    at += sheet_reference(named->first).size() + 1;
  }
  return out;
}

OptionPages option_pages(const JobPages& of, const PricedOption& priced, std::size_t option, const SharedCells& rates) {
  const Job& part = of.job.options[option].part;
  SharedCells shared = rates;
  add_weldment_counts(shared, part);
  JointPages joints = joint_pages(of.book, part, shared);
  WeldmentPage weldments = weldment_page(of.book, part, shared);
  SequencePage sequence = sequence_page(of.book, part, priced.work, priced.quote, shared);
  JobWorkPage work = job_work_page(of.book, part, shared);
  OptionPages out;
  out.cost = cost_page(of.book, part, priced.quote, {joints, weldments, sequence, work}, shared);
  out.sheets.push_back(std::move(out.cost.sheet));
  if (!part.joints.empty())
    for (Sheet& sheet : joints.sheets) out.sheets.push_back(std::move(sheet));
  out.sheets.push_back(std::move(weldments.sheet));
  if (!part.work.empty()) out.sheets.push_back(std::move(work.sheet));
  if (!part.joints.empty()) out.sheets.push_back(std::move(sequence.sheet));
  rename(out.sheets, option);
  link_quantities(of, out.cost, out.sheets.front());
  take_out(of, of.job.options[option].leaves_out, out.sheets.front());
  out.cost.sheet.name = out.sheets.front().name;
  return out;
}

}  // namespace seambook
