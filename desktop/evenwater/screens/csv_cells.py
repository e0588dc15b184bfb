"""One cell with a figure: what the strict reader makes of it, as if it had been typed and its question answered."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from evenwater.engine import fields
from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Entered, Typed, from_canonical, to_canonical
from evenwater.engine.reader import Ask, Empty, Field, Ok, Reading, read
from evenwater.engine.reasons import Reason
from evenwater.screens.csv_choices import plain_number
from evenwater.screens.entry import number_part

# A file repeats its figures; more different ones than these are read anew.
_REMEMBERED = 50_000


@dataclass(frozen=True)
class Taken:
    """A figure that is taken: as it is kept, in one form, in the canonical unit of its kind, and whether it is likely."""

    typed: Typed
    content: str
    value: float
    likely: bool


class CellReader:
    """Reads the cells of one parameter and one unit.

    ``decimal`` is the file's decimal mark, or "both". ``unit`` is the id of the unit that stands beside a bare figure.
    """

    def __init__(self, parameter: Parameter, unit: str, decimal: str) -> None:
        self.name = parameter.name
        self._parameter = parameter
        self._field = fields.concentration("", parameter)
        self._unit = unit
        self._decimal = decimal
        self._known: dict[str, Taken | Reason] = {}
        self._likely: dict[str, tuple[float, float]] = {}

    def take(self, text: str) -> Taken | Reason:
        """Return what a cell that is not empty says, or why it is not taken."""
        try:
            return self._known[text]
        except KeyError:
            pass
        if len(self._known) >= _REMEMBERED:
            self._known.clear()
        found = self._known[text] = self._take(text)
        return found

    def _take(self, text: str) -> Taken | Reason:
        text = " ".join(text.split())
        result = read(text, self._field, self._unit)
        assert not isinstance(result, Empty)  # noqa: S101  (narrowing)
        if isinstance(result, Ok):
            token = number_part(text)
            if self._decimal != "both" and _other(self._decimal) in token:
                return Reason("csv_other_mark", {"text": text})
            return self._taken(result.entered, token)
        if isinstance(result, Ask):
            meant = chosen(result, self._decimal)
            return result.reason if meant is None else self._taken(meant, settled(meant, self._field))
        return result.reason

    def _taken(self, entered: Entered, text: str) -> Taken:
        number = float(entered.number)
        value = to_canonical(number, self._parameter.kind, entered.unit)
        if entered.unit not in self._likely:
            self._likely[entered.unit] = likely_range(self._parameter, entered.unit)
        low, high = self._likely[entered.unit]
        return Taken(Typed(text, entered.unit), plain_number(entered.number), value, low <= number <= high)


def chosen(asked: Ask, decimal: str) -> Entered | None:
    """Return which reading of a mark before three digits is meant where ``decimal`` is the decimal mark; None when neither."""
    mark = "," if "," in number_part(asked.readings[0].text) else "."
    grouped = asked.readings[-1]
    wanted = grouped.number / 1000 if mark == decimal else grouped.number
    if decimal == "both":
        return None
    return next((reading for reading in asked.readings if reading.number == wanted), None)


def settled(entered: Entered, field: Field) -> str:
    """Return a figure so that it has this one meaning when it is read again: 1.25, 1250, 4.1250."""
    text = plain_number(entered.number)
    return text if isinstance(read(text, field, entered.unit), Ok) else f"{text}0"


def read_loosely(text: str, parameter: Parameter, unit: str) -> Reading:
    """Return what the strict reader makes of a cell before anything is chosen."""
    return read(text, fields.concentration("", parameter), unit)


@lru_cache(maxsize=256)
def likely_range(parameter: Parameter, unit: str) -> tuple[float, float]:
    """Return the plausible range of a parameter in a unit, a hair wider than rounding can make it."""
    low, high = (from_canonical(parameter.canonical(end), parameter.kind, unit) for end in parameter.plausible)
    return low - 1e-9 * abs(low), high + 1e-9 * abs(high)


def _other(mark: str) -> str:
    return "," if mark == "." else "."
