"""Molar masses, and what a gram of each chemical carries."""

from __future__ import annotations

import re

import pytest

from evenwater.engine.catalogue import Chemical
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import to_canonical
from evenwater.engine.stock import Dissolved, grams_for, moles_per_ml
from tests.published.rows import Row, catalogue, check, rows

MOLAR_MASSES = rows("molar_mass")
PER_GRAM = rows("per_gram")
EXERCISED = MOLAR_MASSES + PER_GRAM

# What the substances of the checks that the catalogue does not hold carry per mole.
OTHERS = {
    "CaCO3": {"alkalinity": 2.0, "Ca": 1.0},
    "MgCl2": {"Mg": 1.0},
    "MgSO4": {"Mg": 1.0},
    "SrCl2": {"Sr": 1.0},
    "Na2HPO4": {"PO4": 1.0},
}


def _in_brackets(formula: str) -> str:
    """Return a published formula with its hydrate water as the product spells it."""
    return re.sub(r"·(\d*)H2O", r"(H2O)\1", formula)


def _chemical(row: Row) -> Chemical:
    if "chemical" in row.inputs:
        return catalogue().chemicals[row.word("chemical")]
    formula = row.word("formula")
    carries = ((row.word("ion"), 1.0),) if "ion" in row.inputs else tuple(OTHERS[formula].items())
    return Chemical(
        name=formula,
        formula=formula,
        dry=formula,
        tall_man=formula,
        also_called=(),
        carries=carries,
        raises=(),
        solubility=(),
        density=None,
        signal_word="",
        statements=(),
        statements_source="",
        cautions=(),
        restricted=False,
    )


@pytest.mark.parametrize("row", MOLAR_MASSES, ids=lambda row: row.id)
def test_molar_mass_is_the_published_one(row: Row) -> None:
    check(row, molar_mass(_in_brackets(row.word("formula"))))


@pytest.mark.parametrize("row", [r for r in MOLAR_MASSES if "chemical" in r.inputs], ids=lambda row: row.id)
def test_the_catalogue_holds_the_formula_of_the_published_mass(row: Row) -> None:
    check(row, molar_mass(_chemical(row).formula))


@pytest.mark.parametrize("row", [r for r in PER_GRAM if r.id.startswith("frac.")], ids=lambda row: row.id)
def test_a_gram_carries_the_published_share_of_the_ion(row: Row) -> None:
    if "parameter" in row.inputs:
        check(row, _chemical(row).per_gram(row.word("parameter")) / 1000.0)
        return
    # No parameter, but it stays behind: one gram in a litre, in moles.
    millimoles_per_ml = moles_per_ml(Dissolved(_chemical(row), 1.0, 1.0), row.word("ion"))
    check(row, millimoles_per_ml * molar_mass(row.word("ion")))


@pytest.mark.parametrize("row", [r for r in PER_GRAM if r.id.startswith("alk.")], ids=lambda row: row.id)
def test_a_gram_carries_the_published_alkalinity(row: Row) -> None:
    check(row, _chemical(row).per_gram("alkalinity"))


@pytest.mark.parametrize("row", [r for r in PER_GRAM if r.id.startswith("recipe.")], ids=lambda row: row.id)
def test_recipe_weighs_out_the_published_mass(row: Row) -> None:
    per_litre = to_canonical(row.number("rise"), row.word("kind"), row.word("unit"))
    check(row, grams_for(_chemical(row), row.word("parameter"), per_litre / 1000.0, row.number("litres")))
