"""Every limit on an upkeep, how near it comes to each, and the one exit that refuses when one is passed.

An upkeep has no pace that could be slowed: its doses are what is used. So a limit that is passed refuses.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from evenwater.engine.caps import MINUTES_PER_DAY
from evenwater.engine.carbonate_point import Portions, Sample, nbs_offset, sample
from evenwater.engine.catalogue import Parameter
from evenwater.engine.formula import molar_mass
from evenwater.engine.limits import Nearness, nearness
from evenwater.engine.quantities import density_kg_per_l, from_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved, made_per_litre, saturation
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep_balance import Solutes, amount, counted, given, used
from evenwater.engine.upkeep_question import UpkeepItem, UpkeepQuestion
from evenwater.engine.water_limits import PH_ASSUMED, PH_KEPT, PH_RISE_PER_HOUR, SATURATION_CEILING, doses_in_an_hour

# A change of pH below this is the solver's own.
_NO_LIFT = 1e-9


@dataclass(frozen=True)
class Limit:
    """How near the upkeep comes to one limit, and why it is refused when it passes it."""

    near: Nearness
    reason: Reason


@dataclass(frozen=True)
class Source:
    """Something that doses: the solutes of one dose in the tank [mmol/L and meq/L], and how many come in 24 hours.

    ``own`` is False of a correction that is outstanding.
    """

    solutes: Solutes
    per_day: int
    own: bool = True


@dataclass(frozen=True)
class Hour:
    """The fullest hour: the water now, and right after all doses that fall into it, before any gas was exchanged.

    ``lifted`` has only those additives in it that lift pH, ``after`` all that bring alkalinity or calcium; ``per_day`` is how
    often each of these comes in 24 hours. A correction that is outstanding counts with the upkeep, never by itself.
    """

    now: Sample
    lifted: Sample
    after: Sample
    per_day: tuple[int, ...]


def refusals(limits: Sequence[Limit]) -> tuple[Reason, ...]:
    """Return why an upkeep must be refused: the one exit through which all limits pass.

    Parameters
    ----------
    limits : sequence of Limit
        All limits.

    Returns
    -------
    tuple of Reason
        One for each limit that is passed; a figure that is not a number passes every limit.
    """
    return tuple(limit.reason for limit in limits if limit.near.over or not limit.near.share >= 0.0)


def sources(q: UpkeepQuestion, solutes: Sequence[Solutes], doses_ml: Sequence[float]) -> tuple[Source, ...]:
    """Return everything that doses, corrections that are still outstanding included.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    solutes : sequence of mapping
        What a millilitre of each item's additive carries [mmol/mL and meq/mL].
    doses_ml : sequence of float
        The rounded dose of each item [mL].

    Returns
    -------
    tuple of Source
        Items first. A correction counts as the bare value: what it is made of is not known.
    """
    own = (
        Source(given([(each, dose / q.system.volume_l)]), item.pump.doses_per_day)
        for item, each, dose in zip(q.items, solutes, doses_ml, strict=True)
    )
    planned = (
        Source(counted(o.parameter.name, o.rise / o.doses_per_day, q.system.water), o.doses_per_day, own=False)
        for o in q.outstanding
    )
    return (*own, *planned)


def plain(
    q: UpkeepQuestion, solutes: Sequence[Solutes], doses_ml: Sequence[float], ml_per_day: Sequence[float]
) -> Iterator[Limit]:
    """Yield every limit but those of pH and saturation.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    solutes : sequence of mapping
        What a millilitre of each item's additive carries [mmol/mL and meq/mL].
    doses_ml : sequence of float
        The rounded dose of each item [mL].
    ml_per_day : sequence of float
        What each item needs in 24 hours, before rounding [mL].

    Yields
    ------
    Limit
        Item by item what its pump can do, then value by value what the water may stand, then evaporation.
    """
    for number, (item, dose, need) in enumerate(zip(q.items, doses_ml, ml_per_day, strict=True), start=1):
        if dose > 0.0:
            yield from _pump(item, dose, need, f"item.{number}")
    dosing = sources(q, solutes, doses_ml)
    volume = q.system.volume_l
    per_day = [dose * item.pump.doses_per_day / volume for item, dose in zip(q.items, doses_ml, strict=True)]
    come, gone = given(zip(solutes, per_day, strict=True)), used(q)
    for p in q.others:
        comes, goes = amount(p.name, come, q.system.water), amount(p.name, gone, q.system.water)
        yield from _rise(q, p, comes, goes)
        # What upkeep does not bring is limited by the plan that brings it.
        if comes > 0.0:
            yield _jump(q, p, sum(amount(p.name, source.solutes, q.system.water) for source in dosing))
    if q.system.evaporation_l is not None:
        # All of it is water that top-off would bring otherwise; limewater is nearly nothing else.
        in_day, most = sum(per_day) * volume, 1000.0 * q.system.evaporation_l
        params = {"in_day_ml": in_day, "most_ml": most}
        yield Limit(
            nearness("evaporation", in_day, most, "mL"), Reason("upkeep_evaporation", params, "system.evaporation")
        )


def _pump(item: UpkeepItem, dose: float, need: float, path: str) -> Iterator[Limit]:
    pump, name = item.pump, item.parameter.name
    in_day, most = dose * pump.doses_per_day, pump.largest_share * MINUTES_PER_DAY * pump.flow_ml_per_min
    share = 100.0 * in_day / pump.flow_ml_per_min / MINUTES_PER_DAY
    params: dict[str, object] = {"parameter": name, "most_ml": most, "needs_ml": in_day}
    yield Limit(
        nearness(f"pump_share_{name}", share, 100.0 * pump.largest_share, "%"),
        Reason("upkeep_pump_share", params, f"{path}.pump.flow"),
    )
    if pump.smallest_ml is not None and pump.smallest_ml > 0.0:
        # Here the figure must stay above its bound, so the share is turned over.
        smallest = pump.smallest_ml
        turned = Nearness(f"smallest_dose_{name}", dose, smallest, "mL", smallest / dose, dose < smallest)
        params = {
            "parameter": name,
            "dose_ml": dose,
            "smallest_ml": smallest,
            "most_doses": int(min(need / smallest, pump.doses_per_day)),
        }
        yield Limit(turned, Reason("upkeep_smallest_dose", params, f"{path}.pump.doses_per_day"))


def stocks(q: UpkeepQuestion) -> Iterator[Nearness]:
    """Yield how near each weighed stock is to the most that dissolves; what does not dissolve was refused before.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.

    Yields
    ------
    Nearness
        One for each item whose solubility is known and that is not saturated on purpose.
    """
    for item in q.items:
        batch = item.additive
        full = saturation(batch) if isinstance(batch, Dissolved) and not batch.saturated else None
        if isinstance(batch, Dissolved) and full is not None:
            made = made_per_litre(batch)
            yield nearness(f"solubility_{item.parameter.name}", made, made / full, "g/L")


def _rise(q: UpkeepQuestion, p: Parameter, comes: float, goes: float) -> Iterator[Limit]:
    """Yield the limit on a day's rise: what is left over, or all that comes where a correction brings the use already.

    What uptake leaves behind, alkalinity of nutrients, comes by upkeep as well.
    """
    brought = comes - min(goes, 0.0)
    planned = sum(o.rise for o in q.outstanding if o.parameter.name == p.name)
    rise = planned + brought if planned > 0.0 else comes - goes
    if brought <= 0.0 or rise <= 0.0:
        return
    unit = unit_of(q, p)
    value, bound = (_shown(q, p, f"{p.kind} per day", f"{unit} per day", v) for v in (rise, p.canonical(p.rise_hard)))
    params = {
        "parameter": p.name, "rise": value, "most": bound, "unit": KINDS[f"{p.kind} per day"].unit(f"{unit} per day").shown,
        "with_correction": planned > 0.0,
    }  # fmt: skip
    yield Limit(
        nearness(f"daily_rise_{p.name}", value, bound, f"{unit} per day"),
        Reason("upkeep_daily_rise", params, path_of(q, p)),
    )


def _jump(q: UpkeepQuestion, p: Parameter, jump: float) -> Limit:
    """Return the limit on what one dose of every pump at the same moment raises."""
    unit = unit_of(q, p)
    value, bound = (_shown(q, p, p.kind, unit, v) for v in (jump, p.canonical(p.dose_rise_recommended)))
    params = {"parameter": p.name, "rise": value, "most": bound, "unit": KINDS[p.kind].unit(unit).shown}
    return Limit(
        nearness(f"single_dose_{p.name}", value, bound, unit), Reason("upkeep_single_dose", params, path_of(q, p))
    )


def unit_of(q: UpkeepQuestion, p: Parameter) -> str:
    """Return the id of the unit that rises of a parameter are said in; a rise of specific gravity is said in ppt.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    p : Parameter
        The parameter.

    Returns
    -------
    str
        Id of a unit.
    """
    item = q.item(p.name)
    unit = p.display_unit if item is None else item.unit
    return "ppt" if p.kind == "salinity" else unit


def path_of(q: UpkeepQuestion, p: Parameter) -> str:
    """Return the field that a limit on a parameter belongs to; empty for one that is not kept.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    p : Parameter
        The parameter.

    Returns
    -------
    str
        Path of a field.
    """
    names = [item.parameter.name for item in q.items]
    return f"item.{names.index(p.name) + 1}.pump.doses_per_day" if p.name in names else ""


def _shown(q: UpkeepQuestion, p: Parameter, kind: str, unit: str, value: float) -> float:
    # A rise in ppt is one of salinity: never the reading of a hydrometer.
    return value if p.kind == "salinity" else from_canonical(value, kind, unit, q.system.water)


def hour_of(q: UpkeepQuestion, dosing: Sequence[Source]) -> Hour | None:
    """Return the fullest hour, in which every pump gives all the doses that fall into one.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    dosing : sequence of Source
        Everything that doses.

    Returns
    -------
    Hour or None
        None when upkeep doses nothing that takes part in the carbonate system.

    Raises
    ------
    ImpossibleWaterError
        When no seawater of this alkalinity has the pH that was measured.
    """
    density = density_kg_per_l(q.system.water)
    taking_part = [s for s in dosing if s.solutes.get("alkalinity", 0.0) > 0.0 or s.solutes.get("Ca", 0.0) > 0.0]
    if not any(s.own for s in taking_part):
        return None
    portions = [_portions(s.solutes).times(doses_in_an_hour(s.per_day) / density) for s in taking_part]
    natural = {p.name: p.canonical(p.natural) for p in q.others}
    alkalinity, calcium = q.value_now("alkalinity"), q.value_now("calcium")
    now = sample(
        q.system.water,
        (natural["alkalinity"] if alkalinity is None else alkalinity) / density,
        PH_ASSUMED if q.system.ph is None else q.system.ph,
        None if calcium is None else calcium / molar_mass("Ca") / density,
    )
    # Nobody can count on an additive that lowers pH to come in the same hour.
    lifts = [now.mixed(portion).ph_total > now.ph_total + _NO_LIFT for portion in portions]
    by_upkeep = any(lift and s.own for lift, s in zip(lifts, taking_part, strict=True))
    lifting = [portion for portion, lift in zip(portions, lifts, strict=True) if lift and by_upkeep]
    often = tuple(source.per_day for source in taking_part if source.own)
    return Hour(now, now.mixed(_sum(lifting)) if lifting else now, now.mixed(_sum(portions)), often)


def impossible(ph: float | None) -> Reason:
    """Return why no water of this alkalinity has the pH that it is reckoned with.

    Parameters
    ----------
    ph : float or None
        As measured (NBS scale) [-]; None when nobody measured it, and the alkalinity is then what to look at.

    Returns
    -------
    Reason
        It, at the field to look at.
    """
    if ph is None:
        return Reason("impossible_water", {"ph": PH_ASSUMED}, "system.alkalinity")
    return Reason("impossible_water", {"ph": ph}, "system.ph")


def _portions(solutes: Solutes) -> Portions:
    return Portions(
        alkalinity=solutes.get("alkalinity", 0.0),
        dic=solutes.get("DIC", 0.0),
        calcium=solutes.get("Ca", 0.0),
        borate=solutes.get("B", 0.0),
        phosphate=solutes.get("PO4", 0.0),
    )


def _sum(portions: Sequence[Portions]) -> Portions:
    return Portions(
        sum(p.alkalinity for p in portions),
        sum(p.dic for p in portions),
        sum(p.calcium for p in portions),
        sum(p.borate for p in portions),
        sum(p.phosphate for p in portions),
    )


def of_water(q: UpkeepQuestion, hour: Hour) -> Iterator[Limit]:
    """Yield the limits of pH and saturation; the last two only where pH was measured.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    hour : Hour
        The fullest hour.

    Yields
    ------
    Limit
        The rise of pH in an hour, its ceiling, aragonite saturation.
    """
    rise = max(hour.lifted.ph_total - hour.now.ph_total, 0.0)
    params: dict[str, object] = {"rise": rise, "most": PH_RISE_PER_HOUR, "per_day": hour.per_day}
    yield Limit(nearness("ph_rise", rise, PH_RISE_PER_HOUR, ""), Reason("upkeep_ph_rise", params))
    if q.system.ph is None:
        return
    low, high = PH_KEPT
    offset = nbs_offset(hour.now.constants)
    highest = hour.lifted.ph_total + offset
    full = nearness("ph_ceiling", max(highest - low, 0.0), high - low, "NBS scale")
    params = {"ph": highest, "now": hour.now.ph_total + offset, "most": high, "per_day": hour.per_day}
    # A water above the ceiling already is no fault of additives that do not lift pH.
    near = Nearness("ph_ceiling", highest, high, "NBS scale", full.share, full.over and rise > 0.0)
    yield Limit(near, Reason("upkeep_ph_ceiling", params, "system.ph"))
    saturated = max(hour.lifted.saturation, hour.after.saturation)
    params = {
        "saturation": saturated, "now": hour.now.saturation, "most": SATURATION_CEILING, "per_day": hour.per_day,
    }  # fmt: skip
    yield Limit(nearness("saturation", saturated, SATURATION_CEILING, ""), Reason("upkeep_saturation", params))
