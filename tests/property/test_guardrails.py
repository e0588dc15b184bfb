"""Every threshold and its nearest neighbours, in every unit (limits: common practice, no source)."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import correction, judge
from evenwater.engine.catalogue import Parameter
from evenwater.engine.correction import Answer
from evenwater.engine.limits import Cap, Guardrail, Standing, nearness, pace, passed
from evenwater.engine.quantities import from_canonical, to_canonical
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Labelled
from evenwater.engine.units import KINDS
from tests.engine.asking import NOW, known, read, worked

UP, DOWN = math.inf, -math.inf
PARAMETERS = tuple(known().parameters.values())
UNITS = [(p, unit.id) for p in PARAMETERS for unit in KINDS[p.kind].units]
RISE_UNITS = [(p, unit.id) for p in PARAMETERS for unit in KINDS[f"{p.kind} per day"].units]
NOT_NUMBERS = (math.nan, math.inf, -math.inf)


def _question(p: Parameter, **changes: object) -> CorrectionQuestion:
    """Return a question about a parameter that is planned without any objection."""
    low = max(p.target_hard[0], p.plausible[0])
    measured = p.canonical(low + 0.4 * (p.target_hard[1] - low))
    base = read(worked())
    question = replace(
        base,
        parameter=p,
        unit=p.display_unit,
        measured=measured,
        measured_as=(measured / p.canonical(1.0), p.display_unit),
        target=measured + p.canonical(p.rise_recommended) / 2.0,
        use=0.0,
        fastest=None,
        additive=Labelled(5.0, 100.0, p.canonical(p.rise_recommended), p.kind),
    )
    assert judge.objections(question) == ()
    return replace(question, **changes)  # type: ignore[arg-type]


def _codes(question: CorrectionQuestion) -> set[str]:
    return {reason.code for reason in judge.objections(question)}


def _neighbours(threshold: float) -> tuple[float, float, float]:
    return math.nextafter(threshold, DOWN), threshold, math.nextafter(threshold, UP)


@pytest.mark.parametrize("p", PARAMETERS, ids=lambda p: p.name)
def test_a_guardrail_stands_exactly_where_it_is_said_to(p: Parameter) -> None:
    rail = Guardrail(p.canonical(p.rise_recommended), p.canonical(p.rise_hard))
    below, at, above = _neighbours(rail.recommended)
    assert [rail.standing(v) for v in (below, at, above)] == [
        Standing.WITHIN, Standing.WITHIN, Standing.BEYOND_RECOMMENDED,
    ]  # fmt: skip
    below, at, above = _neighbours(rail.hard)
    assert [rail.standing(v) for v in (below, at, above)] == [
        Standing.BEYOND_RECOMMENDED, Standing.BEYOND_RECOMMENDED, Standing.BEYOND_HARD,
    ]  # fmt: skip
    assert rail.standing(math.nan) is rail.standing(math.inf) is Standing.BEYOND_HARD


@given(recommended=st.floats(), hard=st.floats())
def test_a_guardrail_takes_only_bounds_that_make_sense(recommended: float, hard: float) -> None:
    sensible = math.isfinite(recommended) and math.isfinite(hard) and 0.0 < recommended <= hard
    if sensible:
        assert Guardrail(recommended, hard).standing(hard) is not Standing.BEYOND_HARD
    else:
        with pytest.raises(ValueError, match="must lie above zero"):
            Guardrail(recommended, hard)


def _walk(threshold: float, kind: str, unit: str) -> Iterator[tuple[float, int]]:
    """Yield figures around a threshold that came through a unit, with the side each is on.

    A figure and its conversion have binary noise of a few units in the last place, so the nearest figures that
    are surely on one side are a billionth away; the threshold itself must count as met.
    """
    figure = from_canonical(threshold, kind, unit)
    # A specific gravity is a steep scale near one: the same step in it is a larger one in salinity.
    for side in (-1, 0, 1):
        yield to_canonical(figure, kind, unit) * (1.0 + side * 1e-9), side


@pytest.mark.parametrize(("p", "unit"), RISE_UNITS, ids=lambda x: getattr(x, "name", x))
def test_fastest_rise_around_its_two_bounds(p: Parameter, unit: str) -> None:
    kind = f"{p.kind} per day"
    for value, side in _walk(p.canonical(p.rise_recommended), kind, unit):
        assert ("rise_needs_reason" in _codes(_question(p, fastest=value))) == (side > 0)
        assert _codes(_question(p, fastest=value, reason="why not")) == set()
    for value, side in _walk(p.canonical(p.rise_hard), kind, unit):
        codes = _codes(_question(p, fastest=value, reason="why not"))
        assert codes == ({"rise_beyond_hard"} if side > 0 else set())
    for value in (0.0, -0.0, math.nextafter(0.0, DOWN), -1.0):
        assert "rise_not_positive" in _codes(_question(p, fastest=value))


@pytest.mark.parametrize("p", PARAMETERS, ids=lambda p: p.name)
def test_target_and_reading_at_their_bounds_to_the_last_bit(p: Parameter) -> None:
    for bound, outside in zip(p.target_hard, (DOWN, UP), strict=True):
        at = p.canonical(bound)
        beyond = math.nextafter(at, outside)
        measured = p.canonical(max(p.plausible[0], 0.0))
        assert "target_outside" not in _codes(_question(p, target=at, measured=measured))
        assert ("target_outside" in _codes(_question(p, target=beyond, measured=measured))) == (beyond >= 0.0)
    for bound, outside in zip(p.plausible, (DOWN, UP), strict=True):
        at = p.canonical(bound)
        beyond = math.nextafter(at, outside)
        assert "implausible" not in _codes(_question(p, measured=at))
        assert ("implausible" in _codes(_question(p, measured=beyond))) == (beyond >= 0.0)


@pytest.mark.parametrize(("p", "unit"), UNITS, ids=lambda x: getattr(x, "name", x))
def test_target_and_reading_around_their_bounds_in_every_unit(p: Parameter, unit: str) -> None:
    for high, field, code in (
        (p.target_hard[1], "target", "target_outside"),
        (p.plausible[1], "measured", "implausible"),
    ):
        for value, side in _walk(p.canonical(high), p.kind, unit):
            if side:
                assert (code in _codes(_question(p, **{field: value}))) == (side > 0)
    for low, field, code in (
        (p.target_hard[0], "target", "target_outside"),
        (p.plausible[0], "measured", "implausible"),
    ):
        for value, side in _walk(p.canonical(low), p.kind, unit):
            if side and low > 0.0:
                assert (code in _codes(_question(p, **{field: value}))) == (side < 0)


@pytest.mark.parametrize("p", PARAMETERS, ids=lambda p: p.name)
def test_target_against_the_reading_to_the_last_bit(p: Parameter) -> None:
    measured = _question(p).measured
    below, at, above = _neighbours(measured)
    assert _codes(_question(p, target=below)) == {"target_below_measured"}
    assert _codes(_question(p, target=at)) == {"target_reached"}
    assert _codes(_question(p, target=above)) == set()


@pytest.mark.parametrize("p", PARAMETERS, ids=lambda p: p.name)
def test_age_of_the_reading_to_the_microsecond(p: Parameter) -> None:
    tick, stale, ahead = timedelta(microseconds=1), timedelta(days=p.stale_days), timedelta(minutes=5)
    assert _codes(_question(p, measured_at=NOW - stale)) == set()
    assert _codes(_question(p, measured_at=NOW - stale - tick)) == {"reading_stale"}
    assert _codes(_question(p, measured_at=NOW + ahead)) == set()
    assert _codes(_question(p, measured_at=NOW + ahead + tick)) == {"reading_in_the_future"}


def _caps(figures: tuple[float, ...]) -> tuple[Cap, ...]:
    return tuple(Cap(f"cap {n}", figure, Reason(f"cap {n}")) for n, figure in enumerate(figures))


@given(figures=st.lists(st.floats(allow_nan=False), min_size=1, max_size=6))
def test_the_pace_is_the_slowest_cap_and_the_first_wins_a_tie(figures: list[float]) -> None:
    bound = pace(_caps(tuple(figures)))
    assert bound.fastest == min(figures)
    assert bound.code == f"cap {figures.index(min(figures))}"


@given(figures=st.lists(st.floats(), min_size=1, max_size=6), place=st.integers(0, 5))
def test_a_cap_that_is_not_a_number_allows_nothing(figures: list[float], place: int) -> None:
    with_nan = (*figures[:place], math.nan, *figures[place:])
    bound = pace(_caps(with_nan))
    assert bound.fastest == 0.0
    assert bound.code == f"cap {next(n for n, f in enumerate(with_nan) if math.isnan(f))}"


def test_a_pace_without_limit_does_not_exist() -> None:
    with pytest.raises(ValueError, match="at least one limit"):
        pace(())


def test_a_bound_that_is_met_is_not_passed() -> None:
    assert not nearness("x", 1.4, 1.4, "dKH").over
    assert not nearness("x", 0.1 + 0.2, 0.3, "dKH").over
    assert nearness("x", 1.401, 1.4, "dKH").over
    assert passed([nearness("x", 1.0, 2.0, ""), nearness("y", 3.0, 2.0, "")]) == (nearness("y", 3.0, 2.0, ""),)


@pytest.mark.parametrize("p", PARAMETERS, ids=lambda p: p.name)
def test_largest_share_and_smallest_dose_at_the_edge(p: Parameter) -> None:
    question = _question(p)
    result = correction.solve(question)
    assert isinstance(result, Answer)
    dose = result.doses.dose_ml
    for smallest, fits in zip(_neighbours(dose), (True, True, False), strict=True):
        edge = correction.solve(replace(question, pump=replace(question.pump, smallest_ml=smallest)))
        assert isinstance(edge, Answer) == fits


@settings(max_examples=50)
@given(value=st.sampled_from(NOT_NUMBERS), p=st.sampled_from(PARAMETERS))
def test_no_comparison_lets_a_not_number_through(value: float, p: Parameter) -> None:
    for field in ("measured", "target", "use", "fastest"):
        assert _codes(_question(p, **{field: value})) == {"not_a_number"}


def test_every_threshold_has_its_units() -> None:
    # So that the walks above stay complete when a unit is added.
    assert {p.kind for p in PARAMETERS} == {"alkalinity", "ion", "nitrate", "phosphate", "salinity"}
    pairs = itertools.chain(UNITS, RISE_UNITS)
    assert sum(1 for _ in pairs) == 4 + 2 * 5 + 2 + 2 + 4 + 4 + 2 * 5 + 2 + 2 + 1
