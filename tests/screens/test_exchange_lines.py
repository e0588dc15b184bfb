"""What is said of an exchange: every reason has a sentence with its figures, and every line is safe to read."""

from __future__ import annotations

import pytest

from evenwater.engine.exchange import ExchangeAnswer, solve
from evenwater.engine.reasons import Reason
from evenwater.screens import exchange_lines, exchange_words, words
from tests.engine.exchanges import MIXING, SODA, answer, random_system, reasons
from tests.screens.lint import faults
from tests.screens.test_sentences import check as is_safe

ALKALINITY = {"parameter": "alkalinity", "now": "9 dKH", "new_water": "7 dKH"}
NITRATE = {"parameter": "nitrate", "now": "5 mg/L as NO3"}
PAIR = {"out": "10 L per day", "in": "9.8 L per day"}
STILL = {"per_day": "0 L per day"}
SALINITY = {"net_volume": "340 L", "salinity": "35"}
PRODUCED: dict[str, tuple[tuple[Reason, ...], list[str]]] = {
    "exchange_disagrees": ((Reason("exchange_disagrees", {"what": ("calcium", "nitrate")}),), ["calcium, nitrate"]),
    "exchange_fed": (
        reasons(food=[{"name": "Mash", "per_day": "10 mL per day", "nitrogen": "5 mg/mL"}]),
        ["What is fed (Mash)", "the most it can bring"],
    ),
    "exchange_value_twice": (reasons(value=[ALKALINITY, ALKALINITY]), ["Alkalinity", "twice"]),
    "exchange_dose_of_none": (
        reasons(dose=[{"parameter": "calcium", "after_days": "1", "raises": "1 mg/L"}]), ["Calcium"],
    ),
    "exchange_dose_too_late": (
        reasons(dose=[{"parameter": "alkalinity", "after_days": "31", "raises": "1 dKH"}]), ["30 days"],
    ),
    "exchange_floods": (reasons(exchange={"out": "10 L per day", "in": "15 L per day"}), ["1 L", "runs over"]),
    "exchange_mix_of_fresh": (reasons(new_water={"salinity": "0"}, mixing=MIXING), ["needs no salt mix"]),
    "exchange_nothing_out": (reasons(exchange=STILL), ["No old water"]),
    "exchange_pair_apart": (reasons(exchange=PAIR), ["34.3", "35", "98.6 % to 101.4 %", "it is 98 %"]),
    "exchange_may_flood": (
        reasons(exchange={"out": "10 L per day", "in": "10.1 L per day"}, system={"net_volume": "340 L"}),
        ["100 mL", "evaporat"],
    ),
    "exchange_top_off_more": (reasons(exchange=PAIR), ["200 mL", "Top-off"]),
    "exchange_salinity_apart": (reasons(new_water={"salinity": "33"}), ["33", "35", "within 1"]),
    "exchange_temperature_apart": (reasons(new_water={"temperature": "20 degC"}), ["20 °C", "25 °C", "within 2 °C"]),
    "exchange_rise_too_fast": (
        reasons(exchange={"per_day": "170 L per day"}, value=[{**ALKALINITY, "new_water": "14 dKH"}]),
        ["1.97 dKH", "1.4 dKH"],
    ),
    "exchange_rise_fast": (
        reasons(exchange={"per_day": "90 L per day"}, value=[{**ALKALINITY, "new_water": "14 dKH"}]),
        ["1.16 dKH", "1 dKH"],
    ),
    "exchange_fall_too_fast": (
        reasons(exchange={"per_day": "340 L per day"}, value=[{**ALKALINITY, "new_water": "6 dKH"}]),
        ["1.9 dKH", "1.4 dKH"],
    ),
    "exchange_fall_fast": (
        reasons(exchange={"per_day": "170 L per day"}, value=[{**ALKALINITY, "new_water": "6 dKH"}]),
        ["1.18 dKH", "1 dKH"],
    ),
    "exchange_alkalinity_apart": (reasons(value=[{**ALKALINITY, "new_water": "12 dKH"}]), ["12 dKH", "9 dKH", "2.8 dKH"]),
    "exchange_runs_out": (
        reasons(exchange=STILL, value=[{**ALKALINITY, "daily_use": "1 dKH per day"}]), ["alkalinity", "9 days"],
    ),
    "exchange_never_settles": (
        reasons(exchange=STILL, value=[{**NITRATE, "daily_addition": "0.5 mg/L as NO3 per day"}]), ["Nitrate never"],
    ),
    "exchange_settles_outside": (
        reasons(value=[{**ALKALINITY, "new_water": "6 dKH"}]), ["6 dKH", "7 dKH to 11 dKH"],
    ),
    "exchange_new_water_assumed": (reasons(value=[{"parameter": "calcium", "now": "430 mg/L"}]), ["422 mg per L"]),
    "exchange_brings_too_much": (reasons(value=[{**ALKALINITY, "new_water": "11 dKH", "additive": SODA}]), ["brings more"]),
    "exchange_test_the_bucket": (reasons(mixing=MIXING), ["Test the bucket"]),
    "exchange_salt_alone": (reasons(mixing={**MIXING, "measured": "33"}), ["2 short", "1 at most"]),
}  # fmt: skip


def lines(found: ExchangeAnswer) -> list[str]:
    return list(exchange_lines._lines(found))


def test_every_code_of_an_exchange_is_produced_below() -> None:
    assert PRODUCED.keys() == exchange_words.SENTENCES.keys()


@pytest.mark.parametrize("code", PRODUCED)
def test_sentence_holds_its_figures(code: str) -> None:
    found, fragments = PRODUCED[code]
    by_code = {reason.code: reason for reason in found}
    assert code in by_code, by_code.keys()
    is_safe(words.sentence(by_code[code]), fragments)


@pytest.mark.parametrize("seed", range(8))
def test_every_line_is_safe_to_read(seed: int) -> None:
    found = solve(random_system(seed))
    assert isinstance(found, ExchangeAnswer)
    assert not [fault for line in lines(found) for fault in faults(line)]


@pytest.mark.parametrize("measured", [None, "34.6", "35.7", "35"])
def test_lines_of_dosing_and_bucket_are_safe_to_read(measured: str | None) -> None:
    mixing = MIXING if measured is None else {**MIXING, "measured": measured}
    jugs = {"out": "10 L per day", "in": "9.8 L per day", "old_jug": "60 L", "new_jug": "60 L"}
    value = {**ALKALINITY, "daily_use": "0.9 dKH per day", "additive": SODA}
    said = lines(answer(exchange=jugs, value=[value], mixing=mixing))
    assert not [fault for line in said for fault in faults(line)]
    text = "\n".join(said)
    assert said[0].startswith("Caution: ")
    assert ("of sodium chloride" in text) is (measured == "34.6")
    assert ("of fresh water." in text) is (measured == "35.7")
    assert exchange_words.LABEL_ONLY in text


def test_less_is_dosed_where_the_new_water_carries_more() -> None:
    value = {**ALKALINITY, "new_water": "10 dKH", "daily_use": "0.9 dKH per day", "additive": SODA}
    assert any("a day less." in line for line in lines(answer(value=[value])))


@pytest.mark.parametrize(
    ("low", "high", "said"),
    [(0.98571, 1.01429, "98.6 % to 101.4 %"), (0.9, 1.1, "90 % to 110 %"), (0.98501, 1.0, "98.6 % to 100 %")],
)
def test_band_is_rounded_inwards(low: float, high: float, said: str) -> None:
    assert exchange_words.between(low, high).replace("\u00a0", " ") == said
