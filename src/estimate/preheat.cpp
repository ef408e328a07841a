#include "estimate/preheat.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/shown.hpp"

namespace seambook {

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

}  // namespace seambook
