"""What the rounds look at and what they find: frozen values, how urgent a thing is, and the words for its dates."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta, tzinfo

from evenwater.screens.shown import date_time, date_words
from evenwater.wording import say

# What must be seen to at once stands before what is due, and that before what comes soon.
WRONG, DUE, SOON = "wrong", "due", "soon"
ORDER = (WRONG, DUE, SOON)
# How far ahead tests, cards and plans are told of, and jugs that run out. Common practice, no source.
AHEAD, RUNS_OUT_AHEAD = timedelta(days=2), timedelta(days=5)

# What a line is about; with the record and the subject it tells one line from every other.
CARD, TEST, JUG, PLAN, FOOD = "card", "test", "jug", "plan", "food"


@dataclass(frozen=True)
class Duty:
    """One line: how urgent, where, what to do, why, and what to open for it.

    ``sheet`` is the name of the sheet, ``record`` the id of the system or jug, ``subject`` a parameter. ``kind`` is what
    it is about and ``about`` the parameter, plan id or jug it is about. ``plain`` is the reason without any amount, for
    paper and calendar: what is read there later must never be taken for a dose.
    """

    urgency: str
    at: datetime
    place: str
    what: str
    why: str
    sheet: str
    record: str
    subject: str = ""
    kind: str = ""
    about: str = ""
    plain: str = ""

    @property
    def key(self) -> tuple[str, str, str]:
        """What the line is about: the same from one look at the room to the next."""
        return self.kind, self.record, self.about


@dataclass(frozen=True)
class LastReading:
    """The newest reading of a parameter of a system.

    ``same`` is how many of the newest in a row were typed exactly alike, with the same kit; ``typed`` is what they say.
    """

    system_id: str
    parameter: str
    at: datetime
    same: int = 1
    typed: str = ""


@dataclass(frozen=True)
class Hanging:
    """A card on a stand: ``void`` when it must not be followed, with the reason."""

    plan_id: str
    system_id: str
    parameter: str
    valid_until: datetime
    void: bool
    why: str = ""


@dataclass(frozen=True)
class Contents:
    """A batch in a jug, with the last day it is to be used, or None, and how long it lasts, or None when nobody knows.

    ``amount`` is what is left in it now [mL], ``per_day`` what is dosed from it in a day [mL], ``since`` when it was put
    in use, ``until`` when the newest dose from it was logged. ``basis`` says what ``runs_out`` is reckoned from:
    ``"logged"`` are the doses in the log and the daily rate after each system's last one, ``"rate"`` is the daily rate
    alone, ``"unsure"`` the daily rate where the log has far less, and ``"read"`` a level that was read as empty. ``read_at`` is
    when its level was read, where that was after the batch was put in use; ``since`` is the same then.
    """

    stock_id: str
    name: str
    use_by: datetime | None
    runs_out: datetime | None = None
    amount: float | None = None
    per_day: float | None = None
    since: datetime | None = None
    until: datetime | None = None
    basis: str = ""
    read_at: datetime | None = None


@dataclass(frozen=True)
class Followed:
    """A live plan, judged by the readings since it was started.

    ``state`` is ``"above"`` or ``"below"`` its band, ``"stop"`` when dosing must end, ``"unreadable"``, or anything else
    where all is well; ``why`` says so in a sentence. ``retest_at`` is when it asks for a test next, None for no more.
    """

    plan_id: str
    system_id: str
    parameter: str
    state: str
    why: str
    retest_at: datetime | None
    started: datetime
    ends_at: datetime | None


@dataclass(frozen=True)
class KeptFood:
    """A food with the last day on which it may be used and the day its jug is empty, None of what nobody knows; ``given`` unless paused."""

    food_id: str
    name: str
    last_day: date | None
    empty: date | None
    given: bool = True

    @property
    def system_id(self) -> str:
        """The system that it is given to."""
        return self.food_id.partition(":")[0]


@dataclass(frozen=True)
class Room:
    """All that decides what is due: names of the systems by id, readings, cards, jugs, plans, what is corrected, foods, and what is due at pumps."""

    systems: Mapping[str, str]
    readings: tuple[LastReading, ...]
    corrected: tuple[tuple[str, str], ...]
    cards: tuple[Hanging, ...]
    jugs: tuple[Contents, ...]
    plans: tuple[Followed, ...] = ()
    at_pumps: tuple[Duty, ...] = ()
    foods: tuple[KeptFood, ...] = ()


@dataclass(frozen=True)
class Clock:
    """The present in UTC and the zone in which it is told.

    Spans are reckoned in UTC: two instants in one zone differ by what its clocks show, which is an hour wrong over a
    change of clock.
    """

    now: datetime
    zone: tzinfo | None

    @classmethod
    def of(cls, now: datetime) -> Clock:
        """Return the clock of a present in the keeper's zone."""
        return cls(now.astimezone(UTC), now.tzinfo)

    def urgency(self, at: datetime, ahead: timedelta = AHEAD) -> str | None:
        """Return how urgent it is at an instant, or None when it is further away than ``ahead``."""
        at = at.astimezone(UTC)
        if at <= self.now:
            return DUE
        return SOON if at <= self.now + ahead else None

    def day(self, at: datetime) -> str:
        """Write the day of an instant."""
        return date_words(at.astimezone(self.zone))

    def time(self, at: datetime) -> str:
        """Write an instant."""
        return date_time(at.astimezone(self.zone))


def place_of(room: Room, system_id: str) -> str:
    """Return the name of a system, or that it is gone."""
    return room.systems.get(system_id, say("A system that is gone"))
