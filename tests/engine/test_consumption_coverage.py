"""Simulated tanks: intervals hold the true use as often as they say, a change is noticed soon, and bad tests are told from good ones.

`python -m tests.bench --only consumption` does the same with 1,000 tanks and prints the figures. Noticed means: the 90 % interval of
the present use leaves the old use out, or the change is named about where it was.
"""

from __future__ import annotations

import statistics
from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from evenwater.engine.consumption_estimate import Estimate, estimate
from evenwater.engine.consumption_log import Record
from tests.engine.consumption_tanks import Tank, holds, named, noticed_after, tank

TANKS, HALVED = 250, 45


@cache
def tanks() -> tuple[tuple[Tank, Estimate], ...]:
    """Return tanks with what is learned right after their last reading."""
    made = [tank(seed) for seed in range(TANKS)]
    return tuple((of, estimate(*of.until(len(of.days)))) for of in made)


def test_intervals_hold_the_true_use_as_often_as_they_say() -> None:
    """In 92 % of these tanks."""
    share = statistics.mean(holds(found, of) for of, found in tanks())
    assert 0.85 <= share <= 0.95


def test_the_truth_lies_as_often_above_as_below_what_is_said() -> None:
    above = sum(of.use[-1] > found.use.value for of, found in tanks())
    assert abs(above / TANKS - 0.5) < 3.0 * 0.5 / np.sqrt(TANKS)


def test_halved_use_is_noticed_within_a_median_of_four_readings() -> None:
    """After a median of two in these tanks."""
    halved = [of for of, _ in tanks() if of.course == "halved"][:HALVED]
    assert len(halved) == HALVED
    after = [noticed_after(of, 6) or np.inf for of in halved]
    assert statistics.median(after) <= 4


def test_no_change_is_named_where_there_is_none() -> None:
    steady = [found.changed is not None for of, found in tanks() if of.course == "steady"]
    assert len(steady) > 60
    assert sum(steady) <= 0.02 * len(steady)


def test_changes_that_are_named_are_named_about_where_they_were() -> None:
    changed = [(of, found) for of, found in tanks() if of.course in ("halved", "step") and found.changed is not None]
    assert len(changed) > 40
    assert sum(named(found, of) for of, found in changed) >= 0.9 * len(changed)


def test_bad_tests_are_told_from_good_ones() -> None:
    """270 named, 5 missed, 7 good ones taken for bad in these tanks."""
    hits = misses = wrongly = 0
    for of, found in tanks():
        said = {odd.index for odd in found.odd}
        bad = set(np.flatnonzero(of.bad).tolist())
        hits, misses, wrongly = hits + len(said & bad), misses + len(bad - said), wrongly + len(said - bad)
    assert hits > 150
    assert misses < 0.05 * hits
    assert wrongly < 0.05 * hits


@pytest.mark.parametrize("worse", [0.6, 2.0, 3.0])
def test_a_kit_that_is_better_or_worse_than_it_says_is_seen_through(worse: float) -> None:
    """Also with the kit's accuracy misjudged by so much, intervals hold what they should and no change is made up."""
    found = []
    for of, _ in tanks()[:50]:
        told, now = of.until(len(of.days))
        readings = tuple(replace(reading, sd=reading.sd / worse) for reading in told.readings)
        found.append((of, estimate(Record(readings, told.doses, told.exchanges), now)))
    assert statistics.mean(holds(e, of) for of, e in found) >= 0.85
    assert statistics.median(e.scatter for _, e in found) == pytest.approx(worse, rel=0.35)
    assert sum(e.changed is not None for of, e in found if of.course == "steady") <= 1
