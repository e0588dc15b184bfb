"""What holds for any exchange: nothing is lost, order and cutting do not matter, and neither does the unit."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import exchange_check
from evenwater.engine.exchange import ExchangeAnswer, solve
from evenwater.engine.exchange_course import course, stretches
from evenwater.engine.exchange_question import ExchangeQuestion, OneDose, Pair, as_much_as
from tests.engine.exchanges import answer, random_system

systems = st.integers(0, 10_000).map(random_system)


def starts(q: ExchangeQuestion) -> np.ndarray:
    return np.array([moved.now for moved in q.values])


def ends(q: ExchangeQuestion) -> list[float]:
    found = solve(q)
    assert isinstance(found, ExchangeAnswer), found
    return [each.end for each in found.courses]


@settings(deadline=None, max_examples=60)
@given(systems)
def test_mass_is_conserved(q: ExchangeQuestion) -> None:
    """What came less what went is what is there; what went is summed here by Simpson's rule over the course."""
    for moved in q.values:
        books = exchange_check.ledger(q, moved)
        assert abs(books.off) <= 1e-10 * (books.before + books.came + books.went)
    parts = stretches(q)
    bounds = [*(part.begin for part in parts), q.days]
    gone = np.zeros(len(q.values))
    rates = np.array([q.pair.out_l + moved.loss * q.volume_l for moved in q.values])
    for begin, end in itertools.pairwise(bounds):
        fine = np.linspace(begin, end, 401)
        seen = course(starts(q), parts, fine)
        # The value just before an addition is the limit of its own stretch.
        seen[:, -1] = course(starts(q), [part for part in parts if part.begin <= begin], np.array([end]))[:, 0]
        weights = np.ones(401)
        weights[1:-1:2], weights[2:-1:2] = 4.0, 2.0
        gone += rates * (seen @ weights) * (end - begin) / 1200.0
    for row, moved in enumerate(q.values):
        went = exchange_check.ledger(q, moved).went - moved.use * q.volume_l * q.days
        assert went == pytest.approx(gone[row], rel=1e-8)


@settings(deadline=None, max_examples=40)
@given(systems, st.randoms(use_true_random=False))
def test_order_of_additions_does_not_matter(q: ExchangeQuestion, rng: object) -> None:
    shuffled = list(q.doses)
    rng.shuffle(shuffled)  # type: ignore[attr-defined]
    assert ends(replace(q, doses=tuple(shuffled))) == pytest.approx(ends(q), rel=1e-12)


@settings(deadline=None, max_examples=40)
@given(systems)
def test_two_doses_at_once_are_one(q: ExchangeQuestion) -> None:
    halves = tuple(OneDose(d.parameter, d.at_day, d.raises / 2.0) for d in q.doses for _ in range(2))
    assert ends(replace(q, doses=halves)) == pytest.approx(ends(q), rel=1e-12)


@settings(deadline=None, max_examples=40)
@given(systems, st.floats(0.0, 5000.0))
def test_exchange_with_the_same_water_changes_nothing(q: ExchangeQuestion, litres: float) -> None:
    still = tuple(replace(m, new_water=m.now, use=0.0, added=0.0, loss=0.0) for m in q.values)
    same = replace(q, values=still, doses=(), pair=Pair(litres, litres))
    assert ends(same) == pytest.approx([moved.now for moved in same.values], rel=1e-12)


@settings(deadline=None, max_examples=40)
@given(systems)
def test_two_halves_equal_one_whole(q: ExchangeQuestion) -> None:
    """The end of the first half is the start of the second."""
    half = q.days / 2.0
    first = replace(q, days=half, doses=tuple(d for d in q.doses if d.at_day < half))
    second = replace(
        q,
        days=half,
        values=tuple(replace(moved, now=end) for moved, end in zip(q.values, ends(first), strict=True)),
        doses=tuple(replace(d, at_day=d.at_day - half) for d in q.doses if d.at_day >= half),
    )
    assert ends(second) == pytest.approx(ends(q), rel=1e-10)


@settings(deadline=None, max_examples=40)
@given(systems, st.floats(1.0, 1000.0))
def test_only_shares_of_the_volume_count(q: ExchangeQuestion, times: float) -> None:
    pair = Pair(q.pair.out_l * times, q.pair.in_l * times)
    assert ends(replace(q, volume_l=q.volume_l * times, pair=pair)) == pytest.approx(ends(q), rel=1e-10)


@settings(deadline=None, max_examples=40)
@given(systems)
def test_rise_and_fall_in_a_day_are_the_greatest_on_a_fine_grid(q: ExchangeQuestion) -> None:
    found = solve(q)
    assert isinstance(found, ExchangeAnswer)
    grid = np.unique(np.concatenate([np.linspace(1.0, q.days, 500), [d.at_day for d in q.doses if d.at_day >= 1.0]]))
    parts = stretches(q)
    moved = course(starts(q), parts, grid) - course(starts(q), parts, grid - 1.0)
    for each, rise, fall in zip(found.courses, np.max(moved, axis=1), np.max(-moved, axis=1), strict=True):
        scale = max(each.points)
        assert each.rise >= rise - 1e-9 * scale
        assert each.fall >= fall - 1e-9 * scale


@given(st.floats(1e-9, 0.99), st.floats(0.1, 365.0), st.floats(0.001, 1e6))
def test_as_much_as_leaves_as_much(share: float, every: float, volume: float) -> None:
    per_day = as_much_as(share, every, volume)
    assert -math.expm1(-per_day / volume * every) == pytest.approx(share, rel=1e-12)


@pytest.mark.parametrize(
    ("volume", "flow", "now", "new"),
    [
        ("340 L", "10 L per day", "9 dKH", "7 dKH"),
        ("340000 mL", "10000 mL per day", "9 dKH", "7 dKH"),
        (f"{340 / 3.785411784:.9f} US gal", f"{10 / 3.785411784:.9f} US gal per day", "9 dKH", "7 dKH"),
        (
            f"{340 / 4.54609:.9f} imperial gal",
            "10 L per day",
            f"{9 / 2.8038595:.7f} meq/L",
            f"{7 / 2.8038595:.7f} meq/L",
        ),
    ],
)
def test_units_do_not_matter(volume: str, flow: str, now: str, new: str) -> None:
    system = {"net_volume": volume}
    found = answer(
        system=system,
        exchange={"per_day": flow, "days": 30},
        value=[{"parameter": "alkalinity", "now": now, "new_water": new}],
    )
    plain = answer()
    assert found.left == pytest.approx(plain.left, rel=1e-7)
    assert found.courses[0].end == pytest.approx(plain.courses[0].end, rel=1e-5)
