"""H22: a pump that drifts is found before it under-doses for weeks. H23: air in the line, and a line that is not primed.

Thresholds of 5 % and 10 %: the Generic Infusion Pump requirements (FDA and University of Pennsylvania, 2009).
"""

from __future__ import annotations

import math

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import pump_drift, pump_sheet, pump_view
from tests.screens.pumps import NOW, PUMP, calibration, flowing, pump, read


def remarks(flow: float) -> str:
    """Return what is said beside a good calibration of a pump set to 24 mL per min that gives another flow."""
    found = flowing(flow, 0.0, 10.0, "p:1")
    wears = pump_drift.drift(PUMP, [found], 0.0, NOW)
    view = pump_view.answer(found, wears, newest=True)
    assert view.state == "answered", "the runs themselves are good"
    return " ".join(view.remarks)


@pytest.mark.parametrize("flow", [24.0, 23.0, 25.1])
def test_H22_within_5_percent_nothing_is_said(flow: float) -> None:
    assert remarks(flow) == ""


@pytest.mark.parametrize("flow", [22.6, 25.4, 21.8])
def test_H22_beyond_5_percent_the_new_flow_is_asked_for(flow: float) -> None:
    said = remarks(flow)
    assert "than the 24\u00a0mL per min it is set to" in said
    assert "Do not dose on" not in said


@pytest.mark.parametrize("flow", [21.4, 27.0, 12.0])
def test_H22_beyond_10_percent_dosing_must_not_go_on(flow: float) -> None:
    assert "Do not dose on with that figure" in remarks(flow)


def test_H22_a_worn_head_is_seen_on_its_way() -> None:
    # A twentieth of the flow goes every 300 hours, 4 hours run in a day.
    found = [
        flowing(24.0 * (1.0 - at / 6000.0), 50.0 * (1.0 - at / 200.0), at, f"p:{at}") for at in (0.0, 100.0, 200.0)
    ]
    wears = pump_drift.drift(PUMP, found, 0.0, NOW)
    assert wears.wear is not None
    amber, red = wears.wear.leaves
    assert (amber.hours, red.hours) == (pytest.approx(100.0, rel=1e-4), pytest.approx(400.0, rel=1e-4))
    assert amber.at is not None
    assert (amber.at - NOW).days in (24, 25)
    assert amber.earliest_hours <= amber.hours


def test_H22_a_calibration_that_is_to_be_repeated_gives_no_flow_to_use() -> None:
    for reads in (["30", "25", "35"], ["30"], ["30", "30"], ["30", "0", "30"]):
        found = read(calibration(reads))
        view = pump_view.answer(found, pump_drift.drift(PUMP, [found], 0.0, NOW), newest=True)
        assert (view.state, view.second) == ("stop", "Repeat the calibration"), reads
        assert view.messages
        assert pump_view.found_flow(found) == ""


def test_H23_a_run_that_brought_nothing_speaks_of_air() -> None:
    nothing = read(calibration(["0", "0", "0"]))
    assert nothing.answer is None
    assert "Look for air in the line" in nothing.messages[0].text
    one = read(calibration(["30", "0", "30"]))
    assert any("Look for air in the line, prime it" in said for said in pump_sheet.sentences(one, newest=True)[0])


@pytest.mark.parametrize(("bore", "length"), [("3", "1.8"), ("2", "0.95"), ("6.4", "4")])
def test_H23_after_a_refill_the_line_is_run_until_it_is_full(bore: str, length: str) -> None:
    of = pump(line_bore=Typed(bore, "mm"), line_length=Typed(length, "m"))
    found = read(calibration(["30.1", "29.9", "30"]), of)
    held = pump_view.primed(found, of)
    assert held is not None
    assert found.answer is not None
    volume = math.pi / 4.0 * float(bore) ** 2 * float(length)
    assert held.dead_volume_ml == pytest.approx(volume, rel=1e-9)
    mean, half = found.answer.chosen.summary.mean, found.answer.chosen.known.half_width
    assert held.at_most_seconds == pytest.approx(60.0 * volume / (mean - half), rel=1e-9)
    lines = pump_view.facts(found, of, pump_drift.drift(of, [found], 0.0, NOW), (), NOW)
    (line,) = [line for line in lines if line.what == "The line holds"]
    assert "see the liquid at its end" in line.how


def test_H23_short_doses_are_flagged() -> None:
    found = read(calibration(["30.1", "29.9", "30"]), dose_ml=1.2)
    assert any("Short doses are less accurate" in said for said in pump_sheet.sentences(found, newest=True)[1])
    by_doses = calibration(["30.1", "29.9", "30"], "3", doses=Typed("25"), timed=Typed("pump"))
    collected = read(by_doses, dose_ml=1.2)
    assert collected.answer is not None
    assert collected.answer.passed
    assert not any("Short doses" in said for said in pump_sheet.sentences(collected, newest=True)[1])


def test_H23_the_guide_begins_with_priming() -> None:
    assert pump_view.guide(read(calibration([]))).startswith("Prime the line.")
