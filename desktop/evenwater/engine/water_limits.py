"""What a dose may do to the carbonate system of the tank: how fast pH may rise, how high it and saturation may go.

Between doses the air is taken to bring back the carbon dioxide that a dose took up; within an hour it brings none.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from evenwater.engine.carbonate_point import Portions, Sample, nbs_offset, sample
from evenwater.engine.formula import molar_mass
from evenwater.engine.limits import Cap, Nearness, nearness
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved, moles_per_ml

# Common practice, no source: pH is kept between 7.8 and 8.5, and no dose lifts it by more than 0.2 in an hour. All on
# the scale of a meter set with ordinary buffers (NBS).
PH_RISE_PER_HOUR = 0.2
PH_KEPT = (7.8, 8.5)
# What is taken for a pH that was not measured; common practice, no source.
PH_ASSUMED = 8.1
# Above it calcium carbonate falls out of seawater once particles are there: Moras et al. 2022, Biogeosciences 19, 3537
# (from memory).
PRECIPITATES = 7.0
# Between that and 12 and more, where clean seawater precipitates by itself (Morse and He 1993, Mar. Chem. 41, 291, from memory).
SATURATION_CEILING = 10.0
# A pace is found this near below the saturation ceiling.
_ROUNDS = 40


@dataclass(frozen=True)
class TankChemistry:
    """The carbonate side of a correction.

    ``start`` is the water now, ``end`` the water at the target with gas exchange caught up; ``per_unit`` is what the
    additive brings with a rise by one canonical unit [meq/kg and mmol/kg]. ``ph_known`` says whether pH was measured:
    if not, it is taken to be ``PH_ASSUMED`` all along.
    """

    start: Sample
    end: Sample
    per_unit: Portions
    ph_known: bool
    calcium_known: bool
    alkalinity_known: bool

    def at(self, rise: float) -> Sample:
        """Return the water after so much rise, with gas exchange caught up.

        Parameters
        ----------
        rise : float
            Rise of the corrected value [canonical unit].

        Returns
        -------
        Sample
            The water.
        """
        held = self.start.holding(self.per_unit.times(rise))
        return held.aired(self.start.co2) if self.ph_known else held.at_ph(self.start.ph_total)

    def after(self, base: Sample, rise: float) -> Sample:
        """Return the water at once after what raises the corrected value by so much.

        Parameters
        ----------
        base : Sample
            The water before.
        rise : float
            Rise of the corrected value [canonical unit].

        Returns
        -------
        Sample
            The water, before any gas was exchanged.
        """
        return base.mixed(self.per_unit.times(rise))


def chemistry_of(q: CorrectionQuestion, per_ml: float) -> TankChemistry | None:
    """Return the carbonate side of a correction.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    per_ml : float
        Rise made by one millilitre [canonical unit per mL].

    Returns
    -------
    TankChemistry or None
        None when the additive brings nothing that takes part in it.

    Raises
    ------
    ImpossibleWaterError
        When no seawater of this alkalinity has the pH that was measured.
    """
    per_unit = _per_unit(q, per_ml)
    if per_unit == Portions():
        return None
    density = density_kg_per_l(q.system.water)
    names = {p.name: p for p in q.others}
    alkalinity, calcium = _now(q, "alkalinity", q.system.alkalinity), _now(q, "calcium", q.system.calcium)
    natural = names["alkalinity"]
    held = natural.canonical(natural.natural) if alkalinity is None else alkalinity
    ph = PH_ASSUMED if q.system.ph is None else q.system.ph
    start = sample(
        q.system.water, held / density, ph, None if calcium is None else calcium / molar_mass("Ca") / density
    )
    tank = TankChemistry(start, start, per_unit, q.system.ph is not None, calcium is not None, alkalinity is not None)
    return replace(tank, end=tank.at(q.target - q.start))


def _now(q: CorrectionQuestion, name: str, told: float | None) -> float | None:
    """Return the value of alkalinity or calcium now: the reading itself where it is what is corrected."""
    return q.start if q.parameter.name == name else told


def _per_unit(q: CorrectionQuestion, per_ml: float) -> Portions:
    per_kg = 1.0 / density_kg_per_l(q.system.water)
    if not isinstance(q.additive, Dissolved):
        # Nobody knows what is in a bottle: hydroxide lifts pH most.
        if q.parameter.name == "alkalinity":
            return Portions(alkalinity=per_kg)
        return Portions(calcium=per_kg / molar_mass("Ca")) if q.parameter.name == "calcium" else Portions()
    share = per_kg / (per_ml * q.system.volume_l)
    return Portions(
        alkalinity=share * moles_per_ml(q.additive, "alkalinity"),
        dic=share * moles_per_ml(q.additive, "DIC"),
        calcium=share * moles_per_ml(q.additive, "Ca"),
        borate=share * moles_per_ml(q.additive, "B"),
        phosphate=share * moles_per_ml(q.additive, "PO4"),
    )


def doses_in_an_hour(per_day: int) -> int:
    """Return how many evenly spaced doses fall into the fullest hour.

    Parameters
    ----------
    per_day : int
        Doses in 24 hours.

    Returns
    -------
    int
        Doses, at least one.
    """
    return math.ceil(per_day / 24)


def caps(q: CorrectionQuestion, tank: TankChemistry, fastest: float) -> Iterator[Cap]:
    """Yield the limits that pH and saturation set to the pace.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    tank : TankChemistry
        Its carbonate side.
    fastest : float
        The pace that all other limits allow [canonical unit per day].

    Yields
    ------
    Cap
        The rise of pH in an hour always; its ceiling and that of saturation only where pH was measured.
    """
    at_once = doses_in_an_hour(q.pump.doses_per_day)

    def pace(rise: float) -> float:
        return rise / at_once * q.pump.doses_per_day - q.use

    def dose_of(pace: float) -> float:
        return (max(pace, 0.0) + q.use) / q.pump.doses_per_day * at_once

    bases = (tank.start, tank.end)
    most = min(base.most_below(base.ph_total + PH_RISE_PER_HOUR, tank.per_unit) for base in bases)
    yield Cap(
        "ph_rise",
        pace(most),
        Reason("ph_rise", {"most": PH_RISE_PER_HOUR, "per_day": q.pump.doses_per_day}, "additive.chemical"),
    )
    if not tank.ph_known:
        return
    ceiling = PH_KEPT[1] - nbs_offset(tank.start.constants)
    below = min(base.most_below(ceiling, tank.per_unit) for base in bases)
    params: dict[str, object] = {
        "ph": max(base.ph_nbs for base in bases),
        "now": tank.start.ph_nbs,
        "most": PH_KEPT[1],
        "per_day": q.pump.doses_per_day,
    }
    yield Cap("ph_ceiling", pace(below), Reason("ph_ceiling", params, "additive.chemical"))
    wanted = dose_of(min(fastest, pace(most), pace(below)))
    params = {
        "saturation": max(base.saturation for base in bases),
        "now": tank.start.saturation,
        "most": SATURATION_CEILING,
        "per_day": q.pump.doses_per_day,
    }
    reason = Reason("saturation", params, "change.target")
    if all(_surely_below(tank, base, wanted) for base in bases):
        yield Cap("saturation", math.inf, reason)
    else:
        yield Cap("saturation", pace(min(_most_below_saturation(tank, base, wanted) for base in bases)), reason)


def _surely_below(tank: TankChemistry, base: Sample, wanted: float) -> bool:
    """Return whether a rise at once stays below the saturation ceiling even if all its alkalinity became carbonate."""
    added = tank.per_unit.times(wanted)
    product = (base.carbonate + max(added.alkalinity, 0.0)) * (base.calcium + added.calcium) * 1e-6
    return product <= SATURATION_CEILING * float(base.constants.aragonite)


def _most_below_saturation(tank: TankChemistry, base: Sample, wanted: float) -> float:
    """Return the largest rise at once [canonical unit] that stays below the ceiling; infinite if the wanted one does."""
    low, high = 0.0, wanted
    if tank.after(base, high).saturation <= SATURATION_CEILING:
        return math.inf
    for _ in range(_ROUNDS):
        middle = 0.5 * (low + high)
        if tank.after(base, middle).saturation <= SATURATION_CEILING:
            low = middle
        else:
            high = middle
    return low


def near(q: CorrectionQuestion, tank: TankChemistry, dose_rise: float) -> Iterator[Nearness]:
    """Yield how near the doses of the fullest hour come to the limits.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    tank : TankChemistry
        Its carbonate side.
    dose_rise : float
        Rise made by one dose [canonical unit].

    Yields
    ------
    Nearness
        One for each limit that is held.
    """
    rise = dose_rise * doses_in_an_hour(q.pump.doses_per_day)
    pairs = [(base, tank.after(base, rise)) for base in (tank.start, tank.end)]
    jump = max(after.ph_total - base.ph_total for base, after in pairs)
    yield nearness("ph_rise", max(jump, 0.0), PH_RISE_PER_HOUR, "")
    if not tank.ph_known:
        return
    highest = max(after.ph_nbs for _, after in pairs)
    low, high = PH_KEPT
    full = nearness("ph_ceiling", max(highest - low, 0.0), high - low, "NBS scale")
    yield Nearness("ph_ceiling", highest, high, "NBS scale", full.share, full.over)
    yield nearness("saturation", max(after.saturation for _, after in pairs), SATURATION_CEILING, "")


def evaporation_cap(q: CorrectionQuestion, per_ml: float) -> Cap | None:
    """Return the limit that evaporation sets to limewater, which is nearly all water.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    per_ml : float
        Rise made by one millilitre [canonical unit per mL].

    Returns
    -------
    Cap or None
        None when the additive is no limewater, or evaporation is not known.
    """
    if not is_limewater(q) or q.system.evaporation_l is None:
        return None
    most_ml = 1000.0 * q.system.evaporation_l
    params = {"most_ml": most_ml, "needs_ml": q.use / per_ml}
    return Cap("evaporation", most_ml * per_ml - q.use, Reason("evaporation", params, "system.evaporation"))


def is_limewater(q: CorrectionQuestion) -> bool:
    """Return whether the additive is lime in water, saturated or thinner.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.

    Returns
    -------
    bool
        False for a bottle, whatever is in it.
    """
    return isinstance(q.additive, Dissolved) and any(p.chemical.formula == "Ca(OH)2" for p in q.additive.portions)
