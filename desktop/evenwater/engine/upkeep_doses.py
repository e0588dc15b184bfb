"""Millilitres per day of several additives at once, each of which may raise the values of the others too.

Of additive j a millilitre raises value i by A[i, j]; wanted is the x with A x = use. Written in shares, M y = 1 with
y[j] = x[j] A[j, j] / use[j], the part of a use that its own additive makes good, and M[i, j] what additive j brings of value i,
over the use of it, when it makes good its own use alone.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np

from evenwater.engine.balance import Floats
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import from_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep_balance import Solutes, amount, solutes_per_ml, used
from evenwater.engine.upkeep_question import UpkeepItem, UpkeepQuestion

# A share of a use that is binary noise and nothing else.
NOISE = 1e-10
# Two additives whose proportions differ by less than this cannot be told apart: no bag is known that well.
_ALIKE = 1e-6


@dataclass(frozen=True)
class Together:
    """What makes good all uses at once, one figure for each item in the order of the question.

    ``ml_per_day`` [mL per day] is zero where the others bring enough, ``own_share`` [1] the part of the use that the item's
    own additive makes good; ``solutes`` are those of one millilitre [mmol/mL and meq/mL].
    """

    ml_per_day: tuple[float, ...]
    own_share: tuple[float, ...]
    solutes: tuple[Solutes, ...]


def together(q: UpkeepQuestion) -> Together | Refused:
    """Return the doses that make good every use exactly, given what each additive brings of the others.

    Parameters
    ----------
    q : UpkeepQuestion
        The question, judged before: every use is above zero, every additive raises its value.

    Returns
    -------
    Together or Refused
        Doses of zero or more, or which additives stand in the way.
    """
    water, volume = q.system.water, q.system.volume_l
    solutes = tuple(solutes_per_ml(item.additive, item.parameter, water) for item in q.items)
    gone = used(q)
    raised = np.array([[amount(item.parameter.name, s, water) / volume for s in solutes] for item in q.items])
    needed = np.array([amount(item.parameter.name, gone, water) for item in q.items])
    own = np.diag(raised)
    # Figures beyond all reason end as no solution, not as a warning.
    with np.errstate(all="ignore"):
        shares = raised * (needed / own)[None, :] / needed[:, None]
        return _found(q, shares, needed, own, solutes)


def _found(
    q: UpkeepQuestion, shares: Floats, needed: Floats, own: Floats, solutes: tuple[Solutes, ...]
) -> Together | Refused:
    alike = tuple(_alike(q.items, shares))
    if alike:
        return Refused(alike)
    found = _solved(shares)
    if found is None:
        return Refused((_none(q.items),))
    if not np.all(found >= -NOISE):
        return Refused(tuple(_too_much(q, shares, needed, found)) or (_none(q.items),))
    # What the others bring to within noise needs no dose of its own.
    kept = np.where(found > NOISE, found, 0.0)
    return Together(tuple(map(float, kept * needed / own)), tuple(map(float, kept)), solutes)


def _solved(shares: Floats) -> Floats | None:
    try:
        found = np.asarray(np.linalg.solve(shares, np.ones(len(shares))), dtype=np.float64)
    except np.linalg.LinAlgError:
        return None
    return found if bool(np.all(np.isfinite(found))) else None


def _alike(items: Sequence[UpkeepItem], shares: Floats) -> Iterator[Reason]:
    """Yield the pairs of additives that raise everything in the same proportion, so that nothing tells them apart."""
    for one, other in combinations(range(len(items)), 2):
        first, second = shares[:, one], shares[:, other]
        across = np.abs(first[one] * second - second[one] * first)
        size = np.maximum(np.abs(first[one] * second), np.abs(second[one] * first))
        if bool(np.all(across <= _ALIKE * size)):
            names = {"first": items[one].parameter.name, "second": items[other].parameter.name}
            yield Reason("upkeep_same_ratio", names, f"item.{other + 1}.additive.chemical")


def _too_much(q: UpkeepQuestion, shares: Floats, needed: Floats, found: Floats) -> Iterator[Reason]:
    """Yield which additive brings too much of a value whose own dose would have to be less than nothing."""
    short = [k for k, share in enumerate(found) if share < -NOISE]
    alone = [(k, j, shares[k, j]) for k in short for j in range(len(q.items)) if j != k and shares[k, j] > 1.0 + NOISE]
    for k, j, brought in alone or _with_the_rest(shares, short):
        item, other = q.items[j], q.items[k]
        use = other.use or 0.0
        # Of salinity the animals' share of the other additives is no surplus.
        surplus = brought * needed[k] - (needed[k] - use)
        unit = "ppt" if other.unit.startswith("SG") else other.unit
        kind = f"{other.parameter.kind} per day"
        params = {
            "additive": item.additive_name,
            "for": item.parameter.name,
            "parameter": other.parameter.name,
            "brought": from_canonical(float(surplus), kind, f"{unit} per day", q.system.water),
            "used": from_canonical(use, kind, f"{unit} per day", q.system.water),
            "unit": KINDS[kind].unit(f"{unit} per day").shown,
            "with_others": not alone,
        }
        yield Reason("upkeep_brings_too_much", params, f"item.{j + 1}.additive.chemical")


def _with_the_rest(shares: Floats, short: list[int]) -> list[tuple[int, int, float]]:
    """Return the values that all the rest bring too much of, with who brings most and how much [share of the use]."""
    rest = [j for j in range(len(shares)) if j not in short]
    found = np.array([])
    while rest:
        part = _solved(shares[np.ix_(rest, rest)])
        if part is None:
            return []
        if bool(np.all(part >= -NOISE)):
            found = part
            break
        rest = [j for j, share in zip(rest, part, strict=True) if share >= -NOISE]
    out = []
    for k in short:
        brought = shares[k, rest] * found
        if brought.sum() > 1.0 + NOISE:
            out.append((k, rest[int(np.argmax(brought))], float(brought.sum())))
    return out


def _none(items: Sequence[UpkeepItem]) -> Reason:
    return Reason("upkeep_no_doses", {"parameters": tuple(item.parameter.name for item in items)})
