"""H16, H23, H24, H25: jugs that run out, lines with air in them, jugs that run in, and what is missed while nobody is there."""

from __future__ import annotations

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import absence_view, jug_danger, jug_delivery, jugs_sheet
from evenwater.screens.rounds_room import Room
from tests.screens.asked import catalogue
from tests.screens.jug_room_making import DAY, NOW, PER_DAY, TANK, drawer, jug, level


def spaced(text: str) -> str:
    return text.replace("\u00a0", " ")


def test_H16_doses_missed_in_an_absence_are_counted_and_never_made_up() -> None:
    room = Room({}, (), (), (), ())
    view = absence_view.view("2027-01-10 09:00", (jug(level(0.0, 1000.0)),), room, catalogue(), NOW)
    (row,) = view.rows
    # 1000 mL are 500 doses of 2 mL; of 46 days with 24 doses each the rest is left out.
    assert "after that 604 doses are left out" in spaced(row.why)
    assert view.rule == "Missed doses are never made up: go on with the next one, as large as ever."


def test_H23_a_refill_without_priming_stays_in_sight_until_the_line_is_primed() -> None:
    air = jugs_sheet.page(jug(level(1.0, 1000.0, before=100.0)), catalogue(), NOW)
    assert air.unprimed
    assert any("not primed after the refill" in note for note in air.notes)
    assert next(line for line in air.checklist if line.code == "line_primed").state == "no"
    liquid = jugs_sheet.page(jug(level(1.0, 1000.0, before=100.0, primed=True)), catalogue(), NOW)
    assert not liquid.unprimed
    assert next(line for line in liquid.checklist if line.code == "line_primed").state == "yes"


@pytest.mark.parametrize(("days", "low"), [(4.9, True), (5.0, False), (5.1, False)])
def test_H24_a_jug_is_low_below_five_days(days: float, low: bool) -> None:
    kept = jug(level(0.0, days * PER_DAY))
    assert jugs_sheet.row(kept, catalogue(), NOW).low is low
    assert any("The jug is low" in note for note in jugs_sheet.page(kept, catalogue(), NOW).notes) is low


def test_H24_the_date_is_when_the_last_of_it_is_given() -> None:
    kept = jug(level(2.0, 480.0))
    assert kept.contents.runs_out == NOW + 8 * DAY
    assert jugs_sheet.row(kept, catalogue(), NOW).refill == "refill before Thu 3 Dec"


def test_H25_a_level_that_falls_too_fast_says_stop_before_everything() -> None:
    kept = jug(level(2.0, 900.0), level(0.0, 300.0))
    view = jugs_sheet.page(kept, catalogue(), NOW)
    assert "Stop at once: lift the outlet out of the water" in view.stop
    assert view.check.steps[0].startswith("Lift the outlet out of the water")
    assert view.check.flow is None
    row = jugs_sheet.row(kept, catalogue(), NOW, view.check)
    assert row.stop
    assert row.refill == ""


def test_H25_the_whole_jug_is_reckoned_for_every_system_with_the_largest_safe_one() -> None:
    small = {**TANK, "name": Typed("Nano"), "net_volume": Typed("40", "L")}
    both = jug(drawers=(drawer(), drawer(5.0, system_id="b", name="Nano", system=small)))
    rows, _ = jug_danger.runs_in(both, catalogue())
    assert [row.system for row in rows] == ["North frag bay", "Nano"]
    # A litre holds 2000 meq; 340 L rise by 5.88 meq per L, which is 16.5 dKH, from 7.85.
    assert "from 7.85 dKH (as tested) to 24.3 dKH" in spaced(rows[0].what)
    # The hard top of 14 dKH leaves 6.15 dKH, 2.2 meq per L, 747 meq, 373 mL of 2 meq per mL.
    assert "largest safe jug 373 mL" in spaced(rows[0].size)
    assert all(row.harms for row in rows)


def test_H25_an_untested_tank_counts_at_the_top_of_its_range() -> None:
    (row,), _ = jug_danger.runs_in(jug(drawers=(drawer(tested={}),)), catalogue())
    assert "from 11 dKH (taken for it, not tested)" in spaced(row.what)


def test_H25_the_checklist_is_shown_and_a_no_is_a_warning() -> None:
    codes = [line.code for line in jug_danger.checklist(jug(), catalogue())]
    assert codes[:2] == ["outlet_above_water", "jug_below_outlet"]
    assert {line.state for line in jug_danger.checklist(jug(), catalogue()) if line.ticked} == {""}
    assert jug_danger.warnings(jug())[1] != ()
    bad = jug(stock={"jug_below_outlet": Typed("no"), "outlet_above_water": Typed("yes")})
    (warning,), unchecked = jug_danger.warnings(bad)
    assert "stands above its outlet" in warning
    assert unchecked == ()


def test_H25_a_level_that_falls_without_a_dose_known_is_told() -> None:
    view = jug_delivery.view(jug(level(2.0, 900.0), level(0.0, 600.0), drawers=()), NOW)
    assert jug_delivery.summary(view) == ""
    assert "lift the outlet out of the water at once" in view.notes[0]
