"""What the code of the card of all plans together is made of: figures and the keeper's own names, which are the same in every language."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from evenwater.engine.foods_question import Food
from evenwater.engine.quantities import Typed
from evenwater.engine.stock import Additive, Dissolved
from evenwater.engine.together_answer import TogetherAnswer
from evenwater.engine.upkeep import UpkeepDose
from evenwater.screens import foods_given, foods_jug, plan_id
from evenwater.screens.together_sources import Ramp

Values = Mapping[str, Typed]
Figures = tuple[object, ...]


def code(pumps: Iterable[Figures], foods: Iterable[tuple[Values, Food]], answer: TogetherAnswer) -> str:
    """Return the code of a card.

    Parameters
    ----------
    pumps : iterable of tuple
        What ``of_upkeep`` and ``of_ramp`` return.
    foods : iterable of tuple
        Each food that is given, with the fields of its record.
    answer : TogetherAnswer
        Whose water is exchanged.

    Returns
    -------
    str
        The same as long as nothing that somebody sets or gives is another, in every language.
    """
    pair = answer.question.tank.pair
    water = tuple(_four(value) for value in (pair.out_l, pair.in_l, answer.question.tank.new_salinity))
    return plan_id.together_code((sorted(pumps, key=repr), [_of_food(values, food) for values, food in foods], water))


def of_upkeep(each: UpkeepDose) -> Figures:
    """Return what tells a pump that keeps a value from another setting of it."""
    pump = each.item.pump.name.strip()
    given = (each.item.parameter.name, "", each.per_day, _four(each.dose_ml), pump, _four(each.run_time_s))
    return (*given, *_made_of(each.item.additive))


def of_ramp(ramp: Ramp) -> Figures:
    """Return what tells a pump that follows a plan from another setting of it."""
    dose_ml, run_time_s = ramp.course.dose_ml, ramp.course.dose_ml / ramp.pump.flow_ml_per_min * 60.0
    pump = ramp.pump.name.strip()
    given = (ramp.parameter.name, ramp.plan_id, ramp.course.per_day, _four(dose_ml), pump, _four(run_time_s))
    return (*given, *_made_of(ramp.additive))


def _four(value: float) -> str:
    """Return a figure to what can be set."""
    return f"{value:.4g}"


def _made_of(additive: Additive) -> tuple[str, ...]:
    if not isinstance(additive, Dissolved):
        return ()
    return (_four(additive.made_up_l), *(f"{_four(p.grams)} {p.chemical.name}" for p in additive.portions))


def _of_food(values: Values, food: Food) -> tuple[str, ...]:
    last = foods_jug.kept(values).last_day
    named, cold = (foods_given.text_of(values, name) for name in ("name", "cold"))
    return named, _four(food.per_day_ml), cold, "" if last is None else last.isoformat()
