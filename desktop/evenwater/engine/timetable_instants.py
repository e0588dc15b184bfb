"""When the doses come in the world's time: a pump's clock stays as it was set, also when the clocks on the wall are changed.

A pump knows no summer time. Its clock runs on at the offset from UTC that held where it stands at the moment it was set, so every
interval stays what the timetable says, and no 24 hours hold more than a day's doses and one, on the days of 23 and of 25 hours
too. On the wall the doses then come an hour earlier or later until the clock is set again.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta, tzinfo

from evenwater.engine.timetable_plan import TimetableAnswer

_DAY = timedelta(days=1)


@dataclass(frozen=True)
class DoseAt:
    """One dose: the instant [UTC], place of the pump, volume [mL] and running time [s]."""

    at: datetime
    pump: int
    ml: float
    run_time_s: float


def instants(plan: TimetableAnswer, day: date, zone: tzinfo, set_at: datetime) -> tuple[DoseAt, ...]:
    """Return the doses of one day on the wall.

    Parameters
    ----------
    plan : TimetableAnswer
        The timetable.
    day : date
        The day, from its first moment to that of the next: 23, 24 or 25 hours.
    zone : tzinfo
        The zone of the clocks on the wall.
    set_at : datetime
        When the pumps' clocks were set by the wall, with zone. Nothing is dosed before.

    Returns
    -------
    tuple of DoseAt
        The doses in order of time; those of all days together are those of the timetable, none twice and none left out.
    """
    begin, end = (_first_moment(each, zone) for each in (day, day + _DAY))
    offset = set_at.astimezone(zone).utcoffset() or timedelta()
    first_day = (set_at.astimezone(UTC) + offset).date()
    begin = max(begin, set_at.astimezone(UTC))
    found = []
    # By the pump's clock the day may begin and end on another; a zone that changed sides of the date line is a whole day off.
    for shift in range(-2, 3):
        shown = day + shift * _DAY
        midnight = datetime(shown.year, shown.month, shown.day, tzinfo=UTC) - offset
        number = (shown - first_day).days
        for row in plan.rows:
            at = midnight + timedelta(minutes=row.minute)
            if begin <= at < end:
                more = plan.pumps[row.pump].doses.has_extra(number)
                found.append(
                    DoseAt(
                        at,
                        row.pump,
                        round(row.ml + row.more_ml, 9) if more else row.ml,
                        row.run_time_s + row.more_s if more else row.run_time_s,
                    )
                )
    return tuple(found)


def _first_moment(day: date, zone: tzinfo) -> datetime:
    """Return when a day begins [UTC]; where midnight is left out, the moment at which the clocks go on."""
    return datetime(day.year, day.month, day.day, tzinfo=zone).astimezone(UTC)
