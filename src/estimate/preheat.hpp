// What method B of EN 1011-2 asks for, in words: a temperature, none, or why it is not computed. It is computed only
// from stated facts and inside its range; sheets hold the same range as conditions over their cells.
#pragma once

#include <array>

#include "estimate/estimate.hpp"

namespace seambook {

/// The range of one quantity of method B, in SI.
struct MethodBLimit {
  const Figure* figure;
  double low, high;
};
inline constexpr std::array<MethodBLimit, 4> method_b_limits = {
    {{&fig::cet, method_b::least_cet.si, method_b::largest_cet.si},
     {&fig::plate_thickness, method_b::least_thickness.si, method_b::largest_thickness.si},
     {&fig::hydrogen, method_b::least_hydrogen.si, method_b::largest_hydrogen.si},
     {&fig::heat_input, method_b::least_heat.si, method_b::largest_heat.si}}};

/// `heat input outside 0.5 kJ/mm to 4 kJ/mm`.
std::string outside_in_words(const MethodBLimit&, Terms);
/// The temperature of the shop: below it no preheat is needed. 20 °C where the rate book states none.
Temperature<> room_of(const RateBook&);

/// What is not known of pass group g, whatever its numbers: `no hydrogen level of filler MC-1.2 is stated`; empty when
/// all is known. Also empty for metals that do not harden: nothing is asked for there.
std::string method_b_unknown(const RateBook&, const Joint&, std::size_t g);
/// The same, or which number lies outside the range; empty when the group's figure holds.
std::string method_b_lacks(const RateBook&, const Joint&, const RowFigures<double>&, std::size_t g);

struct AskedPreheat {
  std::optional<Temperature<>> temperature;  // the largest of all pass groups; absent: not computed
  std::string lacks;                         // why not
};
AskedPreheat asked_preheat(const RateBook&, const Joint&, const RowFigures<double>&);
/// `85 °C`, `none needed`, or `not computed: ...`.
std::string asked_in_words(const RateBook&, const AskedPreheat&);

struct PreheatQuestion {
  std::string words, hint;
};
/// What a joint that says nothing of preheat is asked: method B wants some, or it is not computed and the joint lies
/// above the rate book's thresholds. Nothing for metals that do not harden.
std::optional<PreheatQuestion> preheat_not_stated(const RateBook&, const Joint&, const RowFigures<double>&);

}  // namespace seambook
