"""What foods carry and bring, reckoned by hand from standard atomic weights; limits, dates, jugs and lines."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date

import pytest

from evenwater.engine import foods_intake, foods_keeping
from evenwater.engine.correction import Refused
from evenwater.engine.foods import FoodsAnswer, most_of, solve
from evenwater.engine.foods_question import (
    Food,
    alkalinity_per_nitrogen,
    nitrate_per_nitrogen,
    oxygen_per_nitrogen,
    phosphate_per_phosphorus,
)
from evenwater.engine.quantities import to_canonical
from evenwater.engine.units import KINDS
from tests.engine.asking import known
from tests.engine.foods import OX, N, P, answer, food, question, reasons, unread


def test_factors_from_standard_atomic_weights() -> None:
    """CIAAW: 62.004 over 14.007 and 94.970 over 30.974; one equivalent and two moles of oxygen for a mole of nitrogen."""
    assert nitrate_per_nitrogen() == pytest.approx((N + 3 * OX) / N, rel=1e-9)
    assert nitrate_per_nitrogen() == pytest.approx(62.005 / 14.007, rel=2e-5)
    assert phosphate_per_phosphorus() == pytest.approx((P + 4 * OX) / P, rel=1e-9)
    assert phosphate_per_phosphorus() == pytest.approx(94.971 / 30.974, rel=2e-5)
    assert alkalinity_per_nitrogen() == pytest.approx(1.0 / 14.007, rel=1e-9)
    assert oxygen_per_nitrogen() == pytest.approx(4 * OX / N, rel=1e-9)


def test_matter_of_redfields_ratio() -> None:
    """16 atoms of nitrogen for one of phosphorus (Redfield 1934, 1958): so nitrate over phosphate by mass is 10.4."""
    redfield = Food("", 1.0, 16.0 * N, P)
    assert redfield.per_ml("nitrate") / redfield.per_ml("phosphate") == pytest.approx(
        16.0 * (N + 3 * OX) / (P + 4 * OX)
    )
    assert redfield.per_ml("nitrate") / redfield.per_ml("phosphate") == pytest.approx(10.446, abs=1e-3)
    assert redfield.per_ml("alkalinity") == pytest.approx(-16.0)


def test_a_mash_by_hand() -> None:
    """10 mL with 5 mg N and 0.05 mg P each, into 340 L."""
    mash = food()
    assert mash.brings("nitrate", 340.0) == pytest.approx(10.0 * 5.0 * (N + 3 * OX) / N / 340.0)
    assert mash.brings("phosphate", 340.0) == pytest.approx(10.0 * 0.05 * (P + 4 * OX) / P / 340.0)
    assert mash.brings("alkalinity", 340.0) == pytest.approx(-10.0 * 5.0 / N / 340.0)
    assert mash.brings("calcium", 340.0) == 0.0


def test_percent_on_the_label() -> None:
    """6.25 g of protein hold 1 g of nitrogen (FAO Food and Nutrition Paper 77, 2003); a millilitre weighs a gram where nobody says more."""
    mash = food(nitrogen=None, phosphorus=None, protein="6.25 %", phosphorus_share="0.1 %")
    assert mash.nitrogen == pytest.approx(10.0)
    assert mash.phosphorus == pytest.approx(1.0)
    dense = food(nitrogen=None, phosphorus=None, protein="6.25 %", density="1.2 g/mL")
    assert dense.nitrogen == pytest.approx(12.0)
    assert dense.phosphorus is None
    assert dense.per_ml("phosphate") == 0.0
    # What is measured goes before what is reckoned from it.
    assert food(nitrogen=None, phosphorus=None, protein="50 %", nitrogen_share="1 %").nitrogen == pytest.approx(10.0)


@pytest.mark.parametrize(
    ("parameter", "raises", "carried"),
    [
        ("nitrate", "1 mg/L as NO3", (20.0 / ((N + 3 * OX) / N), None)),
        ("nitrate", "1 mg/L as N", (20.0, None)),
        ("phosphate", "0.1 mg/L as PO4", (0.0, 2.0 / ((P + 4 * OX) / P))),
        ("phosphate", "0.1 mg/L as P", (0.0, 2.0)),
    ],
)
def test_a_label_says_what_its_dose_raises(parameter: str, raises: str, carried: tuple[float, float | None]) -> None:
    """5 mL in 100 L: a millilitre does to a litre twenty times what the dose does to the 100 L."""
    label = {"parameter": parameter, "dose": "5 mL", "water": "100 L", "raises": raises}
    found = food(nitrogen=None, phosphorus=None, label=label)
    assert found.nitrogen == pytest.approx(carried[0])
    assert found.phosphorus == (None if carried[1] is None else pytest.approx(carried[1]))


def test_a_trace_mix_raises_what_its_label_says_and_takes_no_alkalinity() -> None:
    label = {"parameter": "iodide", "dose": "2 mL", "water": "100 L", "raises": "0.01 mg/L"}
    trace = food(nitrogen=None, phosphorus=None, label=label)
    assert trace.brings("iodide", 340.0) == pytest.approx(10.0 * 0.5 / 340.0)
    assert trace.brings("nitrate", 340.0) == trace.brings("alkalinity", 340.0) == 0.0
    assert food(salts="yes").brings("alkalinity", 340.0) == 0.0
    assert food(salts="yes").brings("nitrate", 340.0) == food().brings("nitrate", 340.0)


def test_the_units_that_a_food_is_said_in() -> None:
    assert [unit.id for unit in KINDS["mass per volume"].units] == ["mg/mL", "g/L", "g/100 mL"]
    assert [to_canonical(1.0, "mass per volume", unit) for unit in ("mg/mL", "g/L", "g/100 mL")] == [1.0, 1.0, 10.0]
    assert food(nitrogen="0.5 g/100 mL").nitrogen == food(nitrogen="5 g/L").nitrogen == food().nitrogen


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"per_day": None}, [("missing", "food.1.per_day")]),
        ({"per_day": "0 mL per day"}, [("out_of_range", "food.1.per_day")]),
        ({"per_day": "10 mL"}, [("unknown_unit", "food.1.per_day")]),
        ({"nitrogen": None}, [("missing", "food.1.nitrogen")]),
        ({"nitrogen": "5 %"}, [("unknown_unit", "food.1.nitrogen")]),
        ({"phosphorus_share": "1 %"}, [("missing", "food.1.protein")]),
        ({"nitrogen_share": "60 %", "phosphorus_share": "41 %"}, [("food_more_than_all", "food.1.phosphorus_share")]),
        (
            {"label": {"parameter": "vigour", "dose": "5 mL", "water": "100 L"}},
            [("unknown_parameter", "food.1.label.parameter")],
        ),
        ({"label": {"parameter": "nitrate", "dose": "5 mL", "water": "100 L"}}, [("missing", "food.1.label.raises")]),
    ],
)
def test_what_cannot_be_read(changes: dict[str, object], expected: list[tuple[str, str]]) -> None:
    assert unread(**changes) == expected


def test_no_foods_are_none() -> None:
    assert foods_intake.foods({}, known()) == ()
    assert foods_intake.foods({"food": "mash"}, known()) == ()


def test_where_it_settles_by_hand() -> None:
    """What comes in a day over what leaves: 10 of 340 L and the share that is lost."""
    found = answer(food(per_day="5 mL per day"))
    nitrate, phosphate, alkalinity = found.values
    for value, per_day, loss in ((nitrate, "nitrate", 0.03), (phosphate, "phosphate", 0.05)):
        rate = 10.0 / 340.0 + loss
        settled = food(per_day="5 mL per day").brings(per_day, 340.0) / rate
        now = value.fed.moved.now
        assert value.fed.settles == pytest.approx(settled)
        assert value.fed.end == pytest.approx(settled + (now - settled) * math.exp(-56.0 * rate))
        assert value.without.settles == 0.0
        assert value.without.end == pytest.approx(now * math.exp(-56.0 * rate))
    assert alkalinity.fed.settles == pytest.approx(8.0 / 2.80386 - 25.0 / N / 10.0, rel=1e-4)
    assert found.times == tuple(float(day) for day in range(57))
    assert found.oxygen == pytest.approx(25.0 * 4 * OX / N / 340.0)


def test_too_much_is_refused_and_the_reason_says_how_much_would_do() -> None:
    """Phosphate may rise by 0.03 mg/L a day: 10 mL with 0.4 mg P each bring 0.0361."""
    much = food(phosphorus="0.4 mg/mL")
    found = solve(question(much))
    assert isinstance(found, Refused)
    (reason,) = found.reasons
    assert reason.code == "food_too_much"
    assert reason.params["parameter"] == "phosphate"
    assert reason.params["rise"] == pytest.approx(4.0 * (P + 4 * OX) / P / 340.0)
    most = most_of(question(much), much)
    assert most is not None
    assert most.parameter.name == "phosphate"
    allowed = most.ml
    assert allowed == pytest.approx(10.0 * float(str(reason.params["share"])))
    assert isinstance(solve(question(replace(much, per_day_ml=allowed * 0.999999))), FoodsAnswer)
    assert isinstance(solve(question(replace(much, per_day_ml=allowed * 1.000001))), Refused)


def test_the_limit_holds_for_all_foods_together_and_for_the_low_end_of_the_volume() -> None:
    half = food(phosphorus="0.2 mg/mL")
    assert isinstance(solve(question(half)), FoodsAnswer)
    assert isinstance(solve(question(half, half)), Refused)
    # Beside as much again, only the rest of 0.03 mg/L is left for it.
    other = replace(half, name="Other")
    left = most_of(question(half, other), half)
    assert left is not None
    assert left.ml == pytest.approx((0.03 * 340.0 - other.per_ml("phosphate") * 10.0) / half.per_ml("phosphate"))
    unsure = {"net_volume": "340 L", "volume_uncertainty": "50 %"}
    assert isinstance(solve(question(half, system=unsure)), Refused)
    nothing = food(nitrogen="0 mg/mL", phosphorus=None)
    assert most_of(question(nothing), nothing) is None


def test_nothing_binds_where_nothing_is_brought() -> None:
    found = answer()
    assert found.most is None
    assert found.brought == ()
    assert found.oxygen == 0.0
    assert found.remarks == ()


@pytest.mark.parametrize(
    ("changes", "tank", "codes"),
    [
        ({"per_day": "1 mL per day", "phosphorus": "0 mg/mL"}, {}, []),
        ({"nitrogen": "8 mg/mL", "phosphorus": "0 mg/mL"}, {}, ["food_rise_fast", "food_settles_high"]),
        ({"per_day": "1 mL per day", "phosphorus": None}, {}, ["food_phosphorus_unsaid"]),
        ({"per_day": "1 mL per day", "phosphorus": None, "salts": "yes"}, {}, []),
    ],
)
def test_what_is_remarked(changes: dict[str, str | None], tank: dict[str, object], codes: list[str]) -> None:
    assert [reason.code for reason in reasons(food(**changes), **tank)] == codes


def test_without_exchange_and_export_it_climbs_for_ever() -> None:
    still = {"exchange": {"per_day": "0 L per day"}, "value": [{"parameter": "nitrate", "now": "5 mg/L as NO3"}]}
    (reason,) = reasons(food(per_day="1 mL per day", phosphorus="0 mg/mL"), **still)
    assert reason.code == "food_never_settles"
    assert reason.params["rise"] == pytest.approx(7.0 * 5.0 * (N + 3 * OX) / N / 340.0)


def test_dates_of_an_opened_jug() -> None:
    assert foods_keeping.keeps(14.0, spoils=True, cold=True) == 14.0
    assert foods_keeping.keeps(14.0, spoils=True, cold=False) == 1.0
    assert foods_keeping.keeps(0.5, spoils=True, cold=False) == 0.5
    assert foods_keeping.keeps(90.0, spoils=False, cold=False) == 90.0
    assert foods_keeping.discard_on(date(2026, 11, 20), 14.9) == date(2026, 12, 4)
    assert foods_keeping.empty_on(date(2026, 11, 20), 250.0, 12.0) == date(2026, 12, 10)
    assert foods_keeping.empty_on(date(2026, 11, 20), 1e9, 0.001) == date.max


def test_a_jug_against_its_date() -> None:
    """250 mL at 10 mL a day last 25 days and keep 14: 140 mL are used, the rest is thrown away."""
    found = foods_keeping.jug(250.0, 10.0, 14.0)
    assert (found.lasts, found.share, found.largest_ml) == (25.0, pytest.approx(0.56), 140.0)
    assert foods_keeping.jug(100.0, 10.0, 14.0).share == 1.0


def test_a_line_full_of_food() -> None:
    """3 mm and 2 m hold pi/4 * 9 * 2000 mm3; at 5 mL a day that stands almost three days, twice as much rinses it."""
    found = foods_keeping.line(3.0, 2000.0, 5.0, 4.0)
    assert found.holds_ml == pytest.approx(math.pi / 4.0 * 9.0 * 2.0)
    assert found.stands_days == pytest.approx(found.holds_ml / 5.0)
    assert found.flush_ml == pytest.approx(2.0 * found.holds_ml)
    assert found.flush_per_day_ml == pytest.approx(8.0 * found.holds_ml)
