"""What the runs of a pump show, for people: the verdict with the flow first, then what follows from it."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import datetime, tzinfo

from evenwater.engine.calibration import CalibrationAnswer, Timed
from evenwater.engine.pump_wear import PER_HOURS, Leaves, Wear
from evenwater.engine.quantities import figure, significant
from evenwater.screens import words
from evenwater.screens.calibration_words import flow, hours, more_or_less, share
from evenwater.screens.shown import about, date_words, seconds, with_unit


def lines(answer: CalibrationAnswer, zone: tzinfo | None) -> tuple[str, ...]:
    """Return the lines of an answer.

    Parameters
    ----------
    answer : CalibrationAnswer
        Flow, verdict and all that follows.
    zone : tzinfo or None
        The zone that dates are written in.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    return tuple(line.replace("\u00a0", " ") for line in _lines(answer, zone))


def _lines(answer: CalibrationAnswer, zone: tzinfo | None) -> Iterator[str]:
    q, best = answer.question, answer.chosen
    verdict = "Good enough to dose by" if answer.passed else "Repeat the calibration"
    yield f"{verdict}: the pump gives {_interval(best)}."
    yield from (f"Repeat: {words.sentence(reason)}" for reason in answer.repeat)
    yield from (f"Note: {words.sentence(reason)}" for reason in answer.remarks)
    yield ""
    for group in answer.groups:
        yield _group(group)
    if answer.bias is not None and q.setting is not None:
        yield f"Against the {flow(q.setting)} it is set to: {share(answer.bias.value)} {more_or_less(answer.bias.value)}."
    if any(run.mass_g is not None for run in q.runs):
        yield f"Z factor: {with_unit(figure(q.means.z_ml_per_g, 4), 'mL per g')}."
    yield _needed(answer)
    if answer.dose_seconds is not None and q.dose is not None:
        yield f"A dose of {about(q.dose)} takes {seconds(answer.dose_seconds)} at this flow."
    if answer.priming is not None:
        held = answer.priming
        yield (
            f"The line holds {about(held.dead_volume_ml)}: after a refill run {_up(held.at_most_seconds)}, and see the liquid at its end."
        )
    yield from (
        f"Over {with_unit(figure(mouth.window_min, 1), 'min')} it gave at worst from {share(mouth.low)} {more_or_less(mouth.low)} to "
        f"{share(mouth.high)} {more_or_less(mouth.high)} than set."
        for mouth in answer.trumpet
    )
    if answer.wear is not None or answer.head is not None:
        yield ""
    if answer.wear is not None:
        yield from _wear(answer.wear, zone)
    if answer.head is not None:
        left = answer.head
        yield f"The head has {hours(left.left)} of its {hours(left.life)} left{_until(left.at, zone)}."


def _interval(timed: Timed) -> str:
    mean, half = timed.summary.mean, timed.known.half_width
    return f"{flow(mean)} (from {significant(max(mean - half, 0.0), 3)} to {flow(mean + half)})"


def _group(timed: Timed) -> str:
    group = timed.summary
    runs = "1 run" if group.count == 1 else f"{group.count} runs"
    scatter = "" if group.cv is None else f", scattering by {share(group.cv)}"
    return f"{runs} of {seconds(group.seconds)}: {_interval(timed)}{scatter}."


def _needed(answer: CalibrationAnswer) -> str:
    q, wanted = answer.question, share(answer.question.wanted)
    weighed = q.runs[answer.chosen.summary.indices[-1]].mass_g is not None
    with_what = "scale" if weighed else "cylinder"
    if answer.needed is None:
        return f"No run is long enough for this {with_what} to be off by {wanted} at most: the water's temperature is not known well enough."
    return (
        f"For this {with_what} and watch to be off by {wanted} at most, a run takes {_up(answer.needed.seconds)} or longer and brings "
        f"{with_unit(significant(answer.needed.volume_ml, 2), 'mL')}."
    )


def _up(value: float) -> str:
    """Write a time that must not be shorter."""
    return seconds(float(math.ceil(value)))


def _wear(wear: Wear, zone: tzinfo | None) -> Iterator[str]:
    yield (
        f"In {hours(PER_HOURS)} the flow {'rises' if wear.drift > 0.0 else 'falls'} by {share(wear.drift)} (give or take "
        f"{share(wear.drift_half_width)}). "
        f"Expected now: {flow(wear.expected)} (give or take {significant(wear.expected_half_width, 2)})."
    )
    yield from (_leaves(each, zone) for each in wear.leaves)


def _leaves(leaves: Leaves, zone: tzinfo | None) -> str:
    limit = share(leaves.limit)
    if leaves.hours <= 0.0:
        return f"It is {limit} or more off already."
    return (
        f"It will be {limit} off after {hours(leaves.hours)}{_until(leaves.at, zone)}, at the earliest after "
        f"{hours(leaves.earliest_hours)}{_until(leaves.earliest_at, zone)}."
    )


def _until(at: datetime | None, zone: tzinfo | None) -> str:
    return "" if at is None else f", {date_words(at.astimezone(zone))}"
