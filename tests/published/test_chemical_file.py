"""The entries of chemicals.toml agree with their formulas, with chemistry and with each other."""

from __future__ import annotations

import re
import tomllib
from itertools import combinations

import pytest

from evenwater.assets import resources
from evenwater.engine.catalogue import Chemical
from evenwater.engine.formula import molar_mass
from tests.published.rows import catalogue

CHEMICALS = tuple(catalogue().chemicals.values())
NAMES = (
    "sodium carbonate anhydrous",
    "sodium carbonate monohydrate",
    "sodium carbonate decahydrate",
    "sodium bicarbonate",
    "sodium hydroxide",
    "calcium hydroxide",
    "calcium chloride anhydrous",
    "calcium chloride dihydrate",
    "calcium chloride hexahydrate",
    "magnesium chloride hexahydrate",
    "magnesium sulfate heptahydrate",
    "potassium chloride",
    "strontium chloride hexahydrate",
    "potassium iodide",
    "sodium nitrate",
    "potassium nitrate",
    "potassium dihydrogen phosphate",
    "sodium chloride",
    "boric acid",
    "sodium tetraborate decahydrate",
)
# Charge of what never changes it near the pH of seawater, as alkalinity counts it: phosphate at its
# zero level H2PO4-, sulfate and nitrate as they are (Wolf-Gladrow et al. 2007, from memory).
CHARGE = {"Na": 1, "K": 1, "Ca": 2, "Mg": 2, "Sr": 2, "Cl": -1, "I": -1, "NO3": -1, "PO4": -1, "SO4": -2}
# The element by which each carried thing is found in a formula.
ELEMENT = {"DIC": "C", "NO3": "N", "PO4": "P", "SO4": "S"}
WATERS = {"anhydrous": 0, "monohydrate": 1, "dihydrate": 2, "hexahydrate": 6, "heptahydrate": 7, "decahydrate": 10}
DANGEROUS = re.compile(r"H(314|318|360|372)")
# Signs that a person may misread beside an amount, and units written the ambiguous way.
MISREAD = re.compile(r"[/@&+<>~#]|\b(?:ml|cc|ug|µg)\b")

each = pytest.mark.parametrize("chemical", CHEMICALS, ids=lambda c: c.name)


def _hydrate(chemical: Chemical) -> str:
    word = chemical.name.split()[-1]
    return word if word in WATERS else ""


def _capitals(chemical: Chemical) -> str:
    return "".join(re.findall(r"[A-Z]{3,}", chemical.tall_man))


def test_all_chemicals_are_there_by_their_full_names() -> None:
    assert tuple(c.name for c in CHEMICALS) == NAMES


def test_every_entry_names_its_sources() -> None:
    file = tomllib.loads((resources() / "chemicals.toml").read_text(encoding="utf-8"))
    for name, entry in file.items():
        for field in ("solubility_source", "density_source", "statements_source"):
            assert len(entry[field]) > 10, (name, field)


@each
def test_the_name_counts_the_waters_of_the_formula(chemical: Chemical) -> None:
    waters = (molar_mass(chemical.formula) - molar_mass(chemical.dry)) / molar_mass("H2O")
    assert waters == pytest.approx(WATERS.get(_hydrate(chemical), 0), abs=1e-9)


@each
def test_alkalinity_is_the_charge_left_by_the_carried_ions(chemical: Chemical) -> None:
    charge = sum(CHARGE[what] * count for what, count in chemical.carries if what in CHARGE)
    assert chemical.per_mole("alkalinity") == charge


@each
def test_it_carries_exactly_the_atoms_of_its_formula(chemical: Chemical) -> None:
    """Every element but hydrogen and oxygen is carried, in the number the formula has."""
    from periodictable import formulas

    atoms = {str(element): count for element, count in formulas.formula(chemical.formula).atoms.items()}
    carried = {ELEMENT.get(what, what): count for what, count in chemical.carries if what != "alkalinity"}
    assert carried == {element: count for element, count in atoms.items() if element not in {"H", "O"}}


@each
def test_it_carries_what_it_is_said_to_raise(chemical: Chemical) -> None:
    for parameter in chemical.raises:
        assert chemical.per_gram(parameter) > 0.0, parameter


def test_every_parameter_can_be_raised() -> None:
    for parameter in catalogue().parameters:
        assert catalogue().raising(parameter), parameter


def test_boric_acid_raises_no_parameter_and_is_the_only_one() -> None:
    assert [c.name for c in CHEMICALS if not c.raises] == ["boric acid"]


def test_sodium_hydroxide_is_the_only_restricted_one() -> None:
    assert [c.name for c in CHEMICALS if c.restricted] == ["sodium hydroxide"]


@each
def test_solubility_covers_a_room_from_freezing_to_30_degrees_in_order(chemical: Chemical) -> None:
    temperatures = [t for t, _ in chemical.solubility]
    assert temperatures == sorted(set(temperatures))
    assert temperatures[0] == 0.0
    assert temperatures[-1] == 30.0


@each
def test_solubility_is_a_smooth_curve_without_a_misplaced_row(chemical: Chemical) -> None:
    shares = [share for _, share in chemical.solubility]
    assert all(0.0 < share < 70.0 for share in shares)
    # Lime alone dissolves less in the warm.
    falling = chemical.name == "calcium hydroxide"
    assert shares == sorted(shares, reverse=falling)


@each
def test_density_is_that_of_a_solution_heavier_than_water(chemical: Chemical) -> None:
    assert chemical.density is not None
    share, density = chemical.density
    assert 0.0 < share < 50.0
    # One percent of any of these salts adds between 0.2 and 1.4 percent to the density.
    assert 0.002 * share < density - 0.9982 < 0.014 * share


@each
def test_the_density_point_is_near_saturation(chemical: Chemical) -> None:
    """So that turning mass percent into grams per litre extrapolates by a factor of 2.5 at most."""
    assert chemical.density is not None
    saturated = chemical.solubility_at(20.0)
    assert saturated is not None
    assert 0.4 < chemical.density[0] / saturated < 1.1


@each
def test_the_tall_man_name_is_the_name_with_capitals(chemical: Chemical) -> None:
    assert chemical.tall_man.casefold() == chemical.name
    assert _capitals(chemical)


@pytest.mark.parametrize(
    ("one", "other"),
    [pair for pair in combinations(CHEMICALS, 2) if pair[0].name.split()[0] == pair[1].name.split()[0]],
    ids=lambda c: c.name,
)
def test_names_that_begin_alike_differ_in_their_capitals_or_their_hydrate(one: Chemical, other: Chemical) -> None:
    if one.dry == other.dry:
        assert _hydrate(one) != _hydrate(other)
    else:
        assert _capitals(one) != _capitals(other)


def test_words_on_bags_lead_to_one_chemical_only() -> None:
    words = [word.casefold() for c in CHEMICALS for word in c.also_called]
    assert len(set(words)) == len(words)
    assert not set(words) & set(NAMES)


@pytest.mark.parametrize("bare", ["calcium chloride", "sodium carbonate", "magnesium chloride", "washing soda"])
def test_a_word_that_leaves_the_hydrate_open_leads_nowhere(bare: str) -> None:
    assert bare not in {word for c in CHEMICALS for word in (c.name, *c.also_called)}


@each
def test_hazard_statements_are_written_out_and_signalled(chemical: Chemical) -> None:
    assert all(re.fullmatch(r"H\d{3}[A-Z]* [a-z].{10,}", statement) for statement in chemical.statements)
    assert bool(chemical.signal_word) == bool(chemical.statements)
    assert chemical.signal_word in {"", "Warning", "Danger"}
    if DANGEROUS.search(" ".join(chemical.statements)):
        assert chemical.signal_word == "Danger"


@each
def test_what_harms_eyes_asks_for_goggles_and_says_how_to_rinse(chemical: Chemical) -> None:
    cautions = " ".join(chemical.cautions).casefold()
    if re.search(r"H(314|318|319)", " ".join(chemical.statements)):
        assert "goggles" in cautions
        assert "at least 15 minutes" in cautions
    else:
        assert "spectacles" in cautions or "gloves" in cautions


@each
def test_cautions_are_plain_sentences_without_signs_that_are_misread(chemical: Chemical) -> None:
    assert chemical.cautions
    for line in chemical.cautions:
        assert re.fullmatch(r"[A-Z].*\.", line), line
        assert not MISREAD.search(line), line


@each
def test_calcium_and_carbonate_are_kept_from_each_other(chemical: Chemical) -> None:
    cautions = " ".join(chemical.cautions)
    if chemical.per_mole("Ca"):
        assert "Never mix it with a concentrate of carbonate" in cautions
    if chemical.per_mole("DIC"):
        assert "Never mix it with a concentrate of calcium" in cautions
