"""What the printed timetable says: each pump's setting, then every dose of the day in order of time, cautions before both."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine.quantities import Typed
from evenwater.engine.timetable import TimetableAnswer
from evenwater.screens import correct, plan_id
from evenwater.screens.clock_change import ClockChange, clock_words, next_change
from evenwater.screens.names import shown_name
from evenwater.screens.shown import date_words, dose, seconds
from evenwater.screens.timetable_given import Given, pairs
from evenwater.screens.timetable_rows import PumpSummary, TimetableRow, every_dose, summaries
from evenwater.screens.timetable_wishes import clock
from evenwater.screens.timetable_words import minutes
from evenwater.screens.views import DoseRow

# What a tank uses changes; common practice, no source.
_LONGEST = timedelta(days=30)
_ONE_DAY = timedelta(days=1)
EMERGENCY = "In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:"
SHEET_WINS = "The bag's own safety sheet and local rules come first."
RULES = (
    "Never make up missed doses: go on with the next one.",
    "Test again within the week, and after every change of doses, batch or pump.",
)


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
    rules: tuple[str, ...] = RULES


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
        title="Timetable of all pumps",
        system=shown_name(system, "Unnamed system"),
        volume=f"Net volume {correct.volume_words(system).replace(' net', '', 1)}.",
        code=plan_id.timetable_code(answer),
        issued=f"Issued {date_words(now)} {now:%H:%M}",
        replace="Replace this sheet when the code of the timetable changes.",
        valid_until=f"Valid until {date_words(until)}",
        because=because,
        cautions=_cautions(given),
        emergency=EMERGENCY,
        separation=_separation(answer, given),
        maxima=tuple(
            f"Never more than {dose(most)} of {one.additive_name} in 24 hours, all doses together."
            for one, most in zip(given, answer.seen.in_24_hours_ml, strict=True)
        ),
        stop=tuple(
            f"Stop and test again if {one.parameter} reads above {one.stop_above}." for one in given if one.stop_above
        ) or ("Stop and test again if a value reads higher than it is usually kept.",),
        rows=tuple(_setting(answer, place, told[place]) for place in order),
        every=every_dose(answer, given),
        count=f"Every dose of the day in order of time, {len(answer.rows)} in all",
        plans=tuple(
            f"The doses of {one.parameter} are those of plan {one.plan_id}. Its dose card says when they end; here is at which minute."
            for one in given
            if one.plan_id
        ),
        clocks=clock_words(change),
    )  # fmt: skip


def _valid(given: Sequence[Given], now: datetime, change: ClockChange | None) -> tuple[datetime, str]:
    """Return the last day that the sheet holds, and why it ends."""
    ends = [(now + _LONGEST, "After 30 days the tank uses something else: test and print it again.")]
    for one in given:
        if one.valid_until is not None:
            said = f"Then the dose card of plan {one.plan_id} ends."
            ends.append((one.valid_until.astimezone(now.tzinfo), said))
    if change is not None:
        # The day before, in whole days: nobody reads a card in the night of the change.
        ends.append((change.at - _ONE_DAY, "Then the clocks on the wall are changed."))
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
    return (*found, SHEET_WINS)


def _separation(answer: TimetableAnswer, given: Sequence[Given]) -> tuple[str, ...]:
    names = tuple(one.parameter for one in given)
    found = []
    for pair, nearest_s in zip(answer.question.apart, answer.seen.nearest_s, strict=True):
        first, second = (given[place].additive_name for place in (pair.first, pair.second))
        found.append(
            f"{first} and {second}: {minutes(nearest_s / 60.0)} apart at the nearest, never under {minutes(pair.minutes)}."
        )
    if pairs(names):
        found.append("Use another outlet for each, in flow. Never mix the concentrates.")
    return tuple(found)


def _setting(answer: TimetableAnswer, place: int, told: PumpSummary) -> DoseRow:
    own = [row for row in answer.rows if row.pump == place]
    sizes = sorted({(row.ml, row.run_time_s) for row in own})
    runs = " or ".join(seconds(run_time_s) for _, run_time_s in sizes)
    carried = f" {told.carried[:1].upper()}{told.carried[1:]}." if answer.pumps[place].doses.carries else ""
    return DoseRow(
        when=f"{told.doses[:1].upper()}{told.doses[1:]}\nFirst at {clock(own[0].minute)}",
        dose=" or ".join(dose(ml) for ml, _ in sizes),
        additive=told.additive,
        setting=f"{told.pump}: runs {runs} each time. {told.in_24_hours} in 24 hours.{carried}",
    )
