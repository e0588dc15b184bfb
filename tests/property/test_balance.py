"""The mass balance: against a numerical integration, and the laws it must keep.

Source of the equation: conservation of mass in a stirred volume. The integrator is an independent one
(Dormand-Prince of order 8).
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from evenwater.engine.balance import Segment, after, pulse, segment, steady, trajectory

VALUES = st.floats(0.0, 500.0)
RATES = st.floats(0.0, 50.0)
SHARES = st.floats(0.0, 2.0)
DAYS = st.floats(0.01, 5.0)


@st.composite
def conditions(draw: st.DrawFn) -> tuple[float, ...]:
    """Return days, dosed, use, loss, exchange and value of the new water."""
    return (draw(DAYS), draw(RATES), draw(RATES), draw(SHARES), draw(SHARES), draw(VALUES))


def _integrated(start: float, rows: Sequence[tuple[float, ...]]) -> list[float]:
    """Return the value at the end of each stretch, from the rate of change alone."""
    ends, value = [], start
    for days, dosed, use, loss, exchange, new_water in rows:
        solution = solve_ivp(
            lambda _, c, q=dosed, u=use, k=loss, x=exchange, n=new_water: q - u - k * c - x * (c - n),
            (0.0, days), [value], method="DOP853", rtol=1e-11, atol=1e-11,
        )  # fmt: skip
        value = float(solution.y[0, -1])
        ends.append(value)
    return ends


@settings(max_examples=40)
@given(start=VALUES, rows=st.lists(conditions(), min_size=1, max_size=5))
def test_the_exact_solution_is_the_integrated_one(start: float, rows: list[tuple[float, ...]]) -> None:
    segments = [segment(*row) for row in rows]
    times = np.array(list(itertools.accumulate(row[0] for row in rows)))
    values = trajectory(start, segments, times)
    scale = max(1.0, start, *(abs(v) for v in values))
    assert np.allclose(values, _integrated(start, rows), rtol=1e-7, atol=1e-7 * scale)


@settings(max_examples=100)
@given(start=VALUES, rows=st.lists(conditions(), min_size=1, max_size=6), litres=st.floats(10.0, 5000.0))
def test_mass_is_conserved_without_exchange_and_loss(
    start: float, rows: list[tuple[float, ...]], litres: float
) -> None:
    segments = [segment(days, dosed, use) for days, dosed, use, *_ in rows]
    length = sum(part.days for part in segments)
    end = float(trajectory(start, segments, np.array([length]))[0])
    put_in = math.fsum(days * dosed * litres for days, dosed, *_ in rows)
    taken_out = math.fsum(days * use * litres for days, _, use, *_ in rows)
    held = (end - start) * litres
    assert held == pytest.approx(put_in - taken_out, rel=1e-9, abs=1e-9 * (put_in + taken_out + start * litres))


@settings(max_examples=100)
@given(start=VALUES, rows=st.lists(conditions(), min_size=2, max_size=5), data=st.data())
def test_the_order_of_additions_does_not_matter(
    start: float, rows: list[tuple[float, ...]], data: st.DataObject
) -> None:
    shuffled = data.draw(st.permutations(rows))
    ends = [
        float(trajectory(start, [segment(*row[:3]) for row in order], np.array([sum(r[0] for r in rows)]))[0])
        for order in (rows, shuffled)
    ]
    assert ends[0] == pytest.approx(ends[1], rel=1e-9, abs=1e-9)
    # Doses given at once: any order, any grouping.
    jumps = [pulse(row[1], 2.0, 340.0) for row in rows]
    other = [pulse(row[1], 2.0, 340.0) for row in shuffled]
    assert math.fsum(jumps) == math.fsum(other) == pytest.approx(pulse(sum(r[1] for r in rows), 2.0, 340.0), rel=1e-9)


@settings(max_examples=100)
@given(value=VALUES, exchange=SHARES, days=DAYS)
def test_exchange_with_identical_water_changes_nothing(value: float, exchange: float, days: float) -> None:
    part = segment(days, 0.0, 0.0, exchange=exchange, new_water=value)
    assert float(trajectory(value, [part], np.array([days]))[0]) == pytest.approx(value, rel=1e-12, abs=1e-12)


@settings(max_examples=100)
@given(start=VALUES, row=conditions(), cut=st.floats(0.01, 0.99))
def test_two_parts_of_a_day_make_the_whole(start: float, row: tuple[float, ...], cut: float) -> None:
    whole = segment(*row)
    days = row[0]
    first, rest = Segment(cut * days, whole.gain, whole.loss), Segment((1.0 - cut) * days, whole.gain, whole.loss)
    once = float(after(start, days, whole.gain, whole.loss))
    twice = float(trajectory(start, [first, rest], np.array([days]))[0])
    assert twice == pytest.approx(once, rel=1e-10, abs=1e-10 * max(1.0, start, abs(whole.gain) * days))


@settings(max_examples=100)
@given(start=VALUES, new_water=VALUES, exchange=st.floats(0.001, 2.0), days=DAYS)
def test_continuous_exchange_leaves_the_exponential(
    start: float, new_water: float, exchange: float, days: float
) -> None:
    part = segment(days, 0.0, 0.0, exchange=exchange, new_water=new_water)
    end = float(after(start, days, part.gain, part.loss))
    left = math.exp(-exchange * days)
    assert end == pytest.approx(start * left + new_water * (1.0 - left), rel=1e-9, abs=1e-9)
    # And after a very long time it settles at the new water.
    assert steady(part.gain, part.loss) == pytest.approx(new_water, rel=1e-12, abs=1e-12)


@settings(max_examples=100)
@given(start=VALUES, gain=st.floats(-50.0, 50.0), days=DAYS, loss=st.floats(1e-14, 1e-9))
def test_a_vanishing_loss_is_no_loss(start: float, gain: float, days: float, loss: float) -> None:
    straight = float(after(start, days, gain, 0.0))
    assert float(after(start, days, gain, loss)) == pytest.approx(straight, rel=1e-7, abs=1e-7)


def test_a_system_without_loss_does_not_settle() -> None:
    for loss in (0.0, -0.1):
        with pytest.raises(ValueError, match="does not settle"):
            steady(1.0, loss)
