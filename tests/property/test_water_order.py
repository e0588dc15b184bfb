"""How the limits on pH, saturation and evaporation answer to a change of the question, and what they never refuse.

Chemistry of the order: an equivalent of hydroxide takes up the most carbon dioxide, one of carbonate half as much, one of
bicarbonate none; lime brings calcium besides. Limits: common practice, no source.
"""

from __future__ import annotations

import itertools
import random
from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import correction, water_limits
from evenwater.engine.catalogue import Chemical, Parameter
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.quantities import Water
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.stock import Dissolved, Labelled, grams_for, limewater
from tests.engine.asking import known, read, worked
from tests.engine.reckoning import WATER_LIMITS

CHEMICALS, PARAMETERS = known().chemicals, known().parameters
# From the one that lifts pH least to the one that lifts it most, and that raises saturation most.
ORDER = ("sodium bicarbonate", "sodium carbonate anhydrous", "sodium hydroxide", "calcium hydroxide")
# As little as lime can bring, so that all dissolve [meq/mL].
STRENGTH = 0.03


@st.composite
def tanks(draw: st.DrawFn) -> CorrectionQuestion:
    """Return a correction of alkalinity in any tank, with a pump and a jump that hold nothing back."""
    base = read(worked())
    p, measured = base.parameter, draw(st.floats(1.5, 4.5))
    system = replace(
        base.system,
        water=Water(draw(st.floats(25.0, 40.0)), draw(st.floats(18.0, 30.0))),
        ph=draw(st.none() | st.floats(7.6, 8.5)),
        calcium=draw(st.none() | st.floats(350.0, 550.0)),
    )
    return replace(
        base,
        parameter=replace(p, dose_rise_recommended=50.0, dose_rise_hard=100.0, rise_hard=50.0),
        system=system,
        measured=measured,
        target=measured + draw(st.floats(0.05, 0.4)),
        use=draw(st.sampled_from((0.0, 0.1, 0.4))),
        fastest=p.canonical(draw(st.floats(0.2, 20.0))),
        reason="a test of large doses",
        pump=replace(base.pump, flow_ml_per_min=1e6, step_ml=1e-6, doses_per_day=draw(st.integers(1, 240))),
    )


def of(chemical: Chemical, parameter: str = "alkalinity", per_ml: float = STRENGTH) -> Dissolved:
    return Dissolved(chemical, grams_for(chemical, parameter, per_ml, 1.0), 1.0)


def pace(question: CorrectionQuestion) -> float:
    """Return the pace of a plan; one that the limits of the water refuse is the slowest there is."""
    result = correction.solve(question)
    if isinstance(result, Refused):
        assert {r.code for r in result.reasons} <= {"too_slow", "impossible_water", *(f"{c}_forbids" for c in ANY)}, (
            result
        )
        return 0.0
    return result.pace


ANY = (*WATER_LIMITS, "evaporation", "also_raises")


@settings(max_examples=120)
@given(question=tanks())
def test_the_stronger_the_base_the_slower_the_pace(question: CorrectionQuestion) -> None:
    # What calcium lime brings along has a limit of its own, which is not what is looked at here.
    others = tuple(replace(o, rise_hard=1e6) if o.name == "calcium" else o for o in question.others)
    paces = [pace(replace(question, others=others, additive=of(CHEMICALS[name]))) for name in ORDER]
    for faster, slower in itertools.pairwise(paces):
        assert faster >= slower * (1.0 - 1e-9)
    if question.system.ph is None:
        # Only the rise of pH is limited, and calcium has no part in it.
        assert paces[3] == pytest.approx(paces[2], rel=1e-9)
    # A bottle is reckoned as hydroxide.
    bottle = Labelled(1.0, 1.0, STRENGTH, "alkalinity")
    assert pace(replace(question, additive=bottle)) == pytest.approx(paces[2], rel=1e-9)


def test_the_order_is_strict_where_the_water_sets_the_pace() -> None:
    question = read(worked(pump__doses_per_day=1, change__daily_use=None, change__target="7.0 dKH"))
    p = replace(question.parameter, dose_rise_recommended=50.0, dose_rise_hard=200.0, rise_hard=200.0)
    question = replace(question, parameter=p, target=4.9, fastest=40.0, reason="a test of large doses")
    question = replace(question, pump=replace(question.pump, flow_ml_per_min=1e6, step_ml=1e-6))
    found = [correction.solve(replace(question, additive=of(CHEMICALS[name]))) for name in ORDER[:3]]
    assert all(isinstance(answer, Answer) for answer in found), found
    bicarbonate, carbonate, hydroxide = (answer.pace for answer in found if isinstance(answer, Answer))
    # At pH 8.1 bicarbonate lowers pH a little: it is held back by nothing of the water at all.
    assert bicarbonate == 40.0
    assert bicarbonate > 1.5 * carbonate > 1.5 * 1.5 * hydroxide


@settings(max_examples=60)
@given(question=tanks(), factor=st.floats(0.2, 0.99), name=st.sampled_from(ORDER))
def test_a_tighter_limit_of_the_water_is_never_faster(question: CorrectionQuestion, factor: float, name: str) -> None:
    question = replace(question, additive=of(CHEMICALS[name]))
    first = pace(question)
    tighter = {
        "PH_RISE_PER_HOUR": 0.2 * factor,
        "PH_KEPT": (7.8, 7.8 + 0.7 * factor),
        "SATURATION_CEILING": 10.0 * factor,
    }
    for limit, value in tighter.items():
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr(water_limits, limit, value)
            assert pace(question) <= first * (1.0 + 1e-9), limit


@pytest.mark.parametrize(
    ("doses", "together"), [(1, 1), (2, 1), (23, 1), (24, 1), (25, 2), (47, 2), (48, 2), (49, 3), (1440, 60)]
)
def test_fullest_hour_by_counting(doses: int, together: int) -> None:
    # Evenly spaced instants, of which an hour that begins with one holds so many (its end not counted).
    assert sum(1 for number in range(doses) if number * 24 < doses) == together
    assert water_limits.doses_in_an_hour(doses) == together


def along(parameter: Parameter, chemical: Chemical | None) -> float:
    """Return the daily use up to which nothing that goes with it passes three times its hard rise either."""
    most = 3.0 * parameter.canonical(parameter.rise_hard)
    if parameter.name == "calcium" and chemical is not None and chemical.per_mole("alkalinity") > 0.0:
        # Skeleton takes two equivalents with each mole of calcium: 20.04 mg for a milliequivalent.
        alkalinity = PARAMETERS["alkalinity"]
        return min(most, 3.0 * alkalinity.canonical(alkalinity.rise_hard) * 20.04)
    return most


EVERY = [(p, c) for p in PARAMETERS.values() for c in (*known().raising(p.name), None)]


@pytest.mark.parametrize(("p", "chemical"), EVERY, ids=lambda x: getattr(x, "name", "label"))
def test_defaults_never_refuse_what_the_daily_limits_allow_at_24_doses_a_day(
    p: Parameter, chemical: Chemical | None
) -> None:
    """As long as pH is not given: any water, any reading, uses up to three times the hard daily rise."""
    draw = random.Random(f"{p.name} {chemical.name if chemical else 'label'}")
    base, slowed = read(worked()), Counter[str]()
    low, high = max(p.target_hard[0], p.plausible[0]), p.target_hard[1]
    hard = p.canonical(p.rise_hard)
    for _ in range(60):
        measured = p.canonical(draw.uniform(low, high - 0.05 * (high - low)))
        additive: Dissolved | Labelled = Labelled(5.0, 100.0, p.canonical(p.rise_recommended), p.kind)
        if chemical is not None:
            most = chemical.most_per_litre(20.0)
            assert most is not None
            additive = Dissolved(chemical, 0.5 * most, 1.0)
        question = replace(
            base,
            parameter=p,
            unit=p.display_unit,
            measured=measured,
            measured_as=(measured, p.display_unit),
            target=min(measured + draw.uniform(0.1, 6.0) * hard, p.canonical(high)),
            use=draw.uniform(0.0, 1.0) * along(p, chemical),
            fastest=draw.uniform(0.1, 1.0) * hard,
            reason="a dip after a power cut",
            additive=additive,
            system=replace(base.system, water=Water(draw.uniform(25.0, 40.0), draw.uniform(18.0, 30.0))),
            pump=replace(base.pump, flow_ml_per_min=1e6, step_ml=1e-6, largest_share=1.0),
        )
        result = correction.solve(question)
        assert isinstance(result, Answer), (result, question)
        slowed[result.set_by] += 1
    # Lime brings so much alkalinity with its calcium that the alkalinity sets the pace instead; nothing else is slowed.
    slow = 60 - slowed["daily_rise"] - slowed["also_raises_alkalinity"] - slowed["also_raises_potassium"]
    assert slow <= 1, slowed


def test_limewater_is_held_to_what_evaporates() -> None:
    jug = limewater(CHEMICALS["calcium hydroxide"], 20.0)
    question = replace(read(worked(change__daily_use="0.3 dKH per day")), additive=jug)
    question = replace(question, pump=replace(question.pump, flow_ml_per_min=1000.0, step_ml=1e-6))
    last = 0.0
    # 1.3 dKH a day in 340 L are 158 meq, and a litre of limewater holds 42.
    for litres in (1.0, 2.0, 3.5, 4.0, 100.0):
        result = correction.solve(replace(question, system=replace(question.system, evaporation_l=litres)))
        assert isinstance(result, Answer)
        assert result.doses.in_24_hours_ml <= 1000.0 * litres * (1.0 + 1e-9)
        assert (result.set_by == "evaporation") == (litres < 3.7), litres
        assert result.pace > last or result.set_by == "daily_rise"
        last = result.pace
        bar = next(item for item in result.limits if item.code == "evaporation")
        assert bar.bound == 1000.0 * litres
        assert bar.value == pytest.approx(result.dose_ml_per_day)
        if result.set_by == "evaporation":
            assert result.dose_ml_per_day == pytest.approx(1000.0 * litres, rel=1e-9)
        assert "evaporation_unknown" not in {r.code for r in result.remarks}
