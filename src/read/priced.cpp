#include "read/priced.hpp"

#include "text/number_words.hpp"

namespace seambook {
namespace {

struct ScalingWord {
  std::string_view word;
  Scaling scaling;
};
constexpr ScalingWord scaling_words[] = {
    {"each", Scaling::each}, {"per lot", Scaling::per_lot}, {"once", Scaling::once}};

}  // namespace

bool read_priced(Reading& reading, Value value, const FieldInfo& info, BoughtText& bought) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return false;
  const std::string_view text = without_blanks_around(value.text());
  for (const ScalingWord& known : scaling_words) {
    if (!text.ends_with(known.word)) continue;
    const std::string_view money = without_blanks_around(text.substr(0, text.size() - known.word.size()));
    Maybe<dim::money> price = written_of<dim::money>(reading, money, value.place(), info);
    if (!price) return false;
    bought.price = std::move(*price);
    bought.scaling = known.scaling;
    return true;
  }
  refuse_value(reading, value.place(), info, quoted(text) + " does not say how it grows with the quantity",
               "end it with 'each', 'per lot' or 'once'");
  return false;
}

}  // namespace seambook
