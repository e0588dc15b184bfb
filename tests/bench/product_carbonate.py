"""A ramp of 1,000 states of the carbonate system, by the product and by PyCO2SYS in turn, in one process.

Both are given the same figures and sources and nothing is kept between calls: constants, solver, pH, saturation and pCO2
are reckoned anew each time. PyCO2SYS is spared its buffer factors; what else nobody asked for it works out along the way.
Salinity and temperature are one figure each, as in a ramp; to spread them over all states would cost the product more.
"""

from __future__ import annotations

import json
import sys
import time
from collections.abc import Callable
from typing import Any

import numpy as np
import PyCO2SYS

from evenwater.engine.carbonate_state import State, from_alkalinity_dic, from_alkalinity_pco2, seawater

STATES = 1000
SALINITY, TEMPERATURE_C = 35.0, 25.0
# From 6.8 to 8.4 dKH or so in a tank that breathes room air [meq/kg, uatm], and the carbon it takes [mmol/kg].
ALKALINITY = np.linspace(2.3, 2.95, STATES)
DIC = np.linspace(2.0, 2.5, STATES)
PCO2_UATM = 420.0
ALIKE = {"salinity": SALINITY, "temperature": TEMPERATURE_C, "opt_buffers_mode": 0}
SOURCES = {"opt_k_carbonic": 10, "opt_total_borate": 1, "opt_k_fluoride": 1, "opt_pH_scale": 1}


def read_off(state: State) -> tuple[Any, Any]:
    """Return pH and saturation, having reckoned pCO2 too."""
    assert state.pco2_uatm.shape == (STATES,)
    return state.ph_total, state.aragonite_saturation


def product_dic() -> tuple[Any, Any]:
    return read_off(from_alkalinity_dic(seawater(SALINITY, TEMPERATURE_C), ALKALINITY, DIC))


def product_pco2() -> tuple[Any, Any]:
    return read_off(from_alkalinity_pco2(seawater(SALINITY, TEMPERATURE_C), ALKALINITY, PCO2_UATM))


def reference_dic() -> tuple[Any, Any]:
    found = PyCO2SYS.sys(1000.0 * ALKALINITY, 1000.0 * DIC, 1, 2, **ALIKE, **SOURCES)
    return found["pH_total"], found["saturation_aragonite"]


def reference_pco2() -> tuple[Any, Any]:
    found = PyCO2SYS.sys(1000.0 * ALKALINITY, PCO2_UATM, 1, 4, **ALIKE, **SOURCES)
    return found["pH_total"], found["saturation_aragonite"]


def timed(work: Callable[[], tuple[Any, Any]]) -> tuple[float, tuple[Any, Any]]:
    """Return how long it took [ms], and what came of it."""
    began = time.perf_counter()
    found = work()
    return (time.perf_counter() - began) * 1000, found


def main() -> None:
    taken: dict[str, list[float]] = {}
    for number in range(int(sys.argv[1]) + 1):  # the first round loads what is loaded late, and is dropped
        for name, product, reference in (
            ("dic", product_dic, reference_dic),
            ("pco2", product_pco2, reference_pco2),
        ):
            ours, (ph, saturation) = timed(product)
            theirs, (their_ph, their_saturation) = timed(reference)
            if np.abs(ph - their_ph).max() > 1e-4 or np.abs(saturation / their_saturation - 1.0).max() > 1e-3:
                sys.exit(f"the two do not reckon the same states ({name})")
            if number:
                taken.setdefault(f"product_{name}", []).append(ours)
                taken.setdefault(f"reference_{name}", []).append(theirs)
    print(json.dumps(taken))


if __name__ == "__main__":
    main()
