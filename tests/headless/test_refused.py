"""Questions that are read and refused: status 3, a code, the field, and a sentence with the choices."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.headless.asking import ask, example, on_label, put

GOOD = example()


@pytest.mark.parametrize(
    ("fields", "code", "path", "words"),
    [
        ({"net_volume": '"90 gal"'}, "bare_gallon", "system.net_volume", ["US gal", "imperial gal", "3.785", "4.546"]),
        ({"net_volume": '"90 gallons"'}, "bare_gallon", "system.net_volume", ["US gal", "imperial gal"]),
        ({"net_volume": '"1,250 L"'}, "two_readings", "system.net_volume", ["1.25 L", "1250 L"]),
        ({"net_volume": '"1.250 L"'}, "two_readings", "system.net_volume", ["1.25 L", "1250 L"]),
        ({"net_volume": '"340"'}, "unit_missing", "system.net_volume", ["L", "mL", "US gal", "imperial gal"]),
        ({"net_volume": '"340 quarts"'}, "unknown_unit", "system.net_volume", ["quarts", "US gal"]),
        ({"net_volume": '"1 250 L"'}, "grouped_digits", "system.net_volume", ["1 250 L"]),
        ({"net_volume": '"1,250.5 L"'}, "two_marks", "system.net_volume", ["1,250.5 L"]),
        ({"net_volume": '"340. L"'}, "ends_with_mark", "system.net_volume", ["340. L"]),
        ({"net_volume": '"nan L"'}, "not_a_number", "system.net_volume", ["nan L"]),
        ({"net_volume": '"0 L"'}, "out_of_range", "system.net_volume", ["0 L"]),
        ({"net_volume": '"-340 L"'}, "out_of_range", "system.net_volume", ["-340 L"]),
        ({"net_volume": '"+340 L"'}, "plus_sign", "system.net_volume", ["plus"]),
        ({"purity": '"120 %"'}, "out_of_range", "additive.purity", ["120 %", "100 %"]),
        ({"chemical": '"calcium chloride"'}, "which_hydrate", "additive.chemical",
         ["calcium chloride anhydrous", "calcium chloride dihydrate", "calcium chloride hexahydrate"]),
        ({"chemical": '"Sodium carbonate"'}, "which_hydrate", "additive.chemical",
         ["sodium carbonate anhydrous", "sodium carbonate monohydrate", "sodium carbonate decahydrate"]),
        ({"chemical": '"moon dust"'}, "unknown_chemical", "additive.chemical", ["moon dust", "potassium iodide"]),
        ({"parameter": '"alk"'}, "unknown_parameter", "change.parameter", ["alkalinity", "salinity"]),
        ({"measured": '"140 dKH"'}, "implausible", "change.measured", ["140 ppm as CaCO3", "7.84 dKH"]),
        ({"measured": None}, "missing", "change.measured", []),
        ({"measured": '" "'}, "missing", "change.measured", []),
        ({"measured_at": "2026-11-21T09:00:00+00:00"}, "reading_stale", "change.measured_at", ["4 days", "3 days"]),
        ({"measured_at": "2026-11-25T10:00:00+00:00"}, "reading_in_the_future", "change.measured_at", ["25 Nov"]),
        ({"target": '"15 dKH"'}, "target_outside", "change.target", ["15 dKH", "4 dKH", "14 dKH"]),
        ({"target": '"6 dKH"'}, "target_below_measured", "change.target", ["6 dKH", "wait", "exchange"]),
        ({"target": '"6.8 dKH"'}, "target_reached", "change.target", ["6.8 dKH"]),
        ({"chemical": '"calcium chloride dihydrate"'}, "does_not_raise", "additive.chemical", ["alkalinity"]),
        ({"dissolved": '"400 g"'}, "does_not_dissolve", "additive.dissolved", ["400 g", "214 g", "20 °C"]),
        ({"flow": '"0.05 mL/min"'}, "pump_share_forbids", "pump.flow", ["36 mL", "54.5 mL"]),
        ({"step": '"50 mL"'}, "step_too_coarse", "pump.step", ["50 mL"]),
        ({"smallest_dose": '"20 mL"'}, "dose_below_smallest", "pump.doses_per_day", ["20 mL", "4.7 mL", "5 doses"]),
        ({"doses_per_day": "1", "daily_use": '"0.9 dKH per day"'}, "single_dose_forbids", "pump.doses_per_day",
         ["0.35 dKH"]),
        ({"fastest_rise": '"0.001 dKH per day"'}, "too_slow", "change.fastest_rise", ["1600 days", "365 days"]),
    ],
)  # fmt: skip
def test_refusal(tmp_path: Path, fields: dict[str, str | None], code: str, path: str, words: list[str]) -> None:
    said = ask(tmp_path, put(GOOD, **fields))
    assert said.status == 3
    assert said.err == ""
    assert said.codes == [(code, path)]
    assert all(word in said.words for word in words), said.words


@pytest.mark.parametrize(
    ("parameter", "unit", "choices"),
    [
        ("nitrate", "mg/L", ["mg per L as NO3", "mg per L as N"]),
        ("nitrate", "ppm", ["mg per L as NO3", "mg per L as N"]),
        ("phosphate", "mg/L", ["mg per L as PO4", "mg per L as P"]),
        ("alkalinity", "ppm", ["ppm as CaCO3", "dKH", "meq per L"]),
    ],
)
def test_concentration_that_does_not_say_as_what(tmp_path: Path, parameter: str, unit: str, choices: list[str]) -> None:
    said = ask(tmp_path, put(GOOD, parameter=f'"{parameter}"', measured=f'"2 {unit}"'))
    assert said.status == 3
    assert ("as_what", "change.measured") in said.codes
    (sentence,) = (r["text"].replace("\u00a0", " ") for r in said.body["reasons"] if r["code"] == "as_what")
    assert all(choice in sentence for choice in choices)


def test_every_fault_of_a_question_is_said_at_once(tmp_path: Path) -> None:
    said = ask(
        tmp_path, put(GOOD, net_volume='"90 gal"', target='"8.4"', flow='"24 mL"', chemical='"calcium chloride"')
    )
    assert {path for _, path in said.codes} == {"system.net_volume", "change.target", "pump.flow", "additive.chemical"}


@pytest.mark.parametrize(
    ("rise", "reason", "status", "code"),
    [
        ("1.0", None, 0, ""),
        ("1.2", None, 3, "rise_needs_reason"),
        ("1.2", '"   "', 3, "rise_needs_reason"),
        ("1.2", '"a shipment on Friday"', 0, ""),
        ("1.4", '"a shipment on Friday"', 0, ""),
        ("1.41", '"a shipment on Friday"', 3, "rise_beyond_hard"),
        ("1.41", None, 3, "rise_beyond_hard"),
        ("5", '"because I say so"', 3, "rise_beyond_hard"),
        ("0", '"a shipment on Friday"', 3, "rise_not_positive"),
    ],
)
def test_a_reason_lifts_the_rise_to_the_hard_one_and_no_further(
    tmp_path: Path, rise: str, reason: str | None, status: int, code: str
) -> None:
    text = put(GOOD, fastest_rise=f'"{rise} dKH per day"', reason=reason)
    said = ask(tmp_path, text)
    assert said.status == status
    if status:
        assert said.codes == [(code, "change.fastest_rise")]
    else:
        assert said.body["rise_per_day"]["value"] == pytest.approx(float(rise), rel=1e-12)
        assert said.body["check"]["highest_rise_in_24_hours"]["value"] <= float(rise) * (1 + 1e-9)


def test_a_reason_alone_does_not_make_it_faster(tmp_path: Path) -> None:
    text = put(GOOD, fastest_rise=None, reason='"a shipment on Friday"')
    assert ask(tmp_path, text).body["rise_per_day"]["value"] == pytest.approx(1.0)


def test_the_advice_of_a_refusal_works(tmp_path: Path) -> None:
    text = put(GOOD, smallest_dose='"20 mL"')
    advice = ask(tmp_path, text).words
    assert "5 doses" in advice
    assert ask(tmp_path, put(text, doses_per_day="5")).status == 0


def test_a_refused_question_gives_no_number_of_a_plan(tmp_path: Path) -> None:
    body = ask(tmp_path, put(GOOD, target='"6 dKH"')).body
    assert body.keys() == {"status", "reasons"}


def test_label_of_another_kind_is_refused(tmp_path: Path) -> None:
    said = ask(tmp_path, on_label(GOOD, '{ dose = "5 mL", water = "100 L", raises = "10 mg/L" }'))
    assert said.status == 3
    assert [path for _, path in said.codes] == ["additive.label.raises"]
