"""Every reason the engine can give has a sentence, with its figures, in words that are safe to read."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from datetime import timedelta
from functools import cache
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

import evenwater.engine
from evenwater.engine import intake, recipe, stock_intake
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import StockQuestion
from evenwater.screens import (
    calibration_words,
    consumption_words,
    exchange_words,
    foods_words,
    jug_words,
    recovery_words,
    timetable_words,
    together_words,
    upkeep_words,
    words,
)
from evenwater.screens.field_words import FIELD_WORDS
from tests.screens.asked import BASE, LABEL, NOW, answer, catalogue, outcome, shown_for
from tests.screens.lint import faults

ENGINE = Path(evenwater.engine.__file__).parent
# A limit is only ever spoken of when it forbids a plan; the daily rise never does, since a rise of nothing is refused
# before (rise_not_positive).
NEVER_FORBIDS = {"daily_rise"}


def constants(node: ast.expr | None) -> Iterator[str]:
    """Yield the texts that an expression can be."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from constants(node.body)
        yield from constants(node.orelse)


@cache
def codes() -> frozenset[str]:
    """Return every code that the engine's source can put into a reason."""
    found: set[str] = set()
    for file in sorted(ENGINE.glob("*.py")):
        tree = ast.parse(file.read_text(encoding="utf-8"))
        local = {
            target.id: node.value
            for node in ast.walk(tree)
            if isinstance(node, ast.Assign)
            for target in node.targets
            if isinstance(target, ast.Name)
        }
        returned = {
            function.name: [n.value for n in ast.walk(function) if isinstance(n, ast.Return)]
            for function in ast.walk(tree)
            if isinstance(function, ast.FunctionDef)
        }
        for call in ast.walk(tree):
            if not (
                isinstance(call, ast.Call) and isinstance(call.func, ast.Name) and call.func.id in ("Reason", "_wrong")
            ):
                continue
            first = call.args[0]
            if isinstance(first, ast.Name):
                first = local.get(first.id, first)
            of_function = isinstance(first, ast.Call) and isinstance(first.func, ast.Name)
            nodes = returned[first.func.id] if of_function else [first]
            named = {text for node in nodes for text in constants(node)}
            if file.name in ("caps.py", "water_limits.py"):
                named = {f"{code}_forbids" for code in named - NEVER_FORBIDS}
            found |= named
    return frozenset(found)


def test_the_walk_over_the_source_finds_codes_of_every_shape() -> None:
    assert len(codes()) > 45
    assert {
        "too_slow",
        "two_marks",
        "which_hydrate",
        "unknown_chemical",
        "single_dose_forbids",
        "whole_jug_harms",
    } <= codes()


def test_every_code_has_a_sentence() -> None:
    assert not {code for code in codes() if not words.known(code)}


LIMEWATER: dict[str, Any] = {
    "additive": {"chemical": "calcium hydroxide", "made_up_to": "20 L", "saturated": True},
    "pump.flow": "50 mL/min", "pump.smallest_dose": None,
}  # fmt: skip
STRONG_BASE: dict[str, Any] = {
    "additive.chemical": "sodium hydroxide", "change.fastest_rise": "1.3 dKH per day", "change.reason": "moving",
}  # fmt: skip

# code: (what is asked differently, what the sentence must hold)
PRODUCED: dict[str, tuple[dict[str, Any], list[str]]] = {
    "missing": ({"change.measured": None}, ["reading"]),
    "not_a_number": ({"system.net_volume": "much"}, ["“much”"]),
    "grouped_digits": ({"system.net_volume": "1 250 L"}, ["“1 250 L”"]),
    "two_marks": ({"system.net_volume": "1.250.0 L"}, ["“1.250.0 L”"]),
    "ends_with_mark": ({"system.net_volume": "340, L"}, ["“340, L”"]),
    "plus_sign": ({"system.net_volume": "+340 L"}, ["plus"]),
    "number_too_long": ({"system.net_volume": f"340.{'0' * 40}1 L"}, ["40"]),
    "two_readings": ({"system.net_volume": "1,250 L"}, ["1.25 L", "1250 L"]),
    "not_whole": ({"pump.doses_per_day": "2.5"}, ["“2.5”"]),
    "out_of_range": ({"system.net_volume": "6000000 L"}, ["6000000 L", "5000000 L"]),
    "unit_missing": ({"system.net_volume": "340"}, ["US gal"]),
    "bare_gallon": ({"system.net_volume": "90 gal"}, ["3.785", "4.546"]),
    "bare_gravity": ({"change.parameter": "salinity", "change.measured": "1.025 SG"}, ["SG 25/25", "SG 60/60"]),
    "as_what": ({"change.parameter": "nitrate", "change.measured": "2 mg/L"}, ["mg per L as NO3", "mg per L as N"]),
    "unknown_unit": ({"system.net_volume": "340 buckets"}, ["“buckets”", "US gal"]),
    "not_text": ({"system.net_volume": 340.5}, ["340.5"]),
    "not_a_time": ({"change.measured_at": "noon"}, ["“noon”"]),
    "time_without_zone": ({"change.measured_at": NOW.replace(tzinfo=None)}, ["2026-11-25"]),
    "unknown_parameter": ({"change.parameter": "hardness"}, ["“hardness”", "alkalinity"]),
    "unknown_choice": ({"system.volume_known": "by ear"}, ["“by ear”", "dimensions"]),
    "which_hydrate": ({"additive.chemical": "calcium chloride"}, ["calcium chloride dihydrate"]),
    "unknown_chemical": ({"additive.chemical": "moon dust"}, ["“moon dust”"]),
    "implausible": ({"change.measured": "140 dKH"}, ["140 dKH", "140 ppm as CaCO3", "7.84 dKH"]),
    "reading_in_the_future": ({"change.measured_at": NOW + timedelta(hours=2)}, ["Wed 25 Nov", "12:00"]),
    "reading_stale": ({"change.measured_at": NOW - timedelta(days=3.4)}, ["3.4 days", "3 days"]),
    "target_outside": ({"change.target": "15 dKH"}, ["15 dKH", "4 dKH", "14 dKH"]),
    "target_below_measured": ({"change.target": "6 dKH"}, ["6 dKH"]),
    "target_reached": ({"change.target": "6.8 dKH"}, ["6.8 dKH"]),
    "untested_reaches": ({"change.untested": "1.7 dKH"}, ["1.7 dKH", "8.4 dKH", "alkalinity"]),
    "untested_unknown": ({"change.untested": "0.4 dKH", "system.volume_known": "unknown"}, ["alkalinity"]),
    "untested_counted": ({"change.untested": "0.4 dKH"}, ["0.4 dKH", "7.2 dKH"]),
    "given_lately_forbids": ({"change.raised_lately": "1.4 dKH"}, ["1.4 dKH", "24 hours"]),
    "rise_not_positive": ({"change.fastest_rise": "0 dKH per day"}, ["more than zero"]),
    "rise_beyond_hard": ({"change.fastest_rise": "2 dKH per day"}, ["2 dKH", "1.4 dKH", "1 dKH"]),
    "rise_needs_reason": ({"change.fastest_rise": "1.2 dKH per day"}, ["1.2 dKH", "1 dKH"]),
    "does_not_raise": ({"additive.chemical": "potassium iodide"}, ["Potassium iodide", "alkalinity"]),
    "does_not_dissolve": ({"additive.dissolved": "400 g"}, ["400 g", "20 °C", "214 g"]),
    "single_dose_forbids": ({"pump.doses_per_day": 2}, ["0.35 dKH", "2 doses"]),
    "pump_share_forbids": ({"pump.flow": "0.05 mL/min"}, ["36 mL", "54.5 mL"]),
    "too_slow": ({"change.fastest_rise": "0.001 dKH per day"}, ["1600 days", "365 days"]),
    "step_too_coarse": ({"pump.step": "50 mL"}, ["4.79 mL", "50 mL"]),
    "dose_below_smallest": ({"pump.smallest_dose": "20 mL"}, ["4.7 mL", "20 mL", "5 doses"]),
    "beyond_recommended": ({"change.fastest_rise": "1.2 dKH per day", "change.reason": "moving"}, ["1 dKH", "moving"]),
    "age_unknown": ({"change.measured_at": None}, ["3 days"]),
    "low_end_volume": ({"system.volume_known": "unknown", "system.volume_uncertainty": None}, ["255 L"]),
    "water_assumed": (
        {"change.parameter": "calcium", "change.measured": "380 mg/kg", "change.target": "400 mg/kg",
         "change.daily_use": None, "additive.chemical": "calcium chloride dihydrate", "system.salinity": None},
        ["35", "25"],
    ),
    "target_above_range": ({"change.measured": "10.8 dKH", "change.target": "11.5 dKH"}, ["11 dKH"]),
    "jug_too_small": ({"additive.made_up_to": "100 mL", "additive.dissolved": "10.6 g"}, ["100 mL", "183"]),
    "nearly_saturated": ({"additive.dissolved": "210 g"}, ["210", "214"]),
    "raises_too": (
        {"additive.chemical": "calcium hydroxide", "additive.dissolved": "1 g", "pump.flow": "100 mL/min"},
        ["calcium", "7.1"],
    ),
    "restricted": ({"additive.chemical": "sodium hydroxide"}, ["Sodium hydroxide"]),
    "rounding_large": ({"pump.step": "1 mL"}, ["1 mL", "times"]),
    "dose_tiny": (
        {"pump.smallest_dose": None, "pump.step": None, "system.net_volume": "1 L", "pump.doses_per_day": 96}, ["0.003"],
    ),
    "upkeep_too_small": ({"change.daily_use": "0.1 dKH per day"}, ["6.0"]),
    "no_use": ({"change.daily_use": None}, ["Alkalinity"]),
    "whole_jug_harms": ({}, ["23.3 dKH", "14 dKH"]),
    "never_in_one_jug": (
        {"additive.also": {"chemical": "calcium chloride dihydrate", "dissolved": "1 g"}},
        ["Sodium carbonate anhydrous and calcium chloride dihydrate"],
    ),
    "same_chemical": (
        {"additive.also": {"chemical": "sodium carbonate anhydrous", "dissolved": "1 g"}}, ["Sodium carbonate anhydrous"],
    ),
    "not_limewater": ({"additive.saturated": True}, ["sodium carbonate anhydrous"]),
    "ph_assumed": ({}, ["8.1"]),
    "bottle_like_hydroxide": ({"additive": {"label": LABEL}}, ["hydroxide"]),
    "ph_above_afterwards": (
        {"system.ph": "8.5", "additive.chemical": "sodium bicarbonate", "additive.dissolved": "80 g"}, ["8.57", "above the 8.5"],
    ),
    "ph_rise_forbids": (
        {**STRONG_BASE, "pump.doses_per_day": 2, "change.daily_use": "1.3 dKH per day"}, ["0.2", "doses a day"],
    ),
    "ph_ceiling_forbids": ({"system.ph": "8.45"}, ["8.45 now", "8.52 at the target", "8.5."]),
    "saturation_forbids": (
        {"system.ph": "8.4", "system.calcium": "550 mg/L", "change.measured": "12 dKH", "change.target": "13.8 dKH"},
        ["11.9 now", "14.8 at the target", "10 calcium"],
    ),
    "evaporation_forbids": ({**LIMEWATER, "system.evaporation": "1 L per day"}, ["2.59 L", "1 L (litres) evaporate"]),
    "evaporation_unknown": (LIMEWATER, ["5.46 L"]),
}  # fmt: skip
# What only a question about a stock can bring up.
OF_A_STOCK: dict[str, tuple[dict[str, Any], list[str]]] = {
    "no_balance": (
        {"additive": {"chemical": "magnesium sulfate heptahydrate", "made_up_to": "1 L", "also": {"chemical": "potassium chloride"}},
         "wanted": {"strength": "10000 mg/L"}},
        ["Magnesium sulfate heptahydrate and potassium chloride", "Take magnesium chloride and magnesium sulfate."],
    ),
    "limewater": (
        {"temperature": "10 degC", "additive": {"chemical": "calcium hydroxide", "made_up_to": "10 L", "saturated": True}},
        ["1.66 g in a litre at 10 °C"],
    ),
    "no_pair": (
        {"additive": {"chemical": "calcium hydroxide", "made_up_to": "1 L"},
         "wanted": {"partner": {"chemical": "sodium bicarbonate", "dissolved": "50 g", "made_up_to": "1 L"}}},
        ["Calcium hydroxide", "sodium bicarbonate"],
    ),
}  # fmt: skip
# The second reckoning cannot be made to disagree from outside; a side effect forbids through the alkalinity of lime; what
# is said of a tank's chemistry answers questions of another kind.
BY_HAND = {
    "check_disagrees": (Reason("check_disagrees", {"what": ("end",), "end_value": 3.0, "planned": 2.9}), ["report"]),
    "impossible_water": (Reason("impossible_water", {"ph": 10.0}, "system.ph"), ["10", "scale"]),
    "may_precipitate": (Reason("may_precipitate", {"saturation": 9.27, "most": 7.0}), ["9.27", "above 7"]),
    "calcium_assumed": (Reason("calcium_assumed", {"calcium": 421.2}), ["421 mg per L"]),
    "constants_extrapolated": (Reason("constants_extrapolated", {"salinity": 10.0, "degc": 7.5}), ["10", "7.5 °C"]),
    "also_raises_forbids": (Reason("also_raises_forbids", {"other": "calcium", "hard": 50.0}), ["calcium"]),
}


def reasons(changes: dict[str, Any]) -> list[Reason]:
    result = outcome(changes)
    if isinstance(result, intake.Unread):
        return list(result.reasons)
    return list(result.remarks if isinstance(result, Answer) else result.reasons)


def test_every_code_is_produced_below() -> None:
    # Those of an upkeep are produced in test_upkeep, and so on.
    elsewhere = upkeep_words.SENTENCES.keys() | consumption_words.SENTENCES.keys() | consumption_words.OF_VALUES.keys()
    elsewhere |= exchange_words.SENTENCES.keys() | recovery_words.SENTENCES.keys()
    elsewhere |= foods_words.SENTENCES.keys() | together_words.SENTENCES.keys()
    elsewhere |= calibration_words.SENTENCES.keys() | jug_words.SENTENCES.keys() | timetable_words.SENTENCES.keys()
    assert PRODUCED.keys() | OF_A_STOCK.keys() | BY_HAND.keys() == codes() - elsewhere


@pytest.mark.parametrize("code", PRODUCED)
def test_sentence_holds_its_figures(code: str) -> None:
    changes, fragments = PRODUCED[code]
    found = {reason.code: reason for reason in reasons(changes)}
    assert code in found
    readable = not isinstance(outcome(changes), intake.Unread)
    shown = shown_for(changes, ZoneInfo("Europe/Berlin")) if readable else None
    check(words.sentence(found[code], shown), fragments)


@pytest.mark.parametrize("code", OF_A_STOCK)
def test_sentence_about_a_stock_holds_its_figures(code: str) -> None:
    raw, fragments = OF_A_STOCK[code]
    question = stock_intake.stock(raw, catalogue())
    assert isinstance(question, StockQuestion), question
    result = recipe.solve(question)
    found = {reason.code: reason for reason in (result.reasons if isinstance(result, Refused) else result.remarks)}
    assert code in found
    check(words.sentence(found[code]), fragments)


@pytest.mark.parametrize("code", BY_HAND)
def test_sentence_of_what_cannot_be_asked_for(code: str) -> None:
    reason, fragments = BY_HAND[code]
    check(words.sentence(reason, shown_for({})), fragments)


def check(sentence: str, fragments: list[str]) -> None:
    plain = sentence.replace("\u00a0", " ")
    assert all(fragment in plain for fragment in fragments), plain
    # pH is a symbol, which no sentence capitalises.
    assert plain[0].isupper() or plain[0] in "“0123456789-" or plain.startswith("pH ")
    assert plain[-1] in ".?"
    without_time = plain.replace("2026-11-25T08:00:00+00:00", "")
    assert not [
        fault for fault in faults(sentence.replace("2026-11-25T08:00:00+00:00", "")) if not fault.startswith("L6 group")
    ]
    assert "None" not in without_time
    assert "{" not in without_time


@pytest.mark.parametrize("parameter", ["calcium", "nitrate", "salinity"])
def test_sentences_speak_in_the_unit_of_the_keeper(parameter: str) -> None:
    unit, low, high = {
        "calcium": ("mg/kg", 380, 700), "nitrate": ("mg/L as N", 1, 40), "salinity": ("SG 20/20 degC", 1.024, 1.032),
    }[parameter]  # fmt: skip
    changes = {
        "change.parameter": parameter,
        "change.measured": f"{low:.4f} {unit}",
        "change.target": f"{high:.4f} {unit}",
        "change.daily_use": None,
    }
    changes["additive.chemical"] = {
        "calcium": "calcium chloride dihydrate", "nitrate": "sodium nitrate", "salinity": "sodium chloride",
    }[parameter]  # fmt: skip
    (reason,) = reasons(changes)
    assert reason.code == "target_outside"
    assert words.sentence(reason, shown_for(changes)).count(words.unit_words(unit)) == 3


def test_reason_about_values_needs_the_unit() -> None:
    (reason,) = reasons({"change.target": "15 dKH"})
    with pytest.raises(KeyError):
        words.sentence(reason)


def test_advice_to_dose_less_often_is_answered_when_it_is_followed() -> None:
    (reason,) = reasons(PRODUCED["dose_below_smallest"][0])
    most = reason.params["most_doses"]
    assert answer({**PRODUCED["dose_below_smallest"][0], "pump.doses_per_day": most}).doses.dose_ml >= 20.0


# Lye that lifts pH too far in each of these numbers of doses, and what is then advised about them.
@pytest.mark.parametrize(
    ("changes", "doses", "advice"),
    [
        ({**STRONG_BASE, "change.daily_use": "1.3 dKH per day"}, 2, "Choose more doses a day."),
        ({"additive.chemical": "sodium hydroxide", "change.daily_use": "7 dKH per day"}, 30, "Choose 24 doses a day."),
        ({**STRONG_BASE, "change.daily_use": "10 dKH per day"}, 24, ""),
        ({**STRONG_BASE, "change.daily_use": "10 dKH per day"}, 48, ""),
        (
            {"additive.chemical": "sodium hydroxide", "system.ph": "8.42", "change.target": "7.0 dKH"},
            4,
            "Choose more doses a day.",
        ),
    ],
)
def test_advice_about_ph_is_answered_when_it_is_followed(changes: dict[str, Any], doses: int, advice: str) -> None:
    changes = {**changes, "pump.flow": "500 mL/min", "pump.smallest_dose": None}
    (reason,) = reasons({**changes, "pump.doses_per_day": doses})
    assert reason.code in ("ph_rise_forbids", "ph_ceiling_forbids")
    said = words.sentence(reason, shown_for(changes))
    assert advice in said
    if advice:
        assert answer({**changes, "pump.doses_per_day": 24}).doses.dose_ml > 0.0
    else:
        assert "doses a day" not in said
    bicarbonate = {
        "additive.chemical": "sodium bicarbonate",
        "additive.dissolved": "80 g",
        "additive.made_up_to": "1 L",
    }
    assert "odium bicarbonate" in said
    assert answer({**changes, **bicarbonate, "pump.doses_per_day": max(doses, 24)}).doses.dose_ml > 0.0


@pytest.mark.parametrize(("ph", "helps"), [("8.35", True), ("8.4", False)])
def test_advice_about_saturation_is_answered_when_it_is_followed(ph: str, helps: bool) -> None:
    """Smaller doses help where the water itself lies below the ceiling; else only a nearer target would."""
    changes = {
        "system.ph": ph, "system.calcium": "500 mg/L", "change.measured": "11 dKH", "change.target": "11.2 dKH",
        "change.daily_use": "0.6 dKH per day", "change.reason": "moving",
    }  # fmt: skip
    (reason,) = reasons({**changes, "pump.doses_per_day": 1})
    assert reason.code == "saturation_forbids"
    said = words.sentence(reason, shown_for(changes))
    assert ("Choose more doses a day." in said) == helps
    assert "Choose a nearer target." in said
    if helps:
        assert answer({**changes, "pump.doses_per_day": 24}).doses.dose_ml > 0.0
    else:
        assert "saturation_forbids" in {r.code for r in reasons({**changes, "pump.doses_per_day": 24})}


def test_advice_about_the_upkeep_is_answered_when_it_is_followed() -> None:
    changes = PRODUCED["upkeep_too_small"][0]
    (reason,) = (r for r in reasons(changes) if r.code == "upkeep_too_small")
    most = reason.params["most_doses"]
    assert f"{most} doses" in words.sentence(reason, shown_for(changes))
    upkeep = answer({**changes, "pump.doses_per_day": most}).doses.upkeep_ml
    assert upkeep >= 0.5
    assert answer(changes).doses.upkeep_ml == 0.0, "nothing is ordered that the pump cannot give"


def test_every_field_of_the_form_has_words() -> None:
    paths = {f"{table}.{name}" for table, entry in BASE.items() if isinstance(entry, dict) for name in entry}
    paths |= {f"additive.label.{name}" for name in LABEL} | {"change.fastest_rise", "change.reason", "additive.purity"}
    assert paths <= FIELD_WORDS.keys()
    assert not [fault for text in FIELD_WORDS.values() for fault in faults(text)]
