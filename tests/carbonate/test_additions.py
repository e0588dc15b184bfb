"""Additions: bookkeeping per mole, what they do at once and after gas exchange, and how much fits under a pH."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.engine.carbonate import (
    Addition,
    add,
    addition_of,
    calcium_mmol_per_kg,
    effect,
    most_below_ph,
    per_kg,
)
from evenwater.engine.carbonate_state import ImpossibleWaterError, State, from_alkalinity_pco2, seawater
from evenwater.engine.catalogue import Chemical
from evenwater.engine.quantities import Water
from tests.published.rows import catalogue

# Per mole: alkalinity [eq], DIC, calcium, boron, phosphate.
CARRIED = {
    "sodium bicarbonate": (1, 1, 0, 0, 0),
    "sodium carbonate anhydrous": (2, 1, 0, 0, 0),
    "sodium carbonate monohydrate": (2, 1, 0, 0, 0),
    "sodium carbonate decahydrate": (2, 1, 0, 0, 0),
    "sodium hydroxide": (1, 0, 0, 0, 0),
    "calcium hydroxide": (2, 0, 1, 0, 0),
    "calcium chloride anhydrous": (0, 0, 1, 0, 0),
    "calcium chloride dihydrate": (0, 0, 1, 0, 0),
    "calcium chloride hexahydrate": (0, 0, 1, 0, 0),
    "boric acid": (0, 0, 0, 1, 0),
    "sodium tetraborate decahydrate": (2, 0, 0, 4, 0),
    "potassium dihydrogen phosphate": (0, 0, 0, 0, 1),
}
ALKALINE = ("sodium bicarbonate", "sodium carbonate anhydrous", "sodium hydroxide", "calcium hydroxide")

pressures = st.floats(150.0, 3000.0)
alkalinities = st.floats(1.0, 6.0)
chemicals = st.sampled_from(sorted(CARRIED))


def chemical(name: str) -> Chemical:
    return catalogue().chemicals[name]


def one_dkh(name: str) -> Addition:
    return addition_of(chemical(name), 0.36 / chemical(name).per_mole("alkalinity"))


def tank(alkalinity: float = 2.3, pco2_uatm: float = 420.0) -> State:
    return from_alkalinity_pco2(seawater(35.0, 25.0), alkalinity, pco2_uatm)


@pytest.mark.parametrize("name", CARRIED)
def test_bookkeeping_per_mole_is_exact(name: str) -> None:
    before = tank()
    after = add(before, addition_of(chemical(name), 0.125))
    alkalinity, dic, calcium, borate, phosphate = (0.125 * count for count in CARRIED[name])
    assert float(after.alkalinity_meq_per_kg) == float(before.alkalinity_meq_per_kg) + alkalinity
    assert float(after.dic_mmol_per_kg) == float(before.dic_mmol_per_kg) + dic
    assert float(after.water.calcium_mmol_per_kg) == float(before.water.calcium_mmol_per_kg) + calcium
    assert float(after.water.acids.borate) == float(before.water.acids.borate) + borate / 1000.0
    assert float(after.water.acids.phosphate) == phosphate / 1000.0


def test_every_chemical_of_the_catalogue_is_neutral_unless_it_is_listed_here() -> None:
    before = tank()
    for name, listed in catalogue().chemicals.items():
        if name not in CARRIED:
            after = add(before, addition_of(listed, 0.1))
            # The solver answers to 1e-11.
            assert float(after.ph_total) == pytest.approx(float(before.ph_total), abs=1e-9), name


@given(pressures, alkalinities, chemicals, st.floats(0.001, 1.0))
def test_adding_and_taking_away_returns(pco2_uatm: float, alkalinity: float, name: str, amount: float) -> None:
    before = tank(alkalinity, pco2_uatm)
    back = add(add(before, addition_of(chemical(name), amount)), addition_of(chemical(name), -amount))
    assert float(back.ph_total) == pytest.approx(float(before.ph_total), abs=1e-9)
    assert float(back.aragonite_saturation) == pytest.approx(float(before.aragonite_saturation), rel=1e-9)
    assert float(back.pco2_uatm) == pytest.approx(pco2_uatm, rel=1e-9)


@given(pressures, alkalinities, st.sampled_from(ALKALINE), st.floats(0.01, 1.0), st.floats(0.1, 0.9))
def test_two_parts_do_what_the_whole_does(
    pco2_uatm: float, alkalinity: float, name: str, amount: float, share: float
) -> None:
    before = tank(alkalinity, pco2_uatm)
    whole = add(before, addition_of(chemical(name), amount))
    parts = add(
        add(before, addition_of(chemical(name), share * amount)), addition_of(chemical(name), (1.0 - share) * amount)
    )
    assert float(parts.ph_total) == pytest.approx(float(whole.ph_total), abs=1e-9)


def test_same_rise_of_alkalinity_moves_ph_by_what_carries_it() -> None:
    """Bicarbonate lowers pH a little at once, soda ash raises it, hydroxide and limewater raise it twice as much."""
    before = tank()
    moved = {name: float(add(before, one_dkh(name)).ph_total - before.ph_total) for name in ALKALINE}
    assert -0.06 < moved["sodium bicarbonate"] < -0.04
    assert 0.19 < moved["sodium carbonate anhydrous"] < 0.22
    assert moved["sodium hydroxide"] == pytest.approx(moved["calcium hydroxide"], abs=1e-12)
    assert 0.40 < moved["sodium hydroxide"] < 0.44


@given(st.floats(150.0, 1000.0), st.floats(2.0, 6.0), st.floats(0.01, 0.5))
def test_bicarbonate_lowers_ph_of_water_that_is_kept(pco2_uatm: float, alkalinity: float, amount: float) -> None:
    """Above pH 7.6 or so; its own pH lies there, and water more acid than that is lifted by it."""
    before = tank(alkalinity, pco2_uatm)
    after = add(before, addition_of(chemical("sodium bicarbonate"), amount))
    assert -0.15 < float(after.ph_total - before.ph_total) < 0.0


def test_gas_exchange_makes_all_carriers_alike() -> None:
    before = tank()
    ends = [effect(before, one_dkh(name)).caught_up for name in ALKALINE]
    for end in ends:
        assert float(end.pco2_uatm) == pytest.approx(420.0, rel=1e-9)
        assert float(end.ph_total) == pytest.approx(float(ends[0].ph_total), abs=1e-9)
        assert float(end.dic_mmol_per_kg) == pytest.approx(float(ends[0].dic_mmol_per_kg), rel=1e-9)
    # Limewater brings calcium too.
    assert ends[-1].aragonite_saturation > ends[0].aragonite_saturation


def test_borax_buffers_what_it_brings() -> None:
    """Its boron takes part: counted as alkalinity alone it would seem as harsh as hydroxide."""
    before = tank()
    borax = addition_of(chemical("sodium tetraborate decahydrate"), 0.18)
    with_boron = float(add(before, borax).ph_total - before.ph_total)
    alone = Addition(alkalinity_meq_per_kg=borax.alkalinity_meq_per_kg)
    assert 0.1 < with_boron < 0.6 * float(add(before, alone).ph_total - before.ph_total)


def test_whole_ramp_is_one_call() -> None:
    before = tank()
    amounts = np.linspace(0.0, 0.5, 1000)
    done = effect(before, addition_of(chemical("sodium carbonate anhydrous"), amounts))
    for state in (done.at_once, done.caught_up):
        assert state.ph_total.shape == state.aragonite_saturation.shape == (1000,)
        assert (np.diff(state.ph_total) > 0.0).all()
        assert (np.diff(state.aragonite_saturation) > 0.0).all()
    assert done.before is before
    assert float(done.at_once.ph_total[0]) == pytest.approx(float(before.ph_total), abs=1e-9)
    assert (done.at_once.ph_total[1:] > done.caught_up.ph_total[1:]).all()


def test_ramp_may_start_from_a_state_at_every_instant() -> None:
    along = from_alkalinity_pco2(seawater(35.0, 25.0), np.linspace(2.3, 3.0, 200), 420.0)
    after = add(along, addition_of(chemical("sodium carbonate anhydrous"), 0.01))
    jumps = after.ph_total - along.ph_total
    assert jumps.shape == (200,)
    assert (np.diff(jumps) < 0.0).all(), "the more alkalinity there is, the less a dose moves pH"


@given(pressures, alkalinities, chemicals, st.floats(7.5, 8.9))
def test_most_below_a_ph_ends_at_that_ph(pco2_uatm: float, alkalinity: float, name: str, ceiling: float) -> None:
    before = tank(alkalinity, pco2_uatm)
    most = float(most_below_ph(before, addition_of(chemical(name), 1.0), ceiling))
    if np.isinf(most):
        far = add(before, addition_of(chemical(name), 1000.0))
        assert float(far.ph_total) <= max(ceiling, float(before.ph_total)) + 1e-9
    elif most == 0.0:
        assert float(before.ph_total) >= ceiling - 1e-9
    else:
        assert float(add(before, addition_of(chemical(name), most)).ph_total) == pytest.approx(ceiling, abs=1e-7)


def test_carriers_have_different_room_under_the_same_ceiling() -> None:
    before = tank()
    room = {
        name: float(most_below_ph(before, addition_of(chemical(name), 1.0), before.ph_total + 0.2))
        * chemical(name).per_mole("alkalinity")
        for name in ALKALINE
    }
    assert np.isinf(room["sodium bicarbonate"])
    assert room["sodium carbonate anhydrous"] > 1.9 * room["sodium hydroxide"]
    assert room["calcium hydroxide"] == pytest.approx(room["sodium hydroxide"], rel=1e-12)


def test_more_cannot_be_taken_away_than_there_is() -> None:
    for name in ("sodium bicarbonate", "calcium chloride anhydrous", "boric acid", "potassium dihydrogen phosphate"):
        with pytest.raises(ImpossibleWaterError):
            add(tank(), addition_of(chemical(name), -20.0))


def test_figures_per_litre_become_figures_per_kilogram() -> None:
    """Density 1.02334 kg/L at 35 and 25 degC (Millero and Poisson 1981: 1023.343 kg/m3, from memory)."""
    water = Water(35.0, 25.0)
    assert float(per_kg(2.36, water)) == pytest.approx(2.36 / 1.02334, rel=1e-5)
    assert per_kg(np.array([1.0, 2.0]), water).shape == (2,)
    # 412.3 mg/kg at salinity 35: 10.287 mmol/kg of 40.078 g/mol.
    assert float(calcium_mmol_per_kg(412.3 * 1.02334, water)) == pytest.approx(10.287, abs=0.001)
