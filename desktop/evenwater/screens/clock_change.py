"""When the clocks on the wall are changed next, where the keeper lives."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from evenwater.screens.shown import date_words, span
from evenwater.wording import say

# Two changes are always further apart than a step.
_LOOKS_AHEAD, _STEP = 53, timedelta(days=7)
_DAY, _MINUTE = timedelta(days=1), timedelta(minutes=1)


@dataclass(frozen=True)
class ClockChange:
    """The instant of a change, and by how much the clocks go on (back when it is negative)."""

    at: datetime
    by: timedelta


def next_change(now: datetime) -> ClockChange | None:
    """Return the next change of the clocks.

    Parameters
    ----------
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    ClockChange or None
        In that zone, to the minute; None when the clocks are not changed within a year.
    """
    zone = now.tzinfo
    before = now.astimezone(UTC)
    first = before.astimezone(zone).utcoffset()
    for _ in range(_LOOKS_AHEAD):
        after = before + _STEP
        last = after.astimezone(zone).utcoffset()
        if first != last and first is not None and last is not None:
            # The change lies between the two: halve until it is known to the minute.
            while after - before > _MINUTE:
                middle = before + (after - before) / 2
                if middle.astimezone(zone).utcoffset() == first:
                    before = middle
                else:
                    after = middle
            at = after.replace(second=0, microsecond=0)
            return ClockChange(at.astimezone(zone), last - first)
        before = after
    return None


def clock_words(change: ClockChange | None) -> str:
    """Say what happens to the doses on the night of the next change of clocks.

    Parameters
    ----------
    change : ClockChange or None
        The change.

    Returns
    -------
    str
        Sentences; empty where clocks are not changed.
    """
    if change is None:
        return ""
    on = change.by > timedelta(0)
    by = span(abs(change.by) / _DAY)
    how, comes = (say("go on"), say("later")) if on else (say("go back"), say("earlier"))
    begin = say(
        "On {at} the clocks on the wall {how} by {by}; those of the pumps do not. ",
        at=date_words(change.at),
        how=how,
        by=by,
    )
    then = say(
        "No dose is left out and none comes twice, but each comes {by} {comes} by the wall, and so do the quiet hours. ",
        by=by,
        comes=comes,
    )
    again = say("Set the pumps' clocks by the wall the next day")
    return (
        f"{begin}{then}{again}."
        if on
        else say(
            "{begin}{then}{again}: stop the pumps for the {by} that they then show twice.",
            begin=begin,
            then=then,
            again=again,
            by=by,
        )
    )
