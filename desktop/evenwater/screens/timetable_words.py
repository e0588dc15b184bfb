"""The sentences about a timetable. None needs the keeper's unit: their figures come with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import figure
from evenwater.screens.shown import about, dose, span, with_unit

Params = Mapping[str, Any]


def minutes(value: float) -> str:
    """Write a number of minutes with its unit, downwards to a tenth."""
    return with_unit(figure(int(10.0 * value + 1e-9) / 10.0, 1), "min")


def quoted(name: str) -> str:
    """Return a pump's name between marks: it is the keeper's own words."""
    return f"“{name}”"


def _all(names: tuple[str, ...]) -> str:
    """Join names as a sentence does: “a”, “b” and “c”."""
    said = [quoted(name) for name in names]
    return " and ".join(filter(None, (", ".join(said[:-1]), said[-1])))


def _doses(count: int) -> str:
    return "one dose a day" if count == 1 else f"{count} doses a day"


def _number(p: Params) -> str:
    return _doses(p["fewest"]) if p["fewest"] == p["most"] else f"{p['fewest']} to {p['most']} doses a day"


def _would_do(p: Params) -> str:
    return f"Choose {_doses(p['would_do'])}" if p["would_do"] else ""


def _smallest(p: Params) -> str:
    least = max(p["smallest_ml"], p["step_ml"])
    head = (
        f"In {_doses(p['fewest'])} the smaller doses of {quoted(p['name'])} would be {dose(p['small_ml'])}, below the {dose(least)} "
        "it gives accurately."
    )
    return (
        f"{head} {_would_do(p)}, or a weaker stock." if p["would_do"] else f"{head} Use a weaker stock or a finer pump."
    )


def _largest(p: Params) -> str:
    head = (
        f"In {_doses(p['most'])} a dose of {quoted(p['name'])} would be {dose(p['large_ml'])}, more than the {dose(p['largest_ml'])} "
        "it may be."
    )
    return f"{head} {_would_do(p)}, or a stronger stock." if p["would_do"] else f"{head} Use a stronger stock."


def _between(p: Params) -> str:
    head = f"No dose of {quoted(p['name'])} is both {dose(max(p['smallest_ml'], p['step_ml']))} or more and {dose(p['largest_ml'])} or less with {_number(p)}."
    return f"{head} {_would_do(p)}." if p["would_do"] else f"{head} Use a finer pump or another stock."


def _none(p: Params) -> str:
    """Begin a refusal: certain where the search went through all there is, and careful where it did not."""
    return f"No timetable of {_all(p['names'])} {'keeps' if p['proved'] else 'was found that keeps'} all wishes."


def _apart(p: Params) -> str:
    pair = f"{quoted(p['first'])} and {quoted(p['second'])}"
    if p["widest_min"] < 1:
        return f"{_none(p)} Only if {pair} need not stay {minutes(p['minutes'])} apart is there one."
    return f"{_none(p)} With {minutes(p['widest_min'])} between {pair} instead of {minutes(p['minutes'])} there is one."


_WISHES = {
    "apart": "the time that doses stay apart",
    "quiet": "the quiet hours",
    "doses": "the doses a day",
    "one_at_a_time": "only one pump at a time",
    "closest": "how near the doses of one pump may come",
}


def _together(p: Params) -> str:
    wishes = [_WISHES[name] for name in p["wishes"]]
    if not wishes:
        return f"{_none(p)} They run too long for one day. Use stronger stocks or faster pumps."
    if len(wishes) == 1:
        return f"{_none(p)} In the way: {wishes[0]}. Leaving it out alone is not enough: use stronger stocks or faster pumps as well."
    said = " and ".join(filter(None, (", ".join(wishes[:-1]), wishes[-1])))
    return f"{_none(p)} These stand in the way together: {said}. Give way in two of them."


SENTENCES: dict[str, Callable[[Params], str]] = {
    "timetable_no_pumps": lambda p: "Add a pump, with what it gives in a day and its flow.",
    "timetable_too_many": lambda p: (
        f"These are {p['count']} pumps; {p['most']} can be planned together. Leave some out."
    ),
    "timetable_figure": lambda p: f"{quoted(p['what'])}: one of the figures cannot be. Write them again.",
    "timetable_same_name": lambda p: f"Two pumps are called {quoted(p['name'])}. Give each a name of its own.",
    "timetable_which_pump": lambda p: f"No pump is called {quoted(p['text'])}. There are: {_all(p['choices'])}.",
    "timetable_hours": lambda p: (
        f"{quoted(p['text'])} are no hours. Write them like 22:00 to 07:00, several with a comma between them."
    ),
    "timetable_numbers": lambda p: (
        f"For {quoted(p['name'])} {_doses(p['doses'])} are wished for, and {p['fewest']} to {p['most']} are allowed. Correct one of the "
        "three."
    ),
    "timetable_apart_itself": lambda p: f"{quoted(p['name'])} cannot be kept apart from itself. Name two pumps.",
    "timetable_apart_least": lambda p: (
        f"{quoted(p['first'])} and {quoted(p['second'])} fall out when they meet in the water. Keep them {minutes(p['least'])} apart or more, "
        f"not {minutes(p['minutes'])}."
    ),
    "timetable_step": lambda p: (
        f"{quoted(p['name'])} gives {about(p['per_day_ml'])} a day, less than one step of {dose(p['step_ml'])}. Use a weaker stock or "
        "a finer pump."
    ),
    "timetable_pump_share": lambda p: (
        f"{quoted(p['name'])} is to give {about(p['per_day_ml'])} a day, and can give {about(p['most_ml'])} in "
        f"{with_unit(figure(100.0 * p['share'], 1), '%')} of the time. Use a stronger stock or a faster pump."
    ),
    "timetable_smallest": _smallest,
    "timetable_largest": _largest,
    "timetable_between": _between,
    "timetable_apart": _apart,
    "timetable_quiet": lambda p: (
        f"{_none(p)} The quiet hours leave {span(p['open_min'] / 1440.0)} of the day; without them there is one. Shorten them."
        if p["open_min"]
        else f"{_none(p)} The quiet hours leave nothing of the day. Shorten them."
    ),
    "timetable_doses": lambda p: f"{_none(p)} With {_doses(p['would_do'])} at most there is one.",
    "timetable_one_at_a_time": lambda p: f"{_none(p)} There is one when two pumps may run together.",
    "timetable_closest": lambda p: (
        f"{_none(p)} There is one when doses of {quoted(p['name'])} may come nearer than {minutes(p['minutes'])}."
    ),
    "timetable_together": _together,
    "timetable_disagrees": lambda p: (
        "The second reckoning does not agree with this timetable, so none is given. Please keep this question and report it."
    ),
    "timetable_other_number": lambda p: (
        f"{quoted(p['name'])} gets {_doses(p['given'])} instead of the {p['wished']} wished for, which its other wishes leave no room for."
    ),
    "timetable_uneven": lambda p: (
        f"The doses of {quoted(p['name'])} could not be spaced evenly: they come {minutes(p['shortest_min'])} to "
        f"{minutes(p['longest_min'])} apart."
    ),
    "timetable_bunched": lambda p: (
        f"All doses of {quoted(p['name'])} come within {span(p['lasts_min'] / 1440.0)} of the {span(p['open_min'] / 1440.0)} in which it may run, so the "
        "water rises in that time. Fewer minutes apart, or shorter quiet hours, would spread them."
    ),
    "timetable_carried": lambda p: (
        f"What {quoted(p['name'])} gives in a day is no multiple of its step, so on {p['extra']} of {p['days']} days the first dose is "
        f"{dose(p['step_ml'])} more. The sum is then exact."
        if p["days"] <= 31
        else f"What {quoted(p['name'])} gives in a day is no multiple of its step. What is left is carried on: on some days the first "
        f"dose is {dose(p['step_ml'])} more."
    ),
    "timetable_rather_further": lambda p: (
        f"{quoted(p['first'])} and {quoted(p['second'])} come {minutes(p['minutes'])} apart at the nearest; {minutes(p['better'])} "
        "are better. Fewer doses make room."
    ),
}
