"""Published constants of carbonic acid, boric acid, water and aragonite in seawater, one function per source.

Salinity is practical salinity, pressure that of the surface. Figures outside a stated validity are extrapolated;
``carbonate_equilibria`` says when that happens.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]
Figure = float | Floats

_ZERO_C_IN_K = 273.15
# CODATA 2018, in the unit that goes with virial coefficients in cm3/mol and pressures in bar.
_GAS_BAR_CM3 = 83.14462618
_ATMOSPHERE_BAR = 1.01325


def floats(figure: Figure) -> Floats:
    """Return a figure as an array.

    Parameters
    ----------
    figure : float or array
        Any figure [any unit].

    Returns
    -------
    array
        The same [same unit].
    """
    return np.asarray(figure, dtype=np.float64)


def kelvin(temperature_c: Figure) -> Floats:
    """Return the absolute temperature.

    Parameters
    ----------
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        The same [K].
    """
    return floats(temperature_c) + _ZERO_C_IN_K


def co2_solubility_weiss_1974(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return K0, the solubility of carbon dioxide: [CO2] over its fugacity.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        K0 [mol/(kg atm)].

    Notes
    -----
    Source: Weiss 1974, Mar. Chem. 2, 203. Valid for salinity 0 to 40 and -1 to 40 degC.
    """
    s, hundreds = floats(salinity), kelvin(temperature_c) / 100.0
    salting = 0.023517 - 0.023656 * hundreds + 0.0047036 * hundreds**2
    return np.exp(-60.2409 + 93.4517 / hundreds + 23.3585 * np.log(hundreds) + s * salting)


def fugacity_coefficient_weiss_1974(temperature_c: Figure) -> Floats:
    """Return the fugacity of carbon dioxide in air over its partial pressure, at one atmosphere.

    Parameters
    ----------
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        fCO2 over pCO2 [-].

    Notes
    -----
    Source: virial coefficients of Weiss 1974, Mar. Chem. 2, 203, for little CO2 in air (its mole fraction is neglected
    against one). Valid for -8 to 55 degC.
    """
    t = kelvin(temperature_c)
    pure = -1636.75 + 12.0408 * t - 0.0327957 * t**2 + 3.16528e-5 * t**3
    with_air = 57.7 - 0.118 * t
    return np.exp((pure + 2.0 * with_air) * _ATMOSPHERE_BAR / (_GAS_BAR_CM3 * t))


def carbonic_k1_lueker_2000(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return K1 of carbonic acid, [H+][HCO3-]/[CO2], on the total scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        K1, total scale [mol/kg].

    Notes
    -----
    Source: Lueker, Dickson and Keeling 2000, Mar. Chem. 70, 105. Valid for salinity 19 to 43 and 2 to 35 degC.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    pk = 3633.86 / t - 61.2172 + 9.67770 * np.log(t) - 0.011555 * s + 0.0001152 * s**2
    return np.power(10.0, -pk)


def carbonic_k2_lueker_2000(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return K2 of carbonic acid, [H+][CO3--]/[HCO3-], on the total scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        K2, total scale [mol/kg].

    Notes
    -----
    Source: Lueker, Dickson and Keeling 2000, Mar. Chem. 70, 105. Valid for salinity 19 to 43 and 2 to 35 degC.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    pk = 471.78 / t + 25.9290 - 3.16967 * np.log(t) - 0.01781 * s + 0.0001122 * s**2
    return np.power(10.0, -pk)


def boric_dickson_1990(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return KB of boric acid, [H+][B(OH)4-]/[B(OH)3], on the total scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        KB, total scale [mol/kg].

    Notes
    -----
    Source: Dickson 1990, Deep-Sea Res. 37, 755. Valid for salinity 5 to 45 and 0 to 45 degC.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    root = np.sqrt(s)
    over_t = -8966.90 - 2890.53 * root - 77.942 * s + 1.728 * s * root - 0.0996 * s**2
    plain = 148.0248 + 137.1942 * root + 1.62142 * s
    log_t = 24.4344 + 25.085 * root + 0.2474 * s
    return np.exp(over_t / t + plain - log_t * np.log(t) + 0.053105 * root * t)


def water_millero_1995(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return Kw, the ion product of water, [H+][OH-], on the total scale.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        Kw, total scale [mol2/kg2].

    Notes
    -----
    Source: Millero 1995, Geochim. Cosmochim. Acta 59, 661, as brought to the total scale by Dickson, Sabine and
    Christian 2007, chapter 5 (148.9652 where the seawater scale has 148.9802). Valid for salinity 0 to 45 and 0 to 45
    degC. Programs that convert the scale by sulfate and fluoride get a Kw that is 0.7 % smaller.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    salting = (-5.977 + 118.67 / t + 1.0495 * np.log(t)) * np.sqrt(s) - 0.01615 * s
    return np.exp(148.9652 - 13847.26 / t - 23.6521 * np.log(t) + salting)


def aragonite_mucci_1983(salinity: Figure, temperature_c: Figure) -> Floats:
    """Return the solubility product of aragonite, [Ca++][CO3--] where it neither grows nor dissolves.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        Stoichiometric solubility product [mol2/kg2].

    Notes
    -----
    Source: Mucci 1983, Am. J. Sci. 283, 780. Valid for salinity 5 to 44 and 5 to 40 degC, in water with the
    magnesium of seawater.
    """
    s, t = floats(salinity), kelvin(temperature_c)
    root = np.sqrt(s)
    pure = -171.945 - 0.077993 * t + 2903.293 / t + 71.595 * np.log10(t)
    salting = (-0.068393 + 0.0017276 * t + 88.135 / t) * root - 0.10018 * s + 0.0059415 * s * root
    return np.power(10.0, pure + salting)
