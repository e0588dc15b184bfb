"""The sentences about a pump's calibration, its wear and its line."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from evenwater.screens.shown import date_words, figure, seconds, significant, with_unit
from evenwater.wording import say, say_many

Params = Mapping[str, Any]


def flow(ml_per_min: float, digits: int = 3) -> str:
    """Write a pump's flow."""
    return with_unit(significant(ml_per_min, digits), say("mL per min"))


def share(value: float, digits: int = 2) -> str:
    """Write a share [1] in per cent, without its sign."""
    return with_unit(significant(abs(100.0 * value), digits), "%")


def hours(value: float) -> str:
    """Write running hours, whole ones where there are many."""
    return with_unit(figure(value, 0 if abs(value) >= 20.0 else 1), "h")


def more_or_less(value: float) -> str:
    """Say whether a difference is more or less."""
    return say("more") if value > 0.0 else say("less")


def _numbers(runs: Sequence[int]) -> str:
    """Name runs by their numbers."""
    if len(runs) == 1:
        return say("Run {runs}", runs=runs[0])
    return say("Runs {first} and {last}", first=", ".join(str(n) for n in runs[:-1]), last=runs[-1])


def _each(runs: Sequence[int]) -> str:
    return "" if len(runs) == 1 else say(" each")


def _too_coarse(p: Params) -> str:
    with_what = say("This scale") if p["weighed"] else say("This cylinder")
    head = say(
        "{with_what} tells the flow of such a run to {share} only, and {most} is the least that is of use.",
        with_what=with_what,
        share=share(p["share"]),
        most=share(p["most"]),
    )
    if p["seconds"] is None:
        return say("{head} Measure the temperature of the water, or take a finer one.", head=head)
    return say(
        "{head} Let the pump run for {seconds} or longer, or take a finer one.",
        head=head,
        seconds=seconds(math.ceil(p["seconds"])),
    )


# None of these needs the keeper's unit.
SENTENCES: dict[str, Callable[[Params], str]] = {
    "no_runs": lambda p: say(
        "There is no run yet. Let the pump run into a cylinder or onto a scale {fewest} times.", fewest=p["fewest"]
    ),
    "nothing_delivered": lambda p: say(
        "The pump ran and nothing came out. Look for air in the line, crust at its end, a split tube or an empty jug, prime the line and calibrate again."
    ),
    "flow_unusable": lambda p: say("These figures are no flow of a pump. Write them again."),
    "run_without_liquid": lambda p: say(
        "{runs} brought nothing. Look for air in the line, prime it and repeat.", runs=_numbers(p["runs"])
    ),
    "runs_too_few": lambda p: (
        (say_many("A single run tells", "{n} runs tell", p["count"]))
        + say(
            " too little. Repeat until there are {fewest} of {seconds} each.",
            fewest=p["fewest"],
            seconds=seconds(p["seconds"]),
        )
    ),
    "spread_too_wide": lambda p: say(
        "The runs scatter by {spread}, and {most} is the most. Look for air in the line and a worn tube, prime it and repeat.",
        spread=share(p["spread"]),
        most=share(p["most"]),
    ),
    "flow_loosely_known": lambda p: say(
        "These runs tell the flow to within {share} only; within {good} would be good. Find out what scatters, or make more runs.",
        share=share(p["share"]),
        good=share(p["good"]),
    ),
    "run_of_other_length": lambda p: say(
        "{runs} lasted {seconds}{runs_2}, the others {others}: a short run gives another flow than a long one, so they do not count together. Make {fewest} of one length.",
        runs=_numbers(p["runs"]),
        seconds=seconds(p["seconds"]),
        runs_2=_each(p["runs"]),
        others=seconds(p["others"]),
        fewest=p["fewest"],
    ),
    "measured_too_coarsely": _too_coarse,
    "flow_off_amber": lambda p: say(
        "The pump gives {bias} {more_or_less} than the {setting} it is set to. Enter {flow} as its flow, and look at the tube.",
        bias=share(p["bias"]),
        more_or_less=more_or_less(p["bias"]),
        setting=flow(p["setting"]),
        flow=flow(p["flow"]),
    ),
    "flow_off_red": lambda p: say(
        "The pump gives {bias} {more_or_less} than the {setting} it is set to. Do not dose on with that figure: look for a worn tube, air and crust, then calibrate again. Now it gives {flow}.",
        bias=share(p["bias"]),
        more_or_less=more_or_less(p["bias"]),
        setting=flow(p["setting"]),
        flow=flow(p["flow"]),
    ),
    "dose_not_calibrated": lambda p: (
        say(
            "A dose of {dose} takes {dose_seconds}, but these runs lasted {seconds}. ",
            dose=with_unit(significant(p["dose_ml"], 3), "mL"),
            dose_seconds=seconds(p["dose_seconds"]),
            seconds=seconds(p["seconds"]),
        )
        + (
            say("Short doses are less accurate: collect several doses of that size and calibrate with them.")
            if p["dose_seconds"] < p["seconds"]
            else say("Calibrate with runs as long as a dose.")
        )
    ),
    "short_doses_differ": lambda p: say(
        "In {seconds} the pump gives {difference} {more_or_less} per minute than in {than}. Dose by the runs that are nearest to the dose in use.",
        seconds=seconds(p["seconds"]),
        difference=share(p["difference"]),
        more_or_less=more_or_less(p["difference"]),
        than=seconds(p["than"]),
    ),
    "graduation_assumed": lambda p: say(
        "The cylinder's graduation is not said, so {graduation} is taken, the last digit that was read.",
        graduation=with_unit(significant(p["graduation_ml"], 2), "mL"),
    ),
    "readability_assumed": lambda p: say(
        "The scale's last digit is not said, so {grams} is taken, the last digit that was written.",
        grams=with_unit(significant(p["grams"], 2), "g"),
    ),
    "temperature_assumed": lambda p: say(
        "The water's temperature is not said, so {degc} is taken, give or take {off}.",
        degc=with_unit(figure(p["degc"], 0), "°C"),
        off=with_unit(figure(p["off"], 0), "°C"),
    ),
    "calibrated_in_the_future": lambda p: say(
        "The calibration of {at} is still to come. Correct the date, or leave it out.", at=date_words(p["at"])
    ),
    "hours_run_back": lambda p: say(
        "The running hours go back from {before} to {after}. After a new head or a new tube the hours begin again: leave out what was measured before.",
        before=hours(p["before"]),
        after=hours(p["after"]),
    ),
    "hours_beyond_clock": lambda p: say(
        "The head ran from {before} to {after} while only {passed} went by. Correct the hours or the date.",
        before=hours(p["before"]),
        after=hours(p["after"]),
        passed=hours(p["passed"]),
    ),
    "drift_needs_two": lambda p: say("How the flow changes cannot be told from a single calibration."),
    "drift_same_hours": lambda p: say(
        "All calibrations were made at {hours}, so nothing can be said of how the flow changes with running hours.",
        hours=hours(p["hours"]),
    ),
    "drift_unusable": lambda p: say(
        "The line through the calibrations gives no flow at all. Look at the figures of the earlier ones again."
    ),
    "drift_unclear": lambda p: say(
        "It is not clear yet that the flow changes: from {low} {more_or_less} to {high} {more_or_less_2} in {hours}, so no date is said. More calibrations will tell.",
        low=share(p["low"]),
        more_or_less=more_or_less(p["low"]),
        high=share(p["high"]),
        more_or_less_2=more_or_less(p["high"]),
        hours=hours(100.0),
    ),
    "calibrations_scatter": lambda p: say(
        "The calibrations lie {factor} times further off the line than they should. Was the tube or the head changed between them, or air in the line?",
        factor=significant(p["factor"], 2),
    ),
    "head_used_up": lambda p: say(
        "The head has run {hours} of the {life} that one lasts. Change the head or its tube, then calibrate again.",
        hours=hours(p["hours"]),
        life=hours(p["life"]),
    ),
}
