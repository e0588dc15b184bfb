"""What the runs of a pump show, for people: the verdict with the flow first, then what follows from it."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import datetime, tzinfo

from evenwater.engine.calibration import CalibrationAnswer, Timed
from evenwater.engine.pump_wear import PER_HOURS, Leaves, Wear
from evenwater.screens import words
from evenwater.screens.calibration_words import flow, hours, more_or_less, share
from evenwater.screens.shown import about, date_words, figure, seconds, significant, with_unit
from evenwater.wording import say, say_many


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
    verdict = say("Good enough to dose by") if answer.passed else say("Repeat the calibration")
    yield say("{verdict}: the pump gives {best}.", verdict=verdict, best=_interval(best))
    yield from (say("Repeat: {reason}", reason=words.sentence(reason)) for reason in answer.repeat)
    yield from (say("Note: {reason}", reason=words.sentence(reason)) for reason in answer.remarks)
    yield ""
    for group in answer.groups:
        yield _group(group)
    if answer.bias is not None and q.setting is not None:
        yield say(
            "Against the {setting} it is set to: {bias_value} {more_or_less}.",
            setting=flow(q.setting),
            bias_value=share(answer.bias.value),
            more_or_less=more_or_less(answer.bias.value),
        )
    if any(run.mass_g is not None for run in q.runs):
        yield say("Z factor: {z_ml_per_g}.", z_ml_per_g=with_unit(figure(q.means.z_ml_per_g, 4), say("mL per g")))
    yield _needed(answer)
    if answer.dose_seconds is not None and q.dose is not None:
        yield say(
            "A dose of {dose} takes {dose_seconds} at this flow.",
            dose=about(q.dose),
            dose_seconds=seconds(answer.dose_seconds),
        )
    if answer.priming is not None:
        held = answer.priming
        yield (
            say(
                "The line holds {dead_volume}: after a refill run {at_most_seconds}, and see the liquid at its end.",
                dead_volume=about(held.dead_volume_ml),
                at_most_seconds=_up(held.at_most_seconds),
            )
        )
    yield from (
        say(
            "Over {window} it gave at worst from {low} {more_or_less} to {high} {more_or_less_2} than set.",
            window=with_unit(figure(mouth.window_min, 1), "min"),
            low=share(mouth.low),
            more_or_less=more_or_less(mouth.low),
            high=share(mouth.high),
            more_or_less_2=more_or_less(mouth.high),
        )
        for mouth in answer.trumpet
    )
    if answer.wear is not None or answer.head is not None:
        yield ""
    if answer.wear is not None:
        yield from _wear(answer.wear, zone)
    if answer.head is not None:
        left = answer.head
        yield say(
            "The head has {left} of its {life} left{at}.",
            left=hours(left.left),
            life=hours(left.life),
            at=_until(left.at, zone),
        )


def _interval(timed: Timed) -> str:
    mean, half = timed.summary.mean, timed.known.half_width
    return say(
        "{mean} (from {mean_2} to {mean_3})",
        mean=flow(mean),
        mean_2=significant(max(mean - half, 0.0), 3),
        mean_3=flow(mean + half),
    )


def _group(timed: Timed) -> str:
    group = timed.summary
    runs = say_many("1 run", "{n} runs", group.count)
    scatter = "" if group.cv is None else say(", scattering by {cv}", cv=share(group.cv))
    return say(
        "{runs} of {seconds}: {timed}{scatter}.",
        runs=runs,
        seconds=seconds(group.seconds),
        timed=_interval(timed),
        scatter=scatter,
    )


def _needed(answer: CalibrationAnswer) -> str:
    q, wanted = answer.question, share(answer.question.wanted)
    weighed = q.runs[answer.chosen.summary.indices[-1]].mass_g is not None
    with_what = say("scale") if weighed else say("cylinder")
    if answer.needed is None:
        return say(
            "No run is long enough for this {with_what} to be off by {wanted} at most: the water's temperature is not known well enough.",
            with_what=with_what,
            wanted=wanted,
        )
    return say(
        "For this {with_what} and watch to be off by {wanted} at most, a run takes {seconds} or longer and brings {volume}.",
        with_what=with_what,
        wanted=wanted,
        seconds=_up(answer.needed.seconds),
        volume=with_unit(significant(answer.needed.volume_ml, 2), "mL"),
    )


def _up(value: float) -> str:
    """Write a time that must not be shorter."""
    return seconds(float(math.ceil(value)))


def _wear(wear: Wear, zone: tzinfo | None) -> Iterator[str]:
    yield (
        say(
            "In {per_hours} the flow {rises} by {drift} (give or take {drift_half_width}). Expected now: {expected} (give or take {expected_half_width}).",
            per_hours=hours(PER_HOURS),
            rises=say("rises") if wear.drift > 0.0 else say("falls"),
            drift=share(wear.drift),
            drift_half_width=share(wear.drift_half_width),
            expected=flow(wear.expected),
            expected_half_width=significant(wear.expected_half_width, 2),
        )
    )
    yield from (_leaves(each, zone) for each in wear.leaves)


def _leaves(leaves: Leaves, zone: tzinfo | None) -> str:
    limit = share(leaves.limit)
    if leaves.hours <= 0.0:
        return say("It is {limit} or more off already.", limit=limit)
    return say(
        "It will be {limit} off after {hours}{at}, at the earliest after {earliest_hours}{earliest_at}.",
        limit=limit,
        hours=hours(leaves.hours),
        at=_until(leaves.at, zone),
        earliest_hours=hours(leaves.earliest_hours),
        earliest_at=_until(leaves.earliest_at, zone),
    )


def _until(at: datetime | None, zone: tzinfo | None) -> str:
    return "" if at is None else f", {date_words(at.astimezone(zone))}"
