"""The kind `timetable`: its answer by hand, its refusals with their fields, its faults with their lines, and damaged files."""

from __future__ import annotations

import random
import re
from pathlib import Path

import pytest

from tests.headless.asking import ask, example, line_with, put, run

EXAMPLE = example("timetable")
# Two pumps without any wish but the usual ones.
PLAIN = """kind = "timetable"
[[pump]]
name = "Soda"
raises = "alkalinity"
per_day = "52.8 mL per day"
flow = "24 mL/min"
[[pump]]
name = "Lime"
raises = "calcium"
per_day = "52.8 mL per day"
flow = "24 mL/min"
"""


def second(text: str = EXAMPLE, **fields: str | None) -> str:
    """Return the text with other fields of its second pump."""
    at = text.index('[[pump]]\nname = "Calcium')
    return text[:at] + put(text[at:], **fields)


def test_two_pumps_by_hand(tmp_path: Path) -> None:
    said = ask(tmp_path, PLAIN)
    assert said.status == 0
    body = said.body
    assert [dose["pump"] for dose in body["doses"]] == ["Soda", "Lime"] * 24
    assert [dose["at"] for dose in body["doses"][:4]] == ["00:00", "00:30", "01:00", "01:30"]
    assert body["doses"][3]["minute"] == 90
    assert body["doses"][0]["dose"] == {"value": 2.2, "unit": "mL"}
    assert body["doses"][0]["run_time"] == {"value": 5.5, "unit": "s"}
    assert body["doses"][0]["more_on_some_days"] == {"value": 0.0, "unit": "mL"}
    assert body["pumps"][0] == {
        "pump": "Soda",
        "doses_per_day": 24,
        "dose_in_24_hours": {"value": pytest.approx(52.8), "unit": "mL"},
        "single_dose": {"value": pytest.approx(2.2), "unit": "mL"},
        "dose_in_24_hours_rounded": {"value": 52.8, "unit": "mL"},
        "step": {"value": 0.1, "unit": "mL"},
        "run_time_in_24_hours": {"value": 132.0, "unit": "s"},
        "shortest_interval": {"value": 60, "unit": "min"},
        "longest_interval": {"value": 60, "unit": "min"},
        "carried": None,
    }
    (pair,) = body["apart"]
    assert (pair["first"], pair["second"]) == ("Soda", "Lime")
    assert pair["at_least"] == {"value": 15.0, "unit": "min"}
    assert pair["nearest"] == {"value": pytest.approx(30.0 - 5.5 / 60.0), "unit": "min"}
    assert body["check"] == {"agrees": True, "most_in_24_hours": [{"value": 52.8, "unit": "mL"}] * 2}
    assert [reason["code"] for reason in body["reasons"]] == ["timetable_rather_further"]
    assert len(body["rules"]) == 4


def test_the_example_keeps_its_wishes(tmp_path: Path) -> None:
    body = ask(tmp_path, EXAMPLE).body
    assert all(360 <= dose["minute"] < 1380 for dose in body["doses"])
    assert not [d for d in body["doses"] if d["pump"] == "Magnesium pump" and 720 <= d["minute"] < 780]
    assert [pump["doses_per_day"] for pump in body["pumps"]] == [12, 12, 6]
    assert body["pumps"][2]["carried"] == {"days": 2, "one_step_more_on": [2]}
    more = [dose["more_on_some_days"]["value"] for dose in body["doses"] if dose["pump"] == "Magnesium pump"]
    assert more == [0.1, 0, 0, 0, 0, 0]
    assert [(pair["first"], pair["second"]) for pair in body["apart"]] == [
        ("Alkalinity pump", "Calcium pump"),
        ("Alkalinity pump", "Magnesium pump"),
    ]
    assert all(pair["nearest"]["value"] >= pair["at_least"]["value"] for pair in body["apart"])


@pytest.mark.parametrize(
    "other",
    [
        {"per_day": '"0.0528 L per day"'}, {"per_day": '"0.0528 L/day"'}, {"flow": '"24 mL per min"'},
        {"keep_apart": '"0.5 h"'}, {"keep_apart": '"1800 s"'}, {"quiet": '"23:00-06:00"'}, {"quiet": '"23:00 to 24:00, 0:00 to 6:00"'},
        {"closest": '"1200 s"'}, {"one_at_a_time": "true"}, {"largest_share": '"50,0 %"'},
    ],
)  # fmt: skip
def test_units_and_spellings_do_not_matter(tmp_path: Path, other: dict[str, str | None]) -> None:
    # Minute by minute the same; with two quiet hours instead of one, too.
    first, again = ask(tmp_path, EXAMPLE).body, ask(tmp_path, put(EXAMPLE, **other)).body
    assert first["doses"] == again["doses"]


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({"name": None}, "unreadable", "pump.2.name"),
        ({"name": '"Magnesium pump"'}, "timetable_same_name", "pump.3.name"),
        ({"raises": '"hardness"'}, "unknown_parameter", "pump.2.raises"),
        ({"per_day": '"52.8 mL"'}, "unknown_unit", "pump.2.per_day"),
        ({"per_day": '"0 mL per day"'}, "out_of_range", "pump.2.per_day"),
        ({"per_day": '"1,250 mL per day"'}, "two_readings", "pump.2.per_day"),
        ({"flow": '"24"'}, "unit_missing", "pump.2.flow"),
        ({"flow": '"0.01 mL/min"'}, "timetable_pump_share", "pump.2.flow"),
    ],
)  # fmt: skip
def test_what_cannot_be_taken_names_its_field(
    tmp_path: Path, fields: dict[str, str | None], code: str, field: str
) -> None:
    said = ask(tmp_path, second(**fields))
    if code == "unreadable":
        assert said.status == 2
        assert [path for _, path in said.problems] == [field]
        return
    assert said.status == 3
    assert said.err == ""
    assert said.codes == [(code, field)]


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({"keep_apart": '"5 min"'}, "timetable_apart_least", "keep_apart"),
        ({"keep_apart": '"30"'}, "unit_missing", "keep_apart"),
        ({"keep_apart": '"13 h"'}, "out_of_range", "keep_apart"),
        ({"keep_apart": '"6 h"'}, "timetable_apart", "keep_apart"),
        ({"quiet": '"at night"'}, "timetable_hours", "quiet"),
        ({"quiet": '"6:00 to 6:00"'}, "timetable_hours", "quiet"),
        ({"quiet": '"24:30 to 6:00"'}, "timetable_hours", "quiet"),
        ({"smallest_dose": '"6 mL"'}, "timetable_between", "pump.1.doses_per_day"),
        ({"smallest_dose": '"6 mL"', "largest_dose": None}, "timetable_smallest", "pump.1.doses_per_day"),
        ({"largest_dose": '"2 mL"'}, "timetable_largest", "pump.1.doses_per_day"),
        ({"step": '"100 mL"'}, "timetable_step", "pump.1.step"),
        ({"fewest_doses": "13"}, "timetable_numbers", "pump.1.doses_per_day"),
        ({"most_doses": "300"}, "out_of_range", "pump.1.most_doses"),
        ({"closest": '"95 min"', "fewest_doses": "12"}, "timetable_closest", "pump.1.closest"),
        ({"first": '"Calcum pump"'}, "timetable_which_pump", "apart.1.first"),
        ({"second": '"alkalinity pump"'}, "timetable_apart_itself", "apart.1.at_least"),
        ({"at_least": '"10"'}, "unit_missing", "apart.1.at_least"),
    ],
)  # fmt: skip
def test_what_cannot_be_planned_names_the_wish(
    tmp_path: Path, fields: dict[str, str | None], code: str, field: str
) -> None:
    said = ask(tmp_path, put(EXAMPLE, **fields))
    assert said.status == 3
    assert (code, field) in said.codes


@pytest.mark.parametrize(
    ("text", "start", "field", "allowed"),
    [
        (put(EXAMPLE, per_day=None), "[[pump]]", "pump.1.per_day", 'Write per_day = "52.8 mL per day"'),
        (second(flow=None), "[[pump]]#2", "pump.2.flow", 'Write flow = "24 mL/min"'),
        (put(EXAMPLE, doses_per_day='"12"'), "doses_per_day", "pump.1.doses_per_day", "whole number"),
        (put(EXAMPLE, fewest_doses="10.5"), "fewest_doses", "pump.1.fewest_doses", "whole number"),
        (put(EXAMPLE, most_doses="true"), "most_doses", "pump.1.most_doses", "whole number"),
        (put(EXAMPLE, keep_apart="30"), "keep_apart", "keep_apart", "in quotes"),
        (put(EXAMPLE, quiet="23:00:00"), "quiet", "quiet", "in quotes"),
        (put(EXAMPLE, one_at_a_time='"yes"'), "one_at_a_time", "one_at_a_time", "true or false"),
        (put(EXAMPLE, step='"0.1 mL"\nstride = "1 mL"'), "stride", "pump.1.stride", "Allowed are: name, raises"),
        (put(EXAMPLE, first=None), "[[apart]]", "apart.1.first", 'Write first = "Alkalinity pump"'),
        (EXAMPLE.replace("[[apart]]", "[[distant]]"), "[[distant]]", "distant", "Allowed are: kind, keep_apart"),
        ('kind = "timetable"\npump = 5\n', "pump", "pump", "must be a list of tables: [[pump]]"),
    ],
)  # fmt: skip
def test_a_fault_of_the_file_has_its_line(tmp_path: Path, text: str, start: str, field: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2
    begin, _, which = start.partition("#")
    lines = [n for n, line in enumerate(text.split("\n"), start=1) if line.startswith(begin)]
    assert (lines[int(which or 1) - 1], field) in said.problems
    assert allowed in said.err


def test_a_file_without_pumps_says_what_to_write(tmp_path: Path) -> None:
    said = ask(tmp_path, 'kind = "timetable"\n')
    assert said.problems == [(0, "pump")]
    assert "Write [[pump]] with name, per_day and flow" in said.err


def test_pumps_may_stand_in_one_line_each(tmp_path: Path) -> None:
    text = 'kind = "timetable"\npump = [{ name = "A", per_day = "5 mL per day", flow = "24 mL/min" }]\n'
    assert ask(tmp_path, text).status == 0
    assert ask(tmp_path, text.replace(', flow = "24 mL/min"', "")).problems == [
        (line_with(text, "pump"), "pump.1.flow")
    ]


def test_text_has_the_rules_the_pumps_and_every_dose_in_order(tmp_path: Path) -> None:
    said = ask(tmp_path, EXAMPLE, "--text")
    assert said.status == 0
    lines = said.out.splitlines()
    assert lines[0] == "Missed doses are never made up: go on with the next one."
    clocks = [line[:5] for line in lines if re.match(r"\d\d:\d\d  ", line)]
    assert len(clocks) == 30
    assert clocks == sorted(clocks)
    assert "06:00  Alkalinity pump: 4.4 mL (11 s)" in lines
    assert "“Alkalinity pump” and “Calcium pump”: 39.8 min apart, at least 30 min" in lines
    assert "on 1 of 2 days the first dose is 0.1 mL more" in said.out
    assert "\u00a0" not in said.out


def test_text_of_a_refusal_names_the_field(tmp_path: Path) -> None:
    said = ask(tmp_path, put(EXAMPLE, keep_apart='"6 h"'), "--text")
    assert said.status == 3
    assert (
        "Refused: keep_apart: No timetable of “Alkalinity pump”, “Calcium pump” and “Magnesium pump”"
        in said.out.replace("\u00a0", " ")
    )


def test_the_example_is_printed_and_says_what_may_be_left_out(tmp_path: Path) -> None:
    said = run("question", "timetable")
    assert said.status == 0
    assert said.out == EXAMPLE
    bare = re.sub(r"^.*# optional.*\n", "", EXAMPLE.partition("[[apart]]")[0], flags=re.MULTILINE)
    assert "quiet" not in bare
    assert ask(tmp_path, bare).status == 0


VALUES = (
    '""', '"0"', '"-1 mL"', '"nan mL"', '"1,250 mL"', '"6,8 mL per day"', '"999999999999999 L per day"', '"0.00000000000001 mL"',
    "1", "-0.0", "1e400", "nan", "true", "[]", "{}", '{ a = "b" }', "2026-11-25", "22:00:00", "[{}]", '"calcium"', '"Alkalinity pump"',
    '"22:00 to 7:00"', '"99:99 to 7:00"', '"0.001 mL"', '"5 h"', '"100 %"', "288", "1",
)  # fmt: skip


def damaged(rng: random.Random) -> str:
    """Return the example with a few lines damaged."""
    lines = EXAMPLE.split("\n")
    for _ in range(rng.choice((1, 1, 2, 3))):
        at = rng.randrange(len(lines))
        keys = [n for n, line in enumerate(lines) if re.match(r"\w+ =", line)]
        match rng.randrange(5):
            case 0:
                del lines[at]
            case 1:
                lines.insert(at, rng.choice(lines))
            case 2:
                lines[at] = lines[at].replace("pump", rng.choice(("apart", "pumps", "")), 1)
            case 3:
                at = rng.choice(keys)
                lines[at] = f"{lines[at].partition('=')[0]}= {rng.choice(VALUES)}"
            case _:
                at = rng.choice(keys)
                lines[at] = re.sub(r"\d", lambda _: rng.choice("0123456789"), lines[at], count=1)
    return "\n".join(lines)


@pytest.mark.parametrize("start", range(2))
def test_damaged_files_have_a_documented_outcome(tmp_path: Path, start: int) -> None:
    rng = random.Random(start)
    seen = {0: 0, 2: 0, 3: 0}
    for _ in range(150):
        text = damaged(rng)
        said = ask(tmp_path, text)
        seen[said.status] += 1
        body = said.body
        if said.status == 0:
            assert body["check"]["agrees"] is True
        elif said.status == 3:
            assert all(reason["text"] and reason["code"] for reason in body["reasons"])
        else:
            assert all(0 <= problem["line"] <= text.count("\n") + 1 for problem in body["problems"])
    assert min(seen.values()) >= 10, seen
