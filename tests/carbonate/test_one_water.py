"""One water in plain floats against the same in arrays, over 20,000 random waters; then against sums written out anew.

Both have the same constants; the arrays are held against an independent program in ``test_against_pyco2sys``.
"""

from __future__ import annotations

import math
import random
from dataclasses import astuple, dataclass
from functools import cache

import numpy as np
import pytest

from evenwater.engine import carbonate, carbonate_point
from evenwater.engine.carbonate import Addition
from evenwater.engine.carbonate_equilibria import equilibria, plain_equilibria
from evenwater.engine.carbonate_point import Portions, Sample, sample
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_state import (
    ImpossibleWaterError,
    State,
    from_alkalinity_pco2,
    from_alkalinity_ph,
    seawater,
)
from evenwater.engine.quantities import Water

KINDS, EACH = 200, 100


@dataclass(frozen=True)
class Many:
    """All waters of one salinity and temperature, one by one and as arrays, and what is added to each."""

    water: Water
    samples: list[Sample]
    state: State
    portions: list[Portions]
    added: Addition


def portion(draw: random.Random) -> Portions:
    """Return something to mix in: what a dose brings, or a hundred of them; sometimes an acid."""
    size = 10.0 ** draw.uniform(-4.0, 0.5)
    kinds = (
        Portions(alkalinity=size, dic=size),
        Portions(alkalinity=size, dic=size / 2.0),
        Portions(alkalinity=size),
        Portions(alkalinity=size, calcium=size / 2.0),
        Portions(alkalinity=size, borate=2.0 * size),
        Portions(calcium=size),
        Portions(phosphate=size / 100.0),
        Portions(borate=size),
        Portions(alkalinity=-size / 10.0),
    )
    return draw.choice(kinds)


@cache
def waters() -> tuple[Many, ...]:
    """Return 20,000 waters, far beyond those of tanks."""
    draw = random.Random(20260725)
    found = []
    for _ in range(KINDS):
        water = Water(draw.uniform(19.0, 42.0), draw.uniform(10.0, 34.0))
        # Not so high that hydroxide and borate alone would be more than the alkalinity.
        given = [(draw.uniform(1.0, 6.0), draw.uniform(7.0, 8.7), draw.uniform(5.0, 20.0)) for _ in range(EACH)]
        samples = [sample(water, *figures) for figures in given]
        alkalinity, ph, calcium = (np.array(column) for column in zip(*given, strict=True))
        arrays = seawater(water.salinity, water.temperature_c, calcium_mmol_per_kg=calcium)
        state = from_alkalinity_ph(arrays, alkalinity, ph, PhScale.NBS)
        portions = [portion(draw) for _ in range(EACH)]
        added = Addition(*(np.array(column) for column in zip(*map(astuple, portions), strict=True)))
        found.append(Many(water, samples, state, portions, added))
    return tuple(found)


def column(samples: list[Sample], name: str) -> np.ndarray:
    return np.array([getattr(one, name) for one in samples])


def same(samples: list[Sample], state: State) -> None:
    """Hold every figure of the waters one by one against that of the arrays."""
    assert np.abs(column(samples, "ph_total") - state.ph_total).max() <= 1e-12
    assert np.abs(column(samples, "ph_nbs") - state.ph(PhScale.NBS)).max() <= 1e-12
    pairs = {
        "dic": state.dic_mmol_per_kg,
        "alkalinity": state.alkalinity_meq_per_kg,
        "calcium": state.water.calcium_mmol_per_kg,
        "carbonate": state.carbonate_mmol_per_kg,
        "co2": state.co2_mmol_per_kg,
        "saturation": state.aragonite_saturation,
    }
    for name, expected in pairs.items():
        assert np.allclose(column(samples, name), expected, rtol=1e-11, atol=0.0), name
    assert np.allclose(column(samples, "borate"), 1000.0 * state.water.acids.borate, rtol=1e-12, atol=0.0)
    assert np.allclose(column(samples, "phosphate"), 1000.0 * state.water.acids.phosphate, rtol=1e-12, atol=0.0)


def test_there_are_twenty_thousand() -> None:
    assert sum(len(many.samples) for many in waters()) == 20_000


def test_water_as_measured_is_that_of_the_arrays() -> None:
    for many in waters():
        same(many.samples, many.state)


def test_mixing_in_and_gas_exchange_are_those_of_the_arrays() -> None:
    for many in waters():
        effect = carbonate.effect(many.state, many.added)
        mixed = [one.mixed(added) for one, added in zip(many.samples, many.portions, strict=True)]
        same(mixed, effect.at_once)
        same([one.aired(before.co2) for one, before in zip(mixed, many.samples, strict=True)], effect.caught_up)


def test_a_ph_given_back_is_the_water_it_was() -> None:
    for many in waters()[::10]:
        for one, added in zip(many.samples, many.portions, strict=True):
            mixed = one.mixed(added)
            again = mixed.at_ph(mixed.ph_total)
            assert again.dic == pytest.approx(mixed.dic, rel=1e-10)
            assert (again.alkalinity, again.calcium, again.borate, again.phosphate, again.ph_total) == (
                mixed.alkalinity, mixed.calcium, mixed.borate, mixed.phosphate, mixed.ph_total,
            )  # fmt: skip


@pytest.mark.parametrize("lift", [-0.1, 0.0, 0.05, 0.2, 0.6])
def test_room_below_a_ph_is_that_of_the_arrays(lift: float) -> None:
    for many in waters():
        expected = carbonate.most_below_ph(many.state, many.added, many.state.ph_total + lift)
        found = np.array([
            one.most_below(one.ph_total + lift, added)
            for one, added in zip(many.samples, many.portions, strict=True)
        ])  # fmt: skip
        assert np.array_equal(np.isinf(found), np.isinf(expected))
        finite = np.isfinite(found)
        assert np.allclose(found[finite], expected[finite], rtol=1e-9, atol=1e-11)


def test_room_below_a_ph_is_used_up_by_as_much() -> None:
    checked = 0
    for many in waters()[::10]:
        for one, added in zip(many.samples, many.portions, strict=True):
            most = one.most_below(one.ph_total + 0.2, added)
            # What lowers pH has no end of room, and of a weak base no amount may reach so far.
            if math.isfinite(most):
                assert one.mixed(added.times(most)).ph_total == pytest.approx(one.ph_total + 0.2, abs=1e-11)
                checked += 1
            else:
                assert one.mixed(added.times(3.0)).ph_total < one.ph_total + 0.2
    assert checked > 800


def test_no_room_above_the_ceiling() -> None:
    one = sample(Water(), 2.3, 8.4, None)
    assert one.most_below(one.ph_total - 0.1, Portions(alkalinity=1.0)) == 0.0
    assert one.most_below(one.ph_total - 0.1, Portions(alkalinity=1.0, dic=1.0)) == math.inf


def test_constants_in_floats_are_those_of_the_arrays() -> None:
    plain, arrays = plain_equilibria(33.3, 22.2), equilibria(33.3, 22.2)
    for name in vars(arrays):
        found, expected = getattr(plain, name), getattr(arrays, name)
        if isinstance(expected, tuple):
            assert [type(v) for v in found] == [float] * 3
            assert found == tuple(float(v) for v in expected)
        else:
            assert type(found) is float
            assert found == float(expected)
    assert plain_equilibria(33.3, 22.2) is plain
    assert carbonate_point.nbs_offset(plain) == float(arrays.ph_offset(PhScale.NBS))


def test_calcium_of_natural_seawater_stands_in() -> None:
    """Riley and Tongudai 1967: 0.02128 of chlorinity by mass."""
    one = sample(Water(33.0, 24.0), 2.3, 8.1, None)
    assert one.calcium == pytest.approx(21.28 / 40.078 * 33.0 / 1.80655, rel=1e-12)
    assert sample(Water(33.0, 24.0), 2.3, 8.1, 11.5).calcium == 11.5


@pytest.mark.parametrize(("alkalinity", "ph"), [(2.3, 10.9), (0.1, 8.5), (-1.0, 8.1), (math.nan, 8.1), (2.3, math.nan)])
def test_impossible_water_is_refused(alkalinity: float, ph: float) -> None:
    with pytest.raises(ImpossibleWaterError):
        sample(Water(), alkalinity, ph, None)
    with pytest.raises(ImpossibleWaterError):
        from_alkalinity_ph(seawater(35.0, 25.0), alkalinity, ph, PhScale.NBS)


def test_portions_are_multiplied_each() -> None:
    assert Portions(1.0, 2.0, 3.0, 4.0, 5.0).times(0.5) == Portions(0.5, 1.0, 1.5, 2.0, 2.5)


def test_extremes_converge_like_the_arrays() -> None:
    """From acid to lye, without carbon and full of it: the bounds of the search hold for any water."""
    draw = random.Random(7)
    for _ in range(300):
        water = Water(draw.uniform(5.0, 45.0), draw.uniform(0.0, 40.0))
        one = sample(water, 2.5, 8.0, None)
        added = Portions(
            draw.uniform(-5.0, 50.0), draw.uniform(-one.dic, 50.0), 0.0, draw.uniform(-0.1, 2.0), draw.uniform(0.0, 0.1)
        )
        arrays = from_alkalinity_ph(seawater(water.salinity, water.temperature_c), 2.5, 8.0, PhScale.NBS)
        expected = carbonate.add(arrays, Addition(*astuple(added)))
        assert one.mixed(added).ph_total == pytest.approx(float(expected.ph_total), abs=1e-10)
        pco2 = 10.0 ** draw.uniform(0.0, 5.0)
        gas = float(expected.water.acids.constants.k0 * expected.water.acids.constants.fugacity) * pco2 * 1e-3
        in_air = from_alkalinity_pco2(expected.water, expected.alkalinity_meq_per_kg, pco2)
        assert one.mixed(added).aired(gas).ph_total == pytest.approx(float(in_air.ph_total), abs=1e-10)
