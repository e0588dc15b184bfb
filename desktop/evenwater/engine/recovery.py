"""What to do when a value is too high: hold its doses, exchange water, or both, side by side, and never a dose of an opposite chemical."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from evenwater.engine import recovery_check, recovery_plan, recovery_water
from evenwater.engine.catalogue import Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.reasons import Reason
from evenwater.engine.recovery_plan import Course, hard
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

    ``course`` is the steady way and ``changes`` the same in single changes of water; None where there is none. ``tests`` are when to test, from
    the start [day]. ``reasons`` say why it is not proposed. ``seen`` is what the second reckoning saw of the steady way, of
    whatever is proposed, and ``seen_singly`` what it saw of the single changes.
    """

    name: str
    course: Course | None
    changes: Course | None
    tests: tuple[float, ...]
    reasons: tuple[Reason, ...]
    seen: recovery_check.Lived | None = None
    seen_singly: recovery_check.Lived | None = None

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
    choices = tuple(_looked_at(q, choice) for choice in (_hold(q), *_exchanges(q)))
    faults = tuple(dict.fromkeys(_faults(q, choices)))
    if faults:
        return Refused((Reason("recovery_check_disagrees", {"what": faults}),))
    saturation = recovery_water.saturation(q)
    beyond = recovery_water.beyond_reckoning(q) or (saturation is not None and saturation > PRECIPITATES)
    return RecoveryAnswer(
        q, choices, saturation, beyond or bool(q.signs), tuple(_remarks(q, choices, saturation, beyond))
    )


def said(q: RecoveryQuestion, p: Parameter) -> dict[str, object]:
    """Return what a sentence about values of a parameter needs besides them.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.
    p : Parameter
        The parameter.

    Returns
    -------
    dict
        Params of a reason.
    """
    return {"parameter": p.name, "kind": p.kind, "unit": q.unit(p), "water": q.water}


def _hold(q: RecoveryQuestion) -> Choice:
    if q.used(q.parameter.name) <= 0.0:
        return Choice(HOLD, None, None, (), (Reason("recovery_no_use", {"parameter": q.parameter.name}, "use"),))
    course = recovery_plan.held(q)
    reasons = (*_too_fast(q), *_outside(q, course), *_too_long(q, course))
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
    shared = (*_too_fast(q), *_outside(q, both, singly_both))
    own = (*_outside(q, alone, singly), *_used_up(q, alone))
    limits = tuple(_codes_once(shared, own))
    no_use = () if q.used(name) > 0.0 else (Reason("recovery_no_use", {"parameter": name}, "use"),)
    return (
        Choice(EXCHANGE, alone, singly if singly.done else None, _daily(alone), (*limits, *_too_long(q, alone))),
        Choice(
            BOTH, both, singly_both if singly_both.done else None, _daily(both), (*no_use, *shared, *_too_long(q, both))
        ),
    )


def _codes_once(first: Sequence[Reason], further: Sequence[Reason]) -> Iterator[Reason]:
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


def _outside(q: RecoveryQuestion, *courses: Course) -> Iterator[Reason]:
    """Yield which other values would leave their hard range, or be driven on outside it, in any tank that this may be."""
    for p in q.known:
        if p is q.parameter:
            continue
        lowest = min(course.lowest[p.name] for course in courses)
        highest = max(course.highest[p.name] for course in courses)
        yield from _beyond(q, p, lowest, highest)


def _used_up(q: RecoveryQuestion, alone: Course) -> Iterator[Reason]:
    """Yield which values no new water is known to make good, that use would lower too far while a slow exchange goes on."""
    for p in q.known:
        if p is not q.parameter and p.name not in q.new_water and q.used(p.name) > 0.0 and alone.done:
            start = min(q.values_in(volume)[p.name] for volume in q.volumes_l)
            yield from _beyond(q, p, start - q.used(p.name) * alone.between_days[1], start)


def _beyond(q: RecoveryQuestion, p: Parameter, lowest: float, highest: float) -> Iterator[Reason]:
    least, most = (p.canonical(bound) for bound in p.target_hard)
    starts = [q.values_in(volume)[p.name] for volume in (q.volume_l, *q.volumes_l)]
    if lowest < min(least, *starts) - _SAME * hard(p):
        yield Reason("recovery_falls_too_low", {**said(q, p), "value": lowest, "bound": least}, f"new_water.{p.name}")
    if highest > max(most, *starts) + _SAME * hard(p):
        yield Reason("recovery_rises_too_high", {**said(q, p), "value": highest, "bound": most}, f"new_water.{p.name}")


def _too_long(q: RecoveryQuestion, course: Course) -> Iterator[Reason]:
    if not course.done:
        yield Reason("recovery_too_long", {"parameter": q.parameter.name, "days": LONGEST_DAYS})


def _looked_at(q: RecoveryQuestion, choice: Choice) -> Choice:
    """Return a choice with what the second reckoning sees of it, if it is proposed.

    The planner counts on the use, or on none; between the two, and where the animals stopped, another value may still leave its range.
    """
    if not choice.proposed or choice.course is None:
        return choice
    seen = _lived(q, choice.name, choice.course)
    singly = None if choice.changes is None else _lived(q, choice.name, choice.changes)
    every = (seen,) if singly is None else (seen, singly)
    beyond = tuple(
        reason
        for p in q.known
        if p is not q.parameter
        for reason in _beyond(
            q, p, min(each.lowest[p.name] for each in every), max(each.highest[p.name] for each in every)
        )
    )
    return replace(choice, reasons=beyond) if beyond else replace(choice, seen=seen, seen_singly=singly)


def _lived(q: RecoveryQuestion, choice: str, course: Course) -> recovery_check.Lived:
    exchanges = [(stage.days, stage.l_per_day) for stage in course.stages]
    changes = [(change.at_days, change.litres) for change in course.changes]
    # What ends sooner in the tank that was said goes on in one that takes longer.
    if course.further_stages:
        exchanges = exchanges[: len(exchanges) - (exchanges[-1][0] < 1.0)]
        exchanges += [(stage.days, stage.l_per_day) for stage in course.further_stages]
    if course.further_changes:
        changes = changes[: len(changes) - (changes[-1][0] == course.further_changes[0].at_days)]
        changes += [(change.at_days, change.litres) for change in course.further_changes]
    uses = {HOLD: (1.0,), EXCHANGE: (0.0, 1.0), BOTH: (1.0, 0.0)}[choice]
    return recovery_check.live(q, exchanges, changes, max(course.days, course.between_days[1]), uses)


def _faults(q: RecoveryQuestion, choices: Sequence[Choice]) -> Iterator[str]:
    """Yield in what the second reckoning differs, of everything that is proposed."""
    for volume, values in recovery_check.tanks(q).items():
        for name, value in q.values_in(volume).items():
            if abs(value - values[name]) > _SAME * max(value, values[name]):
                yield f"start of {name}"
    for choice in choices:
        for course, seen in ((choice.course, choice.seen), (choice.changes, choice.seen_singly)):
            if choice.proposed and course is not None and seen is not None:
                yield from (f"{choice.name}: {fault}" for fault in _of_course(q, course, seen))


def _of_course(q: RecoveryQuestion, course: Course, seen: recovery_check.Lived) -> Iterator[str]:
    for p in q.known:
        scale = max(abs(q.values[p.name]), hard(p))
        if abs(seen.end[p.name] - course.points[-1].values[p.name]) > _SAME * scale:
            yield f"end of {p.name}"
        if max(seen.rise[p.name], seen.fall[p.name]) > hard(p) + _SAME * scale:
            yield f"change of {p.name} in a day"
    highest = max(q.values_in(volume)[q.parameter.name] for volume in (q.volume_l, *q.volumes_l))
    if seen.highest[q.parameter.name] > highest * (1.0 + _SAME):
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
    p, expected = q.parameter, recovery_check.after_overdose(q, q.volume_l).get(q.parameter.name)
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
    if q.volume_share > 0.0:
        small, large = q.volumes_l
        yield Reason("recovery_volume", {"low_l": small, "high_l": large}, "system.volume_uncertainty")
    if q.assumed:
        yield Reason("recovery_assumed", {"names": q.assumed}, "system")
    if any(choice.course is not None and choice.name != HOLD for choice in choices):
        yield from _of_new_water(q)


def _of_new_water(q: RecoveryQuestion) -> Iterator[Reason]:
    for p in q.parameters:
        least, most = (p.canonical(bound) for bound in p.target_hard)
        if p.name in q.new_water and not least <= q.new_water[p.name] <= most:
            params = {**said(q, p), "value": q.new_water[p.name], "low": least, "high": most}
            yield Reason("recovery_new_water_outside", params, f"new_water.{p.name}")
    yield Reason("recovery_ph_not_followed", {}, "new_water")
    unknown = tuple(o.name for o in q.parameters if o.name not in q.values or o.name not in q.new_water)
    if unknown:
        yield Reason("recovery_not_followed", {"names": unknown}, "new_water")
    if q.new_temperature_c is None or not q.temperature_said:
        yield Reason("recovery_temperature_unknown", {}, "new_water.temperature")
    elif abs(q.new_temperature_c - q.water.temperature_c) > SAME_TEMPERATURE_C:
        params = {"new_c": q.new_temperature_c, "tank_c": q.water.temperature_c}
        yield Reason("recovery_temperature_differs", params, "new_water.temperature")
