"""A volume that is known only within an interval: every limit holds at both of its ends; and values that no water has."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from evenwater.engine import recovery, recovery_intake, recovery_plan
from evenwater.engine.recovery import BOTH, EXCHANGE, HOLD, RecoveryAnswer
from evenwater.engine.recovery_plan import hard
from evenwater.engine.recovery_question import LARGEST_SHARE, RecoveryQuestion
from tests.engine.asking import NOW, known
from tests.engine.recoveries import answer, choice, read, refusal, worked
from tests.engine.test_recovery import RAISED_DKH, dkh


def test_overdose_is_larger_where_the_tank_is_smaller() -> None:
    q = read(worked(system__volume_uncertainty="25 %"))
    small, large = q.volumes_l
    assert (small, large) == (255.0, 425.0)
    assert math.isclose(dkh(q.values_in(small)["alkalinity"]), 8.0 + RAISED_DKH / 0.75, rel_tol=1e-4)
    assert math.isclose(dkh(q.values_in(large)["alkalinity"]), 8.0 + RAISED_DKH / 1.25, rel_tol=1e-4)
    assert q.values_in(small)["calcium"] == 420.0


def test_tested_value_does_not_depend_on_the_volume() -> None:
    q = read(worked(system__volume_uncertainty="25 %", change__measured="23 dKH"))
    assert q.values_in(q.volumes_l[0])["alkalinity"] == q.values["alkalinity"]


@pytest.mark.parametrize(
    ("fields", "share"),
    [
        ({"system__volume_uncertainty": None}, 0.10), ({"system__volume_uncertainty": "3 %"}, 0.03),
        ({"system__volume_uncertainty": None, "system__volume_known": "measured by filling"}, 0.02),
        ({"system__volume_uncertainty": None, "system__volume_known": "unknown"}, 0.25),
    ],
)  # fmt: skip
def test_volume_is_as_certain_as_a_correction_takes_it(fields: dict[str, Any], share: float) -> None:
    q = read(worked(**fields))
    assert q.volume_share == share
    assert q.most_l_per_day == min(100.0, LARGEST_SHARE * 340.0 * (1.0 - share))


def test_pace_of_the_first_day_is_that_of_the_smallest_tank() -> None:
    """In 0.9 * 340 L the overdose is 16.495 / 0.9, and a litre moves 1 / 306 of the gap to the new water's 7 dKH."""
    course = choice(answer(system__volume_uncertainty="10 %"), EXCHANGE).course
    assert course is not None
    expected = 306.0 * 0.5 / (1.0 + RAISED_DKH / 0.9)
    assert math.isclose(course.stages[0].l_per_day, expected, rel_tol=1e-4)


def test_ends_of_how_long_holding_takes_are_those_of_the_volume() -> None:
    course = choice(answer(system__volume_uncertainty="10 %"), HOLD).course
    assert course is not None
    by_hand = [(RAISED_DKH / share - 3.0) / 0.9 for share in (1.1, 0.9)]
    assert np.allclose(course.between_days, by_hand, rtol=1e-4)
    assert course.between_days[0] < course.days < course.between_days[1]


@pytest.mark.parametrize("name", [EXCHANGE, BOTH])
@pytest.mark.parametrize("percent", [5, 25, 50])
def test_litres_for_the_tank_said_are_safe_in_every_tank_it_may_be(name: str, percent: int) -> None:
    """The rate right at the start of each day, with and without use, in tanks all over the interval, by the exact solution."""
    result = answer(system__volume_uncertainty=f"{percent} %", exchange=None)
    q, course = result.question, choice(result, name).course
    assert course is not None
    stages = [*(s for s in course.stages if s.days == 1.0 or not course.further_stages), *course.further_stages]
    limit = hard(q.parameter) * (1.0 + 1e-6)
    target, fresh, use = q.target, q.new_water["alkalinity"], q.use["alkalinity"]
    for volume in np.linspace(*q.volumes_l, 11):
        for used in (0.0, use):
            value = q.values_in(float(volume))["alkalinity"]
            for stage in stages:
                if value <= target:
                    break
                share = stage.l_per_day / volume
                assert share * (value - fresh) + use <= limit
                settles = fresh - used / share
                value = settles + (value - settles) * math.exp(-share * stage.days)


def test_longer_way_of_another_tank_follows_the_one_said() -> None:
    course = choice(answer(system__volume_uncertainty="25 %"), EXCHANGE).course
    assert course is not None
    assert course.further_stages
    assert course.between_days[0] < course.between_days[1]
    exact = choice(answer(), EXCHANGE).course
    assert exact is not None
    assert (exact.further_stages, exact.between_days) == ((), (exact.days, exact.days))


def test_second_reckoning_sees_a_smaller_tank(monkeypatch: pytest.MonkeyPatch) -> None:
    """A pace that suits the tank said alone is refused where the tank may be smaller."""
    question = read(worked(system__volume_uncertainty="25 %", exchange=None))
    narrow = recovery_plan.exchanged(replace(question, volume_share=0.0))
    wide = recovery_plan.exchanged
    monkeypatch.setattr(recovery_plan, "exchanged", lambda q: tuple(
        replace(course, lowest=other.lowest, highest=other.highest) for course, other in zip(narrow, wide(q), strict=True)))  # fmt: skip
    result = recovery.solve(question)
    assert not isinstance(result, RecoveryAnswer)
    assert any("change of alkalinity in a day" in str(what) for what in result.reasons[0].params["what"])  # type: ignore[attr-defined]


def test_value_without_new_water_must_last_until_the_slowest_exchange_ends() -> None:
    changes = {
        "hold__calcium": True,
        "new_water__calcium": None,
        "exchange__most_per_day": "9 L per day",
        "use__calcium": "6 mg/L per day",
    }
    codes = [(r.code, r.params["parameter"]) for r in choice(answer(**changes), EXCHANGE).reasons]
    assert ("recovery_falls_too_low", "calcium") in codes


@pytest.mark.parametrize(
    ("found", "changes"),
    [
        ([("recovery_implausible", "system.calcium")], {"system__calcium": "42 mg/L"}),
        ([("recovery_implausible", "system.alkalinity")], {"system__alkalinity": "24 dKH"}),
        ([("recovery_implausible", "new_water.magnesium")], {"new_water__magnesium": "130 mg/L"}),
        ([("recovery_implausible", "new_water.alkalinity")], {"new_water__alkalinity": "2 dKH"}),
        ([("unknown_choice", "system.volume_known")], {"system__volume_known": "by eye"}),
        ([("out_of_range", "system.volume_uncertainty")], {"system__volume_uncertainty": "60 %"}),
    ],
)
def test_values_that_no_water_has_are_refused(found: list[tuple[str, str]], changes: dict[str, Any]) -> None:
    assert refusal(**changes) == found


def test_value_that_is_too_high_may_be_as_high_as_it_is() -> None:
    assert dkh(read(worked(change__measured="60 dKH")).values["alkalinity"]) == pytest.approx(60.0)
    alone = worked(overdose=None, additive=None, system__alkalinity="24 dKH", change__parameter="alkalinity")
    assert isinstance(recovery_intake.recovery(alone, known(), NOW), RecoveryQuestion)


def test_new_water_outside_its_hard_limits_is_warned_of() -> None:
    remarks = {r.code: r.params for r in answer(new_water__calcium="560 mg/L").remarks}
    assert remarks["recovery_new_water_outside"]["parameter"] == "calcium"
    assert "recovery_ph_not_followed" in remarks
    assert "recovery_new_water_outside" not in {r.code for r in answer().remarks}
