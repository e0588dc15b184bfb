"""300 generated corrections against the hand reckoning in fractions (sources there)."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping
from typing import Any

import pytest

from tests.engine.asking import answered, ask
from tests.engine.generated import COUNT, WAYS, drawn
from tests.engine.reckoning import GRAVITIES, MASSES, UNITS, VOLUMES, WATER_LIMITS, Plan, nearly


def _written(table: str, field: str) -> set[str]:
    """Return the units in which a field of the generated questions was written."""
    texts = [raw[table].get(field, "") for raw, _ in drawn()[0]]
    texts += [raw[table].get("label", {}).get(field, "") for raw, _ in drawn()[0]]
    return {text.partition(" ")[2] for text in texts if text}


def _way(raw: Mapping[str, Any]) -> tuple[str, str]:
    return raw["change"]["parameter"], raw["additive"].get("chemical", "label")


def _of(way: tuple[str, str]) -> list[tuple[Mapping[str, Any], Plan]]:
    """Return the generated corrections of one way to raise one parameter: ten or eleven of the 300."""
    return [(raw, plan) for raw, plan in drawn()[0] if _way(raw) == way]


@pytest.mark.parametrize("way", WAYS, ids=" with ".join)
def test_correction_is_the_one_reckoned_by_hand(way: tuple[str, str]) -> None:
    for raw, plan in _of(way):
        answer, shown = answered(raw), json.dumps(raw)
        assert answer.set_by == plan.set_by, shown
        figures = {
            "dose per day": (answer.dose_ml_per_day, plan.in_day),
            "single dose": (answer.single_dose_ml, plan.single),
            "total": (answer.total_ml, plan.total),
            "lasts": (answer.lasts_days, plan.lasts),
            "rise per mL": (answer.per_ml, plan.per_ml),
            "strength": (answer.strength, plan.strength),
            "upkeep": (answer.upkeep_ml_per_day, plan.upkeep),
            "pace": (answer.pace, plan.pace),
        }
        for name, (actual, expected) in figures.items():
            assert nearly(actual, expected), f"{name}: {actual} against {float(expected)} for {shown}"
        assert (answer.whole_jug is None) == (plan.whole_jug is None)
        if answer.whole_jug is not None and plan.whole_jug is not None:
            assert nearly(answer.whole_jug, plan.whole_jug), shown


@pytest.mark.parametrize("way", WAYS, ids=" with ".join)
def test_rounded_doses_are_the_ones_reckoned_by_hand(way: tuple[str, str]) -> None:
    for raw, plan in _of(way):
        doses, shown = answered(raw).doses, json.dumps(raw)
        assert nearly(doses.step_ml, plan.step), shown
        assert nearly(doses.dose_ml, plan.dose), shown
        assert doses.count == plan.count, shown
        assert nearly(doses.upkeep_ml, plan.upkeep_dose), shown
        assert nearly(doses.total_ml, plan.count * plan.dose), shown
        # The shortfall is a small difference of large figures: held against the climb, not against itself.
        assert abs(doses.shortfall - float(plan.shortfall)) <= 1e-9 * float(plan.pace * plan.lasts), shown


def test_questions_that_the_hand_reckoning_refuses_are_refused_for_the_same_reason() -> None:
    refused = drawn()[1]
    for raw, code in refused:
        assert ask(raw) == tuple(code.split(", ")), json.dumps(raw)
    assert len(refused) > 20
    assert len({code for _, code in refused}) >= 4


def test_the_sample_holds_every_parameter_chemical_and_unit() -> None:
    ways = Counter(_way(raw) for raw, _ in drawn()[0])
    assert ways.total() == COUNT == 300
    assert set(ways) == set(WAYS)
    assert min(ways.values()) >= 10
    concentrations = {unit for units in UNITS.values() for unit in units}
    assert _written("change", "measured") == _written("change", "target") == concentrations
    rises = {f"{unit} per day" for unit in concentrations if unit not in GRAVITIES}
    assert _written("change", "daily_use") == _written("change", "fastest_rise") == rises
    assert _written("system", "net_volume") == _written("additive", "made_up_to") == set(VOLUMES)
    assert _written("additive", "dose") == _written("additive", "water") == set(VOLUMES)
    assert _written("additive", "dissolved") == set(MASSES)
    binding = Counter(plan.set_by for _, plan in drawn()[0])
    assert binding["daily_rise"] >= 100
    assert {"single_dose", "pump_share", "also_raises_alkalinity", "evaporation", *WATER_LIMITS} <= set(binding)
    refused = {code for _, code in drawn()[1]}
    assert {"ph_rise_forbids", "ph_ceiling_forbids", "saturation_forbids", "evaporation_forbids"} <= refused
