"""Two magnesium salts in one jug, in the proportion that leaves seawater's balance of sulfate as it is."""

from __future__ import annotations

from itertools import permutations

from evenwater.engine.catalogue import Chemical
from evenwater.engine.formula import molar_mass
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved, Portion

# Millero, Feistel, Wright and McDougall 2008, Deep-Sea Res. I 55, 50, table 4: moles per kilogram of seawater at
# salinity 35.
_SULFATE_MOL_PER_KG, _MAGNESIUM_MOL_PER_KG = 0.0282352, 0.0528171
SULFATE_PER_MAGNESIUM = _SULFATE_MOL_PER_KG / _MAGNESIUM_MOL_PER_KG


def balanced(first: Portion, second: Portion, mg_per_ml: float, made_up_l: float) -> Dissolved | Reason:
    """Return the batch of two magnesium salts that carries sulfate and magnesium as seawater has them.

    Parameters
    ----------
    first, second : Portion
        The two salts with the purity of their bags; their masses are not looked at.
    mg_per_ml : float
        Wanted magnesium [mg/mL].
    made_up_l : float
        Volume made up to [L].

    Returns
    -------
    Dissolved or Reason
        The batch as it is weighed out, or why these two cannot be balanced.
    """
    shares = _shares(first.chemical, second.chemical)
    if shares is None:
        params = {"first": first.chemical.name, "second": second.chemical.name}
        return Reason("no_balance", params, "additive.also.chemical")
    magnesium_mol = mg_per_ml * made_up_l / molar_mass("Mg")
    weighed = tuple(
        Portion(
            portion.chemical,
            magnesium_mol
            * share
            / portion.chemical.per_mole("Mg")
            * molar_mass(portion.chemical.formula)
            / portion.purity,
            portion.purity,
        )
        for portion, share in zip((first, second), shares, strict=True)
    )
    return Dissolved(weighed[0].chemical, weighed[0].grams, made_up_l, weighed[0].purity, (weighed[1],))


def _shares(first: Chemical, second: Chemical) -> tuple[float, float] | None:
    """Return the share of the magnesium that each salt brings [1]; None when they cannot meet the balance."""
    if first.per_mole("Mg") <= 0.0 or second.per_mole("Mg") <= 0.0:
        return None
    one, other = (c.per_mole("SO4") / c.per_mole("Mg") for c in (first, second))
    if one == other:
        return None
    share = (SULFATE_PER_MAGNESIUM - other) / (one - other)
    return (share, 1.0 - share) if 0.0 <= share <= 1.0 else None


def sulfate_per_magnesium(batch: Dissolved) -> float | None:
    """Return the sulfate that a batch brings with its magnesium.

    Parameters
    ----------
    batch : Dissolved
        The batch.

    Returns
    -------
    float or None
        Moles of sulfate per mole of magnesium [1]; None of a batch without magnesium.
    """
    moles = {
        what: sum(
            p.grams * p.purity / molar_mass(p.chemical.formula) * p.chemical.per_mole(what) for p in batch.portions
        )
        for what in ("SO4", "Mg")
    }
    return moles["SO4"] / moles["Mg"] if moles["Mg"] > 0.0 else None


# What falls out when both are in one jug: chalk, magnesium carbonate or hydroxide, gypsum, strontium sulfate.
_PRECIPITATES = (("alkalinity", ("Ca", "Mg", "Sr")), ("SO4", ("Ca", "Sr")), ("PO4", ("Ca", "Mg", "Sr")))


def incompatible(batch: Dissolved, path: str) -> Reason | None:
    """Return why the chemicals of a batch must not stand in one jug, or None when they may (H20).

    Parameters
    ----------
    batch : Dissolved
        The batch.
    path : str
        Path of the field that names the further chemical.

    Returns
    -------
    Reason or None
        The two that fall out with each other. Source: solubility rules of any chemistry handbook, from memory.
    """
    for one, other in permutations((portion.chemical for portion in batch.portions), 2):
        # Borate falls out with the same metals, once a base has made it of boric acid.
        borate = one.per_mole("B") > 0.0 and other.per_mole("alkalinity") > 0.0
        if borate and any(other.per_mole(c) > 0.0 for c in _PRECIPITATES[0][1]):
            return Reason("never_in_one_jug", {"first": one.name, "second": other.name}, path)
        for anion, cations in _PRECIPITATES:
            if one.per_mole(anion) > 0.0 and any(other.per_mole(c) > 0.0 for c in cations):
                return Reason("never_in_one_jug", {"first": one.name, "second": other.name}, path)
    return None
