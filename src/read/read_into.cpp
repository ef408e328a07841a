#include "read/job_fields.hpp"
#include "read/priced.hpp"

namespace seambook {
namespace {

/// One entry of what is bought: `38 EUR each`, or `{what: plates, kind: cutting, price: 38 EUR each}`.
void read_bought(Reading& reading, Value value, const FieldInfo& info, std::vector<BoughtText>& into) {
  if (value.kind() == Kind::map) return read_fields(reading, value, into.emplace_back());
  BoughtText bought;
  bought.place = value.place();
  if (read_priced(reading, value, info, bought)) into.push_back(std::move(bought));
}

}  // namespace

void read_into(Reading& reading, Value value, const FieldInfo& info, Word& into) {
  if (std::optional<Word> word = word_at(reading, value, info)) into = std::move(*word);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<Word>& into) {
  if (into) return refuse_second(reading, value.place(), info, into->place);
  into = word_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<Whole>& into) {
  into = whole_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<Flag>& into) {
  into = flag_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<WrittenDate>& into) {
  into = date_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<WrittenDate>& into) {
  const FieldInfo entry = one_of(info, Shape::date);
  const auto add = [&](Value item) {
    if (const std::optional<WrittenDate> date = date_at(reading, item, entry)) into.push_back(*date);
  };
  if (value.kind() == Kind::scalar) return add(value);
  for (const Value item : entries_of(reading, value, info)) add(item);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<WrittenClock>& into) {
  into = clock_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<WrittenMoment>& into) {
  into = moment_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<WrittenDay>& into) {
  into = day_at(reading, value, info);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<Chosen>& into) {
  if (const std::optional<std::size_t> at = choice_at(reading, value, info)) into = Chosen{*at, value.place()};
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<Basis>& into) {
  if (const std::optional<std::size_t> at = choice_at(reading, value, info)) into = static_cast<Basis>(*at);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<PassRole>& into) {
  if (const std::optional<std::size_t> at = choice_at(reading, value, info)) into = static_cast<PassRole>(*at);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, BoughtKind& into) {
  if (const std::optional<std::size_t> at = choice_at(reading, value, info)) into = static_cast<BoughtKind>(*at);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<Word>& into) {
  if (!into.empty()) return refuse_second(reading, value.place(), info, into.front().place);
  const FieldInfo entry = one_of(info, Shape::word);
  const auto add = [&](Value item) {
    if (std::optional<Word> word = word_at(reading, item, entry)) into.push_back(std::move(*word));
  };
  if (value.kind() == Kind::scalar) return add(value);
  for (const Value item : entries_of(reading, value, info)) add(item);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<Whole>& into) {
  const FieldInfo entry = one_of(info, Shape::count);
  const auto add = [&](Value item) {
    if (std::optional<Whole> whole = whole_at(reading, item, entry)) into.push_back(*whole);
  };
  if (value.kind() == Kind::scalar) return add(value);
  for (const Value item : entries_of(reading, value, info)) add(item);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<BoughtText>& into) {
  if (value.kind() != Kind::list) return read_bought(reading, value, info, into);
  for (const Value item : entries_of(reading, value, info)) read_bought(reading, item, info, into);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<HoldText>& into) {
  const auto add = [&](Value item) {
    if (item.kind() == Kind::map) return read_fields(reading, item, into.emplace_back());
    if (std::optional<Word> what = word_at(reading, item, info))
      into.push_back({item.place(), std::move(what), {}, {}});
  };
  if (value.kind() != Kind::list) return add(value);
  for (const Value item : entries_of(reading, value, info)) add(item);
}

void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<StationText::Mounted>& into) {
  if (!expect_kind(reading, value, info, Kind::map)) return;
  for (Value key = value.first(); key; key = key.next().next()) {
    FieldInfo entry = one_of(info, Shape::word);
    entry.key = key.text();
    if (key.next().kind() == Kind::nothing)
      refuse_nothing(reading, key.place(), key.text());
    else if (std::optional<Word> word = word_at(reading, key.next(), entry))
      into.push_back({{std::string(key.text()), key.place()}, std::move(*word)});
  }
}

}  // namespace seambook
