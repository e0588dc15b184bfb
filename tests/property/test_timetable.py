"""What holds of any timetable: separation, limits, quiet hours and sums, by two checkers; and nothing that is asked ever raises."""

from __future__ import annotations

import json
import math
import random
from dataclasses import fields, replace
from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from evenwater import headless_timetable
from evenwater.engine.form import Unread
from evenwater.engine.timetable import Refused, TimetableAnswer, TimetableQuestion, solve
from evenwater.engine.timetable_check import Told, look
from evenwater.engine.timetable_instants import instants
from evenwater.engine.timetable_intake import timetable
from evenwater.engine.timetable_question import Apart, Quiet, TimedPump
from evenwater.screens import words
from tests.engine.asking import known
from tests.engine.timetables import PAIR, drawn, faults


def holds(question: TimetableQuestion) -> TimetableAnswer | None:
    """Plan a question and hold the answer against everything; None when it was refused."""
    result = solve(question)
    if isinstance(result, Refused):
        assert result.reasons
        assert all(reason.code != "timetable_disagrees" for reason in result.reasons)
        assert all(words.sentence(reason) for reason in result.reasons)
        return None
    assert faults(result) == []
    assert look(question, [Told(row.minute, row.pump, row.ml, row.more_ml) for row in result.rows]).faults == ()
    return result


@pytest.mark.parametrize("start", range(0, 300, 60))
def test_300_timetables_hold_by_both_checkers(start: int) -> None:
    answered = [holds(drawn(seed)) is not None for seed in range(start, start + 60)]
    assert sum(answered) > 45


@settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(seed=st.integers(300, 10**6))
def test_any_timetable_holds_by_both_checkers(seed: int) -> None:
    holds(drawn(seed))


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])
@given(seed=st.integers(0, 10**6), factor=st.sampled_from([1000.0, 0.001, 0.5, 4.0]))
def test_the_unit_of_volume_does_not_matter(seed: int, factor: float) -> None:
    question = drawn(seed)

    def turned(ml: float) -> float:
        return float(f"{ml * factor:.12g}")

    other = replace(question, pumps=tuple(
        replace(
            pump, per_day_ml=turned(pump.per_day_ml), flow_ml_per_min=turned(pump.flow_ml_per_min), step_ml=turned(pump.step_ml),
            smallest_ml=turned(pump.smallest_ml), largest_ml=None if pump.largest_ml is None else turned(pump.largest_ml),
        )
        for pump in question.pumps
    ))  # fmt: skip
    first, second = solve(question), solve(other)
    assert isinstance(first, Refused) == isinstance(second, Refused)
    if isinstance(first, TimetableAnswer) and isinstance(second, TimetableAnswer):
        assert [(row.minute, row.pump) for row in first.rows] == [(row.minute, row.pump) for row in second.rows]
        assert [row.ml * factor for row in first.rows] == pytest.approx([row.ml for row in second.rows], rel=1e-9)


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])
@given(seed=st.integers(0, 10**6))
def test_looser_wishes_never_lose_a_timetable(seed: int) -> None:
    question = drawn(seed)
    if isinstance(solve(question), Refused):
        return
    looser = replace(
        question, quiet=(), one_at_a_time=False, apart=tuple(replace(pair, minutes=15.0) for pair in question.apart),
        pumps=tuple(replace(pump, quiet=(), closest_min=None, largest_share=1.0) for pump in question.pumps),
    )  # fmt: skip
    assert holds(looser) is not None


@settings(max_examples=30, suppress_health_check=[HealthCheck.too_slow])
@given(
    seed=st.integers(0, 10**6),
    zone=st.sampled_from(["Europe/Berlin", "America/New_York", "Asia/Kathmandu"]),
    day=st.integers(0, 360),
)
def test_H17_no_24_hours_hold_more_than_a_day_and_a_dose(seed: int, zone: str, day: int) -> None:
    answer = solve(drawn(seed))
    if isinstance(answer, Refused):
        return
    set_at = datetime(2026, 1, 1, tzinfo=UTC) + timedelta(days=day)
    date = set_at.date()
    given_doses = [
        dose for k in range(4) for dose in instants(answer, date + timedelta(days=k), ZoneInfo(zone), set_at)
    ]
    for place, of in enumerate(answer.pumps):
        own = [dose for dose in given_doses if dose.pump == place]
        most = of.in_day_ml + of.pump.step_ml + max(dose.ml for dose in own)
        for first in own:
            window = [dose.ml for dose in own if timedelta() <= dose.at - first.at <= timedelta(days=1)]
            assert sum(window) <= most + 1e-9


WILD = st.one_of(
    st.floats(),
    st.sampled_from(
        [0.0, -0.0, math.nan, math.inf, -math.inf, 5e-324, -1.0, 1e-300, 1e-9, 1e9, 1.7e308, 0.1, 3.0, 100.0]
    ),
)
FIGURES = ["per_day_ml", "flow_ml_per_min", "step_ml", "smallest_ml", "largest_ml", "largest_share"]


def test_every_figure_of_a_pump_is_made_wild() -> None:
    others = {"name", "raises", "quiet", "doses", "fewest", "most", "closest_min"}
    assert {field.name for field in fields(TimedPump)} == {*FIGURES, *others}


@settings(max_examples=200, suppress_health_check=[HealthCheck.too_slow])
@given(
    changes=st.dictionaries(st.sampled_from(FIGURES), WILD, min_size=1, max_size=3),
    minutes=st.one_of(st.just(15.0), WILD), numbers=st.tuples(*[st.integers(-2, 400)] * 3),
    quiet=st.tuples(st.integers(-5, 1500), st.integers(-5, 1500)), place=st.integers(-3, 3),
)  # fmt: skip
def test_H30_any_figure_is_refused_or_answered(
    changes: dict[str, float], minutes: float, numbers: tuple[int, int, int], quiet: tuple[int, int], place: int
) -> None:
    low, doses, high = sorted(numbers)
    rng = random.Random(repr((sorted(changes), numbers)))
    pump = replace(PAIR.pumps[0], **changes)  # type: ignore[arg-type]
    if rng.random() < 0.5:
        pump = replace(pump, fewest=low, doses=doses, most=high)
    hours = (Quiet(*quiet),) if rng.random() < 0.5 else ()
    question = TimetableQuestion((pump, PAIR.pumps[1]), (Apart(0, place, minutes),), rng.random() < 0.3, hours)
    result = solve(question)
    if isinstance(result, TimetableAnswer):
        json.dumps(headless_timetable.as_json(result), allow_nan=False)
    else:
        assert all(words.sentence(reason) for reason in result.reasons)


TEXTS = st.one_of(
    st.text(max_size=8), st.builds("{} {}".format, st.floats().map(repr), st.sampled_from(["mL per day", "mL", "L", "min", "h", "%", ""])),
    st.none(), st.booleans(), st.integers(), st.floats(), st.just([]), st.just({}),
    st.sampled_from(["calcium", "Soda", "22:00 to 07:00", "7:00 to 7:00", "24:00 to 23:59, 1:00-2:00", "25:00 to 26:00", "24:30 to 1:00"]),
)  # fmt: skip
PATHS = [
    "keep_apart", "quiet", "one_at_a_time", "pump", "apart", *(f"pump.0.{name}" for name in (
        "name", "raises", "per_day", "flow", "step", "smallest_dose", "largest_dose", "largest_share", "doses_per_day",
        "fewest_doses", "most_doses", "closest", "quiet",
    )), "pump.0", "apart.0", "apart.0.first", "apart.0.second", "apart.0.at_least",
]  # fmt: skip


@settings(max_examples=250, suppress_health_check=[HealthCheck.too_slow])
@given(changes=st.dictionaries(st.sampled_from(PATHS), TEXTS, min_size=1, max_size=3))
def test_H30_anything_in_any_field_is_refused_or_answered(changes: dict[str, Any]) -> None:
    raw: dict[str, Any] = {
        "keep_apart": "20 min", "quiet": "22:00 to 7:00",
        "pump": [
            {"name": name, "raises": raises, "per_day": "52.8 mL per day", "flow": "24 mL/min", "doses_per_day": 6}
            for name, raises in (("Soda", "alkalinity"), ("Lime", "calcium"), ("Salt", "magnesium"))
        ],
        "apart": [{"first": "Soda", "second": "Salt"}],
    }  # fmt: skip
    for path, value in sorted(changes.items()):
        *steps, last = path.split(".")
        node: Any = raw
        for step in steps:
            if isinstance(node, dict):
                node = node.get(step)
            elif isinstance(node, list):
                node = node[int(step)] if int(step) < len(node) else None
        if isinstance(node, dict):
            node[last] = value
        elif isinstance(node, list) and node:
            node[int(last)] = value
    question = timetable(raw, known())
    if isinstance(question, Unread):
        assert question.reasons
        assert all(words.sentence(reason) for reason in question.reasons)
    else:
        holds(question)
