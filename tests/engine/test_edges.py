"""Single edges of the engine, reckoned by hand: where a sum begins, what a bound is, what counts where little is known."""

from __future__ import annotations

import tomllib
from dataclasses import replace
from datetime import timedelta

import numpy as np
import pytest

from evenwater.assets import resources
from evenwater.engine import check_ph, jug_intake, recovery, timetable, timetable_judge
from evenwater.engine.carbonate_solver import carbon_charge, phosphate_charge
from evenwater.engine.conversion import convert
from evenwater.engine.following import INSIDE, course, follow
from evenwater.engine.jug import JugQuestion
from evenwater.engine.projection import project
from evenwater.engine.pump_wear import Calibrated, hours_per_day
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason
from evenwater.engine.recovery import RecoveryAnswer
from evenwater.engine.recovery_check import after_overdose
from evenwater.engine.side_effects import side_effects
from evenwater.engine.timetable_question import Apart, Quiet, TimetableQuestion
from tests.engine import exchanges, recoveries
from tests.engine.asking import answered, known, worked
from tests.engine.calibrations import NOW, read_off
from tests.engine.calibrations import answered as calibrated
from tests.engine.timetables import LIME, SODA

# Acids so far apart that at each constant only the two forms beside it exist, half and half.
APART = (np.array([1e-3]), np.array([1e-9]), np.array([1e-15]))


@pytest.mark.parametrize(("at", "mean"), [(0, -0.5), (1, 0.5), (2, 1.5)])
def test_phosphate_counts_halfway_between_two_forms_at_each_constant(at: int, mean: float) -> None:
    """H3PO4 counts -1, H2PO4- 0, HPO4-- 1, PO4--- 2; two values half and half spread by a quarter."""
    found = phosphate_charge(APART[at], APART)
    assert [float(each[0]) for each in found] == pytest.approx([mean, 0.25], abs=1e-4)


@pytest.mark.parametrize(("at", "mean"), [(0, 0.5), (1, 1.5)])
def test_carbon_counts_halfway_between_two_forms_at_each_constant(at: int, mean: float) -> None:
    """CO2 counts 0, HCO3- 1, CO3-- 2."""
    found = carbon_charge(APART[at], APART[0], APART[1])
    assert [float(each[0]) for each in found] == pytest.approx([mean, 0.25], abs=1e-4)


@pytest.mark.parametrize(
    ("days", "ran", "per_day"),
    [(10.0, 25.0, 2.5), (1.0, 3.0, 3.0), (0.99, 3.0, None), (10.0, 0.0, None), (0.0, 0.0, None)],
)
def test_running_hours_of_a_day_need_a_day_and_a_pump_that_ran(days: float, ran: float, per_day: float | None) -> None:
    first = Calibrated(NOW - timedelta(days=days), 100.0, 24.0, 0.1)
    last = Calibrated(NOW, 100.0 + ran, 24.0, 0.1)
    assert hours_per_day([last, first]) == (None if per_day is None else pytest.approx(per_day))


@pytest.mark.parametrize("first", ["sodium chloride", "potassium chloride"])
def test_every_salt_of_a_jug_for_salinity_counts_after_an_overdose(first: str) -> None:
    """200 g of sodium chloride and 10 g of potassium chloride in 340 L of 1.02334 kg/L: 210 / 340 / 1.02334 g/kg; in 400 L less."""
    jug = {"sodium chloride": "200 g", "potassium chloride": "10 g"}
    second = next(name for name in jug if name != first)
    also = {"chemical": second, "dissolved": jug[second]}
    additive = {"chemical": first, "dissolved": jug[first], "made_up_to": "1 L", "also": also}
    raw = recoveries.worked(
        additive=additive, change__target=None, overdose__volume="1 L", system__potassium="420 mg/L"
    )
    question = recoveries.read(raw)
    for litres in (340.0, 400.0):
        found = after_overdose(question, litres)
        assert found["salinity"] == pytest.approx(35.0 + 210.0 / litres / 1.02334, rel=1e-5)
        assert found["potassium"] == pytest.approx(420.0 + 10_000.0 * 39.0983 / 74.5513 / litres, rel=1e-5)
    assert after_overdose(replace(question, overdose=None), 340.0) == dict(question.before)
    assert isinstance(recovery.solve(question), RecoveryAnswer), "both opinions agree on it"


@pytest.mark.parametrize(
    ("field", "bad", "last"),
    [
        ("per_day_ml", 9e-7, 1e-6), ("per_day_ml", 1.1e9, None), ("flow_ml_per_min", 0.0, 1e9), ("step_ml", 0.0, None),
        ("largest_share", 1.01, 1.0), ("largest_share", 0.0, None), ("smallest_ml", -0.1, 0.0), ("largest_ml", -0.1, None),
        ("closest_min", -1, 0), ("closest_min", 1441, 1440), ("fewest", 0, 1), ("fewest", 25, 24), ("doses", 25, 24), ("most", 289, 288),
        ("quiet", (Quiet(1440, 60),), (Quiet(1439, 60),)), ("quiet", (Quiet(-1, 60),), (Quiet(0, 60),)),
    ],
)  # fmt: skip
def test_a_pump_whose_figures_make_no_sense_has_no_timetable(field: str, bad: object, last: object) -> None:
    """The last figure that makes sense is not said to make none, whatever else may be said of it."""

    def odd(value: object) -> list[str]:
        pump = replace(SODA, **{field: value})
        return [
            r.path for r in timetable_judge.objections(TimetableQuestion((LIME, pump))) if r.code == "timetable_figure"
        ]

    assert odd(bad) == ["pump.2"]
    if last is not None:
        assert odd(last) == []


def test_ph_along_a_ramp_ends_where_the_rounded_doses_do() -> None:
    """With doses rounded to whole millilitres the ramp ends below its target: what all doses bring less what is used meanwhile."""
    plan = answered(worked(pump__step="1 mL", system__ph="8.1"))
    assert plan.tank is not None
    assert plan.doses.shortfall > 0.0
    lost = next(r.params["lost"] for r in plan.remarks if r.code == "rounding_large")
    assert lost == pytest.approx(1.0 - plan.doses.dose_ml / plan.single_dose_ml)
    climb = plan.doses.total_ml * plan.per_ml - plan.question.use * plan.doses.lasts_days
    along = project(plan).water
    assert along is not None
    assert along.ph[0] == pytest.approx(plan.tank.at(0.0).ph_nbs)
    assert along.ph[-1] == pytest.approx(plan.tank.at(climb).ph_nbs, abs=1e-9)
    assert along.saturation[-1] > along.saturation[0]


@pytest.mark.parametrize(("use", "outside"), [("0.1 dKH per day", True), ("0.01 dKH per day", False)])
def test_where_a_value_settles_is_held_against_the_range_kept(use: str, outside: bool) -> None:
    """A tenth dKH a day out of 10 of 340 L a day settles 3.4 dKH below the new water's 8: 4.6, far outside 7 to 11."""
    value = {"parameter": "alkalinity", "now": "8 dKH", "new_water": "8 dKH", "daily_use": use}
    found = {r.code: r for r in exchanges.reasons(value=[value])}
    assert ("exchange_settles_outside" in found) is outside
    if outside:
        reason = found["exchange_settles_outside"]
        assert reason.path == "value.1"
        assert reason.params["settles"] == pytest.approx((8.0 - 3.4) / 2.80386, rel=1e-4)


def test_no_band_of_a_plan_goes_below_nothing() -> None:
    """A test that may be off by four times the value lets the band reach below zero, where no value is."""
    plan = replace(course(answered(worked())), kit=4.0 * 6.8 / 2.80386)
    at = NOW + timedelta(hours=20)
    retest = follow(plan, [(at, 0.0)], at).retests[0]
    assert (retest.low, retest.place) == (0.0, INSIDE)


@pytest.mark.parametrize(
    ("into", "code", "path", "per_day_ml"),
    [("9.5", "exchange_top_off_more", "exchange.out", 500.0), ("10.4", "exchange_may_flood", "exchange.in", 400.0)],
)
def test_what_an_unmatched_pair_takes_or_leaves_in_a_day(into: str, code: str, path: str, per_day_ml: float) -> None:
    system = {"net_volume": "340 L"}
    found = {
        r.code: r for r in exchanges.reasons(system=system, exchange={"out": "10 L per day", "in": f"{into} L per day"})
    }
    assert found[code].path == path
    assert found[code].params["per_day_ml"] == pytest.approx(per_day_ml)


@pytest.mark.parametrize(("count", "code"), [(0, "timetable_no_pumps"), (25, "timetable_too_many")])
def test_no_pumps_and_too_many_lead_to_the_list_of_pumps(count: int, code: str) -> None:
    pumps = tuple(replace(SODA, name=str(n)) for n in range(count))
    assert [(r.code, r.path) for r in timetable_judge.objections(TimetableQuestion(pumps))] == [(code, "pump")]


@pytest.mark.parametrize(("name", "takes_part"), [("calcium", True), ("magnesium", False)])
def test_a_bottle_takes_part_in_ph_and_saturation_only_by_what_it_is(name: str, takes_part: bool) -> None:
    """Both opinions must agree on it, or there would be no plan: calcium moves saturation, magnesium neither."""
    p = known().parameters[name]
    raw = worked(system__ph="8.1", change__parameter=name, change__daily_use=None, change__fastest_rise=None)
    raw["change"] |= {"measured": f"{p.natural - 20} mg/L", "target": f"{p.natural} mg/L"}
    raw["additive"] = {"label": {"dose": "5 mL", "water": "100 L", "raises": "10 mg/L"}}
    plan = answered(raw)
    assert (plan.tank is not None) is takes_part
    assert (check_ph.look(plan.question, plan.per_ml, 10.0) is not None) is takes_part


def test_a_retest_in_mg_per_kg_counts_the_water_it_was_made_in() -> None:
    """10 mg/kg of water of salinity 10 at 25 degC are 10.05 mg/L (EOS-80: 1.0045 kg/L), of seawater they would be 10.23."""
    raw = tomllib.loads((resources() / "questions" / "jug.toml").read_text(encoding="utf-8"))
    raw["system"] = {"net_volume": "340 L", "salinity": "10", "temperature": "25 degC"}
    raw["additive"] = {"chemical": "calcium chloride dihydrate", "dissolved": "147 g", "made_up_to": "1 L"}
    raw["retest"] = {"parameter": "calcium", "expected": "420 mg/kg", "measured": "410 mg/kg"}
    read = jug_intake.jug(raw, known(), NOW)
    assert isinstance(read, JugQuestion), read
    assert read.test is not None
    assert read.test.off == pytest.approx(-10.045, rel=2e-3)


def test_remarks_lead_to_the_fields_they_are_about() -> None:
    cold = exchanges.reasons(new_water={"temperature": "15 degC"})
    assert ("exchange_temperature_apart", "new_water.temperature") in [(r.code, r.path) for r in cold]
    worn_out = calibrated(read_off(24.0, 24.1, 23.9), hours=700.0)
    assert ("head_used_up", "pump.hours") in [(r.code, r.path) for r in worn_out.remarks]
    near = timetable.solve(TimetableQuestion((SODA, LIME), (Apart(0, 1, 15.0, "keep_apart"),)))
    assert isinstance(near, timetable.TimetableAnswer)
    assert [(r.code, r.path) for r in near.remarks] == [("timetable_rather_further", "keep_apart")]


def test_limewater_for_calcium_raises_alkalinity_by_what_the_skeleton_leaves_of_it() -> None:
    """Two equivalents with each mole of calcium, 40.078 g/mol, that was dosed in a day and not used."""
    change = {"parameter": "calcium", "measured": "380 mg/L", "target": "384 mg/L", "daily_use": "6 mg/L per day"}
    lime = {"chemical": "calcium hydroxide", "made_up_to": "20 L", "saturated": True}
    plan = answered({**worked(pump__flow="200 mL/min"), "change": change, "additive": lime})
    dosed = plan.seen.most_ml_in_24_hours * plan.per_ml
    assert plan.seen.others_rise["alkalinity"] == pytest.approx(2.0 / 40.078 * (dosed - 6.0), rel=1e-6)


@pytest.mark.parametrize(
    ("name", "chemical", "change", "besides"),
    [
        ("potassium", "potassium nitrate", ("400 mg/L", "401 mg/L"), ("nitrate", "mg/L as NO3", 62.0049 / 39.0983)),
        ("nitrate", "potassium nitrate", ("2 mg/L as NO3", "3 mg/L as NO3"), ("potassium", "mg/L", 39.0983 / 62.0049)),
    ],
)
def test_what_comes_besides_is_said_in_the_unit_it_is_known_by(
    name: str, chemical: str, change: tuple[str, str], besides: tuple[str, str, float]
) -> None:
    """One mole of potassium (39.0983 g) comes with one of nitrate (62.0049 g)."""
    measured, target = change
    asked = {"parameter": name, "measured": measured, "target": target}
    found = side_effects(answered({**worked(additive__chemical=chemical, additive__dissolved="10 g"), "change": asked}))
    (carried,) = found.correction.carried
    other, unit, ratio = besides
    assert (carried.name, carried.unit) == (other, unit)
    # Rounding may leave the rise up to a dose short of one.
    assert carried.amount == pytest.approx(ratio, rel=0.1)


def test_nothing_to_convert_is_missing_at_the_value() -> None:
    found = convert("  ", "dKH", "alkalinity", Water())
    assert isinstance(found, Reason)
    assert (found.code, found.path) == ("missing", "value")


def test_the_pump_runs_as_long_as_a_dose_unrounded_takes() -> None:
    plan = answered(worked())
    assert plan.run_time_s == pytest.approx(plan.single_dose_ml / 24.0 * 60.0)
