#include "trace/formula.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <functional>

#include "trace/vocabulary.hpp"

namespace seambook {
namespace {

/// How tightly a text holds together, to know where brackets are needed.
enum class Binding : std::uint8_t { sum, product, atom };

/// text × scale = SI value. An empty text is a plain constant of value `scale`.
struct Piece {
  std::string text;
  double scale = 1;
  Binding binding = Binding::atom;
};

/// 0.9999999999999999 is 1: the residue of multiplying unit scales. There are few of them, which come again and again.
double tidy(double x) {
  struct Known {
    double x = 0, digits15 = 0;
  };
  constexpr std::size_t slots = 256;
  thread_local std::array<Known, slots> known{};
  Known& slot = known[std::hash<double>()(x) % slots];
  if (slot.x != x) slot = {x, std::strtod(fmt::format("{:.14e}", x).c_str(), nullptr)};
  return slot.digits15;
}

class Renderer {
 public:
  Renderer(const Tape& tape, const LeafFinder& leaf, const FormulaStyle& style)
      : tape_(tape), leaf_(leaf), style_(style) {}

  Piece piece(std::uint32_t i) const {
    const TapeNode& n = tape_.nodes[i];
    if (n.op == Op::constant) return {"", n.value, Binding::atom};
    if (n.label != 0) {
      if (auto found = leaf_(tape_, i)) return {std::move(found->text), found->scale, Binding::atom};
      if (n.op == Op::input) return {"", n.value, Binding::atom};
    }
    return made(n);
  }

  /// What `node` was made of, its own name aside.
  Piece made(const TapeNode& n) const {
    switch (n.op) {
      case Op::constant:
      case Op::input:
        return {"", n.value, Binding::atom};
      case Op::named:
        return piece(n.operands[0]);
      case Op::add:
        return additive(n, style_.plus);
      case Op::subtract:
        return additive(n, style_.minus);
      case Op::multiply:
        return product(piece(n.operands[0]), piece(n.operands[1]));
      case Op::divide:
        return quotient(piece(n.operands[0]), piece(n.operands[1]));
      case Op::least:
        return common("MIN", n);
      case Op::greatest:
        return common("MAX", n);
      case Op::select_less:
        return selected(n);
      case Op::root: {
        const Piece x = piece(n.operands[0]);
        if (x.text.empty() || x.scale < 0) return {call("SQRT", in_unit(x, 1).text)};
        return {call("SQRT", x.text), std::sqrt(x.scale)};
      }
      case Op::power:
        return {bracket(plain(n.operands[0]), Binding::atom) + "^" + formula_number(value(n, 1)), 1, Binding::product};
      default:
        return function(n);
    }
  }

  /// The text of a piece in units of `unit`.
  Piece in_unit(const Piece& p, double unit) const {
    const double factor = tidy(p.scale / unit);
    if (p.text.empty()) return {formula_number(factor), unit, Binding::atom};
    if (factor == 1) return {p.text, unit, p.binding};
    const double inverse = tidy(unit / p.scale);
    const bool whole_inverse = inverse == std::round(inverse) && factor != std::round(factor);
    return {bracket(p, Binding::product) + (whole_inverse ? style_.over : style_.times) +
                formula_number(whole_inverse ? inverse : factor),
            unit, Binding::product};
  }

 private:
  double value(const TapeNode& n, int k) const { return tape_.nodes[n.operands[k]].value; }
  static std::string call(const char* function, const std::string& argument) {
    return fmt::format("{}({})", function, argument);
  }
  static std::string bracket(const Piece& p, Binding needed) {
    return p.binding < needed ? "(" + p.text + ")" : p.text;
  }
  Piece plain(std::uint32_t i) const { return in_unit(piece(i), 1); }

  Piece additive(const TapeNode& n, const char* sign) const {
    const Piece a = piece(n.operands[0]);
    const Piece b = piece(n.operands[1]);
    const double scale = a.text.empty() ? (b.text.empty() ? 1 : b.scale) : a.scale;
    const bool minus = n.op == Op::subtract;
    // The right side of a minus keeps its brackets: a-(b+c).
    return {
        in_unit(a, scale).text + sign + (minus ? bracket(in_unit(b, scale), Binding::product) : in_unit(b, scale).text),
        scale, Binding::sum};
  }
  static bool nothing(const Piece& p) { return p.text.empty() && p.scale == 0; }
  Piece product(const Piece& a, const Piece& b) const {
    if (nothing(a) || nothing(b)) return {"", 0};  // an absent number: what it multiplies is not shown
    if (a.text.empty()) return {b.text, a.scale * b.scale, b.binding};
    if (b.text.empty()) return {a.text, a.scale * b.scale, a.binding};
    return {bracket(a, Binding::product) + style_.times + bracket(b, Binding::product), a.scale * b.scale,
            Binding::product};
  }
  Piece quotient(const Piece& a, const Piece& b) const {
    if (nothing(a)) return {"", 0};
    if (b.text.empty()) return {a.text, a.scale / b.scale, a.binding};
    const std::string above = a.text.empty() ? "1" : bracket(a, Binding::product);
    return {above + style_.over + bracket(b, Binding::atom), a.scale / b.scale, Binding::product};
  }
  Piece common(const char* function, const TapeNode& n) const {
    const Piece a = piece(n.operands[0]);
    const Piece b = piece(n.operands[1]);
    const double scale = std::fabs(a.text.empty() ? (b.text.empty() ? 1 : b.scale) : a.scale);
    return {fmt::format("{}({},{})", function, in_unit(a, scale).text, in_unit(b, scale).text), scale};
  }
  Piece selected(const TapeNode& n) const {
    std::array<Piece, 4> p;
    for (int k = 0; k < 4; ++k) p[static_cast<std::size_t>(k)] = piece(n.operands[k]);
    const double compared = std::fabs(p[0].text.empty() ? (p[1].text.empty() ? 1 : p[1].scale) : p[0].scale);
    const double chosen = p[2].text.empty() ? (p[3].text.empty() ? 1 : p[3].scale) : p[2].scale;
    return {fmt::format("IF({}<{},{},{})", in_unit(p[0], compared).text, in_unit(p[1], compared).text,
                        in_unit(p[2], chosen).text, in_unit(p[3], chosen).text),
            chosen};
  }
  /// Functions of a plain number, and trigonometry, whose cells hold degrees.
  Piece function(const TapeNode& n) const {
    const Piece x = plain(n.operands[0]);
    switch (n.op) {
      case Op::whole_up:
        return {
            fmt::format("ROUNDUP({}{}{},0)", bracket(x, Binding::product), style_.times, formula_number(1 - whole))};
      case Op::whole_down:
        return {fmt::format("INT({}{}{})", bracket(x, Binding::product), style_.times, formula_number(1 + whole))};
      case Op::round_decimal:
        return {fmt::format("ROUND({},{})", x.text, static_cast<int>(n.digits))};
      case Op::exponential:
        return {call("EXP", x.text)};
      case Op::logarithm:
        return {call("LN", x.text)};
      case Op::hyperbolic_tangent:
        return {call("TANH", x.text)};
      case Op::arc_sine:
        return {call("ASIN", x.text)};
      case Op::sine:
        return {call("SIN", radians(n))};
      case Op::cosine:
        return {call("COS", radians(n))};
      default:
        return {call("TAN", radians(n))};
    }
  }
  std::string radians(const TapeNode& n) const {
    return call("RADIANS", in_unit(piece(n.operands[0]), unit::degree.si).text);
  }

  static constexpr double whole = whole_tolerance;
  const Tape& tape_;
  const LeafFinder& leaf_;
  const FormulaStyle& style_;
};

}  // namespace

LeafText shown_leaf(std::string text, const Unit& unit) {
  if (unit.zero == 0) return {std::move(text), unit.si};
  return {fmt::format("({}-{})", text, formula_number(unit.zero)), unit.si};
}

std::string formula_number(double x) {
  const std::string shortest = fmt::format("{:.15g}", x);
  if (shortest.find('e') == std::string::npos) return shortest;
  std::string upper = shortest;
  for (char& c : upper) c = c == 'e' ? 'E' : c;
  return upper;
}

std::string formula(const Tape& tape, std::uint32_t node, double unit, const LeafFinder& leaf,
                    const FormulaStyle& style) {
  const Renderer renderer(tape, leaf, style);
  return renderer.in_unit(renderer.made(tape.nodes[node]), unit).text;
}

std::string formula(const Tape& tape, std::uint32_t node, const Unit& unit, const LeafFinder& leaf) {
  const std::string text = formula(tape, node, unit.si, leaf);
  return unit.zero == 0 ? text : text + "+" + formula_number(unit.zero);
}

}  // namespace seambook
