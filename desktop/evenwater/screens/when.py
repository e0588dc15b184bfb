"""When something was measured: strict reading of what is typed, and how an instant is written back."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, datetime, timedelta, tzinfo

from evenwater.engine.reasons import Reason
from evenwater.screens.shown import date_words
from evenwater.wording import marked, say

# A clock may run a little fast; further ahead the date or the hour was mistyped (H8).
AHEAD_ALLOWED = timedelta(minutes=5)
# Around midnight "23:50" may be today's, still to come, or yesterday's, ten minutes ago.
_NEAR_MIDNIGHT = timedelta(hours=2)

# No log is older, and at the ends of the calendar no instant can be turned into another zone.
_FIRST_YEAR, _LAST_YEAR = 1970, 9998

_CLOCK = r"(?P<hour>[0-9]{1,2}):(?P<minute>[0-9]{2})"
_RELATIVE = re.compile(rf"(?:(?P<day>today|yesterday)[ ,]+)?{_CLOCK}", re.ASCII)
_ISO = re.compile(rf"(?P<y>[0-9]{{4}})-(?P<m>[0-9]{{1,2}})-(?P<d>[0-9]{{1,2}})(?:[ T]+{_CLOCK})?", re.ASCII)
_DAY_MONTH = re.compile(r"[0-9]{1,2}[./-][0-9]{1,2}(?:[./-][0-9]{2,4})?(?:[ ,]+[0-9:]*)?", re.ASCII)
_TWELVE_HOUR = re.compile(r".*[0-9 ][ap]\.?m\.?", re.ASCII)


_NOW, _TODAY, _YESTERDAY = marked("now"), marked("today"), marked("yesterday")


@dataclass(frozen=True)
class AskWhen:
    """The time has two possible days; ``readings`` are both instants, the earlier first."""

    readings: tuple[datetime, ...]
    reason: Reason


When = datetime | AskWhen | Reason


def read_when(text: str, now: datetime, zone: tzinfo | None = None) -> When | None:
    """Read when something was measured.

    Parameters
    ----------
    text : str
        ``now``, ``today 08:00``, ``yesterday 18:30``, ``08:00``, ``2026-11-25 08:00``, or an ISO 8601
        instant with its offset.
    now : datetime
        The present, with its zone.
    zone : tzinfo or None
        Where the clock hangs; the zone of ``now`` when not given.

    Returns
    -------
    datetime, AskWhen, Reason or None
        The instant with its zone, a question back, why it cannot be taken, or None for nothing.
    """
    clean = " ".join(text.replace("\u00a0", " ").split())
    if not clean:
        return None
    here = now.astimezone(zone) if zone else now
    words = _in_english(clean.casefold())
    if words == "now":
        return here.replace(second=0, microsecond=0)
    relative = _RELATIVE.fullmatch(words)
    if relative:
        return _relative(relative, text, here)
    iso = _ISO.fullmatch(clean)
    if iso:
        return _dated(iso, text, here)
    try:
        instant = datetime.fromisoformat(clean)
    except ValueError:
        return Reason(_fault(words), {"text": text})
    if not _FIRST_YEAR <= instant.year <= _LAST_YEAR:
        return Reason("when_no_such_time", {"text": text})
    if instant.tzinfo is None:
        return _settled(instant.replace(tzinfo=here.tzinfo), text, here)
    # An offset names one instant, also in the hour that comes twice.
    there = instant.astimezone(here.tzinfo)
    return Reason("when_future", {"text": text}) if _ahead(there, here) else there


def instant_of(text: str) -> datetime | None:
    """Return the instant that a record keeps as ISO 8601 text; None where that is none, or has no zone."""
    try:
        found = datetime.fromisoformat(text)
    except ValueError:
        return None
    return found if found.utcoffset() is not None and _FIRST_YEAR <= found.year <= _LAST_YEAR else None


def written(instant: datetime, now: datetime) -> str:
    """Write an instant as the field shows it: today 08:00, yesterday 18:30, or 2026-11-25 08:00."""
    local = instant.astimezone(now.tzinfo)
    days = (now.date() - local.date()).days
    day = _short_today() if days == 0 else say(_YESTERDAY) if days == 1 else f"{local:%Y-%m-%d}"
    return f"{day} {local:%H:%M}"


def age_words(instant: datetime, now: datetime) -> str:
    """Write how long ago an instant was: 25 min ago, 5 h ago, 3 days ago."""
    minutes = round((now.timestamp() - instant.timestamp()) / 60)
    if minutes < 1:
        return say("just now")
    if minutes < 60:
        return say("{minutes}\u00a0min ago", minutes=minutes)
    if minutes < 48 * 60:
        return say("{hours}\u00a0h ago", hours=minutes // 60)
    return say("{days}\u00a0days ago", days=minutes // (24 * 60))


def choice_words(instant: datetime, now: datetime) -> str:
    """Write an instant for a button, with the day spelled out: today 23:50, Tue 24 Nov 2026 23:50."""
    local = instant.astimezone(now.tzinfo)
    near = (now.date() - local.date()).days in (0, 1)
    return written(instant, now) if near else f"{date_words(local)} {local:%H:%M}"


def when_words(reason: Reason) -> str:
    """Return the sentence for a reason of ``read_when``."""
    text = reason.params["text"]
    return {
        "when_day_or_month": say(
            "“{text}”: which is the day and which the month? Write the date like 2026-11-25 08:00.", text=text
        ),
        "when_twelve_hour": say("“{text}”: write the hour from 00 to 23, like today 18:30.", text=text),
        "when_no_clock": say("“{text}” has no hour. Write it like 2026-11-25 08:00.", text=text),
        "when_no_such_time": say("“{text}” does not exist in the calendar or on the clock.", text=text),
        "when_future": say("“{text}” is still to come. Write when it was measured.", text=text),
        "when_which_day": say("“{text}”: today or yesterday?", text=text),
        "when_clock_changed": say(
            "“{text}” comes twice, or not at all, on the night the clocks change. Choose another minute.", text=text
        ),
        "when_unknown": say(
            "“{text}” is not a time. Write today 08:00, yesterday 18:30 or 2026-11-25 08:00.", text=text
        ),
    }[reason.code]


def _in_english(words: str) -> str:
    """Return what was typed with the day in English; it may be said in the keeper's language as well."""
    own_words = ((_TODAY, _short_today()), *((english, say(english)) for english in (_NOW, _TODAY, _YESTERDAY)))
    for english, own in ((english, own.casefold()) for english, own in own_words):
        if words == own or words.startswith((f"{own} ", f"{own},")):
            return english + words[len(own) :]
    return words


def _short_today() -> str:
    """Return the word for today that a narrow field has room for."""
    return say("today", about="in a narrow field")


def _relative(match: re.Match[str], text: str, here: datetime) -> When:
    days_back = 1 if match["day"] == "yesterday" else 0
    wanted = _at(here.date() - timedelta(days=days_back), match, here.tzinfo)
    if wanted is None:
        return Reason("when_no_such_time", {"text": text})
    if match["day"]:
        return _settled(wanted, text, here)
    midnight = datetime(here.year, here.month, here.day, tzinfo=here.tzinfo)
    near = here - midnight < _NEAR_MIDNIGHT or midnight + timedelta(days=1) - here < _NEAR_MIDNIGHT
    if not near:
        return _settled(wanted, text, here)
    before = _at(here.date() - timedelta(days=1), match, here.tzinfo)
    if before is None:
        return Reason("when_no_such_time", {"text": text})
    readings = tuple(t for t in (before, wanted) if not _ahead(t, here))
    return AskWhen(readings, Reason("when_which_day", {"text": text}))


def _dated(match: re.Match[str], text: str, here: datetime) -> When:
    try:
        day = date(int(match["y"]), int(match["m"]), int(match["d"]))
    except ValueError:
        return Reason("when_no_such_time", {"text": text})
    if not _FIRST_YEAR <= day.year <= _LAST_YEAR:
        return Reason("when_no_such_time", {"text": text})
    if match["hour"] is None:
        return Reason("when_no_clock", {"text": text})
    wanted = _at(day, match, here.tzinfo)
    return Reason("when_no_such_time", {"text": text}) if wanted is None else _settled(wanted, text, here)


def _at(day: date, match: re.Match[str], zone: tzinfo | None) -> datetime | None:
    hour, minute = int(match["hour"]), int(match["minute"])
    if hour > 23 or minute > 59:
        return None
    return datetime(day.year, day.month, day.day, hour, minute, tzinfo=zone)


def _settled(wanted: datetime, text: str, here: datetime) -> When:
    """Return the instant, unless it is still to come or the clocks were changed over it."""
    if wanted.utcoffset() != wanted.replace(fold=1).utcoffset():
        return Reason("when_clock_changed", {"text": text})
    if _ahead(wanted, here):
        return Reason("when_future", {"text": text})
    return wanted


def _ahead(wanted: datetime, here: datetime) -> bool:
    # By timestamps: the difference of two datetimes of one zone is one of wall clocks, an hour wrong over a change.
    return wanted.timestamp() > here.timestamp() + AHEAD_ALLOWED.total_seconds()


def _fault(words: str) -> str:
    if _TWELVE_HOUR.fullmatch(words):
        return "when_twelve_hour"
    return "when_day_or_month" if _DAY_MONTH.fullmatch(words) else "when_unknown"
