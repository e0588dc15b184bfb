"""The second opinion sees every fault: a good timetable is changed in one place, and the change is named."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

import evenwater.engine.timetable as planner
from evenwater.engine import timetable_check
from evenwater.engine.timetable import Refused, TimetableAnswer, TimetableQuestion, solve
from evenwater.engine.timetable_check import Told, look
from evenwater.engine.timetable_question import Quiet
from tests.arch.tree import PRODUCT, imported, parsed
from tests.engine.timetables import LIME, PAIR, SODA, drawn

Rows = list[Told]
WISHED = replace(
    PAIR,
    pumps=(replace(SODA, closest_min=40, smallest_ml=1.0, largest_ml=3.0), LIME),
    quiet=(Quiet(10, 20),),
    one_at_a_time=True,
)


def told(question: TimetableQuestion) -> Rows:
    answer = solve(question)
    assert isinstance(answer, TimetableAnswer), answer
    return [Told(row.minute, row.pump, row.ml, row.more_ml) for row in answer.rows]


def moved(rows: Rows, place: int, **changes: float) -> Rows:
    return [*rows[:place], replace(rows[place], **changes), *rows[place + 1 :]]  # type: ignore[arg-type]


def test_a_good_timetable_has_no_fault() -> None:
    assert look(WISHED, told(WISHED)).faults == ()


@pytest.mark.parametrize(
    ("change", "fault"),
    [
        (lambda rows: moved(rows, 4, minute=rows[5].minute - 15), "Lime too near to Soda"),
        (lambda rows: moved(rows, 4, minute=rows[3].minute + 15), "Soda too near to Lime"),
        (lambda rows: moved(rows, 1, minute=rows[2].minute), "runs together"),
        (lambda rows: moved(rows, 1, minute=rows[3].minute), "Lime overlaps itself"),
        (lambda rows: moved(rows, 2, minute=rows[4].minute - 39), "Soda comes too soon"),
        (lambda rows: moved(rows, 0, minute=9 if rows[0].pump else 15), "the hour"),
        (lambda rows: moved(rows, 0, minute=1440), "the hour"),
        (lambda rows: moved(rows, 0, ml=2.3), "the sum"),
        (lambda rows: moved(rows, 0, ml=2.1), "the sum"),
        (lambda rows: moved(rows, 0, ml=2.25), "the steps"),
        (lambda rows: moved(rows, 0, more_ml=0.2), "the steps"),
        (lambda rows: moved(moved(rows, 0, ml=0.9), 2, ml=3.5), "the size"),
        (lambda rows: rows[1:], "the number"),
        (lambda rows: [*rows, rows[0]], "the number"),
        (lambda rows: moved(moved(rows, 0, ml=1.2), 2, ml=3.2), "the size"),
    ],
)
def test_each_fault_is_seen(change: Callable[[Rows], Rows], fault: str) -> None:
    seen = look(WISHED, change(told(WISHED)))
    assert any(fault in each for each in seen.faults), seen.faults


def test_round_midnight_is_looked_at_too() -> None:
    rows = [Told(1439, 0, 52.8, 0.0), Told(5, 1, 52.8, 0.0)]
    pair = replace(PAIR, pumps=tuple(replace(pump, doses=1, fewest=1, most=1) for pump in PAIR.pumps))
    seen = look(pair, rows)
    assert seen.faults == ("Lime too near to Soda",) * 2
    # Six minutes, less the 132 seconds that the dose runs.
    assert seen.nearest_s == (228.0,)


def test_what_is_carried_is_followed() -> None:
    pump = replace(SODA, per_day_ml=5.03, doses=2, fewest=2, most=2)
    question = TimetableQuestion((pump,))
    good = [Told(0, 0, 2.5, 0.1), Told(720, 0, 2.5, 0.0)]
    assert look(question, good).faults == ()
    assert look(question, moved(good, 0, more_ml=0.0)).faults == ("the sum of Soda",)
    assert look(question, moved(good, 1, more_ml=0.1)).faults == ("the carried steps of Soda",)
    # The pump runs 12.6 s of a day.
    assert look(replace(question, pumps=(replace(pump, largest_share=0.0001),)), good).faults == (
        "the running time of Soda",
    )


def test_the_planner_gives_no_timetable_that_the_second_opinion_refuses(monkeypatch: pytest.MonkeyPatch) -> None:
    def too_large(place: int, *args: object) -> object:
        return [replace(row, ml=row.ml + 0.1) for row in rows(place, *args)]

    rows = planner._rows
    monkeypatch.setattr(planner, "_rows", too_large)
    result = solve(PAIR)
    assert isinstance(result, Refused)
    assert [reason.code for reason in result.reasons] == ["timetable_disagrees"]


def test_the_second_opinion_shares_nothing_with_the_planner() -> None:
    tree = parsed(PRODUCT / "engine" / "timetable_check.py")
    ours = {module for module, _, _ in imported(tree) if module.startswith("evenwater")}
    assert ours <= {"evenwater.engine.timetable_question", "evenwater.engine"}
    assert timetable_check.__doc__


@pytest.mark.parametrize("seed", range(0, 60, 3))
def test_any_two_doses_of_a_pair_exchanged_are_seen(seed: int) -> None:
    question = drawn(seed)
    answer = solve(question)
    if isinstance(answer, Refused) or not question.apart:
        return
    rows = [Told(row.minute, row.pump, row.ml, row.more_ml) for row in answer.rows]
    pair = question.apart[0]
    first = next(place for place, row in enumerate(rows) if row.pump == pair.first)
    second = next(place for place, row in enumerate(rows) if row.pump == pair.second)
    assert look(question, moved(rows, first, minute=rows[second].minute)).faults
