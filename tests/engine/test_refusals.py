"""Refusals are justified: whatever is refused is tried out here by force, and does not work.

Limits: common practice, no source. Solubility: the rows of chemicals.toml, whose sources stand there.
"""

from __future__ import annotations

import json
from typing import Any

import pytest

from evenwater.engine import correction
from evenwater.engine.correction import Answer, Refused
from tests.engine.asking import answered, ask, known, read, worked
from tests.engine.generated import drawn
from tests.engine.reckoning import BOUNDS, FACTORS, SALTS, canonical, default_step

Raw = dict[str, Any]


def _refused(code: str) -> list[Raw]:
    return [raw for raw, said in drawn()[1] if said == code]


def _rise_per_ml(raw: Raw) -> float:
    """Return what a millilitre does, from the product's plan for an easier question with the same stock and tank."""
    question = read(raw)
    amount = correction.strength(
        question.additive, question.parameter.name, question.parameter.kind, question.system.water
    )
    return amount / question.system.volume_l


def _use(raw: Raw) -> float:
    return read(raw).use


def test_no_dose_within_the_jump_makes_good_the_use() -> None:
    cases = _refused("single_dose_forbids")
    assert cases
    for raw in cases:
        bounds = BOUNDS[raw["change"]["parameter"]]
        jump = float(bounds.jumps[1 if raw["change"].get("reason") else 0]) * float(FACTORS[bounds.unit])
        doses = raw["pump"].get("doses_per_day", 24)
        # The largest allowed dose at every dosing time, for a day: the value does not end higher.
        value = 0.0
        for _ in range(doses):
            value += jump - _use(raw) / doses
        assert value <= 1e-12, json.dumps(raw)


def test_pump_running_all_it_may_does_not_raise_the_value() -> None:
    cases = [worked(pump__flow="0.02 mL/min"), worked(pump__largest_share="0.1 %"), *_refused("pump_share_forbids")]
    for raw in cases:
        assert ask(raw) == ("pump_share_forbids",)
        share = float(raw["pump"].get("largest_share", "50 %").split()[0]) / 100.0
        most_ml = float(canonical(raw["pump"]["flow"])) * 1440.0 * share
        assert most_ml * _rise_per_ml(raw) <= _use(raw), json.dumps(raw)


def test_no_multiple_of_the_step_up_to_the_dose_raises_the_value() -> None:
    cases = [worked(pump__step="5 mL"), *_refused("step_too_coarse")]
    for raw in cases:
        assert ask(raw) == ("step_too_coarse",)
        doses = raw["pump"].get("doses_per_day", 24)
        per_ml, use = _rise_per_ml(raw), _use(raw) / doses
        # A dose may leave the whole climb and one day's allowed rise behind, never more.
        bounds = BOUNDS[raw["change"]["parameter"]]
        fastest = canonical(raw["change"].get("fastest_rise", f"{bounds.recommended} {bounds.unit}"))
        single = (float(fastest) / doses + use) / per_ml
        step = float(raw["pump"]["step"].split()[0]) if "step" in raw["pump"] else float(default_step(single))
        question = read(raw)
        climb = question.target - question.measured
        for steps in range(int(single / step) + 1):
            left = steps * step * per_ml - use
            # A dose that leaves so little behind that the target is years away is no plan either.
            assert left <= 0.0 or left > climb or climb / left / doses > 365.0, json.dumps(raw)


def test_too_slow_plans_would_last_longer_than_a_year() -> None:
    assert (8.4 - 6.8) / 0.004 > 365.0 > (8.4 - 6.8) / 0.0045
    assert ask(worked(change__fastest_rise="0.004 dKH per day")) == ("too_slow",)
    plan = answered(worked(change__fastest_rise="0.0045 dKH per day", change__daily_use=None, pump__step="0.0001 mL"))
    assert plan.lasts_days <= plan.doses.lasts_days < 365.0


def test_rounding_may_not_make_a_plan_of_years() -> None:
    # Two dKH used, a tenth wanted: doses in steps just above the upkeep would need 105 300 doses, which is 12 years.
    step = 2.0 / 24.0 / 0.0164952141 * (1.0 + 1.8e-4)
    raw = worked(change__daily_use="2 dKH per day", change__fastest_rise="0.1 dKH per day", pump__step=f"{step:.9f} mL")
    result = ask(raw)
    assert isinstance(result, tuple), f"lasts {result.doses.lasts_days} days"


@pytest.mark.parametrize("smallest", ["2.5 mL", "5 mL", "20 mL"])
def test_fewer_doses_are_the_ones_that_reach_the_smallest(smallest: str) -> None:
    raw = worked(pump__smallest_dose=smallest, pump__doses_per_day=96, change__reason="a test of large doses")
    question = read(raw)
    result = correction.solve(question)
    assert isinstance(result, Refused)
    (reason,) = result.reasons
    assert reason.code == "dose_below_smallest"
    # By force: every number of doses above the advice gives doses below the smallest, the advice itself does not.
    needed = float(smallest.split(maxsplit=1)[0])
    fits = [n for n in range(1, 97) if 115.1852017319851 / n >= needed]
    assert reason.params["most_doses"] == max(fits)


@pytest.mark.parametrize("smallest", ["200 mL", "60 mL"])
def test_smallest_dose_without_any_way_out_advises_none(smallest: str) -> None:
    # 115 mL a day: none is 200 mL, and one of 60 mL a day raises alkalinity by 1 dKH at once, of which 0.7 are allowed.
    result = correction.solve(read(worked(pump__smallest_dose=smallest, change__reason="a test of large doses")))
    assert isinstance(result, Refused)
    assert result.reasons[0].code == "dose_below_smallest"
    assert result.reasons[0].params["most_doses"] == 0


def _to_go(target: str, use: str, **changes: Any) -> Raw:
    return worked(change__target=target, change__daily_use=use, change__fastest_rise=None, **changes)


def test_fewer_doses_are_not_advised_where_the_smallest_dose_overshoots() -> None:
    # A millilitre raises alkalinity by 0.016 dKH: to 0.05 dKH and nothing used, 5 mL are too much in however few doses.
    result = correction.solve(read(_to_go("6.85 dKH", "0 dKH per day", pump__smallest_dose="5 mL")))
    assert isinstance(result, Refused)
    assert (result.reasons[0].code, result.reasons[0].params["most_doses"]) == ("dose_below_smallest", 0)
    # With 0.9 dKH used a day the same 5 mL fit once a good part of it was used, and the advice is the most that work.
    raw = _to_go("6.85 dKH", "0.9 dKH per day", pump__smallest_dose="5 mL")
    result = correction.solve(read(raw))
    assert isinstance(result, Refused)
    most = result.reasons[0].params["most_doses"]
    plans = [n for n in range(1, 24) if isinstance(ask({**raw, "pump": {**raw["pump"], "doses_per_day": n}}), Answer)]
    assert most == max(plans)


def test_a_climb_below_a_dose_is_rounded_to_two_digits_of_what_is_really_given() -> None:
    # In half a day 0.083 dKH are used, and 0.005 are wanted: 0.0533 mL of a stock of which a millilitre raises 1.65 dKH. Hundredths
    # of a millilitre, which the 0.21 mL of the largest dose allowed would be rounded to, make 0.05 mL of it, and that is used up.
    raw = _to_go("6.8050 dKH", "0.166 dKH per day", pump__doses_per_day=2)
    raw["additive"] = {"label": {"dose": "1 mL", "water": "340 L", "raises": "1.65 dKH"}}
    plan = answered(raw)
    assert plan.single_dose_ml == pytest.approx(0.35 / 1.65)
    assert (plan.doses.step_ml, plan.doses.dose_ml, plan.doses.count) == (0.001, 0.053, 1)
    assert 0.05 * 1.65 < 0.083 < 0.053 * 1.65 < 0.083 + 0.005


@pytest.mark.parametrize("ph", ["8.52", "8.94", "9.05", "9.40"])
def test_calcium_chloride_is_not_refused_for_a_ph_that_it_does_not_lift(ph: str) -> None:
    # The second opinion's solver stops at 1e-11, and so much is no rise of pH. Little alkalinity keeps saturation low.
    calcium = {"change__parameter": "calcium", "change__measured": "350 mg/L", "change__target": "370 mg/L"}
    rates = {"change__daily_use": "6 mg/L per day", "change__fastest_rise": "10 mg/L per day"}
    chemical = {"additive__chemical": "calcium chloride dihydrate", "additive__dissolved": "147 g"}
    plan = answered(worked(system__ph=ph, system__alkalinity="1.5 meq/L", **calcium, **rates, **chemical))
    assert plan.seen.water is not None
    assert abs(plan.seen.water.highest_ph_rise) < 1e-10


def test_what_no_water_can_hold_is_named_by_the_limit_that_comes_first() -> None:
    # A rise of potassium by dihydrogen phosphate brings more acid than alkalinity holds; nobody measured a pH to be wrong.
    potassium = {"change__parameter": "potassium", "change__measured": "280 mg/L", "change__target": "400 mg/L"}
    rates = {"change__daily_use": None, "change__fastest_rise": None}
    salt = {"additive__chemical": "potassium dihydrogen phosphate", "additive__dissolved": "100 g"}
    assert ask(worked(**potassium, **rates, **salt)) == ("also_raises_forbids",)
    # An alkalinity that nobody's water has, with a pH that was not measured either, is said with the pH that is assumed.
    calcium = {"change__parameter": "calcium", "change__measured": "380 mg/L", "change__target": "400 mg/L"}
    lime = {"additive__chemical": "calcium chloride dihydrate", "additive__dissolved": "147 g"}
    result = correction.solve(read(worked(system__alkalinity="0.1 dKH", **calcium, **rates, **lime)))
    assert isinstance(result, Refused)
    (reason,) = result.reasons
    assert (reason.code, reason.path, reason.params["ph"]) == ("impossible_water", "system.alkalinity", 8.1)


def test_an_additive_that_swamps_another_value_is_refused() -> None:
    # Per mole potassium iodide brings 39.1 g of potassium and 126.9 g of iodide: a potassium rise of 10 mg/L in a day
    # is 32 mg/L of iodide, 1600 times its hard limit, so only a vanishing part of the wanted pace is left.
    raw = worked(
        change__parameter="potassium", change__measured="380 mg/L", change__target="400 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__chemical="potassium iodide",
    )  # fmt: skip
    assert 10.0 * 126.90447 / 39.0983 > 10.0 * 0.02
    assert ask(raw) == ("also_raises_forbids",)
    # The other way round the potassium stays far below its limit, and the plan says how far.
    raw = worked(
        change__parameter="iodide", change__measured="0.03 mg/L", change__target="0.06 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__chemical="potassium iodide", additive__dissolved="1 g",
    )  # fmt: skip
    along = next(item for item in answered(raw).limits if item.code == "also_raises_potassium")
    assert along.value == pytest.approx(0.01 * 39.0983 / 126.90447, rel=1e-6)
    assert along.bound == 20.0


@pytest.mark.parametrize("name", BOUNDS)
def test_target_at_or_below_the_reading_is_refused(name: str) -> None:
    bounds = BOUNDS[name]
    middle = (float(bounds.targets[0]) + float(bounds.targets[1])) / 2.0
    additive = {"label": {"dose": "5 mL", "water": "100 L", "raises": f"{bounds.recommended} {bounds.unit}"}}
    raw = {**worked(), "additive": additive}
    raw["change"] = {"parameter": name, "measured": f"{middle:.5f} {bounds.unit}"}
    for target, code in ((middle, "target_reached"), (middle * 0.99, "target_below_measured")):
        raw["change"]["target"] = f"{target:.5f} {bounds.unit}"
        assert ask(raw) == (code,)
    for target in (float(bounds.targets[1]) * 1.001, float(bounds.targets[0]) * 0.999):
        raw["change"]["target"] = f"{target:.6f} {bounds.unit}"
        # Nitrate and phosphate may be aimed at nothing, which is then below the reading.
        assert ask(raw) == (("target_below_measured",) if target == 0.0 else ("target_outside",))


def test_additive_that_does_not_raise_the_parameter_is_refused_whichever_pair() -> None:
    for name, bounds in BOUNDS.items():
        low = float(bounds.plausible[0]) or 0.1 * float(bounds.targets[1])
        low = max(low, float(bounds.targets[0]))
        change = {
            "parameter": name,
            "measured": f"{low:.5f} {bounds.unit}",
            "target": f"{low + 0.5 * float(bounds.hard):.5f} {bounds.unit}",
        }
        for chemical in known().chemicals.values():
            raw = worked(additive__chemical=chemical.name, additive__dissolved="0.5 g")
            raw["change"] = change
            result = ask(raw)
            refused = isinstance(result, tuple) and "does_not_raise" in result
            # What a chemical carries is the hand reckoning's table, not the product's; boric acid is not in it.
            salt = SALTS.get(chemical.name)
            raises = salt is not None and name in {**salt.raises, **salt.along}
            assert refused == (not raises), f"{chemical.name} for {name}: {result}"
