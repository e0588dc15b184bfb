"""What a keeper should know about an upkeep that is allowed all the same."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import combinations

from evenwater.engine.caps import calcium_per_meq
from evenwater.engine.limits import Nearness
from evenwater.engine.quantities import from_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.remarks import ROUNDING_SHARE, TINY_ML
from evenwater.engine.stock import NEARLY_SATURATED, Dissolved, Labelled, better_warm
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep_balance import Solutes, amount, used
from evenwater.engine.upkeep_limits import Hour, unit_of
from evenwater.engine.upkeep_plan import UpkeepDose
from evenwater.engine.upkeep_question import UpkeepItem, UpkeepQuestion
from evenwater.engine.water_limits import PH_ASSUMED, PRECIPITATES

# A use that is further off the ratio of skeleton has a wrong test or another sink; common practice, no source.
RATIO_MARGIN = 0.25
# Between doses that would fall out in each other's cloud; common practice, no source.
APART_MIN = 30.0
_MINUTES_PER_DAY = 1440
# What skeleton takes together.
_PARTNERS = ("alkalinity", "calcium")


def remarks(
    q: UpkeepQuestion,
    doses: Sequence[UpkeepDose],
    stays: Solutes,
    near: Sequence[Nearness],
    hour: Hour | None,
) -> tuple[Reason, ...]:
    """Return the remarks on an upkeep.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    doses : sequence of UpkeepDose
        What each pump is set to, item by item.
    stays : mapping of str to float
        What a day leaves [mmol/L and meq/L per day].
    near : sequence of Nearness
        How near the upkeep comes to each limit.
    hour : Hour or None
        The fullest hour, when something takes part in the carbonate system.

    Returns
    -------
    tuple of Reason
        In the order in which they matter.
    """
    return (
        *_corrections(q),
        *_apart(doses),
        *_uses(q, stays),
        *_doses(doses),
        *_jugs(q, near),
        *_water(q, doses, hour),
    )


def _corrections(q: UpkeepQuestion) -> Iterator[Reason]:
    for o in q.outstanding:
        if q.item(o.parameter.name) is not None:
            yield Reason("upkeep_beside_correction", {"parameter": o.parameter.name, "days": o.days_left})
    if q.system.volume_known == "unknown":
        yield Reason("low_end_volume", {"volume_l": q.system.volume_l})
    if q.system.water_assumed and any(item.unit.startswith("mg/kg") for item in q.items):
        yield Reason("water_assumed", {"salinity": q.system.water.salinity, "degc": q.system.water.temperature_c})


def _apart(doses: Sequence[UpkeepDose]) -> Iterator[Reason]:
    """Yield the pairs that must not meet: what raises alkalinity, and what brings calcium, magnesium or strontium (H20)."""
    dosed = [dose.item for dose in doses if dose.dose_ml > 0.0]
    for one, other in combinations(dosed, 2):
        if (_alkaline(one) and _earthy(other)) or (_alkaline(other) and _earthy(one)):
            # Two evenly spaced rows of doses come no further apart than half the interval of their common rhythm.
            widest = _MINUTES_PER_DAY / math.lcm(one.pump.doses_per_day, other.pump.doses_per_day) / 2.0
            params = {
                "first": one.parameter.name, "second": other.parameter.name, "minutes": APART_MIN, "widest_min": widest,
                "most_doses": int(_MINUTES_PER_DAY / (2.0 * APART_MIN)),
            }  # fmt: skip
            yield Reason("upkeep_keep_apart", params)


def _alkaline(item: UpkeepItem) -> bool:
    return _brings(item, "alkalinity", ("alkalinity",))


def _earthy(item: UpkeepItem) -> bool:
    return any(
        _brings(item, solute, names)
        for solute, names in (("Ca", ("calcium",)), ("Mg", ("magnesium",)), ("Sr", ("strontium",)))
    )


def _brings(item: UpkeepItem, solute: str, names: Sequence[str]) -> bool:
    if isinstance(item.additive, Labelled):
        return item.parameter.name in names
    return any(portion.chemical.per_mole(solute) > 0.0 for portion in item.additive.portions)


def _uses(q: UpkeepQuestion, stays: Solutes) -> Iterator[Reason]:
    calcium, alkalinity = q.use("calcium"), q.use("alkalinity")
    if calcium is not None and alkalinity is not None:
        of_use, of_skeleton = calcium / alkalinity, calcium_per_meq()
        if abs(of_use / of_skeleton - 1.0) > RATIO_MARGIN:
            yield Reason("upkeep_ratio", {"of_use": of_use, "of_skeleton": of_skeleton})
    gone = used(q)
    for p in q.others:
        falls = -amount(p.name, stays, q.system.water)
        goes = amount(p.name, gone, q.system.water)
        # Less is what rounding leaves of it.
        if p.name in _PARTNERS and q.item(p.name) is None and falls > ROUNDING_SHARE * goes > 0.0:
            kind, unit = f"{p.kind} per day", f"{unit_of(q, p)} per day"
            params = {
                "parameter": p.name, "falls": from_canonical(falls, kind, unit, q.system.water),
                "unit": KINDS[kind].unit(unit).shown,
            }  # fmt: skip
            yield Reason("upkeep_partner_falls", params)


def _doses(doses: Sequence[UpkeepDose]) -> Iterator[Reason]:
    for number, dose in enumerate(doses, start=1):
        name, here = dose.item.parameter.name, f"item.{number}.pump.step"
        if dose.dose_ml == 0.0:
            yield Reason("upkeep_covered", {"parameter": name})
            continue
        lost = 1.0 - dose.in_24_hours_ml / dose.needed_ml_per_day
        if lost > ROUNDING_SHARE:
            yield Reason("upkeep_rounding", {"parameter": name, "lost": lost, "step_ml": dose.step_ml}, here)
        if dose.item.pump.smallest_ml is None and dose.dose_ml < TINY_ML:
            yield Reason("dose_tiny", {"dose_ml": dose.dose_ml}, here)


def _jugs(q: UpkeepQuestion, near: Sequence[Nearness]) -> Iterator[Reason]:
    shares = {item.code: item for item in near}
    for number, item in enumerate(q.items, start=1):
        here, batch = f"item.{number}.additive", item.additive
        if isinstance(batch, Labelled):
            yield Reason("upkeep_bottle_unknown", {"parameter": item.parameter.name}, f"{here}.label")
            continue
        full = shares.get(f"solubility_{item.parameter.name}")
        if full is not None and full.share > NEARLY_SATURATED:
            params = {"made": full.value, "most": full.bound, "better_warm": better_warm(batch)}
            yield Reason("nearly_saturated", params, f"{here}.dissolved")
        if batch.restricted:
            yield Reason("restricted", {"chemical": batch.name}, f"{here}.chemical")


def _water(q: UpkeepQuestion, doses: Sequence[UpkeepDose], hour: Hour | None) -> Iterator[Reason]:
    limewater = sum(dose.in_24_hours_ml for dose in doses if _limewater(dose.item))
    if limewater > 0.0 and q.system.evaporation_l is None:
        yield Reason("evaporation_unknown", {"in_day_ml": limewater})
    if hour is None:
        return
    if q.system.ph is None and hour.lifted.ph_total > hour.now.ph_total:
        yield Reason("upkeep_ph_assumed", {"ph": PH_ASSUMED})
    if any(isinstance(item.additive, Labelled) and item.parameter.name == "alkalinity" for item in q.items):
        yield Reason("bottle_like_hydroxide", {})
    saturation = max(hour.lifted.saturation, hour.after.saturation)
    if q.system.ph is not None and saturation > PRECIPITATES:
        yield Reason("may_precipitate", {"saturation": saturation, "most": PRECIPITATES})


def _limewater(item: UpkeepItem) -> bool:
    batch = item.additive
    return isinstance(batch, Dissolved) and any(p.chemical.formula == "Ca(OH)2" for p in batch.portions)
