"""Limewater: what a saturated jug holds, and why no more of it is dosed than evaporates.

Source of its strength: Bates, Bower and Smith 1956, J. Res. NBS 56, 305: 0.0203 mol of calcium hydroxide per litre at
25 degC. That more dissolves in the cold, and that it only replaces what evaporates, is common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import correction, intake, recipe, stock, stock_intake
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.recipe import StockAnswer, StockQuestion
from evenwater.engine.stock import Dissolved, limewater
from tests.engine.asking import NOW, answered, ask, known, read, worked
from tests.engine.reckoning import ATOMS, DEGREE, SALTS

LIME = known().chemicals["calcium hydroxide"]
MOLAR = float(SALTS["calcium hydroxide"].molar)
JUG: dict[str, Any] = {"chemical": "calcium hydroxide", "made_up_to": "20 L", "saturated": True}
PUMP = {"pump__flow": "200 mL/min"}


def limed(additive: dict[str, Any] | None = None, **changes: Any) -> dict[str, Any]:
    """Return the worked example with limewater in place of soda ash."""
    return {**worked(**PUMP, **changes), "additive": additive or JUG}


def test_strength_at_25_degrees_is_the_measured_one() -> None:
    jug = limewater(LIME, 1.0, 25.0)
    assert jug.grams / MOLAR == pytest.approx(0.0203, rel=1.5e-3)
    # Two equivalents and a mole of calcium with each mole.
    assert stock.carried_per_ml(jug, "alkalinity") == pytest.approx(2.0 * 0.0203, rel=1.5e-3)
    assert stock.carried_per_ml(jug, "calcium") == pytest.approx(0.0203 * float(ATOMS["Ca"]), rel=1.5e-3)


def test_the_cooler_the_stronger_and_the_volume_does_not_matter() -> None:
    strengths = [stock.carried_per_ml(limewater(LIME, 5.0, celsius), "alkalinity") for celsius in range(31)]
    assert strengths == sorted(strengths, reverse=True)
    assert len(set(strengths)) == 31
    for litres in (0.5, 20.0, 1000.0):
        jug = limewater(LIME, litres, 12.0)
        assert jug.grams == pytest.approx(litres * limewater(LIME, 1.0, 12.0).grams, rel=1e-12)
        assert (jug.purity, jug.also, jug.made_up_l, jug.coolest_c, jug.saturated) == (1.0, (), litres, 12.0, True)
        assert stock.saturation(jug) == pytest.approx(1.0, rel=1e-12)


def test_what_has_no_known_solubility_cannot_be_saturated() -> None:
    with pytest.raises(ValueError, match="not known"):
        limewater(replace(LIME, solubility=()), 1.0)


def test_a_correction_with_limewater_reckons_with_its_coolest_hour() -> None:
    plans = {celsius: answered(limed({**JUG, "temperature": f"{celsius} degC"})) for celsius in (10, 20, 25)}
    for celsius, plan in plans.items():
        assert plan.strength == pytest.approx(2000.0 * limewater(LIME, 1.0, celsius).grams / MOLAR / 1000.0, rel=1e-9)
    assert plans[10].total_ml < plans[20].total_ml < plans[25].total_ml
    assert answered(limed()).total_ml == plans[20].total_ml, "a room is 20 degC cool unless it is said"
    assert plans[25].strength == pytest.approx(0.0406, rel=1.5e-3)


def test_limewater_is_neither_blocked_nor_remarked_on_as_saturated() -> None:
    plan = answered(limed())
    assert not {"nearly_saturated", "does_not_dissolve"} & {reason.code for reason in plan.remarks}
    assert "solubility" not in {item.code for item in plan.limits}
    assert plan.whole_jug == pytest.approx(6.8 * float(DEGREE) + 20_000.0 * plan.per_ml, rel=1e-9)


def test_evaporation_sets_the_pace_and_says_so() -> None:
    # 1.3 dKH a day take 3.7 L of limewater in 340 L; less than that evaporates.
    plan = answered(limed(system__evaporation="3 L per day", change__daily_use="0.3 dKH per day"))
    assert plan.set_by == "evaporation"
    assert plan.dose_ml_per_day == pytest.approx(3000.0, rel=1e-9)
    assert plan.doses.in_24_hours_ml <= 3000.0
    assert plan.pace == pytest.approx(3000.0 * plan.per_ml - 0.3 * float(DEGREE), rel=1e-9)
    assert plan.never_more_ml == 3000.0
    assert plan.doses.upkeep_ml * 24 <= 3000.0
    ample = answered(limed(system__evaporation="50 L per day"))
    assert ample.set_by == "daily_rise"
    assert ample.never_more_ml < 50_000.0
    assert ample.pace == answered(limed()).pace


@pytest.mark.parametrize("unit", ["mL per day", "US gal per day", "imperial gal per day"])
def test_evaporation_in_any_unit(unit: str) -> None:
    litres = {"mL per day": 0.001, "US gal per day": 3.785411784, "imperial gal per day": 4.54609}[unit]
    plan = answered(limed(system__evaporation=f"{3.0 / litres:.9f} {unit}", change__daily_use="0.3 dKH per day"))
    assert plan.dose_ml_per_day == pytest.approx(3000.0, rel=1e-7)


def test_limewater_that_cannot_keep_up_is_refused_with_both_volumes() -> None:
    raw = limed(system__evaporation="2 L per day")
    result = correction.solve(read(raw))
    assert isinstance(result, Refused)
    (reason,) = result.reasons
    assert (reason.code, reason.path) == ("evaporation_forbids", "system.evaporation")
    needs = 0.9 * float(DEGREE) * 340.0 / answered(limed()).strength
    assert reason.params["needs_ml"] == pytest.approx(needs, rel=1e-9)
    assert reason.params["most_ml"] == 2000.0
    assert needs > 2000.0
    # At the very use there is nothing left to raise with; a hair more is a plan, if a slow one.
    assert ask(limed(system__evaporation=f"{needs / 1000.0 * 0.999999:.9f} L per day")) == ("evaporation_forbids",)
    above = ask(limed(system__evaporation=f"{needs / 1000.0 * 1.1:.9f} L per day", pump__step="0.01 mL"))
    assert isinstance(above, Answer)
    assert above.set_by == "evaporation"


@pytest.mark.parametrize("weighed", [False, True])
def test_unknown_evaporation_is_said_with_the_volume(weighed: bool) -> None:
    thin = {"chemical": "calcium hydroxide", "dissolved": "10 g", "made_up_to": "20 L"}
    plan = answered(limed(thin if weighed else JUG))
    said = {reason.code: reason for reason in plan.remarks}
    assert said["evaporation_unknown"].params["in_day_ml"] == pytest.approx(plan.dose_ml_per_day, rel=1e-12)
    assert "evaporation" not in {item.code for item in plan.limits}
    told = answered(limed(thin if weighed else JUG, system__evaporation="40 L per day"))
    assert "evaporation_unknown" not in {reason.code for reason in told.remarks}
    bar = next(item for item in told.limits if item.code == "evaporation")
    assert (bar.value, bar.bound, bar.unit) == (pytest.approx(told.dose_ml_per_day), 40_000.0, "mL")


def test_lime_as_the_second_chemical_is_held_to_evaporation_too() -> None:
    additive = {"chemical": "sodium chloride", "dissolved": "10 g", "made_up_to": "20 L",
                "also": {"chemical": "calcium hydroxide", "dissolved": "25 g"}}  # fmt: skip
    plan = answered(limed(additive, system__evaporation="3 L per day", change__daily_use="0.1 dKH per day"))
    assert plan.set_by == "evaporation"
    assert plan.dose_ml_per_day == pytest.approx(3000.0, rel=1e-9)
    # It is kept cool, since the lime is what falls out in the warm.
    near = {"chemical": "sodium chloride", "dissolved": "10 g", "made_up_to": "1 L",
            "also": {"chemical": "calcium hydroxide", "dissolved": "1.45 g"}}  # fmt: skip
    said = {reason.code: reason for reason in answered(limed(near)).remarks}
    assert said["nearly_saturated"].params["better_warm"] is False


def test_no_other_additive_is_held_to_evaporation() -> None:
    plan = answered(worked(system__evaporation="0.01 L per day"))
    assert plan.set_by == "daily_rise"
    assert "evaporation" not in {item.code for item in plan.limits}
    label = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
    assert answered({**worked(system__evaporation="0.01 L per day"), "additive": label}).set_by == "daily_rise"


@pytest.mark.parametrize("name", [name for name in known().chemicals if name != "calcium hydroxide"])
def test_nothing_else_is_dosed_from_a_saturated_jug(name: str) -> None:
    table = {"chemical": name, "made_up_to": "20 L", "saturated": True}
    question = intake.correction({**worked(), "additive": table}, known(), NOW)
    assert isinstance(question, intake.Unread)
    assert [(r.code, r.path) for r in question.reasons] == [("not_limewater", "additive.saturated")]
    assert question.reasons[0].params["chemical"] == name
    stocked = stock_intake.stock({"additive": table}, known())
    assert isinstance(stocked, intake.Unread)
    assert [r.code for r in stocked.reasons] == ["not_limewater"]


@pytest.mark.parametrize(
    ("said", "saturated"), [("yes", True), ("Yes", True), ("true", True), (True, True), ("", False), ("no", False)]
)
def test_saturated_as_a_file_and_as_a_form_say_it(said: Any, saturated: bool) -> None:
    table = {"chemical": "calcium hydroxide", "made_up_to": "20 L", "dissolved": "10 g", "saturated": said}
    question = intake.correction(limed(table), known(), NOW)
    assert not isinstance(question, intake.Unread)
    assert isinstance(question.additive, Dissolved)
    assert question.additive.saturated is saturated
    assert (question.additive.grams == 10.0) is not saturated


@pytest.mark.parametrize(
    ("changes", "path"),
    [({"made_up_to": None}, "additive.made_up_to"), ({"chemical": None}, "additive.chemical")],
)
def test_what_a_jug_of_limewater_still_needs(changes: dict[str, Any], path: str) -> None:
    table = {name: value for name, value in {**JUG, **changes}.items() if value is not None}
    question = intake.correction(limed(table), known(), NOW)
    assert isinstance(question, intake.Unread)
    assert [(r.code, r.path) for r in question.reasons] == [("missing", path)]


@settings(max_examples=40)
@given(celsius=st.floats(0.0, 30.0), litres=st.floats(0.1, 900.0))
def test_limewater_as_a_stock(celsius: float, litres: float) -> None:
    raw = {"temperature": f"{celsius:.5f} degC", "additive": {**JUG, "made_up_to": f"{litres:.5f} L"}}
    question = stock_intake.stock(raw, known())
    assert isinstance(question, StockQuestion)
    answer = recipe.solve(question)
    assert isinstance(answer, StockAnswer)
    assert isinstance(answer.batch, Dissolved)
    most = LIME.most_per_litre(float(f"{celsius:.5f}"))
    assert most is not None
    assert answer.batch.grams == pytest.approx(most * float(f"{litres:.5f}"), rel=1e-12)
    assert answer.most_g_per_l == pytest.approx(most, rel=1e-12)
    (remark,) = answer.remarks
    assert remark.code == "limewater"
    assert remark.params == {"grams_per_l": pytest.approx(most, rel=1e-12), "degc": float(f"{celsius:.5f}")}
