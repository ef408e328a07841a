"""The text of `seambook explain` followed as a person with a pocket calculator would: each line read as words, each
expression worked from the printed numbers, each result held against the printed one within what ten printed digits
allow. Knows nothing of the program but what it prints."""
import math
import re

INPUT = re.compile(r"^  ([A-Za-z_]\w*) +(-?\d+(?:\.\d+)?(?:e[+-]\d+)?)  (.*)$")
STEP = re.compile(r"^  ([A-Za-z_]\w*) = (.+)$")
SOURCE = re.compile(r"^      (.*\S) \[(.+)\]$")
PLACE = re.compile(r"(\S+):(\d+):(\d+)(?:: .+ \(.+\))?$")
TOKEN = re.compile(r"(\d+(?:\.\d+)?(?:[eE][+-]?\d+)?)|([A-Za-z_]\w*)|(\S)")
DIGITS, FEW = 10, 5


def rounded_up(x, _digits):
    return math.copysign(math.ceil(abs(x)), x)


def rounded(x, digits):
    """Half away from zero on fifteen digits, as office suites do."""
    scaled = float(f"{abs(x) * 10 ** digits:.15g}")
    return math.copysign(math.floor(scaled + 0.5) / 10 ** digits, x)


FUNCTIONS = {
    "ROUNDUP": rounded_up, "INT": math.floor, "ROUND": rounded, "MIN": min, "MAX": max, "SQRT": math.sqrt,
    "EXP": math.exp, "LN": math.log, "TANH": math.tanh, "SIN": math.sin, "COS": math.cos, "TAN": math.tan,
    "ASIN": math.asin, "RADIANS": math.radians,
}


class Fault(Exception):
    pass


class Calculator:
    """Works one expression; `shift` adds to the number at one place, to see how far a rounded digit reaches."""

    def __init__(self, text, names):
        self.tokens = [m.group(0) for m in TOKEN.finditer(text)]
        self.text, self.names = text, names

    def work(self, shifted=None, shift=0.0):
        self.at, self.count, self.shifted, self.shift, self.numbers = 0, 0, shifted, shift, []
        value = self.sum()
        if self.at != len(self.tokens):
            raise Fault(f"something is left over in {self.text}")
        return value

    def within(self):
        """The value, and how far it may be off since every number shows ten digits at most."""
        value = self.work()
        numbers, reach = self.numbers, 0.0
        for place, number in enumerate(numbers):
            reach += max(abs(self.work(place, sign * half_digit(number)) - value) for sign in (1, -1))
        return value, reach

    def peek(self):
        return self.tokens[self.at] if self.at < len(self.tokens) else ""

    def take(self, token):
        if self.peek() != token:
            return False
        self.at += 1
        return True

    def expect(self, token):
        if not self.take(token):
            raise Fault(f"no {token} in {self.text}")

    def sum(self):
        value = self.product()
        while self.peek() in ("+", "-"):
            sign = 1 if self.take("+") else -1
            self.at += sign < 0
            value = self.add(value, self.product(), sign)
        return value

    def product(self):
        value = self.power()
        while self.peek() in ("*", "/"):
            sign = 1 if self.take("*") else -1
            self.at += sign < 0
            value = self.multiply(value, self.power(), sign)
        return value

    def power(self):
        value = self.atom()
        while self.take("^"):
            value = self.raised(value, self.atom())
        return value

    def atom(self):
        token = self.peek()
        self.at += 1
        if token == "-":
            return self.negative(self.atom())
        if token == "(":
            value = self.sum()
            self.expect(")")
            return value
        if token in FUNCTIONS or token == "IF":
            return self.call(token)
        if token[:1].isdigit():
            return self.number(self.literal(token))
        if token in self.names:
            return self.number(self.names[token])
        raise Fault(f"'{token}' stands nowhere above, in {self.text}")

    def call(self, name):
        self.expect("(")
        compared = ()
        if name == "IF":
            left = self.sum()
            self.expect("<")
            compared = (left, self.sum())
            self.expect(",")
        arguments = [self.sum()]
        while self.take(","):
            arguments.append(self.sum())
        self.expect(")")
        return self.select(compared, arguments) if name == "IF" else self.function(name, arguments)

    # What the operations mean; another reading of the same text overrides them.
    def literal(self, token):
        return float(token)

    def number(self, value):
        self.numbers.append(value)
        self.count += 1
        return value + (self.shift if self.count - 1 == self.shifted else 0)

    def add(self, a, b, sign):
        return a + sign * b

    def multiply(self, a, b, sign):
        return a * b if sign > 0 else a / b

    def raised(self, a, exponent):
        return a ** exponent

    def negative(self, a):
        return -a

    def select(self, compared, chosen):
        return chosen[0] if compared[0] < compared[1] else chosen[1]

    def function(self, name, arguments):
        return FUNCTIONS[name](*arguments)


def half_digit(x):
    """Half a unit in the tenth digit of a printed number. One of ten digits was rounded there, and so may be one that
    lost a few zeros; one of few digits was written so, and one of more is a constant."""
    mantissa = f"{abs(x):.14e}".split("e", maxsplit=1)[0].replace(".", "").rstrip("0")
    return half_unit(x) if FEW < len(mantissa) <= DIGITS else 0.0


def half_unit(x):
    return 0.5 * 10.0 ** (math.floor(math.log10(abs(x))) - DIGITS + 1) if x else 0.0


def held(text, names, result):
    value, reach = Calculator(text, names).within()
    # What is left of two equal numbers after subtraction is printed as nothing below 1e-12.
    allowed = 1.0001 * (reach + half_unit(result)) + 2e-12
    if abs(value - result) > allowed:
        raise Fault(f"{text} is {value!r}, printed {result!r}")


def in_formulas(value, unit):
    return value / 100 if unit == "%" else value


def read_input(line, match, names, inputs):
    name, value, rest = match.groups()
    unit, words = ("", rest.strip()) if rest.startswith(" ") else (re.split(r" {2,}", rest, maxsplit=1) + [""])[:2]
    origin = re.search(r", ((?:sum over .+)|(?:\S+:\d+:\d+.*))$", words)
    if not origin:
        raise Fault(f"no origin in: {line}")
    number = in_formulas(float(value), unit)
    if name in inputs and names[name] != number:
        raise Fault(f"two inputs are called {name}")
    inputs.add(name)
    names[name] = number
    return origin.group(1), float(value), unit


def follow_step(line, following, names):
    name, rest = STEP.match(line).groups()
    parts = rest.split(" = ")
    if not 2 <= len(parts) <= 3:
        raise Fault(f"neither formula and result nor formula, numbers and result: {line}")
    printed, _, unit = parts[-1].partition(" ")
    result = float(printed)
    held(parts[0], names, result)
    if len(parts) == 3:
        if re.search(r"[a-z_]\w*", parts[1]):
            raise Fault(f"a name among the numbers: {line}")
        held(parts[1], {}, result)
    if not SOURCE.match(following):
        raise Fault(f"neither source nor definition of: {line}")
    names[name] = in_formulas(result, unit)
    return unit


def follow(text, check_units=lambda name, formula, units, unit: None):
    """Every block of the text. Returns what was worked; raises Fault at the first thing that fails. `check_units` is
    called with each step and the units of the names above it."""
    lines = text.split("\n") + [""]
    names, units, inputs, blocks = {}, {}, set(), 0
    worked = {"steps": 0, "inputs": 0, "origins": [], "names": []}
    for line, following in zip(lines, lines[1:]):
        if line and not line.startswith(" "):
            blocks += 1
            inputs = set()
            if not line.startswith("price of "):  # prices go on from the cost above them
                names, units = {}, {}
        elif match := STEP.match(line):
            unit = follow_step(line, following, names)
            check_units(match.group(1), match.group(2).split(" = ")[0], units, unit)
            units[match.group(1)] = unit
            worked["steps"] += 1
            worked["names"].append(match.group(1))
        elif match := INPUT.match(line):
            origin = read_input(line, match, names, inputs)
            units[match.group(1)] = origin[2]
            worked["origins"].append((match.group(1), *origin))
            worked["inputs"] += 1
        elif " = " in line and not SOURCE.match(line):
            raise Fault(f"not understood: {line}")
    worked["blocks"] = blocks
    return worked
