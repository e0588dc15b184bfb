"""Calibrations in the document: they belong to their pump, leave and come back with it, and a flow is taken over in one step."""

from __future__ import annotations

from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.store import Label, Store
from tests.session.listening import Listener

FLOW = Typed("24", "mL/min")


def _pump(document: Document) -> tuple[str, str, str]:
    """Add a pump with two calibrations, and another pump with one."""
    pump = document.add_record("pump", {"name": Typed("Left head"), "flow": FLOW})
    first, second = (
        document.add_record("calibration", {"hours": Typed(hours, "h")}, record_id=f"{pump}:{own}")
        for hours, own in (("4", "0000000a"), ("90", "0000000b"))
    )
    other = document.add_record("pump", {"name": Typed("Right head")}, record_id=f"{pump}0")
    document.add_record("calibration", {}, record_id=f"{other}:0000000c")
    return pump, first, second


def test_a_pump_leaves_with_its_calibrations_and_comes_back_with_them(document: Document) -> None:
    pump, first, second = _pump(document)
    document.remove_record(pump)
    assert document.records("calibration") == (f"{pump}0:0000000c",), "those of another pump stay"
    assert document.undo_text() == Label("remove", "pump", "", pump)
    assert document.undo()
    assert set(document.records("calibration")) == {first, second, f"{pump}0:0000000c"}
    assert document.value(second, "hours") == Typed("90", "h")
    assert document.value(pump, "flow") == FLOW


def test_fields_of_several_records_change_in_one_step(document: Document, heard: Listener) -> None:
    pump, first, _ = _pump(document)
    heard.take()
    document.edit_records({first: {"flow_used": Typed("yes")}, pump: {"flow": Typed("23.1", "mL/min")}}, "button")
    assert {(c.record_id, c.fields, c.initiator) for c in heard.take("changed")} == {
        (first, frozenset({"flow_used"}), "button"),
        (pump, frozenset({"flow"}), "button"),
    }
    assert document.undo_text() == Label("edit", "pump", "flow", pump)
    assert document.undo()
    assert document.value(first, "flow_used") == Typed("")
    assert document.value(pump, "flow") == FLOW
    assert document.redo()
    assert document.value(pump, "flow") == Typed("23.1", "mL/min")


def test_what_stays_as_it_is_makes_no_step(document: Document) -> None:
    pump, first, _ = _pump(document)
    before = document.undo_text()
    document.edit_records({pump: {"flow": FLOW}, first: {}})
    assert document.undo_text() == before


def test_calibrations_are_on_the_disk(tmp_path: Path, qapp: object) -> None:
    file = tmp_path / "log.sqlite"
    document = Document(Store.open(file))
    pump, first, _ = _pump(document)
    document.edit_records({first: {"flow_used": Typed("yes")}, pump: {"flow": Typed("23.1", "mL/min")}})
    assert document.close()
    again = Document(Store.open(file))
    assert again.value(first, "flow_used") == Typed("yes")
    assert again.value(pump, "flow") == Typed("23.1", "mL/min")
    assert len(again.records("calibration")) == 3
    assert again.close()
