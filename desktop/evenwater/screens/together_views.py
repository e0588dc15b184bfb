"""What is shown of all plans of a system together: plain values, so that an empty panel loads nothing of what reckons them."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.screens.views import Floats


@dataclass(frozen=True)
class BudgetLine:
    """One thing that moves a value: what it is, how much per day, and from when until when; the last line is the sum."""

    what: str
    per_day: str
    when: str = ""


@dataclass(frozen=True)
class Course:
    """The chart of one value over the next 30 days, in the keeper's unit.

    Series share ``times`` [s since the epoch, UTC], shape (n,): everything together with its band by the net volume, and the same without
    exchange. ``usual`` is the range usually kept. ``decimals`` are those of a value in words.
    """

    title: str
    unit: str
    times: Floats
    plan: Floats
    low: Floats
    high: Floats
    alone: Floats
    usual: tuple[float, float]
    exchanged: bool
    decimals: int
    spoken: str


@dataclass(frozen=True)
class ValueLine:
    """One value that moves: now, in a week, in a month, and what becomes of it; ``stop`` where something of it must not go on.

    ``figures`` are the three without their ``unit``, for columns. ``course`` is None of a value that nobody has tested.
    ``budget`` is what moves it, ``limits`` its largest rise and fall in 24 hours beside what they may be at the most.
    """

    parameter: str
    now: str
    week: str
    month: str
    then: str
    unit: str
    figures: tuple[str, str, str]
    stop: bool
    course: Course | None
    budget: tuple[BudgetLine, ...]
    limits: tuple[BudgetLine, ...]


@dataclass(frozen=True)
class TogetherView:
    """Everything that is shown.

    ``state`` is ``"empty"`` (nothing can be said yet), ``"answered"`` or ``"stop"``. ``stops`` are what must not go on, ``remarks`` what
    a keeper should know, ``left_out`` what is not in it and why, ``still`` names what does not move. ``summary`` is
    one line for where there is room for one, from the longest to the shortest.
    """

    state: str
    lines: tuple[ValueLine, ...] = ()
    stops: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    left_out: tuple[str, ...] = ()
    still: str = ""
    summary: tuple[str, ...] = ()
