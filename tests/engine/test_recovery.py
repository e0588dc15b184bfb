"""A value that is too high: the worked case by hand, what is not proposed and why, and what is remarked on."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest

from evenwater.engine import recovery, recovery_check, recovery_plan
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import Water
from evenwater.engine.recipe import Bottle
from evenwater.engine.recovery import BOTH, EXCHANGE, HOLD, STOP
from evenwater.engine.recovery_question import LARGEST_SHARE, LONGEST_DAYS, Overdose, RecoveryQuestion
from evenwater.engine.stock import Labelled
from tests.engine.asking import NOW, known
from tests.engine.recoveries import answer, choice, read, refusal, worked

# 106 g of Na2CO3 (105.9875 g per mol, two equivalents) in 340 L; 1 dKH is 10 mg of CaO (56.077 g per mol, two equivalents) per litre.
RAISED_DKH = 106.0 / 105.9875 * 2000.0 / 340.0 / (10.0 / 56.077 * 2.0)


def dkh(canonical: float) -> float:
    return canonical / known().parameters["alkalinity"].canonical(1.0)


def remarks(**changes: Any) -> dict[str, Any]:
    return {reason.code: reason.params for reason in answer(**changes).remarks}


def codes(name: str, **changes: Any) -> list[str]:
    return [reason.code for reason in choice(answer(**changes), name).reasons]


def test_whole_jug_comes_to_what_the_hand_says() -> None:
    q = read(worked())
    assert math.isclose(RAISED_DKH, 16.495, rel_tol=1e-4)
    assert math.isclose(dkh(q.values["alkalinity"]), 8.0 + RAISED_DKH, rel_tol=1e-4)
    assert (q.parameter.name, q.held) == ("alkalinity", ("alkalinity",))
    # Nothing else is in soda ash.
    assert {name: q.values[name] for name in ("calcium", "magnesium", "salinity")} == {
        "calcium": 420.0, "magnesium": 1320.0, "salinity": 35.0,
    }  # fmt: skip


def test_holding_takes_the_excess_over_the_use() -> None:
    course = choice(answer(), HOLD).course
    assert course is not None
    assert math.isclose(course.days, (8.0 + RAISED_DKH - 11.0) / 0.9, rel_tol=1e-4)
    assert course.litres == 0.0
    assert math.isclose(dkh(course.points[-1].values["alkalinity"]), 11.0, rel_tol=1e-9)


def test_first_day_of_an_exchange_takes_what_the_use_leaves_of_the_hard_change() -> None:
    """The hard change of alkalinity is 1.4 dKH in a day, 0.9 of which the animals take; the new water has 7 dKH."""
    course = choice(answer(), EXCHANGE).course
    assert course is not None
    share = (1.4 - 0.9) / (8.0 + RAISED_DKH - 7.0)
    assert math.isclose(course.stages[0].l_per_day, 340.0 * share, rel_tol=1e-4)
    assert course.stages[0].set_by == "alkalinity"
    reached = 7.0 + (1.0 + RAISED_DKH) * math.exp(-share)
    assert math.isclose(dkh(course.points[1].values["alkalinity"]), reached, rel_tol=1e-4)
    # However the days share it, a steady exchange from 24.5 to 11 dKH with water of 7 takes ln(17.5 / 4) times the volume.
    assert math.isclose(course.litres, 340.0 * math.log((1.0 + RAISED_DKH) / 4.0), rel_tol=1e-4)


def test_single_changes_take_less_water_and_the_first_takes_half_a_day_s_room() -> None:
    steady, singly = choice(answer(), EXCHANGE).course, choice(answer(), EXCHANGE).changes
    assert steady is not None
    assert singly is not None
    assert math.isclose(singly.changes[0].litres, 340.0 * 0.25 / (1.0 + RAISED_DKH), rel_tol=1e-4)
    left = math.prod(1.0 - change.litres / 340.0 for change in singly.changes)
    assert math.isclose(left, 4.0 / (1.0 + RAISED_DKH), rel_tol=1e-4)
    assert singly.litres < steady.litres
    assert [change.at_days for change in singly.changes[:3]] == [0.0, 0.5, 1.0]


def test_both_is_the_same_exchange_ended_sooner() -> None:
    alone, both = choice(answer(), EXCHANGE).course, choice(answer(), BOTH).course
    assert alone is not None
    assert both is not None
    assert both.days < min(alone.days, choice(answer(), HOLD).course.days)  # type: ignore[union-attr]
    assert [stage.l_per_day for stage in both.stages] == [stage.l_per_day for stage in alone.stages[: len(both.stages)]]
    assert math.isclose(dkh(both.points[-1].values["alkalinity"]), 11.0, rel_tol=1e-9)


def test_what_is_held_along_falls_by_its_use_and_the_rest_stays() -> None:
    course = choice(answer(hold__calcium=True), HOLD).course
    assert course is not None
    assert math.isclose(course.points[-1].values["calcium"], 420.0 - 6.4 * course.days, rel_tol=1e-9)
    assert course.points[-1].values["magnesium"] == 1320.0


def test_limewater_that_ran_in_holds_calcium_too() -> None:
    q = read(
        worked(
            additive={"chemical": "calcium hydroxide", "made_up_to": "20 L", "saturated": True}, overdose__volume="20 L"
        )
    )
    assert q.held == ("alkalinity", "calcium")
    assert q.values["calcium"] > 420.0


def test_tested_value_counts_before_what_is_reckoned() -> None:
    q = read(worked(change__measured="15 dKH"))
    assert math.isclose(dkh(q.values["alkalinity"]), 15.0, rel_tol=1e-12)
    assert remarks(change__measured="15 dKH")["recovery_less_than_expected"]
    assert "recovery_less_than_expected" not in remarks(change__measured="24.3 dKH")


def test_value_that_is_too_high_without_an_overdose() -> None:
    q = read(worked(overdose=None, additive=None, change={"parameter": "nitrate", "measured": "40 mg/L as NO3"}))
    assert (q.parameter.name, q.held, q.values["nitrate"]) == ("nitrate", ("nitrate",), 40.0)
    assert q.target == 15.0


@pytest.mark.parametrize(
    ("name", "code", "changes"),
    [
        (HOLD, "recovery_no_use", {"use": None}),
        (BOTH, "recovery_no_use", {"use": None}),
        (HOLD, "recovery_use_too_fast", {"use__alkalinity": "1.5 dKH per day"}),
        (EXCHANGE, "recovery_use_too_fast", {"use__alkalinity": "1.5 dKH per day"}),
        (HOLD, "recovery_too_long", {"use__alkalinity": "0.1 dKH per day"}),
        (HOLD, "recovery_falls_too_low", {"hold__calcium": True, "use__calcium": "10 mg/L per day"}),
        (BOTH, "recovery_falls_too_low", {"new_water__magnesium": "500 mg/L", "system__magnesium": "1050 mg/L"}),
        (EXCHANGE, "recovery_rises_too_high", {"new_water__calcium": "790 mg/L"}),
        (EXCHANGE, "recovery_new_water_unknown", {"new_water": None}),
        (EXCHANGE, "recovery_new_water_too_high", {"new_water__alkalinity": "11 dKH"}),
        (BOTH, "recovery_new_water_too_high", {"new_water__alkalinity": "12 dKH"}),
        (EXCHANGE, "recovery_too_long", {"exchange__most_per_day": "1 L per day"}),
    ],
)
def test_what_passes_a_limit_is_not_proposed(name: str, code: str, changes: dict[str, Any]) -> None:
    assert code in codes(name, **changes)


def test_other_values_slow_an_exchange() -> None:
    """Salinity may move by 1 in a day, so water of 30 goes in at a fifth a day at most; alkalinity is in no hurry here."""
    course = choice(answer(overdose=None, additive=None, change__parameter="alkalinity", change__measured="12 dKH", use=None,
                           new_water__salinity="30", exchange=None), EXCHANGE).course  # fmt: skip
    assert course is not None
    assert course.stages[0].set_by == "salinity"
    assert math.isclose(course.stages[0].l_per_day, 340.0 * 0.2, rel_tol=1e-9)


def test_no_more_than_half_of_the_water_in_a_day() -> None:
    assert read(worked(exchange__most_per_day="900 L per day")).most_l_per_day == LARGEST_SHARE * 340.0
    assert read(worked(exchange__most_per_day="9 L per day")).most_l_per_day == 9.0


@pytest.mark.parametrize(
    ("found", "changes"),
    [
        ([("recovery_not_high", "change.measured")], {"change__measured": "10 dKH"}),
        ([("recovery_target_outside", "change.target")], {"change__target": "3 dKH"}),
        (
            [("missing", "change.measured")],
            {"overdose": None, "change__parameter": "alkalinity", "system__alkalinity": None},
        ),
        ([("missing", "change.parameter")], {"overdose": None}),
        ([("unknown_parameter", "change.parameter")], {"change__parameter": "hardness"}),
        (
            [("recovery_raises_nothing", "additive")],
            {"additive__chemical": "boric acid", "change__parameter": "alkalinity"},
        ),
    ],
)
def test_refusals(found: list[tuple[str, str]], changes: dict[str, Any]) -> None:
    assert refusal(**changes) == found


def test_second_reckoning_that_differs_stops_everything(monkeypatch: pytest.MonkeyPatch) -> None:
    def live(*words: Any) -> recovery_check.Lived:
        seen = lived(*words)
        return replace(seen, end={name: 1.01 * value for name, value in seen.end.items()})

    lived = recovery_check.live
    monkeypatch.setattr(recovery_check, "live", live)
    result = recovery.solve(read(worked()))
    assert isinstance(result, Refused)
    assert [reason.code for reason in result.reasons] == ["recovery_check_disagrees"]


def test_second_reckoning_sees_a_pace_that_is_too_fast(monkeypatch: pytest.MonkeyPatch) -> None:
    most_litres = recovery_plan.most_litres
    monkeypatch.setattr(recovery_plan, "most_litres", lambda tanks, **_: (3.0 * most_litres(tanks)[0], "alkalinity"))
    result = recovery.solve(read(worked()))
    assert isinstance(result, Refused)
    assert any("change of alkalinity in a day" in str(what) for what in result.reasons[0].params["what"])  # type: ignore[attr-defined]


def test_precipitation_asks_for_a_test_before_anything() -> None:
    """Soda ash takes up the acid of the water: saturation passes 40, far above the 7 from which carbonate falls out."""
    result = answer()
    assert result.test_first
    assert result.saturation is not None
    assert 30.0 < result.saturation < 60.0
    calm = answer(overdose=None, additive=None, change__parameter="calcium", change__measured="470 mg/L", change__target="440 mg/L",
                  change__measured_at=None)  # fmt: skip
    assert not calm.test_first
    assert calm.saturation is not None
    assert 3.0 < calm.saturation < 7.0
    seen = answer(overdose=None, additive=None, change__parameter="calcium", change__measured="470 mg/L", change__target="440 mg/L",
                  signs__cloudy=True)  # fmt: skip
    assert seen.test_first


def test_bottle_counts_as_hydroxide() -> None:
    bottle = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
    soda, bottled = answer(overdose__volume="300 mL"), answer(additive=bottle, overdose__volume="84.13 mL")
    assert soda.saturation is not None
    assert bottled.saturation is not None
    # As much alkalinity, but none of the carbon: the pH goes higher.
    assert math.isclose(bottled.question.values["alkalinity"], soda.question.values["alkalinity"], rel_tol=2e-3)
    assert bottled.saturation > soda.saturation


def test_what_is_not_known_is_said() -> None:
    assert remarks(system__alkalinity=None)["recovery_assumed"]["names"] == ("alkalinity",)
    assert "potassium" in remarks()["recovery_not_followed"]["names"]
    assert remarks(new_water__temperature="18 degC")["recovery_temperature_differs"]["new_c"] == 18.0
    assert "recovery_temperature_unknown" in remarks(new_water__temperature=None)
    assert remarks(hold__calcium=True, use__calcium=None)["recovery_held_use_unknown"]["names"] == ("calcium",)
    assert "recovery_nothing_proposed" in remarks(use=None, new_water=None)
    assert remarks(system__magnesium="1800 mg/L")["recovery_also_too_high"]["parameter"] == "magnesium"


def test_every_answer_begins_with_the_same_stop_list() -> None:
    assert STOP == ("pump_off", "line_out", "no_counter_dose", "no_acid", "test", "call")


def test_tests_come_at_once_daily_while_exchanging_and_at_the_end() -> None:
    result = answer()
    hold, both = choice(result, HOLD), choice(result, BOTH)
    assert hold.tests[:4] == (0.0, 1.0, 4.0, 7.0)
    assert both.tests[:3] == (0.0, 1.0, 2.0)
    for each in (hold, both):
        assert each.course is not None
        assert each.tests[-1] == each.course.days <= LONGEST_DAYS


def test_next_to_no_use_never_brings_the_value_down() -> None:
    q = read(worked())
    found = recovery.solve(replace(q, use={"alkalinity": 1e-308}))
    assert not isinstance(found, Refused)
    assert [reason.code for reason in choice(found, HOLD).reasons] == ["recovery_too_long"]
    assert choice(found, BOTH).course is not None


def test_an_end_within_a_step_is_where_both_reckonings_see_it() -> None:
    """Half of the water a day, and a volume known to 2 %: the tank that was said ends within a step of the larger one's last stage."""
    parameters = tuple(known().parameters.values())
    values = {"magnesium": 1100.0, "potassium": 243.0, "iodide": 0.125}
    q = RecoveryQuestion(
        now=NOW, name="", parameter=known().parameters["magnesium"], parameters=parameters, target=1000.0, volume_l=1.0, water=Water(),
        values=values, before=values, new_water={"magnesium": 970.0}, use={"magnesium": 1.0, "iodide": 1.0 / 64.0}, held=tuple(values),
        most_l_per_day=0.5, measured=True, volume_share=0.02, ran_in={"magnesium": 0.0},
    )  # fmt: skip
    found = recovery.solve(q)
    assert not isinstance(found, Refused), found
    both = choice(found, BOTH)
    assert both.seen is not None
    # V*dC/dt = -Q*(C - 970) - V*1 from 1100 to 1000: with x = C - 968 it is x(t) = 132*exp(-t/2), which is 32 after 2*ln(132/32).
    days = 2.0 * math.log(132.0 / 32.0)
    assert both.course is not None
    assert math.isclose(both.course.days, days, rel_tol=1e-9)
    # The second reckoning goes in steps; a straight line through the last one would be off by a part in ten thousand.
    assert math.isclose(both.seen.end["iodide"], 0.125 - days / 64.0, rel_tol=1e-6)


def test_a_target_of_next_to_nothing_ends_where_it_is_met() -> None:
    """What is left of a step's halving must not count as still too high, and be changed once more."""
    nitrate = known().parameters["nitrate"]
    litres, ml = 4168.658, 687.365
    values = {"nitrate": 0.16488 + ml / litres, "phosphate": 0.2098, "salinity": 39.7235}
    q = RecoveryQuestion(
        now=NOW, name="", parameter=nitrate, parameters=tuple(known().parameters.values()), target=1e-12, volume_l=litres, water=Water(),
        values=values, before={**values, "nitrate": 0.16488}, new_water={"nitrate": 0.0, "phosphate": 0.0, "salinity": 28.912},
        use={"nitrate": 0.33596, "phosphate": 0.018665}, held=("nitrate", "phosphate"), most_l_per_day=1829.8, measured=False,
        overdose=Overdose(Bottle(Labelled(1.0, 1.0, 1.0, "nitrate"), nitrate), ml), volume_share=0.25, ran_in={"nitrate": ml},
    )  # fmt: skip
    found = recovery.solve(q)
    assert not isinstance(found, Refused), found
    both = choice(found, BOTH)
    assert both.proposed
    assert both.changes is not None
    assert both.changes.days < 1.0 < both.changes.between_days[1], (
        "the larger tank goes on, the tank that was said does not"
    )


def test_an_exchange_that_counts_on_the_use_keeps_every_range_without_it() -> None:
    """Phosphate stands just below its hard 0.5 mg/L and the new water above it: only the use would keep it there."""
    values = {"strontium": 4.58, "phosphate": 0.4999}
    strontium = known().parameters["strontium"]
    q = RecoveryQuestion(
        now=NOW, name="", parameter=strontium, parameters=tuple(known().parameters.values()), target=3.726, volume_l=1890.0, water=Water(),
        values=values, before=values, new_water={"strontium": 1.29, "phosphate": 0.515}, use={"strontium": 0.001, "phosphate": 0.007},
        held=tuple(values), most_l_per_day=18.9, measured=True, ran_in={"strontium": 0.0},
    )  # fmt: skip
    found = recovery.solve(q)
    assert not isinstance(found, Refused), found
    both = choice(found, BOTH)
    assert [reason.code for reason in both.reasons] == ["recovery_rises_too_high"]
    # A hundredth of the water a day for 29 days: 0.515 - (0.515 - 0.4999) * exp(-0.29).
    assert float(str(both.reasons[0].params["value"])) == pytest.approx(0.515 - 0.0151 * math.exp(-0.29), abs=1e-4)
