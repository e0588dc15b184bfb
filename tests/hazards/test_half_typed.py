"""H34, as far as the engine and the views go: a half-typed plan is no plan and shows no figure.

Common practice, no source.
"""

from __future__ import annotations

from typing import Any

import pytest

from evenwater.engine import intake
from evenwater.engine.intake import Unread
from evenwater.screens.answer import view
from evenwater.screens.dose_card import card
from tests.engine.asking import NOW, answered, known, worked

NEEDED = [
    "system.net_volume", "change.parameter", "change.measured", "change.target", "additive.chemical", "additive.dissolved",
    "additive.made_up_to", "pump.flow",
]  # fmt: skip
OPTIONAL = ["change.daily_use", "change.fastest_rise"]


def _without(path: str, value: Any = None) -> Unread:
    question = intake.correction(worked(**{path.replace(".", "__"): value}), known(), NOW)
    assert isinstance(question, Unread), path
    return question


@pytest.mark.parametrize("path", NEEDED)
@pytest.mark.parametrize("typed", [None, "", "   "])
def test_H34_a_missing_field_is_named_and_nothing_is_planned(path: str, typed: str | None) -> None:
    unread = _without(path, typed)
    assert [(r.code, r.path) for r in unread.missing] == [("missing", path)]
    assert unread.wrong == ()
    shown = view(unread, NOW)
    assert shown.state == "empty"
    assert (shown.figure, shown.second, shown.third, shown.bars, shown.working) == ("", "", "", (), ())
    assert [m.path for m in shown.messages] == [path]


@pytest.mark.parametrize("path", OPTIONAL)
def test_H34_an_optional_field_may_be_missing(path: str) -> None:
    assert answered(worked(**{path.replace(".", "__"): None})).doses.dose_ml > 0.0


@pytest.mark.parametrize("path", [p for p in NEEDED if p not in ("change.parameter", "additive.chemical")])
@pytest.mark.parametrize("typed", ["3", "34", "34.", "34,", "-", "3 4 L", "34 x"])
def test_H34_every_stage_of_typing_is_refused_or_read_as_it_stands(path: str, typed: str) -> None:
    # Bare numbers have no unit in a question file, so that no stage of typing "340 L" is a plan.
    unread = _without(path, typed)
    assert [r.path for r in unread.wrong] == [path]
    assert view(unread, NOW).state == "refused"
    assert view(unread, NOW).figure == ""


def test_H34_nothing_typed_at_all_names_every_field() -> None:
    unread = intake.correction({}, known(), NOW)
    assert isinstance(unread, Unread)
    paths = {r.path for r in unread.missing}
    assert {"system.net_volume", "change.parameter", "pump.flow"} <= paths
    assert view(unread, NOW).state == "empty"
    assert view(unread, NOW).figure == ""


def test_H34_all_faults_are_named_at_once() -> None:
    raw = worked(
        system__net_volume="90 gal", change__measured="", pump__flow="fast", additive__chemical="calcium chloride"
    )
    unread = intake.correction(raw, known(), NOW)
    assert isinstance(unread, Unread)
    assert {r.path for r in unread.wrong} == {"system.net_volume", "pump.flow", "additive.chemical"}
    assert {r.path for r in unread.missing} == {"change.measured"}
    assert unread.reasons[: len(unread.wrong)] == unread.wrong


def test_H34_a_draft_is_stamped_and_a_plan_is_not() -> None:
    answer = answered(worked())
    assert card(answer, NOW, draft="NOT A PLAN").draft == "NOT A PLAN"
    assert card(answer, NOW).draft == ""
