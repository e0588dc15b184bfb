"""Figures as a keeper reads them: number, no-break space, unit; doses, spans of time, dates."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from decimal import Decimal

from evenwater.engine import quantities
from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water, from_canonical
from evenwater.engine.units import KINDS
from evenwater.wording import marked, say, say_all, say_many, style

NBSP = "\u00a0"
_DAYS = (
    marked("Monday"),
    marked("Tuesday"),
    marked("Wednesday"),
    marked("Thursday"),
    marked("Friday"),
    marked("Saturday"),
    marked("Sunday"),
)
_SHORT_DAYS = (marked("Mon"), marked("Tue"), marked("Wed"), marked("Thu"), marked("Fri"), marked("Sat"), marked("Sun"))
_MONTHS = (
    marked("Jan"),
    marked("Feb"),
    marked("Mar"),
    marked("Apr"),
    marked("May"),
    marked("Jun"),
    marked("Jul"),
    marked("Aug"),
    marked("Sep"),
    marked("Oct"),
    marked("Nov"),
    marked("Dec"),
)
# From here on millilitres are written as litres, so that no dose has four digits before the point.
_LITRES_FROM_ML = 1000.0
# And from here on as cubic metres: the dosing of a public aquarium.
_CUBIC_METRES_FROM_ML = 1_000_000.0
_NOTHING_ML = 1e-9


def decimal(text: str) -> str:
    """Return a plain number with the decimal mark of the language."""
    return text if style().decimal == "." else text.replace(".", style().decimal)


def figure(value: float, decimals: int) -> str:
    """Write a number plainly, as ``quantities.figure`` does, with the decimal mark of the language."""
    return decimal(quantities.figure(value, decimals))


def significant(value: float, digits: int) -> str:
    """Write a number with so many significant digits, with the decimal mark of the language."""
    return decimal(quantities.significant(value, digits))


def with_unit(number: str, unit: str) -> str:
    """Join a number and its unit, in the keeper's words, with exactly one no-break space (L3)."""
    return f"{number}{NBSP}{say(unit)}".strip(NBSP) if unit else number


def unit_words(unit_id: str) -> str:
    """Return the shown form of a unit id; other words come back as they are."""
    for kind in KINDS.values():
        for unit in kind.units:
            if unit.id == unit_id:
                return say(unit.shown)
    return unit_id


@dataclass(frozen=True)
class Shown:
    """Writes canonical values of one parameter in the keeper's unit, and instants in their zone."""

    parameter: Parameter
    unit: str
    water: Water
    zone: tzinfo | None = None

    @property
    def unit_words(self) -> str:
        """The unit as it is shown."""
        return say(KINDS[self.parameter.kind].unit(self.unit).shown)

    @property
    def rise_unit(self) -> str:
        """Id of the unit in which rises are said; a rise of specific gravity is said in ppt."""
        return "ppt" if self.unit.startswith("SG") else self.unit

    def number(self, value: float) -> float:
        """Return a canonical value as the keeper's figure."""
        return from_canonical(value, self.parameter.kind, self.unit, self.water)

    def value(self, value: float, digits: int = 3) -> str:
        """Write a canonical value with its unit."""
        digits = 5 if self.unit.startswith("SG") else digits
        return with_unit(significant(self.number(value), digits), self.unit_words)

    def rise(self, value: float, digits: int = 3) -> str:
        """Write a canonical rise, without its time."""
        figure_ = from_canonical(value, self.parameter.kind, self.rise_unit, self.water)
        return with_unit(significant(figure_, digits), KINDS[self.parameter.kind].unit(self.rise_unit).shown)

    def per_day(self, value: float, digits: int = 3) -> str:
        """Write a canonical rise or use per day."""
        return say("{value} per day", value=self.rise(value, digits))


def dose(ml: float, *, spelled: bool = True) -> str:
    """Write a dose exactly: never rounded again, never four digits before the point (L6).

    ``spelled`` says a larger unit in words as well.
    """
    if ml >= _CUBIC_METRES_FROM_ML:
        said = with_unit(_exact(Decimal(repr(ml)) / 1_000_000), "m3")
        return say("{dose} (cubic metres)", dose=said) if spelled else said
    if ml >= _LITRES_FROM_ML:
        said = with_unit(_exact(Decimal(repr(ml)) / 1000), "L")
        return say("{dose} (litres)", dose=said) if spelled else said
    return with_unit(_exact(Decimal(repr(ml))), "mL")


def _exact(number: Decimal) -> str:
    """Write every digit of a number, without exponent and trailing zeros."""
    text = format(number, "f")
    return decimal(text.rstrip("0").rstrip(".") if "." in text else text)


def about(ml: float) -> str:
    """Write a volume that is not dosed at once, to three digits and downwards."""
    if ml < _NOTHING_ML:
        return with_unit("0", "mL")
    if ml >= _CUBIC_METRES_FROM_ML:
        return say("{dose} (cubic metres)", dose=with_unit(_floored(ml / 1000000.0), "m3"))
    if ml >= _LITRES_FROM_ML:
        return say("{dose} (litres)", dose=with_unit(_floored(ml / 1000.0), "L"))
    return with_unit(_floored(ml), "mL")


def _floored(value: float) -> str:
    """Write a number above zero with three digits, cut and not rounded."""
    places = 2 - math.floor(math.log10(value))
    grain = 10.0**-places
    return figure(math.floor(value / grain + 1e-9) * grain, max(0, places))


def seconds(value: float) -> str:
    """Write a pump's running time, downwards: tenths below a minute, then minutes and seconds."""
    if value < 60.0:
        # Tenths, and below a second two digits that count.
        places = 1 if value >= 1.0 else 1 - math.floor(math.log10(value))
        grains = 10.0**places
        return with_unit(figure(math.floor(value * grains + 1e-9) / grains, places), "s")
    minutes, rest = divmod(math.floor(value + 1e-9), 60)
    return f"{with_unit(str(minutes), 'min')} {with_unit(str(rest), 's')}" if rest else with_unit(str(minutes), "min")


def span(days: float) -> str:
    """Write a length of time in the two largest units that matter."""
    minutes = round(days * 1440.0)
    if minutes < 60:
        return with_unit(str(max(minutes, 1)), "min")
    whole_days, rest = divmod(minutes, 1440)
    hours, left = divmod(rest, 60)
    if whole_days >= 10:
        return say_many("{n}\u00a0day", "{n}\u00a0days", round(days))
    if whole_days:
        day = say_many("{n}\u00a0day", "{n}\u00a0days", whole_days)
        return f"{day} {with_unit(str(hours), 'h')}" if hours else day
    return f"{with_unit(str(hours), 'h')} {with_unit(str(left), 'min')}" if left else with_unit(str(hours), "h")


def days_words(days: float) -> str:
    """Write a number of whole days: a day, 7 days."""
    return say_many("a day", "{n}\u00a0days", round(days), about="every")


def every(per_day: int) -> str:
    """Say how often doses come; odd intervals are rounded up to whole minutes, never down."""
    if per_day == 1:
        return say("once a day")
    minutes = math.ceil(Decimal(1440) / Decimal(per_day))
    hours, rest = divmod(minutes, 60)
    if not hours:
        return say_many("every minute", "every {rest}", rest, rest=with_unit(str(rest), "min"))
    if rest:
        return say("every {hours} {rest}", hours=with_unit(str(hours), "h"), rest=with_unit(str(rest), "min"))
    return say_many("every hour", "every {hours}", hours, hours=with_unit(str(hours), "h"))


def weekday_time(when: datetime, now: datetime) -> str:
    """Write an instant in the zone of ``now``: today, the weekday within six days, else the date."""
    local = when.astimezone(now.tzinfo)
    clock = f"{local:%H:%M}"
    if local.date() == now.date():
        return say("today {clock}", clock=clock)
    if abs(local.date() - now.date()) <= timedelta(days=6):
        return f"{say_all(_DAYS[local.weekday()])} {clock}"
    return f"{date_words(local)} {clock}"


def date_words(when: datetime) -> str:
    """Write a date with its weekday: Wed 25 Nov 2026, in words that cannot be turned round."""
    return say(
        "{weekday} {day} {month} {year}",
        weekday=say(_SHORT_DAYS[when.weekday()]),
        day=when.day,
        month=say(_MONTHS[when.month - 1]),
        year=when.year,
    )


def day_words(when: datetime, *, weekday: bool = True) -> str:
    """Write a date without its year: Wed 25 Nov, or without the weekday 25 Nov."""
    month = say(_MONTHS[when.month - 1])
    if not weekday:
        return say("{day} {month}", day=when.day, month=month)
    return say("{weekday} {day} {month}", weekday=say(_SHORT_DAYS[when.weekday()]), day=when.day, month=month)


def month_words(month: int) -> str:
    """Write a month from 1 to 12 in three letters or so: Nov."""
    return say(_MONTHS[month - 1])


def date_text(text: str) -> str:
    """Return a written date in words; what is no ISO date stays as it was written."""
    try:
        return date_words(datetime.fromisoformat(text))
    except ValueError:
        return text


def formula(text: str) -> str:
    """Write hydrate water the way a bag does: CaCl2(H2O)2 becomes CaCl2·2H2O."""
    return re.sub(r"\(H2O\)(\d*)$", r"·\1H2O", text)


def date_time(when: datetime) -> str:
    """Write a date without year and a 24-hour clock time: Wed 25 Nov 09:00."""
    return f"{day_words(when)}{NBSP}{when:%H:%M}"
