"""What must hold for the use learned from any record."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.balance import Segment, trajectory
from evenwater.engine.consumption_estimate import Estimate, Span, estimate
from evenwater.engine.consumption_line import line
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record
from evenwater.engine.consumption_steps import Log, steps
from evenwater.engine.units import linear
from tests.engine.consumption_tanks import at, tank

SEEDS = st.integers(10_000, 10_200)
FEW = settings(max_examples=15, deadline=None)


def last(record: Record) -> datetime:
    return max(reading.at for reading in record.readings)


def scaled(record: Record, factor: float) -> Record:
    return Record(
        tuple(Reading(r.at, factor * r.value, factor * r.sd) for r in record.readings),
        tuple(Dose(d.at, factor * d.rise) for d in record.doses),
        tuple(Exchange(e.at, e.share, factor * e.new_value) for e in record.exchanges),
    )


def moved(record: Record, by: timedelta) -> Record:
    return Record(
        tuple(replace(r, at=r.at + by) for r in record.readings),
        tuple(replace(d, at=d.at + by) for d in record.doses),
        tuple(replace(e, at=e.at + by) for e in record.exchanges),
    )


def figures(found: Estimate) -> list[float]:
    spans: list[Span] = [found.use, found.value, *(period.use for period in found.by_period)]
    return [figure for span in spans for figure in (span.value, span.low, span.high)]


def same(found: Estimate, other: Estimate, factor: float = 1.0) -> None:
    """Assert that two answers say the same, to within what the quantiles are reckoned to."""
    assert [odd.index for odd in found.odd] == [odd.index for odd in other.odd]
    assert [jump.index for jump in found.jumps] == [jump.index for jump in other.jumps]
    assert (found.changed is None) == (other.changed is None)
    fine = 1e-4 * (found.value.high - found.value.low)
    assert [factor * figure for figure in figures(found)] == pytest.approx(figures(other), rel=1e-6, abs=factor * fine)


@FEW
@given(seed=SEEDS, factor=st.sampled_from([linear("alkalinity", "dKH")[0], 1e-3, 17.848, 1000.0]))
def test_unit_does_not_matter(seed: int, factor: float) -> None:
    of = tank(seed).record
    same(estimate(of, last(of)), estimate(scaled(of, factor), last(of)), factor)


@FEW
@given(seed=SEEDS, days=st.integers(-1000, 1000), seconds=st.integers(0, 86_400))
def test_time_does_not_matter(seed: int, days: int, seconds: int) -> None:
    of, by = tank(seed).record, timedelta(days=days, seconds=seconds)
    found, later = estimate(of, last(of)), estimate(moved(of, by), last(of) + by)
    same(found, later)
    assert [period.start + by for period in found.by_period] == [period.start for period in later.by_period]


@FEW
@given(seed=SEEDS, rise=st.floats(-20.0, 20.0), share=st.floats(0.1, 0.9))
def test_a_dose_and_the_rise_that_it_makes_change_nothing(seed: int, rise: float, share: float) -> None:
    of = tank(seed).record
    of = replace(of, exchanges=())
    rise *= of.readings[0].sd
    when = of.readings[0].at + share * (last(of) - of.readings[0].at)
    raised = Record(
        tuple(replace(r, value=r.value + rise) if r.at > when else r for r in of.readings),
        (*of.doses, Dose(when, rise)),
        of.exchanges,
    )
    found, other = estimate(of, last(of)), estimate(raised, last(of))
    same(replace(found, value=other.value), other)
    assert other.value.value - found.value.value == pytest.approx(rise, abs=1e-3 * of.readings[0].sd)


@FEW
@given(seed=SEEDS, lift=st.floats(-100.0, 100.0))
def test_a_kit_that_always_reads_too_high_changes_no_use(seed: int, lift: float) -> None:
    of = replace(tank(seed).record, exchanges=())
    lift *= of.readings[0].sd
    lifted = replace(of, readings=tuple(replace(r, value=r.value + lift) for r in of.readings))
    found, other = estimate(of, last(of)), estimate(lifted, last(of))
    same(replace(found, value=other.value), other)


@FEW
@given(seed=SEEDS, use=st.floats(-1.0, 3.0))
def test_every_reading_that_says_what_was_expected_narrows_the_interval(seed: int, use: float) -> None:
    scattered = 8.0 - use * np.arange(12) + np.random.default_rng(seed).normal(0.0, 0.15, 12)
    readings = [Reading(at(day), float(value), 0.15) for day, value in enumerate(scattered)]
    for day in range(12, 14):
        expected = estimate(Record(tuple(readings)), at(day))
        before = estimate(Record(tuple(readings)), last(Record(tuple(readings))))
        readings.append(Reading(at(day), expected.value.value, 0.15))
        found = estimate(Record(tuple(readings)), at(day))
        assert found.use.high - found.use.low < before.use.high - before.use.low


@FEW
@given(seed=SEEDS)
def test_interval_holds_what_is_said_and_grows_with_the_age_of_the_last_reading(seed: int) -> None:
    of = tank(seed).record
    found, later = estimate(of, last(of)), estimate(of, last(of) + timedelta(days=20))
    for span in (found.use, found.value, *(period.use for period in found.by_period)):
        assert span.low <= span.value <= span.high
    assert later.use.high - later.use.low >= 0.95 * (found.use.high - found.use.low)
    assert later.by_period == found.by_period
    assert later.since_days == pytest.approx(20.0)


@FEW
@given(
    start=st.floats(1.0, 500.0),
    use=st.floats(-5.0, 5.0),
    doses=st.lists(st.tuples(st.floats(0.0, 30.0), st.floats(0.0, 20.0)), max_size=8),
    exchanges=st.lists(st.tuples(st.floats(0.0, 30.0), st.floats(0.0, 0.9), st.floats(0.0, 500.0)), max_size=5),
    days=st.lists(st.floats(0.0, 30.0), min_size=4, max_size=10, unique=True),
)
def test_mass_is_balanced_exactly(
    start: float,
    use: float,
    doses: list[tuple[float, float]],
    exchanges: list[tuple[float, float, float]],
    days: list[float],
) -> None:
    """Readings without scatter, from the balance that plans are made with: use and every value come out as they went in."""
    times = np.sort(np.array(days))
    if times[-1] - times[0] < 1.0:
        times[-1] = times[0] + 1.0
    sorted_doses, sorted_exchanges = sorted(doses), sorted(exchanges)
    values, value, before = [], start, 0.0
    events = sorted([*((t, 0, i) for i, t in enumerate(times)), *((e[0], 1, i) for i, e in enumerate(sorted_exchanges)),
                     *((d[0], 2, i) for i, d in enumerate(sorted_doses))])  # fmt: skip
    for day, what, index in events:
        value = float(trajectory(value, [Segment(day - before, -use)], np.array([day - before]))[0])
        before = float(day)
        if what == 0:
            values.append(value)
        elif what == 1:
            _, share, new = sorted_exchanges[index]
            value = (1.0 - share) * value + share * new
        else:
            value += sorted_doses[index][1]
    log = Log(
        *(np.array([row[i] for row in sorted_doses]) for i in (0, 1)),
        *(np.array([row[i] for row in sorted_exchanges]) for i in (0, 1, 2)),
    )
    still = np.zeros_like(times)
    found = line(np.array(values), np.full_like(times, 0.01), steps(times, log), still, still)
    scale = max(1.0, *(abs(v) for v in values))
    assert found.use == pytest.approx(np.full_like(times, use), abs=1e-8 * scale)
    assert found.value == pytest.approx(values, abs=1e-8 * scale)


@FEW
@given(seed=SEEDS, lost=st.sets(st.integers(0, 60), max_size=3))
def test_readings_left_out_change_the_use_within_what_is_not_known(seed: int, lost: set[int]) -> None:
    """The two answers share most readings, so their intervals must overlap."""
    of = tank(seed)
    kept = tuple(r for place, r in enumerate(of.record.readings) if place not in lost)
    whole, part = estimate(of.record, last(of.record)), estimate(replace(of.record, readings=kept), last(of.record))
    assert part.use.low <= whole.use.high
    assert whole.use.low <= part.use.high
