"""Published constants of the minor acids of seawater: bisulfate, fluoride, phosphate, silicate.

They move pH by thousandths, or are needed to go from one pH scale to another. One function per source; salinity is
practical salinity, pressure that of the surface.
"""

from __future__ import annotations

import numpy as np

from evenwater.engine.carbonate_constants import Figure, Floats, floats, kelvin


def ionic_strength(salinity: Figure) -> Floats:
    """Return the ionic strength of seawater of standard composition.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].

    Returns
    -------
    array
        Ionic strength [mol per kg of water].

    Notes
    -----
    Source: Dickson, Sabine and Christian 2007, Guide to best practices, chapter 5.
    """
    s = floats(salinity)
    return 19.924 * s / (1000.0 - 1.005 * s)


def bisulfate_dickson_1990(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return KS of bisulfate, [H+][SO4--]/[HSO4-], on the free scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        KS, free scale [mol/kg].

    Notes
    -----
    Source: Dickson 1990, J. Chem. Thermodyn. 22, 113. Valid for salinity 5 to 45 and 0 to 45 degC.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    i = ionic_strength(s)
    root, log_t = np.sqrt(i), np.log(t)
    pure = -4276.1 / t + 141.328 - 23.093 * log_t
    first = (-13856.0 / t + 324.57 - 47.986 * log_t) * root
    second = (35474.0 / t - 771.54 + 114.723 * log_t) * i
    return np.exp(pure + first + second - 2698.0 / t * i * root + 1776.0 / t * i**2) * (1.0 - 0.001005 * s)


def fluoride_dickson_riley_1979(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return KF of hydrogen fluoride, [H+][F-]/[HF], on the free scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        KF, free scale [mol/kg].

    Notes
    -----
    Source: Dickson and Riley 1979, Mar. Chem. 7, 89, brought to mol per kg of seawater as in Dickson and Goyet 1994.
    Valid for salinity 0 to 45 and 5 to 35 degC (from memory). Preferred to Perez and Fraga 1987, whose figures some
    handbooks take to be on the total scale and some programs on the free one; fluoride moves pH on the total scale by
    less than 0.00001.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    return np.exp(1590.2 / t - 12.641 + 1.525 * np.sqrt(ionic_strength(s))) * (1.0 - 0.001005 * s)


def phosphoric_yao_millero_1995(salinity: Figure, temperature_c: Figure) -> tuple[Floats, Floats, Floats]:
    """Return the three constants of phosphoric acid on the total scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    tuple of three arrays
        KP1, KP2, KP3, total scale [mol/kg].

    Notes
    -----
    Source: Yao and Millero 1995, Aquat. Geochem. 1, 53, as brought to the total scale by Dickson, Sabine and Christian
    2007, chapter 5. Valid for salinity 0 to 45 and 0 to 45 degC.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    root, log_t = np.sqrt(s), np.log(t)
    first = -4576.752 / t + 115.525 - 18.453 * log_t
    first = first + (-106.736 / t + 0.69171) * root + (-0.65643 / t - 0.01844) * s
    second = -8814.715 / t + 172.0883 - 27.927 * log_t
    second = second + (-160.340 / t + 1.3566) * root + (0.37335 / t - 0.05778) * s
    third = -3070.75 / t - 18.141 + (17.27039 / t + 2.81197) * root + (-44.99486 / t - 0.09984) * s
    return np.exp(first), np.exp(second), np.exp(third)


def silicic_yao_millero_1995(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return the first constant of silicic acid on the total scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        KSi, total scale [mol/kg].

    Notes
    -----
    Source: Yao and Millero 1995, Aquat. Geochem. 1, 53, as brought to the total scale by Dickson, Sabine and Christian
    2007, chapter 5. Valid for salinity 0 to 45 and 0 to 45 degC.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    i = ionic_strength(s)
    salting = (-458.79 / t + 3.5913) * np.sqrt(i) + (188.74 / t - 1.5998) * i + (-12.1652 / t + 0.07871) * i**2
    return np.exp(-8904.2 / t + 117.385 - 19.334 * np.log(t) + salting) * (1.0 - 0.001005 * s)
