"""Solubilities in the catalogue, and saturated limewater."""

from __future__ import annotations

from dataclasses import replace

import pytest

from evenwater.engine.catalogue import Chemical
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import from_canonical
from evenwater.engine.stock import Dissolved, carried_per_ml, saturation
from tests.published.rows import Row, catalogue, check, rows

SOLUBILITIES = rows("solubility_alkaline") + rows("solubility_neutral")
LIMEWATER = rows("limewater")
SATURATED = rows("saturated")
OTHERS = rows("solubility_other")
EXERCISED = SOLUBILITIES + LIMEWATER + SATURATED + OTHERS


def _chemicals(row: Row) -> list[Chemical]:
    names = row.inputs["chemicals"]
    assert isinstance(names, list)
    return [catalogue().chemicals[name] for name in names]


@pytest.mark.parametrize("row", SOLUBILITIES, ids=lambda row: row.id)
def test_the_catalogue_holds_the_published_solubility(row: Row) -> None:
    """For every hydrate of the salt; the rows count the dry salt whatever crystal is weighed."""
    for chemical in _chemicals(row):
        share = chemical.solubility_at(row.number("T_C"))
        assert share is not None
        check(row, 100.0 * share / (100.0 - share) if row.unit == "g/100 g water" else share)


def _made_of(found: list[Row]) -> Chemical:
    """Return a chemical with these solubilities; nothing else of it matters here."""
    curve = tuple((row.number("T_C"), float(row.expected)) for row in found if isinstance(row.expected, float))
    return replace(catalogue().chemicals["sodium chloride"], solubility=curve)


@pytest.mark.parametrize("row", OTHERS, ids=lambda row: row.id)
def test_the_curve_of_any_salt_runs_through_its_published_solubilities(row: Row) -> None:
    """At the row; and without it on the chord between its neighbours, or at the ends held beyond them."""
    salt = [other for other in OTHERS if other.word("salt") == row.word("salt")]
    at = row.number("T_C")
    assert _made_of(salt).solubility_at(at) == row.expected
    if row is salt[0]:
        figure = _made_of(salt).solubility_at(at - 10.0)
    elif row is salt[-1]:
        figure = _made_of(salt).solubility_at(at + 10.0)
    else:
        figure = _made_of([other for other in salt if other is not row]).solubility_at(at)
    assert figure is not None
    check(row, figure)


@pytest.mark.parametrize("row", SATURATED, ids=lambda row: row.id)
def test_a_litre_of_saturated_solution_holds_the_published_mass(row: Row) -> None:
    chemical = catalogue().chemicals[row.word("chemical")]
    assert chemical.solubility_at(row.number("T_C")) == row.number("mass_percent")
    grams = chemical.most_per_litre(row.number("T_C"))
    assert grams is not None
    check(row, grams)


@pytest.mark.parametrize("row", LIMEWATER, ids=lambda row: row.id)
def test_saturated_limewater_is_the_published_one(row: Row) -> None:
    lime = catalogue().chemicals["calcium hydroxide"]
    grams = lime.most_per_litre(row.number("T_C"))
    assert grams is not None
    meq_per_l = 1000.0 * carried_per_ml(Dissolved(lime, grams, 1.0), "alkalinity")
    figures = {
        "limewater.g": grams,
        "limewater.M": grams / molar_mass(lime.formula),
        "limewater.alk": meq_per_l,
        "limewater.dkh": from_canonical(meq_per_l, "alkalinity", "dKH"),
    }
    check(row, figures[row.id])


@pytest.mark.parametrize(
    ("hydrate", "dry"),
    [
        ("sodium carbonate decahydrate", "sodium carbonate anhydrous"),
        ("calcium chloride dihydrate", "calcium chloride anhydrous"),
    ],
)
def test_more_of_a_hydrate_than_of_the_dry_salt_fits_into_a_litre(hydrate: str, dry: str) -> None:
    """A saturated stock is the same stock whichever crystal it was made of."""
    wet, bare = catalogue().chemicals[hydrate], catalogue().chemicals[dry]
    most_wet, most_bare = wet.most_per_litre(20.0), bare.most_per_litre(20.0)
    assert most_wet is not None
    assert most_bare is not None
    assert most_wet > most_bare
    strengths = [
        carried_per_ml(Dissolved(salt, most, 1.0), salt.raises[0])
        for salt, most in ((wet, most_wet), (bare, most_bare))
    ]
    assert strengths[0] == pytest.approx(strengths[1], rel=1e-12)
    assert saturation(Dissolved(wet, most_wet, 1.0), 20.0) == pytest.approx(1.0, rel=1e-12)
