#include "report/xlsx_rules.hpp"

#include <fmt/format.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <stdexcept>

#include "report/xlsx_checks.hpp"
#include "report/xlsx_errors.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_rules = 255;  // the library counts them in a byte

struct RuleRange {
  Validation rule;
  std::uint32_t last_row = 0;
};

std::vector<RuleRange> joined_rules(std::vector<Validation> rules) {
  std::ranges::stable_sort(rules, {}, [](const Validation& rule) { return std::pair(rule.column, rule.row); });
  std::vector<RuleRange> ranges;
  // Cells between that have no rule are no inputs: locked, it does not matter that the range covers them.
  for (const Validation& rule : rules) {
    if (!ranges.empty() && same_rule(ranges.back().rule, rule)) {
      ranges.back().last_row = std::max(rule.row, rule.last_row);
    } else {
      ranges.push_back({rule, std::max(rule.row, rule.last_row)});
    }
  }
  return ranges;
}

std::uint8_t kind_of_rule(const Validation& rule) {
  if (rule.anything) return LXW_VALIDATION_TYPE_ANY;
  if (!rule.choices.empty()) return LXW_VALIDATION_TYPE_LIST;
  return rule.whole ? LXW_VALIDATION_TYPE_INTEGER : LXW_VALIDATION_TYPE_DECIMAL;
}

std::string message_of(const Validation& rule) {
  if (!rule.message.empty()) return escaped_text(rule.message);
  return fmt::format("{} from {} to {}.", rule.whole ? "A whole number" : "A number", rule.minimum, rule.maximum);
}

void add_rule(lxw_worksheet* page, std::uint32_t last_row, Validation rule) {
  std::string message = message_of(rule), title = "Not admitted";
  std::vector<char*> choices;
  choices.reserve(rule.choices.size() + 1);
  for (std::string& choice : rule.choices) choices.push_back(choice.data());
  choices.push_back(nullptr);
  lxw_data_validation validation{};
  validation.validate = kind_of_rule(rule);
  validation.criteria = LXW_VALIDATION_CRITERIA_BETWEEN;
  validation.ignore_blank = rule.or_empty ? LXW_VALIDATION_ON : LXW_VALIDATION_OFF;
  validation.minimum_number = rule.minimum;
  validation.maximum_number = rule.maximum;
  if (!rule.choices.empty()) validation.value_list = choices.data();
  validation.input_message = message.data();
  validation.error_title = title.data();
  validation.error_message = message.data();
  must(worksheet_data_validation_range(page, rule.row, rule.column, last_row, rule.column, &validation));
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
  for (const RuleRange& range : ranges) add_rule(page, range.last_row, range.rule);
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
