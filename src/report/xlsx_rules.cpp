#include "report/xlsx_rules.hpp"

#include <fmt/format.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <stdexcept>
#include <tuple>

#include "report/xlsx_checks.hpp"
#include "report/xlsx_errors.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_rules = 255;  // the library counts them in a byte

struct RuleRange {
  Validation rule;
  std::uint32_t last_row = 0;
};

bool continues_range(const RuleRange& range, const Validation& next) {
  const auto terms = [](const Validation& v) { return std::tie(v.column, v.minimum, v.maximum, v.whole, v.message); };
  return next.row == range.last_row + 1 && terms(range.rule) == terms(next);
}

std::vector<RuleRange> joined_rules(std::vector<Validation> rules) {
  std::ranges::stable_sort(rules, {}, [](const Validation& rule) { return std::pair(rule.column, rule.row); });
  std::vector<RuleRange> ranges;
  for (const Validation& rule : rules) {
    if (!ranges.empty() && continues_range(ranges.back(), rule)) {
      ranges.back().last_row = rule.row;
    } else {
      ranges.push_back({rule, rule.row});
    }
  }
  return ranges;
}

}  // namespace

void add_validations(lxw_worksheet* page, const Sheet& sheet) {
  auto ranges = joined_rules(sheet.validations);
  if (ranges.size() > most_rules) {  // without words of their own, more of them are equal
    std::vector<Validation> wordless = sheet.validations;
    for (Validation& rule : wordless) rule.message.clear();
    ranges = joined_rules(std::move(wordless));
  }
  if (ranges.size() > most_rules) throw std::invalid_argument(sheet.name + ": more than 255 different input rules");
  for (const auto& [rule, last_row] : ranges) {
    std::string message = escaped_text(rule.message), title = "Not admitted";
    if (message.empty()) {
      message =
          fmt::format("{} from {} to {}.", rule.whole ? "A whole number" : "A number", rule.minimum, rule.maximum);
    }
    lxw_data_validation validation{};
    validation.validate = rule.whole ? LXW_VALIDATION_TYPE_INTEGER : LXW_VALIDATION_TYPE_DECIMAL;
    validation.criteria = LXW_VALIDATION_CRITERIA_BETWEEN;
    validation.ignore_blank = LXW_VALIDATION_OFF;
    validation.minimum_number = rule.minimum;
    validation.maximum_number = rule.maximum;
    validation.input_message = message.data();
    validation.error_title = title.data();
    validation.error_message = message.data();
    must(worksheet_data_validation_range(page, rule.row, rule.column, last_row, rule.column, &validation));
  }
}

void add_highlights(Looks& looks, lxw_worksheet* page, const Sheet& sheet) {
  for (const Highlight& rule : sheet.highlights) {
    std::string formula = "=" + rule.formula;
    lxw_conditional_format condition{};
    condition.type = LXW_CONDITIONAL_TYPE_FORMULA;
    condition.value_string = formula.data();
    condition.format = highlight_format(looks);
    must(worksheet_conditional_format_range(page, rule.first_row, rule.first_column, rule.last_row, rule.last_column,
                                            &condition));
  }
}

void protect(lxw_worksheet* page) {
  lxw_protection allowed{};
  allowed.format_columns = LXW_TRUE;
  allowed.format_rows = LXW_TRUE;
  worksheet_protect(page, nullptr, &allowed);
}

}  // namespace seambook
