"""The window of backups in words: what a copy of the log is, what it holds, and what would be lost with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine.reasons import Reason
from evenwater.screens.room_words import sentence
from evenwater.screens.shown import date_words, significant, with_unit
from evenwater.screens.terms import listed
from evenwater.wording import marked, say, say_all, say_many

PRESENT = "present"
_KINDS = {
    PRESENT: marked("The log as it is now"),
    "daily": marked("Before the first edit of the day"),
    "before update": marked("Before an update of the program"),
    "before restoring": marked("Before a copy was restored"),
}
_ENTRIES: dict[str, Callable[[int], str]] = {
    "reading": lambda n: say_many("{n}\u00a0reading", "{n}\u00a0readings", n),
    "dose": lambda n: say_many("{n}\u00a0dose", "{n}\u00a0doses", n),
    "exchange": lambda n: say_many("{n}\u00a0water exchange", "{n}\u00a0water exchanges", n),
    "note": lambda n: say_many("{n}\u00a0note", "{n}\u00a0notes", n),
    "calibration": lambda n: say_many("{n}\u00a0calibration", "{n}\u00a0calibrations", n),
    "batch": lambda n: say_many("{n}\u00a0batch", "{n}\u00a0batches", n),
}
_CAUSES = {
    "store.full": marked("the disk is full"),
    "store.read_only": marked("its folder is read-only"),
    "store.cannot_open": marked("its folder cannot be written to"),
    "store.io": marked("the disk does not answer"),
    "store.locked": marked("the log is busy in another window or program"),
    "store.damaged": marked("the log does not pass its check. Restore an older copy"),
}
KEPT = marked("The log as it is now is copied first. That copy can be restored in the same way.")
UNDO = marked("Restoring cannot be undone with Undo. Undo then takes back what was done before the copy was made.")


@dataclass(frozen=True)
class CopyRow:
    """One line of the list; ``usable`` when it can be restored or carried away."""

    when: str
    what: str
    holds: str
    size: str
    usable: bool


def row(
    kind: str, made: datetime, size_bytes: int, holds: tuple[int, int, datetime | None] | None, fault: Reason | None
) -> CopyRow:
    """Return a copy as it stands in the list.

    Parameters
    ----------
    kind : str
        What the copy is.
    made : datetime
        When it was made, in the keeper's zone.
    size_bytes : int
        Its size [bytes].
    holds : tuple or None
        Systems, entries, and the instant of the newest entry in the keeper's zone.
    fault : Reason or None
        Why it cannot be used.

    Returns
    -------
    CopyRow
        Its words.
    """
    said = sentence(fault) if fault is not None else "" if holds is None else _holds(*holds)
    size = with_unit(significant(max(size_bytes, 1000) / 1e6, 2), "MB")
    return CopyRow(moment(made), say_all(_KINDS.get(kind, kind)), said, size, fault is None)


def moment(made: datetime) -> str:
    """Return when a copy was made."""
    return f"{date_words(made)} {made:%H:%M}"


def _holds(systems: int, entries: int, newest: datetime | None) -> str:
    parts = [
        say_many("{n}\u00a0system", "{n}\u00a0systems", systems),
        say_many("{n}\u00a0entry", "{n}\u00a0entries", entries),
    ]
    return ", ".join(parts) + (say(" up to {newest}", newest=moment(newest)) if newest is not None else "")


def lost(entries: Mapping[str, int], edits: int, cards: int) -> str:
    """Return what would go from the log with a copy.

    Parameters
    ----------
    entries : mapping of str to int
        How many entries of each kind.
    edits, cards : int
        How many edits of records, and how many cards in use.

    Returns
    -------
    str
        Sentences.
    """
    parts = [
        _ENTRIES[kind](number) if kind in _ENTRIES else f"{number}\u00a0{kind}" for kind, number in entries.items()
    ]
    if edits:
        parts.append(
            say_many("{n}\u00a0change", "{n}\u00a0changes", edits) + say(" of systems, jugs, pumps or corrections")
        )
    text = (
        say("From the log would go: {parts}.", parts=listed(parts))
        if parts
        else say("Nothing that the log holds now would go.")
    )
    if cards:
        text += say_many(
            " {cards} in use would be void: take it down.",
            " {cards} in use would be void: take them down.",
            cards,
            cards=say_many("{n}\u00a0card", "{n}\u00a0cards", cards),
        )
    return text


def asked(made: str) -> str:
    """Return the question before a copy is restored, from when it was made in words."""
    return say("Restore the copy of {made}?", made=made)


def offered(made: str) -> str:
    """Return the words of the button on the page of a damaged log."""
    return say("&Restore the copy of {made}", made=made)


def damaged(made: str, newest: str) -> str:
    """Return what restoring means for a log that cannot be opened; ``newest`` are the words of what the copy holds."""
    return say(
        "The copy of {made} holds {newest}. What was noted after that is lost. The damaged file is kept beside the copies. Close every other window of this log first.",
        made=made,
        newest=newest,
    )


def restored(made: str, kept: str) -> str:
    """Return what was done, from when the copy was made in words and the name of the copy of the log as it was."""
    return say("The copy of {made} is restored. The log as it was is kept as {kept}.", made=made, kept=kept)


def carried(place: str) -> str:
    """Return that a copy was written to a place."""
    return say("Saved as {place}.", place=place)


def where(folder: str) -> str:
    """Return where the copies lie and when one is made."""
    return say(
        "Copies lie in {folder}. One is made before the first edit of a day, and the last ten of these are kept; besides, one before each update and before each restoration, which stay. A disk can fail: save a copy elsewhere now and then.",
        folder=folder,
    )


def no_copy(reason: Reason) -> str:
    """Return why there is no copy of the day, or that the log itself is read from one."""
    if reason.code == "store.from_copy":
        return sentence(reason)
    cause = say_all(_CAUSES.get(reason.code, say("it could not be written")))
    return say("No copy of the log could be made today: {cause}.", cause=cause)
