"""What seawater of standard composition holds, in proportion to salinity: boron, sulfate, fluoride, calcium.

A tank that is dosed departs from the proportion first in calcium, so calcium from here is only a stand-in for a
measurement. The rest is rarely measured, and is taken from here.
"""

from __future__ import annotations

from evenwater.engine.carbonate_constants import Figure, Floats, floats

# Practical salinity over chlorinity [g/kg], by definition of 1969.
_SALINITY_PER_CHLORINITY = 1.80655


def borate_uppstrom_1974(salinity: Figure) -> Floats:
    """Return total boron of seawater, boric acid and borate together.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].

    Returns
    -------
    array
        Total boron [mmol/kg].

    Notes
    -----
    Source: Uppstrom 1974, Deep-Sea Res. 21, 161: 0.232 mg/kg per unit of chlorinity. The constants of Lueker et al.
    2000 were reduced with it, so it goes with them.
    """
    return 0.232 / 10.811 * floats(salinity) / _SALINITY_PER_CHLORINITY


def borate_lee_2010(salinity: Figure) -> Floats:
    """Return total boron of seawater, boric acid and borate together, by the newer and larger figure.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].

    Returns
    -------
    array
        Total boron [mmol/kg].

    Notes
    -----
    Source: Lee et al. 2010, Geochim. Cosmochim. Acta 74, 1801: 0.4326 mmol/kg at salinity 35.
    """
    return 0.4326 * floats(salinity) / 35.0


def sulfate_morris_riley_1966(salinity: Figure) -> Floats:
    """Return total sulfate of seawater, with bisulfate.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].

    Returns
    -------
    array
        Total sulfate [mmol/kg].

    Notes
    -----
    Source: Morris and Riley 1966, Deep-Sea Res. 13, 699: 0.1400 of chlorinity by mass.
    """
    return 140.0 / 96.062 * floats(salinity) / _SALINITY_PER_CHLORINITY


def fluoride_riley_1965(salinity: Figure) -> Floats:
    """Return total fluoride of seawater, with hydrogen fluoride.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].

    Returns
    -------
    array
        Total fluoride [mmol/kg].

    Notes
    -----
    Source: Riley 1965, Deep-Sea Res. 12, 219: 6.7e-5 of chlorinity by mass.
    """
    return 0.067 / 18.998 * floats(salinity) / _SALINITY_PER_CHLORINITY


def calcium_riley_tongudai_1967(salinity: Figure) -> Floats:
    """Return the calcium of natural seawater, for a tank whose own was not measured.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].

    Returns
    -------
    array
        Calcium [mmol/kg].

    Notes
    -----
    Source: Riley and Tongudai 1967, Chem. Geol. 2, 263: 0.02128 of chlorinity by mass.
    """
    return 21.28 / 40.078 * floats(salinity) / _SALINITY_PER_CHLORINITY
