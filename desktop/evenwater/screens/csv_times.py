"""Dates and times of a spreadsheet: what each text can mean, and the instant it is once the file's order is known."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from functools import lru_cache
from typing import NamedTuple

from evenwater.engine.reasons import Reason
from evenwater.screens.csv_choices import ORDERS
from evenwater.screens.when import AHEAD_ALLOWED

# Older readings are slips in the year.
_FIRST_YEAR = 1970
# Days, and times of day: of each a file has far fewer than rows.
_REMEMBERED = 20_000

_DATE = re.compile(r"(?P<a>[0-9]{1,4})(?P<s>[-./])(?P<b>[0-9]{1,2})(?P=s)(?P<c>[0-9]{1,4})", re.ASCII)
_BEFORE_CLOCK = re.compile(r"(?<=[0-9])(?:[Tt]|,? )(?=[0-9])", re.ASCII)
_CLOCK = re.compile(
    r"(?P<hour>[0-9]{1,2})(?::(?P<minute>[0-9]{2})(?::(?P<second>[0-9]{2})(?:[.,](?P<part>[0-9]{1,6}))?)?)?"
    r"(?: ?(?P<half>[AaPp])\.?[Mm]\.?)?(?: ?(?P<offset>[Zz]|[+-][0-9]{2}(?::?[0-9]{2}(?::[0-9]{2})?)?))?",
    re.ASCII,
)


@dataclass(frozen=True)
class Clock:
    """A time of day: ``half`` is "a" or "p" where am or pm is said, ``offset`` from UTC where that is said."""

    time: time
    half: str = ""
    offset: timedelta | None = None


class Stamp(NamedTuple):
    """A date and a time as a file says them, with the offset from UTC where it says that too."""

    day: date
    time: time
    offset: timedelta | None

    @property
    def local(self) -> datetime:
        """Both together, as on a clock."""
        return datetime.combine(self.day, self.time)


def tidy(text: str) -> str:
    """Return a text with single ordinary spaces."""
    return " ".join(text.split())


def parted(text: str) -> tuple[str, str]:
    """Return the date of a text and the time of day behind it, which may be nothing."""
    found = _BEFORE_CLOCK.split(tidy(text), 1)
    return found[0], found[1] if len(found) > 1 else ""


def is_date(text: str) -> bool:
    """Return whether a text looks like a date, with a time or without."""
    return _DATE.fullmatch(parted(text)[0]) is not None


def is_clock(text: str) -> bool:
    """Return whether a text looks like a time of day."""
    clean = tidy(text)
    return (":" in clean or clean[-1:] in "mM.") and isinstance(read_clock(clean, "24"), Clock)


@lru_cache(maxsize=_REMEMBERED)
def orders(text: str) -> frozenset[str]:
    """Return the orders of day, month and year in which a date is one; with points nobody writes the month first."""
    found = {order for order in ORDERS if isinstance(read_day(text, order), date)}
    match = _DATE.fullmatch(text)
    pointed = match is not None and match["s"] == "." and len(match["a"]) < 4
    return frozenset(found - {"mdy"} if pointed else found)


@lru_cache(maxsize=_REMEMBERED)
def read_day(text: str, order: str) -> date | Reason:
    """Read a date without a time of day. A year of four digits that comes first is always followed by month and day."""
    match = _DATE.fullmatch(text)
    if match is None:
        return Reason("csv_not_a_date", {"text": text})
    day = _day(match, order)
    if day is None:
        others = any(_day(match, other) for other in ORDERS)
        return Reason("csv_other_order" if others else "csv_no_such_day", {"text": text})
    return day


@lru_cache(maxsize=_REMEMBERED)
def read_clock(text: str, clock: str) -> Clock | Reason:
    """Read a time of day; with ``clock`` "12" an hour from 1 to 12 must say am or pm."""
    match = _CLOCK.fullmatch(tidy(text))
    wrong = Reason("csv_not_an_hour", {"text": text})
    if match is None or (match["minute"] is None and match["half"] is None):
        return wrong
    hour, half = int(match["hour"]), (match["half"] or "").casefold()
    if half and not 1 <= hour <= 12:
        return wrong
    if clock == "12" and not half and 1 <= hour <= 12:
        return Reason("csv_half_day", {"text": text})
    if half:
        hour = hour % 12 + (12 if half == "p" else 0)
    try:
        micro = int((match["part"] or "0").ljust(6, "0"))
        return Clock(
            time(hour, int(match["minute"] or 0), int(match["second"] or 0), micro), half, _offset(match["offset"])
        )
    except ValueError:
        return wrong


def read_stamp(date_text: str, clock_text: str, order: str, clock: str, hour: str) -> Stamp | Reason:
    """Read a date, with its time in the same text or in one of its own.

    Parameters
    ----------
    date_text, clock_text : str
        As they stand in the file, without spaces around them; the second may be empty.
    order : str
        "ymd", "dmy" or "mdy".
    clock : str
        "24" or "12".
    hour : str
        The time of day of what has none, like "12:00"; when empty it is refused.

    Returns
    -------
    Stamp or Reason
        What it says, or why it says nothing.
    """
    if not date_text:
        return Reason("csv_no_date")
    only_date, inside = parted(date_text)
    day = read_day(only_date, order)
    if isinstance(day, Reason):
        return Reason(day.code, {"text": date_text})
    if inside and clock_text:
        # Spreadsheets write midnight after a date whose time stands in a column of its own.
        if read_clock(inside, clock) != Clock(time(0)):
            return Reason("csv_two_hours", {"text": date_text})
        inside = ""
    said = inside or clock_text or hour
    if not said:
        return Reason("csv_no_hour", {"text": date_text})
    found = read_clock(said, clock if inside or clock_text else "24")
    return found if isinstance(found, Reason) else Stamp(day, found.time, found.offset)


class Instants:
    """Turns stamps into instants.

    Parameters
    ----------
    zone : tzinfo
        Where the clock hung that has no offset.
    now : datetime
        The present, with its zone: nothing was measured later.
    twice : str
        Which of the two is meant when an hour came twice: "first" or "second"; otherwise it is refused.
    """

    def __init__(self, zone: tzinfo, now: datetime, twice: str) -> None:
        self._zone = zone
        self._latest = now.astimezone(UTC) + AHEAD_ALLOWED
        self._twice = twice
        self._offsets: dict[date, timedelta | None] = {}

    def of(self, stamp: Stamp) -> datetime | Reason:
        """Return the instant of a stamp in UTC, or why there is none."""
        day, clock, offset = stamp
        if not _FIRST_YEAR <= day.year <= self._latest.year + 1:
            return Reason("csv_too_old" if day.year < _FIRST_YEAR else "csv_future", {"at": stamp.local})
        if offset is None:
            if day not in self._offsets:
                self._offsets[day] = self._all_day(day)
            offset = self._offsets[day]
        if offset is None:
            found = self._on_a_day_of_change(stamp.local)
            if isinstance(found, Reason):
                return found
        else:
            found = datetime.combine(day, clock, UTC) - offset
        return found if found <= self._latest else Reason("csv_future", {"at": stamp.local})

    def _all_day(self, day: date) -> timedelta | None:
        """Return the offset from UTC that holds on a whole day, or None when it changes."""
        start = datetime.combine(day, time(0), self._zone)
        found = {
            (start + timedelta(hours=hours)).replace(fold=fold).utcoffset()
            for hours in range(0, 25, 6)
            for fold in (0, 1)
        }
        return found.pop() if len(found) == 1 else None

    def _on_a_day_of_change(self, local: datetime) -> datetime | Reason:
        at = local.replace(tzinfo=self._zone)
        first, second = at.utcoffset(), at.replace(fold=1).utcoffset()
        if first != second:
            if first is None or second is None or first < second:
                return Reason("csv_clock_skipped", {"at": local})
            if self._twice not in ("first", "second"):
                return Reason("csv_clock_twice", {"at": local})
            at = at.replace(fold=int(self._twice == "second"))
        return at.astimezone(UTC)


def _day(match: re.Match[str], order: str) -> date | None:
    a, b, c = match["a"], match["b"], match["c"]
    if len(a) == 4:
        parts = (int(a), int(b), int(c)) if len(c) <= 2 else None
    elif order == "ymd" or len(a) > 2 or len(c) not in (2, 4):
        parts = None
    else:
        year = int(c) if len(c) == 4 else 2000 + int(c)
        parts = (year, int(b), int(a)) if order == "dmy" else (year, int(a), int(b))
    try:
        return date(*parts) if parts else None
    except ValueError:
        return None


def _offset(text: str | None) -> timedelta | None:
    """Return an offset from UTC; ValueError when there is none so large."""
    if text is None:
        return None
    if text in "Zz":
        return timedelta(0)
    digits = text[1:].replace(":", "").ljust(6, "0")
    hours, minutes, seconds = int(digits[:2]), int(digits[2:4]), int(digits[4:])
    if hours > 23 or minutes > 59 or seconds > 59:
        raise ValueError(text)
    size = timedelta(hours=hours, minutes=minutes, seconds=seconds)
    return -size if text[0] == "-" else size
