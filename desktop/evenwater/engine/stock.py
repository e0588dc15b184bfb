"""The stock solution: what one millilitre carries, and whether it can dissolve at all."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.engine.catalogue import Chemical
from evenwater.engine.quantities import Water, density_kg_per_l

# A room's coolest hour, at which a stock must still be dissolved; common practice, no source.
ROOM_C = 20.0
NEARLY_SATURATED = 0.9


@dataclass(frozen=True)
class Dissolved:
    """A batch made by dissolving a weighed chemical and making up with water.

    ``grams`` [g] as weighed, ``made_up_l`` [L] after making up, ``purity`` the mass fraction.
    """

    chemical: Chemical
    grams: float
    made_up_l: float
    purity: float = 1.0


@dataclass(frozen=True)
class Labelled:
    """A bottle known only by its label: ``dose_ml`` [mL] raises ``water_l`` [L] by ``raises``.

    ``raises`` is in the canonical unit of ``kind``, the kind of quantity the label speaks of.
    """

    dose_ml: float
    water_l: float
    raises: float
    kind: str


Additive = Dissolved | Labelled


def strength(additive: Additive, parameter: str, kind: str, water: Water | None = None) -> float:
    """Return what one millilitre of the stock carries of a parameter.

    Parameters
    ----------
    additive : Dissolved or Labelled
        The batch.
    parameter : str
        Name of the parameter to raise.
    kind : str
        The parameter's kind of quantity, which a label must match.
    water : Water or None
        The tank's water; salinity is counted per kilogram of it.

    Returns
    -------
    float
        Alkalinity [meq/mL]; an ion [mg/mL]; salinity [g/kg of one litre per mL]; zero when the
        stock does not raise the parameter.
    """
    if isinstance(additive, Labelled):
        return additive.raises * additive.water_l / additive.dose_ml if additive.kind == kind else 0.0
    carried = carried_per_ml(additive, parameter)
    return carried / density_kg_per_l(water or Water()) if parameter == "salinity" else carried


def carried_per_ml(additive: Dissolved, parameter: str) -> float:
    """Return what one millilitre carries of any parameter, meant or not.

    Parameters
    ----------
    additive : Dissolved
        The batch.
    parameter : str
        Name of the parameter.

    Returns
    -------
    float
        Alkalinity [meq/mL], an ion [mg/mL] or dry salt [g/mL].
    """
    grams_per_ml = additive.grams * additive.purity / (additive.made_up_l * 1000.0)
    return grams_per_ml * additive.chemical.per_gram(parameter)


def saturation(additive: Dissolved, temperature_c: float = ROOM_C) -> float | None:
    """Return how near the batch is to the most that dissolves.

    Parameters
    ----------
    additive : Dissolved
        The batch.
    temperature_c : float
        Coolest temperature of the stock [degC].

    Returns
    -------
    float or None
        Mass made up over the mass that dissolves [1]; None when no solubility is known.
    """
    most = additive.chemical.most_per_litre(temperature_c)
    if most is None:
        return None
    return additive.grams * additive.purity / additive.made_up_l / most


def better_warm(chemical: Chemical) -> bool:
    """Return whether more of a chemical dissolves in the warm, as of all but lime."""
    rows = chemical.solubility
    return not rows or rows[-1][1] >= rows[0][1]


def grams_for(chemical: Chemical, parameter: str, per_ml: float, made_up_l: float, purity: float = 1.0) -> float:
    """Return the mass to weigh out for a stock of a wanted strength.

    Parameters
    ----------
    chemical : Chemical
        What is dissolved.
    parameter : str
        The parameter the strength is counted in.
    per_ml : float
        Wanted strength [meq/mL or mg/mL].
    made_up_l : float
        Volume made up to [L].
    purity : float
        Mass fraction of the chemical in the bag [1].

    Returns
    -------
    float
        Mass to weigh [g].

    Raises
    ------
    ValueError
        When the chemical carries none of the parameter.
    """
    per_gram = chemical.per_gram(parameter)
    if per_gram <= 0.0:
        raise ValueError(f"{chemical.name} does not raise {parameter}")
    return per_ml * made_up_l * 1000.0 / (per_gram * purity)
