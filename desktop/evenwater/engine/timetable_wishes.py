"""Which wish stands in the way: each is left out, alone, and the timetable looked for again.

A wish without which there is a timetable is named, with how much of it could be had. Where no single one is enough, all that
stand together are named.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from evenwater.engine.reasons import Reason
from evenwater.engine.timetable_doses import fits
from evenwater.engine.timetable_question import Apart, TimedPump, TimetableQuestion
from evenwater.engine.timetable_search import Found, open_minutes, search


def in_the_way(question: TimetableQuestion, group: Sequence[int], found: Found) -> tuple[Reason, ...]:
    """Return the wishes that keep a group of pumps from having a timetable.

    Parameters
    ----------
    question : TimetableQuestion
        The wishes.
    group : sequence of int
        Places of pumps that have to do with each other, for which nothing was found.
    found : Found
        How the search ended; ``proved`` when there certainly is none.

    Returns
    -------
    tuple of Reason
        Each single wish that, left out, makes room; or one reason that names all of them.
    """
    wishes = _Wishes(question, group, found.proved)
    single = tuple(wishes.single())
    return single or (wishes.together(),)


class _Wishes:
    """The wishes of one group, each of which can be left out."""

    def __init__(self, question: TimetableQuestion, group: Sequence[int], proved: bool) -> None:
        self.question, self.group, self.proved = question, group, proved
        self.pairs = [pair for pair in question.apart if pair.first in group]
        self.pumps = [question.pumps[place] for place in group]
        self.names = tuple(pump.name for pump in self.pumps)

    def single(self) -> Iterator[Reason]:
        """Yield every wish that stands in the way by itself."""
        q, group = self.question, self.group
        if any(pair.minutes for pair in self.pairs) and (widest := self._widest()) is not None:
            pair = max(self.pairs, key=lambda pair: pair.minutes)
            yield self._reason(
                "timetable_apart", pair.path, **self._pair(pair), minutes=pair.minutes, widest_min=widest
            )
        quiet = [place for place in group if q.hours(place)]
        if quiet and self._possible(replace(self._with(quiet=()), quiet=())):
            open_min = min(open_minutes(q.hours(place), 1).bit_count() for place in quiet)
            path = "quiet" if q.quiet else f"pump.{quiet[0] + 1}.quiet"
            yield self._reason("timetable_quiet", path, open_min=open_min)
        fewer = self._fewer()
        if fewer:
            doses = max(pump.fewest for pump in self.pumps)
            yield self._reason("timetable_doses", f"pump.{group[0] + 1}.doses_per_day", doses=doses, would_do=fewer)
        if q.one_at_a_time and len(group) > 1 and self._possible(replace(q, one_at_a_time=False)):
            yield self._reason("timetable_one_at_a_time", "one_at_a_time")
        closest = [place for place in group if q.pumps[place].closest_min is not None]
        if closest and self._possible(self._with(closest_min=None)):
            place = max(closest, key=lambda place: q.pumps[place].closest_min or 0)
            minutes = q.pumps[place].closest_min
            yield self._reason(
                "timetable_closest", f"pump.{place + 1}.closest", name=q.pumps[place].name, minutes=minutes
            )

    def together(self) -> Reason:
        """Return all wishes that there are, of which none is enough by itself."""
        q, pumps = self.question, self.pumps
        wishes = {
            "apart": any(pair.minutes for pair in self.pairs),
            "quiet": any(q.hours(place) for place in self.group),
            "doses": any(pump.fewest > 1 for pump in pumps),
            "one_at_a_time": q.one_at_a_time and len(pumps) > 1,
            "closest": any(pump.closest_min is not None for pump in pumps),
        }
        path = f"pump.{self.group[0] + 1}"
        return self._reason("timetable_together", path, wishes=tuple(name for name, there in wishes.items() if there))

    def _reason(self, code: str, path: str, **params: object) -> Reason:
        return Reason(code, {"names": self.names, "proved": self.proved, **params}, path)

    def _pair(self, pair: Apart) -> dict[str, str]:
        pumps = self.question.pumps
        return {"first": pumps[pair.first].name, "second": pumps[pair.second].name}

    def _with(self, **changes: object) -> TimetableQuestion:
        """Return the question with other wishes for the pumps of the group."""
        pumps = list(self.question.pumps)
        for place in self.group:
            pumps[place] = replace(pumps[place], **changes)  # type: ignore[arg-type]
        return replace(self.question, pumps=tuple(pumps))

    def _possible(self, question: TimetableQuestion) -> bool:
        """Return whether there is a timetable of these pumps; without a wish they may fall into several groups."""
        kept = set(self.group)
        only = replace(question, apart=tuple(pair for pair in question.apart if pair.first in kept))
        return search(only, self.group, quick=True).starts is not None

    def _widest(self) -> int | None:
        """Return the most minutes apart for which there is a timetable [min], found by halving; None when there is none at all."""

        def apart(minutes: int) -> bool:
            pairs = tuple(replace(pair, minutes=min(pair.minutes, float(minutes))) for pair in self.pairs)
            return self._possible(replace(self.question, apart=pairs))

        low, high = 0, int(max(pair.minutes for pair in self.pairs))
        if not apart(low):
            return None
        while high - low > 1:
            middle = (low + high) // 2
            low, high = (middle, high) if apart(middle) else (low, middle)
        return low

    def _fewer(self) -> int:
        """Return the largest number of doses a day, below what is wished, with which there is a timetable; zero when there is none."""
        most = max(pump.fewest for pump in self.pumps)
        for count in range(most - 1, 0, -1 if most <= 24 else -(most // 24)):
            pumps = list(self.question.pumps)
            for place in self.group:
                pumps[place] = _at_most(pumps[place], count)
            if all(not fits(pumps[place], pumps[place].doses) for place in self.group) and self._possible(
                replace(self.question, pumps=tuple(pumps))
            ):
                return count
        return 0


def _at_most(pump: TimedPump, count: int) -> TimedPump:
    fixed = min(pump.fewest, count)
    return replace(pump, doses=fixed, fewest=fixed, most=fixed)
