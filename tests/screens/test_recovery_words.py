"""Every sentence about a value that is too high is produced here, with its figures, in words that are safe to read."""

from __future__ import annotations

from typing import Any

import pytest

from evenwater.engine import recovery, recovery_intake
from evenwater.engine.reasons import Reason
from evenwater.engine.recovery import STOP, RecoveryAnswer
from evenwater.engine.recovery_question import RecoveryQuestion
from evenwater.screens import recovery_lines, recovery_words, words
from tests.engine.asking import NOW, known
from tests.engine.recoveries import answer, worked
from tests.screens.lint import faults

# What is changed in the worked case, and what the sentence says then.
ASKED: dict[str, tuple[dict[str, Any], list[str]]] = {
    "recovery_target_outside": ({"change__target": "3 dKH"}, ["3 dKH", "4 dKH to 14 dKH"]),
    "recovery_not_high": ({"change__measured": "10 dKH"}, ["10 dKH", "11 dKH"]),
    "recovery_implausible": (
        {"new_water__calcium": "4 mg/L"},
        ["4 mg per L", "new water", "150 mg per L to 800 mg per L"],
    ),
    "recovery_new_water_outside": (
        {"new_water__calcium": "560 mg/L"},
        ["560 mg per L", "300 mg per L to 550 mg per L"],
    ),
    "recovery_volume": ({"system__volume_uncertainty": "10 %"}, ["306 L (litres) to 374 L (litres)"]),
    "recovery_ph_not_followed": ({}, ["pH"]),
    "recovery_raises_nothing": (
        {"additive__chemical": "boric acid", "change__parameter": "alkalinity"},
        ["Stop the pump"],
    ),
    "recovery_no_use": ({"use": None}, ["alkalinity"]),
    "recovery_use_too_fast": ({"use__alkalinity": "1.5 dKH per day"}, ["1.5 dKH per day", "1.4 dKH per day"]),
    "recovery_new_water_unknown": ({"new_water": None}, ["alkalinity"]),
    "recovery_new_water_too_high": ({"new_water__alkalinity": "12 dKH"}, ["12 dKH", "11 dKH"]),
    "recovery_falls_too_low": (
        {"hold__calcium": True, "use__calcium": "10 mg/L per day"},
        ["Calcium", "270 mg per L", "300 mg per L"],
    ),
    "recovery_rises_too_high": ({"new_water__calcium": "790 mg/L"}, ["Calcium", "550 mg per L"]),
    "recovery_too_long": ({"use__alkalinity": "0.1 dKH per day"}, ["more than 90 days"]),
    "recovery_precipitation_seen": (
        {"signs": {"cloudy": True, "white_film": True}},
        ["cloudy water and a white film", "test"],
    ),
    "recovery_precipitation_likely": ({}, ["44", "above 7", "before anything else"]),
    "recovery_nothing_proposed": ({"use": None, "new_water": None}, ["test every day"]),
    "recovery_less_than_expected": ({"change__measured": "20 dKH"}, ["20 dKH", "24.5 dKH"]),
    "recovery_also_too_high": ({"system__magnesium": "1800 mg/L"}, ["Magnesium", "1800 mg per L", "1700 mg per L"]),
    "recovery_assumed": ({"system__alkalinity": None}, ["alkalinity", "Test it"]),
    "recovery_held_use_unknown": ({"hold__calcium": True, "use__calcium": None}, ["calcium"]),
    "recovery_not_followed": ({}, ["potassium, strontium, iodide, nitrate and phosphate"]),
    "recovery_temperature_unknown": ({"new_water__temperature": None}, ["temperature"]),
    "recovery_temperature_differs": ({"new_water__temperature": "18 degC"}, ["18 °C", "25 °C"]),
}
BY_HAND = {
    "recovery_check_disagrees": (
        Reason("recovery_check_disagrees", {"what": ("hold: end of calcium",)}),
        ["hold: end of calcium"],
    ),
}


def reasons(changes: dict[str, Any]) -> list[Reason]:
    question = recovery_intake.recovery(worked(**changes), known(), NOW)
    result = recovery.solve(question) if isinstance(question, RecoveryQuestion) else question
    if not isinstance(result, RecoveryAnswer):
        return list(result.reasons)
    return [*result.remarks, *(reason for each in result.choices for reason in each.reasons)]


def check(sentence: str, fragments: list[str]) -> None:
    plain = sentence.replace("\u00a0", " ")
    assert all(fragment in plain for fragment in fragments), plain
    assert plain[0].isupper()
    assert plain[-1] == "."
    assert not faults(sentence)
    assert "None" not in plain


def test_every_sentence_is_produced_below() -> None:
    assert recovery_words.SENTENCES.keys() == ASKED.keys() | BY_HAND.keys()


@pytest.mark.parametrize("code", ASKED)
def test_sentence_holds_its_figures(code: str) -> None:
    changes, fragments = ASKED[code]
    found = {reason.code: reason for reason in reasons(changes)}
    assert code in found
    check(words.sentence(found[code]), fragments)


@pytest.mark.parametrize("code", BY_HAND)
def test_sentence_of_what_cannot_be_asked_for(code: str) -> None:
    reason, fragments = BY_HAND[code]
    check(words.sentence(reason), fragments)


def test_alkalinity_beyond_all_reckoning_has_no_saturation() -> None:
    (reason,) = (r for r in reasons({"overdose__volume": "20 L"}) if r.code == "recovery_precipitation_likely")
    check(words.sentence(reason), ["Alkalinity is so high"])


def test_values_stand_in_the_unit_they_were_typed_in() -> None:
    (reason,) = (
        r for r in reasons({"change__measured": "400 ppm as CaCO3"}) if r.code == "recovery_less_than_expected"
    )
    check(words.sentence(reason), ["400 ppm as CaCO3", "437 ppm as CaCO3"])


def test_specific_gravity_falls_in_ppt() -> None:
    changes = {
        "overdose": None, "additive": None, "use": {"salinity": "1.5 ppt per day"},
        "change": {"parameter": "salinity", "measured": "1.0300 SG 25/25 degC"},
    }  # fmt: skip
    found = {reason.code: reason for reason in reasons(changes)}
    check(words.sentence(found["recovery_use_too_fast"]), ["1.5 ppt per day", "1 ppt per day"])


def test_every_word_is_safe_to_read() -> None:
    for text in (
        *recovery_words.STOP.values(),
        *recovery_words.SHORT.values(),
        *recovery_words.SHORTEST.values(),
        *recovery_words.CHOICES.values(),
        recovery_words.HELD,
        recovery_words.EXCHANGED,
    ):
        assert not faults(text)
    for words_of in (recovery_words.STOP, recovery_words.SHORT, recovery_words.SHORTEST):
        assert words_of.keys() == set(STOP)


@pytest.mark.parametrize(
    "changes",
    [
        {}, {"system__volume_uncertainty": "25 %"}, {"use": None}, {"new_water": None}, {"change__measured": "12 dKH", "exchange__most_per_day": "9 L per day"}, {"hold__calcium": True},
        {"change__target": "14 dKH", "change__measured": "14.1 dKH"}, {"new_water__salinity": "30", "change__measured": "12 dKH"},
    ],
)  # fmt: skip
def test_every_line_is_safe_to_read(changes: dict[str, Any]) -> None:
    for line in recovery_lines._lines(answer(**changes)):
        assert not [fault for fault in faults(line) if not fault.startswith("L6 group")], line
        assert "None" not in line
