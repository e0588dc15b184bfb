"""Everything that runs in a tank at once: against scipy's integrator, by its own budget, and what must not go on."""

from __future__ import annotations

import random
from dataclasses import replace

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from evenwater.engine import exchange_check
from evenwater.engine.correction import Refused
from evenwater.engine.exchange_course import course, stretches
from evenwater.engine.exchange_question import OneDose
from evenwater.engine.reasons import Reason
from evenwater.engine.together import disagreement, solve
from evenwater.engine.together_answer import EXCHANGE, LOSS, USE, TogetherAnswer
from evenwater.engine.together_question import CORRECTION, FOOD, UPKEEP, TogetherQuestion, carried_forward
from evenwater.engine.together_range import ABOVE, BELOW, Leaving
from tests.engine.togethers import ALL, moved, of, parameter, put, random_question, source, tank


def integrated(q: TogetherQuestion, days: float) -> np.ndarray:
    """Return every value after some days by a Runge-Kutta method of order eight, from edge to edge."""
    t = q.tank
    names = [v.parameter.name for v in t.values]
    edges = {e for s in q.sources for e in (s.spell.begins, s.spell.ends) if 0.0 < e < days}
    state, at = np.array([v.now for v in t.values]), 0.0
    for edge in [*sorted(edges), days]:
        middle = (at + edge) / 2.0
        gain = np.array([t.pair.in_l * v.new_water / t.volume_l - v.use for v in t.values])
        for s in q.sources:
            if s.spell.begins <= middle < s.spell.ends:
                gain[names.index(s.spell.parameter.name)] += s.spell.per_day
        loss = np.array([t.pair.out_l / t.volume_l + v.loss for v in t.values])
        run = solve_ivp(
            lambda _, c, gain=gain, loss=loss: gain - loss * c, (at, edge), state, method="DOP853", rtol=1e-12, atol=1e-14
        )  # fmt: skip
        state, at = run.y[:, -1], edge
    return state


def codes(reasons: tuple[Reason, ...]) -> dict[str, Reason]:
    return {reason.code: reason for reason in reasons}


@pytest.mark.parametrize("seed", range(4))
def test_many_sources_are_as_integrated(seed: int) -> None:
    q = random_question(seed)
    found = solve(q)
    assert isinstance(found, TogetherAnswer), found
    assert [each.month for each in found.outlooks] == pytest.approx(list(integrated(q, 30.0)), rel=1e-9)
    assert [each.week for each in found.outlooks] == pytest.approx(list(integrated(q, 7.0)), rel=1e-9)


@pytest.mark.parametrize("seed", range(20))
def test_every_budget_adds_up_to_what_the_value_does(seed: int) -> None:
    q = random_question(seed)
    found = solve(q)
    assert isinstance(found, TogetherAnswer), found
    step = 1e-5
    for row, each in enumerate(found.outlooks):
        start = np.array([v.now for v in q.tank.values])
        later = course(start, stretches(q.running), np.array([step]))[row, 0]
        assert (later - each.moved.now) / step == pytest.approx(each.per_day, rel=1e-4, abs=1e-6)
        # Nothing is counted twice: what runs, the exchange, the loss and the use, each once.
        runs = sum(s.spell.per_day for s in q.sources
                   if s.spell.parameter == each.moved.parameter and s.spell.begins <= 0.0 < s.spell.ends)  # fmt: skip
        t, m = q.tank, each.moved
        exchanged = (t.pair.in_l * m.new_water - t.pair.out_l * m.now) / t.volume_l
        assert each.per_day == pytest.approx(runs + exchanged - m.loss * m.now - m.use, rel=1e-12)


@pytest.mark.parametrize("seed", range(20))
def test_the_books_balance_with_spells(seed: int) -> None:
    q = random_question(seed).running
    for value in q.values:
        books = exchange_check.ledger(q, value)
        assert abs(books.off) <= 1e-9 * (books.before + books.came + books.went)


def test_the_order_of_the_plans_means_nothing() -> None:
    q = random_question(3)
    mixed = list(q.sources)
    random.Random(3).shuffle(mixed)
    one, other = solve(q), solve(replace(q, sources=tuple(mixed)))
    assert isinstance(one, TogetherAnswer)
    assert isinstance(other, TogetherAnswer)
    for a, b in zip(one.outlooks, other.outlooks, strict=True):
        assert a.points == pytest.approx(b.points, rel=1e-12)
        assert a.rise == pytest.approx(b.rise, rel=1e-9)
    assert [r.code for r in one.dangers] == [r.code for r in other.dangers]


def test_two_plans_that_each_keep_the_hard_rise_do_not_keep_it_together() -> None:
    """Of 1.4 dKH in 24 hours one correction makes 0.9 and limewater for calcium 0.8: each alone is allowed."""
    water = tank(moved("alkalinity", 7.5), moved("calcium", 380.0))
    soda = source(CORRECTION, "alkalinity", "alkalinity", 0.9, 0.0, 2.0, aims_at=9.3)
    lime = [
        source(CORRECTION, "calcium", name, rise, 0.0, 3.0) for name, rise in (("calcium", 5.7), ("alkalinity", 0.8))
    ]
    for alone in ((soda,), lime):
        assert not codes(put(water, *alone).dangers)
    found = codes(put(water, soda, *lime).dangers)
    danger = found["together_rises_too_fast"]
    assert danger.params["rise"] == pytest.approx(parameter("alkalinity").canonical(1.7), rel=1e-9)
    assert danger.params["most"] == pytest.approx(parameter("alkalinity").canonical(1.4), rel=1e-9)
    assert set(danger.params["plans"]) == {(CORRECTION, "alkalinity"), (CORRECTION, "calcium")}
    # Both at once take alkalinity past the target as well.
    assert found["together_overshoots"].params["comes_to"] == pytest.approx(
        parameter("alkalinity").canonical(7.5 + 2 * 1.7)
    )


def test_the_rise_counts_only_where_both_run_in_the_same_24_hours() -> None:
    water = tank(moved("alkalinity", 7.5))
    first = source(CORRECTION, "alkalinity", "alkalinity", 1.3, 0.0, 1.0, aims_at=8.8)
    later = source(CORRECTION, "calcium", "alkalinity", 1.3, 2.5, 3.0)
    assert of(put(water, first, later), "alkalinity").rise == pytest.approx(parameter("alkalinity").canonical(1.3))
    overlapping = replace(later, spell=replace(later.spell, begins=1.5, ends=2.0))
    most = of(put(water, first, overlapping), "alkalinity").rise
    # From 12 h to 36 h: half a day of each.
    assert most == pytest.approx(parameter("alkalinity").canonical(1.3), rel=1e-9)
    beside = replace(later, spell=replace(later.spell, begins=0.5, ends=1.0))
    assert of(put(water, first, beside), "alkalinity").rise == pytest.approx(parameter("alkalinity").canonical(1.95))


def test_one_plan_that_is_too_fast_by_itself_is_said_to_be() -> None:
    found = put(tank(moved("calcium", 400.0)), source(UPKEEP, "calcium", "calcium", 60.0))
    assert codes(found.dangers)["together_one_rises_too_fast"].params["plans"] == ((UPKEEP, "calcium"),)


def test_new_water_and_a_plan_that_each_keep_the_limit_do_not_keep_it_together() -> None:
    """New water brings 30 mg/L a day at first, the upkeep 30: of 50 mg/L in 24 hours."""
    water = tank(moved("calcium", 400.0, new_water=700.0), out_l=34.0)
    plan = source(UPKEEP, "calcium", "calcium", 30.0)
    assert not [code for code in codes(put(water).dangers) if "rises" in code]
    found = codes(put(water, plan).dangers)
    assert set(found["together_rises_too_fast"].params["plans"]) == {(UPKEEP, "calcium"), (EXCHANGE, "")}


def test_use_makes_good_what_a_plan_covers() -> None:
    """A correction of 1.3 dKH a day net of 0.9 used keeps the limit, though its doses alone would not."""
    water = tank(moved("alkalinity", 7.0, use=0.9))
    found = put(water, source(CORRECTION, "alkalinity", "alkalinity", 2.2, 0.0, 1.0, aims_at=8.3), source(UPKEEP, "alkalinity", "alkalinity", 0.9, 1.0))  # fmt: skip
    assert not found.dangers
    assert of(found, "alkalinity").month == pytest.approx(parameter("alkalinity").canonical(8.3))


def test_a_large_exchange_with_weak_water_falls_too_fast() -> None:
    found = put(tank(moved("calcium", 500.0, new_water=100.0), out_l=60.0))
    assert codes(found.dangers)["together_falls_too_fast"].params["fall"] > parameter("calcium").canonical(50.0)


def test_a_value_that_leaves_its_hard_range_within_a_week_is_a_danger_and_later_a_remark() -> None:
    p = parameter("calcium")
    soon = put(tank(moved("calcium", 320.0, use=5.0)))
    assert of(soon, "calcium").hard == Leaving(pytest.approx(4.0), BELOW)
    assert codes(soon.dangers)["together_leaves_hard"].params["low"] == pytest.approx(p.canonical(300.0))
    later = put(tank(moved("calcium", 420.0, use=5.0)))
    assert not later.dangers
    assert of(later, "calcium").hard == Leaving(pytest.approx(24.0), BELOW)
    assert codes(later.remarks)["together_leaves_hard_later"].params["day"] == pytest.approx(24.0)
    assert of(later, "calcium").usual == Leaving(pytest.approx(8.0), BELOW)


def test_what_is_outside_and_comes_back_is_no_danger() -> None:
    back = put(
        tank(moved("alkalinity", 3.5)), source(CORRECTION, "alkalinity", "alkalinity", 1.0, 0.0, 4.0, aims_at=7.5)
    )
    assert not back.dangers
    stays = put(tank(moved("alkalinity", 3.5)))
    assert codes(stays.dangers)["together_leaves_hard"].params["day"] == 0.0


def test_what_is_used_up_is_a_remark() -> None:
    found = put(tank(moved("nitrate", 1.0, use=0.25)))
    assert not found.dangers
    assert codes(found.remarks)["together_used_up"].params["day"] == pytest.approx(4.0)


def test_a_range_is_left_exactly_where_the_course_says_so() -> None:
    q = tank(moved("nitrate", 5.0, use=0.1, new_water=0.0, loss=0.01), out_l=5.0)
    found = put(q, source(FOOD, "mash", "nitrate", 1.2))
    leaving = of(found, "nitrate").usual
    assert leaving is not None
    assert leaving.side == ABOVE
    edge = parameter("nitrate").canonical(15.0)
    at = course(np.array([q.values[0].now]), stretches(found.question.running), np.array([leaving.day]))
    assert at[0, 0] == pytest.approx(edge, rel=1e-9)


def test_settling_counts_only_what_goes_on() -> None:
    p = parameter("calcium")
    water = tank(moved("calcium", 400.0, use=4.0, new_water=430.0), out_l=10.0)
    found = put(water, source(CORRECTION, "calcium", "calcium", 20.0, 0.0, 2.0, aims_at=430.0))
    by_hand = (10.0 / 340.0 * 430.0 - 4.0) / (10.0 / 340.0)
    assert of(found, "calcium").settles == pytest.approx(p.canonical(by_hand))
    assert of(put(tank(moved("calcium", 400.0))), "calcium").settles is None


def test_the_band_is_that_of_the_net_volume() -> None:
    """In a tank 3 % smaller the same millilitres raise by 1 / 0.97 as much."""
    p = parameter("calcium")
    each = of(put(tank(moved("calcium", 400.0)), source(UPKEEP, "calcium", "calcium", 2.0)), "calcium")
    assert each.high[-1] == pytest.approx(p.canonical(400.0 + 60.0 / 0.97))
    assert each.low[-1] == pytest.approx(p.canonical(400.0 + 60.0 / 1.03))


def test_the_budget_names_everything_that_moves_a_value() -> None:
    water = tank(moved("nitrate", 10.0, use=0.4, loss=0.02, new_water=0.0), out_l=17.0)
    found = put(water, source(UPKEEP, "potassium", "nitrate", 0.2), source(FOOD, "mash", "nitrate", 0.9),
                source(CORRECTION, "nitrate", "nitrate", 1.0, 2.0, 5.0, aims_at=12.0))  # fmt: skip
    each = of(found, "nitrate")
    said = {(part.sort, part.name): part.per_day for part in each.budget}
    assert said == {
        (UPKEEP, "potassium"): pytest.approx(0.2), (FOOD, "mash"): pytest.approx(0.9), (CORRECTION, "nitrate"): pytest.approx(1.0),
        (USE, ""): pytest.approx(-0.4), (LOSS, ""): pytest.approx(-0.2), (EXCHANGE, ""): pytest.approx(-0.5),
    }  # fmt: skip
    # What is to begin later stands there and does not count yet.
    assert each.per_day == pytest.approx(0.2 + 0.9 - 0.4 - 0.2 - 0.5, abs=1e-12)


def test_two_plans_for_one_value_are_told() -> None:
    found = put(tank(moved("calcium", 400.0, use=8.0)), source(UPKEEP, "calcium", "calcium", 5.0), source(UPKEEP, "alkalinity", "calcium", 3.0))  # fmt: skip
    told = codes(found.remarks)["together_raised_by_both"].params
    assert told["rise"] == pytest.approx(8.0)
    assert told["plans"] == ((UPKEEP, "calcium"), (UPKEEP, "alkalinity"))


def test_of_a_value_that_nobody_tested_only_the_change_is_judged() -> None:
    found = put(tank(moved("calcium", 200.0)), source(UPKEEP, "lime", "calcium", 60.0), unknown=frozenset({"calcium"}))
    assert of(found, "calcium").hard is None
    assert list(codes(found.dangers)) == ["together_one_rises_too_fast"]


def test_a_value_is_carried_forward_by_all_that_ran_since_its_test() -> None:
    """Three days ago 8 dKH, 0.5 used a day; for the last two days 0.6 a day dosed, and 0.4 given by hand a day ago."""
    p = parameter("alkalinity")
    then = moved("alkalinity", 8.0, use=0.5)
    runs = source(CORRECTION, "alkalinity", "alkalinity", 0.6, -2.0, 5.0)
    by_hand = OneDose(p, 2.0, p.canonical(0.4))
    now = carried_forward(tank(then), then, 3.0, [runs, source(FOOD, "later", "alkalinity", 9.0, 1.0)], [by_hand])
    assert now == pytest.approx(p.canonical(8.0 - 1.5 + 1.2 + 0.4))
    assert carried_forward(tank(then), then, 0.0, [runs]) == then.now
    assert carried_forward(tank(then), then, 100.0, []) == 0.0, "an animal takes nothing out of empty water"


def test_carrying_forward_goes_on_where_the_course_was() -> None:
    q = random_question(5)
    after = course(np.array([v.now for v in q.tank.values]), stretches(q.running), np.array([4.0]))[:, 0]
    for row, value in enumerate(q.tank.values):
        since = [
            replace(s, spell=replace(s.spell, begins=s.spell.begins - 4.0, ends=s.spell.ends - 4.0)) for s in q.sources
        ]
        assert carried_forward(q.tank, value, 4.0, since) == pytest.approx(after[row], rel=1e-12)


def test_the_second_opinion_notices_a_wrong_course_and_a_budget_that_leaves_something_out() -> None:
    found = put(tank(moved("calcium", 400.0, use=4.0), out_l=10.0), source(UPKEEP, "calcium", "calcium", 3.0))
    (each,) = found.outlooks
    wrong = replace(each, points=(*each.points[:-1], each.points[-1] + 0.01))
    assert disagreement(replace(found, outlooks=(wrong,))) == Reason("together_disagrees", {"what": ("calcium",)})
    short = replace(each, budget=tuple(part for part in each.budget if part.sort != USE))
    assert disagreement(replace(found, outlooks=(short,))) is not None
    assert disagreement(found) is None


def test_nothing_is_said_where_the_two_disagree(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(exchange_check, "value_at", lambda *_: 1.0)
    found = solve(TogetherQuestion(tank(moved("calcium", 400.0)), ()))
    assert isinstance(found, Refused)
    assert [reason.code for reason in found.reasons] == ["together_disagrees"]


def test_a_tank_in_which_nothing_runs_stays_as_it_is() -> None:
    each = of(put(tank(moved("calcium", 400.0)), source(UPKEEP, "calcium", "magnesium", 1.0, 0.0, ALL)), "calcium")
    assert each.points == pytest.approx([400.0] * len(each.points))
    assert each.budget == ()


def test_what_was_given_by_hand_counts_in_the_same_24_hours() -> None:
    """Half a dKH six hours ago and a plan of 1.2 dKH a day: in the 24 hours from then on 0.5 + 0.75 * 1.2 = 1.4 dKH."""
    p = parameter("alkalinity")
    plan = source(CORRECTION, "alkalinity", "alkalinity", 1.2, 0.0, 2.0, aims_at=9.4)

    def rise(*given: tuple[float, float]) -> float:
        lately = tuple(OneDose(p, day, p.canonical(raises)) for day, raises in given)
        found = solve(TogetherQuestion(tank(moved("alkalinity", 7.0)), (plan,), lately=lately))
        assert isinstance(found, TogetherAnswer)
        return of(found, "alkalinity").rise / p.canonical(1.0)

    assert rise((-0.25, 0.5)) == pytest.approx(1.4)
    assert rise((-0.25, 0.5), (-0.125, 0.3)) == pytest.approx(1.7)
    assert rise((-1.5, 5.0)) == pytest.approx(1.2), "two days ago is another day"
    assert rise() == pytest.approx(1.2)
