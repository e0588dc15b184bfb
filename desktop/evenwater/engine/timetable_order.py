"""Doses that cannot be spaced evenly: a search over the order in which they come, complete where it is let run to its end.

Take any timetable that holds and turn it back in time until a dose meets the end of quiet hours: it still holds. So it is enough
to let a dose begin there (or at midnight where no hours are quiet), and to give every further dose, in each order, its earliest
minute. What must hold is a set of differences, so the earliest minutes of an order are its best, and an order that fails with them
fails for good.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import lru_cache

from evenwater.engine.timetable_even import Budget, Places, Starts

# Rounds of levelling, and doses looked at in all of them together.
_SWEEPS, _LOOKS = 200, 20_000


def ordered(places: Places, budget: Budget, packed: bool = False) -> Starts | None:
    """Look for doses in any order.

    Parameters
    ----------
    places : Places
        What must hold.
    budget : Budget
        Steps that may be taken; when they last, None means that no timetable exists.
    packed : bool
        Whether to try first who can come soonest, which leaves the least time unused, rather than who is due.

    Returns
    -------
    tuple of tuple of int or None
        The minutes of each pump; None when none was found.
    """
    if not all(places.open_at) or crowded(places):
        return None
    waits, crowd = [_waits(mask, places.size) for mask in places.open_at], _Crowd.of(places)
    for pump, minute in _beginnings(places):
        found = _Search(places, waits, pump, minute, budget, crowd, packed).run()
        if found is not None:
            return found
        if budget.spent:
            return None
    return None


def crowded(places: Places) -> bool:
    """Return whether the doses need more time than a day has, however they are placed.

    Parameters
    ----------
    places : Places
        Lengths and distances of the doses.

    Returns
    -------
    bool
        True where no order can do it.
    """
    return _Crowd.of(places).day() > places.size


def _beginnings(places: Places) -> Iterator[tuple[int, int]]:
    """Yield what the search may begin with: a dose of some pump at some minute."""
    if all(mask == places.full for mask in places.open_at):
        yield 0, 0
        return
    for pump, mask in enumerate(places.open_at):
        opening = mask & ~places.turned(mask, 1)
        yield from ((pump, minute) for minute in range(places.size) if opening >> minute & 1)


@lru_cache(maxsize=256)
def _waits(mask: int, size: int) -> tuple[int, ...]:
    """Return how long it is from each minute to the next at which a dose may begin."""
    waits, wait = [0] * size, size
    for minute in range(2 * size - 1, -1, -1):
        wait = 0 if mask >> (minute % size) & 1 else wait + 1
        waits[minute % size] = wait
    return tuple(waits)


@lru_cache(maxsize=256)
def _ideal(mask: int, size: int, begin: int, count: int) -> tuple[int, ...]:
    """Return when so many doses would come if they were evenly spaced in the open hours, counted from a minute of the day."""
    hours = [after for after in range(size) if mask >> (begin + after) % size & 1]
    return tuple(hours[k * len(hours) // count] for k in range(count))


@dataclass(frozen=True)
class _Crowd:
    """How much time doses need at least, where every pump minds every other; nothing where some do not.

    Any dose takes the time to the next nearest one that may follow it (``step``), and the last of a row of one pump's doses what
    it needs before another pump's (``turn`` more).
    """

    counts: tuple[int, ...]
    step: tuple[int, ...]
    turn: tuple[int, ...]

    @classmethod
    def of(cls, places: Places) -> _Crowd:
        """Return the least times of a group."""
        pumps = range(len(places.counts))
        rows = [[need for need in row if need is not None] for row in places.need]
        if any(len(row) < len(pumps) for row in rows):
            return cls(places.counts, (0,) * len(pumps), (0,) * len(pumps))
        step = tuple(min(row) for row in rows)
        others = [[need for j, need in enumerate(row) if j != i] for i, row in enumerate(rows)]
        return cls(
            places.counts, step, tuple(min(row, default=least) - least for row, least in zip(others, step, strict=True))
        )

    def day(self) -> int:
        """Return the minutes that all doses of the day need at least."""
        return sum(count * step + turn for count, step, turn in zip(self.counts, self.step, self.turn, strict=True))

    def rest(self, placed: list[int], last: int, first: int) -> int:
        """Return the minutes from the start of the dose placed last, of pump ``last``, to the end of a day that began with ``first``."""
        need = self.step[last]
        for pump, count in enumerate(self.counts):
            left = count - placed[pump]
            need += left * self.step[pump]
            if pump != first and (left or pump == last):
                need += self.turn[pump]
        return need


@dataclass
class _Frame:
    """One dose that was placed, and what may come after it."""

    pump: int
    at: int
    before: int
    choices: list[tuple[int, int]]
    key: tuple[tuple[int, ...], tuple[int, ...]]
    nearly: bool = False


@dataclass
class _Search:
    """Doses one after another, each at its earliest, beginning with a given one."""

    places: Places
    waits: list[tuple[int, ...]]
    first: int
    begin: int
    budget: Budget
    crowd: _Crowd
    packed: bool
    # Who is due first is tried first.
    ideal: list[tuple[int, ...]] = field(default_factory=list)
    placed: list[int] = field(default_factory=list)
    last: list[int] = field(default_factory=list)
    failed: set[tuple[tuple[int, ...], tuple[int, ...]]] = field(default_factory=set)

    def run(self) -> Starts | None:
        counts = self.places.counts
        self.ideal = [
            _ideal(mask, self.places.size, self.begin, count)
            for mask, count in zip(self.places.open_at, counts, strict=True)
        ]
        self.placed, self.last = [0] * len(counts), [-1] * len(counts)
        stack = [self._put(self.first, self.begin)]
        while stack:
            if not self.budget.take():
                return None
            if len(stack) == sum(counts):
                found = self._closed([frame.pump for frame in stack])
                if found is not None:
                    return found
                # It fails only where the day closes: another order that leads here may still do.
                for frame in stack:
                    frame.nearly = True
            frame = stack[-1]
            while frame.choices:
                pump, at = frame.choices.pop()
                after = self._put(pump, at)
                if after.key not in self.failed:
                    stack.append(after)
                    break
                self._take_back(after)
            else:
                stack.pop()
                self._take_back(frame)
                if not frame.nearly:
                    self.failed.add(frame.key)
        return None

    def _put(self, pump: int, at: int) -> _Frame:
        before = self.last[pump]
        self.last[pump] = at
        self.placed[pump] += 1
        late = at + self.crowd.rest(self.placed, pump, self.first) > self.begin + self.places.size
        return _Frame(pump, at, before, [] if late else self._choices(), (tuple(self.placed), tuple(self.last)))

    def _take_back(self, frame: _Frame) -> None:
        self.last[frame.pump] = frame.before
        self.placed[frame.pump] -= 1

    def _choices(self) -> list[tuple[int, int]]:
        """Return what may come next with its earliest minute, the most urgent last; nothing when some pump comes too late."""
        places, end = self.places, self.begin + self.places.size
        due = []
        for pump, count in enumerate(places.counts):
            left = count - self.placed[pump]
            if not left:
                continue
            at = self._earliest(pump, self.begin)
            own, back = places.need[pump][pump] or 0, places.need[pump][self.first]
            if at + (left - 1) * own + (1 if back is None else back) > end:
                return []
            due.append((at if self.packed else self.ideal[pump][self.placed[pump]], at, pump))
        due.sort(reverse=True)
        return [(pump, at) for _, at, pump in due]

    def _earliest(self, pump: int, at: int) -> int:
        for other, last in enumerate(self.last):
            need = self.places.need[other][pump]
            if last >= 0 and need is not None and last + need > at:
                at = last + need
        return at + self.waits[pump][at % self.places.size]

    def _closed(self, order: list[int]) -> Starts | None:
        """Return the minutes of an order of doses, once its end goes with its beginning; None when it never does."""
        places, pumps = self.places, range(len(self.places.counts))
        kept = list(self.last)
        not_before = [self.begin] * len(pumps)
        try:
            while True:
                starts: list[list[int]] = [[] for _ in pumps]
                self.last = [-1] * len(pumps)
                for pump in order:
                    at = self._earliest(pump, self.begin if starts[pump] else not_before[pump])
                    starts[pump].append(at)
                    self.last[pump] = at
                wanted = list(not_before)
                for pump in pumps:
                    for other in pumps:
                        need = places.need[other][pump]
                        if need is not None and starts[other][-1] + need - places.size > starts[pump][0]:
                            wanted[pump] = max(wanted[pump], starts[other][-1] + need - places.size)
                if wanted[self.first] > self.begin or any(each[-1] >= self.begin + places.size for each in starts):
                    return None
                if wanted == not_before:
                    return tuple(tuple(sorted(at % places.size for at in each)) for each in starts)
                not_before = wanted
        finally:
            self.last = kept


def levelled(places: Places, starts: Starts) -> Starts:
    """Move each dose towards the middle between its neighbours, as far as everything else allows.

    Parameters
    ----------
    places : Places
        What must hold.
    starts : tuple of tuple of int
        Minutes that hold it.

    Returns
    -------
    tuple of tuple of int
        Minutes that hold it and are no less even.
    """
    size = places.size
    at = [list(each) for each in starts]
    around = [[_around(places, at, pump, k) for k in range(len(minutes))] for pump, minutes in enumerate(at)]
    for _ in range(min(_SWEEPS, 1 + _LOOKS // sum(len(each) for row in around for each in row))):
        moved = False
        for pump, minutes in enumerate(at):
            for k in range(len(minutes) if len(minutes) > 1 else 0):
                here = minutes[k]
                back, ahead = (here - minutes[k - 1]) % size, (minutes[(k + 1) % len(minutes)] - here) % size
                low, high = -size, size
                for other, gone, need_gone, come, need_come in around[pump][k]:
                    low = max(low, need_gone - ((here - at[other][gone]) % size or size))
                    high = min(high, ((at[other][come] - here) % size or size) - need_come)
                by = max(low, min(high, (ahead - back) // 2 if ahead > back else -((back - ahead) // 2)))
                while by and not places.open_at[pump] >> ((here + by) % size) & 1:
                    by += -1 if by > 0 else 1
                if by:
                    minutes[k] = (here + by) % size
                    moved = True
        if not moved:
            break
    return tuple(tuple(sorted(each)) for each in at)


def _around(places: Places, at: list[list[int]], pump: int, k: int) -> list[tuple[int, int, int, int, int]]:
    """Return each pump that a dose minds, with its doses before and after it and how far those stay apart; the order never changes."""
    size, here = places.size, at[pump][k]
    found = []
    for other, minutes in enumerate(at):
        before, after = places.need[other][pump], places.need[pump][other]
        if before is None or after is None:
            continue
        gone = min(range(len(minutes)), key=lambda n: (here - minutes[n]) % size or size)
        come = min(range(len(minutes)), key=lambda n: (minutes[n] - here) % size or size)
        found.append((other, gone, before, come, after))
    return found
