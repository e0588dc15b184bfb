"""A plan that is followed, without its widgets: how it is kept in the log, and what its retests say."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields
from datetime import datetime, timedelta
from typing import Any

from evenwater.engine import following, quantities
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Answer
from evenwater.engine.following import Course, Following
from evenwater.engine.quantities import Typed, Water, from_canonical
from evenwater.engine.uncertainty import Spread
from evenwater.engine.units import KINDS
from evenwater.screens.shown import Shown

# Another number when what is kept changes its meaning; a plan of an unknown form is not followed, only ended.
FORM = 1
# So many hours of a plan's doses count as one where the use is learned: no test is finer.
_LUMP = timedelta(hours=4)
_INSTANTS = ("started", "retest_at", "ends_at", "valid_until")


@dataclass(frozen=True)
class Kept:
    """A plan as the log keeps it: course, question as text, the keeper's unit, the water, net volume [L] and batch."""

    course: Course
    question: Mapping[str, Any]
    parameter: Parameter
    unit: str
    water: Water
    volume_l: float
    batch_id: str

    def shown(self, now: datetime) -> Shown:
        """Return the writer of values in the keeper's unit, and of instants in the zone of ``now``."""
        return Shown(self.parameter, self.unit, self.water, now.tzinfo)


def body(answer: Answer, question: Mapping[str, Any], batch_id: str) -> str:
    """Return what is kept of a plan when it is started.

    Parameters
    ----------
    answer : Answer
        The plan.
    question : mapping
        Its question as plain text, as a card keeps it.
    batch_id : str
        Id of the batch it was reckoned for; empty when there is none.

    Returns
    -------
    str
        JSON text. The course stands in it as figures: a later version may plan differently, but not this plan.
    """
    q = answer.question
    course = following.course(answer)
    figures: dict[str, Any] = {f.name: getattr(course, f.name) for f in fields(Course)}
    for name in _INSTANTS:
        figures[name] = figures[name].isoformat()
    figures["spread"] = {f.name: getattr(course.spread, f.name) for f in fields(Spread)}
    return json.dumps(
        {
            "form": FORM,
            "question": question,
            "parameter": q.parameter.name,
            "unit": q.unit,
            "salinity": q.system.water.salinity,
            "temperature_c": q.system.water.temperature_c,
            "volume_l": q.system.volume_l,
            "batch": batch_id,
            "course": figures,
        }
    )


def kept(text: str, catalogue: Catalogue) -> Kept | None:
    """Return a plan from what was kept of it; None when it cannot be read, and then it must not be followed.

    Parameters
    ----------
    text : str
        What ``body`` returned.
    catalogue : Catalogue
        The parameters.

    Returns
    -------
    Kept or None
        The plan.
    """
    try:
        found = json.loads(text)
        if found["form"] != FORM:
            return None
        figures = dict(found["course"])
        for name in _INSTANTS:
            figures[name] = datetime.fromisoformat(figures[name])
        figures["spread"] = Spread(**figures["spread"])
        return Kept(
            course=Course(**figures),
            question=dict(found["question"]),
            parameter=catalogue.parameters[found["parameter"]],
            unit=found["unit"],
            water=Water(found["salinity"], found["temperature_c"]),
            volume_l=found["volume_l"],
            batch_id=found["batch"],
        )
    except (ValueError, KeyError, TypeError):
        return None


def follow(plan: Kept, readings: Sequence[tuple[datetime, float]], now: datetime) -> Following:
    """Hold readings [canonical unit] against a plan."""
    return following.follow(plan.course, readings, now)


def given(plan: Kept, until: datetime) -> list[tuple[datetime, float, float]]:
    """Return what a plan gave, a few hours at a time, for whoever learns the use from the log.

    Parameters
    ----------
    plan : Kept
        The plan.
    until : datetime
        When it ended, or the present.

    Returns
    -------
    list of tuple (datetime, float, float)
        Instants, amounts [mL], and what a millilitre carries [canonical unit times L per mL].
    """
    course = plan.course
    carries = course.per_ml * plan.volume_l
    found, before, at = [], 0.0, course.started
    while at < until:
        at = min(at + _LUMP, until)
        so_far = following.doses_until(course, at)[1]
        if so_far > before:
            found.append((at, so_far - before, carries))
        before = so_far
    return found


def planned(plan: Kept, now: datetime) -> dict[str, Any] | None:
    """Return what is left of the ramp as an upkeep's question has it; None once the ramp is over.

    Parameters
    ----------
    plan : Kept
        The plan that is followed.
    now : datetime
        The present.

    Returns
    -------
    dict or None
        A table ``planned``.
    """
    course, kind = plan.course, plan.parameter.kind
    left = (course.ends_at - now) / timedelta(days=1)
    rise = course.dose_ml * course.per_day * course.per_ml - course.use
    if left <= 0.0 or rise <= 0.0:
        return None
    return {
        "parameter": plan.parameter.name,
        "rise_per_day": Typed(f"{rise:.8f}", f"{KINDS[kind].canonical.id} per day"),
        "days_left": Typed(f"{left:.6f}"),
        "doses_per_day": Typed(str(course.per_day)),
    }


def reading_fields(plan: Kept, value: float, at: datetime) -> dict[str, Typed]:
    """Return a reading as the fields of a correction, to plan again from it.

    Parameters
    ----------
    plan : Kept
        The plan that is followed, for the keeper's unit.
    value : float
        The reading [canonical unit].
    at : datetime
        When it was taken.

    Returns
    -------
    dict of str to Typed
        ``measured`` and ``measured_at``.
    """
    number = from_canonical(value, plan.parameter.kind, plan.unit, plan.water)
    digits = 5 if plan.unit.startswith("SG") else 4
    return {
        "measured": Typed(quantities.significant(number, digits), plan.unit),
        "measured_at": Typed(at.isoformat(timespec="seconds")),
    }


def unit_words(plan: Kept) -> str:
    """Return the keeper's unit as it is shown."""
    return KINDS[plan.parameter.kind].unit(plan.unit).shown
