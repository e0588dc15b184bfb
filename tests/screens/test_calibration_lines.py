"""What is said of a pump's runs: every reason has a sentence with its figures, and the lines of an answer are safe to read."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, timedelta

import pytest

from evenwater.engine.calibration import Delivered, Line, solve
from evenwater.engine.calibration_intake import calibration
from evenwater.engine.calibration_runs import Means, Run
from evenwater.engine.correction import Refused
from evenwater.engine.pump_wear import wear
from evenwater.engine.reasons import Reason
from evenwater.screens import calibration_lines, words
from evenwater.screens.calibration_words import SENTENCES
from tests.engine.calibrations import MEANS, NOW, answered, before, question, read_off, weighed, worn
from tests.screens.lint import faults
from tests.screens.test_sentences import check, codes

THREE = read_off(24.0, 24.5, 24.0)
COARSE = replace(MEANS, graduation=5.0)
# The salt in the water is anybody's guess.
VAGUE = replace(MEANS, scale_tolerance=2.0, off=replace(MEANS.off, salinity=40.0, water_c=5.0))


def said(runs: tuple[Run, ...], means: Means = MEANS, **fields: object) -> list[Reason]:
    result = solve(question(runs, means, **fields))
    return list(result.reasons) if isinstance(result, Refused) else [*result.repeat, *result.remarks]


def assumed() -> list[Reason]:
    rows = [{"seconds": 60, "volume": "24.5 mL"}, {"seconds": 60, "mass": "24.5 g"}]
    asked = calibration({"run": rows}, NOW)
    return list(getattr(asked, "assumed"))  # noqa: B009


def of_wear(*points: tuple[float, float], sd: float = 0.1) -> list[Reason]:
    result = wear(worn(*points, sd=sd), 300.0, 24.0, 10.0, NOW)
    return [result] if isinstance(result, Reason) else list(result.remarks)


def past(hours: float, *points: tuple[float, float], of: float = 300.0) -> list[Reason]:
    return said(THREE, hours=hours, earlier=before(*points, hours=of))


# code: (what brings it up, what the sentence must hold)
PRODUCED: dict[str, tuple[Callable[[], list[Reason]], list[str]]] = {
    "no_runs": (lambda: said(()), ["3 times"]),
    "nothing_delivered": (lambda: said(read_off(0.0)), ["air in the line", "prime"]),
    "flow_unusable": (lambda: said(read_off(24.0), dose=float("nan")), ["Write them again."]),
    "run_without_liquid": (lambda: said(read_off(24.0, 0.0, 24.0, 0.0)), ["Runs 2 and 4 brought nothing"]),
    "runs_too_few": (lambda: said(read_off(24.0, 24.1)), ["2 runs tell", "3 of 1 min each"]),
    "spread_too_wide": (lambda: said(read_off(24.0, 20.0, 24.0)), ["10 %", "5 % is the most"]),
    "flow_loosely_known": (lambda: said(read_off(24.0, 24.0, 22.05)), ["12 %", "5 % would be good"]),
    "run_of_other_length": (lambda: said((*THREE, *read_off(2.0, seconds=5.0))), ["Run 4 lasted 5 s, the others 1 min", "Make 3"]),
    "measured_too_coarsely": (lambda: said(read_off(24.0, 24.0, 24.0), COARSE), ["12 %", "5 %", "2 min"]),
    "flow_off_amber": (lambda: said(THREE, setting=26.0), ["7 % less", "26 mL per min", "24.2 mL per min"]),
    "flow_off_red": (lambda: said(THREE, setting=20.0), ["21 % more", "Do not dose on"]),
    "dose_not_calibrated": (lambda: said(THREE, dose=2.0), ["2 mL takes 4.9 s", "lasted 1 min"]),
    "short_doses_differ": (
        lambda: said((*THREE, *read_off(36.0, 36.0, 36.0, seconds=5.0, doses=20)), replace(MEANS, timing=0.01)),
        ["In 5 s the pump gives 11 % less per minute than in 1 min"],
    ),
    "graduation_assumed": (assumed, ["0.1 mL"]),
    "readability_assumed": (assumed, ["0.1 g"]),
    "temperature_assumed": (assumed, ["20 °C", "5 °C"]),
    "calibrated_in_the_future": (lambda: past(300.0, (250.0, 24.0), of=200.0), ["Mon 30 Nov 2026"]),
    "hours_run_back": (lambda: past(100.0, (200.0, 24.0)), ["from 200 h to 100 h", "leave out"]),
    "hours_beyond_clock": (lambda: past(900.0, (200.0, 24.0)), ["from 200 h to 900 h", "only 240 h went by"]),
    "drift_needs_two": (lambda: of_wear((0.0, 24.0)), ["single calibration"]),
    "drift_same_hours": (lambda: of_wear((0.0, 24.0), (0.0, 23.0)), ["at 0 h"]),
    "drift_unusable": (lambda: of_wear((0.0, 24.0), (100.0, 6.0)), ["no flow at all"]),
    "drift_unclear": (lambda: of_wear((0.0, 24.0), (300.0, 23.9)), ["from 0.52 % less to 0.25 % more in 100 h"]),
    "calibrations_scatter": (lambda: of_wear((0.0, 25.0), (100.0, 22.0), (200.0, 25.0), (300.0, 22.0)), ["19 times further"]),
    "head_used_up": (lambda: said(THREE, hours=700.0), ["700 h of the 650 h"]),
}  # fmt: skip


def test_every_code_of_a_calibration_is_produced_above() -> None:
    assert PRODUCED.keys() == SENTENCES.keys()
    assert codes() >= PRODUCED.keys()


@pytest.mark.parametrize("code", PRODUCED)
def test_sentence_holds_its_figures(code: str) -> None:
    produce, fragments = PRODUCED[code]
    (reason, *_) = (found for found in produce() if found.code == code)
    check(words.sentence(reason), fragments)


def test_run_is_never_long_enough_where_the_liquid_is_unknown() -> None:
    (reason, loose) = said(weighed(24.0, 24.0, 24.0), VAGUE)
    assert loose.code == "flow_loosely_known"
    assert reason.params["seconds"] is not None
    vaguer = replace(
        VAGUE, conditions=replace(MEANS.conditions, weights=8.0), off=replace(VAGUE.off, pressure_hpa=90_000.0)
    )
    (reason, _) = said(weighed(24.0, 24.0, 24.0), vaguer)
    check(words.sentence(reason), ["This scale tells", "Measure the temperature"])
    assert any(
        "No run is long enough" in line
        for line in calibration_lines.lines(answered(weighed(24.0, 24.0, 24.0), vaguer), UTC)
    )


FULL: dict[str, object] = {
    "setting": 25.0, "dose": 20.0, "hours": 400.0, "line": Line(4.0, 2000.0), "record": Delivered(0.5, (12.0,) * 9 + (9.0,)),
    "earlier": before((0.0, 25.0), (200.0, 24.6), hours=400.0),
}  # fmt: skip


@pytest.mark.parametrize(
    "fields",
    [
        {},
        FULL,
        {**FULL, "setting": 30.0},
        {**FULL, "earlier": before((0.0, 22.0), hours=400.0)},
        {"hours": 700.0},
        {"wanted": 1e-7},
    ],
)
def test_lines_are_safe_to_read(fields: dict[str, object]) -> None:
    for runs in (THREE, weighed(24.0, 24.5, 24.0), read_off(24.0), (*THREE, *read_off(2.0, seconds=5.0))):
        lines = calibration_lines.lines(answered(runs, **fields), UTC)
        # Plain text has ordinary spaces before units.
        bad = [fault for line in lines for fault in faults(line) if not fault.startswith("L3 ordinary")]
        assert not bad
        assert all(line[0].isupper() or line[0].isdigit() for line in lines if line)
        assert all(line[-1] in ".?" for line in lines if line)


def test_lines_say_what_was_asked() -> None:
    lines = calibration_lines.lines(answered(weighed(24.0, 24.5, 24.0), **FULL), UTC)
    text = "\n".join(lines)
    for fragment in (
        "Against the 25 mL per min it is set to: 3 % less.",
        "Z factor: 1.0033 mL per g.",
        "A dose of 20 mL takes 49.4 s at this flow.",
        "The line holds 25.1 mL: after a refill run 1 min ",
        "Over 1 min it gave at worst from 16 % less to 4 % less than set.",
        "The head has 250 h of its 650 h left, Sun 20 Dec 2026.",
    ):
        assert fragment in text, text
    day = NOW + timedelta(days=25)
    assert (day.day, day.month) == (20, 12)


def test_dose_longer_than_the_runs_is_not_called_short() -> None:
    (reason,) = said(THREE, dose=200.0)
    check(words.sentence(reason), ["200 mL takes 8 min 16 s", "runs as long as a dose"])
    assert "Short" not in words.sentence(reason)


def test_tolerance_that_is_left_already_has_no_date() -> None:
    lines = calibration_lines.lines(answered(THREE, **{**FULL, "setting": 30.0}), UTC)
    assert "It is 5 % or more off already." in lines
