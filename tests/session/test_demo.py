"""The invented fish room: it loads, its units differ, and every plan in it is a safe one."""

from __future__ import annotations

import math
import tomllib
from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine import catalogue, correction, fields, intake
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Ok, read
from evenwater.engine.reasons import Reason
from evenwater.screens import water_given
from evenwater.session import Document
from evenwater.session.demo import demo_records, fill_from, fresh_ids
from evenwater.store import Store
from tests.session.listening import Listener

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
DEMO = resources() / "demo.toml"


@pytest.fixture
def room(qapp: object) -> Iterator[Document]:
    document = Document(Store.open_memory())
    assert fill_from(document, DEMO, NOW)
    yield document
    document.close()


def _question(room: Document, record_id: str) -> dict[str, Any]:
    """Put a correction together as the window does."""
    change = dict(room.values(record_id))
    batch = dict(room.values(room.batch_in_use(change["stock"].text)))
    labelled = {name: batch.pop(f"label_{name}") for name in ("dose", "water", "raises") if f"label_{name}" in batch}
    additive = {**batch, "label": labelled} if labelled else batch
    return {
        "system": room.values(record_id.partition(":")[0]),
        "change": change,
        "additive": additive,
        "pump": room.values(change["pump"].text),
    }


def test_three_systems_in_three_units_of_volume(room: Document) -> None:
    volumes = [room.value(system, "net_volume") for system in room.records("system")]
    assert volumes == [Typed("340", "L"), Typed("90", "US gal"), Typed("45", "imperial gal")]


def test_every_system_has_an_alkalinity_correction_and_there_are_drafts_of_others(room: Document) -> None:
    parameters = [room.value(record, "parameter").text for record in room.records("correction")]
    assert parameters.count("alkalinity") == 3
    assert {"calcium", "nitrate"} < set(parameters)
    for system in room.records("system"):
        assert room.value(f"{system}:alkalinity", "target") == Typed("8.4", "dKH")


def _named(room: Document, name: str) -> str:
    (found,) = [stock for stock in room.records("stock") if room.value(stock, "name").text == name]
    return found


def test_a_stock_is_only_a_place_on_the_shelf_with_something_in_it(room: Document) -> None:
    assert len(room.records("stock")) == 8
    for stock in room.records("stock"):
        # How it stands and how well its level is read belong to the place; what is in it belongs to its batch.
        assert set(room.values(stock)) - {"level_accuracy", "outlet_above_water", "jug_below_outlet"} == {"name"}
        assert room.batch_in_use(stock) == room.batches(stock)[-1]
    assert len(room.records("batch")) == 9


def test_levels_were_read_of_two_jugs_after_their_batch_was_put_in_use(room: Document) -> None:
    levels = room.records("level")
    assert len(levels) == 5
    for level in levels:
        stock = level.partition(":")[0]
        assert room.value(level, "at").text >= room.value(room.batch_in_use(stock), "in_use_from").text
    assert {room.value(level.partition(":")[0], "name").text for level in levels} == {
        "Calcium, clear jug", "Nitrate, brown bottle",
    }  # fmt: skip


def test_one_stock_is_known_by_its_label_only(room: Document) -> None:
    labelled = [b for b in room.records("batch") if room.value(b, "label_dose").text]
    assert len(labelled) == 1
    assert room.value(labelled[0], "chemical") == Typed("")
    assert all(room.value(b, "chemical").text for b in room.records("batch") if b not in labelled)


def test_the_soda_ash_was_mixed_weaker_before(room: Document) -> None:
    used_up, present = room.batches(_named(room, "Soda ash, white jug"))
    assert room.value(used_up, "dissolved") == Typed("100", "g")
    assert room.value(present, "dissolved") == Typed("106", "g")
    assert room.value(present, "made_up_to") == Typed("1", "L")
    assert room.batch_in_use(_named(room, "Soda ash, white jug")) == present


def test_the_magnesium_mix_has_the_sulfate_of_seawater(room: Document) -> None:
    batch = room.values(room.batch_in_use(_named(room, "Magnesium, tall jug")))
    assert batch["dissolved"].unit == batch["also_dissolved"].unit == "g"
    data = catalogue.load(resources())
    chloride, sulfate = (data.chemicals[batch[name].text].formula for name in ("chemical", "also_chemical"))
    of_chloride = float(batch["dissolved"].text) / molar_mass(chloride)
    of_sulfate = float(batch["also_dissolved"].text) / molar_mass(sulfate)
    # Amounts in reference seawater [mol/kg]: Millero, Feistel, Wright and McDougall 2008, Deep-Sea Research I 55, 50.
    assert of_sulfate / (of_chloride + of_sulfate) == pytest.approx(0.0282352 / 0.0528171, rel=1e-4)


def test_the_limewater_is_saturated_and_nothing_was_weighed(room: Document) -> None:
    batch = room.values(room.batch_in_use(_named(room, "Limewater, grey barrel")))
    assert (batch["saturated"], batch["chemical"]) == (Typed("yes"), Typed("calcium hydroxide"))
    assert batch["made_up_to"] == Typed("20", "L")
    assert "dissolved" not in batch


def test_two_systems_say_what_evaporates(room: Document) -> None:
    evaporation = [room.value(system, "evaporation") for system in room.records("system")]
    assert evaporation == [Typed("4", "L per day"), Typed("1.2", "US gal per day"), Typed("")]
    for typed in evaporation[:2]:
        assert isinstance(read(typed.text, fields.EVAPORATION, typed.unit), Ok)


def test_every_field_of_a_batch_is_one_that_batches_have(room: Document) -> None:
    known = {
        "chemical", "dissolved", "made_up_to", "purity", "also_chemical", "also_dissolved", "saturated", "mixed_on",
        "mixed_by", "use_by", "label_dose", "label_water", "label_raises", "in_use_from",
    }  # fmt: skip
    assert {field for batch in room.records("batch") for field in room.values(batch)} == known


def test_every_correction_is_answered_and_its_second_opinion_agrees(room: Document) -> None:
    data = catalogue.load(resources())
    corrections = room.records("correction")
    assert len(corrections) == 7
    for record_id in corrections:
        question = intake.correction(_question(room, record_id), data, NOW)
        assert not isinstance(question, intake.Unread), (record_id, question)
        answer = correction.solve(question)
        assert not isinstance(answer, correction.Refused), (question.system.name, question.parameter.name, answer)


def test_ages_are_counted_back_from_when_the_demonstration_starts(room: Document) -> None:
    north = room.records("system")[0]
    assert datetime.fromisoformat(room.value(f"{north}:alkalinity", "measured_at").text) == NOW - timedelta(hours=1)
    used_up, present = (room.values(batch) for batch in room.batches(room.records("stock")[0]))
    assert (used_up["mixed_on"], used_up["use_by"]) == (Typed("2026-10-23"), Typed("2027-01-21"))
    assert (present["mixed_on"], present["use_by"]) == (Typed("2026-11-21"), Typed("2027-02-19"))
    assert datetime.fromisoformat(used_up["in_use_from"].text) == NOW - timedelta(days=33)
    assert datetime.fromisoformat(present["in_use_from"].text) == NOW - timedelta(days=4)


def test_nothing_on_the_shelf_is_past_its_date(room: Document) -> None:
    for batch in room.records("batch"):
        assert date.fromisoformat(room.value(batch, "use_by").text) > NOW.date()
        assert datetime.fromisoformat(room.value(batch, "in_use_from").text) < NOW


def test_loading_it_leaves_nothing_to_undo(room: Document) -> None:
    assert room.undo_text() is None
    assert not room.undo()
    assert len(room.records("system")) == 3


def test_it_fills_only_an_empty_document(room: Document) -> None:
    heard = Listener(room)
    assert not fill_from(room, DEMO, NOW)
    assert heard.take("failed") == [Reason("store.not_empty", {"file": ":memory:"})]
    assert len(room.records("system")) == 3


@pytest.mark.parametrize("table", ["correction", "batch"])
def test_what_points_nowhere_is_an_error(table: str) -> None:
    room = tomllib.loads(DEMO.read_text(encoding="utf-8"))
    room[table][0]["stock"] = "no such jug"
    with pytest.raises(KeyError, match="no such jug"):
        list(demo_records(room, NOW, fresh_ids(room)))


def test_eight_pumps_of_which_three_were_calibrated_over_the_last_year(room: Document) -> None:
    pumps = room.records("pump")
    assert len(pumps) == 8
    by_pump = {pump: [c for c in room.records("calibration") if c.startswith(f"{pump}:")] for pump in pumps}
    assert sorted(map(len, by_pump.values())) == [0, 0, 0, 0, 0, 2, 3, 4]
    for pump, calibrations in by_pump.items():
        fitted = date.fromisoformat(room.value(pump, "head_fitted").text)
        instants = [datetime.fromisoformat(room.value(c, "at").text) for c in calibrations]
        hours = [float(room.value(c, "hours").text) for c in calibrations]
        assert instants == sorted(instants)
        assert hours == sorted(hours)
        assert all(fitted <= at.date() < NOW.date() for at in instants)
        assert all(NOW - at < timedelta(days=366) for at in instants)


def test_a_calibration_of_no_pump_is_an_error() -> None:
    room = tomllib.loads(DEMO.read_text(encoding="utf-8"))
    room["calibration"][0]["pump"] = "no such pump"
    with pytest.raises(KeyError, match="no such pump"):
        list(demo_records(room, NOW, fresh_ids(room)))


def test_no_pump_is_to_draw_from_two_jugs_or_to_dose_into_two_waters(room: Document) -> None:
    chosen = [
        (room.value(record, "pump").text, record.partition(":")[0], room.value(record, "stock").text)
        for record in room.records("correction")
    ]
    assert len(set(chosen)) == len({pump for pump, _, _ in chosen})


def test_the_north_bay_is_fed_and_what_it_is_fed_is_still_good(room: Document) -> None:
    foods = room.records("food")
    assert [room.value(food, "name").text for food in foods] == ["Rotifer mash, cold box", "Amino acids, small bottle"]
    assert {room.value(food.partition(":")[0], "name").text for food in foods} == {"North frag bay"}
    for food in foods:
        opened = date.fromisoformat(room.value(food, "opened_on").text)
        assert opened < NOW.date() < opened + timedelta(days=int(room.value(food, "keeps_days").text))


def test_two_systems_exchange_water_all_day_and_one_does_not(room: Document) -> None:
    """One by a figure for each pump, one by the batch change it equals; the new water can be read in every unit it was typed in."""
    north, anemones, quarantine = room.records("system")
    assert set(room.records("water")) == {f"{north}:water", f"{anemones}:water"}
    said = water_given.tables(room.values(north), room.values(f"{north}:water"))
    assert said["exchange"]["in"] == Typed("9.9", "L per day")
    assert said["mixing"]["measured"] == Typed("34.6", "ppt")
    assert water_given.for_upkeep(room.values(quarantine), {}, 200.0, catalogue.load(resources())) == {}
    weekly = water_given.exchanged_per_day(room.values(anemones), room.values(f"{anemones}:water"), 100.0)
    assert weekly is not None
    assert float(weekly.text) == pytest.approx(-100.0 * math.log(0.8) / 7.0)
