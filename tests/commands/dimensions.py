"""The units that `seambook explain` prints, held against each other: a formula over names with these units must come
out in the unit of its result, as physics has it. Scales are left to the numbers."""
import re

from by_hand import Calculator, Fault

# Exponents of length, mass, time, current, money, temperature. Angles and percentages are plain numbers.
PLAIN = (0, 0, 0, 0, 0, 0)
LENGTH, MASS, TIME, CURRENT = (1, 0, 0, 0, 0, 0), (0, 1, 0, 0, 0, 0), (0, 0, 1, 0, 0, 0), (0, 0, 0, 1, 0, 0)
MONEY, TEMPERATURE = (0, 0, 0, 0, 1, 0), (0, 0, 0, 0, 0, 1)
VOLUME, ENERGY, POWER = (3, 0, 0, 0, 0, 0), (2, 1, -2, 0, 0, 0), (2, 1, -3, 0, 0, 0)
WORDS = {
    **dict.fromkeys(["", "%", "°"], PLAIN),
    **dict.fromkeys(["mm", "cm", "m", "in", "ft"], LENGTH),
    **dict.fromkeys(["g", "kg", "t", "lb", "oz"], MASS),
    **dict.fromkeys(["s", "min", "h", "day", "week", "year"], TIME),
    **dict.fromkeys(["A"], CURRENT), "V": (2, 1, -3, -1, 0, 0),
    **dict.fromkeys(["L", "ml"], VOLUME),
    **dict.fromkeys(["J", "kJ", "MJ", "Wh", "kWh"], ENERGY),
    **dict.fromkeys(["W", "kW"], POWER),
    **dict.fromkeys(["°C", "°F", "K"], TEMPERATURE), "kgK": (0, 1, 0, 0, 0, 1),
}
EXPONENTS = {"²": 2, "³": 3}
# Formulas fitted to experiments, whose constants stand for units.
EMPIRICAL = ("preheat_asked",)


def times(a, b, sign=1):
    """Of two dimensions, None being a bare constant, which may stand for any."""
    if a is None or b is None:
        return b if a is None and sign > 0 else tuple(-x for x in b) if a is None and b is not None else a
    return tuple(x + sign * y for x, y in zip(a, b))


def dimension_of(unit):
    """`g/cm³`, `EUR/h`, `ml/100 g`."""
    above, *below = unit.split("/")
    out = word_of(above)
    for word in below:
        out = times(out, word_of(word), -1)
    return out


def word_of(word):
    word = re.sub(r"^[\d.]+ ", "", word)
    if re.fullmatch(r"[A-Z]{3}", word):
        return MONEY
    base, exponent = (word[:-1], EXPONENTS[word[-1]]) if word[-1:] in EXPONENTS else (word, 1)
    if base not in WORDS:
        raise Fault(f"unknown unit '{word}'")
    return tuple(exponent * x for x in WORDS[base])


class Units(Calculator):
    """Works an expression over dimensions in place of numbers."""

    def literal(self, _token):
        return None

    def number(self, value):
        return value

    def same(self, a, b):
        if a is not None and b is not None and a != b:
            raise Fault(f"unlike units are added or compared in {self.text}")
        return b if a is None else a

    def add(self, a, b, _sign):
        return self.same(a, b)

    def multiply(self, a, b, sign):
        return times(a, b, sign)

    def raised(self, a, _exponent):
        return self.same(a, PLAIN)

    def negative(self, a):
        return a

    def select(self, compared, chosen):
        self.same(*compared)
        return self.same(*chosen)

    def function(self, name, arguments):
        if name in ("MIN", "MAX"):
            out = arguments[0]
            for other in arguments[1:]:
                out = self.same(out, other)
            return out
        if name == "ROUND":
            return arguments[0]
        if name == "SQRT":
            return None if arguments[0] is None else tuple(x / 2 for x in arguments[0])
        return self.same(arguments[0], PLAIN)


def check_units(name, formula, units, unit):
    """`units` holds the unit of each name above."""
    if name.startswith(EMPIRICAL):
        return
    found = Units(formula, {n: dimension_of(u) for n, u in units.items() if n in formula}).work()
    if found is not None and found != dimension_of(unit):
        raise Fault(f"{name} = {formula} is not in {unit or 'plain numbers'}")
