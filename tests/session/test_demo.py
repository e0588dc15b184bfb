"""The invented fish room: it loads, its units differ, and every plan in it is a safe one."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine import catalogue, correction, intake
from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Document
from evenwater.session.demo import demo_records, fill_from
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
    stock = dict(room.values(change["stock"].text))
    labelled = {name: stock.pop(f"label_{name}") for name in ("dose", "water", "raises") if f"label_{name}" in stock}
    additive = {**stock, "label": labelled} if labelled else stock
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


def test_one_stock_is_known_by_its_label_only(room: Document) -> None:
    labelled = [s for s in room.records("stock") if room.value(s, "label_dose").text]
    assert len(labelled) == 1
    assert room.value(labelled[0], "chemical") == Typed("")
    assert all(room.value(s, "chemical").text for s in room.records("stock") if s not in labelled)


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
    assert room.value(room.records("stock")[0], "mixed_on") == Typed("2026-11-21")


def test_loading_it_leaves_nothing_to_undo(room: Document) -> None:
    assert room.undo_text() is None
    assert not room.undo()
    assert len(room.records("system")) == 3


def test_it_fills_only_an_empty_document(room: Document) -> None:
    heard = Listener(room)
    assert not fill_from(room, DEMO, NOW)
    assert heard.take("failed") == [Reason("store.not_empty", {"file": ":memory:"})]
    assert len(room.records("system")) == 3


def test_a_correction_that_points_nowhere_is_an_error() -> None:
    room = tomllib.loads(DEMO.read_text(encoding="utf-8"))
    room["correction"][0]["stock"] = "no such jug"
    with pytest.raises(KeyError, match="no such jug"):
        list(demo_records(room, NOW))
