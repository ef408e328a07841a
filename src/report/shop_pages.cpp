#include "report/shop_pages.hpp"

namespace seambook {
namespace {

std::string column_sum(const Table& table, const Figure& figure, std::uint32_t last_row) {
  const auto at = table.columns.find(&figure);
  if (at == table.columns.end() || last_row < table.first_row) return {};
  return sum_of(at->second.sheet, at->second.column, table.first_row, last_row);
}

}  // namespace

std::string joint_sum(const ShopPages& pages, const Figure& figure) {
  return column_sum(pages.joints.table, figure, pages.joints.last_row);
}

std::string weldment_sum(const ShopPages& pages, const Figure& figure) {
  return column_sum(pages.weldments.table, figure, pages.weldments.last_row);
}

std::string setup_sum(const ShopPages& pages, const Figure& figure) {
  return column_sum(pages.sequence.table, figure, pages.sequence.last_row);
}

std::string together(std::initializer_list<std::string> parts) {
  std::string text;
  for (const std::string& part : parts) {
    if (part.empty()) continue;
    text += (text.empty() ? "" : "+") + part;
  }
  return text.empty() ? "0" : text;
}

}  // namespace seambook
