"""The second reckoning of an upkeep refuses whatever the plan got wrong, and whatever passes a limit (H32)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from evenwater.engine import upkeep, upkeep_agreement, upkeep_check, upkeep_doses
from evenwater.engine.correction import Refused
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepDose
from evenwater.engine.upkeep_agreement import disagreement
from tests.engine.upkeeps import answered, item, jug, limewater, raw, read

QUESTION = raw(
    item("alkalinity", step="0.1 mL", smallest_dose="1 mL", measured="8 dKH"), item("calcium", step="0.1 mL"),
    item("nitrate", step="0.1 mL"), system={"evaporation": "4 L per day"}, exchange={"per_day": "3.4 L per day"},
)  # fmt: skip
Change = Callable[[UpkeepAnswer], UpkeepAnswer]


def plan() -> UpkeepAnswer:
    return answered(QUESTION)


def first_dose(**changes: Any) -> Change:
    def change(answer: UpkeepAnswer) -> UpkeepAnswer:
        return replace(answer, doses=(replace(answer.doses[0], **changes), *answer.doses[1:]))

    return change


def scaled(field: str, factor: float) -> Change:
    def change(answer: UpkeepAnswer) -> UpkeepAnswer:
        return first_dose(**{field: getattr(answer.doses[0], field) * factor})(answer)

    return change


def given(change: Callable[[UpkeepDose], float]) -> Change:
    """Return the plan with another first dose on the pump, and what the simulation sees of that."""

    def changed(answer: UpkeepAnswer) -> UpkeepAnswer:
        other = first_dose(dose_ml=change(answer.doses[0]))(answer)
        seen = upkeep_check.simulate(other.question, [(dose.dose_ml, dose.per_day) for dose in other.doses])
        return replace(other, seen=seen)

    return changed


def drift(number: int, **changes: Callable[[Any], Any]) -> Change:
    def change(answer: UpkeepAnswer) -> UpkeepAnswer:
        moved = list(answer.drifts)
        moved[number] = replace(moved[number], **{name: f(getattr(moved[number], name)) for name, f in changes.items()})
        return replace(answer, drifts=tuple(moved))

    return change


def bounds(**changes: float) -> Change:
    def change(answer: UpkeepAnswer) -> UpkeepAnswer:
        others = tuple(replace(p, **changes) for p in answer.question.others)
        return replace(answer, question=replace(answer.question, others=others))

    return change


def a_little_more(values: tuple[float, ...]) -> tuple[float, ...]:
    return (*values[:-1], values[-1] * (1.0 + 1e-6))


TAMPERED: dict[str, tuple[Change, str]] = {
    "more needed than used": (scaled("needed_ml_per_day", 1.0 + 1e-8), "uses"),
    "less needed than used": (scaled("needed_ml_per_day", 1.0 - 1e-8), "uses"),
    "a dose rounded up": (given(lambda dose: dose.dose_ml + dose.step_ml), "rounding"),
    "a dose above the need": (given(lambda dose: dose.dose_ml + dose.step_ml), "pumps"),
    "a dose below the smallest": (given(lambda dose: 0.5), "pumps"),
    "a shortfall not said": (first_dose(shortfall=0.0), "shortfall"),
    "seconds of another flow": (scaled("run_time_s", 1.0 + 1e-8), "pumps"),
    "other doses a day": (first_dose(per_day=12), "pumps"),
    "a jug that lasts longer": (scaled("jug_days", 1.0 + 1e-8), "jugs"),
    "a tighter hard rise": (bounds(rise_hard=1e-4), "rise"),
    "a tighter dose": (bounds(dose_rise_recommended=1e-4), "jump"),
    "another gain": (drift(0, alone=a_little_more), "balance"),
    "another approach": (drift(1, exchanged=a_little_more), "balance"),
    "another steady state": (drift(8, steady=lambda value: value * (1.0 + 1e-6)), "balance"),
    "no steady state": (drift(8, steady=lambda value: None), "balance"),
    "less salt": (lambda a: replace(a, salt=replace(a.salt, alone=a_little_more(a.salt.alone))), "salt"),
    "less salt with exchange": (
        lambda a: replace(a, salt=replace(a.salt, exchanged=a_little_more(a.salt.exchanged or ()))), "salt exchanged",
    ),
    "too little evaporates": (
        lambda a: replace(a, question=replace(a.question, system=replace(a.question.system, evaporation_l=0.05))), "evaporation",
    ),
    "another pH": (
        lambda a: replace(a, hour=replace(a.hour, lifted=replace(a.hour.lifted, ph_total=a.hour.lifted.ph_total + 1e-7))), "water",
    ),  # type: ignore[type-var]
    "no water looked at": (lambda a: replace(a, hour=None), "water"),
}  # fmt: skip


@pytest.mark.parametrize("name", TAMPERED)
def test_a_tampered_plan_is_refused(name: str) -> None:
    change, fault = TAMPERED[name]
    assert disagreement(plan()) is None
    found = disagreement(change(plan()))
    assert found is not None
    assert found.code == "check_disagrees"
    what = found.params["what"]
    assert isinstance(what, tuple)
    assert fault in what


@pytest.mark.parametrize(
    ("limit", "value"), [("PH_RISE_PER_HOUR", 0.001), ("PH_KEPT", (7.8, 8.1)), ("SATURATION_CEILING", 3.0)]
)
def test_water_beyond_a_limit_is_refused(limit: str, value: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    right = plan()
    monkeypatch.setattr(upkeep_agreement, limit, value)
    found = disagreement(right)
    assert found is not None
    assert found.params["what"] == ("water",)


def test_a_pump_beyond_its_share_is_refused() -> None:
    found = plan()
    pump = replace(found.doses[0].item.pump, largest_share=0.001)
    fault = disagreement(first_dose(item=replace(found.doses[0].item, pump=pump))(found))
    assert fault is not None
    assert fault.params["what"] == ("pumps",)


@pytest.mark.parametrize("question", [QUESTION, raw(item("alkalinity", additive=limewater()))], ids=["three", "lime"])
def test_a_planner_that_is_wrong_by_little_gives_no_plan(question: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    right = upkeep_doses.together

    def wrong(asked: Any) -> Any:
        found = right(asked)
        assert not isinstance(found, Refused)
        return replace(found, ml_per_day=tuple(ml * (1.0 + 1e-8) for ml in found.ml_per_day))

    monkeypatch.setattr(upkeep, "together", wrong)
    result = upkeep.solve(read(question))
    assert isinstance(result, Refused)
    assert [reason.code for reason in result.reasons] == ["check_disagrees"]


def test_the_simulation_gives_dose_by_dose_what_the_hand_reckoning_has() -> None:
    question = read(raw(item("magnesium", additive=jug("magnesium chloride hexahydrate", 203.295))))
    # 203.295 g are one mole: 24.305 g of magnesium and 70.9 g of chloride in a litre.
    seen = upkeep_check.simulate(question, [(34.0, 2)])
    assert seen.jump["magnesium"] == pytest.approx(24.305 * 34.0 / 340.0, rel=1e-5)
    assert seen.comes["chloride"] == pytest.approx(70.9 * 68.0 / 340.0, rel=1e-4)
    assert seen.most_ml == (68.0,)
    assert seen.rise["magnesium"] == pytest.approx(24.305 * 68.0 / 340.0 - 1.0, rel=1e-5)
    assert seen.alone["magnesium"][1] == pytest.approx((24.305 * 0.2 - 1.0) * 30.4375, rel=1e-5)
    assert (seen.ph_rise, seen.ph, seen.saturation) == (None, None, None)
