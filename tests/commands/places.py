"""What an author wrote at the place that an explained input names, held against the number that is printed for it."""
import re

INCH, FOOT, POUND = 0.0254, 0.3048, 0.45359237
SCALES = {
    "": 1, "%": 0.01, "°": 1, "deg": 1, "each": 1, "mm": 1e-3, "cm": 1e-2, "m": 1, "in": INCH, "ft": FOOT, "g": 1e-3,
    "kg": 1, "t": 1e3, "lb": POUND, "s": 1, "min": 60, "h": 3600, "A": 1, "V": 1, "L": 1e-3, "W": 1, "kW": 1e3, "J": 1,
    "kJ": 1e3, "kWh": 3.6e6, "ipm": INCH / 60, "cf": FOOT ** 3, "cfh": FOOT ** 3 / 3600, "°C": 1, "degC": 1,
}
NUMBER = re.compile(r"""['"]?(?:(\d+)[- ](\d+)/(\d+)|(\d+)/(\d+)|(\d+(?:\.\d+)?)) ?([A-Za-z%°²³/0-9]*)""")


def scale_of(unit):
    """Size in SI, or None for a unit that is not listed. Currencies count one."""
    out = 1.0
    for k, word in enumerate(unit.replace("²", "2").replace("³", "3").split("/")):
        base, power = (word[:-1], int(word[-1])) if word[-1:] in ("2", "3") else (word, 1)
        size = 1 if re.fullmatch("[A-Z]{3}", base) else SCALES.get(base)
        if size is None:
            return None
        out *= size ** (power if k == 0 else -power)
    return out


def agrees(written, value, unit):
    """Whether the text at a place says this value; None where no number with a known unit stands there (a default,
    whose place is what it belongs to) or where a bare number takes the file's unit."""
    found = NUMBER.match(written)
    if not found:
        return None
    a, word = found.groups(), found.group(7)
    scales = scale_of(word), scale_of(unit)
    if None in scales or (word == "" and unit != ""):
        return None
    number = int(a[0]) + int(a[1]) / int(a[2]) if a[0] else int(a[3]) / int(a[4]) if a[3] else float(a[5])
    return abs(number * scales[0] - value * scales[1]) <= 1e-9 * abs(value * scales[1])
