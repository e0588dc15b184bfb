"""The kind `calibration`: the example by hand, verdicts, units, and what is refused or no question."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest

from tests.headless.asking import Said, ask, example, line_with, put

GOOD = example("calibration")


def written(*runs: str, more: str = "", seconds: str = "60") -> str:
    """Write a question with one run for each volume or mass."""
    rows = "".join(f'[[run]]\nseconds = {seconds}\n{"mass" if r.endswith("g") else "volume"} = "{r}"\n' for r in runs)
    return f'kind = "calibration"\nnow = 2026-11-25T09:00:00+00:00\n{more}\n{rows}'


def answered(said: Said) -> dict[str, Any]:
    assert said.status == 0, said.out + said.err
    return said.body


def codes(body: dict[str, Any], name: str = "reasons") -> list[str]:
    return [reason["code"] for reason in body[name]]


THREE = ("24.0 mL", "24.5 mL", "24.0 mL")


def test_example_agrees_with_the_sums_by_hand(tmp_path: Path) -> None:
    """22.94, 23.11 and 22.87 g, Z = 1.00328: a mean of 23.0486 mL in a minute, 4 % under 24.

    The standard deviation of the masses is 0.123423 g; over a mean of 22.9733 g that is 0.537 %.
    4 mm and 2 m of line hold 25.13 mL; 20 mL take 20 / 23.0486 of a minute.
    """
    body = answered(ask(tmp_path, GOOD))
    assert (body["pump"], body["verdict"], body["repeat_because"]) == ("Alkalinity pump", "pass", [])
    assert body["flow"] == {"value": pytest.approx(23.0486, abs=5e-4), "unit": "mL/min"}
    assert body["z_factor"] == {"value": pytest.approx(1.00328, abs=5e-6), "unit": "mL/g"}
    assert body["spread"] == {"value": pytest.approx(0.5372, abs=5e-4), "unit": "%"}
    assert body["bias"]["value"] == pytest.approx(100.0 * (23.0486 / 24.0 - 1.0), abs=5e-3)
    assert body["bias"]["state"] == "within"
    assert body["low"]["value"] < 23.0486 < body["high"]["value"]
    assert body["uncertainty"]["value"] == pytest.approx(body["high"]["value"] - body["flow"]["value"])
    assert [run["counted"] for run in body["runs"]] == [True] * 3
    assert body["runs"][0]["volume"]["value"] == pytest.approx(22.94 * 1.00328, abs=5e-4)
    assert body["dose_run_time"]["value"] == pytest.approx(60.0 * 20.0 / 23.0486, abs=5e-3)
    assert body["line"]["dead_volume"]["value"] == pytest.approx(25.1327, abs=1e-4)
    assert body["line"]["prime_time"]["value"] == pytest.approx(60.0 * 25.1327 / 23.0486, abs=5e-3)
    assert body["head"]["left"] == {"value": 230.0, "unit": "h"}
    # 230 h at 1.2 h a day are 191 days and 16 hours from 25 November, 09:00.
    assert body["head"]["date"] == "2027-06-05"
    wear = body["wear"]
    assert wear["drift_per_100_hours"]["value"] < 0.0
    assert [each["tolerance"]["value"] for each in wear["leaves_tolerance"]] == [5.0, 10.0]
    for each in wear["leaves_tolerance"]:
        assert each["at_the_earliest"]["value"] < each["hours_left"]["value"]
        assert each["earliest_date"] < each["date"]


def test_run_needed_for_one_per_cent_by_hand(tmp_path: Path) -> None:
    """0.5 mL lines and 0.01 s: 1.96 * 0.5 / sqrt(12) / V = 1 % at 28.29 mL, which 24 mL/min give in 70.7 s."""
    more = '[cylinder]\ngraduation = "0.5 mL"\n[conditions]\nwater_temperature = "20 degC"\ntiming = "0.01 s"\n'
    body = answered(ask(tmp_path, written("24 mL", "24 mL", "24 mL", more=more)))
    assert body["run_needed"]["volume"]["value"] == pytest.approx(28.29, abs=0.02)
    assert body["run_needed"]["seconds"]["value"] == pytest.approx(70.7, abs=0.1)
    half = answered(ask(tmp_path, written("24 mL", "24 mL", "24 mL", more='wanted = "2 %"\n' + more)))
    assert half["run_needed"]["seconds"]["value"] == pytest.approx(35.4, abs=0.1)


def test_text_says_the_verdict_and_the_flow_first(tmp_path: Path) -> None:
    lines = ask(tmp_path, GOOD, "--text").out.splitlines()
    assert re.fullmatch(
        r"Good enough to dose by: the pump gives 23 mL per min \(from 22\.\d to 23\.\d mL per min\)\.", lines[0]
    )
    assert "Z factor: 1.0033 mL per g." in lines
    assert any(line.startswith("In 100 h the flow falls by ") for line in lines)
    # The day is that of this machine's zone.
    assert re.fullmatch(r"The head has 230 h of its 650 h left, (Fri 4|Sat 5) Jun 2027\.", lines[-1])
    bad = ask(
        tmp_path, written("24 mL", "20 mL", "24 mL", more='[pump]\nsetting = "30 mL/min"\n'), "--text"
    ).out.splitlines()
    assert bad[0].startswith("Repeat the calibration: the pump gives 22.7 mL per min")
    assert bad[1].startswith("Repeat: The runs scatter by 10 %")
    assert any(line.startswith("Note: The pump gives 24 % less than the 30 mL per min it is set to.") for line in bad)


@pytest.mark.parametrize(
    ("text", "repeat"),
    [
        (written(*THREE), []),
        (written("24.0 mL"), ["runs_too_few"]),
        (written("24.0 mL", "24.1 mL"), ["runs_too_few"]),
        (written("24.0 mL", "20.0 mL", "24.0 mL"), ["spread_too_wide"]),
        (written(*THREE) + '[[run]]\nseconds = 5\nvolume = "1.8 mL"\n', ["run_of_other_length"]),
        (written(*THREE) + '[[run]]\nseconds = 60\nvolume = "0 mL"\n', ["run_without_liquid", "spread_too_wide"]),
        (written("2 mL", "2 mL", "2 mL", more='[cylinder]\ngraduation = "1 mL"\n'), ["measured_too_coarsely"]),
    ],
)  # fmt: skip
def test_verdict(tmp_path: Path, text: str, repeat: list[str]) -> None:
    body = answered(ask(tmp_path, text))
    assert body["verdict"] == ("repeat" if repeat else "pass")
    assert codes(body, "repeat_because") == repeat


def test_short_doses_are_held_against_long_runs(tmp_path: Path) -> None:
    short = '[[run]]\nseconds = 5\ndoses = 20\nvolume = "36.0 mL"\n' * 3
    more = '[pump]\ndose = "1.8 mL"\n[conditions]\ntiming = "0.05 s"\n'
    body = answered(ask(tmp_path, written(*THREE, more=more) + short))
    assert body["verdict"] == "pass"
    assert [group["run_seconds"]["value"] for group in body["by_duration"]] == [5.0, 60.0]
    assert body["flow"]["value"] == pytest.approx(21.6, rel=1e-4)
    assert [run["counted"] for run in body["runs"]] == [False] * 3 + [True] * 3
    assert body["short_against_long"]["difference"]["value"] == pytest.approx(100.0 * (21.6 / 24.1667 - 1.0), abs=0.01)
    assert "short_doses_differ" in codes(body)


def test_weighed_and_read_agree(tmp_path: Path) -> None:
    """24 mL of water at 20 degC weigh 24 / 1.00285 g in air (ISO 8655-6)."""
    conditions = '[conditions]\nwater_temperature = "20 degC"\n'
    flows = [
        answered(ask(tmp_path, written(*[each] * 3, more=conditions)))["flow"]["value"]
        for each in ("24 mL", f"{24 / 1.00285:.4f} g")
    ]
    assert flows[1] == pytest.approx(flows[0], rel=2e-5)


def test_seawater_can_be_weighed(tmp_path: Path) -> None:
    body = answered(ask(tmp_path, put(GOOD, salinity='"35"')))
    assert body["z_factor"]["value"] == pytest.approx(0.9774, abs=2e-4)


def test_record_gives_the_trumpet(tmp_path: Path) -> None:
    amounts = ", ".join(['"12 mL"'] * 6 + ['"6 mL"'] + ['"12 mL"'] * 6)
    more = f'[pump]\nsetting = "24 mL/min"\n[record]\nevery = "30 s"\namounts = [{amounts}]\n'
    curve = answered(ask(tmp_path, written(*THREE, more=more)))["worst_in_window"]
    assert [each["window"]["value"] for each in curve] == [1.0, 2.0, 5.0]
    assert [each["low"]["value"] for each in curve] == pytest.approx([-25.0, -12.5, -5.0])
    assert answered(ask(tmp_path, written(*THREE)))["worst_in_window"] == []


def test_drift_that_is_not_clear_has_no_date(tmp_path: Path) -> None:
    earlier = '[[earlier]]\nat = 2026-10-01T09:00:00+00:00\nhours = "100"\nflow = "24.2 mL/min"\n'
    body = answered(ask(tmp_path, written(*THREE, more='[pump]\nhours = "150"\n') + earlier))
    assert body["wear"]["leaves_tolerance"] == []
    assert "drift_unclear" in codes(body)
    assert body["wear"]["expected_flow"]["value"] == pytest.approx(24.17, abs=0.05)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (written("0 mL", "0 mL", "0 mL"), [("nothing_delivered", "run.1")]),
        (written("24 mL", "24"), [("unit_missing", "run.2.volume")]),
        (written("24 mL", "1 gal"), [("bare_gallon", "run.2.volume")]),
        (put(GOOD, hours=None), [("missing", "pump.hours")]),
        (put(GOOD, hours='"200 h"'), [("hours_run_back", "pump.hours")]),
        (put(GOOD, hours='"3000 h"'), [("hours_beyond_clock", "pump.hours")]),
        (put(GOOD, now="2026-03-01T09:00:00+00:00"), [("calibrated_in_the_future", "earlier.2.at"), ("calibrated_in_the_future", "earlier.3.at")]),
        (put(GOOD, water_temperature='"220 degC"'), [("out_of_range", "conditions.water_temperature")]),
        (put(GOOD, material='"wood"'), [("unknown_choice", "cylinder.material")]),
        (put(GOOD, mass='"2271 g"'), [("out_of_range", "run.1.mass")]),
        (put(GOOD, bore='"4"'), [("unit_missing", "line.bore")]),
        (put(GOOD, timing='"0 s"'), [("out_of_range", "conditions.timing")]),
    ],
)  # fmt: skip
def test_refused(tmp_path: Path, text: str, expected: list[tuple[str, str]]) -> None:
    said = ask(tmp_path, text)
    assert said.status == 3
    assert said.codes == expected
    assert all(reason["text"] for reason in said.body["reasons"])


@pytest.mark.parametrize(
    ("text", "field", "start", "allowed"),
    [
        ('kind = "calibration"\n', "run", "", "Write [[run]]"),
        (put(GOOD, seconds="-1"), "run.1.seconds", "seconds = -1", "from 0 to"),
        (put(GOOD, seconds="nan"), "run.1.seconds", "seconds = nan", "from 0 to"),
        (put(GOOD, seconds="true"), "run.1.seconds", "seconds = true", "in quotes"),
        (put(GOOD, seconds=None), "run.1.seconds", "[[run]]", "is missing"),
        (put(GOOD, mass=None), "run.1.volume", "[[run]]", "is missing"),
        (put(GOOD, mass='"22 g"\nvolume = "22 mL"'), "run.1.mass", 'mass = "22 g"', "one of the two"),
        (put(GOOD, setting="24"), "pump.setting", "setting", "in quotes"),
        (put(GOOD, bore=None), "line.bore", "[line]", "is missing"),
        (put(GOOD, accuracy='"1 %"\nby = "me"'), "earlier.1.by", 'by = "me"', "Allowed are: at, hours, flow, accuracy."),
        (written(*THREE, more='[record]\nevery = "30 s"\namounts = [1, 2]\n'), "record.amounts", "amounts", "list of texts"),
        (written(*THREE, more='[record]\nevery = "30 s"\n'), "record.amounts", "[record]", "is missing"),
        (written(*THREE, more="record = 5"), "record", "record", "[record]"),
        (GOOD + "\n[change]\n", "change", "[change]", "Allowed are: kind, now, wanted, pump, cylinder, scale"),
        (written(*THREE, more='wanted = 1'), "wanted", "wanted", "in quotes"),
    ],
)  # fmt: skip
def test_not_a_question(tmp_path: Path, text: str, field: str, start: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2
    places = {name: line for line, name in said.problems}
    assert field in places
    line = line_with(text, start) if start else 0
    assert places[field] == line
    assert allowed in said.err
