"""The second opinion on a recovery: every choice lived through in short steps, from the bags and the bottles on.

It shares no code with the planner: only the litres that a plan tells the keeper to exchange are taken from it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.recovery_question import RecoveryQuestion
from evenwater.engine.stock import Dissolved

_STEPS_IN_A_DAY, _HALVINGS = 8, 40
# What is nearer than this is the same instant [day], or nothing of a value [1].
_SAME = 1e-9
# Right after a change of water is so much later than right before it [day].
_AFTER = 1e-7
_COUNTED = {
    "calcium": "Ca", "magnesium": "Mg", "potassium": "K", "strontium": "Sr", "iodide": "I", "nitrate": "NO3", "phosphate": "PO4",
}  # fmt: skip


Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Lived:
    """What a choice came to, by parameter [canonical unit], in the worst of the tanks and uses it was lived through with.

    ``end`` are the values at its end in the tank that was said, ``rise`` and ``fall`` the most they rose and fell within 24 hours,
    ``lowest`` and ``highest`` the ends of their way.
    """

    end: Mapping[str, float]
    rise: Mapping[str, float]
    fall: Mapping[str, float]
    lowest: Mapping[str, float]
    highest: Mapping[str, float]


def after_overdose(q: RecoveryQuestion, volume_l: float) -> dict[str, float]:
    """Return what each value comes to by what ran in, from masses and moles again.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.
    volume_l : float
        What the net volume really is [L].

    Returns
    -------
    dict of str to float
        Values [canonical unit], without those that were tested since.
    """
    if q.overdose is None:
        return dict(q.before)
    batch, ml, found = q.overdose.batch, q.overdose.ml, dict(q.before)
    for name in q.before:
        if isinstance(batch, Dissolved):
            comes = 0.0
            for portion in batch.portions:
                moles = 1000.0 * portion.grams * portion.purity / molar_mass(portion.chemical.formula)
                moles *= ml / (1000.0 * batch.made_up_l)
                if name == "alkalinity":
                    comes += moles * portion.chemical.per_mole("alkalinity")
                elif name in _COUNTED:
                    comes += moles * portion.chemical.per_mole(_COUNTED[name]) * molar_mass(_COUNTED[name])
                elif any("salinity" in each.chemical.raises for each in batch.portions):
                    # In a jug that is meant for salinity every salt counts, whatever else it was put in for.
                    comes += moles * molar_mass(portion.chemical.dry) / 1000.0 / density_kg_per_l(q.water)
        else:
            comes = (
                ml / batch.label.dose_ml * batch.label.raises * batch.label.water_l
                if batch.parameter.name == name
                else 0.0
            )
        found[name] += comes / volume_l
    return found


def tanks(q: RecoveryQuestion) -> dict[float, dict[str, float]]:
    """Return the values now by what the net volume may be.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.

    Returns
    -------
    dict of float to dict
        Values by parameter [canonical unit] by the volume [L]: the one that was said first, then the smallest and the largest.
    """
    found = {}
    for volume in dict.fromkeys((q.volume_l, *q.volumes_l)):
        ran_in = after_overdose(q, volume)
        tested = {q.parameter.name} if q.measured else set()
        found[volume] = {name: v if name in tested else ran_in.get(name, v) for name, v in q.values.items()}
    return found


def live(
    q: RecoveryQuestion,
    exchanges: Sequence[tuple[float, float]],
    changes: Sequence[tuple[float, float]],
    days: float,
    uses: Sequence[float],
) -> Lived:
    """Live through a choice in the smallest, the said and the largest tank, each until its value is at the target.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.
    exchanges : sequence of (float, float)
        Steady exchanges one after the other: how long [day], how much [L/day].
    changes : sequence of (float, float)
        Changes at once: when [day], how much [L].
    days : float
        How long the whole takes at the most [day].
    uses : sequence of float
        Which parts of the use known may really happen [1]; ``end`` goes by the first.

    Returns
    -------
    Lived
        What was seen, step by step.
    """
    names = list(q.values)
    cases = [(volume, start, part) for part in uses for volume, start in tanks(q).items()]
    volumes = np.array([[volume] for volume, _, _ in cases])
    value = np.array([[start[name] for name in names] for _, start, _ in cases])
    fresh = np.array([q.new_water.get(name, math.nan) for name in names])
    known, fresh = ~np.isnan(fresh), np.nan_to_num(fresh)
    use = np.array([[part * q.use.get(name, 0.0) if name in q.held else 0.0 for name in names] for _, _, part in cases])
    main, grid, times, now = names.index(q.parameter.name), [value], [0.0], 0.0
    # Measured by where it begins: of a target of next to nothing a share would be no distance at all.
    done = q.target + _SAME * float(value[:, main].max())
    for begin, length, litres, at_once in _legs(exchanges, changes, days):
        if at_once:
            going = (value[:, main] > done)[:, None]
            mixed = np.where(going & known, value - at_once / volumes * (value - fresh), value)
            value = _until(q.target, main, value, mixed)
            grid.append(value)
            times.append(begin + _AFTER)
        count = max(1, math.ceil(_STEPS_IN_A_DAY * length))
        for number in range(count if length > _SAME else 0):
            going = (value[:, main] > done)[:, None]
            share = np.where(going & known, litres / volumes, 0.0)
            value = _ended(q.target, main, value, fresh, share, np.where(going, use, 0.0), length / count)
            now = begin + (number + 1) * length / count
            grid.append(value)
            times.append(now)
    return _seen(names, np.array(times), np.array(grid))


def _legs(
    exchanges: Sequence[tuple[float, float]], changes: Sequence[tuple[float, float]], days: float
) -> list[tuple[float, float, float, float]]:
    """Return stretches: from when [day], how long [day], exchanged steadily [L/day], and changed at once at its start [L]."""
    if changes:
        ends = [at for at, _ in changes[1:]] + [days]
        return [(at, end - at, 0.0, litres) for (at, litres), end in zip(changes, ends, strict=True)]
    begins = [sum(length for length, _ in exchanges[:k]) for k in range(len(exchanges))]
    return [(begin, *stage, 0.0) for begin, stage in zip(begins, exchanges, strict=True)] or [(0.0, days, 0.0, 0.0)]


def _stepped(value: Floats, fresh: Floats, share: Floats, use: Floats, step: Floats | float) -> Floats:
    """Return the values a step later, by the classical Runge-Kutta rule; the step may be one for each tank, shape (n, 1)."""

    def rate(at: Floats) -> Floats:
        return -use - share * (at - fresh)

    k1 = rate(value)
    k2 = rate(value + 0.5 * step * k1)
    k3 = rate(value + 0.5 * step * k2)
    later: Floats = value + step * (k1 + 2.0 * k2 + 2.0 * k3 + rate(value + step * k3)) / 6.0
    return later


def _ended(target: float, main: int, value: Floats, fresh: Floats, share: Floats, use: Floats, step: float) -> Floats:
    """Return the values a step later, or at the instant within it at which a tank comes to the target."""
    later = _stepped(value, fresh, share, use, step)
    beyond = (later[:, main] < target) & (value[:, main] > target)
    if not beyond.any():
        return later
    # Halved until nothing is left of the step; a straight line would miss the instant by a part in ten thousand.
    low, high = np.zeros((len(value), 1)), np.ones((len(value), 1))
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        past = _stepped(value, fresh, share, use, middle * step)[:, main, None] < target
        low, high = np.where(past, low, middle), np.where(past, middle, high)
    ended: Floats = np.where(beyond[:, None], _stepped(value, fresh, share, use, low * step), later)
    return ended


def _until(target: float, main: int, value: Floats, later: Floats) -> Floats:
    """Return the values where a change of water ends at the target, which mixing comes to in a straight line."""
    fell = value[:, main] - later[:, main]
    part = np.where(fell > 0.0, (value[:, main] - target) / np.where(fell > 0.0, fell, 1.0), 1.0)
    shortened: Floats = value + np.clip(part, 0.0, 1.0)[:, None] * (later - value)
    return shortened


def _seen(names: Sequence[str], times: Floats, grid: Floats) -> Lived:
    """Return the most every value rose and fell between two instants no more than a day apart, and the ends of its way.

    From right before a change of water to right after the one a day later is more than a day.
    """
    rise, fall = (np.zeros(len(names)) for _ in range(2))
    for apart in range(1, len(times)):
        near = times[apart:] - times[:-apart] < 1.0 + _AFTER / 2.0
        if not near.any():
            break
        moved = (grid[apart:] - grid[:-apart])[near]
        rise = np.maximum(rise, moved.max(axis=(0, 1)))
        fall = np.maximum(fall, -moved.min(axis=(0, 1)))
    figures = (grid[-1, 0], rise, fall, grid.min(axis=(0, 1)), grid.max(axis=(0, 1)))
    return Lived(*({name: float(v) for name, v in zip(names, row, strict=True)} for row in figures))
