"""The second opinion on pH: plain sums and a bracket that closes, from published constants and nothing of the planners.

Only the constants are shared, as a handbook is; what is done with them is written once more.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from evenwater.engine.carbonate_equilibria import Equilibria, plain_equilibria
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_totals import borate_uppstrom_1974, calcium_riley_tongudai_1967
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Water, density_kg_per_l
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.stock import Dissolved

_WIDTH, _LOWEST, _HIGHEST = 0.3, 0.0, 14.0
_ROUNDS, _CLOSE = 60, 1e-11
# Taken for a pH (NBS) that was not measured; common practice, no source.
_UNMEASURED = 8.1


@dataclass(frozen=True)
class Bucket:
    """A kilogram of seawater as sums: constants [mol/kg], and borate and phosphate in it [mol/kg]."""

    k: Equilibria
    borate: float
    phosphate: float

    def others(self, ph: float) -> float:
        """Return the alkalinity of all but carbon at a pH.

        Parameters
        ----------
        ph : float
            On the total scale [-].

        Returns
        -------
        float
            Alkalinity [eq/kg].
        """
        h, k = math.pow(10.0, -ph), self.k
        free = h / float(k.total_over_free)
        acids = float(k.total_sulfate) * free / (float(k.bisulfate) + free)
        acids += float(k.total_fluoride) * free / (float(k.fluoride) + free)
        boric = self.borate * float(k.boric) / (float(k.boric) + h)
        rest = float(k.kw) / h - free + boric - acids
        if self.phosphate == 0.0:
            return rest
        one, two, three = (float(v) for v in k.phosphoric)
        forms = h**3 + one * h**2 + one * two * h + one * two * three
        return rest + self.phosphate * (one * two * h + 2.0 * one * two * three - h**3) / forms

    def per_carbon(self, ph: float) -> float:
        """Return the alkalinity of a mole of dissolved carbon at a pH.

        Parameters
        ----------
        ph : float
            On the total scale [-].

        Returns
        -------
        float
            Alkalinity [eq/mol].
        """
        h, k1, k2 = math.pow(10.0, -ph), float(self.k.k1), float(self.k.k2)
        return (k1 * h + 2.0 * k1 * k2) / (h * h + k1 * h + k1 * k2)

    def carbon(self, alkalinity: float, ph: float) -> float:
        """Return dissolved carbon from alkalinity and pH.

        Parameters
        ----------
        alkalinity : float
            Total alkalinity [eq/kg].
        ph : float
            On the total scale [-].

        Returns
        -------
        float
            Dissolved carbon [mol/kg].
        """
        return (alkalinity - self.others(ph)) / self.per_carbon(ph)

    def ph(self, alkalinity: float, carbon: float, near: float) -> float:
        """Return pH from alkalinity and dissolved carbon.

        Parameters
        ----------
        alkalinity : float
            Total alkalinity [eq/kg].
        carbon : float
            Dissolved carbon [mol/kg].
        near : float
            Where to look first, on the total scale [-].

        Returns
        -------
        float
            pH on the total scale [-].
        """
        return _bracketed(lambda ph: self.others(ph) + carbon * self.per_carbon(ph) - alkalinity, near)

    def ph_in_air(self, alkalinity: float, gas: float, near: float) -> float:
        """Return pH from alkalinity and dissolved carbon dioxide.

        Parameters
        ----------
        alkalinity : float
            Total alkalinity [eq/kg].
        gas : float
            Dissolved carbon dioxide [mol/kg].
        near : float
            Where to look first, on the total scale [-].

        Returns
        -------
        float
            pH on the total scale [-].
        """
        k1, k2 = float(self.k.k1), float(self.k.k2)

        def excess(ph: float) -> float:
            h = math.pow(10.0, -ph)
            return self.others(ph) + gas * k1 / h * (1.0 + 2.0 * k2 / h) - alkalinity

        return _bracketed(excess, near)

    def gas(self, carbon: float, ph: float) -> float:
        """Return dissolved carbon dioxide from dissolved carbon and pH.

        Parameters
        ----------
        carbon : float
            Dissolved carbon [mol/kg].
        ph : float
            On the total scale [-].

        Returns
        -------
        float
            Dissolved carbon dioxide [mol/kg].
        """
        h, k1, k2 = math.pow(10.0, -ph), float(self.k.k1), float(self.k.k2)
        return carbon * h * h / (h * h + k1 * h + k1 * k2)

    def saturation(self, calcium: float, carbon: float, ph: float) -> float:
        """Return the saturation with aragonite.

        Parameters
        ----------
        calcium : float
            Calcium [mol/kg].
        carbon : float
            Dissolved carbon [mol/kg].
        ph : float
            On the total scale [-].

        Returns
        -------
        float
            Saturation [-].
        """
        h, k1, k2 = math.pow(10.0, -ph), float(self.k.k1), float(self.k.k2)
        return calcium * carbon * k1 * k2 / (h * h + k1 * h + k1 * k2) / float(self.k.aragonite)


def bucket(water: Water) -> Bucket:
    """Return a kilogram of seawater of a salinity and temperature, without phosphate.

    Parameters
    ----------
    water : Water
        Salinity and temperature.

    Returns
    -------
    Bucket
        Its sums.
    """
    borate = float(borate_uppstrom_1974(water.salinity)) / 1000.0
    return Bucket(plain_equilibria(water.salinity, water.temperature_c), borate, 0.0)


def _bracketed(excess: Callable[[float], float], near: float) -> float:
    """Return where a rising function of pH is zero: false position, its stuck end halved (Illinois)."""
    low, high = near - _WIDTH, near + _WIDTH
    below, above = excess(low), excess(high)
    while below > 0.0 and low > _LOWEST:
        low, high, above = low - 1.0, low, below
        below = excess(low)
    while above < 0.0 and high < _HIGHEST:
        low, high, below = high, high + 1.0, above
        above = excess(high)
    ph, side = low, 0
    for _ in range(_ROUNDS):
        before, ph = ph, (low * above - high * below) / (above - below)
        found = excess(ph)
        if abs(ph - before) < _CLOSE or found == 0.0:
            break
        if found < 0.0:
            low, below, above = ph, found, above / 2.0 if side < 0 else above
            side = -1
        else:
            high, above, below = ph, found, below / 2.0 if side > 0 else below
            side = 1
    return ph


@dataclass(frozen=True)
class SeenInWater:
    """What the simulation saw of the water: largest rise of pH in an hour, highest pH (NBS) and saturation [-].

    The last two are None where pH was not measured.
    """

    highest_ph_rise: float
    highest_ph: float | None
    highest_saturation: float | None


def look(question: CorrectionQuestion, per_ml: float, doses_ml: float) -> SeenInWater | None:
    """Mix the doses of the fullest hour into the water as it is now and as it will be at the target.

    Parameters
    ----------
    question : CorrectionQuestion
        The question, with its bags.
    per_ml : float
        Rise by one millilitre, reckoned from the bags once more [canonical unit per mL].
    doses_ml : float
        What goes in within the fullest hour [mL].

    Returns
    -------
    SeenInWater or None
        None when the additive takes no part in it.
    """
    q, system = question, question.system
    per_kg = 1.0 / density_kg_per_l(system.water)
    one = _bags(q) if isinstance(q.additive, Dissolved) else _unknown(q.parameter.name, per_ml)
    if not any(one):
        return None
    b = bucket(system.water)
    named = {p.name: p.canonical(p.natural) for p in q.others}
    alkalinity = (q.start if q.parameter.name == "alkalinity" else system.alkalinity or named["alkalinity"]) / 1000.0
    calcium_mg = q.start if q.parameter.name == "calcium" else system.calcium
    calcium = (
        float(calcium_riley_tongudai_1967(system.water.salinity)) / 1000.0
        if calcium_mg is None
        else calcium_mg / 1000.0 / molar_mass("Ca") * per_kg
    )
    off = float(b.k.ph_offset(PhScale.NBS))
    before = (_UNMEASURED if system.ph is None else system.ph) - off
    carbon = b.carbon(alkalinity * per_kg, before)
    gas = b.gas(carbon, before)
    start = (alkalinity * per_kg, carbon, calcium, b.borate, b.phosphate)
    # Everything of the correction at once, then the air brings carbon dioxide back to what it was.
    whole = _with(start, one, (q.target - q.start) / per_ml * per_kg)
    later = Bucket(b.k, whole[3], whole[4])
    settled = before if system.ph is None else later.ph_in_air(whole[0], gas, before)
    end = (whole[0], later.carbon(whole[0], settled), *whole[2:])
    rises, highest, saturations = [], [], []
    for water, ph in ((start, before), (end, settled)):
        alk, dic, lime, borate, phosphate = _with(water, one, doses_ml * per_kg)
        here = Bucket(b.k, borate, phosphate)
        after = here.ph(alk, dic, ph)
        rises.append(after - ph)
        highest.append(after + off)
        saturations.append(here.saturation(lime, dic, after))
    if system.ph is None:
        return SeenInWater(max(rises), None, None)
    return SeenInWater(max(rises), max(highest), max(saturations))


_Sums = tuple[float, float, float, float, float]


def _with(water: _Sums, one: _Sums, times: float) -> _Sums:
    alkalinity, carbon, calcium, borate, phosphate = (w + times * o for w, o in zip(water, one, strict=True))
    return alkalinity, carbon, calcium, borate, phosphate


def _bags(q: CorrectionQuestion) -> _Sums:
    """Return what a millilitre of the stock brings to a litre of the tank's water [eq/L and mol/L], from its bags."""
    batch, sums = q.additive, [0.0] * 5
    assert isinstance(batch, Dissolved)  # noqa: S101  (narrowing)
    for bag in batch.portions:
        moles = bag.grams * bag.purity / molar_mass(bag.chemical.formula) / batch.made_up_l / 1000.0
        per_mole = dict(bag.chemical.carries)
        for place, what in enumerate(("alkalinity", "DIC", "Ca", "B", "PO4")):
            sums[place] += moles * per_mole.get(what, 0.0) / q.system.volume_l
    return sums[0], sums[1], sums[2], sums[3], sums[4]


def _unknown(name: str, per_ml: float) -> _Sums:
    """Return the same of a bottle, taken for hydroxide when it raises alkalinity."""
    if name == "alkalinity":
        return per_ml / 1000.0, 0.0, 0.0, 0.0, 0.0
    return (0.0, 0.0, per_ml / 1000.0 / molar_mass("Ca") if name == "calcium" else 0.0, 0.0, 0.0)
