"""H19, H20, H21, H25: a jug that ran in, a use that fell, carbonate that falls out, and corrections that overshoot the other way."""

from __future__ import annotations

import pytest

from evenwater.engine.recovery import BOTH, EXCHANGE, HOLD
from evenwater.engine.recovery_plan import hard
from evenwater.screens import recovery_lines
from tests.engine.recoveries import answer, choice


def said(**changes: object) -> list[str]:
    return list(recovery_lines.lines(answer(**changes)))


def test_H19_an_exchange_does_not_count_on_animals_that_may_use_nothing_now() -> None:
    """The use only narrows the pace; how long it takes is reckoned without it."""
    alone, both = choice(answer(), EXCHANGE).course, choice(answer(), BOTH).course
    assert alone is not None
    assert both is not None
    assert alone.points[1].values["alkalinity"] > both.points[1].values["alkalinity"]
    assert alone.days > both.days


@pytest.mark.parametrize("sign", ["cloudy", "white_film"])
def test_H20_precipitation_that_is_seen_voids_every_figure_until_a_test(sign: str) -> None:
    lines = said(overdose__volume="200 mL", signs={sign: True})
    assert any(
        line.startswith("Danger: Seen:") and "test alkalinity, calcium and pH before anything else" in line
        for line in lines
    )
    states = [line for line in lines if line.endswith(("after a new test.", "possible."))]
    assert states
    assert all(line.endswith("after a new test.") for line in states)


def test_H20_likely_precipitation_is_told_without_anything_seen() -> None:
    assert answer().test_first
    assert any(line.startswith("Danger: Saturation") for line in said())


@pytest.mark.parametrize("name", [HOLD, EXCHANGE, BOTH])
def test_H21_no_day_brings_the_value_down_by_more_than_its_hard_change(name: str) -> None:
    result = answer()
    course, most = choice(result, name).course, hard(result.question.parameter)
    assert course is not None
    for earlier, later in zip(course.points[:-1], course.points[1:], strict=True):
        fall = earlier.values["alkalinity"] - later.values["alkalinity"]
        assert 0.0 < fall <= most * (later.at_days - earlier.at_days) * (1.0 + 1e-9)


def test_H25_a_jug_that_ran_in_is_stopped_before_anything_is_reckoned() -> None:
    lines = said()
    assert [line[:2] for line in lines[1:7]] == ["1.", "2.", "3.", "4.", "5.", "6."]
    assert "pump off" in lines[1]
    assert "out of the jug" in lines[2]
    assert "Dose nothing against it" in lines[3]
    assert "no acid" in lines[4]
    assert not any("dKH" in line for line in lines[:7])


@pytest.mark.parametrize(
    "changes",
    [
        {},
        {"use": None, "new_water": None},
        {"additive": {"chemical": "calcium chloride dihydrate", "dissolved": "147 g", "made_up_to": "1 L"}},
        {"additive": {"chemical": "sodium hydroxide", "dissolved": "80 g", "made_up_to": "1 L"}},
    ],
)
def test_H25_no_chemical_is_ever_given_against_an_overdose(changes: dict[str, object]) -> None:
    """Nothing that could be dosed stands in the choices, but that its doses are held."""
    result = answer(**changes, change__target=None)
    lines = said(**changes, change__target=None)
    choices = " ".join(
        lines[
            lines.index("In every choice the doses of what is too high stay held, and no chemical is given against it.")
            + 1 :
        ]
    )
    assert not any(word in choices for word in ("sodium", "chloride", "hydroxide", " acid", "dose of", "Dose "))
    for each in result.choices:
        for course in filter(None, (each.course, each.changes)):
            values = [point.values[result.question.parameter.name] for point in course.points]
            assert values == sorted(values, reverse=True)


def test_H25_a_jug_that_ran_in_counts_for_the_smallest_tank_that_this_may_be() -> None:
    """H6 and H21 with it: the volume is not known, so the overdose may be larger, and no tank moves by more than its hard change."""
    unsure = answer(system__volume_uncertainty=None, system__volume_known="unknown")
    sure = answer()
    q = unsure.question
    assert q.values_in(q.volumes_l[0])["alkalinity"] > sure.question.values["alkalinity"]
    for name in (HOLD, EXCHANGE, BOTH):
        seen = choice(unsure, name).seen
        assert seen is not None
        assert max(seen.rise["alkalinity"], seen.fall["alkalinity"]) <= hard(q.parameter) * (1.0 + 1e-6)
    paces = [choice(each, EXCHANGE).course.stages[0].l_per_day for each in (unsure, sure)]  # type: ignore[union-attr]
    assert paces[0] < paces[1]
