"""The sentences about a timetable. None needs the keeper's unit: their figures come with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.screens.shown import about, dose, figure, span, with_unit
from evenwater.screens.terms import listed
from evenwater.wording import marked, say, say_all, say_many

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
    return listed(said)


def _doses(count: int) -> str:
    return say_many("one dose a day", "{n} doses a day", count)


def _number(p: Params) -> str:
    return (
        _doses(p["fewest"])
        if p["fewest"] == p["most"]
        else say("{fewest} to {most} doses a day", fewest=p["fewest"], most=p["most"])
    )


def _would_do(p: Params) -> str:
    return say("Choose {would_do}", would_do=_doses(p["would_do"])) if p["would_do"] else ""


def _smallest(p: Params) -> str:
    least = max(p["smallest_ml"], p["step_ml"])
    head = say(
        "In {fewest} the smaller doses of {name} would be {small}, below the {least} it gives accurately.",
        fewest=_doses(p["fewest"]),
        name=quoted(p["name"]),
        small=dose(p["small_ml"]),
        least=dose(least),
    )
    return (
        say("{head} {would_do}, or a weaker stock.", head=head, would_do=_would_do(p))
        if p["would_do"]
        else say("{head} Use a weaker stock or a finer pump.", head=head)
    )


def _largest(p: Params) -> str:
    head = say(
        "In {most} a dose of {name} would be {large}, more than the {largest} it may be.",
        most=_doses(p["most"]),
        name=quoted(p["name"]),
        large=dose(p["large_ml"]),
        largest=dose(p["largest_ml"]),
    )
    return (
        say("{head} {would_do}, or a stronger stock.", head=head, would_do=_would_do(p))
        if p["would_do"]
        else say("{head} Use a stronger stock.", head=head)
    )


def _between(p: Params) -> str:
    head = say(
        "No dose of {name} is both {smallest} or more and {largest} or less with {number}.",
        name=quoted(p["name"]),
        smallest=dose(max(p["smallest_ml"], p["step_ml"])),
        largest=dose(p["largest_ml"]),
        number=_number(p),
    )
    return f"{head} {_would_do(p)}." if p["would_do"] else say("{head} Use a finer pump or another stock.", head=head)


def _none(p: Params) -> str:
    """Begin a refusal: certain where the search went through all there is, and careful where it did not."""
    return say(
        "No timetable of {names} {keeps} all wishes.",
        names=_all(p["names"]),
        keeps=say("keeps") if p["proved"] else say("was found that keeps"),
    )


def _apart(p: Params) -> str:
    pair = say("{first} and {second}", first=quoted(p["first"]), second=quoted(p["second"]))
    if p["widest_min"] < 1:
        return say(
            "{none} Only if {pair} need not stay {minutes} apart is there one.",
            none=_none(p),
            pair=pair,
            minutes=minutes(p["minutes"]),
        )
    return say(
        "{none} With {widest} between {pair} instead of {minutes} there is one.",
        none=_none(p),
        widest=minutes(p["widest_min"]),
        pair=pair,
        minutes=minutes(p["minutes"]),
    )


_WISHES = {
    "apart": marked("the time that doses stay apart"),
    "quiet": marked("the quiet hours"),
    "doses": marked("the doses a day"),
    "one_at_a_time": marked("only one pump at a time"),
    "closest": marked("how near the doses of one pump may come"),
}


def _together(p: Params) -> str:
    wishes = [say_all(_WISHES[name]) for name in p["wishes"]]
    if not wishes:
        return say("{none} They run too long for one day. Use stronger stocks or faster pumps.", none=_none(p))
    if len(wishes) == 1:
        return say(
            "{none} In the way: {wishes}. Leaving it out alone is not enough: use stronger stocks or faster pumps as well.",
            none=_none(p),
            wishes=wishes[0],
        )
    said = say(" and ").join(filter(None, (", ".join(wishes[:-1]), wishes[-1])))
    return say("{none} These stand in the way together: {said}. Give way in two of them.", none=_none(p), said=said)


SENTENCES: dict[str, Callable[[Params], str]] = {
    "timetable_no_pumps": lambda p: say("Add a pump, with what it gives in a day and its flow."),
    "timetable_too_many": lambda p: say(
        "These are {count} pumps; {most} can be planned together. Leave some out.", count=p["count"], most=p["most"]
    ),
    "timetable_figure": lambda p: say(
        "{what}: one of the figures cannot be. Write them again.", what=quoted(p["what"])
    ),
    "timetable_same_name": lambda p: say(
        "Two pumps are called {name}. Give each a name of its own.", name=quoted(p["name"])
    ),
    "timetable_which_pump": lambda p: say(
        "No pump is called {text}. There are: {choices}.", text=quoted(p["text"]), choices=_all(p["choices"])
    ),
    "timetable_hours": lambda p: say(
        "{text} are no hours. Write them like 22:00 to 07:00, several with a comma between them.",
        text=quoted(p["text"]),
    ),
    "timetable_numbers": lambda p: say(
        "For {name} {doses} are wished for, and {fewest} to {most} are allowed. Correct one of the three.",
        name=quoted(p["name"]),
        doses=_doses(p["doses"]),
        fewest=p["fewest"],
        most=p["most"],
    ),
    "timetable_apart_itself": lambda p: say(
        "{name} cannot be kept apart from itself. Name two pumps.", name=quoted(p["name"])
    ),
    "timetable_apart_least": lambda p: say(
        "{first} and {second} fall out when they meet in the water. Keep them {least} apart or more, not {minutes}.",
        first=quoted(p["first"]),
        second=quoted(p["second"]),
        least=minutes(p["least"]),
        minutes=minutes(p["minutes"]),
    ),
    "timetable_step": lambda p: say(
        "{name} gives {per_day} a day, less than one step of {step}. Use a weaker stock or a finer pump.",
        name=quoted(p["name"]),
        per_day=about(p["per_day_ml"]),
        step=dose(p["step_ml"]),
    ),
    "timetable_pump_share": lambda p: say(
        "{name} is to give {per_day} a day, and can give {most} in {share} of the time. Use a stronger stock or a faster pump.",
        name=quoted(p["name"]),
        per_day=about(p["per_day_ml"]),
        most=about(p["most_ml"]),
        share=with_unit(figure(100.0 * p["share"], 1), "%"),
    ),
    "timetable_smallest": _smallest,
    "timetable_largest": _largest,
    "timetable_between": _between,
    "timetable_apart": _apart,
    "timetable_quiet": lambda p: (
        say(
            "{none} The quiet hours leave {open} of the day; without them there is one. Shorten them.",
            none=_none(p),
            open=span(p["open_min"] / 1440.0),
        )
        if p["open_min"]
        else say("{none} The quiet hours leave nothing of the day. Shorten them.", none=_none(p))
    ),
    "timetable_doses": lambda p: say(
        "{none} With {would_do} at most there is one.", none=_none(p), would_do=_doses(p["would_do"])
    ),
    "timetable_one_at_a_time": lambda p: say("{none} There is one when two pumps may run together.", none=_none(p)),
    "timetable_closest": lambda p: say(
        "{none} There is one when doses of {name} may come nearer than {minutes}.",
        none=_none(p),
        name=quoted(p["name"]),
        minutes=minutes(p["minutes"]),
    ),
    "timetable_together": _together,
    "timetable_disagrees": lambda p: say(
        "The second reckoning does not agree with this timetable, so none is given. Please keep this question and report it."
    ),
    "timetable_other_number": lambda p: say(
        "{name} gets {given} instead of the {wished} wished for, which its other wishes leave no room for.",
        name=quoted(p["name"]),
        given=_doses(p["given"]),
        wished=p["wished"],
    ),
    "timetable_uneven": lambda p: say(
        "The doses of {name} could not be spaced evenly: they come {shortest} to {longest} apart.",
        name=quoted(p["name"]),
        shortest=minutes(p["shortest_min"]),
        longest=minutes(p["longest_min"]),
    ),
    "timetable_bunched": lambda p: say(
        "All doses of {name} come within {lasts} of the {open} in which it may run, so the water rises in that time. Fewer minutes apart, or shorter quiet hours, would spread them.",
        name=quoted(p["name"]),
        lasts=span(p["lasts_min"] / 1440.0),
        open=span(p["open_min"] / 1440.0),
    ),
    "timetable_carried": lambda p: (
        say(
            "What {name} gives in a day is no multiple of its step, so on {extra} of {days} days the first dose is {step} more. The sum is then exact.",
            name=quoted(p["name"]),
            extra=p["extra"],
            days=p["days"],
            step=dose(p["step_ml"]),
        )
        if p["days"] <= 31
        else say(
            "What {name} gives in a day is no multiple of its step. What is left is carried on: on some days the first dose is {step} more.",
            name=quoted(p["name"]),
            step=dose(p["step_ml"]),
        )
    ),
    "timetable_rather_further": lambda p: say(
        "{first} and {second} come {minutes} apart at the nearest; {better} are better. Fewer doses make room.",
        first=quoted(p["first"]),
        second=quoted(p["second"]),
        minutes=minutes(p["minutes"]),
        better=minutes(p["better"]),
    ),
}
