"""The Recovery sheet without its widgets: records to a question, the choices by hand, and words that are safe to read."""

from __future__ import annotations

from dataclasses import replace

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import recovery_sheet, recovery_words
from evenwater.screens.recovery_sheet import raw_question, too_high
from tests.engine.asking import known
from tests.screens.lint import faults, strings
from tests.screens.recovering import BEFORE, JUG_RAN_IN, SYSTEM, reading, said, shown


def test_whole_jug_by_hand():
    """16.495 dKH on top of 8; (24.495 - 11) / 0.9 days; the fall of a day is the use alone where nothing is exchanged."""
    view = shown().view
    assert view.state == "answered"
    assert view.headline.replace("\u00a0", " ") == "Alkalinity 24.5 dKH (reckoned from what ran in), to come to 11 dKH."
    hold, exchange, both = view.choices
    assert (hold.name, exchange.name, both.name) == ("hold", "exchange", "both")
    assert hold.takes.replace("\u00a0", " ") == "It takes 15 days."
    assert both.takes.replace("\u00a0", " ").startswith("It takes 124 L (litres) in 11 days.")
    first = hold.rows[0]
    assert (first.parameter, first.unit, first.now, first.low, first.high, first.end) == (
        "Alkalinity",
        "dKH",
        "24.5",
        "11",
        "24.5",
        "11",
    )
    assert (first.moves, first.most) == ("0.9", "1.4")
    assert [row.parameter for row in both.rows] == ["Alkalinity", "Calcium", "Salinity"]
    calcium = both.rows[1]
    assert 410.0 < float(calcium.end) < 420.0
    assert 0.0 < float(calcium.moves) < 50.0


def test_nothing_said_shows_nothing_but_what_comes_first():
    view = recovery_sheet.evaluate(replace(JUG_RAN_IN, recovery={}), known(), shown().answer.question.now).view  # type: ignore[union-attr]
    assert (view.state, view.choices, view.messages) == ("empty", (), ())
    assert [short for short, _ in recovery_sheet.stop_list()][:2] == [
        "Pump off. Pull its plug.",
        "Line out of the jug.",
    ]


def test_unlikely_reading_of_what_is_too_high_counts_as_tested_since():
    high = replace(JUG_RAN_IN, tested={**BEFORE, "alkalinity": reading("alkalinity", "23", "dKH")})
    view = shown(high, parameter="alkalinity").view
    assert view.headline.replace("\u00a0", " ").startswith("Alkalinity 23 dKH (as tested)")


def test_unlikely_reading_of_another_value_is_left_out_and_said():
    odd = replace(JUG_RAN_IN, tested={**BEFORE, "calcium": reading("calcium", "42", "mg/L")})
    raw, names = raw_question(said(odd, parameter="alkalinity"), known())
    assert names == ("calcium",)
    assert "calcium" not in raw["system"]
    assert "calcium is not likely" in shown(odd, parameter="alkalinity").view.notes[0]


def test_value_that_is_only_too_high_needs_no_jug():
    alone = replace(JUG_RAN_IN, recovery={}, tested={**BEFORE, "alkalinity": reading("alkalinity", "13", "dKH")})
    view = shown(alone, parameter="alkalinity").view
    assert view.headline.replace("\u00a0", " ") == "Alkalinity 13 dKH (as tested), to come to 11 dKH."
    assert view.handling == ()


def test_held_and_signs_reach_the_question():
    raw, _ = raw_question(said(hold_calcium="yes", cloudy="yes", most_per_day="9 L per day"), known())
    assert raw["hold"] == {"calcium": Typed("yes")}
    assert raw["signs"] == {"cloudy": Typed("yes")}
    assert raw["exchange"] == {"most_per_day": Typed("9 L per day")}
    view = shown(hold_calcium="yes", cloudy="yes").view
    assert "calcium" in view.held
    assert view.dangers[0].startswith("Seen: cloudy water")
    assert {choice.state for choice in view.choices if choice.proposed} == {recovery_words.AFTER_TEST}


def test_mistakes_and_gaps_carry_their_field():
    asked = shown(ran_in="1,250 mL").view
    assert (asked.state, asked.messages[0].path) == ("refused", "overdose.volume")
    empty = shown(replace(JUG_RAN_IN, batch={})).view
    assert empty.state == "empty"
    assert any("the chemical" in m.text for m in empty.messages)
    low = shown(measured="9 dKH").view
    assert (low.state, low.messages[0].path) == ("refused", "change.measured")


def test_choice_that_is_not_proposed_says_why_and_gives_no_figure():
    hold = shown(replace(JUG_RAN_IN, uses={})).view.choices[0]
    assert not hold.proposed
    assert (hold.takes, hold.rows, hold.lines) == ("", (), ())
    assert "not known" in hold.reasons[0]


@pytest.mark.parametrize(
    ("codes", "text", "high"),
    [
        ({"target_below_measured"}, "9", True), ({"implausible"}, "24", True), ({"implausible"}, "1.2", False), ({"target_outside"}, "9", False),
        (set(), "24", False),
    ],
)  # fmt: skip
def test_only_what_is_too_high_leads_from_a_correction(codes: set[str], text: str, high: bool):
    assert too_high(codes, Typed(text, "dKH"), known().parameters["alkalinity"], SYSTEM) is high


@pytest.mark.parametrize(
    "changes", [{}, {"cloudy": "yes"}, {"measured": "20 dKH"}, {"hold_calcium": "yes"}, {"most_per_day": "1 L per day"}]
)
def test_every_word_is_safe_to_read(changes: dict[str, str]):
    for text in strings(shown(**changes).view):
        assert not faults(text), text
        assert "None" not in text
