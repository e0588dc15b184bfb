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
from evenwater.screens.terms import capitalized, term, terms
from evenwater.wording import say, say_all

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
    first = tuple(say_all(recovery_words.STOP[step]) for step in STOP)
    overdose = answer.question.overdose
    if overdose is None:
        return first
    return (*first, *(terms(overdose.batch.cautions) if isinstance(overdose.batch, Dissolved) else say_all(BOTTLE)))


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
    yield say("First, in this order:")
    yield from (f"{number}. {say_all(recovery_words.STOP[step])}" for number, step in enumerate(STOP, start=1))
    yield from (say("Caution: {line}", line=line) for line in cautions(answer)[len(STOP) :])
    yield ""
    how = say("as tested") if q.measured or q.overdose is None else say("reckoned from what ran in")
    yield say(
        "{name}: {now} ({how}), to come to {target}.",
        name=capitalized(p.name),
        now=now_words(q),
        how=how,
        target=value(said(q, p), q.target),
    )
    yield from (
        say("Danger: {reason}", reason=words.sentence(reason)) for reason in answer.remarks if reason.code in DANGERS
    )
    yield from (
        say("Note: {reason}", reason=words.sentence(reason)) for reason in answer.remarks if reason.code not in DANGERS
    )
    yield say(recovery_words.HELD)
    yield say("Held: {held}.", held=recovery_words.names(q.held))
    for choice in answer.choices:
        yield ""
        yield from _choice(answer, choice)


def _choice(answer: RecoveryAnswer, choice: Choice) -> Iterator[str]:
    q = answer.question
    state = say("after a new test") if answer.test_first else say(recovery_words.POSSIBLE)
    yield f"{say_all(recovery_words.CHOICES[choice.name])}: {(state if choice.proposed else say(recovery_words.NOT_PROPOSED))}."
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
        yield say("It takes {course}.", course=takes(course))
        return
    yield say(
        "It takes {litres} in {course}. {exchanged}",
        litres=about(1000.0 * course.litres),
        course=takes(course),
        exchanged=say(recovery_words.EXCHANGED),
    )
    yield _pace(q, course)
    yield from _stages(q, course)
    if course.further_stages:
        slow = about(1000.0 * course.stages[0].l_per_day / 24.0)
        yield say("Still above the target then: go on with no more than {slow} an hour, and test every day.", slow=slow)
    if choice.changes is not None:
        yield _changes(choice.changes)


def tests_line(answer: RecoveryAnswer, choice: Choice) -> str:
    """Return when to test along a choice that has a course, and when to stop."""
    course, p = choice.course, answer.question.parameter
    if course is None:
        return ""
    if choice.name == HOLD:
        often = say("after a day, then every {stale_days}", stale_days=span(max(1.0, p.stale_days)))
    else:
        often = say("every day before more water is exchanged")
    return say(
        "Test now, {often}, and after {days}. Stop as soon as a test shows the target.",
        often=often,
        days=span(course.days),
    )


def now_words(q: RecoveryQuestion) -> str:
    """Return what is too high, with the two ends that an uncertain volume gives to what is reckoned."""
    p = q.parameter
    ends = sorted(q.values_in(volume)[p.name] for volume in q.volumes_l)
    low, middle, high = (value(said(q, p), figure) for figure in (ends[0], q.values[p.name], ends[1]))
    return middle if low == high else say("{middle}, perhaps {low} to {high}", middle=middle, low=low, high=high)


def takes(course: Course) -> str:
    """Return how long a way down takes, with the two ends that an uncertain volume gives it."""
    low, high = (span(days) for days in course.between_days)
    return (
        span(course.days)
        if low == high
        else say("{days}, perhaps {low} to {high}", days=span(course.days), low=low, high=high)
    )


def _pace(q: RecoveryQuestion, course: Course) -> str:
    set_by = course.stages[0].set_by
    if set_by == "largest_share":
        return say(
            "No more than {most_l_per_day} is exchanged in a day.", most_l_per_day=about(1000.0 * q.most_l_per_day)
        )
    p = next(p for p in q.known if p.name == set_by)
    return say(
        "The pace at first is set by {name}, which may change by {hard} at most.",
        name=term(p.name),
        hard=per_day(said(q, p), hard(p)),
    )


def _stages(q: RecoveryQuestion, course: Course) -> Iterator[str]:
    for number, (stage, point) in enumerate(zip(course.stages, course.points[1:], strict=True), start=1):
        if number <= _DAYS_SHOWN:
            reached = value(said(q, q.parameter), point.values[q.parameter.name])
            yield say("Day {number}: {stage}, to {reached}.", number=number, stage=_stage(stage), reached=reached)
    if len(course.stages) > _DAYS_SHOWN:
        yield say(
            "After day {days_shown} test and ask again. At this pace the last day is day {stages}.",
            days_shown=_DAYS_SHOWN,
            stages=len(course.stages),
        )


def _stage(stage: Stage) -> str:
    per_hour = about(1000.0 * stage.l_per_day / 24.0)
    how_long = "" if stage.days == 1.0 else say(" for {days}", days=span(stage.days))
    return say(
        "{l_per_day} of water{how_long}, that is {per_hour} an hour",
        l_per_day=about(1000.0 * stage.l_per_day * stage.days),
        how_long=how_long,
        per_hour=per_hour,
    )


def _changes(course: Course) -> str:
    sizes = [about(1000.0 * change.litres) for change in course.changes]
    count = len(sizes)
    if count == 1:
        return say("Or one change of {sizes} at once.", sizes=sizes[0])
    head = say(
        "Or {count} single changes, 12\u00a0h apart, {litres} in all: {sizes}.",
        count=count,
        litres=about(1000.0 * course.litres),
        sizes=", ".join(sizes[:_DAYS_SHOWN]),
    )
    return head if count <= _DAYS_SHOWN else say("{head} Then test and ask again.", head=head)


def _along(q: RecoveryQuestion, other: Parameter, course: Course) -> str:
    first, last = course.points[0].values[other.name], course.points[-1].values[other.name]
    return say(
        "Meanwhile {other} goes from {first} to {last}.",
        other=term(other.name),
        first=value(said(q, other), first),
        last=value(said(q, other), last),
    )
