"""Calibrating a pump: the flow that a few runs show, how well it is known, and whether they are good enough to dose by.

Three runs at least, no more than 5 % apart, at the dose size in use: common practice, no source (drawdown tests of water works
are done so). 5 % and 10 % off the setting: as in ``pump_wear``.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine.calibration_runs import LIKE_DURATION, Means, Run, Summary, by_duration
from evenwater.engine.calibration_uncertainty import Known, Needed, known, needed
from evenwater.engine.correction import Refused
from evenwater.engine.pump_line import Priming, priming
from evenwater.engine.pump_wear import (
    AMBER,
    COVER,
    RED,
    Calibrated,
    Head,
    Wear,
    head,
    hours_per_day,
    objections,
    wear,
)
from evenwater.engine.reasons import Reason
from evenwater.engine.trumpet import Mouth, trumpet

FEWEST_RUNS = 3
WIDEST_SPREAD = 0.05
# Instruments that may be further off than this cannot tell whether a pump is within its tolerance.
COARSEST = AMBER


# Beyond these no figure is a time, a volume, a flow or a length of a pump's, in any unit that is used here.
_LEAST, _MOST = 1e-9, 1e9


@dataclass(frozen=True)
class Line:
    """The tubing: inside diameter and length [mm]."""

    bore_mm: float
    length_mm: float


@dataclass(frozen=True)
class Delivered:
    """A record of what came out [mL] in equal intervals [min]."""

    every_min: float
    amounts_ml: tuple[float, ...]


@dataclass(frozen=True)
class Earlier:
    """An earlier calibration: when, at how many running hours of the head [h], the flow [mL/min].

    ``accuracy`` is the half width of its 95 % interval over the flow [1]; as good as today's where it is None.
    """

    at: datetime
    hours: float
    flow: float
    accuracy: float | None = None


@dataclass(frozen=True)
class CalibrationQuestion:
    """Runs of a pump, and what is known of it.

    ``setting`` the flow that doses are reckoned with now [mL/min], ``dose`` the dose size in use [mL], ``wanted`` how well the flow is to be
    known (half width over the flow) [1], ``hours`` that the head has run and its ``life`` [h], ``per_day`` running hours [h/d];
    each None where it is not said. ``assumed`` are what was taken for granted.
    """

    now: datetime
    runs: tuple[Run, ...]
    means: Means
    setting: float | None
    dose: float | None
    wanted: float
    hours: float | None
    life: float
    per_day: float | None
    earlier: tuple[Earlier, ...]
    line: Line | None
    record: Delivered | None
    assumed: tuple[Reason, ...]


@dataclass(frozen=True)
class Timed:
    """Runs of like duration and how well their mean flow is known."""

    summary: Summary
    known: Known


@dataclass(frozen=True)
class Bias:
    """How far the flow is off the setting: value and 95 % interval [1], and whether ``within``, ``amber`` or ``red``."""

    value: float
    low: float
    high: float
    state: str


@dataclass(frozen=True)
class Shorter:
    """How the shortest runs compare with the longest: their flow over that of the longest, less one, and its half width [1]."""

    seconds: float
    than_seconds: float
    difference: float
    half_width: float


@dataclass(frozen=True)
class CalibrationAnswer:
    """What the runs show.

    ``chosen`` are the runs that give the flow, ``groups`` all runs by duration, shortest first. The verdict is to repeat as long as
    there is a reason in ``repeat``. ``dose_seconds`` the run time of a dose at the flow found [s].
    """

    question: CalibrationQuestion
    chosen: Timed
    groups: tuple[Timed, ...]
    bias: Bias | None
    needed: Needed | None
    shorter: Shorter | None
    dose_seconds: float | None
    wear: Wear | None
    head: Head | None
    priming: Priming | None
    trumpet: tuple[Mouth, ...]
    repeat: tuple[Reason, ...]
    remarks: tuple[Reason, ...]

    @property
    def passed(self) -> bool:
        """Whether the runs are good enough to dose by."""
        return not self.repeat


def solve(question: CalibrationQuestion) -> CalibrationAnswer | Refused:
    """Answer what a pump gives.

    Parameters
    ----------
    question : CalibrationQuestion
        Runs, instruments and the pump's past.

    Returns
    -------
    CalibrationAnswer or Refused
        The flow with everything that follows from it, or why nothing can be said.
    """
    if not question.runs:
        return Refused((Reason("no_runs", {"fewest": FEWEST_RUNS}, "run"),))
    if _unusable(question):
        return Refused((Reason("flow_unusable", {}, "run"),))
    q, groups = question, by_duration(question.runs, question.means)
    chosen = _chosen(q, groups)
    if chosen.mean < _LEAST:
        return Refused((Reason("nothing_delivered", {"seconds": chosen.seconds}, f"run.{chosen.indices[0] + 1}"),))
    timed = tuple(Timed(group, known(q.runs, q.means, group)) for group in groups)
    best = timed[groups.index(chosen)]
    past = _past(q, best)
    against = objections(past[:-1], past[-1], q.now) if len(past) > 1 else ()
    if against:
        return Refused(against)
    per_day = hours_per_day(past) if q.per_day is None and past else q.per_day
    worn = wear(past, past[-1].hours, q.setting, per_day, q.now) if len(past) > 1 else None
    told = (worn,) if isinstance(worn, Reason) else worn.remarks if worn else ()
    weighed = q.runs[chosen.indices[-1]].mass_g is not None
    bias = _bias(q.setting, best)
    shorter = _shorter(timed)
    wanted = needed(q.means, chosen.mean, q.wanted, weighed)
    dose_seconds = None if q.dose is None else 60.0 * q.dose / chosen.mean
    return CalibrationAnswer(
        question=q,
        chosen=best,
        groups=timed,
        bias=bias,
        needed=wanted,
        shorter=shorter,
        dose_seconds=dose_seconds,
        wear=None if isinstance(worn, Reason) else worn,
        head=None if q.hours is None else head(q.hours, q.life, per_day, q.now),
        priming=_priming(q.line, best),
        trumpet=_trumpet(q, chosen.mean),
        repeat=tuple(_repeat(q, best, timed)),
        remarks=(*_remarks(q, best, bias, shorter, dose_seconds), *told, *q.assumed),
    )


def _unusable(q: CalibrationQuestion) -> bool:
    """Return whether a figure is none, or below what it can be."""
    positive = [*(run.seconds for run in q.runs), *(e.flow for e in q.earlier), q.wanted, q.life]
    positive += [
        value for value in (q.setting, q.dose, q.per_day, *(e.accuracy for e in q.earlier)) if value is not None
    ]
    positive += [] if q.line is None else [q.line.bore_mm, q.line.length_mm]
    positive += [] if q.record is None else [q.record.every_min]
    amounts = [(run.volume_ml or 0.0) + (run.mass_g or 0.0) for run in q.runs]
    amounts += [*(e.hours for e in q.earlier), q.hours or 0.0, *(() if q.record is None else q.record.amounts_ml)]
    # A not-a-number is between nothing.
    usable = all(_LEAST <= value <= _MOST for value in positive) and all(0.0 <= value <= _MOST for value in amounts)
    return not usable or min(run.doses for run in q.runs) < 1


def _chosen(q: CalibrationQuestion, groups: tuple[Summary, ...]) -> Summary:
    """Return the runs that give the flow: enough of them, nearest to the dose in use, else most and longest."""
    enough = [group for group in groups if group.count >= FEWEST_RUNS] or list(groups)
    if q.dose is None:
        return max(enough, key=lambda group: (group.count, group.seconds))
    dose = q.dose

    def away(group: Summary) -> float:
        return math.inf if group.mean <= 0.0 else abs(math.log(group.seconds * group.mean / 60.0 / dose))

    return min(enough, key=away)


def _bias(setting: float | None, best: Timed) -> Bias | None:
    if setting is None:
        return None
    mean, half = best.summary.mean, best.known.half_width
    value = mean / setting - 1.0
    state = "red" if abs(value) > RED else "amber" if abs(value) > AMBER else "within"
    return Bias(value, (mean - half) / setting - 1.0, (mean + half) / setting - 1.0, state)


def _shorter(timed: tuple[Timed, ...]) -> Shorter | None:
    """Compare the shortest runs with the longest, when there are two sorts of several runs each."""
    several = [each for each in timed if each.summary.count > 1 and each.summary.mean > 0.0]
    if len(several) < 2:
        return None
    short, long = several[0], several[-1]
    parts = [each.known.half_width / each.summary.mean for each in (short, long)]
    ratio = short.summary.mean / long.summary.mean
    return Shorter(short.summary.seconds, long.summary.seconds, ratio - 1.0, ratio * math.hypot(*parts))


def _priming(line: Line | None, best: Timed) -> Priming | None:
    if line is None:
        return None
    return priming(line.bore_mm, line.length_mm, best.summary.mean, best.summary.mean - best.known.half_width)


def _trumpet(q: CalibrationQuestion, flow: float) -> tuple[Mouth, ...]:
    if q.record is None:
        return ()
    return trumpet(q.record.amounts_ml, q.record.every_min, flow if q.setting is None else q.setting)


def _past(q: CalibrationQuestion, best: Timed) -> tuple[Calibrated, ...]:
    """Return the earlier calibrations and today's, each with its uncertainty; none where the running hours are not said."""
    if q.hours is None:
        return ()
    mean, today = best.summary.mean, best.known.standard
    return (
        *(
            Calibrated(e.at, e.hours, e.flow, e.flow * (today / mean if e.accuracy is None else e.accuracy / COVER))
            for e in q.earlier
        ),
        Calibrated(q.now, q.hours, mean, today),
    )


def _repeat(q: CalibrationQuestion, best: Timed, timed: tuple[Timed, ...]) -> Iterator[Reason]:
    group, cv = best.summary, best.summary.cv
    empty = [n + 1 for n, run in enumerate(q.runs) if not (run.volume_ml or run.mass_g)]
    if empty:
        yield Reason("run_without_liquid", {"runs": tuple(empty)}, f"run.{empty[0]}")
    if group.count < FEWEST_RUNS:
        yield Reason("runs_too_few", {"count": group.count, "fewest": FEWEST_RUNS, "seconds": group.seconds}, "run")
    if cv is not None and cv > WIDEST_SPREAD:
        yield Reason("spread_too_wide", {"spread": cv, "most": WIDEST_SPREAD}, "run")
    for other in timed:
        if other is not best and other.summary.count < FEWEST_RUNS:
            runs = tuple(n + 1 for n in other.summary.indices)
            params = {"runs": runs, "seconds": other.summary.seconds, "others": group.seconds, "fewest": FEWEST_RUNS}
            yield Reason("run_of_other_length", params, f"run.{runs[0]}.seconds")
    if best.known.instruments > COARSEST * group.mean:
        weighed = q.runs[group.indices[-1]].mass_g is not None
        longer = needed(q.means, group.mean, COARSEST, weighed)
        params = {
            "share": best.known.instruments / group.mean,
            "most": COARSEST,
            "weighed": weighed,
            "seconds": None if longer is None else longer.seconds,
        }
        yield Reason("measured_too_coarsely", params, "run")


def _remarks(
    q: CalibrationQuestion, best: Timed, bias: Bias | None, shorter: Shorter | None, dose_seconds: float | None
) -> Iterator[Reason]:
    if bias is not None and bias.state != "within":
        params = {"bias": bias.value, "flow": best.summary.mean, "setting": q.setting}
        yield Reason("flow_off_red" if bias.state == "red" else "flow_off_amber", params, "pump.setting")
    if best.known.half_width > AMBER * best.summary.mean:
        yield Reason("flow_loosely_known", {"share": best.known.half_width / best.summary.mean, "good": AMBER}, "run")
    lasted = best.summary.seconds
    if dose_seconds is not None and not lasted / LIKE_DURATION <= dose_seconds <= lasted * LIKE_DURATION:
        params = {"dose_ml": q.dose, "dose_seconds": dose_seconds, "seconds": lasted}
        yield Reason("dose_not_calibrated", params, "pump.dose")
    if shorter is not None and abs(shorter.difference) > shorter.half_width:
        params = {"seconds": shorter.seconds, "than": shorter.than_seconds, "difference": shorter.difference}
        yield Reason("short_doses_differ", params)
    if q.hours is not None and q.hours >= q.life:
        yield Reason("head_used_up", {"hours": q.hours, "life": q.life}, "pump.hours")
