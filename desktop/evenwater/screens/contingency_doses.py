"""Plans for when things go wrong: the same question solved again, from another reading or with a syringe for the pump.

Every dose comes out of ``engine.correction.solve``, so each keeps all limits; none is faster than the plan itself.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

from evenwater.engine.caps import caps
from evenwater.engine.correction import Answer, Refused, solve
from evenwater.engine.limits import pace
from evenwater.engine.quantities import round_down, to_canonical
from evenwater.engine.question import CorrectionQuestion, Pump
from evenwater.screens.answer import shown_of
from evenwater.screens.shown import figure, with_unit
from evenwater.wording import marked, say, say_all

GAP_DAYS = 2.0
"""How long nothing was dosed when two days were missed [day]."""
_BANDS = 3
# Doses by hand in a day, the fewest first, and the hours at which they are given: between seven and ten at night, evenly
# spaced, so that nobody has to get up. Common practice, no source.
HOURS = {4: (7, 12, 17, 22), 6: (7, 10, 13, 16, 19, 22), 8: (7, 9, 11, 13, 15, 17, 19, 21)}


@dataclass(frozen=True)
class Tool:
    """What a dose is measured with by hand: holds ``holds_ml`` [mL], marked every ``mark_ml`` [mL]."""

    name: str
    holds_ml: float
    mark_ml: float


# The usual graduations, from memory; nobody pours more than a litre at a time by hand.
TOOLS = (
    Tool(marked("syringe"), 1.0, 0.05),
    Tool(marked("syringe"), 5.0, 0.2),
    Tool(marked("syringe"), 10.0, 0.5),
    Tool(marked("syringe"), 20.0, 1.0),
    Tool(marked("syringe"), 60.0, 1.0),
    Tool(marked("measuring cylinder"), 250.0, 5.0),
    Tool(marked("measuring cylinder"), 1000.0, 10.0),
)


@dataclass(frozen=True)
class Readings:
    """Readings of one parameter as finely as its test kit tells them apart, in the keeper's unit."""

    question: CorrectionQuestion

    @property
    def kit(self) -> float:
        """How far the kit may be off [canonical unit]."""
        p = self.question.parameter
        return p.canonical(p.kit_accuracy)

    @property
    def places(self) -> int:
        """Power of ten of the step between two readings: a digit that is not above half of what the kit may be off."""
        shown, target = shown_of(self.question), self.question.target
        return math.floor(math.log10((shown.number(target) - shown.number(target - self.kit)) / 2.0) + 1e-9)

    def down(self, value: float) -> float:
        """Return the reading [keeper's unit] at or below a canonical value."""
        return self._on_grid(math.floor(shown_of(self.question).number(value) / 10.0**self.places + 1e-6))

    def up(self, value: float) -> float:
        """Return the reading [keeper's unit] at or above a canonical value."""
        return self._on_grid(math.ceil(shown_of(self.question).number(value) / 10.0**self.places - 1e-6))

    def canonical(self, reading: float) -> float:
        """Return a reading in the canonical unit."""
        q = self.question
        return to_canonical(reading, q.parameter.kind, q.unit, q.system.water)

    def words(self, reading: float) -> str:
        """Write a reading with its unit."""
        return with_unit(self.bare(reading), shown_of(self.question).unit_words)

    def bare(self, reading: float) -> str:
        """Write a reading without its unit."""
        return figure(reading, max(0, -self.places))

    def between(self, low: float, high: float, parts: int) -> Iterator[float]:
        """Yield readings from ``low`` to ``high`` that part them evenly, each once."""
        steps = round((high - low) / 10.0**self.places)
        parts = max(1, min(parts, steps))
        first = round(low / 10.0**self.places)
        for part in range(parts + 1):
            yield self._on_grid(first + steps * part // parts)

    def asked(self, question: CorrectionQuestion, reading: float) -> CorrectionQuestion:
        """Return a question with another reading, made just now: it shows all that was dosed before."""
        measured = self.canonical(reading)
        as_typed = (reading, question.unit)
        return replace(
            question, measured=measured, measured_as=as_typed, measured_at=question.now, untested=0.0, lately=0.0
        )

    def _on_grid(self, steps: int) -> float:
        return round(steps * 10.0**self.places, max(0, -self.places))


@dataclass(frozen=True)
class Band:
    """Readings from ``low`` to ``high`` [keeper's unit], and the plan that starts at the upper one.

    From a lower reading the same doses end lower: never too high.
    """

    low: float
    high: float
    plan: Answer


@dataclass(frozen=True)
class ByHand:
    """What may be given by hand in place of the pump: ``per_day`` doses, measured with ``tool``.

    ``dose_ml`` [mL] is given on days that begin with a reading from ``low`` to ``dose_upto`` [keeper's unit],
    ``upkeep_ml`` [mL] on days with one from there to ``upkeep_upto``; each is None, or nought, where it is never given.
    Both end so far below the target that the doses of a whole day cannot pass it, not even if nothing is used.
    """

    per_day: int
    tool: Tool
    upkeep_tool: Tool
    low: float
    dose_ml: float
    dose_upto: float | None
    upkeep_ml: float
    upkeep_upto: float | None


def after_a_gap(answer: Answer) -> tuple[Band, ...]:
    """Return plans for the readings to be expected after two days without a dose.

    Parameters
    ----------
    answer : Answer
        The plan that was followed before.

    Returns
    -------
    tuple of Band
        Lowest readings first, each next to the one before; none where nothing may be planned. No dose is larger than the
        plan's own, and no day has more of them.
    """
    q = answer.question
    readings = Readings(q)
    fell = GAP_DAYS * q.use
    kept = _as_slow(answer)
    low, kept = _from_the_lowest(kept, readings)
    if low is None:
        return ()
    high = _below_target(readings, min(answer.seen.end_value - fell + readings.kit, q.target))
    if high <= low:
        return ()
    edges = list(readings.between(low, high, _BANDS))
    bands: list[Band] = []
    for below, upto in pairwise(edges):
        plan = solve(readings.asked(kept, upto))
        if isinstance(plan, Refused):
            break
        bands.append(Band(below, upto, plan))
    return tuple(bands)


def by_hand(answer: Answer) -> ByHand | None:
    """Return what may be given by hand while the pump stands still, the fewest doses a day that are allowed.

    Parameters
    ----------
    answer : Answer
        The plan that the pump followed.

    Returns
    -------
    ByHand or None
        A correction with its upkeep; where none is allowed, the upkeep alone; None where not even that is.
    """
    readings = Readings(answer.question)
    for per_day in HOURS:
        found = _corrected_by_hand(answer, readings, per_day)
        if found is not None:
            return found
    for per_day in HOURS:
        found = _kept_by_hand(answer, readings, per_day)
        if found is not None:
            return found
    return None


def _corrected_by_hand(answer: Answer, readings: Readings, per_day: int) -> ByHand | None:
    low, question = _from_the_lowest(_with(_as_slow(answer), per_day, None), readings)
    if low is None:
        return None
    fine = solve(readings.asked(question, low))
    tool = None if isinstance(fine, Refused) else _tool_for(fine.single_dose_ml)
    if tool is None:
        return None
    plan = solve(readings.asked(_with(question, per_day, tool), low))
    if isinstance(plan, Refused):
        return None
    q, doses = answer.question, plan.doses
    # As if nothing were used: whoever pours by hand does not keep to the minute.
    upto: float | None = _below_target(readings, q.target - doses.in_24_hours_ml * plan.per_ml)
    if upto is None or upto < low or not _holds(readings.asked(_with(question, per_day, tool), upto), doses.dose_ml):
        upto = None
    upkeep_tool = _tool_for(q.use / plan.per_ml / per_day) or tool
    upkeep_ml = round_down(q.use / plan.per_ml / per_day, upkeep_tool.mark_ml)
    upkeep_upto = _upkeep_upto(answer, readings, upkeep_ml * per_day, upto if upto is not None else low)
    if upto is None and upkeep_upto is None:
        return None
    return ByHand(per_day, tool, upkeep_tool, low, doses.dose_ml, upto, upkeep_ml, upkeep_upto)


def _kept_by_hand(answer: Answer, readings: Readings, per_day: int) -> ByHand | None:
    """Return the upkeep alone, if the limits allow its doses."""
    q = answer.question
    tool = _tool_for(q.use / answer.per_ml / per_day)
    if tool is None or q.use <= 0.0:
        return None
    # A pace of nought is the upkeep; no limit may forbid it.
    if pace(caps(_with(q, per_day, tool), answer.per_ml, answer.tank)).fastest < 0.0:
        return None
    upkeep_ml = round_down(q.use / answer.per_ml / per_day, tool.mark_ml)
    low = _lowest(readings)
    upto = _upkeep_upto(answer, readings, upkeep_ml * per_day, low)
    return None if upto is None else ByHand(per_day, tool, tool, low, 0.0, None, upkeep_ml, upto)


def _upkeep_upto(answer: Answer, readings: Readings, in_a_day_ml: float, above: float) -> float | None:
    if in_a_day_ml <= 0.0:
        return None
    upto = _below_target(readings, answer.question.target - in_a_day_ml * answer.per_ml)
    return upto if upto > above else None


def _as_slow(answer: Answer) -> CorrectionQuestion:
    """Return the plan's question with its own pace, that of its rounded doses, as the fastest rise."""
    rises = answer.doses.in_24_hours_ml * answer.per_ml - answer.question.use
    return replace(answer.question, fastest=min(rises, answer.pace))


def _from_the_lowest(question: CorrectionQuestion, readings: Readings) -> tuple[float | None, CorrectionQuestion]:
    """Return the lowest reading that may be planned from, and the question at the pace that is allowed there.

    Water of low alkalinity is buffered less: what is allowed from its lowest reading is allowed from all above.
    """
    for low in (_lowest(readings), readings.down(question.measured)):
        plan = solve(readings.asked(question, low))
        if isinstance(plan, Answer):
            return low, replace(question, fastest=min(plan.pace, question.fastest or plan.pace))
    return None, question


def _lowest(readings: Readings) -> float:
    """Return the lowest reading that two days without a dose explain, the kit's own error with it."""
    q = readings.question
    plausible = q.parameter.canonical(q.parameter.plausible[0])
    return readings.up(max(min(q.measured, q.start) - GAP_DAYS * q.use - readings.kit, plausible))


def _below_target(readings: Readings, value: float) -> float:
    """Return the reading at or below a value, and in any case below the target."""
    reading = readings.down(value)
    if readings.canonical(reading) < readings.question.target * (1.0 - 1e-9):
        return reading
    return readings.down(readings.canonical(reading - 0.5 * 10.0**readings.places))


def _holds(question: CorrectionQuestion, dose_ml: float) -> bool:
    """Return whether doses of this size may be given from here."""
    plan = solve(question)
    return isinstance(plan, Answer) and plan.doses.dose_ml >= dose_ml


def _with(question: CorrectionQuestion, per_day: int, tool: Tool | None) -> CorrectionQuestion:
    """Return a question in which a person pours: as fast as need be, but only to the marks of a tool."""
    mark = None if tool is None else tool.mark_ml
    hand = Pump(60_000.0, None, mark, 1.0, per_day, say("by hand"))
    return replace(question, pump=hand)


def _tool_for(dose_ml: float) -> Tool | None:
    """Return the smallest tool that holds a dose at once."""
    return next((tool for tool in say_all(TOOLS) if dose_ml <= tool.holds_ml), None)
