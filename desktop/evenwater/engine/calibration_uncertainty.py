"""How well a flow is known from a few runs, and how long a run must be for it to be known better.

Source: JCGM 100:2008: a reading lies anywhere within its graduation (F.2.2.1), a tolerance is a half width (4.3.7), contributions add as
squares (5.1.2). The scatter of the runs is widened by Student's t for its few degrees of freedom, what the instruments add by 1.96,
and both add as squares: the older rule of ANSI/ASME PTC 19.1 (from memory), which unlike effective degrees of freedom (JCGM 100, G.4)
never makes an interval narrower for a coarser instrument.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from evenwater.engine.calibration_runs import Means, Run, Summary
from evenwater.engine.student import quantile

CONFIDENCE = 0.95
# A coverage factor for a normal distribution.
_NORMAL = 1.96
_RECTANGLE = math.sqrt(3.0)
SOURCES = ("spread", "reading", "tolerance", "timing", "conditions")


@dataclass(frozen=True)
class Known:
    """How well a mean flow is known.

    ``standard`` is the combined standard uncertainty and ``half_width`` that of the 95 % interval [mL/min]; ``instruments`` the half
    width that remained with ever so many runs [mL/min]; ``parts`` the standard uncertainty by source [mL/min].
    """

    standard: float
    half_width: float
    instruments: float
    parts: dict[str, float]

    @property
    def shares(self) -> dict[str, float]:
        """Each source's share of the variance [1]; they add to one, or are all zero without uncertainty."""
        total = self.standard**2
        return {name: part**2 / total if total > 0.0 else 0.0 for name, part in self.parts.items()}


@dataclass(frozen=True)
class Needed:
    """How long a run must be [s], and what comes out of it [mL]."""

    seconds: float
    volume_ml: float


def known(runs: Sequence[Run], means: Means, group: Summary) -> Known:
    """Return how well the mean flow of some runs is known.

    Parameters
    ----------
    runs : sequence of Run
        All runs.
    means : Means
        What they were measured with.
    group : Summary
        Those that count.

    Returns
    -------
    Known
        Uncertainties of the mean flow.

    Notes
    -----
    What an instrument adds is the same error in every run as far as anybody knows, so it does not shrink with their number.
    """
    spread = 0.0 if group.sd is None else group.sd / math.sqrt(group.count)
    sums = dict.fromkeys(SOURCES[1:], 0.0)
    for index, flow in zip(group.indices, group.flows, strict=True):
        run = runs[index]
        weighed = run.mass_g is not None
        reading, tolerance = _instrument(means, weighed)
        sums["reading"] += 60.0 * reading / run.total_seconds
        sums["tolerance"] += 60.0 * tolerance / run.total_seconds
        sums["timing"] += flow * means.timing / _RECTANGLE / run.seconds
        sums["conditions"] += flow * (means.z_uncertainty if weighed else means.cylinder_uncertainty)
    parts = {"spread": spread, **{name: total / group.count for name, total in sums.items()}}
    instruments = math.hypot(*(parts[name] for name in SOURCES[1:]))
    factor = quantile(CONFIDENCE, group.count - 1) if group.count > 1 else 0.0
    return Known(
        standard=math.hypot(spread, instruments),
        half_width=math.hypot(factor * spread, _NORMAL * instruments),
        instruments=_NORMAL * instruments,
        parts=parts,
    )


def needed(means: Means, flow: float, wanted: float, weighed: bool) -> Needed | None:
    """Return how long a run must be for the instruments to add no more than wanted.

    Parameters
    ----------
    means : Means
        What it is measured with.
    flow : float
        The pump's flow, above zero [mL/min].
    wanted : float
        Half width of the 95 % interval over the flow, above zero [1].
    weighed : bool
        Whether it is weighed, or read on the cylinder.

    Returns
    -------
    Needed or None
        Time and volume; None where the conditions alone are too uncertain, however long the run.
    """
    reading, tolerance = _instrument(means, weighed)
    conditions = means.z_uncertainty if weighed else means.cylinder_uncertainty
    room = (wanted / _NORMAL) ** 2 - conditions**2
    if room <= 0.0:
        return None
    per_second = flow / 60.0
    seconds = math.hypot(reading / per_second, tolerance / per_second, means.timing / _RECTANGLE) / math.sqrt(room)
    return Needed(seconds, seconds * per_second)


def _instrument(means: Means, weighed: bool) -> tuple[float, float]:
    """Return the standard uncertainties of one reading and of the instrument [mL]."""
    if weighed:
        # Two readings: the empty vessel and the full one.
        z = means.z_ml_per_g
        return z * means.readability / math.sqrt(6.0), z * means.scale_tolerance / _RECTANGLE
    return means.graduation / math.sqrt(12.0), means.tolerance / _RECTANGLE
