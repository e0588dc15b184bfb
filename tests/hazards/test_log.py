"""H14 to H18 and H26 as far as the log goes: what was given is there once, with its instant, and only that is summed."""

from __future__ import annotations

import inspect
import random
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.quantities import Typed
from evenwater.session import Document, EntryLog, Logged
from evenwater.store import Store
from tests.store.logged import NOON, dose, everything, later, note, plan, two_systems
from tests.store.writing import Times, added, card_for

# Each changes its clocks, two of them at midnight and one by half an hour; the days are of 2026 (tz database,
# https://www.iana.org/time-zones).
CHANGES = {
    "Europe/Berlin": ((3, 29), (10, 25)),
    "America/New_York": ((3, 8), (11, 1)),
    "America/Santiago": ((9, 6), (4, 4)),
    "Australia/Lord_Howe": ((10, 4), (4, 5)),
    "Africa/Cairo": ((4, 24), (10, 29)),
    "Pacific/Auckland": ((9, 27), (4, 5)),
}
BOTH = [(zone, day) for zone, days in CHANGES.items() for day in days]


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "evenwater.sqlite"


@pytest.fixture
def store(file: Path) -> Iterator[Store]:
    with two_systems(file, Times()) as made:
        yield made


@pytest.fixture
def windows(qapp: object, store: Store, file: Path) -> Iterator[tuple[Document, Document]]:
    """Two windows on one log."""
    one, two = Document(store), Document(Store.open(file))
    yield one, two
    two.close()


# H14: two people


def test_H14_the_second_window_is_asked_about_what_the_first_has_given(windows: tuple[Document, Document]) -> None:
    one, two = windows
    given_at = NOON + timedelta(minutes=10)
    assert one.log.log([dose("first", 12.5, given_at)]) is Logged.NEW
    (found,) = two.log.near_duplicates(dose("second", 12.5, given_at + timedelta(minutes=4))) or ()
    assert (found.at, found.who, found.fields["ml"]) == (given_at, "Ada", Typed("12.5", "mL"))
    assert two.log.last_doses("a", "left", 3) == [dose("first", 12.5, given_at)]
    assert two.log.doses_within("a", "left", 24, given_at + timedelta(minutes=4)) == 12.5


def test_H14_two_windows_that_log_in_turn_lose_and_double_nothing(windows: tuple[Document, Document]) -> None:
    chance, expected = random.Random(14), set[str]()
    for number in range(40):
        window = chance.choice(windows)
        entry = dose(f"{number if chance.random() < 0.8 else number // 2}", 1, later(number % 7))
        there = window.log.entry(entry.id)
        outcome = window.log.log([there or entry])
        assert outcome is (Logged.ALREADY if entry.id in expected else Logged.NEW)
        expected.add(entry.id)
    for window in windows:
        assert {entry.id for entry in window.log.entries("a")} == expected
        assert window.log.doses_within("a", "left", 24, NOON) == len(expected)


# H15: restart, failed save, double click


def test_H15_a_double_click_is_one_dose(windows: tuple[Document, Document]) -> None:
    one, _ = windows
    pressed = dose("made before the first press", 12.5)
    assert [one.log.log([pressed]) for _ in range(5)] == [Logged.NEW, *[Logged.ALREADY] * 4]
    assert one.log.doses_within("a", "left", 24, NOON) == 12.5


def test_H15_a_save_that_looked_as_if_it_failed_can_be_repeated_after_a_restart(store: Store, file: Path) -> None:
    store.log([dose("d", 12.5)])
    store.close()
    with Store.open(file) as again:
        assert again.log([dose("d", 12.5)]) is Logged.ALREADY
        assert again.doses_within("a", "left", 24, NOON) == 12.5


@pytest.mark.parametrize(
    ("minutes", "near"),
    [(-10.001, False), (-10, True), (-0.1, True), (0, True), (9.99, True), (10, True), (10.001, False), (600, False)],
)
def test_H15_the_same_amount_within_ten_minutes_is_asked_about(store: Store, minutes: float, near: bool) -> None:
    store.log([dose("given", 12.5)])
    assert store.near_duplicates(dose("again", 12.5, later(minutes))) == ([dose("given", 12.5)] if near else [])


def test_H15_only_the_same_amount_in_the_same_place_is_asked_about(store: Store) -> None:
    store.log([dose("given", 12.5)])
    for other in (dose("x", 12.4), dose("x", 12.5, pump="right"), dose("x", 12.5, system="b"), note("x")):
        assert store.near_duplicates(other) == []
    # Saving the very same entry again is no second dose.
    assert store.near_duplicates(dose("given", 12.5)) == []
    # However it was typed: 0.1 + 0.2 is not quite 0.3 in a computer.
    store.log([dose("sum", 0.1 + 0.2)])
    assert store.near_duplicates(dose("x", 0.3)) == [dose("sum", 0.1 + 0.2)]


def test_H15_what_was_taken_out_again_is_not_asked_about(store: Store) -> None:
    store.log([dose("given", 12.5)])
    store.remove_entries(["given"])
    assert store.near_duplicates(dose("again", 12.5)) == []
    store.undo()
    assert len(store.near_duplicates(dose("again", 12.5))) == 1


# H16: nothing is caught up


@pytest.mark.parametrize("gap_hours", [1, 5, 23, 24, 25, 48, 100, 14 * 24])
def test_H16_missed_doses_are_never_summed(store: Store, gap_hours: int) -> None:
    """Six doses a day by a plan, then a power cut: afterwards the log knows of what was given, and of nothing else."""
    store.start_plan(plan("P1"), card_for("P1", ""), note("start"))
    store.log([dose(f"{number}", 10, later(hours=4 * number)) for number in range(7)])
    again = later(hours=24 + gap_hours)
    given = [number for number in range(7) if 4 * number > gap_hours]
    assert store.doses_within("a", "left", 24, again) == 10 * len(given)
    assert [entry.id for entry in store.last_doses("a", "left", 9)] == [f"{number}" for number in range(6, -1, -1)]
    for hours in (1, 24, 1000):
        assert store.doses_within("a", "left", hours, again) <= 70
    assert len(everything(store)) == 8


def test_H16_no_question_can_be_asked_about_what_was_not_given() -> None:
    words = ("miss", "owed", "due", "catch", "skip", "planned", "remaining", "should")
    for owner in (Store, EntryLog):
        names = [name for name, _ in inspect.getmembers(owner, inspect.isfunction)]
        assert "doses_within" in names
        assert not [name for name in names if any(word in name for word in words)]


# H17: clocks that are changed


def _hours_of(zone: str, month: int, day: int) -> list[datetime]:
    """Return the wall times of each half hour of a local day and the night after it, those that are there twice twice."""
    there, at, times = ZoneInfo(zone), datetime(2026, month, day, tzinfo=ZoneInfo(zone)).astimezone(UTC), []
    while (local := at.astimezone(there)).date() <= datetime(2026, month, day).date() + timedelta(days=1):  # noqa: DTZ001
        times.append(local)
        at += timedelta(minutes=30)
    return times


@pytest.mark.parametrize(("zone", "day"), BOTH, ids=str)
def test_H17_doses_around_a_change_of_clocks_keep_their_order_and_distance(
    store: Store, zone: str, day: tuple[int, int]
) -> None:
    times = _hours_of(zone, *day)
    elapsed = (times[-1].astimezone(UTC) - times[0].astimezone(UTC)).total_seconds() / 3600
    # 23 or 25 hours and a day of 24, less the last half hour; on one island half an hour instead of one.
    assert abs(elapsed - 47.5) in (0.5, 1.0)
    order = list(range(len(times)))
    random.Random(17).shuffle(order)
    store.log([dose(f"{number:03}", 1, times[number]) for number in order])
    found = store.entries("a")
    assert [entry.id for entry in found] == [f"{number:03}" for number in range(len(times))]
    apart = {(later_one.at - one.at) for one, later_one in pairwise(found)}
    assert apart == {timedelta(minutes=30)}
    assert all(entry.at.tzinfo is UTC for entry in found)
    at_s, _ = store.columns("a", "left", "dose")
    assert set((at_s[1:] - at_s[:-1]).tolist()) == {1800.0}


@pytest.mark.parametrize(("zone", "day"), BOTH, ids=str)
def test_H17_a_day_for_the_limit_is_24_hours_whatever_the_clock_shows(
    store: Store, zone: str, day: tuple[int, int]
) -> None:
    times = _hours_of(zone, *day)
    store.log([dose(f"{number:03}", 1, moment) for number, moment in enumerate(times)])
    for number, moment in enumerate(times):
        # Half hours less than 24 hours before or after, the one itself among them.
        expected = min(number, 47) + 1 + min(len(times) - 1 - number, 47)
        assert store.doses_within("a", "left", 24, moment) == expected
        assert store.doses_within("a", "left", 24, moment.astimezone(UTC)) == expected


@pytest.mark.parametrize("zone", CHANGES)
def test_H17_the_hour_that_is_there_twice_holds_two_doses(store: Store, zone: str) -> None:
    month, day = next(d for d in CHANGES[zone] if len(_hours_of(zone, *d)) > 96)
    hours = _hours_of(zone, month, day)
    first, second = next(
        (a, b) for a in hours for b in hours if a.replace(fold=0) == b.replace(fold=0) and b.fold > a.fold
    )
    store.log([dose("first", 12.5, first), dose("second", 12.5, second)])
    assert [entry.id for entry in store.entries("a")] == ["first", "second"]
    # On the wall it is the same minute, but half an hour or an hour lies between: no duplicate.
    assert store.near_duplicates(dose("new", 12.5, second)) == [dose("second", 12.5, second)]


# H18: the turn of the day


def test_H18_a_dose_before_midnight_counts_after_it(store: Store) -> None:
    before, after = (datetime(2026, 11, 25, 23, 59, tzinfo=UTC), datetime(2026, 11, 26, 0, 1, tzinfo=UTC))
    store.log([dose("before", 20, before)])
    assert store.doses_within("a", "left", 24, after) == 20
    store.log([dose("after", 20, after)])
    assert store.doses_within("a", "left", 24, after) == 40
    assert store.doses_within("a", "left", 24, before + timedelta(hours=24)) == 20
    assert store.doses_within("a", "left", 24, after + timedelta(hours=24)) == 0
    assert store.doses_within("a", "right", 24, after) == store.doses_within("b", "left", 24, after) == 0


def test_H18_one_dose_a_day_at_the_same_minute_is_one_dose_a_day(store: Store) -> None:
    store.log([dose(f"{day}", 50, later(hours=24 * day)) for day in range(5)])
    assert store.doses_within("a", "left", 24, later(hours=48)) == 50


def test_H18_a_clock_that_was_set_back_hides_no_dose(store: Store) -> None:
    store.log([dose("given", 50, later(hours=2))])
    assert store.doses_within("a", "left", 24, later()) == 50


@settings(max_examples=40, deadline=None)
@given(
    doses=st.lists(st.tuples(st.integers(0, 4000), st.integers(0, 40)), max_size=25),
    now=st.integers(-100, 4100),
    hours=st.sampled_from([1, 6, 24]),
)
def test_H18_no_span_of_the_hours_around_now_holds_more_than_is_said(
    doses: list[tuple[int, int]], now: int, hours: int
) -> None:
    with Store.open_memory() as store:
        store.fill(added("a"), [dose(f"{n}", ml, later(minute)) for n, (minute, ml) in enumerate(doses)])
        said = store.doses_within("a", "left", hours, later(now))
    width = 60 * hours
    spans = [
        sum(ml for minute, ml in doses if start <= minute < start + width) for start in range(now - width + 1, now + 1)
    ]
    assert said >= max(spans)
    before = sum(ml for minute, ml in doses if now - width < minute <= now)
    after = sum(ml for minute, ml in doses if now < minute < now + width)
    assert said == before + after


# H26: an old card on the stand


def test_H26_a_plan_in_force_has_the_only_card_that_may_be_followed(store: Store) -> None:
    for number in range(1, 4):
        store.start_plan(plan(f"P{number}", later(number)), card_for(f"P{number}", ""), note(f"start {number}"))
        assert [each.plan_id for each in store.plans("a")] == [f"P{number}"]
        assert [card.plan_id for card in store.cards("in use")] == [f"P{number}"]
    # The old ones are shown until somebody says that they were taken down.
    assert [card.plan_id for card in store.cards("void")] == ["P1", "P2"]
    store.set_card_state("P1", "removed")
    assert [card.plan_id for card in store.cards("void")] == ["P2"]


def test_H26_whatever_is_undone_and_done_again_no_card_comes_back(store: Store) -> None:
    chance, out_of_use, made = random.Random(26), set[str](), 0
    for _ in range(60):
        act = chance.randrange(5)
        live = store.plans("a")
        if act == 0:
            made += 1
            new = plan(f"P{made}", later(made), parameter=chance.choice(("alkalinity", "calcium")))
            store.start_plan(new, card_for(new.plan_id, "", parameter=new.parameter), note(f"start {made}"))
        elif act == 1 and live:
            made += 1
            store.end_plan(chance.choice(live).plan_id, later(made), "", note(f"end {made}"))
        elif act in (2, 3):
            store.undo()
        else:
            store.redo()
        in_use = {card.plan_id for card in store.cards("in use")}
        assert in_use <= {each.plan_id for each in store.plans("a")}
        assert not in_use & out_of_use
        out_of_use |= {card.plan_id for card in store.cards()} - in_use
    assert made > 10
    assert out_of_use
