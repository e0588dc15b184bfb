"""Molar masses, computed from formulas and standard atomic weights, never typed."""

from __future__ import annotations

from functools import cache

from evenwater.engine.library_figures import MOLAR_MASSES


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
    digit, which the published recipes would show. What is weighed often was asked of it beforehand.
    """
    known = MOLAR_MASSES.get(formula)
    return by_periodictable(formula) if known is None else known


def by_periodictable(formula: str) -> float:
    """Return the molar mass of a formula as periodictable gives it.

    Parameters
    ----------
    formula : str
        Chemical formula, as in ``molar_mass``.

    Returns
    -------
    float
        Molar mass [g/mol].

    Raises
    ------
    ValueError
        When the formula cannot be read.
    """
    from periodictable import formulas

    return float(formulas.formula(formula).mass)
