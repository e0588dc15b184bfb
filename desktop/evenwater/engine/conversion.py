"""Converting a quantity between two units of one closed list."""

from __future__ import annotations

import math
from dataclasses import dataclass

from evenwater.engine.quantities import Water, from_canonical, to_canonical
from evenwater.engine.reader import Ask, Field, Ok, Wrong, named_unit, read
from evenwater.engine.reasons import Reason
from evenwater.engine.units import KINDS, Kind

# Without a parameter only these lists are searched: none of their units means two things.
_PLAIN = ("volume", "mass", "temperature")
_COLDEST_C, _LARGEST = -273.15, 1e12


@dataclass(frozen=True)
class Converted:
    """The result: a figure [unit]."""

    value: float
    unit: str


def convert(value: str, to: str, kind: str | None, water: Water) -> Converted | Reason:
    """Convert what somebody wrote into another unit.

    Parameters
    ----------
    value : str
        Number and unit as written.
    to : str
        The unit wanted.
    kind : str or None
        The closed list, or None to look among volumes, masses and temperatures.
    water : Water
        The water, for figures per kilogram.

    Returns
    -------
    Converted or Reason
        The figure, or why the text cannot be taken.
    """
    names = (kind,) if kind is not None else _PLAIN
    refusal = Reason("unknown_unit", {"unit": to, "choices": tuple(u.id for n in names for u in KINDS[n].units)}, "to")
    for name in names:
        field = _field(KINDS[name])
        target = named_unit(to, field)
        if isinstance(target, Reason):
            if target.code != "unknown_unit":
                refusal = Reason(target.code, target.params, "to")
            continue
        result = read(value, field, "", water)
        if isinstance(result, Ok):
            canonical = to_canonical(float(result.entered.number), name, result.entered.unit, water)
            figure = from_canonical(canonical, name, target.id, water)
            if math.isfinite(figure):
                return Converted(figure, target.id)
            return Reason("not_a_number", {"text": value}, "value")
        return result.reason if isinstance(result, Ask | Wrong) else Reason("missing", {}, "value")
    return refusal


def _field(kind: Kind) -> Field:
    low, high = (_COLDEST_C, 1000.0) if kind.name == "temperature" else (0.0, _LARGEST)
    if kind.name == "salinity":
        high = 60.0
    return Field("value", kind.name, kind.canonical.id, low, high)
