"""What else a plan does, against figures reckoned here by hand.

Sources: arithmetic on CIAAW 2021 atomic weights (conventional values where CIAAW gives an interval) with 1 degree = 10 mg
CaO per litre; Ca(2+) + 2 HCO3(-) -> CaCO3 + CO2 + H2O; density of seawater by Millero and Poisson 1981, Deep-Sea Res. 28A,
625; alkalinity left by the uptake of nitrate and phosphate by Middelburg, Soetaert and Hagens 2020, Rev. Geophys. 58,
e2019RG000681, table 2.
"""

from __future__ import annotations

from dataclasses import astuple
from typing import Any

import pytest

from evenwater.engine.side_effects import MONTH_DAYS, YEAR_DAYS, Carried, SideEffects, side_effects
from tests.engine.asking import answered, worked

# CIAAW 2021 [g/mol].
NA, CL, CA, MG, K, S, B = 22.98976928, 35.45, 40.078, 24.305, 39.0983, 32.06, 10.81
HYDROGEN, C, N, OXYGEN, P = 1.008, 12.011, 14.007, 15.999, 30.973761998
NACL, HCO3, SO4 = NA + CL, HYDROGEN + C + 3 * OXYGEN, S + 4 * OXYGEN
NO3, PO4, WATER, BORIC_ACID = N + 3 * OXYGEN, P + 4 * OXYGEN, 2 * HYDROGEN + OXYGEN, B + 3 * (OXYGEN + HYDROGEN)
MEQ_PER_DKH = 20.0 / (CA + OXYGEN)
# Salinity 35 and 25 degC [kg/L].
DENSITY = 1.023343
MONTH = 30.4375


def asked(parameter: str, low: str, high: str, use: str | None, chemical: str, dissolved: str, **more: Any) -> Any:
    """Return the plan for a stock of one litre that raises a value in 340 L."""
    return answered(
        worked(
            change__parameter=parameter,
            change__measured=low,
            change__target=high,
            change__daily_use=use,
            change__fastest_rise=None,
            additive__chemical=chemical,
            additive__dissolved=dissolved,
            system__salinity="35",
            system__temperature="25 degC",
            **more,
        )
    )


def effects(*question: Any, **more: Any) -> SideEffects:
    """Return what else the plan does."""
    return side_effects(asked(*question, **more))


def by_name(carried: tuple[Carried, ...]) -> dict[str, float]:
    """Return the amounts by name."""
    found = {item.name: item.amount for item in carried}
    assert len(found) == len(carried)
    return found


TWO_PARTS = {
    "sodium carbonate anhydrous": ("alkalinity", "100 g"),
    "sodium carbonate monohydrate": ("alkalinity", "100 g"),
    "sodium carbonate decahydrate": ("alkalinity", "250 g"),
    "sodium bicarbonate": ("alkalinity", "70 g"),
    "sodium hydroxide": ("alkalinity", "40 g"),
    "calcium chloride anhydrous": ("calcium", "110 g"),
    "calcium chloride dihydrate": ("calcium", "147 g"),
    "calcium chloride hexahydrate": ("calcium", "219 g"),
}


@pytest.mark.parametrize("chemical", TWO_PARTS)
def test_every_equivalent_made_good_leaves_one_mole_of_sodium_chloride(chemical: str) -> None:
    parameter, grams = TWO_PARTS[chemical]
    low, high, use = ("2.5 meq/L", "2.9 meq/L", "0.2 meq/L per day")
    if parameter == "calcium":
        low, high, use = ("400 mg/L", "420 mg/L", f"{0.2 * CA / 2} mg/L per day")
    found = effects(parameter, low, high, use, chemical, grams)
    assert found.month is not None
    equivalents = 0.2 * MONTH_DAYS * 340.0 / 1000.0
    # 58.4398 g per mole, to 0.006: CIAAW 2021.
    assert found.month.salt_g == pytest.approx(58.4398 * equivalents, rel=0.006 / 58.4398)
    assert found.month.only_nacl
    stays = by_name(found.month.stays)
    assert stays["sodium"] == pytest.approx(NA * 0.2 * MONTH, rel=1e-6)
    assert stays["chloride"] == pytest.approx(CL * 0.2 * MONTH, rel=1e-6)
    assert found.partner == {"alkalinity": "calcium", "calcium": "alkalinity"}[parameter]


def test_salinity_of_a_month_at_one_milliequivalent_a_day_by_hand() -> None:
    # 30.4375 meq per L leave 30.4375 * 58.44 mg = 1778.8 mg per L, and 1.0233 kg of seawater are in a litre.
    found = effects(
        "alkalinity", "2.5 meq/L", "2.7 meq/L", "1 meq/L per day", "sodium carbonate anhydrous", "106 g",
        pump__doses_per_day=48,
    )  # fmt: skip
    assert found.month is not None
    assert found.year is not None
    assert found.month.salinity == pytest.approx(1.7382, abs=2e-4)
    assert found.month.salinity == pytest.approx(MONTH * NACL / 1000.0 / DENSITY, rel=2e-5)
    assert found.year.salinity == pytest.approx(365.25 * NACL / 1000.0 / DENSITY, rel=2e-5)
    assert (MONTH_DAYS, YEAR_DAYS) == (MONTH, 365.25)
    # 106 g of sodium carbonate carry 2.00024 meq per mL.
    assert found.month.water_l == pytest.approx(MONTH * 340.0 / 2.00024 / 1000.0, rel=1e-5)


def test_limewater_leaves_nothing_behind() -> None:
    for parameter, low, high, use in (
        ("alkalinity", "2.5 meq/L", "2.6 meq/L", "0.05 meq/L per day"),
        ("calcium", "400 mg/L", "402 mg/L", "1 mg/L per day"),
    ):
        found = effects(
            parameter, low, high, use, "calcium hydroxide", "1.4 g", additive__made_up_to="1 L", pump__flow="80 mL/min"
        )
        assert found.month is not None
        assert found.month.stays == ()
        assert (found.month.salinity, found.month.salt_g, found.partner) == (0.0, 0.0, "")
        assert found.month.water_l > 0.0


def test_what_the_worked_example_carries_in() -> None:
    found = side_effects(answered(worked()))
    litres = 340.0
    moles = 0.1833 * 106.0 / (2 * NA + C + 3 * OXYGEN)
    carried = by_name(found.correction.carried)
    assert carried == pytest.approx(
        {"sodium": 2000.0 * moles * NA / litres, "dissolved inorganic carbon": 1000.0 * moles / litres}, rel=1e-6
    )
    assert {item.name: item.unit for item in found.correction.carried} == {
        "sodium": "mg/L",
        "dissolved inorganic carbon": "mmol/L",
    }
    assert found.correction.water_l == pytest.approx(0.1833, rel=1e-12)
    # 39 doses an hour apart; 0.9 dKH per day of their alkalinity is used, the rest is there as bicarbonate.
    kept = 2000.0 * moles / litres - 0.9 * MEQ_PER_DKH * 39.0 / 24.0
    salt = 2000.0 * moles * NA / litres + kept * HCO3
    assert found.correction.salinity == pytest.approx(salt / 1000.0 / DENSITY, rel=2e-5)


def test_calcium_and_alkalinity_are_used_together() -> None:
    found = side_effects(answered(worked())).pair
    assert found is not None
    # 20.04 mg per meq and 7.147 mg per degree: Ca2+ + 2 HCO3- -> CaCO3 + CO2 + H2O.
    assert found.calcium_per_meq == pytest.approx(20.039, abs=0.004)
    assert found.calcium_per_day == pytest.approx(0.9 * 7.146959, abs=0.001)
    assert found.alkalinity_per_day == pytest.approx(0.9 * MEQ_PER_DKH, rel=1e-6)
    other = effects(
        "calcium", "400 mg/L", "420 mg/L", "6.4323 mg/L per day", "calcium chloride dihydrate", "147 g"
    ).pair
    assert other is not None
    assert other.alkalinity_per_day == pytest.approx(0.9 * MEQ_PER_DKH, rel=1e-4)
    assert other.calcium_per_day == pytest.approx(6.4323, rel=1e-12)


def test_sulfate_and_chloride_drift_with_magnesium() -> None:
    found = effects(
        "magnesium", "1250 mg/L", "1300 mg/L", "1 mg/L per day", "magnesium chloride hexahydrate", "100 g",
        additive__also={"chemical": "magnesium sulfate heptahydrate", "dissolved": "100 g"},
    )  # fmt: skip
    assert found.month is not None
    chloride, sulfate = 100.0 / (MG + 2 * CL + 6 * WATER), 100.0 / (MG + SO4 + 7 * WATER)
    of_magnesium = MONTH / MG / (chloride + sulfate)
    assert by_name(found.month.stays) == pytest.approx(
        {"chloride": 2 * chloride * of_magnesium * CL, "sulfate": sulfate * of_magnesium * SO4}, rel=1e-6
    )
    assert found.month.salinity == pytest.approx(sum(by_name(found.month.stays).values()) / 1000.0 / DENSITY, rel=2e-5)
    assert (found.partner, found.pair, found.month.only_nacl) == ("", None, False)


@pytest.mark.parametrize(
    ("chemical", "along", "weight", "parameter", "mass"),
    [
        ("potassium nitrate", "potassium", K, "nitrate", NO3),
        ("sodium nitrate", "sodium", NA, "nitrate", NO3),
        ("potassium dihydrogen phosphate", "potassium", K, "phosphate", PO4),
    ],
)
def test_a_nutrient_leaves_its_cation_and_alkalinity(
    chemical: str, along: str, weight: float, parameter: str, mass: float
) -> None:
    unit = {"nitrate": "mg/L as NO3", "phosphate": "mg/L as PO4"}[parameter]
    low, high, use, grams = {
        "nitrate": (1.0, 4.0, 0.5, "10 g"),
        "phosphate": (0.02, 0.06, 0.005, "0.2 g"),
    }[parameter]
    plan = asked(parameter, f"{low} {unit}", f"{high} {unit}", f"{use} {unit} per day", chemical, grams)
    found = side_effects(plan)
    # Of what the correction gives, so much is used by its end; phosphate that is left is H2PO4 without alkalinity.
    given, used = (amount / mass for amount in (plan.doses.total_ml * plan.per_ml, use * plan.doses.lasts_days))
    kept = mass + (2 * HYDROGEN if parameter == "phosphate" else 0.0)
    salt = given * weight + (given - used) * kept + used * HCO3
    assert found.correction.salinity == pytest.approx(salt / 1000.0 / DENSITY, rel=2e-5)
    assert found.month is not None
    moles = use * MONTH / mass
    assert by_name(found.month.stays) == pytest.approx({along: moles * weight, "alkalinity": moles}, rel=1e-6)
    assert found.month.salinity == pytest.approx(moles * (weight + HCO3) / 1000.0 / DENSITY, rel=2e-5)


def test_boron_stays_of_borax() -> None:
    found = effects(
        "alkalinity", "2.5 meq/L", "2.6 meq/L", "0.05 meq/L per day", "sodium tetraborate decahydrate", "20 g"
    )
    assert found.month is not None
    used = 0.05 * MONTH
    # Two equivalents bring two sodium and four boron; calcium chloride makes good the calcium.
    assert by_name(found.month.stays) == pytest.approx(
        {"sodium": used * NA, "boron": 2 * used * B, "chloride": used * CL}, rel=1e-6
    )
    assert found.month.salt_g == pytest.approx(340.0 / 1000.0 * used * (NACL + 2 * BORIC_ACID), rel=1e-6)
    assert not found.month.only_nacl


def test_common_salt_raises_salinity_by_what_was_asked_and_leaves_nothing_of_its_upkeep() -> None:
    plan = asked("salinity", "33 ppt", "35 ppt", "0.1 ppt per day", "sodium chloride", "250 g", pump__flow="200 mL/min")
    found = side_effects(plan)
    q = plan.question
    assert found.correction.salinity == pytest.approx(q.target - plan.doses.shortfall - q.measured, rel=1e-9)
    carried = by_name(found.correction.carried)
    assert carried["sodium"] / carried["chloride"] == pytest.approx(NA / CL, rel=1e-6)
    assert found.month is not None
    assert (found.month.stays, found.month.salinity) == ((), 0.0)


def test_without_use_there_is_no_upkeep() -> None:
    found = side_effects(answered(worked(change__daily_use=None)))
    assert (found.month, found.year, found.partner) == (None, None, "")
    assert found.pair is not None
    assert (found.pair.calcium_per_day, found.pair.alkalinity_per_day) == (0.0, 0.0)


def test_of_a_bottle_nothing_is_invented() -> None:
    label = {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}
    raw = worked(system__ph="8.1")
    raw["additive"] = {"label": label}
    found = side_effects(answered(raw))
    assert not found.known
    assert (found.correction.carried, found.correction.salinity) == ((), None)
    assert found.month is not None
    assert (found.month.stays, found.month.salinity, found.month.salt_g, found.partner) == ((), None, None, "")
    # 5 mL raise 340 L by 100 / 340 dKH.
    assert found.month.water_l == pytest.approx(0.9 * MONTH * 340.0 / 100.0 * 5.0 / 1000.0, rel=1e-9)
    assert found.pair is not None
    assert found.pair.calcium_per_day == pytest.approx(0.9 * 7.146959, abs=0.001)
    assert found.way is not None
    assert (found.way.after_dose, found.way.after_dose_there) == (None, None)
    # With gas exchange caught up alkalinity alone decides: as with soda ash.
    same = side_effects(answered(worked(system__ph="8.1"))).way
    assert same is not None
    assert found.way.at_target is not None
    assert same.at_target is not None
    assert astuple(found.way.now) == pytest.approx(astuple(same.now), rel=1e-12)
    assert astuple(found.way.at_target) == pytest.approx(astuple(same.at_target), rel=1e-9)


def test_a_bottle_of_calcium_says_nothing_about_the_target() -> None:
    raw = worked(change__parameter="calcium", change__measured="400 mg/L", change__target="420 mg/L",
                 change__daily_use=None, change__fastest_rise=None, system__ph="8.1")  # fmt: skip
    raw["additive"] = {"label": {"dose": "5 mL", "water": "100 L", "raises": "2 mg/L"}}
    way = side_effects(answered(raw)).way
    assert way is not None
    assert (way.after_dose, way.at_target, way.after_dose_there) == (None, None, None)
    assert way.now.ph == pytest.approx(8.1, abs=1e-9)


@pytest.mark.parametrize(
    ("chemical", "grams", "carbon_per_meq"),
    [
        ("sodium carbonate anhydrous", "106 g", 0.5),
        ("sodium bicarbonate", "70 g", 1.0),
        ("sodium hydroxide", "40 g", 0.0),
    ],
)
def test_chemistry_along_the_way(chemical: str, grams: str, carbon_per_meq: float) -> None:
    plan = asked(
        "alkalinity", "2.4 meq/L", "2.6 meq/L", "0.1 meq/L per day", chemical, grams, system__ph="8.1",
        system__calcium="410 mg/L",
    )  # fmt: skip
    way = side_effects(plan).way
    assert way is not None
    assert (way.ph_known, way.calcium_known, way.alkalinity_known, way.doses_at_once) == (True, True, True, 1)
    assert way.after_dose is not None
    assert way.at_target is not None
    assert way.after_dose_there is not None
    assert way.now.ph == pytest.approx(8.1, abs=1e-9)
    raised = plan.doses.dose_ml * plan.per_ml
    for before, after in ((way.now, way.after_dose), (way.at_target, way.after_dose_there)):
        assert after.dic - before.dic == pytest.approx(carbon_per_meq * raised, abs=1e-9)
        assert (after.ph > before.ph) == (carbon_per_meq < 1.0)
        assert after.saturation > before.saturation
    assert way.at_target.saturation > way.now.saturation
    assert way.at_target.dic > way.now.dic
    assert way.at_target.ph > way.now.ph


def test_what_was_not_measured_is_said() -> None:
    way = effects("calcium", "400 mg/L", "420 mg/L", None, "calcium chloride dihydrate", "147 g").way
    assert way is not None
    assert (way.ph_known, way.calcium_known, way.alkalinity_known) == (False, True, False)
    assert side_effects(asked("potassium", "380 mg/L", "390 mg/L", None, "potassium chloride", "50 g")).way is None


def test_all_doses_of_the_fullest_hour_count_at_once() -> None:
    plan = answered(worked(system__ph="8.1", pump__doses_per_day=96))
    way = side_effects(plan).way
    assert way is not None
    assert way.after_dose is not None
    assert way.doses_at_once == 4
    assert way.after_dose.dic - way.now.dic == pytest.approx(4 * plan.doses.dose_ml * plan.per_ml / 2.0, abs=1e-9)
