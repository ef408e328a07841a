#include "estimate/preheat.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Above which thresholds of the rate book the joint lies, in words; empty when below.
std::string over_thresholds(const RateBook& book, const HeatFigures<double>& heat) {
  const Checks& checks = book.checks;
  std::string out;
  const Unit length = shown_in(book.terms, unit::mm).unit;
  if (checks.combined_thickness && heat.combined_thickness.si > checks.combined_thickness->si * (1 + whole_tolerance))
    out = fmt::format("combined thickness {} is more than {}", shown(heat.combined_thickness, length),
                      shown(*checks.combined_thickness, length));
  if (checks.carbon_equivalent && heat.carbon_equivalent.si > checks.carbon_equivalent->si * (1 + whole_tolerance))
    out += fmt::format("{}CE {} is more than {}", out.empty() ? "" : ", ", shown(heat.carbon_equivalent, unit::percent),
                       shown(*checks.carbon_equivalent, unit::percent));
  return out;
}

}  // namespace

std::string outside_in_words(const MethodBLimit& limit, Terms terms) {
  const Unit unit = shown_in(terms, limit.figure->unit).unit;
  return fmt::format("{} outside {} to {}", limit.figure->words, shown(limit.low, unit), shown(limit.high, unit));
}

Temperature<> room_of(const RateBook& book) {
  constexpr Temperature<> usual{20};
  return book.preheating ? Temperature<>{book.preheating->room.si.value} : usual;
}

std::string method_b_unknown(const RateBook& book, const Joint& joint, std::size_t g) {
  const HeatShape shape = heat_shape(book, joint);
  if (!shape.hardens) return {};
  const BaseMetal& metal = book.base_metals[joint.base_metal];
  if (!suits_method_b(metal.group)) return fmt::format("method B is for base-metal groups 1 to 4, not {}", metal.group);
  if (!shape.has_cet()) return fmt::format("neither CET nor composition of {} is stated", metal.name);
  const Procedure& procedure = book.procedures[joint.passes[g].procedure];
  if (procedure.beam_power.si.source != no_source) return "method B is for arcs";
  if (hydrogen_of(book, joint.passes[g]).si.source != no_source) return {};
  if (!procedure.filler) return fmt::format("no hydrogen level of procedure {} is stated", procedure.name);
  return fmt::format("no hydrogen level of filler {} is stated", book.fillers[*procedure.filler].name);
}

std::string method_b_lacks(const RateBook& book, const Joint& joint, const RowFigures<double>& row, std::size_t g) {
  if (std::string unknown = method_b_unknown(book, joint, g); !unknown.empty()) return unknown;
  const double numbers[] = {row.joint.heat.cet.si, row.joint.heat.thicker.si,
                            hydrogen_of(book, joint.passes[g]).si.value, row.passes[g].heat_input.si};
  for (std::size_t k = 0; k < method_b_limits.size(); ++k) {
    const MethodBLimit& limit = method_b_limits[k];
    if (numbers[k] < limit.low * (1 - whole_tolerance) || numbers[k] > limit.high * (1 + whole_tolerance))
      return outside_in_words(limit, book.terms);
  }
  return {};
}

AskedPreheat asked_preheat(const RateBook& book, const Joint& joint, const RowFigures<double>& row) {
  AskedPreheat out;
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    out.lacks = method_b_lacks(book, joint, row, g);
    if (!out.lacks.empty()) return {std::nullopt, out.lacks};
    const Temperature<> asked = row.passes[g].preheat_asked;
    if (!out.temperature || asked > *out.temperature) out.temperature = asked;
  }
  return out;
}

std::string asked_in_words(const RateBook& book, const AskedPreheat& asked) {
  if (!asked.temperature) return "not computed: " + asked.lacks;
  if (*asked.temperature <= room_of(book)) return "none needed";
  const Unit unit = shown_in(book.terms, unit::celsius).unit;
  return fmt::format("{:.0f} {}", shown_number(asked.temperature->si, unit), unit.word);
}

std::optional<PreheatQuestion> preheat_not_stated(const RateBook& book, const Joint& joint,
                                                  const RowFigures<double>& row) {
  if (joint.heat.preheat_stated || !hardens(book.base_metals[joint.base_metal].group)) return std::nullopt;
  const AskedPreheat asked = asked_preheat(book, joint, row);
  if (asked.temperature && *asked.temperature > room_of(book))
    return PreheatQuestion{
        fmt::format("method B of EN 1011-2 asks for a preheat of {}, none is stated", asked_in_words(book, asked)),
        "state 'preheat', or 'preheat: none' on purpose"};
  const std::string over = over_thresholds(book, row.joint.heat);
  if (asked.temperature || over.empty()) return std::nullopt;
  return PreheatQuestion{fmt::format("{}, and no preheat is stated", over),
                         fmt::format("state 'preheat', or 'preheat: none' on purpose; by method B of EN 1011-2 {}",
                                     asked_in_words(book, asked))};
}

}  // namespace seambook
