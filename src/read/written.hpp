// Values as the author wrote them, typed and placed; names are still names and silence is still silence.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "basics/diagnostics.hpp"
#include "basics/units.hpp"
#include "read/boxed.hpp"
#include "text/clock_words.hpp"
#include "text/unit_words.hpp"

namespace seambook {

/// A quantity in SI with its place; `unit` as spelled, `currency` (ISO 4217) when the unit holds money, `key` that it
/// stands behind.
template <Dim D>
struct Written {
  Quantity<D> value;
  Place place;
  std::string unit, currency;
  std::string_view key = {};  // a literal of the tables of fields
};
template <Dim D>
using Maybe = Boxed<Written<D>>;

struct Word {
  std::string text;
  Place place;
};
struct Whole {
  std::int64_t value = 0;
  Place place;
  std::string_view key = {};  // as of Written
};
struct Flag {
  bool value = false;
  Place place;
};
/// One of the words that a field may hold, as its position among them.
struct Chosen {
  std::size_t at = 0;
  Place place;
};
struct WrittenDate {
  Date value;
  Place place;
};
/// A time of day, from midnight.
struct WrittenClock {
  std::chrono::minutes value{0};
  Place place;
};
/// A day with a time of it.
struct WrittenMoment {
  Moment value;
  Place place;
};
/// A day, with a time of it where one was stated.
struct WrittenDay {
  Date date;
  std::optional<std::chrono::minutes> at;
  Place place;
};
/// `[low, high]`, or one value for both ends. (Their places do not tell: two values may share the cell of a take-off.)
template <Dim D>
struct Span {
  Written<D> low, high;
  bool one_value = false;
};
template <Dim D>
using MaybeSpan = Boxed<Span<D>>;

/// What an entry of the rate book rests on.
enum class Basis : std::uint8_t { published, common_practice, assumption };
struct Evidence {
  std::optional<Basis> basis;  // `basis: published | common practice | assumption`
  std::optional<Word> source;  // `source:` in words
  Maybe<dim::ratio> range;     // how far the entry's figures may lie off, either way
};

}  // namespace seambook
