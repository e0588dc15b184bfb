"""The product against PHREEQC with its Pitzer model of brines (pitzer.dat), which runs in tests only.

Nothing is shared: no constant, no activity. PHREEQC's pH is an activity on a scale of its own, 0.2 above the total
scale, so changes are compared. Why the changes differ at all: the ratios K1/K2 and K1/KB, which no pH scale enters, are
0.02 and 0.07 (in log10) lower in pitzer.dat than measured in seawater at 25 degC, and 0.04 and 0.12 at 20 degC, because
its carbonate and borate parameters are for 25 degC. Put into the product, PHREEQC's ratios give PHREEQC's changes.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import pytest

from evenwater.engine.carbonate import add, addition_of
from evenwater.engine.carbonate_solver import Acids
from evenwater.engine.carbonate_state import Seawater, State, from_alkalinity_dic, from_alkalinity_pco2, seawater
from tests.carbonate.rows import Row, check, rows
from tests.published.rows import catalogue

phreeqpython = pytest.importorskip("phreeqpython")

# Salts that make seawater of salinity 35 [mmol/kg], from the ions of Millero et al. 2008 with bromide counted as
# chloride; kilograms of water in a kilogram of it.
SALTS = {"NaCl": 410.8, "MgCl2": 52.82, "CaCl2": 10.287, "KCl": 10.21, "Na2SO4": 28.24, "SrCl2": 0.09, "H3BO3": 0.41576}
WATER = 0.96483

FORMULA = {
    "sodium bicarbonate": "NaHCO3",
    "sodium carbonate anhydrous": "Na2CO3",
    "sodium hydroxide": "NaOH",
    "calcium hydroxide": "Ca(OH)2",
}
# The largest single dose that is recommended (0.35 dKH), and a whole 1 dKH at once [meq/kg].
ONE_DOSE, ONE_DKH = 0.12, 0.36


@dataclass
class Told:
    """What PHREEQC says of an addition."""

    change: float
    pco2_uatm: float
    dic_mmol_per_kg: float
    log10_k1_over_k2: float
    log10_k1_over_kb: float


@pytest.fixture(scope="module")
def model() -> Any:
    return phreeqpython.PhreeqPython(database="pitzer.dat")


def ask(model: Any, chemical: str, meq_per_kg: float, pco2_uatm: float, temperature_c: float) -> Told:
    """Let PHREEQC make seawater with 2.3 meq/kg, bring it to a pCO2, and add a chemical."""
    salts = {name: amount / WATER for name, amount in (SALTS | {"NaHCO3": 2.3}).items()}
    solution = model.add_solution_simple(salts, temperature=temperature_c)
    solution.equalize(["CO2(g)"], [np.log10(pco2_uatm * 1e-6)], [10.0])
    before = solution.pH
    forms = solution.species_moles
    bicarbonate, carbonate = (sum(forms[name] for name in names) for names in (("HCO3-",), ("CO3-2", "MgCO3")))
    borate = sum(moles for name, moles in forms.items() if "B(OH)4" in name)
    dic = (bicarbonate + carbonate + forms["CO2"]) * 1000.0 * WATER
    per_mole = catalogue().chemicals[chemical].per_mole("alkalinity")
    solution.add(FORMULA[chemical], meq_per_kg / per_mole / WATER)
    told = Told(
        change=solution.pH - before,
        pco2_uatm=10.0 ** solution.si("CO2(g)") * 1e6,
        dic_mmol_per_kg=dic,
        log10_k1_over_k2=float(np.log10(bicarbonate**2 / forms["CO2"] / carbonate)),
        log10_k1_over_kb=float(np.log10(bicarbonate / forms["CO2"] * forms["B(OH)3"] / borate)),
    )
    solution.forget()
    return told


def change(before: State, chemical: str, meq_per_kg: float) -> float:
    carried = catalogue().chemicals[chemical]
    after = add(before, addition_of(carried, meq_per_kg / carried.per_mole("alkalinity")))
    return float(after.ph_total - before.ph_total)


def before_at(pco2_uatm: float, temperature_c: float) -> State:
    return from_alkalinity_pco2(seawater(35.0, temperature_c), 2.3, pco2_uatm)


@pytest.mark.parametrize("row", rows("phreeqc"), ids=lambda row: row.id)
def test_phreeqc_gives_its_own_published_figures(model: Any, row: Row) -> None:
    """So the seawater made here is the one of the rows."""
    told = ask(model, str(row.inputs["added"]), row.number("dTA_umol_kg") / 1000.0, row.number("pCO2_0"), 25.0)
    check(row, {"dpH": told.change, "pCO2": told.pco2_uatm}, ours=False)


@pytest.mark.parametrize("chemical", FORMULA)
@pytest.mark.parametrize(
    ("temperature_c", "pco2_uatm"),
    [(t, p) for t in (20.0, 25.0, 30.0) for p in (280.0, 420.0, 800.0, 2000.0) if t > 20.0 or p < 800.0],
)
def test_change_of_ph_by_one_dose_is_that_of_phreeqc(
    model: Any, pco2_uatm: float, temperature_c: float, chemical: str
) -> None:
    """At 20 degC and 800 or 2000 uatm it differs by up to 0.011 and 0.018: see the test of all temperatures below."""
    told = ask(model, chemical, ONE_DOSE, pco2_uatm, temperature_c)
    assert abs(change(before_at(pco2_uatm, temperature_c), chemical, ONE_DOSE) - told.change) <= 0.01


@pytest.mark.parametrize("chemical", FORMULA)
@pytest.mark.parametrize("pco2_uatm", [280.0, 420.0, 800.0])
def test_change_of_ph_by_a_whole_dkh_at_once_is_that_of_phreeqc(model: Any, pco2_uatm: float, chemical: str) -> None:
    told = ask(model, chemical, ONE_DKH, pco2_uatm, 25.0)
    assert abs(change(before_at(pco2_uatm, 25.0), chemical, ONE_DKH) - told.change) <= 0.01


@pytest.mark.parametrize("temperature_c", [15.0, 20.0, 25.0, 30.0])
def test_constants_of_phreeqc_part_from_those_measured_in_seawater_as_it_gets_colder(
    model: Any, temperature_c: float
) -> None:
    told = ask(model, "sodium hydroxide", ONE_DKH, 420.0, temperature_c)
    k = seawater(35.0, temperature_c).acids.constants
    off_carbon = float(np.log10(k.k1 / k.k2)) - told.log10_k1_over_k2
    off_boron = float(np.log10(k.k1 / k.boric)) - told.log10_k1_over_kb
    expected = {15.0: (0.049, 0.170), 20.0: (0.036, 0.117), 25.0: (0.021, 0.069), 30.0: (0.004, 0.024)}
    assert (off_carbon, off_boron) == pytest.approx(expected[temperature_c], abs=0.002)


@pytest.mark.parametrize("chemical", FORMULA)
@pytest.mark.parametrize("temperature_c", [15.0, 20.0, 25.0, 30.0])
@pytest.mark.parametrize("pco2_uatm", [280.0, 2000.0])
def test_with_the_constants_of_phreeqc_the_product_gives_its_changes(
    model: Any, pco2_uatm: float, temperature_c: float, chemical: str
) -> None:
    """A whole 1 dKH at 15 degC and 2000 uatm differs by 0.04 otherwise: all of it the constants, none the solver."""
    told = ask(model, chemical, ONE_DKH, pco2_uatm, temperature_c)
    acids = seawater(35.0, temperature_c).acids
    k = acids.constants
    theirs = replace(k, k2=k.k1 * 10.0**-told.log10_k1_over_k2, boric=k.k1 * 10.0**-told.log10_k1_over_kb)
    water = Seawater(Acids(theirs, acids.borate, acids.phosphate, acids.silicate), np.asarray(10.0))
    before = from_alkalinity_dic(water, 2.3, told.dic_mmol_per_kg)
    assert abs(change(before, chemical, ONE_DKH) - told.change) <= 0.003
