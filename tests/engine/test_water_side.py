"""The carbonate side of a correction against the hand reckoning: the water now, on the way, and at the target."""

from __future__ import annotations

import json
from typing import Any

import pytest

from evenwater.engine import water_limits
from evenwater.engine.carbonate_point import Portions, Sample
from evenwater.engine.carbonate_state import ImpossibleWaterError
from evenwater.engine.water_limits import TankChemistry
from tests.engine.asking import answered, read, worked
from tests.engine.generated import drawn
from tests.engine.reckoning import Plan, reckon, water_side
from tests.engine.reckoning_ph import ASSUMED, Amounts, Constants, Tank, gas_of, ph_of, saturation_of

WITH_WATER = [
    (raw, plan)
    for raw, plan in drawn()[0]
    if raw["change"]["parameter"] in ("alkalinity", "calcium", "phosphate")
    and (raw["change"]["parameter"], "label" in raw["additive"]) != ("phosphate", True)
]


def _sides(raw: dict[str, Any], plan: Plan) -> tuple[TankChemistry, Tank]:
    question = read(raw)
    mine = water_limits.chemistry_of(question, float(plan.per_ml))
    water = (question.system.water.salinity, question.system.water.temperature_c)
    by_hand = water_side(raw, question.target - question.measured, water)
    assert isinstance(mine, TankChemistry), json.dumps(raw)
    assert isinstance(by_hand, Tank), json.dumps(raw)
    return mine, by_hand


def _same(found: Sample, k: Constants, held: Amounts) -> None:
    figures = (found.alkalinity, found.dic, found.calcium, found.borate, found.phosphate)
    expected = (held.alkalinity, held.carbon, held.calcium, held.boron, held.phosphate)
    assert figures == pytest.approx([1000.0 * amount for amount in expected], rel=1e-9, abs=1e-12)
    ph = ph_of(k, held)
    assert found.ph_total == pytest.approx(ph, abs=1e-9)
    assert found.ph_nbs == pytest.approx(ph + k.nbs, abs=1e-9)
    assert found.saturation == pytest.approx(saturation_of(k, held, ph), rel=1e-8)
    assert found.co2 == pytest.approx(1000.0 * gas_of(k, held, ph), rel=1e-8)


def test_there_are_enough_of_each_kind() -> None:
    assert len(WITH_WATER) >= 100
    known = [raw for raw, _ in WITH_WATER if "ph" in raw["system"]]
    assert 20 <= len(known) <= len(WITH_WATER) - 20
    assert {raw["change"]["parameter"] for raw in known} == {"alkalinity", "calcium", "phosphate"}


def test_water_now_on_the_way_and_at_the_target() -> None:
    for raw, plan in WITH_WATER[::2]:
        mine, by_hand = _sides(raw, plan)
        climb = float(plan.pace * plan.lasts)
        _same(mine.start, by_hand.k, by_hand.ends[0])
        _same(mine.end, by_hand.k, by_hand.ends[1])
        _same(mine.at(0.3 * climb), by_hand.k, by_hand.at(0.3, climb))
        # At once, before any gas was exchanged: what was added, and nothing else.
        _same(mine.after(mine.end, 0.1 * climb), by_hand.k, by_hand.ends[1].plus(by_hand.per_unit, 0.1 * climb))


def test_what_a_rise_brings() -> None:
    for raw, plan in WITH_WATER:
        mine, by_hand = _sides(raw, plan)
        one = by_hand.per_unit
        expected = [1000.0 * amount for amount in (one.alkalinity, one.carbon, one.calcium, one.boron, one.phosphate)]
        found = mine.per_unit
        figures = (found.alkalinity, found.dic, found.calcium, found.borate, found.phosphate)
        assert figures == pytest.approx(expected, rel=1e-9), json.dumps(raw)


def test_where_ph_is_not_known_it_stays_where_it_is_taken_to_be() -> None:
    for raw, plan in WITH_WATER:
        mine, _ = _sides(raw, plan)
        if "ph" in raw["system"]:
            assert mine.start.ph_nbs == pytest.approx(float(raw["system"]["ph"]), abs=1e-12)
            # Carbon dioxide is back where it was.
            assert mine.end.co2 == pytest.approx(mine.start.co2, rel=1e-9)
        else:
            assert (mine.start.ph_nbs, mine.end.ph_nbs) == pytest.approx((ASSUMED, ASSUMED), abs=1e-12)


def test_what_was_measured_is_kept_apart_from_what_is_taken() -> None:
    for raw, plan in WITH_WATER:
        mine, _ = _sides(raw, plan)
        told = {*raw["system"], raw["change"]["parameter"]}
        assert (mine.ph_known, mine.alkalinity_known, mine.calcium_known) == (
            "ph" in told, "alkalinity" in told, "calcium" in told,
        )  # fmt: skip


def test_an_additive_without_a_part_in_it_has_no_such_side() -> None:
    neutral = [(raw, plan) for raw, plan in drawn()[0] if (raw, plan) not in WITH_WATER]
    assert len(neutral) >= 100
    for raw, plan in neutral:
        assert water_limits.chemistry_of(read(raw), float(plan.per_ml)) is None
        assert water_side(raw, 1.0, (35.0, 25.0)) == "brings nothing"


def test_a_bottle_of_calcium_brings_calcium_only() -> None:
    label = {"label": {"dose": "5 mL", "water": "100 L", "raises": "10 mg/L"}}
    raw = {**worked(change__parameter="calcium", change__measured="400 mg/L", change__target="420 mg/L",
                    change__daily_use=None, change__fastest_rise=None), "additive": label}  # fmt: skip
    question = read(raw)
    tank = water_limits.chemistry_of(question, 1.0)
    assert tank is not None
    assert tank.per_unit == Portions(calcium=tank.per_unit.calcium)
    assert tank.per_unit.calcium == pytest.approx(1.0 / 40.078 / 1.02334, rel=1e-4)


def test_alkalinity_of_natural_seawater_stands_in() -> None:
    """2.36 meq/L at salinity 35: of the parameter file, whose source stands there."""
    raw = worked(
        change__parameter="calcium", change__measured="400 mg/L", change__target="420 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__chemical="calcium chloride dihydrate", system__ph="8.1",
    )  # fmt: skip
    tank = water_limits.chemistry_of(read(raw), 1.0)
    assert tank is not None
    assert tank.start.alkalinity == pytest.approx(6.61 * 0.35665 / 1.02334, rel=1e-4)
    assert not tank.alkalinity_known


@pytest.mark.parametrize(
    ("ph", "measured", "target", "calcium"),
    [("8.43", "9.8 dKH", "10.1 dKH", "500 mg/L"), ("8.44", "9 dKH", "9.5 dKH", "520 mg/L")],
)
def test_saturation_is_held_where_two_doses_fall_into_one_hour(
    ph: str, measured: str, target: str, calcium: str
) -> None:
    raw = worked(
        system__ph=ph, system__calcium=calcium, change__measured=measured, change__target=target,
        change__daily_use="1.2 dKH per day", pump__doses_per_day=25,
    )  # fmt: skip
    plan, answer = reckon(raw), answered(raw)
    assert isinstance(plan, Plan)
    assert answer.set_by == plan.set_by == "saturation"
    assert answer.pace == pytest.approx(float(plan.pace), rel=1e-6)


def test_impossible_water_is_not_reckoned_with() -> None:
    raw = worked(
        change__parameter="calcium", change__measured="400 mg/L", change__target="420 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__chemical="calcium chloride dihydrate", system__ph="9.5", system__alkalinity="1 dKH",
    )  # fmt: skip
    with pytest.raises(ImpossibleWaterError):
        water_limits.chemistry_of(read(raw), 1.0)
    # Of alkalinity itself the reading counts, whatever was told besides.
    assert water_limits.chemistry_of(read(worked(system__ph="8.1", system__alkalinity="0.1 dKH")), 0.01) is not None
