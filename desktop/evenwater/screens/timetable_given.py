"""What each pump of a system gives in a day: the upkeep, and in its place the plan that is followed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any

from evenwater.engine import intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.fields import FLOW
from evenwater.engine.following import ENDED, STOP
from evenwater.engine.quantities import Typed
from evenwater.engine.question import CorrectionQuestion, Pump
from evenwater.engine.schedule import default_step
from evenwater.engine.stock import Additive, Dissolved
from evenwater.engine.timetable_intake import LARGEST_DOSE
from evenwater.engine.timetable_question import OPPOSING
from evenwater.engine.timetable_water import Carried, carried
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepQuestion
from evenwater.screens.answer import BOTTLE
from evenwater.screens.following import Kept
from evenwater.screens.terms import term, terms
from evenwater.screens.timetable_wishes import (
    DOSES_FEWEST,
    DOSES_MOST,
    DOSES_WANTED,
    LEAST_APART_MIN,
    USUAL_APART_MIN,
    Wishes,
    usual_doses,
)
from evenwater.screens.views import Message
from evenwater.wording import marked, say, say_all

# What stays apart from alkalinity besides calcium, as every dose card says.
_ALSO_APART = ("magnesium", "strontium")
BOTTLE_NAME = marked("Bottle, by its label")


@dataclass(frozen=True)
class FollowedPlan:
    """A plan that is followed: its id, what is known of it (None when it cannot be read), and what its retests say."""

    plan_id: str
    parameter: str
    kept: Kept | None
    state: str = ""
    said: str = ""


@dataclass(frozen=True)
class Given:
    """What one pump gives.

    ``per_day_ml`` [mL per day] in steps of ``step_ml`` [mL]; ``doses`` a day are usual for it, and ``fixed`` those of a plan. ``record`` is
    the id of the pump's record, empty where it is not known; ``carried`` what a millilitre does, ``most_at_once`` the most that one dose may
    raise [canonical unit]. ``plan_id``, ``valid_until`` and ``stop_above`` are those of the plan that is followed, empty for upkeep.
    """

    parameter: str
    pump: Pump
    record: str
    additive: Additive
    per_day_ml: float
    step_ml: float
    doses: int
    carried: Carried
    most_at_once: float
    fixed: bool = False
    plan_id: str = ""
    valid_until: datetime | None = None
    stop_above: str = ""

    @property
    def additive_name(self) -> str:
        """The full name of what is in the jug, the telling part in capitals."""
        return term(self.additive.tall_man) if isinstance(self.additive, Dissolved) else say(BOTTLE_NAME)

    @property
    def hazards(self) -> tuple[str, ...]:
        """The hazard statements, one sentence a chemical with its signal word first."""
        portions = self.additive.portions if isinstance(self.additive, Dissolved) else ()
        return tuple(
            f"{term(p.chemical.signal_word) or say('Caution')}, {term(p.chemical.name)}: {', '.join(terms(p.chemical.statements))}."
            for p in portions
            if p.chemical.statements
        )

    @property
    def cautions(self) -> tuple[str, ...]:
        """The handling lines."""
        return terms(self.additive.cautions) if isinstance(self.additive, Dissolved) else say_all(BOTTLE)


@dataclass(frozen=True)
class Usual:
    """What stands for an empty wish: doses a day by parameter, and how far opposing doses stay apart at the least [min].

    ``fixed`` are the parameters whose doses a plan says.
    """

    doses: Mapping[str, int] = field(default_factory=dict)
    apart_min: int = USUAL_APART_MIN
    fixed: tuple[str, ...] = ()


def usual(given: Sequence[Given]) -> Usual:
    """Return what stands for wishes that nobody has.

    Parameters
    ----------
    given : sequence of Given
        What each pump gives.

    Returns
    -------
    Usual
        The doses of a plan cannot be fewer, so opposing ones may come nearer then; the planner still takes as much as it can have.
    """
    fixed = tuple(one.parameter for one in given if one.fixed)
    doses = {one.parameter: one.doses for one in given}
    return Usual(doses, LEAST_APART_MIN if fixed else USUAL_APART_MIN, fixed)


Going = tuple[FollowedPlan, Kept, CorrectionQuestion]
"""A plan whose ramp goes on, with what is known of it and the question that it was made from."""


def going(
    plans: Sequence[FollowedPlan], catalogue: Catalogue, now: datetime
) -> tuple[tuple[Going, ...], tuple[Message, ...]]:
    """Return the plans whose ramp goes on, and why one must not be put on a timetable.

    Parameters
    ----------
    plans : sequence of FollowedPlan
        The plans of one system.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone.

    Returns
    -------
    tuple
        Plans, and a sentence for each that cannot be read or must not be followed on. In place of a ramp that is over stands
        the upkeep.
    """
    found, against = [], []
    for plan in plans:
        head = say("Plan {plan_id} for {parameter}", plan_id=plan.plan_id, parameter=term(plan.parameter))
        question = (
            None if plan.kept is None else intake.correction(plan.kept.question, catalogue, plan.kept.course.started)
        )
        if plan.kept is None or not isinstance(question, CorrectionQuestion):
            against.append(
                Message(say("{head} cannot be read. End it on the Correct sheet.", head=head), "", "plan_unread")
            )
        elif plan.state == STOP:
            against.append(
                Message(
                    say("{head} must not be followed on. {plan_said}", head=head, plan_said=plan.said).strip(),
                    "",
                    "plan_stop",
                )
            )
        elif plan.state != ENDED and plan.kept.course.ends_at > now:
            found.append((plan, plan.kept, question))
    return tuple(found), tuple(against)


def givens(
    upkeep: UpkeepAnswer | None,
    plans: Sequence[Going],
    pumps: Mapping[str, str],
    wishes: Wishes,
) -> tuple[Given, ...]:
    """Return what each pump gives, in the order of the data file.

    Parameters
    ----------
    upkeep : UpkeepAnswer or None
        The upkeep; None where nothing is kept.
    plans : sequence of Going
        The plans that go on.
    pumps : mapping of str to str
        Id of the pump's record by parameter.
    wishes : Wishes
        The wishes, for the hours that are left of the day.

    Returns
    -------
    tuple of Given
        One for each pump that gives anything.
    """
    ramps = {plan.parameter: (plan, kept, question) for plan, kept, question in plans}
    dosed = [] if upkeep is None else [dose for dose in upkeep.doses if dose.dose_ml > 0.0]
    names = {*(dose.item.parameter.name for dose in dosed), *ramps}
    tank = water_question(upkeep, plans)
    if tank is None:
        return ()
    found = []
    for dose in dosed:
        parameter, pump = dose.item.parameter, dose.item.pump
        found.append(
            Given(
                parameter=parameter.name,
                pump=pump,
                record=pumps.get(parameter.name, ""),
                additive=dose.item.additive,
                per_day_ml=dose.in_24_hours_ml,
                step_ml=dose.step_ml,
                doses=usual_doses(pump.doses_per_day, opposed(parameter.name, names), wishes.open_min),
                carried=carried(dose.item.additive, parameter, tank.system),
                most_at_once=parameter.canonical(parameter.dose_rise_recommended),
            )
        )
    for name, (plan, kept, question) in ramps.items():
        course, parameter = kept.course, question.parameter
        found.append(
            Given(
                parameter=name,
                pump=question.pump,
                record="",
                additive=question.additive,
                per_day_ml=round(course.dose_ml * course.per_day, 9),
                step_ml=question.pump.step_ml or default_step(course.dose_ml),
                doses=course.per_day,
                carried=carried(question.additive, parameter, question.system),
                most_at_once=parameter.canonical(parameter.dose_rise_recommended),
                fixed=True,
                plan_id=plan.plan_id,
                valid_until=min(course.valid_until, course.ends_at),
                stop_above=kept.shown(course.started).value(course.stop_above),
            )
        )
    order = [p.name for p in tank.others]
    return tuple(sorted(found, key=lambda one: order.index(one.parameter)))


def water_question(upkeep: UpkeepAnswer | None, plans: Sequence[Going]) -> UpkeepQuestion | None:
    """Return the tank that the doses go into: that of the upkeep, else that of a plan; None where there is neither."""
    if upkeep is not None:
        tank = upkeep.question
    elif plans:
        question = plans[0][2]
        tank = UpkeepQuestion(question.now, question.system, (), question.others)
    else:
        return None
    # What a plan raises stands nowhere among what is kept. At its target the water is nearest to where something falls out.
    targets = {question.parameter.name: question.target for _, _, question in plans}
    system = tank.system
    alkalinity, calcium = targets.get("alkalinity", system.alkalinity), targets.get("calcium", system.calcium)
    return replace(tank, system=replace(system, alkalinity=alkalinity, calcium=calcium))


def opposed(parameter: str, names: set[str]) -> bool:
    """Return whether the doses of a parameter must stay apart from those of another that is dosed."""
    return any(parameter in pair for pair in pairs(tuple(names)))


def pairs(names: Sequence[str]) -> tuple[tuple[str, str], ...]:
    """Return which parameters' doses stay apart from each other, alkalinity first."""
    alkalinity = OPPOSING[0]
    others = (OPPOSING[1], *_ALSO_APART)
    return tuple((alkalinity, other) for other in others if alkalinity in names and other in names)


def names_of(given: Sequence[Given]) -> tuple[tuple[str, ...], tuple[Message, ...]]:
    """Return a name for each pump, all different, and a message for each pump that is to give twice."""
    names: list[str] = []
    faults = []
    for number, one in enumerate(given):
        name = one.pump.name.strip() or say("Pump for {parameter}", parameter=term(one.parameter))
        for before in given[:number]:
            if (
                before.pump.name.strip() or say("Pump for {parameter}", parameter=term(before.parameter))
            ).casefold() != name.casefold():
                continue
            if before.record == one.record or not (before.record and one.record):
                said = say(
                    "“{name}” is chosen for {parameter} and for {parameter_2}. A pump head gives from one jug: ",
                    name=term(name),
                    parameter=term(before.parameter),
                    parameter_2=term(one.parameter),
                )
                faults.append(Message(say("{said}choose another pump for one of them.", said=said), "", "pump_twice"))
            name = f"{name} ({term(one.parameter)})"
            break
        names.append(name)
    return tuple(names), tuple(faults)


def raw_question(given: Sequence[Given], names: Sequence[str], wishes: Wishes) -> dict[str, Any]:
    """Return the question of the timetable, as a question file of the kind ``timetable`` has it.

    Parameters
    ----------
    given : sequence of Given
        What each pump gives.
    names : sequence of str
        A name for each.
    wishes : Wishes
        The wishes.

    Returns
    -------
    dict
        Tables with ``Typed`` values.
    """
    named = dict(zip((one.parameter for one in given), names, strict=True))
    raw: dict[str, Any] = {
        "kind": "timetable",
        "keep_apart": wishes.keep_apart(usual(given).apart_min),
        "quiet": wishes.quiet,
        "one_at_a_time": wishes.one_at_a_time,
        "pump": [_pump(one, name, wishes) for one, name in zip(given, names, strict=True)],
    }
    also = [pair for pair in pairs(tuple(named)) if pair != OPPOSING]
    if also:
        raw["apart"] = [{"first": named[one], "second": named[other]} for one, other in also]
    return raw


def _typed(value: float, unit: str) -> Typed:
    """Write a figure so that it has one reading only: nine decimals are never taken for groups of thousands."""
    return Typed(f"{value:.9f}", unit)


def _pump(one: Given, name: str, wishes: Wishes) -> dict[str, Any]:
    pump = one.pump
    table: dict[str, Any] = {
        "name": name,
        "raises": one.parameter,
        "per_day": _typed(one.per_day_ml, "mL per day"),
        "flow": _typed(pump.flow_ml_per_min, FLOW.unit),
        "step": _typed(one.step_ml, "mL"),
        "largest_share": _typed(100.0 * pump.largest_share, "%"),
    }
    if pump.smallest_ml:
        table["smallest_dose"] = _typed(pump.smallest_ml, "mL")
    hours = wishes.not_before(one.parameter)
    if hours:
        table["quiet"] = hours
    if one.fixed:
        return table | {"doses_per_day": Typed(str(one.doses))}
    if one.carried.rise > 0.0 and (largest := one.most_at_once / one.carried.rise) < LARGEST_DOSE.high:
        table["largest_dose"] = _typed(largest, "mL")
    wanted, fewest, most = (wishes.of(one.parameter, name) for name in (DOSES_WANTED, DOSES_FEWEST, DOSES_MOST))
    said = {"doses_per_day": wanted, "fewest_doses": fewest, "most_doses": most}
    table |= {name: typed for name, typed in said.items() if typed.text.strip()}
    if not any(typed.text.strip() for typed in said.values()):
        table |= {
            "doses_per_day": Typed(str(one.doses)),
            "fewest_doses": Typed("1"),
            "most_doses": Typed(str(max(one.doses, pump.doses_per_day))),
        }
    return table
