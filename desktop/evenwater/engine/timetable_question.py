"""The question of a timetable: all pumps of a system, what each gives in a day, and every wish about when."""

from __future__ import annotations

from dataclasses import dataclass

DAY_MIN = 1440
# Common practice, no source: alkalinity and calcium at least so far apart; twice as far is better.
APART_MIN, APART_BETTER_MIN = 15, 30
# What falls out when it meets in the water, unless the keeper names more pairs.
OPPOSING = ("alkalinity", "calcium")
# Common practice, no source: doses of one pump come at least half as far apart as even spacing in its open hours gives, so that a
# row of small doses never becomes one large one.
CLOSEST_SHARE = 0.5
MOST_PUMPS, MOST_DOSES = 24, 288


@dataclass(frozen=True)
class Quiet:
    """Hours without doses: from one minute of the day up to another [min after midnight], perhaps over midnight."""

    start: int
    end: int

    @property
    def lasts(self) -> int:
        """How long the hours last [min]."""
        return (self.end - self.start) % DAY_MIN or DAY_MIN


@dataclass(frozen=True)
class TimedPump:
    """One pump, what it gives in a day [mL], and how it may be set.

    ``flow_ml_per_min`` [mL/min], ``step_ml``, ``smallest_ml`` and ``largest_ml`` (the largest jump of a single dose) [mL];
    ``largest_share`` of the time it may run. ``doses`` in a day are wished for, any number from ``fewest`` to ``most`` is
    allowed. ``closest_min`` [min] from the start of one of its doses to the next, None for half of what even spacing gives.
    ``raises`` names the parameter, empty where it does not matter. ``quiet`` are the hours in which it must not run.
    """

    name: str
    per_day_ml: float
    flow_ml_per_min: float
    step_ml: float = 0.1
    smallest_ml: float = 0.0
    largest_ml: float | None = None
    largest_share: float = 0.5
    doses: int = 24
    fewest: int = 24
    most: int = 24
    closest_min: int | None = None
    raises: str = ""
    quiet: tuple[Quiet, ...] = ()


@dataclass(frozen=True)
class Apart:
    """Two pumps, by their place in the question, whose doses stay so far apart [min]; ``path`` is the field that says so."""

    first: int
    second: int
    minutes: float
    path: str = "keep_apart"


@dataclass(frozen=True)
class TimetableQuestion:
    """Give every pump its doses of the day.

    ``apart`` counts from the end of one dose to the start of the other, round the clock. ``one_at_a_time`` forbids any two
    pumps to run together; ``quiet`` are the hours in which none may run.
    """

    pumps: tuple[TimedPump, ...]
    apart: tuple[Apart, ...] = ()
    one_at_a_time: bool = False
    quiet: tuple[Quiet, ...] = ()

    def hours(self, place: int) -> tuple[Quiet, ...]:
        """Return all hours in which a pump must not run.

        Parameters
        ----------
        place : int
            Which pump.

        Returns
        -------
        tuple of Quiet
            Those of the whole system first.
        """
        return (*self.quiet, *self.pumps[place].quiet)

    def gap(self, one: int, other: int) -> float | None:
        """Return how far the doses of two different pumps stay apart.

        Parameters
        ----------
        one, other : int
            Places of the pumps.

        Returns
        -------
        float or None
            Minutes from the end of a dose to the start of the other [min]; None where they have nothing to do with each other.
        """
        said = [a.minutes for a in self.apart if {a.first, a.second} == {one, other}]
        return max(said, default=0.0 if self.one_at_a_time else None)
