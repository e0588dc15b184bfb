"""How a plan must answer to a change of its question (metamorphic tests; common practice, no source)."""

from __future__ import annotations

import copy
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from evenwater.engine import correction
from evenwater.engine.correction import Answer
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.stock import Dissolved, Labelled
from tests.engine.asking import answered
from tests.engine.reckoning import MASSES, VOLUMES, WATER_LIMITS, canonical, written
from tests.property.plans import Drawn, plans

# Far beyond any tank: a pump that never binds.
ANY_FLOW = 1e6


def _strong_pump(question: CorrectionQuestion) -> CorrectionQuestion:
    """Return the question with nothing in it that counts millilitres: neither the pump nor the top-off."""
    pump = replace(question.pump, flow_ml_per_min=ANY_FLOW, smallest_ml=None, step_ml=None)
    return replace(question, pump=pump, system=replace(question.system, evaporation_l=None))


def _pace(question: CorrectionQuestion) -> float:
    """Return the pace of a plan; a refusal is the slowest pace there is."""
    result = correction.solve(question)
    return result.pace if isinstance(result, Answer) else 0.0


def _solved(question: CorrectionQuestion) -> Answer:
    result = correction.solve(question)
    assert isinstance(result, Answer), result.reasons
    return result


@settings(max_examples=60)
@given(drawn=plans(), factor=st.sampled_from([2.0, 3.0, 10.0]))
def test_so_many_times_the_volume_takes_so_many_times_the_dose(drawn: Drawn, factor: float) -> None:
    question = _strong_pump(drawn.answer.question)
    larger = replace(question, system=replace(question.system, volume_l=factor * question.system.volume_l))
    first, second = _solved(question), _solved(larger)
    assert second.pace == pytest.approx(first.pace, rel=1e-9)
    for name in ("dose_ml_per_day", "single_dose_ml", "total_ml", "upkeep_ml_per_day"):
        assert getattr(second, name) == pytest.approx(factor * getattr(first, name), rel=1e-9)
    assert second.lasts_days == pytest.approx(first.lasts_days, rel=1e-9)


def _stronger(additive: Dissolved | Labelled, factor: float) -> Dissolved | Labelled:
    if isinstance(additive, Labelled):
        return replace(additive, raises=factor * additive.raises)
    return replace(additive, grams=factor * additive.grams)


@settings(max_examples=60)
@given(drawn=plans(), factor=st.floats(0.1, 0.95))
def test_a_stronger_stock_takes_fewer_millilitres(drawn: Drawn, factor: float) -> None:
    strong = _strong_pump(drawn.answer.question)
    weak = replace(strong, additive=_stronger(strong.additive, factor))
    first, second = _solved(strong), _solved(weak)
    assert first.total_ml == pytest.approx(factor * second.total_ml, rel=1e-9)
    assert first.dose_ml_per_day < second.dose_ml_per_day
    assert first.pace == pytest.approx(second.pace, rel=1e-9)


@settings(max_examples=60)
@given(drawn=plans(), factor=st.floats(0.05, 1.0))
def test_a_tighter_limit_is_never_faster(drawn: Drawn, factor: float) -> None:
    question = drawn.answer.question
    p, pump = question.parameter, question.pump
    allowed = p.canonical(p.rise_recommended) if question.fastest is None else question.fastest
    others = tuple(
        replace(o, rise_hard=factor * o.rise_hard, rise_recommended=factor * o.rise_recommended)
        for o in question.others
    )
    tighter = {
        "rise": replace(question, fastest=factor * allowed),
        "recommended rise": replace(
            question, parameter=replace(p, rise_recommended=factor * p.rise_recommended), fastest=None
        ),
        "jump": replace(
            question,
            parameter=replace(
                p, dose_rise_recommended=factor * p.dose_rise_recommended, dose_rise_hard=factor * p.dose_rise_hard
            ),
        ),
        "share": replace(question, pump=replace(pump, largest_share=factor * pump.largest_share)),
        "flow": replace(question, pump=replace(pump, flow_ml_per_min=factor * pump.flow_ml_per_min)),
        "doses": replace(question, pump=replace(pump, doses_per_day=max(1, int(factor * pump.doses_per_day)))),
        "others": replace(question, others=others),
        "smallest dose": replace(question, pump=replace(pump, smallest_ml=(pump.smallest_ml or 0.1) / factor)),
    }
    for name, changed in tighter.items():
        # The fullest hour of 25 evenly spaced doses holds two of them, that of 24 only one: fewer may then be faster.
        if name == "doses" and drawn.answer.set_by in WATER_LIMITS:
            continue
        # Without a figure of the keeper's own, the recommended rise is the limit and may be the looser one.
        base = replace(question, fastest=None) if name == "recommended rise" else question
        assert _pace(changed) <= max(_pace(base), 0.0) * (1.0 + 1e-12), name


@settings(max_examples=60)
@given(drawn=plans())
def test_each_limit_really_binds_when_it_is_tightened_far_enough(drawn: Drawn) -> None:
    question = drawn.answer.question
    first = _solved(question)
    half = first.pace / 2.0
    p, pump = question.parameter, question.pump
    jump = (half + question.use) / pump.doses_per_day / p.canonical(1.0)
    changed = {
        "daily_rise": replace(question, fastest=half),
        "single_dose": replace(question, parameter=replace(p, dose_rise_recommended=jump, dose_rise_hard=jump)),
        "pump_share": replace(
            question,
            pump=replace(pump, largest_share=(half + question.use) / first.per_ml / pump.flow_ml_per_min / 1440.0),
        ),
    }
    for code, tightened in changed.items():
        result = correction.solve(tightened)
        if isinstance(result, Answer):
            assert result.set_by == code
            assert result.pace == pytest.approx(half, rel=1e-9)
        else:
            # Half the pace may be a dose below the pump's step or its smallest, or last for more than a year.
            assert {r.code for r in result.reasons} <= {"step_too_coarse", "dose_below_smallest", "too_slow"}


@settings(max_examples=60)
@given(drawn=plans(), share=st.floats(0.2, 0.8))
def test_two_legs_take_as_much_as_the_whole_way(drawn: Drawn, share: float) -> None:
    question = _strong_pump(drawn.answer.question)
    whole = _solved(question)
    between = question.measured + share * (question.target - question.measured)
    low, high = (question.parameter.canonical(v) for v in question.parameter.plausible)
    assume(low <= between <= high)
    legs = [_solved(replace(question, target=between)), _solved(replace(question, measured=between))]
    # The same dose does other things to pH and saturation on the second leg than on the first.
    assume(not {whole.set_by, *(leg.set_by for leg in legs)} & set(WATER_LIMITS))
    assert sum(leg.total_ml for leg in legs) == pytest.approx(whole.total_ml, rel=1e-9)
    assert sum(leg.lasts_days for leg in legs) == pytest.approx(whole.lasts_days, rel=1e-9)


@settings(max_examples=60)
@given(drawn=plans(), times=st.integers(2, 10))
def test_a_day_split_into_more_doses_takes_as_much(drawn: Drawn, times: int) -> None:
    question = _strong_pump(drawn.answer.question)
    more = replace(question, pump=replace(question.pump, doses_per_day=times * question.pump.doses_per_day))
    first, second = _solved(question), _solved(more)
    assert second.upkeep_ml_per_day == pytest.approx(first.upkeep_ml_per_day, rel=1e-12)
    if first.set_by not in ("single_dose", *WATER_LIMITS):
        assert second.dose_ml_per_day == pytest.approx(first.dose_ml_per_day, rel=1e-12)
        assert second.single_dose_ml == pytest.approx(first.single_dose_ml / times, rel=1e-12)
    else:
        # Twice as many doses are at most twice as many in the fullest hour.
        assert second.pace >= first.pace * (1.0 - 1e-9)


@settings(max_examples=60)
@given(drawn=plans(), data=st.data())
def test_the_unit_a_quantity_is_written_in_does_not_matter(drawn: Drawn, data: st.DataObject) -> None:
    raw: dict[str, Any] = copy.deepcopy(drawn.raw)
    volume = data.draw(st.sampled_from(VOLUMES))
    raw["system"]["net_volume"] = written(canonical(raw["system"]["net_volume"]), volume)
    if "dissolved" in raw["additive"]:
        raw["additive"]["dissolved"] = written(
            canonical(raw["additive"]["dissolved"]), data.draw(st.sampled_from(MASSES))
        )
    again = answered(raw)
    assert again.total_ml == pytest.approx(drawn.answer.total_ml, rel=1e-9)
    assert again.dose_ml_per_day == pytest.approx(drawn.answer.dose_ml_per_day, rel=1e-9)
