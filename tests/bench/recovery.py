"""5,000 overdoses at random: everything proposed is lived through by an adaptive solver, and every refusal is tried to be refuted.

The checker shares no code with the planner: it reads a proposal's litres and lets ``scipy.integrate.solve_ivp`` follow all values in tanks
from the smallest to the largest that the volume may be, with none, some and all of the use known, each until its value is at the target.
A refusal for a limit is tried by brute force: over 40 constant rates of exchange, and over none, none may bring the value down in 90 days
within every limit. Rules that no rate can refute (what is not known) are only counted.

    python -m tests.bench --only recovery
"""

from __future__ import annotations

import random
import sys
import time
from collections import Counter
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from scipy.integrate import solve_ivp

from evenwater.engine import recovery, recovery_intake
from evenwater.engine.recovery_question import RecoveryQuestion
from tests.engine.asking import NOW, known

OVERDOSES = 5_000
RATES = 40
# A limit may be met to so much of itself.
GRAIN = 2e-3
ADDITIVES = (
    ("sodium carbonate anhydrous", 106.0), ("sodium bicarbonate", 84.0), ("calcium chloride dihydrate", 147.0), ("calcium hydroxide", 1.5),
    ("magnesium chloride hexahydrate", 200.0), ("potassium nitrate", 20.0), ("potassium chloride", 100.0), ("potassium dihydrogen phosphate", 5.0),
    ("strontium chloride hexahydrate", 20.0), ("potassium iodide", 0.5), ("sodium hydroxide", 40.0), ("sodium nitrate", 20.0),
)  # fmt: skip
PARAMETERS = tuple(known().parameters.values())
# What nobody can refute by trying: something is not known, or lies outside what is asked about.
NOT_KNOWN = frozenset({"recovery_no_use", "recovery_new_water_unknown"})


def overdose(rng: random.Random) -> dict[str, Any]:
    """Return an overdose as a question file has it."""
    name, grams = rng.choice(ADDITIVES)
    litres = 10.0 ** rng.uniform(0.5, 4.0)
    system: dict[str, Any] = {
        "name": "Tank",
        "net_volume": f"{litres:.4f} L",
        "volume_uncertainty": f"{rng.choice((0, 2, 5, 10, 25, 50))} %",
    }
    new: dict[str, str] = {}
    use: dict[str, str] = {}
    for p in PARAMETERS:
        low, high = p.range_kept
        least, most = p.plausible
        unit = _unit(p)
        if rng.random() < 0.85:
            system[p.name] = (
                f"{min(max(rng.uniform(low - 0.4 * (high - low), high + 0.6 * (high - low)), least), most):.6f}{unit}"
            )
        if rng.random() < 0.85:
            new[p.name] = (
                f"{min(max(rng.uniform(low - 0.8 * (high - low), high + 0.3 * (high - low)), least), most):.6f}{unit}"
            )
        if rng.random() < 0.7:
            use[p.name] = f"{rng.uniform(0.0, 1.1) * p.rise_hard * rng.choice((0.2, 1.0)):.6f}{unit} per day"
    raw: dict[str, Any] = {
        "system": system, "overdose": {"volume": f"{litres * 10.0 ** rng.uniform(-4.0, -1.7):.6f} L"}, "use": use, "new_water": new,
        "additive": {"chemical": name, "dissolved": f"{grams:g} g", "made_up_to": "1 L"},
    }  # fmt: skip
    if rng.random() < 0.7:
        raw["exchange"] = {"most_per_day": f"{litres * rng.uniform(0.01, 0.5):.4f} L per day"}
    raw["hold"] = {p.name: rng.random() < 0.2 for p in PARAMETERS}
    return raw


def _unit(p: Any) -> str:
    return {"nitrate": " mg/L as NO3", "phosphate": " mg/L as PO4"}.get(p.name, f" {p.display_unit}")


class Tank:
    """One tank of one question, as the checker sees it."""

    def __init__(self, q: RecoveryQuestion, volume: float, part: float) -> None:
        self.names = list(q.values)
        self.volume = volume
        self.start = np.array(
            [v + q.ran_in.get(n, 0.0) * (1.0 / volume - 1.0 / q.volume_l) for n, v in q.values.items()]
        )
        fresh = [q.new_water.get(n) for n in self.names]
        self.mixes = np.array([v is not None for v in fresh], float)
        self.fresh = np.array([v or 0.0 for v in fresh])
        self.use = np.array([part * q.use.get(n, 0.0) if n in q.held else 0.0 for n in self.names])
        self.main, self.target = self.names.index(q.parameter.name), q.target

    def leg(self, start: np.ndarray, days: float, per_day: float) -> tuple[np.ndarray, np.ndarray, bool]:
        """Return times from the start of a leg, values of shape (n, p), and whether the target was met."""

        def rate(_t: float, y: np.ndarray) -> np.ndarray:
            return -self.use - self.mixes * per_day / self.volume * (y - self.fresh)

        def met(_t: float, y: np.ndarray) -> float:
            return float(y[self.main] - self.target)

        met.terminal = True  # type: ignore[attr-defined]
        met.direction = -1  # type: ignore[attr-defined]
        found = solve_ivp(
            rate, (0.0, days), start, events=met, max_step=0.25, rtol=1e-7, atol=1e-10, dense_output=False
        )
        return found.t, found.y.T, found.status == 1

    def live(self, legs: list[tuple[float, float, float]]) -> tuple[np.ndarray, np.ndarray, bool]:
        """Return times, values, and whether the target was met, along legs of (days, litres per day, litres at once)."""
        times, rows, now = [0.0], [self.start], 0.0
        for days, per_day, at_once in legs:
            value = rows[-1]
            if value[self.main] <= self.target * (1.0 + 1e-9):
                return np.array(times), np.array(rows), True
            if at_once:
                value = value + self.mixes * at_once / self.volume * (self.fresh - value)
                times.append(now + 1e-7)
                rows.append(value)
                if value[self.main] <= self.target * (1.0 + 1e-9):
                    return np.array(times), np.array(rows), True
            if days > 0.0:
                t, y, met = self.leg(value, days, per_day)
                times += list(now + t[1:])
                rows += list(y[1:])
                if met:
                    return np.array(times), np.array(rows), True
                now += days
        return np.array(times), np.array(rows), rows[-1][self.main] <= self.target * (1.0 + 1e-6)


def broken(q: RecoveryQuestion, tank: Tank, times: np.ndarray, rows: np.ndarray) -> list[str]:
    """Return which limits a way breaks."""
    found = []
    by_name = known().parameters
    steps = np.array([by_name[n].canonical(by_name[n].rise_hard) for n in tank.names])
    least, most = (np.array([by_name[n].canonical(by_name[n].target_hard[k]) for n in tank.names]) for k in (0, 1))
    slack = GRAIN * steps + 1e-7 * np.abs(tank.start)
    moved = _within_a_day(times, rows)
    found += [f"24 h of {n}" for n, over in zip(tank.names, moved > steps + slack, strict=True) if over]
    others = np.arange(len(steps)) != tank.main
    low = (rows.min(axis=0) < np.minimum(least, tank.start) - slack) & others
    high = (rows.max(axis=0) > np.maximum(most, tank.start) + slack) & others
    found += [f"range of {n}" for n, over in zip(tank.names, low | high, strict=True) if over]
    if np.any(np.diff(rows[:, tank.main]) > 1e-7 * tank.start[tank.main]):
        found.append(f"rise of {q.parameter.name}")
    return sorted(set(found))


def _within_a_day(times: np.ndarray, rows: np.ndarray) -> np.ndarray:
    """Return the most each value moved between two instants no more than a day apart, shape (p,)."""
    moved = np.zeros(rows.shape[1])
    for apart in range(1, len(times)):
        near = times[apart:] - times[:-apart] <= 1.0 + 5e-8
        if not near.any():
            break
        moved = np.maximum(moved, np.abs(rows[apart:] - rows[:-apart])[near].max(axis=0))
    # The solver stops where it likes: a day later is looked up on the way between two of its stops, but never across a change of water.
    edges = times + 1.0
    before = times[np.maximum(np.searchsorted(times, edges) - 1, 0)]
    sound = (edges <= times[-1]) & (edges - before > 1e-6)
    if sound.any():
        later = np.column_stack([np.interp(edges[sound], times, rows[:, j]) for j in range(rows.shape[1])])
        moved = np.maximum(moved, np.abs(later - rows[sound]).max(axis=0))
    return moved


def legs_of(course: Any, last: float) -> list[tuple[float, float, float]]:
    """Return what a keeper does who goes on until the target is met, in whatever tank."""
    if course.changes or course.further_changes:
        litres = {c.at_days: c.litres for c in (*course.changes, *course.further_changes)}
        starts = sorted(litres)
        return [
            (b - a, 0.0, litres[a]) for a, b in zip(starts, [*starts[1:], max(last, starts[-1] + 0.5)], strict=True)
        ]
    stages = [s for s in course.stages if s.days == 1.0 or not course.further_stages] + list(course.further_stages)
    return [(s.days, s.l_per_day, 0.0) for s in stages] or [(last, 0.0, 0.0)]


def tanks(q: RecoveryQuestion, parts: tuple[float, ...], offs: tuple[float, ...]) -> list[Tank]:
    """Return the tanks a proposal must hold in."""
    offs = offs if q.volume_share else (0.0,)
    return [Tank(q, q.volume_l * (1.0 + off * q.volume_share), part) for part in parts for off in offs]


def feasible(q: RecoveryQuestion, waits: bool) -> bool:
    """Return whether a constant rate (nought where ``waits``) brings the value down within every limit, however much is used."""
    name = q.parameter.name
    sure = name in q.new_water
    rates = [0.0] if waits else list(np.geomspace(1e-3, 1.0, RATES) * q.most_l_per_day) if sure else []
    for rate in rates:
        parts = (1.0,) if waits else (0.0, 1.0)
        for tank in tanks(q, parts, (-1.0, 1.0)):
            times, rows, met = quickly(tank, rate)
            if not met or broken(q, tank, times, rows):
                break
        else:
            return True
    return False


def quickly(tank: Tank, rate: float) -> tuple[np.ndarray, np.ndarray, bool]:
    """Return a constant exchange of 90 days in closed form, four looks a day, cut off at the target."""
    times = np.arange(0.0, 90.0 + 1e-9, 0.25)[:, None]
    share = tank.mixes * rate / tank.volume
    safe = np.where(share > 0.0, share, 1.0)
    mixed = tank.fresh - tank.use / safe + (tank.start - tank.fresh + tank.use / safe) * np.exp(-safe * times)
    rows = np.where(share > 0.0, mixed, tank.start - tank.use * times)
    below = np.flatnonzero(rows[:, tank.main] <= tank.target)
    # The look at which it is below already is left out: what matters is the way there.
    return (times[: max(below[0], 1), 0], rows[: max(below[0], 1)], True) if len(below) else (times[:, 0], rows, False)


@dataclass
class Found:
    """What the run came to: counts by what was answered and refused, limits that were broken."""

    seen: Counter[str] = field(default_factory=Counter)
    codes: Counter[str] = field(default_factory=Counter)
    refuted: Counter[str] = field(default_factory=Counter)
    broke: list[str] = field(default_factory=list)
    solving: float = 0.0


def ask(number: int, rng: random.Random, found: Found) -> None:
    """Ask one question and check everything that is proposed or refused."""
    q = recovery_intake.recovery(overdose(rng), known(), NOW)
    if not isinstance(q, RecoveryQuestion):
        found.seen.update(f"not read: {r.code}" for r in q.reasons)
        return
    started = time.perf_counter()
    result = recovery.solve(q)
    found.solving += time.perf_counter() - started
    if not isinstance(result, recovery.RecoveryAnswer):
        found.seen.update(f"refused whole: {r.code}" for r in result.reasons)
        return
    found.seen["answered"] += 1
    for choice in result.choices:
        if choice.proposed:
            found.seen[f"proposed {choice.name}"] += 1
            live_through(number, q, choice, rng, found)
            continue
        found.seen[f"not proposed {choice.name}"] += 1
        reasons = {r.code for r in choice.reasons}
        found.codes.update(reasons)
        if not reasons & NOT_KNOWN and feasible(q, choice.name == recovery.HOLD):
            found.refuted.update(f"{choice.name}: {code}" for code in reasons)


def live_through(number: int, q: RecoveryQuestion, choice: Any, rng: random.Random, found: Found) -> None:
    """Follow a proposal in tanks at random, one of them at an end of the interval."""
    offs = (rng.uniform(-1.0, 1.0), rng.choice((-1.0, 1.0)))
    parts = (1.0,) if choice.name == recovery.HOLD else (rng.choice((0.0, 1.0)), rng.random())
    for course in filter(None, (choice.course, choice.changes)):
        for tank in tanks(q, parts, offs):
            times, rows, _ = tank.live(legs_of(course, max(course.days, course.between_days[1])))
            found.seen["lived through"] += 1
            found.broke += [f"{number} {choice.name}: {what}" for what in broken(q, tank, times, rows)]


def main() -> None:
    """Ask, live through, try to refute; print, and end with an error when anything is broken."""
    rng, found, began = random.Random(20261125), Found(), time.perf_counter()
    count = int(sys.argv[1]) if len(sys.argv) > 1 else OVERDOSES
    for number in range(count):
        ask(number, rng, found)
    took, each = time.perf_counter() - began, found.solving / max(count, 1) * 1e3
    print(f"{count} overdoses in {took:.0f} s, {each:.0f} ms each to solve")
    for head, table in (("", found.seen), ("reason ", found.codes), ("a constant rate would do: ", found.refuted)):
        for name, figure in sorted(table.items()):
            print(f"  {head}{name}: {figure}")
    print(f"violations: {len(found.broke)}")
    for line in found.broke[:20]:
        print(f"  {line}")
    if found.broke:
        sys.exit(1)


if __name__ == "__main__":
    main()
