"""What an answered correction says: the worked example, its units, its spellings, and that it is always the same."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from evenwater import headless
from evenwater.assets import resources
from evenwater.engine import catalogue
from tests.headless.asking import ask, example, on_label, put, run

GOOD = example()

# By hand: 106 g of Na2CO3 (105.9875 g/mol) in 1 L carry 2.00024 meq per mL; a degree is 10 mg of CaO (56.077 g/mol)
# per litre; 340 L; (1.0 + 0.9) dKH a day for 1.6 dKH.
MEQ_PER_ML = 2 * 106.0 / 105.98749
DKH_PER_ML = MEQ_PER_ML / 340.0 / (10.0 / 28.0385)
BY_HAND = {
    "dose_per_hour": (1.9 / DKH_PER_ML / 24, "mL/h"),
    "dose_in_24_hours": (1.9 / DKH_PER_ML, "mL"),
    "single_dose": (1.9 / DKH_PER_ML / 24, "mL"),
    "run_time": (1.9 / DKH_PER_ML / 24 / 24 * 60, "s"),
    "total": (1.9 / DKH_PER_ML * 1.6, "mL"),
    "lasts": (38.4, "h"),
    "rise_per_day": (1.0, "dKH per day"),
    "upkeep_per_hour": (0.9 / DKH_PER_ML / 24, "mL/h"),
    "whole_jug": (6.8 + 1000 * DKH_PER_ML, "dKH"),
}


@pytest.fixture(scope="module")
def worked(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    return ask(tmp_path_factory.mktemp("worked"), GOOD).body


@pytest.mark.parametrize("field", BY_HAND)
def test_worked_example(worked: dict[str, Any], field: str) -> None:
    value, unit = BY_HAND[field]
    assert worked[field]["unit"] == unit
    assert worked[field]["value"] == pytest.approx(value, rel=1e-6)


def test_worked_example_to_its_printed_digits(worked: dict[str, Any]) -> None:
    figures = {name: worked[name]["value"] for name in BY_HAND}
    assert round(figures["dose_in_24_hours"], 2) == 115.19
    assert round(figures["dose_per_hour"], 4) == 4.7994
    assert round(figures["total"], 2) == 184.30
    assert round(figures["upkeep_per_hour"], 4) == 2.2734
    assert figures["lasts"] == pytest.approx(38.4, abs=1e-9)


def test_worked_example_rounded_doses(worked: dict[str, Any]) -> None:
    assert worked["single_dose_rounded"] == {"value": 4.7, "unit": "mL"}
    assert worked["doses_per_day"] == 24
    rounded = worked["doses_rounded"]
    # 4.7 mL raise 0.077527 dKH, of which 0.0375 are used until the next; 39 of them fit into 1.6 dKH.
    net = 4.7 * DKH_PER_ML - 0.9 / 24
    assert rounded["count"] == int(1.6 / net) == 39
    assert rounded["total"]["value"] == pytest.approx(39 * 4.7, abs=1e-9)
    assert rounded["lasts"]["value"] == pytest.approx(39.0)
    assert rounded["left_to_target"]["value"] == pytest.approx(1.6 - 39 * net, rel=1e-4)
    assert worked["set_by"] == "daily_rise"
    assert worked["check"]["agrees"] is True
    assert worked["check"]["end_value"]["value"] == pytest.approx(6.8 + 39 * net, rel=1e-6)
    assert worked["check"]["highest_value"]["value"] <= 8.4


def test_fields_of_an_answer(worked: dict[str, Any]) -> None:
    assert {
        "status", "dose_per_hour", "dose_in_24_hours", "single_dose", "single_dose_rounded", "doses_per_day", "run_time",
        "total", "lasts", "rise_per_day", "set_by", "upkeep_per_hour", "band", "by_source", "whole_jug", "limits", "check",
        "side_effects", "reasons", "cautions",
    } <= worked.keys()  # fmt: skip
    assert worked["band"]["p5"]["value"] < 8.4 < worked["band"]["p95"]["value"]
    assert sum(worked["by_source"].values()) == pytest.approx(1.0)
    assert {item["code"] for item in worked["limits"]} == {
        "daily_rise", "single_dose", "pump_share", "smallest_dose", "jug", "solubility", "ph_rise", "ph_ceiling", "saturation", "target",
    }  # fmt: skip
    for item in worked["limits"]:
        assert item["value"]["unit"] == item["bound"]["unit"]
        assert isinstance(item["share"], float)
    assert any("goggles" in caution for caution in worked["cautions"])


def quantities(node: Any) -> Iterator[dict[str, Any]]:
    """Yield everything that has a value or a unit."""
    if isinstance(node, dict):
        if {"value", "unit"} & node.keys() and not isinstance(node.get("value"), dict):
            yield node
        for inner in node.values():
            yield from quantities(inner)
    elif isinstance(node, list):
        for inner in node:
            yield from quantities(inner)


def moments(node: Any) -> Iterator[dict[str, Any]]:
    """Yield everything that has a saturation."""
    if isinstance(node, dict):
        if "aragonite_saturation" in node:
            yield node
        for inner in node.values():
            yield from moments(inner)


PURE_NUMBERS = ("ph_rise", "ph_ceiling", "saturation")


@pytest.mark.parametrize("unit", ["dKH", "meq/L", "mmol/L", "ppm as CaCO3"])
def test_every_quantity_is_a_number_with_a_unit(tmp_path: Path, unit: str) -> None:
    per_dkh = {"dKH": 1.0, "meq/L": 0.356652, "mmol/L": 0.356652, "ppm as CaCO3": 17.848}[unit]
    text = put(
        GOOD,
        measured=f'"{6.8 * per_dkh:.4f} {unit}"',
        target=f'"{8.4 * per_dkh:.4f} {unit}"',
        daily_use=f'"{0.9 * per_dkh:.4f} {unit} per day"',
        fastest_rise=f'"{1.0 * per_dkh * 0.9999:.4f} {unit} per day"',
    )
    body = ask(tmp_path, text).body
    found = list(quantities(body))
    assert len(found) > 25
    for quantity in found:
        assert quantity.keys() == {"value", "unit"}
        assert isinstance(quantity["value"], float)
    # pH and saturation are numbers without a unit; nothing else is.
    bare = [q for item in body["limits"] if item["code"] in PURE_NUMBERS for q in (item["value"], item["bound"])]
    assert len(bare) == 2 * len(PURE_NUMBERS)
    bare += [moment["aragonite_saturation"] for moment in moments(body["side_effects"])]
    without = [id(quantity) for quantity in found if not quantity["unit"]]
    assert set(without) <= {id(quantity) for quantity in bare}
    assert body["check"]["end_value"]["unit"] == unit
    assert body["rise_per_day"]["unit"] == f"{unit} per day"
    assert body["total"]["value"] == pytest.approx(184.30, rel=1e-3)


@pytest.mark.parametrize(
    ("field", "ways"),
    [
        ("measured", ["6.8 dKH", "6,8 dKH", "6.80 dKH", "6.8dKH", "  6.8\u00a0dKH ", "6.8 °dKH", "6.8 degree KH"]),
        ("daily_use", ["0.9 dKH per day", "0,9 dKH per day", "0.9 dKH/day", "0.9 dKH a day", ".9 dKH per day"]),
        ("net_volume", ["340 L", "340,0 L", "340000 mL", "340 litres"]),
        ("flow", ["24 mL/min", "24 mL per min", "24,00 mL/min"]),
        ("temperature", ["25 degC", "77 degF", "25 °C"]),
        ("salinity", ["35", "35 ppt", "35,0 g/kg"]),
        ("dissolved", ["106 g", "106000 mg", "0.106 kg ", "0,1060 kg"]),
        ("largest_share", ["50 %", "50%", "50 percent"]),
    ],
)
def test_the_same_quantity_written_another_way_is_the_same_question(
    tmp_path: Path, field: str, ways: list[str]
) -> None:
    answers = []
    for way in ways:
        said = ask(tmp_path, put(GOOD, **{field: f'"{way}"'}))
        if said.status == 3:
            # 0.106 kg is 106 g in no other reading, but three digits after one mark may be asked about.
            assert said.codes[0][0] == "two_readings"
            continue
        assert said.status == 0, (way, said.out)
        answers.append(said.body["total"]["value"])
    assert len(answers) >= 2
    assert answers == pytest.approx([answers[0]] * len(answers), rel=1e-12)


def test_output_is_the_same_every_time_when_the_question_says_now(tmp_path: Path) -> None:
    first = ask(tmp_path, GOOD).out
    file = tmp_path / "question.toml"
    known = catalogue.load(resources())
    for year in (2020, 2031):
        outcome = headless.answer_file(file, known, datetime(year, 1, 1, tzinfo=UTC))
        assert outcome.body == headless.answer_file(file, known, datetime.now(UTC)).body
    assert run("answer", str(file)).out == first


def test_without_now_the_reading_ages(tmp_path: Path) -> None:
    file = tmp_path / "question.toml"
    file.write_text(put(GOOD, now=None), encoding="utf-8")
    known = catalogue.load(resources())
    fresh = headless.answer_file(file, known, datetime(2026, 11, 25, 9, tzinfo=UTC))
    stale = headless.answer_file(file, known, datetime(2026, 12, 25, 9, tzinfo=UTC))
    early = headless.answer_file(file, known, datetime(2026, 11, 24, 9, tzinfo=UTC))
    assert (fresh.status, stale.status, early.status) == (0, 3, 3)
    assert stale.body["reasons"][0]["code"] == "reading_stale"
    assert early.body["reasons"][0]["code"] == "reading_in_the_future"


def test_offsets_of_one_instant_give_one_answer(tmp_path: Path) -> None:
    east = put(GOOD, now="2026-11-25T18:00:00+09:00", measured_at="2026-11-25T02:00:00-06:00")
    assert ask(tmp_path, east).out == ask(tmp_path, GOOD).out


def test_what_may_be_left_out(tmp_path: Path) -> None:
    short = GOOD
    for field in (
        "volume_uncertainty", "salinity", "temperature", "ph", "measured_at", "daily_use", "fastest_rise", "purity",
        "smallest_dose", "step", "largest_share", "doses_per_day", "name",
    ):  # fmt: skip
        short = put(short, **{field: None})
    body = ask(tmp_path, short).body
    assert body["doses_per_day"] == 24
    assert body["rise_per_day"]["value"] == pytest.approx(1.0)
    assert body["upkeep_per_hour"]["value"] == 0.0
    assert body["dose_in_24_hours"]["value"] == pytest.approx(1.0 / DKH_PER_ML, rel=1e-6)
    assert {"age_unknown", "no_use"} <= {reason["code"] for reason in body["reasons"]}


def test_purity_and_label_set_the_strength(tmp_path: Path) -> None:
    pure = ask(tmp_path, GOOD).body["total"]["value"]
    half = ask(tmp_path, put(GOOD, purity='"50 %"')).body["total"]["value"]
    assert half == pytest.approx(2 * pure, rel=1e-12)
    label = ask(tmp_path, on_label(GOOD)).body
    # 5 mL raise 100 L by 1 dKH: 1 mL raises 340 L by 20 / 340 dKH.
    assert label["dose_in_24_hours"]["value"] == pytest.approx(1.9 * 340 / 20, rel=1e-12)
    assert label["whole_jug"] is None, "nobody knows how much is in a bottle"


@pytest.mark.parametrize("scale", ["SG 25/25 degC", "SG 20/20 degC", "SG 60/60 degF"])
@pytest.mark.parametrize(("volume", "jug"), [("40 mL", "23 L"), ("1 L", "100 L"), ("450 L", "5 L")])
def test_a_specific_gravity_beyond_the_scale_is_still_strict_json(
    tmp_path: Path, scale: str, volume: str, jug: str
) -> None:
    text = put(
        GOOD,
        parameter='"salinity"', measured=f'"1.0200 {scale}"', target=f'"1.0240 {scale}"', net_volume=f'"{volume}"',
        chemical='"sodium chloride"', dissolved='"20 kg"' if jug == "100 L" else '"4 kg"', made_up_to=f'"{jug}"',
        daily_use='"0.9 ppt per day"', fastest_rise=None, step=None, smallest_dose=None,
    )  # fmt: skip
    said = ask(tmp_path, text if jug != "5 L" else put(text, dissolved='"1 kg"'))
    assert said.status == 0, said.out
    body = said.body
    assert body["rise_per_day"]["unit"] == "ppt per day"
    for quantity in quantities(body):
        assert quantity["value"] is not None
    assert body["whole_jug"]["unit"] in (scale, "ppt")
    assert body["band"]["p5"]["value"] <= body["check"]["end_value"]["value"] <= body["band"]["p95"]["value"]
