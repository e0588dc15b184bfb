"""The four contingency cards, read back and held against the plan's limits; over everything that can be asked."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from evenwater.engine import check_ph
from evenwater.engine.correction import Answer, solve
from evenwater.engine.projection import project
from evenwater.engine.quantities import from_canonical
from evenwater.screens.contingency import contingencies
from evenwater.screens.contingency_doses import Readings
from evenwater.screens.contingency_views import ContingencyCard
from evenwater.screens.dose_card import card
from tests.engine.asking import ask
from tests.engine.generated import WAYS, draw_one
from tests.screens.asked import LABEL, NOW, answer, over_everything
from tests.screens.contingency_reading import (
    BATCH,
    BATCH_ID,
    FAILED,
    HIGH,
    MISSED,
    SLACK,
    allowed_jump,
    allowed_rise,
    made,
    path,
    plain,
    shown,
    steepest,
    steps,
)
from tests.screens.contingency_reading import given as rows_of
from tests.screens.lint import NBSP, faults, millilitres, strings
from tests.screens.reckoned import MEQ_PER_DKH, canonical, most_in_a_day, parameters, per_ml


@over_everything
def test_every_string_is_safe(name: str) -> None:
    _, cards = made(name)
    bad = [fault for text in strings(cards) for fault in faults(text)]
    lines = [text for one in cards for row in one.rows for text in (*row.when.splitlines(), row.dose, row.setting)]
    bad += [
        fault
        for text in (*lines, *(limit for one in cards for limit in one.limits))
        for fault in faults(text, dose=True)
    ]
    assert not bad


@over_everything
def test_L19_cards_belong_to_the_plan_and_hold_no_longer_than_its_dose_card(name: str) -> None:
    plan, cards = made(name)
    dose_card = card(plan, NOW)
    assert [one.title for one in cards] == [
        "The test reads high", "Two days were missed", "The pump failed", "A new batch goes into the jug",
    ]  # fmt: skip
    for one in cards:
        who = one.identity
        assert (who.plan_id, who.system) == (dose_card.plan_id, dose_card.system)
        assert (who.issued, who.valid_until) == (dose_card.issued, dose_card.valid_until)
        assert one.use_when.startswith("Use this card when ")
        assert one.phone.endswith(":")
        assert one.write_in.rows >= 4


@over_everything
def test_one_action_to_a_step_and_every_step_is_short(name: str) -> None:
    for one in made(name)[1]:
        for step in one.steps:
            assert step.when
            assert step.what.endswith(".")
            assert len(step.what) <= 150, step.what


@over_everything
def test_H33_handling_is_whole_wherever_a_stock_is_handled(name: str) -> None:
    plan, cards = made(name)
    whole = card(plan, NOW)
    assert cards[BATCH].cautions == whole.cautions
    assert cards[BATCH].emergency == whole.emergency
    if any("syringe" in row.setting or "cylinder" in row.setting for row in cards[FAILED].rows):
        assert (cards[FAILED].cautions, cards[FAILED].emergency) == (whole.cautions, whole.emergency)
    assert cards[HIGH].cautions == cards[MISSED].cautions == ()


@over_everything
def test_H20_what_must_be_kept_apart_stands_where_something_is_given(name: str) -> None:
    plan, cards = made(name)
    said = card(plan, NOW).separation
    for number in (MISSED, BATCH):
        assert dict(cards[number].facts).get("Keep apart", "") == said


# The test reads high


@over_everything
def test_high_is_above_the_stop_rule_or_the_plans_band_at_the_next_test(name: str) -> None:
    plan, cards = made(name)
    q = plan.question
    assert card(plan, NOW).stop.partition("reads above ")[2].partition(". ")[0] in cards[HIGH].use_when
    early = re.search(r"above ([\d.]+)\u00a0[^,]*? before ", cards[HIGH].use_when)
    along = project(plan)
    days = (plan.retest_at - q.now) / timedelta(days=1)
    high, rising = (float(np.interp(days, along.days, line)) for line in (along.high, along.plan))
    grain = 10.0 ** Readings(q).places
    if early is None:
        assert high > plan.stop_above - plan.question.parameter.canonical(q.parameter.kit_accuracy) / 10 or days <= 0
        return
    said = float(early[1])
    exact = from_canonical(high, q.parameter.kind, q.unit, q.system.water)
    assert said <= exact * SLACK + 0.1 * grain
    assert said >= exact - 1.2 * grain
    planned = from_canonical(rising, q.parameter.kind, q.unit, q.system.water)
    assert said >= planned - grain, "what is planned is not high"


@over_everything
def test_a_high_value_is_answered_by_waiting_and_never_by_a_counter_dose(name: str) -> None:
    plan, cards = made(name)
    high = cards[HIGH]
    assert high.steps[0].what == "Stop the pump."
    assert "no acid" in high.limits[0]
    said = steps(high)
    assert "fresh kit" in said
    assert "second person" in said
    assert "only when the keeper says so" in said
    hard = parameters()[plan.question.parameter.name]["target_hard"][1]
    top = from_canonical(canonical(plan.question.parameter.name, hard), plan.question.parameter.kind, plan.question.unit,
                         plan.question.system.water)  # fmt: skip
    found = re.search(r"Reads above ([\d.]+) ", said)
    assert found
    assert float(found[1]) == pytest.approx(top, rel=5.1e-3)
    upkeep = list(high.rows)
    assert len(upkeep) == (plan.doses.upkeep_ml > 0.0)
    for row in upkeep:
        assert (row.dose, row.setting) == (card(plan, NOW).rows[-1].dose, card(plan, NOW).rows[-1].setting)
        assert "has fallen" in row.when
    assert ("call the keeper. Leave the pump off" in said) == (not upkeep)


def test_how_long_it_takes_by_hand() -> None:
    """From 8.7 to 8.4 dKH with 0.9 a day: a third of a day. From 14 dKH: 5.6 / 0.9 = 6.2 days, said in whole hours."""
    facts = dict(contingencies(answer(), NOW)[HIGH].facts)
    said = {plain(label): plain(text) for label, text in facts.items()}
    assert said["From 8.7 dKH"].startswith("about 8 h ")
    assert said["From 14 dKH"].startswith("about 6 days 6 h ")
    assert said["From 11.3 dKH"].startswith("about 3 days 6 h "), "2.9 / 0.9 days are 77.3 h"
    assert said["How long"] == "Reckoned with 0.9 dKH per day used."


def test_without_a_use_nobody_pretends_to_know_how_long() -> None:
    high = contingencies(answer({"change.daily_use": None}), NOW)[HIGH]
    assert [label for label, _ in high.facts] == ["How long"]
    assert "not known" in high.facts[0][1]
    assert not re.search(r"\d", high.facts[0][1])


# Two days were missed


@over_everything
def test_H16_after_missed_days_no_row_passes_a_limit_or_the_plan_itself(name: str) -> None:
    plan, cards = made(name)
    check_missed(plan, cards[MISSED])


def check_missed(plan: Answer, missed: ContingencyCard) -> None:
    q = plan.question
    assert any("missed doses" in step.what and "neither now nor later" in step.what for step in missed.steps)
    assert any("Never make up missed doses" in limit for limit in missed.limits)
    rows = rows_of(missed, plan)
    if not rows:
        assert missed.rows == ()
        assert "a new plan is needed" in steps(missed)
        return
    for below, row in zip([None, *rows], rows, strict=False):
        assert row.low < row.high < q.target
        assert below is None or row.low == below.high
        assert row.ml <= plan.doses.dose_ml * SLACK
        assert row.ml * plan.doses.per_day <= most_in_a_day(plan) * SLACK
        for start in (row.low, row.high):
            values = path(start, plan, row.ml, row.count)
            assert max(values) <= q.target * SLACK
            assert steepest(values, plan.doses.per_day) <= allowed_rise(plan) * SLACK
            assert row.ml * per_ml(plan) <= allowed_jump(plan) * SLACK
            water = check_ph.look(
                Readings(q).asked(q, shown(start, plan)), per_ml(plan), row.ml * -(-plan.doses.per_day // 24)
            )
            assert water is None or water.highest_ph_rise <= 0.2 + 1e-6
        longer = path(row.high, plan, row.ml, row.count + 1)
        assert longer[-1] > q.target or row.count == 1, "one dose more would still have been right"


@over_everything
def test_rows_cover_what_two_days_without_a_dose_leave(name: str) -> None:
    """From the reading less two days' use and the kit's error up to the ramp's end less the same, plus the kit's error."""
    plan, cards = made(name)
    q = plan.question
    rows = rows_of(cards[MISSED], plan)
    if not rows:
        return
    kit = canonical(q.parameter.name, parameters()[q.parameter.name]["kit_accuracy"])
    plausible = canonical(q.parameter.name, parameters()[q.parameter.name]["plausible"][0])
    grain = (shown(q.target, plan) - shown(q.target - kit, plan)) / 2.0
    lowest = max(q.measured - 2.0 * q.use - kit, plausible)
    assert shown(rows[0].low, plan) >= shown(lowest, plan) - 1e-6 * grain
    assert shown(rows[0].low, plan) <= max(shown(lowest, plan) + grain, shown(q.measured, plan)) + 1e-9
    assert rows[-1].high <= q.target - plan.doses.shortfall - 2.0 * q.use + kit + 1e-9 * q.target


def test_missed_days_by_hand() -> None:
    """6.8 to 8.4 dKH in 340 L with 106 g of soda ash a litre, 0.9 dKH a day used, a pump of 24 doses.

    One mL raises by 106 / 105.988 x 2 / 340 meq/L = 0.0165 dKH, so a dose of 4.7 mL lifts by 0.0400 after an hour's use.
    """
    plan = answer()
    rows = rows_of(contingencies(plan, NOW)[MISSED], plan)
    ends = [(round(row.low / MEQ_PER_DKH, 3), round(row.high / MEQ_PER_DKH, 3)) for row in rows]
    assert ends == [(4.7, 5.4), (5.4, 6.1), (6.1, 6.8)]
    lift = 4.7 * 106 / 105.988 * 2 / 340 / MEQ_PER_DKH - 0.9 / 24
    assert [row.ml for row in rows] == [4.7] * 3
    assert [row.count for row in rows] == [int((8.4 - high) / lift) for high in (5.4, 6.1, 6.8)] == [74, 57, 39]


def test_a_plan_of_one_small_dose_gives_no_larger_one_afterwards() -> None:
    plan, cards = made("one dose")
    assert plan.doses.count == 1
    assert {row.ml for row in rows_of(cards[MISSED], plan)} == {plan.doses.dose_ml} == {6.0}


def test_where_a_low_reading_would_lift_pH_too_far_the_rows_begin_at_the_plans_own_reading() -> None:
    """Less alkalinity at the pH that was measured leaves no room below the highest pH: such a reading is the keeper's."""
    plan, cards = made("highest pH sets")
    assert rows_of(cards[MISSED], plan)[0].low / MEQ_PER_DKH == pytest.approx(6.8)


def test_the_new_test_shows_what_the_old_one_could_not() -> None:
    """What was dosed since the plan's reading is in the water when it is tested again, two days later."""
    q = replace(answer().question, untested=0.2, lately=0.1)
    plan = solve(q)
    assert isinstance(plan, Answer)
    card = contingencies(plan, NOW)[MISSED]
    check_missed(plan, card)
    assert rows_of(card, plan)


# A new batch


@over_everything
def test_H12_a_new_batch_has_the_strength_of_the_plan(name: str) -> None:
    plan, cards = made(name)
    additive, batch = plan.question.additive, cards[BATCH]
    assert "void" in batch.limits[0]
    assert "Take this card and the dose card down" in batch.limits[0]
    assert "Call the keeper" in batch.limits[0]
    said = steps(batch)
    assert "without air" in said
    assert "Write on the jug: name, " in said
    assert "not made up" in said
    if not hasattr(additive, "grams"):
        assert batch.rows == ()
        assert "word for word" in said
        assert plain(card(plan, NOW).strength).partition(": ")[2].removesuffix(".") in said
        return
    assert batch.first, "what is weighed is compared with the bag before anything is done"
    assert {row.additive.partition(",")[0] for row in batch.rows} == {
        part.chemical.tall_man for part in additive.portions
    }
    twice = 2.0 if additive.saturated else 1.0
    for row in batch.rows:
        part = next(p for p in additive.portions if row.additive.startswith(p.chemical.tall_man))
        number, unit = row.dose.split(NBSP)
        grams = float(number) * {"kg": 1000.0, "g": 1.0, "mg": 0.001}[unit]
        litres = float(millilitres(row.when)) / 1000.0
        assert grams / litres == pytest.approx(
            twice * part.grams / additive.made_up_l, rel=6e-3 if additive.saturated else 1e-3
        )
        assert (f"{100.0 * part.purity:g}" in row.additive) == (part.purity != 1.0)
    volumes = {float(millilitres(row.when)) for row in batch.rows}
    assert 1000.0 * additive.made_up_l in [pytest.approx(volume) for volume in volumes]


def test_a_batch_for_a_litre_and_for_the_jug() -> None:
    rows = contingencies(answer({"additive.dissolved": "530 g", "additive.made_up_to": "5 L"}), NOW)[BATCH].rows
    assert [(plain(row.when), plain(row.dose)) for row in rows] == [("To make 5 L", "530 g"), ("To make 1 L", "106 g")]
    heavy = contingencies(answer({"additive.dissolved": "2.12 kg", "additive.made_up_to": "20 L"}), NOW)[BATCH].rows
    assert plain(heavy[0].dose) == "2.12 kg"


def test_the_word_of_the_hazard_goes_on_the_label() -> None:
    assert "the word WARNING" in steps(contingencies(answer(), NOW)[BATCH])
    mild = answer({"additive.chemical": "sodium bicarbonate", "additive.dissolved": "50 g"})
    assert "today." in steps(contingencies(mild, NOW)[BATCH])


@pytest.mark.parametrize(
    ("grams", "share"),
    [("100 g", "three quarters"), ("400 g", "half"), ("900 g", "a third")],
    ids=["thin", "strong", "syrup"],
)
def test_the_jug_does_not_run_over_when_the_salt_goes_in(grams: str, share: str) -> None:
    changes = {"change.parameter": "calcium", "change.measured": "385 mg/L", "change.target": "430 mg/L",
               "change.daily_use": "9 mg/L per day", "additive.chemical": "calcium chloride hexahydrate",
               "additive.dissolved": grams, "pump.smallest_dose": None, "pump.step": "0.01 mL"}  # fmt: skip
    assert f"Fill the jug {share} full" in steps(contingencies(answer(changes), NOW)[BATCH])


def test_the_code_of_the_old_batch_is_not_part_of_a_bottles_words() -> None:
    said = steps(contingencies(answer({"additive": {"label": LABEL}}), NOW, BATCH_ID)[BATCH])
    assert "It must say: 5 mL raise 100 L by 1 dKH." in said
    assert "batch" not in said


def test_the_same_plan_gives_the_same_cards() -> None:
    assert contingencies(answer(), NOW, BATCH_ID) == contingencies(answer(), NOW, BATCH_ID)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow])
@given(way=st.sampled_from(WAYS), draw=st.randoms(use_true_random=False))
def test_no_row_of_any_card_passes_a_limit_of_any_plan(way, draw) -> None:
    plan = ask(draw_one(draw, *way))
    if not isinstance(plan, Answer):
        return
    cards = contingencies(plan, plan.question.now)
    assert not [fault for text in strings(cards) for fault in faults(text)]
    check_missed(plan, cards[MISSED])
