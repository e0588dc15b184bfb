"""Typed numbers for fuzzing, and a reader of the test's own to hold the product's against.

The reader here goes from sign to sign and has its own table of units. Sizes: legal definitions of gallon, pound, foot and
inch; the degree of carbonate hardness is 10 mg of CaO in a litre; weights of atoms from memory, good to four digits, which
decide nothing, since figures that near to the end of a field are not judged. Twelve habits of writing numbers: as
`tests.property.typed_strings` says, from memory.
"""

from __future__ import annotations

import random
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from evenwater.engine import fields
from evenwater.engine.reader import Ask, Empty, Field, Ok, Reading, Wrong, read
from evenwater.screens.words import sentence
from tests.engine.asking import known

_RATE = (" per day", "/day", " a day")
# The size of each unit in the first of its list, and how it may be spelled besides; None is no factor.
_VALUES: dict[str, dict[str, tuple[float | None, tuple[str, ...]]]] = {
    "volume": {
        "L": (1, ("litre", "litres", "liter", "liters")),
        "mL": (1e-3, ("millilitre", "millilitres", "milliliter", "milliliters")),
        "US gal": (3.785411784, ("US gallon", "US gallons")),
        "imperial gal": (4.54609, ("imperial gallon", "imperial gallons")),
    },
    "alkalinity": {
        "meq/L": (1, ("meq per L",)), "dKH": (0.35663, ("°dKH", "degree KH", "degrees KH")), "mmol/L": (1, ("mmol per L",)),
        "ppm as CaCO3": (0.019983, ("mg/L as CaCO3",)),
    },
    "ion": {"mg/L": (1, ("mg per L",)), "mg/kg": (None, ("mg per kg",))},
    "nitrate": {"mg/L as NO3": (1, ("mg per L as NO3",)), "mg/L as N": (4.4268, ("mg per L as N",))},
    "phosphate": {"mg/L as PO4": (1, ("mg per L as PO4",)), "mg/L as P": (3.0662, ("mg per L as P",))},
    "salinity": {
        "ppt": (1, ("g/kg", "g per kg", "practical salinity")),
        **{f"SG {at}/{at} deg{scale}": (None, (f"SG {at}/{at} °{scale}",)) for at, scale in ((25, "C"), (20, "C"), (60, "F"))},
    },
}  # fmt: skip
_UNITS: dict[str, dict[str, tuple[float | None, tuple[str, ...]]]] = {
    **_VALUES,
    **{
        f"{kind} per day": {
            f"{unit} per day": (size, tuple(f"{name}{tail}" for name in (unit, *names) for tail in _RATE))
            for unit, (size, names) in units.items()
            if kind != "salinity" or unit == "ppt"
        }
        for kind, units in _VALUES.items()
    },
    "dose": {"mL": (1, ("millilitre", "millilitres", "milliliter", "milliliters"))},
    "mass": {
        "g": (1, ("gram", "grams")), "mg": (1e-3, ("milligram", "milligrams")), "kg": (1e3, ("kilogram", "kilograms")),
        "oz": (28.349523125, ("ounce", "ounces")), "lb": (453.59237, ("pound", "pounds")),
    },
    "temperature": {"degC": (1, ("°C",)), "degF": (None, ("°F",))},
    "flow": {"mL/min": (1, ("mL per min",))},
    "share": {"%": (1, ("percent",))},
    "time": {"s": (1, ("sec", "second", "seconds")), "min": (60, ("minute", "minutes")), "h": (3600, ("hour", "hours"))},
    "length": {
        "mm": (1, ("millimetre", "millimetres", "millimeter", "millimeters")), "m": (1e3, ("metre", "metres", "meter", "meters")),
        "cm": (10, ("centimetre", "centimetres", "centimeter", "centimeters")),
        "in": (25.4, ("inch", "inches")), "ft": (304.8, ("foot", "feet")),
    },
    "area": {"mL/cm": (1, ("mL per cm", "cm2"))},
    "air pressure": {"hPa": (1, ("mbar", "millibar")), "kPa": (10, ()), "mmHg": (1.33322, ("mm Hg", "torr")), "inHg": (33.8639, ("in Hg",))},
    "density": {
        "g/mL": (1, ("g per mL", "g/cm3")), "kg/L": (1, ("kg per L",)), "kg/m3": (1e-3, ("kg per m3", "g/L")), "g/100 mL": (1e-2, ()),
        "mg/mL": (1e-3, ()),
    },
    "pressure": {"uatm": (1, ("microatm", "\u00b5atm", "\u03bcatm"))},
    "number": {"": (1, ())},
}  # fmt: skip
_PARAMETERS = tuple(known().parameters.values())
FIELDS = (
    fields.NET_VOLUME, fields.DISSOLVED, fields.MADE_UP_TO, fields.FLOW, fields.STEP, fields.LARGEST_SHARE, fields.SALINITY,
    fields.TEMPERATURE, fields.DOSES_PER_DAY, fields.PURITY, fields.PH, fields.EVAPORATION, fields.HEAD_HOURS, fields.LINE_BORE,
    fields.RUN_SECONDS,
    *(fields.concentration(f"change.{p.name}", p) for p in _PARAMETERS),
    *(fields.rise("change.daily_use", p) for p in _PARAMETERS),
)  # fmt: skip

_HABITS = (
    (".", ",", 0x30), (",", ".", 0x30), (",", "\u202f", 0x30), (",", "\u00a0", 0x30), (".", "\u2019", 0x30), (".", ",", 0x966),
    ("\u066b", "\u066c", 0x660), ("\u066b", "\u066c", 0x6F0), (",", " ", 0x30), (",", "\u2009", 0x30), (".", "_", 0x30),
    ("\uff0e", "\uff0c", 0xFF10),
)  # fmt: skip
ODD = (
    *"\0\a\b\t\n\v\f\r\x1b\x1c\x1f\x7f\x85\u00a0\u00ad\u034f\u061c\u1680\u180e\u2009\u200b\u200e\u200f\u2028\u2029\u202e\u202f\u2060",
    *"\u2066\u3000\ufeff\ufffd\u2212\u2013\u2014\u066b\u00b5\u03bc\u212a\u017f\u00b2\u00bd\u2460\u0660\u0966\uff11\U0001d7d8",
    *"\U0001f420+-.,'\"_eExX%/<>&;=@", "\ud800", "e\u0301", "nan", "NaN", "inf", "-inf", "Infinity", "0x", "1e400", "1e-400", "%s", "{}",
    "..", ",,", "--", "per day", " a day", "gal", "SG", "mg/L", "ppm", "M", "m",
)  # fmt: skip


@dataclass(frozen=True)
class TypedNumber:
    """What was typed into a field, and the unit beside it."""

    text: str
    field: Field
    beside: str


@dataclass(frozen=True)
class Meant:
    """What the test's own reader says: "empty", "refused", "read" or "asked", the numbers and the unit.

    ``sure`` is False where it knows no factor, or the figure lies at the very end of the field.
    """

    verdict: str
    numbers: tuple[Decimal, ...] = ()
    unit: str = ""
    sure: bool = True


def made(draw: random.Random) -> TypedNumber:
    """Return something that somebody, or something, typed into a field."""
    field = draw.choice(FIELDS)
    spelled = _UNITS[field.kind]
    unit = draw.choice(list(spelled))
    text = _number(draw)
    words = draw.choice((unit, unit, "", *spelled[unit][1]))
    if draw.random() < 0.1:
        words = draw.choice(
            (words.upper(), words.lower(), words.swapcase(), words.replace(" ", ""), f"{words}s", words.title())
        )
    beside = draw.choice(("", "", unit, field.unit, draw.choice(("L", "dKH", "cups", "Ω"))))
    typed = f"{draw.choice(('', '', ' '))}{text}{draw.choice((' ', ' ', '', chr(0xA0), '  ')) if words else ''}{words}"
    while draw.random() < 0.35:
        typed = _damaged(draw, typed)
    return TypedNumber(typed, field, beside)


def _number(draw: random.Random) -> str:
    decimal, group, zero = draw.choice(_HABITS) if draw.random() < 0.4 else (draw.choice(".,"), draw.choice(".,"), 0x30)
    sort = draw.random()
    if sort < 0.05:
        return draw.choice(
            ("0", "-0", "0.0", "000", "-1", "1e3", ".5", "5.", "", "nan", "1.000", "999,999", "1,250", "0.001")
        )
    size = draw.choice((1, 1, 2, 3, 3, 4, 5, 7)) if sort < 0.95 else draw.choice((20, 39, 40, 41, 320, 5000))
    whole = "".join(draw.choice("0123456789") for _ in range(size))
    if draw.random() < 0.2 and size > 3:
        whole = group.join((whole[:-3], whole[-3:]))
    rest = "".join(draw.choice("0123456789") for _ in range(draw.choice((0, 0, 1, 2, 3, 3, 4, 6))))
    sign = draw.choice(("", "", "", "", "", "-", "\u2212", "+"))
    text = sign + whole + (decimal + rest if rest else "")
    return text if zero == 0x30 else "".join(chr(zero + int(c)) if c in "0123456789" else c for c in text)


def _damaged(draw: random.Random, text: str) -> str:
    at = draw.randrange(len(text) + 1)
    match draw.randrange(6):
        case 0:
            return text[:at] + draw.choice(ODD) + text[at:]
        case 1:
            return text[:at] + text[at + 1 :]
        case 2:
            return text[:at] + text[at:] * draw.choice((2, 2, 3))
        case 3:
            return text[:at] + chr(draw.randrange(0x110000)) + text[at:]
        case 4:
            return unicodedata.normalize(draw.choice(("NFD", "NFKC", "NFKD")), text)
        case _:
            return text[:at] + draw.choice((" ", "  ", "\t", ".", ",", "1")) + text[at:]


def _blank(sign: str) -> bool:
    return unicodedata.category(sign) in ("Zs", "Zl", "Zp") or sign in "\t\n\v\f\r\x1c\x1d\x1e\x1f\x85"


def _named(words: str, field: Field, beside: str) -> str | None:
    """Return the unit that is meant, or None; a capital M is never taken for milli."""
    spelled = _UNITS[field.kind]
    if not words:
        if not beside and not field.bare and field.kind != "number":
            return None
        return (beside or field.unit) if (beside or field.unit) in spelled else None
    shown = {unit: unit.replace("/", " per ").replace("deg", "°") for unit in spelled}
    shown = {unit: name if not unit.startswith("SG") else unit.replace("deg", "°") for unit, name in shown.items()}
    for fold in (str, str.casefold):
        if fold is str.casefold and words.startswith("M"):
            return None
        for unit, (_, names) in spelled.items():
            if fold(words) in [fold(name) for name in (unit, shown[unit], *names)]:
                return unit
    return None


def meant(typed: TypedNumber) -> Meant:
    """Read what was typed by the strictest grammar: a minus, digits, one mark with digits after it, spaces, a listed unit."""
    words: list[str] = [""]
    for sign in typed.text:
        if not _blank(sign):
            words[-1] += sign
        elif words[-1]:
            words.append("")
    text = " ".join(word for word in words if word)
    if not text:
        return Meant("empty")
    at = 1 if text[0] in "-\u2212" else 0
    begin = at
    while at < len(text) and text[at] in "0123456789.,":
        at += 1
    token, words_left = text[begin:at], text[at:].removeprefix(" ")
    marks = [sign for sign in token if sign in ".,"]
    digits = len(token) - len(marks)
    if (
        not digits
        or digits > 40
        or len(marks) > 1
        or (marks and token.endswith(marks[0]))
        or words_left[:1] in tuple("0123456789")
    ):
        return Meant("refused")
    unit = _named(words_left, typed.field, typed.beside)
    if unit is None or words_left.startswith("_"):
        return Meant("refused")
    whole, _, rest = token.replace(",", ".").partition(".")
    number = Decimal(f"{'-' if begin else ''}{whole or '0'}.{rest or '0'}")
    admitted, sure = _admitted(number, typed.field, unit)
    counts = not typed.field.whole or number == int(number)
    if marks and len(rest) == 3 and 1 <= len(whole) <= 3 and whole[0] != "0":
        grouped = number * 1000
        of_group, surely = _admitted(grouped, typed.field, unit)
        if of_group or not surely:
            both = (number, grouped) if admitted and counts else (grouped,)
            return Meant("asked", both, unit, sure and surely)
    if not counts:
        return Meant("refused")
    return Meant("read" if admitted else "refused", (number,) if admitted else (), unit, sure)


def any_quantity(text: str) -> bool:
    """Return whether a text is one number with a unit of any list, or without one."""
    kinds = {kind: next(iter(units)) for kind, units in _UNITS.items()}
    return any(
        meant(TypedNumber(text, Field("", kind, unit, -1e30, 1e30, bare=True), "")).verdict in ("read", "asked")
        for kind, unit in kinds.items()
    )


def _admitted(number: Decimal, field: Field, unit: str) -> tuple[bool, bool]:
    """Return whether the field takes the figure, and whether that is sure."""
    size, own = _UNITS[field.kind][unit][0], _UNITS[field.kind][field.unit][0]
    if size is None or own is None:
        return True, False
    value = number * Decimal(size) / Decimal(own)
    low, high = Decimal(str(field.low)), Decimal(str(field.high))
    near = size != own and any(abs(value - end) <= abs(end) * Decimal("0.001") for end in (low, high) if end)
    # Nothing but a nothing of so many digits is too small for a float.
    near = near or (number != 0 and abs(value) < Decimal("1e-300"))
    return (low < value if field.above_low else low <= value) and value <= high, not near


def fault(typed: TypedNumber) -> str:
    """Return what is wrong with the product's reading, or nothing."""
    result = read(typed.text, typed.field, typed.beside)
    expected = meant(typed)
    got = _got(result)
    if expected.sure and got != (expected.verdict, expected.numbers, expected.unit if expected.numbers else ""):
        return f"read as {got}, meant {expected}"
    if (
        not expected.sure
        and got[0] in ("read", "asked")
        and not (expected.numbers and set(got[1]) <= _either(expected.numbers))
    ):
        return f"read as {got}, meant {expected}"
    for entered in (result.entered,) if isinstance(result, Ok) else result.readings if isinstance(result, Ask) else ():
        if entered.text != typed.text:
            return f"the text is kept as {entered.text!r}"
    if isinstance(result, Ask | Wrong):
        said = sentence(result.reason)
        if not said.strip() or len(said) > 400:
            return f"{len(said)} letters say why it is not taken: {said[:200]!r}"
        if any(unicodedata.category(sign) in ("Cc", "Cs") or sign in "\u202e\u202d\u2066\u2067\u2068" for sign in said):
            return f"signs that nobody can see in {said!r}"
    return ""


def _either(numbers: tuple[Decimal, ...]) -> set[Decimal]:
    return {*numbers, *(number * 1000 for number in numbers), *(number / 1000 for number in numbers)}


def _got(result: Reading) -> tuple[str, tuple[Decimal, ...], str]:
    if isinstance(result, Empty):
        return "empty", (), ""
    if isinstance(result, Wrong):
        return "refused", (), ""
    entered = (result.entered,) if isinstance(result, Ok) else result.readings
    return "read" if isinstance(result, Ok) else "asked", tuple(each.number for each in entered), entered[0].unit


def smaller(typed: TypedNumber) -> Iterator[TypedNumber]:
    """Yield the same with less in it."""
    for size in (len(typed.text) // 2, 8, 1):
        if 0 < size < len(typed.text) or size == 1:
            for at in range(0, len(typed.text), size):
                yield TypedNumber(typed.text[:at] + typed.text[at + size :], typed.field, typed.beside)
