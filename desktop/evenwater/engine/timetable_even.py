"""Even spacing first: every pump's doses equally far apart, and only the first minute of each is searched for.

A pump's pattern is one number whose bits are the minutes of the day, so that a whole day is compared at once.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

_MOST_OFFSETS = 120

Starts = tuple[tuple[int, ...], ...]


@dataclass
class Budget:
    """How many more steps a search may take, so that it ends in time; ``spent`` says that it ended before it was through."""

    steps: int
    spent: bool = False

    def take(self) -> bool:
        """Use one step; False when there is none left.

        Returns
        -------
        bool
            Whether the search may go on.
        """
        self.steps -= 1
        self.spent = self.spent or self.steps < 0
        return self.steps >= 0


@dataclass(frozen=True)
class Places:
    """Pumps that have to do with each other: where their doses may begin and how far they stay apart.

    ``counts`` are the doses of each, ``open_at`` the minutes at which one may begin (bits), ``need[i][j]`` the minutes from the
    start of a dose of pump i to the next start of pump j, at least (None: no matter); ``size`` the minutes of the day.
    """

    counts: tuple[int, ...]
    open_at: tuple[int, ...]
    need: tuple[tuple[int | None, ...], ...]
    size: int

    @property
    def full(self) -> int:
        """All minutes."""
        return (1 << self.size) - 1

    def turned(self, mask: int, by: int) -> int:
        """Return minutes moved later round the clock.

        Parameters
        ----------
        mask : int
            Minutes of the day as bits.
        by : int
            How far [min].

        Returns
        -------
        int
            Minutes as bits.
        """
        return _turned(mask, by % self.size, self.size)

    def reach(self, mask: int, ahead: int) -> int:
        """Return so many minutes from each given one on, itself the first of them.

        Parameters
        ----------
        mask : int
            Minutes of the day as bits.
        ahead : int
            How many from each on.

        Returns
        -------
        int
            Minutes as bits.
        """
        if ahead >= self.size:
            return self.full if mask else 0
        done, covered = mask, 1
        while covered < ahead:
            more = min(covered, ahead - covered)
            done |= self.turned(done, more)
            covered += more
        return done if ahead > 0 else 0

    def blocked(self, pump: int, by: int, mask: int) -> int:
        """Return where doses of a pump may not begin because another's begin at these minutes.

        Parameters
        ----------
        pump : int
            Whose doses are looked at, by its place.
        by : int
            The other pump, by its place.
        mask : int
            When the other's doses begin, minutes as bits.

        Returns
        -------
        int
            Minutes as bits.
        """
        after, before = self.need[by][pump], self.need[pump][by]
        if after is None or before is None:
            return 0
        return self.reach(mask, after) | self.reach(self.turned(mask, self.size + 1 - min(before, self.size)), before)


def _turned(mask: int, by: int, size: int) -> int:
    return ((mask << by) | (mask >> (size - by))) & ((1 << size) - 1)


def shortest(minutes: Sequence[int], size: int) -> int:
    """Return the shortest time from one of these minutes to the next, round the clock; the whole day for a single one.

    Parameters
    ----------
    minutes : sequence of int
        Minutes of the day, at least one.
    size : int
        Minutes of the day.

    Returns
    -------
    int
        The time [min].
    """
    ordered = sorted(minutes)
    return min(later - earlier for earlier, later in pairwise([*ordered, ordered[0] + size]))


def even(places: Places, budget: Budget, first: float = 0.0) -> Starts | None:
    """Look for equally spaced doses.

    Parameters
    ----------
    places : Places
        What must hold.
    budget : Budget
        Steps that may be taken.
    first : float
        Where the first dose of the first pump would best be, as a part of the shortest interval [-].

    Returns
    -------
    tuple of tuple of int or None
        The minutes of each pump; None when none was found.
    """
    interval = places.size / max(places.counts)
    patterns = [
        _patterns(
            places.size,
            count,
            places.open_at[pump],
            places.need[pump][pump] or 0,
            round(interval * (first + pump / len(places.counts))),
        )
        for pump, count in enumerate(places.counts)
    ]
    found = _fit(places, patterns, [], [0] * len(patterns), budget)
    return None if found is None else tuple(tuple(_minutes(mask)) for mask in found)


def _minutes(mask: int) -> Iterator[int]:
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low


@lru_cache(maxsize=512)
def _patterns(size: int, count: int, open_at: int, closest: int, best: int) -> tuple[int, ...]:
    """Return the patterns of one pump, the one that begins nearest to the best minute first; round the clock, then in its open hours."""
    found = []
    spaced = [k * size // count for k in range(count)]
    if shortest(spaced, size) >= closest:
        mask = sum(1 << minute for minute in spaced)
        for minute in sorted(_offsets(size, count), key=lambda minute: _off(minute, best, size / count)):
            turned = _turned(mask, minute, size)
            if not turned & ~open_at:
                found.append(turned)
    hours = list(_minutes(open_at))
    if count <= len(hours) < size:
        for offset in sorted(_offsets(len(hours), count), key=lambda o: _off(hours[o], best, size / count)):
            starts = [hours[(k * len(hours) // count + offset) % len(hours)] for k in range(count)]
            if shortest(starts, size) >= closest:
                found.append(sum(1 << minute for minute in starts))
    return tuple(found)


def _offsets(length: int, count: int) -> range:
    """Return where the first of so many evenly spaced doses may begin; of a long interval, some minutes only."""
    interval = -(-length // count)
    return range(0, interval, max(1, interval // _MOST_OFFSETS))


def _off(minute: float, best: float, interval: float) -> float:
    """Return how far a minute lies from the best one, when both come again after each interval."""
    return abs((minute - best + interval / 2.0) % interval - interval / 2.0)


def _fit(
    places: Places, patterns: Sequence[Sequence[int]], chosen: list[int], closed: list[int], budget: Budget
) -> list[int] | None:
    pump = len(chosen)
    if pump == len(patterns):
        return chosen
    for mask in patterns[pump]:
        if not budget.take():
            return None
        if mask & closed[pump]:
            continue
        rest = [was if later <= pump else was | places.blocked(later, pump, mask) for later, was in enumerate(closed)]
        found = _fit(places, patterns, [*chosen, mask], rest, budget)
        if found is not None:
            return found
    return None
