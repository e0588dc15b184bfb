"""The window of backups in words: what a copy of the log is, what it holds, and what would be lost with it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine.quantities import significant
from evenwater.engine.reasons import Reason
from evenwater.screens.room_words import sentence
from evenwater.screens.shown import date_words, with_unit

PRESENT = "present"
_KINDS = {
    PRESENT: "The log as it is now",
    "daily": "Before the first edit of the day",
    "before update": "Before an update of the program",
    "before restoring": "Before a copy was restored",
}
_ENTRIES = {
    "reading": ("reading", "readings"),
    "dose": ("dose", "doses"),
    "exchange": ("water exchange", "water exchanges"),
    "note": ("note", "notes"),
    "calibration": ("calibration", "calibrations"),
    "batch": ("batch", "batches"),
}
_CAUSES = {
    "store.full": "the disk is full",
    "store.read_only": "its folder is read-only",
    "store.cannot_open": "its folder cannot be written to",
    "store.io": "the disk does not answer",
    "store.locked": "the log is busy in another window or program",
    "store.damaged": "the log does not pass its check. Restore an older copy",
}
KEPT = "The log as it is now is copied first. That copy can be restored in the same way."
UNDO = "Restoring cannot be undone with Undo. Undo then takes back what was done before the copy was made."


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
    return CopyRow(moment(made), _KINDS.get(kind, kind), said, size, fault is None)


def moment(made: datetime) -> str:
    """Return when a copy was made."""
    return f"{date_words(made)} {made:%H:%M}"


def _holds(systems: int, entries: int, newest: datetime | None) -> str:
    parts = [_count(systems, "system", "systems"), _count(entries, "entry", "entries")]
    return ", ".join(parts) + (f" up to {moment(newest)}" if newest is not None else "")


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
    parts = [_count(number, *_ENTRIES.get(kind, (kind, kind))) for kind, number in entries.items()]
    if edits:
        parts.append(_count(edits, "change", "changes") + " of systems, jugs, pumps or corrections")
    text = f"From the log would go: {_listed(parts)}." if parts else "Nothing that the log holds now would go."
    if cards:
        text += f" {_count(cards, 'card', 'cards')} in use would be void: take {'it' if cards == 1 else 'them'} down."
    return text


def asked(made: str) -> str:
    """Return the question before a copy is restored, from when it was made in words."""
    return f"Restore the copy of {made}?"


def offered(made: str) -> str:
    """Return the words of the button on the page of a damaged log."""
    return f"&Restore the copy of {made}"


def damaged(made: str, newest: str) -> str:
    """Return what restoring means for a log that cannot be opened; ``newest`` are the words of what the copy holds."""
    return (
        f"The copy of {made} holds {newest}. What was noted after that is lost. The damaged file is kept beside the copies. "
        "Close every other window of this log first."
    )


def restored(made: str, kept: str) -> str:
    """Return what was done, from when the copy was made in words and the name of the copy of the log as it was."""
    return f"The copy of {made} is restored. The log as it was is kept as {kept}."


def carried(place: str) -> str:
    """Return that a copy was written to a place."""
    return f"Saved as {place}."


def where(folder: str) -> str:
    """Return where the copies lie and when one is made."""
    return (
        f"Copies lie in {folder}. One is made before the first edit of a day, and the last ten of these are kept; "
        "besides, one before each update and before each restoration, which stay. A disk can fail: save a copy elsewhere now and then."
    )


def no_copy(reason: Reason) -> str:
    """Return why there is no copy of the day."""
    cause = _CAUSES.get(reason.code, "it could not be written")
    return f"No copy of the log could be made today: {cause}."


def _count(number: int, one: str, many: str) -> str:
    return f"{number}\u00a0{one if number == 1 else many}"


def _listed(parts: list[str]) -> str:
    return parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
