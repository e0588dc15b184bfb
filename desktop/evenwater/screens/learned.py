"""What the log says the animals use, for the Log sheet and as an offer on the Correct sheet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine import quantities
from evenwater.engine.catalogue import Parameter
from evenwater.engine.consumption import ConsumptionAnswer, ConsumptionQuestion, solve
from evenwater.engine.consumption_estimate import Span
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record
from evenwater.engine.consumption_ratio import ratio
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import Typed, Water
from evenwater.screens import consumption_lines, consumption_words, words
from evenwater.screens.shown import span
from evenwater.wording import say

# Older readings say nothing of the use as it is now, and cost time with every entry.
LOOKS_BACK = timedelta(days=180)


@dataclass(frozen=True)
class Noted:
    """What the log holds of one parameter of one system.

    ``readings`` are instants and values [canonical unit]; ``doses`` instants, amounts [mL] and what a millilitre carries
    [canonical unit times L per mL]; ``exchanges`` instants and volumes [L].
    """

    readings: Sequence[tuple[datetime, float]]
    doses: Sequence[tuple[datetime, float, float]] = ()
    exchanges: Sequence[tuple[datetime, float]] = ()


@dataclass(frozen=True)
class Learned:
    """The use as it is now: ``lines`` for people, ``use`` as it would be typed, and a short sentence to offer it with.

    ``odd_at`` are the instants of readings that are not believed. ``use`` is None where it is not clear. ``span`` is the use with
    its 90 % interval [canonical unit per day], None where nothing could be learned.
    """

    lines: tuple[str, ...]
    use: Typed | None
    offer: str
    odd_at: tuple[datetime, ...]
    span: Span | None = None


def ratio_lines(alkalinity: Learned, calcium: Learned) -> tuple[str, ...]:
    """Return what the two uses say of each other: nothing where they go together as in skeletons, or are not known well.

    Parameters
    ----------
    alkalinity, calcium : Learned
        What the log says of them.

    Returns
    -------
    tuple of str
        That the ratio departs, and what may be behind it.
    """
    if alkalinity.span is None or calcium.span is None:
        return ()
    found = ratio(alkalinity.span, calcium.span)
    return tuple(words.sentence(reason) for reason in found.reasons) if found.departs else ()


def learn(parameter: Parameter, noted: Noted, volume_l: float | None, water: Water, now: datetime) -> Learned:
    """Learn the use per day from what was noted in the last half year.

    Parameters
    ----------
    parameter : Parameter
        The parameter.
    noted : Noted
        Its readings, and what moved it besides.
    volume_l : float or None
        Net volume [L]; without it doses and exchanges cannot be counted.
    water : Water
        The system's water.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    Learned
        What the log says, or why it says nothing yet.
    """
    if volume_l is None and (noted.doses or noted.exchanges):
        return Learned((say("Fill in the net volume: without it doses cannot be counted."),), None, "", ())
    since = now - LOOKS_BACK
    sd = parameter.canonical(parameter.kit_accuracy) / 2.0
    readings = tuple(Reading(at, value, sd) for at, value in noted.readings if at >= since)
    doses = tuple(Dose(at, ml * per_ml / (volume_l or 1.0)) for at, ml, per_ml in noted.doses if at >= since)
    natural = parameter.canonical(parameter.natural)
    exchanges = tuple(
        Exchange(at, min(litres / (volume_l or litres), 1.0), natural) for at, litres in noted.exchanges if at >= since
    )
    question = ConsumptionQuestion(now, parameter, parameter.display_unit, water, Record(readings, doses, exchanges))
    found = solve(question)
    if isinstance(found, Refused):
        return Learned(tuple(words.sentence(reason) for reason in found.reasons), None, "", ())
    said = consumption_lines.lines(found, now.tzinfo)
    # The weeks before stand in the chart.
    short = said[: len(said) - len(found.estimate.by_period) - 1]
    assumed = (say("New water is taken to be like natural seawater."),) if exchanges else ()
    odd = tuple(readings[odd.index].at for odd in found.estimate.odd)
    return Learned(
        (*(line for line in short if line), *assumed), _use(found), _offer(found, now), odd, found.estimate.use
    )


def _use(found: ConsumptionAnswer) -> Typed | None:
    use = found.estimate.use
    if use.low <= 0.0:
        return None
    shown = consumption_lines.shown_of(found, None)
    return Typed(quantities.significant(shown.number(use.value), 2), f"{shown.rise_unit} per day")


def _offer(found: ConsumptionAnswer, now: datetime) -> str:
    if _use(found) is None:
        return ""
    shown = consumption_lines.shown_of(found, now.tzinfo)
    use = found.estimate.use
    ends = (consumption_words.minus(shown.per_day(end).partition("\u00a0")[0]) for end in (use.low, use.high))
    return say(
        "From the log: {use_value} ({ends}), last reading {since_days} ago.",
        use_value=shown.per_day(use.value),
        ends=say(" to ").join(ends),
        since_days=span(found.estimate.since_days),
    )
