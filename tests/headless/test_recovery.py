"""The question kind ``recovery``: what comes first, the choices side by side, and files that are no such question."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from tests.headless.asking import ask, example, line_with, put

GOOD = example("recovery")
# By hand only one tank is reckoned.
EXACT = put(GOOD, volume_uncertainty='"0 %"')
ONLY_HIGH = """
kind = "recovery"
[system]
net_volume = "340 L"
volume_uncertainty = "0 %"
[change]
parameter = "nitrate"
measured = "40 mg/L as NO3"
[new_water]
nitrate = "0 mg/L as NO3"
"""


def plain(tmp_path: Path, text: str = GOOD) -> list[str]:
    said = ask(tmp_path, text, "--text")
    assert said.status == 0, said.out + said.err
    return said.out.splitlines()


def body(tmp_path: Path, text: str = GOOD) -> dict:
    said = ask(tmp_path, text)
    assert said.status == 0, said.out + said.err
    return said.body


def test_example_by_hand(tmp_path: Path) -> None:
    """1000 mL of 0.0164952 dKH each on 8 dKH; (24.4952 - 11) / 0.9 days; 340 L * (1.4 - 0.9) / (24.4952 - 7) on the first day."""
    found = body(tmp_path, EXACT)
    assert found["value_now"] == {"value": pytest.approx(8.0 + 16.4952, rel=1e-5), "unit": "dKH"}
    assert (found["parameter"], found["held"], found["test_before_anything"]) == ("alkalinity", ["alkalinity"], True)
    assert [step["code"] for step in found["first"]] == [
        "pump_off",
        "line_out",
        "no_counter_dose",
        "no_acid",
        "test",
        "call",
    ]
    assert found["cautions"][: len(found["first"])] == [step["text"] for step in found["first"]]
    hold, exchange, both = found["choices"]
    assert [each["name"] for each in found["choices"]] == ["hold", "exchange", "both"]
    assert all(each["proposed"] and not each["reasons"] for each in found["choices"])
    assert hold["takes"]["value"] == pytest.approx(13.4952 / 0.9, rel=1e-4)
    assert exchange["stages"][0] == {
        "lasts": {"value": 24.0, "unit": "h"},
        "exchange_per_day": {"value": pytest.approx(340.0 * 0.5 / 17.4952, rel=1e-4), "unit": "L per day"},
        "set_by": "alkalinity",
    }
    assert exchange["exchanged"]["value"] == pytest.approx(340.0 * math.log(17.4952 / 4.0), rel=1e-4)
    assert both["takes"]["value"] < hold["takes"]["value"] < exchange["takes"]["value"]
    assert both["single_changes"]["changes"][0]["volume"]["value"] == pytest.approx(340.0 * 0.25 / 17.4952, rel=1e-4)
    assert both["course"][-1]["values"]["alkalinity"] == {"value": pytest.approx(11.0), "unit": "dKH"}
    assert set(both["course"][0]["values"]) == {"alkalinity", "calcium", "magnesium", "salinity"}
    assert both["tests_after"][0]["value"] == 0.0


def test_people_read_what_comes_first_before_any_figure(tmp_path: Path) -> None:
    lines = plain(tmp_path, EXACT)
    assert lines[0] == "First, in this order:"
    assert lines[1].startswith("1. Switch the dosing pump off")
    assert lines[6].startswith("6. Call ")
    figures = lines.index("Alkalinity: 24.5 dKH (reckoned from what ran in), to come to 11 dKH.")
    assert all(line.startswith("Caution:") for line in lines[7 : figures - 1])
    assert lines[figures + 1].startswith("Danger: Saturation with aragonite is about 44")
    assert (
        "It takes 124 L (litres) in 11 days. New water goes in as fast as old water goes out, far from the animals."
        in lines
    )


def test_value_that_is_only_too_high(tmp_path: Path) -> None:
    found = body(tmp_path, ONLY_HIGH)
    hold, exchange, both = found["choices"]
    assert [reason["code"] for reason in hold["reasons"] + both["reasons"]] == ["recovery_no_use"] * 2
    # 40 to 15 mg per L with water of none, 2 mg per L a day at most.
    assert exchange["exchanged"]["value"] == pytest.approx(340.0 * math.log(40.0 / 15.0))
    assert exchange["stages"][0]["exchange_per_day"]["value"] == pytest.approx(340.0 * 2.0 / 40.0)
    assert "aragonite" not in " ".join(plain(tmp_path, ONLY_HIGH))


def test_choice_that_is_not_proposed_gives_no_figures(tmp_path: Path) -> None:
    for each in body(tmp_path, put(GOOD, most_per_day='"1 L per day"', cloudy="true"))["choices"][1:2]:
        assert not each["proposed"]
        assert (each["takes"], each["exchanged"], each["single_changes"]) == (None, None, None)
        assert each["stages"] == each["course"] == each["tests_after"] == []
        assert each["reasons"][0]["text"]


def test_volume_known_within_bounds_gives_bounds(tmp_path: Path) -> None:
    """340 L within 5 %: 16.4952 dKH over 0.95 and over 1.05 on top of 8, and the pace of the first day that of the smaller tank."""
    found = body(tmp_path)
    assert [v["value"] for v in found["value_between"]] == pytest.approx(
        [8 + 16.4952 / 1.05, 8 + 16.4952 / 0.95], rel=1e-5
    )
    hold, exchange, _ = found["choices"]
    assert [d["value"] for d in hold["takes_between"]] == pytest.approx(
        [(16.4952 / 1.05 - 3.0) / 0.9, (16.4952 / 0.95 - 3.0) / 0.9], rel=1e-4
    )
    first = 0.5 * 340.0 * 0.95 / (1.0 + 16.4952 / 0.95)
    assert exchange["stages"][0]["exchange_per_day"]["value"] == pytest.approx(first, rel=1e-4)
    largest = exchange["largest_changes"]["alkalinity"]
    assert 1.3 < largest["in_24_hours"]["value"] <= largest["most"]["value"] == pytest.approx(1.4)
    assert "perhaps 14 days to 16 days" in " ".join(plain(tmp_path))


def test_refusal_says_why(tmp_path: Path) -> None:
    said = ask(tmp_path, put(GOOD, measured='"9 dKH"'))
    assert said.status == 3
    assert said.codes == [("recovery_not_high", "change.measured")]
    assert "9 dKH is not above its target of 11 dKH" in said.words


def test_slip_of_the_keyboard_is_refused(tmp_path: Path) -> None:
    said = ask(tmp_path, put(GOOD, volume='"1,250 mL"'))
    assert said.status == 3
    assert said.codes[0][1] == "overdose.volume"


@pytest.mark.parametrize(
    ("text", "field", "start", "allowed"),
    [
        (put(GOOD, volume="1"), "overdose.volume", "volume =", "must be text in quotes"),
        (put(GOOD, cloudy='"yes"'), "signs.cloudy", "cloudy", "true or false"),
        (put(GOOD, name='"x"\ncolour = "red"'), "system.colour", "colour", "Allowed are: name, net_volume"),
        (GOOD.replace("[new_water]", "[water]"), "water", "[water]", "Allowed are: kind, now, system, change"),
        (put(GOOD, made_up_to=None), "additive.made_up_to", "[additive]", "is missing"),
        (put(GOOD, now='"today"'), "now", "now", "without quotes"),
    ],
)  # fmt: skip
def test_not_a_question(tmp_path: Path, text: str, field: str, start: str, allowed: str) -> None:
    said = ask(tmp_path, text)
    assert said.status == 2, said.out
    places = {name: line for line, name in said.problems}
    assert places[field] == line_with(text, start)
    assert allowed in said.err


def test_question_that_says_nothing_is_told_what_to_write(tmp_path: Path) -> None:
    said = ask(tmp_path, 'kind = "recovery"\n[system]\nnet_volume = "340 L"\n')
    assert said.status == 2
    assert said.problems == [(0, "change")]


@pytest.mark.parametrize(
    "extreme",
    [
        {"volume": '"1000 L"'},
        {"dissolved": '"0.00000000000001 g"', "measured": '"20 dKH"'},
        {"dissolved": '"1000000 g"', "net_volume": '"0.001 mL"'},
        {"net_volume": '"5000000 L"', "measured": '"300 dKH"'},
        {"most_per_day": '"0.0000000001 L per day"'},
        {"alkalinity": '"4 dKH"', "calcium": '"150 mg/L"'},
        {"volume_uncertainty": '"50 %"'},
    ],
)
def test_extremes_are_answered_in_finite_figures(tmp_path: Path, extreme: dict[str, str]) -> None:
    """Read strictly: no figure of the answer is infinite or none at all."""
    text = put(GOOD, **extreme)
    assert body(tmp_path, text)["value_now"]["value"] > 0.0
    assert plain(tmp_path, text)[0] == "First, in this order:"


@pytest.mark.parametrize("table", ["system", "new_water"])
def test_wrong_salinity_is_told_once(tmp_path: Path, table: str) -> None:
    place = GOOD.index(f"[{table}]")
    said = ask(tmp_path, GOOD[:place] + GOOD[place:].replace('salinity = "35"', 'salinity = "99"', 1))
    assert said.codes == [("out_of_range", f"{table}.salinity")]
