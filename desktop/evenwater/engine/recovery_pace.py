"""The same litres in every tank that a volume known only within an interval may be, and how many of them are safe.

Without use a value is C_new + (C_start - C_new)*D, where D is what is left of the old water; the use takes at most u*h off it, where h
is the mean age of the water since the start. In x = 1/volume, C_start is linear, and D and h only fall. So in a slice between two x each
factor is taken at its worse end, and no volume within the interval can pass a limit that the slices keep.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt

from evenwater.engine.catalogue import Parameter
from evenwater.engine.recovery_question import RecoveryQuestion

Floats = npt.NDArray[np.float64]

# What is left of a day or a value after binary noise.
NOTHING = 1e-12
# Slices on either side of the volume that was said; more of them narrow the bounds, and hardly change the pace.
_SLICES = 4


@dataclass(frozen=True)
class Tanks:
    """Tanks of n volumes with p values known, in the order of the data file.

    ``per_l`` is one over the volume [1/L], shape (n,), ascending, and ``said`` the place of the volume that was said. ``start``, shape
    (n, p), are the values at first, ``fresh`` those of the new water (0 where not known, ``mixes`` says where it is), ``use`` and ``hard``
    [canonical unit per day], shape (p,). ``left``, shape (n,), is what is left of the old water [1], ``taken``, shape (n, p), what the
    use has taken so far. ``main`` is the place of what is too high, ``most_l`` the most litres in a day.
    """

    names: tuple[str, ...]
    main: int
    said: int
    most_l: float
    per_l: Floats
    start: Floats
    fresh: Floats
    mixes: npt.NDArray[np.bool_]
    use: Floats
    hard: Floats
    left: Floats
    taken: Floats

    def values(self, counted: float) -> Floats:
        """Return the values now.

        Parameters
        ----------
        counted : float
            Which part of the use really happened [1].

        Returns
        -------
        array
            Values [canonical unit], shape (n, p).
        """
        mixed = self.fresh + (self.start - self.fresh) * self.left[:, None]
        return np.where(self.mixes, mixed, self.start) - counted * self.taken

    def exchanged(self, litres: float, days: float, still: npt.NDArray[np.bool_]) -> Tanks:
        """Return the tanks after a steady exchange.

        Parameters
        ----------
        litres : float
            What is exchanged [L/day].
        days : float
            How long [day].
        still : array of bool
            In which tanks the use goes on [1]: whoever uses it all has come to the target first, and nobody can have taken more by then.

        Returns
        -------
        Tanks
            The tanks later.
        """
        share = litres * self.per_l
        part = np.exp(-share * days)
        aged = np.where(share * days > NOTHING, -np.expm1(-share * days) / np.maximum(share, NOTHING), days)
        later = np.where(
            self.mixes, self.taken * part[:, None] + self.use * aged[:, None], self.taken + self.use * days
        )
        return replace(self, left=self.left * part, taken=np.where(still[:, None], later, self.taken))

    def changed(self, litres: float) -> Tanks:
        """Return the tanks after a change of water at once.

        Parameters
        ----------
        litres : float
            What is changed [L].

        Returns
        -------
        Tanks
            The tanks right after it.
        """
        part = 1.0 - litres * self.per_l
        return replace(self, left=self.left * part, taken=np.where(self.mixes, self.taken * part[:, None], self.taken))


def begun(q: RecoveryQuestion, hard: Callable[[Parameter], float]) -> Tanks:
    """Return the tanks at the start.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.
    hard : callable
        The most a value may move in a day [canonical unit per day].

    Returns
    -------
    Tanks
        One tank where the volume is known exactly, else nine.
    """
    known, (small, large) = q.known, q.volumes_l
    slow, usual, fast = 1.0 / large, 1.0 / q.volume_l, 1.0 / small
    spread = q.volume_share > 0.0
    slower, faster = np.linspace(slow, usual, _SLICES + 1), np.linspace(usual, fast, _SLICES + 1)
    per_l = np.concatenate((slower, faster[1:])) if spread else np.array([usual])
    ran_in = np.array([q.ran_in.get(p.name, 0.0) for p in known])
    start = np.array([q.values[p.name] for p in known]) + (per_l - usual)[:, None] * ran_in
    fresh = [q.new_water.get(p.name) for p in known]
    return Tanks(
        names=tuple(p.name for p in known),
        main=known.index(q.parameter),
        said=_SLICES if spread else 0,
        most_l=q.most_l_per_day,
        per_l=per_l,
        start=start,
        fresh=np.array([0.0 if value is None else value for value in fresh]),
        mixes=np.array([value is not None for value in fresh]),
        use=np.array([q.used(p.name) for p in known]),
        hard=np.array([hard(p) for p in known]),
        left=np.ones(len(per_l)),
        taken=np.zeros_like(start),
    )


def after_days(tanks: Tanks, values: Floats, litres: float, days: Floats, use: Floats) -> Floats:
    """Return values after a steady exchange, in each tank for its own time.

    Parameters
    ----------
    tanks : Tanks
        Volumes and new water.
    values : array
        Values at first [canonical unit], shape (n, p).
    litres : float
        What is exchanged [L/day].
    days : array
        How long [day], shape (n,); an infinite one is taken for none.
    use : array
        What is used [canonical unit per day], shape (p,).

    Returns
    -------
    array
        Values [canonical unit], shape (n, p).
    """
    days = np.where(np.isfinite(days), days, 0.0)
    share = litres * tanks.per_l
    gone = -np.expm1(-share * days)
    aged = np.where(share * days > NOTHING, gone / np.maximum(share, NOTHING), days)
    mixed = values - (values - tanks.fresh) * gone[:, None] - use * aged[:, None]
    return np.where(tanks.mixes, mixed, values - use * days[:, None])


def after_change(tanks: Tanks, values: Floats, litres: Floats) -> Floats:
    """Return values after a change of water at once, in each tank of its own litres.

    Parameters
    ----------
    tanks : Tanks
        Volumes and new water.
    values : array
        Values before [canonical unit], shape (n, p).
    litres : array
        What is changed [L], shape (n,).

    Returns
    -------
    array
        Values after [canonical unit], shape (n, p).
    """
    part = (litres * tanks.per_l)[:, None]
    return np.where(tanks.mixes, values - part * (values - tanks.fresh), values)


def most_litres(tanks: Tanks, *, at_once: bool = False) -> tuple[float, str]:
    """Return how much water may be exchanged per day from here on.

    Parameters
    ----------
    tanks : Tanks
        The tanks as they stand.
    at_once : bool
        Whether a day's water comes in changes at once: then no use has slowed a rise by it.

    Returns
    -------
    tuple of (float, str)
        Litres [L/day], and the parameter that allows no more, or ``"largest_share"``.
    """
    above, below, used = _moved_per_litre(tanks)
    allowed = np.full(len(tanks.names), np.inf)
    # What is used goes the same way as a fall, and against a rise; how much really is used nobody knows.
    rooms = (
        (above, np.maximum(tanks.hard - tanks.use, 0.0)),
        (below, tanks.hard),
        (used, tanks.hard + (0.0 if at_once else tanks.use)),
    )
    for moved, room in rooms:
        binds = tanks.mixes & (moved * tanks.most_l > room)
        allowed[binds] = np.minimum(allowed[binds], room[binds] / moved[binds])
    place = int(allowed.argmin())
    if np.isinf(allowed[place]):
        return tanks.most_l, "largest_share"
    return float(allowed[place]), tanks.names[place]


def _moved_per_litre(tanks: Tanks) -> tuple[Floats, Floats, Floats]:
    """Return by how much a litre moves each value at the most, whatever the volume: down, up without use, up with all use; shape (p,)."""
    n = len(tanks.per_l)
    first, second = (slice(0, n - 1), slice(1, n)) if n > 1 else (slice(0, 1), slice(0, 1))
    gap = tanks.start - tanks.fresh
    high, low = np.maximum(gap[first], gap[second]), np.minimum(gap[first], gap[second])
    more, less = tanks.left[first, None], tanks.left[second, None]
    above = np.where(high > 0.0, high * more, high * less)
    below = -np.where(low > 0.0, low * less, low * more)
    taken = tanks.taken[first].copy()
    # What is too high stays above the new water for as long as anything is exchanged.
    taken[:, tanks.main] = 0.0
    per_l = tanks.per_l[second, None]
    down, up, used = ((np.maximum(gaps, 0.0) * per_l).max(axis=0) for gaps in (above, below, below + taken))
    return down, up, used
