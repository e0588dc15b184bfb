"""The strict reader of what people type: a number and a unit of one closed list, or a question back.

Nothing is ever dropped, clamped or repaired. Both ``.`` and ``,`` are decimal marks; a single mark
followed by exactly three digits is asked about where the field admits both readings; a bare
"gal", nitrate in plain "mg/L" and a bare "SG" are refused with the choices.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from evenwater.engine.quantities import Entered, Water, from_canonical, to_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.units import KINDS, Kind, Unit

# More digits than any two floats need to be told apart, and few enough to be looked at.
_LONGEST_NUMBER = 40
# Readings of texts up to so many characters are remembered.
_LONGEST_KEPT = 40
_TOKEN = re.compile(r"([+\-\u2212]?[0-9.,]+)[ ]?(.*)", re.DOTALL | re.ASCII)
_NUMBER = re.compile(r"-?(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)", re.ASCII)
_THOUSANDS = re.compile(r"-?[1-9][0-9]{0,2}[.,][0-9]{3}", re.ASCII)
_GALLONS = frozenset({"gal", "gal.", "gals", "gallon", "gallons"})
_GRAVITIES = frozenset({"sg", "s.g.", "specific gravity"})
# The words of units in the languages that the window speaks: what it shows and advises is read in each of them.
_UNIT_WORDS = {
    **dict.fromkeys(("pro", "por", "par"), "per"),
    **dict.fromkeys(("tag", "día", "dia", "jour"), "day"),
    **dict.fromkeys(("als", "como", "comme"), "as"),
}
_WITHOUT_BASIS = frozenset({"mg/l", "mg per l", "mg/kg", "mg per kg", "ppm", "mmol/l", "mmol per l"})


@dataclass(frozen=True)
class Field:
    """One field that takes a quantity.

    ``low`` and ``high`` are what the field admits [``unit``], which is also the unit shown
    beside it at first. With ``above_low`` the low end itself is not admitted. ``bare`` fields
    take a number without unit even where no unit stands beside it. ``whole`` fields take counts.
    """

    path: str
    kind: str
    unit: str
    low: float
    high: float
    above_low: bool = False
    bare: bool = False
    whole: bool = False

    @property
    def units(self) -> Kind:
        """The closed list of units."""
        return KINDS[self.kind]


@dataclass(frozen=True)
class Ok:
    """The text has one reading."""

    entered: Entered


@dataclass(frozen=True)
class Ask:
    """The text has readings between which only the keeper can choose."""

    readings: tuple[Entered, ...]
    reason: Reason


@dataclass(frozen=True)
class Wrong:
    """The text cannot be taken; the reason says what is allowed."""

    reason: Reason


@dataclass(frozen=True)
class Empty:
    """Nothing was typed."""


Reading = Ok | Ask | Wrong | Empty


def read(text: str, field: Field, beside: str = "", water: Water | None = None) -> Reading:
    """Read what was typed into a field.

    Parameters
    ----------
    text : str
        The characters as typed.
    field : Field
        The field's closed list of units and what it admits.
    beside : str
        Id of the unit shown beside the field, which a bare number takes; empty where none stands,
        as in a question file.
    water : Water or None
        The water, for figures per kilogram.

    Returns
    -------
    Ok, Ask, Wrong or Empty
        What it says, a question back, or why it cannot be taken.
    """
    return (_read_again if len(text) <= _LONGEST_KEPT else _read)(text, field, beside, water)


def _read(text: str, field: Field, beside: str, water: Water | None) -> Reading:
    clean = " ".join(text.replace("\u00a0", " ").replace("\u202f", " ").split())
    if not clean:
        return Empty()
    match = _TOKEN.fullmatch(clean)
    if match is None:
        return _wrong("not_a_number", field, text)
    token, rest = match.group(1).replace("\u2212", "-"), match.group(2).strip()
    if not _NUMBER.fullmatch(token):
        return _wrong(_number_fault(token), field, text)
    if sum(c.isdigit() for c in token) > _LONGEST_NUMBER:
        return _wrong("number_too_long", field, text)
    if rest[:1].isdigit() or rest.startswith("_"):
        return _wrong("grouped_digits", field, text)
    unit = named_unit(rest, field, beside)
    if isinstance(unit, Reason):
        return Wrong(unit)
    decimal = Entered(text, Decimal(token.replace(",", ".")), unit.id)
    whole = decimal.number == decimal.number.to_integral_value()
    if _THOUSANDS.fullmatch(token):
        grouped = Entered(text, Decimal(token.replace(",", "").replace(".", "")), unit.id)
        if admits(grouped, field, water):
            fits = admits(decimal, field, water) and (whole or not field.whole)
            both = (decimal, grouped) if fits else (grouped,)
            return Ask(both, Reason("two_readings", {"text": text, "unit": unit.shown, "readings": both}, field.path))
    if field.whole and not whole:
        return _wrong("not_whole", field, text)
    if not admits(decimal, field, water):
        return Wrong(_out_of_range(decimal, field, water))
    return Ok(decimal)


# At each key all other fields of a form are read again as they stand.
_read_again = lru_cache(maxsize=1024)(_read)


def admits(entered: Entered, field: Field, water: Water | None = None) -> bool:
    """Return whether the field takes this quantity; False for anything that is not finite.

    Parameters
    ----------
    entered : Entered
        The quantity.
    field : Field
        The field with its bounds.
    water : Water or None
        For figures per kilogram.

    Returns
    -------
    bool
        Whether it lies within the bounds.
    """
    value = to_canonical(float(entered.number), field.kind, entered.unit, water)
    low, high = _bounds(field)
    if not math.isfinite(value):
        return False
    return (low < value if field.above_low else low <= value) and value <= high


@lru_cache(maxsize=256)
def _bounds(field: Field) -> tuple[float, float]:
    return (to_canonical(field.low, field.kind, field.unit), to_canonical(field.high, field.kind, field.unit))


def _out_of_range(entered: Entered, field: Field, water: Water | None) -> Reason:
    low, high = (from_canonical(v, field.kind, entered.unit, water) for v in _bounds(field))
    unit = field.units.unit(entered.unit).shown
    params = {"number": float(entered.number), "low": low, "high": high, "unit": unit, "above_low": field.above_low}
    return Reason("out_of_range", params, field.path)


def _wrong(code: str, field: Field, text: str) -> Wrong:
    return Wrong(Reason(code, {"text": text, "example": _example(field)}, field.path))


def _example(field: Field) -> str:
    shown = field.units.unit(field.unit).shown
    middle = {"number": "24", "share": "50", "temperature": "25", "salinity": "35"}.get(field.kind, "6.8")
    return f"{middle} {shown}".strip()


def _number_fault(token: str) -> str:
    if token.startswith("+"):
        return "plus_sign"
    marks = sum(c in ".," for c in token)
    if marks > 1:
        return "two_marks"
    if marks == 1 and token[-1] in ".,":
        return "ends_with_mark"
    return "not_a_number"


def named_unit(rest: str, field: Field, beside: str = "") -> Unit | Reason:
    """Return the unit that ``rest`` names, the unit beside for a bare number, or why neither.

    Parameters
    ----------
    rest : str
        What stands behind the number.
    field : Field
        The field with its list of units.
    beside : str
        Id of the unit that stands beside the field.

    Returns
    -------
    Unit or Reason
        One of the field, or why there is none.
    """
    choices = tuple(u.id for u in field.units.units)
    params = {"unit": rest, "choices": choices}
    rest = " ".join(_UNIT_WORDS.get(word.casefold(), word) for word in rest.split(" "))
    if not rest:
        if not beside and not field.bare and field.kind != "number":
            return Reason("unit_missing", params, field.path)
        if (beside or field.unit) not in choices:
            # The field's list changed under the number, as when another parameter is chosen.
            return Reason("unknown_unit", {"unit": beside, "choices": choices}, field.path)
        return field.units.unit(beside or field.unit)
    for unit in field.units.units:
        if rest in (unit.id, unit.shown, *unit.spellings):
            return unit
    folded = rest.casefold()
    if field.kind == "volume" and folded in _GALLONS:
        return Reason("bare_gallon", params, field.path)
    if field.kind == "salinity" and folded in _GRAVITIES:
        return Reason("bare_gravity", params, field.path)
    for unit in field.units.units:
        names = (unit.id, unit.shown, *unit.spellings)
        # "Mg" is not "mg": a capital M is never taken for milli.
        if not rest.startswith("M") and folded in (name.casefold() for name in names):
            return unit
    if field.kind.split()[0] in ("nitrate", "phosphate", "alkalinity") and _base(folded) in _WITHOUT_BASIS:
        return Reason("as_what", params, field.path)
    return Reason("unknown_unit", params, field.path)


def _base(folded: str) -> str:
    for tail in (" per day", "/day", " a day"):
        folded = folded.removesuffix(tail)
    return folded
