"""Readings of a spreadsheet on their way into the log: what is noted of each, and which of them are there already."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

import numpy as np
from numpy.typing import NDArray

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed, Water, to_canonical
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_words import cut
from evenwater.screens.csv_writing import row_of
from evenwater.screens.logbook import READING, Taken
from evenwater.screens.views import Floats
from evenwater.wording import say, say_many

# Two sums of the same figure may differ in the last digits of a float; two figures that anybody writes never do.
_SAME = 1e-9

Flags = NDArray[np.bool_]


@dataclass(frozen=True)
class Sequel:
    """The readings of one parameter in the order of the file.

    ``places`` says where each stands among all readings; ``seconds`` [s] since the start of 1970 in UTC and ``values``
    [canonical unit of the parameter] have the same shape (n,). ``first`` and ``last`` are the ends of the time they span.
    """

    parameter: str
    places: NDArray[np.intp]
    seconds: Floats
    values: Floats
    first: datetime
    last: datetime


def taken(row: ReadRow, catalogue: Catalogue, water: Water) -> Taken:
    """Return a reading of a file as the log keeps it, with the fields of one that was noted by hand.

    Parameters
    ----------
    row : ReadRow
        A reading from a file.
    catalogue : Catalogue
        The parameters.
    water : Water
        The system's water, for figures per kilogram.

    Returns
    -------
    Taken
        What is noted; a note beside the reading stands under "text".
    """
    fields = {"parameter": Typed(row.parameter), "value": row.typed}
    for name, text in (("kit", row.kit), ("who", row.who), ("text", row.note)):
        if text.strip():
            fields[name] = Typed(text)
    return Taken(READING, row.parameter, row.at, row.who, fields, value(row, catalogue, water))


def value(row: ReadRow, catalogue: Catalogue, water: Water) -> float:
    """Return what a reading comes to in a water.

    Parameters
    ----------
    row : ReadRow
        A reading from a file, whose own value is for seawater.
    catalogue : Catalogue
        The parameters.
    water : Water
        The system's water.

    Returns
    -------
    float
        The value [canonical unit of the parameter].
    """
    if not row.typed.unit.startswith("mg/kg"):
        return row.value
    return to_canonical(float(row.content), catalogue.parameters[row.parameter].kind, row.typed.unit, water)


def sequels(rows: Sequence[ReadRow], catalogue: Catalogue, water: Water) -> tuple[Sequel, ...]:
    """Return the readings of a file by parameter, as ``in_log`` compares them.

    Parameters
    ----------
    rows : sequence of ReadRow
        Readings of a file.
    catalogue : Catalogue
        The parameters.
    water : Water
        The system's water.

    Returns
    -------
    tuple of Sequel
        One for each parameter that the file has readings of.
    """
    places: dict[str, list[int]] = {}
    for place, row in enumerate(rows):
        places.setdefault(row.parameter, []).append(place)
    return tuple(_sequel(name, [rows[at] for at in where], where, catalogue, water) for name, where in places.items())


def _sequel(
    parameter: str, rows: Sequence[ReadRow], places: Sequence[int], catalogue: Catalogue, water: Water
) -> Sequel:
    instants = [row.at for row in rows]
    return Sequel(
        parameter,
        np.array(places, dtype=np.intp),
        np.array([at.timestamp() for at in instants], dtype=np.float64),
        np.array([value(row, catalogue, water) for row in rows], dtype=np.float64),
        min(instants),
        max(instants),
    )


def in_log(sequel: Sequel, seconds: Floats, values: Floats) -> tuple[Flags, Flags]:
    """Return which readings the log has already.

    Parameters
    ----------
    sequel : Sequel
        Readings of one parameter.
    seconds, values : array, shape (m,)
        The log's readings of it in the order of time: instants [s] since the start of 1970 in UTC, and values
        [canonical unit of the parameter].

    Returns
    -------
    tuple of two arrays of bool, shape (n,)
        The readings that are there with the same instant and value, and those with whose instant only another value is
        there: the same figure in a water that was another one, perhaps.
    """
    begin = np.searchsorted(seconds, sequel.seconds, "left")
    end = np.searchsorted(seconds, sequel.seconds, "right")
    there = np.zeros(sequel.seconds.shape, dtype=np.bool_)
    for step in range(int((end - begin).max(initial=0))):
        left = begin + step < end
        beside = values[begin[left] + step]
        there[left] |= np.isclose(sequel.values[left], beside, rtol=_SAME, atol=0.0)
    return there, (end > begin) & ~there


def says(row: ReadRow, noted: Iterable[tuple[datetime, Typed, float | None]], catalogue: Catalogue) -> bool:
    """Return whether one of the readings noted at an instant has the same figure and unit as a reading of a file.

    Parameters
    ----------
    row : ReadRow
        A reading from a file.
    noted : iterable of tuple
        Readings of the same parameter in the log: instant, what was typed, and the value it was taken for
        [canonical unit of the parameter].
    catalogue : Catalogue
        The parameters.

    Returns
    -------
    bool
        Whether the log has it.
    """
    return any(row.key == row_of(at, row.parameter, typed, catalogue, number).key for at, typed, number in noted)


def button_words(number: int, system: str) -> str:
    """Return what the button of the import says."""
    if not number:
        return say("Import into {system}", system=cut(system))
    return say(
        "Import {number} into {system}", number=say_many("{n} reading", "{n} readings", number), system=cut(system)
    )


def there_words(number: int, of: int) -> str:
    """Return how many of the readings are in the log already, or nothing."""
    if not number:
        return ""
    if number == of:
        return say_many("The reading is in the log already.", "Every reading is in the log already.", of)
    return say_many("{n} is in the log already.", "{n} are in the log already.", number)


def done_words(new: int, of: int) -> str:
    """Return what an import has done with so many readings."""
    if not new:
        return say("Nothing was imported. {of}", of=there_words(of, of)).strip()
    undo = say_many("Undo takes it out again.", "Undo takes them out again.", new)
    done = say_many("Imported {n} reading.", "Imported {n} readings.", new)
    return " ".join(filter(None, (done, _were(of - new), undo)))


def _were(number: int) -> str:
    return say_many("{n} was in the log already.", "{n} were in the log already.", number) if number else ""
