"""The sentences about a record of readings and what is used."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, tzinfo
from typing import Any

from evenwater.screens.shown import Shown, date_words, day_words, figure, significant, span, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.wording import say

Params = Mapping[str, Any]


def _when(at: datetime, zone: tzinfo | None) -> str:
    """Write an instant of a record, which may be years old."""
    local = at.astimezone(zone)
    return f"{day_words(local)} {local.year}\u00a0{local:%H:%M}"


def _per_meq(value: float) -> str:
    return with_unit(significant(value, 3), say("mg per meq"))


def minus(text: str) -> str:
    """Write a figure below zero with the sign that is no hyphen."""
    return f"\u2212{text[1:]}" if text.startswith("-") else text


# None of these needs the keeper's unit.
SENTENCES: dict[str, Callable[[Params], str]] = {
    "too_few_readings": lambda p: (
        (say("There is no reading yet.") if p["count"] == 0 else say("There is only one reading."))
        + say(" To know what is used takes two at least, and more are better. Test again tomorrow.")
    ),
    "too_many_readings": lambda p: say(
        "These are {count} readings; {most} can be looked at together. Leave out the oldest.",
        count=p["count"],
        most=p["most"],
    ),
    "readings_too_close": lambda p: say(
        "All readings lie within {hours}. What is used in a day cannot be told from that. Test again tomorrow.",
        hours=span(p["hours"] / 24.0),
    ),
    "figure_unusable": lambda p: say(
        "In {what} {number} a figure is no number or cannot be. Write it again.", what=p["what"], number=p["number"]
    ),
    "use_is_old": lambda p: say(
        "The last reading is {age_days} days old, and use may have changed in more than {stale_days} days. Test again.",
        age_days=figure(p["age_days"], 1),
        stale_days=figure(p["stale_days"], 0),
    ),
    "rise_not_seen": lambda p: say(
        "The rise cannot be told from the scatter of the two tests, so it says nothing of the volume. Test more often, or after a larger correction."
    ),
    "ratio_departs": lambda p: say(
        "For each meq of alkalinity {ratio} of calcium are used ({low} to {high}); skeletons take {expected}. Something is not as it seems.",
        ratio=with_unit(significant(p["ratio"], 3), "mg"),
        low=significant(p["low"], 3),
        high=significant(p["high"], 3),
        expected=_per_meq(p["expected"]),
    ),
    "ratio_unknown": lambda p: say("How much alkalinity is used is not known well enough to hold calcium against it."),
    "ratio_wrong_test": lambda p: say(
        "One of the two tests may be wrong: check both with a standard, or with another kit."
    ),
    "ratio_precipitation": lambda p: say(
        "Alkalinity may fall out without calcium, as magnesium hydroxide where a strong dose enters: look for white crust there."
    ),
    "ratio_another_sink": lambda p: (
        say(
            "Alkalinity may go elsewhere: much food that turns into nitrate takes it, and skeletons that hold magnesium."
        )
        if p["of_alkalinity"]
        else say(
            "Alkalinity may come from elsewhere: where nitrate is used up, or from a dose or an exchange that is not in the log."
        )
    ),
}

# These speak in the keeper's unit.
OF_VALUES: dict[str, Callable[[Params, Shown], str]] = {
    "reading_too_old": lambda p, s: say(
        "A reading of {at} is more than {years} years old. Leave it out, or correct the year.",
        at=_when(p["at"], s.zone),
        years=p["years"],
    ),
    "entry_in_the_future": lambda p, s: say(
        "The {what} of {at} is still to come. Correct the time, or leave it out until it is done.",
        what=p["what"],
        at=_when(p["at"], s.zone),
    ),
    "odd_reading": lambda p, s: say(
        "{value} on {at} is {off} {above} what the others say, so it is not counted.",
        value=s.value(p["value"]),
        at=_when(p["at"], s.zone),
        off=s.rise(abs(p["off"]), 2),
        above=say("above") if p["off"] > 0.0 else say("below"),
    ),
    "value_jumped": lambda p, s: say(
        "Before {at} the value {rose} at once by {by}, which nothing in the log explains. Was a dose or an exchange not written down?",
        at=_when(p["at"], s.zone),
        rose=say("rose") if p["by"] > 0.0 else say("fell"),
        by=s.rise(abs(p["by"]), 2),
    ),
    "use_changed": lambda p, s: say(
        "Use changed about {at}, from {before} to {after}. What was planned on the old use needs planning again.",
        at=date_words(p["at"].astimezone(s.zone)),
        before=minus(s.per_day(p["before"], 2)),
        after=minus(s.per_day(p["after"], 2)),
    ),
    "flat_readings": lambda p, s: say(
        "The last {count} readings all say {value}. Were they really tested, each with fresh reagent?",
        count=p["count"],
        value=s.value(p["value"], 4),
    ),
    "made_in_the_tank": lambda p, s: say(
        "More {parameter} is made in the tank than is used up: {per_day}.",
        parameter=term(s.parameter.name),
        per_day=s.per_day(p["per_day"], 2),
    ),
    "rises_by_itself": lambda p, s: say(
        "{parameter} rises by {per_day} more than the log explains. A dose is missing from the log, or is stronger than written.",
        parameter=capitalized(s.parameter.name),
        per_day=s.per_day(p["per_day"], 2),
    ),
    "use_unclear": lambda p, s: say(
        "It is not clear yet that anything is used: {low} to {high}. More readings will tell.",
        low=minus(s.per_day(p["low"], 2)),
        high=s.per_day(p["high"], 2),
    ),
}
