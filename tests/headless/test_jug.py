"""The question kind ``jug``: until when, what if it ran in, and what the levels say of the pump."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from tests.headless.asking import ask, example, line_with, put

GOOD = example("jug")


def plain(tmp_path: Path, text: str = GOOD) -> list[str]:
    said = ask(tmp_path, text, "--text")
    assert said.status == 0, said.out + said.err
    return said.out.splitlines()


def body(tmp_path: Path, text: str = GOOD) -> dict:
    said = ask(tmp_path, text)
    assert said.status == 0, said.out + said.err
    return said.body


def test_example_by_hand(tmp_path: Path) -> None:
    """48 mL a day; 24 doses of 2 mL from 11 November 08:30 on, so 336 by 25 November 08:00.

    The levels fell by 4800 - 4735 mL and 500 mL were added: 565 mL of 672 mL. At 09:00 one more dose is gone (08:30).
    4633 mL within reach hold 2316 doses, the first of them at 09:30: the last one 2315 hours later.
    """
    found = body(tmp_path)
    check = found["jug_check"]
    assert (check["real"]["value"], check["expected"]["value"]) == (pytest.approx(565.0), pytest.approx(672.0))
    assert check["real_over_expected"] == pytest.approx(565.0 / 672.0)
    assert check["real_give_or_take"]["value"] == pytest.approx(math.sqrt(3.0) * 25.0)
    assert (check["mark"], check["cause"], check["stop_at_once"]) == ("red", "worn_head", False)
    assert check["proposed_factor"]["flow"]["value"] == pytest.approx(24.0 * 565.0 / 672.0)
    assert check["proposed_factor"]["low"] < check["proposed_factor"]["value"] < check["proposed_factor"]["high"]
    assert found["level_now"] == {"value": pytest.approx(4733.0), "unit": "mL"}
    assert found["taken_per_day"]["value"] == pytest.approx(48.0)
    assert found["last_full_dose_at"] == "2027-03-01T20:30:00+00:00"
    assert found["refill_before"] == "2027-03-01T21:30:00+00:00"
    # 25 mL less at the last level, and 2.1 mL a dose: 2195 doses from 25 November 08:30 on.
    assert found["refill_before_at_the_earliest"] == "2027-02-24T19:30:00+00:00"
    assert found["prime"] == {
        "line_holds": {"value": pytest.approx(25.13, abs=0.01), "unit": "mL"},
        "doses_lost_unprimed": 13,
    }
    whole = found["whole_jug"]["alkalinity"]
    assert whole["after"] == {"value": pytest.approx(8.0 + 5000.0 * 0.0164952, rel=1e-4), "unit": "dKH"}
    assert found["largest_jug"]["safe"]["value"] == pytest.approx(6.0 / 0.0164952, rel=1e-4)
    assert found["largest_jug"]["advised"]["value"] == pytest.approx(2.8 / 0.0164952, rel=1e-4)
    assert found["cautions"]
    assert {item["code"]: item["holds"] for item in found["checklist"]} == {
        "outlet_above_water": True, "jug_below_outlet": True, "jug_small_enough": False, "tube_lifted": None,
        "outlets_apart": None, "line_primed": None,
    }  # fmt: skip


def test_text_begins_with_the_handling(tmp_path: Path) -> None:
    lines = plain(tmp_path)
    assert lines[0].startswith("Caution: Wear goggles")
    assert next(line for line in lines if line.startswith("Danger: If the whole jug ran in"))
    assert any(line.startswith("It lasts 96 days, until Mon 1 Mar 2027 20:30.") for line in lines)
    assert "Likely: a worn pump head." in lines
    assert any(
        "multiply the pump's flow by 0.841 (0.776 to 0.905). Nothing is changed by itself." in line for line in lines
    )
    assert lines[-1] == "Missed doses are never made up: go on with the next one, as large as ever."


def test_absence_says_how_much_to_fill(tmp_path: Path) -> None:
    """From 09:00 on 25 November to 18:00 on 20 March are 115 days 9 hours: 2769 doses, with the last at 17:30."""
    found = body(tmp_path, put(GOOD, away_until="2027-03-20T18:00:00+00:00"))["absence"]
    assert found["needed"]["value"] == pytest.approx(2.0 * 2769)
    # To the brim there is room for 267 mL only.
    assert found["add_before_leaving"]["value"] == pytest.approx(267.0)
    assert found["enough"] is False
    assert found["left_alone_until"] == "2027-03-01T21:30:00+00:00"
    assert found["filled_lasts_until"] is not None
    assert found["doses_missed"] == 2769 - 2450


def test_levels_in_centimetres(tmp_path: Path) -> None:
    """48 mL a day in a jug of 150 square centimetres are 3.2 mm."""
    text = GOOD.replace("# cross_section", "cross_section").replace('"25 mL"', '"2 mm"')
    for millilitres, centimetres in (
        ("4800", "32"),
        ("4630", "30.8667"),
        ("4510", "30.0667"),
        ("4855", "32.3667"),
        ("4735", "31.5667"),
    ):
        text = text.replace(f'"{millilitres} mL"', f'"{centimetres} cm"')
    found = body(tmp_path, text)
    assert found["jug_check"]["real"]["value"] == pytest.approx(565.0, abs=0.1)
    assert found["jug_check"]["real_give_or_take"]["value"] == pytest.approx(math.sqrt(3.0) * 30.0)
    said = ask(tmp_path, text.replace("cross_section", "# cross_section"))
    assert said.status == 3
    assert set(said.codes) == {("missing", "jug.cross_section")}
    assert "how much a centimetre of the jug holds" in said.words


def test_bottle_by_its_label(tmp_path: Path) -> None:
    """5 mL raise 100 L by 1 dKH: 1 mL raises 340 L by 0.0588 dKH, so that 102 mL take 8 to 14 dKH."""
    label = '[additive]\nlabel = { dose = "5 mL", water = "100 L", raises = "1 dKH" }'
    found = body(tmp_path, put(GOOD, chemical=None, dissolved=None, made_up_to=None).replace("[additive]", label))
    assert found["whole_jug"]["alkalinity"]["safe_jug"]["value"] == pytest.approx(6.0 * 5.0 * 3.4, rel=1e-6)
    assert found["cautions"]


def test_one_level_is_enough_to_know_until_when(tmp_path: Path) -> None:
    text = GOOD[: GOOD.index("[[level]]")] + '[[level]]\nat = 2026-11-25T08:00:00+00:00\nlevel = "4735 mL"\n'
    found = body(tmp_path, text)
    assert found["jug_check"] is None
    assert found["refill_before"] == "2027-03-01T21:30:00+00:00"
    assert found["prime"] is None
    assert "siphon_not_checked" in [reason["code"] for reason in found["reasons"]]


def test_siphon_is_the_first_line(tmp_path: Path) -> None:
    found = ask(tmp_path, GOOD.replace('"4735 mL"', '"2000 mL"').replace('"8.1 dKH"', '"12 dKH"'))
    assert found.body["jug_check"]["stop_at_once"] is True
    assert next(danger["code"] for danger in found.body["dangers"]) == "siphon_possible"
    assert found.body["jug_check"]["look_at"][0]["code"] == "lift_outlet"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (put(GOOD, holds='"5"'), [("unit_missing", "jug.holds")]),
        (put(GOOD, holds='"5 buckets"'), [("unknown_unit", "jug.holds")]),
        (put(GOOD, holds='"1 gal"'), [("bare_gallon", "jug.holds")]),
        (put(GOOD, net_volume='"0 L"'), [("out_of_range", "system.net_volume")]),
        (put(GOOD, single_dose='"2"'), [("unit_missing", "pump.1.single_dose")]),
        (put(GOOD, calibration='"80 %"'), [("out_of_range", "pump.1.calibration")]),
        (put(GOOD, level='"48 pints"'), [("unknown_unit", "level.1.level")]),
        (put(GOOD, level='"9 L"'), [("level_above_full", "level.1.level")]),
        (put(GOOD, added='"50 L"'), [("refill_above_full", "refill.1.added")]),
        (put(GOOD, chemical='"soda"'), [("unknown_chemical", "additive.chemical")]),
        (put(GOOD, chemical='"potassium iodide"'), [("does_not_raise", "retest.parameter")]),
        (put(GOOD, parameter='"hardness"'), [("unknown_parameter", "retest.parameter")]),
        (put(GOOD, unreachable='"5 L"'), [("nothing_reachable", "jug.unreachable")]),
        (put(GOOD, away_until="2026-11-01T00:00:00+00:00"), [("back_already", "away_until")]),
        (put(GOOD, now="2026-11-24T00:00:00+00:00"), [("level_in_the_future", "level.5.at")]),
        (put(GOOD, bore='"4"'), [("unit_missing", "line.bore")]),
    ],
)
def test_refused(tmp_path: Path, text: str, expected: list[tuple[str, str]]) -> None:
    said = ask(tmp_path, text)
    assert said.status == 3, said.out
    assert said.codes == expected
    assert all(reason["text"] for reason in said.body["reasons"])


@pytest.mark.parametrize(
    ("text", "field", "start", "allowed"),
    [
        (put(GOOD, holds=None), "jug.holds", "[jug]", "is missing"),
        (put(GOOD, net_volume=None), "system.net_volume", "[system]", "is missing"),
        (put(GOOD, chemical=None), "additive.chemical", "[additive]", "is missing"),
        (put(GOOD, single_dose=None), "pump.1.single_dose", "[[pump]]", "is missing"),
        (put(GOOD, level="4800"), "level.1.level", "level = 4800", "in quotes"),
        (put(GOOD, doses_per_day='"24"'), "pump.1.doses_per_day", "doses_per_day", "whole number"),
        (put(GOOD, outlet_above_water='"yes"'), "setting.outlet_above_water", "outlet_above_water", "true or false"),
        (put(GOOD, first_dose_at='"now"'), "pump.1.first_dose_at", "first_dose_at", "without quotes"),
        (put(GOOD, name='"Soda ash"\ncolour = "red"'), "jug.colour", "colour", "Allowed are: name, holds, unreachable"),
        (GOOD.replace("[line]", "[hose]"), "hose", "[hose]", "Allowed are: kind, now, away_until, jug, system"),
        (GOOD.replace("[[pump]]", "[pump]"), "pump", "[pump]", "list of tables: [[pump]]"),
        (GOOD.replace('measured = "8.1 dKH"', ""), "retest.measured", "[retest]", "is missing"),
    ],
)  # fmt: skip
def test_not_a_question(tmp_path: Path, text: str, field: str, start: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2, said.out
    places = {name: line for line, name in said.problems}
    assert field in places
    assert places[field] in (line_with(text, start), line_with(text, start) - 1)
    assert allowed in said.err


@pytest.mark.parametrize("name", ["pump", "level"])
def test_a_list_that_is_needed_is_asked_for(tmp_path: Path, name: str) -> None:
    text = GOOD.replace(f"[[{name}]]", "[[refill]]")
    said = ask(tmp_path, text)
    assert said.status == 2
    assert name in {field for _, field in said.problems}


@pytest.mark.parametrize(
    "extreme",
    [
        {"dissolved": '"0.00000000000001 g"'},
        {"kit_accuracy": '"0.00000000000001 dKH"'},
        {"level_accuracy": '"0.00000000000001 mL"', "single_dose": '"0.0000000001 mL"'},
        {"level_accuracy": '"0.00000000000001 mL"', "holds": '"1000 L"'},
        {"calibration": '"0.0000001 %"', "single_dose": '"10000 mL"', "doses_per_day": "1440"},
        {"head_hours": '"200000"', "net_volume": '"0.001 mL"'},
    ],
)
def test_extremes_are_answered_in_finite_figures(tmp_path: Path, extreme: dict[str, str]) -> None:
    """Read strictly: no figure of the answer is infinite or none at all."""
    text = put(GOOD, **extreme)
    assert body(tmp_path, text)["level_now"]["value"] >= 0.0
    assert plain(tmp_path, text)[0]
