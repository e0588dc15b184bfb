"""What the Correct sheet shows of a plan that is followed: the verdict, what is due, and the ramp with the retests on it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

import numpy as np

from evenwater.engine import following
from evenwater.engine.correction import Refused
from evenwater.engine.following import ABOVE, BELOW, ENDED, INSIDE, STOP, WAITING, Course, Following, Retest
from evenwater.engine.quantities import from_canonical
from evenwater.screens.answer import per_hour
from evenwater.screens.following import Kept
from evenwater.screens.logbook import Projected
from evenwater.screens.shown import Shown, about, date_time, dose, every, significant, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import AnswerView, ChartView, Floats, Message, RetestMark, WorkLine
from evenwater.wording import marked, say, say_all

PLACE_WORDS = {INSIDE: marked("inside the band"), ABOVE: marked("above the band"), BELOW: marked("below the band")}
_SECONDS = 86400.0
# A second, in days.
_AT_ONCE = 1.0 / 86400.0


@dataclass(frozen=True)
class FollowView:
    """A followed plan: the verdict, the same for the strip, its answer's place, its chart, and whether dosing must stop."""

    state: str
    said: str
    strip: str
    answer: AnswerView
    chart: ChartView
    stop: bool
    last: Retest | None


@dataclass(frozen=True)
class Judged:
    """A followed plan in short: its state, the verdict, when it is to be tested next (None: not again), when its card ends."""

    state: str
    said: str
    retest_at: datetime | None
    valid_until: datetime


def judged(plan: Kept, found: Following, now: datetime) -> Judged:
    """Return a followed plan in short, for the rounds.

    Parameters
    ----------
    plan : Kept
        The plan.
    found : Following
        Its retests held against it.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    Judged
        What stands in one line.
    """
    course = plan.course
    last = found.retests[-1].at if found.retests else course.started
    due = course.retest_at if last < course.retest_at else course.ends_at if last < course.ends_at else None
    return Judged(found.state, verdict(plan, found, now), due, course.valid_until)


def view(plan: Kept, plan_id: str, found: Following, now: datetime) -> FollowView:
    """Return what is shown of a followed plan.

    Parameters
    ----------
    plan : Kept
        The plan.
    plan_id : str
        Its id.
    found : Following
        Its retests held against it.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    FollowView
        Sentences and series in the keeper's unit.
    """
    shown = plan.shown(now)
    said = verdict(plan, found, now)
    since = date_time(plan.course.started.astimezone(now.tzinfo))
    last = found.retests[-1] if found.retests else None
    return FollowView(
        state=found.state,
        said=said,
        strip=say("Plan {plan_id} is followed since {since}. {said}", plan_id=plan_id, since=since, said=said),
        answer=_answer(plan, found, shown, said, now),
        chart=chart(plan, found, now),
        stop=found.state == STOP,
        last=last,
    )


def verdict(plan: Kept, found: Following, now: datetime) -> str:
    """Return in one or two sentences whether the water follows, and what to do.

    Parameters
    ----------
    plan : Kept
        The plan.
    found : Following
        Its retests held against it.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    str
        Words, with the figures that decide.
    """
    shown, name = plan.shown(now), plan.parameter.name
    course = plan.course
    if found.state == ENDED:
        return say(
            "Its card was valid until {valid_until}. Test {name}, then end it or plan again.",
            valid_until=date_time(course.valid_until.astimezone(now.tzinfo)),
            name=term(name),
        )
    if found.state == WAITING:
        due = date_time(course.retest_at.astimezone(now.tzinfo))
        return (
            say("The test of {name} is due now.", name=term(name))
            if found.retest_due
            else say("No reading since then. Test {name} by {due}.", name=term(name), due=due)
        )
    last = found.retests[-1]
    reading = say(
        "{last_value} is {place_words} of {last}",
        last_value=shown.value(last.value),
        place_words=say_all(PLACE_WORDS[last.place]),
        last=_band(shown, last),
    )
    if found.state == STOP:
        why = (
            say(
                "{last_value} is above {stop_above}, where the card says stop.",
                last_value=shown.value(last.value),
                stop_above=shown.value(course.stop_above),
            )
            if found.above_stop
            else say(
                "{in_a_row} readings in a row lie above the band, the last {last_value} above {last}.",
                in_a_row=_times(found.in_a_row),
                last_value=shown.value(last.value),
                last=_band(shown, last),
            )
        )
        return say("Stop dosing {name} now. {why} The animals may use less than before.", name=term(name), why=why)
    if found.state == ABOVE:
        return say(
            "{reading}. Test again with a fresh kit before the next doses; a second reading above it means stop.",
            reading=reading,
        )
    if found.state == BELOW:
        more = (
            say("Look at line, pump and jug")
            if found.in_a_row < following.STOP_AFTER
            else say("Look at line, pump and jug now")
        )
        return say(
            "{reading}. {more}; the animals may use more than before. Never make up what is missing.",
            reading=reading,
            more=more,
        )
    return f"{reading}." + (say(" Test {name} now.", name=term(name)) if found.retest_due else "")


def _band(shown: Shown, retest: Retest) -> str:
    low, high = (
        significant(shown.number(v), 5 if shown.unit.startswith("SG") else 3) for v in (retest.low, retest.high)
    )
    return say("{low} to {high}", low=low, high=with_unit(high, shown.unit_words))


def _times(count: int) -> str:
    return {2: say("Two"), 3: say("Three")}.get(count, str(count))


def _answer(plan: Kept, found: Following, shown: Shown, said: str, now: datetime) -> AnswerView:
    course = plan.course
    working = (*(_line(shown, retest, now) for retest in found.retests), *_volume(plan, found))
    if found.state == STOP:
        return AnswerView(
            "stop", say("Stop"), say("dosing now"), messages=(Message(said, "", STOP),), working=working, spoken=said
        )
    if found.state == ENDED:
        return AnswerView("refused", messages=(Message(said, "", found.state),), working=working, spoken=said)
    ramp = now < course.ends_at
    single = course.dose_ml if ramp else course.upkeep_ml
    if single <= 0.0:
        text = say("The ramp is over, and nothing is dosed to keep the value.")
        return AnswerView(
            "refused", messages=(Message(f"{text} {said}", "", found.state),), working=working, spoken=text
        )
    ends = date_time(course.ends_at.astimezone(now.tzinfo))
    second = f"{dose(single)} {every(course.per_day)}, {(say('until ') + ends if ramp else say('to keep it there'))}"
    expected = say(
        "{low} to {high}",
        low=significant(shown.number(found.low), 3),
        high=with_unit(significant(shown.number(found.high), 3), shown.unit_words),
    )
    third = say(
        "By now {found}, {given}. The water should hold {expected} ({expected_2}).",
        found=_doses(found, course),
        given=about(found.given_ml),
        expected=shown.value(found.expected),
        expected_2=expected,
    )
    odd = found.state in (ABOVE, BELOW)
    remarks = (said,) if odd else ()
    messages = () if odd else (Message(said, "", found.state),)
    number, unit = hourly(course, ramp)
    return AnswerView(
        "answered",
        figure=number,
        figure_unit=unit,
        second=second,
        third=third,
        working=working,
        remarks=remarks,
        messages=messages,
        spoken=f"{number} {unit}. {second}. {said}",
    )


def hourly(course: Course, ramp: bool) -> tuple[str, str]:
    """Return the figure to set now and its unit, as the card of the plan has it."""
    return per_hour(course.dose_ml if ramp else course.upkeep_ml, course.per_day)


def _doses(found: Following, course: Course) -> str:
    if found.doses_given <= course.count:
        return say("{doses_given} of {count} doses are due", doses_given=found.doses_given, count=course.count)
    return say(
        "all {count} doses and {doses_given} of the upkeep are due",
        count=course.count,
        doses_given=found.doses_given - course.count,
    )


def _line(shown: Shown, retest: Retest, now: datetime) -> WorkLine:
    at = date_time(retest.at.astimezone(now.tzinfo))
    return WorkLine(
        at,
        say("{retest_value}, expected {retest}", retest_value=shown.value(retest.value), retest=_band(shown, retest)),
        say_all(PLACE_WORDS[retest.place]),
    )


def _volume(plan: Kept, found: Following) -> tuple[WorkLine, ...]:
    """Return what net volume the last rise speaks of; nothing where it cannot be told."""
    seen = following.volume(plan.course, found.retests[-1], plan.volume_l) if found.retests else None
    if seen is None or isinstance(seen, Refused):
        return ()
    low, high, said = (significant(v, 3) for v in (seen.low, seen.high, seen.value))
    used = with_unit(significant(plan.volume_l, 3), "L")
    how = say("if all doses arrived and the use is right; {used} was reckoned with", used=used)
    return (
        WorkLine(
            say("Net volume by this rise"),
            how,
            say("{said} ({low} to {high})", said=with_unit(said, "L"), low=low, high=high),
        ),
    )


def chart(plan: Kept, found: Following, now: datetime) -> ChartView:
    """Return the ramp of a followed plan with its retests on it, times in seconds since the epoch (UTC)."""
    course, shown = plan.course, plan.shown(now)
    today = (now - course.started) / timedelta(days=1)
    # The what-ifs leave the plan at this very instant.
    days = np.union1d(following.instants(course, now + timedelta(hours=6)), [today, today + _AT_ONCE])
    lines = following.expected(course, days)
    start = course.started.timestamp()

    def values(series: Floats) -> Floats:
        if plan.unit.startswith("SG"):
            return np.array([shown.number(float(v)) for v in series])
        return series * shown.number(1.0)

    count, _ = following.doses_until(course, course.started + timedelta(days=float(days[-1])))
    numbers = np.arange(1, count + 1, dtype=np.float64)
    target = shown.number(course.target)
    stops, nothing = _from_now(course, found, days, today)
    return ChartView(
        times=start + days * _SECONDS,
        plan=values(lines.plan),
        low=values(lines.low),
        high=values(lines.high),
        uptake_stops=values(stops),
        nothing=values(nothing),
        target=target,
        fastest=(np.array([start, start]), values(lines.plan[:1].repeat(2))),
        doses_at=start + numbers * course.interval_days * _SECONDS,
        doses_ml=np.where(numbers <= course.count, course.dose_ml, course.upkeep_ml),
        ramp_end=course.ends_at.timestamp(),
        measured_at=start,
        measured=shown.number(course.measured),
        unit=shown.unit_words,
        title=f"{capitalized(plan.parameter.name)}, {shown.unit_words}",
        decimals=0 if target >= 100.0 else max(1, 2 - int(np.floor(np.log10(target))) if target > 0.0 else 2),
        labels={
            "plan": say("plan"),
            "uptake_stops": say("if uptake stops now"),
            "nothing": say("if dosing stops now"),
            "target": say("target"),
            "fastest": "",
        },
        retests=tuple(RetestMark(r.at.timestamp(), shown.number(r.value), r.place) for r in found.retests),
        now=now.timestamp(),
    )


def projected(plan: Kept, ended: datetime | None, unit: str) -> Projected:
    """Return what a plan expected while it was followed.

    Parameters
    ----------
    plan : Kept
        The plan.
    ended : datetime or None
        When it ended; None while it is followed, and then as far as its card is valid.
    unit : str
        Id of the unit of the chart it is drawn in.

    Returns
    -------
    Projected
        Series in that unit.
    """
    course = plan.course
    until = course.valid_until if ended is None else min(ended, course.valid_until)
    days = following.instants(course, until)
    last = max((until - course.started) / timedelta(days=1), _AT_ONCE)
    days = np.union1d(days[days < last], [last])
    lines = following.expected(course, days)
    factor = from_canonical(1.0, plan.parameter.kind, unit)
    return Projected(
        course.started.timestamp() + days * _SECONDS, lines.plan * factor, lines.low * factor, lines.high * factor
    )


def _from_now(course: Course, found: Following, days: Floats, today: float) -> tuple[Floats, Floats]:
    """Return what becomes of the water [canonical unit] if from now on nothing is used, and if nothing is dosed.

    Where the last reading lies outside the band the lines leave from it, and not from the plan.
    """
    here = found.expected
    if found.retests and found.retests[-1].place != INSIDE:
        here += found.retests[-1].value - found.retests[-1].plan
    lines = following.expected(course, days)
    later = np.maximum(days - today, 0.0)
    per_day = course.per_day * course.per_ml
    ramp = np.clip(days, min(today, course.lasts_days), course.lasts_days) - min(today, course.lasts_days)
    dosed = ramp * course.dose_ml * per_day + (later - np.minimum(ramp, later)) * course.upkeep_ml * per_day
    stops = np.where(days <= today, lines.plan, here + dosed)
    return stops, np.where(days <= today, lines.plan, np.maximum(here - course.use * later, 0.0))
