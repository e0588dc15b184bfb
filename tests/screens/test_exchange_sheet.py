"""The Exchange sheet in words and figures: by hand, safe to read, every refusal beside its field."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import exchange_fields
from evenwater.screens.exchange_fields import BUCKET, FIELDS, OF_WAY, WATER_WORDS
from evenwater.screens.exchange_given import dosed
from evenwater.screens.exchange_parts import listed
from tests.screens.exchange_asking import DKH, NEW, answered, given, hours_ago, kept_up, logged, plain, rows, shown
from tests.screens.exchange_asking import SYSTEM as TANK
from tests.screens.lint import faults, numbers, strings

PAIR = {"way": Typed("each"), "out": Typed("10", "L per day"), "in": Typed("9.8", "L per day")}
BAG = {
    "mix_volume": Typed("80", "L"), "label_mass": Typed("38", "g"), "label_water": Typed("1", "L"),
    "label_salinity": Typed("35", "ppt"),
}  # fmt: skip


def lines(given_lines: object) -> dict[str, str]:
    return {plain(line.what): plain(line.gives) for line in given_lines}


def test_bay_by_hand() -> None:
    """10 L a day of 340 L for 30 days leave exp(-300/340); of the 2 dKH above the new water as much, without use and dosing."""
    view = answered(corrections={"alkalinity": {"measured": Typed("9", "dKH"), "measured_at": hours_ago(1)}})
    left = math.exp(-300.0 / 340.0)
    assert float(view.figure) == pytest.approx(100.0 * left, abs=0.05)
    assert view.figure_unit == "%"
    row = rows(view)["alkalinity"]
    assert numbers(row.ends)[0] == pytest.approx(7.0 + 2.0 * left, abs=0.005)
    assert numbers(row.settles)[0] == 7.0
    assert plain(row.settles).endswith(f"half way after {34.0 * math.log(2.0):.0f} days")
    assert numbers(row.pace)[0] == pytest.approx(2.0 * (1.0 - math.exp(-10.0 / 340.0)), abs=0.0005)
    assert row.pace.startswith("falls by")
    said = numbers(plain(view.third))
    for share in (1.0 - math.exp(-70.0 / 340.0), 1.0 - left):
        assert any(abs(number - 100.0 * share) < 0.05 for number in said), said
    # Of 3 % more or less water.
    for volume in (340.0 * 0.97, 340.0 * 1.03):
        assert any(abs(number - 100.0 * math.exp(-300.0 / volume)) < 0.06 for number in said), said


def test_use_and_dosing_of_the_upkeep_run_on() -> None:
    """With use and dosing the value settles where Q_in*C_new/V + dosed - used is carried away by Q_out/V."""
    plan = kept_up()
    brought = dosed(plan)
    row = rows(answered(upkeep=plan))["alkalinity"]
    steady = (10.0 * 7.0 + 340.0 * (brought["alkalinity"] / DKH - 0.9)) / 10.0
    assert numbers(row.settles)[0] == pytest.approx(steady, abs=0.005)
    by_hand = 24.0 * 2.2 * 2.00024 / 340.0
    assert brought["alkalinity"] == pytest.approx(by_hand, rel=1e-4), "2.2 mL an hour of 2.00024 meq per mL"
    assert plain(row.moved_by).splitlines()[0] == "used 0.9 a day"
    assert plain(row.moved_by).splitlines()[1].startswith("added 0.87")


def test_salt_that_the_doses_leave_is_in_the_salinity() -> None:
    """Every equivalent made good with a two-part leaves a mole of NaCl: 0.1056 eq a day in 340 L, washed out by 10 L a day."""
    plan = kept_up()
    (drift,) = [drift for drift in plan.drifts if drift.name == "salinity"]
    row = rows(answered(upkeep=plan))["salinity"]
    assert numbers(row.settles)[0] == pytest.approx(35.0 + 34.0 * drift.gain, abs=0.05)
    by_hand = 0.0528 * 2.0 * 58.44 / (340.0 * 1.0226)
    assert drift.gain == pytest.approx(by_hand, rel=0.15), "the rest is what rounding down leaves of the uses"
    assert rows(answered())["salinity"].settles == "35\nwhere it is"


def test_dosing_plan_with_and_without_the_exchange() -> None:
    """The exchange takes Q*(C - C_new)/V of alkalinity more and brings as much calcium: so many mL more and less."""
    doses = {row.name: row for row in answered().dosing}
    without = 0.9 * DKH * 340.0 / 2.00024
    more = 10.0 * 2.0 * DKH / 2.00024
    alkalinity = doses["Alkalinity"]
    assert numbers(alkalinity.without)[0] == pytest.approx(without, abs=0.1)
    assert numbers(alkalinity.with_exchange)[0] == pytest.approx(without + more, abs=0.1)
    assert numbers(alkalinity.change)[0] == pytest.approx(more, abs=0.01)
    assert alkalinity.change.endswith("more")
    calcium = doses["Calcium"]
    assert numbers(calcium.change)[0] == pytest.approx(10.0 * 30.0 / 40.076, abs=0.01)
    assert calcium.change.endswith("less")
    assert answered().cautions, "what is dosed is handled with care, and that stands before the figures"


def test_unmatched_pair_by_hand() -> None:
    """With the level held, salinity settles at S_new*Q_in/Q_out; within 0.5 from 98.58 % to 101.42 %, rounded inwards."""
    view = answered(water={**NEW, **PAIR})
    pair = lines(view.pair)
    assert pair["Salinity settles, by the pair alone"] == "34.3"
    assert pair["New water to old water"] == "98 %"
    assert pair["Level by the pair alone"] == "200 mL a day"
    assert pair["Top-off that holds the level"].startswith("4.2 L")
    assert "98.6 % to 101.4 %" in plain(view.pair[0].how)
    assert any("not matched" in text for text in view.remarks)
    held = lines(answered(water={**NEW, **PAIR, "in": Typed("9.9", "L per day")}).pair)
    assert held["Salinity settles, by the pair alone"] == "34.65"


def test_jugs_by_hand() -> None:
    pair = {"old_jug": Typed("80", "L"), "new_jug": Typed("20", "L")}
    view = answered(water={**NEW, **pair})
    said = {line.what: plain(line.how) for line in view.pair}
    assert said["Old water, jug for a week"].endswith("is full after 8 days")
    assert said["New water, jug for a week"].endswith("lasts 2 days")
    assert lines(view.pair)["New water, jug for a week"].startswith("70 L")
    assert any("20 L" in plain(text) and "siphon" in text for text in view.remarks)


def test_a_batch_change_is_an_exchange_that_leaves_as_much() -> None:
    water = {
        **NEW,
        "way": Typed("as_much_as"),
        "as_much_as": Typed("20", "%"),
        "every_days": Typed("7"),
        "days": Typed("7"),
    }
    view = answered(water=water)
    assert float(view.figure) == pytest.approx(80.0)
    assert "20 % every week" in plain(view.third)


def test_bucket_by_the_label_and_after_a_test() -> None:
    """38 g in 1 L give 35: 80 L take 3.04 kg; at 34.6 they lack 0.4 of 35 of it."""
    first = answered(water={**NEW, **BAG})
    assert lines(first.bucket)["Salt mix for 80 L (litres) at 35"] == "3.04 kg"
    assert lines(first.bucket)["Temperature"] == "25 °C"
    assert any("Test the bucket" in text for text in first.remarks)
    short = lines(answered(water={**NEW, **BAG, "mix_measured": Typed("34.6", "ppt")}).bucket)
    assert numbers(short["Salt mix still to add"])[0] == pytest.approx(3040.0 * 0.4 / 35.0, abs=0.05)
    assert numbers(short["Or sodium chloride"])[0] == pytest.approx(0.4 * 80.0 * 1.0226, abs=0.2)
    far = lines(answered(water={**NEW, **BAG, "mix_measured": Typed("33", "ppt")}).bucket)
    assert "Or sodium chloride" not in far, "so much of it alone would shift the balance"
    strong = lines(answered(water={**NEW, **BAG, "mix_measured": Typed("36", "ppt")}).bucket)
    assert numbers(strong["Fresh water still to add"])[0] == pytest.approx(80.0 / 35.0, abs=0.01)
    exact = lines(answered(water={**NEW, **BAG, "mix_measured": Typed("35", "ppt")}).bucket)
    assert exact["Salinity"] == "as wanted"
    assert any("never water onto salt" in line for line in BUCKET)


def test_bucket_that_is_half_filled_in_keeps_nobody_from_the_rest() -> None:
    found = shown(given(water={**NEW, "mix_volume": Typed("80", "L"), "label_mass": Typed("a bag", "g")}))
    assert found.view.state == "answered"
    assert found.view.bucket == ()
    by_field = {m.path: m.code for m in found.view.messages}
    assert by_field["label_mass"] == "not_a_number"
    assert by_field["label_water"] == "missing"


# Limits


def test_new_water_may_move_nothing_by_more_than_its_hard_pace_either_way() -> None:
    fast = {"way": Typed("each"), "out": Typed("170", "L per day"), "in": Typed("170", "L per day")}
    unused = {"alkalinity": {"measured": Typed("9", "dKH"), "measured_at": hours_ago(1)}}
    rise = answered(corrections=unused, water={**NEW, **fast, "alkalinity": Typed("14", "dKH")})
    assert "Alkalinity would rise by" in rise.dangers[0]
    bars = {bar.code: bar for bar in rise.bars}
    assert bars["pace_alkalinity"].over
    assert bars["pace_alkalinity"].share == pytest.approx(5.0 * (1.0 - math.exp(-0.5)) / 1.4, rel=1e-6)
    fall = answered(corrections=unused, water={**NEW, **fast, "alkalinity": Typed("4", "dKH")})
    assert "Alkalinity would fall by" in fall.dangers[0]
    assert not answered().dangers


def test_new_water_apart_in_temperature_salinity_and_alkalinity_is_said() -> None:
    apart = {"temperature": Typed("20", "degC"), "salinity": Typed("33", "ppt"), "alkalinity": Typed("14", "dKH")}
    view = answered(water={**NEW, **apart})
    for said in ("20 °C", "33", "14 dKH"):
        assert any(said in plain(text) and "Common practice" in text for text in view.remarks), said
    over = {bar.code for bar in view.bars if bar.over}
    assert {"apart_temperature", "apart_salinity", "apart_alkalinity"} <= over


def test_salinity_measured_last_is_what_new_water_is_held_against() -> None:
    view = answered(readings={"salinity": logged("33.4", "ppt", 1)}, water={**NEW, "salinity": Typed("34.9", "ppt")})
    assert any("34.9" in text and "33.4" in text for text in view.remarks)


def test_a_tank_that_runs_over_is_refused_beside_the_pump() -> None:
    water = {**NEW, **PAIR, "in": Typed("20", "L per day")}
    view = shown(given(water=water)).view
    assert view.state == "refused"
    assert [(m.path, m.code) for m in view.messages] == [("in", "exchange_floods")]
    unknown = {name: typed for name, typed in TANK.items() if name != "evaporation"}
    assert any("runs over" in text for text in answered(system=unknown, water=water).dangers)


# States and fields


def test_without_a_flow_the_sheet_waits_for_it() -> None:
    still = {name: typed for name, typed in TANK.items() if name != "exchanged"}
    assert shown(given(system=still)).view.state == "empty"
    for way, names in OF_WAY.items():
        view = shown(given(system=still, water={"way": Typed(way)})).view
        assert view.state == "empty"
        assert {m.path for m in view.messages} == {names[0]}, way


@pytest.mark.parametrize(
    ("name", "typed"),
    [
        ("exchanged", Typed("ten", "L per day")), ("exchanged", Typed("5 gal per day")), ("days", Typed("0")),
        ("old_jug", Typed("-1", "L")), ("salinity", Typed("80", "ppt")), ("temperature", Typed("99", "degC")),
        ("alkalinity", Typed("much", "dKH")), ("nitrate", Typed("1")), ("nitrate_loss", Typed("200", "%")),
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_said_beside_its_field(name: str, typed: Typed) -> None:
    system = TANK | ({name: typed} if name == "exchanged" else {})
    readings = {"nitrate": logged("25", "mg/L as NO3", 1)}
    view = shown(given(system=system, water={**NEW, name: typed}, readings=readings)).view
    assert view.state == "refused"
    assert [m.path for m in view.messages] == [name]


def test_a_reading_that_cannot_be_read_says_where_it_stands() -> None:
    view = shown(given(corrections={"calcium": {"measured": Typed("much", "mg/L")}})).view
    assert view.state == "refused"
    assert view.messages[0].text.startswith("Calcium: ")
    assert view.messages[0].text.endswith("Stands on the Correct sheet.")


def test_unknown_volume_is_missing() -> None:
    view = shown(given(system={**TANK, "net_volume": Typed("")})).view
    assert view.state == "empty"
    assert any("net volume" in m.text for m in view.messages)


@pytest.mark.parametrize("name", FIELDS)
def test_every_field_has_words_for_undo(name: str) -> None:
    said = exchange_fields.undo_words(name)
    assert "_" not in said
    assert (name in WATER_WORDS) != (said.endswith("of the new water"))


# The chart


def test_chart_is_the_course_with_its_band_in_the_unit_that_was_typed() -> None:
    view = answered(corrections={"alkalinity": {"measured": Typed("3.2", "meq/L"), "measured_at": hours_ago(1)}})
    chart = view.charts["alkalinity"]
    assert chart.unit == "meq per L"
    new = 7.0 * DKH
    for volume, values in ((340.0, chart.values), (340.0 * 0.97, chart.low), (340.0 * 1.03, chart.high)):
        by_hand = new + (3.2 - new) * np.exp(-10.0 / volume * chart.days)
        assert values == pytest.approx(by_hand, rel=1e-5)
    assert (chart.days[0], chart.days[-1]) == (0.0, 30.0)
    assert chart.settles == pytest.approx(new, rel=1e-5)
    assert chart.new_water == pytest.approx(new, rel=1e-5)
    assert plain(chart.words_at(0)) == "now: 3.2 meq per L"
    assert plain(chart.words_at(-1)) == "after 30 days: 2.79 meq per L (2.78 to 2.8)"
    assert "settles at 2.5 meq per L" in plain(chart.spoken)


def test_chart_of_a_value_that_runs_out_stays_at_nothing() -> None:
    use = {"nitrate": {"measured": Typed("3", "mg/L as NO3"), "daily_use": Typed("1", "mg/L as NO3 per day")}}
    view = answered(corrections={"nitrate": {**use["nitrate"], "measured_at": hours_ago(1)}})
    chart = view.charts["nitrate"]
    assert chart.values.min() == 0.0
    assert chart.settles is None
    row = rows(view)["nitrate"]
    assert row.ends == "nothing left"
    assert row.settles.startswith("never: nothing left after")


def test_every_value_has_a_chart_in_the_order_of_the_rows() -> None:
    view = answered(readings={"magnesium": logged("1290", "mg/L", 1)})
    assert (
        list(view.charts)
        == [row.parameter for row in view.values]
        == ["alkalinity", "calcium", "magnesium", "salinity"]
    )


# Words


@pytest.mark.parametrize(
    "changes",
    [
        {},
        {"upkeep": True, "readings": {"nitrate": logged("25", "mg/L as NO3", 12), "salinity": logged("1.0264", "SG 20/20 degC", 1)}},
        {"water": {**NEW, **PAIR, **BAG, "temperature": Typed("20", "degC"), "old_jug": Typed("80", "L"), "new_jug": Typed("80", "L")}},
        {"water": {**NEW, **BAG, "mix_measured": Typed("34.6", "ppt"), "days": Typed("3650")}},
        {"system": {**TANK, "exchanged": Typed("0", "L per day")}},
        {"system": {**TANK, "exchanged": Typed("200", "US gal per day")}, "water": {"alkalinity": Typed("4.1", "meq/L")}},
    ],
)  # fmt: skip
def test_everything_is_safe_to_read(changes: dict[str, object]) -> None:
    if changes.get("upkeep"):
        changes = {**changes, "upkeep": kept_up()}
    view = answered(**changes)
    said = [*strings(replace(view, charts={})), *(text for chart in view.charts.values() for text in strings(chart))]
    said += [chart.words_at(point) for chart in view.charts.values() for point in (0, 1, -1)]
    for text in said:
        for line in text.splitlines():
            assert not faults(line)


def test_words_that_never_change_are_safe_to_read() -> None:
    assert not [fault for line in (*exchange_fields.AROUND, *BUCKET) for fault in faults(line)]


def test_lists_of_names() -> None:
    assert [listed(names) for names in ((), ("a",), ("a", "b"), ("a", "b", "c"))] == ["", "a", "a and b", "a, b and c"]


def test_every_path_of_the_question_leads_to_its_field() -> None:
    names = ("alkalinity", "nitrate")
    paths = {
        "exchange.per_day": "exchanged", "exchange.days": "days", "new_water.salinity": "salinity", "mixing.volume": "mix_volume",
        "mixing.measured": "mix_measured", "value.1.new_water": "alkalinity", "value.2.loss_per_day": "nitrate_loss",
        "value.2.now": "", "value.3.now": "", "value.x": "", "system.net_volume": "",
    }  # fmt: skip
    assert {path: exchange_fields.field_of(path, "", names) for path in paths} == paths
    assert exchange_fields.field_of("exchange.per_day", "each", names) == "out"
    assert exchange_fields.field_of("exchange.in", "each", names) == "in"
    assert exchange_fields.parameter_of("value.2.now", names) == "nitrate"
    assert exchange_fields.parameter_of("exchange.in", names) == ""
