"""The sentences: every reason code turned into what to do, in the keeper's words, with the number."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from typing import Any

from evenwater.engine.quantities import figure, significant
from evenwater.engine.reasons import Reason
from evenwater.engine.units import KINDS
from evenwater.engine.visible import quoted
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.following_words import OF_VALUES as _FOLLOWING
from evenwater.screens.shown import NBSP, Shown, about, date_time, dose, with_unit

Params = Mapping[str, Any]


def listed(choices: Any) -> str:
    """Join choices as a sentence does: a, b or c."""
    items = [unit_words(str(c)) for c in choices]
    return items[0] if len(items) == 1 else f"{', '.join(items[:-1])} or {items[-1]}"


def unit_words(unit_id: str) -> str:
    """Return the shown form of a unit id; other words come back as they are."""
    for kind in KINDS.values():
        for unit in kind.units:
            if unit.id == unit_id:
                return unit.shown
    return unit_id


def _choice(entered: Any) -> str:
    return with_unit(figure(float(entered.number), 6), unit_words(entered.unit))


def _kept(quantity: str) -> str:
    """Return a number and its unit held together."""
    return quantity.replace(" ", NBSP, 1)


def _out_of_range(p: Params) -> str:
    low, high = significant(p["low"], 4), with_unit(significant(p["high"], 4), p["unit"])
    start = f"more than {low}" if p["above_low"] else f"{low}"
    number = with_unit(figure(p["number"], 6), p["unit"])
    joined = f"{start}, up to {high}" if p["above_low"] else f"{start} to {high}"
    return f"{number} is outside what can be entered here: {joined}."


def _unknown_unit(p: Params) -> str:
    per_day = next((c for c in p["choices"] if c == f"{p['unit']} per day"), "")
    if per_day:
        return f"“{p['unit']}” is a value, not a rate. Write {unit_words(per_day)}."
    return f"“{p['unit']}” is not a unit of this field. Write {listed(p['choices'])}."


# What the strict reader says. None of these needs the parameter.
_ENTRY: dict[str, Callable[[Params], str]] = {
    "missing": lambda p: f"Fill in {FIELD_WORDS[p['path']]}." if p.get("path") else "Fill this in.",
    "not_a_number": lambda p: f"“{p['text']}” is not a number. Write it like {_kept(p.get('example', '6.8'))}.",
    "grouped_digits": lambda p: f"“{p['text']}”: write the number without spaces between its digits.",
    "two_marks": lambda p: f"“{p['text']}” has more than one point or comma. Write one decimal mark and no thousands.",
    "ends_with_mark": lambda p: f"“{p['text']}” ends with a decimal mark. Write the digits after it, or leave it out.",
    "plus_sign": lambda p: "Write the value itself, without a plus sign.",
    "number_too_long": lambda p: "That number has more digits than can be kept. Use 40 or fewer.",
    "two_readings": lambda p: (
        f"“{p['text']}” can be read in two ways: {' or '.join(_choice(r) for r in p['readings'])}."
        if len(p["readings"]) > 1
        else f"“{p['text']}”: is {_choice(p['readings'][0])} meant? Write it without a thousands mark."
    ),
    "not_whole": lambda p: f"“{p['text']}” must be a whole number.",
    "out_of_range": _out_of_range,
    "unit_missing": lambda p: f"The unit is missing. Write {listed(p['choices'])} after the number.",
    "bare_gallon": lambda p: "Which gallon? Write US gal (3.785 L) or imperial gal (4.546 L).",
    "bare_gravity": lambda p: f"At which temperatures? Write {listed(p['choices'][1:])}, as on the hydrometer.",
    "as_what": lambda p: f"“{p['unit']}” does not say as what it counts. Write {listed(p['choices'])}.",
    "unknown_unit": _unknown_unit,
    "not_text": lambda p: f"{p['text']} has no unit. Write it in quotes with its unit.",
    "not_a_time": lambda p: f"“{p['text']}” is not a time. Write it like 2026-11-25 08:00.",
    "time_without_zone": lambda p: f"{p['text']} has no time zone. Write the offset, like 2026-11-25T08:00:00+00:00.",
    "unknown_parameter": lambda p: f"“{p['text']}” is not known. Write {listed(p['choices'])}.",
    "unknown_choice": lambda p: f"“{p['text']}” is not one of the choices. Write {listed(p['choices'])}.",
    "which_hydrate": lambda p: f"Which “{p['text']}”? The bag says one of: {listed(p['choices'])}.",
    "does_not_raise": lambda p: (
        f"{(p['chemical'] or 'This bottle').capitalize()} does not raise {p['parameter']}. Choose another additive."
    ),
    "unknown_chemical": lambda p: f"“{p['text']}” is not known. Known are: {listed(p['choices'])}.",
}


# What is said about a stock by itself.
_STOCK: dict[str, Callable[[Params], str]] = {
    "does_not_dissolve": lambda p: (
        f"{with_unit(significant(p['made'], 3), 'g')} of {p['chemical']} in a litre cannot dissolve: at {with_unit(figure(p['temperature_c'], 1), '°C')} "
        f"the most is {with_unit(significant(p['most'], 3), 'g')} in a litre. Make the stock weaker."
    ),
    "nearly_saturated": lambda p: (
        f"The stock is near its limit ({significant(p['made'], 3)} of {with_unit(significant(p['most'], 3), 'g')} in a litre). "
        f"Keep it {'warm' if p['better_warm'] else 'cool'} and look for crystals."
    ),
    "restricted": lambda p: (
        f"{p['chemical'].capitalize()} is dangerous to people and easy to overdose. Use it only if you are trained for it."
    ),
    "never_in_one_jug": lambda p: (
        f"{p['first'].capitalize()} and {p['second']} fall out when they are dissolved together. Give each a jug of its own."
    ),
    "same_chemical": lambda p: f"{p['chemical'].capitalize()} is named twice. Add its masses up and name it once.",
    "no_balance": lambda p: (
        f"{p['first'].capitalize()} and {p['second']} cannot be mixed to the magnesium and sulfate of seawater. "
        "Take magnesium chloride and magnesium sulfate."
    ),
    "not_limewater": lambda p: (
        f"A jug of {p['chemical']} must not be saturated: it crystallises when the room cools. Only limewater is dosed so."
    ),
    "limewater": lambda p: (
        f"Limewater holds {with_unit(significant(p['grams_per_l'], 3), 'g')} in a litre at {with_unit(figure(p['degc'], 1), '°C')}, and less when it "
        "is warmer. Dose the clear water only, and keep the jug closed: air turns it into chalk."
    ),
    "no_pair": lambda p: (
        f"{p['chemical'].capitalize()} and {p['partner']} are no pair. Of a matched pair one stock carries alkalinity only "
        "and the other calcium only."
    ),
}


# What is said about a tank's chemistry.
_CHEMISTRY: dict[str, Callable[[Params], str]] = {
    "impossible_water": lambda p: (
        f"No seawater of this alkalinity has a pH of {significant(p['ph'], 4)}. Test both again, and see on which scale the pH is."
    ),
    "may_precipitate": lambda p: (
        f"Aragonite saturation reaches {significant(p['saturation'], 3)}; above {significant(p['most'], 3)} calcium carbonate may "
        "fall out, and these figures hold no longer. Add less at a time."
    ),
    "calcium_assumed": lambda p: (
        f"No calcium is given, so {with_unit(significant(p['calcium'], 3), 'mg per L')} is assumed, as natural seawater of this "
        "salinity has."
    ),
    "ph_assumed": lambda p: (
        f"pH was not measured, so {figure(p['ph'], 2)} is assumed all along, and only its rise in an hour is limited. Measure "
        "it before a large correction."
    ),
    "ph_above_afterwards": lambda p: (
        f"At the target pH comes to {figure(p['ph'], 2)} once gas exchange has caught up, above the {figure(p['most'], 1)} usually "
        "kept. More air from outdoors does not lower it; a nearer target does."
    ),
    "bottle_like_hydroxide": lambda p: (
        "What is in the bottle is not known. For pH it is reckoned as hydroxide, which lifts it most."
    ),
    "constants_extrapolated": lambda p: (
        f"At a salinity of {figure(p['salinity'], 1)} and {with_unit(figure(p['degc'], 1), '°C')} not all constants were "
        "measured; these figures are less certain."
    ),
}


def smaller_doses(per_day: int) -> str:
    """Return how the doses of the fullest hour become smaller, or nothing where only another additive helps."""
    if per_day < 24:
        return "Choose more doses a day. "
    return "Choose 24 doses a day. " if per_day % 24 else ""


def _long_time(days: float) -> str:
    return "more than ten years" if days > 3650.0 else f"{figure(days, 0)} days"


def _implausible(p: Params, s: Shown) -> str:
    typed = with_unit(figure(p["number"], 6), unit_words(p["unit"]))
    head = f"{typed} is not a likely reading of {p['parameter']}"
    if p["instead"]:
        number, unit, value = p["instead"][0]
        meant = with_unit(figure(number, 6), unit_words(unit))
        return f"{head}: did you mean {meant} = {Shown(s.parameter, s.parameter.display_unit, s.water).value(value)}?"
    return f"{head}. Likely are {s.value(p['low'])} to {s.value(p['high'])}. Test again."


# What the planner says about a reading, a target, an additive or a pump.
_PLAN: dict[str, Callable[[Params, Shown], str]] = {
    **_FOLLOWING,
    "implausible": _implausible,
    "reading_in_the_future": lambda p, s: (
        f"The reading is dated {date_time(p['measured_at'].astimezone(s.zone))}, which is still to come. Correct the time."
    ),
    "reading_stale": lambda p, s: (
        f"Reading is {figure(p['age_days'], 1)} days old; after {figure(p['stale_days'], 0)} days it is too old to "
        f"correct from. Test again before raising {p['parameter']}."
    ),
    "target_outside": lambda p, s: (
        f"No plan may aim for {s.value(p['target'])}. Choose a target from {s.value(p['low'])} to {s.value(p['high'])}."
    ),
    "target_below_measured": lambda p, s: (
        f"{p['parameter'].capitalize()} is already above {s.value(p['target'])}. Nothing that is dosed lowers it: "
        "stop dosing and wait while the animals use it, or exchange water."
    ),
    "target_reached": lambda p, s: (
        f"{p['parameter'].capitalize()} is already at {s.value(p['target'])}. Nothing to raise; dose only what is used."
    ),
    "rise_not_positive": lambda p, s: "The fastest rise must be more than zero.",
    "rise_beyond_hard": lambda p, s: (
        f"{s.per_day(p['fastest'])} is faster than animals stand. The most that can be planned is "
        f"{s.per_day(p['hard'])}; recommended is {s.per_day(p['recommended'])}."
    ),
    "rise_needs_reason": lambda p, s: (
        f"{s.per_day(p['fastest'])} is above the recommended {s.per_day(p['recommended'])}. Write the reason, or slow "
        "it down."
    ),
    "single_dose_forbids": lambda p, s: (
        ("With one dose a day, it" if p["per_day"] == 1 else f"With {p['per_day']} doses a day, each")
        + f" would have to raise by more than {s.rise(p['jump'])} only to keep up. Choose more doses a day."
    ),
    "pump_share_forbids": lambda p, s: (
        f"The pump can give {about(p['most_ml'])} in 24 hours; the tank alone uses up {about(p['needs_ml'])}. "
        "Use a stronger stock or a faster pump."
    ),
    "also_raises_forbids": lambda p, s: (
        f"This additive would raise {p['other']} as well, far beyond its limit. Choose another additive."
    ),
    "ph_rise_forbids": lambda p, s: (
        f"To make good the daily use alone, single doses would lift pH by more than {figure(p['most'], 1)} in an hour. "
        f"{smaller_doses(p['per_day'])}Sodium bicarbonate does not lift it at once."
    ),
    "ph_ceiling_forbids": lambda p, s: (
        f"pH is {figure(p['now'], 2)} now and would come to {figure(p['ph'], 2)} at the target; this additive must not take it above "
        f"{figure(p['most'], 1)}. "
        + (
            f"{smaller_doses(p['per_day'])}Use sodium bicarbonate."
            if p["ph"] < p["most"]
            else "Use sodium bicarbonate, choose a nearer target, or dose at night and test pH then."
        )
    ),
    "saturation_forbids": lambda p, s: (
        f"Aragonite saturation is {significant(p['now'], 3)} now and would come to {significant(p['saturation'], 3)} at the target. "
        f"Above {significant(p['most'], 3)} calcium carbonate falls out. "
        + (smaller_doses(p["per_day"]) if p["saturation"] < p["most"] else "")
        + "Choose a nearer target."
    ),
    "evaporation_forbids": lambda p, s: (
        f"The tank uses up {about(p['needs_ml'])} of this in 24 hours, but only {about(p['most_ml'])} evaporate. Limewater alone "
        "cannot keep up: use a stronger additive besides."
    ),
    "evaporation_unknown": lambda p, s: (
        f"It is not known how much evaporates. Top-off must leave room for {about(p['in_day_ml'])} in 24 hours, or the tank "
        "overflows and its salinity falls."
    ),
    "too_slow": lambda p, s: (
        f"At this pace the correction takes {_long_time(p['days'])}. Plans end after {figure(p['most'], 0)} days: "
        "choose a faster rise, a stronger stock or a nearer target."
    ),
    "step_too_coarse": lambda p, s: (
        f"A dose of {about(p['single_ml'])} rounded down to steps of {dose(p['step_ml'])} does not raise the value. "
        "Choose fewer doses a day, a finer step or a weaker stock."
    ),
    "dose_below_smallest": lambda p, s: _below_smallest(p),
    "check_disagrees": lambda p, s: (
        "The second reckoning does not agree with the plan, so no plan is given. Please keep this question and report "
        "it."
    ),
    "beyond_recommended": lambda p, s: (
        f"Faster than the recommended {s.per_day(p['recommended'])}. Reason given: {p['reason'].rstrip('.')}."
    ),
    "age_unknown": lambda p, s: (
        f"It is not said when this was measured. Test again if it is older than {figure(p['stale_days'], 0)} days."
    ),
    "low_end_volume": lambda p, s: (
        f"The volume is not known, so its low end is used: {with_unit(significant(p['volume_l'], 3), 'L')}."
    ),
    "water_assumed": lambda p, s: (
        f"For mg per kg a salinity of {figure(p['salinity'], 1)} and {with_unit(figure(p['degc'], 1), '°C')} are assumed where not given."
    ),
    "target_above_range": lambda p, s: (
        f"The target is above the range usually kept, which ends at {with_unit(significant(p['top'], 3), unit_words(p['unit']))}."
    ),
    "jug_too_small": lambda p, s: (
        f"One jug of {about(p['jug_ml'])} is not enough: the correction takes {about(p['total_ml'])}. Mix the next batch "
        "at the same strength."
    ),
    "raises_too": lambda p, s: (
        f"Also raises {p['other']} by {with_unit(significant(p['per_day'], 2), unit_words(p['unit']))}."
    ),
    "rounding_large": lambda p, s: (
        f"Rounding the dose down to steps of {dose(p['step_ml'])} makes the correction {significant(p['slower'], 2)} times "
        "as long. Use fewer doses a day or a finer step."
    ),
    "dose_tiny": lambda p, s: (
        f"No pump gives {dose(p['dose_ml'])} at a time. Make a weaker stock, or choose fewer doses a day."
    ),
    "upkeep_too_small": lambda p, s: (
        f"The upkeep of {about(p['per_day_ml'])} in 24 hours is too small for this pump in so many doses, so none is given. "
        + (
            f"Give it afterwards in {p['most_doses']} doses a day or fewer."
            if p["most_doses"] > 1
            else "Make a weaker stock for it."
        )
    ),
    "no_use": lambda p, s: (
        f"No use per day is entered, so after the correction nothing is dosed. {p['parameter'].capitalize()} falls by "
        "whatever the animals use."
    ),
    "whole_jug_harms": lambda p, s: (
        f"If the whole jug ran in, {s.parameter.name} would reach {s.value(p['value'])}, more than the {s.value(p['most'])} no "
        "plan may aim for. Use a smaller jug, or fill it less."
    ),
}


def _below_smallest(p: Params) -> str:
    head = f"Each dose would be {dose(p['single_ml'])}, below the pump's smallest accurate dose of {dose(p['smallest_ml'])}."
    if p["most_doses"] >= 1:
        return f"{head} Choose {p['most_doses']} doses a day or fewer, or a weaker stock."
    return f"{head} Use a weaker stock or a finer pump."


# Tables whose sentences need no unit of the keeper.
_PLAIN = (_ENTRY, _STOCK, _CHEMISTRY)


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
    return any(code in table for table in (*_PLAIN, _PLAN, _other(), _of_values()))


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
    if reason.code not in _PLAN and reason.code in _other():
        return _other()[reason.code](params)
    if shown is None:
        raise KeyError(reason.code)
    return (_PLAN if reason.code in _PLAN else _of_values())[reason.code](params, shown)
