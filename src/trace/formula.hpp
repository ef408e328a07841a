// The record read as text: a named result's formula over cells (or over names, or over plain numbers).
// Unit scales of a product fold into one constant: lengths in mm times a density in g/cm³ end as one `/1000`.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "basics/units.hpp"
#include "trace/tape.hpp"

namespace seambook {

/// What stands for a leaf: its text and the size of one of its units in SI (text × scale = SI value).
struct LeafText {
  std::string text;
  double scale = 1;
};
/// The text of an input or a named node; nothing for a named node means "expand what it was made of".
using LeafFinder = std::function<std::optional<LeafText>(const Tape&, std::uint32_t node)>;

struct FormulaStyle {
  const char* times = "*";
  const char* over = "/";
  const char* plus = "+";
  const char* minus = "-";
};

/// The formula of `node`, whose own name is ignored, giving the value in units of `unit`. No leading '='.
std::string formula(const Tape&, std::uint32_t node, double unit, const LeafFinder&, const FormulaStyle& = {});
/// The same in a unit that may begin at another zero.
std::string formula(const Tape&, std::uint32_t node, const Unit&, const LeafFinder&);
/// A leaf that stands as `text` and shows a number in this unit: `(F5-32)` for degrees Fahrenheit.
LeafText shown_leaf(std::string text, const Unit&);
/// A number as formulas hold it: at most 15 significant digits, no exponent unless the size needs one.
std::string formula_number(double);

}  // namespace seambook
