"""The product against PyCO2SYS, an independent program that runs in tests only.

PyCO2SYS is asked for the same sources (Lueker 2000, Dickson 1990, Uppstrom 1974, Dickson and Riley 1979). What still
differs by default: it converts Kw and the phosphate and silicate constants from the seawater scale by sulfate and
fluoride, where the handbook of 2007 (and the product) takes 0.015 from their logarithms, so its Kw is 0.8 % smaller;
its calcium is counted with 40.087 g/mol, not 40.078 (0.02 % of saturation); its boron is rounded to four digits. Given
the product's Kw, boron and calcium, it agrees to the last digits.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_state import (
    Seawater,
    State,
    from_alkalinity_dic,
    from_alkalinity_pco2,
    from_alkalinity_ph,
    from_dic_ph,
    seawater,
)
from evenwater.engine.carbonate_totals import borate_lee_2010
from tests.evidence import compared_grid

pyco2sys = pytest.importorskip("PyCO2SYS")

SOURCES = {"opt_k_carbonic": 10, "opt_total_borate": 1, "opt_k_fluoride": 1, "opt_pH_scale": 1}
ALKALINITY, DIC, PH, PCO2 = 1, 2, 3, 4

GRID = [
    axis.ravel()
    for axis in np.meshgrid(
        np.linspace(25.0, 40.0, 6),
        np.linspace(15.0, 32.0, 6),
        np.linspace(1.0, 6.0, 6),
        np.array([150.0, 280.0, 420.0, 600.0, 800.0, 1500.0, 3000.0]),
    )
]
SALINITY, TEMPERATURE, ALKALINITIES, PRESSURES = GRID


def reference(first: Any, second: Any, kinds: tuple[int, int], water: Seawater, **more: Any) -> dict[str, Any]:
    constants = water.acids.constants
    named = {"salinity": constants.salinity, "temperature": constants.temperature_c} | SOURCES | more
    found: dict[str, Any] = pyco2sys.sys(first, second, *kinds, **named)
    return found


def same_constants(water: Seawater) -> dict[str, Any]:
    """Return what PyCO2SYS must be told to have the product's own figures throughout."""
    k = water.acids.constants
    return {
        "k_water": k.kw,
        "k_phosphoric_1": k.phosphoric[0],
        "k_phosphoric_2": k.phosphoric[1],
        "k_phosphoric_3": k.phosphoric[2],
        "k_silicate": k.silicic,
        "total_borate": 1e6 * water.acids.borate,
        "total_calcium": 1000.0 * water.calcium_mmol_per_kg,
        "total_phosphate": 1e6 * water.acids.phosphate,
        "total_silicate": 1e6 * water.acids.silicate,
    }


def off(state: State, found: dict[str, Any]) -> tuple[float, float]:
    """Return the largest difference in pH, and in saturation as a share of it."""
    saturation = state.aragonite_saturation / found["saturation_aragonite"] - 1.0
    return float(np.abs(state.ph_total - found["pH_total"]).max()), float(np.abs(saturation).max())


@pytest.fixture(scope="module")
def water() -> Seawater:
    return seawater(SALINITY, TEMPERATURE)


@pytest.fixture(scope="module")
def state(water: Seawater) -> State:
    return from_alkalinity_pco2(water, ALKALINITIES, PRESSURES)


def test_grid_agrees_with_the_reference_as_it_comes(water: Seawater, state: State) -> None:
    """Largest at salinity 40, 32 degC and little alkalinity, where hydroxide, and so Kw, counts most: 0.00005."""
    found = reference(1000.0 * ALKALINITIES, PRESSURES, (ALKALINITY, PCO2), water)
    ph, saturation = off(state, found)
    assert ph <= 1e-4
    assert saturation <= 1e-3
    compared_grid("PyCO2SYS", "pH at salinity 25 to 40 and 15 to 32 degC", ph, 1e-4, state.ph_total.size)
    compared_grid(
        "PyCO2SYS",
        "aragonite saturation at salinity 25 to 40 and 15 to 32 degC, as a share",
        saturation,
        1e-3,
        state.ph_total.size,
    )
    for scale, name in ((PhScale.FREE, "pH_free"), (PhScale.SEAWATER, "pH_sws"), (PhScale.NBS, "pH_nbs")):
        assert np.abs(state.ph(scale) - found[name]).max() <= 1e-4, scale


def test_grid_agrees_to_the_last_digits_with_the_same_constants(water: Seawater, state: State) -> None:
    found = reference(1000.0 * ALKALINITIES, PRESSURES, (ALKALINITY, PCO2), water, **same_constants(water))
    ph, saturation = off(state, found)
    assert ph <= 1e-9
    assert saturation <= 1e-9
    compared_grid(
        "PyCO2SYS", "pH at salinity 25 to 40 and 15 to 32 degC, given our constants", ph, 1e-9, state.ph_total.size
    )
    assert np.allclose(state.dic_mmol_per_kg, found["dic"] / 1000.0, rtol=1e-9, atol=0.0)
    assert np.allclose(state.pco2_uatm, found["pCO2"], rtol=1e-9, atol=0.0)
    assert np.allclose(state.fco2_uatm, found["fCO2"], rtol=1e-9, atol=0.0)
    assert np.allclose(state.bicarbonate_mmol_per_kg, found["bicarbonate"] / 1000.0, rtol=1e-9, atol=0.0)
    for scale, name in ((PhScale.FREE, "pH_free"), (PhScale.SEAWATER, "pH_sws"), (PhScale.NBS, "pH_nbs")):
        assert np.abs(state.ph(scale) - found[name]).max() <= 1e-9, scale


def test_tank_with_its_own_calcium_boron_and_nutrients_agrees() -> None:
    salinity, temperature = np.linspace(25.0, 40.0, 40), np.linspace(32.0, 15.0, 40)
    water = seawater(
        salinity,
        temperature,
        calcium_mmol_per_kg=np.linspace(7.0, 14.0, 40),
        borate_mmol_per_kg=borate_lee_2010(salinity),
        phosphate_mmol_per_kg=np.linspace(0.0, 0.02, 40),
        silicate_mmol_per_kg=np.linspace(0.1, 0.0, 40),
    )
    dic = np.linspace(0.9, 5.0, 40)
    state = from_alkalinity_dic(water, np.linspace(1.0, 6.0, 40), dic)
    found = reference(np.linspace(1000.0, 6000.0, 40), 1000.0 * dic, (ALKALINITY, DIC), water, **same_constants(water))
    ph, saturation = off(state, found)
    assert ph <= 1e-9
    assert saturation <= 1e-9


def test_ph_on_any_scale_is_taken_as_the_reference_takes_it() -> None:
    water = seawater(33.0, 26.0)
    same = same_constants(water)
    for number, scale in enumerate((PhScale.TOTAL, PhScale.SEAWATER, PhScale.FREE, PhScale.NBS), start=1):
        found = reference(2500.0, 8.2, (ALKALINITY, PH), water, **(same | {"opt_pH_scale": number}))
        # The constants told to PyCO2SYS are on the total scale, so only the total pH can be asked back.
        state = from_alkalinity_ph(water, 2.5, 8.2, scale)
        assert float(state.ph_total) == pytest.approx(float(found["pH_total"]), abs=1e-9), scale
    found = reference(2100.0, 8.2, (DIC, PH), water, **same)
    alkalinity = from_dic_ph(water, 2.1, 8.2).alkalinity_meq_per_kg
    assert float(alkalinity) == pytest.approx(float(found["alkalinity"]) / 1000.0, rel=1e-9)


def test_reference_itself_gives_the_published_example() -> None:
    """Example 2 of CO2SYS: pH 7.8 (total) at 25 degC is 7.99035705953435 (seawater scale) at 2 degC and 4000 dbar.

    Alkalinity 2400, silicate 50, phosphate 2 umol/kg, constants of Mehrbach refitted; as printed in its readme,
    salinity 35 as in its other examples. No tank is under pressure, so the product has no such figure; this shows that the
    reference of this file is the published program (its gas constant differs in the sixth digit: 1e-7 of pH).
    """
    found = pyco2sys.sys(
        2400.0,
        7.8,
        ALKALINITY,
        PH,
        salinity=35.0,
        temperature=25.0,
        temperature_out=2.0,
        pressure=0.0,
        pressure_out=4000.0,
        total_silicate=50.0,
        total_phosphate=2.0,
        opt_k_carbonic=4,
        opt_k_fluoride=1,
        opt_gas_constant=1,
    )
    assert float(found["pH_sws_out"]) == pytest.approx(7.99035705953435, abs=1e-6)
