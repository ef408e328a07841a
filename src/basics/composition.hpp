// What a steel is made of, for the formulas that judge its hardening.
#pragma once

#include "basics/units.hpp"

namespace seambook {

/// Mass shares of the elements; what is not given counts as none.
template <class N = double>
struct Composition {
  Ratio<N> carbon{}, silicon{}, manganese{}, chromium{}, molybdenum{}, vanadium{}, nickel{}, copper{}, niobium{},
      boron{};
  friend bool operator==(const Composition&, const Composition&) = default;
};

/// Calls f(key, a.member, b.member) for each element, in any two structs with these members.
template <class A, class B, class F>
void each_element(A& a, B& b, F f) {
  f("carbon", a.carbon, b.carbon), f("silicon", a.silicon, b.silicon), f("manganese", a.manganese, b.manganese);
  f("chromium", a.chromium, b.chromium), f("molybdenum", a.molybdenum, b.molybdenum);
  f("vanadium", a.vanadium, b.vanadium), f("nickel", a.nickel, b.nickel), f("copper", a.copper, b.copper);
  f("niobium", a.niobium, b.niobium), f("boron", a.boron, b.boron);
}

}  // namespace seambook
