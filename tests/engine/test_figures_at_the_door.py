"""Figures that no field lets through, given to the engine all the same: each is named, and the bounds themselves are let in."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from evenwater.engine import correction, judge
from evenwater.engine.correction import Refused
from evenwater.engine.question import CorrectionQuestion
from tests.engine.asking import read, worked

BOTTLE = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
# path: the part of the question, its field, what it may be at least and at most; None where any larger figure is let in up to 1e9.
DOOR: dict[str, tuple[str, str, float, float | None]] = {
    "system.net_volume": ("system", "volume_l", 1e-9, None),
    "system.volume_uncertainty": ("system", "volume_uncertainty", 0.0, 1.0),
    "system.ph": ("system", "ph", 0.0, 14.0),
    "system.alkalinity": ("system", "alkalinity", 0.0, 100.0),
    "system.calcium": ("system", "calcium", 0.0, 100_000.0),
    "system.evaporation": ("system", "evaporation_l", 1e-9, None),
    "change.measured": ("", "measured", 0.0, None),
    "change.untested": ("", "untested", 0.0, None),
    "change.raised_lately": ("", "lately", 0.0, None),
    "change.target": ("", "target", 0.0, None),
    "change.daily_use": ("", "use", 0.0, None),
    "change.fastest_rise": ("", "fastest", -1e9, None),
    "additive.made_up_to": ("additive", "made_up_l", 1e-9, None),
    "additive.temperature": ("additive", "coolest_c", -5.0, 60.0),
    "additive.label.dose": ("additive", "dose_ml", 1e-9, None),
    "additive.label.water": ("additive", "water_l", 1e-9, None),
    "additive.label.raises": ("additive", "raises", 1e-9, None),
    "pump.flow": ("pump", "flow_ml_per_min", 1e-9, None),
    "pump.smallest_dose": ("pump", "smallest_ml", 0.0, None),
    "pump.step": ("pump", "step_ml", 1e-9, None),
    "pump.largest_share": ("pump", "largest_share", 1e-9, 1.0),
    "pump.doses_per_day": ("pump", "doses_per_day", 1.0, 1440.0),
}


def put(path: str, value: float) -> CorrectionQuestion:
    part, field, _, _ = DOOR[path]
    raw: dict[str, Any] = worked()
    if "label" in path:
        raw["additive"] = BOTTLE
    q = read(raw)
    return replace(q, **{part: replace(getattr(q, part), **{field: value})}) if part else replace(q, **{field: value})


def objections(path: str, value: float) -> list[tuple[str, str]]:
    found = correction.solve(put(path, value))
    assert isinstance(found, Refused), (path, value)
    return [(reason.code, reason.path) for reason in found.reasons]


@pytest.mark.parametrize("path", DOOR)
def test_a_figure_just_outside_its_door_is_named(path: str) -> None:
    _, _, low, high = DOOR[path]
    top = 1e9 if high is None else high
    below = low / 2.0 if 0.0 < low < 1.0 else low - 1e-3 * max(1.0, abs(low))
    assert ("out_of_range", path) in objections(path, below)
    assert ("out_of_range", path) in objections(path, top * 1.001)


@pytest.mark.parametrize("path", DOOR)
@pytest.mark.parametrize("figure", [float("nan"), float("inf")])
def test_what_is_no_figure_is_named(path: str, figure: float) -> None:
    assert ("not_a_number", path) in objections(path, figure)


@pytest.mark.parametrize("path", DOOR)
def test_the_bounds_themselves_are_let_in(path: str) -> None:
    _, _, low, high = DOOR[path]
    for value in (low, 1e9 if high is None else high):
        found = judge.objections(put(path, value))
        assert not [r for r in found if r.code == "out_of_range" and r.path == path], value
