"""All constants for one salinity and temperature, and what takes pH from one scale to another."""

from __future__ import annotations

from dataclasses import dataclass, fields
from functools import lru_cache
from typing import Any

import numpy as np
import numpy.typing as npt

from evenwater.engine import carbonate_constants as major
from evenwater.engine import carbonate_minor as minor
from evenwater.engine import carbonate_totals as totals
from evenwater.engine.carbonate_constants import Figure, Floats, floats
from evenwater.engine.carbonate_scales import PhScale, hydrogen_activity_takahashi_1982, offset_from_total

# Where all constants were measured: salinity from Lueker et al. 2000 to Weiss 1974, temperature from Mucci 1983 to
# Lueker et al. 2000.
MEASURED_SALINITY = (19.0, 40.0)
MEASURED_TEMPERATURE_C = (5.0, 35.0)


@dataclass(frozen=True, eq=False)
class Equilibria:
    """Constants at one salinity and temperature, or at many (arrays that broadcast together).

    ``k0`` [mol/(kg atm)] and ``fugacity`` (fCO2 over pCO2 [-]); ``kw`` and ``aragonite`` [mol2/kg2]; the acids
    [mol/kg], all on the total scale but ``bisulfate`` and ``fluoride``, which are on the free scale.
    ``total_over_free`` and ``seawater_over_free`` are ratios of [H+] between scales [-], ``activity`` is the
    coefficient of the NBS scale [kg/mol]. Sulfate and fluoride are totals [mol/kg].
    """

    salinity: Floats
    temperature_c: Floats
    k0: Floats
    fugacity: Floats
    k1: Floats
    k2: Floats
    kw: Floats
    boric: Floats
    phosphoric: tuple[Floats, Floats, Floats]
    silicic: Floats
    bisulfate: Floats
    fluoride: Floats
    aragonite: Floats
    total_sulfate: Floats
    total_fluoride: Floats
    total_over_free: Floats
    seawater_over_free: Floats
    activity: Floats

    def ph_offset(self, scale: PhScale) -> Floats:
        """Return what is added to a pH on the total scale to have it on another.

        Parameters
        ----------
        scale : PhScale
            The other scale.

        Returns
        -------
        array
            Difference of pH [-].
        """
        return offset_from_total(scale, self.total_over_free, self.seawater_over_free, self.activity)

    def measured_here(self) -> npt.NDArray[np.bool_]:
        """Return whether all constants were measured at this salinity and temperature, or some are extrapolated.

        Returns
        -------
        array of bool
            True where none is extrapolated [-].
        """
        s, t = self.salinity, self.temperature_c
        salty = (s >= MEASURED_SALINITY[0]) & (s <= MEASURED_SALINITY[1])
        return np.asarray(salty & (t >= MEASURED_TEMPERATURE_C[0]) & (t <= MEASURED_TEMPERATURE_C[1]))


def equilibria(salinity: Figure, temperature_c: Figure) -> Equilibria:
    """Return all constants for a salinity and a temperature.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    Equilibria
        Constants on the total scale.

    Notes
    -----
    The scales are defined as by Dickson, Sabine and Christian 2007, chapter 2: [H+] total is free times 1 + sulfate/KS,
    seawater is free times 1 + sulfate/KS + fluoride/KF.
    """
    s, t = floats(salinity), floats(temperature_c)
    sulfate = totals.sulfate_morris_riley_1966(s) / 1000.0
    fluoride = totals.fluoride_riley_1965(s) / 1000.0
    bisulfate = minor.bisulfate_dickson_1990(s, t)
    total_over_free = 1.0 + sulfate / bisulfate
    hydrogen_fluoride = minor.fluoride_dickson_riley_1979(s, t)
    return Equilibria(
        salinity=s,
        temperature_c=t,
        k0=major.co2_solubility_weiss_1974(s, t),
        fugacity=major.fugacity_coefficient_weiss_1974(t),
        k1=major.carbonic_k1_lueker_2000(s, t),
        k2=major.carbonic_k2_lueker_2000(s, t),
        kw=major.water_millero_1995(s, t),
        boric=major.boric_dickson_1990(s, t),
        phosphoric=minor.phosphoric_yao_millero_1995(s, t),
        silicic=minor.silicic_yao_millero_1995(s, t),
        bisulfate=bisulfate,
        fluoride=hydrogen_fluoride,
        aragonite=major.aragonite_mucci_1983(s, t),
        total_sulfate=sulfate,
        total_fluoride=fluoride,
        total_over_free=total_over_free,
        seawater_over_free=total_over_free + fluoride / hydrogen_fluoride,
        activity=hydrogen_activity_takahashi_1982(s, t),
    )


@lru_cache(maxsize=64)
def plain_equilibria(salinity: float, temperature_c: float) -> Equilibria:
    """Return all constants for one salinity and temperature as plain floats, for those who solve one water at a time.

    Parameters
    ----------
    salinity : float
        Practical salinity [-].
    temperature_c : float
        Temperature [degC].

    Returns
    -------
    Equilibria
        Constants on the total scale; those of the waters asked for last are kept.
    """
    found = equilibria(salinity, temperature_c)
    plain: dict[str, Any] = {}
    for field in fields(Equilibria):
        value = getattr(found, field.name)
        plain[field.name] = tuple(map(float, value)) if isinstance(value, tuple) else float(value)
    return Equilibria(**plain)
