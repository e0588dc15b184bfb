"""The sentences about an upkeep. None needs the keeper's unit: their figures come with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import figure, significant
from evenwater.screens.shown import about, dose, with_unit

Params = Mapping[str, Any]


def _cap(text: str) -> str:
    """Return a sentence's first word with its capital; the rest as it is."""
    return text[:1].upper() + text[1:]


def _all(names: tuple[str, ...]) -> str:
    """Join names as a sentence does: a, b and c."""
    return " and ".join(filter(None, (", ".join(names[:-1]), names[-1])))


def _amount(p: Params, name: str, digits: int = 3) -> str:
    return with_unit(significant(p[name], digits), p["unit"])


def _too_much(p: Params) -> str:
    additive = _cap(f"{p['additive'] or 'the bottle'} for {p['for']}")
    head = f"{additive} and the other additives bring" if p["with_others"] else f"{additive} brings"
    name = p["parameter"]
    return (
        f"{head} {_amount(p, 'brought', 4)} of {name}, more than the {_amount(p, 'used', 4)} used. Choose another additive, "
        f"or take {name} off the list and watch it rise."
    )


def _below_smallest(p: Params) -> str:
    head = (
        f"Each dose for {p['parameter']} would be {dose(p['dose_ml'])}, below the pump's smallest accurate dose of "
        f"{dose(p['smallest_ml'])}."
    )
    if p["most_doses"] < 1:
        return f"{head} Use a weaker stock or a finer pump."
    return f"{head} Choose {p['most_doses']} doses a day or fewer, or a weaker stock."


def _daily_rise(p: Params) -> str:
    head = f"{_cap(p['parameter'])} would rise by {_amount(p, 'rise')}, more than the {_amount(p, 'most')} it may."
    if p["with_correction"]:
        return f"{head} The doses of the correction make good the daily use already: begin this upkeep when it is over."
    return f"{head} Choose an additive that brings less of it."


def _smaller(per_day: tuple[int, ...]) -> str:
    """Return how the doses of the fullest hour become smaller, or nothing where only another additive helps."""
    if min(per_day) < 24:
        return "Choose more doses a day. "
    return "Choose 24 doses a day. " if any(count % 24 for count in per_day) else ""


def _apart(p: Params) -> str:
    minutes = with_unit(figure(p["minutes"], 0), "min")
    head = (
        f"Keep the doses for {p['first']} and for {p['second']} at least {minutes} apart, and let them flow in at different "
        "places: together they fall out."
    )
    if p["widest_min"] >= p["minutes"]:
        return head
    widest = with_unit(figure(p["widest_min"], 1), "min")
    return (
        f"{head} With these doses a day they come no further apart than {widest}: choose the same number for both, "
        f"{p['most_doses']} or fewer."
    )


SENTENCES: dict[str, Callable[[Params], str]] = {
    "upkeep_nothing_kept": lambda p: "Add a value to keep, with its use per day, its additive and its pump.",
    "upkeep_twice": lambda p: f"{_cap(p['parameter'])} stands twice on the list. Keep each value with one additive.",
    "upkeep_no_use": lambda p: (
        f"{_cap(p['parameter'])} has no use per day, so there is nothing to make good. Test it twice, some days apart, or take "
        "it off the list."
    ),
    "upkeep_same_ratio": lambda p: (
        f"What is dosed for {p['first']} and for {p['second']} raises both in the same proportion, so one of them is enough. "
        "Take one off the list, or choose another additive."
    ),
    "upkeep_brings_too_much": _too_much,
    "upkeep_no_doses": lambda p: (
        f"No doses of these additives make good {_all(p['parameters'])} at once. Choose additives that raise one value each."
    ),
    "upkeep_step": lambda p: (
        f"A dose of {about(p['single_ml'])} for {p['parameter']} rounded down to steps of {dose(p['step_ml'])} is nothing. "
        "Choose fewer doses a day, a finer step or a weaker stock."
    ),
    "upkeep_smallest_dose": _below_smallest,
    "upkeep_pump_share": lambda p: (
        f"{_cap(p['parameter'])} needs {about(p['needs_ml'])} in 24 hours, and its pump can give {about(p['most_ml'])}. Use a "
        "stronger stock or a faster pump."
    ),
    "upkeep_daily_rise": _daily_rise,
    "upkeep_single_dose": lambda p: (
        f"The doses of one moment would raise {p['parameter']} by {_amount(p, 'rise')}, more than the {_amount(p, 'most')} they "
        "may. Choose more doses a day."
    ),
    "upkeep_evaporation": lambda p: (
        f"The doses of 24 hours are {about(p['in_day_ml'])}, but only {about(p['most_ml'])} evaporate. Use stronger stocks, or "
        "something stronger than limewater."
    ),
    "upkeep_ph_rise": lambda p: (
        f"The doses of one hour would lift pH by {figure(p['rise'], 2)}, more than the {figure(p['most'], 1)} they may. "
        f"{_smaller(p['per_day'])}Sodium bicarbonate does not lift it at once."
    ),
    "upkeep_ph_ceiling": lambda p: (
        f"pH is {figure(p['now'], 3)} now and would come to {figure(p['ph'], 3)} after the doses of one hour; they must not take "
        f"it above {figure(p['most'], 1)}. {_smaller(p['per_day'])}Use sodium bicarbonate, or dose at night and test pH then."
    ),
    "upkeep_saturation": lambda p: (
        f"Aragonite saturation is {significant(p['now'], 3)} now and would come to {significant(p['saturation'], 3)} after the "
        f"doses of one hour. Above {significant(p['most'], 3)} calcium carbonate falls out. {_smaller(p['per_day'])}"
        "Use sodium bicarbonate, or dose at night and test pH then."
    ),
    "upkeep_ratio": lambda p: (
        f"Calcium and alkalinity are used at {with_unit(significant(p['of_use'], 3), 'mg per meq')}, but skeleton takes "
        f"{with_unit(significant(p['of_skeleton'], 4), 'mg per meq')}. A test may be wrong, or something falls out. Test both "
        "again."
    ),
    "upkeep_keep_apart": _apart,
    "upkeep_beside_correction": lambda p: (
        f"A correction of {p['parameter']} goes on for {significant(p['days'], 2)} more days. Its doses make good the daily use "
        "already: begin this upkeep when it is over."
    ),
    "upkeep_covered": lambda p: (
        f"The other additives bring all of the {p['parameter']} that is used, so nothing is dosed for it."
    ),
    "upkeep_partner_falls": lambda p: (
        f"Skeleton takes calcium and alkalinity together: {p['parameter']} falls by {_amount(p, 'falls')}, and nothing on the "
        "list makes it good."
    ),
    "upkeep_rounding": lambda p: (
        f"Rounding down to steps of {dose(p['step_ml'])} leaves {with_unit(significant(100.0 * p['lost'], 2), '%')} of the dose "
        f"for {p['parameter']} out. Use fewer doses a day or a finer step."
    ),
    "upkeep_bottle_unknown": lambda p: (
        f"What else is in the bottle for {p['parameter']} is not known, so what it leaves behind is not counted."
    ),
    "upkeep_ph_assumed": lambda p: (
        f"pH was not measured, so {figure(p['ph'], 1)} is assumed, and only its rise in an hour is limited. Measure it."
    ),
}
