"""Turns the fields of an upkeep, as typed, into a question; or says what is missing or wrong.

Each value kept is read as the correction that leaves it where it is, so that tank, additive and pump read as they do there.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any

from evenwater.engine import fields, intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reader import Field
from evenwater.engine.reasons import Reason
from evenwater.engine.upkeep_question import Outstanding, UpkeepItem, UpkeepQuestion

EXCHANGE_PER_DAY = Field("exchange.per_day", "volume per day", "L per day", 0.0, 5_000_000.0)
DAYS_LEFT = Field("days_left", "number", "", 0.0, 365.0, above_low=True, bare=True)
RISE_PER_DAY, DOSES_PER_DAY = "rise_per_day", "doses_per_day"
# Where the fields of the correction that keeps a value stand in an item.
_ITEM_PATHS = {"change.parameter": "parameter", "change.measured": "measured", "change.daily_use": "daily_use"}


@dataclass
class _Notes:
    """What is missing and wrong so far; what concerns the tank comes up with every item and is kept once."""

    missing: list[Reason] = field(default_factory=list)
    wrong: list[Reason] = field(default_factory=list)

    def take(self, unread: Unread, here: str = "") -> None:
        """Add what stands in the way of one part of the question, under the part's own path."""
        for reasons, to in ((unread.missing, self.missing), (unread.wrong, self.wrong)):
            for reason in reasons:
                path = _path(reason.path, here)
                if path is not None and (reason.code, path) not in {(r.code, r.path) for r in to}:
                    to.append(replace(reason, path=path))

    @property
    def unread(self) -> Unread:
        """All of it."""
        return Unread(tuple(self.missing), tuple(self.wrong))


def _path(path: str, here: str) -> str | None:
    """Return where a field stands in the question; None of one that an item does not have."""
    if not here or path == "now" or path.startswith("system."):
        return path
    if path.startswith("change."):
        return f"{here}.{_ITEM_PATHS[path]}" if path in _ITEM_PATHS else None
    return f"{here}.{path}"


def upkeep(raw: Raw, catalogue: Catalogue, now: datetime) -> UpkeepQuestion | Unread:
    """Read an upkeep.

    Parameters
    ----------
    raw : mapping
        Table ``system``, a list ``item`` of tables with their own ``additive`` and ``pump``, and perhaps table ``exchange``
        and a list ``planned``, as in a question file; values are ``Typed``, plain text, whole numbers or instants.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    UpkeepQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    notes = _Notes()
    read = [_item(raw, table, n, catalogue, now, notes) for n, table in enumerate(_tables(raw, "item"), start=1)]
    water = intake.water_of(raw)
    planned = tuple(_planned(raw, catalogue, water, notes))
    exchange = Form(raw)
    per_day_l = exchange.number(EXCHANGE_PER_DAY)
    new_water = tuple(_new_water(exchange, catalogue, water))
    notes.take(exchange.unread)
    if not read:
        notes.missing.append(Reason("upkeep_nothing_kept", {}, "item"))
    items = [found for found in read if found is not None]
    if notes.missing or notes.wrong or not items:
        return notes.unread
    first, _ = items[0]
    return UpkeepQuestion(
        now=first.now,
        system=first.system,
        items=tuple(item for _, item in items),
        others=tuple(catalogue.parameters.values()),
        exchange_fraction=(per_day_l or 0.0) / first.system.volume_l,
        new_water=new_water,
        outstanding=planned,
    )


def _tables(raw: Raw, name: str) -> Iterator[Mapping[str, Any]]:
    given = raw.get(name, ())
    if isinstance(given, Sequence) and not isinstance(given, str):
        yield from (table for table in given if isinstance(table, Mapping))


def _item(
    raw: Raw, table: Mapping[str, Any], number: int, catalogue: Catalogue, now: datetime, notes: _Notes
) -> tuple[CorrectionQuestion, UpkeepItem] | None:
    here = f"item.{number}"
    parameter = catalogue.parameters.get(Form(table).text("parameter"))
    told = bool(Form(table).text("measured"))
    measured = table.get("measured") if told or parameter is None else _natural(parameter)
    keeping = {
        **{name: raw[name] for name in ("now", "system") if name in raw},
        **{name: table[name] for name in ("additive", "pump") if name in table},
        "change": {
            "parameter": table.get("parameter", ""), "measured": measured, "target": measured,
            "daily_use": table.get("daily_use", ""),
        },
    }  # fmt: skip
    question = intake.correction(keeping, catalogue, now)
    if not Form(table).text("daily_use"):
        notes.take(Unread((Reason("missing", {"path": "change.daily_use"}, "change.daily_use"),), ()), here)
    if isinstance(question, Unread):
        notes.take(question, here)
        return None
    item = UpkeepItem(
        parameter=question.parameter,
        unit=question.unit,
        value=question.measured if told else None,
        use=question.use,
        additive=question.additive,
        pump=question.pump,
    )
    return question, item


def _natural(parameter: Parameter) -> Typed:
    """Return what stands for a value that was not measured: it is read, and not used."""
    return Typed(str(parameter.natural), parameter.display_unit)


def _planned(raw: Raw, catalogue: Catalogue, water: Water, notes: _Notes) -> Iterator[Outstanding]:
    for number, table in enumerate(_tables(raw, "planned"), start=1):
        r = Form(table)
        name = r.text("parameter")
        parameter = catalogue.parameters.get(name)
        if parameter is None and name:
            choices = tuple(catalogue.parameters)
            r.wrong.append(Reason("unknown_parameter", {"text": name, "choices": choices}, "parameter"))
        elif parameter is None:
            r.missing.append(Reason("missing", {}, "parameter"))
        rise = None if parameter is None else r.number(fields.rise(RISE_PER_DAY, parameter), water)
        days = r.number(DAYS_LEFT)
        doses = r.number(replace(fields.DOSES_PER_DAY, path=DOSES_PER_DAY))
        absent = [path for path in (RISE_PER_DAY, DAYS_LEFT.path) if not r.text(path)]
        r.missing += [Reason("missing", {}, path) for path in absent]
        notes.take(r.unread, f"planned.{number}")
        if parameter is not None and rise is not None and days is not None:
            per_day = intake.DOSES_PER_DAY if doses is None else round(doses)
            yield Outstanding(parameter, rise, days, per_day)


def _new_water(r: Form, catalogue: Catalogue, water: Water) -> Iterator[tuple[str, float]]:
    for parameter in catalogue.parameters.values():
        value = r.number(fields.concentration(f"exchange.{parameter.name}", parameter), water)
        if value is not None:
            yield parameter.name, value
