"""The carbonate side of a correction reckoned by hand: constants typed here, sums, and bisection.

Nothing of the product is used. Sources, all as printed in Dickson, Sabine and Christian 2007, PICES Special
Publication 3, chapter 5, unless said otherwise: carbonic acid Lueker et al. 2000, boric acid and bisulfate Dickson
1990, hydrogen fluoride Dickson and Riley 1979, water Millero 1995, phosphoric acid Millero 1995; aragonite Mucci 1983;
hydrogen activity of the NBS scale Takahashi et al. 1982; boron Uppstrom 1974, sulfate Morris and Riley 1966, fluoride
Riley 1965, calcium Riley and Tongudai 1967. Limits: common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache

# Rise of pH in an hour, highest pH (NBS), highest saturation with aragonite, and the pH that is taken when none is known.
RISE, CEILING, SATURATION, ASSUMED = 0.2, 8.5, 10.0, 8.1


@dataclass(frozen=True)
class Constants:
    """Equilibrium constants on the total scale but ``bisulfate`` and ``fluoride`` (free) [mol/kg]; totals [mol/kg]."""

    k1: float
    k2: float
    boric: float
    water: float
    bisulfate: float
    fluoride: float
    phosphoric: tuple[float, float, float]
    aragonite: float
    sulfate_total: float
    fluoride_total: float
    nbs: float


@lru_cache(maxsize=4096)
def constants(s: float, celsius: float) -> Constants:
    """Return the constants at a practical salinity and a temperature [degC]."""
    t = celsius + 273.15
    ln, root, chlorinity = math.log(t), math.sqrt(s), s / 1.80655
    ionic = 19.924 * s / (1000.0 - 1.005 * s)
    # From mol per kg of water to mol per kg of seawater.
    wet = math.log(1.0 - 0.001005 * s)
    bisulfate = math.exp(
        -4276.1 / t + 141.328 - 23.093 * ln
        + (-13856.0 / t + 324.57 - 47.986 * ln) * math.sqrt(ionic)
        + (35474.0 / t - 771.54 + 114.723 * ln) * ionic
        - 2698.0 / t * ionic**1.5 + 1776.0 / t * ionic**2 + wet
    )  # fmt: skip
    fluoride = math.exp(1590.2 / t - 12.641 + 1.525 * math.sqrt(ionic) + wet)
    boric = math.exp(
        (-8966.90 - 2890.53 * root - 77.942 * s + 1.728 * s * root - 0.0996 * s**2) / t
        + 148.0248 + 137.1942 * root + 1.62142 * s
        - (24.4344 + 25.085 * root + 0.2474 * s) * ln + 0.053105 * root * t
    )  # fmt: skip
    water = math.exp(148.9652 - 13847.26 / t - 23.6521 * ln + (118.67 / t - 5.977 + 1.0495 * ln) * root - 0.01615 * s)
    # fmt: off
    phosphoric = (
        math.exp(-4576.752 / t + 115.525 - 18.453 * ln + (-106.736 / t + 0.69171) * root + (-0.65643 / t - 0.01844) * s),
        math.exp(-8814.715 / t + 172.0883 - 27.927 * ln + (-160.340 / t + 1.3566) * root + (0.37335 / t - 0.05778) * s),
        math.exp(-3070.75 / t - 18.141 + (17.27039 / t + 2.81197) * root + (-44.99486 / t - 0.09984) * s),
    )
    # fmt: on
    aragonite = 10.0 ** (
        -171.945
        - 0.077993 * t
        + 2903.293 / t
        + 71.595 * math.log10(t)
        + (-0.068393 + 0.0017276 * t + 88.135 / t) * root
        - 0.10018 * s
        + 0.0059415 * s * root
    )  # fmt: skip
    sulfate_total, fluoride_total = 0.1400 / 96.062 * chlorinity, 6.7e-5 / 18.998 * chlorinity
    bound = 1.0 + sulfate_total / bisulfate
    activity = 1.2948 - 0.002036 * t + (0.0004607 - 0.000001475 * t) * s**2
    return Constants(
        k1=10.0 ** -(3633.86 / t - 61.2172 + 9.67770 * ln - 0.011555 * s + 0.0001152 * s**2),
        k2=10.0 ** -(471.78 / t + 25.9290 - 3.16967 * ln - 0.01781 * s + 0.0001122 * s**2),
        boric=boric, water=water, bisulfate=bisulfate, fluoride=fluoride, phosphoric=phosphoric, aragonite=aragonite,
        sulfate_total=sulfate_total, fluoride_total=fluoride_total,
        nbs=-math.log10(activity * (bound + fluoride_total / fluoride) / bound),
    )  # fmt: skip


@dataclass(frozen=True)
class Amounts:
    """What a kilogram of water holds, or gets: alkalinity [mol/kg], and carbon, calcium, boron, phosphate [mol/kg]."""

    alkalinity: float = 0.0
    carbon: float = 0.0
    calcium: float = 0.0
    boron: float = 0.0
    phosphate: float = 0.0

    def plus(self, more: Amounts, times: float = 1.0) -> Amounts:
        """Return the sum of these and so many times others."""
        return Amounts(
            self.alkalinity + times * more.alkalinity, self.carbon + times * more.carbon,
            self.calcium + times * more.calcium, self.boron + times * more.boron, self.phosphate + times * more.phosphate,
        )  # fmt: skip


def natural(s: float) -> Amounts:
    """Return boron and calcium of natural seawater of a practical salinity, and nothing else."""
    return Amounts(calcium=0.02128 / 40.078 * s / 1.80655, boron=0.000232 / 10.811 * s / 1.80655)


def charges(k: Constants, hydrogen: float) -> tuple[float, float, float, float]:
    """Return the alkalinity of water itself with sulfate and fluoride [mol/kg], and of a mole of C, B and P [1]."""
    free = hydrogen / (1.0 + k.sulfate_total / k.bisulfate)
    rest = k.water / hydrogen - free
    rest -= k.sulfate_total * free / (free + k.bisulfate) + k.fluoride_total * free / (free + k.fluoride)
    carbon = (k.k1 * hydrogen + 2.0 * k.k1 * k.k2) / (hydrogen**2 + k.k1 * hydrogen + k.k1 * k.k2)
    one, two, three = k.phosphoric
    forms = [hydrogen**3, one * hydrogen**2, one * two * hydrogen, one * two * three]
    phosphorus = sum(count * form for count, form in zip((-1.0, 0.0, 1.0, 2.0), forms, strict=True)) / sum(forms)
    return rest, carbon, k.boric / (k.boric + hydrogen), phosphorus


def alkalinity_at(k: Constants, held: Amounts, ph: float) -> float:
    """Return the alkalinity [mol/kg] at which water with these amounts has a pH on the total scale."""
    rest, carbon, boron, phosphorus = charges(k, 10.0**-ph)
    return rest + held.carbon * carbon + held.boron * boron + held.phosphate * phosphorus


def ph_of(k: Constants, held: Amounts) -> float:
    """Return the pH on the total scale."""
    return bisect(lambda ph: alkalinity_at(k, held, ph) < held.alkalinity, 4.0, 12.0)


def bisect(low_enough: Callable[[float], bool], low: float, high: float) -> float:
    """Return where something stops being true, to the last bits of a float."""
    while True:
        middle = 0.5 * (low + high)
        if not low < middle < high:
            return middle
        low, high = (middle, high) if low_enough(middle) else (low, middle)


def gas_of(k: Constants, held: Amounts, ph: float) -> float:
    """Return dissolved carbon dioxide [mol/kg]."""
    hydrogen = 10.0**-ph
    return held.carbon * hydrogen**2 / (hydrogen**2 + k.k1 * hydrogen + k.k1 * k.k2)


def saturation_of(k: Constants, held: Amounts, ph: float) -> float:
    """Return the saturation with aragonite [1]."""
    carbonate = gas_of(k, held, ph) * k.k1 * k.k2 / 10.0 ** (-2.0 * ph)
    return held.calcium * carbonate / k.aragonite


def with_ph(k: Constants, held: Amounts, ph: float) -> Amounts | None:
    """Return the water with the carbon that gives it a pH on the total scale; None when that would be less than none."""
    rest, carbon, boron, phosphorus = charges(k, 10.0**-ph)
    wanted = (held.alkalinity - rest - held.boron * boron - held.phosphate * phosphorus) / carbon
    return replace(held, carbon=wanted) if wanted >= 0.0 else None


def aired(k: Constants, held: Amounts, gas: float) -> Amounts:
    """Return the water once the air has brought dissolved carbon dioxide to an amount [mol/kg]."""

    def carbon_at(ph: float) -> float:
        hydrogen = 10.0**-ph
        return gas * (1.0 + k.k1 / hydrogen + k.k1 * k.k2 / hydrogen**2)

    ph = bisect(lambda ph: alkalinity_at(k, replace(held, carbon=carbon_at(ph)), ph) < held.alkalinity, 4.0, 12.0)
    return replace(held, carbon=carbon_at(ph))


@dataclass(frozen=True)
class Tank:
    """The water at the start and at the target, and what a rise by one canonical unit brings."""

    k: Constants
    ends: tuple[Amounts, Amounts]
    per_unit: Amounts
    known: bool

    def at(self, share: float, climb: float) -> Amounts:
        """Return the water after a share of the climb [canonical unit], gas exchange caught up."""
        return _after(self.k, self.ends[0], self.per_unit, share * climb, self.known)


def tank(water: tuple[float, float], held: Amounts, ph: float | None, per_unit: Amounts, climb: float) -> Tank | None:
    """Return the two waters of a correction; None when no water has such a pH (NBS)."""
    k = constants(*water)
    start = with_ph(k, held, (ASSUMED if ph is None else ph) - k.nbs)
    if start is None:
        return None
    return Tank(k, (start, _after(k, start, per_unit, climb, ph is not None)), per_unit, ph is not None)


def _after(k: Constants, start: Amounts, per_unit: Amounts, climb: float, known: bool) -> Amounts:
    before, mixed = ph_of(k, start), start.plus(per_unit, climb)
    if known:
        return aired(k, mixed, gas_of(k, start, before))
    same = with_ph(k, mixed, before)
    assert same is not None, "water that gains alkalinity can have the pH it had"
    return same


def most_below(tank: Tank, base: Amounts, ceiling: float) -> float:
    """Return the rise at once [canonical unit] that lifts pH (total) to a ceiling: one linear equation at that pH."""
    one = tank.per_unit
    room = alkalinity_at(tank.k, base, ceiling) - base.alkalinity
    lifts = one.alkalinity - (alkalinity_at(tank.k, one, ceiling) - alkalinity_at(tank.k, Amounts(), ceiling))
    return max(room, 0.0) / lifts if lifts > 0.0 else math.inf


def paces(tank: Tank, doses: int, use: float, fastest: float) -> dict[str, float]:
    """Return what each limit on the water allows [canonical unit per day], with the pace the other limits allow."""
    # So many whole doses fit into the fullest hour of a day of evenly spaced ones.
    together = max(1, -(-doses // 24))

    def pace(rise: float) -> float:
        return rise * doses / together - use

    def saturated(base: Amounts) -> float:
        def below(rise: float) -> bool:
            after = base.plus(tank.per_unit, rise)
            return saturation_of(tank.k, after, ph_of(tank.k, after)) <= SATURATION

        largest = (max(min(fastest, out["ph_rise"], out["ph_ceiling"]), 0.0) + use) * together / doses
        return math.inf if below(largest) else bisect(below, 0.0, largest) if below(0.0) else 0.0

    lifted = [most_below(tank, base, ph_of(tank.k, base) + RISE) for base in tank.ends]
    out = {"ph_rise": pace(min(lifted))}
    if tank.known:
        out["ph_ceiling"] = pace(min(most_below(tank, base, CEILING - tank.k.nbs) for base in tank.ends))
        out["saturation"] = pace(min(saturated(base) for base in tank.ends))
    return out
