"""The question kind ``exchange``: its example by hand, what is refused, and what is no question."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from tests.headless.asking import ask, example, line_with, put

GOOD = example("exchange")


def body(tmp_path: Path, text: str = GOOD) -> dict:
    said = ask(tmp_path, text)
    assert said.status == 0, said.out + said.err
    return said.body


def plain(tmp_path: Path, text: str = GOOD) -> list[str]:
    said = ask(tmp_path, text, "--text")
    assert said.status == 0, said.out + said.err
    return said.out.splitlines()


def matched(flow: str) -> str:
    """Return the example with one figure for both pumps."""
    return (
        put(GOOD, out=None)
        .replace('in = "9.8 L per day"', "")
        .replace('# per_day = "10 L per day"', f"per_day = {flow}")
    )


def test_example_by_hand(tmp_path: Path) -> None:
    """10 of 340 L out and 9.8 L in: a day takes 1/34 of what is there, so that exp(-300/340) is left after 30 days."""
    found = body(tmp_path)
    left = math.exp(-300.0 / 340.0)
    assert found["fraction_left"]["value"] == pytest.approx(left)
    assert found["equal_batch_change"]["in_all_days"] == {"value": pytest.approx(100.0 * (1.0 - left)), "unit": "%"}
    alkalinity = found["values"]["alkalinity"]
    assert alkalinity["settles"] == {"value": pytest.approx(6.86), "unit": "dKH"}
    assert alkalinity["end_value"]["value"] == pytest.approx(6.86 + (9.0 - 6.86) * left)
    assert alkalinity["against_time"][0] == {"after": {"value": 0.0, "unit": "d"}, "value": alkalinity["now"]}
    assert alkalinity["against_time"][-1]["value"] == alkalinity["end_value"]
    low, high = (end["value"] for end in alkalinity["end_value_between"])
    assert low < alkalinity["end_value"]["value"] < high
    # Nitrate loses 1/34 + 1/100 a day, gains 0.5, and 1 more on the third day.
    rate = 1.0 / 34.0 + 0.01
    nitrate = found["values"]["nitrate"]
    by_hand = 0.5 / rate + (25.0 - 0.5 / rate) * math.exp(-30.0 * rate) + math.exp(-27.0 * rate)
    assert nitrate["end_value"]["value"] == pytest.approx(by_hand)
    assert nitrate["settles"]["value"] == pytest.approx(0.5 / rate)
    assert nitrate["half_of_the_way"] == {"value": pytest.approx(math.log(2.0) / rate), "unit": "d"}
    pair = found["pair"]
    assert pair["in_over_out"] == pytest.approx(0.98)
    assert pair["holds_salinity_within_0.5"] is False
    assert pair["salinity_settles"]["value"] == pytest.approx(34.3)
    assert pair["level_change_without_top_off"]["value"] == pytest.approx(-4.2)
    assert pair["top_off_that_holds_level"]["value"] == pytest.approx(4.2)
    assert found["jugs"]["old_full_after"]["value"] == pytest.approx(8.0)
    assert found["jugs"]["new_for_a_week"]["value"] == pytest.approx(68.6)
    dosing = found["dosing"]["alkalinity"]
    assert dosing["without_exchange"]["value"] == pytest.approx(0.9 / 0.0164952, rel=1e-5)
    assert dosing["more_with_exchange"]["value"] == pytest.approx((10 * 9 - 9.8 * 7) / 340.0 / 0.0164952, rel=1e-5)
    assert found["mixing"]["salt_mix_by_label"]["value"] == pytest.approx(3040.0)
    assert found["cautions"]
    assert found["exchange_check"]["agrees"] is True


def test_text_begins_with_the_handling(tmp_path: Path) -> None:
    lines = plain(tmp_path)
    assert lines[0].startswith("Caution: Wear goggles")
    assert any(line.startswith("After 30 days, 41.4 % of the old water are left") for line in lines)
    assert "Settles at 6.86 dKH; half of the way takes 24 days" in lines
    assert any(line.startswith("Note: The pumps are not matched") for line in lines)
    assert any(
        "58.3 mL of its stock a day with the exchange, 54.5 mL without: 3.81 mL a day more." in line for line in lines
    )


def test_as_much_as_a_weekly_change(tmp_path: Path) -> None:
    text = matched('"10 L per day"').replace('per_day = "10 L', '# per_day = "10 L')
    found = body(tmp_path, text.replace("# as_much_as", "as_much_as").replace("# every_days", "every_days"))
    assert found["equal_batch_change"]["in_a_week"]["value"] == pytest.approx(20.0)
    assert found["out_per_day"] == {"value": pytest.approx(-340.0 / 7.0 * math.log(0.8)), "unit": "L per day"}
    assert found["pair"]["holds_salinity_within_0.5"] is True


def test_value_that_runs_out_has_no_figure_from_then_on(tmp_path: Path) -> None:
    found = body(tmp_path, put(GOOD, daily_addition=None, daily_use='"2 dKH per day"'))["values"]["alkalinity"]
    gone = found["nothing_left_after"]["value"]
    assert 0.0 < gone < 30.0
    assert [point["value"] is None for point in found["against_time"]] == [
        point["after"]["value"] >= gone for point in found["against_time"]
    ]
    assert (found["end_value"], found["settles"], found["end_value_between"]) == (None, None, None)


def test_a_change_that_harms_is_said_first_both_ways(tmp_path: Path) -> None:
    text = put(matched('"170 L per day"'), new_water='"14 dKH"')
    first, second = plain(tmp_path, text)[:2]
    assert first.startswith("Danger: Alkalinity would rise by")
    assert second.startswith("Danger: Nitrate would fall by")
    assert [reason["code"] for reason in body(tmp_path, text)["dangers"]] == [
        "exchange_rise_too_fast",
        "exchange_fall_too_fast",
    ]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (put(GOOD, net_volume='"0 L"'), [("out_of_range", "system.net_volume")]),
        (put(GOOD, net_volume='"90 gal"'), [("bare_gallon", "system.net_volume")]),
        (put(GOOD, out='"10 L"'), [("unknown_unit", "exchange.out")]),
        (put(GOOD, out='"10"'), [("unit_missing", "exchange.out")]),
        (put(GOOD, days="0"), [("out_of_range", "exchange.days")]),
        (put(GOOD, now='"9"'), [("unit_missing", "value.1.now")]),
        (put(GOOD, new_water='"7 mg/L"'), [("as_what", "value.1.new_water")]),
        (put(GOOD, parameter='"hardness"'), [("unknown_parameter", "value.1.parameter")]),
        (put(GOOD, parameter='"nitrate"', now='"9 mg/L as NO3"', new_water=None, daily_use=None, daily_addition=None),
         [("exchange_value_twice", "value.2.parameter"), ("does_not_raise", "value.1.additive.chemical")]),
        (put(GOOD, chemical='"potassium iodide"'), [("does_not_raise", "value.1.additive.chemical")]),
        (put(GOOD, chemical='"calcium chloride"'), [("which_hydrate", "value.1.additive.chemical")]),
        (put(GOOD, after_days="31"), [("exchange_dose_too_late", "dose.1.after_days")]),
        (GOOD.replace('[[dose]]                                 # optional, one for each single addition\nparameter = "nitrate"',
                      '[[dose]]\nparameter = "potassium"').replace('raises = "1 mg/L as NO3"', 'raises = "1 mg/L"'),
         [("exchange_dose_of_none", "dose.1.parameter")]),
        (GOOD.replace('in = "9.8 L per day"', 'in = "20 L per day"'), [("exchange_floods", "exchange.in")]),
        (put(GOOD, label_mass='"0 g"'), [("out_of_range", "mixing.label_mass")]),
        (put(GOOD, loss_per_day='"101 %"'), [("out_of_range", "value.2.loss_per_day")]),
        (GOOD.replace('[new_water]\nsalinity = "35"', '[new_water]\nsalinity = "0"'),
         [("exchange_mix_of_fresh", "new_water.salinity")]),
        (GOOD.replace('[new_water]\nsalinity = "35"', '[new_water]\nsalinity = "1.026 SG"'),
         [("bare_gravity", "new_water.salinity")]),
    ],
)  # fmt: skip
def test_refused(tmp_path: Path, text: str, expected: list[tuple[str, str]]) -> None:
    said = ask(tmp_path, text)
    assert said.status == 3, said.out
    assert said.codes == expected
    assert all(reason["text"] for reason in said.body["reasons"])


@pytest.mark.parametrize(
    ("text", "field", "start", "allowed"),
    [
        (put(GOOD, net_volume=None), "system.net_volume", "[system]", "is missing"),
        (put(GOOD, out=None), "exchange.out", "[exchange]", "is missing"),
        (put(GOOD, now=None), "value.1.now", "[[value]]", "is missing"),
        (put(GOOD, days='"many"\ncolour = "red"'), "exchange.colour", "colour", "Allowed are: per_day, out, in"),
        (put(GOOD, out="10"), "exchange.out", "out = 10", "in quotes"),
        (put(GOOD, per_day='"10 L per day"'), "exchange", "[exchange]", "in several"),
        (put(GOOD, every_days="7"), "exchange.every_days", "every_days", "as_much_as only"),
        (GOOD.replace("[mixing]", "[bucket]"), "bucket", "[bucket]", "Allowed are: kind, system, exchange"),
        (GOOD.replace('now = "35"', 'now = "35"\nnew_water = "34"'), "value.3.new_water", 'new_water = "34"', "stands in the table"),
        (put(GOOD, label_mass=None), "mixing.label_mass", "[mixing]", "is missing"),
        (put(GOOD, made_up_to=None), "value.1.additive.made_up_to", "[value.additive]", "is missing"),
    ],
)  # fmt: skip
def test_not_a_question(tmp_path: Path, text: str, field: str, start: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2, said.out
    places = {name: line for line, name in said.problems}
    assert field in places
    assert abs(places[field] - line_with(text, start)) <= 1
    assert allowed in said.err


def test_values_are_needed(tmp_path: Path) -> None:
    said = ask(tmp_path, GOOD[: GOOD.index("[[value]]")])
    assert said.status == 2
    assert {field for _, field in said.problems} == {"value"}


@pytest.mark.parametrize(
    "text",
    [
        put(GOOD, net_volume='"0.001 mL"'),
        put(GOOD, net_volume='"5000000 L"', out='"0.00000000000001 L per day"', evaporation=None),
        put(GOOD, out='"0 L per day"', evaporation='"100 L per day"'),
        put(GOOD, days="3650", daily_use='"0.00000000000001 dKH per day"'),
        put(GOOD, volume_uncertainty='"50 %"', dissolved='"0.00000000000001 g"'),
        matched('"0 L per day"'),
        GOOD.replace('[new_water]\nsalinity = "35"', '[new_water]\nsalinity = "0"').partition("[mixing]")[0],
    ],
)
def test_extremes_are_answered_in_finite_figures(tmp_path: Path, text: str) -> None:
    """Read strictly: no figure of the answer is infinite or none at all."""
    assert 0.0 <= body(tmp_path, text)["fraction_left"]["value"] <= 1.0
    assert plain(tmp_path, text)[0]


def test_foods_add_to_nitrate_and_phosphate_and_take_alkalinity(tmp_path: Path) -> None:
    """10 mL a day with 5 mg of nitrogen each: as nitrate into 340 L, and an equivalent of alkalinity for each mole."""
    mash = '\n[[food]]\nname = "Mash"\nper_day = "10 mL per day"\nnitrogen = "5 mg/mL"\n'
    plain_one, fed = body(tmp_path)["values"], body(tmp_path, GOOD + mash)["values"]
    more = 50.0 * (14.007 + 3 * 15.999) / 14.007 / 340.0
    assert fed["nitrate"]["settles"]["value"] - plain_one["nitrate"]["settles"]["value"] == pytest.approx(
        more / (1.0 / 34.0 + 0.01)
    )
    less = 50.0 / 14.007 / 340.0 * 2.80386
    assert plain_one["alkalinity"]["settles"]["value"] - fed["alkalinity"]["settles"]["value"] == pytest.approx(
        less * 34.0, rel=1e-4
    )
    assert fed["salinity"] == plain_one["salinity"]
    said = {reason["code"]: reason["text"] for reason in body(tmp_path, GOOD + mash)["reasons"]}
    assert said["exchange_fed"].startswith("What is fed (Mash) counts as if all of it became nitrate and phosphate")
    assert "exchange_fed" not in {reason["code"] for reason in body(tmp_path)["reasons"]}


@pytest.mark.parametrize(
    ("rows", "field", "word"),
    [
        ('per_day = "10 mL per day"', "food.1", "no way, or in several"),
        ('per_day = "10 mL per day"\nnitrogen = "5 mg/mL"\nprotein = "6 %"', "food.1", "no way, or in several"),
        ('nitrogen = "5 mg/mL"', "food.1.per_day", "is missing"),
        ('per_day = "10 mL per day"\nnitrogen = 5', "food.1.nitrogen", "must be text"),
        ('per_day = "10 mL per day"\nlabel = "5 mL"', "food.1.label", "must be a table"),
        ('per_day = "10 mL per day"\nlabel = { dose = "5 mL" }', "food.1.label.parameter", "is missing"),
    ],
)
def test_a_food_that_is_no_food(tmp_path: Path, rows: str, field: str, word: str) -> None:
    said = ask(tmp_path, f"{GOOD}\n[[food]]\n{rows}\n")
    assert said.status == 2
    found = {each["field"]: each["text"] for each in said.body["problems"]}
    assert word in found[field]


def test_a_food_that_cannot_be_read_is_refused(tmp_path: Path) -> None:
    said = ask(tmp_path, f'{GOOD}\n[[food]]\nper_day = "10 mL"\nnitrogen = "5 mg/mL"\n')
    assert said.codes == [("unknown_unit", "food.1.per_day")]
