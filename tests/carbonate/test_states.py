"""The solver: always an answer, always the same one, whichever two figures it starts from."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_state import (
    ImpossibleWaterError,
    Seawater,
    State,
    from_alkalinity_dic,
    from_alkalinity_pco2,
    from_alkalinity_ph,
    from_dic_ph,
    seawater,
)
from evenwater.engine.carbonate_totals import borate_lee_2010, borate_uppstrom_1974, calcium_riley_tongudai_1967

BLOCKS, BLOCK = 50, 20_000

salinities = st.floats(19.0, 40.0)
temperatures = st.floats(5.0, 35.0)
alkalinities = st.floats(0.5, 10.0)
acidities = st.floats(7.0, 8.8)


def residual(state: State) -> np.ndarray:
    """Return the alkalinity summed over all species less that of the state, over its size; written out anew."""
    k = state.water.acids.constants
    hydrogen = 10.0**-state.ph_total
    free = hydrogen / (1.0 + k.total_sulfate / k.bisulfate)
    dic, phosphate = state.dic_mmol_per_kg / 1000.0, state.water.acids.phosphate
    carbon = hydrogen**2 + k.k1 * hydrogen + k.k1 * k.k2
    p1, p2, p3 = k.phosphoric
    phosphoric = hydrogen**3 + p1 * hydrogen**2 + p1 * p2 * hydrogen + p1 * p2 * p3
    parts = [
        dic * k.k1 * hydrogen / carbon,
        2.0 * dic * k.k1 * k.k2 / carbon,
        state.water.acids.borate / (1.0 + hydrogen / k.boric),
        k.kw / hydrogen,
        phosphate * p1 * p2 * hydrogen / phosphoric,
        2.0 * phosphate * p1 * p2 * p3 / phosphoric,
        -phosphate * hydrogen**3 / phosphoric,
        state.water.acids.silicate / (1.0 + hydrogen / k.silicic),
        -free,
        -k.total_sulfate / (1.0 + k.bisulfate / free),
        -k.total_fluoride / (1.0 + k.fluoride / free),
    ]
    return (sum(parts) - state.alkalinity_meq_per_kg / 1000.0) / sum(abs(part) for part in parts)


def wild(random: np.random.Generator) -> Seawater:
    return seawater(
        random.uniform(1.0, 45.0, BLOCK),
        random.uniform(0.0, 40.0, BLOCK),
        borate_mmol_per_kg=random.uniform(0.0, 2.0, BLOCK),
        phosphate_mmol_per_kg=random.uniform(0.0, 0.1, BLOCK),
        silicate_mmol_per_kg=random.uniform(0.0, 0.5, BLOCK),
    )


def test_a_million_random_states_all_converge() -> None:
    """Far beyond any tank: from dissolved acid to limewater, with and without carbon, 1 to 1,000,000 uatm."""
    random = np.random.default_rng(20040229)
    solved = 0
    for block in range(BLOCKS):
        water, alkalinity = wild(random), random.uniform(-5.0, 50.0, BLOCK)
        if block % 2:
            state = from_alkalinity_pco2(water, alkalinity, 10.0 ** random.uniform(0.0, 6.0, BLOCK))
        else:
            dic = random.uniform(0.0, 50.0, BLOCK) * (random.random(BLOCK) < 0.9)
            state = from_alkalinity_dic(water, alkalinity, dic)
        assert np.isfinite(state.ph_total).all()
        assert np.abs(residual(state)).max() < 1e-9
        solved += state.ph_total.size
    assert solved == 1_000_000


@given(salinities, temperatures, alkalinities, acidities)
def test_round_robin_every_pair_gives_the_same_state(
    salinity: float, temperature_c: float, dic: float, ph: float
) -> None:
    water = seawater(salinity, temperature_c, phosphate_mmol_per_kg=0.001, silicate_mmol_per_kg=0.01)
    first = from_dic_ph(water, dic, ph)
    alkalinity = first.alkalinity_meq_per_kg
    others = [
        from_alkalinity_dic(water, alkalinity, dic),
        from_alkalinity_pco2(water, alkalinity, first.pco2_uatm),
        *(from_alkalinity_ph(water, alkalinity, first.ph(scale), scale) for scale in PhScale),
        *(from_dic_ph(water, dic, first.ph(scale), scale) for scale in PhScale),
    ]
    for other in others:
        assert float(other.ph_total) == pytest.approx(ph, abs=1e-8)
        assert float(other.dic_mmol_per_kg) == pytest.approx(dic, rel=1e-7)
        assert float(other.alkalinity_meq_per_kg) == pytest.approx(float(alkalinity), rel=1e-7)
        assert float(other.aragonite_saturation) == pytest.approx(float(first.aragonite_saturation), rel=1e-7)


@given(salinities, temperatures, alkalinities, acidities)
def test_species_add_up(salinity: float, temperature_c: float, dic: float, ph: float) -> None:
    state = from_dic_ph(seawater(salinity, temperature_c), dic, ph)
    species = state.co2_mmol_per_kg + state.bicarbonate_mmol_per_kg + state.carbonate_mmol_per_kg
    assert float(species) == pytest.approx(dic, rel=1e-12)
    assert abs(float(residual(state))) < 1e-12


@given(salinities, temperatures, alkalinities, acidities, st.floats(0.001, 3.0))
def test_more_alkalinity_with_the_same_carbon_raises_ph(
    salinity: float, temperature_c: float, dic: float, ph: float, more: float
) -> None:
    before = from_dic_ph(seawater(salinity, temperature_c), dic, ph)
    after = from_alkalinity_dic(before.water, before.alkalinity_meq_per_kg + more, dic)
    assert after.ph_total > before.ph_total
    assert after.aragonite_saturation > before.aragonite_saturation
    assert after.pco2_uatm < before.pco2_uatm


@given(salinities, temperatures, alkalinities, acidities, st.floats(0.001, 3.0))
def test_more_carbon_with_the_same_alkalinity_lowers_ph(
    salinity: float, temperature_c: float, dic: float, ph: float, more: float
) -> None:
    before = from_dic_ph(seawater(salinity, temperature_c), dic, ph)
    after = from_alkalinity_dic(before.water, before.alkalinity_meq_per_kg, dic + more)
    assert after.ph_total < before.ph_total
    assert after.pco2_uatm > before.pco2_uatm


def test_one_state_is_the_same_alone_and_among_a_thousand() -> None:
    water, alkalinity = seawater(35.0, 25.0), np.linspace(1.0, 6.0, 1000)
    ramp = from_alkalinity_pco2(water, alkalinity, 420.0)
    assert ramp.ph_total.shape == (1000,)
    for at in (0, 333, 999):
        assert float(from_alkalinity_pco2(water, alkalinity[at], 420.0).ph_total) == pytest.approx(
            float(ramp.ph_total[at]), abs=1e-12
        )


def test_saturation_follows_the_calcium_of_the_tank_and_not_its_salinity() -> None:
    natural = float(calcium_riley_tongudai_1967(35.0))
    assert natural == pytest.approx(10.287, abs=0.001)
    dosed = from_alkalinity_dic(seawater(35.0, 25.0, calcium_mmol_per_kg=1.2 * natural), 2.3, 2.0)
    plain = from_alkalinity_dic(seawater(35.0, 25.0), 2.3, 2.0)
    assert float(dosed.aragonite_saturation / plain.aragonite_saturation) == pytest.approx(1.2, rel=1e-12)
    assert float(dosed.ph_total) == float(plain.ph_total)


def test_newer_boron_is_four_percent_more_and_lowers_ph_of_the_same_water() -> None:
    """Lee et al. 2010 found 4 % more boron than Uppstrom 1974: more of the alkalinity is borate, less is carbonate."""
    assert float(borate_lee_2010(35.0) / borate_uppstrom_1974(35.0)) == pytest.approx(1.0405, abs=0.0005)
    older = from_alkalinity_dic(seawater(35.0, 25.0), 2.3, 2.0)
    newer = from_alkalinity_dic(seawater(35.0, 25.0, borate_mmol_per_kg=borate_lee_2010(35.0)), 2.3, 2.0)
    assert -0.02 < float(newer.ph_total - older.ph_total) < -0.005


def test_scales_stand_in_their_order() -> None:
    state = from_alkalinity_dic(seawater(np.linspace(25.0, 40.0, 16), np.linspace(15.0, 32.0, 16)), 2.3, 2.0)
    seawater_scale, total, free, nbs = (
        state.ph(scale) for scale in (PhScale.SEAWATER, PhScale.TOTAL, PhScale.FREE, PhScale.NBS)
    )
    assert (seawater_scale < total).all()
    assert (total < free).all()
    assert (total < nbs).all()
    assert np.array_equal(total, state.ph_total)


def test_extrapolation_is_known() -> None:
    water = seawater(np.array([18.0, 19.0, 35.0, 40.0, 41.0, 35.0, 35.0]), np.array([25, 5, 25, 35, 25, 4, 36.0]))
    assert water.acids.constants.measured_here().tolist() == [False, True, True, True, False, False, False]


@pytest.mark.parametrize(
    "ask",
    [
        lambda water: from_alkalinity_dic(water, 2.3, -0.1),
        lambda water: from_alkalinity_dic(water, np.nan, 2.0),
        lambda water: from_alkalinity_dic(water, 2.3, np.array([2.0, np.inf])),
        lambda water: from_alkalinity_pco2(water, 2.3, -1.0),
        lambda water: from_alkalinity_ph(water, 0.1, 9.0),
        lambda water: from_alkalinity_ph(water, 2.3, np.nan),
        lambda water: from_dic_ph(water, -0.1, 8.0),
        lambda water: seawater(35.0, 25.0, calcium_mmol_per_kg=-1.0),
        lambda water: seawater(35.0, 25.0, borate_mmol_per_kg=np.nan),
    ],
)
def test_impossible_water_is_refused(ask) -> None:
    with pytest.raises(ImpossibleWaterError):
        ask(seawater(35.0, 25.0))


def test_water_without_carbon_or_salt_is_still_solved() -> None:
    """Bounds meet where nothing but water is left; no division by zero, no missing figure."""
    bare = from_alkalinity_dic(seawater(0.0, 25.0), np.array([-1.0, 0.0, 1.0]), 0.0)
    assert bare.ph_total == pytest.approx([3.0, 7.0, 11.0], abs=0.02)
    none = from_alkalinity_pco2(seawater(35.0, 25.0), 2.3, 0.0)
    assert float(none.dic_mmol_per_kg) == 0.0
    assert float(none.ph_total) > 10.0
