"""What a spreadsheet of readings is taken for: guesses, the keeper's rulings, and the readings that come of them."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from decimal import Decimal
from typing import NamedTuple

from evenwater.engine.quantities import Typed

ENCODINGS = ("utf-8", "utf-16", "cp1252")
SEPARATORS = (";", ",", "\t", "|")
DECIMALS = (".", ",", "both")
ORDERS = ("ymd", "dmy", "mdy")
CLOCKS = ("24", "12")
HOURS = ("06:00", "08:00", "12:00", "18:00", "20:00")
TWICE = ("first", "second", "none")
# What a column can hold besides the readings of one parameter.
ROLES = ("date", "time", "parameter", "value", "unit", "kit", "who", "note")
# A title or two may stand above the headings.
HEADINGS_WITHIN = 10

_FIGURE = re.compile(r"-?(?:[0-9]+[.,]?[0-9]*|[.,][0-9]+)", re.ASCII)

Rulings = Mapping[str, str]
"""What the keeper decided: the ``what`` of a ``Point`` and the ``value`` of one of its options."""


@dataclass(frozen=True)
class Column:
    """One column: ``role`` is one of ``ROLES``, "reading", or empty when it is left out.

    ``parameter`` and ``unit`` (an id) are for a column of readings; the unit is empty as long as only
    the keeper can say it.
    """

    role: str = ""
    parameter: str = ""
    unit: str = ""


@dataclass(frozen=True)
class Series:
    """The readings of one name and one unit in a sheet with a row for each reading.

    ``name`` and ``said`` are what stands in the columns of parameters and units, ``parameter`` what it is
    taken for (empty when it is left out) and ``unit`` its id, empty as long as only the keeper can say it.
    """

    name: str
    said: str
    parameter: str = ""
    unit: str = ""


@dataclass(frozen=True)
class Choices:
    """How a file is read. Whatever is empty in ``decimal``, ``order``, ``clock`` or a unit is still to be chosen.

    ``heading`` is the row of the headings counted from 1, and 0 without any. ``decimal`` is a mark, or "both" when
    either is one. ``hour`` is given to readings without one, which are left out when it is empty.
    ``twice`` says which is meant of an hour that comes twice; when empty it is asked as soon as one does.
    ``own`` says that the product wrote the file: names and notes then keep the spaces around them.
    """

    encoding: str
    separator: str
    heading: int
    decimal: str
    order: str
    clock: str
    hour: str
    twice: str
    columns: tuple[Column, ...]
    series: tuple[Series, ...] = ()
    own: bool = False

    @property
    def long_form(self) -> bool:
        """Whether each row is one reading, with its parameter in a column."""
        return self._has("parameter") and self._has("value")

    @property
    def open(self) -> bool:
        """Whether something is still to be chosen, so that nothing is imported."""
        taken: tuple[Column | Series, ...] = self.series if self.long_form else self.columns
        settled = self.decimal in DECIMALS and self.order in ORDERS and self.clock in CLOCKS
        return not settled or any(source.parameter and not source.unit for source in taken)

    @property
    def nothing(self) -> bool:
        """Whether no column of dates or of readings is known."""
        taken: tuple[Column | Series, ...] = self.series if self.long_form else self.columns
        return not self._has("date") or not any(source.parameter for source in taken)

    def _has(self, role: str) -> bool:
        return any(column.role == role for column in self.columns)


@dataclass(frozen=True)
class Option:
    """One answer to a question about the file: what it enters, and its words."""

    value: str
    words: str


@dataclass(frozen=True)
class Point:
    """One thing that was guessed about a file, to be shown and overruled.

    ``state`` is "said" when the file says so, "guessed" when it is the likelier reading, "ask" when only the keeper can say,
    "chosen" when they have said. ``what`` and ``value`` are the key and value of a ruling, ``words`` says why.
    """

    what: str
    title: str
    value: str
    state: str
    words: str
    options: tuple[Option, ...]


@dataclass(frozen=True)
class Guess:
    """How a file is taken as it stands; nothing is imported before no point is to be asked about.

    ``headings`` name the columns.
    """

    choices: Choices
    points: tuple[Point, ...]
    headings: tuple[str, ...]

    @property
    def asked(self) -> tuple[Point, ...]:
        """The points that only the keeper can settle."""
        return tuple(point for point in self.points if point.state == "ask")


@dataclass(frozen=True)
class Refusal:
    """Why a file cannot be read at all: a code, a sentence, and the line it is about, or 0."""

    code: str
    words: str
    line: int = 0


class ReadRow(NamedTuple):
    """One reading of a file; a tuple, since a file has a hundred thousand of them.

    ``at`` is in UTC, ``typed`` the figure as it was typed with the id of its unit, ``value`` the same in the
    canonical unit of its kind. ``line`` is where it stands, or 0.
    """

    at: datetime
    parameter: str
    typed: Typed
    value: float
    line: int = 0
    kit: str = ""
    who: str = ""
    note: str = ""

    @property
    def content(self) -> str:
        """The figure in one form: 8,30 and 8.3 are the same content."""
        return number_text(self.typed.text)

    @property
    def key(self) -> tuple[str, datetime, str, str]:
        """What makes two readings the same: parameter, instant, figure and unit."""
        return self.parameter, self.at.astimezone(UTC), self.content, self.typed.unit


def number_text(text: str) -> str:
    """Return a figure without the zeros that change nothing, with a point; what is none comes back as it is."""
    return plain_number(Decimal(text.replace(",", "."))) if _FIGURE.fullmatch(text) else text


def plain_number(number: Decimal) -> str:
    """Return a number without exponent and without the zeros that change nothing."""
    text = f"{number:f}"
    return (text.rstrip("0").rstrip(".") or "0") if "." in text else text
