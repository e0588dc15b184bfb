"""A timetable for people: how each pump is set, every dose of the day in order of time, and the rules beside them."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.timetable import PumpDay, TimetableAnswer
from evenwater.screens import words
from evenwater.screens.shown import dose, seconds, span
from evenwater.screens.timetable_words import minutes, quoted
from evenwater.wording import marked, say, say_all, say_many

# Always beside the doses; common practice, no source.
RULES = (
    marked("Missed doses are never made up: go on with the next one."),
    marked("Let alkalinity and calcium flow in at different places, where the water moves."),
    marked("The pumps' clocks stay as they were set when the clocks on the wall are changed."),
    marked("To set the pumps' clocks again in autumn, stop the pumps for the hour that comes twice."),
)


def clock(minute: int) -> str:
    """Write a minute of the day as a 24-hour clock time."""
    return f"{minute // 60:02d}:{minute % 60:02d}"


def lines(answer: TimetableAnswer) -> tuple[str, ...]:
    """Return an answer as lines for people.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces.
    """
    return tuple(line.replace("\u00a0", " ") for line in _lines(answer))


def _lines(answer: TimetableAnswer) -> Iterator[str]:
    yield from say_all(RULES)
    yield ""
    for day in answer.pumps:
        yield pump_line(day)
    yield ""
    for row in answer.rows:
        more = say(", on some days {more} more", more=dose(row.more_ml)) if row.more_ml else ""
        yield f"{clock(row.minute)}  {answer.question.pumps[row.pump].name}: {dose(row.ml)} ({seconds(row.run_time_s)}){more}"
    yield ""
    for pair, nearest_s in zip(answer.question.apart, answer.seen.nearest_s, strict=True):
        first, second = (answer.question.pumps[place].name for place in (pair.first, pair.second))
        yield say(
            "{first} and {second}: {nearest} apart, at least {minutes}",
            first=quoted(first),
            second=quoted(second),
            nearest=minutes(nearest_s / 60.0),
            minutes=minutes(pair.minutes),
        )
    yield from (say("Note: {remark}", remark=words.sentence(remark)) for remark in answer.remarks)


def pump_line(day: PumpDay) -> str:
    """Return how one pump is set, in a line."""
    count = day.doses.count
    how_many = say_many("one dose", "{n} doses", count, about="in words")
    apart = f", {_interval(day)}" if count > 1 else ""
    return say(
        "{pump}: {how_many} a day{apart}, {in_day} in all, running {runs}",
        pump=quoted(day.pump.name),
        how_many=how_many,
        apart=apart,
        in_day=dose(day.in_day_ml),
        runs=seconds(day.runs_s),
    )


def _interval(day: PumpDay) -> str:
    shortest, longest = (span(each / 1440.0) for each in (day.shortest_min, day.longest_min))
    return (
        say("every {shortest}", shortest=shortest)
        if shortest == longest
        else say("{shortest} to {longest} from one to the next", shortest=shortest, longest=longest)
    )
