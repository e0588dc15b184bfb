"""The stock solution: what one millilitre carries, and whether it can dissolve at all."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.engine.catalogue import Chemical
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Water, density_kg_per_l

# A room's coolest hour, at which a stock must still be dissolved; common practice, no source.
ROOM_C = 20.0
NEARLY_SATURATED = 0.9


@dataclass(frozen=True)
class Portion:
    """One chemical of a batch: ``grams`` [g] as weighed, ``purity`` the mass fraction."""

    chemical: Chemical
    grams: float
    purity: float = 1.0


@dataclass(frozen=True)
class Dissolved:
    """A batch made by dissolving a weighed chemical, or several, and making up with water.

    ``grams`` [g] as weighed, ``made_up_l`` [L] after making up, ``purity`` the mass fraction; ``also`` are the further
    chemicals of a mix. ``coolest_c`` [degC] is the lowest temperature at which the batch must stay dissolved. A
    ``saturated`` batch is the clear solution over more than can dissolve: ``grams`` is then what is in solution.
    """

    chemical: Chemical
    grams: float
    made_up_l: float
    purity: float = 1.0
    also: tuple[Portion, ...] = ()
    coolest_c: float = ROOM_C
    saturated: bool = False

    @property
    def portions(self) -> tuple[Portion, ...]:
        """Every chemical of the batch, the first one first."""
        return (Portion(self.chemical, self.grams, self.purity), *self.also)

    @property
    def name(self) -> str:
        """The full names of the chemicals."""
        return " and ".join(portion.chemical.name for portion in self.portions)

    @property
    def tall_man(self) -> str:
        """The full names with the parts that tell look-alikes apart in capitals."""
        return " and ".join(portion.chemical.tall_man for portion in self.portions)

    @property
    def signal_word(self) -> str:
        """The strongest signal word of the chemicals; empty when none has one."""
        said = {portion.chemical.signal_word for portion in self.portions}
        return next((word for word in _SIGNAL_WORDS if word in said), "")

    @property
    def statements(self) -> tuple[str, ...]:
        """The hazard statements of all chemicals, each once."""
        return tuple(dict.fromkeys(line for portion in self.portions for line in portion.chemical.statements))

    @property
    def cautions(self) -> tuple[str, ...]:
        """The handling lines of all chemicals, each once."""
        return tuple(dict.fromkeys(line for portion in self.portions for line in portion.chemical.cautions))

    @property
    def restricted(self) -> bool:
        """Whether one of the chemicals is only for trained people."""
        return any(portion.chemical.restricted for portion in self.portions)


# The stronger first, as in the Globally Harmonized System.
_SIGNAL_WORDS = ("Danger", "Warning")


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
    if parameter != "salinity" or carried <= 0.0:
        return carried
    # In a jug that is meant for salinity every salt counts, whatever else it was put in for.
    dry = sum(
        p.grams * p.purity * molar_mass(p.chemical.dry) / molar_mass(p.chemical.formula) for p in additive.portions
    )
    return dry / (additive.made_up_l * 1000.0) / density_kg_per_l(water or Water())


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
    per_batch = sum(p.grams * p.purity * p.chemical.per_gram(parameter) for p in additive.portions)
    return per_batch / (additive.made_up_l * 1000.0)


def moles_per_ml(additive: Dissolved, what: str) -> float:
    """Return how much of something that is counted in moles one millilitre carries.

    Parameters
    ----------
    additive : Dissolved
        The batch.
    what : str
        ``"alkalinity"`` (in equivalents), ``"DIC"`` or an ion, as in the data file.

    Returns
    -------
    float
        Amount [mmol/mL or meq/mL].
    """
    per_batch = sum(
        p.grams * p.purity / molar_mass(p.chemical.formula) * p.chemical.per_mole(what) for p in additive.portions
    )
    return per_batch / additive.made_up_l


def made_per_litre(additive: Dissolved) -> float:
    """Return the mass of all chemicals in a litre of the batch.

    Parameters
    ----------
    additive : Dissolved
        The batch.

    Returns
    -------
    float
        Pure chemicals with their hydrate water [g/L].
    """
    return sum(p.grams * p.purity for p in additive.portions) / additive.made_up_l


def saturation(additive: Dissolved, temperature_c: float | None = None) -> float | None:
    """Return how near the batch is to the most that dissolves.

    Parameters
    ----------
    additive : Dissolved
        The batch.
    temperature_c : float or None
        Temperature of the stock [degC]; the coolest it will have when not given.

    Returns
    -------
    float or None
        Mass made up over the mass that dissolves [1]; None when no solubility is known.

    Notes
    -----
    Of a mix the shares of its chemicals are added: salts with an ion in common leave each other no more room than that.
    Common practice, no source.
    """
    at_c = additive.coolest_c if temperature_c is None else temperature_c
    whole = 0.0
    for portion in additive.portions:
        most = portion.chemical.most_per_litre(at_c)
        if most is None:
            return None
        whole += portion.grams * portion.purity / additive.made_up_l / most
    return whole


def limewater(chemical: Chemical, made_up_l: float, coolest_c: float = ROOM_C) -> Dissolved:
    """Return a jug of the clear saturated solution of a chemical, as limewater is.

    Parameters
    ----------
    chemical : Chemical
        What is dissolved, of which more lies on the ground than can dissolve.
    made_up_l : float
        Volume of the jug [L].
    coolest_c : float
        Lowest temperature of the jug [degC]. More lime dissolves in the cool, so this is when it is strongest.

    Returns
    -------
    Dissolved
        The batch, with what is in solution.

    Raises
    ------
    ValueError
        When no solubility of the chemical is known.
    """
    most = chemical.most_per_litre(coolest_c)
    if most is None:
        raise ValueError(f"the solubility of {chemical.name} is not known")
    return Dissolved(chemical, most * made_up_l, made_up_l, coolest_c=coolest_c, saturated=True)


def better_warm(additive: Dissolved) -> bool:
    """Return whether more of a batch's chemicals dissolves in the warm, as of all but lime.

    Parameters
    ----------
    additive : Dissolved
        The batch.

    Returns
    -------
    bool
        False where one of them dissolves better in the cold.
    """
    rows = [portion.chemical.solubility for portion in additive.portions]
    return all(not known or known[-1][1] >= known[0][1] for known in rows)


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
