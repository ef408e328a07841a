// Words of the trade that stand in both kinds of file: processes, positions, welds, groups.
#include <array>

#include "resolve/rate_book.hpp"

namespace seambook {
namespace {

struct TradeWordPair {
  std::string_view word, code;
};

// ISO 4063:2023 numbers with the letters of AWS A3.0.
constexpr TradeWordPair process_words[] = {
    {"111", "111"},  {"SMAW", "111"},   {"114", "114"}, {"FCAW-S", "114"}, {"121", "121"}, {"SAW", "121"},
    {"131", "131"},  {"MIG", "131"},    {"135", "135"}, {"GMAW", "135"},   {"MAG", "135"}, {"136", "136"},
    {"FCAW", "136"}, {"FCAW-G", "136"}, {"138", "138"}, {"GMAW-C", "138"}, {"141", "141"}, {"GTAW", "141"},
    {"TIG", "141"},  {"15", "15"},      {"PAW", "15"},  {"521", "521"},    {"LBW", "521"},
};

constexpr std::string_view iso_positions[] = {"PA", "PB", "PC", "PD", "PE", "PF", "PG", "PH", "PJ", "H-L045", "J-L045"};

// AWS A3.0 test positions by the ISO 6947 position that they are.
constexpr TradeWordPair aws_fillets[] = {{"1F", "PA"}, {"2F", "PB"}, {"3F", "PF"}, {"4F", "PD"}};
constexpr TradeWordPair aws_grooves[] = {{"1G", "PA"}, {"2G", "PC"}, {"3G", "PF"},
                                         {"4G", "PE"}, {"5G", "PH"}, {"6G", "H-L045"}};

template <class Pairs>
std::string code_for(const Pairs& pairs, std::string_view word) {
  for (const TradeWordPair& pair : pairs)
    if (pair.word == word) return std::string(pair.code);
  return {};
}

/// The first AWS word for a code; the code itself when there is none.
template <class Pairs>
std::string first_word_for(const Pairs& pairs, std::string_view code) {
  for (const TradeWordPair& pair : pairs)
    if (pair.code == code && pair.word != code) return std::string(pair.word);
  return std::string(code);
}

}  // namespace

std::string process_number(std::string_view word) { return code_for(process_words, word); }

std::string position_code(std::string_view word, WeldKind weld) {
  for (const std::string_view position : iso_positions)
    if (position == word) return std::string(word);
  return weld == WeldKind::fillet ? code_for(aws_fillets, word) : code_for(aws_grooves, word);
}

std::string process_word(std::string_view number, Terms terms) {
  if (terms == Terms::iso) return std::string(number);
  return number == "131" ? "GMAW" : first_word_for(process_words, number);  // AWS has one word whatever the gas
}

std::string position_word(std::string_view code, WeldKind weld, Terms terms) {
  if (terms == Terms::iso) return std::string(code);
  return weld == WeldKind::fillet ? first_word_for(aws_fillets, code) : first_word_for(aws_grooves, code);
}

std::string gas_group(std::string_view designation) {
  constexpr std::string_view standard = "14175";
  const std::size_t at = designation.find(standard);
  if (at == designation.npos) return {};
  const auto is_capital = [](char c) { return c >= 'A' && c <= 'Z'; };
  const auto is_figure = [](char c) { return c >= '0' && c <= '9'; };
  std::size_t from = at + standard.size();
  while (from < designation.size() && (designation[from] == ' ' || designation[from] == '-')) ++from;
  if (from == designation.size() || !is_capital(designation[from])) return {};
  std::size_t end = from + 1;
  while (end < designation.size() && is_figure(designation[end])) ++end;
  return std::string(designation.substr(from, end - from));
}

std::string_view role_word(PassRole role) {
  switch (role) {
    case PassRole::root:
      return "root";
    case PassRole::fill:
      return "fill";
    case PassRole::cap:
      return "cap";
    case PassRole::back:
      break;
  }
  return "back";
}

int bevelled_edges(WeldKind weld) {
  if (!is_groove(weld)) return 0;
  return (is_one_flank(weld) ? 1 : 2) * (is_double(weld) ? 2 : 1);
}

bool group_admits(std::string_view admitted, std::string_view group) {
  if (!group.starts_with(admitted)) return false;
  return group.size() == admitted.size() || group[admitted.size()] == '.';
}

}  // namespace seambook
