"""The arithmetic of a plan, line by line, so that every line can be checked with a pocket calculator."""

from __future__ import annotations

from evenwater.engine.correction import Answer
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l, figure, round_down, significant
from evenwater.engine.stock import Dissolved, Portion
from evenwater.engine.units import KINDS
from evenwater.screens.shown import NBSP, Shown, dose, seconds, with_unit
from evenwater.screens.views import WorkLine

CARRIES, RAISES = f"1{NBSP}mL of stock carries", f"1{NBSP}mL raises"
PACE = {
    "daily_rise": "the daily rise sets the pace",
    "single_dose": "the size of a single dose sets the pace",
    "pump_share": "the pump sets the pace",
    "ph_rise": "the rise of pH in an hour sets the pace",
    "ph_ceiling": "the highest pH sets the pace",
    "saturation": "aragonite saturation sets the pace",
    "evaporation": "what evaporates sets the pace",
    "given_lately": "what was given already sets the pace",
}


def _from(answer: Answer, shown: Shown) -> str:
    """Return what the water is taken to hold at the start: the reading, and what came since."""
    q = answer.question
    return (
        f"{shown.value(q.measured)} and {shown.rise(q.untested)} untested"
        if q.untested > 0.0
        else shown.value(q.measured)
    )


def working(answer: Answer, shown: Shown) -> tuple[WorkLine, ...]:
    """Return the arithmetic, line by line, in the keeper's own units.

    Parameters
    ----------
    answer : Answer
        The plan.
    shown : Shown
        The keeper's unit.

    Returns
    -------
    tuple of WorkLine
        From the stock to the upkeep.
    """
    q, doses = answer.question, answer.doses
    per_ml = answer.per_ml
    rise, use = shown.rise(answer.pace, 4), shown.rise(q.use, 4)
    to_give = shown.rise(answer.pace + q.use, 4)
    used = f" and {use} used" if q.use > 0.0 else ""
    climb = shown.rise(q.target - q.start, 4)
    net = doses.dose_ml * per_ml - q.use * doses.interval_days
    lines = [
        _stock_line(answer),
        WorkLine(RAISES, _spread_line(answer, shown), shown.rise(per_ml, 5)),
        WorkLine("Rise wanted", f"{shown.value(q.target)} less {_from(answer, shown)}", climb),
        WorkLine("Pace", PACE.get(answer.set_by, "limited by what else it raises"), f"{rise} per day"),
        WorkLine("To be given in 24 hours", f"{rise} rise{used}", to_give),
        WorkLine("", f"{to_give} ÷ {shown.rise(per_ml, 5)} per mL", with_unit(figure(answer.dose_ml_per_day, 3), "mL")),
        WorkLine(
            "Each dose", _rounding(answer), f"{figure(answer.single_dose_ml, 4)}, set {dose(doses.dose_ml)}"
        ),
        WorkLine("Left after use", "what each dose leaves in the water until the next", shown.rise(net, 4)),
        WorkLine("Number of doses", f"{climb} ÷ {shown.rise(net, 4)}, whole doses only", str(doses.count)),
        WorkLine("Left to the target", "by rounding down", shown.rise(doses.shortfall, 2)),
        WorkLine(
            "Pump runs", f"{dose(doses.dose_ml)} ÷ {with_unit(significant(q.pump.flow_ml_per_min, 4), 'mL per min')}",
            f"{seconds(doses.run_time_s)} each",
        ),
    ]  # fmt: skip
    if q.use > 0.0:
        hourly = with_unit(figure(answer.upkeep_ml_per_day / 24.0, 4), "mL per hour")
        lines.append(
            WorkLine(
                "Afterwards", f"{use} used per day ÷ {shown.rise(per_ml, 5)} per mL ÷ {with_unit('24', 'h')}", hourly
            )
        )
    lines.append(
        WorkLine("Second reckoning", "all doses given one by one", f"ends at {shown.value(answer.seen.end_value)}")
    )
    low, high = answer.band
    lines.append(
        WorkLine("9 times in 10 it ends", _largest_source(answer), f"{shown.value(low)} to {shown.value(high)}")
    )
    return tuple(lines)


def _rounding(answer: Answer) -> str:
    """Say how the dose came down to what is set."""
    doses = answer.doses
    grain = f"in steps of {dose(doses.step_ml)}, rounded down"
    if doses.count == 1 and doses.dose_ml < round_down(answer.single_dose_ml, doses.step_ml):
        return f"÷ {doses.per_day} doses; one smaller dose fits the rise wanted, {grain}"
    return f"÷ {doses.per_day} doses, {grain}"


def _stock_line(answer: Answer) -> WorkLine:
    q = answer.question
    salt = q.parameter.name == "salinity"
    carried = answer.strength * (density_kg_per_l(q.system.water) if salt else 1.0)
    unit = {"alkalinity": "meq", "salinity": "g of salt"}.get(q.parameter.name, "mg")
    strength = f"{with_unit(significant(carried, 5), unit)} per mL"
    if isinstance(q.additive, Dissolved):
        batch = q.additive
        litres = with_unit(significant(batch.made_up_l, 4), "L")
        if not batch.also:
            mass, grams, pure, each = _portion_words(batch.portions[0], q.parameter.name, unit)
            return WorkLine(CARRIES, f"{mass}; {grams} in {litres}{pure} × {each}", strength)
        said = (_portion_words(part, q.parameter.name, unit) for part in batch.portions)
        parts = " and ".join(f"{grams}{pure} × {each}" for _, grams, pure, each in said)
        return WorkLine(CARRIES, f"{parts}, in {litres}", strength)
    label = q.additive
    rise = with_unit(significant(label.raises, 4), KINDS[label.kind].canonical.shown)
    how = f"{with_unit(significant(label.dose_ml, 4), 'mL')} raise {with_unit(significant(label.water_l, 4), 'L')} by {rise}"
    return WorkLine(CARRIES, f"by its label, {how}", strength)


def _portion_words(part: Portion, parameter: str, unit: str) -> tuple[str, str, str, str]:
    """Write of one weighed chemical its molar mass, its mass, its purity, and what a gram of it carries."""
    pure = "" if part.purity == 1.0 else f", {with_unit(figure(100.0 * part.purity, 2), '%')} pure"
    return (
        with_unit(figure(molar_mass(part.chemical.formula), 2), "g per mol"),
        with_unit(significant(part.grams, 5), "g"),
        pure,
        with_unit(significant(part.chemical.per_gram(parameter), 5), f"{unit} per g"),
    )


def _spread_line(answer: Answer, shown: Shown) -> str:
    """Say how what a millilitre carries becomes a rise, with every factor that is needed."""
    q = answer.question
    litres = with_unit(significant(q.system.volume_l, 5), "L")
    if q.parameter.name == "salinity":
        return f"that ÷ ({litres} × {with_unit(significant(density_kg_per_l(q.system.water), 5), 'kg per L')})"
    plain = Shown(q.parameter, shown.rise_unit, q.system.water)
    factor = plain.number(1.0)
    if abs(factor - 1.0) < 1e-12:
        return f"that ÷ {litres}"
    canonical = KINDS[q.parameter.kind].canonical.shown
    return f"that ÷ {litres} × {with_unit(significant(factor, 5), plain.unit_words)} per {canonical}"


def _largest_source(answer: Answer) -> str:
    name, share = max(answer.by_source.items(), key=lambda item: item[1])
    source = {"reading": "the reading", "use": "the use per day", "pump": "the pump", "volume": "the volume",
              "strength": "the strength"}[name]  # fmt: skip
    return f"the largest part of the doubt ({with_unit(figure(100.0 * share, 0), '%')}) comes from {source}"
