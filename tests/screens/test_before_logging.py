"""What is asked before an entry is logged: H9, H14, H18."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.quantities import Water
from evenwater.screens.before_logging import AGAIN, FLAT, TOO_MUCH, Rises, questions
from evenwater.screens.logbook import Taken
from evenwater.screens.shown import Shown
from tests.engine.asking import known
from tests.screens.lint import faults

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("Europe/Berlin"))
ALKALINITY = known().parameters["alkalinity"]
SHOWN = Shown(ALKALINITY, "dKH", Water())
# One German degree [meq/L]: 10 mg of CaO (56.077 g/mol) in a litre; from memory.
DKH = 10.0 / (56.077 / 2.0)


def reading(hours_ago: float, dkh: float) -> Taken:
    return Taken("reading", "alkalinity", NOW - timedelta(hours=hours_ago), value=dkh * DKH, who="")


def dose(hours_ago: float, ml: float = 12.5, who: str = "") -> Taken:
    return Taken("dose", "jug", NOW - timedelta(hours=hours_ago), who, value=ml)


def said(*taken: Taken) -> list[tuple[Taken, str]]:
    return [
        (one, "Alkalinity, 7.4\u00a0dKH" if one.kind == "reading" else f"Dose: Soda ash, {one.value}\u00a0mL")
        for one in taken
    ]


def codes(*args: object, **more: object) -> list[str]:
    found = questions(*args, **more)  # type: ignore[arg-type]
    for message in found:
        assert not faults(message.text), (message.text, faults(message.text))
        assert message.offers
    return [m.code for m in found]


def test_H9_the_third_equal_reading_is_asked_about_and_the_second_is_not() -> None:
    assert codes(reading(0, 7.4), said(reading(24, 7.4), reading(48, 7.4))) == [FLAT]
    assert codes(reading(0, 7.4), said(reading(24, 7.4))) == []
    assert codes(reading(0, 7.4), said(reading(24, 7.4), reading(48, 7.3), reading(72, 7.4))) == []
    assert codes(reading(0, 7.5), said(reading(24, 7.4), reading(48, 7.4))) == []


def test_H9_a_reading_noted_late_is_held_against_those_before_it() -> None:
    late = reading(36, 7.4)
    assert codes(late, said(reading(1, 7.4), reading(48, 7.4))) == []
    assert codes(late, said(reading(1, 7.6), reading(48, 7.4), reading(60, 7.4))) == [FLAT]


def test_H14_a_second_dose_within_the_interval_is_asked_about_with_time_and_name() -> None:
    found = questions(dose(0), said(dose(2.0, who="K. L.")), interval=timedelta(hours=5.4))
    assert [m.code for m in found] == [AGAIN]
    assert "07:00 by K. L." in found[0].text
    assert codes(dose(0), said(dose(6.0)), interval=timedelta(hours=5.4)) == []
    # Another amount is another dose all the same.
    assert codes(dose(0, 3.0), said(dose(2.0, 12.5)), interval=timedelta(hours=5.4)) == [AGAIN]


def test_H14_a_dose_noted_late_is_held_against_those_after_it() -> None:
    assert codes(dose(3.0), said(dose(2.0)), interval=timedelta(hours=5)) == [AGAIN]


def rises(this: float, *others: tuple[float, float], planned: float = 0.0, use: float = 0.0) -> Rises:
    """Return rises in dKH: this one, others as (hours ago, rise)."""
    return Rises(SHOWN, this * DKH, [(NOW - timedelta(hours=h), r * DKH) for h, r in others], planned * DKH, use * DKH)


@pytest.mark.parametrize(
    ("given", "asked"),
    [
        (rises(1.3), []),
        (rises(1.5), [TOO_MUCH]),
        (rises(0.8, (9.5, 0.8)), [TOO_MUCH]),
        (rises(0.8, (24.5, 0.8)), []),
        (rises(0.8, (9.5, 0.8), use=0.3), []),
        (rises(0.5, planned=1.9, use=0.9), [TOO_MUCH]),
        (rises(0.3, planned=1.9, use=0.9), []),
        (rises(0.0, (1.0, 9.0)), []),
    ],
)
def test_H18_more_than_the_hard_rise_in_any_24_hours_is_asked_about(given: Rises, asked: list[str]) -> None:
    """The hard rise of alkalinity is 1.4 dKH a day (common practice, no source)."""
    assert codes(dose(0), [], (given,)) == asked


def test_H18_a_minute_before_and_after_midnight_are_one_day() -> None:
    midnight = datetime(2026, 11, 26, 0, 1, tzinfo=NOW.tzinfo)
    taken = Taken("dose", "jug", midnight, "", value=12.5)
    before = Rises(SHOWN, 0.8 * DKH, [(midnight - timedelta(minutes=2), 0.8 * DKH)])
    assert codes(taken, [], (before,)) == [TOO_MUCH]


def test_H18_a_dose_noted_late_counts_with_those_after_it() -> None:
    found = Rises(SHOWN, 0.5 * DKH, [(NOW + timedelta(hours=20), 0.5 * DKH), (NOW - timedelta(hours=3), 0.5 * DKH)])
    assert codes(dose(0), [], (found,)) == [TOO_MUCH]
    apart = Rises(SHOWN, 0.5 * DKH, [(NOW + timedelta(hours=20), 0.5 * DKH), (NOW - timedelta(hours=5), 0.5 * DKH)])
    assert codes(dose(0), [], (apart,)) == []


@settings(max_examples=60, deadline=None)
@given(
    this=st.floats(0.01, 2.0),
    others=st.lists(st.tuples(st.integers(-23 * 60, 23 * 60), st.floats(0.0, 1.0)), max_size=8),
)
def test_H18_the_fullest_window_is_found(this: float, others: list[tuple[int, float]]) -> None:
    """Held against a slow search: a window of 24 hours is slid minute by minute over two days."""
    found = Rises(SHOWN, this, [(NOW + timedelta(minutes=m), rise) for m, rise in others])
    fullest = 0.0
    for begin in range(-24 * 60, 1):
        inside = sum(rise for m, rise in others if begin < m <= begin + 24 * 60)
        if begin < 0 <= begin + 24 * 60:
            fullest = max(fullest, this + inside)
    hard = ALKALINITY.canonical(ALKALINITY.rise_hard)
    if abs(fullest - hard) > 1e-6:
        assert (codes(dose(0), [], (found,)) == [TOO_MUCH]) == (fullest > hard)


def test_an_exchange_and_a_note_are_never_asked_about() -> None:
    for kind in ("exchange", "note"):
        one = Taken(kind, "", NOW, "", value=1.0)
        assert codes(one, [(one, "x"), (one, "x"), (one, "x")], interval=timedelta(hours=5)) == []
