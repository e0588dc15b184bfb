"""The second opinion on a recovery: every choice lived through in short steps, from the bags and the bottles on.

It shares no code with the planner: only the litres that a plan tells the keeper to exchange are taken from it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.recovery_question import RecoveryQuestion
from evenwater.engine.stock import Dissolved

_STEPS_IN_A_DAY = 24
_COUNTED = {
    "calcium": "Ca", "magnesium": "Mg", "potassium": "K", "strontium": "Sr", "iodide": "I", "nitrate": "NO3", "phosphate": "PO4",
}  # fmt: skip


@dataclass(frozen=True)
class Lived:
    """What a choice came to, by parameter [canonical unit].

    ``end`` are the values at its end, ``rise`` and ``fall`` the most they rose and fell within 24 hours, ``lowest`` and ``highest``
    the ends of their way.
    """

    end: Mapping[str, float]
    rise: Mapping[str, float]
    fall: Mapping[str, float]
    lowest: Mapping[str, float]
    highest: Mapping[str, float]


def after_overdose(q: RecoveryQuestion) -> dict[str, float]:
    """Return what each value comes to by what ran in, from masses and moles again.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.

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
                elif "salinity" in portion.chemical.raises:
                    comes += moles * molar_mass(portion.chemical.dry) / 1000.0 / density_kg_per_l(q.water)
        else:
            comes = (
                ml / batch.label.dose_ml * batch.label.raises * batch.label.water_l
                if batch.parameter.name == name
                else 0.0
            )
        found[name] += comes / q.volume_l
    return found


def live(
    q: RecoveryQuestion,
    exchanges: Sequence[tuple[float, float]],
    changes: Sequence[tuple[float, float]],
    days: float,
    uses: float,
) -> Lived:
    """Live through a choice.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.
    exchanges : sequence of (float, float)
        Steady exchanges one after the other: how long [day], how much [L/day].
    changes : sequence of (float, float)
        Changes at once: when [day], how much [L].
    days : float
        How long the whole takes [day].
    uses : float
        Which part of the use known really happens [1].

    Returns
    -------
    Lived
        What was seen, step by step.
    """
    seen = {name: _one(q, name, exchanges, changes, days, uses) for name in q.values}
    return Lived(*({name: figures[k] for name, figures in seen.items()} for k in range(5)))


def _one(
    q: RecoveryQuestion,
    name: str,
    exchanges: Sequence[tuple[float, float]],
    changes: Sequence[tuple[float, float]],
    days: float,
    uses: float,
) -> tuple[float, float, float, float, float]:
    use = uses * q.use.get(name, 0.0) if name in q.held else 0.0
    value, fresh = q.values[name], q.new_water.get(name)
    grid, times, end = [value], [0.0], 0.0
    cuts = [(begin, length, litres) for begin, (length, litres) in zip(_begins(exchanges), exchanges, strict=True)]
    if not cuts:
        instants = [at for at, _ in changes] + [days]
        cuts = [(a, b - a, 0.0) for a, b in zip([0.0, *instants[:-1]], instants, strict=True)]
    due = list(changes)
    for begin, length, litres in cuts:
        count = max(1, round(_STEPS_IN_A_DAY * length))
        step = length / count
        for number in range(count):
            if length > 0.0:
                value = _stepped(value, fresh, litres / q.volume_l, use, step)
            end = begin + (number + 1) * step
            grid.append(value)
            times.append(end)
        while due and fresh is not None and due[0][0] <= end + 1e-9:
            value -= due.pop(0)[1] / q.volume_l * (value - fresh)
            grid.append(value)
            times.append(end)
    rise, fall = _within_a_day(times, grid)
    return value, rise, fall, min(grid), max(grid)


def _begins(exchanges: Sequence[tuple[float, float]]) -> list[float]:
    return [sum(length for length, _ in exchanges[:k]) for k in range(len(exchanges))]


def _stepped(value: float, fresh: float | None, share: float, use: float, step: float) -> float:
    """Return the value a step later, by the classical Runge-Kutta rule."""

    def rate(at: float) -> float:
        return -use if fresh is None else -use - share * (at - fresh)

    k1 = rate(value)
    k2 = rate(value + 0.5 * step * k1)
    k3 = rate(value + 0.5 * step * k2)
    return value + step * (k1 + 2.0 * k2 + 2.0 * k3 + rate(value + step * k3)) / 6.0


def _within_a_day(times: Sequence[float], grid: Sequence[float]) -> tuple[float, float]:
    """Return the most a value rose and fell between two instants less than a day apart.

    Right at a day's end a change of water begins the next day, so a window is open there.
    """
    rise = fall = 0.0
    first = 0
    for k, at in enumerate(times):
        while times[first] <= at - 1.0 + 1e-9:
            first += 1
        window = grid[first : k + 1]
        rise, fall = max(rise, grid[k] - min(window)), max(fall, max(window) - grid[k])
    return rise, fall
