// Any text as an amount, a count and a date: what is read is finite and not negative, what is not has its reason.
// The first byte chooses the expected quantity.
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <iterator>

#include "text/unit_words.hpp"

namespace {

using namespace seambook;

constexpr Dim dimensions[] = {dim::length,
                              dim::area,
                              dim::volume,
                              dim::mass,
                              dim::time,
                              dim::current,
                              dim::voltage,
                              dim::temperature,
                              dim::angle,
                              dim::speed,
                              dim::density,
                              dim::linear_mass,
                              dim::mass_rate,
                              dim::flow,
                              dim::energy,
                              dim::power,
                              dim::line_energy,
                              dim::pace,
                              dim::ratio,
                              dim::money,
                              dim::money_per_time,
                              dim::money_per_mass,
                              dim::money_per_volume,
                              dim::money_per_energy,
                              dim::money_per_length};

void require(bool holds) {
  if (!holds) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const Dim expected = dimensions[data[0] % std::size(dimensions)];
  const std::string text(reinterpret_cast<const char*>(data) + 1, size - 1);
  const AmountRead amount = read_amount(text, expected, {});
  require(amount.amount.has_value() == amount.problem.empty());
  if (amount.amount) {
    require(std::isfinite(amount.amount->si) && amount.amount->si >= 0);
    require(amount.amount->currency.empty() == (expected.money == 0));
  }
  const CountRead count = read_count(text);
  require(count.count.has_value() == count.problem.empty());
  require(!count.count || (*count.count >= 0 && *count.count <= 1'000'000'000));
  const DateRead date = read_date(text);
  require(date.date.has_value() == date.problem.empty());
  require(!date.date || read_date(iso(*date.date)).date == date.date);
  return 0;
}
