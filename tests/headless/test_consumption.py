"""The kind `consumption`: the example by hand, units, doses in mL, odd readings, and what is refused or no question."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.headless.asking import Said, ask, example, line_with, put

GOOD = example("consumption")
BEGIN = datetime(2026, 11, 1, 8, tzinfo=UTC)


def written(values: Sequence[str], more: str = "", parameter: str = "alkalinity", top: str = "") -> str:
    """Write a question with a reading every two days, asked an hour after the last."""
    when = [BEGIN + timedelta(days=2 * n) for n in range(len(values))]
    now = (when[-1] if when else BEGIN) + timedelta(hours=1)
    rows = "".join(f'[[reading]]\nat = {t.isoformat()}\nvalue = "{v}"\n' for t, v in zip(when, values, strict=True))
    return f'kind = "consumption"\nnow = {now.isoformat()}\nparameter = "{parameter}"\n{top}\n{more}\n{rows}'


def answered(said: Said) -> dict[str, Any]:
    assert said.status == 0, said.out + said.err
    return said.body


def use(body: dict[str, Any]) -> float:
    found: float = body["use_per_day"]["value"]
    return found


FALLING = ["8.4 dKH", "7.8 dKH", "7.2 dKH", "6.6 dKH", "6.0 dKH"]


def test_example_names_its_bad_test_and_agrees_with_the_sums_by_hand(tmp_path: Path) -> None:
    """Without the bad test of 15 November: 8.3 to 7.3 dKH in 16 days, given 0.8 + 1.2 dKH and 180 mL of soda ash, and a tenth exchanged.

    106 g of Na2CO3 (105.9875 g/mol) in 1 L: 1 mL raises 340 L by 0.0164952 dKH (2.8 dKH for each meq/L, as in the example of a correction),
    180 mL by 2.969 dKH; the exchange at about 7.8 dKH took a tenth of what is above 7.0: 0.08. So 5.9 dKH in 16 days.
    """
    body = answered(ask(tmp_path, GOOD))
    given = 0.8 + 1.2 + 180.0 * 0.0164952
    assert use(body) == pytest.approx((8.3 - 7.3 + given - 0.08) / 16.0, abs=0.03)
    assert body["low"]["value"] < use(body) < body["high"]["value"]
    assert {body[name]["unit"] for name in ("use_per_day", "low", "high")} == {"dKH per day"}
    (odd,) = body["odd_readings"]
    assert (odd["reading"], odd["at"], odd["field"]) == (4, "2026-11-15T08:00:00+00:00", "reading.4.value")
    assert odd["value"] == {"value": pytest.approx(9.9), "unit": "dKH"}
    assert "9.9 dKH on Sun 15 Nov 2026 08:00 is" in odd["text"].replace("\u00a0", " ")
    assert "dKH above what the others say" in odd["text"].replace("\u00a0", " ")
    assert body["readings_used"] == 8
    assert body["last_reading_age"]["value"] == pytest.approx(1.0 / 24.0)
    assert body["changed_at"] is None
    assert body["by_period"][0]["from"] == "2026-11-09T08:00:00+00:00"
    assert body["by_period"][-1]["until"] == "2026-11-25T08:00:00+00:00"
    assert body["value_now"]["low"]["value"] < 7.3 < body["value_now"]["high"]["value"]


def test_text_says_the_use_the_bad_test_and_the_periods(tmp_path: Path) -> None:
    lines = ask(tmp_path, GOOD, "--text").out.splitlines()
    assert re.fullmatch(
        r"Alkalinity used now: 0\.\d+ dKH per day \(from 0\.\d+ dKH per day to 0\.\d+ dKH per day\)\.", lines[0]
    )
    assert lines[1].startswith("It should now be at 7.")
    assert lines[2] == "From 8 readings, the last one 1 h ago."
    assert lines[3] == "In the last weeks use has been steady."
    (odd,) = (line for line in lines if line.startswith("Not believed: "))
    assert "9.9 dKH" in odd
    assert sum(re.match(r"[A-Z][a-z]{2} \d+ Nov 2026 to ", line) is not None for line in lines) == 2


@pytest.mark.parametrize(("unit", "factor"), [("meq/L", 0.356_64), ("mmol/L", 0.356_64), ("ppm as CaCO3", 17.848)])
def test_keeper_speaks_in_any_unit_and_is_answered_in_it(tmp_path: Path, unit: str, factor: float) -> None:
    plain = answered(ask(tmp_path, written(FALLING)))
    values = [f"{float(v.split()[0]) * factor:.5f} {unit}" for v in FALLING]
    other = answered(ask(tmp_path, written(values)))
    assert other["use_per_day"]["unit"] == f"{unit} per day"
    for name in ("use_per_day", "low", "high"):
        assert other[name]["value"] == pytest.approx(factor * plain[name]["value"], rel=2e-3)


def test_dose_in_millilitres_is_the_rise_that_it_makes(tmp_path: Path) -> None:
    """100 mL raise 340 L by 1.64952 dKH, by chemical or by label; without the dose, something not written down is suspected."""
    values = ["8.4 dKH", "7.8 dKH", "8.85 dKH", "8.25 dKH", "7.65 dKH"]
    at = (BEGIN + timedelta(days=3)).isoformat()
    tables = '[system]\nnet_volume = "340 L"\n[additive]\n'
    ways = (
        f'[[dose]]\nat = {at}\nraises = "1.64952 dKH"\n',
        f'{tables}chemical = "sodium carbonate anhydrous"\ndissolved = "106 g"\nmade_up_to = "1 L"\n[[dose]]\nat = {at}\nvolume = "100 mL"\n',
        f'{tables}label = {{ dose = "100 mL", water = "170 L", raises = "3.29904 dKH" }}\n[[dose]]\nat = {at}\nvolume = "0.1 L"\n',
    )
    bodies = [answered(ask(tmp_path, written(values, way))) for way in ways]
    assert [use(body) for body in bodies] == pytest.approx([0.3] * 3, abs=0.01)
    assert [use(body) for body in bodies[1:]] == pytest.approx([use(bodies[0])] * 2, rel=1e-4)
    assert [body["jumps"] for body in bodies] == [[], [], []]
    assert len(answered(ask(tmp_path, written(values)))["jumps"]) == 1


def test_exchange_of_half_the_water_counts(tmp_path: Path) -> None:
    """Use of 0.3 dKH a day; on day 5 half of 6.9 dKH was exchanged for 8.9 dKH."""
    at = (BEGIN + timedelta(days=5)).isoformat()
    values = ["8.4 dKH", "7.8 dKH", "7.2 dKH", "7.6 dKH", "7.0 dKH", "6.4 dKH"]
    body = answered(ask(tmp_path, written(values, f'[[exchange]]\nat = {at}\nshare = "50 %"\nnew_water = "8.9 dKH"\n')))
    assert use(body) == pytest.approx(0.3, abs=0.01)
    assert (body["jumps"], body["odd_readings"]) == ([], [])


def test_what_is_in_no_log_is_named(tmp_path: Path) -> None:
    values = ["8.4 dKH", "7.8 dKH", "7.2 dKH", "8.1 dKH", "7.5 dKH", "6.9 dKH"]
    body = answered(ask(tmp_path, written(values)))
    (jump,) = body["jumps"]
    assert (jump["reading"], jump["by"]["unit"]) == (4, "dKH")
    assert jump["by"]["value"] == pytest.approx(1.5, abs=0.1)
    (said,) = (reason for reason in body["reasons"] if reason["code"] == "value_jumped")
    assert "Was a dose or an exchange not written down?" in said["text"]
    assert use(body) == pytest.approx(0.3, abs=0.05)


def test_nitrate_that_is_made_is_use_below_nothing(tmp_path: Path) -> None:
    body = answered(ask(tmp_path, written([f"{n} mg/L as N" for n in (2, 4, 6, 8, 10)], parameter="nitrate")))
    assert body["high"]["value"] < 0.0
    assert use(body) == pytest.approx(-1.0, abs=0.01)
    assert body["use_per_day"]["unit"] == "mg/L as N per day"
    (said,) = body["reasons"]
    assert said["code"] == "made_in_the_tank"


def test_specific_gravity_is_answered_in_its_unit_and_its_use_in_ppt(tmp_path: Path) -> None:
    values = [f"{1.0265 - 0.0001 * n:.4f} SG 20/20 degC" for n in range(5)]
    body = answered(ask(tmp_path, written(values, parameter="salinity")))
    assert body["value_now"]["value"]["unit"] == "SG 20/20 degC"
    assert body["value_now"]["value"]["value"] == pytest.approx(1.0261, abs=1e-4)
    assert body["use_per_day"]["unit"] == "ppt per day"


def test_kit_said_to_be_better_narrows_the_interval(tmp_path: Path) -> None:
    def width(top: str) -> float:
        body = answered(ask(tmp_path, written(FALLING, top=top)))
        return float(body["high"]["value"] - body["low"]["value"])

    assert width('kit_accuracy = "0.1 dKH"') < 0.5 * width("") < 0.5 * width('kit_accuracy = "0.6 dKH"')
    assert width('kit_accuracy = "0.3 dKH"') == width("")


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (written([]), [("too_few_readings", "reading")]),
        (written(["8 dKH"]), [("too_few_readings", "reading")]),
        (written(["8 dKH", "140"]), [("unit_missing", "reading.2.value")]),
        (written(["8 dKH", "7 buckets"]), [("unknown_unit", "reading.2.value")]),
        (written(FALLING, parameter="hardness"), [("unknown_parameter", "parameter")]),
        (written(["8 mg/L", "7 mg/L as N"], parameter="nitrate"), [("as_what", "reading.1.value")]),
        (written(FALLING, top='kit_accuracy = "0 dKH"'), [("out_of_range", "kit_accuracy")]),
        (put(GOOD, share='"110 %"'), [("out_of_range", "exchange.1.share")]),
        (put(GOOD, raises='"1"'), [("unit_missing", "dose.1.raises")]),
        (put(GOOD, chemical='"calcium chloride"'), [("which_hydrate", "additive.chemical")]),
        (put(GOOD, chemical='"potassium iodide"'), [("does_not_raise", "additive.chemical")]),
        (put(GOOD, net_volume='"90 gal"'), [("bare_gallon", "system.net_volume")]),
        (put(GOOD, salinity='"1.026 SG"'), [("bare_gravity", "system.salinity")]),
        (put(GOOD, now="2026-11-24T09:00:00+00:00"), [("reading_in_the_future", "reading.9.at")]),
        (put(GOOD, now="2037-11-24T09:00:00+00:00"), [("reading_too_old", f"reading.{n}.at") for n in range(1, 10)]),
        (GOOD.replace("2026-11-22T09:00", "2026-11-26T09:00"), [("entry_in_the_future", "dose.4.at")]),
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
        (put(GOOD, parameter=None), "parameter", "", "is missing"),
        (put(GOOD, value="8.3"), "reading.1.value", "value = 8.3", "in quotes"),
        (GOOD.replace('value = "9.9 dKH"', ""), "reading.4.value", "at = 2026-11-15", "is missing"),
        (GOOD.replace("at = 2026-11-17T08:00:00+00:00", 'at = "yesterday"'), "reading.5.at", 'at = "yesterday"', "without quotes"),
        (GOOD.replace('volume = "80 mL"', ""), "dose.3.raises", "at = 2026-11-18", "is missing"),
        (GOOD.replace('volume = "80 mL"', 'volume = "80 mL"\nraises = "1 dKH"'), "dose.3.volume", 'volume = "80', "one of the two"),
        (put(GOOD, share='"10 %"\nflow = "1"'), "exchange.1.flow", "flow", "Allowed are: at, share, new_water."),
        (put(GOOD, net_volume=None), "system.net_volume", "[system]", "is missing"),
        (put(GOOD, made_up_to=None), "additive.made_up_to", "[additive]", "is missing"),
        (GOOD + "\n[pump]\n", "pump", "[pump]", "Allowed are: kind, now, parameter, kit_accuracy, system, additive, reading"),
        (written(FALLING, top='dose = "often"'), "dose", "dose", "list of tables: [[dose]]"),
    ],
)  # fmt: skip
def test_not_a_question(tmp_path: Path, text: str, field: str, start: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2
    places = {name: line for line, name in said.problems}
    assert field in places
    line = line_with(text, start) if start else 0
    # A field that is missing is shown where its table begins.
    assert places[field] in (line, line - 1)
    assert allowed in said.err


def test_doses_in_millilitres_need_a_volume_and_a_stock(tmp_path: Path) -> None:
    dose = f'[[dose]]\nat = {BEGIN.isoformat()}\nvolume = "10 mL"\n'
    said = ask(tmp_path, written(FALLING, dose))
    assert said.status == 2
    assert [field for _, field in said.problems] == [
        "system.net_volume", "additive.chemical", "additive.dissolved", "additive.made_up_to",
    ]  # fmt: skip


def test_now_is_the_present_when_it_is_not_said(tmp_path: Path) -> None:
    body = answered(ask(tmp_path, GOOD.replace("now = 2026", "# now = 2026").replace("2026-11", "2025-11")))
    assert body["last_reading_age"]["value"] > 100.0
    assert "use_is_old" in {reason["code"] for reason in body["reasons"]}
