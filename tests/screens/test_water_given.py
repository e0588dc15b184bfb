"""The one record of the exchange and its new water, as every question kind takes it."""

from __future__ import annotations

import math

import pytest

from evenwater.engine import exchange_intake, recovery_intake
from evenwater.engine.exchange_question import ExchangeQuestion
from evenwater.engine.quantities import Typed
from evenwater.engine.recovery_question import RecoveryQuestion
from evenwater.screens import water_given
from evenwater.screens.water_given import AS_MUCH_AS, BOTH, EACH
from tests.engine.asking import NOW, known
from tests.screens.lint import faults

SYSTEM = {
    "net_volume": Typed("340", "L"), "salinity": Typed("35", "ppt"), "exchanged": Typed("10", "L per day"),
}  # fmt: skip
BATCH = {"way": Typed(AS_MUCH_AS), "as_much_as": Typed("20", "%"), "every_days": Typed("7")}
PAIR = {"way": Typed(EACH), "out": Typed("10", "L per day"), "in": Typed("9.8", "L per day")}
NEW = {"salinity": Typed("34", "ppt"), "alkalinity": Typed("8", "dKH"), "calcium": Typed("410", "mg/L")}
BAG = {
    "mix_volume": Typed("80", "L"), "label_mass": Typed("38", "g"), "label_water": Typed("1", "L"),
    "label_salinity": Typed("35", "ppt"), "mix_measured": Typed("34.6", "ppt"),
}  # fmt: skip
PER_DAY_OF_BATCH = -math.log(0.8) * 340.0 / 7.0


def test_nothing_said_is_no_table() -> None:
    assert water_given.tables({}, {}) == {}
    assert water_given.exchanged_per_day({}, {}, 340.0) is None
    assert water_given.for_upkeep({}, NEW, 340.0, known()) == {}
    assert water_given.loss({}, "nitrate") is None


@pytest.mark.parametrize(
    ("water", "exchange"),
    [
        ({}, {"per_day": SYSTEM["exchanged"]}),
        (BATCH, {"as_much_as": BATCH["as_much_as"], "every_days": BATCH["every_days"]}),
        (PAIR, {"out": PAIR["out"], "in": PAIR["in"]}),
        ({"way": Typed("of old")}, {"per_day": SYSTEM["exchanged"]}),
    ],
)
def test_only_the_fields_of_the_way_count(water: dict[str, Typed], exchange: dict[str, Typed]) -> None:
    """What stands in the fields of another way stays in the record and is no part of the question."""
    left_over = {**BATCH, **PAIR, **water, "way": water.get("way", Typed(""))}
    assert water_given.tables(SYSTEM, left_over)["exchange"] == exchange
    jugs = {"days": Typed("14"), "old_jug": Typed("60", "L"), "new_jug": Typed("60", "L")}
    assert water_given.tables(SYSTEM, left_over | jugs)["exchange"] == exchange | jugs


def test_new_water_and_bucket_are_tables_of_their_own() -> None:
    losses = {"nitrate_loss": Typed("1", "%"), "phosphate_loss": Typed(" ")}
    said = water_given.tables(
        SYSTEM, {**PAIR, **NEW, **BAG, **losses, "temperature": Typed("24", "degC"), "iodide": Typed("")}
    )
    assert said["new_water"] == {**NEW, "temperature": Typed("24", "degC")}
    assert said["mixing"] == {
        "volume": BAG["mix_volume"], "label_mass": BAG["label_mass"], "label_water": BAG["label_water"],
        "label_salinity": BAG["label_salinity"], "measured": BAG["mix_measured"],
    }  # fmt: skip
    assert water_given.loss({**losses}, "nitrate") == Typed("1", "%")
    assert water_given.loss({**losses}, "phosphate") is None
    assert water_given.loss({"calcium_loss": Typed("1", "%")}, "calcium") is None


def test_the_tables_are_those_of_the_questions() -> None:
    said = water_given.tables(SYSTEM, {**PAIR, **NEW, **BAG})
    value = {"parameter": "alkalinity", "now": "9 dKH", "new_water": said["new_water"]["alkalinity"]}
    found = exchange_intake.exchange({"system": SYSTEM, **said, "value": [value]}, known())
    assert isinstance(found, ExchangeQuestion), found
    assert (found.pair.out_l, found.pair.in_l, found.new_salinity) == (10.0, 9.8, 34.0)
    assert found.mixing is not None
    assert found.mixing.measured == 34.6
    change = {"parameter": "alkalinity", "measured": "13 dKH"}
    overdone = recovery_intake.recovery(
        {"system": SYSTEM, "new_water": said["new_water"], "change": change}, known(), NOW
    )
    assert isinstance(overdone, RecoveryQuestion), overdone
    assert overdone.new_water["calcium"] == 410.0
    assert overdone.new_water["salinity"] == 34.0


def test_one_figure_for_upkeep_in_every_way() -> None:
    assert water_given.exchanged_per_day(SYSTEM, {}, 340.0) == SYSTEM["exchanged"]
    assert water_given.exchanged_per_day(SYSTEM, PAIR, 340.0) == PAIR["out"]
    found = water_given.exchanged_per_day(SYSTEM, BATCH, 340.0)
    assert found is not None
    assert found.unit == "L per day"
    assert float(found.text) == pytest.approx(PER_DAY_OF_BATCH, rel=1e-8)
    weekly = water_given.exchanged_per_day(SYSTEM, {**BATCH, "every_days": Typed("")}, 340.0)
    assert weekly == found, "a week where nobody says it"


@pytest.mark.parametrize(
    ("water", "volume"),
    [
        (BATCH, None), ({**BATCH, "as_much_as": Typed("twenty")}, 340.0), ({**BATCH, "as_much_as": Typed("100", "%")}, 340.0),
        ({**BATCH, "every_days": Typed("0")}, 340.0), ({"way": Typed(EACH), "in": PAIR["in"]}, 340.0),
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_no_figure_and_is_said(water: dict[str, Typed], volume: float | None) -> None:
    assert water_given.exchanged_per_day(SYSTEM, water, volume) is None
    assert "does not say yet" in water_given.said_elsewhere(SYSTEM, water, volume)


def test_upkeep_has_the_new_water_of_the_same_record() -> None:
    said = water_given.for_upkeep(SYSTEM, {**NEW, "temperature": Typed("24", "degC")}, 340.0, known())
    assert said == {"per_day": SYSTEM["exchanged"], **NEW}


def test_a_pair_that_is_not_alike_settles_for_upkeep_where_it_does_with_both_pumps() -> None:
    """Upkeep has one flow: with Q_out and the new water times Q_in/Q_out, Q_in*C_new and Q_out*C are both as they are."""
    said = water_given.for_upkeep(SYSTEM, {**PAIR, **NEW}, 340.0, known())
    assert said["per_day"] == PAIR["out"]
    assert float(said["alkalinity"].text) == pytest.approx(8.0 * 0.98)
    assert said["alkalinity"].unit == "dKH"
    assert float(said["salinity"].text) == pytest.approx(34.0 * 0.98)
    natural = known().parameters["magnesium"].natural
    assert float(said["magnesium"].text) == pytest.approx(natural * 0.98), "natural seawater is thinned as well"
    wrong = water_given.for_upkeep(SYSTEM, {**PAIR, "calcium": Typed("much", "mg/L")}, 340.0, known())
    assert wrong["calcium"] == Typed("much", "mg/L"), "kept, so that it is refused and not passed over"


def test_ratio_is_one_where_both_are_alike_or_unread() -> None:
    assert water_given.in_over_out(PAIR) == pytest.approx(0.98)
    assert water_given.in_over_out({**PAIR, "way": Typed(BOTH)}) == 1.0
    assert water_given.in_over_out({**PAIR, "out": Typed("0", "L per day")}) == 1.0
    assert water_given.in_over_out({**PAIR, "in": Typed("0", "L per day")}) == 0.0


def test_upkeep_is_told_what_stands_elsewhere() -> None:
    assert water_given.said_elsewhere(SYSTEM, {}, 340.0) == ""
    pair = water_given.said_elsewhere(SYSTEM, PAIR, 340.0)
    assert "10\u00a0L" in pair
    assert "9.8\u00a0L" in pair
    batch = water_given.said_elsewhere(SYSTEM, BATCH, 340.0)
    assert "10.8\u00a0L" in batch
    assert not [fault for text in (pair, batch) for fault in faults(text)]
