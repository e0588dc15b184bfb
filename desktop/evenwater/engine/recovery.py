"""What to do when a value is too high: hold its doses, exchange water, or both, side by side, and never a dose of an opposite chemical."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from evenwater.engine import recovery_check, recovery_plan, recovery_water
from evenwater.engine.catalogue import Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.reasons import Reason
from evenwater.engine.recovery_plan import Course, Point, hard
from evenwater.engine.recovery_question import LONGEST_DAYS, RecoveryQuestion
from evenwater.engine.water_limits import PRECIPITATES

# What comes first, in this order; common practice, no source.
STOP = ("pump_off", "line_out", "no_counter_dose", "no_acid", "test", "call")
HOLD, EXCHANGE, BOTH = "hold", "exchange", "both"
# From this difference on [degC] new water is warmed or cooled first; common practice, no source.
SAME_TEMPERATURE_C = 1.0
# Two reckonings of the same lie this near each other.
_SAME = 1e-6


@dataclass(frozen=True)
class Choice:
    """One thing that can be done: ``hold``, ``exchange`` (use not counted on) or ``both``.

    ``course`` is the steady way and ``changes`` the same in single changes of water; None where there is none. ``tests`` are the days from the
    start on which to test. ``reasons`` say why it is not proposed.
    """

    name: str
    course: Course | None
    changes: Course | None
    tests: tuple[float, ...]
    reasons: tuple[Reason, ...]

    @property
    def proposed(self) -> bool:
        """Whether it can be done without passing a limit."""
        return not self.reasons


@dataclass(frozen=True)
class RecoveryAnswer:
    """The choices side by side; ``saturation`` [-] with aragonite is None where it cannot be said.

    ``test_first`` says that carbonate may be falling out: the figures then hold only after a new test.
    """

    question: RecoveryQuestion
    choices: tuple[Choice, ...]
    saturation: float | None
    test_first: bool
    remarks: tuple[Reason, ...]


def solve(q: RecoveryQuestion) -> RecoveryAnswer | Refused:
    """Put side by side what can be done about a value that is too high.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.

    Returns
    -------
    RecoveryAnswer or Refused
        Refused when the value is not too high, the target lies outside what any plan may aim for, or the second reckoning disagrees.
    """
    p, value = q.parameter, q.values[q.parameter.name]
    least, most = (p.canonical(bound) for bound in p.target_hard)
    if not least <= q.target <= most:
        bounds = {**said(q, p), "value": q.target, "low": least, "high": most}
        return Refused((Reason("recovery_target_outside", bounds, "change.target"),))
    if value <= q.target:
        return Refused(
            (Reason("recovery_not_high", {**said(q, p), "value": value, "target": q.target}, "change.measured"),)
        )
    choices = (_hold(q), *_exchanges(q))
    faults = tuple(dict.fromkeys(_faults(q, choices)))
    if faults:
        return Refused((Reason("recovery_check_disagrees", {"what": faults}),))
    saturation = recovery_water.saturation(q)
    beyond = recovery_water.beyond_reckoning(q) or (saturation is not None and saturation > PRECIPITATES)
    return RecoveryAnswer(
        q, choices, saturation, beyond or bool(q.signs), tuple(_remarks(q, choices, saturation, beyond))
    )


def said(q: RecoveryQuestion, p: Parameter) -> dict[str, object]:
    """Return what a sentence about values of a parameter needs besides them."""
    return {"parameter": p.name, "kind": p.kind, "unit": q.unit(p), "water": q.water}


def _hold(q: RecoveryQuestion) -> Choice:
    if q.used(q.parameter.name) <= 0.0:
        return Choice(HOLD, None, None, (), (Reason("recovery_no_use", {"parameter": q.parameter.name}, "use"),))
    course = recovery_plan.held(q)
    reasons = (*_too_fast(q), *_outside(q, course.points), *_too_long(q, course))
    # At first after a day, then before a reading is stale, and at the end.
    step = max(1.0, q.parameter.stale_days)
    tests = [0.0, 1.0]
    while tests[-1] + step < course.days:
        tests.append(tests[-1] + step)
    return Choice(HOLD, course, None, _within(tests, course), reasons)


def _exchanges(q: RecoveryQuestion) -> tuple[Choice, Choice]:
    name = q.parameter.name
    if name not in q.new_water:
        unknown = (Reason("recovery_new_water_unknown", {"parameter": name}, f"new_water.{name}"),)
        return Choice(EXCHANGE, None, None, (), unknown), Choice(BOTH, None, None, (), unknown)
    if q.new_water[name] >= q.target:
        params = {**said(q, q.parameter), "new": q.new_water[name], "target": q.target}
        high = (Reason("recovery_new_water_too_high", params, f"new_water.{name}"),)
        return Choice(EXCHANGE, None, None, (), high), Choice(BOTH, None, None, (), high)
    alone, both = recovery_plan.exchanged(q)
    singly, singly_both = recovery_plan.in_changes(q)
    # If the animals use what they did, the exchange ends with the way of both, so its values count for both choices.
    shared = (*_too_fast(q), *_outside(q, (*both.points, *singly_both.points)))
    own = _outside(q, (*alone.points, *singly.points))
    reasons = (*_codes_once(shared, own), *_too_long(q, alone))
    no_use = () if q.used(name) > 0.0 else (Reason("recovery_no_use", {"parameter": name}, "use"),)
    return (
        Choice(EXCHANGE, alone, singly if singly.done else None, _daily(alone), reasons),
        Choice(
            BOTH, both, singly_both if singly_both.done else None, _daily(both), (*no_use, *shared, *_too_long(q, both))
        ),
    )


def _codes_once(first: Sequence[Reason], further: Iterator[Reason]) -> Iterator[Reason]:
    seen = {(reason.code, reason.params["parameter"]) for reason in first}
    yield from first
    yield from (reason for reason in further if (reason.code, reason.params["parameter"]) not in seen)


def _daily(course: Course) -> tuple[float, ...]:
    return _within([float(day) for day in range(int(course.days) + 1)], course)


def _within(days: Sequence[float], course: Course) -> tuple[float, ...]:
    return (*(day for day in days if day < course.days), course.days)


def _too_fast(q: RecoveryQuestion) -> Iterator[Reason]:
    """Yield which doses cannot be held because the animals alone would take too much of it in a day."""
    for p in q.known:
        if q.used(p.name) > hard(p):
            yield Reason(
                "recovery_use_too_fast", {**said(q, p), "use": q.used(p.name), "most": hard(p)}, f"use.{p.name}"
            )


def _outside(q: RecoveryQuestion, points: Sequence[Point]) -> Iterator[Reason]:
    """Yield which other values would leave their hard range, or be driven on outside it."""
    for p in q.known:
        if p is q.parameter:
            continue
        least, most = (p.canonical(bound) for bound in p.target_hard)
        lowest = min(point.values[p.name] for point in points)
        highest = max(point.values[p.name] for point in points)
        start = q.values[p.name]
        if lowest < min(least, start) - _SAME * hard(p):
            yield Reason(
                "recovery_falls_too_low", {**said(q, p), "value": lowest, "bound": least}, f"new_water.{p.name}"
            )
        if highest > max(most, start) + _SAME * hard(p):
            yield Reason(
                "recovery_rises_too_high", {**said(q, p), "value": highest, "bound": most}, f"new_water.{p.name}"
            )


def _too_long(q: RecoveryQuestion, course: Course) -> Iterator[Reason]:
    if not course.done:
        yield Reason("recovery_too_long", {"parameter": q.parameter.name, "days": LONGEST_DAYS})


def _faults(q: RecoveryQuestion, choices: Sequence[Choice]) -> Iterator[str]:
    """Yield in what the second reckoning differs, of everything that is proposed."""
    for name, value in recovery_check.after_overdose(q).items():
        tested_since = q.measured and name == q.parameter.name
        if not tested_since and abs(value - q.values[name]) > _SAME * max(value, q.values[name]):
            yield f"start of {name}"
    for choice in choices:
        if choice.proposed:
            for course in filter(None, (choice.course, choice.changes)):
                yield from (f"{choice.name}: {fault}" for fault in _of_course(q, choice.name, course))


def _of_course(q: RecoveryQuestion, choice: str, course: Course) -> Iterator[str]:
    exchanges = [(stage.days, stage.l_per_day) for stage in course.stages]
    changes = [(change.at_days, change.litres) for change in course.changes]
    counted = 0.0 if choice == EXCHANGE else 1.0
    for uses in (1.0, 0.0) if choice == BOTH else (counted,):
        seen = recovery_check.live(q, exchanges, changes, course.days, uses)
        for p in q.known:
            scale = max(abs(q.values[p.name]), hard(p))
            off = abs(seen.end[p.name] - course.points[-1].values[p.name])
            if uses == counted and off > _SAME * scale:
                yield f"end of {p.name}"
            if max(seen.rise[p.name], seen.fall[p.name]) > hard(p) + _SAME * scale:
                yield f"change of {p.name} in a day"
        if seen.highest[q.parameter.name] > q.values[q.parameter.name] * (1.0 + _SAME):
            yield f"rise of {q.parameter.name}"


def _remarks(
    q: RecoveryQuestion, choices: Sequence[Choice], saturation: float | None, beyond: bool
) -> Iterator[Reason]:
    if q.signs:
        yield Reason("recovery_precipitation_seen", {"signs": q.signs}, "signs")
    if beyond:
        yield Reason("recovery_precipitation_likely", {"saturation": saturation, "most": PRECIPITATES})
    if not any(choice.proposed for choice in choices):
        yield Reason("recovery_nothing_proposed", {"parameter": q.parameter.name})
    p, expected = q.parameter, recovery_check.after_overdose(q).get(q.parameter.name)
    if q.measured and q.overdose is not None and expected is not None and p.name not in q.assumed:
        missing = expected - q.values[p.name]
        if missing > 2.0 * p.canonical(p.kit_accuracy):
            yield Reason(
                "recovery_less_than_expected",
                {**said(q, p), "value": q.values[p.name], "expected": expected},
                "change.measured",
            )
    for other in q.known:
        most = other.canonical(other.target_hard[1])
        if other is not p and q.values[other.name] > most:
            yield Reason("recovery_also_too_high", {**said(q, other), "value": q.values[other.name], "most": most})
    unknown = tuple(other for other in q.held if other != p.name and other in q.values and other not in q.use)
    if unknown:
        yield Reason("recovery_held_use_unknown", {"names": unknown}, "use")
    if q.assumed:
        yield Reason("recovery_assumed", {"names": q.assumed}, "system")
    if any(choice.course is not None and choice.name != HOLD for choice in choices):
        yield from _of_new_water(q)


def _of_new_water(q: RecoveryQuestion) -> Iterator[Reason]:
    unknown = tuple(o.name for o in q.parameters if o.name not in q.values or o.name not in q.new_water)
    if unknown:
        yield Reason("recovery_not_followed", {"names": unknown}, "new_water")
    if q.new_temperature_c is None or not q.temperature_said:
        yield Reason("recovery_temperature_unknown", {}, "new_water.temperature")
    elif abs(q.new_temperature_c - q.water.temperature_c) > SAME_TEMPERATURE_C:
        params = {"new_c": q.new_temperature_c, "tank_c": q.water.temperature_c}
        yield Reason("recovery_temperature_differs", params, "new_water.temperature")
