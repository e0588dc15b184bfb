"""Turns the fields of a timetable, as typed, into a question; or says what is missing or wrong."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import combinations
from typing import Any

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.intake import DOSES_PER_DAY, LARGEST_SHARE
from evenwater.engine.reader import Field
from evenwater.engine.reasons import Reason
from evenwater.engine.schedule import default_step
from evenwater.engine.timetable_question import (
    APART_MIN,
    DAY_MIN,
    MOST_DOSES,
    OPPOSING,
    Apart,
    Quiet,
    TimedPump,
    TimetableQuestion,
)

KEEP_APART = Field("keep_apart", "time", "min", 0.0, DAY_MIN / 2)
PER_DAY = Field("per_day", "volume per day", "mL per day", 0.0, 1_000_000.0, above_low=True)
LARGEST_DOSE = Field("largest_dose", "dose", "mL", 0.0, 10_000.0, above_low=True)
DOSES = Field("doses_per_day", "number", "", 1.0, MOST_DOSES, bare=True, whole=True)
CLOSEST = Field("closest", "time", "min", 0.0, DAY_MIN)
_HOURS = re.compile(r"([01]?\d|2[0-4]):([0-5]\d) ?(?:to|-|–) ?([01]?\d|2[0-4]):([0-5]\d)", re.ASCII)


def timetable(raw: Raw, catalogue: Catalogue) -> TimetableQuestion | Unread:
    """Read a timetable.

    Parameters
    ----------
    raw : mapping
        Lists ``pump`` and perhaps ``apart`` of tables, and perhaps ``keep_apart``, ``quiet`` and ``one_at_a_time``, as in a
        question file; values are ``Typed``, plain text or whole numbers.
    catalogue : Catalogue
        Parameters.

    Returns
    -------
    TimetableQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form({**raw, **{name: _numbered(raw.get(name, ())) for name in ("pump", "apart")}})
    keep_s = r.number(KEEP_APART)
    apart_min = float(APART_MIN) if keep_s is None else keep_s / 60.0
    pumps = [_pump(r, f"pump.{number}", catalogue) for number in r.raw["pump"]]
    names = [r.text(f"pump.{number}.name").casefold() for number in r.raw["pump"]]
    said = list(_pairs(r, names, apart_min)) if pumps else []
    quiet = _quiet(r, "quiet")
    if not pumps:
        r.missing.append(Reason("timetable_no_pumps", {}, "pump"))
    if r.missing or r.wrong:
        return r.unread
    read = tuple(pump for pump in pumps if pump is not None)
    named = {frozenset((pair.first, pair.second)) for pair in said}
    opposing = (
        Apart(one, other, apart_min)
        for one, other in combinations(range(len(read)), 2)
        if {read[one].raises, read[other].raises} == set(OPPOSING) and frozenset((one, other)) not in named
    )
    return TimetableQuestion(read, (*opposing, *said), r.flag("one_at_a_time"), quiet)


def _numbered(rows: Any) -> Mapping[str, Any]:
    """Return a list of tables as a table of them, so that a path such as ``pump.3.flow`` leads into it."""
    if not isinstance(rows, Sequence) or isinstance(rows, str):
        return {}
    return {str(number): row for number, row in enumerate(rows, start=1)}


def _at(spec: Field, here: str) -> Field:
    """Return a field as it stands in one of several tables."""
    return replace(spec, path=f"{here}.{spec.path.rpartition('.')[2]}")


def _pump(r: Form, here: str, catalogue: Catalogue) -> TimedPump | None:
    if not r.text(f"{here}.name"):
        r.missing.append(Reason("missing", {}, f"{here}.name"))
    raises = r.text(f"{here}.raises")
    if raises and raises not in catalogue.parameters:
        choices = tuple(catalogue.parameters)
        r.wrong.append(Reason("unknown_parameter", {"text": raises, "choices": choices}, f"{here}.raises"))
    per_day_l = _needed(r, _at(PER_DAY, here))
    flow = _needed(r, _at(fields.FLOW, here))
    smallest_ml, step_ml = _ml(r, _at(fields.SMALLEST_DOSE, here)), _ml(r, _at(fields.STEP, here))
    largest_ml = _ml(r, _at(LARGEST_DOSE, here))
    share = r.number(_at(fields.LARGEST_SHARE, here))
    closest_s = r.number(_at(CLOSEST, here))
    wished = r.number(_at(DOSES, here))
    fewest, most = (r.number(replace(DOSES, path=f"{here}.{name}")) for name in ("fewest_doses", "most_doses"))
    quiet = _quiet(r, f"{here}.quiet")
    if per_day_l is None or flow is None:
        return None
    doses = round(_between(DOSES_PER_DAY, fewest, most) if wished is None else wished)
    low, high = doses if fewest is None else round(fewest), doses if most is None else round(most)
    if not low <= doses <= high:
        params = {"name": r.text(f"{here}.name"), "fewest": low, "doses": doses, "most": high}
        r.wrong.append(Reason("timetable_numbers", params, f"{here}.doses_per_day"))
        return None
    per_day_ml = 1000.0 * per_day_l
    return TimedPump(
        name=r.text(f"{here}.name"),
        per_day_ml=per_day_ml,
        flow_ml_per_min=flow,
        step_ml=default_step(per_day_ml / doses) if step_ml is None else step_ml,
        smallest_ml=smallest_ml or 0.0,
        largest_ml=largest_ml,
        largest_share=LARGEST_SHARE if share is None else share / 100.0,
        doses=doses,
        fewest=low,
        most=high,
        closest_min=None if closest_s is None else math.ceil(round(closest_s / 60.0, 9)),
        raises=raises,
        quiet=quiet,
    )


def _between(usual: int, fewest: float | None, most: float | None) -> float:
    """Return the usual number of doses, or the nearest to it of those allowed."""
    return max(fewest or 1.0, min(float(usual), most or float(usual)))


def _needed(r: Form, spec: Field) -> float | None:
    before = len(r.wrong)
    value = r.number(spec)
    if value is None and len(r.wrong) == before:
        r.missing.append(Reason("missing", {}, spec.path))
    return value


def _ml(r: Form, spec: Field) -> float | None:
    """Return a volume that is small [mL]."""
    litres = r.number(spec)
    return litres if litres is None or spec.kind == "dose" else 1000.0 * litres


def _pairs(r: Form, names: Sequence[str], usual_min: float) -> Iterator[Apart]:
    for number in r.raw["apart"]:
        here = f"apart.{number}"
        places = [_place(r, f"{here}.{which}", names) for which in ("first", "second")]
        seconds = r.number(replace(KEEP_APART, path=f"{here}.at_least"))
        first, second = places
        if first is not None and second is not None:
            yield Apart(first, second, usual_min if seconds is None else seconds / 60.0, f"{here}.at_least")


def _place(r: Form, path: str, names: Sequence[str]) -> int | None:
    """Return the place of a pump that is named."""
    text = r.text(path)
    if not text:
        r.missing.append(Reason("missing", {}, path))
    elif not any(names):
        r.missing.append(Reason("missing", {}, "pump.1.name"))
    elif text.casefold() not in names:
        choices = tuple(filter(None, (r.text(f"pump.{number}.name") for number in r.raw["pump"])))
        r.wrong.append(Reason("timetable_which_pump", {"text": text, "choices": choices}, path))
    else:
        return names.index(text.casefold())
    return None


def _quiet(r: Form, path: str) -> tuple[Quiet, ...]:
    """Return the hours written like "22:00 to 07:00", several with a comma between them."""
    text = " ".join(r.text(path).split())
    found = []
    for part in text.split(",") if text else ():
        match = _HOURS.fullmatch(part.strip())
        minutes = [] if match is None else [60 * int(match[k]) + int(match[k + 1]) for k in (1, 3)]
        if not minutes or max(minutes) > DAY_MIN or minutes[0] % DAY_MIN == minutes[1] % DAY_MIN:
            r.wrong.append(Reason("timetable_hours", {"text": text}, path))
            return ()
        found.append(Quiet(minutes[0] % DAY_MIN, minutes[1] % DAY_MIN))
    return tuple(found)
