"""What is asked before an entry is logged: was this dose given already, was this really tested, is it too much for a day?

Nothing is forbidden here: what was given was given, and must stand in the log. The keeper says whether it was.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from evenwater.engine import fields
from evenwater.engine.catalogue import Parameter
from evenwater.engine.intake import DOSES_PER_DAY
from evenwater.engine.quantities import Typed, Water, to_canonical
from evenwater.engine.reader import Ok, read
from evenwater.screens import logbook
from evenwater.screens.logbook import Taken, Values
from evenwater.screens.shown import Shown, date_time
from evenwater.screens.terms import term
from evenwater.screens.views import Message, Offer
from evenwater.wording import say

AGAIN, FLAT, TOO_MUCH = "again", "flat", "too_much"
# So many equal readings in a row are more likely copied than tested; common practice, no source.
IN_A_ROW = 3
_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Rises:
    """What a dose raises of one parameter, and what else raised it [canonical unit].

    ``this`` is the dose that is to be logged, ``others`` those in the log within a day of it, by plan or by hand; ``planned`` is
    what a plan that is followed gives in 24 hours, ``use`` what the animals take in that time.
    """

    shown: Shown
    this: float
    others: Sequence[tuple[datetime, float]]
    planned: float = 0.0
    use: float = 0.0

    @property
    def parameter(self) -> Parameter:
        """The parameter that is raised."""
        return self.shown.parameter


def dosed_per_day(pump: Values) -> float:
    """Return in how many doses a pump gives a day's; hourly where nothing that can be read is said."""
    typed = pump.get("doses_per_day", Typed(""))
    result = read(typed.text, fields.DOSES_PER_DAY, typed.unit)
    return float(result.entered.number) if isinstance(result, Ok) else float(DOSES_PER_DAY)


def used_per_day(typed: Typed, parameter: Parameter, water: Water) -> float:
    """Return a use as it was typed [canonical unit per day]; nothing where none can be read."""
    field = fields.rise("change.daily_use", parameter)
    result = read(typed.text, field, typed.unit, water)
    if not isinstance(result, Ok):
        return 0.0
    return to_canonical(float(result.entered.number), field.kind, result.entered.unit, water)


def questions(
    taken: Taken,
    earlier: Sequence[tuple[Taken, str]],
    rises: Sequence[Rises] = (),
    interval: timedelta = timedelta(0),
) -> tuple[Message, ...]:
    """Return what to ask before an entry is logged, each with the offer that logs it all the same.

    Parameters
    ----------
    taken : Taken
        What is to be logged, its instant in the keeper's zone.
    earlier : sequence of tuple (Taken, str)
        Entries of the same series, the newest first, with what and how much they are in words.
    rises : sequence of Rises
        What a dose raises.
    interval : timedelta
        How far apart doses from this jug are planned.

    Returns
    -------
    tuple of Message
        None where nothing is odd.
    """
    return tuple(
        message
        for message in (_again(taken, earlier, interval), _flat(taken, earlier), _too_much(taken, rises))
        if message
    )


def _again(taken: Taken, earlier: Sequence[tuple[Taken, str]], interval: timedelta) -> Message | None:
    """Ask with time and name where another dose is in the log nearer than doses are planned (H14)."""
    if taken.kind != logbook.DOSE:
        return None
    for before, words in earlier:
        if abs(_utc(taken.at) - _utc(before.at)) < interval:
            by = say(" by {who}", who=before.who) if before.who else ""
            when = f"{before.at:%H:%M}" if before.at.date() == taken.at.date() else date_time(before.at)
            text = say("{words}, was given at {when}{by}. Is this another one?", words=words, when=when, by=by)
            return Message(text, "", AGAIN, (Offer(say("Yes, log it too"), "", ""),))
    return None


def _flat(taken: Taken, earlier: Sequence[tuple[Taken, str]]) -> Message | None:
    """Ask where the newest readings were all the same (H9)."""
    if taken.kind != logbook.READING:
        return None
    before = [(one, words) for one, words in earlier if _utc(one.at) < _utc(taken.at)][: IN_A_ROW - 1]
    if len(before) < IN_A_ROW - 1 or any(one.value != taken.value for one, _ in before):
        return None
    when = say(" and ").join(date_time(one.at) for one, _ in reversed(before))
    text = say(
        "{before}, was read on {when} as well. Was it tested again, with fresh reagent?", before=before[0][1], when=when
    )
    return Message(text, "", FLAT, (Offer(say("Yes, it was tested again"), "", ""),))


def _too_much(taken: Taken, rises: Sequence[Rises]) -> Message | None:
    """Ask where any 24 hours around the dose hold more than the hard rise (H18)."""
    for one in rises:
        most = max(_windows(taken.at, one)) + one.planned - one.use
        hard = one.parameter.canonical(one.parameter.rise_hard)
        if one.this > 0.0 and most > hard * (1.0 + 1e-9):
            name, given = one.parameter.name, one.shown.rise(most)
            with_plan = say(", the plan that is followed included") if one.planned > 0.0 else ""
            text = say(
                "With this, {name} rises by {given} within 24 hours{with_plan}; the most is {hard}. If it was really given: log it, stop the pump, and test {name}.",
                name=term(name),
                given=given,
                with_plan=with_plan,
                hard=one.shown.rise(hard),
            )
            return Message(text, "", TOO_MUCH, (Offer(say("It was given, log it"), "", ""),))
    return None


def _windows(at: datetime, one: Rises) -> Iterator[float]:
    """Yield what was given in each 24 hours that end with a dose and hold this one."""
    begin, others = _utc(at), [(_utc(when), rise) for when, rise in one.others]
    for end in (begin, *(when for when, _ in others if begin < when < begin + _DAY)):
        yield one.this + sum(rise for when, rise in others if end - _DAY < when <= end)


def _utc(at: datetime) -> datetime:
    """Return an instant in UTC: in one zone differences are those of the wall clock, an hour wrong over a change (H17)."""
    return at.astimezone(UTC)
