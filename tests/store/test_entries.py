"""What an entry is, how it comes back, and every question that can be asked of the log."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.engine.quantities import Typed
from evenwater.store import ENTRY_KINDS, Entry, RemoveRecord, Step, Store, content_id
from evenwater.store.entries import fields_of, instant, micros, text_of
from tests.store.logged import NOON, dose, everything, later, note, reading, two_systems
from tests.store.writing import Times


@pytest.fixture
def store(file: Path, times: Times) -> Iterator[Store]:
    with two_systems(file, times) as made:
        yield made


# The value


@pytest.mark.parametrize(
    "wrong",
    [
        {"id": ""},
        {"kind": "rumour"},
        {"at": datetime(2026, 11, 25, 12, 0)},  # noqa: DTZ001  (that is what is refused)
        {"at": datetime.max.replace(tzinfo=UTC)},
        {"at": datetime.min.replace(tzinfo=UTC)},
        {"value": math.nan},
        {"value": math.inf},
        {"kind": "dose", "value": None},
        {"kind": "dose", "value": -0.1},
    ],
    ids=str,
)
def test_an_entry_that_could_not_be_counted_cannot_be_made(wrong: dict[str, object]) -> None:
    right: dict[str, object] = {"id": "e", "system_id": "a", "kind": "reading", "subject": "ph", "at": NOON, "value": 8}
    Entry(**right)  # type: ignore[arg-type]
    with pytest.raises(ValueError, match=r"\w"):
        Entry(**{**right, **wrong})  # type: ignore[arg-type]


def test_what_was_given_to_an_entry_is_not_changed_through_the_back_door() -> None:
    fields = {"value": Typed("6,8")}
    entry = Entry("e", "a", "reading", "ph", NOON, fields=fields)
    fields["value"] = Typed("9")
    assert entry.fields == {"value": Typed("6,8")}
    with pytest.raises(TypeError):
        entry.fields["value"] = Typed("9")  # type: ignore[index]


def test_the_instant_is_kept_whatever_zone_it_is_said_in() -> None:
    there = datetime(2026, 11, 25, 12, 0, 0, 123_456, ZoneInfo("Pacific/Auckland"))
    entry = reading("e", at=there)
    assert entry.at == there
    assert entry.at.tzinfo is UTC
    assert entry == reading("e", at=there.astimezone(timezone(timedelta(hours=-3))))


@given(st.datetimes(datetime(1, 1, 2), datetime(9998, 12, 30), timezones=st.just(UTC)))  # noqa: DTZ001
def test_microseconds_and_instants_are_the_same_to_the_last(moment: datetime) -> None:
    assert instant(micros(moment)) == moment


Words = st.text(st.characters(exclude_categories=["Cs"]), max_size=8)


@given(st.dictionaries(Words, st.builds(Typed, Words, Words, Words), max_size=4))
def test_what_was_typed_is_written_and_read_character_by_character(fields: dict[str, Typed]) -> None:
    assert fields_of(text_of(fields)) == fields


def test_the_id_of_contents_is_the_same_everywhere_and_changes_with_each_of_them() -> None:
    same = ("a", "reading", "alkalinity", NOON, "6,8", "dKH")
    berlin = NOON.astimezone(ZoneInfo("Europe/Berlin"))
    # As it was made when the first log was imported; another would add everything a second time.
    assert content_id(*same) == content_id(*same[:3], berlin, *same[4:]) == "ed14ac423aa5524abe06d7ab129d6823"
    others = [
        ("b", *same[1:]),
        ("a", "dose", *same[2:]),
        ("a", "reading", "calcium", *same[3:]),
        (*same[:3], later(1), *same[4:]),
        (*same[:4], "6.8", "dKH"),
        (*same[:5], "meq/L"),
        # No two contents run into each other.
        ("a", "reading", "alkalinity", NOON, "6,8dKH", ""),
    ]
    assert len({content_id(*other) for other in (same, *others)}) == len(others) + 1


# Coming back


def test_an_entry_comes_back_as_it_was_typed(store: Store, file: Path, times: Times) -> None:
    typed = {"value": Typed(" 6,80\u2009", "dKH", "meq/L"), "kit": Typed("drops", "", "x"), "empty": Typed("")}
    said = Entry("e", "a", "reading", "alkalinity", later(1 / 7), "Zoë", typed, 0.1 + 0.2)
    store.log([said])
    with Store.open(file, times.clock()) as again:
        (found,) = again.entries("a")
    assert found == said
    assert found.value == 0.1 + 0.2
    assert found.logged_at == times.instant
    assert again is not store


def test_the_number_is_never_taken_for_what_was_typed(store: Store) -> None:
    store.log([Entry("e", "a", "reading", "alkalinity", NOON, "Ada", {"value": Typed("6,8", "dKH")}, 2.43)])
    assert store.entries("a")[0].fields["value"] == Typed("6,8", "dKH")


# Questions


@pytest.fixture
def filled(store: Store) -> Store:
    entries = [
        reading(f"r{n:02}", 6.0 + n / 10, later(hours=n), "alkalinity" if n % 2 else "calcium") for n in range(20)
    ]
    entries += [dose(f"d{n}", n, later(hours=n), "left" if n < 4 else "right") for n in range(6)]
    entries += [note("n0", at=later(hours=3.5)), reading("b0", 400, NOON, "calcium", "b")]
    entries += [reading("gone", 9.9, later(hours=99)), reading("none", None, later(hours=30))]
    store.log(entries)
    store.remove_entries(["gone"])
    return store


def test_a_stretch_of_time_begins_with_its_first_instant_and_ends_before_its_last(filled: Store) -> None:
    found = filled.entries("a", ("reading",), "alkalinity", later(hours=3), later(hours=7))
    assert [entry.id for entry in found] == ["r03", "r05"]
    assert filled.entries("a", ("reading",), "alkalinity", later(hours=7), later(hours=3)) == []


def test_all_kinds_and_subjects_come_in_the_order_of_time(filled: Store) -> None:
    found = filled.entries("a")
    assert len(found) == 28
    assert found == sorted(found, key=lambda entry: (entry.at, entry.id))
    assert filled.entries("a", newest_first=True) == found[::-1]
    assert [e.id for e in filled.entries("a", since=later(hours=3), until=later(hours=4))] == ["d3", "r03", "n0"]
    assert {entry.kind for entry in filled.entries("a", ("dose", "note"))} == {"dose", "note"}


@pytest.mark.parametrize("newest_first", [True, False])
@pytest.mark.parametrize("limit", [0, 1, 5, 100])
def test_a_limit_gives_the_beginning_of_the_whole_answer(filled: Store, limit: int, newest_first: bool) -> None:
    whole = filled.entries("a", newest_first=newest_first)
    assert filled.entries("a", newest_first=newest_first, limit=limit) == whole[:limit]


def test_a_wall_time_is_no_question(filled: Store) -> None:
    wall = datetime(2026, 11, 25, 12, 0)  # noqa: DTZ001
    for question in (
        lambda: filled.entries("a", since=wall),
        lambda: filled.entries("a", until=wall),
        lambda: filled.columns("a", "alkalinity", since=wall),
        lambda: filled.doses_within("a", "left", 24, wall),
    ):
        with pytest.raises(ValueError, match="zone"):
            question()


def test_the_newest_of_a_series_passes_over_what_was_removed(filled: Store) -> None:
    newest = filled.latest("a", "reading", "alkalinity")
    assert newest is not None
    assert newest.id == "none"
    assert filled.latest("a", "reading", "magnesium") is None
    assert filled.latest("nowhere", "reading") is None
    assert {subject: entry.id for subject, entry in filled.latest_by_subject("a", "reading").items()} == {
        "alkalinity": "none",
        "calcium": "r18",
    }


def test_the_newest_of_all_is_the_newest_of_each(filled: Store) -> None:
    found = filled.latest_of_all("reading")
    assert [(e.system_id, e.subject, e.id) for e in found] == [
        ("a", "alkalinity", "none"),
        ("a", "calcium", "r18"),
        ("b", "calcium", "b0"),
    ]
    assert found == [e for system in ("a", "b") for e in filled.latest_by_subject(system, "reading").values()]
    assert [e.id for e in filled.latest_of_all("dose")] == ["d3", "d5"]
    assert filled.latest_of_all("exchange") == []


def test_a_removed_system_is_not_among_all_and_keeps_its_entries(filled: Store) -> None:
    before = everything(filled)
    filled.apply(Step("remove", (RemoveRecord("a"),)))
    assert [e.system_id for e in filled.latest_of_all("reading")] == ["b"]
    filled.undo()
    assert everything(filled) == before


def test_of_two_at_one_instant_the_last_by_id_is_the_newest_everywhere(store: Store) -> None:
    store.log([reading("x2", 7.0), reading("x1", 8.0)])
    assert [e.id for e in store.latest_of_all("reading")] == ["x2"]
    newest = store.latest("a", "reading")
    assert newest is not None
    assert newest.id == "x2"
    store.remove_entries(["x2"])
    assert [e.id for e in store.latest_of_all("reading")] == ["x1"]


def test_a_chart_gets_seconds_and_values_and_nothing_without_a_value(filled: Store) -> None:
    at_s, values = filled.columns("a", "alkalinity")
    assert at_s.dtype == values.dtype == np.float64
    assert values == pytest.approx([6.0 + n / 10 for n in range(1, 20, 2)])
    assert at_s.tolist() == [later(hours=n).timestamp() for n in range(1, 20, 2)]
    assert filled.columns("a", "left", "dose")[1].tolist() == [0.0, 1.0, 2.0, 3.0]
    assert filled.columns("a", "alkalinity", since=later(hours=3), until=later(hours=7))[1] == pytest.approx([6.3, 6.5])
    for empty in filled.columns("a", "magnesium"):
        assert empty.shape == (0,)


def test_entries_are_counted_by_kind(filled: Store) -> None:
    assert {kind: filled.count("a", kind) for kind in ENTRY_KINDS} == {
        "reading": 21, "dose": 6, "exchange": 0, "note": 1, "calibration": 0, "batch": 0,
    }  # fmt: skip


def test_the_last_doses_come_newest_first(filled: Store) -> None:
    assert [entry.id for entry in filled.last_doses("a", "left", 3)] == ["d3", "d2", "d1"]
    assert [entry.id for entry in filled.last_doses("a", "right", 3)] == ["d5", "d4"]
    assert [entry.id for entry in filled.last_doses("a", "", 3)] == ["d5", "d4", "d3"]


def test_one_entry_is_found_by_its_id_while_it_is_in_force(filled: Store) -> None:
    found = filled.entry("d3")
    assert found == dose("d3", 3, later(hours=3))
    assert filled.entry("gone") is None
    assert filled.entry("never") is None
