"""Which additives stand in the way of doses that make good all uses at once, reckoned by hand from the salts."""

from __future__ import annotations

import pytest

from evenwater.engine.upkeep import UpkeepAnswer
from tests.engine.upkeeps import MEQ_PER_DKH, NITRATE, POTASSIUM, ask, item, jug, limewater, per_ml, raw, refused


def test_which_additive_brings_too_much_is_said() -> None:
    question = raw(item("nitrate"), item("potassium", "0.2 mg/L per day"))
    (found,) = refused(question).reasons
    assert (found.code, found.path) == ("upkeep_brings_too_much", "item.1.additive.chemical")
    assert found.params == {
        "additive": "potassium nitrate", "for": "nitrate", "parameter": "potassium", "used": pytest.approx(0.2),
        "brought": pytest.approx(0.5 / NITRATE * POTASSIUM, rel=1e-9), "unit": "mg per L per day", "with_others": False,
    }  # fmt: skip
    # A jug of lime for calcium against soda ash for alkalinity, the other way round, in the keeper's unit.
    lime_first = raw(item("calcium", "9 mg/L per day", limewater()), item("alkalinity", "0.4 meq/L per day"))
    (found,) = refused(lime_first).reasons
    assert (found.params["additive"], found.params["parameter"]) == ("calcium hydroxide", "alkalinity")
    assert found.params["brought"] == pytest.approx(9.0 / 20.039 / MEQ_PER_DKH, rel=1e-6)
    assert found.params["unit"] == "dKH per day"


def test_several_that_bring_too_much_only_together_are_said_with_the_largest() -> None:
    nitrate, phosphate = 0.5 / NITRATE * POTASSIUM, 0.2 / 94.971 * POTASSIUM
    use = nitrate + 0.5 * phosphate
    question = raw(
        item("nitrate"), item("phosphate", "0.2 mg/L as PO4 per day", doses_per_day=96), item("potassium", f"{use:.9f} mg/L per day"),
    )  # fmt: skip
    (found,) = refused(question).reasons
    assert found.code == "upkeep_brings_too_much"
    assert (found.params["additive"], found.params["with_others"]) == ("potassium nitrate", True)
    assert found.params["brought"] == pytest.approx(nitrate + phosphate, rel=1e-5)


def test_salt_of_a_two_part_beyond_what_is_lost_is_said_net_of_what_skeleton_takes() -> None:
    question = raw(item("salinity", "0.01 ppt per day"), item("alkalinity"), item("calcium", "6.432 mg/L per day"))
    (found,) = refused(question).reasons
    assert found.params["parameter"] == "salinity"
    # 58.44 g for each equivalent.
    assert found.params["brought"] == pytest.approx(58.443 * 0.9 * MEQ_PER_DKH / 1000.0 / 1.02334, rel=1e-4)
    assert found.params["used"] == pytest.approx(0.01)


def test_additives_chosen_the_wrong_way_round_have_no_doses() -> None:
    # The jug for nitrate raises potassium more than the jug for potassium does, against their uses, and the other way round.
    for_nitrate = jug("potassium chloride", 10.0, also={"chemical": "sodium nitrate", "dissolved": "8 g"})
    for_potassium = jug("potassium nitrate", 10.0, also={"chemical": "sodium nitrate", "dissolved": "5 g"})
    a, b = (
        per_ml("sodium nitrate", 8.0, "nitrate"),
        per_ml("sodium nitrate", 5.0, "nitrate") + per_ml("potassium nitrate", 10.0, "nitrate"),
    )
    c, d = per_ml("potassium chloride", 10.0, "potassium"), per_ml("potassium nitrate", 10.0, "potassium")
    assert a * d < b * c
    ratio = 0.5 * (a / c + b / d)
    assert ratio > a / c
    # Between the two proportions there are doses, beyond the second none: the jug for nitrate alone falls short of potassium.
    assert isinstance(
        ask(
            raw(
                item("nitrate", f"{ratio:.6f} mg/L as NO3 per day", for_nitrate),
                item("potassium", "1 mg/L per day", for_potassium),
            )
        ),
        UpkeepAnswer,
    )
    beyond = raw(
        item("nitrate", f"{0.9 * a / c:.6f} mg/L as NO3 per day", for_nitrate),
        item("potassium", "1 mg/L per day", for_potassium),
    )
    (found,) = refused(beyond).reasons
    assert found.code == "upkeep_no_doses"
    assert found.params["parameters"] == ("nitrate", "potassium")
