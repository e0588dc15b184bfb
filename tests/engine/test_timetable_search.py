"""The search is complete: wherever trying every minute finds a timetable, it does too; and what it says of a refusal is true."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from evenwater.engine.reasons import Reason
from evenwater.engine.timetable import Refused, TimetableQuestion, solve
from evenwater.engine.timetable_even import Budget, Places, even
from evenwater.engine.timetable_order import levelled, ordered
from tests.engine.timetables import doses, every, faults, hourly, hourly_exists, keeps, small_places


@pytest.mark.parametrize("start", range(0, 2000, 500))
def test_an_order_is_found_whenever_trying_every_minute_finds_one(start: int) -> None:
    seen: Counter[bool] = Counter()
    for seed in range(start, start + 500):
        places = small_places(seed)
        budget = Budget(200_000)
        found = ordered(places, budget)
        assert not budget.spent
        assert (found is None) == (every(places) is None), seed
        seen[found is not None] += 1
        spaced = even(places, Budget(2000))
        if found is None:
            assert spaced is None, seed
            continue
        assert keeps(places, found), seed
        assert keeps(places, levelled(places, found)), seed
        assert spaced is None or keeps(places, spaced), seed
    assert min(seen.values()) > 100


def test_the_small_checker_sees_what_does_not_hold() -> None:
    places = Places((2, 1), (0b0111_1111, 0b1111_1111), ((2, 3), (1, 1)), 8)
    assert keeps(places, ((0, 5), (3,)))
    assert not keeps(places, ((0, 5), (2,)))  # two after the first of the other
    assert not keeps(places, ((0, 1), (5,)))  # too near to its own
    assert not keeps(places, ((0, 7), (4,)))  # closed
    assert not keeps(places, ((0,), (4,)))  # one too few
    assert not keeps(places, ((1, 6), (0,)))  # round midnight


def test_levelling_evens_out_what_was_packed() -> None:
    places = Places((4,), ((1 << 24) - 1,), ((2,),), 24)
    assert levelled(places, ((0, 2, 4, 6),)) != ((0, 2, 4, 6),)
    apart = sorted(levelled(places, ((0, 2, 4, 6),))[0])
    between = [(later - earlier) % 24 for earlier, later in zip(apart, [*apart[1:], apart[0]], strict=True)]
    assert max(between) - min(between) <= 2


def relaxed(question: TimetableQuestion, reason: Reason) -> TimetableQuestion | None:
    """Return the question with the wish left out that a reason names, as far as it says; None where it names several."""
    match reason.code:
        case "timetable_apart":
            widest = float(str(reason.params["widest_min"]))
            return replace(question, apart=tuple(replace(a, minutes=min(a.minutes, widest)) for a in question.apart))
        case "timetable_quiet":
            return replace(question, quiet=(), pumps=tuple(replace(pump, quiet=()) for pump in question.pumps))
        case "timetable_closest":
            return replace(question, pumps=tuple(replace(pump, closest_min=None) for pump in question.pumps))
        case "timetable_one_at_a_time":
            return replace(question, one_at_a_time=False)
        case "timetable_doses":
            most = int(str(reason.params["would_do"]))
            return replace(question, pumps=tuple(doses(pump, min(pump.fewest, most)) for pump in question.pumps))
    return None


@pytest.mark.parametrize("start", range(0, 400, 100))
def test_a_timetable_in_whole_hours_is_found_whenever_there_is_one(start: int) -> None:
    seen: Counter[str] = Counter()
    for seed in range(start, start + 100):
        question = hourly(seed)
        result = solve(question)
        assert isinstance(result, Refused) != hourly_exists(question), seed
        if not isinstance(result, Refused):
            assert faults(result) == [], seed
            seen["answered"] += 1
            continue
        for reason in result.reasons:
            seen[reason.code] += 1
            # In a case as small as these the search always comes to its end.
            assert reason.params.get("proved", True) is True, seed
            without = relaxed(question, reason)
            if without is not None and len(result.reasons) == 1:
                found = solve(without)
                assert not isinstance(found, Refused), (seed, reason)
                assert faults(found) == [], seed
    assert seen["answered"] > 30
    assert len(seen) > 4
