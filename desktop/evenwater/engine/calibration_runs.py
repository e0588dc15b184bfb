"""Runs of a pump into a cylinder or onto a scale: the flow of each, and runs of like duration taken together."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from evenwater.engine.weighing import Conditions, HalfWidths, z_uncertainty

# Runs are of one sort as long as none lasts more than twice as long as the shortest of them (common practice, no source).
LIKE_DURATION = 2.0
# Cubic expansion per degree from 20 degC, at which cylinders are made to be right: borosilicate glass by ISO 4787, polypropylene
# three times its linear expansion by handbooks; both from memory.
EXPANSION = {"glass": 9.9e-6, "plastic": 4.5e-4}
_RIGHT_AT_C = 20.0


@dataclass(frozen=True)
class Run:
    """One run: ``doses`` times ``seconds`` of running, and what came out, read [mL] or weighed [g]; the other is None."""

    seconds: float
    volume_ml: float | None = None
    mass_g: float | None = None
    doses: int = 1

    @property
    def total_seconds(self) -> float:
        """How long the pump ran in all [s]."""
        return self.seconds * self.doses


@dataclass(frozen=True)
class Means:
    """What the runs were measured with.

    ``graduation`` and ``tolerance`` of the cylinder [mL], its ``material``; ``readability`` and ``scale_tolerance`` [g];
    ``timing`` by how much the time of a run may be off [s]; ``conditions`` of the liquid and the air, and how far ``off`` they may be.
    Tolerances and timing are half widths.
    """

    graduation: float
    tolerance: float
    material: str
    readability: float
    scale_tolerance: float
    timing: float
    conditions: Conditions
    off: HalfWidths

    @cached_property
    def z_ml_per_g(self) -> float:
        """The Z factor [mL/g]."""
        return self.conditions.z_ml_per_g

    @cached_property
    def cylinder(self) -> float:
        """What a millilitre on the cylinder holds at the liquid's temperature [mL/mL]."""
        return 1.0 + EXPANSION[self.material] * (self.conditions.liquid.temperature_c - _RIGHT_AT_C)

    @cached_property
    def z_uncertainty(self) -> float:
        """Standard uncertainty of the Z factor over itself [1]."""
        return z_uncertainty(self.conditions, self.off)

    @property
    def cylinder_uncertainty(self) -> float:
        """Standard uncertainty of a volume read, over itself, for the temperature of the cylinder [1]."""
        return EXPANSION[self.material] * self.off.water_c / math.sqrt(3.0)


@dataclass(frozen=True)
class Summary:
    """Runs of like duration: which (from 0), their mean time and flows, and how these scatter.

    ``seconds`` [s]; ``flows``, ``mean`` and ``sd`` (of one run) [mL/min]; ``cv`` [1]. ``sd`` and ``cv`` are None for a single run.
    """

    indices: tuple[int, ...]
    seconds: float
    flows: tuple[float, ...]
    mean: float
    sd: float | None

    @property
    def cv(self) -> float | None:
        """Standard deviation over the mean, the spread [1]; None for a single run or where nothing came out."""
        return None if self.sd is None or self.mean <= 0.0 else self.sd / self.mean

    @property
    def count(self) -> int:
        """How many runs these are."""
        return len(self.indices)


def volume(run: Run, means: Means) -> float:
    """Return what came out in a run.

    Parameters
    ----------
    run : Run
        The run.
    means : Means
        What it was measured with.

    Returns
    -------
    float
        Volume at the liquid's own temperature [mL].
    """
    if run.mass_g is not None:
        return run.mass_g * means.z_ml_per_g
    return (run.volume_ml or 0.0) * means.cylinder


def summary(runs: Sequence[Run], means: Means, indices: Sequence[int]) -> Summary:
    """Return mean and spread of some of the runs.

    Parameters
    ----------
    runs : sequence of Run
        All runs.
    means : Means
        What they were measured with.
    indices : sequence of int
        Which of them count, one or more.

    Returns
    -------
    Summary
        Flows, their mean and standard deviation.
    """
    flows = tuple(60.0 * volume(runs[n], means) / runs[n].total_seconds for n in indices)
    mean, sd = mean_and_sd(flows)
    return Summary(tuple(indices), math.fsum(runs[n].seconds for n in indices) / len(indices), flows, mean, sd)


def mean_and_sd(values: Sequence[float]) -> tuple[float, float | None]:
    """Return the mean, and the standard deviation of one value (JCGM 100:2008, 4.2).

    Parameters
    ----------
    values : sequence of float
        One value or more [any unit].

    Returns
    -------
    tuple of (float, float or None)
        Mean and standard deviation [the same unit]; None for a single value.
    """
    mean = math.fsum(values) / len(values)
    if len(values) < 2:
        return mean, None
    return mean, math.sqrt(math.fsum((v - mean) ** 2 for v in values) / (len(values) - 1))


def by_duration(runs: Sequence[Run], means: Means) -> tuple[Summary, ...]:
    """Return the runs sorted by how long they lasted, shortest first, like with like.

    Parameters
    ----------
    runs : sequence of Run
        One run or more.
    means : Means
        What they were measured with.

    Returns
    -------
    tuple of Summary
        Each run is in one of them.
    """
    order = sorted(range(len(runs)), key=lambda n: (runs[n].seconds, n))
    groups: list[list[int]] = []
    for index in order:
        if not groups or runs[index].seconds > LIKE_DURATION * runs[groups[-1][0]].seconds:
            groups.append([])
        groups[-1].append(index)
    return tuple(summary(runs, means, sorted(group)) for group in groups)
