"""Why each input is asked for, in a sentence or two: what it is, where to read it off, what is taken when it is empty."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from evenwater.engine import (
    calibration,
    exchange_intake,
    exchange_pair,
    foods_keeping,
    foods_question,
    intake,
    jug_intake,
    pump_wear,
    recovery_question,
    stock,
    timetable_question,
    water_limits,
)
from evenwater.engine.quantities import Water
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.screens.shown import figure
from evenwater.wording import say

FILE = "why.toml"

# Forms name their fields as a question does, not as the record in which they are kept.
_TABLES = {"change": "correction", "additive": "batch"}
_FIELDS = {
    "stock": "correction.stock",
    "pump": "correction.pump",
    "batch.also.dissolved": "batch.also_dissolved",
    "batch.contents": "batch.chemical",
    "batch.label.dose": "batch.label_dose",
    "batch.label.water": "batch.label_water",
    "batch.label.raises": "batch.label_raises",
    "recovery.volume": "recovery.ran_in",
    "recovery.additive": "recovery.stock",
    "water.exchanged": "system.exchanged",
}
_RUN = re.compile(r"run_\d+_")


@dataclass(frozen=True)
class Why:
    """What is said of an input, and the keys of the terms of the glossary that are offered with it."""

    text: str
    terms: tuple[str, ...] = ()


class Whys:
    """What is said of every input, by its topic."""

    def __init__(self, entries: Mapping[str, Mapping[str, Mapping[str, Any]]]) -> None:
        """Take the entries of the file: a table for each kind of record, an entry for each field."""
        self._entries = {f"{kind}.{name}": entry for kind, fields in entries.items() for name, entry in fields.items()}

    @property
    def topics(self) -> tuple[str, ...]:
        """Every topic there is something to say of."""
        return tuple(self._entries)

    def of(self, topic: str) -> Why | None:
        """Return what is said of a topic, or None where nothing is."""
        entry = self._entries.get(topic)
        if entry is None:
            return None
        return Why(say(str(entry["text"]), **figures()), tuple(entry.get("terms", ())))


def load(folder: Path) -> Whys:
    """Read what is said of the inputs from the resources."""
    with (folder / FILE).open("rb") as stream:
        return Whys(tomllib.load(stream))


def topic_of(asked: str) -> str:
    """Return what an input is about: the kind of its record and the name of its field.

    Parameters
    ----------
    asked : str
        What its form says of it: the form and the field's path in it, as in ``/change.measured`` or ``recovery/change.measured``. The form
        is named where the path does not tell what its fields belong to.

    Returns
    -------
    str
        Topic, such as ``correction.measured``.
    """
    form, _, path = asked.partition("/")
    table, _, rest = path.partition(".")
    if form == "new_water":
        # What it holds is asked for each parameter alike.
        return f"water.{path if path == 'salinity' else 'value'}"
    if table == "hold":
        name = f"{form}.hold"
    elif form:
        # The wishes for a pump stand below its parameter, the fields of a recovery below the tables of its question.
        name = f"{form}.{rest or path}"
    else:
        name = f"{_TABLES.get(table, table)}.{_RUN.sub('run_', rest)}" if rest else path
    return _FIELDS.get(name, name)


def figures() -> dict[str, str]:
    """Return the figures that the texts quote, as the engine has them, written for the keeper."""
    water = Water()
    return {
        "filled": _percent(VOLUME_UNCERTAINTY["measured by filling"]),
        "dosed": _percent(VOLUME_UNCERTAINTY["dose and test"]),
        "dimensions": _percent(VOLUME_UNCERTAINTY["dimensions"]),
        "unknown": _percent(VOLUME_UNCERTAINTY["unknown"]),
        "salinity": figure(water.salinity, 1),
        "temperature": figure(water.temperature_c, 1),
        "ph": figure(water_limits.PH_ASSUMED, 1),
        "level": _percent(jug_intake.LEVEL_ACCURACY),
        "room": figure(stock.ROOM_C, 1),
        "doses": str(intake.DOSES_PER_DAY),
        "share": _percent(intake.LARGEST_SHARE),
        "life": figure(pump_wear.LIFE_HOURS, 0),
        "runs": str(calibration.FEWEST_RUNS),
        "warm": figure(foods_keeping.WARM_DAYS, 0),
        "protein": figure(foods_question.PROTEIN_PER_NITROGEN, 2),
        "week": figure(exchange_pair.WEEK_DAYS, 0),
        "ahead": figure(exchange_intake.DAYS_AHEAD, 0),
        "apart": str(timetable_question.APART_BETTER_MIN),
        "least_apart": str(timetable_question.APART_MIN),
        "largest": _percent(recovery_question.LARGEST_SHARE),
    }


def _percent(share: float) -> str:
    return figure(100.0 * share, 1)
