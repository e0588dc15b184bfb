"""What refuses an upkeep and what is remarked on: every limit from both sides, every objection with its field.

Bounds are those of the parameter file (common practice, no source) and of the pumps and jugs asked about.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest

from evenwater.engine.limits import Nearness
from evenwater.engine.reasons import Reason
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepQuestion
from evenwater.engine.upkeep_limits import Limit, refusals
from evenwater.screens.words import sentence
from tests.engine.upkeeps import (
    MEQ_PER_DKH,
    NITRATE,
    POTASSIUM,
    answered,
    ask,
    dose_of,
    item,
    jug,
    limewater,
    raw,
    read,
    refused,
    remarks_of,
)

BOTTLE = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
LYE = jug("sodium hydroxide", 40.0)


def near(answer: UpkeepAnswer, code: str) -> Nearness:
    return next(limit for limit in answer.limits if limit.code == code)


def remark(question: Any, code: str) -> Reason:
    return next(r for r in answered(question).remarks if r.code == code)


def two_part(**pump: Any) -> dict[str, Any]:
    return raw(item("alkalinity", **pump), item("calcium"))


def lime(evaporation: str) -> dict[str, Any]:
    return raw(item("alkalinity", additive=limewater()), system={"evaporation": evaporation})


def in_three(use: str) -> dict[str, Any]:
    return raw(item("alkalinity", use, doses_per_day=3))


# Each limit: a question on the near side of it, one beyond, the refusal's code and the field it belongs to.
LIMITS = {
    # 54.5614 mL in a day at 0.1 mL per minute take 37.89 % of it.
    "pump_share_alkalinity": (
        two_part(flow="0.1 mL/min", largest_share="37.9 %"), two_part(flow="0.1 mL/min", largest_share="37.88 %"),
        "upkeep_pump_share", "item.1.pump.flow",
    ),
    # 54.5614 mL over 24 are 2.27339.
    "smallest_dose_alkalinity": (
        two_part(smallest_dose="2.2733 mL"), two_part(smallest_dose="2.2734 mL"),
        "upkeep_smallest_dose", "item.1.pump.doses_per_day",
    ),
    # 1.05 dKH in three doses are 0.35 each.
    "single_dose_alkalinity": (
        in_three("1.0499 dKH per day"), in_three("1.0501 dKH per day"), "upkeep_single_dose", "item.1.pump.doses_per_day",
    ),
    # 2590.7 mL of limewater in a day, each dose rounded down to a millionth of a millilitre.
    "evaporation": (lime("2.5908 L per day"), lime("2.5906 L per day"), "upkeep_evaporation", "system.evaporation"),
}  # fmt: skip


@pytest.mark.parametrize("code", LIMITS)
def test_a_limit_holds_from_both_sides(code: str) -> None:
    within, beyond, refusal, path = LIMITS[code]
    figure = near(answered(within), code)
    assert 0.9995 < figure.share <= 1.0
    assert not figure.over
    turned = code.startswith("smallest")
    assert figure.share == pytest.approx(
        figure.bound / figure.value if turned else figure.value / figure.bound, rel=1e-9
    )
    (found,) = refused(beyond).reasons
    assert (found.code, found.path) == (refusal, path)


def used(question: UpkeepQuestion, use: float) -> UpkeepQuestion:
    """Return the question with another use of its first item [canonical unit per day], beyond what the field admits too."""
    return replace(question, items=(replace(question.items[0], use=use), *question.items[1:]))


def test_what_an_additive_brings_of_a_value_that_is_not_kept_is_limited() -> None:
    # 20 mg/L per day of potassium are the most; a mole comes with each mole of nitrate.
    question = read(raw(item("nitrate", doses_per_day=96), item("alkalinity"), item("calcium")))
    most = 20.0 / POTASSIUM * NITRATE
    figure = near(answered(used(question, most * 0.9999)), "daily_rise_potassium")
    assert (figure.bound, figure.unit) == (20.0, "mg/L per day")
    assert figure.share == pytest.approx(0.9999, rel=1e-5)
    (found,) = refused(used(question, most * 1.0001)).reasons
    assert (found.code, found.path) == ("upkeep_daily_rise", "")
    assert found.params["parameter"] == "potassium"
    assert found.params["rise"] == pytest.approx(20.002, rel=1e-5)
    assert found.params["with_correction"] is False


def test_alkalinity_that_nutrients_leave_behind_is_limited_too() -> None:
    # 1.4 dKH are the most; a mole of nitrate taken up leaves one equivalent.
    question = read(raw(item("nitrate", additive=jug("sodium nitrate", 10.0), doses_per_day=96)))
    most = 1.4 * MEQ_PER_DKH * NITRATE
    figure = near(answered(used(question, most * 0.9999)), "daily_rise_alkalinity")
    assert (figure.unit, figure.bound) == ("dKH per day", 1.4)
    assert figure.share == pytest.approx(0.9999, rel=1e-5)
    (found,) = refused(used(question, most * 1.0001)).reasons
    assert (found.code, found.params["parameter"]) == ("upkeep_daily_rise", "alkalinity")
    # A little of it is said as well, and counts with a correction.
    little = raw(item("nitrate", "0.01 mg/L as NO3 per day"))
    assert near(answered(little), "daily_rise_alkalinity").value == pytest.approx(
        0.01 / NITRATE / MEQ_PER_DKH, rel=1e-5
    )
    beside = raw(item("nitrate", "1 mg/L as NO3 per day"), planned=planned("1.3 dKH per day"))
    assert near(answered(beside), "daily_rise_alkalinity").value == pytest.approx(
        1.3 + 1.0 / NITRATE / MEQ_PER_DKH, rel=1e-5
    )
    assert ask(raw(item("nitrate", "5 mg/L as NO3 per day", doses_per_day=96), planned=planned("1.3 dKH per day"))) == (
        "upkeep_daily_rise",
    )


def test_what_the_animals_take_of_it_is_no_rise() -> None:
    # Limewater that keeps calcium brings the alkalinity that goes with it.
    found = answered(
        raw(item("calcium", additive=limewater(), flow="200 mL/min"), system={"evaporation": "9 L per day"})
    )
    assert not [limit for limit in found.limits if limit.code == "daily_rise_alkalinity" and limit.share > 1e-6]


def planned(rise: str, parameter: str = "alkalinity", **more: Any) -> list[dict[str, Any]]:
    return [{"parameter": parameter, "rise_per_day": rise, "days_left": "4", **more}]


def test_a_correction_that_is_outstanding_counts_with_all_that_upkeep_brings() -> None:
    # 0.9 dKH a day of upkeep and 0.5 of correction are 1.4, the hard rise.
    within, beyond = (raw(item("alkalinity"), planned=planned(f"{rise} dKH per day")) for rise in ("0.4999", "0.5001"))
    figure = near(answered(within), "daily_rise_alkalinity")
    assert figure.value == pytest.approx(1.3999, rel=1e-5)
    assert figure.bound == 1.4
    (found,) = refused(beyond).reasons
    assert found.code == "upkeep_daily_rise"
    assert found.params["with_correction"] is True
    assert remark(within, "upkeep_beside_correction").params == {"parameter": "alkalinity", "days": 4.0}
    # Two corrections of one value count together.
    both = raw(item("alkalinity"), planned=planned("0.3 dKH per day") + planned("0.3 dKH per day"))
    assert ask(both) == ("upkeep_daily_rise",)


def test_a_correction_counts_where_an_additive_brings_the_value_along() -> None:
    question = raw(item("nitrate"), planned=planned("19.8 mg/L per day", "potassium"))
    brought = 0.5 / NITRATE * POTASSIUM
    assert ask(question) == ("upkeep_daily_rise",)
    within = raw(item("nitrate"), planned=planned("19.6 mg/L per day", "potassium"))
    assert near(answered(within), "daily_rise_potassium").value == pytest.approx(19.6 + brought, rel=1e-5)
    # It is no correction of what is kept.
    assert "upkeep_beside_correction" not in remarks_of(answered(within))


def test_a_correction_of_what_upkeep_does_not_bring_is_left_to_its_own_plan() -> None:
    found = answered(raw(item("nitrate"), planned=planned("99 mg/L per day", "magnesium")))
    assert not [limit.code for limit in found.limits if "magnesium" in limit.code]
    # Its doses too, even where uptake leaves a little of the value: 0.65 dKH each, more than is recommended.
    found = answered(raw(item("nitrate"), planned=planned("1.3 dKH per day", doses_per_day=2)))
    assert "single_dose_alkalinity" not in {limit.code for limit in found.limits}


def test_doses_of_one_moment_count_together() -> None:
    # A dose of lime brings calcium as well, and so does that of an outstanding correction.
    found = answered(raw(
        item("alkalinity", additive=limewater()), item("calcium", "8 mg/L per day"),
        planned=planned("24 mg/L per day", "calcium", doses_per_day=12),
    ))  # fmt: skip
    assert near(found, "single_dose_calcium").value == pytest.approx(8.0 / 24.0 + 24.0 / 12.0, rel=1e-4)
    assert near(found, "single_dose_alkalinity").value == pytest.approx(0.9 / 24.0, rel=1e-4)


def test_water_of_all_pumps_counts_against_evaporation() -> None:
    both = (item("alkalinity", additive=limewater()), item("magnesium"))
    found = answered(raw(*both, system={"evaporation": "2.7 L per day"}))
    in_day = sum(dose.in_24_hours_ml for dose in found.doses)
    assert near(found, "evaporation").value == pytest.approx(in_day, rel=1e-12)
    assert in_day > dose_of(found, "alkalinity").in_24_hours_ml
    assert "evaporation_unknown" not in remarks_of(found)
    unknown = remark(raw(*both), "evaporation_unknown")
    assert unknown.params["in_day_ml"] == pytest.approx(dose_of(found, "alkalinity").in_24_hours_ml, rel=1e-12)
    assert "evaporation_unknown" not in remarks_of(answered(two_part()))


def test_ph_is_limited_by_all_that_lifts_it_in_one_hour() -> None:
    # Lye lifts pH most; in four doses a day it lifts it further than in 24.
    few, many = (raw(item("alkalinity", "1.39 dKH per day", LYE, doses_per_day=n, measured="4.5 dKH")) for n in (4, 24))
    found = near(answered(many), "ph_rise")
    assert 0.0 < found.value < 0.2
    (refusal,) = [r for r in refused(few).reasons if r.code == "upkeep_ph_rise"]
    assert refusal.params["rise"] > refusal.params["most"] == 0.2
    assert refusal.params["per_day"] == (4,)
    # Two pumps in the same hour lift more than one.
    alone = near(answered(raw(item("alkalinity", "0.5 dKH per day", LYE, doses_per_day=24))), "ph_rise").value
    lime_too = raw(item("alkalinity", "0.9 dKH per day", LYE), item("calcium", "3 mg/L per day", limewater()))
    assert near(answered(lime_too), "ph_rise").value > alone
    # 48 doses are two in an hour, each half as large; 25 are two as well.
    assert near(answered(raw(item("alkalinity", doses_per_day=48))), "ph_rise").value == pytest.approx(
        near(answered(raw(item("alkalinity"))), "ph_rise").value, rel=1e-5
    )
    assert (
        near(answered(raw(item("alkalinity", doses_per_day=25))), "ph_rise").value
        > 1.9 * near(answered(raw(item("alkalinity"))), "ph_rise").value * 24.0 / 25.0
    )


def test_what_lowers_ph_is_not_counted_on() -> None:
    alone = near(answered(raw(item("alkalinity", additive=LYE))), "ph_rise").value
    acid = item("phosphate", "0.2 mg/L as PO4 per day", doses_per_day=96)
    for other in (acid, item("calcium")):
        assert near(answered(raw(item("alkalinity", additive=LYE), other)), "ph_rise").value == pytest.approx(
            alone, rel=1e-9
        )
    bicarbonate = answered(raw(item("alkalinity", additive=jug("sodium bicarbonate", 80.0))))
    assert near(bicarbonate, "ph_rise").value == 0.0


def test_a_correction_of_alkalinity_counts_as_hydroxide_in_the_hour() -> None:
    kept = item("alkalinity", "0.3 dKH per day", LYE)
    both = near(answered(raw(kept, planned=planned("1 dKH per day"))), "ph_rise").value
    assert both == pytest.approx(
        near(answered(raw(item("alkalinity", "1.3 dKH per day", LYE))), "ph_rise").value, rel=1e-4
    )
    # What upkeep does not lift is left to the plan of the correction, whatever that is made of.
    for other in (item("calcium"), item("alkalinity", "0.3 dKH per day", jug("sodium bicarbonate", 80.0))):
        assert near(answered(raw(other, planned=planned("1 dKH per day"))), "ph_rise").value == 0.0
    assert answered(raw(item("magnesium"), planned=planned("1 dKH per day"))).hour is None


def test_ph_may_not_pass_the_ceiling_and_bicarbonate_is_let_through() -> None:
    soda, bicarbonate = (
        item("alkalinity", additive=jug(name, 80.0)) for name in ("sodium carbonate anhydrous", "sodium bicarbonate")
    )
    high = {"ph": "8.495"}
    (found,) = refused(raw(soda, system=high)).reasons
    assert (found.code, found.path) == ("upkeep_ph_ceiling", "system.ph")
    assert found.params["ph"] > found.params["most"] == 8.5
    assert found.params["now"] == pytest.approx(8.495, abs=1e-9)
    assert isinstance(ask(raw(soda, system={"ph": "8.48"})), UpkeepAnswer)
    assert isinstance(ask(raw(bicarbonate, system={"ph": "8.55"})), UpkeepAnswer)
    # A pH that was not measured is 8.1, and only its rise is limited.
    unmeasured = answered(raw(soda, system={"ph": None}))
    assert {limit.code for limit in unmeasured.limits}.isdisjoint({"ph_ceiling", "saturation"})
    assert near(unmeasured, "ph_rise").value == pytest.approx(near(answered(raw(soda)), "ph_rise").value, rel=1e-9)
    assert ("upkeep_ph_assumed" in remarks_of(unmeasured), "upkeep_ph_assumed" in remarks_of(answered(raw(soda)))) == (
        True,
        False,
    )
    assert "upkeep_ph_assumed" not in remarks_of(answered(raw(bicarbonate, system={"ph": None})))


def test_saturation_may_not_pass_its_ceiling() -> None:
    def at(calcium: str) -> dict[str, Any]:
        return raw(item("alkalinity", measured="13 dKH"), item("calcium", measured=calcium), system={"ph": "8.35"})

    figure = near(answered(at("400 mg/L")), "saturation")
    assert figure.bound == 10.0
    assert 7.0 < figure.value < 10.0
    assert "may_precipitate" in remarks_of(answered(at("400 mg/L")))
    (found,) = refused(at("460 mg/L")).reasons
    assert found.code == "upkeep_saturation"
    assert found.params["saturation"] > 10.0
    assert "may_precipitate" not in remarks_of(answered(two_part()))


def test_a_ph_that_no_water_has_is_refused() -> None:
    question = read(raw(item("alkalinity", measured="4 dKH")))
    (found,) = refused(replace(question, system=replace(question.system, ph=11.0))).reasons
    assert (found.code, found.path) == ("impossible_water", "system.ph")


def test_where_no_ph_was_measured_it_is_the_alkalinity_that_no_water_has() -> None:
    # Borate alone brings some 0.1 meq/L at pH 8.1 (Dickson 1990; Uppstrom 1974).
    question = read(raw(item("calcium"), system={"ph": None, "alkalinity": "0.2 dKH"}))
    (found,) = refused(question).reasons
    assert (found.code, found.path) == ("impossible_water", "system.alkalinity")
    assert "pH of 8.1" in sentence(found)


def test_the_one_exit_refuses_whatever_is_no_number() -> None:
    why = Reason("upkeep_ph_rise")
    figures = [Nearness("x", v, 1.0, "", v, over) for v, over in ((0.5, False), (math.nan, False), (1.2, True))]
    assert refusals([Limit(figure, why) for figure in figures]) == (why, why)


OBJECTIONS: dict[str, tuple[Any, list[tuple[str, str]]]] = {
    "nothing kept": (replace(read(two_part()), items=()), [("upkeep_nothing_kept", "item")]),
    "one value twice": (
        raw(item("alkalinity"), item("calcium"), item("alkalinity", additive=limewater())), [("upkeep_twice", "item.3.parameter")],
    ),
    "no use": (raw(item("alkalinity", "0 dKH per day"), item("calcium")), [("upkeep_no_use", "item.1.daily_use")]),
    "use not known": (
        replace(read(raw(item("calcium"))), items=(replace(read(raw(item("calcium"))).items[0], use=None),)),
        [("upkeep_no_use", "item.1.daily_use")],
    ),
    "raises something else": (
        raw(item("calcium"), item("magnesium", additive=jug("potassium chloride", 9.0))),
        [("does_not_raise", "item.2.additive.chemical")],
    ),
    "does not dissolve": (
        raw(item("alkalinity", additive=jug("sodium bicarbonate", 150.0))), [("does_not_dissolve", "item.1.additive.dissolved")],
    ),
    "falls out in its jug": (
        raw(item("calcium", additive=jug("calcium chloride dihydrate", 9.0, also={"chemical": "sodium bicarbonate", "dissolved": "1 g"}))),
        [("never_in_one_jug", "item.1.additive.also.chemical")],
    ),
    "no likely value": (raw(item("alkalinity", measured="140 dKH")), [("implausible", "item.1.measured")]),
    "two jugs of one salt": (
        raw(item("alkalinity", additive=limewater()), item("calcium", additive=limewater(5.0))),
        [("upkeep_same_ratio", "item.2.additive.chemical")],
    ),
    "a step too coarse": (
        raw(item("alkalinity"), item("calcium", step="3 mL")), [("upkeep_step", "item.2.pump.step")],
    ),
    "all at once": (
        raw(item("alkalinity", "0 dKH per day", jug("potassium chloride", 9.0)), item("calcium", measured="9 mg/L")),
        [("does_not_raise", "item.1.additive.chemical"), ("upkeep_no_use", "item.1.daily_use"), ("implausible", "item.2.measured")],
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", OBJECTIONS)
def test_an_objection_names_its_field(name: str) -> None:
    question, expected = OBJECTIONS[name]
    assert [(r.code, r.path) for r in refused(question).reasons] == expected
