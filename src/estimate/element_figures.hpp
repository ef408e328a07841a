// The figures of labour elements: minutes of each, and for each what it is counted by the number that it is counted
// with. Their names are put together from the words of the rate book, so that a thing has one name everywhere.
#pragma once

#include <array>
#include <string_view>

#include "read/labour_text.hpp"
#include "resolve/labour_book.hpp"
#include "trace/figure.hpp"

namespace seambook {

namespace element_detail {

inline constexpr std::size_t longest = 64;
using Text = std::array<char, longest>;

constexpr Text joined_text(std::string_view a, std::string_view b, std::string_view c, bool spaced) {
  Text out{};
  std::size_t at = 0;
  for (const std::string_view part : {a, b, c})
    for (const char x : part) out[at++] = spaced && x == '_' ? ' ' : x;
  return out;
}

constexpr Unit unit_of(Driver per) {
  if (per == Driver::share) return unit::percent;
  if (per == Driver::kg) return unit::min_per_kg;
  return per >= Driver::metre && per <= Driver::pass_metre ? unit::min_per_m : unit::min;
}

struct Names {
  Text key{}, words{};
};
using OfKinds = std::array<Names, labour_kinds>;
using OfDrivers = std::array<std::array<Names, driver_kinds>, labour_kinds>;

constexpr OfKinds result_names() {
  OfKinds names{};
  for (std::size_t k = 0; k < labour_kinds; ++k)
    names[k] = {joined_text(element_words[k], "_time", "", false), joined_text(element_words[k], "", "", true)};
  return names;
}
/// What waits while another element works is told apart from it; the element of waiting says so itself.
constexpr OfDrivers term_names(bool of_work) {
  OfDrivers names{};
  for (std::size_t k = 0; k < labour_kinds; ++k) {
    const bool plain = of_work || k == static_cast<std::size_t>(LabourKind::waiting);
    const std::string_view between = plain ? "_per_" : "_wait_per_";
    for (std::size_t d = 0; d < driver_kinds; ++d)
      names[k][d] = {joined_text(element_words[k], between, driver_words[d], false),
                     joined_text(element_words[k], between, driver_words[d], true)};
  }
  return names;
}

inline constexpr OfKinds results = result_names();
inline constexpr OfDrivers work_terms = term_names(true), waiting_terms = term_names(false);

constexpr std::array<Figure, labour_kinds> result_figures() {
  std::array<Figure, labour_kinds> figures{};
  for (std::size_t k = 0; k < labour_kinds; ++k)
    figures[k] = {results[k].key.data(), results[k].words.data(), unit::min, 2, "what it is counted by × its minutes"};
  return figures;
}
constexpr std::array<std::array<Figure, driver_kinds>, labour_kinds> term_figures(const OfDrivers& names) {
  std::array<std::array<Figure, driver_kinds>, labour_kinds> figures{};
  for (std::size_t k = 0; k < labour_kinds; ++k)
    for (std::size_t d = 0; d < driver_kinds; ++d)
      figures[k][d] = {names[k][d].key.data(), names[k][d].words.data(), unit_of(static_cast<Driver>(d)), 2};
  return figures;
}

inline constexpr auto attended_figures = term_figures(work_terms);
inline constexpr auto waiting_figures = term_figures(waiting_terms);

}  // namespace element_detail

namespace fig {

/// Minutes of an element, for a joint or a weldment.
inline constexpr std::array<Figure, labour_kinds> element_min = element_detail::result_figures();
inline constexpr Figure waiting_min{"waiting_time", "waiting, unattended", unit::min, 1,
                                    "sum of what waits; nobody is charged for it"};
inline constexpr Figure factor_min{"factor_time", "by operating factor", unit::min, 2,
                                   "arc time / operating factor, which covers what the rate book says"};
inline constexpr Figure multiple{"repair_multiple", "a repair in first-time welds", unit::none, 1};
inline constexpr Figure operating_factor{"operating_factor", "operating factor", unit::percent, 1};
inline constexpr std::array<Figure, 5> extents = {{{"visual_extent", "VT extent", unit::percent, 0},
                                                   {"penetrant_extent", "PT extent", unit::percent, 0},
                                                   {"magnetic_extent", "MT extent", unit::percent, 0},
                                                   {"ultrasonic_extent", "UT extent", unit::percent, 0},
                                                   {"radiographic_extent", "RT extent", unit::percent, 0}}};

constexpr const Figure& element_input(LabourKind kind, Driver per, bool worked) {
  const auto& of = worked ? element_detail::attended_figures : element_detail::waiting_figures;
  return of[static_cast<std::size_t>(kind)][static_cast<std::size_t>(per)];
}
constexpr const Figure& extent_of(LabourKind kind) {
  return extents[static_cast<std::size_t>(kind) - static_cast<std::size_t>(LabourKind::visual_inspection)];
}

}  // namespace fig
}  // namespace seambook
