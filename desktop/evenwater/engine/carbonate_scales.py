"""The four scales that a pH of seawater may be on, and the way from one to another.

They count different hydrogen: ``free`` the bare ion; ``total`` also that on sulfate; ``seawater`` also that on
fluoride; ``NBS`` is what a meter shows that was set with ordinary buffers, an activity. At salinity 35 and 25 degC the
NBS figure is 0.14 above the total one, the free 0.11 above, the seawater 0.01 below.
"""

from __future__ import annotations

from enum import StrEnum

import numpy as np

from evenwater.engine.carbonate_constants import Figure, Floats, floats, kelvin


class PhScale(StrEnum):
    """Name of a pH scale."""

    TOTAL = "total"
    FREE = "free"
    SEAWATER = "seawater"
    NBS = "NBS"


def hydrogen_activity_takahashi_1982(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return the apparent activity coefficient of hydrogen between the seawater and the NBS scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        10^-pH(NBS) over [H+] on the seawater scale [kg/mol].

    Notes
    -----
    Source: Takahashi, Williams and Bos 1982, GEOSECS Pacific Expedition 3, 77. Valid for salinity 20 to 40. It holds
    the junction potential of a typical electrode; a single electrode may differ by several hundredths.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    return 1.2948 - 0.002036 * t + (0.0004607 - 0.000001475 * t) * s**2


def offset_from_total(scale: PhScale, total_over_free: Floats, seawater_over_free: Floats, activity: Floats) -> Floats:
    """Return what is added to a pH on the total scale to have it on another.

    Parameters
    ----------
    scale : PhScale
        The other scale.
    total_over_free : array
        [H+] on the total scale over [H+] on the free scale [-].
    seawater_over_free : array
        [H+] on the seawater scale over [H+] on the free scale [-].
    activity : array
        Apparent activity coefficient of hydrogen on the seawater scale [kg/mol].

    Returns
    -------
    array
        Difference of pH [-].
    """
    match scale:
        case PhScale.TOTAL:
            return np.zeros_like(total_over_free)
        case PhScale.FREE:
            return np.log10(total_over_free)
        case PhScale.SEAWATER:
            return np.log10(total_over_free / seawater_over_free)
        case PhScale.NBS:
            return np.log10(total_over_free / seawater_over_free / activity)
