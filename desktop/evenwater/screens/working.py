"""The arithmetic of a plan, line by line, so that every line can be checked with a pocket calculator."""

from __future__ import annotations

from evenwater.engine.correction import Answer
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l, round_down
from evenwater.engine.stock import Dissolved, Portion
from evenwater.engine.units import KINDS
from evenwater.screens.shown import Shown, dose, figure, seconds, significant, with_unit
from evenwater.screens.views import WorkLine
from evenwater.wording import marked, say, say_all

CARRIES, RAISES = marked("1\u00a0mL of stock carries"), marked("1\u00a0mL raises")
PACE = {
    "daily_rise": marked("the daily rise sets the pace"),
    "single_dose": marked("the size of a single dose sets the pace"),
    "pump_share": marked("the pump sets the pace"),
    "ph_rise": marked("the rise of pH in an hour sets the pace"),
    "ph_ceiling": marked("the highest pH sets the pace"),
    "saturation": marked("aragonite saturation sets the pace"),
    "evaporation": marked("what evaporates sets the pace"),
    "given_lately": marked("what was given already sets the pace"),
}


def _from(answer: Answer, shown: Shown) -> str:
    """Return what the water is taken to hold at the start: the reading, and what came since."""
    q = answer.question
    return (
        say("{measured} and {untested} untested", measured=shown.value(q.measured), untested=shown.rise(q.untested))
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
    used = say(" and {use} used", use=use) if q.use > 0.0 else ""
    climb = shown.rise(q.target - q.start, 4)
    net = doses.dose_ml * per_ml - q.use * doses.interval_days
    lines = [
        _stock_line(answer),
        WorkLine(say(RAISES), _spread_line(answer, shown), shown.rise(per_ml, 5)),
        WorkLine(say('Rise wanted'), say('{target} less {answer}', target=shown.value(q.target), answer=_from(answer, shown)), climb),
        WorkLine(say('Pace'), say_all(PACE.get(answer.set_by, say('limited by what else it raises'))), say('{rise} per day', rise=rise)),
        WorkLine(say('To be given in 24 hours'), say('{rise} rise{used}', rise=rise, used=used), to_give),
        WorkLine("", say('{to_give} ÷ {per} per mL', to_give=to_give, per=shown.rise(per_ml, 5)), with_unit(figure(answer.dose_ml_per_day, 3), "mL")),
        WorkLine(
            say('Each dose'), _rounding(answer), say('{single_dose}, set {dose}', single_dose=figure(answer.single_dose_ml, 4), dose=dose(doses.dose_ml))
        ),
        WorkLine(say('Left after use'), say("what each dose leaves in the water until the next"), shown.rise(net, 4)),
        WorkLine(say('Number of doses'), say('{climb} ÷ {net}, whole doses only', climb=climb, net=shown.rise(net, 4)), str(doses.count)),
        WorkLine(say('Left to the target'), say('by rounding down'), shown.rise(doses.shortfall, 2)),
        WorkLine(
            say('Pump runs'), f"{dose(doses.dose_ml)} ÷ {with_unit(significant(q.pump.flow_ml_per_min, 4), say('mL per min'))}",
            say('{run_time} each', run_time=seconds(doses.run_time_s)),
        ),
    ]  # fmt: skip
    if q.use > 0.0:
        hourly = with_unit(figure(answer.upkeep_ml_per_day / 24.0, 4), say("mL per hour"))
        lines.append(
            WorkLine(
                say("Afterwards"),
                say(
                    "{use} used per day ÷ {per} per mL ÷ {with_unit}",
                    use=use,
                    per=shown.rise(per_ml, 5),
                    with_unit=with_unit("24", "h"),
                ),
                hourly,
            )
        )
    lines.append(
        WorkLine(
            say("Second reckoning"),
            say("all doses given one by one"),
            say("ends at {end_value}", end_value=shown.value(answer.seen.end_value)),
        )
    )
    low, high = answer.band
    lines.append(
        WorkLine(
            say("9 times in 10 it ends"),
            _largest_source(answer),
            say("{low} to {high}", low=shown.value(low), high=shown.value(high)),
        )
    )
    return tuple(lines)


def _rounding(answer: Answer) -> str:
    """Say how the dose came down to what is set."""
    doses = answer.doses
    grain = say("in steps of {step}, rounded down", step=dose(doses.step_ml))
    if doses.count == 1 and doses.dose_ml < round_down(answer.single_dose_ml, doses.step_ml):
        return say(
            "÷ {per_day} doses; one smaller dose fits the rise wanted, {grain}", per_day=doses.per_day, grain=grain
        )
    return say("÷ {per_day} doses, {grain}", per_day=doses.per_day, grain=grain)


def _stock_line(answer: Answer) -> WorkLine:
    q = answer.question
    salt = q.parameter.name == "salinity"
    carried = answer.strength * (density_kg_per_l(q.system.water) if salt else 1.0)
    unit = {"alkalinity": "meq", "salinity": say("g of salt")}.get(q.parameter.name, "mg")
    strength = say("{carried} per mL", carried=with_unit(significant(carried, 5), unit))
    if isinstance(q.additive, Dissolved):
        batch = q.additive
        litres = with_unit(significant(batch.made_up_l, 4), "L")
        if not batch.also:
            mass, grams, pure, each = _portion_words(batch.portions[0], q.parameter.name, unit)
            return WorkLine(
                say(CARRIES),
                say(
                    "{mass}; {grams} in {litres}{pure} × {each}",
                    mass=mass,
                    grams=grams,
                    litres=litres,
                    pure=pure,
                    each=each,
                ),
                strength,
            )
        said = (_portion_words(part, q.parameter.name, unit) for part in batch.portions)
        parts = say(" and ").join(f"{grams}{pure} × {each}" for _, grams, pure, each in said)
        return WorkLine(say(CARRIES), say("{parts}, in {litres}", parts=parts, litres=litres), strength)
    label = q.additive
    rise = with_unit(significant(label.raises, 4), KINDS[label.kind].canonical.shown)
    how = say(
        "{dose} raise {water} by {rise}",
        dose=with_unit(significant(label.dose_ml, 4), "mL"),
        water=with_unit(significant(label.water_l, 4), "L"),
        rise=rise,
    )
    return WorkLine(say(CARRIES), say("by its label, {how}", how=how), strength)


def _portion_words(part: Portion, parameter: str, unit: str) -> tuple[str, str, str, str]:
    """Write of one weighed chemical its molar mass, its mass, its purity, and what a gram of it carries."""
    pure = "" if part.purity == 1.0 else say(", {purity} pure", purity=with_unit(figure(100.0 * part.purity, 2), "%"))
    return (
        with_unit(figure(molar_mass(part.chemical.formula), 2), say("g per mol")),
        with_unit(significant(part.grams, 5), "g"),
        pure,
        with_unit(significant(part.chemical.per_gram(parameter), 5), say("{unit} per g", unit=unit)),
    )


def _spread_line(answer: Answer, shown: Shown) -> str:
    """Say how what a millilitre carries becomes a rise, with every factor that is needed."""
    q = answer.question
    litres = with_unit(significant(q.system.volume_l, 5), "L")
    if q.parameter.name == "salinity":
        return say(
            "that ÷ ({litres} × {water})",
            litres=litres,
            water=with_unit(significant(density_kg_per_l(q.system.water), 5), say("kg per L")),
        )
    plain = Shown(q.parameter, shown.rise_unit, q.system.water)
    factor = plain.number(1.0)
    if abs(factor - 1.0) < 1e-12:
        return say("that ÷ {litres}", litres=litres)
    canonical = KINDS[q.parameter.kind].canonical.shown
    return say(
        "that ÷ {litres} × {factor} per {canonical}",
        litres=litres,
        factor=with_unit(significant(factor, 5), plain.unit_words),
        canonical=canonical,
    )


def _largest_source(answer: Answer) -> str:
    name, share = max(answer.by_source.items(), key=lambda item: item[1])
    source = {"reading": say('the reading'), "use": say('the use per day'), "pump": say('the pump'), "volume": say('the volume'),
              "strength": say('the strength')}[name]  # fmt: skip
    return say(
        "the largest part of the doubt ({share}) comes from {source}",
        share=with_unit(figure(100.0 * share, 0), "%"),
        source=source,
    )
