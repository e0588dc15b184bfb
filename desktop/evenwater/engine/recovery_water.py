"""Whether calcium carbonate falls out after an overdose, so that no figure of alkalinity or calcium holds any longer."""

from __future__ import annotations

from evenwater.engine.carbonate_point import Portions, Sample, sample
from evenwater.engine.carbonate_state import ImpossibleWaterError
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.recipe import Bottle
from evenwater.engine.recovery_question import Overdose, RecoveryQuestion
from evenwater.engine.stock import Dissolved, moles_per_ml, strength
from evenwater.engine.water_limits import PH_ASSUMED

# Beyond this alkalinity [meq/kg] no seawater stays clear, and the constants say nothing.
_CLEAR_MEQ = 50.0


def saturation(q: RecoveryQuestion) -> float | None:
    """Return the saturation with aragonite of the tank, right after the overdose where the value was not tested since.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.

    Returns
    -------
    float or None
        Saturation [-]; None where alkalinity is not known, or no water has such figures.
    """
    density = density_kg_per_l(q.water)
    # A test since the overdose counts, and not what is reckoned.
    mixed_in = None if q.measured else q.overdose
    values = q.values if mixed_in is None else q.before
    alkalinity = values.get("alkalinity")
    if alkalinity is None or q.values["alkalinity"] / density > _CLEAR_MEQ:
        return None
    calcium = values.get("calcium")
    ph = PH_ASSUMED if q.ph is None else q.ph
    in_mmol = None if calcium is None else calcium / molar_mass("Ca") / density
    try:
        water = sample(q.water, alkalinity / density, ph, in_mmol)
        return water.saturation if mixed_in is None else _with(water, mixed_in, q.volume_l * density).saturation
    except ImpossibleWaterError:
        return None


def beyond_reckoning(q: RecoveryQuestion) -> bool:
    """Return whether alkalinity is so high that carbonate falls out whatever the rest of the water is.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.

    Returns
    -------
    bool
        True where pH and saturation need not be asked.
    """
    return q.values.get("alkalinity", 0.0) / density_kg_per_l(q.water) > _CLEAR_MEQ


def _with(water: Sample, overdose: Overdose, kilograms: float) -> Sample:
    batch, per_kg = overdose.batch, overdose.ml / kilograms
    if isinstance(batch, Dissolved):
        return water.mixed(
            Portions(
                per_kg * moles_per_ml(batch, "alkalinity"),
                per_kg * moles_per_ml(batch, "DIC"),
                per_kg * moles_per_ml(batch, "Ca"),
                per_kg * moles_per_ml(batch, "B"),
                per_kg * moles_per_ml(batch, "PO4"),
            )
        )
    return water.mixed(_of_bottle(batch, per_kg))


def _of_bottle(batch: Bottle, per_kg: float) -> Portions:
    amount = per_kg * strength(batch.label, batch.parameter.name, batch.parameter.kind)
    # Nobody knows what is in a bottle: hydroxide lifts pH, and so saturation, most.
    if batch.parameter.name == "alkalinity":
        return Portions(alkalinity=amount)
    return Portions(calcium=amount / molar_mass("Ca")) if batch.parameter.name == "calcium" else Portions()
