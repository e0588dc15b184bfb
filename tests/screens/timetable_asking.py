"""Timetables asked for as the window asks for them, and read back from the words that are shown."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import datetime
from decimal import Decimal
from typing import Any

from evenwater.engine.quantities import Typed
from evenwater.screens import correct, following
from evenwater.screens.following import Kept
from evenwater.screens.timetable_given import FollowedPlan
from evenwater.screens.timetable_rows import TimetableRow
from evenwater.screens.timetable_sheet import Asked, Timetabled, evaluate
from tests.engine.asking import NOW, answered, known, worked
from tests.engine.upkeeps import item, raw

PLAN = "ABCDEF-12"


def pumped(parameter: str, name: str, **more: Any) -> dict[str, Any]:
    """Return a value that is kept by a pump with a name, in steps of a tenth of a millilitre."""
    return item(parameter, name=name, step="0.1 mL", smallest_dose="0.5 mL", **more)


TWO_PART = (pumped("alkalinity", "Head 1", measured="8 dKH"), pumped("calcium", "Head 2", measured="420 mg/L"))
THREE = (*TWO_PART, pumped("nitrate", "Rack pump"))


def typed(wishes: Mapping[str, str]) -> dict[str, Typed]:
    """Return fields as typed; minutes and counts without their unit, as beside a field."""
    return {name: Typed(text, "min" if name == "apart" else "") for name, text in wishes.items()}


def asked(
    *items: dict[str, Any],
    system: Mapping[str, str] | None = None,
    pumps: Mapping[str, Mapping[str, str]] | None = None,
    plans: tuple[FollowedPlan, ...] = (),
    tank: Mapping[str, Any] | None = None,
) -> Asked:
    """Return what is asked: the values that are kept, wishes of the system, and wishes by parameter."""
    question = raw(*items, system=dict(tank or {}))
    names = {one["parameter"] for one in items} | {plan.parameter for plan in plans}
    corrections = {name: typed({"pump": f"record of {name}", **(pumps or {}).get(name, {})}) for name in sorted(names)}
    return Asked(
        question,
        {"name": Typed("North frag bay"), "net_volume": Typed("340", "L"), **typed(system or {})},
        corrections,
        plans,
    )


def timetabled(*items: dict[str, Any], now: datetime = NOW, **wishes: Any) -> Timetabled:
    """Return the timetable, or why there is none."""
    return evaluate(asked(*items, **wishes), known(), now)


def followed(state: str = "waiting", plan_id: str = PLAN, **changes: Any) -> FollowedPlan:
    """Return a plan for alkalinity that was started now."""
    text = worked(system__volume_uncertainty="3 %", pump__name="Head 1", **changes)
    found = following.kept(following.body(answered(text), correct.question_text(text), "jug:abc"), known())
    assert isinstance(found, Kept)
    return FollowedPlan(plan_id, "alkalinity", found, state, "Two readings in a row are above the plan.")


def minute_of(text: str) -> int:
    """Read the clock time a row begins with [min]."""
    found = re.match(r"(\d\d):(\d\d)", text)
    assert found, text
    return 60 * int(found[1]) + int(found[2])


def seconds_of(text: str) -> Decimal:
    """Read a running time [s]."""
    return sum(
        (Decimal(number) * (60 if unit == "min" else 1) for number, unit in re.findall(r"([\d.]+)\u00a0(min|s)", text)),
        Decimal(0),
    )


def doses_of(rows: tuple[TimetableRow, ...], pump: str) -> list[TimetableRow]:
    """Return the rows of one pump."""
    return [row for row in rows if row.pump == pump]
