"""Judges the question of an upkeep before any planning: what makes it unanswerable, said all at once."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from evenwater.engine import judge
from evenwater.engine.quantities import from_canonical
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep_question import UpkeepItem, UpkeepQuestion

_LARGEST = 1e9
# The least that is used, exchanged, planned or left of a plan, and still makes sense.
_TRACE = 1e-9
_OUT_OF_REACH = frozenset({"not_a_number", "out_of_range"})
# A day's exchange of ten volumes is a flow-through system.
_MOST_EXCHANGED = 10.0


def objections(q: UpkeepQuestion) -> tuple[Reason, ...]:
    """Return why a question must be refused, or nothing when it may be planned.

    Parameters
    ----------
    q : UpkeepQuestion
        The whole question.

    Returns
    -------
    tuple of Reason
        Every objection, in the order of the sheet.
    """
    if not q.items:
        return (Reason("upkeep_nothing_kept", {}, "item"),)
    unreadable = (*_figures(q), *(r for n, item in enumerate(q.items, 1) for r in _item(q, item, n, shown=False)))
    found = tuple(dict.fromkeys(_key(r) for r in unreadable if r.code in _OUT_OF_REACH))
    if found:
        return tuple(next(r for r in unreadable if _key(r) == key) for key in found)
    names = [item.parameter.name for item in q.items]
    twice = tuple(
        Reason("upkeep_twice", {"parameter": name}, f"item.{n + 1}.parameter")
        for n, name in enumerate(names)
        if name in names[:n]
    )
    return (*twice, *(r for n, item in enumerate(q.items, 1) for r in _item(q, item, n, shown=True)))


def _key(reason: Reason) -> tuple[str, str]:
    """Return what tells two reasons apart: those about the tank come up again with every item."""
    return reason.code, reason.path


def _figures(q: UpkeepQuestion) -> Iterator[Reason]:
    """Yield the figures of the question itself that are not finite, or that no field would admit (H30)."""
    figures = [("exchange.per_day", q.exchange_fraction, 0.0, _MOST_EXCHANGED)]
    figures += [(f"exchange.{name}", value, 0.0, _LARGEST) for name, value in q.new_water]
    for number, o in enumerate(q.outstanding, start=1):
        figures += [
            (f"planned.{number}.rise_per_day", o.rise, _TRACE, _LARGEST),
            (f"planned.{number}.days_left", o.days_left, _TRACE, _LARGEST),
            (f"planned.{number}.doses_per_day", o.doses_per_day, 1.0, 1440.0),
        ]
    for path, value, low, high in figures:
        if not math.isfinite(value):
            yield Reason("not_a_number", {"text": str(value)}, path)
        elif not low <= value <= high or 0.0 < value < _TRACE:
            yield Reason(
                "out_of_range", {"number": value, "low": low, "high": high, "unit": "", "above_low": False}, path
            )


def _item(q: UpkeepQuestion, item: UpkeepItem, number: int, shown: bool) -> Iterator[Reason]:
    """Yield what ``judge`` says to the correction that keeps the value where it is, but about its target."""
    here = f"item.{number}"
    paths = {"change.measured": f"{here}.measured", "change.daily_use": f"{here}.daily_use"}
    for reason in judge.objections(_kept(q, item, shown)):
        table = reason.path.partition(".")[0]
        if table in ("additive", "pump"):
            yield replace(reason, path=f"{here}.{reason.path}")
        elif table == "system":
            yield reason
        elif reason.path in paths:
            yield replace(reason, path=paths[reason.path])
    if item.use is None or item.use <= _TRACE:
        yield Reason("upkeep_no_use", {"parameter": item.parameter.name}, f"{here}.daily_use")


def _kept(q: UpkeepQuestion, item: UpkeepItem, shown: bool) -> CorrectionQuestion:
    """Return the correction that keeps a value; its reading in the keeper's unit only once it can be converted."""
    p = item.parameter
    value = p.canonical(p.natural) if item.value is None else item.value
    unit = item.unit if shown else KINDS[p.kind].canonical.id
    number = from_canonical(value, p.kind, unit, q.system.water) if shown else value
    return CorrectionQuestion(
        now=q.now,
        system=q.system,
        parameter=p,
        unit=unit,
        measured=value,
        measured_as=(number, unit),
        measured_at=None,
        target=value,
        use=item.use or 0.0,
        fastest=None,
        reason="",
        additive=item.additive,
        pump=item.pump,
        others=q.others,
    )
