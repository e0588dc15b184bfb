"""Figures as a keeper reads them: doses exactly, volumes downwards, spans, intervals."""

from __future__ import annotations

import re
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water, density_kg_per_l, from_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.shown import Shown, about, dose, every, seconds, span, with_unit
from tests.screens.asked import catalogue
from tests.screens.lint import NBSP, faults, millilitres

DOSES = st.one_of(
    st.decimals("0.001", "999999", places=3).map(float),
    st.integers(1, 10**7).map(lambda n: n / 100),
    st.floats(1e-4, 999_999_999.0, allow_nan=False),
)


@given(DOSES)
def test_a_dose_is_written_exactly_and_safely(ml: float) -> None:
    text = dose(ml)
    assert not faults(text, dose=True)
    assert millilitres(text) == Decimal(repr(ml))
    assert text.endswith("(litres)") == (1000.0 <= ml < 1e6)
    assert text.endswith("(cubic metres)") == (ml >= 1e6)


@pytest.mark.parametrize(
    ("ml", "text"),
    [
        (4.7, "4.7 mL"), (5.0, "5 mL"), (0.5, "0.5 mL"), (0.05, "0.05 mL"), (999.9, "999.9 mL"), (1000.0, "1 L (litres)"),
        (1250.0, "1.25 L (litres)"), (0.00058, "0.00058 mL"), (183.3, "183.3 mL"), (100.0, "100 mL"), (1e-5, "0.00001 mL"),
        (999_999.9, "999.9999 L (litres)"), (1e6, "1 m3 (cubic metres)"), (1_558_515.9, "1.5585159 m3 (cubic metres)"),
    ],
)  # fmt: skip
def test_doses(ml: float, text: str) -> None:
    assert dose(ml) == text.replace(" ", NBSP, 1)


@given(DOSES)
def test_about_is_never_more_and_keeps_three_digits(ml: float) -> None:
    text = about(ml)
    assert not faults(text, dose=True)
    assert Decimal(repr(ml)) * Decimal("0.989") <= millilitres(text) <= Decimal(repr(ml)) * (1 + Decimal("1e-9"))


def test_about_nothing() -> None:
    assert about(0.0) == f"0{NBSP}mL"


@given(st.floats(0.001, 86400.0))
def test_running_time_is_never_longer_than_the_pump_must_run(value: float) -> None:
    text = seconds(value)
    assert not faults(text)
    parts = re.findall(rf"([\d.]+){NBSP}(min|s)", text)
    runs = sum(float(number) * {"min": 60.0, "s": 1.0}[unit] for number, unit in parts)
    resolution = 1.0 if value >= 60.0 else 0.1 if value >= 1.0 else 0.1 * value
    assert value - resolution - 1e-6 <= runs <= value + 1e-6
    assert runs > 0.0


@pytest.mark.parametrize(
    ("value", "text"), [(11.75, "11.7 s"), (0.51, "0.51 s"), (59.99, "59.9 s"), (60.0, "1 min"), (143.9, "2 min 23 s")]
)
def test_seconds(value: float, text: str) -> None:
    assert seconds(value).replace(NBSP, " ") == text


@pytest.mark.parametrize(
    ("hours", "text"),
    [
        (0.001, "1 min"), (0.5, "30 min"), (0.9999, "1 h"), (1.0, "1 h"), (1.5, "1 h 30 min"), (23.999, "1 day"), (24.0, "1 day"),
        (25.0, "1 day 1 h"), (38.4, "1 day 14 h"), (48.0, "2 days"), (54.0, "2 days 6 h"), (239.0, "9 days 23 h"),
        (240.0, "10 days"), (24 * 30.4, "30 days"),
    ],
)  # fmt: skip
def test_span(hours: float, text: str) -> None:
    assert span(hours / 24.0).replace(NBSP, " ") == text


@given(st.floats(1e-4, 400.0))
def test_span_is_near_the_time_it_says(days: float) -> None:
    text = span(days)
    assert not faults(text)
    sizes = {"min": 1.0, "h": 60.0, "day": 1440.0, "days": 1440.0}
    said = sum(float(n) * sizes[u] for n, u in re.findall(rf"(\d+){NBSP}(min|h|days?)\b", text))
    minutes = days * 1440.0
    slack = 1.0 if minutes < 1440.0 else 61.0 if minutes < 14400.0 else 721.0
    assert abs(said - minutes) <= slack


@pytest.mark.parametrize(
    ("per_day", "text"),
    [
        (1, "once a day"), (2, "every 12 h"), (3, "every 8 h"), (4, "every 6 h"), (5, "every 4 h 48 min"), (7, "every 3 h 26 min"),
        (24, "every hour"), (48, "every 30 min"), (96, "every 15 min"), (200, "every 8 min"), (1440, "every minute"),
    ],
)  # fmt: skip
def test_every(per_day: int, text: str) -> None:
    assert every(per_day).replace(NBSP, " ") == text


def test_doses_are_never_asked_for_more_often_than_planned() -> None:
    for per_day in range(1, 1441):
        text = every(per_day)
        sizes = {"min": 1, "h": 60}
        minutes = sum(int(n) * sizes[u] for n, u in re.findall(rf"(\d+){NBSP}(min|h)\b", text))
        minutes = minutes or {"once a day": 1440, "every hour": 60, "every minute": 1}[text]
        assert minutes * per_day >= 1440 > (minutes - 1) * per_day, per_day


def test_with_unit_joins_with_one_no_break_space() -> None:
    assert with_unit("5", "mL") == f"5{NBSP}mL"
    assert with_unit("24", "") == "24"


WATER = Water(33.0, 26.0)


@pytest.mark.parametrize("parameter", catalogue().parameters.values(), ids=lambda p: p.name)
def test_values_and_rises_are_in_the_keepers_unit(parameter: Parameter) -> None:
    value = parameter.canonical(sum(parameter.range_kept) / 2)
    for unit in KINDS[parameter.kind].units:
        shown = Shown(parameter, unit.id, WATER)
        assert shown.unit_words == unit.shown
        assert shown.value(value).endswith(f"{NBSP}{unit.shown}")
        digits = 5 if unit.id.startswith("SG") else 3
        said = float(shown.value(value, 3).split(NBSP)[0])
        exact = from_canonical(value, parameter.kind, unit.id, WATER)
        assert said == pytest.approx(exact, rel=5.1 * 10.0**-digits)
        assert not faults(shown.value(value))
        assert not faults(shown.per_day(parameter.canonical(parameter.rise_hard)))
        assert shown.per_day(value).endswith(" per day")


def test_a_rise_of_specific_gravity_is_said_in_ppt() -> None:
    salinity = catalogue().parameters["salinity"]
    assert Shown(salinity, "SG 25/25 degC", WATER).per_day(0.5) == f"0.5{NBSP}ppt per day"


def test_mass_per_kilogram_is_by_the_water_of_the_system() -> None:
    calcium = catalogue().parameters["calcium"]
    assert Shown(calcium, "mg/kg", WATER).number(420.0) == pytest.approx(420.0 / density_kg_per_l(WATER))
