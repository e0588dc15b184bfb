"""What holds for any foods: nothing is lost, their order does not matter, and neither does the unit."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import exchange_check
from evenwater.engine.correction import Refused
from evenwater.engine.foods import FoodsAnswer, most_of, solve
from evenwater.engine.foods_question import Food, fed, total
from tests.engine.foods import OX, N, P, food, question, random_foods, tank

some_foods = st.integers(0, 10_000).map(random_foods)


@given(some_foods, st.floats(20.0, 50_000.0))
def test_every_atom_is_found_again(foods: tuple[Food, ...], volume: float) -> None:
    """The nitrogen and phosphorus that are fed are those of the nitrate and phosphate that are brought."""
    nitrogen = math.fsum(each.nitrogen * each.per_day_ml for each in foods)
    phosphorus = math.fsum((each.phosphorus or 0.0) * each.per_day_ml for each in foods)
    assert total(foods, "nitrate", volume) * volume * N / (N + 3 * OX) == pytest.approx(nitrogen, rel=1e-12)
    assert total(foods, "phosphate", volume) * volume * P / (P + 4 * OX) == pytest.approx(phosphorus, rel=1e-12)
    organic = math.fsum(each.nitrogen * each.per_day_ml for each in foods if not each.salts)
    assert total(foods, "alkalinity", volume) * volume == pytest.approx(-organic / N, rel=1e-12)


@settings(deadline=None, max_examples=30)
@given(some_foods)
def test_the_books_of_the_tank_balance(foods: tuple[Food, ...]) -> None:
    whole = tank(system={"net_volume": "340000 L"}, exchange={"per_day": "10000 L per day"})
    whole = replace(whole, values=fed(whole.values, foods, whole.volume_l))
    for moved in whole.values:
        books = exchange_check.ledger(whole, moved)
        assert abs(books.off) <= 1e-10 * (books.before + books.came + books.went)


@settings(deadline=None, max_examples=30)
@given(some_foods, st.randoms(use_true_random=False))
def test_the_order_of_foods_does_not_matter(foods: tuple[Food, ...], rng: object) -> None:
    shuffled = list(foods)
    rng.shuffle(shuffled)  # type: ignore[attr-defined]
    one, other = (solve(question(*each, system={"net_volume": "3400 L"})) for each in (foods, shuffled))
    assert type(one) is type(other)
    if isinstance(one, FoodsAnswer) and isinstance(other, FoodsAnswer):
        assert [each.per_day for each in one.brought] == [each.per_day for each in other.brought]
        assert one.values == other.values
        assert one.most == other.most


@given(st.floats(0.1, 900.0), st.floats(0.0, 9.0))
def test_the_unit_does_not_matter(nitrogen: float, phosphorus: float) -> None:
    in_mg = food(nitrogen=f"{nitrogen:.6f} mg/mL", phosphorus=f"{phosphorus:.6f} mg/mL", per_day="2 L per day")
    in_g = food(
        nitrogen=f"{nitrogen:.6f} g/L", phosphorus=f"{phosphorus / 10.0:.7f} g/100 mL", per_day="2000 mL per day"
    )
    assert in_mg.nitrogen == in_g.nitrogen
    assert in_g.phosphorus == pytest.approx(in_mg.phosphorus, rel=1e-5, abs=1e-6)
    assert in_mg.per_day_ml == pytest.approx(in_g.per_day_ml, rel=1e-12)
    as_share = food(nitrogen=None, phosphorus=None, nitrogen_share=f"{nitrogen / 10.0:.7f} %", density="1 g/mL")
    assert as_share.nitrogen == pytest.approx(in_mg.nitrogen, rel=1e-5)


@settings(deadline=None, max_examples=40)
@given(some_foods)
def test_the_most_that_is_allowed_is_on_the_edge(foods: tuple[Food, ...]) -> None:
    """Just under what is said for a food all is well, just over it nothing is."""
    asked = question(*foods, system={"net_volume": "3400 L"})
    first = foods[0]
    found = most_of(asked, first)
    assert found is not None
    most = found.ml
    rest = foods[1:]
    more = solve(replace(asked, foods=(replace(first, per_day_ml=most * 1.001 + 1e-6), *rest)))
    assert isinstance(more, Refused)
    if most > 0.0:
        assert isinstance(solve(replace(asked, foods=(replace(first, per_day_ml=most * 0.999), *rest))), FoodsAnswer)
