"""Certified reference seawaters: from the certificate through what a keeper types to pH, saturation and back.

The batches are bottled natural seawater whose alkalinity and dissolved inorganic carbon are certified [umol/kg] (Dickson,
Afghan and Anderson 2003, Mar. Chem. 80, 185; citation from memory), as tabulated in the seawater-crm package, version
0.1. Its table is read as a text: to import it would take pandas, for a list of numbers. Batches 1, 3 to 5, 7 to 9, 11, 14,
19 and 39 lack some certified figure, or all; batch 6 is sodium bicarbonate in sodium chloride, counted here as if it were
seawater, by the product and by the reference alike. Phosphate and silicate are given for batch 205 only.
"""

from __future__ import annotations

import ast
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from evenwater.engine.carbonate import per_kg
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_state import (
    Seawater,
    State,
    from_alkalinity_dic,
    from_alkalinity_ph,
    from_dic_ph,
    seawater,
)
from evenwater.engine.fields import ALKALINITY, SALINITY
from evenwater.engine.quantities import Water, density_kg_per_l, from_canonical, to_canonical
from evenwater.engine.reader import Ok, read
from evenwater.engine.units import KINDS
from tests.carbonate.test_against_pyco2sys import ALKALINITY as OF_ALKALINITY
from tests.carbonate.test_against_pyco2sys import DIC as OF_DIC
from tests.carbonate.test_against_pyco2sys import off, reference, same_constants
from tests.evidence import compared_grid

FOUND = find_spec("seawater_crm")
if FOUND is None or not FOUND.submodule_search_locations:
    pytest.skip("seawater-crm is not installed", allow_module_level=True)
TABLE = Path(FOUND.submodule_search_locations[0]) / "dickson.py"

# Where the densities of the batches are counted, and a tank [degC].
TEMPERATURES = (20.0, 25.0)
# What one of each unit holds [meq/L]: 1 dKH is 10 mg CaO per litre; atomic weights of CIAAW (Ca, C, O).
CAO, CACO3 = 40.078 + 15.999, 40.078 + 12.011 + 3.0 * 15.999
MEQ_PER_L = {"meq/L": 1.0, "mmol/L": 1.0, "dKH": 20.0 / CAO, "ppm as CaCO3": 2.0 / CACO3}


@dataclass(frozen=True)
class Batches:
    """Certified figures, a batch in each place: salinity [-], the rest [umol/kg]."""

    number: Any
    salinity: Any
    alkalinity: Any
    dic: Any
    phosphate: Any
    silicate: Any

    def water(self, temperature_c: float) -> Seawater:
        return seawater(
            self.salinity,
            temperature_c,
            phosphate_mmol_per_kg=self.phosphate / 1000.0,
            silicate_mmol_per_kg=self.silicate / 1000.0,
        )

    def state(self, temperature_c: float) -> State:
        return from_alkalinity_dic(self.water(temperature_c), self.alkalinity / 1000.0, self.dic / 1000.0)


class NotCertified(ast.NodeTransformer):
    """Puts None where the table says that a figure is missing."""

    def visit_Attribute(self, node: ast.Attribute) -> ast.Constant:
        assert ast.unparse(node) == "np.nan"
        return ast.Constant(None)


def table(function: str) -> list[list[Any]]:
    """Return the rows that a function of the package returns, without running it."""
    (defined,) = (
        node
        for node in ast.parse(TABLE.read_text(encoding="utf-8")).body
        if isinstance(node, ast.FunctionDef) and node.name == function
    )
    (returned,) = (node.value for node in defined.body if isinstance(node, ast.Return))
    assert returned is not None
    rows: list[list[Any]] = ast.literal_eval(NotCertified().visit(returned))
    return rows


EVERY = table("_get_batches_raw")
WHOLE = [row for row in EVERY if None not in row]
NUTRIENTS = {row[0]: (row[1], row[2]) for row in table("_get_nutrients_raw")}
SALINITIES = [row[2] for row in EVERY if row[2] is not None]


def batches(*, all_with_nutrients_of: int | None = None) -> Batches:
    """Return every batch that is certified whole; nutrients are none where none are given, or those of one batch."""
    number, _, salinity, dic, alkalinity, _ = zip(*WHOLE, strict=True)
    given = [NUTRIENTS.get(all_with_nutrients_of or of, (0.0, 0.0)) for of in number]
    phosphate, silicate = zip(*given, strict=True)
    return Batches(*(np.array(column) for column in (number, salinity, alkalinity, dic, phosphate, silicate)))


AS_CERTIFIED = batches()
WITH_NUTRIENTS = batches(all_with_nutrients_of=205)
both = pytest.mark.parametrize("certified", [AS_CERTIFIED, WITH_NUTRIENTS], ids=["as certified", "with nutrients"])
at_each = pytest.mark.parametrize("temperature_c", TEMPERATURES)


def told(certified: Batches, temperature_c: float, **more: Any) -> dict[str, Any]:
    """Ask PyCO2SYS for the batches, with its own constants from the same sources."""
    nutrients = {"total_phosphate": certified.phosphate, "total_silicate": certified.silicate}
    figures = (certified.alkalinity, certified.dic, (OF_ALKALINITY, OF_DIC))
    return reference(*figures, certified.water(temperature_c), **(nutrients | more))


def density_by_gsw(salinity: float, temperature_c: float) -> float:
    import gsw

    absolute = gsw.SR_from_SP(salinity)
    return float(gsw.rho(absolute, gsw.CT_from_t(absolute, temperature_c, 0.0), 0.0)) / 1000.0


def test_all_batches_are_there() -> None:
    """1 to 216, of which the table lacks 167; a newer package with more of them, or other columns, is noticed."""
    assert [row[0] for row in EVERY] == [number for number in range(1, 217) if number != 167]
    assert (len(SALINITIES), len(WHOLE)) == (208, 204)
    assert NUTRIENTS == {205: (0.4, 2.3)}
    assert 31.0 < min(SALINITIES) < max(SALINITIES) < 39.0
    assert 1800.0 < AS_CERTIFIED.dic.min() < AS_CERTIFIED.dic.max() < AS_CERTIFIED.alkalinity.max() < 2500.0
    assert (AS_CERTIFIED.dic < AS_CERTIFIED.alkalinity).all()
    assert AS_CERTIFIED.phosphate.sum() == pytest.approx(0.4)


@at_each
def test_density_is_that_of_the_exact_equation_of_state(temperature_c: float) -> None:
    """Within 4e-6, which is how well the density of seawater is known (IAPWS R13-08, from memory). Found: 1e-6.

    The product has the 75-term polynomial and the reference composition; here the exact Gibbs function is asked, and
    salinity is that of seawater taken where the batches were, on the coast of southern California (the polynomial
    makes 6e-7, the silicate of that water 4e-7).
    """
    import gsw

    worst = 0.0
    for salinity in SALINITIES:
        exact = gsw.rho_t_exact(gsw.SA_from_SP(salinity, 0.0, -117.3, 32.9), temperature_c, 0.0) / 1000.0
        worst = max(worst, abs(density_kg_per_l(Water(salinity, temperature_c)) / float(exact) - 1.0))
    assert worst <= 4e-6
    about = (
        f"density of certified reference seawaters at {temperature_c:g} degC by the exact Gibbs function, as a share"
    )
    compared_grid("TEOS-10", about, worst, 4e-6, len(SALINITIES))


@at_each
@pytest.mark.parametrize("unit", [unit.id for unit in KINDS["alkalinity"].units])
@pytest.mark.parametrize("mark", [".", ","], ids=["point", "comma"])
def test_certified_alkalinity_survives_being_typed_in_any_unit(temperature_c: float, unit: str, mark: str) -> None:
    """Per kilogram to per litre by the density of gsw and the definition of the unit; read and brought back by the product."""
    for number, salinity, alkalinity in zip(
        AS_CERTIFIED.number, AS_CERTIFIED.salinity, AS_CERTIFIED.alkalinity, strict=True
    ):
        per_litre = alkalinity / 1000.0 * density_by_gsw(salinity, temperature_c) / MEQ_PER_L[unit]
        typed = read(f"{per_litre:.12f} {unit}".replace(".", mark), ALKALINITY)
        typed_salinity = read(f"{salinity:.3f} ppt".replace(".", mark), SALINITY)
        assert isinstance(typed, Ok)
        assert isinstance(typed_salinity, Ok), "three digits behind the mark are no thousands here"
        assert typed.entered.unit == unit
        water = Water(float(typed_salinity.entered.number), temperature_c)
        meq_per_l = to_canonical(float(typed.entered.number), "alkalinity", unit, water)
        assert 1000.0 * float(per_kg(meq_per_l, water)) == pytest.approx(alkalinity, rel=1e-9), number
        assert from_canonical(meq_per_l, "alkalinity", unit, water) == pytest.approx(per_litre, rel=1e-9), number


@both
@at_each
def test_ph_and_saturation_are_those_of_the_reference_as_it_comes(certified: Batches, temperature_c: float) -> None:
    """Most in batch 64, the most alkaline: 0.0001 of pH at 25 degC, 0.00008 of it by Kw and 0.00002 by rounded boron.

    The reference's Kw is 0.8 % smaller than the handbook's (see test_against_pyco2sys), which counts more the warmer
    the water is: 0.00012 at 28 degC. With the same Kw nothing is left, as the next test shows at that temperature too.
    """
    ph, saturation = off(certified.state(temperature_c), told(certified, temperature_c))
    assert ph <= 1e-4
    assert saturation <= 1e-3
    about = f"pH of certified reference seawaters at {temperature_c:g} degC"
    compared_grid("PyCO2SYS", about, ph, 1e-4, certified.dic.size)


@both
@pytest.mark.parametrize("temperature_c", [*TEMPERATURES, 28.0])
def test_ph_and_saturation_are_those_of_the_reference_with_the_same_constants(
    certified: Batches, temperature_c: float
) -> None:
    state = certified.state(temperature_c)
    ph, saturation = off(state, told(certified, temperature_c, **same_constants(state.water)))
    assert ph <= 1e-9
    assert saturation <= 1e-9


@both
@at_each
def test_carbon_and_alkalinity_come_back_from_ph_on_any_scale(certified: Batches, temperature_c: float) -> None:
    state, water = certified.state(temperature_c), certified.water(temperature_c)
    for scale in PhScale:
        ph = state.ph(scale)
        carbon = from_alkalinity_ph(water, certified.alkalinity / 1000.0, ph, scale).dic_mmol_per_kg
        alkalinity = from_dic_ph(water, certified.dic / 1000.0, ph, scale).alkalinity_meq_per_kg
        assert np.allclose(1000.0 * carbon, certified.dic, rtol=1e-9, atol=0.0), scale
        assert np.allclose(1000.0 * alkalinity, certified.alkalinity, rtol=1e-9, atol=0.0), scale


@both
@at_each
def test_ph_of_the_reference_gives_the_certified_carbon(certified: Batches, temperature_c: float) -> None:
    """Within 0.1 umol/kg; the certified figure is good to some 0.5 (from memory). Found: 0.064, from 0.0001 of pH."""
    ph = told(certified, temperature_c)["pH_total"]
    carbon = from_alkalinity_ph(certified.water(temperature_c), certified.alkalinity / 1000.0, ph).dic_mmol_per_kg
    worst = np.abs(1000.0 * carbon - certified.dic).max()
    assert worst <= 0.1
    about = f"certified carbon at {temperature_c:g} degC from certified alkalinity and the pH of PyCO2SYS, in umol/kg"
    compared_grid("certified reference seawaters", about, worst, 0.1, certified.dic.size)
