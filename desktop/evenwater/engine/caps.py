"""Every limit on a correction's pace, and how near the plan comes to each."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine import water_limits
from evenwater.engine.catalogue import Parameter
from evenwater.engine.formula import molar_mass
from evenwater.engine.limits import Cap, Nearness, nearness
from evenwater.engine.quantities import from_canonical
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.schedule import Schedule
from evenwater.engine.stock import Dissolved, carried_per_ml, made_per_litre, saturation
from evenwater.engine.water_limits import TankChemistry

MINUTES_PER_DAY = 1440.0


def calcium_per_meq() -> float:
    """Return the calcium that goes with one milliequivalent of alkalinity in CaCO3.

    Returns
    -------
    float
        Mass of calcium [mg/meq].
    """
    return molar_mass("Ca") / 2.0


def allowed_rise(q: CorrectionQuestion) -> float:
    """Return the fastest rise the keeper and the parameter allow.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.

    Returns
    -------
    float
        Rise [canonical unit per day].
    """
    return q.parameter.canonical(q.parameter.rise_recommended) if q.fastest is None else q.fastest


def dose_rise(q: CorrectionQuestion) -> float:
    """Return the largest jump one dose may make: the hard one when the keeper gave a reason.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.

    Returns
    -------
    float
        Rise by one dose [canonical unit].
    """
    p = q.parameter
    return p.canonical(p.dose_rise_hard if q.reason.strip() else p.dose_rise_recommended)


def caps(q: CorrectionQuestion, per_ml: float, tank: TankChemistry | None) -> tuple[Cap, ...]:
    """Return every limit on the pace of a correction.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    per_ml : float
        Rise made by one millilitre [canonical unit per mL].
    tank : TankChemistry or None
        The carbonate side, when the additive has one.

    Returns
    -------
    tuple of Cap
        Daily rise first, so that it wins a tie.
    """
    pump = q.pump
    jump = dose_rise(q)
    params: dict[str, object] = {"jump": jump, "per_day": pump.doses_per_day, "use": q.use}
    most_ml = pump.largest_share * MINUTES_PER_DAY * pump.flow_ml_per_min
    out = [
        Cap("daily_rise", allowed_rise(q), Reason("daily_rise", {"rise": allowed_rise(q)}, "change.fastest_rise")),
        Cap("single_dose", pump.doses_per_day * jump - q.use, Reason("single_dose", params, "pump.doses_per_day")),
        Cap(
            "pump_share",
            most_ml * per_ml - q.use,
            Reason("pump_share", {"most_ml": most_ml, "needs_ml": q.use / per_ml}, "pump.flow"),
        ),
    ]
    given = max(q.untested, q.lately)
    if given > 0.0:
        # Any 24 hours may hold both: what was given already, and what is planned.
        hard = q.parameter.canonical(q.parameter.rise_hard)
        out.append(
            Cap("given_lately", hard - given, Reason("given_lately", {"given": given, "hard": hard}, "change.measured"))
        )
    for other, ratio, credit in also_raised(q, per_ml):
        hard = other.canonical(other.rise_hard)
        fastest = (hard + credit) / ratio - q.use
        params = {"other": other.name, "hard": hard, "per_day": (allowed_rise(q) + q.use) * ratio - credit}
        out.append(Cap(f"also_raises_{other.name}", fastest, Reason("also_raises", params, "additive.chemical")))
    evaporation = water_limits.evaporation_cap(q, per_ml)
    out += [] if evaporation is None else [evaporation]
    if tank is not None:
        out += water_limits.caps(q, tank, min(cap.fastest for cap in out))
    return tuple(out)


def also_raised(q: CorrectionQuestion, per_ml: float) -> Iterator[tuple[Parameter, float, float]]:
    """Yield the other parameters that the additive raises along.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    per_ml : float
        Rise of the corrected parameter by one millilitre [canonical unit per mL].

    Yields
    ------
    tuple of (Parameter, float, float)
        The other parameter, its rise per unit of the corrected one's [unit per unit], and what
        the animals take of it with the daily use [canonical unit per day]: calcium and
        alkalinity are used together as CaCO3, nothing else is assumed to be used.
    """
    if not isinstance(q.additive, Dissolved):
        return
    for other in q.others:
        if other.name in (q.parameter.name, "salinity"):
            continue
        carried = carried_per_ml(q.additive, other.name) / q.system.volume_l
        if carried <= 0.0:
            continue
        credit = 0.0
        if (q.parameter.name, other.name) == ("calcium", "alkalinity"):
            credit = q.use / calcium_per_meq()
        elif (q.parameter.name, other.name) == ("alkalinity", "calcium"):
            credit = q.use * calcium_per_meq()
        yield other, carried / per_ml, credit


def near(
    q: CorrectionQuestion, per_ml: float, rise: float, doses: Schedule, tank: TankChemistry | None
) -> Iterator[Nearness]:
    """Yield how near a plan comes to each limit, with figures in the units a keeper reads.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    per_ml : float
        Rise made by one millilitre [canonical unit per mL].
    rise : float
        The plan's pace [canonical unit per day].
    doses : Schedule
        The doses after rounding, which the pump and the jug have to do with.
    tank : TankChemistry or None
        The carbonate side, when the additive has one.

    Yields
    ------
    Nearness
        One for each limit.
    """
    p, pump, water = q.parameter, q.pump, q.system.water
    in_day_ml = (rise + q.use) / per_ml
    single_ml = in_day_ml / pump.doses_per_day

    def shown(value: float) -> float:
        return from_canonical(value, f"{p.kind} per day", f"{_rise_unit(q)} per day", water)

    yield nearness("daily_rise", shown(rise), shown(allowed_rise(q)), f"{_rise_unit(q)} per day")
    given = max(q.untested, q.lately)
    if given > 0.0:
        hard = p.canonical(p.rise_hard)
        yield nearness("given_lately", shown(rise + given), shown(hard), f"{_rise_unit(q)} per day")
    yield nearness("single_dose", shown(single_ml * per_ml), shown(dose_rise(q)), _rise_unit(q))
    share = in_day_ml / pump.flow_ml_per_min / MINUTES_PER_DAY
    yield nearness("pump_share", 100.0 * share, 100.0 * pump.largest_share, "%")
    if pump.smallest_ml is not None:
        # Here the figure must stay above its bound, so the share is turned over.
        yield Nearness("smallest_dose", doses.dose_ml, pump.smallest_ml, "mL", pump.smallest_ml / doses.dose_ml)
    if isinstance(q.additive, Dissolved):
        yield nearness("jug", doses.total_ml, q.additive.made_up_l * 1000.0, "mL")
        full = saturation(q.additive)
        if full is not None and not q.additive.saturated:
            made = made_per_litre(q.additive)
            yield nearness("solubility", made, made / full, "g/L")
    if water_limits.is_limewater(q) and q.system.evaporation_l is not None:
        yield nearness("evaporation", in_day_ml, 1000.0 * q.system.evaporation_l, "mL")
    if tank is not None:
        yield from water_limits.near(q, tank, single_ml * per_ml)
    top = p.canonical(p.range_kept[1])
    kept = nearness("target", q.target, top, q.unit)
    # The share is counted in the canonical unit: a specific gravity near 1 would always seem full.
    value, bound = (from_canonical(v, p.kind, q.unit, water) for v in (q.target, top))
    yield Nearness("target", value, bound, q.unit, kept.share, kept.over)
    for other, ratio, credit in also_raised(q, per_ml):
        factor = other.canonical(1.0)
        along = max(0.0, (rise + q.use) * ratio - credit) / factor
        yield nearness(f"also_raises_{other.name}", along, other.rise_hard, f"{other.display_unit} per day")


def _rise_unit(q: CorrectionQuestion) -> str:
    """Return the unit rises are said in: the keeper's own, but ppt for a specific gravity."""
    return "ppt" if q.unit.startswith("SG") else q.unit
