"""What a weighed chemical does to a tank's carbonate system, as a question and its answer."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from evenwater.engine import fields
from evenwater.engine.carbonate import Effect, addition_of, calcium_mmol_per_kg, effect, per_kg
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_state import (
    ImpossibleWaterError,
    State,
    from_alkalinity_pco2,
    from_alkalinity_ph,
    seawater,
)
from evenwater.engine.catalogue import Chemical
from evenwater.engine.correction import Refused
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Water, density_kg_per_l
from evenwater.engine.reasons import Reason
from evenwater.engine.water_limits import PRECIPITATES

# The water's salinity is taken to stay as it is, which more salt than this would belie; common practice, no source.
_MOST_G_PER_KG = 2.0


@dataclass(frozen=True)
class ChemistryQuestion:
    """A tank, and what is added to it at once.

    ``volume_l`` [L], ``alkalinity`` [meq/L], ``calcium`` [mg/L] or None for what salinity implies, either ``ph`` on
    ``scale`` or ``pco2_uatm`` [uatm], ``grams`` [g] of the chemical.
    """

    volume_l: float
    water: Water
    alkalinity: float
    calcium: float | None
    ph: float | None
    pco2_uatm: float | None
    scale: PhScale
    chemical: Chemical
    grams: float


@dataclass(frozen=True)
class Moment:
    """The carbonate system at one moment.

    ``alkalinity`` [meq/L], ``dic`` [mmol/L], ``ph`` on the scale asked for, ``ph_total`` on the total one, ``saturation``
    with aragonite [1], ``pco2_uatm`` [uatm].
    """

    alkalinity: float
    dic: float
    ph: float
    ph_total: float
    saturation: float
    pco2_uatm: float


@dataclass(frozen=True)
class ChemistryAnswer:
    """The water before, at once after the addition, and when carbon dioxide is back in balance with the air."""

    question: ChemistryQuestion
    before: Moment
    at_once: Moment
    after_gas_exchange: Moment
    remarks: tuple[Reason, ...]


def solve(question: ChemistryQuestion) -> ChemistryAnswer | Refused:
    """Answer what an addition does.

    Parameters
    ----------
    question : ChemistryQuestion
        The tank and the addition.

    Returns
    -------
    ChemistryAnswer or Refused
        The three states, or why there are none.
    """
    most = _MOST_G_PER_KG * question.volume_l * density_kg_per_l(question.water)
    if question.grams > most:
        unit = fields.AMOUNT.unit
        params = {"number": question.grams, "low": 0.0, "high": most, "unit": unit, "above_low": True}
        return Refused((Reason("out_of_range", params, fields.AMOUNT.path),))
    try:
        before = _before(question)
    except ImpossibleWaterError:
        # Of the figures a field admits, only a pH too high for its alkalinity leaves no carbon at all.
        return Refused((Reason("impossible_water", {"ph": question.ph}, fields.PH.path),))
    mmol = 1000.0 * question.grams / molar_mass(question.chemical.formula)
    found = effect(before, addition_of(question.chemical, per_kg(mmol / question.volume_l, question.water)))
    return ChemistryAnswer(
        question=question,
        before=_moment(found.before, question),
        at_once=_moment(found.at_once, question),
        after_gas_exchange=_moment(found.caught_up, question),
        remarks=tuple(_remarks(question, found)),
    )


def _before(q: ChemistryQuestion) -> State:
    calcium = None if q.calcium is None else calcium_mmol_per_kg(q.calcium, q.water)
    water = seawater(q.water.salinity, q.water.temperature_c, calcium_mmol_per_kg=calcium)
    alkalinity = per_kg(q.alkalinity, q.water)
    if q.ph is not None:
        return from_alkalinity_ph(water, alkalinity, q.ph, q.scale)
    return from_alkalinity_pco2(water, alkalinity, np.nan if q.pco2_uatm is None else q.pco2_uatm)


def _moment(state: State, q: ChemistryQuestion) -> Moment:
    density = density_kg_per_l(q.water)
    return Moment(
        alkalinity=float(state.alkalinity_meq_per_kg) * density,
        dic=float(state.dic_mmol_per_kg) * density,
        ph=float(state.ph(q.scale)),
        ph_total=float(state.ph_total),
        saturation=float(state.aragonite_saturation),
        pco2_uatm=float(state.pco2_uatm),
    )


def _remarks(q: ChemistryQuestion, found: Effect) -> Iterator[Reason]:
    highest = max(float(found.at_once.aragonite_saturation), float(found.caught_up.aragonite_saturation))
    if highest > PRECIPITATES:
        yield Reason("may_precipitate", {"saturation": highest, "most": PRECIPITATES})
    if q.calcium is None:
        implied = float(found.before.water.calcium_mmol_per_kg) * molar_mass("Ca") * density_kg_per_l(q.water)
        yield Reason("calcium_assumed", {"calcium": implied})
    if not found.before.water.acids.constants.measured_here().all():
        yield Reason("constants_extrapolated", {"salinity": q.water.salinity, "degc": q.water.temperature_c})
    if q.chemical.restricted:
        yield Reason("restricted", {"chemical": q.chemical.name})
