"""The sentences about a record of readings and what is used."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, tzinfo
from typing import Any

from evenwater.engine.quantities import figure, significant
from evenwater.screens.shown import Shown, date_time, date_words, span, with_unit

Params = Mapping[str, Any]


def _when(at: datetime, zone: tzinfo | None) -> str:
    """Write an instant of a record, which may be years old."""
    local = at.astimezone(zone)
    day, clock = date_time(local).split("\u00a0")
    return f"{day} {local.year}\u00a0{clock}"


def _per_meq(value: float) -> str:
    return with_unit(significant(value, 3), "mg per meq")


def minus(text: str) -> str:
    """Write a figure below zero with the sign that is no hyphen."""
    return f"\u2212{text[1:]}" if text.startswith("-") else text


# None of these needs the keeper's unit.
SENTENCES: dict[str, Callable[[Params], str]] = {
    "too_few_readings": lambda p: (
        ("There is no reading yet." if p["count"] == 0 else "There is only one reading.")
        + " To know what is used takes two at least, and more are better. Test again tomorrow."
    ),
    "too_many_readings": lambda p: (
        f"These are {p['count']} readings; {p['most']} can be looked at together. Leave out the oldest."
    ),
    "readings_too_close": lambda p: (
        f"All readings lie within {span(p['hours'] / 24.0)}. What is used in a day cannot be told from that. Test again tomorrow."
    ),
    "figure_unusable": lambda p: f"In {p['what']} {p['number']} a figure is no number or cannot be. Write it again.",
    "use_is_old": lambda p: (
        f"The last reading is {figure(p['age_days'], 1)} days old, and use may have changed in more than "
        f"{figure(p['stale_days'], 0)} days. Test again."
    ),
    "rise_not_seen": lambda p: (
        "The rise cannot be told from the scatter of the two tests, so it says nothing of the volume. Test more often, or after a "
        "larger correction."
    ),
    "ratio_departs": lambda p: (
        f"For each meq of alkalinity {with_unit(significant(p['ratio'], 3), 'mg')} of calcium are used "
        f"({significant(p['low'], 3)} to {significant(p['high'], 3)}); skeletons take {_per_meq(p['expected'])}. Something is not as it seems."
    ),
    "ratio_unknown": lambda p: "How much alkalinity is used is not known well enough to hold calcium against it.",
    "ratio_wrong_test": lambda p: "One of the two tests may be wrong: check both with a standard, or with another kit.",
    "ratio_precipitation": lambda p: (
        "Alkalinity may fall out without calcium, as magnesium hydroxide where a strong dose enters: look for white crust there."
    ),
    "ratio_another_sink": lambda p: (
        "Alkalinity may go elsewhere: much food that turns into nitrate takes it, and skeletons that hold magnesium."
        if p["of_alkalinity"]
        else "Alkalinity may come from elsewhere: where nitrate is used up, or from a dose or an exchange that is not in the log."
    ),
}

# These speak in the keeper's unit.
OF_VALUES: dict[str, Callable[[Params, Shown], str]] = {
    "reading_too_old": lambda p, s: (
        f"A reading of {_when(p['at'], s.zone)} is more than {p['years']} years old. Leave it out, or correct the year."
    ),
    "entry_in_the_future": lambda p, s: (
        f"The {p['what']} of {_when(p['at'], s.zone)} is still to come. Correct the time, or leave it out until it is done."
    ),
    "odd_reading": lambda p, s: (
        f"{s.value(p['value'])} on {_when(p['at'], s.zone)} is {s.rise(abs(p['off']), 2)} {'above' if p['off'] > 0.0 else 'below'} what the others "
        "say, so it is not counted."
    ),
    "value_jumped": lambda p, s: (
        f"Before {_when(p['at'], s.zone)} the value {'rose' if p['by'] > 0.0 else 'fell'} at once by {s.rise(abs(p['by']), 2)}, which nothing in the log "
        "explains. Was a dose or an exchange not written down?"
    ),
    "use_changed": lambda p, s: (
        f"Use changed about {date_words(p['at'].astimezone(s.zone))}, from {minus(s.per_day(p['before'], 2))} to {minus(s.per_day(p['after'], 2))}. "
        "What was planned on the old use needs planning again."
    ),
    "flat_readings": lambda p, s: (
        f"The last {p['count']} readings all say {s.value(p['value'], 4)}. Were they really tested, each with fresh reagent?"
    ),
    "made_in_the_tank": lambda p, s: (
        f"More {s.parameter.name} is made in the tank than is used up: {s.per_day(p['per_day'], 2)}."
    ),
    "rises_by_itself": lambda p, s: (
        f"{s.parameter.name.capitalize()} rises by {s.per_day(p['per_day'], 2)} more than the log explains. A dose is missing from the log, or is stronger "
        "than written."
    ),
    "use_unclear": lambda p, s: (
        f"It is not clear yet that anything is used: {minus(s.per_day(p['low'], 2))} to {s.per_day(p['high'], 2)}. More readings will tell."
    ),
}
