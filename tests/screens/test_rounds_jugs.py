"""How long the jugs last, what it is reckoned from, and that nothing is said of what nobody knows."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import rounds, rounds_jugs
from evenwater.screens.rounds import DUE, SOON, WRONG, Contents, Duty, Room
from evenwater.screens.rounds_jugs import Drawn, filled
from tests.screens.asked import catalogue
from tests.screens.lint import faults

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
JUG = Contents("a", "Ash", None)
EMPTY = Room({}, (), (), (), ())
NBSP = "\u00a0"


def ago(**spans: float) -> datetime:
    return NOW - timedelta(**spans)


def lines(jug: Contents) -> tuple[Duty, ...]:
    found = rounds.duties(replace(EMPTY, jugs=(jug,)), catalogue(), NOW)
    for duty in found:
        assert not faults(duty.why, dose=True)
        assert not faults(duty.plain)
        assert "mL" not in duty.plain, "an amount on paper or in a calendar could be taken for a dose"
    return found


def test_without_a_dose_logged_the_daily_rate_counts_since_it_was_put_in_use() -> None:
    # 1 L at 100 mL a day from 6 days ago: 400 mL are left, for 4 days.
    jug = filled(JUG, 1000.0, ago(days=6), [Drawn(60.0), Drawn(40.0)], NOW)
    assert jug.runs_out == NOW + timedelta(days=4)
    assert jug.amount == pytest.approx(400.0)
    assert jug.basis == "rate"
    (duty,) = lines(jug)
    assert (duty.urgency, duty.what) == (SOON, "Mix a new batch")
    assert duty.why == (
        f"At 100{NBSP}mL a day since Thu 19 Nov 2026 it is empty on Sun 29 Nov 2026; no dose is logged."
    )
    assert duty.plain == "By the daily rate it is empty on Sun 29 Nov 2026."


def test_doses_logged_count_before_the_rate() -> None:
    # 43.2 mL a day for five days would be 216 mL; 350 mL are logged, the last of them just now.
    jug = filled(JUG, 500.0, ago(days=5), [Drawn(43.2, 350.0, NOW)], NOW)
    assert jug.runs_out == NOW + timedelta(days=150.0 / 43.2)
    assert (jug.amount, jug.basis) == (pytest.approx(150.0), "logged")
    (duty,) = lines(jug)
    assert duty.urgency == SOON
    assert duty.why == (
        f"At 43.2{NBSP}mL a day it is empty on Sat 28 Nov 2026, reckoned from the doses logged until Wed 25 Nov 2026."
    )


def test_after_the_last_dose_logged_the_rate_goes_on() -> None:
    # Whoever stops writing has likelier not stopped the pump: 500 mL logged until ten days ago, 50 mL a day since.
    jug = filled(JUG, 1000.0, ago(days=20), [Drawn(50.0, 500.0, ago(days=10))], NOW)
    assert jug.runs_out == NOW
    (duty,) = lines(jug)
    assert (duty.urgency, duty.what) == (WRONG, "Look how much is left"), "reckoned, not known"
    assert "would be empty since" in duty.why


def test_a_system_that_logs_nothing_is_reckoned_beside_one_that_does() -> None:
    jug = filled(JUG, 1000.0, ago(days=10), [Drawn(30.0, 300.0, NOW), Drawn(20.0)], NOW)
    # 300 mL logged, 200 mL by rate: 500 mL at 50 mL a day.
    assert jug.amount == pytest.approx(500.0)
    assert jug.runs_out == NOW + timedelta(days=10)


def test_far_less_in_the_log_than_the_rate_takes_claims_nothing() -> None:
    # One dose by hand among those of a pump that nobody writes down.
    jug = filled(JUG, 1000.0, ago(days=19), [Drawn(50.0, 5.0, NOW)], NOW)
    assert jug.basis == "unsure"
    (duty,) = lines(jug)
    assert (duty.urgency, duty.what) == (DUE, "Look how much is left")
    assert duty.why == f"At 50{NBSP}mL a day it is empty on Thu 26 Nov 2026, but far less is logged."
    gone = lines(filled(JUG, 1000.0, ago(days=30), [Drawn(50.0, 5.0, NOW)], NOW))
    assert gone[0].urgency == DUE, "never wrong on a guess"


def test_a_batch_that_lasted_longer_than_the_rate_has_it_is_believed_by_its_log() -> None:
    # 50 mL a day for fifty days is more than the jug ever held; most of it is logged, so that it was dosed more slowly.
    jug = filled(JUG, 1000.0, ago(days=50), [Drawn(50.0, 600.0, NOW)], NOW)
    assert (jug.amount, jug.basis) == (pytest.approx(400.0), "logged")
    assert jug.runs_out == NOW + timedelta(days=8)


@pytest.mark.parametrize("rate", [0.0, 50.0])
def test_all_of_it_logged_is_empty(rate: float) -> None:
    tenths = [0.1] * 10
    jug = filled(JUG, 1.0, ago(days=3), [Drawn(rate, sum(tenths), ago(hours=2))], NOW)
    assert sum(tenths) != 1.0, "tenths do not add up in binary: the rest must not count as a dose"
    assert (jug.amount, jug.runs_out) == (0.0, ago(hours=2))
    (duty,) = lines(jug)
    assert (duty.urgency, duty.what, duty.why) == (WRONG, "Mix a new batch", "By the doses logged it is empty.")


@pytest.mark.parametrize(
    ("made", "since", "drawn"),
    [
        (None, ago(days=300), [Drawn(50.0)]),
        (1000.0, None, [Drawn(50.0)]),
        (1000.0, ago(days=300), []),
        (1000.0, ago(days=300), [Drawn()]),
        (1000.0, ago(days=300), [Drawn(0.0, 20.0, NOW)]),
    ],
    ids=["not made up", "not in use", "nobody takes it", "no rate", "no rate but a dose"],
)
def test_what_nobody_knows_makes_no_line(made: float | None, since: datetime | None, drawn: list[Drawn]) -> None:
    jug = filled(JUG, made, since, drawn, NOW)
    assert jug.runs_out is None
    assert not lines(jug)


@pytest.mark.parametrize(
    ("left", "urgency"),
    [
        (timedelta(0), WRONG),
        (timedelta(seconds=1), DUE),
        (timedelta(days=1), DUE),
        (timedelta(days=1, seconds=1), SOON),
        (timedelta(days=5), SOON),
        (timedelta(days=5, seconds=1), None),
    ],
)
def test_wrong_when_empty_due_within_a_day_soon_within_five(left: timedelta, urgency: str | None) -> None:
    jug = replace(JUG, runs_out=NOW + left, per_day=10.0, amount=1.0, since=ago(days=9), basis="rate")
    assert [duty.urgency for duty in lines(jug)] == ([urgency] if urgency else [])


def test_an_old_batch_that_runs_out_is_one_line_with_both_reasons() -> None:
    jug = replace(
        JUG, use_by=NOW + timedelta(days=1), runs_out=ago(hours=1), until=ago(hours=1), per_day=10.0, basis="logged"
    )
    (duty,) = lines(jug)
    assert duty.urgency == WRONG
    assert duty.why == "By the doses logged it is empty. Its batch is to be used by Thu 26 Nov 2026."
    assert duty.at == ago(hours=1)


def test_what_a_batch_was_made_up_to_is_read_in_its_unit() -> None:
    assert rounds_jugs.made_up_ml({"made_up_to": Typed("500", "mL")}) == 500.0
    assert rounds_jugs.made_up_ml({"made_up_to": Typed("1,5", "L")}) == 1500.0
    assert rounds_jugs.made_up_ml({"made_up_to": Typed("x", "L")}) is None
    assert rounds_jugs.made_up_ml({}) is None
