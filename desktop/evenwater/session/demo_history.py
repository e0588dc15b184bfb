"""Three years in the log of the invented fish room, reckoned backwards from its newest readings.

Backwards, because the newest reading is the one that the corrections of the demonstration start from: whatever was dosed, used
and exchanged before must have led to it.
"""

from __future__ import annotations

import hashlib
import math
import random
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from itertools import pairwise
from typing import Any

from evenwater.engine.quantities import Typed, to_canonical
from evenwater.store import Entry, EntryKind

Table = Mapping[str, Any]

_DAY_S = 86400.0
_LAST_EXCHANGE = 3
_NOBODY = Typed("")
# How far a keeper's setting lies off what would be right, as a standard deviation [1].
_SETTING_OFF = 0.02
# A test is made up to so long [h] before or after its usual time.
_UNPUNCTUAL_H = 0.6


@dataclass(frozen=True)
class _Newest:
    """The reading that a correction starts from: ``text`` as typed, its number, its age and the use [unit per day]."""

    text: str
    number: float
    days_ago: float
    use: float


@dataclass(frozen=True)
class _Happened:
    """Something that touches a value: how long ago [d], and what."""

    days_ago: float
    what: str


class _Days:
    """The days before the present, by the wall clock."""

    def __init__(self, now: datetime, most: int) -> None:
        """Count back from ``now``, which has a zone, to so many days before it."""
        # Each midnight once, since a zone is asked for its offset every time.
        self._utc = now.astimezone(UTC).replace(microsecond=0)
        dates = [(now - timedelta(days=days)).date() for days in range(most + 1)]
        midnights = [datetime.combine(date, time(tzinfo=now.tzinfo)).astimezone(UTC) for date in dates]
        self._midnights = [(self._utc - midnight).total_seconds() / _DAY_S for midnight in midnights]

    def ago(self, days: float, hour: float) -> float:
        """Return how long ago [d] it was ``hour`` [h] so many dates back."""
        return self._midnights[int(days)] - hour / 24.0

    def at(self, days_ago: float) -> datetime:
        """Return the instant so long ago [d], to the second."""
        return self._utc - timedelta(seconds=round(days_ago * _DAY_S))


class _Tank:
    """One system: what is noted of it, and how."""

    def __init__(self, history: Table, room: Table, ids: Mapping[str, str], days: _Days, table: Table) -> None:
        (fields,) = (each for each in room["system"] if each["key"] == table["key"])
        self.key, self.id = str(table["key"]), ids[str(table["key"])]
        self.history, self.table, self.days, self.ids = history, table, days, ids
        self.volume_l = _canonical(fields["net_volume"], "volume")
        self.exchanged_l = _canonical(table["exchange"], "volume")
        exchanged = range(_LAST_EXCHANGE, history["days"], table["exchange_days"])
        self.exchanges = [ago for ago in (days.ago(n, table["exchange_hour"]) for n in exchanged) if not self.away(ago)]
        self._corrections = [each for each in room["correction"] if each["system"] == table["key"]]

    def away(self, days_ago: float) -> bool:
        """Say whether nobody was there so many days ago."""
        gone, back = self.history["away"]
        return bool(back <= days_ago <= gone)

    def chance(self, what: str) -> random.Random:
        """Return numbers that look drawn by lot and are the same at every start."""
        return random.Random(f"{self.history['seed']} {self.key} {what}")  # noqa: S311  (nothing is kept secret by it)

    def newest(self, parameter: Table) -> _Newest | None:
        """Return where a parameter is now, from its correction or from its own table; None when it only wanders."""
        for each in self._corrections:
            if each["parameter"] == parameter["name"]:
                text, hours = str(each["measured"]["text"]), float(each["measured_hours_ago"])
                return _Newest(text, float(text), hours / 24.0, float(each["daily_use"]["text"]))
        if "now" in parameter:
            days_ago = self.days.ago(parameter["now_days_ago"], parameter["hour"])
            return _Newest(str(parameter["now"]), float(parameter["now"]), days_ago, float(parameter["use_per_day"]))
        return None

    def entry(
        self, kind: EntryKind, subject: str, days_ago: float, fields: dict[str, Typed], value: float | None
    ) -> Entry:
        """Return an entry; its series and its instant give it its id."""
        at = self.days.at(days_ago)
        content = f"{self.id} {kind} {subject} {at.isoformat()}".encode()
        name = hashlib.blake2b(content, digest_size=16).hexdigest()
        return Entry(name, self.id, kind, subject, at, fields.get("who", _NOBODY).text, fields, value)


def demo_entries(history: Table, room: Table, ids: Mapping[str, str], now: datetime) -> Iterator[Entry]:
    """Make the entries of a history file (resources/demo_history.toml) for the room of a demo file.

    Parameters
    ----------
    history, room : mapping
        The tables of both files.
    ids : mapping of str to str
        Ids of the records by their short names in ``room``.
    now : datetime
        The present with a zone; times of day are those of its wall clock.

    Yields
    ------
    Entry
        In no order; the same for the same arguments, and none after ``now``.
    """
    days = _Days(now, history["days"])
    for table in history["system"]:
        tank = _Tank(history, room, ids, days, table)
        yield from _exchanges(tank)
        for parameter in table["parameter"]:
            yield from _dosed(tank, parameter) if "dosed" in parameter else _wandering(tank, parameter)
        for note in history["note"]:
            if note["system"] == tank.key:
                fields = {"text": Typed(note["text"]), "who": Typed(note["who"])}
                yield tank.entry("note", "", days.ago(note["days_ago"], note["hour"]), fields, None)


def _exchanges(tank: _Tank) -> Iterator[Entry]:
    chance = tank.chance("exchange")
    for days_ago in tank.exchanges:
        fields = {"litres": Typed(**tank.table["exchange"]), "who": Typed(chance.choice(tank.table["who"]))}
        yield tank.entry("exchange", "", days_ago, fields, tank.exchanged_l)


def _wandering(tank: _Tank, parameter: Table) -> Iterator[Entry]:
    """Test a value that nobody doses: it lies where its course says."""
    chance = tank.chance(parameter["name"])
    for days_ago in _tests(tank, parameter, chance, float(parameter["last_tested"])):
        yield _reading(tank, parameter, chance, days_ago, _course(parameter, days_ago))


def _dosed(tank: _Tank, parameter: Table) -> Iterator[Entry]:
    """Follow a value back from its newest reading, through doses, exchanges and tests, as far as doses were noted.

    Before that it lies where its course says.
    """
    newest, chance = tank.newest(parameter), tank.chance(parameter["name"])
    if newest is None:
        raise KeyError(f"{tank.key}: no newest reading of {parameter['name']}")
    use = _Use(tank, newest.use)
    share, new = tank.exchanged_l / tank.volume_l, float(parameter["new_water"])
    setting = _Setting(tank, parameter, chance, use.between)
    value, here = newest.number, newest.days_ago
    yield _newest_reading(tank, parameter, chance, newest)
    tests = list(_tests(tank, parameter, chance, newest.days_ago + parameter["tested"][0]))
    noted = float(tank.history["doses_noted_days"])
    events = [_Happened(d, "test") for d in tests if d <= noted]
    events += [_Happened(d, "dose") for d in setting.instants()]
    events += [_Happened(d, "exchange") for d in tank.exchanges if newest.days_ago < d <= noted]
    for event in sorted(events, key=_age):
        value += use.between(event.days_ago, here)
        here = event.days_ago
        if event.what == "test":
            yield _reading(tank, parameter, chance, here, value)
        elif event.what == "exchange":
            value = (value - share * new) / (1.0 - share)
        else:
            ml, strength, carries = setting.dose(here, value)
            value -= ml * strength
            if ml > 0.0:
                stock = tank.ids[parameter["stock"]]
                fields = {"stock": Typed(stock), "amount": Typed(f"{ml:g}", "mL"), "carries": Typed(carries)}
                yield tank.entry("dose", stock, here, fields, ml)
    for days_ago in tests:
        if days_ago > noted:
            yield _reading(tank, parameter, chance, days_ago, _course(parameter, days_ago))


class _Use:
    """What the animals use, as a share of the use of today."""

    def __init__(self, tank: _Tank, today: float) -> None:
        self._points, self._today = tank.table["use"], today

    def between(self, earlier: float, later: float) -> float:
        """Return what was used [unit] from ``earlier`` to ``later`` [days ago]."""
        return self._today * _along(self._points, (earlier + later) / 2.0) * (earlier - later)


class _Setting:
    """The dose that the keeper has set, anew every few weeks, so that the value follows its course."""

    def __init__(
        self, tank: _Tank, parameter: Table, chance: random.Random, used: Callable[[float, float], float]
    ) -> None:
        self._tank, self._parameter, self._chance, self._used = tank, parameter, chance, used
        self._carries = [
            (float(each["until_days_ago"]), str(each["text"]))
            for each in tank.history["carries"]
            if each["stock"] == parameter["stock"]
        ]
        self._period: int | None = None
        self._ml = 0.0

    def instants(self) -> list[float]:
        """Return when something was given [days ago], in the evening before the tests."""
        p = self._parameter
        first, every = math.ceil(p["idle"]), p["dosed"]
        return [
            self._tank.days.ago(d, p["dose_hour"]) for d in range(first, self._tank.history["doses_noted_days"], every)
        ]

    def dose(self, days_ago: float, value: float) -> tuple[float, float, str]:
        """Return a dose [mL], by how much a millilitre of it raises the value [unit], and what it carried, for the log.

        ``value`` [unit] is what the water holds right after it.
        """
        carries = self._carried(days_ago)
        strength = self._per_ml(carries)
        span = float(self._parameter["set_anew"])
        period = int((days_ago - self._parameter["idle"]) // span)
        if period != self._period:
            self._period, step = period, float(self._parameter["dose_step"])
            wanted = self._wanted(days_ago, value, span) * (1.0 + _SETTING_OFF * _drawn(self._chance))
            count = span / self._parameter["dosed"]
            # Rounded again, so that the figure is the one that is written.
            self._ml = round(round(max(wanted / count / strength, 0.0) / step) * step, 3)
        return self._ml, strength, carries

    def _wanted(self, days_ago: float, value: float, span: float) -> float:
        """Return how much [unit] of it, in the period that ends with this dose, brings the value from its course to here."""
        before = days_ago + span
        tank, share = self._tank, self._tank.exchanged_l / self._tank.volume_l
        start = _course(self._parameter, before)
        lost = sum(share * (start - self._parameter["new_water"]) for d in tank.exchanges if days_ago < d <= before)
        return value - start + self._used(before, days_ago) + lost

    def _carried(self, days_ago: float) -> str:
        return next(text for until, text in self._carries if days_ago >= until)

    def _per_ml(self, carries: str) -> float:
        """Return by how much [unit] a millilitre raises the water of the tank."""
        name, number, *_ = carries.split(" ")
        if name != self._parameter["name"]:
            raise KeyError(f"{self._parameter['stock']} does not carry {self._parameter['name']}")
        one = to_canonical(1.0, self._parameter["kind"], self._parameter["unit"])
        return float(number) / one / self._tank.volume_l


def _tests(tank: _Tank, parameter: Table, chance: random.Random, first: float) -> Iterator[float]:
    """Yield when a parameter was tested [days ago], newest first, from about ``first`` days ago back."""
    day = math.ceil(first)
    while day < tank.history["days"]:
        unpunctual = _UNPUNCTUAL_H * (2.0 * chance.random() - 1.0)
        days_ago = tank.days.ago(day, parameter["hour"] + unpunctual)
        if not tank.away(days_ago):
            yield days_ago
        day += chance.choice(parameter["tested"])


def _reading(tank: _Tank, parameter: Table, chance: random.Random, days_ago: float, value: float) -> Entry:
    """Test the water, with the kit's scatter, or with a mistake where one is told of."""
    off = parameter["scatter"] * _drawn(chance)
    for bad in tank.history["bad_test"]:
        if (bad["system"], bad["parameter"]) == (tank.key, parameter["name"]):
            off += bad["off"] if abs(days_ago - bad["days_ago"]) <= parameter["tested"][0] / 2.0 else 0.0
    step = float(parameter["step"])
    decimals = max(0, -math.floor(math.log10(step)))
    return _noted(tank, parameter, chance, days_ago, f"{max(round((value + off) / step) * step, 0.0):.{decimals}f}")


def _newest_reading(tank: _Tank, parameter: Table, chance: random.Random, newest: _Newest) -> Entry:
    return _noted(tank, parameter, chance, newest.days_ago, newest.text)


def _noted(tank: _Tank, parameter: Table, chance: random.Random, days_ago: float, text: str) -> Entry:
    fields = {
        "parameter": Typed(parameter["name"]),
        "value": Typed(text, parameter["unit"]),
        "kit": Typed(parameter["kit"]),
        "who": Typed(chance.choice(tank.table["who"])),
    }
    value = to_canonical(float(text), parameter["kind"], parameter["unit"])
    return tank.entry("reading", parameter["name"], days_ago, fields, value)


def _course(parameter: Table, days_ago: float) -> float:
    swing = parameter["swing"] * math.sin(2.0 * math.pi * days_ago / parameter["swing_days"])
    return _along(parameter["course"], days_ago) + float(swing)


def _along(points: list[list[float]], days_ago: float) -> float:
    """Return what lies on the straight lines between ``points`` (days ago, falling; value)."""
    for (older, start), (newer, end) in pairwise(points):
        if days_ago >= newer:
            share = (min(days_ago, older) - newer) / (older - newer)
            return end + (start - end) * share
    return points[-1][1]


def _drawn(chance: random.Random) -> float:
    """Return a number around zero with standard deviation one, never beyond six."""
    return sum(chance.random() for _ in range(12)) - 6.0


def _canonical(said: Mapping[str, str], kind: str) -> float:
    return to_canonical(float(said["text"]), kind, said["unit"])


def _age(event: _Happened) -> float:
    return event.days_ago
