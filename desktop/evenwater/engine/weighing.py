"""From weighed mass to volume: the Z factor, with the air that carries a part of what is weighed.

Sources: ISO 8655-6 and ISO 4787, volume = mass times Z, where Z = (1 - air / weights) / (liquid - air) in densities; the density
of moist air by the approximate formula of OIML R 111-1:2004, E.3 (coefficients from memory; with them the table of ISO 8655-6 is met to
its last digit); the density of water and seawater by TEOS-10. Weights of 8 g per mL are the convention of OIML R 111-1 and of
every household scale.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from evenwater.engine.quantities import Water, density_kg_per_l

WEIGHTS_G_PER_ML = 8.0
_ZERO_C = 273.15


@dataclass(frozen=True)
class Conditions:
    """What was weighed, and in which air.

    ``liquid`` is the water with its salinity (0 for fresh water) and temperature, ``air_c`` [degC], ``pressure_hpa`` [hPa],
    ``humidity`` relative [%], ``weights`` the density of the scale's weights [g/mL].
    """

    liquid: Water
    air_c: float
    pressure_hpa: float
    humidity: float
    weights: float = WEIGHTS_G_PER_ML

    @property
    def z_ml_per_g(self) -> float:
        """The Z factor [mL/g]."""
        air = air_density(self.air_c, self.pressure_hpa, self.humidity)
        return z_factor(density_kg_per_l(self.liquid), air, self.weights)


@dataclass(frozen=True)
class HalfWidths:
    """How far each condition may be off: half widths of what it lies within [units of ``Conditions``]."""

    water_c: float
    salinity: float
    air_c: float
    pressure_hpa: float
    humidity: float


def air_density(degc: float, pressure_hpa: float, humidity: float) -> float:
    """Return the density of moist air.

    Parameters
    ----------
    degc : float
        Temperature of the air [degC].
    pressure_hpa : float
        Air pressure where the scale stands, not at sea level [hPa].
    humidity : float
        Relative humidity [%].

    Returns
    -------
    float
        Density [g/mL].
    """
    return (0.34848 * pressure_hpa - 0.009 * humidity * math.exp(0.061 * degc)) / (_ZERO_C + degc) / 1000.0


def z_factor(liquid: float, air: float, weights: float = WEIGHTS_G_PER_ML) -> float:
    """Return what volume a weighed gram has.

    Parameters
    ----------
    liquid : float
        Density of the liquid [g/mL].
    air : float
        Density of the air [g/mL].
    weights : float
        Density of the weights the scale was adjusted with [g/mL].

    Returns
    -------
    float
        Z factor [mL/g].
    """
    return (1.0 - air / weights) / (liquid - air)


def z_uncertainty(conditions: Conditions, off: HalfWidths) -> float:
    """Return how well the Z factor is known, each condition lying anywhere within its half width.

    Parameters
    ----------
    conditions : Conditions
        The conditions.
    off : HalfWidths
        How far each may be off.

    Returns
    -------
    float
        Standard uncertainty of the Z factor over itself [1].

    Notes
    -----
    Half the difference between both ends over the square root of three for each (JCGM 100:2008, 4.3.7 and 5.1.3, note 2).
    """
    liquid, z = conditions.liquid, conditions.z_ml_per_g
    pairs = (
        [
            replace(conditions, liquid=replace(liquid, temperature_c=liquid.temperature_c + s * off.water_c))
            for s in (-1, 1)
        ],
        # No water has less than no salt in it.
        [
            replace(conditions, liquid=replace(liquid, salinity=max(0.0, liquid.salinity + s * off.salinity)))
            for s in (-1, 1)
        ],
        [replace(conditions, air_c=conditions.air_c + s * off.air_c) for s in (-1, 1)],
        [replace(conditions, pressure_hpa=conditions.pressure_hpa + s * off.pressure_hpa) for s in (-1, 1)],
        [replace(conditions, humidity=conditions.humidity + s * off.humidity) for s in (-1, 1)],
    )
    return math.hypot(*((high.z_ml_per_g - low.z_ml_per_g) / 2.0 for low, high in pairs)) / math.sqrt(3.0) / z
