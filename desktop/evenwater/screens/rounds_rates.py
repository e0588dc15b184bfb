"""How much is dosed in a day: of the upkeep of a system, and of a live plan."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from evenwater.engine import upkeep_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.form import Unread
from evenwater.engine.upkeep import UpkeepAnswer, solve
from evenwater.screens import following


def upkeep_rates(raw: Mapping[str, Any], catalogue: Catalogue, now: datetime) -> dict[str, float]:
    """Return what an upkeep gives in a day.

    Parameters
    ----------
    raw : mapping
        The question's tables as typed, see ``upkeep_intake.upkeep``.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone.

    Returns
    -------
    dict of str to float
        Volume per day [mL] by parameter; empty while there is no answer, since then nobody knows.
    """
    question = upkeep_intake.upkeep(raw, catalogue, now)
    answer = None if isinstance(question, Unread) else solve(question)
    if not isinstance(answer, UpkeepAnswer):
        return {}
    return {each.item.parameter.name: each.in_24_hours_ml for each in answer.doses}


def plan_takes(body: str, catalogue: Catalogue, now: datetime) -> tuple[str, float] | None:
    """Return what a plan that is followed gives in a day: on its ramp, and after it what keeps the value there.

    Parameters
    ----------
    body : str
        The plan as the log keeps it.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone.

    Returns
    -------
    tuple of (str, float) or None
        Id of the batch it is dosed from, empty when there is none, and volume per day [mL]; None when the plan cannot be read.
    """
    plan = following.kept(body, catalogue)
    if plan is None:
        return None
    course = plan.course
    return plan.batch_id, (course.dose_ml if now < course.ends_at else course.upkeep_ml) * course.per_day
