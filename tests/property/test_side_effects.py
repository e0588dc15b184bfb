"""What else a plan does must balance: no gram, no charge and no atom is lost, whatever is dosed (conservation laws)."""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import replace
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.correction import Answer
from evenwater.engine.side_effects import Carried, SideEffects, side_effects
from evenwater.engine.stock import Dissolved
from tests.engine.asking import known
from tests.property.plans import Drawn, plans

# By the product's word: its mass is counted as, dissolved without alkalinity it is, and its charge then is.
SOLUTES = {
    "sodium": ("Na", "Na", 1), "potassium": ("K", "K", 1), "magnesium": ("Mg", "Mg", 2), "calcium": ("Ca", "Ca", 2),
    "strontium": ("Sr", "Sr", 2), "chloride": ("Cl", "Cl", -1), "iodide": ("I", "I", -1), "sulfate": ("SO4", "SO4", -2),
    "nitrate": ("NO3", "NO3", -1), "phosphate": ("PO4", "H2PO4", -1), "boron": ("B", "B(OH)3", 0),
}  # fmt: skip
UNITS = {"nitrate": "mg/L as NO3", "phosphate": "mg/L as PO4"}
# An equivalent of alkalinity is one of hydroxide, and carbon comes as its dioxide: the rest is water.
OTHERS = {"alkalinity": ("OH", -1), "dissolved inorganic carbon": ("CO2", 0)}
ATOMS_OF = {"alkalinity": "OH", "DIC": "CO2"} | {short: form for short, form, _ in SOLUTES.values()}


@cache
def read(formula: str) -> Any:
    """Return the formula as the handbook's atomic weights know it."""
    from periodictable import formulas

    return formulas.formula(formula)


def mass(formula: str) -> float:
    """Return grams per mole."""
    return float(read(formula).mass)


def atoms(formula: str) -> Counter[str]:
    """Return how many of each element a mole holds."""
    return Counter({str(element): int(count) for element, count in read(formula).atoms.items()})


def water_in(name: str) -> int:
    """Return the water that is left of a mole of a chemical once its solutes are taken out, atom by atom."""
    chemical = known().chemicals[name]
    left = atoms(chemical.formula)
    for what, count in chemical.carries:
        piece = {"PO4": "H2PO4", "B": "B(OH)3"}.get(what) or ATOMS_OF[what]
        left.subtract({element: number * int(count) for element, number in atoms(piece).items()})
    water = left["O"]
    assert {element: number for element, number in left.items() if number} == (
        {"H": 2 * water, "O": water} if water else {}
    ), name
    return water


@pytest.mark.parametrize("name", known().chemicals)
def test_of_every_chemical_nothing_but_whole_water_is_left(name: str) -> None:
    # Carbonates and hydroxides give water back; a hydrate brings its own.
    assert -1 <= water_in(name) <= 10


@pytest.mark.parametrize("name", known().chemicals)
def test_the_charges_of_every_chemical_balance(name: str) -> None:
    charges = {short: charge for short, _, charge in SOLUTES.values()} | {"alkalinity": -1, "DIC": 0}
    assert sum(charges[what] * count for what, count in known().chemicals[name].carries) == 0


def given_by(answer: Answer) -> dict[str, float]:
    """Return everything the correction carries in [mmol and meq per litre], what is wanted with it."""
    found = moles(side_effects(answer).correction.carried)
    q = answer.question
    wanted = q.parameter.name
    if wanted != "salinity":
        assert wanted not in found
        raised = answer.doses.total_ml * answer.per_ml
        found[wanted] = raised if wanted == "alkalinity" else raised / mass(SOLUTES[wanted][0])
    return found


def moles(carried: tuple[Carried, ...]) -> dict[str, float]:
    """Return amounts per litre [mmol and meq]."""
    found = {}
    for item in carried:
        if item.name in OTHERS:
            assert item.unit == {"alkalinity": "meq/L"}.get(item.name, "mmol/L")
            found[item.name] = item.amount
        else:
            assert item.unit == UNITS.get(item.name, "mg/L")
            found[item.name] = item.amount / mass(SOLUTES[item.name][0])
    return found


def net_charge(amounts: dict[str, float]) -> tuple[float, float]:
    """Return the sum of the charges, and the sum of their sizes [meq/L]."""
    parts = [n * (OTHERS[name][1] if name in OTHERS else SOLUTES[name][2]) for name, n in amounts.items()]
    return math.fsum(parts), math.fsum(abs(part) for part in parts)


@settings(max_examples=80)
@given(drawn=plans())
def test_every_gram_and_every_charge_of_the_doses_is_accounted_for(drawn: Drawn) -> None:
    answer = drawn.answer
    batch, litres = answer.question.additive, answer.question.system.volume_l
    if not isinstance(batch, Dissolved):
        assert side_effects(answer).correction.carried == ()
        return
    amounts = given_by(answer)
    charge, size = net_charge(amounts)
    assert abs(charge) <= 1e-12 * size
    per_ml = {p.chemical: p.grams * p.purity / (1000.0 * batch.made_up_l) for p in batch.portions}
    grams_in = math.fsum(per_ml.values()) * answer.doses.total_ml
    water = math.fsum(
        grams / mass(chemical.formula) * water_in(chemical.name) for chemical, grams in per_ml.items()
    ) * answer.doses.total_ml * mass("H2O")  # fmt: skip
    forms = {name: OTHERS[name][0] if name in OTHERS else SOLUTES[name][1] for name in amounts}
    grams_out = math.fsum(n * mass(forms[name]) for name, n in amounts.items()) * litres / 1000.0 + water
    assert grams_out == pytest.approx(grams_in, rel=1e-12)


@settings(max_examples=80)
@given(drawn=plans())
def test_what_upkeep_leaves_is_neutral_and_weighs_what_salinity_rises_by(drawn: Drawn) -> None:
    answer = drawn.answer
    q, found = answer.question, side_effects(answer)
    if q.use == 0.0 or not found.known:
        assert found.month is None or found.month.salinity is None
        return
    assert found.month is not None
    assert found.year is not None
    amounts = moles(found.month.stays)
    assert all(amount > 0.0 for amount in amounts.values())
    if q.parameter.name in ("alkalinity", "calcium", "nitrate", "phosphate", "salinity"):
        charge, size = net_charge(amounts)
        assert abs(charge) <= 1e-9 * size
    weighed = math.fsum(n * mass("HCO3" if name == "alkalinity" else SOLUTES[name][1]) for name, n in amounts.items())
    assert found.month.salt_g == pytest.approx(weighed * q.system.volume_l / 1000.0, rel=1e-12)
    assert found.month.salinity is not None
    # Seawater of any salinity and temperature drawn here weighs 1.02 to 1.03 kg per litre.
    assert weighed / 1.03 <= 1000.0 * found.month.salinity <= weighed / 1.02
    for item, later in zip(found.month.stays, found.year.stays, strict=True):
        assert item.name == later.name
        assert later.amount == pytest.approx(12.0 * item.amount, rel=1e-12)


@settings(max_examples=60)
@given(drawn=plans(), factor=st.floats(0.1, 10.0))
def test_a_weaker_stock_leaves_the_same_and_brings_more_water(drawn: Drawn, factor: float) -> None:
    answer = drawn.answer
    batch = answer.question.additive
    if not isinstance(batch, Dissolved) or answer.question.use == 0.0:
        return
    weaker = replace(answer.question, additive=replace(batch, grams=batch.grams / factor))
    first = side_effects(answer).month
    second = side_effects(replace(answer, question=weaker, per_ml=answer.per_ml / factor)).month
    assert first is not None
    assert second is not None
    assert second.water_l == pytest.approx(factor * first.water_l, rel=1e-12)
    assert {item.name: item.amount for item in second.stays} == pytest.approx(
        {item.name: item.amount for item in first.stays}, rel=1e-9
    )


@settings(max_examples=60)
@given(drawn=plans(), factor=st.floats(0.01, 100.0))
def test_what_is_left_is_in_proportion_to_the_use(drawn: Drawn, factor: float) -> None:
    def left(use: float) -> SideEffects:
        return side_effects(replace(drawn.answer, question=replace(drawn.answer.question, use=use)))

    one, more = left(1.0), left(factor)
    assert one.month is not None
    assert more.month is not None
    assert one.partner == more.partner
    assert [item.name for item in more.month.stays] == [item.name for item in one.month.stays]
    if one.month.salinity is not None:
        assert more.month.salinity == pytest.approx(factor * one.month.salinity, rel=1e-9)
    assert more.month.water_l == pytest.approx(factor * one.month.water_l, rel=1e-12)
