"""How a pump's flow changes with its running hours, as the sheet shows it: the calibrations, their line, what is expected today."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

import numpy as np

from evenwater.engine import fields
from evenwater.engine.pump_wear import (
    LIFE_HOURS,
    PER_HOURS,
    Calibrated,
    Head,
    Wear,
    head,
    hours_per_day,
    objections,
    wear,
)
from evenwater.engine.reasons import Reason
from evenwater.screens import pump_fields, words
from evenwater.screens.calibration_words import flow as flow_words
from evenwater.screens.calibration_words import hours as hours_words
from evenwater.screens.calibration_words import share
from evenwater.screens.pump_sheet import Measured, Values, quantity, text_of
from evenwater.screens.shown import NBSP, date_words, figure, significant, with_unit
from evenwater.screens.views import Floats
from evenwater.wording import say, say_many

_HEAD_HOURS, _HEAD_LIFE = (pump_fields.PUMP_FIELDS[f"pump.head_{name}"] for name in ("hours", "life"))


@dataclass(frozen=True)
class WearView:
    """What the chart paints.

    ``hours`` [h] and ``flows``, ``lows``, ``highs`` [mL/min] of the calibrations, shape (k,), in order of the hours; ``counts`` (k,) says
    which of them the line goes through, ``chosen`` is the place of the one that is shown, or -1. ``slope`` [mL/min per h] and
    ``expected`` with ``half_width`` [mL/min] at ``now`` [h] make the line; None where there is none. ``setting`` is the flow in
    use [mL/min]. ``spoken`` says it all in words, ``why`` why there is no line.
    """

    hours: Floats
    flows: Floats
    lows: Floats
    highs: Floats
    counts: tuple[bool, ...]
    chosen: int
    now: float | None
    setting: float | None
    slope: float | None = None
    expected: float | None = None
    half_width: float | None = None
    why: str = ""
    spoken: str = ""


@dataclass(frozen=True)
class Drift:
    """How a pump wears: ``wear`` where a line can be drawn, else ``why`` not; ``head`` what is left of the head.

    ``hours`` the head has run today [h], ``estimated`` from the running hours in a day, ``per_day`` [h/d]; None where nobody knows.
    """

    points: tuple[Calibrated, ...]
    wear: Wear | None
    why: str
    head: Head | None
    hours: float | None
    estimated: bool
    per_day: float | None


def drift(pump: Values, calibrations: Sequence[Measured], by_doses: float, now: datetime) -> Drift:
    """Return what the calibrations of the head in use say of a pump.

    Parameters
    ----------
    pump : mapping of str to Typed
        The pump's fields.
    calibrations : sequence of Measured
        All its calibrations; those that are to be repeated, or were made with an earlier head, do not count.
    by_doses : float
        How long the pump runs in a day for the doses in use [h/d]; counts where no two calibrations tell.
    now : datetime
        The present, with zone.

    Returns
    -------
    Drift
        Line, head and hours.
    """
    points = tuple(sorted(_points(pump, calibrations, now), key=lambda point: point.at))
    setting, typed = quantity(pump, fields.FLOW), quantity(pump, _HEAD_HOURS)
    life = quantity(pump, _HEAD_LIFE)
    against = objections(points[:-1], points[-1], now) if len(points) > 1 else ()
    per_day = (None if against or not points else hours_per_day(points)) or by_doses or None
    ran, estimated = _hours(points, None if typed is None else typed / 3600.0, per_day, now)
    left = None if ran is None else head(ran, LIFE_HOURS if life is None else life / 3600.0, per_day, now)
    found: Wear | Reason | None = None
    if against:
        found = against[0]
    elif points and ran is not None:
        found = wear(points, ran, setting, per_day, now)
    why = words.sentence(found) if isinstance(found, Reason) else ""
    return Drift(points, None if isinstance(found, Reason) else found, why, left, ran, estimated, per_day)


def _points(pump: Values, calibrations: Sequence[Measured], now: datetime) -> Iterator[Calibrated]:
    fitted = _fitted(pump)
    for each in calibrations:
        if each.answer is None or not each.answer.passed or each.at is None or each.hours is None:
            continue
        if fitted is None or each.at.astimezone(now.tzinfo).date() >= fitted:
            best = each.answer.chosen
            yield Calibrated(each.at, each.hours, best.summary.mean, best.known.standard)


def _fitted(pump: Values) -> date | None:
    try:
        return date.fromisoformat(text_of(pump, "head_fitted"))
    except ValueError:
        return None


def _hours(
    points: Sequence[Calibrated], typed: float | None, per_day: float | None, now: datetime
) -> tuple[float | None, bool]:
    """Return how long the head has run today: as typed, or since the newest calibration at so many hours in a day."""
    if not points:
        return typed, False
    last = points[-1]
    if typed is not None and typed > last.hours:
        return typed, False
    days = max(0.0, (now - last.at) / timedelta(days=1))
    return last.hours + days * (per_day or 0.0), days >= 1.0 and per_day is not None


def dots(calibrations: Sequence[Measured]) -> tuple[Measured, ...]:
    """Return the calibrations that have a flow and running hours, in the order of the hours: what the chart paints."""
    found = [each for each in calibrations if each.answer is not None and each.hours is not None]
    return tuple(sorted(found, key=lambda each: each.hours or 0.0))


def view(found: Drift, pump: Values, painted: Sequence[Measured], shown: str) -> WearView | None:
    """Return what the chart paints.

    Parameters
    ----------
    found : Drift
        How the pump wears.
    pump : mapping of str to Typed
        Its fields.
    painted : sequence of Measured
        Its calibrations as ``dots`` puts them in order.
    shown : str
        Id of the calibration that is shown.

    Returns
    -------
    WearView or None
        None while no calibration has both a flow and running hours.
    """
    if not painted:
        return None
    bests = [each.answer.chosen for each in painted if each.answer is not None]
    flows = np.array([best.summary.mean for best in bests])
    halves = np.array([best.known.half_width for best in bests])
    counted = {(point.at, point.hours) for point in found.points}
    wears = found.wear
    return WearView(
        hours=np.array([each.hours or 0.0 for each in painted]),
        flows=flows,
        lows=np.maximum(flows - halves, 0.0),
        highs=flows + halves,
        counts=tuple((each.at, each.hours) in counted for each in painted),
        chosen=next((n for n, each in enumerate(painted) if each.record_id == shown), -1),
        now=found.hours,
        setting=quantity(pump, fields.FLOW),
        slope=None if wears is None else wears.drift * wears.reference / PER_HOURS,
        expected=None if wears is None else wears.expected,
        half_width=None if wears is None else wears.expected_half_width,
        why=found.why,
        spoken=_spoken(found, flows, painted),
    )


def _spoken(found: Drift, flows: Floats, painted: Sequence[Measured]) -> str:
    said = [
        say("at {hours} {flow}", hours=hours_words(each.hours or 0.0), flow=flow_words(float(flow)))
        for each, flow in zip(painted, flows.tolist(), strict=True)
    ]
    count = say_many("1 calibration", "{n} calibrations", len(said))
    line = " ".join(f"{what}: {gives}." for what, gives in _told(found))
    return f"{count}: {'; '.join(said)}. {line or found.why}".strip()


def _told(found: Drift) -> Iterator[tuple[str, str]]:
    """Yield what the line says, in pairs of what it is and what it gives."""
    if found.wear is None:
        return
    yield say("Expected today"), flow_words(found.wear.expected)
    for each in found.wear.leaves:
        yield say("{limit} off", limit=share(each.limit)), until(each.hours, each.at, found)


def point_words(found: WearView, number: int) -> str:
    """Return what one calibration of the chart says: hours, flow and its interval.

    Parameters
    ----------
    found : WearView
        What is painted.
    number : int
        Place of the calibration, from 0.

    Returns
    -------
    str
        Words in one line.
    """
    at, flow, low, high = (float(series[number]) for series in (found.hours, found.flows, found.lows, found.highs))
    does_not = "" if found.counts[number] else say(", does not count")
    return say(
        "at {at}: {flow}, from {low} to {high}{does_not}",
        at=hours_words(at),
        flow=flow_words(flow),
        low=significant(low, 3),
        high=significant(high, 3),
        does_not=does_not,
    )


def until(hours: float, at: datetime | None, found: Drift) -> str:
    """Say when so many more hours will have run: the date where the hours in a day are known."""
    if hours <= 0.0:
        return say("already")
    said = say("in {hours}", hours=hours_words(hours))
    return f"{said}, {date_words(at).replace(' ', NBSP)}" if at is not None and found.per_day else said


def hours_hint(found: Drift) -> str:
    """Say how long the head has run by now, as it is estimated; nothing where it is not."""
    if not found.estimated or found.hours is None or found.per_day is None:
        return ""
    return say(
        "about {hours}, at {per_day} a day",
        hours=with_unit(figure(found.hours, 0), "h"),
        per_day=with_unit(significant(found.per_day, 2), "h"),
    )
