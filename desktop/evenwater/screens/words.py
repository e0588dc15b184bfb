"""The sentences: every reason code turned into what to do, in the keeper's words, with the number."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from typing import Any

from evenwater.engine.reasons import Reason
from evenwater.engine.visible import quoted
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.plan_words import OF_PLANS
from evenwater.screens.shown import NBSP, Shown, decimal, figure, significant, unit_words, with_unit
from evenwater.screens.stock_words import OF_CHEMISTRY, OF_STOCKS
from evenwater.screens.terms import capitalized, term
from evenwater.wording import say, say_all, say_many

Params = Mapping[str, Any]


def listed(choices: Any) -> str:
    """Join choices as a sentence does: a, b or c."""
    items = [unit_words(str(c)) for c in choices]
    return items[0] if len(items) == 1 else say("{first} or {last}", first=", ".join(items[:-1]), last=items[-1])


def _choice(entered: Any) -> str:
    return with_unit(figure(float(entered.number), 6), unit_words(entered.unit))


def _kept(quantity: str) -> str:
    """Return a number and its unit held together."""
    return quantity.replace(" ", NBSP, 1)


def _out_of_range(p: Params) -> str:
    low, high = significant(p["low"], 4), with_unit(significant(p["high"], 4), p["unit"])
    start = say("more than {low}", low=low) if p["above_low"] else f"{low}"
    number = with_unit(figure(p["number"], 6), p["unit"])
    joined = (
        say("{start}, up to {high}", start=start, high=high)
        if p["above_low"]
        else say("{start} to {high}", start=start, high=high)
    )
    return say("{number} is outside what can be entered here: {joined}.", number=number, joined=joined)


def _unknown_unit(p: Params) -> str:
    per_day = next((c for c in p["choices"] if c == f"{p['unit']} per day"), "")
    if per_day:
        return say("“{unit}” is a value, not a rate. Write {per_day}.", unit=p["unit"], per_day=unit_words(per_day))
    return say("“{unit}” is not a unit of this field. Write {choices}.", unit=p["unit"], choices=listed(p["choices"]))


# What the strict reader says. None of these needs the parameter.
_ENTRY: dict[str, Callable[[Params], str]] = {
    "missing": lambda p: (
        say("Fill in {field_words}.", field_words=say_all(FIELD_WORDS[p["path"]]))
        if p.get("path")
        else say("Fill this in.")
    ),
    "not_a_number": lambda p: say(
        "“{text}” is not a number. Write it like {example}.",
        text=p["text"],
        example=_kept(decimal(p.get("example", "6.8"))),
    ),
    "grouped_digits": lambda p: say("“{text}”: write the number without spaces between its digits.", text=p["text"]),
    "two_marks": lambda p: say(
        "“{text}” has more than one point or comma. Write one decimal mark and no thousands.", text=p["text"]
    ),
    "ends_with_mark": lambda p: say(
        "“{text}” ends with a decimal mark. Write the digits after it, or leave it out.", text=p["text"]
    ),
    "plus_sign": lambda p: say("Write the value itself, without a plus sign."),
    "number_too_long": lambda p: say("That number has more digits than can be kept. Use 40 or fewer."),
    "two_readings": lambda p: say_many(
        "“{text}”: is {readings} meant? Write it without a thousands mark.",
        "“{text}” can be read in two ways: {r}.",
        len(p["readings"]),
        text=p["text"],
        readings=_choice(p["readings"][0]),
        r=say(" or ").join(_choice(r) for r in p["readings"]),
    ),
    "not_whole": lambda p: say("“{text}” must be a whole number.", text=p["text"]),
    "out_of_range": _out_of_range,
    "unit_missing": lambda p: say(
        "The unit is missing. Write {choices} after the number.", choices=listed(p["choices"])
    ),
    "bare_gallon": lambda p: say("Which gallon? Write US gal (3.785\u00a0L) or imperial gal (4.546\u00a0L)."),
    "bare_gravity": lambda p: say(
        "At which temperatures? Write {choices}, as on the hydrometer.", choices=listed(p["choices"][1:])
    ),
    "as_what": lambda p: say(
        "“{unit}” does not say as what it counts. Write {choices}.", unit=p["unit"], choices=listed(p["choices"])
    ),
    "unknown_unit": _unknown_unit,
    "not_text": lambda p: say("{text} has no unit. Write it in quotes with its unit.", text=p["text"]),
    "not_a_time": lambda p: say("“{text}” is not a time. Write it like 2026-11-25 08:00.", text=p["text"]),
    "time_without_zone": lambda p: say(
        "{text} has no time zone. Write the offset, like 2026-11-25T08:00:00+00:00.", text=p["text"]
    ),
    "unknown_parameter": lambda p: say(
        "“{text}” is not known. Write {choices}.", text=p["text"], choices=listed(p["choices"])
    ),
    "unknown_choice": lambda p: say(
        "“{text}” is not one of the choices. Write {choices}.", text=p["text"], choices=listed(p["choices"])
    ),
    "which_hydrate": lambda p: say(
        "Which “{text}”? The bag says one of: {choices}.", text=p["text"], choices=listed(p["choices"])
    ),
    "does_not_raise": lambda p: say(
        "{chemical} does not raise {parameter}. Choose another additive.",
        chemical=capitalized(p["chemical"] or say("This bottle")),
        parameter=term(p["parameter"]),
    ),
    "unknown_chemical": lambda p: say(
        "“{text}” is not known. Known are: {choices}.", text=p["text"], choices=listed(p["choices"])
    ),
}


# Tables whose sentences need no unit of the keeper.
_PLAIN = (_ENTRY, OF_STOCKS, OF_CHEMISTRY)


@cache
def _other() -> Mapping[str, Callable[[Params], str]]:
    """Return the sentences, without a unit, of the questions that are not a correction; loaded with the first of them."""
    from evenwater.screens import (
        calibration_words,
        consumption_words,
        exchange_words,
        foods_words,
        jug_words,
        recovery_words,
        timetable_words,
        together_words,
        upkeep_words,
    )

    return {
        **upkeep_words.SENTENCES,
        **consumption_words.SENTENCES,
        **calibration_words.SENTENCES,
        **timetable_words.SENTENCES,
        **jug_words.SENTENCES,
        **exchange_words.SENTENCES,
        **recovery_words.SENTENCES,
        **foods_words.SENTENCES,
        **together_words.SENTENCES,
    }


@cache
def _of_values() -> Mapping[str, Callable[[Params, Shown], str]]:
    """Return the sentences, in the keeper's unit, about what a log says."""
    from evenwater.screens import consumption_words

    return consumption_words.OF_VALUES


def known(code: str) -> bool:
    """Return whether there is a sentence for a code."""
    return any(code in table for table in (*_PLAIN, OF_PLANS, _other(), _of_values()))


def _fit(value: object) -> object:
    if isinstance(value, tuple):
        return tuple(map(_fit, value))
    return quoted(value) if isinstance(value, str) else value


def sentence(reason: Reason, shown: Shown | None = None) -> str:
    """Return the sentence for a reason.

    Parameters
    ----------
    reason : Reason
        Code and figures.
    shown : Shown or None
        The keeper's unit; needed for reasons about values.

    Returns
    -------
    str
        One or two sentences.

    Raises
    ------
    KeyError
        When the code has no sentence, or needs a unit that was not given.
    """
    # What was typed may be of any length and have any signs in it.
    params = {name: _fit(value) for name, value in reason.params.items()}
    for table in _PLAIN:
        if reason.code in table:
            return table[reason.code](params)
    if reason.code not in OF_PLANS and reason.code in _other():
        return _other()[reason.code](params)
    if shown is None:
        raise KeyError(reason.code)
    return (OF_PLANS if reason.code in OF_PLANS else _of_values())[reason.code](params, shown)
