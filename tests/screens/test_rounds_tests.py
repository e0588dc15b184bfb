"""What is to be tested and why: old readings, readings that never move, a plan that asks, a clock that is wrong."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from evenwater.engine.quantities import Typed
from evenwater.screens import rounds
from evenwater.screens.rounds import DUE, SOON, Duty, Followed, LastReading, Room
from evenwater.screens.rounds_tests import alike
from tests.screens.asked import catalogue
from tests.screens.lint import faults

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
EMPTY = Room({"n": "North"}, (), (), (), ())
NBSP = "\u00a0"


def ago(**spans: float) -> datetime:
    return NOW - timedelta(**spans)


def lines(room: Room) -> tuple[Duty, ...]:
    found = rounds.duties(room, catalogue(), NOW)
    for duty in found:
        assert not faults(duty.plain)
    return found


def plan(retest_at: datetime | None) -> Followed:
    return Followed("ABC123-11", "n", "alkalinity", "inside", "", retest_at, ago(days=2), NOW + timedelta(days=9))


def test_three_alike_are_tested_with_a_fresh_kit() -> None:
    flat = LastReading("n", "alkalinity", ago(hours=2), 3, f"8.0{NBSP}dKH")
    (duty,) = lines(replace(EMPTY, readings=(flat,)))
    assert (duty.urgency, duty.what) == (DUE, "Test alkalinity again with a fresh kit")
    assert duty.why == f"The last 3 readings all say 8.0{NBSP}dKH."
    assert "dKH" not in duty.plain
    assert not lines(replace(EMPTY, readings=(replace(flat, same=2),)))


def test_old_and_alike_and_asked_for_is_one_line() -> None:
    flat = LastReading("n", "alkalinity", ago(days=4), 3, f"8.0{NBSP}dKH")
    (duty,) = lines(replace(EMPTY, readings=(flat,), plans=(plan(ago(hours=1)),)))
    assert duty.what == "Test alkalinity again with a fresh kit"
    assert duty.why == (
        f"The last 3 readings all say 8.0{NBSP}dKH. The last reading is 4 days old; it holds 3 days. "
        "Plan ABC123-11 asked for a test by Wed 25 Nov\u00a008:00."
    )
    assert duty.key == (rounds.TEST, "n", "alkalinity")


def test_alike_is_what_was_typed_with_the_same_kit() -> None:
    eight, drops = Typed("8.0", "dKH"), Typed("drops")
    same = {"value": eight, "kit": drops}
    assert alike([same, same, same]) == 3
    assert alike([same, same, {"value": Typed("8", "dKH"), "kit": drops}]) == 2, "typed otherwise, read anew"
    assert alike([same, same, {"value": Typed("8.0", "meq/L"), "kit": drops}]) == 2
    assert alike([same, {"value": eight, "kit": Typed("meter")}, same]) == 1, "another kit is a second opinion"
    assert alike([]) == 0


def test_a_plan_asks_for_its_test_until_it_is_made() -> None:
    fresh = LastReading("n", "alkalinity", ago(hours=3))
    asked = replace(EMPTY, readings=(fresh,), plans=(plan(ago(hours=1)),))
    (duty,) = lines(asked)
    assert (duty.urgency, duty.sheet, duty.subject) == (DUE, "Log", "alkalinity")
    assert duty.why == "Plan ABC123-11 asked for a test by Wed 25 Nov\u00a008:00."
    assert not lines(replace(asked, readings=(replace(fresh, at=ago(hours=1)),)))
    (soon,) = lines(replace(asked, plans=(plan(NOW + timedelta(hours=47)),)))
    assert (soon.urgency, soon.why) == (SOON, "Plan ABC123-11 asks for a test by Fri 27 Nov\u00a008:00.")
    assert not lines(replace(asked, plans=(plan(NOW + timedelta(hours=49)),)))
    assert not lines(replace(asked, plans=(plan(None),)))


def test_a_plan_without_any_reading_is_tested() -> None:
    (duty,) = lines(replace(EMPTY, plans=(plan(None),)))
    assert (duty.what, duty.why) == ("Test alkalinity", "No reading is in the log yet.")


def test_what_is_unknown_or_gone_is_left_out() -> None:
    there = LastReading("n", "alkalinity", ago(days=9))
    assert not lines(
        replace(EMPTY, readings=(replace(there, system_id="gone"), replace(there, parameter="unobtainium")))
    )
