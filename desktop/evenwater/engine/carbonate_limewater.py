"""The pH of limewater, which is no seawater: calcium hydroxide in fresh water, with its activities."""

from __future__ import annotations

import numpy as np

from evenwater.engine.carbonate_constants import Figure, Floats, floats, kelvin

# Association of Ca++ with OH- at 25 degC: log K of the hydrolysis of Ca++, -12.78 (phreeqc.dat of PHREEQC 3), plus pKw,
# 14.00. Published figures run from 1.15 to 1.40 (from memory), which is 12.47 to 12.45 in pH at saturation.
_PAIRING = 10.0**1.22
# The strength and the pairing depend on each other; each round brings the error down about seventeenfold.
_ROUNDS = 15


def pure_water_harned_owen_1958(temperature_c: Figure) -> Floats:
    """Return the ion product of pure water, of activities.

    Parameters
    ----------
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        Kw [mol2/kg2].

    Notes
    -----
    Source: Harned and Owen 1958, fitted by Millero 1979, Geochim. Cosmochim. Acta 43, 1651. Valid for 0 to 50 degC
    (from memory). In fresh water the scales of pH are one.
    """
    t = kelvin(temperature_c)
    return np.exp(148.9802 - 13847.26 / t - 23.6521 * np.log(t))


def debye_huckel_slope(temperature_c: Figure) -> Floats:
    """Return the Debye-Hueckel slope A of water, for common logarithms.

    Parameters
    ----------
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        A [kg^0.5/mol^0.5].

    Notes
    -----
    Source: 1.82e6 (D T)^-1.5 (Stumm and Morgan 1996, Aquatic Chemistry) with the dielectric constant D of Malmberg
    and Maryott 1956, J. Res. NBS 56, 1. Valid for 0 to 100 degC.
    """
    c = floats(temperature_c)
    dielectric = 87.740 - 0.40008 * c + 9.398e-4 * c**2 - 1.410e-6 * c**3
    return 1.82e6 * (dielectric * kelvin(c)) ** -1.5


def limewater_ph(calcium_hydroxide_mol_per_l: Figure, temperature_c: Figure) -> Floats:
    """Return the pH of clear limewater that has taken up no carbon dioxide.

    Parameters
    ----------
    calcium_hydroxide_mol_per_l : float or array
        Dissolved calcium hydroxide [mol/L], up to saturation.
    temperature_c : float or array
        Temperature [degC].

    Returns
    -------
    array
        pH as an activity, the scale of ordinary buffers (NBS) [-].

    Notes
    -----
    Source: Davies 1962, Ion Association, for the activities; Harned and Owen 1958 for the ion product of water. The
    pairing of Ca++ and OH- is taken as at 25 degC. A litre is taken as a kilogram of water. Valid from 0.001 mol/L,
    below which the hydroxide of water itself and carbon dioxide of the air decide.
    """
    total, a = floats(calcium_hydroxide_mol_per_l), debye_huckel_slope(temperature_c)
    paired = np.zeros(np.broadcast_shapes(total.shape, a.shape))
    for _ in range(_ROUNDS):
        # 4 [Ca++] + [CaOH+] + [OH-], halved.
        root = np.sqrt(0.5 * (4.0 * (total - paired) + paired + (2.0 * total - paired)))
        single = np.power(10.0, -a * (root / (1.0 + root) - 0.3 * root**2))
        # Activities of Ca++ and OH- over that of CaOH+: coefficients to the power 4 + 1 - 1 of a single charge.
        free = 2.0 * total - paired
        bound = _PAIRING * single**4 * free
        paired = total * bound / (1.0 + bound)
    hydroxide = single * (2.0 * total - paired)
    return np.log10(hydroxide / pure_water_harned_owen_1958(temperature_c))
