"""Away until some day: how much to fill, what runs out first, what falls due; nothing missed is ever made up."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from evenwater.engine.absence import AbsentJug, Due, absence
from evenwater.engine.jug_level import Draw, Filled

NOW = datetime(2026, 11, 25, 8, tzinfo=UTC)
HOUR, DAY = timedelta(hours=1), timedelta(days=1)


def jug(
    name: str = "Ash", level: float = 500.0, daily: float = 48.0, holds: float = 5000.0, **more: float
) -> AbsentJug:
    draw = Draw("", daily / 24.0, 24, NOW + HOUR)
    filled = Filled(NOW, level, more.pop("unreachable", 0.0))
    return AbsentJug(name, filled, holds, (draw,), **{"uncertainty": 0.0, **more})


def test_what_is_missing_is_filled() -> None:
    """14 days at 48 mL are 672 mL; 500 mL are there."""
    (found,) = absence([jug()], [], NOW, NOW + 14 * DAY).fillings
    assert (found.needed_ml, found.level_ml) == (pytest.approx(672.0), 500.0)
    assert found.add_ml == pytest.approx(172.0)
    assert found.left_alone_until == NOW + 251 * HOUR
    assert (found.enough, found.missed) == (True, 0)


def test_reserve_for_pumps_and_level_is_filled_too() -> None:
    """672 mL and 5 % of it, 25 mL of the level's error, and 100 mL that the intake does not reach, less 500 mL."""
    (found,) = absence([jug(uncertainty=0.05, accuracy_ml=25.0, unreachable=100.0)], [], NOW, NOW + 14 * DAY).fillings
    assert found.add_ml == pytest.approx(672.0 * 1.05 + 25.0 + 100.0 - 500.0)


def test_jug_that_lasts_is_left() -> None:
    (found,) = absence([jug(level=700.0)], [], NOW, NOW + 14 * DAY).fillings
    assert (found.add_ml, found.left_alone_until, found.enough) == (0.0, None, True)


def test_jug_that_is_too_small_says_until_when_and_what_is_left_out() -> None:
    """Full with 600 mL it gives 300 doses of 2 mL of the 336; 36 are missed."""
    (found,) = absence([jug(holds=600.0)], [], NOW, NOW + 14 * DAY).fillings
    assert found.add_ml == pytest.approx(100.0)
    assert found.lasts_until == NOW + 301 * HOUR
    assert (found.enough, found.missed) == (False, 36)


def test_first_to_run_out_comes_first() -> None:
    jugs = [jug("Lasts", 4000.0), jug("Second", 300.0), jug("First", 100.0)]
    found = absence(jugs, [], NOW, NOW + 14 * DAY)
    assert [filling.name for filling in found.fillings] == ["First", "Second", "Lasts"]
    assert found.first_out is not None
    assert found.first_out.name == "First"
    assert absence(jugs[:1], [], NOW, NOW + DAY).first_out is None


def test_what_falls_due_is_listed_by_date() -> None:
    dues = [Due("card", "North", NOW + 9 * DAY), Due("retest", "East", NOW + 2 * DAY), Due("retest", "West", NOW - DAY),
            Due("card", "South", NOW + 15 * DAY), Due("retest", "Late", NOW + 14 * DAY)]  # fmt: skip
    found = absence([], dues, NOW, NOW + 14 * DAY)
    assert [each.name for each in found.due] == ["East", "North", "Late"]
    assert [each.name for each in found.overdue] == ["West"]
