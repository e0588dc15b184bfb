"""The right half of the sheet: rate, sums, bars and remarks, over everything that can be asked."""

from __future__ import annotations

from dataclasses import fields
from datetime import UTC
from decimal import Decimal

import pytest

from evenwater.screens.answer import headline, view
from evenwater.screens.views import AnswerView
from tests.screens.asked import LABEL, MORE, NOW, answer, catalogue, grid, outcome, over_everything, shown_for
from tests.screens.lint import NBSP, faults, millilitres, numbers, strings

WATER = {"ph_rise", "ph_ceiling", "saturation", "evaporation"}


def test_the_grid_is_wide_enough() -> None:
    answers = grid().values()
    assert len(answers) >= 120
    assert {a.question.parameter.name for a in answers} == set(catalogue().parameters)
    assert {a.set_by for a in answers} >= {"daily_rise", "single_dose", "pump_share", "also_raises_alkalinity", *WATER}
    assert {a.doses.per_day for a in answers} >= {1, 3, 4, 7, 24, 96, 1440}
    assert MORE.keys() <= grid().keys()


@over_everything
def test_every_string_of_an_answer_is_safe(name: str) -> None:
    seen = view(grid()[name], NOW)
    bad = [fault for text in strings(seen) for fault in faults(text)]
    bad += [
        fault for text in (f"{seen.figure}{NBSP}{seen.figure_unit}", seen.third) for fault in faults(text, dose=True)
    ]
    assert not bad


@over_everything
def test_headline_is_never_above_the_dosed_rate_and_close_below(name: str) -> None:
    doses = grid()[name].doses
    figure, unit = headline(doses)
    factor = {"mL per hour": 1, "L (litres) per hour": 1000}[unit]
    shown, dosed = Decimal(figure) * factor, Decimal(repr(doses.dose_ml)) * doses.per_day / 24
    assert dosed * Decimal("0.989") < shown <= dosed * (1 + Decimal("1e-9"))
    assert Decimal(figure) < 1000


@over_everything
def test_dosed_rate_is_never_above_the_computed_one(name: str) -> None:
    plan = grid()[name]
    assert plan.doses.dose_ml <= plan.single_dose_ml * (1 + 1e-9)
    assert plan.doses.in_24_hours_ml <= plan.dose_ml_per_day * (1 + 1e-9)


@over_everything
def test_sums_are_those_of_the_doses_that_are_written(name: str) -> None:
    plan = grid()[name]
    single, day, total = view(plan, NOW).third.split(" · ")
    one = millilitres(single)
    assert one == Decimal(repr(plan.doses.dose_ml))
    assert millilitres(day) == one * plan.doses.per_day
    assert millilitres(total) == one * plan.doses.count
    assert day.endswith("in 24 hours")
    assert total.endswith("in all")


# Figures written to a fixed place behind the point.
PLACES = {"ph_rise": 2, "saturation": 1}


@over_everything
def test_bars_name_what_binds_and_show_both_figures(name: str) -> None:
    plan = grid()[name]
    seen = view(plan, NOW)
    binding = [bar for bar in seen.bars if bar.binds]
    assert [bar.code for bar in binding] == [plan.set_by]
    assert binding[0].text in seen.set_by
    assert binding[0].share == pytest.approx(1.0, abs=1e-6), "what binds is used up"
    assert len({bar.label for bar in seen.bars}) == len(seen.bars)
    for bar in seen.bars:
        value, bound = numbers(bar.text.replace("SG 25/25", "SG").replace("SG 20/20", "SG").replace("SG 60/60", "SG"))[
            :2
        ]
        if bar.code == "ph_ceiling":
            # A pH is written to hundredths, and full means the way from the 7.8 to the 8.5 usually kept.
            assert max(value - 7.8, 0.0) / (bound - 7.8) == pytest.approx(bar.share, abs=0.006 / 0.7)
        elif bar.code in PLACES:
            assert value / bound == pytest.approx(bar.share, abs=0.51 * 10.0 ** -PLACES[bar.code] / bound)
        elif bar.code not in ("smallest_dose", "target", "jug"):
            assert value / bound == pytest.approx(bar.share, rel=0.06)
        assert bar.over == (bar.share > 1.0 + 1e-9)


def test_answered_view_is_whole_and_spoken() -> None:
    seen = view(answer(), NOW)
    assert seen.state == "answered"
    assert seen.messages == ()
    for item in fields(AnswerView):
        if item.name != "messages":
            assert getattr(seen, item.name), item.name
    assert seen.spoken.startswith("4.7 millilitres per hour for 1")
    assert seen.set_by.rstrip(".") in seen.spoken


def test_worked_example_as_it_is_read() -> None:
    seen = view(answer(), NOW)
    assert (seen.figure, seen.figure_unit) == ("4.7", "mL per hour")
    assert seen.second == f"for 1{NBSP}day 15{NBSP}h, until Friday 00:00"
    assert seen.third == (f"4.7{NBSP}mL every hour (11.7{NBSP}s) · 112.8{NBSP}mL in 24 hours · 183.3{NBSP}mL in all")


def test_cautions_are_those_of_the_chemical_and_a_bottle_has_its_own() -> None:
    for name, plan in grid().items():
        seen = view(plan, NOW)
        assert seen.cautions, name
    lime = view(grid()["slaked lime"], NOW).cautions
    assert lime == catalogue().chemicals["calcium hydroxide"].cautions
    assert "bottle" in view(grid()["label"], NOW).cautions[0]


def test_empty_form_asks_and_is_not_refused() -> None:
    seen = view(outcome({"change.measured": None, "pump.flow": None}), NOW)
    assert seen.state == "empty"
    assert {m.path for m in seen.messages} == {"change.measured", "pump.flow"}
    assert seen.figure == "", "no figure without a plan, neither 0 nor the last one"
    assert all(m.text in seen.spoken for m in seen.messages)


def test_wrong_entries_come_before_missing_ones() -> None:
    seen = view(outcome({"change.measured": None, "pump.flow": "24 gal"}), NOW)
    assert seen.state == "refused"
    assert [m.path for m in seen.messages] == ["pump.flow", "change.measured"]


def test_implausible_reading_offers_the_unit_that_was_meant() -> None:
    changes = {"change.measured": "140 dKH"}
    seen = view(outcome(changes), NOW, shown_for(changes))
    (message,) = seen.messages
    (offer,) = message.offers
    assert (offer.text, offer.unit) == ("140", "ppm as CaCO3")
    assert "140" in offer.words
    assert not faults(offer.words)
    taken = outcome({"change.measured": f"{offer.text} {offer.unit}"})
    assert not hasattr(taken, "reasons"), "what the button enters is answered"


def test_refusal_shows_no_figure() -> None:
    changes = {"change.target": "6 dKH"}
    seen = view(outcome(changes), NOW, shown_for(changes, UTC))
    assert seen.state == "refused"
    assert seen.figure == seen.second == seen.third == ""
    assert seen.bars == seen.working == ()


@pytest.mark.parametrize("rise", ["0.5 meq/L", "20 ppm as CaCO3", "0.5 mmol/L"])
def test_a_bottle_has_neither_jug_nor_solubility(rise: str) -> None:
    plan = answer({"additive": {"label": {**LABEL, "raises": rise}}})
    codes = {bar.code for bar in view(plan, NOW).bars}
    assert codes == {"daily_rise", "single_dose", "pump_share", "smallest_dose", "ph_rise", "target"}
