"""What to do about a value that is too high, for people: what comes first, then the choices side by side."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.catalogue import Parameter
from evenwater.engine.recovery import HOLD, STOP, Choice, RecoveryAnswer, said
from evenwater.engine.recovery_plan import Course, Stage, hard
from evenwater.engine.recovery_question import RecoveryQuestion
from evenwater.engine.stock import Dissolved
from evenwater.screens import recovery_words, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.recovery_words import per_day, value
from evenwater.screens.shown import NBSP, about, span

# What makes every figure doubtful stands before the choices.
DANGERS = (
    "recovery_precipitation_seen",
    "recovery_precipitation_likely",
    "recovery_nothing_proposed",
    "recovery_also_too_high",
    "recovery_new_water_outside",
    "recovery_less_than_expected",
)
# So many days of an exchange stand one by one.
_DAYS_SHOWN = 14


def cautions(answer: RecoveryAnswer) -> tuple[str, ...]:
    """Return what comes first, then the handling lines of what ran in."""
    first = tuple(recovery_words.STOP[step] for step in STOP)
    overdose = answer.question.overdose
    if overdose is None:
        return first
    return (*first, *(overdose.batch.cautions if isinstance(overdose.batch, Dissolved) else BOTTLE))


def lines(answer: RecoveryAnswer) -> tuple[str, ...]:
    """Return the lines of an answer.

    Parameters
    ----------
    answer : RecoveryAnswer
        The choices.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    return tuple(line.replace(NBSP, " ") for line in _lines(answer))


def _lines(answer: RecoveryAnswer) -> Iterator[str]:
    q, p = answer.question, answer.question.parameter
    yield "First, in this order:"
    yield from (f"{number}. {recovery_words.STOP[step]}" for number, step in enumerate(STOP, start=1))
    yield from (f"Caution: {line}" for line in cautions(answer)[len(STOP) :])
    yield ""
    how = "as tested" if q.measured or q.overdose is None else "reckoned from what ran in"
    yield f"{p.name.capitalize()}: {now_words(q)} ({how}), to come to {value(said(q, p), q.target)}."
    yield from (f"Danger: {words.sentence(reason)}" for reason in answer.remarks if reason.code in DANGERS)
    yield from (f"Note: {words.sentence(reason)}" for reason in answer.remarks if reason.code not in DANGERS)
    yield recovery_words.HELD
    yield f"Held: {recovery_words.names(q.held)}."
    for choice in answer.choices:
        yield ""
        yield from _choice(answer, choice)


def _choice(answer: RecoveryAnswer, choice: Choice) -> Iterator[str]:
    q = answer.question
    state = "after a new test" if answer.test_first else recovery_words.POSSIBLE
    yield f"{recovery_words.CHOICES[choice.name]}: {state if choice.proposed else recovery_words.NOT_PROPOSED}."
    yield from (words.sentence(reason) for reason in choice.reasons)
    if choice.course is None or not choice.proposed:
        return
    yield from choice_lines(answer, choice)
    yield from (_along(q, other, choice.course) for other in q.known if other is not q.parameter)
    yield tests_line(answer, choice)


def choice_lines(answer: RecoveryAnswer, choice: Choice) -> Iterator[str]:
    """Yield how long a choice takes, and of an exchange how much, what sets its pace and every day.

    Parameters
    ----------
    answer : RecoveryAnswer
        The answer.
    choice : Choice
        One of its choices, with a course.

    Yields
    ------
    str
        Lines with no-break spaces.
    """
    q, course = answer.question, choice.course
    if course is None:
        return
    if choice.name == HOLD:
        yield f"It takes {takes(course)}."
        return
    yield f"It takes {about(1000.0 * course.litres)} in {takes(course)}. {recovery_words.EXCHANGED}"
    yield _pace(q, course)
    yield from _stages(q, course)
    if course.further_stages:
        slow = about(1000.0 * course.stages[0].l_per_day / 24.0)
        yield f"Still above the target then: go on with no more than {slow} an hour, and test every day."
    if choice.changes is not None:
        yield _changes(choice.changes)


def tests_line(answer: RecoveryAnswer, choice: Choice) -> str:
    """Return when to test along a choice that has a course, and when to stop."""
    course, p = choice.course, answer.question.parameter
    if course is None:
        return ""
    if choice.name == HOLD:
        often = f"after a day, then every {span(max(1.0, p.stale_days))}"
    else:
        often = "every day before more water is exchanged"
    return f"Test now, {often}, and after {span(course.days)}. Stop as soon as a test shows the target."


def now_words(q: RecoveryQuestion) -> str:
    """Return what is too high, with the two ends that an uncertain volume gives to what is reckoned."""
    p = q.parameter
    ends = sorted(q.values_in(volume)[p.name] for volume in q.volumes_l)
    low, middle, high = (value(said(q, p), figure) for figure in (ends[0], q.values[p.name], ends[1]))
    return middle if low == high else f"{middle}, perhaps {low} to {high}"


def takes(course: Course) -> str:
    """Return how long a way down takes, with the two ends that an uncertain volume gives it."""
    low, high = (span(days) for days in course.between_days)
    return span(course.days) if low == high else f"{span(course.days)}, perhaps {low} to {high}"


def _pace(q: RecoveryQuestion, course: Course) -> str:
    set_by = course.stages[0].set_by
    if set_by == "largest_share":
        return f"No more than {about(1000.0 * q.most_l_per_day)} is exchanged in a day."
    p = next(p for p in q.known if p.name == set_by)
    return f"The pace at first is set by {p.name}, which may change by {per_day(said(q, p), hard(p))} at most."


def _stages(q: RecoveryQuestion, course: Course) -> Iterator[str]:
    for number, (stage, point) in enumerate(zip(course.stages, course.points[1:], strict=True), start=1):
        if number <= _DAYS_SHOWN:
            reached = value(said(q, q.parameter), point.values[q.parameter.name])
            yield f"Day {number}: {_stage(stage)}, to {reached}."
    if len(course.stages) > _DAYS_SHOWN:
        yield f"After day {_DAYS_SHOWN} test and ask again. At this pace the last day is day {len(course.stages)}."


def _stage(stage: Stage) -> str:
    per_hour = about(1000.0 * stage.l_per_day / 24.0)
    how_long = "" if stage.days == 1.0 else f" for {span(stage.days)}"
    return f"{about(1000.0 * stage.l_per_day * stage.days)} of water{how_long}, that is {per_hour} an hour"


def _changes(course: Course) -> str:
    sizes = [about(1000.0 * change.litres) for change in course.changes]
    count = len(sizes)
    if count == 1:
        return f"Or one change of {sizes[0]} at once."
    head = f"Or {count} single changes, 12{NBSP}h apart, {about(1000.0 * course.litres)} in all: {', '.join(sizes[:_DAYS_SHOWN])}."
    return head if count <= _DAYS_SHOWN else f"{head} Then test and ask again."


def _along(q: RecoveryQuestion, other: Parameter, course: Course) -> str:
    first, last = course.points[0].values[other.name], course.points[-1].values[other.name]
    return f"Meanwhile {other.name} goes from {value(said(q, other), first)} to {value(said(q, other), last)}."
