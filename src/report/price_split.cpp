#include "report/price_split.hpp"

#include <fmt/format.h>

#include "quote/price_split.hpp"

namespace seambook {
namespace {

/// The unit price's share up to the line in `last`, rounded: `ROUND(Cost!B30*SUM($J$5:$J$7)/SUM($J$5:$J$9),2)`.
std::string running(const SplitLines& lines, std::uint32_t last, const std::string& price, int digits) {
  const auto sum_to = [&](std::uint32_t row) {
    return fmt::format("SUM({}:{})", cell_name(lines.first_row, lines.cost_column, true),
                       cell_name(row, lines.cost_column, true));
  };
  const auto end = lines.first_row + static_cast<std::uint32_t>(lines.costs.size()) - 1;
  return fmt::format("ROUND({}*{}/{},{})", price, sum_to(last), sum_to(end), digits);
}

}  // namespace

std::uint32_t put_price_split(Sheet& sheet, std::uint32_t row, const RateBook& book, const Quote& quote,
                              const CostPage& cost, const SplitLines& lines) {
  put(sheet, row, 0, "unit price by weldment", Look::heading);
  const auto count = static_cast<std::uint32_t>(lines.costs.size());
  const std::uint32_t first = row + 1, total = first + count;
  for (std::uint32_t i = 0; i < count; ++i) put(sheet, first + i, 0, lines.words[i]);
  put(sheet, total, 0, "together", Look::total);
  for (std::size_t q = 0; q < quote.prices.size(); ++q) {
    const auto column = static_cast<std::uint16_t>(1 + q);
    const QuotePrice& of = quote.prices[q];
    put(sheet, row, column, fmt::format("for {} ({})", of.quantity, book.currency), Look::heading);
    const std::string price =
        fmt::format("{}!{}", cost_sheet,
                    cell_name(cost.unit_price_row, static_cast<std::uint16_t>(cost.first_quantity_column + q)));
    const std::vector<double> parts = split_price(of.figures.unit_price.si, lines.costs, book.minor_digits);
    for (std::uint32_t i = 0; i < count; ++i) {
      std::string text = running(lines, lines.first_row + i, price, book.minor_digits);
      if (i > 0) text += "-" + running(lines, lines.first_row + i - 1, price, book.minor_digits);
      put_formula(sheet, first + i, column, {text, parts[i]}, 2);
    }
    put_formula(
        sheet, total, column,
        {fmt::format("SUM({}:{})", cell_name(first, column), cell_name(total - 1, column)), of.figures.unit_price.si},
        2, Look::total);
  }
  put(sheet, total + 1, 0, "by share of the cost of a piece; rounded running totals, each less the one before",
      Look::note);
  sheet.merges.push_back({total + 1, 0, 6});
  return total + 4;
}

}  // namespace seambook
