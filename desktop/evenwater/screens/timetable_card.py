"""What the printed timetable says: each pump's setting, then every dose of the day in order of time, cautions before both."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from evenwater.engine.quantities import Typed
from evenwater.engine.timetable import TimetableAnswer
from evenwater.screens import correct, plan_id
from evenwater.screens.clock_change import ClockChange, clock_words, next_change
from evenwater.screens.names import shown_name
from evenwater.screens.shown import date_words, dose, seconds
from evenwater.screens.terms import term
from evenwater.screens.timetable_given import Given, pairs
from evenwater.screens.timetable_rows import PumpSummary, TimetableRow, every_dose, summaries
from evenwater.screens.timetable_wishes import clock
from evenwater.screens.timetable_words import minutes
from evenwater.screens.views import DoseRow
from evenwater.wording import marked, say, say_all

# What a tank uses changes; common practice, no source.
_LONGEST = timedelta(days=30)
_ONE_DAY = timedelta(days=1)
EMERGENCY = marked("In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:")
SHEET_WINS = marked("The bag's own safety sheet and local rules come first.")
RULES = (
    marked("Never make up missed doses: go on with the next one."),
    marked("Test again within the week, and after every change of doses, batch or pump."),
)


def rules() -> tuple[str, ...]:
    """Return what holds for whoever works by it."""
    return say_all(RULES)


@dataclass(frozen=True)
class TimetablePage:
    """The whole sheet, before it is dealt out to pages. ``rows`` are the pumps' settings, ``every`` all doses in order of time."""

    title: str
    system: str
    volume: str
    code: str
    issued: str
    replace: str
    valid_until: str
    because: str
    cautions: tuple[str, ...]
    emergency: str
    separation: tuple[str, ...]
    maxima: tuple[str, ...]
    stop: tuple[str, ...]
    rows: tuple[DoseRow, ...]
    every: tuple[TimetableRow, ...]
    count: str
    plans: tuple[str, ...]
    clocks: str
    rules: tuple[str, ...] = field(default_factory=rules)


def page(answer: TimetableAnswer, given: Sequence[Given], system: Mapping[str, Typed], now: datetime) -> TimetablePage:
    """Return the sheet of a timetable.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.
    given : sequence of Given
        What each of its pumps gives.
    system : mapping of str to Typed
        The system's fields.
    now : datetime
        The present in the keeper's zone, which all dates are written in.

    Returns
    -------
    TimetablePage
        Everything that stands on it.
    """
    change = next_change(now)
    until, because = _valid(given, now, change)
    order = sorted(range(len(given)), key=lambda place: min(row.minute for row in answer.rows if row.pump == place))
    told = summaries(answer, given)
    return TimetablePage(
        title=say('Timetable of all pumps'),
        system=shown_name(system, say('Unnamed system')),
        volume=correct.volume_sentence(system),
        code=plan_id.timetable_code(answer),
        issued=say('Issued {date_words} {clock}', date_words=date_words(now), clock=f'{now:%H:%M}'),
        replace=say("Replace this sheet when the code of the timetable changes."),
        valid_until=say('Valid until {until}', until=date_words(until)),
        because=because,
        cautions=_cautions(given),
        emergency=say(EMERGENCY),
        separation=_separation(answer, given),
        maxima=tuple(
            say("Never more than {most} of {additive_name} in 24 hours, all doses together.", most=dose(most), additive_name=one.additive_name)
            for one, most in zip(given, answer.seen.in_24_hours_ml, strict=True)
        ),
        stop=tuple(
            say("Stop and test again if {parameter} reads above {stop_above}.", parameter=term(one.parameter), stop_above=one.stop_above) for one in given if one.stop_above
        ) or (say("Stop and test again if a value reads higher than it is usually kept."),),
        rows=tuple(_setting(answer, place, told[place]) for place in order),
        every=every_dose(answer, given),
        count=say("Every dose of the day in order of time, {rows} in all", rows=len(answer.rows)),
        plans=tuple(
            say("The doses of {parameter} are those of plan {plan_id}. Its dose card says when they end; here is at which minute.", parameter=term(one.parameter), plan_id=one.plan_id)
            for one in given
            if one.plan_id
        ),
        clocks=clock_words(change),
    )  # fmt: skip


def _valid(given: Sequence[Given], now: datetime, change: ClockChange | None) -> tuple[datetime, str]:
    """Return the last day that the sheet holds, and why it ends."""
    ends = [(now + _LONGEST, say("After 30 days the tank uses something else: test and print it again."))]
    for one in given:
        if one.valid_until is not None:
            said = say("Then the dose card of plan {plan_id} ends.", plan_id=one.plan_id)
            ends.append((one.valid_until.astimezone(now.tzinfo), said))
    if change is not None:
        # The day before, in whole days: nobody reads a card in the night of the change.
        ends.append((change.at - _ONE_DAY, say("Then the clocks on the wall are changed.")))
    until, because = min(ends, key=lambda end: end[0].timestamp())
    return max(until, now, key=lambda instant: instant.timestamp()), because


def _cautions(given: Sequence[Given]) -> tuple[str, ...]:
    """Return a paragraph for each additive: its hazards, and how it is handled; what two have in common stands once."""
    said: set[str] = set()
    found = []
    for one in given:
        new = [line for line in (*one.hazards, *one.cautions) if line not in said]
        said.update(new)
        found += [" ".join(new)] if new else []
    return (*found, say(SHEET_WINS))


def _separation(answer: TimetableAnswer, given: Sequence[Given]) -> tuple[str, ...]:
    names = tuple(one.parameter for one in given)
    found = []
    for pair, nearest_s in zip(answer.question.apart, answer.seen.nearest_s, strict=True):
        first, second = (given[place].additive_name for place in (pair.first, pair.second))
        found.append(
            say(
                "{first} and {second}: {nearest} apart at the nearest, never under {minutes}.",
                first=first,
                second=second,
                nearest=minutes(nearest_s / 60.0),
                minutes=minutes(pair.minutes),
            )
        )
    if pairs(names):
        found.append(say("Use another outlet for each, in flow. Never mix the concentrates."))
    return tuple(found)


def _setting(answer: TimetableAnswer, place: int, told: PumpSummary) -> DoseRow:
    own = [row for row in answer.rows if row.pump == place]
    sizes = sorted({(row.ml, row.run_time_s) for row in own})
    runs = say(" or ").join(seconds(run_time_s) for _, run_time_s in sizes)
    carried = f" {told.carried[:1].upper()}{told.carried[1:]}." if answer.pumps[place].doses.carries else ""
    return DoseRow(
        when=say(
            "{doses}{doses_2}\nFirst at {minute}",
            doses=told.doses[:1].upper(),
            doses_2=told.doses[1:],
            minute=clock(own[0].minute),
        ),
        dose=say(" or ").join(dose(ml) for ml, _ in sizes),
        additive=told.additive,
        setting=say(
            "{pump}: runs {runs} each time. {in_24_hours} in 24 hours.{carried}",
            pump=told.pump,
            runs=runs,
            in_24_hours=told.in_24_hours,
            carried=carried,
        ),
    )
