"""What holds for any recovery: nothing proposed passes a hard limit or raises the value, and more water never leaves it higher."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import numpy as np
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from evenwater.engine import recovery
from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water
from evenwater.engine.recipe import Bottle
from evenwater.engine.recovery import RecoveryAnswer
from evenwater.engine.recovery_plan import Course, exchanged
from evenwater.engine.recovery_question import Overdose, RecoveryQuestion
from evenwater.engine.stock import Labelled
from tests.engine.asking import NOW, known
from tests.engine.recoveries import choice, read, worked

PARAMETERS = tuple(known().parameters.values())
# Instants of a day that the simulation looks at.
LOOKS = 8


@st.composite
def questions(draw: st.DrawFn) -> RecoveryQuestion:
    """Draw any tank with one value that is too high, and any new water."""
    high = draw(st.sampled_from(PARAMETERS))
    values, new, use = {}, {}, {}

    def between(low: float, most: float) -> float:
        return draw(st.floats(low, most, allow_subnormal=False))

    for p in PARAMETERS:
        hard, (least, most) = p.canonical(p.rise_hard), (p.canonical(bound) for bound in p.target_hard)
        if p is high or draw(st.booleans()):
            values[p.name] = between(0.97 * least, 1.03 * most)
        if p is high or draw(st.booleans()):
            new[p.name] = between(0.97 * least, 1.03 * most)
        if draw(st.integers(0, 3)):
            use[p.name] = between(0.0, 1.05 * hard)
    target = between(*(high.canonical(bound) for bound in high.target_hard))
    values[high.name] = target + between(0.1, draw(st.sampled_from([1.0, 20.0]))) * high.canonical(high.rise_hard)
    if draw(st.integers(0, 3)):
        new[high.name] = target * between(draw(st.sampled_from([0.0, 0.9])), 0.95)
    volume = between(1.0, 5000.0)
    # A bottle of which a millilitre raises a litre by one, half of the excess of it or more than all.
    ml = volume * (values[high.name] - target) * draw(st.sampled_from([0.0, 0.5, 1.0]))
    bottle = Bottle(Labelled(1.0, 1.0, 1.0, high.kind), high)
    before = {name: value - (ml / volume if name == high.name else 0.0) for name, value in values.items()}
    return RecoveryQuestion(
        now=NOW, name="", parameter=high, parameters=PARAMETERS, target=target, volume_l=volume, water=Water(), values=values,
        before=before, new_water=new, use=use, held=(high.name, *draw(st.sets(st.sampled_from([p.name for p in values_of(values) if p is not high]))
        if len(values) > 1 else st.just(set()))), most_l_per_day=volume * between(0.01, 0.5), measured=not ml,
        overdose=Overdose(bottle, ml) if ml else None, volume_share=draw(st.sampled_from([0.0, 0.02, 0.25])), ran_in={high.name: ml},
    )  # fmt: skip


def values_of(values: dict[str, float]) -> list[Parameter]:
    return [p for p in PARAMETERS if p.name in values]


def simulated(q: RecoveryQuestion, course: Course, share_of_use: float, volume: float) -> tuple[np.ndarray, np.ndarray]:
    """Live through a course in a tank of a volume [L] until the value is at its target, all values at once.

    Instants [day], shape (n,), and values, shape (n, parameters); of equal instants the second is right after a change of water.
    """
    names = [p.name for p in q.known]
    fresh = np.array([q.new_water.get(name, math.nan) for name in names])
    mixes = ~np.isnan(fresh)
    fresh = np.where(mixes, fresh, 0.0)
    use = share_of_use * np.array([q.use.get(name, 0.0) if name in q.held else 0.0 for name in names])
    main = names.index(q.parameter.name)
    value, now = np.array([q.values_in(volume)[name] for name in names]), 0.0
    times, rows = [0.0], [value]
    # A day or a change that is cut short in the tank that was said is whole in one that takes longer.
    stages = [*(s for s in course.stages if s.days == 1.0 or not course.further_stages), *course.further_stages]
    legs = [(s.days, s.l_per_day, 0.0) for s in stages]
    if course.changes:
        by_instant = {c.at_days: c.litres for c in (*course.changes, *course.further_changes)}
        starts = sorted(by_instant)
        ends = [*starts[1:], max(course.days, course.between_days[1])]
        legs = [(end - at, 0.0, by_instant[at]) for at, end in zip(starts, ends, strict=True)]
    for days, per_day, at_once in legs or [(course.between_days[1], 0.0, 0.0)]:
        if value[main] <= q.target:
            break
        if at_once:
            value = np.where(mixes, value + at_once / volume * (fresh - value), value)
            times.append(now)
            rows.append(value)
        rate = np.where(mixes, per_day / volume, 0.0)
        steps = max(1, math.ceil(days * LOOKS))
        step = days / steps
        for _ in range(steps):
            # Halfway the values are those of a short step, so that the rate is that of the middle.
            middle = value + 0.5 * step * (rate * (fresh - value) - use)
            value = value + step * (rate * (fresh - middle) - use)
            now += step
            times.append(now)
            rows.append(value)
            if value[main] <= q.target:
                return np.array(times), np.array(rows)
    return np.array(times), np.array(rows)


@settings(deadline=None, max_examples=300)
@given(questions(), st.floats(0.0, 1.0), st.floats(-1.0, 1.0))
def test_nothing_proposed_passes_a_hard_limit_of_any_value(
    q: RecoveryQuestion, share_of_use: float, off: float
) -> None:
    """However much of their use the animals really take, and wherever in its interval the volume lies."""
    volume = q.volume_l * (1.0 + off * q.volume_share)
    result = recovery.solve(q)
    assert isinstance(result, RecoveryAnswer), result
    hard = np.array([p.canonical(p.rise_hard) for p in q.known])
    least, most = (np.array([p.canonical(p.target_hard[k]) for p in q.known]) for k in (0, 1))
    main = [p.name for p in q.known].index(q.parameter.name)
    for each in result.choices:
        for course in filter(None, (each.course, each.changes)):
            if not each.proposed:
                continue
            times, rows = simulated(q, course, share_of_use, volume)
            # The main value never rises; no other leaves its range, or goes on where it is outside already.
            assert np.all(np.diff(rows[:, main]) <= 1e-9 * rows[0, main])
            others = np.arange(len(hard)) != main
            grain = 1e-3 * hard
            assert np.all((rows >= np.minimum(least, rows[0]) - grain)[:, others])
            assert np.all((rows <= np.maximum(most, rows[0]) + grain)[:, others])
            for k in range(len(times)):
                within = (times > times[k] - 1.0 + 1e-9) & (times <= times[k])
                moved = np.abs(rows[within] - rows[k]).max(axis=0)
                assert np.all(moved <= hard * (1.0 + 1e-3) + 1e-9 * np.abs(rows[0])), (each.name, times[k])


@settings(deadline=None, max_examples=60)
@given(questions())
def test_every_proposal_reaches_its_target_and_no_lower(q: RecoveryQuestion) -> None:
    result = recovery.solve(q)
    assert isinstance(result, RecoveryAnswer)
    for each in result.choices:
        assert each.proposed == (not each.reasons)
        for course in filter(None, (each.course, each.changes)):
            if each.proposed:
                assert course.done
                end = course.points[-1].values[q.parameter.name]
                assert math.isclose(end, q.target, rel_tol=1e-9, abs_tol=1e-9 * q.values[q.parameter.name])


@settings(deadline=None, max_examples=60)
@given(questions(), st.floats(0.0, 1.0), st.floats(1.0, 3.0))
def test_more_exchange_never_leaves_the_value_higher(q: RecoveryQuestion, part: float, factor: float) -> None:
    """With new water below the target: at every instant the value of the larger exchange is the lower one."""
    name = q.parameter.name
    assume(q.new_water[name] < q.target)
    most = min(q.most_l_per_day * factor, 0.5 * q.volume_l)
    less, more = (exchanged(replace(q, most_l_per_day=litres))[0] for litres in (part * most, most))
    for point in less.points:
        at = [other for other in more.points if other.at_days <= point.at_days]
        if point.at_days == round(point.at_days):
            assert at[-1].values[name] <= point.values[name] + 1e-9 * q.values[name]
    assert more.days <= less.days + 1e-9


@settings(deadline=None, max_examples=25)
@given(st.integers(120, 400), st.integers(20, 200), st.sampled_from(["dKH", "ppm as CaCO3"]))
def test_units_do_not_matter(measured: int, tenths: int, unit: str) -> None:
    """The same tank typed in other units."""
    factor = {"dKH": 1.0, "ppm as CaCO3": read_ppm()}[unit]
    litres, gallons = 3.785411784 * tenths, f"{tenths} US gal"
    plain: dict[str, Any] = {"overdose": None, "additive": None}
    plain["change"] = {"parameter": "alkalinity", "measured": f"{measured / 10} dKH"}
    other = {**plain, "change": {"parameter": "alkalinity", "measured": f"{measured / 10 * factor:.12f} {unit}"}}
    first = recovery.solve(read(worked(**plain, system__net_volume=f"{litres:.9f} L")))
    second = recovery.solve(read(worked(**other, system__net_volume=gallons)))
    assert isinstance(first, RecoveryAnswer)
    assert isinstance(second, RecoveryAnswer)
    for name in ("hold", "exchange", "both"):
        a, b = choice(first, name), choice(second, name)
        assert [r.code for r in a.reasons] == [r.code for r in b.reasons]
        if a.course is not None and b.course is not None:
            assert math.isclose(a.course.days, b.course.days, rel_tol=1e-6)
            assert math.isclose(a.course.litres, b.course.litres, rel_tol=1e-6, abs_tol=1e-9)


def read_ppm() -> float:
    """Return how many ppm as CaCO3 (100.087 g per mol) are one dKH (10 mg per L of CaO, 56.077 g per mol)."""
    alkalinity = known().parameters["alkalinity"]
    typed = read(
        worked(overdose=None, additive=None, change={"parameter": "alkalinity", "measured": "1000 ppm as CaCO3"})
    )
    return 1000.0 / (typed.values["alkalinity"] / alkalinity.canonical(1.0))
