"""Timetables by hand: the two-part pair, what is carried, numbers of doses, quiet hours, and refusals with their figures."""

from __future__ import annotations

import time
from dataclasses import replace

import pytest

from evenwater.engine.timetable import Refused, TimetableAnswer, TimetableQuestion, solve
from evenwater.engine.timetable_doses import Split, exact, split
from evenwater.engine.timetable_question import Apart, Quiet, TimedPump
from tests.engine.timetables import LIME, PAIR, SODA, doses, faults


def answered(question: TimetableQuestion) -> TimetableAnswer:
    result = solve(question)
    assert isinstance(result, TimetableAnswer), result
    assert faults(result) == []
    return result


def refused(question: TimetableQuestion) -> dict[str, dict[str, object]]:
    """Return the codes of a refusal with their figures."""
    result = solve(question)
    assert isinstance(result, Refused), result
    return {reason.code: dict(reason.params) for reason in result.reasons}


def test_a_pair_takes_turns_every_half_hour() -> None:
    answer = answered(PAIR)
    assert len(answer.rows) == 48
    assert {row.ml for row in answer.rows} == {2.2}
    # 2.2 mL at 24 mL per min.
    assert {row.run_time_s for row in answer.rows} == {5.5}
    assert [row.pump for row in answer.rows] == [0, 1] * 24
    assert {later.minute - row.minute for row, later in zip(answer.rows, answer.rows[1:], strict=False)} == {30}
    # Half an hour less the dose itself.
    assert answer.seen.nearest_s == (1794.5,)
    assert answer.seen.in_24_hours_ml == (52.8, 52.8)
    assert [reason.code for reason in answer.remarks] == ["timetable_rather_further"]


def test_rows_stand_in_the_order_in_which_they_come() -> None:
    answer = answered(replace(PAIR, quiet=(Quiet(1200, 300),)))
    order = [(row.minute, row.pump) for row in answer.rows]
    assert order == sorted(order)
    assert order[0][0] >= 300
    assert order[-1][0] < 1200


@pytest.mark.parametrize(
    ("per_day", "count", "ordinary", "round_days", "extra_days"),
    [
        (52.8, 24, {22: 24}, 1, ()),
        (53.0, 24, {22: 22, 23: 2}, 1, ()),
        (53.04, 24, {22: 22, 23: 2}, 5, (3, 5)),
        (0.25, 2, {1: 2}, 2, (2,)),
        (1.0, 3, {3: 2, 4: 1}, 1, ()),
        (10.01, 1, {100: 1}, 10, (10,)),
        (7.3333, 7, {10: 4, 11: 3}, 1000, (4, 7, 10, 13, 16)),
    ],
)
def test_what_is_no_multiple_of_the_step_is_carried(
    per_day: float, count: int, ordinary: dict[int, int], round_days: int, extra_days: tuple[int, ...]
) -> None:
    made = split(replace(SODA, per_day_ml=per_day), count)
    steps = made.ordinary
    assert {size: steps.count(size) for size in set(steps)} == ordinary
    assert made.repeats_after == round_days
    assert made.extra_days(5) == extra_days
    assert made.extra_days(5) == tuple(day + 1 for day in range(round_days) if made.has_extra(day))[:5]
    days = [sum(steps) + made.has_extra(day) for day in range(round_days)]
    assert sum(days) == exact(per_day) / exact(0.1) * round_days
    assert max(days) - min(days) <= 1


def test_larger_doses_are_spread_over_the_day() -> None:
    assert Split(exact(10.0), 4).ordinary == (2, 3, 2, 3)
    assert Split(exact(9.0), 4).ordinary == (2, 2, 2, 3)


def test_the_sum_is_never_above_by_more_than_a_step_at_any_dose() -> None:
    for per_day in (1.234, 5.05, 9.99, 12.3456):
        for count in (1, 2, 3, 7, 12):
            made = split(replace(SODA, per_day_ml=per_day), count)
            given, wanted = 0, made.wanted
            for day in range(50):
                for number, steps in enumerate(made.ordinary, start=1):
                    given += steps + (number == 1 and made.has_extra(day))
                    assert -2 < given - wanted * (day + exact(number) / count) <= 1
                assert -1 < given - wanted * (day + 1) <= 0


def test_different_numbers_of_doses_stay_apart() -> None:
    answer = answered(TimetableQuestion((doses(SODA, 20), doses(LIME, 24)), (Apart(0, 1, 15.0),)))
    assert [day.doses.count for day in answer.pumps] == [20, 24]
    assert min(answer.seen.nearest_s) >= 900.0
    # None comes nearer to its next than half of what even spacing gives.
    assert answer.pumps[0].shortest_min >= 36
    assert answer.pumps[1].shortest_min >= 30


def test_the_number_of_doses_stays_as_wished_unless_another_is_allowed() -> None:
    weak = replace(SODA, smallest_ml=5.0)
    said = refused(TimetableQuestion((weak, LIME), (Apart(0, 1, 15.0),)))
    assert said["timetable_smallest"]["would_do"] == 10
    answer = answered(TimetableQuestion((doses(weak, 24, least=4), LIME), (Apart(0, 1, 15.0),)))
    assert answer.pumps[0].doses.count == 10
    assert answer.remarks[0].params == {"name": "Soda", "wished": 24, "given": 10}


@pytest.mark.parametrize("least", [4, 12, 20])
def test_any_number_of_doses_that_is_allowed_is_tried(least: int) -> None:
    # Two hours apart there is room for six doses of each.
    crowd = (doses(SODA, 48, least=least), doses(LIME, 48, least=least))
    question = TimetableQuestion(crowd, (Apart(0, 1, 110.0),))
    if least == 4:
        assert {day.doses.count for day in answered(question).pumps} <= {4, 5, 6, 7, 8, 9, 10, 11, 12}
    else:
        assert "timetable_apart" in refused(question)


def test_quiet_hours_over_midnight_are_kept_by_all_and_by_one() -> None:
    night, noon = Quiet(22 * 60, 7 * 60), Quiet(12 * 60, 13 * 60)
    answer = answered(TimetableQuestion((replace(SODA, quiet=(noon,)), LIME), (Apart(0, 1, 15.0),), quiet=(night,)))
    assert all(420 <= row.minute < 1320 for row in answer.rows)
    assert not [row for row in answer.rows if row.pump == 0 and 720 <= row.minute < 780]
    assert [row for row in answer.rows if row.pump == 1 and 720 <= row.minute < 780]


def test_a_long_dose_is_over_when_quiet_hours_begin() -> None:
    slow = TimedPump("Slow", 100.0, 1.0, doses=2, fewest=2, most=2, quiet=(Quiet(0, 600), Quiet(660, 900)))
    # Each dose runs 50 minutes: from 10:00 on it fits between the two quiet hours, from 10:11 on no more.
    answer = answered(TimetableQuestion((slow,)))
    assert all(row.minute <= 610 or row.minute >= 900 for row in answer.rows)
    packed = replace(slow, quiet=(Quiet(0, 600), Quiet(649, 0)))
    assert "timetable_quiet" in refused(TimetableQuestion((packed,)))


def test_only_one_pump_runs_at_a_time_where_that_is_wished() -> None:
    pumps = tuple(TimedPump(f"Pump {n}", 240.0, 2.0, doses=12, fewest=12, most=12) for n in range(4))
    answer = answered(TimetableQuestion(pumps, one_at_a_time=True))
    ends = [60 * row.minute + row.run_time_s for row in answer.rows]
    assert all(end <= 60 * later.minute for end, later in zip(ends, answer.rows[1:], strict=False))
    # Four times two hours and a half and some more do not fit into a day.
    more = tuple(replace(pump, per_day_ml=800.0) for pump in pumps)
    said = refused(TimetableQuestion(more, one_at_a_time=True))
    assert set(said) == {"timetable_one_at_a_time"}
    assert said["timetable_one_at_a_time"]["proved"] is True


def test_a_pump_alone_spaces_its_doses_evenly() -> None:
    for count in (1, 5, 7, 24, 100):
        (day,) = answered(TimetableQuestion((doses(replace(SODA, step_ml=0.01), count),))).pumps
        assert day.longest_min - day.shortest_min <= 1


def test_too_wide_a_wish_says_how_much_can_be_had() -> None:
    said = refused(replace(PAIR, apart=(Apart(0, 1, 30.0),)))
    assert set(said) == {"timetable_apart", "timetable_doses"}
    # The dose itself and whole minutes take a minute of each half hour.
    assert said["timetable_apart"]["widest_min"] == 29
    assert said["timetable_apart"]["proved"] is True
    assert said["timetable_doses"]["would_do"] == 23
    answered(replace(PAIR, apart=(Apart(0, 1, 29.0),)))
    answered(TimetableQuestion((doses(SODA, 23), doses(LIME, 23)), (Apart(0, 1, 30.0),)))


def test_wishes_that_only_together_stand_in_the_way_are_named_together() -> None:
    # Four doses at least five hours apart do not fit in twelve hours, nor fifteen hours of running time at twice that.
    pump = TimedPump("Slow", 600.0, 1.0, doses=4, fewest=4, most=4, closest_min=380, quiet=(Quiet(0, 900),))
    said = refused(TimetableQuestion((pump,)))
    assert set(said) == {"timetable_together"}
    assert said["timetable_together"]["wishes"] == ("quiet", "doses", "closest")


@pytest.mark.parametrize(
    ("pump", "code", "figures"),
    [
        (replace(SODA, per_day_ml=0.05), "timetable_step", {"per_day_ml": 0.05, "step_ml": 0.1}),
        (replace(SODA, flow_ml_per_min=0.05), "timetable_pump_share", {"most_ml": 36.0}),
        (replace(SODA, smallest_ml=3.0), "timetable_smallest", {"small_ml": 2.2, "would_do": 17}),
        (replace(SODA, largest_ml=2.0), "timetable_largest", {"large_ml": 2.2, "would_do": 27}),
        (doses(replace(SODA, smallest_ml=4.0, largest_ml=4.05), 24, least=1), "timetable_between", {"would_do": 0}),
        (replace(SODA, per_day_ml=1.0), "timetable_smallest", {"small_ml": 0.0, "would_do": 10}),
        (replace(SODA, fewest=30), "timetable_figure", {"what": "Soda"}),
        (replace(SODA, quiet=(Quiet(0, 1440),)), "timetable_figure", {"what": "Soda"}),
    ],
)
def test_what_one_pump_cannot_do_is_refused_with_its_figures(
    pump: TimedPump, code: str, figures: dict[str, object]
) -> None:
    said = refused(TimetableQuestion((pump,)))
    assert set(said) == {code}
    assert {name: said[code][name] for name in figures} == figures


@pytest.mark.parametrize(
    ("question", "code"),
    [
        (TimetableQuestion(()), "timetable_no_pumps"),
        (TimetableQuestion(tuple(replace(SODA, name=str(n)) for n in range(25))), "timetable_too_many"),
        (TimetableQuestion((SODA, SODA)), "timetable_same_name"),
        (replace(PAIR, apart=(Apart(0, 0, 15.0),)), "timetable_apart_itself"),
        (replace(PAIR, apart=(Apart(0, 2, 15.0),)), "timetable_figure"),
        (replace(PAIR, apart=(Apart(0, 1, 14.9),)), "timetable_apart_least"),
    ],
)
def test_what_cannot_be_asked_is_refused(question: TimetableQuestion, code: str) -> None:
    assert set(refused(question)) == {code}


@pytest.mark.parametrize("count", [2, 3, 10, 17])
def test_the_advice_of_a_single_pump_is_answered_when_it_is_followed(count: int) -> None:
    pump = replace(doses(SODA, 24), smallest_ml=52.8 / count)
    advice = refused(TimetableQuestion((pump,)))["timetable_smallest"]["would_do"]
    assert advice in (count - 1, count)
    answered(TimetableQuestion((doses(pump, int(str(advice))),)))
    assert set(refused(TimetableQuestion((doses(pump, count + 1),)))) == {"timetable_smallest"}


def test_eight_pumps_of_24_doses_are_planned_quickly() -> None:
    pumps = tuple(TimedPump(f"Pump {n}", 50.0 + 3.33 * n, 24.0) for n in range(8))
    apart = tuple(Apart(i, j, 5.0) for j in range(8) for i in range(j))
    taken = []
    for question in (TimetableQuestion(pumps, apart), TimetableQuestion(pumps, apart[:1], one_at_a_time=True)):
        for _ in range(3):
            begun = time.process_time()
            answered(question) if not taken else solve(question)
            taken.append(time.process_time() - begun)
    # 20 to 30 ms on two slow cores; the bound leaves room for a busy machine.
    assert sorted(taken)[1] < 0.2
