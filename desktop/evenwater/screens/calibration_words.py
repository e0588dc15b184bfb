"""The sentences about a pump's calibration, its wear and its line."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from evenwater.engine.quantities import figure, significant
from evenwater.screens.shown import date_words, seconds, with_unit

Params = Mapping[str, Any]


def flow(ml_per_min: float, digits: int = 3) -> str:
    """Write a pump's flow."""
    return with_unit(significant(ml_per_min, digits), "mL per min")


def share(value: float, digits: int = 2) -> str:
    """Write a share [1] in per cent, without its sign."""
    return with_unit(significant(abs(100.0 * value), digits), "%")


def hours(value: float) -> str:
    """Write running hours, whole ones where there are many."""
    return with_unit(figure(value, 0 if abs(value) >= 20.0 else 1), "h")


def more_or_less(value: float) -> str:
    """Say whether a difference is more or less."""
    return "more" if value > 0.0 else "less"


def _numbers(runs: Sequence[int]) -> str:
    """Name runs by their numbers."""
    if len(runs) == 1:
        return f"Run {runs[0]}"
    return f"Runs {', '.join(str(n) for n in runs[:-1])} and {runs[-1]}"


def _each(runs: Sequence[int]) -> str:
    return "" if len(runs) == 1 else " each"


def _too_coarse(p: Params) -> str:
    with_what = "This scale" if p["weighed"] else "This cylinder"
    head = f"{with_what} tells the flow of such a run to {share(p['share'])} only, and {share(p['most'])} is the least that is of use."
    if p["seconds"] is None:
        return f"{head} Measure the temperature of the water, or take a finer one."
    return f"{head} Let the pump run for {seconds(math.ceil(p['seconds']))} or longer, or take a finer one."


# None of these needs the keeper's unit.
SENTENCES: dict[str, Callable[[Params], str]] = {
    "no_runs": lambda p: f"There is no run yet. Let the pump run into a cylinder or onto a scale {p['fewest']} times.",
    "nothing_delivered": lambda p: (
        "The pump ran and nothing came out. Look for air in the line, crust at its end, a split tube or an empty jug, prime the line and "
        "calibrate again."
    ),
    "flow_unusable": lambda p: "These figures are no flow of a pump. Write them again.",
    "run_without_liquid": lambda p: (
        f"{_numbers(p['runs'])} brought nothing. Look for air in the line, prime it and repeat."
    ),
    "runs_too_few": lambda p: (
        ("A single run tells" if p["count"] == 1 else f"{p['count']} runs tell")
        + f" too little. Repeat until there are {p['fewest']} of {seconds(p['seconds'])} each."
    ),
    "spread_too_wide": lambda p: (
        f"The runs scatter by {share(p['spread'])}, and {share(p['most'])} is the most. Look for air in the line and a worn tube, "
        "prime it and repeat."
    ),
    "flow_loosely_known": lambda p: (
        f"These runs tell the flow to within {share(p['share'])} only; within {share(p['good'])} would be good. Find out what scatters, or "
        "make more runs."
    ),
    "run_of_other_length": lambda p: (
        f"{_numbers(p['runs'])} lasted {seconds(p['seconds'])}{_each(p['runs'])}, the others {seconds(p['others'])}: a short run gives another "
        f"flow than a long one, so they do not count together. Make {p['fewest']} of one length."
    ),
    "measured_too_coarsely": _too_coarse,
    "flow_off_amber": lambda p: (
        f"The pump gives {share(p['bias'])} {more_or_less(p['bias'])} than the {flow(p['setting'])} it is set to. Enter "
        f"{flow(p['flow'])} as its flow, and look at the tube."
    ),
    "flow_off_red": lambda p: (
        f"The pump gives {share(p['bias'])} {more_or_less(p['bias'])} than the {flow(p['setting'])} it is set to. Do not dose on with that "
        f"figure: look for a worn tube, air and crust, then calibrate again. Now it gives {flow(p['flow'])}."
    ),
    "dose_not_calibrated": lambda p: (
        f"A dose of {with_unit(significant(p['dose_ml'], 3), 'mL')} takes {seconds(p['dose_seconds'])}, but these runs lasted "
        f"{seconds(p['seconds'])}. "
        + (
            "Short doses are less accurate: collect several doses of that size and calibrate with them."
            if p["dose_seconds"] < p["seconds"]
            else "Calibrate with runs as long as a dose."
        )
    ),
    "short_doses_differ": lambda p: (
        f"In {seconds(p['seconds'])} the pump gives {share(p['difference'])} {more_or_less(p['difference'])} per minute than in "
        f"{seconds(p['than'])}. Dose by the runs that are nearest to the dose in use."
    ),
    "graduation_assumed": lambda p: (
        f"The cylinder's graduation is not said, so {with_unit(significant(p['graduation_ml'], 2), 'mL')} is taken, the last digit that was read."
    ),
    "readability_assumed": lambda p: (
        f"The scale's last digit is not said, so {with_unit(significant(p['grams'], 2), 'g')} is taken, the last digit that was written."
    ),
    "temperature_assumed": lambda p: (
        f"The water's temperature is not said, so {with_unit(figure(p['degc'], 0), '°C')} is taken, give or take "
        f"{with_unit(figure(p['off'], 0), '°C')}."
    ),
    "calibrated_in_the_future": lambda p: (
        f"The calibration of {date_words(p['at'])} is still to come. Correct the date, or leave it out."
    ),
    "hours_run_back": lambda p: (
        f"The running hours go back from {hours(p['before'])} to {hours(p['after'])}. After a new head or a new tube the hours begin "
        "again: leave out what was measured before."
    ),
    "hours_beyond_clock": lambda p: (
        f"The head ran from {hours(p['before'])} to {hours(p['after'])} while only {hours(p['passed'])} went by. Correct the hours or "
        "the date."
    ),
    "drift_needs_two": lambda p: "How the flow changes cannot be told from a single calibration.",
    "drift_same_hours": lambda p: (
        f"All calibrations were made at {hours(p['hours'])}, so nothing can be said of how the flow changes with running hours."
    ),
    "drift_unusable": lambda p: (
        "The line through the calibrations gives no flow at all. Look at the figures of the earlier ones again."
    ),
    "drift_unclear": lambda p: (
        f"It is not clear yet that the flow changes: from {share(p['low'])} {more_or_less(p['low'])} to {share(p['high'])} "
        f"{more_or_less(p['high'])} in {hours(100.0)}, so no date is said. More calibrations will tell."
    ),
    "calibrations_scatter": lambda p: (
        f"The calibrations lie {significant(p['factor'], 2)} times further off the line than they should. Was the tube or the head changed "
        "between them, or air in the line?"
    ),
    "head_used_up": lambda p: (
        f"The head has run {hours(p['hours'])} of the {hours(p['life'])} that one lasts. Change the head or its tube, then calibrate "
        "again."
    ),
}
