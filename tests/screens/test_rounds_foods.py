"""Foods on the rounds: past the last day, near it, and jugs that run out; one line for each food."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta, timezone

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import rounds
from evenwater.screens.rounds import DUE, SOON, WRONG, Duty, KeptFood, Room
from tests.engine.asking import known
from tests.screens.foods import MASH, NOW, TODAY, changed
from tests.screens.lint import faults

DAY = timedelta(days=1)


def duties(*foods: KeptFood, now: datetime = NOW) -> tuple[Duty, ...]:
    return rounds.duties(Room({"bay": "North frag bay"}, (), (), (), (), foods=foods), known(), now)


def food(last: int | None = None, empty: int | None = None, given: bool = True) -> KeptFood:
    """Return the mash with its last day and the day it is empty in so many days from today."""
    days = (None if each is None else TODAY + each * DAY for each in (last, empty))
    return KeptFood("bay:1", "Mash", *days, given)


@pytest.mark.parametrize(
    ("kept", "urgency", "what"),
    [
        (food(last=-1), WRONG, "Stop Mash and throw it away"),
        (food(last=-1, given=False), DUE, "Throw Mash away"),
        (food(last=0), DUE, "Throw Mash away tonight"),
        (food(last=1), SOON, "Get new Mash"),
        (food(last=3), SOON, "Get new Mash"),
        (food(empty=3), SOON, "Get new Mash"),
        (food(empty=0), DUE, "Look how much Mash is left"),
        (food(empty=-5), DUE, "Look how much Mash is left"),
        (food(last=-1, empty=-5), WRONG, "Stop Mash and throw it away"),
        (food(last=2, empty=0), DUE, "Look how much Mash is left"),
    ],
)
def test_one_line_for_a_food(kept: KeptFood, urgency: str, what: str) -> None:
    (duty,) = duties(kept)
    assert (duty.urgency, duty.what) == (urgency, what)
    assert (duty.place, duty.sheet, duty.record, duty.about) == ("North frag bay", "Foods", "bay", "bay:1")
    assert duty.plain == duty.why
    assert not faults(duty.why)
    assert not faults(duty.what)


def test_nothing_is_said_of_what_is_far_or_not_known() -> None:
    assert duties(food(), food(last=4), food(empty=4), KeptFood("bay:2", "Dry", None, date.max)) == ()


def test_both_reasons_stand_in_one_line() -> None:
    (duty,) = duties(food(last=2, empty=0))
    assert duty.why == (
        "Its last day is Fri 27 Nov 2026. By the daily rate its jug would be empty since Wed 25 Nov 2026."
    )


def test_the_day_is_that_of_the_keeper() -> None:
    """At 23:30 in UTC it is the next day already two hours to the east."""
    late = datetime(2026, 11, 25, 23, 30, tzinfo=UTC)
    assert duties(food(last=0), now=late)[0].urgency == DUE
    assert duties(food(last=0), now=late.astimezone(timezone(2 * timedelta(hours=1))))[0].urgency == WRONG


def test_what_is_kept_of_a_record() -> None:
    found = rounds.kept_food("bay:1", MASH)
    assert found == KeptFood("bay:1", "Mash", date(2026, 12, 4), date(2026, 12, 15), True)
    assert found.system_id == "bay"
    paused = rounds.kept_food("bay:1", changed(MASH, paused=Typed("yes"), opened_on=Typed("soon")))
    assert paused == KeptFood("bay:1", "Mash", None, None, False)
