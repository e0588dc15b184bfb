"""What a system's records and its log say for an exchange: values now with their age, use, foods and jugs."""

from __future__ import annotations

import math
from datetime import timedelta

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import exchange_given
from evenwater.screens.exchange_given import CORRECT, SYSTEM, Newest
from tests.engine.asking import NOW, known
from tests.screens.exchange_asking import DKH, NEW, answered, given, hours_ago, logged, plain, rows
from tests.screens.exchange_asking import SYSTEM as TANK
from tests.screens.lint import numbers


def test_the_newer_of_reading_and_correction_counts() -> None:
    older, newer = logged("8", "dKH", 2), logged("8.2", "dKH", 0.1)
    correction = {"measured": Typed("9", "dKH"), "measured_at": hours_ago(5)}
    assert exchange_given.newest(correction, older) == Newest(Typed("9", "dKH"), NOW - timedelta(hours=5), CORRECT)
    assert exchange_given.newest(correction, newer) == newer
    undated = {"measured": Typed("9", "dKH")}
    assert exchange_given.newest(undated, newer) == newer
    alone = exchange_given.newest(undated, None)
    assert alone == Newest(Typed("9", "dKH"), None, CORRECT)
    assert exchange_given.newest({}, newer) == newer
    assert exchange_given.newest({}, None) is None


def test_age_of_every_reading_is_said_and_the_old_ones_are_named() -> None:
    readings = {"nitrate": logged("25", "mg/L as NO3", 12), "phosphate": logged("0.05", "mg/L as PO4", 2)}
    view = answered(readings=readings)
    found = rows(view)
    assert plain(found["alkalinity"].age) == "5 h ago"
    assert (plain(found["nitrate"].age), found["nitrate"].stale) == ("12 days ago: old", True)
    assert (plain(found["phosphate"].age), found["phosphate"].stale) == ("2 days ago", False)
    (old,) = [text for text in view.remarks if "too old" in text]
    assert "nitrate (12 days ago, 7 days at most)" in plain(old)
    undated = answered(corrections={"calcium": {"measured": Typed("400", "mg/L")}})
    assert rows(undated)["calcium"].age == "not said when"
    assert any("when this was measured: calcium" in text for text in undated.remarks)


def test_salinity_is_there_from_the_system_or_assumed() -> None:
    assert rows(answered())["salinity"].age == "from the system's own fields"
    bare = {name: typed for name, typed in TANK.items() if name != "salinity"}
    assert rows(answered(system=bare))["salinity"].age == "assumed"
    raw = exchange_given.raw_question(given(corrections={}, system={**TANK, "calcium": Typed("410", "mg/L")}), known())
    assert [(row["parameter"], row["read_from"]) for row in raw["value"]] == [("calcium", SYSTEM), ("salinity", SYSTEM)]


def test_new_water_that_nobody_tested_is_natural_seawater_and_that_is_said_once() -> None:
    readings = {"magnesium": logged("1290", "mg/L", 1), "nitrate": logged("5", "mg/L as NO3", 1)}
    view = answered(readings=readings)
    assert rows(view)["magnesium"].new_water == "1314\nassumed"
    assert rows(view)["calcium"].new_water == "430"
    (said,) = [text for text in view.remarks if "natural seawater is assumed" in text]
    assert "magnesium and nitrate" in said


def test_use_is_the_typed_one_else_the_log_s() -> None:
    learned = {"alkalinity": Typed("2", "dKH per day"), "magnesium": Typed("3", "mg/L per day")}
    view = answered(learned=learned, readings={"magnesium": logged("1290", "mg/L", 1)})
    assert plain(rows(view)["alkalinity"].moved_by) == "used 0.9 a day"
    assert plain(rows(view)["magnesium"].moved_by) == "used 3 a day, from the log"


def test_foods_count_only_where_no_use_was_found_by_testing() -> None:
    food = {
        "name": Typed("Mash"), "per_day": Typed("10", "mL per day"), "says": Typed("per_ml"), "nitrogen": Typed("5", "mg/mL"),
        "phosphorus": Typed("0.5", "mg/mL"),
    }  # fmt: skip
    nitrate = {"nitrate": logged("5", "mg/L as NO3", 1)}
    fed = rows(answered(readings=nitrate, foods=(food,)))
    brought = 10.0 * 5.0 * 62.0049 / 14.0067 / 340.0
    assert numbers(fed["nitrate"].moved_by)[0] == pytest.approx(brought, rel=2e-3)
    assert plain(fed["alkalinity"].moved_by) == "used 0.9 a day", "nitrification is in the use that was measured"
    tested = rows(answered(readings=nitrate, foods=(food,), learned={"nitrate": Typed("0.1", "mg/L as NO3 per day")}))
    assert plain(tested["nitrate"].moved_by) == "used 0.1 a day, from the log"
    unused = {"alkalinity": {"measured": Typed("9", "dKH"), "measured_at": hours_ago(1)}}
    taken = rows(answered(corrections=unused, foods=(food,)))["alkalinity"]
    assert numbers(taken.moved_by)[0] == pytest.approx(brought / 62.0049 / DKH, rel=2e-3)
    unread = given(foods=(food, {"name": Typed("Flakes"), "per_day": Typed("x")}))
    assert list(exchange_given.unread_foods(unread, known())) == ["Flakes"]


def test_share_lost_to_the_filter_shifts_where_it_settles() -> None:
    """25 mg/L with 1 % a day lost and new water without any goes by exp(-(Q/V + k)*t)."""
    water = {**NEW, "nitrate": Typed("0", "mg/L as NO3"), "nitrate_loss": Typed("1", "%")}
    row = rows(answered(readings={"nitrate": logged("25", "mg/L as NO3", 1)}, water=water))["nitrate"]
    assert numbers(row.ends)[0] == pytest.approx(25.0 * math.exp(-(10.0 / 340.0 + 0.01) * 30.0), abs=0.01)
    assert "taken 1 % a day" in plain(row.moved_by)


@pytest.mark.parametrize(
    "batch",
    [
        {}, {"chemical": Typed("sodium carbonate anhydrous")}, {"chemical": Typed("potassium iodide"), "dissolved": Typed("1", "g"), "made_up_to": Typed("1", "L")},
    ],
)  # fmt: skip
def test_a_jug_that_does_not_help_is_left_out_and_refuses_nothing(batch: dict[str, Typed]) -> None:
    view = answered(batches={"alkalinity": batch})
    assert view.dosing == ()


def test_a_bottle_is_reckoned_by_its_label() -> None:
    """5 mL raise 100 L by 1 dKH: 0.9 dKH in 340 L take 15.3 mL."""
    label = {"label_dose": Typed("5", "mL"), "label_water": Typed("100", "L"), "label_raises": Typed("1", "dKH")}
    (row,) = answered(batches={"alkalinity": label}).dosing
    assert numbers(row.without)[0] == pytest.approx(15.3, abs=0.05)
