"""What a timetable says: every dose of the day in order, and how each pump is set."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.engine.reasons import Reason
from evenwater.engine.timetable_check import Seen
from evenwater.engine.timetable_doses import Split
from evenwater.engine.timetable_question import TimedPump, TimetableQuestion


@dataclass(frozen=True)
class TimedDose:
    """One dose: minute of the day, place of the pump in the question, volume [mL] and running time [s].

    ``more_ml`` [mL] and ``more_s`` [s] come on top on the days on which what was carried makes a whole step; mostly zero.
    """

    minute: int
    pump: int
    ml: float
    run_time_s: float
    more_ml: float = 0.0
    more_s: float = 0.0


@dataclass(frozen=True)
class PumpDay:
    """One pump's day: its doses, and the shortest and longest time [min] from the start of one to the next.

    ``in_day_ml`` [mL] is the sum of an ordinary day; a day that ``doses.has_extra`` has one step more.
    """

    pump: TimedPump
    doses: Split
    shortest_min: int
    longest_min: int
    in_day_ml: float
    runs_s: float


@dataclass(frozen=True)
class TimetableAnswer:
    """A timetable that was checked: rows in order of time, pumps in order of the question."""

    question: TimetableQuestion
    rows: tuple[TimedDose, ...]
    pumps: tuple[PumpDay, ...]
    remarks: tuple[Reason, ...]
    seen: Seen
