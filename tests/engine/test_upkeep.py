"""Upkeeps against figures reckoned here by hand, from atomic weights (CIAAW 2021) and the mole ratios of the salts."""

from __future__ import annotations

import math
from datetime import timedelta

import pytest

from evenwater.engine.upkeep_question import UpkeepQuestion
from tests.engine.asking import NOW, known
from tests.engine.upkeeps import (
    BICARBONATE,
    CALCIUM_PER_MEQ,
    COMMON_SALT,
    FINE,
    JUGS,
    LITRES,
    MEQ_PER_DKH,
    NITRATE,
    POTASSIUM,
    SULFATE_PER_MAGNESIUM,
    answered,
    ask,
    dose_of,
    drift_of,
    item,
    jug,
    limewater,
    per_ml,
    raw,
    read,
    remarks_of,
)

WEEK, MONTH, YEAR = 7.0, 365.25 / 12.0, 365.25
USED = 0.9 * MEQ_PER_DKH  # meq/L per day
MATCHED = f"{USED * CALCIUM_PER_MEQ:.9f} mg/L per day"
SODA, LIME_CHLORIDE = jug("sodium carbonate anhydrous", 106.0), jug("calcium chloride dihydrate", 147.0)
TWO_PART = (item("alkalinity"), item("calcium", MATCHED))
SEAWATER = 1.02334  # kg/L at 35 and 25 degC, TEOS-10


def test_doses_of_a_two_part_are_what_is_used_over_the_strength() -> None:
    found = answered(raw(*TWO_PART))
    # 106 g of soda ash carry 2.00024 meq per mL, 147 g of calcium chloride 40.07 mg.
    alkalinity = USED / per_ml("sodium carbonate anhydrous", 106.0, "alkalinity")
    calcium = USED * CALCIUM_PER_MEQ / per_ml("calcium chloride dihydrate", 147.0, "calcium")
    assert alkalinity / 24.0 == pytest.approx(2.2734, rel=5e-5)
    assert dose_of(found, "alkalinity").needed_ml_per_day == pytest.approx(alkalinity, rel=1e-8)
    assert dose_of(found, "calcium").needed_ml_per_day == pytest.approx(calcium, rel=1e-8)
    assert all(dose.own_share == pytest.approx(1.0, rel=1e-12) for dose in found.doses)


def test_rounded_once_and_down_and_what_is_left_is_said() -> None:
    found = answered(raw(item("alkalinity", step="0.1 mL"), item("calcium", MATCHED, step="0.5 mL")))
    first, second = found.doses
    assert (first.dose_ml, first.in_24_hours_ml) == (2.2, 52.8)
    assert (second.dose_ml, second.in_24_hours_ml) == (2.0, 48.0)
    assert first.run_time_s == pytest.approx(5.5, rel=1e-12)
    assert first.shortfall == pytest.approx(
        USED - 52.8 * per_ml("sodium carbonate anhydrous", 106.0, "alkalinity"), rel=1e-6
    )
    assert drift_of(found, "alkalinity").gain == pytest.approx(-first.shortfall, rel=1e-9)
    # Without a step the dose keeps two digits.
    assert dose_of(answered(raw(item("alkalinity", step=None))), "alkalinity").dose_ml == 2.2


def test_every_equivalent_of_a_two_part_leaves_one_mole_of_common_salt() -> None:
    found = answered(raw(*TWO_PART))
    equivalents = USED * LITRES / 1000.0
    assert abs(COMMON_SALT - 58.44) < 0.005
    for grams, days in zip(found.salt.alone, (WEEK, MONTH, YEAR), strict=True):
        assert grams == pytest.approx(58.44 * equivalents * days, rel=1e-4)
        assert grams == pytest.approx(COMMON_SALT * equivalents * days, rel=1e-6)
    assert found.sodium_chloride.alone == pytest.approx(found.salt.alone, rel=1e-6)
    assert {d.name for d in found.drifts if abs(d.gain) > 1e-4} == {"sodium", "chloride", "salinity"}
    assert drift_of(found, "salinity").alone[1] == pytest.approx(
        COMMON_SALT * USED * MONTH / 1000.0 / SEAWATER, rel=1e-5
    )
    assert drift_of(found, "calcium").gain == pytest.approx(0.0, abs=1e-5)


def test_exchange_keeps_salt_below_what_a_day_brings_over_the_share_exchanged() -> None:
    found = answered(raw(*TWO_PART, exchange={"per_day": "3.4 L per day"}))
    in_day = COMMON_SALT * USED * LITRES / 1000.0
    assert found.salt.exchanged is not None
    assert found.salt.steady == pytest.approx(in_day / 0.01, rel=1e-6)
    for grams, days in zip(found.salt.exchanged, (WEEK, MONTH, YEAR), strict=True):
        assert grams == pytest.approx(in_day / 0.01 * (1.0 - math.exp(-0.01 * days)), rel=1e-6)
    salinity = drift_of(found, "salinity")
    assert salinity.steady == pytest.approx(in_day / 0.01 / LITRES / SEAWATER, rel=1e-5)
    assert (salinity.start, salinity.new_water) == (35.0, 35.0)


def test_exchange_draws_a_value_to_the_new_water() -> None:
    found = answered(
        raw(item("calcium", measured="380 mg/L"), exchange={"per_day": "34 L per day", "calcium": "450 mg/L"})
    )
    calcium = drift_of(found, "calcium")
    assert calcium.exchanged is not None
    for change, days in zip(calcium.exchanged, (WEEK, MONTH, YEAR), strict=True):
        assert change == pytest.approx(70.0 * (1.0 - math.exp(-0.1 * days)), rel=1e-6)
    assert (calcium.start, calcium.new_water) == (380.0, 450.0)
    assert calcium.alone == pytest.approx((0.0, 0.0, 0.0), abs=1e-3)


def test_new_water_is_natural_seawater_where_nothing_is_said_and_a_value_not_measured_is_that_of_it() -> None:
    found = answered(raw(item("calcium"), exchange={"per_day": "34 L per day"}))
    calcium = drift_of(found, "calcium")
    assert (calcium.start, calcium.new_water) == (None, 421.7)
    assert calcium.exchanged == pytest.approx((0.0, 0.0, 0.0), abs=1e-4)
    assert drift_of(answered(raw(item("calcium"), system={"calcium": "400 mg/L"})), "calcium").start == 400.0
    assert drift_of(answered(raw(item("calcium"), system={"salinity": None})), "salinity").start is None


def test_without_exchange_nothing_settles() -> None:
    q = read(raw(*TWO_PART))
    bare = UpkeepQuestion(q.now, q.system, q.items, q.others)
    assert (bare.exchange_fraction, bare.new_water, bare.outstanding) == (0.0, (), ())
    assert read(raw(*TWO_PART, exchange={"per_day": "0 L per day"})) == bare
    found = answered(bare)
    assert (found.salt.exchanged, found.salt.steady) == (None, None)
    assert all(d.exchanged is None and d.steady is None for d in found.drifts)


def test_limewater_gives_back_what_skeleton_takes_and_leaves_nothing() -> None:
    found = answered(raw(item("alkalinity", additive=limewater()), system={"evaporation": "4 L per day"}))
    assert found.pair.of_doses == pytest.approx(CALCIUM_PER_MEQ, rel=1e-12)
    assert all(abs(drift_of(found, name).gain) < 1e-5 for name in ("alkalinity", "calcium", "salinity"))
    assert found.salt.alone[2] < 0.01
    # 1.56 g of 74.092 g/mol in a litre are 0.0421 meq in a millilitre.
    assert found.doses[0].needed_ml_per_day == pytest.approx(USED * LITRES / (2.0 * 1.5601 / 74.092), rel=1e-3)


def test_limewater_and_calcium_chloride_share_the_calcium() -> None:
    found = answered(raw(item("alkalinity", additive=limewater()), item("calcium", "8 mg/L per day")))
    brought = USED * CALCIUM_PER_MEQ
    assert dose_of(found, "alkalinity").own_share == pytest.approx(1.0, rel=1e-9)
    assert dose_of(found, "calcium").own_share == pytest.approx(1.0 - brought / 8.0, rel=1e-6)
    own = (8.0 - brought) / per_ml("calcium chloride dihydrate", 147.0, "calcium")
    assert dose_of(found, "calcium").needed_ml_per_day == pytest.approx(own, rel=1e-6)


def test_what_others_bring_of_potassium_is_not_dosed_again() -> None:
    found = answered(raw(item("nitrate"), item("potassium")))
    nitrate = 0.5 / per_ml("potassium nitrate", 10.0, "nitrate")
    brought = 0.5 / NITRATE * POTASSIUM
    assert dose_of(found, "nitrate").needed_ml_per_day == pytest.approx(nitrate, rel=1e-9)
    assert dose_of(found, "potassium").needed_ml_per_day == pytest.approx(
        (1.0 - brought) / per_ml("potassium chloride", 20.0, "potassium"), rel=1e-9
    )
    assert drift_of(found, "potassium").gain == pytest.approx(0.0, abs=1e-6)


def test_two_additives_that_raise_both_values_are_solved_together() -> None:
    # Cramer's rule on two mixed jugs: one mostly nitrate, the other mostly potassium.
    first = jug("sodium nitrate", 10.0, also={"chemical": "potassium nitrate", "dissolved": "5 g"})
    second = jug("potassium chloride", 10.0, also={"chemical": "potassium nitrate", "dissolved": "2 g"})
    found = answered(
        raw(item("nitrate", "0.8 mg/L as NO3 per day", first), item("potassium", "1 mg/L per day", second))
    )
    a = per_ml("sodium nitrate", 10.0, "nitrate") + per_ml("potassium nitrate", 5.0, "nitrate")
    b = per_ml("potassium nitrate", 2.0, "nitrate")
    c = per_ml("potassium nitrate", 5.0, "potassium")
    d = per_ml("potassium chloride", 10.0, "potassium") + per_ml("potassium nitrate", 2.0, "potassium")
    size = a * d - b * c
    assert dose_of(found, "nitrate").needed_ml_per_day == pytest.approx((0.8 * d - b * 1.0) / size, rel=1e-9)
    assert dose_of(found, "potassium").needed_ml_per_day == pytest.approx((a * 1.0 - c * 0.8) / size, rel=1e-9)


def test_what_the_others_bring_in_full_needs_no_dose() -> None:
    use = f"{0.5 / NITRATE * POTASSIUM:.12f} mg/L per day"
    found = answered(raw(item("nitrate"), item("potassium", use)))
    potassium = dose_of(found, "potassium")
    assert (potassium.dose_ml, potassium.in_24_hours_ml, potassium.jug_days, potassium.empty_at) == (
        0.0,
        0.0,
        None,
        None,
    )
    assert remarks_of(found).count("upkeep_covered") == 1
    assert not any(limit.code.endswith("_potassium") and "pump" in limit.code for limit in found.limits)


def test_salt_that_a_two_part_leaves_is_not_dosed_again() -> None:
    lost = 0.1
    alone = dose_of(answered(raw(item("salinity"))), "salinity").needed_ml_per_day
    assert alone == pytest.approx(lost * SEAWATER * LITRES / 0.2, rel=1e-5)
    together = dose_of(answered(raw(item("salinity"), *TWO_PART)), "salinity").needed_ml_per_day
    assert alone - together == pytest.approx(COMMON_SALT * USED * LITRES / 1000.0 / 0.2, rel=1e-5)
    assert drift_of(answered(raw(item("salinity"), *TWO_PART)), "salinity").gain == pytest.approx(0.0, abs=1e-6)


def test_a_label_raises_what_it_says_and_nothing_else_of_its_kind() -> None:
    bottle = {"label": {"dose": "5 mL", "water": "100 L", "raises": "2 mg/L"}}
    found = answered(raw(item("calcium", "6.4 mg/L per day", bottle), item("magnesium")))
    assert dose_of(found, "calcium").needed_ml_per_day == pytest.approx(6.4 * LITRES / (2.0 * 100.0 / 5.0), rel=1e-12)
    alone = dose_of(answered(raw(item("magnesium"))), "magnesium").needed_ml_per_day
    assert dose_of(found, "magnesium").needed_ml_per_day == pytest.approx(alone, rel=1e-12)
    assert found.known is False
    assert "upkeep_bottle_unknown" in remarks_of(found)
    assert (dose_of(found, "calcium").jug_days, dose_of(found, "calcium").empty_at) == (None, None)
    assert answered(raw(item("magnesium"))).known is True


def test_sulfate_comes_with_magnesium_sulfate_and_chloride_with_the_chloride() -> None:
    found = answered(raw(item("magnesium", additive=jug("magnesium sulfate heptahydrate", 100.0))))
    assert drift_of(found, "sulfate").alone[1] == pytest.approx(SULFATE_PER_MAGNESIUM * 1.0 * MONTH, rel=1e-6)
    assert drift_of(found, "chloride").gain == 0.0
    other = answered(raw(item("magnesium")))
    assert drift_of(other, "chloride").gain == pytest.approx(2.0 * 35.45 / 24.305, rel=1e-6)
    assert drift_of(other, "sulfate").gain == 0.0


def test_nitrate_that_is_taken_up_leaves_alkalinity_where_none_is_kept() -> None:
    use = item("nitrate", additive=jug("sodium nitrate", 10.0))
    alone = answered(raw(use))
    assert drift_of(alone, "alkalinity").gain == pytest.approx(0.5 / NITRATE, rel=1e-5)
    # The animals' use of alkalinity is measured net of it.
    assert drift_of(answered(raw(use, *TWO_PART)), "alkalinity").gain == pytest.approx(0.0, abs=1e-6)
    assert alone.salt.alone[0] == pytest.approx(
        0.5 / NITRATE * (22.98977 + BICARBONATE) * 7.0 * LITRES / 1000.0, rel=1e-5
    )


def test_alkalinity_takes_calcium_with_it_also_where_none_is_dosed() -> None:
    found = answered(raw(item("alkalinity")))
    assert drift_of(found, "calcium").gain == pytest.approx(-USED * CALCIUM_PER_MEQ, rel=1e-6)
    falls = next(r for r in found.remarks if r.code == "upkeep_partner_falls")
    assert falls.params["parameter"] == "calcium"
    assert falls.params["falls"] == pytest.approx(6.432, abs=0.001)
    other = next(r for r in answered(raw(item("calcium"))).remarks if r.code == "upkeep_partner_falls")
    assert other.params["parameter"] == "alkalinity"
    assert other.params["falls"] == pytest.approx(6.4 / CALCIUM_PER_MEQ / MEQ_PER_DKH, rel=1e-6)
    assert "upkeep_partner_falls" not in remarks_of(answered(raw(*TWO_PART)))
    # With nitrate taken up besides, the skeleton took more than the net use.
    both = answered(raw(item("alkalinity"), item("nitrate")))
    assert drift_of(both, "calcium").gain == pytest.approx(-(USED + 0.5 / NITRATE) * CALCIUM_PER_MEQ, rel=1e-6)


def test_rounding_of_limewater_is_no_missing_partner() -> None:
    coarse = answered(raw(item("alkalinity", additive=limewater(), step="1 mL")))
    assert drift_of(coarse, "calcium").gain < 0.0
    assert "upkeep_partner_falls" not in remarks_of(coarse)


@pytest.mark.parametrize(("share", "said"), [(0.74, True), (0.76, False), (1.0, False), (1.24, False), (1.26, True)])
def test_a_use_far_off_the_ratio_of_skeleton_is_remarked_on(share: float, said: bool) -> None:
    found = answered(raw(item("alkalinity"), item("calcium", f"{share * USED * CALCIUM_PER_MEQ:.9f} mg/L per day")))
    assert found.pair.of_skeleton == pytest.approx(20.04, abs=0.002)
    assert found.pair.of_use == pytest.approx(share * CALCIUM_PER_MEQ, rel=1e-8)
    assert found.pair.of_doses == pytest.approx(share * CALCIUM_PER_MEQ, rel=1e-5)
    assert ("upkeep_ratio" in remarks_of(found)) == said


def test_the_ratio_is_known_only_where_both_are() -> None:
    assert answered(raw(item("alkalinity"))).pair.of_use is None
    assert answered(raw(item("calcium"))).pair.of_doses is None
    assert answered(raw(item("alkalinity"))).pair.of_doses == 0.0


def test_jugs_last_as_long_as_whole_doses_come_out_of_them() -> None:
    found = answered(raw(item("alkalinity", step="0.1 mL")))
    # 1000 mL over 2.2 mL are 454 whole doses, one each hour.
    assert found.doses[0].jug_days == pytest.approx(1000.0 / 52.8, rel=1e-12)
    assert found.doses[0].empty_at == NOW + timedelta(hours=454)
    exact = answered(raw(item("alkalinity", additive=jug("sodium carbonate anhydrous", 23.32, 0.22), step="0.1 mL")))
    assert exact.doses[0].empty_at == NOW + timedelta(hours=100)
    # A jug below one dose lasts until that is due; one that lasts for ten years has no date.
    small = answered(raw(item("alkalinity", additive=jug("sodium carbonate anhydrous", 0.106, 0.001), step="0.1 mL")))
    assert small.doses[0].empty_at == NOW + timedelta(hours=1)
    lasting = answered(raw(item("iodide", "0.0001 mg/L per day", jug("potassium iodide", 10.0), doses_per_day=1)))
    assert (lasting.doses[0].jug_days, lasting.doses[0].empty_at) == (None, None)


@pytest.mark.parametrize("chemical", known().chemicals)
def test_every_chemical_keeps_what_it_raises(chemical: str) -> None:
    raises = known().chemicals[chemical].raises
    if not raises:
        assert ask(raw(item("alkalinity", additive=jug(chemical, 20.0)))) == ("does_not_raise",)
        return
    weak = {"calcium hydroxide": 1.0, "sodium tetraborate decahydrate": 20.0, "potassium iodide": 0.1}
    additive = jug(chemical, weak.get(chemical, 30.0))
    for parameter in raises:
        found = answered(raw(item(parameter, additive=additive), system={"evaporation": "100 L per day"}))
        dose = dose_of(found, parameter)
        assert dose.needed_ml_per_day * per_ml(
            chemical, float(additive["dissolved"].split()[0]), parameter
        ) == pytest.approx(_used(parameter), rel=1e-5)
        assert drift_of(found, parameter).gain == pytest.approx(0.0, abs=1e-4 * _used(parameter))
        assert ("restricted" in remarks_of(found)) == (chemical == "sodium hydroxide")


def _used(parameter: str) -> float:
    """Return the ordinary use, salinity per litre of water [canonical unit per day]."""
    factor = {"alkalinity": MEQ_PER_DKH, "salinity": SEAWATER}.get(parameter, 1.0)
    return factor * float(item(parameter)["daily_use"].split()[0])


def test_all_nine_at_once() -> None:
    found = answered(raw(*(item(name) for name in JUGS)))
    assert len(found.doses) == 9
    assert all(abs(drift_of(found, name).gain) <= 1e-4 * _used(name) for name in JUGS)
    # Potassium comes with iodide, nitrate and phosphate too.
    brought = 0.5 / NITRATE + 0.01 / 94.971 + 0.002 / 126.904
    assert dose_of(found, "potassium").own_share == pytest.approx(1.0 - brought * POTASSIUM, rel=1e-5)


def test_the_question_is_read_like_a_correction() -> None:
    question = read(raw(
        item("alkalinity", "0.5 meq/L per day", measured="2,9 meq/L"),
        system={"net_volume": "100 US gal", "volume_known": "unknown", "evaporation": "1 US gal per day"},
        exchange={"per_day": "1 US gal per day", "nitrate": "2 mg/L as N"},
        planned=[{"parameter": "calcium", "rise_per_day": "10 mg/L per day", "days_left": "2,5", "doses_per_day": 12}],
    ))  # fmt: skip
    assert isinstance(question, UpkeepQuestion)
    assert (question.items[0].unit, question.items[0].value, question.items[0].use) == ("meq/L", 2.9, 0.5)
    assert question.system.volume_l == pytest.approx(378.541 * 0.75, rel=1e-5)
    assert question.exchange_fraction == pytest.approx(1.0 / 75.0, rel=1e-9)
    assert dict(question.new_water) == {"nitrate": pytest.approx(2.0 * 4.4268, rel=1e-4)}
    (planned,) = question.outstanding
    assert (planned.parameter.name, planned.rise, planned.days_left, planned.doses_per_day) == (
        "calcium",
        10.0,
        2.5,
        12,
    )
    assert question.items[0].pump.step_ml == float(FINE.split()[0])
    assert "low_end_volume" in remarks_of(answered(question))
