"""Two opinions on drawn questions: the product's answer or refusal, and what living through it or trying it by force says.

A violation is a plan that passes a limit or says of itself what is not so, a refusal without reason, or an objection that one
of the two has and the other has not.
"""

from __future__ import annotations

import json
import math
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field

from evenwater.engine import correction, intake
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.reasons import Reason
from tests.engine import opinion_force, opinion_steps
from tests.engine.opinion_reading import Told, objections, told
from tests.engine.opinion_steps import NOISE, WATER_NOISE, Timetable
from tests.engine.opinions import Drawn, drawn
from tests.engine.reckoning import canonical

# Every code that a correction can be refused with; what reading a text finds is apart.
JUDGED = frozenset({
    "not_a_number", "out_of_range", "implausible", "reading_stale", "reading_in_the_future", "target_outside",
    "target_below_measured", "target_reached", "untested_reaches", "untested_unknown", "rise_not_positive",
    "rise_beyond_hard", "rise_needs_reason", "does_not_raise", "never_in_one_jug", "does_not_dissolve",
})  # fmt: skip
CODES = JUDGED | opinion_force.TRIED
WATER = ("pH in an hour", "highest pH", "saturation")


@dataclass
class Tally:
    """What some questions came to; ``worst`` is the largest part of each limit that a plan took, and the question's number."""

    asked: int = 0
    answered: int = 0
    refused: Counter[str] = field(default_factory=Counter)
    set_by: Counter[str] = field(default_factory=Counter)
    forced: Counter[str] = field(default_factory=Counter)
    advised: Counter[str] = field(default_factory=Counter)
    worst: dict[str, tuple[float, int]] = field(default_factory=dict)
    not_promised: Counter[str] = field(default_factory=Counter)
    violations: list[str] = field(default_factory=list)

    def add(self, other: Tally) -> None:
        """Add what other questions came to."""
        self.asked += other.asked
        self.answered += other.answered
        for name in ("refused", "set_by", "forced", "advised", "not_promised"):
            getattr(self, name).update(getattr(other, name))
        for limit, worst in other.worst.items():
            self._widen(limit, *worst)
        self.violations += other.violations

    def _widen(self, limit: str, part: float, number: int) -> None:
        if part > self.worst.get(limit, (-math.inf, 0))[0]:
            self.worst[limit] = (part, number)

    def fault(self, d: Drawn, what: str) -> None:
        """Note a violation with the question as it is to be asked again."""
        self.violations.append(f"{d.seed}/{d.number} {what}: {json.dumps(d.raw, default=str)} {d.broken or ''}")

    def take(self, d: Drawn, parts: dict[str, float]) -> None:
        """Note which part of each limit a plan takes, and those it passes."""
        for limit, part in parts.items():
            self._widen(limit, part, d.number)
            if not part <= 1.0 + (WATER_NOISE if limit in WATER else NOISE):
                self.fault(d, f"{limit} taken to {part!r}")


def examine(seed: int, numbers: Iterable[int]) -> Tally:
    """Ask questions of a seed, and hold every answer and every refusal against the second opinion."""
    out = Tally()
    plans: list[tuple[Drawn, Told, Timetable]] = []
    of_water: list[tuple[Drawn, Told, str]] = []
    for number in numbers:
        d = drawn(seed, number)
        question = d.read()
        out.asked += 1
        if isinstance(question, intake.Unread):
            out.fault(d, f"not read, {[(r.code, r.path) for r in question.reasons]}")
            continue
        result = correction.solve(question)
        t = told(d.raw)
        expected = against(d, t)
        if isinstance(result, Refused):
            out.refused.update({r.code for r in result.reasons})
            code = refused(out, d, t, expected, result.reasons)
            if code in opinion_force.OF_WATER:
                of_water.append((d, t, code))
        else:
            out.answered += 1
            out.set_by[result.set_by.partition("_raises_")[0]] += 1
            if expected:
                out.fault(d, f"answered in spite of {sorted(expected)}")
            plans.append((d, t, answered(out, d, t, result)))
    for (d, _, _), parts in zip(plans, opinion_steps.water([(t, plan) for _, t, plan in plans]), strict=True):
        out.take(d, parts)
    alone = opinion_force.water_alone([(t, code) for _, t, code in of_water])
    for (d, t, code), justified in zip(of_water, alone, strict=True):
        justify(out, d, t, code, "alone" if justified else opinion_force.why(t, code))
    return out


def against(d: Drawn, t: Told) -> set[str]:
    """Return the codes of what is wrong with a question before it is planned, found apart from the product."""
    label = d.raw["additive"].get("label")
    out = {"out_of_range"} if label and canonical(label["raises"], t.water) < 1e-9 else set()
    if d.broken is not None:
        out.add("out_of_range" if math.isfinite(d.broken[2]) else "not_a_number")
    # What no field admits is said alone: nothing follows from such a figure.
    return out or objections(t)


def answered(out: Tally, d: Drawn, t: Told, answer: Answer) -> Timetable:
    """Live through a plan and note what it takes; return its doses."""
    doses = answer.doses
    plan = Timetable(doses.dose_ml, doses.count, doses.upkeep_ml, t.per_day)
    lived = opinion_steps.live(t, plan)
    out.take(d, lived.taken)
    for what in opinion_steps.reported(t, answer, lived):
        out.fault(d, f"said wrongly: {what}")
    # The chart shows what happens when uptake stops and the band what a smaller tank does; no plan promises its limits then.
    stopped = plan.dose * plan.per_day * t.per_ml / t.hard(t.name)
    out.not_promised["rises faster than the hard rise if uptake stops"] += stopped > 1.0
    out.not_promised["the same in the smallest tank of the interval"] += stopped > t.low_end
    out.not_promised["rises faster than the hard rise in the smallest tank, uptake going on"] += (
        plan.dose * plan.per_day * t.per_ml / t.low_end - t.use > t.hard(t.name)
    )
    return plan


def refused(out: Tally, d: Drawn, t: Told, expected: set[str], reasons: tuple[Reason, ...]) -> str:
    """Look into why a question was refused: the same objections, or no plan by force either; return a code that is left to look into."""
    codes = {r.code for r in reasons}
    if expected or codes & JUDGED:
        if codes != expected:
            out.fault(d, f"refused for {sorted(codes)}, expected {sorted(expected)}")
        return ""
    (reason,) = reasons
    code = reason.code
    if code in opinion_force.OF_WATER:
        return code
    if code not in opinion_force.TRIED:
        out.fault(d, f"refused for {code}, {dict(reason.params)}")
        return ""
    justify(out, d, t, code, opinion_force.why(t, code))
    if code == "dose_below_smallest":
        helps = opinion_force.fewer_doses(t, int(reason.params["most_doses"]))
        out.advised["no fewer doses" if helps is None else "fewer, a plan" if helps else "fewer, no plan"] += 1
    return ""


def justify(out: Tally, d: Drawn, t: Told, code: str, why: str) -> None:
    """Note what justifies a refusal, or that nothing does."""
    out.forced[f"{code}: {why}"] += 1
    if not why:
        out.fault(d, f"refused for {code} without need, {opinion_force.possible(t)}")
