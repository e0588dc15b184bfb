"""The wishes of a timetable as they stand in the records: quiet hours, time apart, doses a day; and which field each belongs to."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field

from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Field
from evenwater.engine.timetable_intake import DOSES, KEEP_APART
from evenwater.engine.timetable_question import APART_BETTER_MIN, APART_MIN, DAY_MIN
from evenwater.screens.views import Message
from evenwater.wording import say

Values = Mapping[str, Typed]

QUIET_FROM, QUIET_TO, APART, ONE_AT_A_TIME = "quiet_from", "quiet_to", "apart", "one_at_a_time"
"""Fields of a system."""
DOSES_WANTED, DOSES_FEWEST, DOSES_MOST, FIRST_AT = "doses_wanted", "doses_fewest", "doses_most", "first_at"
"""Fields of a correction."""
SYSTEM_WISHES = (QUIET_FROM, QUIET_TO, APART, ONE_AT_A_TIME)
PUMP_WISHES = (DOSES_WANTED, DOSES_FEWEST, DOSES_MOST, FIRST_AT)
APART_FIELD: Field = KEEP_APART
DOSES_FIELD: Field = DOSES
USUAL_APART_MIN = APART_BETTER_MIN
"""How far opposing doses stay apart where nobody said it [min]; common practice, no source."""
YES = "yes"
# Doses a day that are easy to set and to remember, the most first.
_PLAIN = (24, 12, 8, 6, 4, 3, 2, 1)
_CLOCK = re.compile(r"([01]?[0-9]|2[0-3]):([0-5][0-9])|24:00", re.ASCII)
# Where each of the engine's paths stands on the sheet; those of a pump follow its parameter.
_FIELDS = {"keep_apart": APART, "quiet": QUIET_FROM, "one_at_a_time": ONE_AT_A_TIME}
_PUMP_FIELDS = {
    "doses_per_day": DOSES_WANTED,
    "fewest_doses": DOSES_FEWEST,
    "most_doses": DOSES_MOST,
    "quiet": FIRST_AT,
}


def pump_path(parameter: str, name: str) -> str:
    """Return the path of a wish about one pump: its parameter and the name of the field."""
    return f"{parameter}.{name}"


def clock_minute(text: str) -> int | Message | None:
    """Read a clock time.

    Parameters
    ----------
    text : str
        Hours from 00 to 23 and minutes, like 22:00; or 24:00.

    Returns
    -------
    int, Message or None
        Minutes after midnight [min], what is wrong, or None for nothing.
    """
    clean = " ".join(text.split())
    if not clean:
        return None
    found = _CLOCK.fullmatch(clean)
    if found is None:
        return Message(say("“{clean}” is not a clock time. Write it like 22:00.", clean=clean), code="not_a_clock")
    return DAY_MIN if found[1] is None else 60 * int(found[1]) + int(found[2])


def clock(minute: int) -> str:
    """Write a minute of the day as a 24-hour clock time."""
    hour, rest = divmod(minute % DAY_MIN, 60)
    return f"{hour:02d}:{rest:02d}"


@dataclass(frozen=True)
class Wishes:
    """What is wished for, ready for the question.

    ``quiet`` are the hours without doses as a question file writes them, ``open_min`` [min] is what they leave of the day.
    ``faults`` are sentences with the field that each belongs to; ``pumps`` the wishes of each parameter's pump.
    """

    quiet: str = ""
    open_min: int = DAY_MIN
    apart: Typed = field(default_factory=lambda: Typed(""))
    one_at_a_time: bool = False
    pumps: Mapping[str, Values] = field(default_factory=dict)
    faults: tuple[Message, ...] = ()

    def of(self, parameter: str, name: str) -> Typed:
        """Return one wish about a pump as typed."""
        return self.pumps.get(parameter, {}).get(name, Typed(""))

    def keep_apart(self, usual_min: int) -> Typed:
        """Return how far opposing doses stay apart, or what is usual where nobody said it."""
        return self.apart if self.apart.text.strip() else Typed(str(usual_min), "min")

    def not_before(self, parameter: str) -> str:
        """Return the hours before the first dose of one pump, or nothing."""
        minute = clock_minute(self.of(parameter, FIRST_AT).text)
        return (
            say("00:00 to {minute}", minute=clock(minute)) if isinstance(minute, int) and 0 < minute < DAY_MIN else ""
        )


def read(system: Values, pumps: Mapping[str, Values]) -> Wishes:
    """Read the wishes.

    Parameters
    ----------
    system : mapping of str to Typed
        The system's fields.
    pumps : mapping of str to mapping
        Fields of each correction by its parameter.

    Returns
    -------
    Wishes
        With every fault that its clock times have; figures are judged with the question.
    """
    faults: list[Message] = []
    quiet, open_min = "", DAY_MIN
    begin, end = (clock_minute(system.get(name, Typed("")).text) for name in (QUIET_FROM, QUIET_TO))
    for found, name in ((begin, QUIET_FROM), (end, QUIET_TO)):
        if isinstance(found, Message):
            faults.append(Message(found.text, name, found.code))
    if isinstance(begin, int) and end is None:
        faults.append(Message(say("Write when the quiet hours end as well."), QUIET_TO, "half_quiet"))
    elif isinstance(end, int) and begin is None:
        faults.append(Message(say("Write when the quiet hours begin as well."), QUIET_FROM, "half_quiet"))
    elif isinstance(begin, int) and isinstance(end, int):
        lasts = (end - begin) % DAY_MIN
        if lasts:
            # As the engine reads hours, in every language.
            quiet, open_min = f"{clock(begin)} to {clock(end)}", DAY_MIN - lasts
        else:
            faults.append(
                Message(say("Quiet hours that end when they begin leave nothing of the day."), QUIET_TO, "all_quiet")
            )
    for parameter, values in pumps.items():
        found = clock_minute(values.get(FIRST_AT, Typed("")).text)
        if isinstance(found, Message):
            faults.append(Message(found.text, pump_path(parameter, FIRST_AT), found.code))
    return Wishes(
        quiet=quiet,
        open_min=open_min,
        apart=system.get(APART, Typed("")),
        one_at_a_time=system.get(ONE_AT_A_TIME, Typed("")).text.strip() == YES,
        pumps=pumps,
        faults=tuple(faults),
    )


def usual_doses(pump_doses: int, opposed: bool, open_min: int) -> int:
    """Return how many doses a day are planned where nobody said it.

    Parameters
    ----------
    pump_doses : int
        Doses a day that the pump is set to elsewhere.
    opposed : bool
        Whether what it gives must stay apart from another pump's.
    open_min : int
        Minutes of the day without quiet hours [min].

    Returns
    -------
    int
        The pump's own number where all of the day is open; else the largest plain number up to it that comes no more often, and where it is
        opposed one with which both find room half an hour apart.
    """
    often = pump_doses * open_min // DAY_MIN
    # Two pumps in turn: each dose has the time apart before it and after it, and a minute to run.
    room = min(often, open_min // (2 * (USUAL_APART_MIN + 1))) if opposed else often
    return pump_doses if room >= pump_doses else next((count for count in _PLAIN if count <= room), 1)


def placed(path: str, parameters: tuple[str, ...], wishes: Wishes) -> str:
    """Return the field of the sheet that one of the question's paths stands for.

    Parameters
    ----------
    path : str
        Path of a reason, such as ``pump.2.doses_per_day``.
    parameters : tuple of str
        Parameter of each pump, in the order of the question.
    wishes : Wishes
        The wishes, since hours of a single pump may be the quiet hours of all.

    Returns
    -------
    str
        Path of a field, or empty for what stands on another sheet.
    """
    table, _, rest = path.partition(".")
    number, _, name = rest.partition(".")
    if table == "apart":
        return APART
    if table != "pump":
        return _FIELDS.get(path, "")
    if not number.isdigit() or int(number) > len(parameters) or name not in _PUMP_FIELDS:
        return ""
    parameter = parameters[int(number) - 1]
    if name == "quiet" and not wishes.not_before(parameter):
        return QUIET_FROM
    return pump_path(parameter, _PUMP_FIELDS[name])


LEAST_APART_MIN = APART_MIN
"""What is held at the least where a plan's doses cannot be fewer [min]; common practice, no source."""
