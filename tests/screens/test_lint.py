"""The lint itself: it sees each fault, and lets good words pass."""

from __future__ import annotations

import pytest

from tests.screens.lint import NBSP, RULES, faults

BAD = {
    "L1 trailing zero": [f"5.0{NBSP}mL", f"0.50{NBSP}mL", f"10,0{NBSP}mL"],
    "L2 no leading zero": [f".5{NBSP}mL", f"give ,5{NBSP}mL"],
    "L3 ordinary space before a unit": ["5 mL", "at 20 °C", "94.5 % pure"],
    "L3 no space before a unit": ["5mL", "in 6h", "20%"],
    "L3 more than one space": [f"5{NBSP} mL", "one  two"],
    "L4 unit misspelt": [f"5{NBSP}ml", f"5{NBSP}l", f"5{NBSP}cc"],
    "L4 micro sign": [f"5{NBSP}µg"],
    "L5 error-prone sign": ["mL/h", "salt & water", "<5", "~5", "+5"],
    "L6 exponent": [f"1.2e6{NBSP}mL", f"1E-5{NBSP}mL"],
    "L6 group separator": [f"1,250{NBSP}mL", f"1 250{NBSP}mL"],
    "L7 decimal comma": [f"0,5{NBSP}mL"],
    "L7 not a number": [f"nan{NBSP}mL", f"inf{NBSP}mL"],
    "exclamation mark": ["Stop!"],
    "plain minus": [f"-5{NBSP}mL"],
}


def test_every_rule_has_a_bad_example() -> None:
    assert BAD.keys() == RULES.keys()


@pytest.mark.parametrize(("rule", "text"), [(rule, text) for rule, texts in BAD.items() for text in texts])
def test_a_fault_is_seen(rule: str, text: str) -> None:
    assert f"{rule}: {text!r}" in faults(text)


def test_four_digits_are_a_fault_in_a_dose_only() -> None:
    assert faults(f"1250{NBSP}mL", dose=True)
    assert not faults(f"1250{NBSP}mL")
    assert not faults(f"1.25{NBSP}L (litres), 364.0408{NBSP}L", dose=True)
    assert not faults(f"at 9000{NBSP}mL per min", dose=True)


def test_digits_of_other_scripts_are_a_fault() -> None:
    assert faults("٥ mL")


@pytest.mark.parametrize(
    "text",
    [
        f"4.7{NBSP}mL every hour (11.7{NBSP}s) · 112.8{NBSP}mL in 24 hours",
        f"1.0264{NBSP}SG 25/25 °C",
        f"1{NBSP}day 15{NBSP}h, until Friday 00:00",
        "“1,250 L” can be read in two ways: 1.25\u00a0L or 1250\u00a0L.",
        f"150{NBSP}ppm as CaCO3 less 120{NBSP}ppm as CaCO3",
        "Warning: H319 causes serious eye irritation.",
        "Issued Wed 25 Nov 2026 09:00",
        f"A dose of 0.05{NBSP}mL",
    ],
)
def test_good_words_pass(text: str) -> None:
    assert not faults(text)
