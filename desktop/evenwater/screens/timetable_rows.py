"""A timetable as rows: every dose of the day, merged where they are the same, each pump's day in short, and lanes to be painted."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby, pairwise

from evenwater.engine.timetable import PumpDay, TimedDose, TimetableAnswer
from evenwater.engine.timetable_question import DAY_MIN, OPPOSING
from evenwater.screens.shown import dose, every, seconds, span
from evenwater.screens.terms import capitalized
from evenwater.screens.timetable_given import Given
from evenwater.screens.timetable_wishes import clock
from evenwater.screens.timetable_words import minutes, quoted
from evenwater.wording import say

DAY_MINUTES = DAY_MIN
"""Minutes of the day that the lanes go over [min]."""
HEAD_UP, HEAD_DOWN = OPPOSING
"""Parameters whose doses are told from each other by shape."""
# So many equal doses at equal distances are one row; two are read more quickly one by one.
_LEAST_MERGED = 3


@dataclass(frozen=True)
class TimetableRow:
    """One dose, or several that are the same and evenly spaced.

    ``minute`` [min] is that of the first. ``when`` is its clock time, with how it goes on; ``more`` what comes on top on some days.
    """

    minute: int
    when: str
    pump: str
    additive: str
    dose: str
    runs: str
    count: int = 1
    more: str = ""
    place: int = 0

    @property
    def amount(self) -> str:
        """The dose with what comes on top."""
        return ", ".join(filter(None, (self.dose, self.more)))


@dataclass(frozen=True)
class PumpSummary:
    """One pump's day: how many doses and how often, how much each, the sum, how long it runs, and what is carried."""

    parameter: str
    pump: str
    additive: str
    doses: str
    each: str
    in_24_hours: str
    runs: str
    carried: str
    plan: str = ""


@dataclass(frozen=True)
class Mark:
    """One dose to be painted: minute of the day [min], how long it runs [s], and what is said of it."""

    minute: int
    lasts_s: float
    words: str


@dataclass(frozen=True)
class Lane:
    """One pump to be painted: ``kind`` is the parameter where it must stay apart from another, else empty; ``quiet`` its own hours [min]."""

    pump: str
    additive: str
    kind: str
    marks: tuple[Mark, ...]
    quiet: tuple[tuple[int, int], ...] = ()


def every_dose(answer: TimetableAnswer, given: Sequence[Given]) -> tuple[TimetableRow, ...]:
    """Return each dose of the day in order of time.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.
    given : sequence of Given
        What each of its pumps gives.

    Returns
    -------
    tuple of TimetableRow
        One for each dose.
    """
    return tuple(_row(answer, given, (row,)) for row in answer.rows)


def merged(answer: TimetableAnswer, given: Sequence[Given]) -> tuple[TimetableRow, ...]:
    """Return the doses in order of time, equal ones at equal distances as one row.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.
    given : sequence of Given
        What each of its pumps gives.

    Returns
    -------
    tuple of TimetableRow
        Together every dose of the day, each once.
    """
    found = []
    for place in range(len(answer.question.pumps)):
        own = [row for row in answer.rows if row.pump == place]
        found += [_row(answer, given, run) for run in _runs(own)]
    return tuple(sorted(found, key=lambda row: (row.minute, row.place)))


def _runs(own: Sequence[TimedDose]) -> Iterator[tuple[TimedDose, ...]]:
    first = 0
    while first < len(own):
        last, intervals = first, set[int]()
        while last + 1 < len(own) and _alike(own[first], own[last + 1]):
            both = intervals | {own[last + 1].minute - own[last].minute}
            # Where the day cannot be shared out in whole minutes, every other interval is one longer.
            if max(both) - min(both) > 1:
                break
            last, intervals = last + 1, both
        # Too short a row stands dose by dose, so that its last may begin the next.
        taken = last + 1 if last - first + 1 >= _LEAST_MERGED else first + 1
        yield tuple(own[first:taken])
        first = taken


def _alike(one: TimedDose, other: TimedDose) -> bool:
    return (one.ml, one.more_ml) == (other.ml, other.more_ml)


def _row(answer: TimetableAnswer, given: Sequence[Given], run: Sequence[TimedDose]) -> TimetableRow:
    first, place = run[0], run[0].pump
    return TimetableRow(
        minute=first.minute,
        when=_when(run),
        pump=answer.question.pumps[place].name,
        additive=given[place].additive_name,
        dose=dose(first.ml),
        runs=seconds(first.run_time_s),
        count=len(run),
        more=say("on some days {more} more", more=dose(first.more_ml)) if first.more_ml else "",
        place=place,
    )


def _when(run: Sequence[TimedDose]) -> str:
    begin = clock(run[0].minute)
    if len(run) == 1:
        return begin
    intervals = {later.minute - earlier.minute for earlier, later in pairwise(run)}
    if len(intervals) == 1 and min(intervals) * len(run) == DAY_MIN:
        return say("{begin}, then {run}", begin=begin, run=every(len(run)))
    return say(
        "{begin} to {minute}, {intervals}",
        begin=begin,
        minute=clock(run[-1].minute),
        intervals=_interval(min(intervals), max(intervals)),
    )


def _interval(shortest_min: int, longest_min: int) -> str:
    if shortest_min == longest_min:
        return (
            say("every hour") if shortest_min == 60 else say("every {shortest}", shortest=span(shortest_min / DAY_MIN))
        )
    return say(
        "{shortest} to {longest} apart", shortest=span(shortest_min / DAY_MIN), longest=span(longest_min / DAY_MIN)
    )


def summaries(answer: TimetableAnswer, given: Sequence[Given]) -> tuple[PumpSummary, ...]:
    """Return each pump's day in short.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.
    given : sequence of Given
        What each of its pumps gives.

    Returns
    -------
    tuple of PumpSummary
        In the order of the question.
    """
    return tuple(
        _summary(answer, place, day, one) for place, (day, one) in enumerate(zip(answer.pumps, given, strict=True))
    )


def _summary(answer: TimetableAnswer, place: int, day: PumpDay, one: Given) -> PumpSummary:
    own = [row for row in answer.rows if row.pump == place]
    sizes = [(ml, len(list(rows))) for ml, rows in groupby(sorted(row.ml for row in own))]
    each = (
        dose(sizes[0][0])
        if len(sizes) == 1
        else say(" and ").join(say("{count} of {dose}", count=count, dose=dose(ml)) for ml, count in sizes)
    )
    longest = max(row.run_time_s + row.more_s for row in own)
    return PumpSummary(
        parameter=capitalized(one.parameter),
        pump=day.pump.name,
        additive=one.additive_name,
        doses=_doses(own),
        each=each,
        in_24_hours=dose(day.in_day_ml),
        runs=say("up to {longest}", longest=seconds(longest)) if len(sizes) > 1 else seconds(longest),
        carried=_carried(day),
        plan=say("Plan {plan_id}", plan_id=one.plan_id) if one.plan_id else "",
    )


def _doses(own: Sequence[TimedDose]) -> str:
    count = len(own)
    if count == 1:
        return say("one dose a day")
    intervals = sorted([later.minute - earlier.minute for earlier, later in pairwise(own)])
    longest = own[0].minute + DAY_MIN - own[-1].minute
    # Over quiet hours one interval is longer than all others.
    shortest, most = intervals[0], intervals[-1]
    if most - shortest > 1 or longest < shortest:
        return say(
            "{count} doses a day, the nearest {shortest} apart",
            count=count,
            shortest=span(min(shortest, longest) / DAY_MIN),
        )
    return say("{count} doses a day, {shortest}", count=count, shortest=_interval(shortest, most))


def _carried(day: PumpDay) -> str:
    """Say whether every day is the same, or on which days the first dose has a step more."""
    doses = day.doses
    if not doses.carries:
        return say("every day the same")
    step, extra = dose(day.pump.step_ml), doses.wanted.numerator % doses.wanted.denominator
    days = doses.repeats_after
    if days > 31:
        return say(
            "on some days the first dose is {step} more: what is left of a step is carried into the next day", step=step
        )
    return say(
        "on {extra} of {days} days the first dose is {step} more; then the sum is exact",
        extra=extra,
        days=days,
        step=step,
    )


def lanes(answer: TimetableAnswer, given: Sequence[Given]) -> tuple[Lane, ...]:
    """Return each pump's doses as they are painted over the 24 hours.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.
    given : sequence of Given
        What each of its pumps gives.

    Returns
    -------
    tuple of Lane
        In the order of the question.
    """
    found = []
    for place, (pump, one) in enumerate(zip(answer.question.pumps, given, strict=True)):
        marks = tuple(
            Mark(
                row.minute,
                row.run_time_s + row.more_s,
                say(
                    "{minute}: {dose}, runs {run_time}",
                    minute=clock(row.minute),
                    dose=dose(row.ml),
                    run_time=seconds(row.run_time_s),
                ),
            )
            for row in answer.rows
            if row.pump == place
        )
        kind = one.parameter if one.parameter in OPPOSING else ""
        quiet = tuple((hours.start, hours.end) for hours in pump.quiet)
        found.append(Lane(pump.name, one.additive_name, kind, marks, quiet))
    return tuple(found)


def nearest_lines(answer: TimetableAnswer) -> tuple[str, ...]:
    """Say of each pair that stays apart how near its doses come.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.

    Returns
    -------
    tuple of str
        Sentences; none of a pair that a remark speaks of.
    """
    told = {(reason.params["first"], reason.params["second"]) for reason in answer.remarks if "second" in reason.params}
    found = []
    for pair, nearest_s in zip(answer.question.apart, answer.seen.nearest_s, strict=True):
        first, second = (answer.question.pumps[place].name for place in (pair.first, pair.second))
        if (first, second) not in told:
            found.append(
                say(
                    "{first} and {second} come {nearest} apart at the nearest; at least {minutes} are kept.",
                    first=quoted(first),
                    second=quoted(second),
                    nearest=minutes(nearest_s / 60.0),
                    minutes=minutes(pair.minutes),
                )
            )
    return tuple(found)
