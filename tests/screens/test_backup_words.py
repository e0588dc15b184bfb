"""What the window of backups says."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from evenwater.engine.reasons import Reason
from evenwater.screens import backup_words, room_words

MADE = datetime(2026, 11, 24, 9, 5, tzinfo=UTC)


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def test_a_line_says_when_what_and_how_much() -> None:
    row = backup_words.row("daily", MADE, 2_140_000, (3, 3861, MADE), None)
    assert (row.when, row.what) == ("Tue 24 Nov 2026 09:05", "Before the first edit of the day")
    assert plain(row.holds) == "3 systems, 3861 entries up to Tue 24 Nov 2026 09:05"
    assert plain(row.size) == "2.1 MB"
    assert row.usable


def test_one_is_one_and_nothing_has_no_newest() -> None:
    assert plain(backup_words.row("present", MADE, 0, (1, 1, MADE), None).holds).startswith("1 system, 1 entry up to")
    assert plain(backup_words.row("present", MADE, 0, (0, 0, None), None).holds) == "0 systems, 0 entries"


def test_a_copy_that_cannot_be_used_says_so_in_its_line() -> None:
    row = backup_words.row("before update", MADE, 900, None, Reason("store.copy_newer"))
    assert row.holds == room_words.sentence(Reason("store.copy_newer"))
    assert not row.usable


@pytest.mark.parametrize(
    ("entries", "edits", "cards", "said"),
    [
        ({}, 0, 0, "Nothing that the log holds now would go."),
        ({"reading": 1}, 0, 0, "From the log would go: 1 reading."),
        ({"dose": 9, "exchange": 1, "reading": 14}, 2, 0,
         "From the log would go: 9 doses, 1 water exchange, 14 readings and 2 changes of systems, jugs, pumps or corrections."),
        ({}, 1, 1, "From the log would go: 1 change of systems, jugs, pumps or corrections. 1 card in use would be void: take it down."),
        ({"note": 2}, 0, 2, "From the log would go: 2 notes. 2 cards in use would be void: take them down."),
    ],
)  # fmt: skip
def test_what_would_go_is_said(entries: dict[str, int], edits: int, cards: int, said: str) -> None:
    assert plain(backup_words.lost(entries, edits, cards)) == said


@pytest.mark.parametrize("code", ["full", "read_only", "cannot_open", "io", "locked", "damaged", "failed"])
def test_why_there_is_no_copy_of_the_day_is_said(code: str) -> None:
    said = backup_words.no_copy(Reason(f"store.{code}"))
    assert said.startswith("No copy of the log could be made today: ")
    assert "store." not in said


@pytest.mark.parametrize(
    "code", ["copy_gone", "copy_foreign", "copy_newer", "copy_damaged", "copy_target", "copy_full", "copy_not_written",
             "no_copies", "unsaved"],
)  # fmt: skip
def test_every_refusal_has_a_sentence(code: str) -> None:
    assert "(store." not in room_words.sentence(Reason(f"store.{code}", {"file": "x", "count": 1}))
