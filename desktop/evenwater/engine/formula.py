"""Molar masses, computed from formulas and standard atomic weights, never typed."""

from __future__ import annotations

from functools import cache


@cache
def molar_mass(formula: str) -> float:
    """Return the molar mass of a formula.

    Parameters
    ----------
    formula : str
        Chemical formula, water of crystallisation in brackets: ``"CaCl2(H2O)2"``.

    Returns
    -------
    float
        Molar mass [g/mol].

    Raises
    ------
    ValueError
        When the formula cannot be read.

    Notes
    -----
    Source: periodictable, whose atomic weights are the CIAAW standard (conventional where CIAAW
    gives an interval). molmass loads faster but rounds sodium and sulfur differently in the sixth
    digit, which the published recipes would show.
    """
    from periodictable import formulas

    return float(formulas.formula(formula).mass)
