"""Timetables for the tests: questions drawn at random, a third small checker, and a search that tries every minute there is."""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise, product

from evenwater.engine.timetable import TimedDose, TimetableAnswer
from evenwater.engine.timetable_even import Places
from evenwater.engine.timetable_question import Apart, Quiet, TimedPump, TimetableQuestion

DAY_S = 86400
SODA = TimedPump("Soda", 52.8, 24.0, raises="alkalinity")
LIME = TimedPump("Lime", 52.8, 24.0, raises="calcium")
PAIR = TimetableQuestion((SODA, LIME), (Apart(0, 1, 15.0),))


def doses(pump: TimedPump, count: int, least: int | None = None) -> TimedPump:
    """Return a pump with so many doses, or any number from ``least`` up to them."""
    return replace(pump, doses=count, fewest=count if least is None else least, most=count)


def number(value: float) -> Fraction:
    """Return a figure as it is written."""
    return Fraction(repr(value))


def faults(answer: TimetableAnswer) -> list[str]:
    """Hold a timetable against its question: every dose against every other, in fractions of a second."""
    q, found = answer.question, []
    lasts = [(number(r.ml) + number(r.more_ml)) * 60 / number(q.pumps[r.pump].flow_ml_per_min) for r in answer.rows]
    begins = [60 * row.minute for row in answer.rows]
    gaps = {frozenset((a.first, a.second)): 60 * number(a.minutes) for a in q.apart}
    for i, one in enumerate(answer.rows):
        for j, other in enumerate(answer.rows):
            if i == j:
                continue
            gap = gaps.get(frozenset((one.pump, other.pump)))
            if one.pump == other.pump or (gap is None and q.one_at_a_time):
                gap = Fraction(0)
            if gap is not None and (begins[j] - begins[i]) % DAY_S < lasts[i] + gap:
                found.append(f"{i} and {j} too near")
        for hours in q.hours(one.pump):
            # Before the quiet hours begin again there must be time for the whole dose.
            since = (begins[i] - 60 * hours.start) % DAY_S
            if since < 60 * hours.lasts or DAY_S - since < lasts[i]:
                found.append(f"{i} in quiet hours")
    for place, pump in enumerate(q.pumps):
        own = [row for row in answer.rows if row.pump == place]
        if sum(lasts[i] for i, row in enumerate(answer.rows) if row.pump == place) > number(pump.largest_share) * DAY_S:
            found.append("share")
        found += _sizes(pump, own)
        given = Fraction(0)
        for day in range(40):
            extra = answer.pumps[place].doses.has_extra(day)
            given += sum(number(row.ml) + (number(row.more_ml) if extra else 0) for row in own)
            if not 0 <= (day + 1) * number(pump.per_day_ml) - given < number(pump.step_ml):
                found.append("sum")
                break
    return found


def _sizes(pump: TimedPump, own: Sequence[TimedDose]) -> list[str]:
    step = number(pump.step_ml)
    sizes = [number(row.ml) for row in own] + [number(row.ml) + number(row.more_ml) for row in own]
    minutes = sorted(row.minute for row in own)
    between = [later - each for each, later in pairwise([*minutes, minutes[0] + DAY_S // 60])]
    wrong = {
        "number": not pump.fewest <= len(own) <= pump.most,
        "step": any(size % step for size in sizes) or max(sizes) - min(sizes) > step,
        "size": min(sizes) < max(number(pump.smallest_ml), step),
        "jump": pump.largest_ml is not None and max(sizes) > number(pump.largest_ml),
        "closest": min(between) < (pump.closest_min or 0),
    }
    return [name for name, there in wrong.items() if there]


def drawn(seed: int) -> TimetableQuestion:
    """Return one of endlessly many questions: one to five pumps with wishes of every sort, most of which can be had."""
    rng = random.Random(seed)
    pumps = tuple(_pump(rng, n) for n in range(rng.choice((1, 2, 2, 2, 3, 3, 4, 5))))
    pairs = [
        Apart(i, j, float(rng.choice((15, 15, 20, 30, 45))))
        for j in range(len(pumps))
        for i in range(j)
        if {pumps[i].raises, pumps[j].raises} == {"alkalinity", "calcium"} or rng.random() < 0.15
    ]
    quiet = (_hours(rng),) if rng.random() < 0.3 else ()
    return TimetableQuestion(pumps, tuple(pairs), rng.random() < 0.3, quiet)


def _pump(rng: random.Random, n: int) -> TimedPump:
    wished = rng.choice((1, 2, 3, 4, 6, 8, 12, 12, 24, 24, rng.randint(1, 40)))
    free = rng.random() < 0.4
    step = rng.choice((0.1, 0.1, 0.05, 0.01, 0.5, 1.0))
    per_day = round(rng.choice((1.0, 5.0, 20.0, 60.0, 400.0)) * rng.uniform(0.3, 1.5), rng.choice((0, 1, 2, 3)))
    if rng.random() < 0.95:
        per_day = max(per_day, round(wished * step * rng.uniform(1.0, 3.0), 2))
    smallest = rng.choice((0.0, 0.0, step, round(per_day / wished * rng.uniform(0.3, 1.02), 1)))
    return TimedPump(
        name=f"Pump {n}",
        per_day_ml=per_day,
        flow_ml_per_min=rng.choice((24.0, 24.0, 1.1, 6.5, 60.0)),
        step_ml=step,
        smallest_ml=smallest,
        largest_ml=None if rng.random() < 0.6 else round(per_day / max(1, wished // 2) + 2 * step, 2),
        largest_share=rng.choice((0.5, 0.5, 0.9)),
        doses=wished,
        fewest=max(1, wished - rng.randint(1, 12)) if free else wished,
        most=min(wished + rng.randint(0, 12), 60) if free else wished,
        closest_min=rng.choice((None, None, None, 5, 20)),
        raises=("alkalinity", "calcium", "magnesium", "", "calcium")[n],
        quiet=(_hours(rng),) if rng.random() < 0.2 else (),
    )


def _hours(rng: random.Random) -> Quiet:
    start = rng.randrange(1440)
    return Quiet(start, (start + rng.choice((30, 60, 240, 480, 600))) % 1440)


def keeps(places: Places, starts: Sequence[Sequence[int]]) -> bool:
    """Return whether doses at these minutes keep all that a small day asks for."""
    doses = [(pump, at) for pump, minutes in enumerate(starts) for at in minutes]
    if [len(set(minutes)) for minutes in starts] != list(places.counts) or any(
        not places.open_at[pump] >> at & 1 for pump, at in doses
    ):
        return False
    for pump, at in doses:
        for other, later in doses:
            need = places.need[pump][other]
            if need is not None and ((later - at) % places.size or places.size * (pump == other)) < need:
                return False
    return True


def every(places: Places) -> list[tuple[int, int]] | None:
    """Try every minute there is, dose after dose, and return pumps and minutes that hold; None when there are none."""
    pumps, size = range(len(places.counts)), places.size

    def closed(one: int, at: int, other: int) -> int:
        after, before = places.need[one][other], places.need[other][one]
        if after is None or before is None:
            return 0
        return sum(1 << m for m in range(size) if (m - at) % size < after or (at - m) % size < before)

    shut = [[[closed(i, at, j) for j in pumps] for at in range(size)] for i in pumps]

    def put(
        pump: int, left: int, begin: int, free: list[int], done: list[tuple[int, int]]
    ) -> list[tuple[int, int]] | None:
        if not left:
            if pump + 1 == len(pumps):
                return done
            return put(pump + 1, places.counts[pump + 1], 0, free, done)
        for at in range(begin, size):
            if free[pump] >> at & 1:
                rest = [mask & ~shut[pump][at][other] for other, mask in enumerate(free)]
                # Where too few minutes are left for some pump, none of the rest needs to be tried.
                short = (rest[pump] >> at + 1).bit_count() < left - 1
                if short or any(rest[k].bit_count() < places.counts[k] for k in pumps if k > pump):
                    continue
                found = put(pump, left - 1, at + 1, rest, [*done, (pump, at)])
                if found is not None:
                    return found
        return None

    return put(0, places.counts[0], 0, list(places.open_at), [])


def small_places(seed: int) -> Places:
    """Return a small day of 8 to 24 minutes with one to three pumps."""
    rng = random.Random(seed)
    size, pumps = rng.choice((8, 12, 12, 16, 16, 20, 24)), rng.choice((1, 2, 2, 3, 3))
    counts = tuple(rng.randint(1, 4 if size <= 16 else 3) for _ in range(pumps))
    need: list[list[int | None]] = [[None] * pumps for _ in range(pumps)]
    for i in range(pumps):
        need[i][i] = rng.randint(1, max(1, size // counts[i]))
        for j in range(i):
            if rng.random() < 0.7:
                need[i][j], need[j][i] = rng.randint(1, 5), rng.randint(1, 5)
    masks = []
    for _ in range(pumps):
        mask = (1 << size) - 1
        for _ in range(rng.choice((0, 0, 1, 2))):
            start, length = rng.randrange(size), rng.randint(1, size // 2)
            for minute in range(start, start + length):
                mask &= ~(1 << minute % size)
        masks.append(mask)
    return Places(counts, tuple(masks), tuple(tuple(row) for row in need), size)


# A day of 24 slots of an hour: each step of 60 mL takes an hour, and everything else is in whole hours. What can be had at all can then be had
# on the hour, since every dose may be moved back until it meets something that is on the hour.
SLOTS, SLOT_MIN = 24, 60


def hourly(seed: int) -> TimetableQuestion:
    """Return a question in whole hours, about as often without a timetable as with one."""
    rng = random.Random(seed)
    pumps = []
    count = rng.choice((1, 2, 2, 3))
    for n in range(count):
        per_day = rng.randint(1, 6 if count < 3 else 4)
        wished = rng.randint(1, per_day)
        start = rng.randrange(SLOTS) * SLOT_MIN
        quiet = (Quiet(start, (start + rng.choice((240, 480, 720, 960))) % 1440),) if rng.random() < 0.5 else ()
        pumps.append(
            TimedPump(
                f"Pump {n}", 60.0 * per_day, 1.0, step_ml=60.0, largest_share=1.0,
                largest_ml=rng.choice((None, None, None, None, 120.0)), smallest_ml=rng.choice((0.0,) * 8 + (120.0,)),
                doses=wished, fewest=rng.choice((wished, 1)), most=rng.choice((wished, wished, 4)) if wished <= 4 else wished,
                closest_min=rng.choice((0, 60, 120, 300, 420)), quiet=quiet,
            )
        )  # fmt: skip
    pairs = tuple(
        Apart(i, j, float(rng.choice((60, 120, 180, 240))))
        for j in range(len(pumps))
        for i in range(j)
        if rng.random() < 0.7
    )
    return TimetableQuestion(tuple(pumps), pairs, rng.random() < 0.3)


def hourly_exists(question: TimetableQuestion) -> bool:
    """Return whether there is a timetable on the hour, by trying every one with every number of doses that is allowed."""
    choices = []
    for pump in question.pumps:
        total = round(pump.per_day_ml / 60.0)
        choices.append(
            [
                count
                for count in range(pump.fewest, pump.most + 1)
                if total // count >= max(1.0, pump.smallest_ml / 60.0)
                and -(-total // count) <= (pump.largest_ml or math.inf) / 60.0
            ]
        )
    return any(every(_in_hours(question, counts)) is not None for counts in product(*choices))


def _in_hours(q: TimetableQuestion, counts: Sequence[int]) -> Places:
    runs = [-(-round(pump.per_day_ml / 60.0) // count) for pump, count in zip(q.pumps, counts, strict=True)]
    masks = []
    for place, lasts in enumerate(runs):
        shut = {
            (hours.start // SLOT_MIN + k) % SLOTS for hours in q.hours(place) for k in range(hours.lasts // SLOT_MIN)
        }
        masks.append(sum(1 << at for at in range(SLOTS) if not shut & {(at + k) % SLOTS for k in range(lasts)}))
    gaps = {(a.first, a.second): int(a.minutes) // SLOT_MIN for a in q.apart}
    gaps |= {(j, i): gap for (i, j), gap in gaps.items()}
    need = tuple(
        tuple(
            max(lasts, (q.pumps[i].closest_min or 0) // SLOT_MIN) if i == j
            else lasts + gaps[i, j] if (i, j) in gaps
            else lasts if q.one_at_a_time
            else None
            for j in range(len(runs))
        )
        for i, lasts in enumerate(runs)
    )  # fmt: skip
    return Places(tuple(counts), tuple(masks), need, SLOTS)
