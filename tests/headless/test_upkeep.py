"""The kind `upkeep`: its answer by hand, its refusals with their fields, its faults with their lines, and damaged files."""

from __future__ import annotations

import math
import random
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.engine.upkeeps import COMMON_SALT, MEQ_PER_DKH
from tests.headless.asking import ask, example, line_with, put, run

EXAMPLE = example("upkeep")
PLANNED = '\n[[planned]]\nparameter = "magnesium"\nrise_per_day = "20 mg/L per day"\ndays_left = "4"\n'


def calcium(**fields: str | None) -> str:
    """Return the example with other fields of its second item."""
    head, mark, tail = EXAMPLE.rpartition("[[item]]")
    return head + mark + put(tail, **fields)


def quantities(node: Any) -> Iterator[dict[str, Any]]:
    """Yield every quantity inside a JSON value."""
    if isinstance(node, dict):
        if not isinstance(node.get("value", {}), dict):
            yield node
        for inner in node.values():
            yield from quantities(inner)
    elif isinstance(node, list):
        for inner in node:
            yield from quantities(inner)


def test_the_example_by_hand(tmp_path: Path) -> None:
    said = ask(tmp_path, EXAMPLE)
    assert said.status == 0
    body = said.body
    alkalinity, lime = body["items"]
    # 2.00024 meq per mL in 340 L are 0.0164952 dKH per mL.
    assert alkalinity["dose_per_hour"] == {"value": pytest.approx(0.9 / 0.0164952 / 24.0, rel=1e-5), "unit": "mL/h"}
    assert alkalinity["single_dose_rounded"] == {"value": 2.2, "unit": "mL"}
    assert alkalinity["dose_in_24_hours_rounded"] == {"value": 52.8, "unit": "mL"}
    assert alkalinity["use"] == {"value": pytest.approx(0.9), "unit": "dKH per day"}
    assert alkalinity["left_of_use"] == {
        "value": pytest.approx(0.9 - 52.8 * 0.0164952, rel=1e-3),
        "unit": "dKH per day",
    }
    assert alkalinity["run_time"] == {"value": pytest.approx(5.5), "unit": "s"}
    assert alkalinity["jug_lasts"] == {"value": pytest.approx(1000.0 / 52.8), "unit": "d"}
    assert alkalinity["jug_empty_at"] == "2026-12-14T07:00:00+00:00"
    assert (lime["parameter"], lime["additive"], lime["own_share_of_use"]) == (
        "calcium",
        "calcium chloride dihydrate",
        1.0,
    )
    ratio = body["calcium_to_alkalinity"]
    assert ratio["of_skeleton"] == {"value": pytest.approx(20.04, abs=0.002), "unit": "mg/meq"}
    assert ratio["of_use"]["value"] == pytest.approx(6.4 / (0.9 * MEQ_PER_DKH), rel=1e-6)
    # Each pump gives 52.8 mL, so calcium falls a little short of its alkalinity.
    equivalents = 52.8 * 2.00024 / 1000.0
    salt = body["sodium_chloride_left"]
    month = 365.25 / 12.0
    assert salt["without_exchange"]["month"] == {
        "value": pytest.approx(58.44 * equivalents * month, rel=1e-3), "unit": "g",
    }  # fmt: skip
    assert salt["with_exchange"]["month"]["value"] == pytest.approx(
        COMMON_SALT * equivalents * (1.0 - math.exp(-0.01 * month)) / 0.01, rel=1e-3
    )
    assert salt["steady_state"]["value"] == pytest.approx(COMMON_SALT * equivalents / 0.01, rel=1e-3)
    assert body["exchange_per_day"] == {"value": pytest.approx(3.4), "unit": "L"}
    change = body["changes"]["calcium"]
    assert change["new_water"] == {"value": 430.0, "unit": "mg/L"}
    assert change["now"] == {"value": 420.0, "unit": "mg/L"}
    assert change["per_day"]["unit"] == "mg/L per day"
    assert body["changes"]["alkalinity"]["now"] == {"value": pytest.approx(8.0), "unit": "dKH"}
    # What rounding leaves of both uses goes out of the water as bicarbonate and calcium.
    short = 0.9 * MEQ_PER_DKH - equivalents / 0.34, 6.4 - equivalents / 0.34 * 20.0356
    milligrams = COMMON_SALT * equivalents / 0.34 - short[0] * 61.016 - short[1]
    assert body["changes"]["salinity"]["settles_above_new_water"]["value"] == pytest.approx(
        milligrams / 0.01 / 1023.34, rel=1e-3
    )
    assert body["fullest_hour"]["ph_now"] == {"value": pytest.approx(8.1), "unit": "NBS scale"}
    assert [reason["code"] for reason in body["reasons"]] == ["upkeep_keep_apart"]
    assert body["check"]["agrees"] is True
    assert body["cautions"]
    assert body["rules"]


def test_every_quantity_is_a_number_with_a_unit(tmp_path: Path) -> None:
    found = list(quantities(ask(tmp_path, EXAMPLE).body))
    assert len(found) > 100
    for quantity in found:
        assert quantity.keys() == {"value", "unit"}
        assert isinstance(quantity["value"], float | int)
        assert math.isfinite(quantity["value"])


def test_limits_have_code_figure_bound_and_share(tmp_path: Path) -> None:
    limits = ask(tmp_path, EXAMPLE).body["limits"]
    codes = [limit["code"] for limit in limits]
    assert len(set(codes)) == len(codes)
    assert {"pump_share_alkalinity", "smallest_dose_alkalinity", "single_dose_calcium", "daily_rise_salinity", "evaporation",
            "ph_rise", "ph_ceiling", "saturation", "solubility_calcium"} <= set(codes)  # fmt: skip
    assert all(limit["passed"] is False and limit["share"] <= 1.0 for limit in limits)


def test_without_exchange_and_of_a_bottle_nothing_is_made_up(tmp_path: Path) -> None:
    text = (
        EXAMPLE.replace("[exchange]", "").replace('per_day = "3.4 L per day"', "").replace('calcium = "430 mg/L" ', "#")
    )
    body = ask(tmp_path, text).body
    assert body["salt_left"]["with_exchange"] is None
    assert body["salt_left"]["steady_state"] is None
    assert body["changes"]["salinity"]["with_exchange"] is None
    head, _, tail = text.rpartition("[item.additive]")
    bottle = f'{head}[item.additive]\nlabel = {{ dose = "5 mL", water = "100 L", raises = "10 mg/L" }}\n[item.pump]{tail.partition("[item.pump]")[2]}'
    body = ask(tmp_path, bottle).body
    assert body["additives_known"] is False
    assert body["salt_left"] is None
    assert "salinity" not in body["changes"]
    assert body["items"][1]["jug_lasts"] is None
    assert body["items"][1]["additive"] == ""


def test_a_correction_that_is_planned_counts(tmp_path: Path) -> None:
    assert ask(tmp_path, EXAMPLE + PLANNED).status == 0
    said = ask(tmp_path, EXAMPLE + PLANNED.replace("magnesium", "calcium").replace("20 mg", "49 mg"))
    assert said.status == 3
    assert said.codes == [("upkeep_daily_rise", "item.2.pump.doses_per_day")]


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({"daily_use": None}, "missing", "item.2.daily_use"),
        ({"daily_use": '"0 mg/L per day"'}, "upkeep_no_use", "item.2.daily_use"),
        ({"daily_use": '"6.4 mg/L"'}, "unknown_unit", "item.2.daily_use"),
        ({"parameter": '"hardness"'}, "unknown_parameter", "item.2.parameter"),
        ({"parameter": '"alkalinity"', "measured": '"8 dKH"', "daily_use": '"1 dKH per day"', "chemical": '"sodium bicarbonate"', "dissolved": '"50 g"'}, "upkeep_twice", "item.2.parameter"),
        ({"measured": '"42 mg/L"'}, "implausible", "item.2.measured"),
        ({"measured": '"420 buckets"'}, "unknown_unit", "item.2.measured"),
        ({"chemical": '"calcium chloride"'}, "which_hydrate", "item.2.additive.chemical"),
        ({"chemical": '"potassium chloride"'}, "does_not_raise", "item.2.additive.chemical"),
        ({"dissolved": '"1,470 g"'}, "two_readings", "item.2.additive.dissolved"),
        ({"dissolved": '"900 g"'}, "does_not_dissolve", "item.2.additive.dissolved"),
        ({"made_up_to": '"1 gal"'}, "bare_gallon", "item.2.additive.made_up_to"),
        ({"flow": '"24"'}, "unit_missing", "item.2.pump.flow"),
        ({"step": '"5 mL"'}, "upkeep_step", "item.2.pump.step"),
        ({"flow": '"0.01 mL/min"'}, "upkeep_pump_share", "item.2.pump.flow"),
        ({"per_day": '"3.4 L"'}, "unknown_unit", "exchange.per_day"),
        ({"per_day": '"-1 L per day"'}, "out_of_range", "exchange.per_day"),
        ({"per_day": '"4000 L per day"'}, "out_of_range", "exchange.per_day"),
    ],
)  # fmt: skip
def test_what_cannot_be_taken_names_its_field(
    tmp_path: Path, fields: dict[str, str | None], code: str, field: str
) -> None:
    said = ask(tmp_path, calcium(**fields))
    assert said.status == 3
    assert said.err == ""
    assert said.codes == [(code, field)]


def test_what_is_wrong_with_the_tank_is_said_once(tmp_path: Path) -> None:
    said = ask(tmp_path, put(EXAMPLE, net_volume='"340"'))
    assert said.codes == [("unit_missing", "system.net_volume")]


@pytest.mark.parametrize(
    ("field", "value", "code"),
    [
        ("parameter", '"soup"', "unknown_parameter"), ("rise_per_day", '"20 mg/L"', "unknown_unit"),
        ("days_left", '"0"', "out_of_range"), ("days_left", '"soon"', "not_a_number"),
    ],
)  # fmt: skip
def test_what_is_wrong_with_a_planned_correction_names_it(tmp_path: Path, field: str, value: str, code: str) -> None:
    first, second = PLANNED, put(PLANNED, **{field: value})
    assert ask(tmp_path, EXAMPLE + first + second).codes == [(code, f"planned.2.{field}")]


def test_who_brings_too_much_is_said_in_words(tmp_path: Path) -> None:
    lime = put(EXAMPLE, chemical='"calcium hydroxide"', dissolved='"1.4 g"', flow='"200 mL/min"')
    said = ask(tmp_path, lime)
    assert said.codes == [("upkeep_brings_too_much", "item.1.additive.chemical")]
    assert "Calcium hydroxide for alkalinity brings 6.432 mg per L per day of calcium, more than the 6.4" in said.words


@pytest.mark.parametrize(
    ("text", "start", "field", "allowed"),
    [
        (put(EXAMPLE, net_volume=None), "[system]", "system.net_volume", 'Write net_volume = "340 L"'),
        (EXAMPLE.replace("[[item]]", "[[items]]").replace("[item.", "[items."), "[[items]]", "items", "Allowed are: kind, now, system, item"),
        (calcium(parameter=None), "[[item]]#2", "item.2.parameter", 'Write parameter = "alkalinity"'),
        (calcium(daily_use="6.4"), "daily_use#2", "item.2.daily_use", "in quotes"),
        (calcium(chemical=None), "[item.additive]#2", "item.2.additive.chemical", "Write chemical"),
        (calcium(flow=None), "[item.pump]#2", "item.2.pump.flow", 'Write flow = "24 mL/min"'),
        (calcium(step='"0.1 mL"\nstride = "1 mL"'), "stride", "item.2.pump.stride", "Allowed are: flow"),
        (put(EXAMPLE, doses_per_day='"24"'), "doses_per_day", "item.1.pump.doses_per_day", "whole number from 1 to 1440"),
        (put(EXAMPLE, per_day=None), "[exchange]", "exchange.per_day", 'Write per_day = "3.4 L per day"'),
        (EXAMPLE + '\n[[planned]]\nparameter = "calcium"\ndays_left = "4"\n', "[[planned]]", "planned.1.rise_per_day", "Write rise_per_day"),
        (EXAMPLE + PLANNED + 'doses_per_day = "4"\n', 'doses_per_day = "4"', "planned.1.doses_per_day", "whole number"),
        ('kind = "upkeep"\nplanned = 5\n[system]\nnet_volume = "1 L"\n', "planned", "planned", "must be a list of tables: [[planned]]"),
        ('kind = "upkeep"\nitem = "x"\n[system]\nnet_volume = "1 L"\n', "item", "item", "must be a list of tables: [[item]]"),
        ('kind = "upkeep"\nnow = 5\n[system]\nnet_volume = "1 L"\n', "now", "now", "date and time with its offset"),
        ('kind = "upkeep"\nexchange = 5\n[system]\nnet_volume = "1 L"\n', "exchange", "exchange", "must be a table: [exchange]"),
    ],
)  # fmt: skip
def test_a_fault_of_the_file_has_its_line(tmp_path: Path, text: str, start: str, field: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2
    begin, _, which = start.partition("#")
    lines = [n for n, line in enumerate(text.split("\n"), start=1) if line.startswith(begin)]
    assert (lines[int(which or 1) - 1], field) in said.problems
    assert allowed in said.err


def test_a_file_without_items_says_what_to_write(tmp_path: Path) -> None:
    said = ask(tmp_path, 'kind = "upkeep"\n[system]\nnet_volume = "340 L"\n')
    assert said.problems == [(0, "item")]
    assert "[[item]], [item.additive] and [item.pump]" in said.err


def test_items_may_stand_in_one_line_each(tmp_path: Path) -> None:
    text = (
        'kind = "upkeep"\n'
        'item = [{ parameter = "calcium", daily_use = "6 mg/L per day", additive = { chemical = "calcium chloride dihydrate", '
        'dissolved = "147 g", made_up_to = "1 L" }, pump = { flow = "24 mL/min" } }]\n[system]\nnet_volume = "340 L"\n'
    )
    assert ask(tmp_path, text).status == 0
    assert ask(tmp_path, text.replace('flow = "24 mL/min"', "")).problems == [
        (line_with(text, "item"), "item.1.pump.flow")
    ]


def test_text_has_the_hazards_before_any_number_and_a_row_for_each_value(tmp_path: Path) -> None:
    said = ask(tmp_path, EXAMPLE, "--text")
    assert said.status == 0
    lines = said.out.splitlines()
    first = next(n for n, line in enumerate(lines) if "mL per hour" in line)
    assert lines[0] == "Warning, sodium carbonate anhydrous: H319 causes serious eye irritation."
    assert all(line.startswith(("Warning, ", "Caution: ")) for line in lines[: lines.index("")])
    assert lines[first - 1] == "Alkalinity: 0.9 dKH per day used"
    assert lines[first] == "2.2 mL per hour of sodium CARBonate anhydrous"
    assert "A full jug lasts 19 days, until Mon 14 Dec 2026" in said.out
    assert "Missed doses are never made up" in said.out
    assert re.search(
        r"Salt left behind, without exchange: 43\.2 g in a week, 188 g in a month, 2\.25 kg in a year", said.out
    )
    assert "\u00a0" not in said.out


def test_text_of_a_refusal_names_the_field(tmp_path: Path) -> None:
    said = ask(tmp_path, calcium(step='"5 mL"'), "--text")
    assert said.status == 3
    assert said.out.startswith("Refused: item.2.pump.step: A dose of 2.26")


def test_the_example_is_printed_and_says_what_may_be_left_out() -> None:
    said = run("question", "upkeep")
    assert said.status == 0
    assert said.out == EXAMPLE
    bare = re.sub(r"^.*# optional.*\n", "", EXAMPLE, flags=re.MULTILINE)
    assert "smallest_dose" not in bare


def test_what_the_example_calls_optional_is(tmp_path: Path) -> None:
    bare = re.sub(r"^(?!\[exchange\]).*# optional.*\n", "", EXAMPLE, flags=re.MULTILINE)
    bare = bare.partition("[exchange]")[0]
    assert ask(tmp_path, bare).status == 0


VALUES = (
    '""', '"0"', '"-1 L"', '"nan dKH"', '"1,250 mL"', '"6,8 dKH per day"', '"999999999999999 L"', '"0.00000000000001 g"', '"5 gal"',
    "1", "-0.0", "1e400", "nan", "true", "[]", "{}", '{ a = "b" }', "2026-11-25", "[{}]", '"calcium chloride"', '"salinity"',
    '"1.026 SG 25/25 degC"', '"sodium hydroxide"', '"calcium hydroxide"', '"0.001 mL"', '"5000000 L"', '"0.001 mg/L per day"',
)  # fmt: skip


def damaged(rng: random.Random) -> str:
    """Return the example with a few lines damaged."""
    lines = (EXAMPLE + PLANNED).split("\n")
    for _ in range(rng.choice((1, 1, 2, 3))):
        at = rng.randrange(len(lines))
        keys = [n for n, line in enumerate(lines) if re.match(r"\w+ =", line)]
        match rng.randrange(5):
            case 0:
                del lines[at]
            case 1:
                lines.insert(at, rng.choice(lines))
            case 2:
                lines[at] = lines[at].replace("item", rng.choice(("planned", "exchange", "item.additive")), 1)
            case _:
                at = rng.choice(keys or [0])
                lines[at] = f"{lines[at].partition('=')[0].strip()} = {rng.choice(VALUES)}"
    return "\n".join(lines)


@pytest.mark.parametrize("seed", range(4))
def test_damaged_files_have_a_documented_outcome(tmp_path: Path, seed: int) -> None:
    rng = random.Random(seed)
    seen: dict[str, int] = {}
    for _ in range(120):
        text = damaged(rng)
        said = ask(tmp_path, text)
        body = said.body
        expected = {0: "answered", 2: "unreadable", 3: "refused"}[said.status]
        assert body["status"] == expected
        seen[expected] = seen.get(expected, 0) + 1
        if said.status == 0:
            for item in body["items"]:
                assert item["single_dose_rounded"]["value"] <= item["single_dose"]["value"] * (1.0 + 1e-9)
        if said.status == 3:
            assert all(reason["text"] and reason["code"] for reason in body["reasons"])
        if said.status == 2:
            assert all(0 <= problem["line"] <= text.count("\n") + 1 for problem in body["problems"])
        assert ask(tmp_path, text, "--text").out.strip()
    assert all(seen.get(outcome, 0) >= 10 for outcome in ("answered", "refused", "unreadable")), seen
