// Rows of the tables of fields: the key and its description are written down, what the value looks like and how it is
// read follow from the member that it fills.
#pragma once

#include "read/fields.hpp"
#include "read/known_words.hpp"

namespace seambook {

template <class T>
struct ShapeOf {};
template <>
struct ShapeOf<Word> {
  static constexpr FieldInfo info{};
};
template <>
struct ShapeOf<std::optional<Word>> {
  static constexpr FieldInfo info{};
};
template <>
struct ShapeOf<std::vector<Word>> {
  static constexpr FieldInfo info{.shape = Shape::words};
};
template <>
struct ShapeOf<std::optional<Whole>> {
  static constexpr FieldInfo info{.shape = Shape::count};
};
template <>
struct ShapeOf<std::vector<Whole>> {
  static constexpr FieldInfo info{.shape = Shape::counts};
};
template <>
struct ShapeOf<std::optional<Flag>> {
  static constexpr FieldInfo info{.shape = Shape::flag};
};
template <>
struct ShapeOf<std::optional<WrittenDate>> {
  static constexpr FieldInfo info{.shape = Shape::date};
};
template <>
struct ShapeOf<std::vector<WrittenDate>> {
  static constexpr FieldInfo info{.shape = Shape::dates};
};
template <>
struct ShapeOf<std::optional<WrittenClock>> {
  static constexpr FieldInfo info{.shape = Shape::clock};
};
template <>
struct ShapeOf<std::optional<WrittenMoment>> {
  static constexpr FieldInfo info{.shape = Shape::moment};
};
template <>
struct ShapeOf<std::optional<WrittenDay>> {
  static constexpr FieldInfo info{.shape = Shape::day};
};
template <>
struct ShapeOf<std::optional<Chosen>> {
  static constexpr FieldInfo info{};
};
template <>
struct ShapeOf<std::optional<Basis>> {
  static constexpr FieldInfo info{.choices = basis_words};
};
template <>
struct ShapeOf<std::optional<PassRole>> {
  static constexpr FieldInfo info{.choices = pass_roles};
};
template <>
struct ShapeOf<BoughtKind> {
  static constexpr FieldInfo info{.choices = bought_kinds};
};
template <>
struct ShapeOf<std::vector<BoughtText>> {
  static constexpr FieldInfo info{
      .shape = Shape::priced_sections, .dim = dim::money, .may_be_zero = true, .inside = infos_of<BoughtText>};
};
template <>
struct ShapeOf<std::vector<StationText::Mounted>> {
  static constexpr FieldInfo info{.shape = Shape::named_words};
};
template <>
struct ShapeOf<std::vector<HoldText>> {
  static constexpr FieldInfo info{.shape = Shape::word_or_sections, .inside = infos_of<HoldText>};
};
template <Dim D>
struct ShapeOf<Maybe<D>> {
  static constexpr FieldInfo info{.shape = Shape::amount, .dim = D};
};
template <Dim D>
struct ShapeOf<MaybeSpan<D>> {
  static constexpr FieldInfo info{.shape = Shape::span, .dim = D};
};
template <class S>
struct ShapeOf<std::optional<S>> {
  static constexpr FieldInfo info{.shape = Shape::section, .inside = infos_of<S>};
};
template <class S>
struct ShapeOf<std::vector<S>> {
  static constexpr FieldInfo info{.shape = Shape::sections, .inside = infos_of<S>};
};

template <class S, class T>
S owner_of(T S::*);  // never defined: names the struct of a member

template <class S, class T>
constexpr T& member_of(S& of, T S::*member) {
  return of.*member;
}
template <class S, class T, class... Inner>
constexpr auto& member_of(S& of, T S::*member, Inner... inner) {
  return member_of(of.*member, inner...);
}

/// The field that fills a member, or a member of a member: `field<&JointText::defaults, &JointDefaults::finish>(...)`.
template <auto First, auto... Inner>
constexpr auto field(std::string_view key, std::string_view about) {
  using S = decltype(owner_of(First));
  using T = std::remove_cvref_t<decltype(member_of(std::declval<S&>(), First, Inner...))>;
  FieldInfo info = ShapeOf<T>::info;
  info.key = key;
  info.about = about;
  return Field<S>{info, [](Reading& reading, Value value, const FieldInfo& of, S& into) {
                    read_into(reading, value, of, member_of(into, First, Inner...));
                  }};
}

template <class S>
constexpr Field<S> required(Field<S> field) {
  field.info.required = true;
  return field;
}
template <class S>
constexpr Field<S> or_zero(Field<S> field) {
  field.info.may_be_zero = true;
  return field;
}
template <class S>
constexpr Field<S> below_whole(Field<S> field) {
  field.info.below_whole = true;
  return or_zero(field);
}
template <class S>
constexpr Field<S> rising(Field<S> field) {
  field.info.rising = true;
  return field;
}
template <class S>
constexpr Field<S> at_most(std::int64_t most, Field<S> field) {
  field.info.most = most;
  return field;
}
/// A whole number with a word behind it: `6 months`.
template <class S>
constexpr Field<S> counted_in(std::string_view word, Field<S> field) {
  field.info.counted = word;
  return field;
}
template <class S>
constexpr Field<S> chosen_from(std::span<const std::string_view> choices, Field<S> field) {
  field.info.choices = choices;
  return field;
}
/// Words that are understood, or refused, where names become meanings.
template <class S>
constexpr Field<S> known_as(std::span<const std::string_view> known, Field<S> field) {
  field.info.known = known;
  return field;
}

template <class S, std::size_t N, std::size_t M>
constexpr std::array<Field<S>, N + M> joined(const std::array<Field<S>, N>& a, const std::array<Field<S>, M>& b) {
  std::array<Field<S>, N + M> both{};
  for (std::size_t i = 0; i < N; ++i) both[i] = a[i];
  for (std::size_t i = 0; i < M; ++i) both[N + i] = b[i];
  return both;
}

}  // namespace seambook
